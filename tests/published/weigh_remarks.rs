//! What is remarked beside the list, and what settings are refused: where one of several counts, and where a figure stands on
//! its limit. Amounts are worked by hand; the limits are judgements.

use cure_reckoner_tests::{answer, batch, ok, problems, rub, settings, weigh_out};
use serde_json::{Value, json};

/// The remarks of one kind.
fn remarks(recipe: &Value, step: &str, kind: &str) -> Vec<Value> {
    let sheet = weigh_out(&batch(recipe, 1, "1000 g"), step);
    let all = sheet["remarks"].as_array().expect("remarks");
    all.iter().filter(|r| r["is"] == kind).cloned().collect()
}

fn with_cure(mut recipe: Value, cure: Value) -> Value {
    recipe["cures"].as_array_mut().expect("cures").push(cure);
    recipe
}

/// A tenth as strong, as it is made on a scale of 0.1 g.
fn thinned(in_water: bool) -> Value {
    ok(&json!({"stock": {
        "in_water": in_water, "nitrite": "6.25 %", "aim": "50 ppm", "meat": "1000 g", "settings": settings("0.1 g")
    }}))["mix"]
        .clone()
}

/// 0.02 % of 1000 g are 0.2 g, which a scale of 1 g shows as nothing; what needs nothing is no matter of the scale.
#[test]
fn a_line_that_the_scale_cannot_show() {
    let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
    let lines = recipe["lines"].as_array_mut().expect("lines");
    lines.push(json!({"item": "juniper-whole", "share": {"of": "green_weight", "amount": "0.02 %"}}));
    let below = remarks(&recipe, "1 g", "below_step");
    assert_eq!(below.len(), 1, "{below:?}");
    assert_eq!(below[0]["weight"], "0.2 g");
    assert_eq!(remarks(&recipe, "0.1 g", "below_step"), [Value::Null; 0]);
    // All the salt that is wanted comes with the cure, so that its line is 0.
    assert_eq!(
        remarks(&rub("6.25 %", "150 ppm", "0.1 %"), "0.1 g", "below_step").len(),
        0
    );
}

/// 1000 × 0.015 / 6.25 = 2.4 g of cure, of which 93.75 % is salt: 2.25 g.
#[test]
fn salt_that_the_cure_brings() {
    let told = |recipe: &Value| remarks(recipe, "0.01 g", "salt_in_cure");
    assert_eq!(told(&rub("6.25 %", "150 ppm", "0.3 %")).len(), 0);
    assert_eq!(told(&rub("6.25 %", "150 ppm", "0.225 %")).len(), 0, "just as much");
    let more = told(&rub("6.25 %", "150 ppm", "0.1 %"));
    assert_eq!(more.len(), 1);
    assert_eq!(
        [&more[0]["brings"], &more[0]["aimed"], &more[0]["premix"]],
        [&json!("2.3 g"), &json!("1.0 g"), &json!(false)]
    );
    // Of two cures one is made here, and that one is mostly salt.
    let two = told(&with_cure(rub("6.25 %", "100 ppm", "0.1 %"), thinned(false)));
    assert_eq!(two[0]["premix"], true);
}

/// Seven eighths of the cure are salt: 0.05 g of it bring 0.044 g, which is nothing to speak of, and 0.06 g bring 0.0525 g.
#[test]
fn a_recipe_without_salt() {
    let told = |aim: &str, nitrite: &str| {
        let mut recipe = rub(nitrite, aim, "2 %");
        recipe["lines"] = json!([]);
        remarks(&recipe, "0.01 g", "no_salt_line")
    };
    assert_eq!(told("6.25 ppm", "12.5 %").len(), 0);
    assert_eq!(told("7.5 ppm", "12.5 %")[0]["brings"], "0.1 g");
    assert_eq!(told("150 ppm", "6.25 %")[0]["brings"], "2.3 g");
}

#[test]
fn of_two_cures_either_is_remarked() {
    let plain = rub("6.25 %", "50 ppm", "2.2 %");
    let sweet = json!({"item": "cure-sweet", "nitrite": "0.7 %", "nitrate": "0 %", "aim": "50 ppm"});
    let count = |recipe: &Value, kind: &str| remarks(recipe, "0.01 g", kind).len();
    assert_eq!(count(&plain, "sweet_cure"), 0);
    assert_eq!(count(&with_cure(plain.clone(), sweet), "sweet_cure"), 1);
    let wet = with_cure(plain.clone(), thinned(true));
    let dry = with_cure(plain.clone(), thinned(false));
    assert_eq!([&plain, &dry, &wet].map(|r| count(r, "stock_of_the_day")), [0, 0, 1]);
}

fn is_good(key: &str, value: &Value) -> bool {
    let mut settings = settings("0.1 g");
    settings[key] = value.clone();
    answer(&json!({"check": {"settings": settings}}))["ok"]["good"] == true
}

/// Clock times of five characters or none; 99 at once; 1 to 99 racks. One that is wrong spoils all.
#[test]
fn hours_and_room_of_the_house() {
    let rack = |count: u32| json!({"count": count, "wide": "300 mm", "deep": "400 mm"});
    let house = |hours: [&str; 4], room: [u32; 3], racks: [Value; 2]| {
        is_good("house", &json!({"hours": hours, "room": room, "racks": racks}))
    };
    let hours = |at: &str| house(["22:30", at, "", ""], [1, 1, 1], [Value::Null, Value::Null]);
    assert!(hours("06:00") && hours(""));
    for wrong in ["6:00", "06x00", "06:000", "x"] {
        assert!(!hours(wrong), "{wrong}");
    }
    let rooms = |room: [u32; 3]| house(["", "", "", ""], room, [Value::Null, Value::Null]);
    assert!(rooms([0, 1, 99]));
    assert!(!rooms([0, 1, 100]));
    let racks = |racks: [Value; 2]| house(["", "", "", ""], [1, 1, 1], racks);
    assert!(racks([rack(1), rack(99)]) && racks([Value::Null, rack(3)]));
    assert!(!racks([rack(3), rack(0)]) && !racks([rack(100), rack(3)]));
}

/// Twenty cures made here are kept, each one that can be used; a rule has to be one of the table.
#[test]
fn mixes_and_the_rule() {
    let good = thinned(false);
    let many = |count: usize| is_good("mixes", &json!(vec![good.clone(); count]));
    assert!(many(20) && !many(21));
    let mut bought = good.clone();
    bought.as_object_mut().expect("a cure").remove("made");
    assert!(!is_good("mixes", &json!([good, bought])));
    let mut empty = good.clone();
    (empty["nitrite"], empty["nitrate"]) = (json!("0 %"), json!("0 %"));
    assert!(!is_good("mixes", &json!([good, empty])));
    assert!(is_good("profile", &json!("us-home")));
    assert!(!is_good("profile", &json!("nowhere")));
}

/// What a fire taught lies within 9000 either way, and leaves 1 to 1000 open; 200 fires at most.
#[test]
fn what_fires_taught() {
    let fire = |centre: [i32; 5], spread: [i32; 5]| json!({"fan": false, "cover": "dry", "at": 0, "centre": centre, "spread": spread});
    let one = |centre: i32, spread: i32| is_good("smoked", &json!([fire([0, 0, 0, 0, centre], [1, 1, 1, 1, spread])]));
    assert!(one(9000, 1000) && one(-9000, 1));
    let many = |count: usize| is_good("smoked", &json!(vec![fire([0; 5], [1; 5]); count]));
    assert!(many(200) && !many(201));
    assert!(!one(9001, 1) && !one(-9001, 1) && !one(0, 0) && !one(0, 1001));
}

/// A stock needs meat, a cure with nitrite, and an aim above nothing and below the cure's own strength.
#[test]
fn a_stock_that_cannot_be() {
    let ask = |meat: &str, nitrite: &str, nitrate: &str, aim: &str| {
        json!({"stock": {
            "in_water": false, "nitrite": nitrite, "nitrate": nitrate, "aim": aim, "meat": meat, "settings": settings("0.1 g")
        }})
    };
    for (meat, nitrite, nitrate, aim) in [
        ("0 g", "6.25 %", "0 %", "150 ppm"),
        ("1000 g", "0 %", "4 %", "150 ppm"),
        ("1000 g", "6.25 %", "0 %", "0 ppm"),
        ("1000 g", "0.5 %", "0 %", "5000 ppm"),
    ] {
        let refused = problems(&ask(meat, nitrite, nitrate, aim));
        assert!(
            refused.iter().any(|p| p["field"] == "aim"),
            "{meat} {nitrite} {aim}: {refused:?}"
        );
    }
    assert_eq!(ok(&ask("1000 g", "6.25 %", "0 %", "150 ppm"))["take"]["text"], "24.0 g");
}
