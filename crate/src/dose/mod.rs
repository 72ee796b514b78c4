//! How much cure, and whether a dose is all right: formulas, limits, verdict, next step.

mod case;
mod cautions;
mod doubt;
mod evens;
mod formula;
mod ground;
mod judge;
mod limits;
mod measured;
mod next_step;
mod rescue;
mod slip;
mod spoons;
mod verdict;

pub use case::{Case, Portion};
pub use cautions::{add_bacon, cautions, dressing_keys, heat_keys, keys_for, pack_keys};
pub use evens::{Evens, Lying, Speed, diffused, evens, hours};
pub use formula::{Ingoing, Whole, cure_for, ingoing, summed};
pub use ground::Ground;
pub use judge::{Finding, axis, find, ppm};
pub use limits::{Basis, Profile, Rule, Status, default_rule, profiles, rule};
pub use measured::{Kit, Measure, OwnSpoon, measured};
pub use rescue::{AIM, in_range, more_cure, more_meat, more_water};
pub use slip::{Said, Slip};
pub use spoons::{SpoonSize, Unit};
pub use verdict::{Advice, Caution, Mark, MoreMeat, Outcome, Ppm, Verdict, judge};
