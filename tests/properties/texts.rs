//! Texts of others and of our own, mutated: nothing panics, the time grows with the length, and a cure in a text is never
//! answered as none.

use cpu_time::ThreadTime;
use cure_reckoner::dose::VerdictWord;
use cure_reckoner::reading::{AskReading, Tongue, read};
use cure_reckoner::weigh::Settings;
use proptest::prelude::*;
use serde_json::Value;
use std::sync::OnceLock;

/// Texts to begin from: whole recipes, and lines.
fn seeds() -> &'static [String] {
    static SEEDS: OnceLock<Vec<String>> = OnceLock::new();
    SEEDS.get_or_init(|| {
        let of = |file: &str| -> Vec<String> {
            let cases = file.lines().map(|l| serde_json::from_str::<Value>(l).expect("a case"));
            cases.filter_map(|c| c["text"].as_str().map(str::to_owned)).collect()
        };
        let mut all = of(include_str!("../data/others-recipes.jsonl"));
        all.extend(of(include_str!("../data/others-lines.jsonl")));
        all.extend(of(include_str!("../data/others-recipes-late.jsonl")));
        all.extend(of(include_str!("../data/others-lines-late.jsonl")));
        all
    })
}

/// Names that say a cure, each alone enough that its text is not one without.
const CURES: [&str; 12] = [
    "cure no. 1",
    "cure #2",
    "pink curing salt",
    "saltpetre",
    "saltpeter",
    "sodium nitrite",
    "potassium nitrate",
    "E250",
    "pökelsalz",
    "sel nitrité",
    "nitrite salt",
    "curing salt",
];
const AMOUNTS: [&str; 8] = [
    "2 tsp",
    "5 g",
    "1 oz",
    "half a teaspoon of",
    "a pinch of",
    "0.25 %",
    "10 g",
    "1 heaping tbsp",
];

fn ask(text: String) -> AskReading {
    AskReading {
        text,
        answers: Vec::new(),
        untitled: String::new(),
        settings: Settings::new_page(),
    }
}

/// A text with some of its characters dropped, doubled, swapped or replaced, or cut and joined with another.
fn mutated() -> impl Strategy<Value = String> {
    let edits = prop::collection::vec((any::<prop::sample::Index>(), 0u8..6, any::<char>()), 0..8);
    (any::<prop::sample::Index>(), any::<prop::sample::Index>(), edits).prop_map(|(one, other, edits)| {
        let mut text: Vec<char> = one.get(seeds()).chars().collect();
        for (at, how, c) in edits {
            if text.is_empty() {
                break;
            }
            let at = at.index(text.len());
            match how {
                0 => drop(text.remove(at)),
                1 => text.insert(at, text[at]),
                2 => text[at] = c,
                3 => text.insert(at, c),
                4 => text.truncate(at),
                _ => text.extend(other.get(seeds()).chars().skip(at)),
            }
        }
        text.into_iter().collect()
    })
}

proptest! {
    #![proptest_config(super::cases(400))]

    /// A line of cure put anywhere between the lines of any text is told, asked about, or held: never "no cure in it".
    #[test]
    fn a_cure_in_a_text_is_never_none(
        text in mutated(),
        amount in prop::sample::select(AMOUNTS.to_vec()),
        cure in prop::sample::select(CURES.to_vec()),
        at in any::<prop::sample::Index>(),
    ) {
        let mut lines: Vec<String> = text.lines().map(str::to_owned).collect();
        let at = if lines.is_empty() { 0 } else { at.index(lines.len()) };
        lines.insert(at, format!("{amount} {cure}"));
        if let Ok(reading) = read(&ask(lines.join("\n"))) {
            let none = reading.verdict.as_ref().is_some_and(|v| v.word == VerdictWord::NoCure);
            prop_assert!(!none, "{}", lines.join("\n"));
            let bare = reading.recipe.as_ref().is_some_and(|r| r.cures.is_empty() && r.may_hold_cure().is_empty());
            prop_assert!(!bare, "a card without it: {}", lines.join("\n"));
            if reading.tongue != Tongue::English {
                prop_assert!(reading.verdict.is_none_or(|v| v.word != VerdictWord::InRange), "{}", lines.join("\n"));
            }
        }
    }
}

/// Twice as long a text takes no more than about twice as long: one clause without a joint, and many of them. The time is
/// the processor's for this thread alone, so that what else the machine does is not in it; the bound is wide all the same, and
/// a square would be sixteen times.
#[test]
fn the_time_grows_with_the_length() {
    let time = |text: &str| {
        let ask = ask(text.to_owned());
        let clock = ThreadTime::now();
        let read = read(&ask);
        // Of more than 120 clauses it says so; that takes its time too.
        assert!(read.is_ok() || read.is_err_and(|p| p.iter().all(|p| p.field == "text")));
        clock.elapsed()
    };
    let one = "seventeen wild geese went over the marsh and ";
    for unit in [
        one,
        "salt and pepper, ",
        "(a (b ",
        "2 2 2 ",
        "or 2 lb or ",
        "salt 30 g no sorry 25 ",
        "a hundred and two thousand ",
        "cup and a half ",
        "2 % salt ",
    ] {
        let times = |n: usize| {
            let text: String = unit.repeat(n / unit.len());
            (0..3).map(|_| time(&text)).min().expect("a time")
        };
        let (short, long) = (times(1400), times(5600));
        let factor = long.as_secs_f64() / short.as_secs_f64().max(1e-6);
        println!("{unit:?}: {short:?} and {long:?}, {factor:.1} times for 4 times the length");
        assert!(
            factor < 10.0 || long.as_millis() < 60,
            "{unit:?}: {factor:.1} times for 4 times the length"
        );
    }
}
