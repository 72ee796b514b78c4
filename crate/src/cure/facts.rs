//! What is said of a batch in its cure, as facts: the page words them.

use crate::batch::Counted;
use crate::dose::Mark;
use serde::Serialize;

/// Something to be said of the whole batch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Note {
    /// Shape beside the word.
    pub mark: Mark,
    /// What it is.
    pub what: Noted,
}

/// What is noted.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Noted {
    /// It was above 4 °C (40 °F). FoodSafety.gov, quoted: two hours in all are the most.
    TooWarm {
        /// So long by the log; nothing where it has only just been read.
        warm: Option<String>,
        /// So long before it at the most, which was not read.
        unread: Option<String>,
        /// So long from the rub until it went into the refrigerator; nothing under two hours, or where it was read cold.
        out: Option<String>,
        /// Two hours or more, perhaps: it is thrown out, unless the meat itself was read colder.
        discard: bool,
    },
    /// Frozen or below 1 °C (34 °F), where no hour counts.
    Stood {
        /// So long.
        time: String,
    },
    /// The power was off. Published advice: see the constants of the refrigerator.
    PowerOff {
        /// So long.
        time: String,
        /// The warmest it came to.
        highest: String,
        /// So long above 4 °C (40 °F).
        warm: String,
        /// What that means.
        fate: Fate,
        /// It was not read when the power came back: reckoned for a shut door in a room at 22 °C (72 °F), which keeps
        /// cold for about four hours (FoodSafety.gov, quoted). Else a straight line between the readings.
        guessed: bool,
    },
    /// The refrigerator was not read yet.
    NoReading {
        /// What the times are for.
        at: String,
    },
    /// More than half of its turns are not ticked: what is never turned cures unevenly (common practice, no source).
    TurnsMissed {
        /// So many are not.
        missed: u32,
        /// Of so many that were due.
        due: u32,
    },
    /// By pick-up more cure goes in with every hour.
    StaySetsDose,
    /// Mixed or pumped in, the cure need not find its way from outside.
    InTheMiddle,
    /// A size class has no thickest part, and so no clock.
    ThicknessMissing,
    /// It is in for more than a day longer than planned: a weighed dose only evens out.
    LongerThanPlanned,
    /// It came out before nine pieces in ten this thick are through.
    CameOutEarly,
    /// By the planned rinse a class is not through.
    RinseEarly {
        /// The class.
        of: Counted,
        /// It may be through all the same: half of such pieces are.
        perhaps: bool,
        /// Pieces no thicker than this would be through by then; nothing where the piece itself is no thicker.
        cut: Option<String>,
    },
}

/// What the warmth of a power cut means for the meat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Fate {
    /// It stayed at 4 °C (40 °F) or colder.
    Kept,
    /// Less than two hours above it: cooled at once and cooked through it can be used.
    UseNow,
    /// Two hours or more above it, perhaps: it is thrown out (FoodSafety.gov, quoted).
    Discard,
}

/// How far the middle of a size class has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Middle {
    /// Fewer than half of such pieces are through.
    NotYet,
    /// Half of them are through.
    Likely,
    /// Nine in ten have colour.
    Coloured,
    /// Nine in ten have their salt, within a tenth of the final.
    Even,
}

/// A rule of thumb for the time in the cure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Thumb {
    /// Seven days per inch: Kentucky, Rentfrow 2013, published.
    SevenDaysAnInch,
    /// A quarter-inch a day from each side: common practice, no source.
    QuarterInchADay,
    /// Two days per pound: Clemson HGIC 3603, published.
    TwoDaysAPound,
}
