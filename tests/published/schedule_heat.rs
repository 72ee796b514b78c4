//! The times of a batch that hangs over a fire which is read: what the readings forecast ends the last heat, and what
//! follows counts from there. The batch is that of `labels.rs`; how the forecast itself comes about is the matter of others.

use super::labels::{HOUR, LONG, OUT, lit, log, read, recipe, tick};
use super::schedule::{HOUR as H, RUB, at, rubbed};
use cure_reckoner_tests::{ok, settings};
use serde_json::{Value, json};

const MINUTE: i64 = HOUR / 60;
const SLOT: i64 = 15 * MINUTE;
/// Half an hour before the meat comes out, about.
const NOW: i64 = OUT - HOUR / 2;

/// Cured, these heats, chilled and packed.
fn heats(heats: &[(&str, &str)]) -> Value {
    let mut recipe = recipe();
    let mut steps = vec![json!({"do": "cure", "lasts": "240 h", "at": "3 °C"})];
    steps.extend(
        heats
            .iter()
            .map(|(act, lasts)| json!({"do": act, "lasts": lasts, "at": "110 °C"})),
    );
    steps.extend([json!({"do": "chill", "lasts": "6 h"}), json!({"do": "pack"})]);
    recipe["steps"] = json!(steps);
    recipe
}

/// Lit three hours before it comes out, and read on its way up.
fn hung(recipe: &Value) -> Value {
    read(lit("mallard-breast", recipe, LONG), &log("76 °C")[..3])
}

fn times(batch: &Value, now: i64) -> Vec<Value> {
    let list = ok(&json!({"next": {
        "batches": [{"id": "b", "batch": batch}], "now": now, "settings": settings("0.1 g")
    }}));
    list["batches"][0]["times"].as_array().expect("times").clone()
}

fn of<'a>(times: &'a [Value], id: &str) -> Option<&'a Value> {
    times.iter().find(|t| t["id"] == id)
}

/// Begin and end.
fn span(times: &[Value], id: &str) -> (i64, i64) {
    let one = of(times, id).unwrap_or_else(|| panic!("no {id}"));
    let at = |key: &str| one[key].as_i64().expect("a time");
    (at("at"), at("ends"))
}

/// It comes out within its window; the chill begins at the next quarter of an hour, and its marks count from there.
#[test]
fn the_last_heat_ends_where_the_readings_say() {
    let told = times(&hung(&heats(&[("smoke", "3 h")])), NOW);
    let (begun, out) = span(&told, "step:1");
    let window = span(&told, "pull:0");
    assert_eq!(begun, OUT - 3 * HOUR);
    assert!(NOW < out && window.0 <= out && out <= window.1, "{window:?} {out}");
    assert_eq!(of(&told, "step:1").expect("a heat")["kind"], "forecast");
    assert_eq!(of(&told, "pull:0").expect("a size")["step"], 1);
    let (chill, cold) = span(&told, "step:2");
    assert!((out..out + SLOT).contains(&chill), "{out} {chill}");
    assert_eq!(cold, chill + 6 * HOUR);
    // FDA Food Code 3-501.14 (published): 2 h and 6 h.
    for (id, hours) in [("two_hours:2", 2), ("cold:2", 6)] {
        assert_eq!(of(&told, id).expect("a mark")["at"], chill + hours * HOUR);
    }
}

/// What hangs goes from one heat into the next: a first heat ends by its recipe, unless all is out before; the last one ends
/// when all is out, whatever its recipe says.
#[test]
fn of_two_heats_the_last_ends_when_all_is_out() {
    let short = times(&hung(&heats(&[("smoke", "1 h"), ("cook", "2 h")])), NOW);
    assert_eq!(span(&short, "step:1"), (OUT - 3 * HOUR, OUT - 2 * HOUR));
    assert_eq!(of(&short, "step:1").expect("a heat")["kind"], "recipe");
    let (from, out) = span(&short, "step:2");
    let window = span(&short, "pull:0");
    assert_eq!(from, OUT - 2 * HOUR);
    assert!(window.0 <= out && out <= window.1 && out > NOW);
    assert_eq!(of(&short, "step:2").expect("a heat")["kind"], "forecast");

    let long = times(&hung(&heats(&[("smoke", "10 h"), ("cook", "2 h")])), NOW);
    let (_, out) = span(&long, "step:1");
    assert!(out < OUT + HOUR, "not ten hours");
    assert_eq!(span(&long, "step:2"), (out, out), "nothing is left for it");
    assert!((out..out + SLOT).contains(&span(&long, "step:3").0));
    // Begun again: the heat before it ended then, and no forecast is its end.
    let mut both = hung(&heats(&[("smoke", "10 h"), ("cook", "2 h")]));
    tick(&mut both, "step:2", OUT - HOUR);
    let both = times(&both, NOW);
    assert_ne!(of(&both, "step:1").expect("a heat")["kind"], "forecast");
    assert_eq!(span(&both, "step:2").0, OUT - HOUR);
    assert_eq!(of(&both, "step:2").expect("a heat")["kind"], "forecast");
}

/// Of two sizes the slower one says when all is out.
#[test]
fn all_is_out_with_the_slowest_size() {
    let mut batch = hung(&heats(&[("smoke", "3 h")]));
    let quick = span(&times(&batch, NOW), "step:1").1;
    let piece = batch["pieces"][0].clone();
    batch["pieces"].as_array_mut().expect("sizes").push(piece);
    let readings = batch["fire"]["readings"].as_array_mut().expect("readings");
    let cooler = [(3, "4 °C"), (2, "15 °C"), (1, "27 °C")];
    readings.extend(cooler.map(|(hours, reads)| json!({"class": 1, "temperature": reads, "at": OUT - hours * HOUR})));
    readings.sort_by_key(|r| r["at"].as_i64());
    let told = times(&batch, NOW);
    let (out, slow) = (span(&told, "step:1").1, span(&told, "pull:1"));
    assert!(out > quick + HOUR / 2, "{quick} {out}");
    assert!(slow.0 <= out && out <= slow.1);
}

/// Once the chill is begun or the batch is put away nothing is to come out; a size that is over the fire while the rest is
/// in its cure ends no step.
#[test]
fn what_is_out_is_not_forecast() {
    let batch = hung(&heats(&[("smoke", "3 h")]));
    assert!(of(&times(&batch, NOW), "pull:0").is_some());
    for id in ["step:2", "end"] {
        let mut over = batch.clone();
        tick(&mut over, id, OUT);
        assert!(of(&times(&over, OUT + HOUR), "pull:0").is_none(), "{id}");
    }
    let mut early = batch;
    let piece = early["pieces"][0].clone();
    early["pieces"].as_array_mut().expect("sizes").push(piece);
    let ticks = early["ticks"].as_array_mut().expect("ticks");
    ticks.retain(|t| t["of"] != "step:1");
    tick(&mut early, "draw:0", OUT - 4 * HOUR);
    let told = times(&early, NOW);
    assert_ne!(of(&told, "step:1").expect("a heat")["kind"], "forecast");
}

/// What is overdue keeps its hour, and what follows waits for it. The batch is that of `schedule.rs`: rinsed after 36 hours,
/// then dried.
#[test]
fn what_is_overdue_keeps_its_hour() {
    let list = at(&rubbed(&[]), 40);
    let told = list["batches"][0]["times"].as_array().expect("times");
    let hour = |id: &str| (of(told, id).expect("a step")["at"].as_i64().expect("a time") - RUB) / H;
    assert_eq!(hour("step:1"), 36);
    assert!(hour("step:2") >= 40, "{}", hour("step:2"));
}

/// What may be done is told as early from half an hour on.
#[test]
fn half_an_hour_is_early() {
    let early = |minutes: i64| {
        let list = ok(&json!({"next": {
            "batches": [{"id": "b", "batch": rubbed(&[])}], "now": RUB + 12 * H - minutes * MINUTE, "settings": settings("0.1 g")
        }}));
        let jobs = list["batches"][0]["jobs"].as_array().expect("jobs").clone();
        let turn = jobs.iter().find(|j| j["id"] == "turn:0:0").expect("a turn");
        turn["early"].clone()
    };
    assert_eq!((early(30), early(29)), (json!("30 min"), Value::Null));
}

/// With the first turn done the second is asked for when it is due.
#[test]
fn the_turn_after_one_that_is_done() {
    let list = at(&rubbed(&[("turn:0:0", 12)]), 25);
    let jobs = list["jobs"].as_array().expect("jobs");
    assert!(jobs.iter().any(|j| j["id"] == "turn:0:1"), "{jobs:?}");
    assert!(!jobs.iter().any(|j| j["id"] == "turn:0:0"));
}

/// Cold smoke has cautions of its own, and so has heat before drying out (FSIS, jerky, published: cooked before it is dried).
#[test]
fn each_heat_has_its_cautions() {
    let of_smoke = |smoke: Value, then: Option<Value>| {
        let mut batch = rubbed(&[]);
        let mut steps = vec![json!({"do": "cure", "lasts": "36 h", "at": "3 °C"}), smoke];
        steps.extend(then);
        batch["recipe"]["steps"] = json!(steps);
        let list = at(&batch, 1);
        let jobs = list["batches"][0]["jobs"].as_array().expect("jobs").clone();
        let job = jobs.iter().find(|j| j["id"] == "step:1").expect("a job");
        job["cautions"].clone()
    };
    let hot = || json!({"do": "smoke", "lasts": "3 h", "at": "110 °C"});
    let dry = || Some(json!({"do": "dry_out", "lasts": "5 h", "at": "70 °C"}));
    assert_eq!(
        of_smoke(json!({"do": "smoke", "lasts": "6 h", "at": "25 °C"}), None),
        json!(["cold-smoke-time", "cold-smoke"])
    );
    assert_eq!(of_smoke(hot(), dry()), json!(["jerky-heat"]));
    let plain = of_smoke(hot(), None);
    for key in ["cold-smoke", "cold-smoke-time", "jerky-heat"] {
        assert!(!plain.as_array().expect("cautions").contains(&json!(key)), "{key}");
    }
}
