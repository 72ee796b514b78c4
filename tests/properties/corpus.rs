//! Every input that the fuzzers kept, replayed: what once was found stays found. One input a line, in base64.

use base64ct::{Base64, Encoding};
use cure_reckoner_tests::oracles;

fn replay(corpus: &str, oracle: fn(&[u8])) {
    let mut replayed = 0;
    for line in corpus.lines() {
        oracle(&Base64::decode_vec(line).expect("base64"));
        replayed += 1;
    }
    assert!(replayed > 50, "only {replayed} inputs");
}

#[test]
fn reading() {
    replay(include_str!("../data/corpus/reading.txt"), oracles::reading);
}

#[test]
fn quantity() {
    replay(include_str!("../data/corpus/quantity.txt"), oracles::quantity);
}

#[test]
fn link() {
    replay(include_str!("../data/corpus/link.txt"), oracles::link);
}

#[test]
fn record() {
    replay(include_str!("../data/corpus/record.txt"), oracles::record);
}

#[test]
fn calendar() {
    replay(include_str!("../data/corpus/calendar.txt"), oracles::calendar);
}
