//! The weigh-out sheet as it is answered.

use crate::batch::Tick;
use crate::dose::Verdict;
use crate::quantity::Figure;
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
    /// Green weight, aim, salt, scale: label and value.
    pub facts: Vec<Fact>,
    /// Where only a share of the brine goes in: the salt that comes into the meat by it.
    pub salt: Option<SaltIn>,
    /// Where the sizes are bagged apart: the list of each bag, weighed into a bowl of its own.
    pub bags: Vec<BagList>,
    /// Remarks on the list: salt that the cure alone exceeds, a line below the scale's step.
    pub remarks: Vec<String>,
}

/// One line to weigh.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct WeighLine {
    /// Id for its tick: `cure:0`, `line:2`.
    pub id: String,
    /// What it is.
    pub name: String,
    /// True for a curing agent: weigh it, a spoon is too loose.
    pub is_cure: bool,
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
    /// How it came to that: `32.6 g in all, less 3.3 g that is already in the cure.`
    pub why: Option<String>,
    /// When it was ticked, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub ticked: Option<i64>,
    /// Set where it was ticked and the list now asks for something else.
    pub changed: Option<String>,
}

/// Level spoons, to catch a slip; not to weigh by.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Spoon {
    /// `level tsp`, `level tbsp`, `cups`.
    pub unit: String,
    /// Least, usual, most: `4.9`, `5.4`, `5.8`.
    pub low: String,
    /// See `low`.
    pub typical: String,
    /// See `low`.
    pub high: String,
    /// Where the weight of a spoon comes from, with its status.
    pub source: String,
}

/// A job to tick that is not weighing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Todo {
    /// Id for its tick: `rub`, `label`.
    pub id: String,
    /// What to do.
    pub text: String,
    /// When it was ticked, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub ticked: Option<i64>,
}

/// The scale is too coarse for this dose.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Coarse {
    /// `Scale too coarse`.
    pub word: String,
    /// What range the scale would give.
    pub says: String,
    /// The range in ppm, rounded outward.
    pub low: u32,
    /// See `low`.
    pub high: u32,
    /// Ways out, the first first.
    pub ways: Vec<crate::dose::Advice>,
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
    /// How to make and label it.
    pub steps: Vec<crate::dose::Advice>,
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
    /// Least that tastes of a cure and lets one do its work, `1.5 %`.
    pub least: Figure,
    /// True where less comes in.
    pub is_short: bool,
    /// What the least rests on: `common practice`.
    pub status: &'static str,
}

/// A label with its value.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Fact {
    /// `Green weight`.
    pub label: String,
    /// `1480 g`.
    pub value: String,
}
