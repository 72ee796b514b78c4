//! What a batch has earned where one fact of several decides: one size weighed, one taken out early, one step not ticked.

use super::labels::{DAY, HOUR, LONG, OUT, done, of_cut, recipe, tick};
use cure_reckoner_tests::{ok, rub, settings, weigh_out, weighed_in};
use serde_json::{Value, json};

fn standing(batch: &Value, now: i64) -> Value {
    ok(&json!({"standing": {"batch": batch, "now": now, "settings": settings("0.1 g")}}))
}

fn kinds(standing: &Value) -> Vec<&str> {
    let doubts = standing["doubts"].as_array().expect("doubts");
    doubts.iter().map(|d| d["kind"].as_str().expect("a kind")).collect()
}

fn doubts<'a>(standing: &'a Value, kind: &str) -> Vec<&'a Value> {
    let doubts = standing["doubts"].as_array().expect("doubts");
    doubts.iter().filter(|d| d["kind"] == kind).collect()
}

fn with_steps(steps: Value) -> Value {
    let mut recipe = recipe();
    recipe["steps"] = steps;
    recipe
}

fn without_cure() -> Value {
    let mut recipe = recipe();
    recipe["cures"] = json!([]);
    recipe
}

/// Whatever else is known of what was thrown out, no word is left of it, and nothing about it is to be mended.
#[test]
fn what_is_thrown_out_has_earned_nothing() {
    for recipe in [recipe(), without_cure()] {
        let mut batch = done("mallard-breast", &recipe, LONG, "76 °C");
        batch["thrown_out"] = json!(OUT + HOUR);
        let told = standing(&batch, OUT + 7 * HOUR);
        assert_eq!(kinds(&told), ["thrown_out"]);
        for word in ["dose", "no_cure", "cured", "cooked", "gift", "go_on"] {
            assert_eq!(told["assured"][word], false, "{word}");
        }
        assert_eq!(told["assured"]["use_by"], Value::Null);
    }
}

/// Of two sizes one is not weighed: nobody knows a dose, and that there is no cure in it is known all the same.
#[test]
fn one_size_that_is_not_weighed() {
    let two = |recipe: &Value| {
        let mut batch = of_cut("mallard-breast", recipe);
        let mut piece = batch["pieces"][0].clone();
        piece.as_object_mut().expect("a size").remove("weight");
        batch["pieces"].as_array_mut().expect("sizes").push(piece);
        standing(&batch, OUT)
    };
    let (cured, plain) = (two(&recipe()), two(&without_cure()));
    assert!(kinds(&cured).contains(&"not_weighed") && kinds(&plain).contains(&"not_weighed"));
    assert_eq!(
        (&cured["assured"]["dose"], &cured["assured"]["no_cure"]),
        (&json!(false), &json!(false))
    );
    assert_eq!(
        (&plain["assured"]["no_cure"], &plain["assured"]["go_on"]),
        (&json!(true), &json!(true))
    );
}

/// Dried meat keeps by how dry it is, which nobody measured: past the time of what is only smoked it is doubted, and not
/// called spoilt. Both stay cooked.
#[test]
fn what_was_dried_is_doubted_and_the_rest_is_past() {
    let dried = with_steps(json!([
        {"do": "cure", "lasts": "240 h", "at": "3 °C"},
        {"do": "smoke", "lasts": "3 h", "at": "110 °C"},
        {"do": "dry_out", "lasts": "5 h", "at": "70 °C"},
        {"do": "chill", "lasts": "6 h"},
        {"do": "pack"}
    ]));
    for (recipe, kind, go_on) in [(dried, "dryness_untold", true), (recipe(), "past_keeping", false)] {
        let mut batch = done("mallard-breast", &recipe, LONG, "76 °C");
        let last = recipe["steps"].as_array().expect("steps").len() - 1;
        tick(&mut batch, &format!("step:{last}"), OUT + 6 * HOUR);
        let told = standing(&batch, OUT + 20 * DAY);
        let about: Vec<_> = kinds(&told)
            .into_iter()
            .filter(|k| ["dryness_untold", "past_keeping"].contains(k))
            .map(str::to_owned)
            .collect();
        assert_eq!(about, [kind]);
        let all = &told["assured"];
        assert_eq!((&all["cooked"], &all["go_on"]), (&json!(true), &json!(go_on)), "{kind}");
        assert_eq!((&all["gift"], &all["use_by"]), (&json!(false), &Value::Null), "{kind}");
    }
}

/// Over the fire with the rinse of its recipe not ticked; and a recipe that does not begin with a cure has none to be in.
#[test]
fn a_rinse_that_nobody_ticked() {
    let steps = with_steps(json!([
        {"do": "cure", "lasts": "240 h", "at": "3 °C"},
        {"do": "rinse"},
        {"do": "smoke", "lasts": "3 h", "at": "110 °C"}
    ]));
    let begun = OUT - LONG;
    let mut batch = weighed_in(of_cut("mallard-breast", &steps), begun);
    tick(&mut batch, "rub", begun);
    assert!(kinds(&standing(&batch, OUT - HOUR)).contains(&"in_cure"));
    tick(&mut batch, "step:2", OUT - HOUR);
    let unrinsed = standing(&batch, OUT);
    assert!(kinds(&unrinsed).contains(&"not_rinsed") && !kinds(&unrinsed).contains(&"in_cure"));
    tick(&mut batch, "step:1", OUT - 2 * HOUR);
    assert!(!kinds(&standing(&batch, OUT)).contains(&"not_rinsed"));

    let mut bare = weighed_in(of_cut("mallard-breast", &rub("6.25 %", "150 ppm", "2.2 %")), begun);
    tick(&mut bare, "rub", begun);
    assert!(!kinds(&standing(&bare, OUT)).contains(&"in_cure"));
}

/// Of two sizes the one that was drawn after an hour came out early, and the one that lies in its cure did not.
#[test]
fn the_size_that_was_drawn_early() {
    let mut list = of_cut("mallard-breast", &recipe());
    let piece = list["pieces"][0].clone();
    list["pieces"].as_array_mut().expect("sizes").push(piece);
    let begun = OUT - LONG;
    let mut batch = weighed_in(list, begun);
    tick(&mut batch, "rub", begun);
    assert_eq!(doubts(&standing(&batch, begun + 2 * HOUR), "out_early").len(), 0);
    tick(&mut batch, "draw:0", begun + HOUR);
    let told = standing(&batch, begun + 2 * HOUR);
    let early = doubts(&told, "out_early");
    assert_eq!(early.len(), 1, "{:?}", kinds(&told));
    assert_eq!(
        (&early[0]["class"], &early[0]["since"]),
        (&json!(0), &json!(begun + HOUR))
    );
}

/// To its last hour raw meat keeps in its cure; a log that was read changes nothing of that, one that says frozen does.
#[test]
fn the_last_hour_in_the_cure() {
    let begun = OUT - LONG;
    let mut batch = weighed_in(of_cut("mallard-breast", &recipe()), begun);
    tick(&mut batch, "rub", begun);
    let with = |what: Value, now: i64| {
        let mut batch = batch.clone();
        batch["fridge"] = json!([what]);
        standing(&batch, now)
    };
    let read = json!({"at": begun + HOUR, "what": "read", "reads": "3 °C"});
    let late = with(read.clone(), begun + 200 * DAY);
    let last = doubts(&late, "over_stayed")[0]["since"].as_i64().expect("a time");
    assert!(last > begun);
    assert_eq!(doubts(&with(read.clone(), last), "over_stayed").len(), 0);
    assert_eq!(doubts(&with(read, last + 1), "over_stayed").len(), 1);
    let frozen = json!({"at": begun + HOUR, "what": "frozen"});
    assert_eq!(doubts(&with(frozen, last + 1), "over_stayed").len(), 0);
}

/// Cooked and not smoked it keeps as leftovers do, three days at least (USDA FSIS, cold storage chart, quoted: three to
/// four), and not as smoked meat does.
#[test]
fn what_was_cooked_is_not_called_smoked() {
    let cooked = with_steps(json!([
        {"do": "cure", "lasts": "240 h", "at": "3 °C"},
        {"do": "cook", "lasts": "3 h", "at": "110 °C"},
        {"do": "chill", "lasts": "6 h"},
        {"do": "pack"}
    ]));
    let use_by = |recipe: &Value| {
        let batch = done("mallard-breast", recipe, LONG, "76 °C");
        standing(&batch, OUT + 7 * HOUR)["assured"]["use_by"].clone()
    };
    assert_eq!(use_by(&cooked), OUT + 3 * DAY);
    assert_eq!(use_by(&recipe()), OUT + 14 * DAY);
}

/// With only the tick of its cure missing the list can be ticked, for that is where it is ticked; with a doubt beside it
/// the list is held.
#[test]
fn a_list_is_ticked_where_only_the_tick_is_missing() {
    let list = |recipe: &Value| {
        let mut batch = of_cut("fallow-haunch", recipe);
        tick(&mut batch, "rub", OUT);
        tick(&mut batch, "step:1", OUT + HOUR);
        let told = standing(&batch, OUT + 2 * HOUR);
        let since = doubts(&told, "cure_not_in")[0]["since"].clone();
        (since, weigh_out(&batch, "0.1 g")["can_tick"].clone())
    };
    assert_eq!(list(&recipe()), (json!(OUT), json!(true)));
    let mut hung = recipe();
    hung["eaten"] = json!("hung_for_months");
    assert_eq!(list(&hung), (json!(OUT), json!(false)));
}

/// Cure that the recipe does not name and that was put in is cure all the same.
#[test]
fn cure_that_was_put_in_beside_the_recipe() {
    let told = |key: &str| {
        let mut batch = of_cut("mallard-breast", &without_cure());
        if !key.is_empty() {
            batch[key] = json!({"amount": "2 g", "nitrite": "6.25 %"});
        }
        standing(&batch, OUT)["assured"]["no_cure"].clone()
    };
    assert_eq!(["", "put_in", "also"].map(told), [true, false, false].map(|b| json!(b)));
}

/// More brine is to be taken up than there is: the dose cannot be reckoned, and that is said.
#[test]
fn a_dose_that_cannot_be_reckoned() {
    let recipe = json!({
        "name": "Pumped", "tag": "TR", "method": "pumped", "take": "10 %",
        "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "100 ppm"}],
        "lines": [{"item": "water", "share": {"of": "green_weight", "amount": "1 %"}}]
    });
    let told = standing(&of_cut("boar-belly", &recipe), OUT);
    assert!(kinds(&told).contains(&"not_reckoned"), "{:?}", kinds(&told));
    assert_eq!(told["assured"]["dose"], false);
}
