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
    /// All is to be ready by a time that is past.
    DatePast,
    /// All is to be ready later than a plan reaches.
    DateTooFar {
        /// How many days a plan reaches.
        days: i64,
    },
    /// More batches or stretches of rest than a plan has.
    PlanTooLong {
        /// Most batches.
        batches: usize,
        /// Most stretches of rest.
        rests: usize,
    },
    /// A plan of a bag has no row, or more than this.
    BagRows {
        /// Most rows.
        most: usize,
    },
    /// A plan of a bag has more recipes than this, or a row is for one that is not among them.
    BagRecipes {
        /// Most recipes.
        most: usize,
    },
    /// All together weigh more than a tonne.
    BagTooHeavy,
    /// No row of the table of game.
    NoSuchGame,
    /// Hunters times animals is nought, or more than this.
    BagCount {
        /// Most animals in a row.
        most: u32,
    },
    /// Of this animal there is no figure without its weight.
    AnimalUnweighed {
        /// How it is weighed, as the table has it: `dressed, skin on`.
        weighed: &'static str,
    },
    /// No card of this key for when something went wrong.
    NoSuchCard,
    /// The card has no such answer.
    NoSuchAnswer,
}
