//! Labels: how long a pack keeps, when it counts as cooked, what a gift of birds must carry.
//!
//! Keeping: Texas A&M L-1664 (published), USDA FSIS cold storage chart and extension charts (quoted). Temperatures: USDA FSIS safe
//! temperature chart, 2025 (published), wild game by FDA Food Code 3-401.11 (quoted). Tags: 50 CFR 20.37 and 20.40
//! (published), 20.36 (quoted).

use cure_reckoner_tests::{answer, ok, rub, settings};
use serde_json::{Value, json};

const DAY: i64 = 86_400_000;
const PACKED: i64 = 20_000 * DAY;

/// A batch of this cut, smoked until it reads `until`, with every step of it ticked that is named.
fn smoked(cut: &str, until: &str, ticked: &[usize]) -> Value {
    let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
    recipe["steps"] = json!([
        {"do": "cure", "lasts": "36 h"},
        {"do": "smoke", "lasts": "2.5 h", "at": "110 °C", "until": until},
        {"do": "pack"}
    ]);
    let mut ticks = vec![json!({"of": "rub", "at": PACKED - 3 * DAY})];
    ticks.extend(ticked.iter().map(|i| json!({"of": format!("step:{i}"), "at": PACKED})));
    json!({
        "tag": "TR", "name": "Trial", "recipe": recipe, "killed": "2026-11-14",
        "pieces": [{"cut": cut, "count": 8, "weight": "900 g"}], "ticks": ticks
    })
}

fn ask(batch: &Value, frozen: bool, profile: &str) -> Value {
    let mut settings = settings("0.1 g");
    settings["profile"] = json!(profile);
    ok(
        &json!({"labels": {"batch": batch, "now": PACKED + DAY, "frozen": frozen, "vacuum": true, "settings": settings}}),
    )
}

fn paper(labels: &Value, kind: &str) -> Value {
    let all = labels["papers"].as_array().expect("papers");
    all.iter().find(|p| p["kind"] == kind).cloned().unwrap_or_default()
}

fn fact(paper: &Value, label: &str) -> String {
    let facts = paper["facts"].as_array().expect("facts");
    let found = facts.iter().find(|f| f["label"] == label);
    found
        .map(|f| f["value"].as_str().unwrap_or_default().to_owned())
        .unwrap_or_default()
}

/// Days from packing to the date on the pack, and its basis.
fn keeps(batch: &Value, frozen: bool) -> (i64, String) {
    let pack = paper(&ask(batch, frozen, "us-home"), "pack");
    let until = pack["until"].as_i64().expect("a date");
    (
        (until - PACKED) / DAY,
        pack["basis"].as_str().unwrap_or_default().to_owned(),
    )
}

#[test]
fn a_pack_keeps_as_long_as_the_charts_say_the_short_end_of_each() {
    let cases = [
        // Texas A&M L-1664, published: cured and smoked birds at most 2 weeks, smoked whole pieces 1 week.
        ("mallard-breast", "74 °C", &[1, 2][..], false, 14, "L-1664, published"),
        ("fallow-haunch", "71 °C", &[1, 2], false, 7, "L-1664, published"),
        // Extension charts, quoted: smoked and cured 1 to 2 months frozen.
        ("mallard-breast", "74 °C", &[1, 2], true, 30, "Extension charts, quoted"),
        // USDA FSIS cold storage chart, quoted: raw birds 1 to 2 days, raw venison 3 to 5.
        (
            "mallard-breast",
            "60 °C",
            &[1, 2],
            false,
            1,
            "cold storage chart, quoted",
        ),
        (
            "fallow-haunch",
            "60 °C",
            &[1, 2],
            false,
            3,
            "cold storage chart, quoted",
        ),
        // Extension charts, quoted: raw wild duck 6 to 12 months frozen, venison 8 to 12.
        (
            "mallard-breast",
            "60 °C",
            &[1, 2],
            true,
            182,
            "Extension charts, quoted",
        ),
        ("fallow-haunch", "60 °C", &[1, 2], true, 243, "Extension charts, quoted"),
        // No figure is known for raw boar: the shortest of raw game, and it says so.
        ("boar-belly", "60 °C", &[1, 2], false, 1, "our own judgement"),
    ];
    for (cut, until, ticked, frozen, days, basis) in cases {
        let (got, said) = keeps(&smoked(cut, until, ticked), frozen);
        assert_eq!(got, days, "{cut} to {until}, frozen {frozen}: {said}");
        assert!(said.contains(basis), "{said} is not by {basis}");
    }
}

#[test]
fn meat_counts_as_cooked_from_the_consumer_temperature_and_by_its_tick() {
    // USDA FSIS, published: birds 165 °F, boar 160 °F; whole red game 145 °F. Printed as 74, 71 and 63 °C.
    for (cut, just, under) in [
        ("mallard-breast", "165 °F", "164 °F"),
        ("hare-saddle", "74 °C", "73 °C"),
        ("boar-belly", "71 °C", "70 °C"),
        ("fallow-haunch", "63 °C", "62 °C"),
    ] {
        let cooked = |until: &str, ticked: &[usize]| {
            let labels = ask(&smoked(cut, until, ticked), false, "us-home");
            fact(&paper(&labels, "pack"), "Cooked")
        };
        assert!(cooked(just, &[1, 2]).ends_with("in the middle"), "{cut} to {just}");
        assert!(cooked(under, &[1, 2]).contains("before eating"), "{cut} to {under}");
        assert!(
            cooked(just, &[2]).contains("before eating"),
            "{cut}, the fire not ticked"
        );
    }
}

/// The log goes before the ticks: 75 °C in every class that is pulled is cooked though nothing is ticked, 68 °C is not
/// though the step is; where they differ the screen says so.
#[test]
fn the_log_of_the_fire_goes_before_the_ticks() {
    let logged = |ticked: &[usize], celsius: &str, pulled: bool| {
        let mut batch = smoked("mallard-breast", "74 °C", ticked);
        batch["fire"] = json!({"readings": [
            {"class": 0, "temperature": "40 °C", "at": PACKED - 2 * 3_600_000},
            {"class": 0, "temperature": celsius, "at": PACKED - 3_600_000}
        ]});
        if pulled {
            let ticks = batch["ticks"].as_array_mut().expect("ticks");
            ticks.push(json!({"of": "pull:0", "at": PACKED - 3_600_000}));
        }
        let labels = ask(&batch, false, "us-home");
        let says = fact(&paper(&labels, "pack"), "Cooked");
        (says, labels["asks"].as_str().unwrap_or_default().to_owned())
    };
    let (says, asks) = logged(&[2], "75 °C", true);
    assert_eq!(says, "to 75 °C in the middle");
    assert!(
        asks.starts_with("The log says 75 °C") && asks.ends_with("goes by the log."),
        "{asks}"
    );
    let (says, asks) = logged(&[1, 2], "68 °C", true);
    assert!(
        says.contains("before eating") && asks.contains("no more than 68 °C"),
        "{says} {asks}"
    );
    // While a reading is in question the log says nothing of it.
    let mut doubtful = smoked("mallard-breast", "74 °C", &[2]);
    doubtful["fire"] = json!({"readings": [
        {"class": 0, "temperature": "75 °C", "at": PACKED - 3 * 3_600_000},
        {"class": 0, "temperature": "7.5 °C", "at": PACKED - 2 * 3_600_000}
    ]});
    let ticks = doubtful["ticks"].as_array_mut().expect("ticks");
    ticks.push(json!({"of": "pull:0", "at": PACKED - 3_600_000}));
    let labels = ask(&doubtful, false, "us-home");
    assert!(fact(&paper(&labels, "pack"), "Cooked").contains("before eating"));
    // Both agree, or nothing is pulled yet: nothing to ask.
    assert_eq!(
        logged(&[1, 2], "75 °C", true),
        ("to 75 °C in the middle".to_owned(), String::new())
    );
    let (says, asks) = logged(&[2], "75 °C", false);
    assert!(says.contains("before eating") && asks.is_empty(), "{says} {asks}");
}

#[test]
fn what_is_still_in_the_cure_gets_only_the_bag_label() {
    let labels = ask(&smoked("mallard-breast", "74 °C", &[]), false, "us-home");
    assert_eq!(labels["waits"], "It is still in the cure.");
    assert_eq!(labels["papers"].as_array().map(Vec::len), Some(1));
    let rinsed = ask(&smoked("mallard-breast", "74 °C", &[1]), false, "us-home");
    assert_eq!(
        (&rinsed["waits"], rinsed["papers"].as_array().map(Vec::len)),
        (&Value::Null, Some(3))
    );
}

#[test]
fn what_is_raw_says_so_on_its_pack() {
    let raw = paper(
        &ask(&smoked("mallard-breast", "60 °C", &[1, 2]), false, "us-home"),
        "pack",
    );
    assert!(raw["foot"].to_string().contains("Raw inside"));
    let cooked = paper(
        &ask(&smoked("mallard-breast", "74 °C", &[1, 2]), false, "us-home"),
        "pack",
    );
    assert!(!cooked["foot"].to_string().contains("Raw inside"));
    for needed in [
        "Not for sale",
        "May contain shot",
        "children under 6",
        "Not shelf-stable",
        "Open it before it thaws",
    ] {
        assert!(cooked["foot"].to_string().contains(needed), "{needed}");
    }
}

#[test]
fn a_gift_of_birds_carries_the_fields_of_the_law_where_it_holds() {
    let tag = |cut: &str, profile: &str| {
        let labels = ask(&smoked(cut, "74 °C", &[1, 2]), false, profile);
        (paper(&labels, "gift"), labels["rules"].to_string())
    };
    // 50 CFR 20.37, published: signature, address, total number and species, dates of killing.
    let (birds, rules) = tag("mallard-breast", "us-home");
    for field in ["signature", "address", "Birds in all"] {
        assert!(birds["blanks"].to_string().contains(field), "{field}");
    }
    // Birds, not breasts, and only those that are given: a line to fill.
    assert_eq!(
        (fact(&birds, "Species, number"), birds["what"].as_str()),
        (String::new(), Some("mallard breast"))
    );
    assert_eq!(fact(&birds, "Date killed"), "2026-11-14");
    assert!(rules.contains("20.37") && rules.contains("Check your state"));
    // No deer, and nothing under another law.
    for (cut, profile, says) in [("fallow-haunch", "us-home", "state"), ("mallard-breast", "uk", "law")] {
        let (gift, rules) = tag(cut, profile);
        assert!(!gift["blanks"].to_string().contains("signature"), "{cut}, {profile}");
        assert!(rules.contains(&format!("Check your {says}")), "{cut}, {profile}");
    }
}

#[test]
fn the_ingredients_stand_in_the_order_of_weight_with_their_allergens() {
    let mut batch = smoked("mallard-breast", "74 °C", &[1, 2]);
    batch["recipe"]["lines"] = json!([
        {"item": "mustard-seed", "share": {"of": "green_weight", "amount": "0.1 %"}},
        {"item": "salt-sea-fine", "share": {"of": "green_weight", "amount": "2.2 %"}},
        {"item": "own", "name": "Marsh rub", "share": {"of": "green_weight", "amount": "1 %"}}
    ]);
    let list = fact(&paper(&ask(&batch, false, "us-home"), "pack"), "Ingredients");
    // 900 g of meat, salt 19.8 g less what the cure brings, 9 g of rub, 2.1 g of cure, 0.9 g of mustard.
    assert_eq!(
        list,
        "mallard breast, fine sea salt, Marsh rub, cure no. 1 (salt, sodium nitrite), mustard seed, whole. \
         Contains: mustard. Not known, read its packet: Marsh rub."
    );
    // What the packet names is said once, and what it names as none is no longer asked about.
    for (packet, says) in [
        ("Celery, Mustard", "Contains: mustard, Celery."),
        ("None", "Contains: mustard."),
    ] {
        batch["recipe"]["lines"][2]["allergens"] = json!(packet);
        let list = fact(&paper(&ask(&batch, false, "us-home"), "pack"), "Ingredients");
        assert!(list.ends_with(&format!("whole. {says}")), "{list}");
    }
}

#[test]
fn the_bag_label_gives_the_end_of_the_cure_and_a_held_batch_gets_no_pack_label() {
    let mut batch = smoked("mallard-breast", "74 °C", &[]);
    let bag = paper(&ask(&batch, false, "us-home"), "bag");
    assert_eq!(bag["until"].as_i64(), Some(PACKED - 3 * DAY + 36 * 3_600_000));
    assert_eq!(bag["weight"], "900 g");
    // A tablespoon of 6.25 % cure on 900 g is far over.
    batch["put_in"] = json!({"amount": "1 tbsp", "nitrite": "6.25 %"});
    let held = ask(&batch, false, "us-home");
    assert!(held["held"].is_string());
    assert_eq!(held["papers"].as_array().map(Vec::len), Some(1));
    assert!(
        paper(&held, "bag")["keep"]
            .as_str()
            .is_some_and(|k| k.contains("do not eat"))
    );
    batch["pieces"] = json!([]);
    let none = answer(
        &json!({"labels": {"batch": batch, "now": 0, "frozen": false, "vacuum": false, "settings": settings("0.1 g")}}),
    );
    assert!(none["problems"].to_string().contains("Nothing is on the board"));
}
