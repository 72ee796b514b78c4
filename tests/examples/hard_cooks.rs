//! Simulated cooks of solid pieces, with fires that go out and wraps half-way: how well their end is foreseen, beside a
//! straight line through the last three readings.
//!
//! `cargo run -q --release -p cure-reckoner-tests --example hard_cooks [how many] [the first] [even | odd | all]`
//!
//! Cooks with an even number are for looking at and for choosing by; those with an odd number stay unseen until the end.

use cure_reckoner_tests::hard_cooks::{Cook, table};

fn main() {
    let given: Vec<String> = std::env::args().skip(1).collect();
    let number = |place: usize, usual| given.get(place).and_then(|n| n.parse().ok()).unwrap_or(usual);
    let (count, first): (usize, u64) = (number(0, 300) as usize, number(1, 0));
    let wanted = |number: &u64| match given.get(2).map(String::as_str) {
        Some("odd") => number % 2 == 1,
        Some("all") => true,
        _ => number.is_multiple_of(2),
    };
    let cooks: Vec<Cook> = (first..).filter(wanted).take(count).map(Cook::simulated).collect();
    print!("{}", table(&cooks));
}
