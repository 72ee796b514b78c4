//! What a batch has earned, size by size, and which doubt stands where. The rules are those of `assured.rs` and `labels.rs`;
//! here is what a second size, an hour or a degree changes.

use super::labels::{COOKED, DAY, HOUR, LONG, OUT, asked, done, fact, lit, log, of_cut, paper, read, recipe, tick};
use cure_reckoner_tests::{ok, rub, settings, weighed_in};
use serde_json::{Value, json};

fn standing(batch: &Value, now: i64) -> Value {
    ok(&json!({"standing": {"batch": batch, "now": now, "settings": settings("0.1 g")}}))
}

/// Seven hours after the heat.
fn assured(batch: &Value) -> Value {
    standing(batch, OUT + 7 * HOUR)["assured"].clone()
}

fn kinds(standing: &Value) -> Vec<&str> {
    let doubts = standing["doubts"].as_array().expect("doubts");
    doubts.iter().map(|d| d["kind"].as_str().expect("a kind")).collect()
}

fn doubt<'a>(standing: &'a Value, kind: &str) -> &'a Value {
    let mut doubts = standing["doubts"].as_array().expect("doubts").iter();
    let found = doubts.find(|d| d["kind"] == kind);
    found.unwrap_or_else(|| panic!("{kind} is not among {:?}", kinds(standing)))
}

/// A second size beside the first, with a log of its own from the end of the heat.
fn two(second: &str, readings: &[(f64, &str)], pulled: Option<i64>) -> Value {
    let mut recipe = recipe();
    recipe["lines"] = json!([]);
    let mut batch = done("mallard-breast", &recipe, LONG, "76 °C");
    let mut piece = batch["pieces"][0].clone();
    piece["cut"] = json!(second);
    batch["pieces"].as_array_mut().expect("pieces").push(piece);
    let own = read(json!({}), readings)["fire"]["readings"].clone();
    let all = batch["fire"]["readings"].as_array_mut().expect("readings");
    all.extend(own.as_array().expect("readings").iter().map(|reading| {
        let mut reading = reading.clone();
        reading["class"] = json!(1);
        reading
    }));
    all.sort_by_key(|reading| reading["at"].as_i64());
    pulled.into_iter().for_each(|at| tick(&mut batch, "pull:1", at));
    batch
}

/// The refrigerator was read every other day that it lay in its cure.
fn seen_cold(mut batch: Value) -> Value {
    let begun = OUT - 3 * HOUR - LONG;
    let read = |days: i64| json!({"at": begun + days * DAY, "what": "read", "reads": "3 °C"});
    batch["fridge"] = (0..LONG / DAY).step_by(2).map(read).collect();
    batch
}

#[test]
fn what_is_done_is_assured() {
    let done = done("mallard-breast", &recipe(), LONG, "76 °C");
    // By a cold that nobody saw it is cured to no hour.
    assert_eq!(assured(&done)["cured"], false);
    let all = assured(&seen_cold(done));
    for word in ["dose", "cured", "cooked", "gift", "go_on"] {
        assert_eq!(all[word], true, "{word}: {all}");
    }
    for word in ["hot", "chilled"] {
        assert_eq!(all[word], json!([true]), "{word}: {all}");
    }
    assert_eq!(all["no_cure"], false);
}

/// In its cure nothing of it was read: it is neither hot nor chilled, though nothing about its fire is in doubt.
#[test]
fn what_was_never_over_the_fire_is_not_hot() {
    let begun = OUT - 3 * HOUR;
    let mut batch = weighed_in(of_cut("mallard-breast", &recipe()), begun);
    tick(&mut batch, "rub", begun);
    let all = standing(&batch, OUT)["assured"].clone();
    assert_eq!((&all["hot"], &all["chilled"]), (&json!([false]), &json!([false])));
    assert_eq!((&all["cooked"], &all["gift"]), (&json!(false), &json!(false)));
}

/// One size that is done says nothing of another.
#[test]
fn every_size_earns_its_own() {
    let good = log("76 °C");
    let both = assured(&two("mallard-breast", &good, Some(OUT)));
    assert_eq!(
        (&both["hot"], &both["chilled"]),
        (&json!([true, true]), &json!([true, true]))
    );
    assert_eq!((&both["cooked"], &both["gift"]), (&json!(true), &json!(true)));
    assert_ne!(both["use_by"], Value::Null);
    // Never read: it is not cooked, whether or not anybody ticked the fire.
    for ticked in [true, false] {
        let mut unread = two("mallard-breast", &[], None);
        if !ticked {
            let ticks = unread["ticks"].as_array_mut().expect("ticks");
            ticks.retain(|t| t["of"] != "step:1" && t["of"] != "step:3");
        }
        let all = assured(&unread);
        assert_eq!((&all["hot"], &all["cooked"]), (&json!([true, false]), &json!(false)));
        assert_eq!((&all["use_by"], &all["gift"]), (&Value::Null, &json!(false)));
    }
    // Hot, and not read cold since.
    let warm = assured(&two("mallard-breast", &good[..4], Some(OUT)));
    assert_eq!(
        (&warm["hot"], &warm["chilled"]),
        (&json!([true, true]), &json!([true, false]))
    );
    assert_eq!(
        (&warm["cooked"], &warm["use_by"], &warm["gift"]),
        (&json!(true), &Value::Null, &json!(false))
    );
}

/// Birds are cooked at 165 °F, 74 °C (USDA FSIS chart, published), red game at 160 °F, 71 °C (FSIS, Game from Farm to Table,
/// quoted). Together they were read at the lower of the two at least, and have to be read at the higher; what keeps is
/// counted from the size that came out first.
#[test]
fn of_two_kinds_the_stricter_counts() {
    let labels = |batch: &Value| asked(batch, OUT + 7 * HOUR, false, false, "us-home");
    let earlier: Vec<(f64, &str)> = log("76 °C").iter().map(|(at, reads)| (at - 0.5, *reads)).collect();
    let cooked = labels(&two("fallow-haunch", &earlier, Some(OUT - HOUR / 2)));
    let pack = paper(&cooked, "pack");
    assert_eq!(fact(&pack, &COOKED)["read"]["text"], "71.1 °C");
    // As cooked red meat three days, the shorter (USDA FSIS cold storage chart, quoted).
    assert_eq!(pack["until"], OUT - HOUR / 2 + 3 * DAY);
    let raw = labels(&two("fallow-haunch", &[], None));
    assert_eq!(fact(&paper(&raw, "pack"), &COOKED)["needed"]["text"], "73.9 °C");
}

/// What is past finishing is told once: neither to be cooked on nor to be chilled.
#[test]
fn what_is_past_finishing_is_told_so_alone() {
    let log = [
        (-3.0, "4 °C"),
        (-1.5, "40 °C"),
        (-0.05, "60 °C"),
        (1.25, "20 °C"),
        (3.5, "4 °C"),
    ];
    let mut batch = seen_cold(read(lit("mallard-breast", &recipe(), LONG), &log));
    tick(&mut batch, "pull:0", OUT);
    let told = standing(&batch, OUT + 4 * HOUR);
    assert_eq!(kinds(&told), ["partly_abandoned"]);
}

/// Smoke that does not say how warm it is, or is no warmer than 30 °C, is not to cook; 31 °C, an end at a temperature and
/// cooking are. The first reading is due two hours after the heat began, the first of two heats, whatever rested before it.
#[test]
fn what_is_to_cook_is_read() {
    let after = |steps: Value, ticked: &[(usize, i64)]| {
        let mut recipe = recipe();
        recipe["steps"] = steps;
        let mut batch = weighed_in(of_cut("mallard-breast", &recipe), OUT - LONG);
        tick(&mut batch, "rub", OUT - LONG);
        ticked
            .iter()
            .for_each(|(step, hours)| tick(&mut batch, &format!("step:{step}"), OUT - hours * HOUR));
        let told = standing(&batch, OUT);
        let read = kinds(&told)
            .into_iter()
            .find(|kind| ["to_read", "not_read"].contains(kind));
        read.map(str::to_owned)
    };
    let cure = json!({"do": "cure", "lasts": "236 h", "at": "3 °C"});
    let heat = |heat: Value| after(json!([cure, heat]), &[(1, 3)]);
    let unread = Some("not_read".to_owned());
    assert_eq!(heat(json!({"do": "cook", "lasts": "3 h"})), unread);
    assert_eq!(heat(json!({"do": "smoke", "lasts": "3 h"})), None);
    assert_eq!(heat(json!({"do": "smoke", "lasts": "3 h", "at": "30 °C"})), None);
    assert_eq!(heat(json!({"do": "smoke", "lasts": "3 h", "at": "31 °C"})), unread);
    assert_eq!(heat(json!({"do": "smoke", "lasts": "3 h", "until": "74 °C"})), unread);
    let smoke = json!({"do": "smoke", "lasts": "3 h", "at": "110 °C"});
    let twice = json!([cure, smoke, {"do": "cook", "lasts": "1 h"}]);
    assert_eq!(after(twice, &[(1, 3), (2, 1)]), unread);
    let rested = json!([cure, {"do": "rest", "lasts": "1 h"}, smoke]);
    assert_eq!(after(rested, &[(1, 2), (2, 1)]), Some("to_read".to_owned()));
}

/// Wild boar, bear, hare and birds are not made safe by curing and hanging (CDC, trichinellosis, published), beside whatever
/// else hangs; of red game alone nothing is known that would say so.
#[test]
fn what_hangs_with_boar_is_refused_as_boar() {
    let hung = |cuts: &[&str]| {
        let mut recipe = recipe();
        recipe["eaten"] = json!("hung_for_months");
        let mut batch = of_cut("fallow-haunch", &recipe);
        let piece = |cut: &&str| {
            let mut piece = batch["pieces"][0].clone();
            piece["cut"] = json!(cut);
            piece
        };
        batch["pieces"] = cuts.iter().map(piece).collect();
        let told = standing(&batch, OUT);
        let of = |kind: &&str| ["eaten_raw", "hanging_unproven"].contains(kind);
        kinds(&told)
            .into_iter()
            .filter(of)
            .map(str::to_owned)
            .collect::<Vec<_>>()
    };
    assert_eq!(hung(&["fallow-haunch"]), ["hanging_unproven"]);
    assert_eq!(hung(&["fallow-haunch", "boar-belly"]), ["eaten_raw"]);
}

/// 40 °F is the most for the cold (USDA FSIS, published): of two cures the warmer one counts, and the figure itself is cold.
#[test]
fn a_recipe_that_cures_too_warm_is_held() {
    let held = |at: [&str; 2]| {
        let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
        let cure = |at: &str| json!({"do": "cure", "lasts": "36 h", "at": at});
        recipe["steps"] = at.map(cure).into();
        kinds(&standing(&of_cut("mallard-breast", &recipe), OUT)).contains(&"recipe_too_warm")
    };
    assert!(!held(["3 °C", "40 °F"]));
    assert!(held(["3 °C", "41 °F"]));
    assert!(held(["41 °F", "3 °C"]));
}

/// A time keeps to its last moment; what was packed for the freezer in time stays so, whenever it is asked.
#[test]
fn a_time_keeps_to_its_last_moment() {
    let done = done("mallard-breast", &recipe(), LONG, "76 °C");
    let until = OUT + 14 * DAY;
    assert_eq!(standing(&done, until)["assured"]["use_by"], until);
    assert_eq!(standing(&done, until + 1)["assured"]["use_by"], Value::Null);
    let frozen = |packed: i64| {
        let mut batch = done.clone();
        let ticks = batch["ticks"].as_array_mut().expect("ticks");
        ticks.retain(|t| t["of"] != "step:3");
        tick(&mut batch, "step:3", packed);
        paper(&asked(&batch, OUT + 20 * DAY, true, false, "us-home"), "pack")["until"].clone()
    };
    assert_eq!(frozen(until), OUT + 30 * DAY);
    assert_eq!(frozen(until + 1), Value::Null);
}

/// Warm now it is cooled now; cold again, nothing takes the warm hour back, and it is cooked through. Of cold that nobody
/// saw, what is out is cooked through, and what is in it is read.
#[test]
fn what_clears_a_doubt_of_the_cold() {
    let begun = OUT - 10 * DAY;
    let mut batch = weighed_in(of_cut("mallard-breast", &recipe()), begun);
    batch.as_object_mut().expect("a batch").remove("killed");
    tick(&mut batch, "rub", begun);
    let with = |log: &[(i64, &str)], half_hours: i64| {
        let mut batch = batch.clone();
        let entry = |(at, reads): &(i64, &str)| json!({"at": begun + at * HOUR / 2, "what": "read", "reads": reads});
        batch["fridge"] = log.iter().map(entry).collect();
        standing(&batch, begun + half_hours * HOUR / 2)
    };
    let warm = with(&[(2, "3 °C"), (4, "7 °C")], 5);
    assert_eq!(doubt(&warm, "warm")["clears"], "cool_now");
    let again = with(&[(2, "3 °C"), (4, "7 °C"), (5, "3 °C")], 6);
    assert_eq!(doubt(&again, "warm")["clears"], "cook_through");
    let unseen = standing(&batch, begun + 5 * DAY);
    assert_eq!(doubt(&unseen, "cold_unseen")["clears"], "read_cold");
    tick(&mut batch, "step:1", begun + 5 * DAY);
    let unseen = standing(&batch, begun + 5 * DAY);
    assert_eq!(doubt(&unseen, "cold_unseen")["clears"], "cook_through");
}
