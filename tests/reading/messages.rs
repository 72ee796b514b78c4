//! Texts as friends send them: what is easily lost in one, each as a person reads it. Invented.

use cure_reckoner_tests::{ok, settings};
use serde_json::{Value, json};

fn read(text: &str) -> Value {
    ok(&json!({"read_recipe": {"text": text, "settings": settings("0.1 g")}}))
}

/// Name, least amount and unit of each line that is weighed or counted.
fn amounts(reading: &Value) -> Vec<(String, String, String)> {
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    let lines = reading["lines"].as_array().expect("lines").iter();
    lines
        .filter(|l| l["amount"].as_array().is_some_and(|a| !a.is_empty()))
        .map(|l| (text(&l["name"]), text(&l["amount"][0]), text(&l["unit"])))
        .collect()
}

#[test]
fn what_is_counted_takes_no_amount_of_another() {
    for (said, wanted) in [
        (
            "2 bay leaves, 10 g salt",
            vec![("bay leaves", "2", "each"), ("salt", "10", "g")],
        ),
        (
            "60g brown sugar, couple bay leaves, 10 peppercorns",
            vec![
                ("brown sugar", "60", "g"),
                ("bay leaves", "2", "each"),
                ("peppercorns", "10", "each"),
            ],
        ),
        ("brown sugar 2c", vec![("brown sugar", "2", "cup")]),
        ("2 hare saddles, each about 450 g", vec![("", "900", "g")]),
        ("saddle of hare, 2, each about 450 g", vec![("", "900", "g")]),
        ("hare saddle, two, at 450 g", vec![("", "900", "g")]),
        ("pheasants (4), 800 g each", vec![("", "3200", "g")]),
        ("goose legs, x 6, 300 g apiece", vec![("", "1800", "g")]),
        ("boar belly (skin on), 2 kg", vec![("", "2", "kg")]),
        ("half a dozen whole cloves", vec![("clove", "6", "each")]),
    ] {
        let reading = read(said);
        let found = amounts(&reading);
        let found: Vec<_> = found
            .iter()
            .map(|(n, a, u)| (n.as_str(), a.as_str(), u.as_str()))
            .collect();
        assert_eq!(found, wanted, "{said}");
    }
}

/// Two and a half ounces or ten and a half: four times the nitrate, so it is asked.
#[test]
fn a_lost_blank_in_a_number_is_asked_about() {
    let reading = read("rub\n21/2 oz saltpetre to 100 lb ham");
    let asked = reading["questions"].as_array().expect("questions").iter();
    let mut number = asked.filter(|q| q["key"].as_str().is_some_and(|k| k.starts_with("number:")));
    let choices = number.next().expect("a question")["choices"].clone();
    assert_eq!(
        choices,
        json!([["2.5", {"is": "said", "text": "2.5"}], ["10.5", {"is": "said", "text": "10.5"}]])
    );
}

#[test]
fn a_cure_by_its_packet_is_a_cure() {
    let bracket = read("8g cure #1 (6.25)");
    assert_eq!(
        (&bracket["lines"][0]["strength"], &bracket["lines"][0]["flags"]),
        (&json!("6.25"), &json!([]))
    );
    for said in ["cure per the bag", "cure, see packet", "cure as per packet"] {
        let line = read(&format!("20 g salt\n{said}"))["lines"][1].clone();
        assert_eq!(line["taken"], "taste", "{said}: {line}");
        let unsaid = line["flags"].to_string().contains("amount_unsaid");
        assert!(unsaid, "{said}: how much is not said: {line}");
    }
}

#[test]
fn so_long_in_the_fridge_is_the_cure_and_keeps_the_steps() {
    let reading = read("breasts in for 36h in the fridge, rinse, dry overnight");
    let steps = reading["lines"][0]["steps"].as_array().expect("steps").iter();
    let acts: Vec<&str> = steps.filter_map(|s| s["do"].as_str()).collect();
    assert_eq!(acts, ["cure", "rinse", "dry"]);
}

/// Of the middle of the meat a bare figure can be of one scale alone; around it the country decides what could be both.
#[test]
fn a_temperature_without_a_unit() {
    let read = |text: &str, units: &str| {
        let mut here = settings("0.1 g");
        here["units"] = json!(units);
        let reading = ok(&json!({"read_recipe": {"text": text, "settings": here}}));
        let step = reading["lines"][0]["steps"][0].clone();
        let figure = |value: &Value| value.as_str().unwrap_or("none").to_owned();
        (figure(&step["at"][1]), figure(&step["until"]))
    };
    for (text, units, at, until) in [
        ("Smoke till 74 inside", "metric", "none", "74"),
        ("Smoke till 74 inside", "us", "none", "74"),
        ("Smoke till 165 inside", "us", "none", "73.89"),
        ("Smoke till 165 inside", "metric", "none", "73.89"),
        ("Smoke at 110 until 71", "metric", "110", "71"),
        ("Smoke at 225 until 165", "us", "107.22", "73.89"),
        ("Smoke at 225 until 165", "metric", "107.22", "73.89"),
        ("Roast at 180 to 68 in the middle", "metric", "180", "68"),
        ("Roast at 350 until 160 internal", "us", "176.67", "71.11"),
        ("Smoke till 30 guests are gone", "metric", "none", "none"),
        ("Simmer with water to 200 ml", "metric", "none", "none"),
        ("Chill to 4", "metric", "none", "none"),
    ] {
        let wanted = (at.to_owned(), until.to_owned());
        assert_eq!(read(text, units), wanted, "{text} in {units}");
    }
}

#[test]
fn how_much_the_packet_says_can_be_answered() {
    let text = "10 lb boar belly\n100 g salt\ncure per the bag\nRub it in.";
    let answers = [("item:cure per the bag", "cure-1"), ("grams:cure per the bag", "11 g")];
    let reading = ok(&json!({"read_recipe": {"text": text, "answers": answers, "settings": settings("0.1 g")}}));
    assert!(reading["recipe"].is_object(), "{}", reading["bar"]);
    // 11 g of 6.25 % on 4535.9 g: 151.6 ppm.
    assert_eq!(reading["verdict"]["nitrite"]["typical"], 152);
}

/// What is called over the limit is: the likely figure where that is over, else the most that it may be.
#[test]
fn a_figure_that_is_called_over_is_over() {
    for (text, over) in [
        // A spoon of 4.2 to 8.3 g of 6.25 % on 4 lb (1814.4 g): 145 to 286 ppm, likely 195 (plain arithmetic).
        (
            "4 lb mallard breasts\n1 3/4 oz salt\n1 tsp cure #1\nRub, 3 days in the fridge.",
            "286",
        ),
        // 8 g: 276 ppm.
        (
            "4 lb mallard breasts\n1 3/4 oz salt\n8 g cure #1\nRub, 3 days in the fridge.",
            "276",
        ),
    ] {
        let mut here = settings("0.1 g");
        here["units"] = json!("us");
        here["profile"] = json!("us-home");
        let reading = ok(&json!({"read_recipe": {"text": text, "settings": here}}));
        let dangers = reading["dangers"].as_array().expect("dangers");
        let danger = dangers.iter().find(|d| d["key"] == "cure_over");
        let danger = danger.unwrap_or_else(|| panic!("{text}: {reading}"));
        assert_eq!(
            (&danger["figure"], &danger["rule"]),
            (&json!(over), &json!("200")),
            "{text}"
        );
    }
}

/// Lines in one, with strokes between them: each is read as if it stood by itself, and no step is lost in an ingredient.
#[test]
fn strokes_between_lines_are_breaks() {
    let lines = |text: &str| {
        let reading = read(text);
        let mut steps = reading["lines"].as_array().expect("lines").clone();
        steps.retain(|l| l["taken"] == "step");
        (amounts(&reading), steps.len(), reading["dangers"].clone())
    };
    let said = [
        "hare legs 2 kg",
        "50 g salt",
        "5 g cure no. 1",
        "5 days in the fridge",
        "cold smoke 6 hours",
    ];
    let apart = lines(&said.join("\n"));
    assert_eq!(apart.1, 2, "{apart:?}");
    for stroke in [" / ", " | ", " // ", " • "] {
        assert_eq!(lines(&said.join(stroke)), apart, "{stroke}");
    }
    // A figure alone before one is of a fraction.
    let half = read("2 kg hare legs / 1 / 2 tsp salt")["lines"].to_string();
    assert!(half.contains("1 / 2 tsp"), "{half}");
}

/// A line that was taken for one broken by the paper swallows no cure: what stands there is asked about.
#[test]
fn a_cure_behind_two_that_are_offered_is_asked_about() {
    for text in [
        "4 0each(cup soy sauce \nhalf a teaspoon of curing salt",
        "5 thats what the bulletin wants for sausage0 g lard or dripping\na pinch of saltpeter",
        "1/2 curainwaterp sugar or 13 cu(p honey\na pinch of saltpeter",
    ] {
        let reading = read(text);
        assert_ne!(reading["verdict"]["word"], "no_cure", "{text}: {reading}");
    }
}

/// A blank that is lost between two things costs no letter of either.
#[test]
fn no_letter_is_lost_where_a_line_is_cut() {
    for text in [
        "2 salt.3 kg boar belly",
        "2 Salt.3 kg sugar",
        "2 onions 3 lb of venison",
        // The long dash has three bytes: cut within them, the line was cut for ever.
        "½ tomato paste–¾ tsp cayenne",
    ] {
        let reading = read(text);
        let lines = reading["lines"].as_array().expect("lines").iter();
        let shown: Vec<&str> = lines.filter_map(|l| l["text"].as_str()).collect();
        let whole = text.split([' ', '.', '–']).filter(|word| !word.is_empty());
        for word in whole {
            assert!(shown.iter().any(|line| line.contains(word)), "{word}: {shown:?}");
        }
    }
}
