//! The haunch, the belly and the hare of one December: the hour each comes out, as four screens tell it, side by side.

use super::times::{DAY, HOUR, RECIPES, events};
use cure_reckoner_tests::{ok, settings, weighed_in};
use serde_json::{Value, json};

/// 2026-12-16 18:00 UTC, when each was rubbed or laid in its brine.
const BEGUN: i64 = 1_797_444_000_000;

/// Printed with `--nocapture`.
#[test]
fn the_plan_the_calendar_the_label_and_the_clock_of_three() {
    let three = [
        ("Fallow haunch in brine", "fallow-haunch", 1, "2600 g", "95 mm"),
        ("Wild boar belly, smoked", "boar-belly-rind", 1, "1800 g", "45 mm"),
        ("Marsh hare, cured and braised", "hare-legs", 4, "1200 g", "45 mm"),
    ];
    let nights: Vec<Value> = (-3..90)
        .map(|n| {
            let from = BEGUN + n * DAY + 5 * HOUR;
            json!({"from": from, "to": from + 7 * HOUR})
        })
        .collect();
    for (name, cut, count, weight, thick) in three {
        let mut recipe = RECIPES.iter().find(|r| r["name"] == name).expect("a starter").clone();
        // Nobody has hours of his own for this one: the clock's count.
        recipe["steps"][0].as_object_mut().expect("a step").remove("lasts");
        recipe["steps"][0].as_object_mut().expect("a step").remove("turn_every");
        let piece = json!({"cut": cut, "count": count, "weight": weight, "thickness": thick});
        let batch = json!({"tag": "TH", "name": name, "recipe": recipe, "pieces": [piece], "by": "clock"});
        let mut batch = weighed_in(batch, BEGUN - HOUR);
        let rub = json!([{"of": "rub", "at": BEGUN}]);
        batch["ticks"]
            .as_array_mut()
            .expect("ticks")
            .extend(rub.as_array().expect("one").clone());
        let (now, set) = (BEGUN + HOUR, settings("1 g"));
        let named = json!([{"id": "b", "batch": batch}]);
        let clock = ok(&json!({"cure_clock": {"batch": batch, "now": now, "rests": nights, "settings": set}}));
        let until = clock["until"]["at"].as_i64().expect("an hour");
        let next = ok(&json!({"next": {"batches": named, "now": now, "rests": nights, "settings": set}}));
        let week = next["batches"][0]["until"]["at"].as_i64();
        let labels = ok(&json!({"labels": {
            "batch": batch, "now": now, "frozen": false, "vacuum": false, "rests": nights, "settings": set
        }}));
        let bag = labels["papers"]
            .as_array()
            .expect("papers")
            .iter()
            .find(|p| p["kind"] == "bag")
            .expect("a bag");
        let file = ok(&json!({"calendar": {"batches": named, "now": now, "rests": nights, "settings": set}}));
        let sent = events(file["text"].as_str().expect("a file"))["step-1"];
        let plan = ok(
            &json!({"plan_back": {"batches": named, "now": now, "settings": set, "wish": {
                "ready_by": now + 80 * DAY, "rests": nights, "room": [9, 9, 9]
            }}}),
        );
        let steps = plan["batches"][0]["steps"].as_array().expect("steps");
        let planned = steps
            .iter()
            .find(|s| s["step"] == 1 && s["turn"] != true)
            .expect("a step")["at"]
            .as_i64();
        println!(
            "{name}: clock {until}, week {week:?}, calendar file {sent}, label {}, plan {planned:?}",
            bag["until"]
        );
        assert_eq!(week, Some(until), "{name}");
        assert_eq!(sent, until, "{name}");
        assert_eq!(bag["until"], until, "{name}");
        assert_eq!(planned, Some(until), "{name}");
    }
}
