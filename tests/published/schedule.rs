//! What comes next and when. The recipe is our own; the arithmetic of the clock is checked by hand.

use cure_reckoner_tests::{batch, ok, rub, settings, weighed_in};
use serde_json::{Value, json};

pub(super) const HOUR: i64 = 3_600_000;
pub(super) const RUB: i64 = 1_000 * HOUR;

pub(super) fn cured(ticks: Value) -> Value {
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
pub(super) fn rubbed(more: &[(&str, i64)]) -> Value {
    let cold: Vec<_> = [("fridge", 0)].into_iter().chain(more.iter().copied()).collect();
    on_the_board(&cold)
}

/// Rubbed, and only what is said since.
pub(super) fn on_the_board(more: &[(&str, i64)]) -> Value {
    let mut ticks = vec![json!({"of": "rub", "at": RUB})];
    ticks.extend(
        more.iter()
            .map(|(of, hours)| json!({"of": of, "at": RUB + hours * HOUR})),
    );
    // What is rubbed with no cure ticked is asked about first: here all of the list went in an hour before.
    weighed_in(cured(json!(ticks)), RUB - HOUR)
}

/// The list at so many hours after the rub.
pub(super) fn at(batch: &Value, hours: i64) -> Value {
    ok(
        &json!({"next": {"batches": [{"id": "b", "batch": batch}], "now": RUB + hours * HOUR, "settings": settings("0.1 g")}}),
    )
}

/// What a job is: of a step, what is done.
pub(super) fn does(job: &Value) -> &str {
    let step = job["does"]["step"]["do"].as_str();
    step.or(job["does"]["is"].as_str()).unwrap_or_default()
}

/// What each job is, and its hour.
pub(super) fn jobs(list: &Value) -> Vec<(String, Option<i64>)> {
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

/// What has just been put over the fire is under way: it is read next, and not read is no doubt before a reading is due.
#[test]
fn a_fire_that_was_just_lit_is_read_next() {
    let of_fire = |list: &Value| {
        let doubts = list["batches"][0]["doubts"].as_array().expect("doubts").clone();
        let kinds = doubts.iter().filter_map(|d| d["kind"].as_str());
        let own = kinds.filter(|k| ["to_read", "not_read"].contains(k)).map(str::to_owned);
        (own.collect::<Vec<_>>(), list["batches"][0]["stage"].clone())
    };
    let smoked = [("step:1", 36), ("step:2", 37), ("step:3", 61)];
    let begun = at(&rubbed(&smoked), 61);
    assert_eq!(jobs(&begun), [("read_fire".into(), None)]);
    assert_eq!(of_fire(&begun), (vec!["to_read".to_owned()], json!("fire")));
    // Two hours of the four in which it has to come through.
    assert_eq!(of_fire(&at(&rubbed(&smoked), 62)).0, ["to_read"]);
    assert_eq!(of_fire(&at(&rubbed(&smoked), 63)).0, ["not_read"]);
    // What is said to be out was due.
    for out in ["pull:0", "step:4"] {
        let ticks = [&smoked[..], &[(out, 61)]].concat();
        assert_eq!(of_fire(&at(&rubbed(&ticks), 61)).0, ["not_read"], "{out}");
    }
    // Nothing is assured meanwhile.
    let now = RUB + 61 * HOUR;
    let ask = json!({"standing": {"batch": rubbed(&smoked), "now": now, "settings": settings("0.1 g")}});
    let assured = ok(&ask)["assured"].clone();
    for word in ["cooked", "gift"] {
        assert_eq!(assured[word], false, "{word}");
    }
    // The first reading is that job.
    let mut read = rubbed(&smoked);
    read["fire"] = json!({"readings": [{"class": 0, "temperature": "8 °C", "at": RUB + 61 * HOUR}]});
    assert_ne!(jobs(&at(&read, 61))[0].0, "read_fire");
}

/// The small ones come out first, and are rinsed and dried while the others cure.
#[test]
fn what_came_out_first_has_its_own_jobs() {
    let mut batch = rubbed(&[("draw:0", 20)]);
    let teal = json!({"cut": "teal-breast", "count": 8, "weight": "300 g", "thickness": "10 mm"});
    batch["pieces"] = json!([teal, batch["pieces"][0]]);
    batch["pieces"][1]["thickness"] = json!("22 mm");
    let own = |batch: &Value, hours: i64| {
        let list = at(batch, hours)["jobs"].as_array().expect("jobs").clone();
        let of = |j: &&Value| j["class"] == 0;
        let id = |j: &Value| (j["id"].as_str().expect("an id").to_owned(), j["does"]["is"].clone());
        list.iter().filter(of).map(id).collect::<Vec<_>>()
    };
    let job = |id: &str| (id.to_owned(), json!("step_of"));
    assert_eq!(own(&batch, 21), [job("rinse:0"), job("dry:0")]);
    let ticked = |of: &str, batch: &Value| {
        let mut batch = batch.clone();
        batch["ticks"]
            .as_array_mut()
            .expect("ticks")
            .push(json!({"of": of, "at": RUB + 21 * HOUR}));
        batch
    };
    let rinsed = ticked("rinse:0", &batch);
    assert_eq!(own(&rinsed, 22), [job("dry:0")]);
    assert_eq!(own(&ticked("dry:0", &rinsed), 23), []);
    // Once the others are rinsed it goes with them.
    assert_eq!(own(&ticked("step:1", &batch), 24), []);
    // And nothing of it is asked before it is out.
    let ticks = batch["ticks"].as_array().expect("ticks").clone();
    batch["ticks"] = ticks.into_iter().filter(|t| t["of"] != "draw:0").collect();
    assert!(own(&batch, 5).iter().all(|(id, _)| id == "draw:0"));
}

/// What came out first takes no turn away from what is left: due before it is next, and stays until it is done.
#[test]
fn the_rest_is_turned_while_the_first_dries() {
    let with = |drawn: i64, more: &[(&str, i64)]| {
        let mut batch = rubbed(&[&[("draw:0", drawn)], more].concat());
        let teal = json!({"cut": "teal-breast", "count": 8, "weight": "300 g", "thickness": "10 mm"});
        batch["pieces"] = json!([teal, batch["pieces"][0]]);
        batch["pieces"][1]["thickness"] = json!("22 mm");
        batch
    };
    let open = |batch: &Value, hours: i64| -> Vec<String> {
        let list = at(batch, hours);
        let all = list["batches"][0]["jobs"].as_array().expect("jobs").clone();
        let open = all.iter().filter(|j| j["ticked"].is_null() && j["passed"] == false);
        let now = open.filter(|j| j["now"] == true);
        now.map(|j| j["id"].as_str().expect("an id").to_owned()).collect()
    };
    // Taken out an hour after the turn was due.
    assert_eq!(open(&with(13, &[]), 14), ["turn:0:0", "rinse:0", "dry:0"]);
    // Taken out before it: what lies on the board is rinsed, then the rest is turned, since what was rinsed dries by itself.
    assert_eq!(open(&with(11, &[]), 13), ["rinse:0", "dry:0", "turn:0:0"]);
    assert_eq!(open(&with(11, &[("rinse:0", 13)]), 14), ["turn:0:0", "dry:0"]);
    assert_eq!(open(&with(11, &[("rinse:0", 13), ("dry:0", 13)]), 14), ["turn:0:0"]);
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

/// What was probed lies over the fire, and what was all taken out chills: nobody has to say it twice, and nothing is due
/// that is done.
#[test]
fn the_log_says_what_is_begun() {
    let recipe = json!([
        {"do": "cure", "lasts": "36 h", "at": "3 °C"}, {"do": "rinse"}, {"do": "dry", "lasts": "12 h", "at": "3 °C"},
        {"do": "smoke", "lasts": "3 h"}, {"do": "chill", "lasts": "6 h"}, {"do": "pack"}]);
    let mut batch = rubbed(&[("step:1", 36), ("step:2", 37)]);
    batch["recipe"]["steps"] = recipe;
    let ticked = |batch: &Value, hour: i64| -> Vec<(String, Option<i64>)> {
        let list = at(batch, hour);
        let jobs = list["batches"][0]["jobs"].as_array().expect("jobs").clone();
        let of = |job: &Value| (job["id"].as_str().expect("an id").to_owned(), job["ticked"].as_i64());
        jobs.iter()
            .map(of)
            .filter(|(id, _)| ["step:3", "step:4"].contains(&id.as_str()))
            .collect()
    };
    let none = |id: &str| (id.to_owned(), None);
    let some = |id: &str, hour: i64| (id.to_owned(), Some(RUB + hour * HOUR));
    assert_eq!(ticked(&batch, 51), [none("step:3"), none("step:4")]);
    batch["fire"] = json!({"readings": [{"class": 0, "temperature": "20 °C", "at": RUB + 50 * HOUR}]});
    assert_eq!(ticked(&batch, 51), [some("step:3", 50), none("step:4")]);
    let pulls: Vec<Value> = (0..batch["pieces"].as_array().expect("pieces").len())
        .map(|at| json!({"of": format!("pull:{at}"), "at": RUB + 53 * HOUR}))
        .collect();
    batch["ticks"].as_array_mut().expect("ticks").extend(pulls);
    assert_eq!(ticked(&batch, 54), [some("step:3", 50), some("step:4", 53)]);
    // A second heat was in the first where all of it was read hot enough (165 °F for birds, USDA FSIS, published).
    let mut twice = batch.clone();
    twice["recipe"]["steps"]
        .as_array_mut()
        .expect("steps")
        .insert(4, json!({"do": "cook", "lasts": "1 h"}));
    let cook = |batch: &Value| ticked(batch, 54)[1].clone();
    assert_eq!(cook(&twice), none("step:4"));
    let places = twice["pieces"].as_array().expect("pieces").len();
    let hot = (0..places).map(|at| json!({"class": at, "temperature": "76 °C", "at": RUB + 52 * HOUR + HOUR / 2}));
    let cold = (0..places).map(|at| json!({"class": at, "temperature": "4 °C", "at": RUB + 50 * HOUR}));
    twice["fire"] = json!({"readings": cold.chain(hot).collect::<Vec<_>>()});
    assert_eq!(cook(&twice), some("step:4", 53));
    // A drying that nobody ticked is over once it lies in the heat, and what is all out is chilled next.
    let mut undried = batch.clone();
    let ticks = undried["ticks"].as_array_mut().expect("ticks");
    ticks.retain(|tick| tick["of"] != "step:2");
    assert_eq!(ticked(&undried, 54), [some("step:3", 50), some("step:4", 53)]);
    assert_eq!(at(&undried, 54)["jobs"][0]["id"], at(&batch, 54)["jobs"][0]["id"]);
    // Where one of two sizes was not, it was not.
    let mut uneven = twice.clone();
    uneven["pieces"] = json!([twice["pieces"][0], twice["pieces"][0]]);
    uneven["ticks"]
        .as_array_mut()
        .expect("ticks")
        .push(json!({"of": "pull:1", "at": RUB + 53 * HOUR}));
    let cool = json!({"class": 1, "temperature": "60 °C", "at": RUB + 52 * HOUR + HOUR / 2});
    uneven["fire"]["readings"].as_array_mut().expect("readings").push(cool);
    assert_eq!(cook(&uneven), none("step:4"));
    // While it is not rinsed nothing is taken for begun.
    let mut early = rubbed(&[]);
    early["recipe"]["steps"] = batch["recipe"]["steps"].clone();
    early["fire"] = batch["fire"].clone();
    assert_eq!(ticked(&early, 51), [none("step:3"), none("step:4")]);
}
