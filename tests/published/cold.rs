//! The cold of a batch in its cure by three thermometers: in the meat, in the refrigerator, in the room.
//!
//! Meat above 40 °F for two hours, or four hours without power that nobody read cold, is thrown out: FoodSafety.gov and CDC,
//! food safety in a power outage, quoted.

use crate::clock::{HOUR, RUB, breast, clock_of, cured};
use cure_reckoner_tests::{ok, settings, weighed_in};
use serde_json::{Value, json};

fn seen(hours: f64, what: &str, of: &str, reads: &str) -> Value {
    let mut entry = json!({"at": RUB + (hours * HOUR as f64) as i64, "what": what});
    if of != "fridge" {
        entry["of"] = json!(of);
    }
    if !reads.is_empty() {
        entry["reads"] = json!(reads);
    }
    entry
}

fn read(hours: f64, of: &str, reads: &str) -> Value {
    seen(hours, "read", of, reads)
}

fn kept(log: &[Value]) -> Value {
    let mut class = breast("38 mm");
    class["weight"] = json!("1330 g");
    let mut batch = weighed_in(cured(json!([class]), "72 h"), RUB - HOUR);
    batch["fridge"] = json!(log);
    batch
}

/// The one doubt of the cold, with its minutes; nothing where it was kept cold.
fn doubt(log: &[Value], hours: f64) -> Option<(String, u64)> {
    doubt_of(&kept(log), hours)
}

fn doubt_of(batch: &Value, hours: f64) -> Option<(String, u64)> {
    let now = RUB + (hours * HOUR as f64) as i64;
    let ask = json!({"standing": {"batch": batch, "settings": settings("0.1 g"), "now": now}});
    let doubts = ok(&ask)["doubts"].as_array().expect("doubts").clone();
    let of_cold = ["warm", "too_warm", "may_be_too_warm", "power_off"];
    let mut found = doubts
        .iter()
        .filter(|d| of_cold.contains(&d["kind"].as_str().expect("a kind")))
        .map(|d| {
            (
                d["kind"].as_str().expect("a kind").to_owned(),
                d["minutes"].as_u64().unwrap_or(0),
            )
        });
    let one = found.next();
    assert_eq!(found.next(), None, "one verdict: {doubts:?}");
    // The clock says the same of it as the doubt does.
    let notes = clock_of(batch, hours)["notes"].as_array().expect("notes").clone();
    for note in notes {
        match note["what"]["is"].as_str().expect("a note") {
            "power_off" => assert_eq!(note["what"]["fate"] == "kept", one.is_none(), "{note} beside {one:?}"),
            "too_warm" => assert!(one.is_some(), "{note} beside nothing"),
            _ => {}
        }
    }
    one
}

#[test]
fn a_warm_room_is_no_warm_meat() {
    assert_eq!(
        doubt(&[read(1.0, "fridge", "38 F"), read(2.0, "room", "75 F")], 9.0),
        None
    );
    assert_eq!(
        doubt(&[read(1.0, "fridge", "38 F"), read(2.0, "fridge", "48 F")], 4.5),
        Some(("too_warm".to_owned(), 150))
    );
}

#[test]
fn meat_that_is_read_cold_was_cold() {
    let warm = [read(1.0, "fridge", "38 F"), read(10.0, "fridge", "48 F")];
    assert_eq!(doubt(&warm, 10.0), Some(("may_be_too_warm".to_owned(), 540)));
    // The air is warm and the meat is not: nothing has happened to it so far.
    let cold = [&warm[..], &[read(10.1, "meat", "39 F")]].concat();
    assert_eq!(doubt(&cold, 10.1), None);
    // From then on it counts anew.
    assert_eq!(doubt(&cold, 11.1), Some(("warm".to_owned(), 60)));
    assert_eq!(doubt(&cold, 12.7), Some(("too_warm".to_owned(), 156)));
    // Long after it was cold again a cold piece proves nothing.
    let late = [&warm[..], &[read(13.0, "fridge", "38 F"), read(16.0, "meat", "38 F")]].concat();
    assert_eq!(doubt(&late, 17.0), Some(("too_warm".to_owned(), 180)));
    // Meat that was itself read warm was warm, and is cold only from then on.
    let itself = [read(1.0, "meat", "9 °C"), read(8.0, "meat", "3 °C")];
    assert_eq!(doubt(&itself, 9.0), Some(("too_warm".to_owned(), 420)));
    // Meat that was read warm is so until it is read cold, however cold the air about it.
    let meat = [read(1.0, "meat", "46 F"), read(1.5, "fridge", "37 F")];
    assert_eq!(doubt(&meat, 4.0).map(|d| d.0), Some("too_warm".to_owned()));
}

#[test]
fn what_was_read_when_the_power_came_back_counts() {
    let off = [read(0.0, "fridge", "38 F"), seen(5.0, "power_off", "fridge", "")];
    let back = |entry: Value| [&off[..], &[entry]].concat();
    // Eight hours that nobody read.
    let unread = back(seen(13.0, "power_on", "fridge", ""));
    assert_eq!(doubt(&unread, 14.0), Some(("power_off".to_owned(), 480)));
    // Read cold when it came back, in the refrigerator or in the meat: it was never warm.
    assert_eq!(doubt(&back(seen(13.0, "power_on", "fridge", "39 F")), 14.0), None);
    assert_eq!(doubt(&back(seen(13.0, "power_on", "meat", "39 F")), 14.0), None);
    assert_eq!(
        doubt(&[&unread[..], &[read(13.5, "meat", "39 F")]].concat(), 14.0),
        None
    );
    // Three hours later meat has had the time to cool again.
    let late = [&unread[..], &[read(16.0, "meat", "39 F")]].concat();
    assert_eq!(doubt(&late, 17.0), Some(("power_off".to_owned(), 480)));
    // Read warm: a straight line from 38 to 46 °F is above 40 for 6 of 8 hours.
    assert_eq!(
        doubt(&back(seen(13.0, "power_on", "fridge", "46 F")), 13.0),
        Some(("too_warm".to_owned(), 360))
    );
    // A door that is shut for three hours keeps cold; how cold it began nobody may know, so it may be asked about, not more.
    let short = doubt(&back(seen(8.0, "power_on", "fridge", "")), 9.0);
    assert!(short.is_none_or(|(kind, _)| kind == "warm"), "three hours");
    // Read cold in between, and again: eight hours, and never four of them unread.
    let watched = [
        &off[..],
        &[read(8.5, "fridge", "38 F"), seen(12.0, "power_on", "fridge", "")],
    ]
    .concat();
    assert!(doubt(&watched, 13.0).is_none_or(|(kind, _)| kind != "power_off" && kind != "too_warm"));
    // Two short cuts in a week are no long one.
    let twice = [
        &off[..],
        &[
            seen(7.5, "power_on", "meat", "38 F"),
            seen(50.0, "power_off", "fridge", ""),
            seen(52.0, "power_on", "fridge", ""),
        ],
    ]
    .concat();
    assert!(doubt(&twice, 53.0).is_none_or(|(kind, _)| kind == "warm"));
    // In a cold shed it does not warm at all while it is off, but four hours unread are four hours.
    let shed = [
        &off[..],
        &[read(5.0, "room", "36 F"), seen(8.9, "power_on", "fridge", "")],
    ]
    .concat();
    assert_eq!(doubt(&shed, 9.0), None);
}

/// It went into the refrigerator so many hours after the rub: two hours out of the cold are the most for any meat
/// (FoodSafety.gov, quoted), unless the meat, the room or a refrigerator was read cold by then.
#[test]
fn what_goes_in_late_is_asked_where_it_was() {
    let late = |hours: f64, log: &[Value]| {
        let mut batch = kept(log);
        let at = RUB + (hours * HOUR as f64) as i64;
        let ticks = batch["ticks"].as_array_mut().expect("ticks");
        ticks.push(json!({"of": "fridge", "at": at}));
        doubt_of(&batch, 24.0)
    };
    let held = |minutes: u64| Some(("may_be_too_warm".to_owned(), minutes));
    assert_eq!(late(0.0, &[]), None);
    assert_eq!(late(1.9, &[]), None);
    assert_eq!(late(2.0, &[]), held(120));
    assert_eq!(late(10.0, &[]), held(600));
    // A cold shed, a refrigerator that somebody read, meat read cold as it went in.
    assert_eq!(late(10.0, &[read(5.0, "room", "3 °C")]), None);
    assert_eq!(late(10.0, &[read(1.0, "fridge", "3 °C")]), None);
    assert_eq!(late(10.0, &[read(10.5, "meat", "4 °C")]), None);
    // Cold too late to say anything of it, or not cold.
    assert_eq!(late(10.0, &[read(12.0, "meat", "4 °C")]), held(600));
    assert_eq!(late(10.0, &[read(11.0, "fridge", "3 °C")]), held(600));
    assert_eq!(late(10.0, &[read(5.0, "room", "12 °C")]), held(600));
}

/// From two hours on it is asked when it went in.
#[test]
fn a_late_way_into_the_cold_is_asked_about() {
    let on = |hours: i64| {
        let ask = json!({"next": {"batches": [{"id": "b", "batch": kept(&[])}], "now": RUB + hours * HOUR,
            "settings": settings("0.1 g")}});
        let next = ok(&ask);
        let jobs = next["batches"][0]["jobs"].as_array().expect("jobs").clone();
        let cold = jobs.iter().find(|j| j["id"] == "fridge").cloned();
        cold.map(|job| job["does"]["on"].clone())
    };
    assert_eq!(on(1), Some(Value::Null));
    assert_eq!(on(3), Some(json!("3 h")));
}

#[test]
fn what_no_refrigerator_reads_is_asked_about_and_nothing_goes_by_it() {
    let asked = |units: &str, log: &[Value], hours: f64| {
        let batch = kept(log);
        let mut settings = settings("0.1 g");
        settings["units"] = json!(units);
        let now = RUB + (hours * HOUR as f64) as i64;
        let ask = json!({"cure_clock": {"batch": batch, "settings": settings, "now": now}});
        let asked = ok(&ask)["asked"].as_array().expect("questions").clone();
        let ask = json!({"standing": {"batch": batch, "settings": settings, "now": now}});
        let standing = ok(&ask);
        let doubts = standing["doubts"].as_array().expect("doubts").clone();
        let held = doubts
            .iter()
            .any(|d| d["kind"] == "cold_in_question" && d["weight"] == "holds");
        assert_eq!(held, !asked.is_empty(), "{doubts:?}");
        if held {
            for word in ["cured", "gift", "go_on"] {
                assert_eq!(standing["assured"][word], false, "{word}");
            }
            // It is neither warm nor frozen by it.
            assert_eq!(doubt_of(&batch, hours), None);
        }
        let one = |q: &Value| {
            let choices = q["choices"].as_array().expect("choices").clone();
            assert!(choices.len() <= 2, "{q}");
            (q["reads"].as_str().expect("a text").to_owned(), choices)
        };
        asked.iter().map(one).collect::<Vec<_>>()
    };
    let one = |reads: &str, choices: &[&str]| vec![(reads.to_owned(), choices.iter().map(|c| json!(c)).collect())];
    // Typed on a page in °F by somebody whose thermometer shows °C, and the other way round.
    assert_eq!(asked("us", &[read(1.0, "fridge", "4 °F")], 3.0), one("4 °F", &["4 °C"]));
    assert_eq!(asked("us", &[read(1.0, "fridge", "8 °F")], 3.0), one("8 °F", &["8 °C"]));
    let both = one("38 °C", &["38 °F", "3.8 °C"]);
    assert_eq!(asked("metric", &[read(1.0, "fridge", "38 °C")], 3.0), both);
    assert_eq!(
        asked("metric", &[read(1.0, "meat", "33 °C")], 3.0),
        one("33 °C", &["33 °F", "3.3 °C"])
    );
    // A room that is colder than ice would keep it cold without power.
    assert_eq!(
        asked("us", &[read(1.0, "room", "20 °F")], 3.0),
        one("20 °F", &["20 °C"])
    );
    assert_eq!(
        asked("metric", &[read(1.0, "room", "70 °C")], 3.0),
        one("70 °C", &["70 °F", "7 °C"])
    );
    // What a refrigerator can have, a freezer, and one without power.
    for fine in ["-2 °C", "1 °C", "3 °C", "8 °C", "15 °C"] {
        assert_eq!(asked("metric", &[read(1.0, "fridge", fine)], 1.0), []);
    }
    let frozen = [seen(1.0, "frozen", "fridge", ""), read(2.0, "fridge", "-18 °C")];
    assert_eq!(asked("metric", &frozen, 3.0), []);
    let off = [seen(1.0, "power_off", "fridge", ""), read(30.0, "fridge", "21 °C")];
    assert_eq!(asked("metric", &off, 30.0), []);
    // Whoever says that it is right is believed: meat that lay at 33 °C is thrown out.
    let mut sure = read(1.0, "meat", "33 °C");
    sure["sure"] = json!(true);
    assert_eq!(asked("metric", &[sure.clone()], 4.0), []);
    assert_eq!(doubt(&[sure], 4.0).map(|d| d.0), Some("too_warm".to_owned()));
}

#[test]
fn what_nobody_saw_was_not_kept_cold() {
    let of = |log: &[Value], hours: f64| {
        let batch = kept(log);
        let now = RUB + (hours * HOUR as f64) as i64;
        let ask = json!({"standing": {"batch": batch, "settings": settings("0.1 g"), "now": now}});
        let doubts = ok(&ask)["doubts"].as_array().expect("doubts").clone();
        let found = doubts.into_iter().filter(|d| d["kind"] == "cold_unseen");
        found
            .map(|d| (d["minutes"].as_u64().expect("minutes") / 1440, d["weight"] == "warns"))
            .collect::<Vec<_>>()
    };
    assert_eq!(of(&[], 72.0), []);
    assert_eq!(of(&[], 26.0 * 24.0), [(26, true)]);
    // One reading at its beginning is none of the rest; one of the room is none.
    assert_eq!(of(&[read(24.0, "fridge", "3 °C")], 26.0 * 24.0), [(25, true)]);
    assert_eq!(of(&[read(300.0, "room", "18 °C")], 26.0 * 24.0), [(26, true)]);
    let every: Vec<Value> = (0..9).map(|n| read(70.0 * f64::from(n), "fridge", "3 °C")).collect();
    assert_eq!(of(&every, 26.0 * 24.0), []);
}

#[test]
fn missed_turns_are_one_remark() {
    let turned = |ticks: u32, hours: f64| {
        let mut batch = kept(&[]);
        let all = batch["ticks"].as_array_mut().expect("ticks");
        for n in 0..ticks {
            all.push(json!({"of": format!("turn:0:{n}"), "at": RUB + i64::from(n + 1) * 12 * HOUR}));
        }
        let notes = clock_of(&batch, hours)["notes"].as_array().expect("notes").clone();
        let found = notes.into_iter().filter(|n| n["what"]["is"] == "turns_missed");
        found
            .map(|n| (n["what"]["missed"].as_u64(), n["what"]["due"].as_u64()))
            .collect::<Vec<_>>()
    };
    assert_eq!(turned(0, 26.0 * 24.0), [(Some(52), Some(52))]);
    assert_eq!(turned(40, 26.0 * 24.0), []);
    assert_eq!(turned(20, 26.0 * 24.0), [(Some(32), Some(52))]);
    assert_eq!(turned(0, 25.0), [], "two turns are nothing to speak of");
}
