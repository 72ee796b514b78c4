//! Whole texts: questions, answers, the verdict, and the recipe that comes out.

use cure_reckoner_tests::{exact, ok, problems, settings};
use serde_json::{Value, json};

const PROSE: &str = "For 10 lb of boar belly mix 4 oz salt, 2 tbsp of brown sugar, two level teaspoons of pink salt and a heaping \
    tablespoon of cracked pepper. Rub it in well, leave 7 days in the refrigerator and turn every day.";

const PACK: &str = "pack:2 tbsp of brown sugar";
const PINK: &str = "item:two level teaspoons of pink salt";

fn read(text: &str, answers: &[(&str, &str)]) -> Value {
    ok(&json!({"read_recipe": {"text": text, "answers": answers, "settings": settings("0.01 g")}}))
}

fn keys(reading: &Value) -> Vec<&str> {
    let questions = reading["questions"].as_array().expect("questions").iter();
    questions
        .filter(|q| q["answer"].is_null())
        .filter_map(|q| q["key"].as_str())
        .collect()
}

fn card(recipe: &Value, weight: &str) -> Value {
    ok(&json!({"card": {"recipe": recipe, "weight": weight, "settings": settings("0.01 g")}}))
}

fn grams(card: &Value, at: usize) -> f64 {
    card["rows"][at]["amount"]["num"]
        .as_str()
        .and_then(|n| n.parse().ok())
        .expect("grams")
}

#[test]
fn prose_with_two_ambiguities() {
    let open = read(PROSE, &[]);
    assert_eq!(keys(&open), [PACK, PINK]);
    assert_eq!(open["recipe"], Value::Null, "no recipe while something is asked");
    assert_eq!(open["verdict"]["word"], "cannot_say_yet");
    let settled = read(PROSE, &[(PACK, "packed"), (PINK, "cure-1")]);
    assert!(keys(&settled).is_empty());
    // Two level teaspoons of 4.2 to 8.3 g, usually 5.67 g, of 6.25 % on 4535.9 g: 116 to 229, usually 156 ppm.
    let [low, usual, high] = exact(&settled["verdict"], "nitrite");
    assert!((low - 115.7).abs() < 0.1 && (usual - 156.3).abs() < 0.1 && (high - 228.7).abs() < 0.1);
    // What is done with it stands on the card as a step, with its words.
    let step = &settled["recipe"]["steps"][0];
    assert_eq!(
        (&step["do"], &step["lasts"], &step["turn_every"]),
        (&json!("cure"), &json!("7 d"), &json!("1 d"))
    );
    assert!(
        step["note"].as_str().is_some_and(|n| n.contains("Rub it in well")),
        "{step}"
    );
}

/// The recipe, worked for the meat of the text, weighs what the text says; for another weight it is in proportion.
#[test]
fn the_recipe_gives_the_text_back() {
    let recipe = &read(PROSE, &[(PACK, "packed"), (PINK, "cure-1")])["recipe"];
    let back = card(recipe, "10 lb");
    // Cure 2 × 5.67 g; 4 oz of salt; 6 × 4.6 g of sugar; 3 × 2.6 g × 1.5 of pepper. The aim is kept to a tenth of a ppm.
    for (at, expected) in [11.34, 113.4, 27.6, 11.7].into_iter().enumerate() {
        let got = grams(&back, at);
        assert!(
            (got - expected).abs() <= expected * 0.001 + 0.005,
            "row {at}: {got}, expected {expected}"
        );
    }
    let scaled = card(recipe, "2.3 kg");
    for at in 0..4 {
        let (got, expected) = (grams(&scaled, at), grams(&back, at) * 2300.0 / 4535.9237);
        assert!((got - expected).abs() <= 0.02, "row {at}: {got}, expected {expected}");
    }
}

/// Pink salt for the table is salt: there is no cure, and the verdict says so.
#[test]
fn pink_mineral_salt_is_no_cure() {
    let reading = read(PROSE, &[(PACK, "loose"), (PINK, "salt-mineral-pink")]);
    assert_eq!(reading["verdict"]["word"], "no_cure");
    assert_eq!(reading["recipe"]["cures"], json!([]));
}

/// A tablespoon where a teaspoon was meant is over, and a quarter teaspoon to 5 lb too low (in circulation; computed).
#[test]
fn dangerous_lines_are_judged() {
    let word = |text: &str| read(text, &[("method", "rub")])["verdict"]["word"].clone();
    assert_eq!(word("2 tbsp cure no. 1 for 11 lb of meat, rubbed in"), "over");
    assert_eq!(word("5 lb venison\n1/4 tsp cure no. 1\nrub"), "too_low");
    assert_eq!(word("1 kg of belly, rub with 7.8 g cure no. 1"), "over");
}

/// A brine counts over meat and brine, a US gallon is asked for, and per cent are asked of what.
#[test]
fn a_brine() {
    let text = "Brine for 2 kg goose breast: 2 litres of water, 3 % salt, 1 % sugar and 10 g cure no. 1. Submerge it for 3 days.";
    let open = read(text, &[]);
    assert_eq!(keys(&open), ["of"]);
    let both = read(text, &[("of", "both")]);
    assert_eq!(both["recipe"]["method"], "cover_brine");
    // 10 g × 6.25 % over 2000 + 2000 + 120 + 40 + 10 g: 149.9 ppm. Water by its household measure, 1000 g a litre.
    let [_, usual, _] = exact(&both["verdict"], "nitrite");
    assert!((usual - 149.9).abs() < 0.1, "{usual}");
    let back = card(&both["recipe"], "2 kg");
    assert!((grams(&back, 0) - 10.0).abs() < 0.02);
    assert_eq!(
        keys(&read("Brine for 2 kg meat: 1 gallon water, 200 g salt", &[])),
        // The settings are of the United States, and so is the gallon.
        [""; 0]
    );
}

#[test]
fn the_meat_is_asked_for() {
    let text = "rub\n30 g salt\n2.5 g cure no. 1";
    assert_eq!(keys(&read(text, &[])), ["meat"]);
    assert_eq!(read(text, &[])["verdict"], Value::Null);
    let settled = read(text, &[("meat", "1 kg")]);
    assert_eq!(settled["recipe"]["cures"][0]["aim"], "156.3 ppm");
    // Two weights: neither is taken without asking.
    let two = read("For 5 lb of venison\nFor 10 lb of venison\n30 g salt", &[]);
    assert!(keys(&two).contains(&"meat"));
    // Nonsense is no answer.
    assert_eq!(keys(&read(text, &[("meat", "a lot")])), ["meat"]);
    assert_eq!(keys(&read(PROSE, &[(PACK, "whatever"), (PINK, "water")])), [PACK, PINK]);
}

/// A cure without an amount keeps the recipe from being kept: it would be one without cure.
#[test]
fn cure_without_an_amount() {
    const TEXT: &str = "For 1 kg meat rub in 20 g salt and cure no. 1 to taste";
    const GRAMS: &str = "grams:cure no. 1 to taste";
    let reading = read(TEXT, &[]);
    assert_eq!(reading["recipe"], Value::Null);
    assert_eq!(keys(&reading), [GRAMS]);
    assert_eq!(reading["verdict"]["word"], "cannot_say_yet");
    // How much is asked, and counts once it is said.
    let told = read(TEXT, &[(GRAMS, "2.5 g")]);
    assert_eq!(told["recipe"]["cures"][0]["aim"], "156.3 ppm");
}

/// What is the user's own is weighed by its own spoon, in the reader and on the sheet; a pantry row by it as well.
#[test]
fn own_ingredients() {
    let kept = |item: &str, tablespoon: bool, weights: &[&str]| {
        let ask = json!({"spoon": {"item": item, "tablespoon": tablespoon, "weights": weights, "settings": settings("0.01 g")}});
        ok(&ask)["spoon"].clone()
    };
    let seed = kept("own/Marsh seed mix", false, &["2 g", "2.2 g", "2.4 g"]);
    assert_eq!(seed["item"], "own/Marsh seed mix");
    let salt = kept("salt-sea-fine", true, &["15 g", "15 g", "15 g"]);
    let mut mine = settings("0.01 g");
    mine["spoons"] = json!([seed, salt]);
    let text = "For 1 kg of venison mince\n2 tsp marsh seed mix\n1 tsp fine sea salt";
    let no = json!([["agent:marsh seed mix", "none"]]);
    let reading = ok(&json!({"read_recipe": {"text": text, "answers": no, "settings": mine}}));
    // 2.2 g, the least and the most with a quarter of their distance and half a step beyond; a third of a tablespoon.
    assert_eq!(reading["lines"][1]["grams"], json!(["3.79", "4.4", "5.01"]));
    assert_eq!(reading["lines"][2]["grams"][1], "5");
    let recipe = &reading["recipe"];
    assert_eq!(
        (&recipe["lines"][0]["item"], &recipe["lines"][0]["name"]),
        (&json!("own"), &json!("marsh seed mix"))
    );
    let without = read(text, &[]);
    assert_eq!(without["lines"][1]["grams"], json!([]), "no spoon of it is known");
    let mut named = recipe.clone();
    named["lines"][0]["name"] = json!("Marsh seed mix");
    let batch = json!({"tag": "TR", "name": "Trial", "recipe": named,
        "pieces": [{"cut": "mallard-breast", "count": 1, "weight": "1 kg"}]});
    let sheet = ok(&json!({"weigh_out": {"batch": batch, "settings": mine}}));
    let spoon = &sheet["bowl"]
        .as_array()
        .expect("a bowl")
        .iter()
        .find(|l| l["item"]["name"] == "Marsh seed mix")
        .expect("a line")["spoon"];
    assert_eq!((&spoon["typical"], &spoon["unit"]), (&json!("2"), &json!("teaspoons")));
    let nameless = problems(
        &json!({"spoon": {"item": "own/ ", "tablespoon": false, "weights": ["1 g", "1 g", "1 g"], "settings": settings("0.1 g")}}),
    );
    assert_eq!(nameless[0]["field"], "item");
}

/// "… and 5 g sugar per kg" may be meant for the salt before it too: both are kept until it is answered.
#[test]
fn a_base_at_the_end_may_be_for_all() {
    let text = "For 2 kg of meat.\nRub: 20 g salt and 5 g cure no. 1 per kg";
    let open = read(text, &[]);
    assert_eq!(keys(&open), ["share:Rub: 20 g salt"]);
    assert_eq!(open["lines"][1]["grams"], json!(["20", "40", "40"]));
    let low_usual_high = |answer: &str| read(text, &[("share:Rub: 20 g salt", answer)])["lines"][1]["grams"].clone();
    assert_eq!(low_usual_high("per"), json!(["40", "40", "40"]));
    assert_eq!(low_usual_high("all"), json!(["20", "20", "20"]));
    // On lines of their own each says what it is for.
    assert!(keys(&read("Rub for 2 kg of meat\n20 g salt\n5 g cure no. 1 per kg", &[])).is_empty());
}

/// An amount in brackets alone is the amount; a title is no ingredient; a weight that reads two ways is no weight.
#[test]
fn what_is_easily_lost() {
    let brackets = read("Rub for 5 lb of meat\n30 g salt\ncure no. 1 (1 tsp per 5 lb)", &[]);
    assert_eq!(brackets["lines"][2]["grams"], json!(["4.2", "5.67", "8.3"]));
    let titled = read("My dry cure\nFor 5 lb of meat rub in 30 g salt and 5 g cure no. 1", &[]);
    assert_eq!(titled["lines"][0]["taken"], "heading");
    assert_eq!(titled["recipe"]["cures"].as_array().map(Vec::len), Some(1));
    assert_eq!(
        keys(&read("rub\n1,480 g of venison\n5 g cure no. 1", &[])),
        ["number:1,480 g of venison"]
    );
    let brine = "Brine for 2 kg meat: 4 litres of water\n10 g cure no. 1 per gallon";
    // Where the settings are of no one country, one question asks it for the whole text.
    assert_eq!(keys(&read(brine, &[])), [""; 0]);
}

/// Pumped or picked up: the share is not taken for a share of the meat, and how it goes on is asked, since it changes
/// the dose several-fold. FSIS Directive 7620.3, 1995, p. 19 (quoted): 148.6256 ppm.
#[test]
fn a_pump_is_read_and_asked_for() {
    let text = "For 5 kg of haunch inject 10 %: 1000 g water, 110 g salt, 124 g white sugar, 32 g cure no. 1 (5.88 %)";
    let open = read(text, &[]);
    assert_eq!(keys(&open), ["method"]);
    assert_eq!((&open["verdict"], &open["recipe"]), (&Value::Null, &Value::Null));
    let choices = open["questions"][0]["choices"].as_array().expect("choices").iter();
    let choices: Vec<&str> = choices.filter_map(|c| c[0].as_str()).collect();
    assert_eq!(
        choices,
        ["pumped", "pumped_and_covered", "cover_brine", "rub", "ground"]
    );
    let pumped = read(text, &[("method", "pumped")]);
    assert!(keys(&pumped).is_empty());
    let [low, usual, high] = exact(&pumped["verdict"], "nitrite");
    assert!((usual - 148.6256).abs() < 0.0001, "{usual}");
    // It is weighed on a scale, like any other: half a step of each thing weighed.
    assert!(low < usual && usual < high && high - low < 1.0, "{low} to {high}");
    assert_eq!(
        (&pumped["recipe"]["method"], &pumped["recipe"]["take"]),
        (&json!("pumped"), &json!("10 %"))
    );
    // What is weighed by the card for the same meat is the same pickle.
    for (at, expected) in [32.0, 1000.0, 110.0, 124.0].into_iter().enumerate() {
        let got = grams(&card(&pumped["recipe"], "5 kg"), at);
        assert!((got - expected).abs() <= 0.02, "row {at}: {got}");
    }
    // Two figures for the pump: which one is asked, and what is typed is held to what a pump can be.
    let range = text.replace("10 %", "8 to 12 %");
    assert_eq!(keys(&read(&range, &[("method", "pumped")])), ["take"]);
    assert_eq!(keys(&read(&range, &[("method", "pumped"), ("take", "70 %")])), ["take"]);
    let typed = read(&range, &[("method", "pumped"), ("take", "12")]);
    assert_eq!(typed["recipe"]["take"], "12 %");
    // Not said at all: asked.
    let none = text.replace("inject 10 %", "inject");
    assert_eq!(keys(&read(&none, &[("method", "pumped")])), ["take"]);
    // Salt in what is injected stays salt.
    let salt = read("Inject 2 kg of haunch with a brine of 1 litre water and 10 % salt", &[]);
    assert_eq!(
        salt["lines"].as_array().and_then(|l| l.last()).map(|l| &l["item"]),
        Some(&json!("salt-table"))
    );
}

/// Without the thickness a pick-up may be the whole bucket: the range holds both, and nothing is blessed.
#[test]
fn a_pick_up_is_no_basis_by_itself() {
    let text = "For 1360 g of teal a pickle of 3785 g water, 500 g salt and 113 g cure no. 1. Pick-up of 10 %.";
    assert!(keys(&read(text, &[])).contains(&"method"));
    let read = read(text, &[("method", "pick_up")]);
    let [low, _, high] = exact(&read["verdict"], "nitrite");
    // 113 × 6.25 % × 10 % over 4398 g of pickle; and over 4398 + 1360 g until equal.
    assert!(
        (low - 160.6).abs() < 0.1 && (high - 1226.5).abs() < 0.2,
        "{low} to {high}"
    );
    assert_ne!(read["verdict"]["outcome"], "in_range");
    assert_eq!(read["recipe"]["take"], "10 %");
}

/// One amount for each of several names.
#[test]
fn each_of_two() {
    let reading = read(
        "Rub 10 lb of meat with 2 tsp each of paprika and nutmeg, and 11 g cure no. 1",
        &[],
    );
    let lines = reading["lines"].as_array().expect("lines");
    assert_eq!(lines[1]["grams"], json!(["3.92", "4.6", "5.28"]));
    assert_eq!(
        (&lines[2]["text"], &lines[2]["item"]),
        (&json!("nutmeg"), &json!("nutmeg-ground"))
    );
    assert_eq!(
        (&lines[2]["thing"]["row"]["item"], &lines[2]["each"]),
        (&json!("nutmeg-ground"), &json!("2 tsp"))
    );
    assert_eq!(reading["recipe"]["lines"].as_array().map(Vec::len), Some(2));
    // What is bare in a sentence without "each" has no amount.
    let bare = read(
        "Rub 10 lb of meat with 2 tsp paprika and nutmeg, and 11 g cure no. 1",
        &[],
    );
    assert_eq!(bare["lines"][2]["taken"], "taste");
    // A base behind the last is its own, and is asked for the first.
    let per = read("For 2 kg of meat rub:\n1 tsp each paprika and nutmeg per kg", &[]);
    assert_eq!(keys(&per), ["share:1 tsp each paprika"]);
    assert_eq!(per["lines"][2]["grams"][1], "4.4");
}

/// Which cup is said in the line; a metric one is larger by its own figure.
#[test]
fn a_cup_says_which() {
    let says = |cup: &str| {
        let reading = read(&format!("For 10 lb of meat\n1 {cup} white sugar"), &[]);
        (
            reading["lines"][1]["by"].clone(),
            reading["lines"][1]["grams"][1].clone(),
        )
    };
    assert_eq!(says("cup"), (json!("us_cup"), json!("201.6")));
    // 250 ml over 236.5882 ml.
    assert_eq!(says("metric cup"), (json!("metric_cup"), json!("213")));
}

/// Steps with their times go onto the card; those that would leave a hole in the plan stay in its notes.
#[test]
fn steps_with_times() {
    let recipe = |steps: &str| {
        read(
            &format!("For 1 kg mallard rub in 20 g salt and 2.5 g cure no. 1. {steps}"),
            &[],
        )["recipe"]
            .clone()
    };
    let plain = recipe("Cure 24 h in the fridge, rinse, dry 2 h");
    assert_eq!(
        plain["steps"],
        json!([{"do": "cure", "lasts": "1 d"}, {"do": "rinse"}, {"do": "dry", "lasts": "2 h"}])
    );
    assert_eq!(plain["notes"], Value::Null);
    let long = recipe(
        "Leave 36 h, turned every 12 h, rinse and dry 24 h uncovered, smoke 3 h at 71 °C, cook until 74 °C, chill",
    );
    assert_eq!(
        long["steps"],
        json!([
            {"do": "cure", "lasts": "36 h", "turn_every": "12 h"},
            {"do": "rinse"},
            {"do": "dry", "lasts": "1 d"},
            {"do": "smoke", "lasts": "3 h", "at": "71 °C"},
            {"do": "cook", "until": "74 °C"},
            {"do": "chill"},
        ])
    );
    // The longer end of a range, with the words as they were written.
    let range = recipe("Cure 2 to 3 days, then soak 1 hour and smoke at 180 F until it reads 165 F");
    assert_eq!(
        range["steps"][0],
        json!({"do": "cure", "lasts": "3 d", "note": "Cure 2 to 3 days"})
    );
    assert_eq!(
        range["steps"][2],
        json!({"do": "smoke", "at": "180 °F", "until": "165 °F", "note": "smoke at 180 F until it reads 165 F"})
    );
    // Too little heat for its meat: the step of what is kept ends at what is needed.
    let duck = recipe("Cure 24 h in the fridge, then smoke the duck at 225 F until it reads 130 F");
    assert_eq!(duck["steps"][1]["until"], "165 °F");
    // No time for the cure, two times for one step, a time that is none of a step: what is not read stays in its place as
    // it was written, and no figure is made of it.
    for (steps, acts, said) in [
        (
            "Cure in the fridge until firm, rinse, dry 2 h",
            &["cure", "rinse", "dry"][..],
            "Cure in the fridge until firm",
        ),
        (
            "Cure 24 h, rinse, smoke 2 h warm, 1 h hot",
            &["cure", "rinse", "smoke"],
            "smoke 2 h warm, 1 h hot",
        ),
        (
            "Cure 24 h, rinse. After 2 h it is ready for the smoke",
            &["cure", "rinse", "smoke"],
            "After 2 h it is ready for the smoke",
        ),
    ] {
        let held = recipe(steps);
        let list = held["steps"].as_array().expect("steps");
        let done: Vec<&str> = list.iter().filter_map(|s| s["do"].as_str()).collect();
        assert_eq!(done, acts, "{steps}");
        assert!(
            list.iter()
                .any(|s| s["note"].as_str().is_some_and(|n| n.contains(said))),
            "{said}: {held}"
        );
    }
    // A recipe with cure and no word of how it cures has no plan: all of it stays in the remarks.
    let bare = recipe("Rinse, dry 2 h");
    assert_eq!((&bare["steps"], &bare["notes"]), (&json!([]), &json!("Rinse\ndry 2 h")));
    // "Rub it in well" is no step with a figure: it stays in its place as a note.
    let prose = read(PROSE, &[(PACK, "packed"), (PINK, "cure-1")]);
    assert_eq!(
        prose["recipe"]["steps"],
        json!([{"do": "cure", "lasts": "7 d", "turn_every": "1 d", "note": "Rub it in well"}])
    );
    let beside = prose["beside"].as_array().expect("what is to be known of it");
    assert!(beside.contains(&json!("no_heat")), "{beside:?}");
}

#[test]
fn refused_texts() {
    for (text, code) in [
        ("", "missing"),
        (" \n ", "missing"),
        (&"salt ".repeat(1300), "too_long"),
        (&"1 g salt\n".repeat(130), "too_long"),
    ] {
        let found = problems(&json!({"read_recipe": {"text": text, "settings": settings("0.1 g")}}));
        assert_eq!(found[0]["code"], code);
    }
}
