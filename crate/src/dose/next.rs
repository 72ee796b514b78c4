//! What can be done next, as facts with their figures: the page words each. A rescue never rests on soaking nitrite out or
//! on more time.

use super::ppm::PpmEnds;
use super::remark::CureAs;
use crate::recipe::{Method, Why};
use serde::Serialize;

/// One thing to do next.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum NextStep {
    /// The pieces are weighed: until then the list is an estimate.
    WeighPieces,
    /// Not weighed out; as a cover brine a longer stay only evens it out.
    CoverBrineInstead,
    /// Or thickness and stay are told: thick pieces taken out in time are judged by pick-up.
    SayThickness,
    /// Not weighed out: the recipe aims lower.
    LowerAim {
        /// At this, ppm; nothing where none is sure to do on this scale.
        aim: Option<u32>,
        /// Between which the whole range has to lie.
        within: PpmEnds,
    },
    /// The pieces are weighed again: a weight typed too small raises the dose.
    CheckPieces,
    /// The scale's step alone may take it under the least.
    FinerScaleOrPremix {
        /// The least, ppm.
        least: u32,
    },
    /// The recipe aims higher, or a finer scale weighs it.
    RaiseAim {
        /// At this, ppm; nothing where none is sure to do on this scale.
        aim: Option<u32>,
        /// Between which the whole range has to lie.
        within: PpmEnds,
    },
    /// It is kept as fresh meat: under the least the cure protects nothing.
    KeepFresh,
    /// In range: how to use what is weighed.
    UseIt {
        /// The method.
        method: Method,
    },
    /// Without nitrite and nitrate it is fresh meat.
    TreatAsFresh {
        /// True where something went in that was taken for a cure: pink salt for the table.
        put_in: bool,
    },
    /// So much of a 6.25 % cure would be in range.
    CureNow {
        /// Least grams.
        least: String,
        /// Most grams.
        most: String,
        /// What went in before, and stays in it.
        stays: String,
    },
    /// The packet is found: the nitrite is printed on it.
    FindPacket,
    /// Without it nothing is blessed: colour proves nothing.
    NoPacket,
    /// Meanwhile it stays cold, and is labelled.
    KeepColdMeanwhile,
    /// The strength typed is that of the pure salt: nobody tastes it, and the packet is read again.
    ReadPrintAgain,
    /// If the packet says so, all of it is thrown out and the packet locked away.
    ThrowOutPure,
    /// Whoever ate of it rings at once, with signs or without.
    AtePure,
    /// Ascorbate goes into the pickle.
    AddAscorbate {
        /// So much, ppm.
        ppm: u32,
    },
    /// Whether it is in is told; afterwards it cannot be added.
    TellAscorbate {
        /// So much, ppm.
        ppm: u32,
    },
    /// Bacon is fried gently.
    FryGently,
    /// The recipe aims at the limit or under, and the rule is met however long it hangs.
    AimAtLimit {
        /// Most nitrite, ppm.
        nitrite: u32,
        /// Most nitrate, ppm.
        nitrate: u32,
    },
    /// Or a laboratory measures what is left.
    OrMeasure,
    /// A laboratory measures it before anyone eats it.
    MeasureFirst,
    /// It is labelled as not to be eaten before it is measured.
    LabelUnmeasured,
    /// In range and on the meat: no more cure.
    LeaveCure {
        /// The method.
        method: Method,
    },
    /// On the bag stands what was not weighed.
    WriteOnBag {
        /// What was put in: `1 tsp`.
        said: String,
    },
    /// One level spoon of the same cure is weighed.
    WeighSpoon {
        /// Which.
        spoon: SpoonKind,
        /// Least grams in all that are in range.
        least: String,
        /// Most grams in all that are in range.
        most: String,
    },
    /// Over: it is not cooked and not tasted.
    DoNotTaste,
    /// Within the hour: more raw meat.
    MoreMeat {
        /// The method.
        method: Method,
        /// How much, in the person's units.
        weight: String,
        /// The dose then, ppm.
        then: PpmEnds,
    },
    /// Before the brine does its work: more water.
    MoreWater {
        /// The method.
        method: Method,
        /// How much, in the person's units.
        weight: String,
        /// The dose then, ppm.
        then: PpmEnds,
    },
    /// Within the hour: a spoon is weighed, since no amount fits so wide a range.
    NarrowSpoon {
        /// Which.
        spoon: SpoonKind,
    },
    /// More of the same.
    MoreCure {
        /// What it was weighed as: so many grams of the bag itself would be ten times too much of a premix.
        of: CureAs,
        /// Grams.
        grams: String,
        /// The method.
        method: Method,
    },
    /// On this scale no addition is sure to do.
    FinerScale,
    /// It is thrown out where nothing else can be done, or it is longer than an hour.
    ThrowOut {
        /// True where there is a brine to pour away.
        brine: bool,
    },
    /// Someone ate of what is over: the signs, and whom to ring.
    SomeoneAte,
    /// Too much is counted already, and there may be more.
    MayBeMore,
    /// What may hold nitrite or nitrate is settled.
    Settle {
        /// Why it may.
        why: Why,
    },
}

/// A spoon to weigh.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum SpoonKind {
    /// A teaspoon.
    Teaspoon,
    /// A tablespoon.
    Tablespoon,
}
