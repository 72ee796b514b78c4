//! Jobs and states as they are answered.

use crate::cure::Window;
use serde::Serialize;

/// Jobs over all batches, the soonest first, and the state of each batch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct NextList {
    /// Every job still to do, the soonest first.
    pub jobs: Vec<Job>,
    /// One for each batch asked about, in the order of the request.
    pub batches: Vec<State>,
}

/// One job.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Job {
    /// The batch's id as it came with the request.
    pub batch: String,
    /// Id for its tick: `step:1`, `turn:0:2`, `draw:0` for a size class that comes out first, `end`; `weigh` for a batch that is not in the cure yet, to be opened.
    pub id: String,
    /// `Turn the pieces`, `Rinse`.
    pub head: String,
    /// One sentence: how, how long, until when.
    pub text: String,
    /// Stage it belongs to.
    pub stage: Stage,
    /// When it is due, in milliseconds since 1970; nothing while the batch has no clock yet.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub due: Option<i64>,
    /// When it ends if begun when due.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub ends: Option<i64>,
    /// True when it is due now or overdue.
    pub now: bool,
    /// When it was ticked; only in the list of one batch.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub ticked: Option<i64>,
    /// True when it was passed over: a later step is ticked.
    pub passed: bool,
    /// Said of a job whose time is still to come, for a question before it is ticked: `It is due in 36 h.`
    pub early: Option<String>,
    /// Caution that stands beside it.
    pub caution: Option<String>,
    /// For the step that ends the cure: each size class by the cure clock.
    pub windows: Vec<Window>,
}

/// The five stages of a batch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Stage {
    /// What is on the board.
    Pieces,
    /// The weigh-out.
    Weigh,
    /// In the cure, rinse, soak.
    Cure,
    /// Dry, smoke, cook, rest.
    Fire,
    /// Chill, pack.
    Pack,
}

/// Where a batch stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct State {
    /// The batch's id as it came with the request.
    pub batch: String,
    /// The stage in hand.
    pub stage: Stage,
    /// True when the dose holds the batch.
    pub held: bool,
    /// `Held: dose is over the limit`, `In the cure, day 4`, `Not weighed out yet`.
    pub says: String,
    /// True when every step is ticked.
    pub finished: bool,
    /// Every step and turn of the batch with its ticks, in order.
    pub jobs: Vec<Job>,
}
