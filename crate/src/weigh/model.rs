//! The weigh-out sheet as it is answered.

use super::facts::{Changed, CoarseWay, CureOf, LineWhy, Remark, SheetFact, SpoonSource, SpoonUnit};
use crate::batch::Tick;
use crate::dose::Verdict;
use crate::pantry::ItemName;
use crate::quantity::Figure;
use crate::recipe::Method;
use serde::Serialize;

/// Everything on the weigh-out screen and on its print.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct WeighSheet {
    /// Green weight in the user's system; the typical one when not all is weighed.
    pub green: Figure,
    /// Low and high green weight where some pieces are not weighed yet.
    pub green_range: Option<(Figure, Figure)>,
    /// False while some pieces have no weight: then the sheet is an estimate and nothing can be ticked.
    pub weighed: bool,
    /// Pieces in all.
    pub pieces: u32,
    /// True when a tick may be set: all is weighed and the verdict does not hold the batch.
    pub can_tick: bool,
    /// What goes into the bowl on one zeroing of the scale, cure first.
    pub bowl: Vec<WeighLine>,
    /// What the scale shows at the end.
    pub bowl_total: Figure,
    /// The water of a brine, in a vessel of its own. Empty for a rub.
    pub vessel: Vec<WeighLine>,
    /// Jobs after weighing, to be ticked.
    pub todo: Vec<Todo>,
    /// The verdict on what this list puts in, or on what was put in.
    pub verdict: Verdict,
    /// Set where the scale's step moves the dose by more than 15 %.
    pub coarse: Option<Coarse>,
    /// Set where the list works with a premix.
    pub premix: Option<Premix>,
    /// Green weight, aim, salt, scale.
    pub facts: Vec<SheetFact>,
    /// Where only a share of the brine goes in: the salt that comes into the meat by it.
    pub salt: Option<SaltIn>,
    /// Where the sizes are bagged apart: the list of each bag, weighed into a bowl of its own.
    pub bags: Vec<BagList>,
    /// Remarks on the list: salt that the cure alone exceeds, a line below the scale's step.
    pub remarks: Vec<Remark>,
}

/// One line to weigh.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct WeighLine {
    /// Id for its tick: `cure:0`, `line:2`.
    pub id: String,
    /// What it is called; nothing for a curing agent.
    pub item: Option<ItemName>,
    /// Which curing agent: weigh it, a spoon is too loose. Nothing for any other line.
    pub cure: Option<CureOf>,
    /// What to add, rounded to the scale's step; what was added once ticked.
    pub add: Figure,
    /// The same in grams, `3.5 g`.
    pub weight: String,
    /// The tick to keep when it is in the bowl; the page puts its time in.
    pub tick: Tick,
    /// Before rounding, in grams: `3.552 g`.
    pub exact: String,
    /// Low and high where some pieces are not weighed yet.
    pub range: Option<(Figure, Figure)>,
    /// What the scale will show after it; nothing for what is weighed apart.
    pub reads: Option<Figure>,
    /// The spoon equivalent.
    pub spoon: Option<Spoon>,
    /// How it came to that.
    pub why: Option<LineWhy>,
    /// When it was ticked, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub ticked: Option<i64>,
    /// Set where it was ticked and the list now asks for something else.
    pub changed: Option<Changed>,
}

/// Level spoons, to catch a slip; not to weigh by.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Spoon {
    /// Which spoon, or cups.
    pub unit: SpoonUnit,
    /// Least, usual, most: `4.9`, `5.4`, `5.8`.
    pub low: String,
    /// See `low`.
    pub typical: String,
    /// See `low`.
    pub high: String,
    /// Where the weight of a spoon comes from.
    pub source: SpoonSource,
}

/// A job to tick that is not weighing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Todo {
    /// Id for its tick: `rub`, `label`.
    pub id: String,
    /// What to do.
    pub what: TodoOf,
    /// When it was ticked, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub ticked: Option<i64>,
}

/// What there is to do once all is weighed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum TodoOf {
    /// The meat gets it.
    PutOn {
        /// How.
        method: Method,
        /// So many pieces.
        pieces: u32,
        /// Nobody counted them.
        about: bool,
    },
    /// It is labelled, then closed.
    Close {
        /// By what it is put on with.
        method: Method,
    },
}

/// The scale is too coarse for this dose.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Coarse {
    /// The least cure of the list: `3.55 g`.
    pub cure: String,
    /// The scale's step.
    pub step: String,
    /// What range the scale would give, in ppm, rounded outward.
    pub low: u32,
    /// See `low`.
    pub high: u32,
    /// Ways out, the first first.
    pub ways: Vec<CoarseWay>,
    /// One part of cure in so many, where the list can be worked with a premix on this scale.
    pub premix_parts: Option<u32>,
    /// The range a premix would give, in ppm, where it helps.
    pub premix_range: Option<(u32, u32)>,
}

/// Cure thinned with salt so that a coarse scale can weigh it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Premix {
    /// One part cure in so many parts: 10 or 5.
    pub parts: u32,
    /// Cure to weigh for making it.
    pub cure: Figure,
    /// Salt to weigh for making it.
    pub salt: Figure,
}

/// What goes into one bag.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BagList {
    /// The bag.
    pub bag: u32,
    /// Places of its size classes in the batch.
    pub classes: Vec<u32>,
    /// Its green weight.
    pub green: Figure,
    /// What is weighed for it on one zeroing of the scale, and what the scale shows after each.
    pub bowl: Vec<BagLine>,
    /// Water and all else in a vessel of its own.
    pub vessel: Vec<BagLine>,
    /// The dose that it comes to.
    pub nitrite: Option<crate::dose::Ppm>,
    /// How that is judged, on this scale.
    pub outcome: crate::dose::Outcome,
}

/// One thing for one bag.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BagLine {
    /// Id of its line on the list of all: `cure:0`, `line:2`.
    pub id: String,
    /// What to add.
    pub add: Figure,
    /// What the scale shows after it; nothing for what is weighed apart.
    pub reads: Option<Figure>,
}

/// Salt that comes into the meat with what is taken up of a brine, the cure's included.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SaltIn {
    /// Of green weight, `1.8 %`.
    pub comes: Figure,
    /// Least that tastes of a cure and lets one do its work, `1.5 %`. Common practice, no source.
    pub least: Figure,
    /// True where less comes in.
    pub is_short: bool,
}
