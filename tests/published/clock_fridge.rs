//! The cure clock by the refrigerator: frozen hours, warm ones, hours without power.

use crate::clock::{HOUR, RUB, at, breast, clock_of, cured, note, noted};
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
    assert!(noted(&frozen).contains(&"stood"));
    // Below 34 °F it stands too; at 34 it runs.
    let cold = log(json!([read(0, "38 F"), read(5, "33.9 F"), read(15, "38 F")]), 60.0);
    assert!((likely(&cold) - likely(&even) - 10.0).abs() < 0.02);
    assert!(!noted(&log(json!([read(0, "34 F")]), 60.0)).contains(&"stood"));
    // A warm night shortens it by exp(E/R (1/T1 - 1/T2)), E = 25 kJ/mol: 9 h at 46 °F count as 9 x 1.16 h at 38.
    let warm = log(json!([read(0, "38 F"), read(5, "46 F"), read(14, "38 F")]), 60.0);
    let kelvin = |f: f64| (f - 32.0) / 1.8 + 273.15;
    let gain = 9.0 * ((25_000.0 / 8.314 * (1.0 / kelvin(38.0) - 1.0 / kelvin(46.0))).exp() - 1.0);
    assert!((likely(&even) - likely(&warm) - gain).abs() < 0.02, "{gain}");
    assert!(noted(&warm).contains(&"too_warm"));
    assert!(!noted(&log(json!([read(0, "40 F")]), 60.0)).contains(&"too_warm"));
    let long = &note(&warm, "too_warm")["what"];
    assert_eq!(long["warm"], "9 h", "{long}");
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
        let note = note(&clock_of(&batch, hours), "too_warm").clone();
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
            note["what"].clone(),
            (state["held"].clone(), warm[0].clone(), jobs > 0),
        )
    };
    let doubt = |kind: &str, weight: &str, minutes: u32| (json!(kind), json!(weight), json!(minutes));
    // A night that nobody read: as long as it may have been. It is held, and nothing on it goes on.
    let (mark, what, standing) = warm_at(9 * 60, 0);
    assert_eq!(mark, "stop");
    let warm = |warm: Option<&str>, unread: &str, discard: bool| json!({"is": "too_warm", "warm": warm, "unread": unread, "out": null, "discard": discard});
    assert_eq!(what, warm(None, "9 h", true));
    assert_eq!(standing, (json!(true), doubt("may_be_too_warm", "holds", 540), false));
    // Half an hour since it was cold, and twenty minutes since.
    let (mark, what, standing) = warm_at(30, 20);
    assert_eq!(mark, "care");
    assert_eq!(what, warm(Some("20 min"), "30 min", false));
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
    let is_warm = |readings: Value, rinsed: bool, hours: f64| {
        let mut batch = cured(json!([breast("38 mm")]), "72 h");
        batch["fridge"] = readings;
        if rinsed {
            let ticks = batch["ticks"].as_array_mut().unwrap();
            ticks.push(json!({"of": "step:1", "at": RUB + 2 * HOUR}));
        }
        noted(&clock_of(&batch, hours)).contains(&"too_warm")
    };
    let read = |hours: i64, reads: &str| json!({"at": RUB + hours * HOUR, "what": "read", "reads": reads});
    let frozen = json!([read(1, "38 F"), {"at": RUB + 2 * HOUR, "what": "frozen"}, read(12, "48 F")]);
    assert!(!is_warm(frozen.clone(), false, 12.0));
    // What stands in the warmth is not frozen for long: from that reading on it counts.
    assert!(is_warm(frozen, false, 20.0));
    let later = json!([read(1, "38 F"), read(12, "48 F")]);
    assert!(is_warm(later.clone(), false, 20.0) && !is_warm(later, true, 20.0));
}

#[test]
fn a_power_cut() {
    let log = |back: Value, hours: f64| {
        let mut batch = cured(json!([breast("38 mm")]), "72 h");
        batch["fridge"] =
            json!([{"at": RUB, "what": "read", "reads": "38 F"}, {"at": RUB + 5 * HOUR, "what": "power_off"}, back]);
        clock_of(&batch, hours)
    };
    let told = |clock: &Value| {
        let note = note(clock, "power_off");
        (note["mark"].as_str().unwrap().to_owned(), note["what"].clone())
    };
    // Read when it came back: a straight line, 38 to 46 °F in 8 h; above 40 for 6 of them.
    let clock = log(
        json!({"at": RUB + 13 * HOUR, "what": "power_on", "reads": "46 F"}),
        20.0,
    );
    let (mark, what) = told(&clock);
    assert_eq!((&what["time"], &what["warm"]), (&json!("8 h"), &json!("6 h")), "{what}");
    assert_eq!(mark, "stop");
    assert_eq!(
        (&what["fate"], &what["guessed"]),
        (&json!("discard"), &json!(false)),
        "{what}"
    );
    // Not read: towards 72 °F by a time constant that takes it from 34 to 40 °F in 4 h (quoted: about 4 hours).
    let constant = 4.0 / (38.0_f64 / 32.0).ln();
    let reached = |hours: f64| 72.0 - 34.0 * (-hours / constant).exp();
    let clock = log(json!({"at": RUB + 13 * HOUR, "what": "power_on"}), 20.0);
    let (_, what) = told(&clock);
    let celsius = (((reached(8.0) * 10.0).round() / 10.0 - 32.0) / 1.8 * 10.0).round() / 10.0;
    let highest = what["highest"].as_str().unwrap();
    assert!(highest.starts_with(&format!("{celsius} °C")), "{celsius}: {what}");
    // It crosses 40 °F after 1.4 h, so 6.5 of 8 h in half-hours.
    assert!((reached(1.41) - 40.0).abs() < 0.05 && what["warm"] == "6.5 h", "{what}");
    assert_eq!(what["guessed"], true, "{what}");
    // An hour of it stays cold.
    let (mark, what) = told(&log(json!({"at": RUB + 6 * HOUR, "what": "power_on"}), 20.0));
    assert!(mark == "care" && what["fate"] == "kept", "{what}");
    // Still off: it goes on warming until now.
    let (_, what) = told(&log(json!({"at": RUB + 5 * HOUR, "what": "power_off"}), 25.0));
    assert_eq!(
        (&what["time"], &what["guessed"]),
        (&json!("20 h"), &json!(true)),
        "{what}"
    );
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
    assert_eq!(told(&warmed).1["warm"], "7 h");
    let cool = log(
        json!({"at": RUB + 13 * HOUR, "what": "power_on", "reads": "39 F"}),
        13.0,
    );
    assert!(told(&cool).1["fate"] == "kept" && !noted(&cool).contains(&"too_warm"));
}
