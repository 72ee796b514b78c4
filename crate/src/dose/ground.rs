//! What a verdict rests on, as facts with stable keys.

use serde::Serialize;

/// One thing found about a dose.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Ground {
    /// All of the range lies over the limit on nitrite.
    Over,
    /// Some of the range lies over it.
    MayBeOver,
    /// All of the range lies over the limit on nitrate.
    NitrateOver,
    /// Some of the range lies over it.
    NitrateMayBeOver,
    /// Nitrate, where the rule has it only in what is not heat-treated.
    NitrateNotAllowed,
    /// All of the range lies under the least.
    TooLittle,
    /// Some of the range lies under it.
    MayBeTooLittle,
    /// The whole range lies between the least and the limit.
    InRange,
    /// Nothing in it holds nitrite or nitrate.
    NoCure,
    /// The strength of something that went in is not known.
    StrengthUnknown,
    /// The strength typed is that of the pure salt: a slip, or meat that can kill.
    StrengthLethal,
    /// Some pieces have no weight.
    NotWeighed,
    /// The rule counts the finished meat or what is left, and what goes in cannot decide it.
    FinishedDecides,
    /// Nitrate alone: the rule has no least for it.
    NitrateAlone,
    /// The rule has no figure for nitrate.
    NitrateNoFigure,
    /// A limit from memory allows what the published one forbids.
    MemoryAlone,
    /// By pick-up, and the pieces can be equal with their brine before they leave it.
    EvensOut,
    /// By pick-up, and it is not known how thick the pieces are or how long they stay.
    MayEvenOut,
    /// By pick-up, and more can have diffused in by then than the pick-up says.
    DiffusesIn,
    /// The rule wants ascorbate or erythorbate with it, and that is lacking or not known.
    NeedsAccelerator,
    /// Something beside it may hold nitrite or nitrate that is not counted.
    MayHoldMore,
    /// Cure is on the meat already.
    IsIn,
}
