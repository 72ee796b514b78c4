//! One list of cuts for the bag, the batch and the clock.

use crate::clock::{HOUR, RUB, cured};
use cure_reckoner_tests::{ok, settings};
use serde_json::{Value, json};

fn tables() -> Value {
    ok(&json!({"tables": {}}))
}

fn rows(of: &Value) -> Vec<Value> {
    of.as_array().expect("rows").clone()
}

/// What people hunt has a cut by its key, and every cut can be weighed, cured and timed under its own key.
#[test]
fn every_cut_can_be_a_batch_and_has_a_clock() {
    let cuts = rows(&tables()["cuts"]);
    let names: Vec<&str> = cuts.iter().map(|c| c["key"].as_str().expect("a key")).collect();
    for species in [
        "deer",
        "elk",
        "moose",
        "antelope",
        "boar",
        "bear",
        "hare",
        "rabbit",
        "pheasant",
        "goose",
        "turkey",
        "duck",
        "grouse",
        "partridge",
        "quail",
        "dove",
        "mallard",
        "teal",
        "fallow",
        "roe",
    ] {
        assert!(names.iter().any(|name| name.contains(species)), "{species}");
    }
    for cut in &cuts {
        let key = cut["key"].as_str().expect("a key");
        assert_eq!(cuts.iter().filter(|c| c["key"] == key).count(), 1, "{key} twice");
        let figures = !cut["grams"].is_null();
        assert_eq!(figures, !cut["status"].is_null(), "{key}: a figure has a status");
        assert_eq!(figures, cut["source"] != "", "{key}: a figure has a source");
        let one = json!({"cut": key, "count": 1, "weight": "900 g", "thickness": "40 mm"});
        let clock = ok(&json!({"cure_clock": {
            "batch": cured(json!([one]), "72 h"), "now": RUB + HOUR, "settings": settings("0.1 g")
        }}));
        assert_eq!(clock["classes"].as_array().map(Vec::len), Some(1), "{key}");
    }
}

/// A row of the bag is of a cut of the list, of the same kind, and of the same weight where both have the same key.
#[test]
fn a_bag_is_of_the_same_cuts() {
    let tables = tables();
    let cuts = rows(&tables["cuts"]);
    let (mut same, mut of_a_cut) = (0, 0);
    for game in rows(&tables["game"]) {
        let key = game["key"].as_str().expect("a key");
        let ask = |more: Value| {
            let mut row = json!({"of": key, "hunters": 1, "each": 1, "by_piece": true});
            row.as_object_mut()
                .expect("a row")
                .extend(more.as_object().expect("more").clone());
            ok(&json!({"plan_bag": {"rows": [row], "settings": settings("0.1 g")}}))["rows"][0].clone()
        };
        let row = ask(if game["needs_weight"] == true {
            json!({"weight": "3 kg"})
        } else {
            json!({})
        });
        if row["cut"] == "own" {
            continue;
        }
        of_a_cut += 1;
        let cut = cuts
            .iter()
            .find(|c| c["key"] == row["cut"])
            .unwrap_or_else(|| panic!("{key}: {}", row["cut"]));
        assert_eq!(cut["kind"], game["kind"], "{key}");
        if let (true, Some(grams)) = (cut["key"] == key, cut["grams"].as_array()) {
            let grams: Vec<f64> = grams.iter().map(|g| g.as_f64().expect("grams")).collect();
            let told = crate::bag::grams(&row["each"]);
            for (ours, theirs) in [(told[0], grams[0]), (told[1], grams[1]), (told[2], grams[2])] {
                assert!((ours - theirs).abs() <= 1.0, "{key}: {told:?} and {grams:?}");
            }
            same += 1;
        }
    }
    assert!(same >= 10 && of_a_cut >= 40, "{same} and {of_a_cut}");
}

/// One haunch of a deer that was shared is one piece; two haunches are the deer.
#[test]
fn one_haunch_is_one_piece() {
    let plan = |by_piece: bool| {
        let row = json!({"of": "fallow-haunch", "hunters": 1, "each": 1, "by_piece": by_piece});
        ok(&json!({"plan_bag": {"rows": [row], "settings": settings("0.1 g")}}))
    };
    assert_eq!(
        (&plan(true)["pieces"], &plan(true)["green"]),
        (&json!(1), &json!("3800 g"))
    );
    assert_eq!(
        (&plan(false)["pieces"], &plan(false)["green"]),
        (&json!(2), &json!("7600 g"))
    );
}
