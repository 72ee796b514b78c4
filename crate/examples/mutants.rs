//! Spoiled texts through the recipe reader, from a fixed seed: nothing panics, a cure in a text is never answered as none, and
//! the time is told by length.
//!
//! ```text
//! cargo run --release --example mutants -- 1000000
//! ```

use cure_reckoner::dose::VerdictWord;
use cure_reckoner::reading::{AskReading, read};
use cure_reckoner::weigh::Settings;
use serde_json::Value;
use std::time::Instant;

const SETS: [&str; 7] = [
    include_str!("../../tests/data/others-lines.jsonl"),
    include_str!("../../tests/data/others-recipes.jsonl"),
    include_str!("../../tests/data/third-lines.jsonl"),
    include_str!("../../tests/data/fourth-lines.jsonl"),
    include_str!("../../tests/data/fifth-lines.jsonl"),
    include_str!("../../tests/data/sixth-lines.jsonl"),
    include_str!("../../tests/data/sixth-recipes.jsonl"),
];

/// Each says a cure by itself.
const CURES: [&str; 8] = [
    "5 g cure no. 1",
    "2 tsp cure #2",
    "1 oz saltpetre",
    "0.25 % pink curing salt",
    "a pinch of saltpeter",
    "10 g nitrite salt",
    "half a teaspoon of curing salt",
    "3 g sodium nitrite",
];

/// What stands between, and bends a reading.
const WORDS: [&str; 16] = [
    " no sorry ",
    " and ",
    " n ",
    ", ",
    "\n",
    " each ",
    " or ",
    " per kg ",
    " half ",
    " a hundred and ",
    "(",
    ")",
    " - ",
    "%",
    " 30 ",
    " tsp ",
];

/// Numbers by chance, the same in every run.
struct Dice(u64);

impl Dice {
    fn below(&mut self, most: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        usize::try_from(self.0 % most.max(1) as u64).unwrap_or_default()
    }
}

fn spoiled(dice: &mut Dice, seeds: &[String]) -> String {
    let mut text: Vec<char> = seeds[dice.below(seeds.len())].chars().collect();
    for _ in 0..dice.below(8) {
        let at = dice.below(text.len() + 1);
        match dice.below(6) {
            0 if at < text.len() => drop(text.remove(at)),
            1 if at < text.len() => text.insert(at, text[at]),
            2 if at + 1 < text.len() => text.swap(at, at + 1),
            3 => text.truncate(at),
            4 => {
                let other: Vec<char> = seeds[dice.below(seeds.len())].chars().collect();
                let from = dice.below(other.len());
                text.splice(at..at, other[from..].iter().copied());
            }
            _ => {
                let word = WORDS[dice.below(WORDS.len())];
                text.splice(at..at, word.chars());
            }
        }
    }
    text.into_iter().collect()
}

fn main() {
    let count: usize = std::env::args().nth(1).and_then(|n| n.parse().ok()).unwrap_or(10_000);
    let cases = SETS.iter().flat_map(|set| set.lines());
    let seeds: Vec<String> = cases
        .filter_map(|l| {
            serde_json::from_str::<Value>(l).ok()?["text"]
                .as_str()
                .map(str::to_owned)
        })
        .collect();
    let mut dice = Dice(0x5eed_2026);
    let (mut silent, mut slowest, clock) = (0, (0, 0), Instant::now());
    for n in 0..count {
        let mut text = spoiled(&mut dice, &seeds);
        let cured = n % 2 == 0;
        if cured {
            // A line of its own: what stands around it must not swallow it.
            let mut lines: Vec<String> = text.lines().map(str::to_owned).collect();
            let at = dice.below(lines.len() + 1);
            lines.insert(at, CURES[dice.below(CURES.len())].to_owned());
            text = lines.join("\n");
        }
        let ask = AskReading {
            text,
            answers: Vec::new(),
            untitled: String::new(),
            settings: Settings::new_page(),
        };
        let one = Instant::now();
        let read = read(&ask);
        let took = one.elapsed().as_micros();
        let per_byte = took / (ask.text.len().max(50) as u128);
        if per_byte > slowest.0 {
            slowest = (per_byte, ask.text.len());
        }
        if let (true, Ok(reading)) = (cured, read) {
            let none = reading.verdict.as_ref().is_some_and(|v| v.word == VerdictWord::NoCure);
            let bare = reading
                .recipe
                .as_ref()
                .is_some_and(|r| r.cures.is_empty() && r.may_hold_cure().is_empty());
            if none || bare {
                silent += 1;
                println!("answered without its cure: {:?}", ask.text);
            }
        }
        if n % 100_000 == 99_999 {
            println!(
                "{} read, {silent} without their cure, {:.0} s",
                n + 1,
                clock.elapsed().as_secs_f64()
            );
        }
    }
    let (per_byte, length) = slowest;
    println!("{count} read, {silent} without their cure; the slowest took {per_byte} µs a byte, of {length}");
    assert_eq!(silent, 0);
}
