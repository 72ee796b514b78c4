//! The calendar file, read by a parser that is not ours, and by the rules of RFC 5545.

use cure_reckoner_tests::{batch, ok, rub, settings, weighed_in};
use ical::parser::ical::component::IcalEvent;
use serde_json::{Value, json};
use std::collections::BTreeMap;

const HOUR: i64 = 3_600_000;
/// 2026-11-14 06:30:00 UTC, reckoned with `date -u`.
const RUB: i64 = 1_794_637_800_000;

fn cured(ticks: &[(&str, i64)]) -> Value {
    let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
    recipe["steps"] = json!([
        {"do": "cure", "lasts": "36 h", "turn_every": "12 h", "at": "3 °C"},
        {"do": "rinse"},
        {"do": "dry", "lasts": "24 h"},
        {"do": "pack"}
    ]);
    let mut batch = batch(&recipe, 16, "1480 g");
    batch["ticks"] = json!([{"of": "rub", "at": RUB}]);
    let all = batch["ticks"].as_array_mut().expect("ticks");
    all.extend(ticks.iter().map(|(of, h)| json!({"of": of, "at": RUB + h * HOUR})));
    // Nothing rings for a batch of which nobody knows whether the cure is in.
    weighed_in(batch, RUB - HOUR)
}

fn file(batch: &Value, hours: i64) -> Value {
    later(&[("k3-1", batch)], hours, &json!([]))
}

/// A file after one that left `earlier` in the calendar.
fn later(batches: &[(&str, &Value)], hours: i64, earlier: &Value) -> Value {
    let named: Vec<_> = batches
        .iter()
        .map(|(id, batch)| json!({"id": id, "batch": batch}))
        .collect();
    let now = RUB + hours * HOUR;
    ok(&json!({"calendar": {"batches": named, "earlier": earlier, "now": now, "settings": settings("0.1 g")}}))
}

fn text(batch: &Value, hours: i64) -> String {
    file(batch, hours)["text"].as_str().expect("a file").to_owned()
}

/// Events by UID.
fn events(text: &str) -> BTreeMap<String, IcalEvent> {
    let mut found: Vec<_> = ical::IcalParser::new(text.as_bytes()).collect();
    assert_eq!(found.len(), 1, "one calendar");
    let calendar = found.remove(0).expect("the parser takes it");
    calendar.events.into_iter().map(|e| (of(&e, "UID"), e)).collect()
}

fn of(event: &IcalEvent, name: &str) -> String {
    let found = event.properties.iter().find(|p| p.name == name);
    found.and_then(|p| p.value.clone()).unwrap_or_default()
}

#[test]
fn every_job_has_its_time_and_an_alarm() {
    let events = events(&text(&cured(&[]), 1));
    let uids: Vec<_> = events.keys().cloned().collect();
    let expected = ["end", "step-0", "step-1", "step-2", "step-3", "turn-0-0", "turn-0-1"];
    let live = |uid: &String| of(&events[uid], "STATUS") == "CONFIRMED";
    assert_eq!(
        uids.iter().filter(|u| live(u)).cloned().collect::<Vec<_>>(),
        expected.map(|u| format!("k3-1-{u}@cure-reckoner"))
    );
    // 36 h after 14 Nov 06:30 is 15 Nov 18:30.
    let rinse = &events["k3-1-step-1@cure-reckoner"];
    assert_eq!(of(rinse, "DTSTART"), "20261115T183000Z");
    assert_eq!(of(rinse, "DTSTAMP"), "20261114T073000Z");
    assert_eq!(rinse.alarms.len(), 1);
    let alarm = |name: &str| {
        let found = rinse.alarms[0].properties.iter().find(|p| p.name == name);
        found.and_then(|p| p.value.clone()).unwrap_or_default()
    };
    assert_eq!((alarm("ACTION"), alarm("TRIGGER")), ("DISPLAY".into(), "PT0S".into()));
    // The cure is on: nothing rings for it.
    assert!(events["k3-1-step-0@cure-reckoner"].alarms.is_empty());
    assert_eq!(file(&cured(&[]), 1)["jobs"], 5);
}

/// RFC 5545 3.1: no line over 75 octets, each ended by CR LF, none broken within a character; unfolding gives the text.
#[test]
fn long_lines_are_folded_and_odd_characters_escaped() {
    let odd = format!("Odd; signs, \\ and ÄÖÜ {}", "🦆".repeat(24));
    let words = json!({
        "two_hours": "", "cold": "", "ready": "", "done": "Through",
        "jobs": [{"batch": "k3-1", "id": "step:1", "head": "Off", "text": odd}, {"batch": "k3-1", "id": "step:0", "head": "In", "text": ""}]
    });
    let file = ok(&json!({"calendar": {
        "batches": [{"id": "k3-1", "batch": cured(&[])}], "words": words, "now": RUB + HOUR, "settings": settings("0.1 g")
    }}));
    let text = file["text"].as_str().expect("a file");
    assert!(text.ends_with("END:VCALENDAR\r\n"));
    assert!(text.split("\r\n").all(|line| line.len() <= 75 && !line.contains('\n')));
    assert!(
        text.split("\r\n").any(|line| line.starts_with(' ')),
        "something was folded"
    );
    let unfolded = text.replace("\r\n ", "");
    let note = format!(r"Odd\; signs\, \\ and ÄÖÜ {}", "🦆".repeat(24));
    assert!(unfolded.contains(&note), "{unfolded}");
    let events = events(text);
    assert!(of(&events["k3-1-step-1@cure-reckoner"], "DESCRIPTION").contains("🦆🦆🦆"));
    // The page's words stand in it; what has none stands by its id.
    let summaries =
        ["step-0", "step-1", "step-2"].map(|id| of(&events[&format!("k3-1-{id}@cure-reckoner")], "SUMMARY"));
    let tag = of(&events["k3-1-step-1@cure-reckoner"], "SUMMARY").replace(" Off", "");
    assert_eq!(
        summaries,
        [
            format!("Through: {tag} In"),
            format!("{tag} Off"),
            format!("{tag} step:2")
        ]
    );
}

/// RFC 5545 3.8.7.4: the same UID with a higher SEQUENCE is a revision of the same event.
#[test]
fn a_later_export_updates_and_cancels() {
    let first = file(&cured(&[]), 1);
    let before = events(first["text"].as_str().expect("a file"));
    // Rinsed 4 h late, with the second turn never done.
    let rinsed = cured(&[("turn:0:0", 12), ("step:1", 40)]);
    let second = later(&[("k3-1", &rinsed)], 41, &first["sent"]);
    assert_eq!(second["cancelled"], 1);
    let after = events(second["text"].as_str().expect("a file"));
    assert_eq!(before.keys().collect::<Vec<_>>(), after.keys().collect::<Vec<_>>());
    for uid in before.keys() {
        let number = |e: &BTreeMap<_, _>| of(&e[uid], "SEQUENCE").parse::<i32>().expect("a number");
        assert!(number(&after) > number(&before), "{uid}");
    }
    let dry = "k3-1-step-2@cure-reckoner";
    assert_eq!(
        (of(&before[dry], "DTSTART"), of(&after[dry], "DTSTART")),
        ("20261115T183000Z".into(), "20261115T223000Z".into())
    );
    assert_eq!(of(&after["k3-1-turn-0-1@cure-reckoner"], "STATUS"), "CANCELLED");
    assert!(
        after["k3-1-step-1@cure-reckoner"].alarms.is_empty(),
        "what is done does not ring"
    );
}

/// A batch that is put away, held or deleted rings no more; a month after it was due a job is let be.
#[test]
fn what_is_put_away_held_or_deleted_is_cancelled() {
    let mut away = cured(&[]);
    away["closed"] = json!(true);
    let mut held = cured(&[]);
    held["put_in"] = json!({"amount": "3 tbsp", "nitrite": "6.25 %"});
    let first = file(&cured(&[]), 1);
    assert_eq!(first["sent"].as_array().map(Vec::len), Some(7));
    for batches in [vec![("k3-1", &away)], vec![("k3-1", &held)], Vec::new()] {
        let off = later(&batches, 2, &first["sent"]);
        assert_eq!((&off["jobs"], &off["cancelled"]), (&json!(0), &json!(7)));
        let gone = events(off["text"].as_str().expect("a file"));
        assert!(
            gone.values()
                .all(|e| of(e, "STATUS") == "CANCELLED" && e.alarms.is_empty())
        );
        let sequence = |file: &Value| {
            let events = events(file["text"].as_str().expect("a file"));
            of(&events["k3-1-step-1@cure-reckoner"], "SEQUENCE")
                .parse::<i64>()
                .expect("a number")
        };
        assert!(sequence(&off) > sequence(&first));
        assert_eq!(off["sent"], json!([]));
        assert_eq!(later(&batches, 24 * 40, &first["sent"])["cancelled"], 0);
    }
    // Taken up again, it rings again.
    let off = later(&[("k3-1", &away)], 2, &first["sent"]);
    assert_eq!(later(&[("k3-1", &cured(&[]))], 3, &off["sent"])["cancelled"], 0);
}

/// Before a batch is begun nothing is in the file, and what was never in one is not cancelled.
#[test]
fn what_was_never_handed_over_is_not_cancelled() {
    let mut new = cured(&[]);
    new["ticks"] = json!([]);
    assert!(!text(&new, 1).contains("VEVENT"));
    let mut away = cured(&[]);
    away["closed"] = json!(true);
    assert!(!text(&away, 1).contains("VEVENT"));
}

/// Leap days and the turn of a year, reckoned with `date -u`.
#[test]
fn dates_are_those_of_the_calendar() {
    for (ms, stamp) in [
        (0_i64, "19700101T000000Z"),
        (951_782_400_000, "20000229T000000Z"),
        (1_709_164_800_000, "20240229T000000Z"),
        (1_798_761_599_000, "20261231T235959Z"),
        (4_107_542_400_000, "21000301T000000Z"),
    ] {
        let answer = ok(
            &json!({"calendar": {"batches": [{"id": "k", "batch": cured(&[])}], "now": ms, "settings": settings("0.1 g")}}),
        );
        let text = answer["text"].as_str().expect("a file");
        assert!(text.contains(&format!("DTSTAMP:{stamp}\r\n")), "{stamp}");
    }
}
