//! From a range and a rule to a word. Compared exactly, before anything is rounded for reading.

use super::formula::Ingoing;
use super::ground::Ground;
use super::limits::{Basis, Rule, Status, default_rule};
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
    /// What it rests on.
    pub ground: Ground,
}

/// Some pieces have no weight: nothing can be said yet.
pub const UNKNOWN: Finding = Finding {
    outcome: Outcome::CannotTell,
    sure: false,
    word: "Cannot say yet",
    mark: Mark::Ask,
    ground: Ground::NotWeighed,
};

/// The same for another reason, in other words.
pub const fn undecided(word: &'static str, ground: Ground) -> Finding {
    Finding {
        word,
        ground,
        ..UNKNOWN
    }
}

/// The finding on what goes in, under a rule.
///
/// The worst end of the range sets the word. A limit on the finished meat decides over what is eaten soon, but not over
/// what hangs for months; a limit on what is left decides neither. There, up to the rule's `undecided_to`, nothing can be
/// told. A limit from memory does not bless by itself: the default rule, which is published, must agree. The table holds
/// whole ppm, limits rounded down and leasts up, and the range is shown outward: what is shown compares as it is judged.
pub fn find(ingoing: Ingoing, rule: &Rule, eaten: Eaten) -> Finding {
    let found = find_alone(ingoing, rule, eaten);
    let leans = found.outcome == Outcome::InRange && rule.status == Status::Memory;
    if leans && find_alone(ingoing, default_rule(), eaten).outcome == Outcome::Over {
        return undecided("Cannot tell", Ground::MemoryAlone);
    }
    found
}

fn find_alone(ingoing: Ingoing, rule: &Rule, eaten: Eaten) -> Finding {
    let Ingoing { nitrite, nitrate } = ingoing;
    let counted = if rule.together {
        nitrite.plus(nitrate).unwrap_or(nitrite)
    } else {
        nitrite
    };
    let nitrates = rule.nitrate_in(eaten).filter(|_| !rule.together);
    let decides = match rule.basis {
        Basis::Ingoing => true,
        Basis::Finished => eaten == Eaten::Cooked,
        Basis::Residual => false,
    };
    let is_over = counted.high > rule.limit;
    let by_nitrite = (is_over && (decides || counted.high > rule.undecided_to)).then(|| {
        let sure = counted.low > rule.limit;
        (sure, if sure { Ground::Over } else { Ground::MayBeOver })
    });
    let by_nitrate = nitrates.filter(|limit| nitrate.high > *limit).map(|limit| {
        let sure = nitrate.low > limit;
        let ground = match (rule.nitrate == Some(limit), sure) {
            (false, _) => Ground::NitrateNotAllowed,
            (true, true) => Ground::NitrateOver,
            (true, false) => Ground::NitrateMayBeOver,
        };
        (sure, ground)
    });
    // Where both are over, the surer one says it.
    let over = match (by_nitrite, by_nitrate) {
        (Some((false, _)), Some((true, _))) | (None, _) => by_nitrate,
        _ => by_nitrite,
    };
    if let Some((sure, ground)) = over {
        return Finding {
            outcome: Outcome::Over,
            sure,
            word: if sure { "Stop: over the limit" } else { "May be over" },
            mark: if sure { Mark::Stop } else { Mark::Care },
            ground,
        };
    }
    if is_over {
        return undecided("Cannot tell", Ground::FinishedDecides);
    }
    if !rule.together && nitrates.is_none() && nitrate.high > Decimal::ZERO {
        return undecided("Cannot tell", Ground::NitrateNoFigure);
    }
    if nitrite.high.is_zero() && nitrate.high > Decimal::ZERO {
        // Nitrate alone: within its limit, but no rule has a least for it.
        return undecided("Cannot tell", Ground::NitrateAlone);
    }
    if nitrite.low < rule.least {
        let sure = nitrite.high < rule.least;
        return Finding {
            outcome: Outcome::TooLittle,
            sure,
            word: if sure { "Too low" } else { "May be too low" },
            mark: Mark::Care,
            ground: if sure {
                Ground::TooLittle
            } else {
                Ground::MayBeTooLittle
            },
        };
    }
    Finding {
        outcome: Outcome::InRange,
        sure: true,
        word: "In range",
        mark: Mark::Ok,
        ground: Ground::InRange,
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
pub fn axis(high: Decimal, limit: Decimal) -> u32 {
    const ENDS: [u32; 8] = [300, 700, 1500, 3000, 7000, 15_000, 70_000, 1_000_000];
    ENDS.into_iter()
        .find(|e| Decimal::from(*e) > high && Decimal::from(*e) > limit)
        .unwrap_or(1_000_000)
}
