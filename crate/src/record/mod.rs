//! What the log of the fire and the chill shows, size class by size class, as facts and figures: what has to be read and
//! by which demand, what was read, how it came up, how it was chilled, which readings are odd. No sentence stands here.
//!
//! The coldest piece probed decides over the fire, the warmest in the chill. A colder reading, a longer warm spell or a
//! later chill never makes a good word appear (`tests/properties/record.rs`).
#![allow(
    clippy::float_arithmetic,
    reason = "times and temperatures as read; no dose is reckoned here"
)]

mod chill;
mod class;
mod come_up;
mod heat;
mod log;
mod needed;
mod odd;

pub use chill::{Chill, StageRecord, stages};
pub use class::{ClassRecord, class, classes};
pub use come_up::ComeUp;
pub use heat::Heat;
pub use log::{Log, fahrenheit, seconds, temperature};
pub use needed::{Demand, Needed, needed};
pub use odd::{Odd, OddReading, in_question, odd_readings};
