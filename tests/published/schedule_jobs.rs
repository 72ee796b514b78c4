//! Which jobs a batch has at the hours at which one gives way to another; the batch is that of `schedule.rs`.

use super::schedule::{HOUR, RUB, at, cured, does, jobs, on_the_board, rubbed};
use cure_reckoner_tests::{ok, settings, weighed_in};
use serde_json::{Value, json};

/// What is neither done nor passed over, of all that the batch has.
fn open(list: &Value) -> Vec<&str> {
    let all = list["batches"][0]["jobs"].as_array().expect("jobs");
    let open = all.iter().filter(|j| j["ticked"].is_null() && j["passed"] == false);
    open.map(|j| j["id"].as_str().expect("an id")).collect()
}

/// A turn is missed for good once the next one is due, or what follows the cure is, to the minute, or is begun.
#[test]
fn a_missed_turn_gives_way_to_what_is_due() {
    let turns = |list: &Value| -> Vec<String> {
        let of = |id: &&str| id.starts_with("turn:");
        open(list).into_iter().filter(of).map(str::to_owned).collect()
    };
    assert_eq!(turns(&at(&rubbed(&[]), 23)), ["turn:0:0", "turn:0:1"]);
    assert_eq!(turns(&at(&rubbed(&[]), 24)), ["turn:0:1"]);
    assert_eq!(turns(&at(&rubbed(&[]), 35)), ["turn:0:1"]);
    assert_eq!(turns(&at(&rubbed(&[]), 36)), [""; 0]);
    assert_eq!(turns(&at(&rubbed(&[("step:1", 20)]), 21)), [""; 0]);
}

/// The day of the cure counts from the hour of the rub.
#[test]
fn the_day_of_the_cure() {
    let day = |hours: i64| at(&rubbed(&[]), hours)["batches"][0]["whereabouts"]["day"].clone();
    assert_eq!([day(0), day(23), day(24), day(35)], [1, 1, 2, 2].map(Value::from));
}

/// Two hours at room temperature are the most (USDA FSIS, published): from then on it is asked when it went into the cold.
#[test]
fn from_two_hours_on_it_is_asked_when_it_went_into_the_cold() {
    let asked = |minutes: i64| {
        let now = RUB + minutes * 60_000;
        let batch = on_the_board(&[]);
        let list = ok(&json!({"next": {
            "batches": [{"id": "b", "batch": batch}], "now": now, "settings": settings("0.1 g")
        }}));
        let job = list["jobs"][0].clone();
        assert_eq!(does(&job), "into_fridge");
        job["does"]["on"].clone()
    };
    assert_eq!([asked(119), asked(120)], [Value::Null, json!("2 h")]);
}

/// The marks of a chill stand from the end of the heat on, 2 h and 6 h after it (FDA Food Code 3-501.14, published), until
/// something after the chill is begun or the batch is put away.
#[test]
fn the_marks_of_a_chill_go_when_it_is_over() {
    let marks = |more: &[(&str, i64)]| -> Vec<(String, i64)> {
        let smoked = [("step:1", 36), ("step:2", 37), ("step:3", 61), ("step:4", 64)];
        let mut batch = rubbed(&[&smoked[..], more].concat());
        let steps = batch["recipe"]["steps"].as_array_mut().expect("steps");
        steps.push(json!({"do": "pack"}));
        let list = at(&batch, 72);
        let times = list["batches"][0]["times"].as_array().expect("times").clone();
        let of = |t: &Value| {
            let id = t["id"].as_str().expect("an id").to_owned();
            (id, (t["at"].as_i64().expect("a time") - RUB) / HOUR)
        };
        let is_mark = |id: &str| id.starts_with("two_hours") || id.starts_with("cold");
        times.iter().map(of).filter(|(id, _)| is_mark(id)).collect()
    };
    assert_eq!(marks(&[]), [("two_hours:4".into(), 66), ("cold:4".into(), 70)]);
    assert_eq!(marks(&[("step:5", 71)]), []);
    assert_eq!(marks(&[("end", 71)]), []);
}

/// What is struck out was not read.
#[test]
fn a_reading_that_is_struck_is_still_to_be_made() {
    let of = |struck: bool| {
        let mut batch = rubbed(&[("step:1", 36), ("step:2", 37), ("step:3", 61)]);
        batch["fire"] = json!({"readings": [
            {"class": 0, "temperature": "8 °C", "at": RUB + 61 * HOUR, "struck": struck}
        ]});
        jobs(&at(&batch, 61)).iter().any(|(does, _)| does == "read_fire")
    };
    assert_eq!([of(true), of(false)], [true, false]);
}

/// Before it is in its cure: pieces, then the list, of which no more is asked for than is left; the cure that is in is
/// never asked for again.
#[test]
fn what_is_left_of_the_list_is_asked_for() {
    let job = |batch: &Value| {
        let list = at(batch, 0);
        let where_ = list["batches"][0]["whereabouts"]["is"].as_str().expect("a place");
        (does(&list["jobs"][0]).to_owned(), where_.to_owned())
    };
    let told = |does: &str, is: &str| (does.to_owned(), is.to_owned());
    let mut new = cured(json!([]));
    let two = json!([
        {"item": "salt-sea-fine", "share": {"of": "green_weight", "amount": "1 %"}},
        {"item": "sugar-white", "share": {"of": "green_weight", "amount": "1 %"}}
    ]);
    new["recipe"]["lines"] = two;
    assert_eq!(job(&new), told("weigh_cure", "not_in_cure"));
    let mut unweighed = new.clone();
    unweighed["pieces"][0]
        .as_object_mut()
        .expect("a piece")
        .remove("weight");
    assert_eq!(job(&unweighed), told("weigh_pieces", "pieces_to_weigh"));
    let all = weighed_in(new, RUB - HOUR);
    assert_eq!(job(&all), told("start", "not_in_cure"));
    let mut but_one = all;
    let ticks = but_one["ticks"].as_array_mut().expect("ticks");
    ticks.retain(|tick| tick["of"] != "line:1");
    assert_eq!(job(&but_one), told("weigh_rest", "not_in_cure"));
}

/// It comes out at the first whole hour from which all that follows falls into nobody's sleep. Rinsed, it dries 24 to 36 h,
/// and whoever smokes it is by: away from hour 50 to 80, it has to come out at 44 at the earliest.
#[test]
fn it_comes_out_when_the_rest_of_the_work_finds_its_time() {
    let until = |to: i64| {
        let away = json!([{"from": RUB + 50 * HOUR, "to": RUB + to * HOUR}]);
        let list = ok(&json!({"next": {
            "batches": [{"id": "b", "batch": rubbed(&[])}], "now": RUB + HOUR, "rests": away, "settings": settings("0.1 g")
        }}));
        (list["batches"][0]["until"]["at"].as_i64().expect("an hour") - RUB) / HOUR
    };
    assert_eq!(until(80), 44);
    assert_eq!(until(72), 36);
}

/// The fire is begun at the first reading of a piece that stands, not of the air; it is over when the last size is out. A pull
/// does not say of which heat it is: what is chilled between two is not taken for begun.
#[test]
fn the_log_begins_and_ends_the_fire() {
    let read = |class: Value, hour: i64, struck: bool| json!({"class": class, "temperature": "20 °C", "at": RUB + hour * HOUR, "struck": struck});
    let mut batch = rubbed(&[("step:1", 36), ("step:2", 37), ("pull:0", 65), ("pull:1", 64)]);
    batch["pieces"] = json!([batch["pieces"][0], batch["pieces"][0]]);
    batch["fire"] = json!({"readings": [
        read(json!(0), 60, true), read(Value::Null, 61, false), read(json!(0), 62, false), read(json!(1), 63, false)
    ]});
    let ticked = |batch: &Value, id: &str| {
        let list = at(batch, 66);
        let all = list["batches"][0]["jobs"].as_array().expect("jobs");
        let job = all.iter().find(|job| job["id"] == id).expect("a job");
        job["ticked"].as_i64().map(|at| (at - RUB) / HOUR)
    };
    assert_eq!(
        (ticked(&batch, "step:3"), ticked(&batch, "step:4")),
        (Some(62), Some(65))
    );
    let steps = batch["recipe"]["steps"].as_array_mut().expect("steps");
    steps.push(json!({"do": "cook", "lasts": "1 h"}));
    assert_eq!((ticked(&batch, "step:3"), ticked(&batch, "step:4")), (Some(62), None));
}

/// A turn that makes way for rest stands on the hour nearest to its own that is nobody's sleep, and where there is no such
/// hour as soon as somebody is awake.
#[test]
fn a_turn_makes_way_for_rest() {
    let turn = |rests: &[(i64, i64)]| {
        let rest = |(from, to): &(i64, i64)| json!({"from": RUB + from * HOUR / 4, "to": RUB + to * HOUR / 4});
        let rests: Vec<Value> = rests.iter().map(rest).collect();
        let list = ok(&json!({"next": {
            "batches": [{"id": "b", "batch": rubbed(&[])}], "now": RUB + HOUR, "rests": rests, "settings": settings("0.1 g")
        }}));
        let times = list["batches"][0]["times"].as_array().expect("times");
        let turn = times.iter().find(|t| t["id"] == "turn:0:0").expect("a turn");
        let quarters = |key: &str| (turn[key].as_i64().expect("a time") - RUB) * 4 / HOUR;
        (quarters("at"), quarters("moved"))
    };
    // Due at 12 (48 quarters): asleep from half past ten to eight in the evening, and awake for a quarter of an hour.
    assert_eq!(turn(&[(42, 80)]), (40, 48));
    assert_eq!(turn(&[(40, 54), (55, 80)]), (54, 48));
}

/// Sizes that come out first are told once, whatever cures there are, and no more once the rest is out.
#[test]
fn what_may_come_out_first_is_told_while_it_may() {
    let two = |ticks: &[(&str, i64)], cures: usize| {
        let mut batch = rubbed(ticks);
        let teal = json!({"cut": "teal-breast", "count": 8, "weight": "300 g", "thickness": "10 mm"});
        batch["pieces"] = json!([teal, batch["pieces"][0]]);
        batch["pieces"][1]["thickness"] = json!("22 mm");
        let steps = batch["recipe"]["steps"].as_array_mut().expect("steps");
        (1..cures).for_each(|_| steps.insert(0, steps[0].clone()));
        batch
    };
    let drawn = |batch: &Value, hours: i64| {
        let list = at(batch, hours);
        let times = list["batches"][0]["times"].as_array().expect("times");
        times.iter().filter(|t| t["id"] == "draw:0").count()
    };
    assert_eq!(drawn(&two(&[], 1), 5), 1);
    assert_eq!(drawn(&two(&[], 2), 5), 1);
    assert_eq!(drawn(&two(&[("step:1", 36)], 1), 37), 0);
    // What it does then are the steps of the recipe.
    let list = at(&two(&[("draw:0", 20)], 1), 21);
    let all = list["batches"][0]["jobs"].as_array().expect("jobs");
    let own = all.iter().filter(|job| job["does"]["is"] == "step_of");
    let acts: Vec<(&Value, &Value)> = own.map(|job| (&job["id"], &job["does"]["step"]["do"])).collect();
    assert_eq!(
        acts,
        [(&json!("rinse:0"), &json!("rinse")), (&json!("dry:0"), &json!("dry"))]
    );
}
