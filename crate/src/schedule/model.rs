//! Jobs and states as they are answered.

use super::deed::{Deed, Whereabouts};
use super::times::Timed;
use crate::batch::OddTime;
use crate::cure::Until;
use crate::quantity::Problem;
use crate::recipe::Basis;
use crate::standing::{Doubt, Stage};
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
    /// Id for its tick: `step:1`, `turn:0:2`, `draw:0`, `rinse:0` and `dry:0` for a size class that comes out first, `end`; `read` for what is over the fire and unread; `fridge` for what has just gone into its cure; `weigh` for a batch that is not in the cure yet, to be opened.
    pub id: String,
    /// What is to be done.
    pub does: Deed,
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
    /// How far off it is, where that is half an hour or more, for a question before it is ticked: `36 h`.
    pub early: Option<String>,
    /// Keys of the cautions that stand beside it.
    #[cfg_attr(feature = "types", ts(type = "CautionKey[]"))]
    pub cautions: Vec<&'static str>,
    /// The size class it is of; nothing for all that are left.
    pub class: Option<u32>,
    /// What its length rests on.
    pub kind: Basis,
    /// Somebody has to be by all the while.
    pub presence: bool,
}

/// Where a batch stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct State {
    /// The batch's id as it came with the request.
    pub batch: String,
    /// The stage in hand.
    pub stage: Stage,
    /// True when nothing on it may go on before a doubt is cleared, or at all.
    pub held: bool,
    /// All that is in doubt, the gravest first.
    pub doubts: Vec<Doubt>,
    /// Times of it that cannot be right, or hardly; none of one that is put away.
    pub odd_times: Vec<OddTime>,
    /// Where it is; nothing where it is held or cannot be reckoned.
    pub whereabouts: Option<Whereabouts>,
    /// Its green weight, once the cure is on.
    pub green: Option<String>,
    /// Why it cannot be reckoned, though its cure is on.
    pub problem: Option<Problem>,
    /// True when every step is ticked.
    pub finished: bool,
    /// Every step and turn of the batch with its ticks, in order.
    pub jobs: Vec<Job>,
    /// When it comes out of the cure; nothing before the cure is on.
    pub until: Option<Until>,
    /// Every time of it, the jobs' among them; none before the cure is on.
    pub times: Vec<Timed>,
}
