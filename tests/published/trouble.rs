//! The cards for when something went wrong, every cell of them, against a plain table of published rules
//! (`data/trouble.csv`) that was written from the sources and knows nothing of how the cards ask.

use cure_reckoner_tests::{ok, problems};
use serde_json::{Value, json};
use std::collections::{BTreeMap, BTreeSet};

type Cell = BTreeMap<String, String>;

/// A rule of the table: card, answers of which one has to be given to each, acts that are allowed there.
struct Rule {
    card: String,
    answers: Vec<(String, Vec<String>)>,
    must: Vec<String>,
    source: String,
    status: String,
}

fn rules() -> Vec<Rule> {
    let list = |text: &str| text.split('/').map(str::to_owned).collect::<Vec<_>>();
    csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(include_str!("data/trouble.csv").as_bytes())
        .records()
        .map(|row| {
            let row = row.expect("a row");
            let pair = |pair: &str| {
                let (ask, any) = pair.split_once('=').expect("a question and answers");
                (ask.to_owned(), list(any))
            };
            Rule {
                card: row[0].into(),
                answers: row[1].split('&').map(pair).collect(),
                must: list(&row[2]),
                source: row[3].into(),
                status: row[4].into(),
            }
        })
        .collect()
}

impl Rule {
    fn fits(&self, card: &str, cell: &Cell) -> bool {
        let given = |(ask, any): &(String, Vec<String>)| any.contains(&cell[ask]);
        self.card == card && self.answers.iter().all(given)
    }
}

fn ask(card: &str, cell: &Cell) -> Value {
    let chosen: Vec<_> = cell.iter().collect();
    ok(&json!({"trouble": {"card": card, "chosen": chosen}}))
}

fn cards() -> Vec<String> {
    let sheet = ask("", &Cell::new());
    let cards = sheet["cards"].as_array().expect("cards").iter();
    cards.map(|c| c.as_str().expect("a key").to_owned()).collect()
}

/// Every question a card can ask with its answers, found by answering in every way.
fn questions(card: &str) -> BTreeMap<String, Vec<String>> {
    let mut found = BTreeMap::new();
    let mut open = vec![Cell::new()];
    while let Some(cell) = open.pop() {
        let Some((key, choices)) = question(&ask(card, &cell)) else {
            continue;
        };
        for choice in &choices {
            let mut more = cell.clone();
            assert!(
                more.insert(key.clone(), choice.clone()).is_none(),
                "{card} asks {key} twice"
            );
            open.push(more);
        }
        found.insert(key, choices);
    }
    found
}

fn question(sheet: &Value) -> Option<(String, Vec<String>)> {
    let open = sheet["question"].as_array()?;
    let choices = open[1].as_array().expect("answers").iter();
    let choices = choices.map(|c| c.as_str().expect("a key").to_owned()).collect();
    Some((open[0].as_str().expect("a key").to_owned(), choices))
}

/// Every row of answers to these questions.
fn cells(questions: &BTreeMap<String, Vec<String>>) -> Vec<Cell> {
    questions.iter().fold(vec![Cell::new()], |cells, (key, choices)| {
        let longer = |cell: &Cell| {
            choices
                .iter()
                .map(|choice| {
                    let mut more = cell.clone();
                    more.insert(key.clone(), choice.clone());
                    more
                })
                .collect::<Vec<_>>()
        };
        cells.iter().flat_map(longer).collect()
    })
}

/// Under an hour is under two: nobody who is sure of the first can be unsure of the second.
fn can_be(cell: &Cell) -> bool {
    let is = |ask: &str, choice: &str| cell.get(ask).is_some_and(|c| c == choice);
    !cell.contains_key("warm_2h") || !is("warm_1h", "under_1h") || is("warm_2h", "under_2h")
}

/// How far an act keeps meat from being eaten.
fn weight(act: &str) -> u8 {
    match act {
        "call_poison_centre" | "get_medical_help" => 4,
        // Nothing of it is eaten, for good or until it is weighed.
        "throw_out" | "throw_out_brine" | "weigh_again" => 3,
        "thin_now" | "cook_now" | "finish_now" | "chill_now" => 2,
        "go_on_if" => 1,
        other => panic!("{other} is no act"),
    }
}

fn act(sheet: &Value) -> &str {
    sheet["remedy"]["act"].as_str().expect("an act")
}

#[test]
fn every_cell_of_every_card_keeps_to_the_published_rule() {
    let rules = rules();
    let cards = cards();
    assert_eq!(cards.len(), 17);
    let mut seen = 0;
    let mut used = BTreeSet::new();
    for card in &cards {
        let questions = questions(card);
        for cell in cells(&questions) {
            if !can_be(&cell) {
                continue;
            }
            let sheet = ask(card, &cell);
            let fitting: Vec<usize> = (0..rules.len()).filter(|&i| rules[i].fits(card, &cell)).collect();
            assert!(!fitting.is_empty(), "no rule for {card} {cell:?}");
            for i in fitting {
                assert!(
                    rules[i].must.iter().any(|must| must == act(&sheet)),
                    "{card} {cell:?}: {}, but {:?} by {}",
                    act(&sheet),
                    rules[i].must,
                    rules[i].source
                );
                used.insert(i);
            }
            seen += 1;
        }
    }
    // Each rule was put to the test, and each names its source and how it is known.
    assert_eq!(used.len(), rules.len());
    assert!(seen > 3_000, "{seen} cells");
    let known = ["published", "quoted", "memory", "judgement", "common practice"];
    assert!(
        rules
            .iter()
            .all(|r| !r.source.is_empty() && known.contains(&r.status.as_str()))
    );
}

#[test]
fn not_sure_is_as_careful_as_the_worst_answer() {
    for card in &cards() {
        let questions = questions(card);
        for cell in cells(&questions).iter().filter(|cell| can_be(cell)) {
            let here = weight(act(&ask(card, cell)));
            for (key, choices) in &questions {
                assert!(
                    choices.len() <= 3 && choices.last().is_some_and(|c| c == "unsure"),
                    "{key} {choices:?}"
                );
                let mut unsure = cell.clone();
                unsure.insert(key.clone(), "unsure".into());
                if can_be(&unsure) {
                    assert!(
                        weight(act(&ask(card, &unsure))) >= here,
                        "{card} {cell:?}: not sure of {key} is let off"
                    );
                }
            }
        }
    }
}

/// One question at a time, never the same twice, at most five of them, and then an end: no card leads to a card.
#[test]
fn every_way_through_every_card_ends() {
    let mut ends = BTreeSet::new();
    for card in &cards() {
        let mut open = vec![Cell::new()];
        while let Some(cell) = open.pop() {
            let sheet = ask(card, &cell);
            assert_eq!(
                sheet["answered"].as_array().expect("a list").len(),
                cell.len(),
                "{card} {cell:?}"
            );
            assert!(cell.len() <= 5, "{card} {cell:?} asks on");
            let Some((key, choices)) = question(&sheet) else {
                let remedy = &sheet["remedy"];
                assert!(weight(act(&sheet)) > 0);
                let conditions = remedy["only_if"].as_array().expect("a list").len();
                if act(&sheet) == "go_on_if" {
                    assert!(conditions > 0, "{card} {cell:?} goes on without a condition");
                }
                assert!(
                    sheet["source"].as_str().is_some_and(|s| !s.is_empty()) && sheet["status"].is_string(),
                    "{remedy}"
                );
                assert!(sheet["cautions"].to_string().contains("local-rules"));
                ends.insert(remedy["way"].to_string());
                continue;
            };
            assert!(sheet["remedy"].is_null());
            for choice in choices {
                let mut more = cell.clone();
                more.insert(key.clone(), choice);
                open.push(more);
            }
        }
    }
    // No row stands behind another that always comes first.
    let rows = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(include_str!("../../crate/tables/trouble-answers.csv").as_bytes())
        .records()
        .map(|row| format!("{:?}", &row.expect("a row")[2]))
        .collect::<BTreeSet<_>>();
    assert_eq!(ends, rows);
}

/// The longer it was warm, the hotter the air, the longer the power was off: never a milder act.
#[test]
fn worse_is_never_milder() {
    let worse = [
        ("warm_1h", "under_1h", "over_1h"),
        ("warm_2h", "under_2h", "over_2h"),
        ("air_90", "no", "yes"),
        ("out_4h", "under_4h", "over_4h"),
        ("reads_40", "cold", "warm"),
        ("got_40", "cold", "warm"),
        ("past_140_4h", "yes", "no"),
        ("fire_1h", "under_1h", "over_1h"),
        ("at_70_2h", "yes", "no"),
        ("at_41_6h", "yes", "no"),
        ("raw_days", "within", "longer"),
        ("on_1h", "under_1h", "over_1h"),
        ("vac_days", "up_to_10d", "over_10d"),
        ("oil_2d", "up_to_2d", "over_2d"),
    ];
    let mut compared = 0;
    for card in &cards() {
        for cell in cells(&questions(card)).iter().filter(|cell| can_be(cell)) {
            for (key, better, bad) in worse {
                if cell.get(key).is_some_and(|c| c == better) {
                    let mut then = cell.clone();
                    then.insert(key.into(), bad.into());
                    if can_be(&then) {
                        let (before, after) = (ask(card, cell), ask(card, &then));
                        assert!(weight(act(&before)) <= weight(act(&after)), "{card} {cell:?}: {key}");
                        compared += 1;
                    }
                }
            }
        }
    }
    assert!(compared > 1_000, "{compared}");
}

#[test]
fn what_must_be_named_is_named() {
    let hazard = |card: &str, chosen: Value| {
        let sheet = ok(&json!({"trouble": {"card": card, "chosen": chosen}}));
        sheet["remedy"]["hazard"].clone()
    };
    assert_eq!(
        hazard(
            "vacuum",
            json!([
                ["vac_days", "up_to_10d"],
                ["got_40", "warm"],
                ["air_90", "no"],
                ["warm_2h", "over_2h"]
            ])
        ),
        "botulism"
    );
    assert_eq!(hazard("oil", json!([["oil_2d", "over_2d"]])), "botulism");
    assert_eq!(hazard("pack", json!([["pack_eaten", "no"]])), "botulism");
    assert_eq!(hazard("eaten", json!([["ate_what", "unsure"]])), "nitrite");
}

#[test]
fn what_no_card_has_is_refused() {
    let code =
        |card: &str, chosen: Value| problems(&json!({"trouble": {"card": card, "chosen": chosen}}))[0]["code"].clone();
    assert_eq!(code("flood", json!([])), "unknown");
    assert_eq!(code("froze", json!([["froze_where", "moon"]])), "unknown");
    // An answer of another question is none.
    assert_eq!(code("froze", json!([["froze_where", "over_4h"]])), "unknown");
    assert_eq!(code("froze", json!([["stage", "in_cure"]])), "unknown");
    // What was answered to another card's question is left alone.
    let sheet = ok(&json!({"trouble": {"card": "froze", "chosen": [["jar", "same"]]}}));
    assert_eq!(sheet["question"][0], "froze_where");
}

/// The card on warmth begins with what the log says, and asks what it cannot know.
#[test]
fn what_the_log_knows_is_not_asked() {
    use crate::clock::{HOUR, RUB, breast, cured};
    let told = |log: Value, hours: f64, chosen: Value| {
        let mut batch = cured(json!([breast("38 mm")]), "72 h");
        batch["fridge"] = log;
        let now = RUB + (hours * HOUR as f64) as i64;
        ok(&json!({"trouble": {
            "card": "warm", "chosen": chosen, "log": {"batch": batch, "now": now, "units": "metric"}
        }}))
    };
    let asked = |log: Value, hours: f64| told(log, hours, json!([]));
    let at = |hours: f64, of: &str, reads: &str| json!({"at": RUB + (hours * HOUR as f64) as i64, "what": "read", "of": of, "reads": reads});
    let warm = [
        at(1.0, "meat", "3 °C"),
        at(1.1, "meat", "9 °C"),
        at(2.0, "meat", "3 °C"),
    ];
    let sheet = asked(json!(warm), 2.0);
    assert_eq!(sheet["log"]["highest"], "9 °C");
    assert_eq!(sheet["log"]["now"], false);
    assert_eq!(sheet["known"][0], "got_40");
    assert_eq!(sheet["question"][0], "air_90", "{sheet}");
    // The room was read too: nothing is left to ask.
    let room = [&warm[..], &[at(2.0, "room", "20 °C")]].concat();
    let sheet = asked(json!(room), 2.0);
    assert_eq!(sheet["question"], json!(null), "{sheet}");
    assert_eq!(sheet["remedy"]["act"], "chill_now");
    let long = [at(1.0, "meat", "9 °C"), at(5.0, "room", "20 °C")];
    let sheet = asked(json!(long), 5.0);
    assert_eq!(sheet["remedy"]["act"], "throw_out");
    assert_eq!(sheet["log"]["now"], true);
    // Two hours are the most (USDA FSIS, Danger Zone). What was said while it was short of them does not hold once it is not.
    let said = json!([["got_40", "warm"], ["air_90", "no"], ["warm_2h", "under_2h"]]);
    let warm_now = json!([at(1.0, "meat", "3 °C"), at(1.5, "meat", "9 °C")]);
    let act = |hours: f64| told(warm_now.clone(), hours, said.clone())["remedy"]["act"].clone();
    assert_eq!([act(3.2), act(3.6)], [json!("chill_now"), json!("throw_out")]);
    // Kept cold by the log: it says nothing, and all is asked.
    let sheet = asked(json!([at(1.0, "meat", "3 °C")]), 2.0);
    assert_eq!([&sheet["log"], &sheet["question"][0]], [&json!(null), &json!("got_40")]);
}
