//! Every word and number of a line is accounted for: taken, harmless, or told. Lines of our own, each with what comes of it.

use super::others::of_country;
use cure_reckoner_tests::ok;
use serde_json::{Value, json};

fn read(text: &str) -> Value {
    ok(&json!({"read_recipe": {"text": text, "settings": of_country("us")}}))
}

/// What is weighed, as name, amount and unit.
fn weighed(answer: &Value) -> Vec<String> {
    let lines = answer["lines"].as_array().expect("lines");
    let items = lines.iter().filter(|l| l["taken"] == "item" || l["taken"] == "meat");
    let amount = |l: &Value| {
        let ends: Vec<&str> = l["amount"]
            .as_array()
            .expect("an amount")
            .iter()
            .filter_map(Value::as_str)
            .collect();
        match ends.as_slice() {
            [low, high] if low == high => (*low).to_owned(),
            ends => ends.join("-"),
        }
    };
    items
        .map(|l| {
            let text = format!(
                "{} {} {}",
                l["name"].as_str().unwrap_or_default(),
                amount(l),
                l["unit"].as_str().unwrap_or_default()
            );
            text.trim().to_owned()
        })
        .collect()
}

#[track_caller]
fn reads(lines: &[(&str, &[&str])]) {
    let wrong: Vec<String> = lines
        .iter()
        .filter_map(|(text, wanted)| {
            let found = weighed(&read(text));
            (found != *wanted).then(|| format!("{text}: {found:?}, meant {wanted:?}"))
        })
        .collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn numbers_of_several_words() {
    reads(&[
        ("a hundred and twenty grams salt", &["salt 120 g"]),
        ("three hundred and fifty grams salt", &["salt 350 g"]),
        ("two point five grams cure number one", &["cure number one 2.5 g"]),
        ("nought point two five percent cure no 1", &["cure no 1 0.25 %"]),
        ("one fifty grams salt", &["salt 150 g"]),
        ("two thousand five hundred grams of salt", &["salt 2500 g"]),
        ("twenty-five grams salt", &["salt 25 g"]),
        ("two and a half teaspoons salt", &["salt 2.5 tsp"]),
    ]);
    // Two of fifty, or two hundred and fifty.
    let asked = read("two fifty grams salt");
    assert!(
        asked["questions"]
            .as_array()
            .expect("questions")
            .iter()
            .any(|q| q["ask"]["is"] == "number")
    );
}

#[test]
fn measures_without_a_number() {
    reads(&[
        ("T pepper", &["pepper 1 T"]),
        ("cup and a half of vinegar", &["vinegar 1.5 cup"]),
        ("Vinegar - cup and a half", &["Vinegar 1.5 cup"]),
        ("pound and a half of salt", &["salt 1.5 lb"]),
        ("tablspoon salt", &["salt 1 tbsp"]),
        ("2 teaspons salt", &["salt 2 tsp"]),
        ("salt - 1 c", &["salt 1 cup"]),
    ]);
}

#[test]
fn things_that_share_a_line() {
    reads(&[
        ("tbsp each coriander n pepper", &["coriander 1 tbsp", "pepper 1 tbsp"]),
        ("1 cup each of salt, sugar", &["salt 1 cup", "sugar 1 cup"]),
        ("1 tsp ea. allspice, mace", &["allspice 1 tsp", "mace 1 tsp"]),
        (
            "thyme, sage & pepper - tsp each",
            &["thyme 1 tsp", "sage 1 tsp", "pepper 1 tsp"],
        ),
        (
            "salt + pepper + sugar, 1 tbsp of each",
            &["salt 1 tbsp", "pepper 1 tbsp", "sugar 1 tbsp"],
        ),
        ("2 T salt + 1 t pepper", &["salt 2 T", "pepper 1 t"]),
    ]);
    let both = read("salt n pepper");
    let names: Vec<&Value> = both["lines"]
        .as_array()
        .expect("lines")
        .iter()
        .map(|l| &l["name"])
        .collect();
    assert_eq!(names, ["salt", "pepper"]);
}

#[test]
fn an_amount_that_is_put_right() {
    let lines: [(&str, &[&str]); 8] = [
        ("salt 30 g no sorry 25", &["salt 25 g"]),
        ("30 g no sorry 25 salt", &["salt 25 g"]),
        ("salt, 30 g, no, sorry, 25 g", &["salt 25 g"]),
        ("cure no 1 - 6 g, correction, 5 g", &["cure no 1 5 g"]),
        ("cure #1 5 g (was 6)", &["cure # 1 5 g"]),
        ("salt 40g scratch that 30g", &["salt 30 g"]),
        (
            "salt 30 g, sugar 15 g no wait 20 g, pepper 5 g",
            &["salt 30 g", "sugar 20 g", "pepper 5 g"],
        ),
        ("black pepper 2 tsp (crossed out) 1 tsp", &["black pepper 1 tsp"]),
    ];
    reads(&lines);
    // That two stand there is told.
    for (text, _) in lines {
        let told = read(text)["lines"].to_string();
        assert!(told.contains("one_of_two"), "{text}: {told}");
    }
    // What is only like a correction is none.
    reads(&[("30 g salt, not the pink one", &["salt 30 g"])]);
}

#[test]
fn names_of_two_nouns_and_lists_of_per_cents() {
    reads(&[
        ("bay salt 1 lb", &["bay salt 1 lb"]),
        ("3/4 cup apple cider vinegar", &["apple cider vinegar 0.75 cup"]),
        (
            "salt 3% sugar 1.5% cure#1 0.25%",
            &["salt 3 %", "sugar 1.5 %", "cure # 1 0.25 %"],
        ),
        (
            "1/2 c each: salt, brown sugar, white sugar",
            &["salt 0.5 cup", "brown sugar 0.5 cup", "white sugar 0.5 cup"],
        ),
        ("between 10 and 12 peppercorns", &["peppercorns 10-12 each"]),
    ]);
    let bay = read("bay salt 1 lb");
    assert_eq!(bay["lines"][0]["item"], "salt-table", "a salt, and no leaf");
}

/// The questions of a text, by what they ask.
fn asks(answer: &Value) -> Vec<&str> {
    let questions = answer["questions"].as_array().expect("questions");
    questions.iter().filter_map(|q| q["ask"]["is"].as_str()).collect()
}

fn answered(text: &str, answers: &Value) -> Value {
    ok(&json!({"read_recipe": {"text": text, "answers": answers, "settings": of_country("us")}}))
}

#[test]
fn what_nothing_was_made_of_is_asked_about() {
    let unused = [
        "25 g sea salt (or 35 of coarse)",
        "1 tbsp salt and 1 of sugar",
        "30 g salt, half that of sugar",
        "30 g + 1 tsp salt",
        "2.5 g cure #1 30",
    ];
    for text in unused {
        assert!(asks(&read(text)).contains(&"unused"), "{text}: {:?}", read(text));
    }
    // What changes nothing is not.
    for text in [
        "2 Tbsp (30 g) kosher salt (NOT table salt)",
        "100g demerara / soft brown sugar",
        "6 cloves (whole ones stuck in an onion)",
        "salt 30 g, double it if you like it salty",
        "30 g salt",
    ] {
        assert!(!asks(&read(text)).contains(&"unused"), "{text}: {:?}", read(text));
    }
    let text = "2 kg venison\n25 g sea salt (or 35 of coarse)\n10 g sugar";
    let key = "unused:25 g sea salt (or 35 of coarse)";
    let read = |value: &str| answered(text, &json!([[key, value]]));
    assert_eq!(read("as_read")["lines"][1]["grams"][1], "25");
    let out = read("not_as_read");
    assert_eq!(out["lines"][1]["grams"], json!([]), "it is not weighed");
    assert_eq!(out["lines"][1]["flags"][1]["is"], "unweighable");
}

#[test]
fn a_number_of_salt_has_no_unit() {
    let text = "2 kg venison\nsalt, 30\nsugar 15 g";
    assert!(asks(&read(text)).contains(&"bare"));
    let grams = |unit: &str| {
        let said = answered(text, &json!([["amount:salt, 30", unit]]));
        said["lines"][1]["grams"][1].as_str().expect("grams").to_owned()
    };
    assert_eq!(grams("30 g"), "30");
    assert_eq!(grams("30 oz"), "850.5");
}

/// Of a figure beside the meat nobody knows whether it is meat too.
#[test]
fn a_figure_beside_the_meat() {
    for text in [
        "10 lb venison, 5 pork\n1/2 cup salt",
        "5 lb venison and 2 of pork fat\n1/2 cup salt",
        "2 kg venison plus half that of pork fat\n30 g salt",
    ] {
        let answer = read(text);
        assert!(asks(&answer).contains(&"meat"), "{text}");
        assert_eq!(answer["lines"][0]["taken"], "meat", "{text}");
    }
    for text in [
        "2 kg venison\n30 g salt",
        "pheasant thighs, 2 lb (16 of em)\n1 tbsp salt",
    ] {
        assert!(!asks(&read(text)).contains(&"meat"), "{text}");
    }
}

#[test]
fn titles_that_look_like_something_else() {
    for title in [
        "Dry cured venison loin",
        "Roast haunch",
        "Three day bacon",
        "48 hour ham",
        "Brine for goose",
        "Christmas ham 1987",
        "Ham for 12",
    ] {
        let text = format!("{title}\n2 kg venison\n50 g salt\n20 g sugar");
        let answer = read(&text);
        assert_eq!(answer["recipe"]["name"], title, "{answer}");
    }
    // A step is none.
    for step in ["Rinse the ham", "Soak overnight, then hang the ham"] {
        let answer = read(&format!("{step}\n2 kg venison\n50 g salt\n20 g sugar"));
        assert_eq!(answer["lines"][0]["taken"], "step", "{step}");
    }
}
