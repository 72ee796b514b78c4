//! Requests that were once answered with an assurance they must not have, each with its source, replayed.
//!
//! `cases.jsonl`, one a line: the request; `withheld`, the words that neither its answer nor the standing of its batch may
//! give; `use_by_most`, the latest date a label may bear; `must`, what else is wanted of the answer. `cure` is what the
//! weigh-out put in: such a case is asked twice, as it was and with that ticked, so that no word is withheld only because
//! nobody told of the cure.

use crate::heard::{ask, heard};
use crate::table::Assurance;
use serde_json::{Value, json};

const PACK: usize = 4;

fn cases() -> Vec<Value> {
    let lines = include_str!("cases.jsonl").lines();
    lines
        .map(|line| serde_json::from_str(line).expect("a case is one line of JSON"))
        .collect()
}

fn question(request: &Value) -> (&str, &Value) {
    let first = request.as_object().and_then(|o| o.iter().next());
    first
        .map(|(name, content)| (name.as_str(), content))
        .expect("a request has one key")
}

/// The request as it is told, and with the cure that went in.
fn variants(case: &Value) -> Vec<(&'static str, Value)> {
    let mut asked = vec![("as told", case["request"].clone())];
    if let Some(cure) = case["cure"].as_str() {
        let mut request = case["request"].clone();
        let (name, _) = question(&case["request"]);
        let batch = &mut request[name]["batch"];
        let printed = batch["recipe"]["cures"][0].clone();
        let ticks = batch["ticks"].as_array_mut().expect("a case with a cure has ticks");
        let at = ticks[0]["at"].as_i64().unwrap_or_default();
        let tick = json!({"of": "cure:0", "at": at, "weight": cure, "nitrite": printed["nitrite"], "nitrate": printed["nitrate"], "step": "0.1 g"});
        ticks.insert(0, tick);
        asked.push(("with its cure", request));
    }
    asked
}

/// The standing of the batch in a request; nothing where there is none.
fn standing(request: &Value) -> Option<Value> {
    let (_, content) = question(request);
    let batch = content.get("batch").or(content["batches"][0].get("batch"))?;
    let now = content["now"].as_i64().unwrap_or(1_795_400_000_000);
    let packed = |key: &str| content[key].as_bool().unwrap_or(false);
    let asked = json!({"batch": batch, "settings": content["settings"], "now": now, "frozen": packed("frozen"), "vacuum": packed("vacuum")});
    Some(ask(json!({"standing": asked})))
}

/// What is wrong with the answers to one case; empty when all is as it must be.
fn wrong(case: &Value, request: &Value) -> Vec<String> {
    let (name, _) = question(request);
    let answer = ask(request.clone());
    let mut wrong = Vec::new();
    let mut answers = vec![(name.to_owned(), answer.clone())];
    if let Some(standing) = standing(request) {
        if standing["ok"]["assured"].is_null() {
            wrong.push("its batch has no standing".to_owned());
        }
        answers.push(("standing".to_owned(), standing));
    }
    let withheld: Vec<_> = case["withheld"]
        .as_array()
        .into_iter()
        .flatten()
        .filter_map(Value::as_str)
        .collect();
    for (name, answer) in &answers {
        for heard in heard(name, answer, PACK) {
            if heard.given && withheld.contains(&heard.word.key()) {
                wrong.push(format!("{name} assures {}", heard.word.key()));
            }
            if let (Some(most), Some(until)) = (case["use_by_most"].as_i64(), heard.until)
                && heard.word == Assurance::Keep
                && until > most
            {
                wrong.push(format!("{name}: use by {until}, and {most} is the last day"));
            }
        }
    }
    for must in case["must"].as_array().into_iter().flatten() {
        wrong.extend(unmet(must, request, &answer));
    }
    wrong
}

/// All texts of an answer: keys of facts among them.
fn texts(answer: &Value) -> Vec<&str> {
    match answer {
        Value::String(text) => vec![text],
        Value::Array(all) => all.iter().flat_map(texts).collect(),
        Value::Object(all) => all.values().flat_map(texts).collect(),
        _ => Vec::new(),
    }
}

/// Whether one thing that is wanted of the answer is missing.
fn unmet(must: &Value, request: &Value, answer: &Value) -> Option<String> {
    let text = answer.to_string();
    let met = if let Some(at) = must["at"].as_str() {
        let found = answer.pointer(at).unwrap_or(&Value::Null);
        let held = |key: &str| must[key].as_array().map(|all| all.contains(found));
        let number = found.as_str().and_then(|n| n.parse::<f64>().ok());
        held("is").unwrap_or(true)
            && !held("is_not").unwrap_or(false)
            && must["least"]
                .as_f64()
                .is_none_or(|least| number.is_some_and(|n| n >= least))
    } else if let Some(key) = must["key"].as_str() {
        texts(answer).contains(&key)
    } else if let Some(cited) = must["source"].as_str() {
        texts(answer).iter().any(|text| text.contains(cited))
    } else if let Some(keys) = must["no_key"].as_array() {
        let said = texts(answer);
        !keys.iter().filter_map(Value::as_str).any(|key| said.contains(&key))
    } else if let Some(first) = must["first_job"].as_str() {
        let job = &answer["ok"]["jobs"][0];
        job["id"].as_str().is_some_and(|id| id.starts_with(first))
    } else if let Some(amount) = must["like"].as_str() {
        // The same amount written otherwise is answered alike, word for word.
        let mut other = request.clone();
        let written = other["check_dose"]["put_in"]["amount"].take();
        other["check_dose"]["put_in"]["amount"] = amount.into();
        let alike = ask(other)
            .to_string()
            .replace(amount, written.as_str().unwrap_or_default());
        alike == text && answer["ok"].is_object()
    } else if let Some(agent) = must["agent_line"].as_str() {
        agent_line(agent, answer)
    } else if must["one_cold"] == true {
        one_cold(answer)
    } else {
        panic!("{must} is nothing that can be checked")
    };
    (!met).then(|| format!("not met: {must}"))
}

/// The line with the agent is taken for one, flagged, or asked about.
fn agent_line(agent: &str, answer: &Value) -> bool {
    let rows = |key: &str| answer["ok"][key].as_array().cloned().unwrap_or_default();
    let named = |item: &str| {
        ["cure", "nitr", "saltp", "celery-powder", "celery-juice"]
            .iter()
            .any(|k| item.contains(k))
    };
    let taken = rows("lines").iter().any(|line| {
        let mine = line["text"].as_str().is_some_and(|t| t.contains(agent));
        mine && (line["item"].as_str().is_some_and(named) || line["flag"].as_str().is_some_and(|f| !f.is_empty()))
    });
    let about = |q: &Value| q["ask"].as_str().unwrap_or_default().to_lowercase();
    taken
        || rows("questions")
            .iter()
            .any(|q| ["nitrit", "nitrate", agent].iter().any(|w| about(q).contains(w)))
}

/// The papers name one temperature of the cold and no other.
fn one_cold(answer: &Value) -> bool {
    let papers = answer["ok"]["papers"].as_array().cloned().unwrap_or_default();
    let packs = papers.iter().filter(|p| p["kind"] != "bag");
    let mut text = String::new();
    packs.for_each(|p| text += &format!("{} {} {} ", p["keep"], p["basis"], p["foot"]));
    let before = text
        .split("°C")
        .map(|t| t.trim_end().rsplit(|c: char| !c.is_ascii_digit() && c != '.').next());
    let mut colds: Vec<_> = before
        .flatten()
        .filter_map(|n| n.parse::<f64>().ok())
        .filter(|c| *c <= 10.0)
        .collect();
    colds.sort_by(f64::total_cmp);
    colds.dedup();
    colds.len() <= 1
}

#[test]
fn no_case_is_assured_again() {
    let mut failed = Vec::new();
    let cases = cases();
    assert!(cases.len() >= 26, "{} cases", cases.len());
    for case in &cases {
        assert!(
            case["source"].is_string() && case["status"].is_string(),
            "{}",
            case["case"]
        );
        let wanted = ["withheld", "must", "use_by_most"]
            .iter()
            .any(|key| case.get(key).is_some());
        assert!(wanted, "{} wants nothing", case["case"]);
        for (how, request) in variants(case) {
            let wrong = wrong(case, &request);
            if !wrong.is_empty() {
                failed.push(format!("{} ({how})\n    {}", case["case"], wrong.join("\n    ")));
            }
        }
    }
    assert!(failed.is_empty(), "{} fail:\n{}", failed.len(), failed.join("\n"));
}
