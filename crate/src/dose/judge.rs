//! From a range and a rule to a word. Compared exactly, before anything is rounded for reading.

use super::formula::Ingoing;
use super::limits::Profile;
use super::verdict::{Mark, Outcome, Ppm};
use crate::quantity::exact::Exact;
use crate::quantity::{Range, fixed};
use crate::recipe::Eaten;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// The outcome with its word and shape.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Finding {
    /// What can be said.
    pub outcome: Outcome,
    /// True when all of the range supports it.
    pub sure: bool,
    /// The word.
    pub word: &'static str,
    /// The shape.
    pub mark: Mark,
}

/// Nothing can be said yet.
pub const UNKNOWN: Finding = Finding {
    outcome: Outcome::CannotTell,
    sure: false,
    word: "Cannot say yet",
    mark: Mark::Ask,
};

/// The finding on what goes in, under a profile.
///
/// The worst end of the range sets the word. Where the meat hangs for months and is not cooked, the rule speaks of
/// the finished meat; above the limit and up to the profile's `undecided_to` what goes in cannot decide it.
pub fn find(ingoing: Ingoing, profile: &Profile, eaten: Eaten) -> Finding {
    let limit = Decimal::from(profile.limit);
    let least = Decimal::from(profile.least);
    let undecided_to = Decimal::from(profile.undecided_to);
    let nitrate_limit = Decimal::from(profile.nitrate_limit);
    let Ingoing { nitrite, nitrate } = ingoing;
    let over = |sure: bool| Finding {
        outcome: Outcome::Over,
        sure,
        word: if sure { "Stop: over the limit" } else { "May be over" },
        mark: if sure { Mark::Stop } else { Mark::Care },
    };
    if nitrate.high > nitrate_limit {
        return over(nitrate.low > nitrate_limit);
    }
    if nitrite.high > limit {
        if eaten == Eaten::HungForMonths && nitrite.high <= undecided_to {
            return Finding {
                word: "Cannot tell",
                ..UNKNOWN
            };
        }
        return over(nitrite.low > limit);
    }
    if nitrite.high.is_zero() && nitrate.high > Decimal::ZERO {
        // Nitrate alone: within its limit, but the rule has no least for it.
        return Finding {
            word: "Cannot tell",
            ..UNKNOWN
        };
    }
    if nitrite.low < least {
        let sure = nitrite.high < least;
        return Finding {
            outcome: Outcome::TooLittle,
            sure,
            word: if sure { "Too low" } else { "May be too low" },
            mark: Mark::Care,
        };
    }
    Finding {
        outcome: Outcome::InRange,
        sure: true,
        word: "In range",
        mark: Mark::Ok,
    }
}

/// A range in whole ppm, outward.
pub fn ppm(range: Range) -> Ppm {
    let whole = |v: Option<Decimal>| v.and_then(|v| v.to_u32()).unwrap_or(u32::MAX);
    Ppm {
        low: whole(range.low.down_to(Decimal::ONE)),
        typical: whole(range.typical.nearest(Decimal::ONE)),
        high: whole(range.high.up_to(Decimal::ONE)),
        exact: [range.low, range.typical, range.high].map(|v| fixed(v, 4)),
    }
}

/// Right end of the picture's axis: the first of these above the high end.
pub fn axis(high: Decimal, limit: u32) -> u32 {
    const ENDS: [u32; 8] = [300, 700, 1500, 3000, 7000, 15_000, 70_000, 1_000_000];
    ENDS.into_iter()
        .find(|e| Decimal::from(*e) > high && *e > limit)
        .unwrap_or(1_000_000)
}
