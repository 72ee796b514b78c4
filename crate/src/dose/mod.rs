//! How much cure, and whether a dose is all right: formulas, limits, verdict, next step.

mod case;
mod cautions;
mod evens;
mod formula;
mod judge;
mod limits;
mod measured;
mod next_step;
mod rescue;
mod slip;
mod verdict;

pub use case::{Case, Portion};
pub use cautions::{cautions, heat_keys, keys_for};
pub use evens::{Evens, Speed, evens, hours};
pub use formula::{Ingoing, Whole, cure_for, ingoing};
pub use judge::{Finding, axis, find, ppm};
pub use limits::{Basis, Profile, Rule, default_rule, profiles, rule};
pub use measured::{Measure, OwnSpoon, measured};
pub use rescue::{in_range, more_cure, more_meat, more_water};
pub use slip::Slip;
pub use verdict::{Advice, Caution, Mark, Outcome, Ppm, Verdict, judge};
