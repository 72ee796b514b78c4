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
mod next;
mod next_step;
mod outcome;
mod ppm;
mod remark;
mod rescue;
mod says;
mod slip;
mod spoons;
mod verdict;

pub use case::{Case, Parts, Portion};
pub use cautions::{add_bacon, cautions, dressing_keys, heat_keys, keys_for, pack_keys};
pub use evens::{Evens, Lying, Speed, evens, hours};
pub use formula::{Ingoing, Whole, cure_for, ingoing, summed};
pub use ground::Ground;
pub use judge::{Finding, find};
pub use limits::{Basis, Profile, Rule, default_rule, profiles, rule};
pub use measured::{Kit, Measure, OwnSpoon, measured};
pub use next::{NextStep, SpoonKind};
pub use outcome::{Mark, Outcome};
pub use ppm::{Ppm, PpmEnds, axis, ppm};
pub use remark::{CountedOn, CureAs, DoseRemark, Measured, VerdictWord};
pub use rescue::AIM;
pub use slip::{Said, Slip};
pub use spoons::{SpoonSize, Unit};
pub use verdict::{Caution, MoreMeat, Verdict, judge};
