//! Labels: what a pack has earned, how long it keeps, what a gift of birds must carry.
//!
//! Keeping: Texas A&M L-1664 and UK FSA on vacuum packs (published), USDA FSIS cold storage chart and extension charts
//! (quoted). Temperatures: USDA FSIS safe temperature chart, 2025, and CDC, MMWR 73(20), 2024 (published); game from farm to
//! table and FDA Food Code 3-401.11 (quoted). Chill: FDA Food Code 3-501.14 (published). Tags: 50 CFR 20.37 and 20.40
//! (published), 20.36 (quoted).

use cure_reckoner_tests::{answer, ok, rub, settings, weighed_in};
use serde_json::{Value, json};

const MINUTE: i64 = 60_000;
pub(super) const HOUR: i64 = 60 * MINUTE;
pub(super) const DAY: i64 = 24 * HOUR;
/// Taken out of the smoker: the end of the heat.
pub(super) const OUT: i64 = 20_000 * DAY;
/// So long in the cure that of 14 mm all but what stays in the rub's own liquid has gone in.
pub(super) const LONG: i64 = 10 * DAY;

/// Ten days in the cure, smoked, chilled, packed.
pub(super) fn recipe() -> Value {
    let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
    recipe["steps"] = json!([
        {"do": "cure", "lasts": "240 h", "at": "3 °C"},
        {"do": "smoke", "lasts": "3 h", "at": "110 °C"},
        {"do": "chill", "lasts": "6 h"},
        {"do": "pack"}
    ]);
    recipe
}

pub(super) fn of_cut(cut: &str, recipe: &Value) -> Value {
    json!({
        "tag": "TR", "name": "Trial", "recipe": recipe, "killed": "2026-11-14",
        "pieces": [{"cut": cut, "count": 8, "weight": "900 g", "thickness": "14 mm"}]
    })
}

pub(super) fn tick(batch: &mut Value, of: &str, at: i64) {
    let mut ticks = batch["ticks"].as_array().cloned().unwrap_or_default();
    ticks.push(json!({"of": of, "at": at}));
    batch["ticks"] = json!(ticks);
}

/// Some weeks before any of them came out of the heat.
const KILLED: &str = "2024-09-14";

/// Weighed in, rubbed, and so long in the cure until the smoker was lit three hours before it came out.
pub(super) fn lit(cut: &str, recipe: &Value, cured: i64) -> Value {
    let begun = OUT - 3 * HOUR - cured;
    let mut batch = weighed_in(of_cut(cut, recipe), begun);
    batch["killed"] = json!(KILLED);
    tick(&mut batch, "rub", begun);
    tick(&mut batch, "step:1", OUT - 3 * HOUR);
    batch
}

/// Readings at hours from the end of the heat.
pub(super) fn read(mut batch: Value, readings: &[(f64, &str)]) -> Value {
    let all: Vec<_> = readings
        .iter()
        .map(|(hours, reads)| json!({"class": 0, "temperature": reads, "at": OUT + (hours * HOUR as f64) as i64}))
        .collect();
    batch["fire"] = json!({"readings": all});
    batch
}

/// On its way up, hot, and cold in time by the Food Code: 21 °C within two hours, and 5 °C within four more, whenever
/// between the readings it was that it passed 21 °C.
pub(super) fn log(hot: &str) -> [(f64, &str); 6] {
    [
        (-3.0, "4 °C"),
        (-2.0, "30 °C"),
        (-1.0, "55 °C"),
        (-0.05, hot),
        (1.25, "20 °C"),
        (3.5, "4 °C"),
    ]
}

/// All of it done: read so hot, taken out, cold in time, and packed.
pub(super) fn done(cut: &str, recipe: &Value, cured: i64, hot: &str) -> Value {
    let mut batch = read(lit(cut, recipe, cured), &log(hot));
    tick(&mut batch, "pull:0", OUT);
    tick(&mut batch, "step:3", OUT + 6 * HOUR);
    batch
}

pub(super) fn asked(batch: &Value, now: i64, frozen: bool, vacuum: bool, profile: &str) -> Value {
    let mut settings = settings("0.1 g");
    settings["profile"] = json!(profile);
    ok(&json!({"labels": {"batch": batch, "now": now, "frozen": frozen, "vacuum": vacuum, "settings": settings}}))
}

/// In the cold without a vacuum, seven hours after the heat.
fn ask(batch: &Value) -> Value {
    asked(batch, OUT + 7 * HOUR, false, false, "us-home")
}

pub(super) fn paper(labels: &Value, kind: &str) -> Value {
    let all = labels["papers"].as_array().expect("papers");
    all.iter().find(|p| p["kind"] == kind).cloned().unwrap_or_default()
}

/// What a paper says of the cure: the first of its facts that is one of these.
pub(super) fn fact(paper: &Value, of: &[&str]) -> Value {
    let facts = paper["facts"].as_array().expect("facts");
    let mut found = facts.iter().filter(|f| of.iter().any(|is| f["is"] == *is));
    let first = found.next().cloned().unwrap_or_default();
    assert!(found.next().is_none(), "two of {of:?} on {paper}");
    first
}

const CURED: [&str; 4] = ["no_cure", "cured", "cured_weakly", "cure_unknown"];
pub(super) const COOKED: [&str; 4] = ["raw", "cooked", "cook_to", "not_cooked"];

/// Kinds of the doubts on a paper, what is past mending first.
fn kinds(paper: &Value) -> Vec<&str> {
    let doubts = paper["doubts"].as_array().expect("doubts");
    doubts.iter().filter_map(|d| d["kind"].as_str()).collect()
}

/// A pack that has earned nothing: it says how it is to be taken, gives no date, names what is in doubt, and there is no
/// tag for a gift.
#[track_caller]
fn refused(labels: &Value, keep: &str, doubt: &str) {
    let pack = paper(labels, "pack");
    assert_eq!(
        (&pack["keep"], &pack["until"], &pack["basis"]),
        (&json!(keep), &Value::Null, &Value::Null)
    );
    assert!(kinds(&pack).contains(&doubt), "{doubt} is not among {:?}", kinds(&pack));
    assert_eq!(paper(labels, "gift"), Value::Null);
}

#[test]
fn a_pack_keeps_from_the_end_of_the_heat_as_long_as_the_charts_say_the_short_end_of_each() {
    let cured = recipe();
    let mut plain = recipe();
    plain["cures"] = json!([]);
    let mut roast = plain.clone();
    roast["steps"][1]["do"] = json!("cook");
    let (cold, vacuum, frozen) = ((false, false), (false, true), (true, true));
    let cases = [
        // Texas A&M L-1664, published: birds cured and smoked, 2 weeks at most. UK FSA, published: 10 days in a vacuum.
        (
            "mallard-breast",
            &cured,
            LONG,
            cold,
            "cold",
            14,
            "Texas A&M L-1664, published",
        ),
        ("mallard-breast", &cured, LONG, vacuum, "cold_vacuum", 10, "UK FSA"),
        // Extension charts, quoted: smoked and cured 1 to 2 months frozen.
        (
            "mallard-breast",
            &cured,
            LONG,
            frozen,
            "frozen",
            30,
            "Extension charts, quoted",
        ),
        // USDA FSIS cold storage chart, quoted: cooked meat 3 to 4 days; no vacuum makes it longer.
        (
            "fallow-haunch",
            &cured,
            LONG,
            cold,
            "cold",
            3,
            "cold storage chart, quoted",
        ),
        (
            "fallow-haunch",
            &cured,
            LONG,
            vacuum,
            "cold_vacuum",
            3,
            "cold storage chart, quoted",
        ),
        (
            "boar-belly",
            &cured,
            LONG,
            cold,
            "cold",
            3,
            "cold storage chart, quoted",
        ),
        // L-1664: smoked without cure, or with too little of it gone in after 12 h, no longer than other cooked meat.
        ("mallard-breast", &cured, 12 * HOUR, cold, "cold", 3, "L-1664"),
        ("mallard-breast", &plain, LONG, cold, "cold", 3, "L-1664"),
        (
            "mallard-breast",
            &roast,
            LONG,
            cold,
            "cold",
            3,
            "cold storage chart, quoted",
        ),
    ];
    for (cut, recipe, cured, (frozen, vacuum), keep, days, basis) in cases {
        let batch = done(cut, recipe, cured, "76 °C");
        // Whenever the label is asked for, the date stays.
        for now in [OUT + 7 * HOUR, OUT + 2 * DAY] {
            let pack = paper(&asked(&batch, now, frozen, vacuum, "us-home"), "pack");
            let until = pack["until"].as_i64().map(|until| until - OUT);
            let by = &pack["basis"];
            let says = format!(
                "{}, {}",
                by["source"].as_str().unwrap_or_default(),
                by["status"].as_str().unwrap_or_default()
            );
            assert_eq!(
                (until, &pack["keep"]),
                (Some(days * DAY), &json!(keep)),
                "{cut}: {pack}"
            );
            assert!(says.contains(basis), "{says} is not by {basis}");
        }
    }
}

/// What is raw and without cure keeps from the day of the kill; cured and raw has no published time.
#[test]
fn raw_meat_keeps_from_the_day_of_the_kill() {
    // 2026-11-14 00:00 UTC, reckoned with `date -u`.
    let killed = 1_794_614_400_000;
    let mut plain = rub("6.25 %", "150 ppm", "2.2 %");
    plain["cures"] = json!([]);
    plain["lines"] = json!([]);
    plain["steps"] = json!([{"do": "pack"}]);
    let mut minced = plain.clone();
    minced["method"] = json!("ground");
    for (cut, recipe, frozen, days, basis) in [
        // FoodSafety.gov, Cold Food Storage Chart: raw mince 1 to 2 days, published; 3 to 4 months frozen, from memory.
        ("fallow-haunch", &minced, false, 1, "Cold Food Storage Chart, published"),
        ("fallow-haunch", &minced, true, 91, "Cold Food Storage Chart, memory"),
        // USDA FSIS cold storage chart, quoted: raw birds 1 to 2 days, raw venison 3 to 5.
        ("mallard-breast", &plain, false, 1, "cold storage chart, quoted"),
        ("fallow-haunch", &plain, false, 3, "cold storage chart, quoted"),
        // Extension charts, quoted: raw wild duck 6 to 12 months frozen, venison 8 to 12.
        ("mallard-breast", &plain, true, 182, "Extension charts, quoted"),
        ("fallow-haunch", &plain, true, 243, "Extension charts, quoted"),
        // No figure is known for raw boar: the shortest of raw game, and it says so.
        ("boar-belly", &plain, false, 1, "Our own, judgement"),
    ] {
        let labels = asked(&of_cut(cut, recipe), killed + 12 * HOUR, frozen, false, "us-home");
        let pack = paper(&labels, "pack");
        assert_eq!(
            pack["until"].as_i64().map(|u| u - killed),
            Some(days * DAY),
            "{cut}: {labels}"
        );
        let by = &pack["basis"];
        let says = format!(
            "{}, {}",
            by["source"].as_str().unwrap_or_default(),
            by["status"].as_str().unwrap_or_default()
        );
        assert!(says.contains(basis), "{says} is not by {basis}");
        // What lay longer than it keeps raw is not mended by frost.
        refused(
            &asked(&of_cut(cut, recipe), killed + 6 * DAY, frozen, false, "us-home"),
            "do_not_eat",
            "past_keeping",
        );
    }
    let mut cured = of_cut("mallard-breast", &rub("6.25 %", "150 ppm", "2.2 %"));
    cured["recipe"]["steps"] = json!([{"do": "cure", "lasts": "36 h"}, {"do": "pack"}]);
    let mut cured = weighed_in(cured, killed);
    tick(&mut cured, "rub", killed);
    tick(&mut cured, "step:1", killed + 36 * HOUR);
    let pack = paper(&asked(&cured, killed + 37 * HOUR, false, false, "us-home"), "pack");
    assert_eq!(pack["until"], Value::Null);
}

#[test]
fn a_pack_past_its_time_is_not_eaten() {
    let labels = asked(
        &done("mallard-breast", &recipe(), LONG, "76 °C"),
        OUT + 14 * DAY + MINUTE,
        false,
        false,
        "us-home",
    );
    refused(&labels, "do_not_eat", "past_keeping");
    assert_eq!(paper(&labels, "pack")["doubts"][0]["since"], OUT + 14 * DAY);
}

#[test]
fn meat_counts_as_cooked_from_the_consumer_temperature_by_its_readings() {
    // Birds 165 °F: FSIS chart, published; boar 165 °F: CDC, MMWR 73(20), published; hare 165 °F: Food Code 3-401.11, red
    // game 160 °F: FSIS, Game from Farm to Table, both quoted.
    for (cut, just, under, printed) in [
        ("mallard-breast", "165 °F", "164 °F", "73.9 °C"),
        ("hare-saddle", "165 °F", "164 °F", "73.9 °C"),
        ("boar-belly", "165 °F", "164 °F", "73.9 °C"),
        ("fallow-haunch", "160 °F", "159 °F", "71.1 °C"),
    ] {
        let cooked = ask(&done(cut, &recipe(), LONG, just));
        let pack = paper(&cooked, "pack");
        let hot = fact(&pack, &COOKED);
        assert_eq!(
            (&hot["is"], &hot["read"]["text"]),
            (&json!("cooked"), &json!(printed)),
            "{cut}"
        );
        assert!(pack["until"].is_i64() && paper(&cooked, "gift").is_object(), "{cut}");
        // Just out it is finished at once.
        let mut out = read(lit(cut, &recipe(), LONG), &log(under)[..4]);
        tick(&mut out, "pull:0", OUT);
        let short = asked(&out, OUT + HOUR, false, false, "us-home");
        refused(&short, "not_yet", "partly_cooked");
        let left = fact(&paper(&short, "pack"), &COOKED);
        assert_eq!(
            (&left["is"], &left["needed"]["text"]),
            (&json!("cook_to"), &json!(printed))
        );
        // USDA FSIS, Smoking Meat and Poultry (quoted): never partly cooked ahead, since what lives in it survives and grows.
        let left = asked(&out, OUT + 3 * HOUR, false, false, "us-home");
        refused(&left, "do_not_eat", "partly_abandoned");
        refused(
            &ask(&done(cut, &recipe(), LONG, under)),
            "do_not_eat",
            "partly_abandoned",
        );
    }
    // What the recipe asks for by itself counts where it is more.
    let mut braise = recipe();
    braise["steps"][1]["until"] = json!("85 °C");
    refused(
        &ask(&done("mallard-breast", &braise, LONG, "80 °C")),
        "do_not_eat",
        "partly_abandoned",
    );
    let hot = paper(&ask(&done("mallard-breast", &braise, LONG, "85 °C")), "pack");
    assert_eq!(fact(&hot, &COOKED)["read"]["text"], "85 °C");
}

/// Heat and chill are earned by readings, never by the tick of a step.
#[test]
fn what_is_not_read_is_not_promised() {
    let (hot, rising) = ((-0.05, "76 °C"), [(-3.0, "4 °C"), (-2.0, "30 °C"), (-1.0, "55 °C")]);
    let with = |readings: &[(f64, &str)], out: bool, hours: i64| {
        let mut batch = read(lit("mallard-breast", &recipe(), LONG), readings);
        if out {
            tick(&mut batch, "pull:0", OUT);
        }
        asked(&batch, OUT + hours * HOUR, false, false, "us-home")
    };
    let up = |more: &[(f64, &'static str)]| [&rising[..], more].concat();
    // The smoke is ticked, and nothing was read.
    let unread = with(&[], true, 0);
    refused(&unread, "not_yet", "not_read");
    assert_eq!(fact(&paper(&unread, "pack"), &COOKED)["is"], "cook_to");
    refused(&with(&up(&[(-0.05, "60 °C")]), false, 0), "not_yet", "not_hot");
    // Hot, and still over the fire.
    refused(&with(&up(&[hot]), false, 0), "not_yet", "in_fire");
    // 75 and then 7.5 °C: one of them is a slip.
    let slip = with(&up(&[(-0.5, "75 °C"), (-0.2, "7.5 °C")]), true, 0);
    refused(&slip, "not_yet", "reading_in_question");
    // It cools; its six hours are over and nobody read it; it was read warm after them (Food Code 3-501.14).
    refused(&with(&up(&[hot]), true, 1), "not_yet", "chilling");
    refused(&with(&up(&[hot]), true, 12), "not_yet", "chill_unread");
    let late = with(&up(&[hot, (4.0, "50 °C"), (9.0, "30 °C")]), true, 12);
    refused(&late, "do_not_eat", "chill_late");
    // Of what is not eaten nobody is told how well it was cooked.
    assert_eq!(fact(&paper(&late, "pack"), &COOKED), Value::Null);
    // And the same with its readings has all of it.
    let good = with(&up(&[hot, (1.25, "20 °C"), (3.5, "4 °C")]), true, 6);
    assert_eq!(kinds(&paper(&good, "pack")), Vec::<&str>::new());
    assert!(paper(&good, "pack")["until"].is_i64() && paper(&good, "gift").is_object());
}

#[test]
fn what_is_still_in_the_cure_has_a_bag_label_and_no_date_on_a_pack() {
    let begun = OUT - LONG;
    let mut batch = weighed_in(of_cut("mallard-breast", &recipe()), begun);
    tick(&mut batch, "rub", begun);
    let labels = asked(&batch, begun + DAY, false, false, "us-home");
    let bag = paper(&labels, "bag");
    // The hour of the cure clock, and no other.
    let clock = ok(&json!({"cure_clock": {"batch": batch, "now": begun + DAY, "settings": settings("0.1 g")}}));
    assert!(clock["until"]["at"].is_i64());
    assert_eq!(
        (&bag["keep"], &bag["until"]),
        (&json!("in_cure"), &clock["until"]["at"])
    );
    assert_eq!(bag["by"], clock["until"]["kind"]);
    assert_eq!(
        (&bag["weight"], &bag["made"], kinds(&bag)),
        (&json!("900 g"), &json!(begun), Vec::<&str>::new())
    );
    refused(&labels, "not_yet", "in_cure");
}

/// A belly this thick would take longer than raw meat keeps: what ends its stay is that, and its bag does not call it through.
#[test]
fn a_bag_that_is_ended_by_what_raw_meat_keeps_does_not_say_that_it_is_through() {
    let begun = OUT - LONG;
    let mut batch = of_cut("boar-belly-rind", &recipe());
    batch["pieces"][0]["count"] = json!(1);
    batch["pieces"][0]["weight"] = json!("2400 g");
    batch["pieces"][0]["thickness"] = json!("45 mm");
    batch["pieces"][0]["skin"] = json!(true);
    let mut batch = weighed_in(batch, begun);
    tick(&mut batch, "rub", begun);
    let clock = ok(&json!({"cure_clock": {"batch": batch, "now": begun + DAY, "settings": settings("0.1 g")}}));
    assert!(
        clock["until"]["capped"].is_object() && clock["until"]["kind"] == "forecast",
        "{}",
        clock["until"]
    );
    let bag = paper(&asked(&batch, begun + DAY, false, false, "us-home"), "bag");
    assert_eq!(
        (&bag["until"], &bag["by"]),
        (&clock["until"]["at"], &json!("published"))
    );
    // Frozen it has no date, and so nothing that the date would rest on.
    batch["fridge"] = json!([{"at": begun + HOUR, "what": "frozen"}]);
    let bag = paper(&asked(&batch, begun + DAY, false, false, "us-home"), "bag");
    assert_eq!((&bag["until"], &bag["by"]), (&Value::Null, &Value::Null));
}

/// Whether the cure is in is asked before the bag closes, and what is over is held: neither has a date.
#[test]
fn a_held_batch_gets_no_date_on_any_paper() {
    let begun = OUT - LONG;
    let mut unsaid = of_cut("mallard-breast", &recipe());
    tick(&mut unsaid, "rub", begun);
    // A tablespoon, 12.6 g at least, on 900 g is 870 ppm; 200 ppm is the limit at home: 21 CFR 172.175, published.
    let mut over = of_cut("mallard-breast", &recipe());
    over["put_in"] = json!({"amount": "1 tbsp", "nitrite": "6.25 %"});
    tick(&mut over, "rub", begun);
    for (batch, doubt) in [(&unsaid, "cure_not_in"), (&over, "dose_over")] {
        let labels = asked(batch, begun + DAY, false, false, "us-home");
        let bag = paper(&labels, "bag");
        assert_eq!(
            (&bag["keep"], &bag["until"]),
            (&json!("not_yet"), &Value::Null),
            "{doubt}"
        );
        assert!(kinds(&bag).contains(&doubt), "{:?}", kinds(&bag));
        refused(&labels, "not_yet", doubt);
        assert_eq!(fact(&bag, &CURED)["is"], "cure_unknown", "{doubt}");
    }
    over["pieces"] = json!([]);
    let none = answer(
        &json!({"labels": {"batch": over, "now": 0, "frozen": false, "vacuum": false, "settings": settings("0.1 g")}}),
    );
    assert_eq!(none["problems"][0]["wrong"]["is"], "no_pieces");
}

#[test]
fn what_is_raw_says_so_on_its_pack() {
    let foot = |hot: &str| {
        let labels = asked(
            &done("mallard-breast", &recipe(), LONG, hot),
            OUT + 7 * HOUR,
            false,
            true,
            "us-home",
        );
        paper(&labels, "pack")["foot"].to_string()
    };
    let cooked = foot("76 °C");
    let mut out = read(lit("mallard-breast", &recipe(), LONG), &log("60 °C")[..4]);
    tick(&mut out, "pull:0", OUT);
    let raw = paper(&asked(&out, OUT + HOUR, false, true, "us-home"), "pack")["foot"].to_string();
    assert!(raw.contains("label-raw") && !cooked.contains("label-raw"));
    // What is past mending is not told to be cooked after all, nor to be kept.
    let lost = foot("60 °C");
    assert_eq!(lost, r#"["label-sale","label-shot"]"#);
    assert_eq!(cooked, r#"["label-shelf","label-sale","label-shot","label-vacuum"]"#);
}

#[test]
fn a_gift_of_birds_carries_the_fields_of_the_law_where_it_holds() {
    let tag = |cut: &str, profile: &str| {
        let labels = asked(
            &done(cut, &recipe(), LONG, "76 °C"),
            OUT + 7 * HOUR,
            false,
            true,
            profile,
        );
        let gift = paper(&labels, "gift");
        assert!(gift.is_object(), "{cut}, {profile}: {}", labels["doubts"]);
        (gift, labels["rules"].to_string())
    };
    // 50 CFR 20.37, published: signature, address, total number and species, dates of killing.
    let (birds, rules) = tag("mallard-breast", "us-home");
    assert_eq!(birds["blanks"], json!(["birds", "hunter", "signature", "given_to"]));
    // Birds, not breasts, and only those that are given: a line to fill.
    assert_eq!(
        (fact(&birds, &["species"]), &birds["what"]),
        (
            json!({"is": "species"}),
            &json!([{"cut": "mallard-breast", "name": "", "count": null}])
        )
    );
    assert_eq!(fact(&birds, &["killed"])["on"], KILLED);
    assert!(rules.contains("20.37") && rules.contains("tag-birds"));
    // No deer, and nothing under another law.
    for (cut, profile, says) in [
        ("fallow-haunch", "us-home", "tag-us"),
        ("mallard-breast", "uk", "tag-other"),
    ] {
        let (gift, rules) = tag(cut, profile);
        assert_eq!(gift["blanks"], json!(["from", "given_to"]), "{cut}, {profile}");
        assert!(rules.contains(says), "{cut}, {profile}");
        // What the law of the States says of a sale is told under that law alone.
        assert_eq!(rules.contains("USC"), profile == "us-home", "{cut}, {profile}: {rules}");
    }
}

#[test]
fn the_ingredients_stand_in_the_order_of_weight_with_their_allergens() {
    let mut batch = of_cut("mallard-breast", &recipe());
    batch["recipe"]["lines"] = json!([
        {"item": "mustard-seed", "share": {"of": "green_weight", "amount": "0.1 %"}},
        {"item": "salt-sea-fine", "share": {"of": "green_weight", "amount": "2.2 %"}},
        {"item": "own", "name": "Marsh rub", "agent": "none", "share": {"of": "green_weight", "amount": "1 %"}}
    ]);
    let contents = fact(&paper(&ask(&batch), "pack"), &["contents"]);
    // 900 g of meat, salt 19.8 g less what the cure brings, 9 g of rub, 2.1 g of cure, 0.9 g of mustard.
    let line = |item: &str, name: &str| json!({"is": "item", "of": {"item": item, "name": name}});
    assert_eq!(
        contents["inside"],
        json!([
            {"is": "meat", "of": {"cut": "mallard-breast", "name": "", "count": null}},
            line("salt-sea-fine", ""),
            line("own", "Marsh rub"),
            {"is": "cure", "item": "cure-1", "salts": ["nitrite"]},
            line("mustard-seed", ""),
        ])
    );
    assert_eq!(
        (&contents["allergens"], &contents["unread"]),
        (&json!([{"of": "mustard"}]), &json!(["Marsh rub"]))
    );
    // What the packet names is said once, and what it names as none is no longer asked about.
    for (packet, allergens) in [
        ("Celery, Mustard", json!([{"of": "mustard"}, {"read": "Celery"}])),
        ("None", json!([{"of": "mustard"}])),
    ] {
        batch["recipe"]["lines"][2]["allergens"] = json!(packet);
        let contents = fact(&paper(&ask(&batch), "pack"), &["contents"]);
        assert_eq!(
            (&contents["allergens"], &contents["unread"]),
            (&allergens, &json!([])),
            "{packet}"
        );
    }
}

/// Cold smoke is told of where a smoke cooks nothing (30 °C, common practice), and not of hot smoke that was not read yet.
#[test]
fn cold_smoke_is_told_of_cold_smoke_alone() {
    let rules = |at: &str| {
        let mut recipe = recipe();
        recipe["steps"][1]["at"] = json!(at);
        let batch = lit("mallard-breast", &recipe, 240 * HOUR);
        let labels = ok(&json!({"labels": {
            "batch": batch, "now": OUT, "frozen": false, "vacuum": false, "settings": settings("0.1 g")
        }}));
        labels["rules"].to_string()
    };
    assert!(rules("25 °C").contains("cold-smoke"));
    assert!(!rules("110 °C").contains("cold-smoke"), "{}", rules("110 °C"));
}

/// A recipe of no cut says what boar and birds want, unless it takes any meat to the most (165 °F: `tables/targets.csv`);
/// of a cut it says what that wants.
#[test]
fn a_card_warns_of_the_meat_it_is_for() {
    let card = |until: &str, cut: Value| {
        let mut recipe = recipe();
        recipe["steps"][1]["until"] = json!(until);
        let mut ask = json!({"recipe": recipe, "settings": settings("0.1 g")});
        if !cut.is_null() {
            ask["cut"] = cut;
        }
        let card = ok(&json!({"card": ask}));
        let keys = card["cautions"].as_array().expect("cautions").iter();
        keys.map(|c| c["key"].as_str().unwrap_or_default().to_owned())
            .filter(|key| key.ends_with("-165") || key.ends_with("-160"))
            .collect::<Vec<_>>()
    };
    assert_eq!(card("71 °C", Value::Null), ["boar-165", "birds-165"]);
    assert_eq!(card("164.9 °F", Value::Null), ["boar-165", "birds-165"]);
    assert!(card("74 °C", Value::Null).is_empty());
    assert_eq!(card("74 °C", json!("mallard-breast")), ["birds-165"]);
    assert_eq!(card("74 °C", json!("boar-belly")), ["boar-165"]);
}

/// FDA Food Code 3-801.11: nothing raw or partly cooked for the highly susceptible, quoted.
#[test]
fn what_is_given_raw_says_for_whom_it_is_not() {
    let mut cold_smoked = recipe();
    cold_smoked["steps"][1] = json!({"do": "smoke", "lasts": "3 h", "at": "22 °C"});
    let gift = |batch: &Value| {
        let papers = asked(batch, OUT + 7 * HOUR, false, false, "us-home")["papers"].clone();
        let papers = papers.as_array().expect("papers").clone();
        papers.into_iter().find(|p| p["kind"] == "gift").expect("a gift")["foot"].clone()
    };
    let says = |foot: &Value| foot.as_array().expect("keys").contains(&json!("gift-raw"));
    assert!(says(&gift(&lit("boar-loin", &cold_smoked, LONG))));
    assert!(!says(&gift(&done("mallard-breast", &recipe(), LONG, "75 °C"))));
}

#[test]
fn packs_heavier_than_their_meat_are_asked_about() {
    let batch = done("mallard-breast", &recipe(), LONG, "75 °C");
    let heavy = |packs: &[&str]| {
        let ask = json!({"labels": {
            "batch": batch, "now": OUT + 7 * HOUR, "settings": settings("0.1 g"),
            "frozen": false, "vacuum": false, "packs": packs
        }});
        ok(&ask)["too_heavy"].clone()
    };
    assert_eq!(heavy(&["400 g", "400 g"]), json!(null));
    assert_eq!(heavy(&[]), json!(null));
    let asked = heavy(&["71 kg"]);
    assert_eq!(
        [&asked["packs"]["text"], &asked["meat"]["text"]],
        ["71\u{202f}000 g", "900 g"]
    );
}

/// The same where it is given out of the freezer.
#[test]
fn a_pack_that_is_given_raw_says_so_on_the_list() {
    let raw = |batch: &Value| {
        let pack = json!({"id": "p", "stock": {
            "item": "pack", "name": "Loin", "weight": "400 g", "batch": "b", "at": OUT, "frozen": true
        }});
        let ask = json!({"larder": {
            "stock": [pack], "batches": [{"id": "b", "batch": batch}], "now": OUT + 7 * HOUR, "settings": settings("0.1 g")
        }});
        ok(&ask)["packs"][0]["raw"].clone()
    };
    let mut dried = recipe();
    dried["steps"][1] = json!({"do": "dry", "lasts": "3 h"});
    assert_eq!(raw(&lit("boar-loin", &dried, LONG)), true);
    assert_eq!(raw(&done("mallard-breast", &recipe(), LONG, "75 °C")), false);
}
