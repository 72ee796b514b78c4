//! What the log of a batch says: what is cooked enough by which rule, what is doubtful, and how long there is to chill.
#![allow(
    clippy::float_arithmetic,
    reason = "times and temperatures as read; no dose is reckoned here"
)]

mod doubts;
mod log;
mod sheet;

pub use doubts::Doubt;
pub use sheet::{ChillRow, Credit, FireClass, FirePoint, FireSheet, FireState, sheet};
