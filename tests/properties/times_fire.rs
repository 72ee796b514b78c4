//! A batch over the fire, asked by every request that gives a time: the forecast's times, whichever heat runs.

use super::times::{HOUR, MINUTE, RECIPES, events};
use cure_reckoner_tests::{ok, settings, weighed_in};
use proptest::prelude::*;
use serde_json::{Value, json};
use std::collections::BTreeMap;

/// 2026-11-14 06:00:00 UTC, when each was rubbed.
const RUB: i64 = 1_794_636_000_000;

fn is_hot(step: &Value) -> bool {
    ["smoke", "cook"].contains(&step["do"].as_str().expect("what is done"))
}

/// Classes over the fire, read every so many minutes on their way to the cabinet; which step is ticked last; the hour.
fn batch() -> impl Strategy<Value = (Value, i64)> {
    let piece = (
        prop::sample::select(vec!["mallard-breast", "fallow-haunch", "boar-belly", "hare-legs"]),
        12u32..70,
        // Deg C of the cabinet less its own, at the pace of hours.
        0.4f64..5.0,
    );
    (
        0usize..RECIPES.len(),
        prop::collection::vec(piece, 1..4),
        // Below the target, at it, above it.
        60.0f64..130.0,
        (5i64..50, 1i64..14),
        0usize..5,
        (0i64..240, 0i64..200),
        prop::option::weighted(0.3, 40.0f64..130.0),
    )
        .prop_map(
            |(recipe, pieces, cabinet, (every, count), done, (late, later), second)| {
                let mut recipe = RECIPES[recipe].clone();
                let steps = recipe["steps"].as_array_mut().expect("steps");
                if let Some(at) = second {
                    // Another heat after the first.
                    let first = steps.iter().position(is_hot).expect("each is heated");
                    steps.insert(
                        first + 1,
                        json!({"do": "cook", "lasts": "50 min", "at": format!("{at:.0} °C")}),
                    );
                }
                let first = steps.iter().position(is_hot).expect("each is heated");
                // Now and then it is in its cure still, or one size was taken out before the rest.
                let last = if done == 4 {
                    0
                } else {
                    (first + done).saturating_sub(1).min(steps.len() - 1)
                };
                let lit = RUB + 70 * HOUR;
                let made: Vec<Value> = pieces
                .iter()
                .map(|(cut, thick, _)| {
                    json!({"cut": cut, "count": 2, "weight": "2400 g", "thickness": format!("{thick} mm")})
                })
                .collect();
                let mut readings = Vec::new();
                for n in 0..count {
                    let hours = (n * every) as f64 / 60.0;
                    let at = lit + n * every * MINUTE;
                    readings.push(json!({"temperature": format!("{cabinet:.0} °C"), "at": at}));
                    for (class, (_, _, pace)) in pieces.iter().enumerate() {
                        let warm = cabinet - (cabinet - 4.0) * (-hours / pace).exp();
                        readings.push(
                            json!({"class": class, "temperature": format!("{:.0} °C", warm.min(97.0)), "at": at}),
                        );
                    }
                }
                let batch = json!({"tag": "OF", "name": "Over the fire", "recipe": recipe, "pieces": made,
                "fire": {"fan": true, "at_risk": false, "readings": readings}});
                let mut batch = weighed_in(batch, RUB - HOUR);
                let ticks = batch["ticks"].as_array_mut().expect("ticks");
                ticks.push(json!({"of": "rub", "at": RUB}));
                if every % 2 == 0 {
                    ticks.push(json!({"of": "draw:0", "at": RUB + 40 * HOUR}));
                }
                for i in 1..=last {
                    let at = match i.checked_sub(first) {
                        None => RUB + 48 * HOUR + i64::try_from(i).expect("few") * HOUR,
                        Some(n) => lit + i64::try_from(n).expect("few") * late * MINUTE,
                    };
                    ticks.push(json!({"of": format!("step:{i}"), "at": at}));
                }
                (
                    batch,
                    lit + ((count - 1) * every).max(late * 2) * MINUTE + later * MINUTE,
                )
            },
        )
}

proptest! {
    #![proptest_config(super::cases(200))]

    /// The fire's own forecast, the jobs, the calendar file and the marks of the chill.
    #[test]
    fn the_forecast_is_the_time_of_all((batch, now) in batch()) {
        let (named, set) = (json!([{"id": "b", "batch": batch}]), settings("0.1 g"));
        let fire = ok(&json!({"fire_log": {"batch": batch, "now": now, "settings": set}}));
        let list = ok(&json!({"next": {"batches": named, "now": now, "rests": [], "settings": set}}));
        let state = &list["batches"][0];
        let times: BTreeMap<&str, &Value> = state["times"].as_array().expect("times").iter()
            .map(|t| (t["id"].as_str().expect("an id"), t)).collect();
        let at = |id: &str| times.get(id).and_then(|t| t["at"].as_i64());

        let steps = batch["recipe"]["steps"].as_array().expect("steps");
        let last = steps.iter().rposition(is_hot).expect("each is heated");
        let ticked = |i: usize| batch["ticks"].as_array().expect("ticks").iter().any(|t| t["of"] == format!("step:{i}"));
        let after = (last + 1..steps.len()).any(ticked);
        let cures = !(1..steps.len()).any(ticked);
        let drawn = batch["ticks"].as_array().expect("ticks").iter().any(|t| t["of"] == "draw:0");
        prop_assert_eq!(&fire["in_cure"], cures && (!drawn || batch["pieces"].as_array().expect("pieces").len() > 1));
        let mut out = Vec::new();
        for class in fire["classes"].as_array().expect("classes").iter().filter(|_| !after) {
            let place = class["record"]["place"].as_u64().expect("a place");
            let window = &class["outlook"]["window"];
            let pull = times.get(format!("pull:{place}").as_str());
            if cures && !(place == 0 && drawn) {
                // It was read while it is in its cure by the ticks: no time of the batch goes by that.
                prop_assert!(pull.is_none());
                continue;
            }
            prop_assert_eq!(window[0].as_i64(), pull.and_then(|p| p["at"].as_i64()), "{}", class);
            prop_assert_eq!(window[2].as_i64(), pull.and_then(|p| p["ends"].as_i64()));
            out.extend(window[1].as_i64());
        }
        if cures {
            let until = state["until"]["at"].as_i64();
            prop_assert_eq!(times["step:0"]["ends"].as_i64(), until);
            prop_assert!(at("step:1") >= until);
        } else if let Some(likely) = out.iter().copied().max() {
            let heat = times[format!("step:{last}").as_str()];
            prop_assert_eq!(heat["ends"].as_i64(), Some(likely.max(heat["at"].as_i64().expect("a time"))), "{}", heat);
            let next = if last + 1 == steps.len() { "end".to_owned() } else { format!("step:{}", last + 1) };
            let next = at(&next).expect("what comes after it");
            prop_assert!(next >= likely && next < likely + HOUR / 2, "{} after {}", next, likely);
            // No heat before it goes on beyond that.
            for (i, _) in steps.iter().enumerate().filter(|(i, s)| is_hot(s) && *i < last && !ticked(i + 1)) {
                let step = times[format!("step:{i}").as_str()];
                prop_assert!(step["ends"].as_i64() <= Some(likely.max(step["at"].as_i64().expect("a time"))), "{}", step);
            }
            if let Some(chill) = steps.iter().position(|s| s["do"] == "chill").filter(|_| !steps.iter().any(|s| s["do"] == "dry_out")) {
                for (key, hours) in [("two_hours", 2), ("cold", 6)] {
                    let id = format!("{key}:{chill}");
                    if let Some(mark) = at(&id) {
                        prop_assert_eq!(mark, next + hours * HOUR);
                    }
                }
            }
        }
        // One after the other, whatever is forecast.
        let all: Vec<i64> = (0..steps.len()).map(|i| at(&format!("step:{i}")).expect("a time")).collect();
        let from = (0..steps.len()).rev().find(|i| ticked(*i)).unwrap_or(0);
        prop_assert!(all[from..].is_sorted(), "{:?}", all);
        for job in state["jobs"].as_array().expect("jobs") {
            prop_assert_eq!(job["due"].as_i64(), at(job["id"].as_str().expect("an id")), "{}", job);
        }
        let file = ok(&json!({"calendar": {"batches": named, "now": now, "rests": [], "settings": set}}));
        for (id, from) in events(file["text"].as_str().expect("a file")) {
            let id = id.replace('-', ":");

            prop_assert_eq!(Some(from), at(&id), "{}", id);
        }
    }
}
