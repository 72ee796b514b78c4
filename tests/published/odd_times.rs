//! Times that cannot be right: what nobody can have done, and what must not be asked about. Common practice, no source:
//! nothing is rubbed before it is killed, or smoked before it is rubbed.

use cure_reckoner_tests::{batch, ok, rub, settings, weighed_in};
use serde_json::{Value, json};

const HOUR: i64 = 3_600_000;
/// 14 November 2026, midnight in Greenwich.
const KILLED: i64 = 1_794_614_400_000;

/// Cure, rinse, smoke; killed on 14 November, all ticked at these hours after that midnight.
fn ticked(ticks: &[(&str, i64)]) -> Value {
    let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
    recipe["steps"] = json!([
        {"do": "cure", "lasts": "36 h"}, {"do": "rinse"}, {"do": "smoke", "at": "90 °C", "until": "74 °C"},
    ]);
    let mut made = weighed_in(batch(&recipe, 16, "1480 g"), KILLED + 9 * HOUR);
    made["killed"] = json!("2026-11-14");
    let list = made["ticks"].as_array_mut().expect("ticks");
    list.retain(|tick| tick["of"] != "rub");
    list.extend(
        ticks
            .iter()
            .map(|(of, hours)| json!({"of": of, "at": KILLED + hours * HOUR})),
    );
    made
}

/// What is asked about at so many hours after that midnight: which time, what is odd, than what.
fn asked(batch: &Value, hours: i64, east: Option<i32>) -> Vec<(String, String, Value)> {
    let mut request = json!({
        "batches": [{"id": "b", "batch": batch}], "now": KILLED + hours * HOUR, "settings": settings("0.1 g"),
    });
    if let Some(east) = east {
        request["east"] = json!(east);
    }
    let list = ok(&json!({"next": request}))["batches"][0]["odd_times"].clone();
    let text = |one: &Value, key: &str| one[key].as_str().unwrap_or_default().to_owned();
    let odd = list.as_array().expect("a list");
    odd.iter()
        .map(|one| (text(one, "of"), text(one, "odd"), one["than"].clone()))
        .collect()
}

fn one(of: &str, odd: &str, than: Value) -> Vec<(String, String, Value)> {
    vec![(of.to_owned(), odd.to_owned(), than)]
}

/// Everything in its order asks nothing, on the day of the kill and days later.
#[test]
fn what_is_in_order_is_not_asked_about() {
    let good = ticked(&[("rub", 18), ("turn:0:0", 30), ("step:1", 60), ("step:2", 61)]);
    for east in [None, Some(0), Some(-480), Some(780)] {
        assert_eq!(asked(&good, 62, east), []);
        assert_eq!(asked(&good, 62 + 24 * 300, east), []);
    }
    // Two clocks of one house: a minute apart is nothing.
    let mut other = ticked(&[("rub", 18), ("step:1", 18)]);
    other["ticks"].as_array_mut().expect("ticks").last_mut().expect("one")["at"] = json!(KILLED + 18 * HOUR - 60_000);
    assert_eq!(asked(&other, 19, Some(0)), []);
}

/// The day begins where the cook is: killed on the 14th, rubbed at 01:00 in New Zealand, which is noon of the 13th in
/// Greenwich. On the evening of the 13th, there, nothing was dead yet.
#[test]
fn a_rub_before_the_kill() {
    let night = ticked(&[("rub", -12)]);
    assert_eq!(asked(&night, 20, Some(780)), []);
    assert_eq!(asked(&night, 20, Some(0)), one("rub", "before_kill", Value::Null));
    let evening = ticked(&[("rub", -14)]);
    assert_eq!(asked(&evening, 20, Some(780)), one("rub", "before_kill", Value::Null));
    // Nobody says where it is: only what is wrong in every place.
    assert_eq!(asked(&evening, 20, None), []);
    assert_eq!(
        asked(&ticked(&[("rub", -15)]), 20, None),
        one("rub", "before_kill", Value::Null)
    );
}

/// The clock was ahead and is right now, or is behind now: what was ticked by it is still to come.
#[test]
fn a_time_that_is_still_to_come() {
    let batch = ticked(&[("rub", 18), ("step:1", 90)]);
    assert_eq!(asked(&batch, 89, Some(0)), one("step:1", "to_come", Value::Null));
    assert_eq!(asked(&batch, 90, Some(0)), []);
    let mut fridge = ticked(&[("rub", 18)]);
    fridge["fridge"] = json!([{"at": KILLED + 30 * HOUR, "what": "read", "reads": "3 °C"}]);
    assert_eq!(asked(&fridge, 29, Some(0)), one("fridge", "to_come", Value::Null));
    assert_eq!(asked(&fridge, 31, Some(0)), []);
    // The day of the kill itself: in Greenwich it is to come until midnight, in Alaska nine hours longer.
    let kill = ticked(&[]);
    assert_eq!(asked(&kill, -1, Some(0)), one("killed", "to_come", Value::Null));
    assert_eq!(asked(&kill, 0, Some(0)), []);
    assert_eq!(asked(&kill, 8, Some(-540)), one("killed", "to_come", Value::Null));
    assert_eq!(asked(&kill, -13, None), []);
    assert_eq!(asked(&kill, -15, None), one("killed", "to_come", Value::Null));
}

/// The clock was put back between two ticks: days jumped.
#[test]
fn a_step_before_the_one_before_it() {
    let rinsed = ticked(&[("rub", 60), ("step:1", 36)]);
    assert_eq!(asked(&rinsed, 70, Some(0)), one("step:1", "earlier", json!("rub")));
    // Against the latest of what comes before it, and each once.
    let smoked = ticked(&[("rub", 18), ("step:1", 90), ("step:2", 64)]);
    assert_eq!(asked(&smoked, 91, Some(0)), one("step:2", "earlier", json!("step:1")));
    let turned = ticked(&[("rub", 60), ("turn:0:0", 40)]);
    assert_eq!(asked(&turned, 70, Some(0)), one("turn:0:0", "earlier", json!("rub")));
    let drawn = ticked(&[("rub", 60), ("draw:0", 40)]);
    assert_eq!(asked(&drawn, 70, Some(0)), one("draw:0", "earlier", json!("rub")));
    let ended = ticked(&[("rub", 18), ("step:1", 60), ("step:2", 64), ("end", 50)]);
    assert_eq!(asked(&ended, 91, Some(0)), one("end", "earlier", json!("step:2")));
}

/// Rubbed weeks after the kill: frozen meanwhile, or the clock jumped. Said that it was frozen, it is so.
#[test]
fn a_rub_weeks_after_the_kill() {
    let mut late = ticked(&[("rub", 24 * 31)]);
    assert_eq!(
        asked(&late, 24 * 32, Some(0)),
        one("rub", "long_after_kill", Value::Null)
    );
    assert_eq!(asked(&ticked(&[("rub", 24 * 29)]), 24 * 32, Some(0)), []);
    late["pieces"][0]["thawed"] = json!(true);
    assert_eq!(asked(&late, 24 * 32, Some(0)), []);
}

/// What is put away is not asked about any more.
#[test]
fn a_closed_batch_is_left_alone() {
    let mut closed = ticked(&[("rub", 60), ("step:1", 36)]);
    closed["closed"] = json!(true);
    assert_eq!(asked(&closed, 70, Some(0)), []);
}

/// How long it lay rests on its times: a rub that was put into the past by a wrong clock does not make it cured, and no
/// date is given.
#[test]
fn an_impossible_time_assures_nothing_that_rests_on_it() {
    let standing = |batch: &Value, hours: i64| {
        ok(&json!({"standing": {"batch": batch, "now": KILLED + hours * HOUR, "settings": settings("0.1 g")}}))
    };
    let cured = |batch: &Value, hours: i64| standing(batch, hours)["assured"]["cured"].as_bool();
    let mut early = ticked(&[("rub", 12)]);
    early["pieces"][0]["thickness"] = json!("12 mm");
    // Days that nobody looked at the fridge count as cured to no hour.
    assert_eq!(cured(&early, 12 + 24 * 6), Some(false), "six days unseen");
    early["fridge"] = json!([
        {"at": KILLED + 14 * HOUR, "what": "read", "reads": "3 °C"},
        {"at": KILLED + 84 * HOUR, "what": "read", "reads": "3 °C"},
    ]);
    assert_eq!(cured(&early, 12 + 24 * 6), Some(true), "six days of a thin breast");
    let jumped = |rub: i64| {
        let mut jumped = early.clone();
        let ticks = jumped["ticks"].as_array_mut().expect("ticks");
        ticks.last_mut().expect("the rub")["at"] = json!(KILLED + rub * HOUR);
        jumped
    };
    assert_eq!(cured(&jumped(-24 * 5), 18), Some(false), "five days before the kill");
    let doubts = standing(&jumped(-24 * 5), 18)["doubts"].clone();
    let kinds: Vec<&str> = doubts
        .as_array()
        .into_iter()
        .flatten()
        .filter_map(|d| d["kind"].as_str())
        .collect();
    assert!(kinds.contains(&"time_in_question"), "{kinds:?}");
    assert!(!doubts.to_string().contains("\"clears\":\"nothing\""));
}
