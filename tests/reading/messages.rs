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
