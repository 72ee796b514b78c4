//! What the checks share: asking the door as the page does, and small recipes and batches to ask about.

pub mod cooks;
pub mod hard_cooks;
pub mod oracles;

use cure_reckoner::door::answer_json;
use serde_json::{Value, json};

/// The door's answer to a request.
pub fn answer(request: &Value) -> Value {
    serde_json::from_str(&answer_json(&request.to_string())).expect("the door answers JSON")
}

/// The content of a good answer; fails with the problems otherwise.
#[track_caller]
pub fn ok(request: &Value) -> Value {
    let mut answer = answer(request);
    assert!(answer["ok"].is_object(), "{request} was refused: {answer}");
    answer["ok"].take()
}

/// The problems of a refused request; fails where it was answered.
#[track_caller]
pub fn problems(request: &Value) -> Vec<Value> {
    let answer = answer(request);
    answer["problems"]
        .as_array()
        .unwrap_or_else(|| panic!("{request} was not refused: {answer}"))
        .clone()
}

/// Settings with this scale step.
pub fn settings(step: &str) -> Value {
    json!({"units": "metric", "scale_step": step, "profile": "us-home"})
}

/// A rub: one cure and one salt, in per cent and ppm.
pub fn rub(nitrite: &str, aim: &str, salt: &str) -> Value {
    json!({
        "name": "Trial rub", "tag": "TR", "method": "rub",
        "cures": [{"item": "cure-1", "nitrite": nitrite, "nitrate": "0 %", "aim": aim}],
        "lines": [{"item": "salt-sea-fine", "share": {"of": "green_weight", "amount": salt}}]
    })
}

/// A batch of one class with this weight.
pub fn batch(recipe: &Value, pieces: u32, weight: &str) -> Value {
    json!({
        "tag": "TR", "name": "Trial", "recipe": recipe,
        "pieces": [{"cut": "mallard-breast", "count": pieces, "weight": weight}]
    })
}

/// The weigh-out of a batch on a scale.
#[track_caller]
pub fn weigh_out(batch: &Value, step: &str) -> Value {
    ok(&json!({"weigh_out": {"batch": batch, "settings": settings(step)}}))
}

/// The batch with everything of its list ticked as the page ticks it: weighed on a scale of 0.1 g and put in at `at`.
#[track_caller]
pub fn weighed_in(mut batch: Value, at: i64) -> Value {
    let sheet = weigh_out(&batch, "0.1 g");
    let lines = ["bowl", "vessel"]
        .into_iter()
        .flat_map(|list| sheet[list].as_array().expect("lines").clone());
    let mut ticks: Vec<Value> = lines
        .map(|mut line| {
            line["tick"]["at"] = json!(at);
            line["tick"].take()
        })
        .collect();
    ticks.extend(batch["ticks"].as_array().into_iter().flatten().cloned());
    batch["ticks"] = json!(ticks);
    batch
}

/// Texts of one key in a list of lines: `adds(sheet, "bowl")` gives `["3.5 g", …]`.
pub fn texts(sheet: &Value, list: &str, key: &str) -> Vec<String> {
    let lines = sheet[list].as_array().expect("a list of lines");
    lines
        .iter()
        .map(|l| l[key]["text"].as_str().unwrap_or_default().to_owned())
        .collect()
}

/// What a verdict says under this key; null where it does not say it.
pub fn remark(verdict: &Value, is: &str) -> Value {
    fact(&verdict["says"], is)
}

/// The next step of this key that a verdict has; null where it has none.
pub fn next_step(verdict: &Value, is: &str) -> Value {
    fact(&verdict["next"], is)
}

fn fact(list: &Value, is: &str) -> Value {
    let list = list.as_array().expect("a list of facts");
    list.iter().find(|fact| fact["is"] == is).cloned().unwrap_or_default()
}

/// The keys of what a verdict has next, in order.
pub fn next_keys(verdict: &Value) -> Vec<&str> {
    let list = verdict["next"].as_array().expect("next steps").iter();
    list.map(|step| step["is"].as_str().expect("a key")).collect()
}

/// The keys of the slips that a verdict asks about.
pub fn slips_asked(verdict: &Value) -> Vec<&str> {
    let list = verdict["says"].as_array().expect("remarks").iter();
    list.filter(|said| said["is"] == "slip")
        .map(|said| said["key"].as_str().expect("a key"))
        .collect()
}

/// A verdict's exact nitrite (or nitrate) range, in ppm.
pub fn exact(verdict: &Value, of: &str) -> [f64; 3] {
    let at = |i: usize| {
        verdict[of]["exact"][i]
            .as_str()
            .and_then(|t| t.parse().ok())
            .expect("an exact figure")
    };
    [at(0), at(1), at(2)]
}
