//! How much cure, and whether a dose is all right: formulas, limits, verdict, next step.

mod agent;
mod case;
mod cautions;
mod formula;
mod judge;
mod limits;
mod next_step;
mod verdict;

pub use agent::Agent;
pub use case::{Case, Dosed, Measured, Put, SpoonUsed, measured};
pub use cautions::{cautions, keys_for};
pub use formula::{Ingoing, base, cure_for, ingoing};
pub use judge::{Finding, axis, find, ppm};
pub use limits::{Profile, profile, profiles};
pub use next_step::{more_cure, more_meat};
pub use verdict::{Advice, Caution, Mark, Outcome, Ppm, Verdict, judge};
