//! What an answer assures, taken from its facts.

use crate::table::Assurance;
use crate::told::Ms;
use cure_reckoner::door::{Request, answer};
use serde_json::Value;

/// One word of assurance that an answer gave or withheld.
#[derive(Debug)]
pub struct Heard {
    pub word: Assurance,
    pub class: Option<usize>,
    pub given: bool,
    /// A date that it bears.
    pub until: Option<Ms>,
}

/// Asks the door; the answer as JSON, `null` where the door does not know the question.
pub fn ask(request: Value) -> Value {
    match serde_json::from_value::<Request>(request) {
        Ok(request) => serde_json::to_value(answer(request)).unwrap_or_default(),
        Err(error) if error.to_string().contains("unknown variant") => Value::Null,
        Err(error) => panic!("the oracle asks in the door's own form: {error}"),
    }
}

fn word(word: Assurance, class: Option<usize>, given: bool) -> Heard {
    Heard {
        word,
        class,
        given,
        until: None,
    }
}

/// The words of one verdict.
fn verdict(verdict: &Value) -> Vec<Heard> {
    if !verdict.is_object() {
        return Vec::new();
    }
    let none = verdict["word"] == "no_cure";
    vec![
        word(Assurance::Dose, None, verdict["outcome"] == "in_range"),
        word(Assurance::NoCure, None, none),
    ]
}

/// What the answer to a question assures. `name` is the question's, `pack` the number of the step that packs it up.
pub fn heard(name: &str, answer: &Value, pack: usize) -> Vec<Heard> {
    let ok = &answer["ok"];
    match name {
        "standing" => standing(&ok["assured"]),
        "weigh_out" | "card" | "link" | "read_recipe" => verdict(&ok["verdict"]),
        "check_dose" => verdict(ok),
        "fire_log" => fire(&ok["classes"]),
        "labels" => labels(&ok["papers"]),
        "next" => ok["batches"][0]["held"]
            .as_bool()
            .map(|held| word(Assurance::GoOn, None, !held))
            .into_iter()
            .collect(),
        "larder" => larder(&ok["packs"]),
        "plan_back" => ok["batches"][0]["steps"]
            .as_array()
            .map(|steps| word(Assurance::GoOn, None, !steps.is_empty()))
            .into_iter()
            .collect(),
        "calendar" => calendar(ok["text"].as_str().unwrap_or_default(), pack),
        _ => Vec::new(),
    }
}

fn standing(assured: &Value) -> Vec<Heard> {
    let mut words = Vec::new();
    if !assured.is_object() {
        return words;
    }
    for (key, of) in [
        ("dose", Assurance::Dose),
        ("no_cure", Assurance::NoCure),
        ("cured", Assurance::Cured),
        ("cooked", Assurance::Cooked),
        ("gift", Assurance::Gift),
        ("go_on", Assurance::GoOn),
    ] {
        let given = assured[key].as_bool();
        words.push(word(
            of,
            None,
            given.unwrap_or_else(|| panic!("standing says nothing of {key}")),
        ));
    }
    for (key, of) in [
        ("hot", Assurance::Hot),
        ("pull", Assurance::Pull),
        ("chilled", Assurance::Chilled),
    ] {
        let each = assured[key]
            .as_array()
            .unwrap_or_else(|| panic!("standing says nothing of {key}"));
        words.extend(
            each.iter()
                .enumerate()
                .map(|(at, given)| word(of, Some(at), given == true)),
        );
    }
    let until = assured["use_by"].as_i64();
    words.push(Heard {
        until,
        ..word(Assurance::Keep, None, until.is_some())
    });
    words
}

fn fire(classes: &Value) -> Vec<Heard> {
    let each = classes.as_array().into_iter().flatten().enumerate();
    each.map(|(at, class)| {
        let hot = class["state"] == "made_it" || class["state"] == "by_table";
        word(Assurance::Hot, Some(at), hot)
    })
    .collect()
}

fn labels(papers: &Value) -> Vec<Heard> {
    let Some(papers) = papers.as_array() else {
        return Vec::new();
    };
    let packs = || papers.iter().filter(|p| p["kind"] != "bag");
    let cooked = |p: &Value| {
        let facts = p["facts"].as_array().into_iter().flatten();
        facts.into_iter().any(|f| f["is"] == "cooked")
    };
    let until = packs().filter_map(|p| p["until"].as_i64()).max();
    vec![
        Heard {
            until,
            ..word(Assurance::Keep, None, until.is_some())
        },
        word(Assurance::Gift, None, papers.iter().any(|p| p["kind"] == "gift")),
        word(Assurance::Cooked, None, packs().any(cooked)),
    ]
}

/// A pack with its day and nothing said against it is one to eat and to give.
fn larder(packs: &Value) -> Vec<Heard> {
    let each = packs.as_array().into_iter().flatten();
    let words = each.flat_map(|pack| {
        let clear = pack["doubts"].as_array().is_some_and(Vec::is_empty) && pack["over"] == false;
        let dated = !pack["until"].is_null();
        [
            word(Assurance::Keep, None, clear && dated),
            word(Assurance::Gift, None, clear),
        ]
    });
    words.collect()
}

/// A job still to come that packs the batch up says: go on.
fn calendar(text: &str, pack: usize) -> Vec<Heard> {
    let id = format!("UID:x-step-{}@", pack);
    let packs = text
        .split("BEGIN:VEVENT")
        .any(|event| event.contains(&id) && event.contains("STATUS:CONFIRMED") && event.contains("BEGIN:VALARM"));
    // Only what it says is judged: a calendar need not hold every job.
    packs.then(|| word(Assurance::GoOn, None, true)).into_iter().collect()
}
