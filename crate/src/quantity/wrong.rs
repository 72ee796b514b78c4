//! What can be wrong, as facts: the page words each. A sentence that stands in [`super::Problem::message`] is one that
//! has not come here yet.

use serde::Serialize;

/// One thing that is wrong, with the figures of the rule that it breaks.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Wrong {
    /// Bags that came in are counted, from one to so many at a time.
    BagsNotCounted {
        /// The most at a time.
        most: u32,
    },
    /// The figures are too large to be reckoned with exactly.
    TooLargeToReckon,
    /// A bag takes its brine by the meat, and no green weight is given.
    BagWantsMeat,
    /// The meat leaves less than a tenth of a litre for the brine in this vessel.
    NoRoomForBrine,
    /// No brine of salt has this strength.
    NoBrineStrength,
    /// So weak a cure cannot reach the aim in this brine.
    CureTooWeak,
}
