//! No answer assures what a rule bars, and little is barred that no rule stands against.

use crate::asks::{all, pack_step};
use crate::batches;
use crate::draw::{Drawn, batch};
use crate::heard::{ask, heard};
use crate::oracle::{Judged, Three, judge};
use crate::oracle_dose;
use crate::table::Assurance;
use crate::told::{Kind, Own, Put, Told};
use serde_json::Value;
use std::collections::BTreeMap;
use std::thread;

/// Of the batches in which a word is allowed, the share in which it may be missing.
const WOLF: f64 = 0.05;

/// How often, and the number of the first batch.
#[derive(Clone, Debug, Default)]
struct Class {
    times: u64,
    example: u64,
}

#[derive(Debug, Default)]
struct Tally {
    batches: u64,
    lawful: u64,
    /// By rule: barred, may.
    fired: BTreeMap<&'static str, (u64, u64)>,
    /// By question, word and rule: assured though barred.
    wrong: BTreeMap<String, Class>,
    /// By question and word: allowed, of these barred.
    allowed: BTreeMap<(&'static str, Assurance), (u64, u64)>,
    /// The barred ones of these, by what the answer says of it.
    wolf: BTreeMap<String, Class>,
    /// Answers that are problems, by code and field.
    problems: BTreeMap<String, Class>,
    /// Questions the door does not know.
    unknown: BTreeMap<&'static str, u64>,
}

impl Tally {
    fn add(&mut self, other: Self) {
        self.batches += other.batches;
        self.lawful += other.lawful;
        for (id, (bar, may)) in other.fired {
            let row = self.fired.entry(id).or_default();
            *row = (row.0 + bar, row.1 + may);
        }
        for (key, (allowed, barred)) in other.allowed {
            let row = self.allowed.entry(key).or_default();
            *row = (row.0 + allowed, row.1 + barred);
        }
        for (own, theirs) in [
            (&mut self.wrong, other.wrong),
            (&mut self.wolf, other.wolf),
            (&mut self.problems, other.problems),
        ] {
            for (key, class) in theirs {
                let row = own.entry(key).or_default();
                row.example = if row.times == 0 {
                    class.example
                } else {
                    row.example.min(class.example)
                };
                row.times += class.times;
            }
        }
        for (name, times) in other.unknown {
            *self.unknown.entry(name).or_default() += times;
        }
    }
}

fn count(classes: &mut BTreeMap<String, Class>, key: String, number: u64) {
    let class = classes.entry(key).or_insert(Class {
        times: 0,
        example: number,
    });
    class.times += 1;
}

/// The recipe alone, which is all that a card and a link know.
fn recipe_alone(told: &Told) -> Judged {
    let mut plan = told.clone();
    plan.put = Put::Planned;
    plan.also = None;
    plan.rubbed = None;
    // It is for any meat: a belly has limits of its own that the recipe cannot know of, and so has a boar.
    for class in &mut plan.classes {
        class.belly = false;
        class.rind = false;
        class.kind = Kind::Bird;
    }
    if let Some(agent) = &mut plan.agent {
        agent.nitrite = agent.nitrite.filter(|n| *n < 20.0).or(Some(6.25));
    }
    judge(&plan)
}

/// The dose alone, which is all that Check a dose is told: no other lines, and one cut.
fn dose_alone(told: &Told) -> Judged {
    let mut dose = told.clone();
    dose.own = Own::None;
    judge(&dose)
}

fn one(number: u64, tally: &mut Tally) {
    let Drawn { told, lawful, .. } = batch(number);
    let whole = judge(&told);
    tally.batches += 1;
    tally.lawful += u64::from(lawful);
    for fired in &whole.fired {
        let row = tally.fired.entry(fired.id).or_default();
        match fired.says {
            Three::Bar => row.0 += 1,
            Three::May => row.1 += 1,
            Three::Clear => {}
        }
    }
    for (name, request) in all(&told) {
        let answer = ask(request);
        if answer.is_null() {
            *tally.unknown.entry(name).or_default() += 1;
            continue;
        }
        if let Some(problem) = answer["problems"].get(0) {
            let key = format!("{name}: {} at {}", problem["code"], problem["field"]);
            count(&mut tally.problems, key, number);
        }
        let knows = match name {
            "card" | "link" => &recipe_alone(&told),
            "check_dose" => &dose_alone(&told),
            _ => &whole,
        };
        compare(name, &answer, &told, knows, number, tally);
    }
}

fn compare(name: &'static str, answer: &Value, told: &Told, judged: &Judged, number: u64, tally: &mut Tally) {
    for heard in heard(name, answer, pack_step(told)) {
        let (word, class) = (heard.word, heard.class);
        if heard.given {
            let by: Vec<_> = judged.bars(word, class).collect();
            if let Some(first) = by.first() {
                count(
                    &mut tally.wrong,
                    format!("{name} assures {} against {first}", word.key()),
                    number,
                );
            }
            if let (Some(until), Some(latest)) = (heard.until, judged.latest)
                && by.is_empty()
                && until > latest
            {
                count(
                    &mut tally.wrong,
                    format!("{name} gives a later use-by than any table"),
                    number,
                );
            }
        }
        if judged.allows(word, class) && applies(word, told) {
            let row = tally.allowed.entry((name, word)).or_default();
            row.0 += 1;
            if !heard.given {
                row.1 += 1;
                let doubts = why(answer);
                count(&mut tally.wolf, format!("{name} bars {}: {doubts}", word.key()), number);
            }
        }
    }
}

/// Whether the word has any meaning for it: a batch without cure has no dose, one on the board nothing to go on with.
fn applies(word: Assurance, told: &Told) -> bool {
    match word {
        Assurance::Dose => told.agent.is_some() && oracle_dose::planned(told) > 0.0,
        Assurance::Cured => told.agent.is_some(),
        _ => true,
    }
}

/// The kinds of doubt that the standing names, for the report.
fn why(answer: &Value) -> String {
    let doubts = answer["ok"]["doubts"].as_array();
    let mut kinds: Vec<String> = doubts.into_iter().flatten().map(|d| d["kind"].to_string()).collect();
    kinds.sort();
    kinds.dedup();
    let verdict = &answer["ok"]["verdict"];
    let outcome = answer["ok"].get("outcome").or(verdict.get("outcome"));
    kinds.extend(outcome.map(Value::to_string));
    kinds.join(" ")
}

fn run(batches: u64) -> Tally {
    let threads = thread::available_parallelism().map_or(1, |n| n.get() as u64);
    let first = crate::first();
    let mut whole = Tally::default();
    thread::scope(|scope| {
        let part = |thread: u64| {
            let mut tally = Tally::default();
            (first + thread..first + batches)
                .step_by(threads as usize)
                .for_each(|number| one(number, &mut tally));
            tally
        };
        let parts: Vec<_> = (0..threads).map(|t| scope.spawn(move || part(t))).collect();
        parts
            .into_iter()
            .for_each(|p| whole.add(p.join().expect("a thread of batches runs to its end")));
    });
    whole
}

fn report(tally: &Tally) -> String {
    let mut text = format!("{} batches, {} wholly lawful\n", tally.batches, tally.lawful);
    text += "\nrule: barred, may\n";
    for (id, (bar, may)) in &tally.fired {
        text += &format!("  {id:10} {bar:8} {may:8}\n");
    }
    text += "\nquestion and word: allowed, of these barred\n";
    for ((name, word), (allowed, barred)) in &tally.allowed {
        let share = 100.0 * *barred as f64 / *allowed as f64;
        text += &format!("  {name:10} {:8} {allowed:8} {barred:8}  {share:.2} %\n", word.key());
    }
    for (head, classes) in [
        ("ASSURED THOUGH BARRED", &tally.wrong),
        ("barred though allowed", &tally.wolf),
        ("answered with a problem", &tally.problems),
    ] {
        text += &format!("\n{head}\n");
        for (key, class) in classes {
            text += &format!("  {:8}  {key}  (batch {})\n", class.times, class.example);
        }
    }
    for (name, times) in &tally.unknown {
        text += &format!("\nnot asked {times} times, the door does not know it: {name}\n");
    }
    text
}

/// The requests of the first batch of every class, to look at.
fn examples(tally: &Tally) -> String {
    let mut text = String::new();
    for (key, class) in tally.wrong.iter().chain(&tally.wolf) {
        let Drawn { told, stage, .. } = batch(class.example);
        let name = key.split_whitespace().next().unwrap_or_default();
        let request = all(&told).into_iter().find(|(n, _)| *n == name).map(|(_, r)| r);
        let judged = judge(&told);
        text += &format!("# {key} (batch {}, {stage:?})\n# {:?}\n", class.example, judged.fired);
        text += &format!("{}\n", request.unwrap_or_default());
    }
    text
}

#[test]
fn nothing_is_assured_that_a_rule_bars() {
    let tally = run(batches(2_000));
    let report = report(&tally);
    println!("{report}");
    if let Ok(file) = std::env::var("ORACLE_EXAMPLES") {
        std::fs::write(file, examples(&tally)).expect("the examples can be written");
    }
    assert!(
        tally.unknown.is_empty(),
        "a question that assures is not answered\n{report}"
    );
    assert!(tally.wrong.is_empty(), "assured against a rule\n{report}");
    let mut much = tally
        .allowed
        .iter()
        .filter(|(_, (allowed, barred))| *barred as f64 > WOLF * *allowed as f64);
    assert!(much.next().is_none(), "barred without a rule\n{report}");
}

#[test]
fn every_rule_fires_and_a_third_is_lawful() {
    let mut tally = Tally::default();
    for number in 0..3_000 {
        let Drawn { told, lawful, .. } = batch(number);
        let judged = judge(&told);
        tally.lawful += u64::from(lawful);
        for fired in judged.fired {
            let row = tally.fired.entry(fired.id).or_default();
            *row = (row.0 + u64::from(fired.says == Three::Bar), row.1 + 1);
        }
        if lawful {
            let broken: Vec<_> = judge(&told)
                .fired
                .into_iter()
                .filter(|f| f.says == Three::Bar)
                .collect();
            let only_waits =
                |id: &str| ["A1", "D2", "H1", "H5", "H6", "H8", "K1", "K5", "X2"].contains(&id) || id.starts_with("H3");
            let odd = broken
                .iter()
                .find(|f| !only_waits(f.id) || f.id == "D2" && told.agent.is_some());
            assert!(odd.is_none(), "batch {number} is drawn as lawful and breaks {odd:?}");
        }
    }
    assert!(tally.lawful >= 1_000, "{} of 3000 are lawful", tally.lawful);
    for rule in crate::table::RULES.values().filter(|r| !r.bars.is_empty()) {
        let (_, fired) = tally.fired.get(rule.id.as_str()).copied().unwrap_or_default();
        let choice = ["H3.red-choice", "H3.ground"].contains(&rule.id.as_str());
        assert!(fired >= 5 || choice, "{} fired {fired} times of 3000", rule.id);
    }
}
