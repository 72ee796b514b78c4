//! What can be said of a dose, in one key, and the shape that stands beside it.

use serde::Serialize;

/// What can be said of a dose.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// All of the range lies between the least and the limit.
    InRange,
    /// Some of the range lies under the least, none over the limit.
    TooLittle,
    /// Some of the range lies over the limit.
    Over,
    /// Something that is needed is not known, or the rule does not decide it.
    CannotTell,
}

/// The shape beside the word.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Mark {
    /// Disc with a tick.
    Ok,
    /// Triangle.
    Care,
    /// Octagon with a bar.
    Stop,
    /// Open diamond.
    Ask,
}
