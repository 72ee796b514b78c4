//! What is said on the weigh-out, as facts: the page words them.

use crate::batch::OddWeight;
use crate::dose::Measured;
use crate::pantry::{ItemName, Status};
use crate::quantity::Figure;
use serde::Serialize;

/// What the bag of a cure prints, per cent of it; nothing of what is not in it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Strength {
    /// Sodium nitrite, `6.25 %`.
    pub nitrite: Option<String>,
    /// Sodium nitrate.
    pub nitrate: Option<String>,
}

/// What a cure on the list is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum CureOf {
    /// As it comes out of its bag.
    Neat {
        /// What the bag prints.
        strength: Strength,
    },
    /// A premix that the list works with.
    OneIn {
        /// One part of it is cure in so many, the rest salt.
        parts: u32,
    },
    /// A premix with salt that the recipe has for its cure.
    Premix {
        /// What its label says.
        strength: Strength,
    },
    /// A stock in water that the recipe has for its cure.
    Stock {
        /// What its label says.
        strength: Strength,
    },
}

/// How the weight of a line came about.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum LineWhy {
    /// Rounded down to the scale's step.
    RoundedDown {
        /// From so much: `3.552 g`.
        exact: String,
    },
    /// The cure brings salt, which is taken off.
    LessInCure {
        /// Salt in all.
        whole: String,
        /// Of it in the cure.
        in_cure: String,
    },
}

/// A line was ticked, and the list now asks for something else.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Changed {
    /// What is in the bowl.
    pub is: Figure,
    /// What the list asks for.
    pub wanted: Figure,
}

/// What is counted to catch a slip.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum SpoonUnit {
    /// Level teaspoons.
    Teaspoons,
    /// Level tablespoons.
    Tablespoons,
    /// Cups.
    Cups,
}

/// Where the weight of a spoon comes from.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum SpoonSource {
    /// The cook's own spoon, weighed.
    Own,
    /// A row of the pantry.
    Table {
        /// Where it is from.
        source: &'static str,
        /// Numbers of the food in that database.
        ndb: Vec<&'static str>,
        /// How well it is known.
        status: Status,
    },
}

/// What the list stands on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum SheetFact {
    /// Green weight.
    Green {
        /// In the person's units.
        weight: String,
    },
    /// What a cure aims at.
    Aim {
        /// `150 ppm`.
        ppm: String,
        /// By the rule that is chosen, where the recipe's own is a proposal.
        by_rule: bool,
    },
    /// Salt, the cure's included.
    Salt {
        /// `2.2 %`.
        percent: String,
        /// Of what.
        of: SaltOf,
    },
    /// A cure accelerator that goes in.
    Accelerator {
        /// Rounded up.
        ppm: u32,
    },
    /// The scale's step.
    Scale {
        /// `0.1 g`.
        step: String,
    },
}

/// What salt is a share of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum SaltOf {
    /// Of green weight.
    Green,
    /// What is taken up of a brine, of green weight.
    TakenUp,
    /// Of meat and water.
    MeatAndWater,
}

/// A remark on the list.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Remark {
    /// A line is less than the scale can show.
    BelowStep {
        /// What it is called.
        of: ItemName,
        /// How much it is.
        weight: String,
    },
    /// The cure alone brings more salt than is aimed at.
    SaltInCure {
        /// It is a premix that brings it.
        premix: bool,
        /// What it brings.
        brings: String,
        /// What is aimed at.
        aimed: String,
    },
    /// The recipe has no salt of its own.
    NoSaltLine {
        /// What the cure brings.
        brings: String,
    },
    /// All of a sweet cure but nitrite and nitrate is taken for salt; it holds sugar too.
    SweetCure,
    /// A stock in water keeps for the day.
    StockOfTheDay,
    /// The scale cannot show the cure at all.
    CureBelowStep,
    /// A cure accelerator goes in, with what its rule says to so much.
    Accelerator {
        /// Rounded up.
        ppm: u32,
        /// How that lies.
        lies: Accelerated,
        /// By which rule; nothing for the one on bacon, 9 CFR 424.22(b).
        rule: Option<&'static str>,
    },
    /// A weight that is far from the usual.
    OddWeight {
        /// Which, and what is usual.
        odd: OddWeight,
    },
    /// The cure is in already, and so not on the list.
    InAlready {
        /// What went in.
        portion: Measured,
    },
    /// A premix does not suit this recipe: it wants one cure, and salt enough to stand the premix's.
    NoPremix,
}

/// How a dose of an accelerator lies to its rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Accelerated {
    /// Less than the rule for bacon wants.
    Less,
    /// More than the rule for bacon wants.
    More,
    /// As the rule for bacon wants it.
    AsWanted,
    /// Over the limit.
    Over,
    /// Within the limit.
    Within,
}

/// A way out where the scale is too coarse.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum CoarseWay {
    /// Cure thinned with salt is weighed in a larger amount.
    Premix {
        /// The dose then lies between this,
        low: u32,
        /// and this, in ppm.
        high: u32,
    },
    /// A finer scale: 0.1 g, or 0.01 g for less than 300 g of meat.
    FinerScale,
    /// More meat in one batch.
    Pool {
        /// The least cure that this scale weighs well enough.
        from: Figure,
    },
}
