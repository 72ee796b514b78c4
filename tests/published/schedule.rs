//! What comes next and when. The recipe is our own; the arithmetic of the clock is checked by hand.

use cure_reckoner_tests::{batch, ok, rub, settings, weighed_in};
use serde_json::{Value, json};

const HOUR: i64 = 3_600_000;
const RUB: i64 = 1_000 * HOUR;

fn cured(ticks: Value) -> Value {
    let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
    recipe["steps"] = json!([
        {"do": "cure", "lasts": "36 h", "turn_every": "12 h", "at": "3 °C"},
        {"do": "rinse"},
        {"do": "dry", "lasts": "24 h"},
        {"do": "smoke", "lasts": "2.5 h", "at": "71 °C"},
        {"do": "chill", "lasts": "6 h"}
    ]);
    let mut batch = batch(&recipe, 16, "1480 g");
    batch["ticks"] = ticks;
    batch
}

/// Rubbed and put into the refrigerator, with these ticks so many hours later.
fn rubbed(more: &[(&str, i64)]) -> Value {
    let cold: Vec<_> = [("fridge", 0)].into_iter().chain(more.iter().copied()).collect();
    on_the_board(&cold)
}

/// Rubbed, and only what is said since.
fn on_the_board(more: &[(&str, i64)]) -> Value {
    let mut ticks = vec![json!({"of": "rub", "at": RUB})];
    ticks.extend(
        more.iter()
            .map(|(of, hours)| json!({"of": of, "at": RUB + hours * HOUR})),
    );
    // What is rubbed with no cure ticked is asked about first: here all of the list went in an hour before.
    weighed_in(cured(json!(ticks)), RUB - HOUR)
}

/// The list at so many hours after the rub.
fn at(batch: &Value, hours: i64) -> Value {
    ok(
        &json!({"next": {"batches": [{"id": "b", "batch": batch}], "now": RUB + hours * HOUR, "settings": settings("0.1 g")}}),
    )
}

/// What a job is: of a step, what is done.
fn does(job: &Value) -> &str {
    let step = job["does"]["step"]["do"].as_str();
    step.or(job["does"]["is"].as_str()).unwrap_or_default()
}

/// What each job is, and its hour.
fn jobs(list: &Value) -> Vec<(String, Option<i64>)> {
    let jobs = list["jobs"].as_array().expect("jobs");
    jobs.iter()
        .map(|j| (does(j).to_owned(), j["due"].as_i64().map(|d| (d - RUB) / HOUR)))
        .collect()
}

#[test]
fn the_clock_starts_with_the_rub() {
    let list = at(&rubbed(&[]), 1);
    assert_eq!(jobs(&list), [("turn".into(), Some(12)), ("rinse".into(), Some(36))]);
    assert_eq!(
        (&list["batches"][0]["whereabouts"], &list["batches"][0]["green"]),
        (&json!({"is": "in_cure", "day": 1}), &json!("1480 g"))
    );
    assert_eq!(list["batches"][0]["stage"], "cure");
}

/// Rubbed, it goes into the cold before anything else; that moves no time of it. Nobody is asked of it once the
/// refrigerator was read or a later job is due.
#[test]
fn rubbed_meat_goes_into_the_cold_first() {
    let heads = |list: &Value| jobs(list).into_iter().map(|(head, _)| head).collect::<Vec<_>>();
    let board = on_the_board(&[]);
    let list = at(&board, 1);
    assert_eq!(heads(&list), ["into_fridge", "turn", "rinse"]);
    let job = &list["jobs"][0];
    assert_eq!(
        (&job["id"], &job["stage"], &job["now"], &job["due"]),
        (&json!("fridge"), &json!("cure"), &json!(true), &Value::Null)
    );
    let lies = at(&rubbed(&[]), 1);
    assert_eq!(heads(&lies), ["turn", "rinse"]);
    assert_eq!(lies["batches"][0]["times"], list["batches"][0]["times"]);
    // Told as done, with its time.
    let told = lies["batches"][0]["jobs"].as_array().expect("jobs");
    assert_eq!(told[1]["ticked"], RUB);
    assert!(!heads(&at(&board, 13)).contains(&"into_fridge".to_owned()));
    let mut read = board.clone();
    read["fridge"] = json!([{"at": RUB + HOUR / 2, "what": "read", "reads": "3 °C"}]);
    assert_eq!(heads(&at(&read, 1)), ["turn", "rinse"]);
}

/// A turn is told to the whole hour, up, whenever the rub was; what is taken out is not moved by it.
#[test]
fn turns_stand_on_the_hour() {
    let late = 37 * 60_000;
    let mut batch = rubbed(&[]);
    for tick in batch["ticks"].as_array_mut().expect("ticks") {
        tick["at"] = json!(tick["at"].as_i64().expect("a time") + late);
    }
    let list = at(&batch, 1);
    let times = list["batches"][0]["times"].as_array().expect("times");
    let of = |id: &str| times.iter().find(|t| t["id"] == id).and_then(|t| t["at"].as_i64());
    assert_eq!(of("turn:0:0"), Some(RUB + 13 * HOUR));
    assert_eq!(of("turn:0:1"), Some(RUB + 25 * HOUR));
    // Making way for a night that ends at half past, it falls on the hour after it.
    let night = json!([{"from": RUB + 10 * HOUR, "to": RUB + 13 * HOUR + HOUR / 2}]);
    let list = ok(&json!({"next": {
        "batches": [{"id": "b", "batch": batch}], "now": RUB + HOUR, "rests": night, "settings": settings("0.1 g")
    }}));
    let times = list["batches"][0]["times"].as_array().expect("times");
    let turn = times.iter().find(|t| t["id"] == "turn:0:0").expect("a turn");
    assert_eq!(
        (turn["at"].as_i64(), turn["moved"].as_i64()),
        (Some(RUB + 14 * HOUR), Some(RUB + 13 * HOUR))
    );
}

#[test]
fn of_missed_turns_only_the_last_is_asked_for() {
    let list = at(&rubbed(&[]), 30);
    assert_eq!(jobs(&list), [("turn".into(), Some(24)), ("rinse".into(), Some(36))]);
    assert_eq!(list["jobs"][0]["now"], true);
    let turned = at(&rubbed(&[("turn:0:1", 25)]), 30);
    assert_eq!(jobs(&turned), [("rinse".into(), Some(36))]);
}

#[test]
fn a_late_tick_moves_all_that_follows() {
    let list = at(&rubbed(&[("step:1", 40), ("step:2", 41)]), 42);
    assert_eq!(jobs(&list), [("smoke".into(), Some(65))]);
    assert_eq!(list["batches"][0]["whereabouts"], json!({"is": "begun", "do": "dry"}));
    assert_eq!(list["batches"][0]["stage"], "fire");
}

#[test]
fn a_step_passed_over_is_not_asked_for() {
    let list = at(&rubbed(&[("step:3", 70)]), 71);
    assert_eq!(jobs(&list), [("chill".into(), Some(72))]);
    assert_eq!(
        list["batches"][0]["jobs"]
            .as_array()
            .expect("jobs")
            .iter()
            .filter(|j| j["passed"] == true)
            .count(),
        2
    );
}

/// A batch is finished when its last step is over and said to be, not when it is begun.
#[test]
fn a_batch_is_finished_when_its_last_step_is_over() {
    let begun = at(
        &rubbed(&[("step:1", 36), ("step:2", 37), ("step:3", 61), ("step:4", 64)]),
        65,
    );
    assert_eq!(begun["batches"][0]["finished"], false);
    assert_eq!(jobs(&begun), [("finish".into(), Some(70))]);
    let over = at(
        &rubbed(&[
            ("step:1", 36),
            ("step:2", 37),
            ("step:3", 61),
            ("step:4", 64),
            ("end", 70),
        ]),
        71,
    );
    assert_eq!(
        (
            over["batches"][0]["finished"].as_bool(),
            &over["batches"][0]["whereabouts"]
        ),
        (Some(true), &json!({"is": "finished"}))
    );
    assert!(jobs(&over).is_empty());
}

#[test]
fn a_cure_alone_is_not_finished_when_it_is_rubbed() {
    let mut only = rubbed(&[]);
    only["recipe"]["steps"] = json!([{"do": "cure", "lasts": "36 h"}]);
    let list = at(&only, 1);
    assert_eq!(list["batches"][0]["finished"], false);
    assert_eq!(jobs(&list), [("finish".into(), Some(36))]);
}

/// What is due comes first, over all batches, and a batch that waits for its weigh-out is due.
#[test]
fn what_is_due_comes_first() {
    let waiting = cured(json!([]));
    let list = ok(&json!({"next": {
        "batches": [{"id": "in", "batch": rubbed(&[])}, {"id": "new", "batch": waiting}], "now": RUB + HOUR, "settings": settings("0.1 g")
    }}));
    assert_eq!(list["jobs"][0]["batch"], "new");
    assert_eq!(does(&list["jobs"][0]), "weigh_cure");
}

/// What is smoked has the heat of its kind beside it, and what is chilled its limit; `caution-words.test.mjs` has the figures.
#[test]
fn cautions_stand_beside_the_steps() {
    let list = at(&rubbed(&[]), 1);
    let of = |act: &str| {
        let all = list["batches"][0]["jobs"].as_array().expect("jobs");
        all.iter()
            .find(|j| does(j) == act)
            .map(|j| j["cautions"].clone())
            .unwrap_or_default()
    };
    assert_eq!(of("smoke"), json!(["birds-165"]));
    assert_eq!(of("chill"), json!(["cool-fast"]));
}

/// A job whose time is still to come says how far off it is, so that it can be asked about before it is ticked.
#[test]
fn an_early_job_says_so() {
    let list = at(&rubbed(&[]), 1);
    assert_eq!(list["jobs"][1]["early"], "35 h");
    assert!(at(&rubbed(&[("turn:0:0", 12), ("turn:0:1", 24)]), 36)["jobs"][0]["early"].is_null());
}
