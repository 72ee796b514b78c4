//! The times of a batch by the cure clock: what is due when, which pieces come out first, and what raw meat keeps.

use crate::clock::{HOUR, RUB, at, breast, clock_of, cured, leg};
use cure_reckoner_tests::{ok, settings, weighed_in};
use serde_json::{Value, json};

/// The jobs of a batch at so many hours after the rub: all of them, and those for today.
fn plan(batch: &Value, hours: i64) -> Value {
    ok(
        &json!({"next": {"batches": [{"id": "b", "batch": batch}], "now": RUB + hours * HOUR, "settings": settings("0.1 g")}}),
    )
}

fn job<'a>(plan: &'a Value, id: &str) -> &'a Value {
    let mut jobs = plan["batches"][0]["jobs"].as_array().unwrap().iter();
    jobs.find(|j| j["id"] == id).unwrap_or(&Value::Null)
}

/// Each size class that is still in, with its own hour.
fn classes(plan: &Value) -> &Vec<Value> {
    plan["batches"][0]["until"]["classes"].as_array().expect("size classes")
}

fn due(plan: &Value, id: &str) -> f64 {
    (job(plan, id)["due"].as_i64().expect("a due time") - RUB) as f64 / HOUR as f64
}

fn ticked(mut batch: Value, of: &str, hours: i64) -> Value {
    let ticks = batch["ticks"].as_array_mut().unwrap();
    ticks.push(json!({"of": of, "at": RUB + hours * HOUR}));
    batch
}

fn by_recipe(mut batch: Value) -> Value {
    batch["by"] = json!("recipe");
    batch
}

/// A forecast goes up to the hour, beyond three days up to the day. The rub was on at a whole hour.
fn told(hours: f64) -> f64 {
    if hours > 72.0 {
        (hours / 24.0).ceil() * 24.0
    } else {
        hours.ceil()
    }
}

#[test]
fn it_comes_out_when_nine_in_ten_of_the_thickest_are_through() {
    let batch = cured(json!([breast("16 mm"), breast("45 mm")]), "36 h");
    let (list, clock) = (plan(&batch, 1), clock_of(&batch, 1.0));
    let surely = at(&clock, 1, "colour", "latest");
    assert!(surely > 72.0 && surely < 7.0 * 24.0, "{surely}");
    assert_eq!(due(&list, "step:1"), told(surely));
    assert_eq!(job(&list, "step:0")["ends"], job(&list, "step:1")["due"]);
    assert_eq!(due(&list, "turn:0:2"), 36.0);
    let until = &clock["until"];
    assert_eq!(until["at"], job(&list, "step:1")["due"]);
    assert_eq!(
        (until["kind"].as_str(), until["through"].as_str()),
        (Some("forecast"), Some("colour"))
    );
    assert_eq!(
        (until["differs"].as_bool(), until["recipe"].as_i64()),
        (Some(true), Some(RUB + 36 * HOUR))
    );
    // Each class has its own hour.
    let windows = classes(&list);
    assert_eq!(windows.len(), 2);
    for (class, window) in windows.iter().enumerate() {
        let hour = |of: &str| (window[of].as_i64().unwrap() - RUB) as f64 / HOUR as f64;
        assert_eq!(window["of"], clock["classes"][class]["of"]);
        assert!((hour("from") - at(&clock, class, "colour", "earliest")).abs() < 1e-6);
        assert_eq!(hour("until"), told(at(&clock, class, "colour", "latest")));
    }
    // Once it is rinsed there is nothing to wait for.
    let rinsed = plan(&ticked(batch, "step:1", 50), 51);
    assert!(classes(&rinsed).is_empty());
}

#[test]
fn the_recipe_has_its_own_hours_where_somebody_says_so() {
    let batch = cured(json!([breast("16 mm")]), "36 h");
    let clock = clock_of(&batch, 1.0);
    assert_eq!(due(&plan(&batch, 1), "step:1"), told(at(&clock, 0, "colour", "latest")));
    let own = by_recipe(batch);
    assert_eq!(due(&plan(&own, 1), "step:1"), 36.0);
    let until = &clock_of(&own, 1.0)["until"];
    assert_eq!(
        (until["kind"].as_str(), until["differs"].as_bool()),
        (Some("recipe"), Some(true))
    );
    // Within a tenth the two are one.
    let near = cured(
        json!([breast("26 mm")]),
        &format!(
            "{} h",
            told(at(
                &clock_of(&cured(json!([breast("26 mm")]), "36 h"), 1.0),
                0,
                "colour",
                "latest"
            ))
        ),
    );
    assert_eq!(clock_of(&near, 1.0)["until"]["differs"], false);
}

#[test]
fn small_pieces_out_first() {
    // Jobs are handed out for a batch that is weighed, with its cure in.
    let weighed = |thickness: &str, weight: &str| {
        let mut class = breast(thickness);
        class["weight"] = json!(weight);
        class
    };
    let pieces = json!([weighed("16 mm", "100 g"), weighed("45 mm", "2200 g")]);
    let batch = weighed_in(cured(pieces, "36 h"), RUB - HOUR);
    let (list, clock) = (plan(&batch, 1), clock_of(&batch, 1.0));
    // When nine in ten of it are through.
    assert_eq!(due(&list, "draw:0"), told(at(&clock, 0, "colour", "latest")));
    assert_eq!(job(&list, "draw:0")["class"], 0);
    assert!(job(&list, "draw:1").is_null(), "the slowest is the rinse itself");
    let today = list["jobs"].as_array().unwrap();
    assert!(
        today
            .iter()
            .any(|j| j["id"] == "draw:0" && j["does"] == json!({"is": "take_out", "class": 0}))
    );
    // Taken out, its clock stops there; the rest goes on.
    let out = ticked(batch, "draw:0", 20);
    let (list, later) = (plan(&out, 30), clock_of(&out, 30.0));
    assert_eq!(job(&list, "draw:0")["ticked"], RUB + 20 * HOUR);
    assert_eq!(classes(&list).len(), 1);
    assert_eq!(later["classes"][0]["out"], RUB + 20 * HOUR);
    assert_eq!(
        later["classes"][0]["profile"],
        clock_of(&out, 20.0)["classes"][0]["profile"]
    );
    // Alike pieces have nobody to go first.
    let alike = plan(&cured(json!([breast("30 mm"), breast("30.5 mm")]), "36 h"), 1);
    assert!(job(&alike, "draw:0").is_null() && job(&alike, "draw:1").is_null());
}

#[test]
fn frozen_hours_move_the_due_times() {
    let mut batch = by_recipe(cured(json!([breast("16 mm")]), "36 h"));
    batch["fridge"] = json!([
        {"at": RUB, "what": "read", "reads": "38 F"},
        {"at": RUB + 30 * HOUR, "what": "frozen"},
        {"at": RUB + 54 * HOUR, "what": "thawed", "reads": "38 F"}
    ]);
    let list = plan(&batch, 55);
    assert_eq!(due(&list, "step:1"), 60.0, "six of its hours were left when it froze");
    // What lay frozen was not to be turned: at 36 and 48 h it was.
    assert!(job(&list, "turn:0:2").is_null() && job(&list, "turn:0:3").is_null());
    assert_eq!(due(&list, "turn:0:1"), 24.0);
    // What follows moves along.
    assert_eq!(due(&list, "step:2"), 60.0);
}

/// Rentfrow 2013 (Kentucky), published: 7 days for each inch and 2 to 3 weeks in the cold after them; the low end counts.
/// USDA FB 2265, published: 4 days a pound in sweet pickle at most, 60 days for 15 lb the longest.
/// USDA FSIS cold storage chart, quoted: raw venison 3 to 5 days, raw birds 1 to 2; the low end counts.
#[test]
fn nothing_stays_longer_than_raw_meat_keeps() {
    let joint = |weight: &str, method: &str, cure: bool| {
        let mut batch = cured(json!([leg("150 mm", weight)]), "7 d");
        batch["recipe"]["method"] = json!(method);
        if method == "cover_brine" {
            batch["recipe"]["lines"] = json!([
                {"item": "water", "share": {"of": "green_weight", "amount": "60 %"}},
                {"item": "salt-sea-fine", "share": {"of": "meat_and_water", "amount": "2.5 %"}}
            ]);
        }
        if !cure {
            batch["recipe"]["cures"] = json!([]);
        }
        batch
    };
    let capped: [(Value, f64, &str); 4] = [
        (joint("7 kg", "rub", true), 14.0 + 7.0 * 150.0 / 25.4, "Rentfrow 2013"),
        (joint("3 kg", "cover_brine", true), 4.0 * 3000.0 / 453.59237, "FB 2265"),
        (joint("7 kg", "cover_brine", true), 60.0, "FB 2265"),
        (joint("7 kg", "rub", false), 3.0, "cold storage chart"),
    ];
    for (batch, days, source) in capped {
        let until = &clock_of(&batch, 1.0)["until"];
        let hours = (until["at"].as_i64().unwrap() - RUB) as f64 / HOUR as f64;
        assert_eq!(hours, f64::floor(days * 24.0), "{until}");
        let capped = &until["capped"];
        assert!(capped["source"].as_str().unwrap().contains(source), "{capped}");
        assert!(capped["wants"].as_i64() > until["at"].as_i64(), "{capped}");
        assert_eq!(due(&plan(&batch, 1), "step:1"), hours);
    }
    let salted = {
        let mut batch = cured(json!([breast("38 mm")]), "36 h");
        batch["recipe"]["cures"] = json!([]);
        batch
    };
    let until = &clock_of(&salted, 1.0)["until"];
    assert_eq!(until["at"], RUB + 24 * HOUR);
    // The recipe's hours are no way round it.
    assert_eq!(clock_of(&by_recipe(salted), 1.0)["until"]["at"], RUB + 24 * HOUR);
    let thick = joint("7 kg", "rub", true);
    assert_eq!(due(&plan(&by_recipe(thick), 1), "step:1"), 168.0);
}

#[test]
fn a_belly_with_its_rind_on_has_one_answer() {
    let belly = |cut: &str, skin: bool| {
        let piece = json!({"cut": cut, "count": 1, "weight": "1500 g", "thickness": "35 mm", "skin": skin});
        clock_of(&cured(json!([piece]), "7 d"), 1.0)["until"].clone()
    };
    let one = belly("boar-belly-rind", false);
    let at = |until: &Value| (until["at"].clone(), until["kind"].clone(), until["capped"].clone());
    assert_eq!(at(&one), at(&belly("boar-belly-rind", true)));
    assert_eq!(at(&one), at(&belly("boar-belly", true)));
    // Rind keeps the cure out (9 CFR 424.22(b), quoted): from one side only it takes longer.
    assert!(belly("boar-belly", false)["at"].as_i64() < one["at"].as_i64());
}

#[test]
fn a_thickness_is_asked_for_where_the_answer_needs_it() {
    let bare = json!({"cut": "mallard-breast", "count": 4, "weight": "400 g"});
    let until = &clock_of(&cured(json!([bare, breast("12 mm")]), "36 h"), 1.0)["until"];
    assert_eq!(until["needs_thickness"], json!([0]));
    assert_eq!(
        (until["at"].as_i64(), until["kind"].as_str()),
        (Some(RUB + 36 * HOUR), Some("recipe"))
    );
    // Without a time in the recipe, what is usual: a day and a half (common practice, no source).
    let mut unsaid = cured(json!([bare]), "36 h");
    unsaid["recipe"]["steps"] = json!([{"do": "cure", "at": "38 F"}, {"do": "rinse"}, {"do": "pack"}]);
    let until = &clock_of(&unsaid, 1.0)["until"];
    assert_eq!(
        (until["at"].as_i64(), until["kind"].as_str()),
        (Some(RUB + 36 * HOUR), Some("usual"))
    );
    assert_eq!(due(&plan(&unsaid, 1), "step:1"), 36.0);
}

#[test]
fn an_hour_that_makes_way_for_the_night_says_so() {
    let batch = cured(json!([breast("26 mm")]), "36 h");
    let until = |rests: Value| {
        let ask = json!({"cure_clock": {"batch": batch, "now": RUB, "rests": rests, "settings": settings("0.1 g")}});
        ok(&ask)["until"].clone()
    };
    let bare = until(json!([]));
    let at = bare["at"].as_i64().unwrap();
    assert_eq!(bare["moved"], json!(false));
    // Asleep for eight hours about it: the first whole hour after them.
    let asleep = until(json!([{"from": at - 2 * HOUR, "to": at + 6 * HOUR}]));
    assert_eq!(
        (&asleep["moved"], asleep["at"].as_i64()),
        (&json!(true), Some(at + 6 * HOUR))
    );
    let before = until(json!([{"from": at - 8 * HOUR, "to": at - HOUR}]));
    assert_eq!((&before["moved"], before["at"].as_i64()), (&json!(false), Some(at)));
}

#[test]
fn nothing_that_can_move_falls_into_the_night() {
    // Asleep from 22:30 to 06:30, where the rub was on at noon.
    let rests: Vec<Value> = (-2..40)
        .map(|n| json!({"from": RUB + (24 * n + 10) * HOUR + HOUR / 2, "to": RUB + (24 * n + 18) * HOUR + HOUR / 2}))
        .collect();
    let mut batch = cured(json!([breast("26 mm")]), "36 h");
    batch["recipe"]["steps"] = json!([
        {"do": "cure", "lasts": "36 h", "turn_every": "5 h", "at": "38 F"}, {"do": "rinse"},
        {"do": "dry"}, {"do": "smoke", "at": "71 °C"}, {"do": "chill"}, {"do": "pack"}
    ]);
    let list = ok(&json!({"next": {
        "batches": [{"id": "b", "batch": batch}], "now": RUB + HOUR, "rests": rests, "settings": settings("0.1 g")
    }}));
    let times = list["batches"][0]["times"].as_array().unwrap();
    let asleep = |at: i64| {
        let of_day = (at - RUB - 10 * HOUR - HOUR / 2).rem_euclid(24 * HOUR);
        of_day < 8 * HOUR
    };
    let of = |id: &str| {
        times
            .iter()
            .find(|t| t["id"] == id)
            .unwrap_or_else(|| panic!("{id}: {times:?}"))
    };
    let own = times
        .iter()
        .filter(|t| t["id"].as_str().unwrap().starts_with("step") || t["id"].as_str().unwrap().starts_with("turn"));
    for timed in own.skip(1) {
        assert!(!asleep(timed["at"].as_i64().unwrap()), "{timed}");
    }
    assert!(times.iter().any(|t| t["moved"].is_i64()));
    // A fire wants somebody by: it ends before anybody lies down.
    let smoke = of("step:3");
    assert_eq!(
        (smoke["presence"].as_bool(), smoke["kind"].as_str()),
        (Some(true), Some("usual"))
    );
    let (from, ends) = (smoke["at"].as_i64().unwrap(), smoke["ends"].as_i64().unwrap());
    assert!(
        (from..=ends).step_by(900_000).all(|at| !asleep(at) || at == ends),
        "{smoke}"
    );
    // FDA Food Code 3-501.14, published: below 70 °F within 2 hours, below 41 °F within 6 in all.
    for (id, hours) in [("two_hours:4", 2), ("cold:4", 6)] {
        assert_eq!(
            of(id)["at"].as_i64(),
            Some(of("step:4")["at"].as_i64().unwrap() + hours * HOUR)
        );
        assert_eq!(of(id)["kind"], "published");
    }
    assert_eq!(of("step:4")["kind"], "usual");
}

#[test]
fn by_pick_up_no_due_time_moves() {
    let mut batch = cured(json!([breast("45 mm")]), "24 h");
    batch["recipe"]["method"] = json!("pick_up");
    batch["recipe"]["take"] = json!("10 %");
    batch["recipe"]["lines"] = json!([
        {"item": "water", "share": {"of": "green_weight", "amount": "74 %"}},
        {"item": "salt-sea-fine", "share": {"of": "brine", "amount": "8 %"}}
    ]);
    batch["fridge"] = json!([{"at": RUB + HOUR, "what": "frozen"}]);
    let list = plan(&batch, 2);
    assert_eq!(due(&list, "step:1"), 24.0);
    assert!(classes(&list).is_empty());
}

#[test]
fn in_the_mince_no_due_time_moves() {
    // It is in the middle from the start.
    let mut batch = cured(json!([breast("25 mm"), breast("38 mm")]), "24 h");
    batch["recipe"]["method"] = json!("ground");
    let list = plan(&batch, 1);
    assert_eq!(due(&list, "step:1"), 24.0);
    assert!(job(&list, "draw:0").is_null());
}

/// Past the last hour that raw meat keeps in its cure the batch says so at its head, and not before. The hour is that of the
/// table, whose sources `cure-cap.csv` names.
#[test]
fn what_stays_too_long_in_its_cure_is_told() {
    let batch = ok(&json!({"starters": {}}))["demo"].clone();
    let begun = 1_800_000_000_000_i64;
    let mut batch = cure_reckoner_tests::weighed_in(batch, begun);
    let rub = json!({"of": "rub", "at": begun});
    batch["ticks"].as_array_mut().expect("ticks").push(rub);
    let told = |days: i64| {
        let now = begun + days * 86_400_000 + 60_000;
        let list = ok(
            &json!({"next": {"batches": [{"id": "b", "batch": batch}], "now": now, "rests": [], "settings": cure_reckoner_tests::settings("0.1 g")}}),
        );
        let doubts = list["batches"][0]["doubts"].as_array().expect("doubts").clone();
        doubts
            .iter()
            .any(|d| d["kind"] == "over_stayed" && d["weight"] == "warns")
    };
    // Birds: 7 days.
    assert!(!told(6) && told(7) && told(369));
}
