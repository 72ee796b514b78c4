//! The question and the answer of planning a bag.

use super::facts::{BagBasis, HouseRoom, InHouse, LeftOf, RackRoom, Spread, Wanted};
use crate::batch::Batch;
use crate::dose::Caution;
use crate::pack::Kept;
use crate::pantry::ItemName;
use crate::quantity::Mass;
use crate::recipe::Recipe;
use crate::weigh::Settings;
use serde::{Deserialize, Serialize};

/// Content of `plan_bag`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskBag {
    /// What is in the bag.
    pub rows: Vec<BagAsk>,
    /// The recipes it is for: then the answer says what to buy.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Recipe>>"))]
    pub recipes: Vec<Recipe>,
    /// Pieces to a pack, for the bags; nothing where no bags are to be counted.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub per_pack: Option<u32>,
    /// What is in the house.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Kept>>"))]
    pub stock: Vec<Kept>,
    /// Batches of before, for the own weights.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Batch>>"))]
    pub batches: Vec<Batch>,
    /// The user's settings.
    pub settings: Settings,
}

/// One species, or one animal.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct BagAsk {
    /// Key of a row of the table of game.
    pub of: String,
    /// What the page calls that row: pieces of before of that name are of it.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<String>"))]
    pub called: String,
    /// Hunters, 1 for what is there already.
    pub hunters: u32,
    /// Birds or animals for each.
    pub each: u32,
    /// `each` counts pieces, not animals: one haunch of a deer that was shared.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub by_piece: bool,
    /// Weight of one animal as the row weighs it; nothing for what is usual.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub weight: Option<Mass>,
    /// Index of its recipe; nothing where it is for none yet.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "number | null", optional))]
    pub recipe: Option<usize>,
}

/// The plan of a bag.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BagSheet {
    /// One for each row asked about, in order.
    pub rows: Vec<BagRow>,
    /// Pieces in all.
    pub pieces: u32,
    /// Green weight in all, typical.
    pub green: String,
    /// The same with both ends.
    pub range: Spread,
    /// What to buy for the recipes: enough for the high end.
    pub buy: Vec<Buy>,
    /// What is left at the end of each recipe, with its source.
    pub left: Vec<LeftOf>,
    /// Room on a rack or a shelf.
    pub room: Option<RackRoom>,
    /// Whether the refrigerator and the smoker have it, where the settings know them.
    pub places: Vec<HouseRoom>,
    /// Cautions that stand beside it.
    pub cautions: Vec<Caution>,
}

/// One row of the plan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BagRow {
    /// Key of its row in the table of game.
    #[cfg_attr(feature = "types", ts(type = "GameKey"))]
    pub game: &'static str,
    /// Key of its cut, or `own`.
    #[cfg_attr(feature = "types", ts(type = "CutKey | 'own'"))]
    pub cut: &'static str,
    /// Pieces.
    pub pieces: u32,
    /// Grams of one piece, with both ends.
    pub each: Spread,
    /// Green weight of all, with both ends.
    pub all: Spread,
    /// Where the figures come from, with their status.
    pub basis: BagBasis,
}

/// One thing to buy.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Buy {
    /// What it is called; nothing for bags.
    pub of: Option<ItemName>,
    /// How much of it.
    pub wanted: Wanted,
    /// Enough for the high end.
    pub most: String,
    /// What is in the house; nothing where none of it is written down.
    pub has: Option<InHouse>,
}
