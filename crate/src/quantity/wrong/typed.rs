//! What can be wrong with a quantity that is typed.

use serde::Serialize;

/// Why a text is no quantity of its kind.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum TypedWrong {
    /// A text is too long for a quantity.
    QuantityTooLong {
        /// Of what.
        of: KindOf,
        /// The first characters of it.
        typed: String,
    },
    /// No quantity is typed where one is wanted.
    QuantityMissing {
        /// Of what.
        of: KindOf,
    },
    /// A number has no unit.
    NoUnit {
        /// Of what.
        of: KindOf,
        /// The first characters of it.
        typed: String,
    },
    /// A word is no unit of this kind.
    WrongUnit {
        /// Of what.
        of: KindOf,
        /// The first characters of the word.
        unit: String,
    },
    /// A larger unit behind a smaller one, or two of different kinds.
    UnitsOutOfOrder {
        /// Of what.
        of: KindOf,
        /// The first characters of the text.
        typed: String,
    },
    /// More digits or marks than a number has.
    TooManyDigits {
        /// Of what.
        of: KindOf,
        /// The first characters of the text.
        typed: String,
    },
    /// A number that can be read two ways.
    TwoReadings {
        /// The first characters of the text.
        typed: String,
        /// Both readings.
        readings: Box<[String; 2]>,
    },
    /// A quantity below the least.
    QuantityTooSmall {
        /// Of what.
        of: KindOf,
        /// The least.
        least: String,
    },
    /// A quantity above the most.
    QuantityTooLarge {
        /// Of what.
        of: KindOf,
        /// The most.
        most: String,
    },
    /// A text that is no quantity of this kind.
    QuantityNotRead {
        /// Of what.
        of: KindOf,
        /// The first characters of the text.
        typed: String,
    },
}

/// A kind of quantity.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum KindOf {
    /// A weight.
    Weight,
    /// A length.
    Length,
    /// A temperature.
    Temperature,
    /// A span of time.
    Time,
    /// A share by weight.
    Share,
    /// A volume.
    SpoonOrCup,
}
