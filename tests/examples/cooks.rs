//! Simulated cooks and how well their end is foreseen, beside a straight line through the last three readings.
//!
//! `cargo run -q --release -p cure-reckoner-tests --example cooks [how many]`
//!
//! The cooks come from another model than the one that is fitted: an explicit scheme of its own, another shape, another
//! law by which the surface dries, another thickness than the one that is handed over, a cabinet that swings, lids that
//! are lifted, noise on every reading.

use cure_reckoner_tests::cooks::{Cook, Scores, table};

fn main() {
    let count = std::env::args().nth(1).and_then(|n| n.parse().ok()).unwrap_or(300);
    let cooks: Vec<Cook> = (0..count).map(Cook::simulated).collect();
    let scores: Vec<Scores> = cooks.iter().map(Cook::scores).collect();
    print!("{}", table(&scores));
}
