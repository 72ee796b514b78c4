//! Which way out has a figure: meat, cure or another aim, and where none is promised.

use cure_reckoner_tests::{batch, next_keys, ok, rub, settings, weigh_out};
use serde_json::{Value, json};

/// The verdict on what is on 2 kg of meat already.
fn judged(more: &Value) -> Value {
    let mut ask = json!({"method": "rub", "green": "2 kg", "settings": settings("0.1 g")});
    for (key, value) in more.as_object().expect("fields") {
        ask[key] = value.clone();
    }
    ok(&json!({"check_dose": ask}))
}

fn has(verdict: &Value, step: &str) -> bool {
    next_keys(verdict).contains(&step)
}

/// 21 CFR 172.170, published: 500 ppm of nitrate. 190 ppm of nitrite with 600 of nitrate come to 158 and 500 on a fifth
/// more meat.
#[test]
fn nitrate_over_its_own_limit_is_spread_too() {
    let nitrate = json!({"amount": "1.2 g", "nitrite": "0 %", "nitrate": "100 %"});
    let both = judged(&json!({"put_in": {"amount": "6.1 g", "nitrite": "6.25 %"}, "also": nitrate}));
    assert!(has(&both, "more_meat"), "{both}");
}

/// 9 CFR 424.22(b), published: on belly no nitrate at all, which does not keep its nitrite from being spread.
#[test]
fn belly_without_nitrate_is_spread_and_with_it_is_not() {
    let mut plant = settings("0.1 g");
    plant["profile"] = json!("us-plant");
    let cut = json!("boar-belly");
    let over = json!({"amount": "9 g", "nitrite": "6.25 %"});
    let bare = judged(&json!({"settings": plant, "cut": cut, "put_in": over}));
    assert!(has(&bare, "more_meat"), "{bare}");
    let nitrate = json!({"amount": "1 g", "nitrite": "0 %", "nitrate": "100 %"});
    let with = judged(&json!({"settings": plant, "cut": cut, "put_in": over, "also": nitrate}));
    assert!(!has(&with, "more_meat"), "{with}");
}

/// A teaspoon is so wide (4.2 to 8.3 g) that on 3 kg no added cure takes all of it over the least and none over the
/// limit; on 4 kg there is room.
#[test]
fn more_cure_is_promised_only_where_all_of_the_range_comes_in() {
    let spoon = json!({"amount": "1 tsp", "nitrite": "6.25 %"});
    let wide = judged(&json!({"green": "3 kg", "put_in": spoon}));
    assert!(!has(&wide, "more_cure"), "{wide}");
    let fits = judged(&json!({"green": "4 kg", "put_in": spoon}));
    assert!(has(&fits, "more_cure"), "{fits}");
}

/// A brine that aims too high or too low is given the aim of all recipes, but not where that would be more
/// cure than all else in the brine.
#[test]
fn a_brine_gets_another_aim_unless_it_would_be_hardly_a_brine() {
    let aim = |nitrite: &str, aim: &str, water: &str| {
        let mut recipe = rub(nitrite, aim, "2.2 %");
        recipe["method"] = json!("cover_brine");
        recipe["lines"] = json!([{"item": "water", "share": {"of": "green_weight", "amount": water}}]);
        let verdict = weigh_out(&batch(&recipe, 12, "1480 g"), "0.1 g")["verdict"].clone();
        assert_ne!(verdict["outcome"], "in_range", "{aim}, {water}");
        verdict["aim"].clone()
    };
    assert_eq!(aim("6.25 %", "300 ppm", "60 %"), "150 ppm");
    assert_eq!(aim("6.25 %", "50 ppm", "60 %"), "150 ppm");
    // 12 g of a cure of 0.5 % in 15 g of water; for 120 ppm and more it would be 36 g at least.
    assert!(aim("0.5 %", "40 ppm", "1 %").is_null());
}
