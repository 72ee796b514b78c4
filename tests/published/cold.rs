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
    let now = RUB + (hours * HOUR as f64) as i64;
    let ask = json!({"standing": {"batch": kept(log), "settings": settings("0.1 g"), "now": now}});
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
    let notes = clock_of(&kept(log), hours)["notes"].as_array().expect("notes").clone();
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
