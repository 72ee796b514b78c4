//! The question and the answer of planning back.

use super::facts::{Fixed, Gap, Snag, Task, WouldFit};
use crate::quantity::Rest;
use serde::{Deserialize, Serialize};

/// What is wished of a plan. Times are in milliseconds since 1970.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Wish {
    /// When all is to be ready.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub ready_by: i64,
    /// Hours slept or in the blind: no task that can move falls into them.
    pub rests: Vec<Rest>,
    /// Batches at once in the refrigerator, over the fire, on the rack.
    pub room: [u32; 3],
    /// Steps that were put to a time by hand; the rest follows.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Hold>>"))]
    pub holds: Vec<Hold>,
}

/// A step that was put to a time by hand.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Hold {
    /// The batch.
    pub batch: String,
    /// Index of the step; the number of steps for the end.
    pub step: usize,
    /// When it is to begin.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
}

/// The plan over all batches.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Back {
    /// True when every batch that is planned is ready in time.
    pub fits: bool,
    /// The first start of all: later than this not everything is ready.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub start: Option<i64>,
    /// When the last batch would be ready if all were begun now.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub finish: Option<i64>,
    /// How much better a plan there may be, where not every one was looked at.
    pub gap: Option<Gap>,
    /// One for each batch, in the order of the request.
    pub batches: Vec<BackBatch>,
}

/// The plan of one batch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BackBatch {
    /// The batch's id as it came with the request.
    pub batch: String,
    /// True when it is ready in time.
    pub fits: bool,
    /// The latest start; nothing for one that runs already.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub start: Option<i64>,
    /// The earliest it can be ready beside the others.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub finish: Option<i64>,
    /// Time to spare, `14 h`; nothing where there is none.
    pub slack: Option<String>,
    /// Why it is not planned, or why it does not fit.
    pub snag: Option<Snag>,
    /// What would make it fit.
    pub ways: Vec<WouldFit>,
    /// Its tasks: at the latest where it fits, at the earliest where it does not.
    pub steps: Vec<BackStep>,
}

/// One task.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BackStep {
    /// Index of the step; the number of steps for the end. A turn has that of its step.
    pub step: usize,
    /// What it is. A turn only goes along.
    pub task: Task,
    /// When it begins.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
    /// When the next task begins.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub ends: i64,
    /// Number of the place it takes: 0 the refrigerator, 1 the smoker or oven, 2 the rack.
    pub place: Option<usize>,
    /// True where somebody has to be by all the while.
    pub tended: bool,
    /// Why it must not move; nothing where it may.
    pub fixed: Option<Fixed>,
    /// Where it was due before it made way for rest.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub moved: Option<i64>,
}
