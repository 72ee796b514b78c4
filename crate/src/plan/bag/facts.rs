//! What is said of a bag, as facts: the page words them.

use crate::pantry::Status;
use crate::quantity::System;
use serde::Serialize;

/// A weight with both ends.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Spread {
    /// What is likely.
    pub likely: String,
    /// The least and the most; nothing where the figure is one.
    pub ends: Option<(String, String)>,
}

/// Where a figure comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum BagBasis {
    /// The user's own weights of before, 15 % either way at the least (our own judgement).
    Own {
        /// How many pieces those were.
        pieces: u32,
    },
    /// A row of the table of game.
    Table {
        /// Where it is from.
        source: &'static str,
        /// How well it is known.
        status: Status,
    },
}

/// What is left of a recipe's meat at the end.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LeftOf {
    /// How it was finished: the key of a row of the table of game.
    #[cfg_attr(feature = "types", ts(type = "FinishKey"))]
    pub finish: &'static str,
    /// What is left.
    pub weight: Spread,
    /// Where the figure is from.
    pub source: &'static str,
    /// Its status.
    pub status: Status,
}

/// An area, rounded to ten of its unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Area {
    /// How many.
    pub number: u32,
    /// Square centimetres in metric units, square inches in those of the US.
    pub units: System,
}

/// Room on racks, pieces side by side: by the weight and the usual thickness (memory), a quarter more for gaps (our own
/// judgement).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct RackRoom {
    /// The least.
    pub low: Area,
    /// What is likely.
    pub likely: Area,
    /// The most.
    pub high: Area,
    /// Racks of 40 by 30 cm that hold the most.
    pub racks: u32,
}

/// A place of the house.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum HousePlace {
    /// Shelves of the refrigerator.
    Fridge,
    /// Racks of the smoker.
    Smoker,
}

/// Whether a place of the house has room for the bag.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct HouseRoom {
    /// The place.
    pub place: HousePlace,
    /// What it has.
    pub has: Area,
    /// How much of the bag that is.
    pub holds: HoldsBag,
}

/// How much of a bag a place holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum HoldsBag {
    /// The most there may be.
    Most,
    /// What is likely, and not the most.
    Likely,
    /// Not even what is likely at once.
    Part {
        /// In so many goes.
        goes: u32,
    },
}

/// How much of a thing is wanted.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Wanted {
    /// A weight.
    Weight {
        /// For the least and the most meat, and what is likely.
        weight: Spread,
    },
    /// Bags.
    Bags {
        /// To cure in, one for each recipe.
        cure: usize,
        /// For packs.
        packs: u32,
        /// Pieces to a pack.
        per: u32,
    },
}

/// What is in the house of a thing that is wanted.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct InHouse {
    /// What is left of it.
    pub left: String,
    /// What is missing for the high end; nothing where it reaches.
    pub missing: Option<String>,
}
