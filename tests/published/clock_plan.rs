//! The plan by the cure clock: what is due when, and which pieces come out first.

use crate::clock::{HOUR, RUB, at, breast, clock_of, cured, leg};
use cure_reckoner_tests::{ok, settings};
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

fn due(plan: &Value, id: &str) -> f64 {
    (job(plan, id)["due"].as_i64().expect("a due time") - RUB) as f64 / HOUR as f64
}

fn ticked(mut batch: Value, of: &str, hours: i64) -> Value {
    let ticks = batch["ticks"].as_array_mut().unwrap();
    ticks.push(json!({"of": of, "at": RUB + hours * HOUR}));
    batch
}

/// Due times go up to the half-hour.
fn half(hours: f64) -> f64 {
    (hours * 2.0).ceil() / 2.0
}

#[test]
fn the_plan_says_when_the_slowest_is_through() {
    let batch = cured(json!([breast("25 mm"), breast("38 mm")]), "36 h");
    let list =
        ok(&json!({"next": {"batches": [{"id": "b", "batch": batch}], "now": RUB, "settings": settings("0.1 g")}}));
    let rinse = list["batches"][0]["jobs"]
        .as_array()
        .unwrap()
        .iter()
        .find(|j| j["id"] == "step:1")
        .unwrap();
    let text = rinse["text"].as_str().unwrap();
    let clock = clock_of(&batch, 0.0);
    for when in ["earliest", "likely", "latest"] {
        let hours = at(&clock, 1, "colour", when).round();
        // From three days on, days are printed.
        let printed = if hours < 72.0 {
            format!("{hours} h")
        } else {
            format!("{:.1} d", hours / 24.0)
        };
        assert!(text.contains(&printed), "{printed} in: {text}");
    }
    assert!(text.contains("4 Mallard breast"), "{text}");
    // Once it is rinsed there is nothing to wait for.
    let mut rinsed = batch.clone();
    rinsed["ticks"]
        .as_array_mut()
        .unwrap()
        .push(json!({"of": "step:1", "at": RUB + 40 * HOUR}));
    let list = ok(
        &json!({"next": {"batches": [{"id": "b", "batch": rinsed}], "now": RUB + 41 * HOUR, "settings": settings("0.1 g")}}),
    );
    assert!(!list.to_string().contains("cure clock"));
}

#[test]
fn the_plan_goes_by_the_clock() {
    // Thick pieces: the rinse waits until they are likely through, and the turns go on until then.
    let batch = cured(json!([breast("16 mm"), breast("45 mm")]), "36 h");
    let (list, clock) = (plan(&batch, 1), clock_of(&batch, 1.0));
    let likely = at(&clock, 1, "colour", "likely");
    assert!(likely > 40.0, "{likely}");
    assert!((due(&list, "step:1") - half(likely)).abs() < 1e-6, "{likely}");
    assert_eq!(job(&list, "step:0")["ends"], job(&list, "step:1")["due"]);
    assert_eq!(due(&list, "turn:0:2"), 36.0);
    assert!(
        job(&list, "step:1")["text"]
            .as_str()
            .unwrap()
            .contains("later than the recipe")
    );
    // Each class has its window: likely, nine in ten, salt even.
    let windows = job(&list, "step:1")["windows"].as_array().unwrap();
    assert_eq!(windows.len(), 2);
    for (class, window) in windows.iter().enumerate() {
        let hour = |of: &str| (window[of].as_i64().unwrap() - RUB) as f64 / HOUR as f64;
        assert_eq!(window["name"], clock["classes"][class]["name"]);
        assert!((hour("earliest") - at(&clock, class, "colour", "likely")).abs() < 1e-6);
        assert!((hour("surely") - at(&clock, class, "colour", "latest")).abs() < 1e-6);
        assert!((hour("latest") - at(&clock, class, "even", "latest").max(36.0)).abs() < 1e-6);
    }
    // Thin pieces: the recipe's time stands.
    let thin = plan(&cured(json!([breast("16 mm")]), "36 h"), 1);
    assert_eq!(due(&thin, "step:1"), 36.0);
    assert!(!job(&thin, "step:1")["text"].as_str().unwrap().contains("later than"));
    // Once it is rinsed there is nothing to wait for.
    let rinsed = plan(&ticked(batch, "step:1", 50), 51);
    assert!(job(&rinsed, "step:1")["windows"].as_array().unwrap().is_empty());
}

#[test]
fn small_pieces_out_first() {
    let batch = cured(json!([breast("16 mm"), breast("45 mm")]), "36 h");
    let (list, clock) = (plan(&batch, 1), clock_of(&batch, 1.0));
    // When it is likely through.
    assert!((due(&list, "draw:0") - half(at(&clock, 0, "colour", "likely"))).abs() < 1e-6);
    assert!(job(&list, "draw:1").is_null(), "the slowest is the rinse itself");
    let today = list["jobs"].as_array().unwrap();
    assert!(
        today
            .iter()
            .any(|j| j["id"] == "draw:0" && j["head"] == "Take out 4 Mallard breast")
    );
    // Taken out, its clock stops there; the rest goes on.
    let out = ticked(batch, "draw:0", 20);
    let (list, later) = (plan(&out, 30), clock_of(&out, 30.0));
    assert_eq!(job(&list, "draw:0")["ticked"], RUB + 20 * HOUR);
    assert_eq!(job(&list, "step:1")["windows"].as_array().unwrap().len(), 1);
    assert_eq!(later["classes"][0]["out"], RUB + 20 * HOUR);
    assert_eq!(
        later["classes"][0]["profile"],
        clock_of(&out, 20.0)["classes"][0]["profile"]
    );
    // Alike pieces have nobody to go first.
    let alike = plan(&cured(json!([breast("30 mm"), breast("31 mm")]), "36 h"), 1);
    assert!(job(&alike, "draw:0").is_null() && job(&alike, "draw:1").is_null());
}

#[test]
fn frozen_hours_move_the_due_times() {
    let mut batch = cured(json!([breast("16 mm")]), "36 h");
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

#[test]
fn what_is_never_through_is_not_waited_for() {
    let mut piece = leg("150 mm", "7 kg");
    piece["skin"] = json!(true);
    let list = plan(&cured(json!([piece]), "7 d"), 1);
    assert_eq!(due(&list, "step:1"), 168.0);
    let text = job(&list, "step:1")["text"].as_str().unwrap();
    assert!(
        text.contains("60 days") && text.contains("thinner") && text.contains("pump"),
        "{text}"
    );
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
    assert!(job(&list, "step:1")["windows"].as_array().unwrap().is_empty());
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
