//! From a range and a rule to a word. Compared exactly, before anything is rounded for reading.

use super::formula::Ingoing;
use super::ground::Ground;
use super::limits::{Basis, Rule, default_rule};
use super::outcome::Outcome;
use super::remark::VerdictWord;
use crate::pantry::Status;
use crate::recipe::Eaten;
use rust_decimal::Decimal;

/// The outcome with its word.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Finding {
    /// What can be said.
    pub outcome: Outcome,
    /// True when all of the range supports it.
    pub sure: bool,
    /// The word.
    pub word: VerdictWord,
    /// What it rests on.
    pub ground: Ground,
}

/// Some pieces have no weight: nothing can be said yet.
pub const UNKNOWN: Finding = Finding {
    outcome: Outcome::CannotTell,
    sure: false,
    word: VerdictWord::CannotSayYet,
    ground: Ground::NotWeighed,
};

/// The same for another reason, under another word.
pub const fn undecided(word: VerdictWord, ground: Ground) -> Finding {
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
///
/// ```
/// use cure_reckoner::dose::{Ingoing, VerdictWord, find, rule};
/// use cure_reckoner::pantry::Belly;
/// use cure_reckoner::quantity::Range;
/// use cure_reckoner::recipe::{Eaten, Method};
/// use rust_decimal::{Decimal, dec};
/// // 21 CFR 172.175(a)(3): 200 ppm.
/// let rule = rule("us-home", Method::Rub, Belly::No).unwrap();
/// let word = |low: Decimal, high: Decimal| {
///     let ingoing = Ingoing { nitrite: Range::new(low, low, high), nitrate: Range::point(dec!(0)) };
///     find(ingoing, rule, Eaten::Cooked).word
/// };
/// assert_eq!(word(dec!(150), dec!(200)), VerdictWord::InRange);
/// assert_eq!(word(dec!(150), dec!(201)), VerdictWord::MayBeOver);
/// assert_eq!(word(dec!(201), dec!(210)), VerdictWord::Over);
/// ```
pub fn find(ingoing: Ingoing, rule: &Rule, eaten: Eaten) -> Finding {
    let found = find_alone(ingoing, rule, eaten);
    let leans = found.outcome == Outcome::InRange && rule.status == Status::Memory;
    if leans && find_alone(ingoing, default_rule(), eaten).outcome == Outcome::Over {
        return undecided(VerdictWord::CannotTell, Ground::MemoryAlone);
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
            word: if sure {
                VerdictWord::Over
            } else {
                VerdictWord::MayBeOver
            },
            ground,
        };
    }
    if is_over {
        return undecided(VerdictWord::CannotTell, Ground::FinishedDecides);
    }
    if !rule.together && nitrates.is_none() && nitrate.high > Decimal::ZERO {
        return undecided(VerdictWord::CannotTell, Ground::NitrateNoFigure);
    }
    if nitrite.high.is_zero() && nitrate.high > Decimal::ZERO {
        // Nitrate alone: within its limit, but no rule has a least for it.
        return undecided(VerdictWord::CannotTell, Ground::NitrateAlone);
    }
    if nitrite.low < rule.least {
        let sure = nitrite.high < rule.least;
        return Finding {
            outcome: Outcome::TooLittle,
            sure,
            word: if sure {
                VerdictWord::TooLow
            } else {
                VerdictWord::MayBeTooLow
            },
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
        word: VerdictWord::InRange,
        ground: Ground::InRange,
    }
}
