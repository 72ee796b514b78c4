//! Simulated cooks and how well their end is foreseen, beside a straight line through the last three readings.
//!
//! `cargo run -q --release -p cure-reckoner-tests --example cooks [how many] [the first]`
//!
//! The width of the band was chosen on cooks 0 to 119; what it is worth shows on others, such as `300 1000`.
//!
//! The cooks come from another model than the one that is fitted: an explicit scheme of its own, another shape, another
//! law by which the surface dries, another thickness than the one that is handed over, a cabinet that swings, lids that
//! are lifted, noise on every reading.

use cure_reckoner_tests::cooks::{Cook, Scores, table};

fn main() {
    let number = |place, usual| {
        std::env::args()
            .nth(place)
            .and_then(|n| n.parse().ok())
            .unwrap_or(usual)
    };
    let (count, first): (u64, u64) = (number(1, 300), number(2, 1000));
    let cooks: Vec<Cook> = (first..first + count).map(Cook::simulated).collect();
    let scores: Vec<Scores> = cooks.iter().map(Cook::scores).collect();
    print!("{}", table(&scores));
}
