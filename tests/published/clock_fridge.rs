//! The cure clock by the refrigerator: frozen hours, warm ones, hours without power.

use crate::clock::{HOUR, RUB, at, breast, clock_of, cured, words};
use cure_reckoner_tests::{ok, problems, settings, weighed_in};
use serde_json::{Value, json};

#[test]
fn the_refrigerator_as_it_was() {
    let pieces = json!([breast("38 mm")]);
    let log = |readings: Value, hours: f64| {
        let mut batch = cured(pieces.clone(), "72 h");
        batch["fridge"] = readings;
        clock_of(&batch, hours)
    };
    let read = |hours: i64, reads: &str| json!({"at": RUB + hours * HOUR, "what": "read", "reads": reads});
    let likely = |clock: &Value| at(clock, 0, "colour", "likely");
    let even = log(json!([read(0, "38 F")]), 60.0);
    // A frozen day parks the clock for a day, to the minute.
    let frozen = log(
        json!([read(0, "38 F"), {"at": RUB + 5 * HOUR, "what": "frozen"}, {"at": RUB + 29 * HOUR, "what": "thawed"}]),
        60.0,
    );
    assert!(
        (likely(&frozen) - likely(&even) - 24.0).abs() < 0.02,
        "{}",
        likely(&frozen) - likely(&even)
    );
    assert!(words(&frozen).contains(&"The clock stood"));
    // Below 34 °F it stands too; at 34 it runs.
    let cold = log(json!([read(0, "38 F"), read(5, "33.9 F"), read(15, "38 F")]), 60.0);
    assert!((likely(&cold) - likely(&even) - 10.0).abs() < 0.02);
    assert!(!words(&log(json!([read(0, "34 F")]), 60.0)).contains(&"The clock stood"));
    // A warm night shortens it by exp(E/R (1/T1 - 1/T2)), E = 25 kJ/mol: 9 h at 46 °F count as 9 x 1.16 h at 38.
    let warm = log(json!([read(0, "38 F"), read(5, "46 F"), read(14, "38 F")]), 60.0);
    let kelvin = |f: f64| (f - 32.0) / 1.8 + 273.15;
    let gain = 9.0 * ((25_000.0 / 8.314 * (1.0 / kelvin(38.0) - 1.0 / kelvin(46.0))).exp() - 1.0);
    assert!((likely(&even) - likely(&warm) - gain).abs() < 0.02, "{gain}");
    assert!(words(&warm).contains(&"It was too warm"));
    assert!(!words(&log(json!([read(0, "40 F")]), 60.0)).contains(&"It was too warm"));
    let says = warm["notes"]
        .as_array()
        .unwrap()
        .iter()
        .find(|n| n["word"] == "It was too warm")
        .unwrap();
    assert!(says["says"].as_str().unwrap().contains("9 h"), "{says}");
    // Out of order they are the same.
    let mixed = log(json!([read(14, "38 F"), read(5, "46 F"), read(0, "38 F")]), 60.0);
    assert_eq!(likely(&mixed), likely(&warm));
    // A reading without a temperature is refused.
    let mut bad = cured(pieces.clone(), "72 h");
    bad["fridge"] = json!([{"at": RUB, "what": "read"}]);
    let found = problems(&json!({"cure_clock": {"batch": bad, "now": RUB, "settings": settings("0.1 g")}}));
    assert_eq!(found[0]["field"], "batch.fridge");
}

/// Meat above 40 °F for 2 hours or more, or nobody knows how long, is thrown out: FoodSafety.gov, power outages, quoted.
#[test]
fn a_warm_reading_counts_back_to_the_last_cold_one() {
    // The clock's note, whether the batch is held, its doubts of the warmth in minutes, and how many jobs it has today.
    let warm_at = |minutes: i64, then: i64| {
        let mut class = breast("38 mm");
        class["weight"] = json!("1330 g");
        let mut batch = weighed_in(cured(json!([class]), "72 h"), RUB - HOUR);
        batch["fridge"] = json!([
            {"at": RUB + HOUR, "what": "read", "reads": "38 F"},
            {"at": RUB + HOUR + minutes * 60_000, "what": "read", "reads": "48 F"}
        ]);
        let hours = 1.0 + (minutes + then) as f64 / 60.0;
        let list = ok(
            &json!({"next": {"batches": [{"id": "b", "batch": batch}], "now": RUB + (hours * HOUR as f64) as i64, "settings": settings("0.1 g")}}),
        );
        let note = clock_of(&batch, hours)["notes"]
            .as_array()
            .unwrap()
            .iter()
            .find(|n| n["word"] == "It was too warm")
            .cloned()
            .unwrap();
        let state = &list["batches"][0];
        let doubts = state["doubts"].as_array().unwrap().iter();
        let warm: Vec<_> = doubts
            .filter(|d| d["stage"] == "cure" && d["kind"].as_str().unwrap().contains("warm"))
            .map(|d| (d["kind"].clone(), d["weight"].clone(), d["minutes"].clone()))
            .collect();
        assert_eq!(warm.len(), 1, "{state}");
        let jobs = list["jobs"].as_array().unwrap().len();
        (
            note["mark"].clone(),
            note["says"].as_str().unwrap().to_owned(),
            (state["held"].clone(), warm[0].clone(), jobs > 0),
        )
    };
    let doubt = |kind: &str, weight: &str, minutes: u32| (json!(kind), json!(weight), json!(minutes));
    // A night that nobody read: as long as it may have been. It is held, and nothing on it goes on.
    let (mark, says, standing) = warm_at(9 * 60, 0);
    assert_eq!(mark, "stop");
    assert!(says.starts_with("Above 4 °C (40 °F) now, and up to 9 h more"), "{says}");
    assert!(says.contains("is thrown out"), "{says}");
    assert_eq!(standing, (json!(true), doubt("may_be_too_warm", "holds", 540), false));
    // Half an hour since it was cold, and twenty minutes since.
    let (mark, says, standing) = warm_at(30, 20);
    assert_eq!(mark, "care");
    assert!(
        says.starts_with("20 min above") && says.contains("up to 30 min more"),
        "{says}"
    );
    assert!(says.contains("can still be used"), "{says}");
    assert_eq!(standing, (json!(false), doubt("warm", "warns", 50), true));
    // Left so for long enough it is too long: two hours in all may be, and two hours since it was read are past mending.
    let (mark, _, standing) = warm_at(30, 90);
    assert_eq!(mark, "stop");
    assert_eq!(standing, (json!(true), doubt("may_be_too_warm", "holds", 120), false));
    let (mark, _, standing) = warm_at(30, 120);
    assert_eq!(mark, "stop");
    assert_eq!(
        (standing.0, standing.1.0, standing.1.1, standing.2),
        (json!(true), json!("too_warm"), json!("forbids"), false)
    );
    // What is frozen through is not warmed by a warm thermometer, and what is read after the cure is another matter.
    let warm_words = |readings: Value, rinsed: bool, hours: f64| {
        let mut batch = cured(json!([breast("38 mm")]), "72 h");
        batch["fridge"] = readings;
        if rinsed {
            let ticks = batch["ticks"].as_array_mut().unwrap();
            ticks.push(json!({"of": "step:1", "at": RUB + 2 * HOUR}));
        }
        words(&clock_of(&batch, hours)).contains(&"It was too warm")
    };
    let read = |hours: i64, reads: &str| json!({"at": RUB + hours * HOUR, "what": "read", "reads": reads});
    let frozen = json!([read(1, "38 F"), {"at": RUB + 2 * HOUR, "what": "frozen"}, read(12, "48 F")]);
    assert!(!warm_words(frozen.clone(), false, 12.0));
    // What stands in the warmth is not frozen for long: from that reading on it counts.
    assert!(warm_words(frozen, false, 20.0));
    let later = json!([read(1, "38 F"), read(12, "48 F")]);
    assert!(warm_words(later.clone(), false, 20.0) && !warm_words(later, true, 20.0));
}

#[test]
fn a_power_cut() {
    let log = |back: Value, hours: f64| {
        let mut batch = cured(json!([breast("38 mm")]), "72 h");
        batch["fridge"] =
            json!([{"at": RUB, "what": "read", "reads": "38 F"}, {"at": RUB + 5 * HOUR, "what": "power_off"}, back]);
        clock_of(&batch, hours)
    };
    let says = |clock: &Value| {
        let notes = clock["notes"].as_array().unwrap();
        let note = notes.iter().find(|n| n["word"] == "The power was off").expect("a note");
        (
            note["mark"].as_str().unwrap().to_owned(),
            note["says"].as_str().unwrap().to_owned(),
        )
    };
    // Read when it came back: a straight line, 38 to 46 °F in 8 h; above 40 for 6 of them.
    let clock = log(
        json!({"at": RUB + 13 * HOUR, "what": "power_on", "reads": "46 F"}),
        20.0,
    );
    let (mark, text) = says(&clock);
    assert!(
        text.starts_with("8 h without power") && text.contains("6 h of it above"),
        "{text}"
    );
    assert!(
        mark == "stop" && text.contains("thrown out") && text.contains("straight line"),
        "{text}"
    );
    // Not read: towards 72 °F by a time constant that takes it from 34 to 40 °F in 4 h (quoted: about 4 hours).
    let constant = 4.0 / (38.0_f64 / 32.0).ln();
    let reached = |hours: f64| 72.0 - 34.0 * (-hours / constant).exp();
    let clock = log(json!({"at": RUB + 13 * HOUR, "what": "power_on"}), 20.0);
    let (_, text) = says(&clock);
    let celsius = (((reached(8.0) * 10.0).round() / 10.0 - 32.0) / 1.8 * 10.0).round() / 10.0;
    assert!(text.contains(&format!("up to {celsius} °C")), "{celsius}: {text}");
    // It crosses 40 °F after 1.4 h, so 6.5 of 8 h in half-hours.
    assert!(
        (reached(1.41) - 40.0).abs() < 0.05 && text.contains("6.5 h of it above"),
        "{text}"
    );
    assert!(text.contains("reckoned"), "{text}");
    // An hour of it stays cold.
    let (mark, text) = says(&log(json!({"at": RUB + 6 * HOUR, "what": "power_on"}), 20.0));
    assert!(mark == "care" && text.contains("go on"), "{text}");
    // Still off: it goes on warming until now.
    let (_, text) = says(&log(json!({"at": RUB + 5 * HOUR, "what": "power_off"}), 25.0));
    assert!(text.starts_with("20 h without power"), "{text}");
    // What was not read makes no cure faster; what was read does.
    let cold = log(json!({"at": RUB + 5 * HOUR, "what": "power_on", "reads": "38 F"}), 20.0);
    let likely = |clock: &Value| at(clock, 0, "colour", "likely");
    assert!((likely(&clock) - likely(&cold)).abs() < 1e-6);
    let warmed = log(
        json!({"at": RUB + 13 * HOUR, "what": "power_on", "reads": "54 F"}),
        13.0,
    );
    assert!(likely(&warmed) < likely(&cold) - 0.5);
    // From 38 to 54 °F in 8 h: above 40 for 7 of them. To 39: never.
    assert!(says(&warmed).1.contains("7 h of it above"), "{}", says(&warmed).1);
    let cool = log(
        json!({"at": RUB + 13 * HOUR, "what": "power_on", "reads": "39 F"}),
        13.0,
    );
    assert!(says(&cool).1.contains("go on") && !words(&cool).contains(&"It was too warm"));
}
