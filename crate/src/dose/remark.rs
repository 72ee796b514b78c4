//! What a verdict says, as facts: its word and its remarks. The page words them.

use super::outcome::Mark;
use super::ppm::PpmEnds;
use crate::recipe::Why;
use serde::Serialize;

/// The word of a verdict.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum VerdictWord {
    /// The whole range lies between the least and the limit.
    InRange,
    /// The whole range lies over the limit.
    Over,
    /// Some of the range lies over it.
    MayBeOver,
    /// The whole range lies under the least.
    TooLow,
    /// Some of the range lies under it.
    MayBeTooLow,
    /// In range, and the rule wants ascorbate with it.
    NeedsAscorbate,
    /// There is no nitrite and no nitrate in it.
    NoCure,
    /// The rule does not decide over what goes in.
    CannotTell,
    /// Something that is needed is not known yet.
    CannotSayYet,
}

impl VerdictWord {
    /// The shape that stands beside it.
    ///
    /// ```
    /// use cure_reckoner::dose::{Mark, VerdictWord};
    /// assert_eq!(VerdictWord::Over.mark(), Mark::Stop);
    /// assert_eq!(VerdictWord::MayBeOver.mark(), Mark::Care);
    /// ```
    pub const fn mark(self) -> Mark {
        match self {
            Self::InRange => Mark::Ok,
            Self::Over => Mark::Stop,
            Self::MayBeOver | Self::TooLow | Self::MayBeTooLow => Mark::Care,
            Self::NeedsAscorbate | Self::NoCure | Self::CannotTell | Self::CannotSayYet => Mark::Ask,
        }
    }
}

/// One thing that is said beside the word.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum DoseRemark {
    /// Nothing in it holds nitrite or nitrate.
    NothingHolds,
    /// Some pieces have no weight, so that the dose is an estimate.
    Estimate,
    /// What goes in, and what it is counted on.
    GoesIn {
        /// Each portion of cure.
        portions: Vec<Measured>,
        /// What it is counted on.
        on: CountedOn,
        /// True where only the list asks for it, it is too much, and none of it is on the meat yet.
        only_asked: bool,
    },
    /// By this rule nitrate goes only into what is not heat-treated.
    NitrateRawOnly,
    /// By this rule no nitrate goes into it.
    NitrateForbidden,
    /// So many per cent of nitrite are the strength of the pure salt: a slip of the comma, or meat that can kill.
    PureSalt {
        /// Per cent.
        nitrite: String,
    },
    /// The strength of the cure is not known.
    StrengthUnknown,
    /// Nitrate alone works only as it slowly turns to nitrite; the rule has no least for it.
    NitrateAlone,
    /// Between least and limit, and the ascorbate or erythorbate that this rule wants is not in what was told.
    AscorbateLacks {
        /// What the rule wants.
        ppm: u32,
    },
    /// The rule has no figure for nitrate.
    NitrateNoFigure,
    /// Above so much the rule counts the finished meat, and what goes in cannot decide it.
    FinishedDecides {
        /// Its limit, ppm.
        limit: u32,
    },
    /// The range comes of the step of the scale.
    ScaleStep {
        /// Grams.
        step: String,
        /// The dose, ppm.
        range: PpmEnds,
    },
    /// By pick-up it is one thing, and left until meat and brine are equal another.
    PickUp {
        /// Share of green weight that is taken up, per cent.
        percent: String,
        /// The dose by pick-up.
        taken: PpmEnds,
        /// The dose when meat and brine are equal.
        equal: PpmEnds,
    },
    /// Pick-up is no basis: the thinnest piece can be equal with the brine after so long.
    EqualAfter {
        /// A time.
        time: String,
    },
    /// By the time it comes out, so much may have diffused in, by the speeds of the cure clock; the larger counts.
    Diffuses {
        /// The dose then.
        range: PpmEnds,
    },
    /// At the surface it is so strong until it has evened out.
    Surface {
        /// The most, ppm.
        most: u32,
    },
    /// No piece is equal with the brine before so long: all of it comes out on time.
    EqualNotBefore {
        /// A time.
        time: String,
    },
    /// Whether pick-up is a basis cannot be said without the thickest part of each size and the time in the brine.
    EqualUnknown,
    /// What likely went wrong: a row of the table of slips.
    Slip {
        /// Its key.
        #[cfg_attr(feature = "types", ts(type = "SlipKey"))]
        key: &'static str,
    },
    /// Something beside it may hold nitrite or nitrate.
    MayHold {
        /// Why it may.
        why: Why,
        /// What it is called.
        name: String,
    },
    /// What the dose comes to without that.
    CountedWithout {
        /// The dose, ppm.
        range: PpmEnds,
    },
}

/// A portion of cure, as it is told.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Measured {
    /// As it was measured, `3.5 g`, `1 tbsp`; empty where no amount is said.
    pub said: String,
    /// What was measured.
    pub of: CureAs,
    /// Grams of cure in it, where it is a mix.
    pub neat: Option<String>,
    /// Least, usual and most grams, where it was measured by the spoon.
    pub grams: Option<[String; 3]>,
}

/// What a cure is measured as.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum CureAs {
    /// As it comes out of its bag.
    Cure,
    /// Thinned with salt.
    Premix,
    /// Thinned with water.
    Stock,
}

/// What a dose is counted on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum CountedOn {
    /// The meat alone.
    Meat {
        /// Green weight.
        green: String,
    },
    /// A brine, of which a share of green weight goes in.
    Brine {
        /// What it weighs.
        brine: String,
        /// The share, per cent of green weight.
        percent: String,
    },
    /// Meat that is pumped with a share of a brine and lies under the rest.
    Pumped {
        /// Green weight.
        green: String,
        /// What the brine weighs.
        brine: String,
        /// The share, per cent of green weight.
        percent: String,
    },
    /// Meat and brine together.
    Both {
        /// Green weight.
        green: String,
        /// What both weigh together.
        all: String,
    },
}
