//! Rules of food safety written apart from the crate, from the published sources, and what the door's answers may assure
//! by them.
//!
//! `rules.csv` holds the rules and every figure with its source and status; `oracle*.rs` judge a batch by them with plain
//! arithmetic; `draw.rs` makes random batches; `asks.rs` puts them to the door and `heard.rs` takes from its answers what
//! they assure. `cases.jsonl` holds single requests that were once answered with a word they must not have.
//!
//! `ORACLE=1000000 cargo test --profile oracle -p cure-reckoner-tests --test oracle assured -- --nocapture` runs a million.

mod asks;
mod assured;
mod cases;
mod changed;
mod draw;
mod heard;
mod oracle;
mod oracle_cold;
mod oracle_dose;
mod oracle_heat;
mod table;
mod told;

/// The number of the first batch, so that one of a long run can be looked at by itself.
fn first() -> u64 {
    let asked = std::env::var("ORACLE_FIRST").ok().and_then(|n| n.parse().ok());
    asked.unwrap_or(0)
}

/// How many batches: as many as `ORACLE` asks for.
fn batches(least: u64) -> u64 {
    let asked = std::env::var("ORACLE").ok().and_then(|n| n.parse().ok());
    asked.unwrap_or(least)
}
