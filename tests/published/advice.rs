//! The next step under every finding, and what the verdict says beside it.
//!
//! The steps are common practice, no source, where no other is named.

use cure_reckoner::dose::axis;
use cure_reckoner_tests::{batch, next_keys, next_step, ok, problems, remark, rub, settings, slips_asked, weigh_out};
use rust_decimal::dec;
use serde_json::{Value, json};

fn check(more: &Value) -> Value {
    let mut ask = json!({"method": "rub", "green": "2 kg", "settings": settings("0.1 g")});
    for (key, value) in more.as_object().expect("fields") {
        ask[key] = value.clone();
    }
    ok(&json!({"check_dose": ask}))
}

fn put(amount: &str) -> Value {
    json!({"amount": amount, "nitrite": "6.25 %"})
}

#[test]
fn an_unknown_strength_is_looked_up_or_thrown_out() {
    let verdict = check(&json!({"put_in": {"amount": "4.8 g"}}));
    assert_eq!(next_keys(&verdict), ["find_packet", "no_packet", "keep_cold_meanwhile"]);
    assert_eq!(verdict["held"], true);
}

/// 21 CFR 172.175(a)(3) counts the finished meat, published; what hangs for months loses nitrite.
#[test]
fn what_the_rule_cannot_decide_is_measured_or_aimed_lower() {
    let done = check(&json!({"eaten": "hung_for_months", "put_in": put("10 g")}));
    assert_eq!(next_keys(&done), ["measure_first", "label_unmeasured"]);
    assert_eq!(done["held"], true);
    assert_eq!(remark(&done, "finished_decides")["limit"], 200);

    let mut recipe = rub("6.25 %", "300 ppm", "2.2 %");
    recipe["eaten"] = json!("hung_for_months");
    let planned = weigh_out(&batch(&recipe, 12, "1480 g"), "0.1 g")["verdict"].clone();
    assert_eq!(
        planned["next"],
        json!([{"is": "aim_at_limit", "nitrite": 200, "nitrate": 500}, {"is": "or_measure"}])
    );
    // Nothing is on the meat, so nothing is held.
    assert_eq!(planned["held"], false);
}

#[test]
fn a_dose_in_range_is_left_and_a_spoon_is_written_on_the_bag() {
    let weighed = check(&json!({"put_in": put("4.8 g")}));
    assert_eq!(weighed["next"], json!([{"is": "leave_cure", "method": "rub"}]));
    assert_eq!(weighed["held"], false);
    // A level teaspoon, 4.2 to 8.3 g of cure, on 4 kg: 52 to 104 ppm, between the 40 and the 120 ppm of the EU's rule.
    let mut eu = settings("0.1 g");
    eu["profile"] = json!("eu");
    let dose = json!({"amount": "1 level tsp", "nitrite": "5 %"});
    let spoon = check(&json!({"green": "4 kg", "put_in": dose, "settings": eu}));
    assert_eq!(spoon["outcome"], "in_range", "{spoon}");
    assert_eq!(next_keys(&spoon), ["leave_cure", "write_on_bag"]);
    assert_eq!(next_step(&spoon, "write_on_bag")["said"], "1 level tsp");
    assert!(remark(&spoon, "scale_step").is_null());
    assert_eq!(remark(&weighed, "scale_step")["step"], "0.1");
}

#[test]
fn too_little_by_the_scale_alone_is_told_from_too_little() {
    let first = |aim: &str, step: &str| {
        let verdict = weigh_out(&batch(&rub("6.25 %", aim, "2.2 %"), 2, "300 g"), step)["verdict"].clone();
        assert_eq!(verdict["outcome"], "too_little", "{aim}");
        (verdict["sure"].clone(), verdict["next"][0].clone())
    };
    let scale = json!({"is": "finer_scale_or_premix", "least": 120});
    // 0.72 g of cure are 150 ppm; on a scale of 0.5 g nobody knows whether it is 0.25 or 0.75.
    assert_eq!(first("130 ppm", "0.1 g"), (json!(false), scale));
    let (sure, step) = first("60 ppm", "0.01 g");
    assert_eq!((sure, step["is"].as_str()), (json!(true), Some("raise_aim")));
}

#[test]
fn what_can_still_be_thinned_goes_by_how_the_brine_gets_in() {
    let brine = |method: &str, more: &Value| {
        let mut ask = json!({"method": method, "water": "3 kg", "put_in": put("180 g")});
        for (key, value) in more.as_object().expect("fields") {
            ask[key] = value.clone();
        }
        check(&ask)
    };
    let short = json!({"take": "10 %", "cut": "mallard-breast", "thickness": "120 mm", "stays": "1 h"});
    let picked = brine("pick_up", &short);
    assert_eq!(next_step(&picked, "more_water")["method"], "pick_up");
    assert_eq!(picked["says"][0]["portions"][0]["said"], "180 g");
    assert_eq!(
        picked["says"][0]["on"],
        json!({"is": "brine", "brine": "3180 g", "percent": "10"})
    );
    assert_eq!(picked["basis"], json!(["pick_up"]));
    let pumped = brine("pumped", &json!({"take": "10 %"}));
    assert_eq!(next_step(&pumped, "more_water")["method"], "pumped");
    let covered = brine("cover_brine", &json!({}));
    assert_eq!(next_step(&covered, "more_water")["method"], "cover_brine");
    let both_of_it = json!({"is": "both", "green": "2000 g", "all": "5180 g"});
    assert_eq!(covered["says"][0]["on"], both_of_it);
    let both = brine("pumped_and_covered", &json!({"take": "10 %"}));
    assert_eq!(
        both["says"][0]["on"],
        json!({"is": "pumped", "green": "2000 g", "brine": "3180 g", "percent": "10"})
    );

    // Where nobody can say whether pick-up is a basis, both stand.
    let open = brine("pick_up", &json!({"take": "10 %"}));
    assert_eq!(open["basis"], json!(["pick_up", "cover_brine"]));
    assert_eq!(open["says"][0]["on"], both_of_it);
    // Where they can be equal, only that counts.
    let long = brine(
        "pick_up",
        &json!({"take": "10 %", "cut": "mallard-breast", "thickness": "26 mm", "stays": "60 h"}),
    );
    assert_eq!(long["basis"], json!(["cover_brine"]));
}

#[test]
fn nitrate_is_shown_where_there_is_some() {
    let with = |also: &str| {
        check(&json!({"put_in": put("4.8 g"), "also": {"amount": also, "nitrite": "0 %", "nitrate": "100 %"}}))
    };
    let both = with("0.4 g");
    // 0.4 g on 2 kg.
    assert_eq!(both["nitrate"]["typical"], 200);
    let portion = |said: &str| json!({"said": said, "of": "cure", "neat": null, "grams": null});
    assert_eq!(both["says"][0]["portions"], json!([portion("4.8 g"), portion("0.4 g")]));
    assert_eq!(both["says"][0]["on"], json!({"is": "meat", "green": "2000 g"}));
    assert!(
        check(&json!({"put_in": put("4.8 g")}))
            .get("nitrate")
            .is_none_or(Value::is_null)
    );
}

/// Another aim is for a list that is out of range and not weighed out yet.
#[test]
fn another_aim_is_only_for_what_can_still_change() {
    let aim =
        |aim: &str| weigh_out(&batch(&rub("6.25 %", aim, "2.2 %"), 12, "1480 g"), "0.1 g")["verdict"]["aim"].clone();
    assert_eq!(aim("450 ppm"), "150 ppm");
    assert!(aim("150 ppm").is_null());
    assert!(check(&json!({"put_in": put("14.4 g")}))["aim"].is_null());
}

/// A slip is asked about only for what was measured so, and only once it is on the meat.
#[test]
fn a_slip_that_cannot_have_been_is_not_asked_about() {
    // 450 ppm: a third would do, but it was weighed; nor is it a sweet cure's strength.
    let weighed = check(&json!({"put_in": put("14.4 g")}));
    assert_eq!(weighed["outcome"], "over");
    assert!(slips_asked(&weighed).is_empty(), "{weighed}");
    // 214 ppm in 3 kg of water: a larger gallon would do, but 3 kg is no gallon.
    let three = json!({"method": "cover_brine", "water": "3 kg", "put_in": put("17.2 g")});
    assert!(slips_asked(&check(&three)).is_empty());
    // The same strength in a US gallon, 3778 g.
    let gallon = json!({"method": "cover_brine", "water": "3778 g", "put_in": put("19.9 g")});
    assert!(
        slips_asked(&check(&gallon)).contains(&"us-gallon"),
        "{}",
        check(&gallon)
    );
    // Half as much of the sweet cure's strength is asked about only for what could have been cure no. 1.
    let weak = check(&json!({"put_in": {"amount": "400 g", "nitrite": "2 %"}}));
    assert_eq!(weak["outcome"], "over");
    assert!(!slips_asked(&weak).contains(&"no-1-for-sweet"), "{weak}");
    // A list that is not weighed out yet has its recipe to change, and nothing slipped.
    for aim in ["450 ppm", "70 ppm"] {
        let sheet = weigh_out(&batch(&rub("6.25 %", aim, "2.2 %"), 12, "1480 g"), "0.1 g");
        let planned = &sheet["verdict"];
        assert!(slips_asked(planned).is_empty(), "{planned}");
        assert_eq!(planned["says"][0]["only_asked"], aim == "450 ppm", "{planned}");
    }
    assert_eq!(weighed["says"][0]["only_asked"], false);
    // Ounces are not taken for grams, nor grams for ounces.
    for (green, amount) in [("50 kg", "0.17 oz"), ("1480 g", "99 g")] {
        let mistaken = check(&json!({"green": green, "put_in": put(amount)}));
        let asked = slips_asked(&mistaken);
        assert!(!asked.contains(&"ounce") && !asked.contains(&"gram"), "{asked:?}");
    }
}

#[test]
fn an_amount_that_cannot_be_says_what_can() {
    for (amount, code) in [
        ("0 packets of 25 g", "not_read"),
        ("1 heaped 5 g", "not_read"),
        ("heaped 5 g", "not_read"),
        ("plenty", "not_read"),
        ("99999 kg", "too_large"),
    ] {
        let ask = json!({"check_dose": {"method": "rub", "green": "2 kg", "put_in": put(amount), "settings": settings("0.1 g")}});
        let found = problems(&ask);
        assert_eq!(
            (found[0]["code"].as_str(), found[0]["field"].as_str()),
            (Some(code), Some("put_in.amount")),
            "{amount}"
        );
    }
}

/// The picture has room for both the dose and the limit.
#[test]
fn the_axis_ends_above_the_dose_and_the_limit() {
    for (high, limit, end) in [
        (dec!(0), dec!(200), 300),
        (dec!(299), dec!(200), 300),
        (dec!(300), dec!(200), 700),
        (dec!(10), dec!(300), 700),
        (dec!(10), dec!(625), 700),
        (dec!(900), dec!(200), 1500),
        (dec!(2000000), dec!(200), 1_000_000),
    ] {
        assert_eq!(axis(high, limit), end, "{high}, {limit}");
    }
}
