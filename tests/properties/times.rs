//! One batch, asked by every request that gives a time: the same times.

use cure_reckoner_tests::{ok, settings, weighed_in};
use proptest::prelude::*;
use serde_json::{Value, json};
use std::collections::BTreeMap;
use std::sync::LazyLock;

pub const MINUTE: i64 = 60_000;
pub const HOUR: i64 = 60 * MINUTE;
pub const DAY: i64 = 24 * HOUR;
/// 2026-11-14 00:00:00 UTC.
const NIGHT: i64 = 1_794_614_400_000;

pub static RECIPES: LazyLock<Vec<Value>> = LazyLock::new(|| {
    ok(&json!({"starters": {}}))["recipes"]
        .as_array()
        .expect("recipes")
        .clone()
});

fn piece() -> impl Strategy<Value = Value> {
    let cut = prop::sample::select(vec![
        "mallard-breast",
        "teal-breast",
        "goose-breast",
        "fallow-haunch",
        "boar-belly",
        "boar-belly-rind",
        "boar-loin",
        "hare-legs",
    ]);
    (
        cut,
        1u32..9,
        200u32..6_000,
        prop::option::weighted(0.9, 6u32..120),
        any::<bool>(),
        any::<bool>(),
    )
        .prop_map(|(cut, count, grams, thick, skin, thawed)| {
            json!({
                "cut": cut, "count": count, "weight": format!("{grams} g"), "skin": skin, "thawed": thawed,
                "thickness": thick.map(|mm| format!("{mm} mm"))
            })
        })
}

/// A batch in its cure, so far as it was ticked, and the hour.
fn batch() -> impl Strategy<Value = (Value, i64)> {
    (
        0usize..RECIPES.len(),
        prop::collection::vec(piece(), 1..4),
        any::<u32>(),
        0i64..1440,
        (0usize..4, 0i64..60, 0i64..400),
        prop::sample::select(vec![Value::Null, json!("clock"), json!("recipe")]),
        prop::option::weighted(0.2, 1i64..60),
    )
        .prop_map(|(recipe, pieces, unsaid, minute, (done, late, hours), by, frozen)| {
            let mut recipe = RECIPES[recipe].clone();
            for (i, step) in recipe["steps"].as_array_mut().expect("steps").iter_mut().enumerate() {
                // Now and then a recipe leaves a time out; what is turned has one.
                if unsaid >> (2 * i) & 3 == 0 && step["turn_every"].is_null() {
                    step.as_object_mut().expect("a step").remove("lasts");
                }
            }
            if unsaid >> 28 == 0 {
                recipe["cures"] = json!([]);
            }
            let rub = NIGHT + minute * MINUTE;
            let mut batch = json!({"tag": "TR", "name": "Trial", "recipe": recipe, "pieces": pieces});
            if !by.is_null() {
                batch["by"] = by;
            }
            let mut batch = weighed_in(batch, rub - HOUR);
            let mut ticks = vec![json!({"of": "rub", "at": rub})];
            let mut at = rub;
            for i in 1..=done {
                at += (7 * late + 13) * MINUTE * i64::try_from(i).expect("few") + 20 * HOUR;
                ticks.push(json!({"of": format!("step:{i}"), "at": at}));
            }
            batch["ticks"].as_array_mut().expect("ticks").extend(ticks);
            if let Some(from) = frozen {
                batch["fridge"] = json!([
                    {"at": rub + from * HOUR, "what": "frozen"},
                    {"at": rub + (from + 11) * HOUR, "what": "thawed", "reads": "38 F"}
                ]);
            }
            (batch, at + hours * HOUR)
        })
}

/// Nights of so many hours from an hour on; none where they have no hours.
fn nights() -> impl Strategy<Value = Vec<(i64, i64)>> {
    (19i64..26, prop::sample::select(vec![0i64, 7, 8, 9])).prop_map(|(from, long)| {
        let all = (-3..90).map(move |n| NIGHT + n * DAY + from * HOUR);
        all.filter(|_| long > 0)
            .map(|from| (from, from + long * HOUR))
            .collect()
    })
}

/// Starts of the events of a calendar file by what of the batch they are.
pub fn events(file: &str) -> BTreeMap<String, i64> {
    let text = file.replace("\r\n ", "");
    let events = text.split("BEGIN:VEVENT").skip(1);
    events
        .map(|event| {
            let of = |name: &str| {
                event
                    .lines()
                    .find_map(|l| l.strip_prefix(name))
                    .expect("a line")
                    .to_owned()
            };
            let uid = of("UID:b-");
            (
                uid.trim_end_matches("@cure-reckoner").to_owned(),
                moment(&of("DTSTART:")),
            )
        })
        .collect()
}

/// `20261114T063000Z` in milliseconds, by counting days: the years of these cases are few.
fn moment(utc: &str) -> i64 {
    let part = |from: usize, to: usize| utc[from..to].parse::<i64>().expect("digits");
    let (year, month, day) = (part(0, 4), part(4, 6), part(6, 8));
    let leap = |y: i64| (y % 4 == 0 && y % 100 != 0) || y % 400 == 0;
    let days: i64 = (1970..year).map(|y| 365 + i64::from(leap(y))).sum();
    let months = [31, 28 + i64::from(leap(year)), 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    let days = days
        + months
            .iter()
            .take(usize::try_from(month - 1).expect("a month"))
            .sum::<i64>()
        + day
        - 1;
    days * DAY + part(9, 11) * HOUR + part(11, 13) * MINUTE + part(13, 15) * 1000
}

proptest! {
    #![proptest_config(super::cases(300))]

    /// Cure clock, next, the week, the calendar file, the bag's label and the plan back.
    #[test]
    fn every_request_gives_the_same_times((batch, now) in batch(), nights in nights()) {
        let rests: Vec<Value> = nights.iter().map(|(from, to)| json!({"from": from, "to": to})).collect();
        let asleep = |at: i64| nights.iter().any(|(from, to)| (*from..*to).contains(&at));
        let named = json!([{"id": "b", "batch": batch}]);
        let set = settings("0.1 g");
        let list = ok(&json!({"next": {"batches": named, "now": now, "rests": rests, "settings": set}}));
        let state = &list["batches"][0];
        let times: BTreeMap<String, Value> = state["times"].as_array().expect("times").iter()
            .map(|t| (t["id"].as_str().expect("an id").to_owned(), t.clone())).collect();
        let at = |id: &str| times.get(id).and_then(|t| t["at"].as_i64());

        // The hour it comes out: the clock, the jobs, the label.
        let clock = ok(&json!({"cure_clock": {"batch": batch, "now": now, "rests": rests, "settings": set}}));
        prop_assert_eq!(&clock["until"], &state["until"]);
        let until = clock["until"]["at"].as_i64().expect("every starter stays in its cure");
        let begun = clock["begun"].as_i64().expect("it is begun");
        prop_assert!(clock["until"]["last"].as_i64().is_none_or(|last| until <= last), "{}", clock["until"]);
        prop_assert!(until == begun || until % (HOUR / 4) == 0 && (clock["until"]["kind"] != "forecast" || until % HOUR == 0), "{}", clock["until"]);
        prop_assert!(until == begun || !asleep(until), "{}", clock["until"]);
        for class in clock["until"]["classes"].as_array().expect("classes") {
            prop_assert!(class["until"].as_i64() <= Some(until) && class["from"].as_i64() <= class["until"].as_i64());
        }
        let labels = ok(&json!({"labels": {
            "batch": batch, "now": now, "frozen": false, "vacuum": false, "rests": rests, "settings": set
        }}));
        let bag = labels["papers"].as_array().expect("papers").iter().find(|p| p["kind"] == "bag").expect("a bag");
        prop_assert!(bag["until"].is_null() || bag["until"] == until, "{}", bag["until"]);
        let ticked = |i: usize| batch["ticks"].as_array().expect("ticks").iter().any(|t| t["of"] == format!("step:{i}"));
        let steps = batch["recipe"]["steps"].as_array().expect("steps").len();
        let last = (1..steps).rev().find(|i| ticked(*i)).unwrap_or(0);
        if last == 0 {
            prop_assert_eq!(at("step:1"), Some(until));
            prop_assert_eq!(times["step:0"]["ends"].as_i64(), Some(until));
        }

        // Jobs and the calendar file.
        for job in state["jobs"].as_array().expect("jobs") {
            prop_assert_eq!(job["due"].as_i64(), at(job["id"].as_str().expect("an id")), "{}", job);
        }
        let file = ok(&json!({"calendar": {"batches": named, "now": now, "rests": rests, "settings": set}}));
        for (id, from) in events(file["text"].as_str().expect("a file")) {
            let id = id.replace('-', ":");
            prop_assert_eq!(Some(from), at(&id), "{}", id);
        }

        // The plan of this batch alone, with room and time enough.
        let plan = ok(&json!({"plan_back": {"batches": named, "now": now, "settings": set, "wish": {
            "ready_by": now + 80 * DAY, "rests": rests, "room": [9, 9, 9]
        }}}));
        let plan = &plan["batches"][0];
        let ahead = |id: &String| id.starts_with("step:") && at(id) > Some(now);
        let rested = times.keys().filter(|id| ahead(id)).all(|id| !asleep(at(id).expect("a time")));
        if plan["fits"] == true && rested {
            for step in plan["steps"].as_array().expect("steps") {
                let i = step["step"].as_u64().expect("an index");
                let id = if i == steps as u64 { "end".to_owned() } else { format!("step:{i}") };
                if step["task"]["is"] == "turn" {
                    prop_assert!(times.values().any(|t| t["at"] == step["at"]), "{}", step);
                } else {
                    prop_assert_eq!(step["at"].as_i64(), at(&id), "{} {}", id, plan);
                }
            }
        }
    }
}
