//! Planning back, by recipes and hours worked out by hand.

use crate::clock::{cured, leg};
use cure_reckoner_tests::{batch, ok, problems, rub, settings, weighed_in};
use serde_json::{Value, json};

const HOUR: i64 = 3_600_000;
/// 2026-11-14 06:00:00 UTC.
const NOW: i64 = 1_794_636_000_000;

fn breasts() -> Value {
    let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
    recipe["steps"] = json!([
        {"do": "cure", "lasts": "36 h", "turn_every": "12 h", "at": "3 °C"},
        {"do": "rinse"},
        {"do": "dry", "lasts": "24 h"},
        {"do": "smoke", "lasts": "4 h", "at": "71 °C"},
        {"do": "chill", "lasts": "6 h"},
        {"do": "pack"}
    ]);
    batch(&recipe, 16, "1480 g")
}

/// Rest from 22:00 to 06:00 for so many nights.
fn nights(count: i64) -> Vec<Value> {
    (0..count)
        .map(|n| json!({"from": NOW + (16 + 24 * n) * HOUR, "to": NOW + 24 * (n + 1) * HOUR}))
        .collect()
}

fn plan(batches: &[Value], hours: i64, rests: &[Value], room: [u32; 3], holds: Value) -> Value {
    let named: Vec<_> = batches
        .iter()
        .enumerate()
        .map(|(i, b)| json!({"id": format!("b{i}"), "batch": b}))
        .collect();
    ok(&json!({"plan_back": {
        "batches": named, "now": NOW, "settings": settings("0.1 g"),
        "wish": {"ready_by": NOW + hours * HOUR, "rests": rests, "room": room, "holds": holds}
    }}))
}

fn hour(of: &Value) -> Option<f64> {
    of.as_i64().map(|at| (at - NOW) as f64 / HOUR as f64)
}

/// What a task is: of a step, what is done.
fn does(step: &Value) -> &str {
    let task = &step["task"];
    task["do"].as_str().or(task["is"].as_str()).expect("a task")
}

/// The tasks of one batch and their hours, turns apart.
fn tasks(batch: &Value) -> Vec<(String, f64)> {
    let steps = batch["steps"].as_array().expect("steps");
    let own = steps.iter().filter(|s| does(s) != "turn");
    own.map(|s| (does(s).to_owned(), hour(&s["at"]).expect("a time")))
        .collect()
}

/// Nobody sleeps: 36 + 24 + 4 + 6 h back from 100 h is 30 h.
#[test]
fn with_no_rest_it_is_counted_straight_back() {
    let plan = plan(&[breasts()], 100, &[], [1, 1, 1], json!([]));
    let batch = &plan["batches"][0];
    assert_eq!(
        (plan["fits"].as_bool(), hour(&plan["start"]), hour(&batch["finish"])),
        (Some(true), Some(30.0), Some(70.0))
    );
    assert_eq!(batch["slack"], "30 h");
    assert_eq!(
        tasks(batch),
        [
            ("start", 30.0),
            ("rinse", 66.0),
            ("dry", 66.0),
            ("smoke", 90.0),
            ("chill", 94.0),
            ("pack", 100.0)
        ]
        .map(|(head, at)| (head.to_owned(), at))
    );
    let fixed = |i: usize| {
        batch["steps"]
            .as_array()
            .expect("steps")
            .iter()
            .filter(|s| does(s) != "turn")
            .nth(i)
            .expect("a step")["fixed"]
            .is_string()
    };
    assert_eq!([0, 1, 2, 3, 4, 5].map(fixed), [false, false, true, false, true, false]);
}

/// Ready on the fifth day at 10:00: packed then, chilled by 04:00 at the latest, but that is night, so the fire ends by
/// 22:00 the evening before and begins by 18:00.
#[test]
fn no_task_falls_into_the_night_and_turns_make_way() {
    let mut often = breasts();
    often["recipe"]["steps"][0]["turn_every"] = json!("5 h");
    let plan = plan(&[often], 100, &nights(6), [1, 1, 1], json!([]));
    let batch = &plan["batches"][0];
    assert_eq!(plan["fits"], true);
    let all = batch["steps"].as_array().expect("steps");
    for step in all {
        let at = hour(&step["at"]).expect("a time").rem_euclid(24.0);
        assert!(at < 16.0, "{step}");
    }
    let smoke = all.iter().find(|s| does(s) == "smoke").expect("a fire");
    assert!(hour(&smoke["at"]).expect("a time") <= 84.0 && smoke["tended"] == true);
    assert!(hour(&smoke["ends"]).expect("a time").rem_euclid(24.0) <= 16.0);
    let moved: Vec<_> = all.iter().filter(|s| s["moved"].is_i64()).collect();
    assert!(
        !moved.is_empty()
            && moved
                .iter()
                .all(|s| does(s) == "turn" && hour(&s["moved"]).expect("a time").rem_euclid(24.0) >= 16.0)
    );
}

/// Away from the tenth day to the thirtieth: all is packed on the tenth, 240 h, and was begun 70 h before.
#[test]
fn a_long_absence_is_planned_around() {
    let away = [json!({"from": NOW + 240 * HOUR, "to": NOW + 720 * HOUR})];
    let plan = plan(&[breasts()], 720, &away, [1, 1, 1], json!([]));
    // A task may fall on the last quarter of an hour before it.
    assert_eq!(
        (plan["fits"].as_bool(), hour(&plan["start"])),
        (Some(true), Some(169.75))
    );
}

/// One smoker for two: the fires follow one another; with two they need not.
#[test]
fn batches_take_turns_at_the_fire() {
    let two = [breasts(), breasts()];
    let fires = |room| {
        let plan = plan(&two, 120, &[], room, json!([]));
        assert_eq!(plan["fits"], true);
        let mut at: Vec<_> = [0, 1]
            .map(|i| {
                tasks(&plan["batches"][i])
                    .into_iter()
                    .find(|(h, _)| h == "smoke")
                    .expect("a fire")
                    .1
            })
            .to_vec();
        at.sort_by(f64::total_cmp);
        at
    };
    let one = fires([2, 1, 2]);
    assert!(one[1] - one[0] >= 4.0, "{one:?}");
    assert_eq!(fires([2, 2, 2]), [110.0, 110.0]);
}

/// What runs stays where it is, and what follows goes by it.
#[test]
fn what_is_begun_is_not_moved() {
    let mut begun = breasts();
    begun["ticks"] = json!([{"of": "rub", "at": NOW - 30 * HOUR}]);
    let begun = weighed_in(begun, NOW - 31 * HOUR);
    let plan = plan(&[begun], 60, &[], [1, 1, 1], json!([]));
    let batch = &plan["batches"][0];
    assert_eq!((batch["fits"].as_bool(), &batch["start"]), (Some(true), &Value::Null));
    assert_eq!(tasks(batch)[0].1, -30.0);
    // 6 h of cure, 24 of drying, 4 of fire, 6 of chill.
    assert_eq!(hour(&batch["finish"]), Some(40.0));
}

/// 70 h of work into 50 h: thinner fits (36 h to 20.25 h is 54.25 h, to 9 h is 43 h), a pump fits (12 h), and never more cure.
#[test]
fn what_cannot_be_ready_says_what_would_help() {
    let late = plan(&[breasts()], 50, &[], [1, 1, 1], json!([]));
    let batch = &late["batches"][0];
    assert_eq!(
        (late["fits"].as_bool(), hour(&late["finish"])),
        (Some(false), Some(70.0))
    );
    assert_eq!(batch["ways"], json!(["half_as_thick", "pump"]));
    let more = plan(&[breasts()], 56, &[], [1, 1, 1], json!([]));
    assert_eq!(more["batches"][0]["ways"][0], "thinner");
    // Ten hours are too few for anything, and nothing is promised.
    assert_eq!(
        plan(&[breasts()], 10, &[], [1, 1, 1], json!([]))["batches"][0]["ways"],
        json!([])
    );
    // 20 h of fire with nobody by for 8 h of 24 can only be a smaller batch.
    let mut long = breasts();
    long["recipe"]["steps"][3]["lasts"] = json!("20 h");
    let night = plan(&[long], 200, &nights(9), [1, 1, 1], json!([]));
    assert_eq!(night["batches"][0]["ways"][0], "smaller");
    // Two at once on one rack for 24 h each, in little more than the time of one.
    let both = plan(&[breasts(), breasts()], 75, &[], [2, 1, 1], json!([]));
    assert_eq!(both["fits"], false);
    assert!(
        both["batches"].as_array().is_some_and(|all| {
            let ways = |b: &Value| b["ways"].as_array().is_some_and(|w| w.contains(&json!("more_rack")));
            all.iter().any(ways)
        }),
        "{both}"
    );
}

/// A step put to a time by hand stays there and the rest follows.
#[test]
fn one_step_is_moved_and_the_rest_follows() {
    let held = plan(
        &[breasts()],
        100,
        &[],
        [1, 1, 1],
        json!([{"batch": "b0", "step": 3, "at": NOW + 80 * HOUR}]),
    );
    let at = tasks(&held["batches"][0]);
    assert_eq!(at[3].1, 80.0);
    assert_eq!((at[4].1, at[0].1), (84.0, 20.0));
    let wrong = plan(
        &[breasts()],
        100,
        &[],
        [1, 1, 1],
        json!([{"batch": "b0", "step": 3, "at": NOW + 99 * HOUR}]),
    );
    assert_eq!(wrong["batches"][0]["snag"], json!({"is": "held_steps"}));
}

/// A held dose is not planned around.
#[test]
fn a_held_batch_is_not_planned() {
    let mut held = breasts();
    held["put_in"] = json!({"amount": "3 tbsp", "nitrite": "6.25 %"});
    let plan = plan(&[held], 100, &[], [1, 1, 1], json!([]));
    let batch = &plan["batches"][0];
    assert!(batch["steps"].as_array().is_some_and(Vec::is_empty));
    assert_eq!(batch["snag"], json!({"is": "held"}));
}

#[test]
fn dates_that_are_past_or_too_far_are_refused() {
    let code = |hours: i64| {
        problems(
            &json!({"plan_back": {"batches": [], "now": NOW, "settings": settings("0.1 g"),
            "wish": {"ready_by": NOW + hours * HOUR, "rests": [], "room": [1, 1, 1]}}}),
        )[0]["code"]
            .clone()
    };
    assert_eq!((code(0), code(2401)), (json!("too_small"), json!("too_large")));
}

/// Room by area: 1480 g of breasts 26 mm thick lie on 1480 / 1.06 / (2.6 cm x 2/3) x 1.25 = 1007 cm2. A smoker of 1200
/// cm2 takes one batch at a time though four are allowed, one of 2400 cm2 two, and 900 cm2 none.
#[test]
fn room_goes_by_area_where_the_racks_are_known() {
    let mut measured = breasts();
    measured["pieces"][0]["thickness"] = json!("26 mm");
    let two = [measured.clone(), measured];
    let fires = |wide: &str, count: u32| {
        let mut settings = settings("0.1 g");
        let racks = json!({"count": count, "wide": wide, "deep": "30 cm"});
        settings["house"] = json!({"hours": ["", "", "", ""], "room": [2, 4, 2], "racks": [null, racks]});
        let named: Vec<_> = two
            .iter()
            .enumerate()
            .map(|(i, b)| json!({"id": format!("b{i}"), "batch": b}))
            .collect();
        let wish = json!({"ready_by": NOW + 120 * HOUR, "rests": [], "room": [2, 4, 2]});
        let ask = json!({"batches": named, "now": NOW, "settings": settings, "wish": wish});
        let plan = ok(&json!({"plan_back": ask}));
        let at = [0, 1].map(|i: usize| {
            tasks(&plan["batches"][i])
                .into_iter()
                .find(|(h, _)| h == "smoke")
                .map(|t| t.1)
        });
        (plan, at)
    };
    let (plan, [a, b]) = fires("40 cm", 1);
    assert_eq!(plan["fits"], true);
    assert!((a.expect("a fire") - b.expect("a fire")).abs() >= 4.0, "{a:?} {b:?}");
    let (_, both) = fires("40 cm", 2);
    assert_eq!(both, [Some(110.0), Some(110.0)]);
    let (none, _) = fires("30 cm", 1);
    assert_eq!(none["fits"], false);
    assert_eq!(
        none["batches"][0]["snag"],
        json!({"is": "too_large", "place": 1, "load": 1007, "holds": 900})
    );
}

/// Six batches of which only two may be in the cold at once: not every plan is looked at, and the gap says what that
/// may cost, while a single one is the best there is.
#[test]
fn many_batches_say_how_far_from_the_best_they_may_be() {
    let six: Vec<Value> = (0..6).map(|_| breasts()).collect();
    let crowded = plan(&six, 400, &nights(18), [2, 1, 1], json!([]));
    assert_eq!(crowded["fits"], true);
    assert_eq!(crowded["gap"]["is"], "later");
    assert!(
        crowded["gap"]["by"]
            .as_str()
            .is_some_and(|by| by.starts_with(|c: char| ('1'..='9').contains(&c))),
        "{}",
        crowded["gap"]
    );
    assert_eq!(
        plan(&six[..1], 400, &nights(18), [2, 1, 1], json!([]))["gap"],
        Value::Null
    );
}

#[test]
fn what_lies_in_the_refrigerator_has_room_there() {
    // Three cures run, though one was said to fit: each is planned, as long as its own clock has it.
    let three: Vec<Value> = [("25 mm", 1), ("60 mm", 1), ("95 mm", 1)]
        .iter()
        .map(|(thick, _)| {
            let mut batch = cured(json!([leg(thick, "3200 g")]), "240 h");
            batch["ticks"] = json!([{"of": "rub", "at": NOW - HOUR}]);
            weighed_in(batch, NOW - HOUR)
        })
        .collect();
    let plan = plan(&three, 48, &[], [1, 1, 1], json!([]));
    for (batch, one) in three.iter().zip(plan["batches"].as_array().unwrap()) {
        let clock = ok(&json!({"cure_clock": {"batch": batch, "now": NOW, "settings": settings("0.1 g")}}));
        let rinse = one["steps"].as_array().unwrap().iter().find(|s| does(s) == "rinse");
        let rinse = rinse.unwrap_or_else(|| panic!("{}", one["snag"]));
        let late = rinse["at"].as_i64().unwrap() - clock["until"]["at"].as_i64().unwrap();
        assert!((0..900_000).contains(&late), "to the quarter of an hour, {late}");
    }
}
