//! The weigh-out where a figure stands on its limit, and where one of several lines, cures or spoons counts.

use cure_reckoner::dose::{Rule, rule};
use cure_reckoner::pantry::Belly;
use cure_reckoner::recipe::{Method, Recipe};
use cure_reckoner::weigh::followed;
use cure_reckoner_tests::{answer, batch, ok, problems, rub, settings, weigh_out};
use rust_decimal::{Decimal, dec};
use serde_json::{Value, json};

/// What the list says of an accelerator.
fn accelerator(sheet: &Value) -> Value {
    let mut remarks = sheet["remarks"].as_array().expect("remarks").iter();
    remarks.find(|r| r["is"] == "accelerator").cloned().unwrap_or_default()
}

/// With a pumped belly 550 ppm of the sodium salts are asked for, in place of their limit (9 CFR 424.22(b), quoted by FSIS);
/// an acid goes by another weight and keeps its limit of 469 ppm (9 CFR 424.21(c), quoted).
#[test]
fn the_salts_are_wanted_with_a_pumped_belly() {
    let lies = |cut: &str, name: &str, amount: &str| {
        let recipe = json!({
            "name": "Pumped belly", "tag": "PB", "method": "pumped", "take": "10 %",
            "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "100 ppm"}],
            "lines": [
                {"item": "water", "share": {"of": "green_weight", "amount": "40 %"}},
                {"item": "own", "name": name, "allergens": "none", "agent": "none", "share": {"of": "brine", "amount": amount}}
            ]
        });
        let mut belly = batch(&recipe, 1, "5000 g");
        belly["pieces"][0]["cut"] = json!(cut);
        let told = accelerator(&weigh_out(&belly, "0.01 g"));
        (
            told["lies"].as_str().expect("a place").to_owned(),
            told["rule"].is_string(),
        )
    };
    // A tenth of the pickle goes in: of 2 kg of water with 0.55 % about 547 ppm, which the scale cannot tell from 550 only
    // where it stands between its ends.
    for name in ["Sodium erythorbate", "Sodium ascorbate"] {
        assert_eq!(lies("boar-belly", name, "0.5 %"), ("less".to_owned(), false));
        assert_eq!(lies("boar-belly", name, "0.7 %"), ("more".to_owned(), false));
        assert_eq!(lies("boar-haunch", name, "0.5 %"), ("within".to_owned(), true));
        assert_eq!(lies("boar-haunch", name, "0.7 %"), ("over".to_owned(), true));
    }
    assert_eq!(
        lies("boar-belly", "Erythorbic acid", "0.45 %"),
        ("within".to_owned(), true)
    );
    assert_eq!(
        lies("boar-belly", "Erythorbic acid", "0.55 %"),
        ("over".to_owned(), true)
    );
}

/// What is compared with a most is told rounded up: 1 g on 3 kg is 333.3 ppm.
#[test]
fn an_accelerator_is_told_rounded_up() {
    let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
    let line = json!({"item": "own", "name": "Ascorbic acid", "share": {"of": "green_weight", "amount": "333 ppm"}});
    recipe["lines"].as_array_mut().expect("lines").push(line);
    assert_eq!(
        accelerator(&weigh_out(&batch(&recipe, 1, "3000 g"), "0.01 g"))["ppm"],
        334
    );
}

fn spoons(weights: &[&str], more: Value) -> Value {
    let mut ask = json!({"item": "salt-table", "tablespoon": false, "weights": weights, "settings": settings("0.1 g")});
    let ask_map = ask.as_object_mut().expect("an ask");
    ask_map.extend(more.as_object().expect("an object").clone());
    json!({"spoon": ask})
}

/// Three to fifty spoons, none of them empty; a range is never made narrower by rounding; a US tablespoon is three
/// teaspoons (NIST Handbook 44, appendix C, published).
#[test]
fn spoons_that_are_weighed() {
    let refused = |weights: &[&str], more: Value| {
        let refused = problems(&spoons(weights, more));
        assert_eq!(refused[0]["field"], "weights", "{weights:?}");
    };
    refused(&["5 g", "0 g", "5 g"], json!({}));
    refused(&["5 g"; 2], json!({}));
    refused(&["5 g"; 51], json!({}));
    assert_eq!(ok(&spoons(&["5 g"; 50], json!({})))["holds"][1], "5.00");
    // 5.201 g either way 0.78015 and a tenth of half a step: 4.41585 to 5.98615 g.
    let together = ok(&spoons(&["52.01 g"], json!({"count": 10})));
    assert_eq!(together["spoon"]["grams"], json!(["4.415 g", "5.201 g", "5.987 g"]));
    let general = |tablespoon: bool| -> Vec<f64> {
        let sheet = ok(&spoons(&["5 g"; 3], json!({"tablespoon": tablespoon})));
        let ends = sheet["general"].as_array().expect("two ends").clone();
        ends.iter()
            .map(|g| g.as_str().expect("grams").parse().expect("a number"))
            .collect()
    };
    for (small, large) in general(false).iter().zip(general(true)) {
        assert!((large - 3.0 * small).abs() < 0.2, "{small} {large}");
    }
}

/// One to fifty known weights; what it is off is told with its sign, in grams and of the known weight. 50 ml of water weigh
/// 49.85 g in air at 20 °C (CRC Handbook, published).
#[test]
fn a_scale_that_is_off() {
    let ask = |checks: &[[&str; 2]]| json!({"scale": {"checks": checks, "settings": settings("0.1 g")}});
    let off = |known: &str, reads: &str| {
        let row = ok(&ask(&[[known, reads]]))["rows"][0].clone();
        [row["off"].clone(), row["percent"].clone()].map(|text| text.as_str().expect("a text").to_owned())
    };
    assert_eq!(off("20 g", "20.4 g"), ["+0.4 g", "+2 %"]);
    assert_eq!(off("20 g", "19.6 g"), ["-0.4 g", "-2 %"]);
    assert_eq!(off("50 ml", "51 g"), ["+1.15 g", "+2.3 %"]);
    for checks in [&[][..], &[["100 g", "100 g"]; 51]] {
        assert_eq!(problems(&ask(checks))[0]["field"], "checks");
    }
    assert_eq!(ok(&ask(&[["100 g", "100 g"]; 50]))["fits"], true);
}

/// What was learned from cuts is kept for 200 of them, each speed within e^±7 of 1e-10 m²/s.
#[test]
fn settings_hold_so_much_of_what_was_learned() {
    let good = |count: usize, speed: i32| {
        let mut settings = settings("0.1 g");
        settings["learned"] = json!(vec![
            json!({"kind": "red", "at": 0, "is": "near", "speed": speed});
            count
        ]);
        answer(&json!({"check": {"settings": settings}}))["ok"]["good"] == true
    };
    assert!(good(200, 0) && !good(201, 0));
    assert!(good(1, 7000) && good(1, -7000));
    assert!(!good(1, 7001) && !good(1, -7001));
}

/// An aim that was proposed keeps a twentieth of room to least and limit; else it becomes the middle, down to ten ppm where
/// that lies above the least, else to one (judgement).
#[test]
fn a_proposed_aim_follows_the_rule() {
    let aim = |least: Decimal, limit: Decimal, aim: &str| {
        let recipe: Recipe = serde_json::from_value(json!({
            "name": "Salt and cure", "tag": "SC", "method": "rub",
            "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": aim, "follows": true}]
        }))
        .expect("a recipe");
        let rule = Rule {
            least,
            limit,
            ..*rule("us-home", Method::Rub, Belly::No).expect("a rule")
        };
        followed(&recipe, &rule).cures[0].aim.ppm().text
    };
    let wide = |own: &str| aim(dec!(40), dec!(120), own);
    assert_eq!(["42 ppm", "114 ppm"].map(wide), ["42 ppm", "114 ppm"]);
    assert_eq!(["41.9 ppm", "114.1 ppm"].map(wide), ["80 ppm", "80 ppm"]);
    assert_eq!(aim(dec!(40), dec!(119), "150 ppm"), "70 ppm");
    assert_eq!(aim(dec!(70), dec!(89), "150 ppm"), "79 ppm");
    assert_eq!(aim(dec!(75), dec!(84), "150 ppm"), "79 ppm");
}

/// A premix is made with whole steps of cure, up, and of the cures the smallest is what the scale is too coarse for: one step
/// is at most 15 % of 6.67 g on a scale of 1 g, 7 g by that scale.
#[test]
fn a_coarse_scale_is_told_by_its_smallest_cure() {
    let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
    let cures = recipe["cures"].as_array_mut().expect("cures");
    cures.push(json!({"item": "cure-2", "nitrite": "6.25 %", "nitrate": "4 %", "aim": "10 ppm"}));
    // 24 and 1.6 g on 10 kg.
    let coarse = weigh_out(&batch(&recipe, 8, "10000 g"), "1 g")["coarse"].clone();
    assert_eq!(coarse["cure"], "1.6 g");
    let ways = coarse["ways"].as_array().expect("ways");
    let pool = ways.iter().find(|way| way["is"] == "pool").expect("a way");
    assert_eq!(pool["from"]["text"], "7 g");
    // 8520 g at 156.25 ppm take 21.3 g of cure, 213 g of a tenth: made of 22 g and nine times as much.
    let stock = ok(&json!({"stock": {
        "in_water": false, "nitrite": "6.25 %", "aim": "156.25 ppm", "meat": "8520 g", "settings": settings("1 g")
    }}));
    assert_eq!(
        (&stock["cure"]["text"], &stock["filler"]["text"]),
        (&json!("22 g"), &json!("198 g"))
    );
}

/// What a line takes for each piece, and what the salt gives way by: the salt of the cure that is in, by whatever measure.
/// Cure 1 of 6.25 % is 93.75 % salt.
#[test]
fn the_list_counts_pieces_and_salt() {
    let mut recipe = rub("6.25 %", "150 ppm", "2 %");
    let lines = recipe["lines"].as_array_mut().expect("lines");
    lines.push(json!({"item": "juniper-whole", "share": {"of": "piece", "amount": "0.5 g"}}));
    let mut three = batch(&recipe, 3, "1000 g");
    let lines = |batch: &Value| {
        let bowl = weigh_out(batch, "0.01 g")["bowl"].as_array().expect("a bowl").clone();
        bowl.iter()
            .map(|line| line["exact"].as_str().expect("grams").to_owned())
            .collect::<Vec<_>>()
    };
    // 1000 × 0.015 / 6.25 = 2.4 g of cure, which bring 2.25 g of the 20 g of salt.
    assert_eq!(lines(&three), ["2.4 g", "17.75 g", "1.5 g"]);
    three["put_in"] = json!({"amount": "2 g", "nitrite": "6.25 %"});
    assert_eq!(lines(&three), ["18.125 g", "1.5 g"]);
}

/// Ticked, a cure is as it was weighed: not rounded down any more, and changed only where the list would weigh another step.
#[test]
fn what_is_ticked_is_not_rounded() {
    let mut list = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 16, "1480 g");
    let open = weigh_out(&list, "0.1 g");
    let (cure, salt) = (&open["bowl"][0], &open["bowl"][1]);
    // 3.552 g of cure and 29.27 g of salt: 32.56 less the 3.28 in the cure.
    assert_eq!((&cure["weight"], cure["why"].is_null()), (&json!("3.5 g"), false));
    let ticked = |line: &Value, weight: &str| {
        let mut tick = line["tick"].clone();
        (tick["at"], tick["weight"]) = (json!(1), json!(weight));
        tick
    };
    let told = |list: &Value, at: usize| {
        let line = weigh_out(list, "0.1 g")["bowl"][at].clone();
        (line["why"]["is"].clone(), line["changed"]["wanted"]["text"].clone())
    };
    list["ticks"] = json!([ticked(cure, "3.5 g"), ticked(salt, "29.3 g")]);
    assert_eq!(told(&list, 0), (Value::Null, Value::Null));
    assert_eq!(told(&list, 1).1, Value::Null);
    // 3.6 g bring 3.375 g of salt, which leaves 29.185 g; 3.7 g leave 29.09 g.
    list["ticks"] = json!([ticked(cure, "3.6 g"), ticked(salt, "29.3 g")]);
    assert_eq!(told(&list, 0), (Value::Null, json!("3.5 g")));
    assert_eq!(told(&list, 1).1, "29.2 g");
    list["ticks"] = json!([ticked(cure, "3.7 g"), ticked(salt, "29.1 g")]);
    assert_eq!(told(&list, 1).1, Value::Null);
}
