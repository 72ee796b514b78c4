//! Spoiled inputs by the million through a decoder, at its full speed and without a C++ compiler: each is one of the
//! corpus with a few bytes changed, cut, doubled or taken from another. It says how many it read, or which one failed.
//!
//! ```text
//! cargo run --release -p cure-reckoner-tests --example spoiled -- quantity 10000000 1
//! ```

use base64ct::{Base64, Encoding};
use cure_reckoner_tests::oracles;
use rand::rngs::SmallRng;
use rand::{Rng, SeedableRng};
use std::sync::Mutex;

/// The input in hand, and its number.
static LAST: Mutex<(u64, Vec<u8>)> = Mutex::new((0, Vec::new()));

const LONGEST: usize = 2000;
/// What bends a reading more often than a byte by chance.
const PIECES: [&str; 24] = [
    " ", "0", "9", ".", ",", "/", "-", "½", "%", " g", " lb", " oz", "°", "(", ")", "\n", "null", "{}", "[]", "\"",
    "1e9", "\u{301}", "\u{200f}", "ß",
];

fn main() {
    let asked: Vec<String> = std::env::args().skip(1).collect();
    let [target, count, seed] = &asked[..] else {
        panic!("a decoder, how many, a seed");
    };
    let (corpus, oracle): (&str, fn(&[u8])) = match target.as_str() {
        "quantity" => (include_str!("../data/corpus/quantity.txt"), oracles::quantity),
        "link" => (include_str!("../data/corpus/link.txt"), oracles::link),
        "record" => (include_str!("../data/corpus/record.txt"), oracles::record),
        "calendar" => (include_str!("../data/corpus/calendar.txt"), oracles::calendar),
        "reading" => (include_str!("../data/corpus/reading.txt"), oracles::reading),
        other => panic!("no decoder called {other}"),
    };
    let kept: Vec<Vec<u8>> = corpus
        .lines()
        .map(|line| Base64::decode_vec(line).expect("base64"))
        .collect();
    // A release ends at a panic, so what it was about is said before.
    let told = std::panic::take_hook();
    std::panic::set_hook(Box::new(move |about| {
        told(about);
        if let Ok(last) = LAST.lock() {
            eprintln!("input {}: {}", last.0, Base64::encode_string(&last.1));
        }
    }));
    let count: u64 = count.parse().expect("how many");
    let mut dice = SmallRng::seed_from_u64(seed.parse().expect("a seed"));
    for n in 0..count {
        let input = spoiled(&kept, &mut dice);
        if let Ok(mut last) = LAST.lock() {
            *last = (n, input.clone());
        }
        oracle(&input);
    }
    println!("{target}: {count} inputs, seed {seed}, none failed");
}

fn spoiled(kept: &[Vec<u8>], dice: &mut SmallRng) -> Vec<u8> {
    let mut input = kept[dice.random_range(0..kept.len())].clone();
    for _ in 0..dice.random_range(1..=6) {
        let at = dice.random_range(0..=input.len());
        let to = (at + dice.random_range(0..12)).min(input.len());
        match dice.random_range(0..6) {
            0 if at < input.len() => input[at] = dice.random(),
            1 => drop(input.drain(at..to)),
            2 => {
                let twice = input[at..to].to_vec();
                input.splice(at..at, twice);
            }
            3 => {
                let other = &kept[dice.random_range(0..kept.len())];
                let from = dice.random_range(0..=other.len());
                let until = (from + dice.random_range(0..60)).min(other.len());
                input.splice(at..to, other[from..until].iter().copied());
            }
            4 if at < input.len() => input[at] ^= 1 << dice.random_range(0..8),
            _ => drop(input.splice(at..at, PIECES[dice.random_range(0..PIECES.len())].bytes())),
        }
    }
    input.truncate(LONGEST);
    input
}
