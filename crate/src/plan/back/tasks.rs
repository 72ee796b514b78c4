//! The tasks of a planned batch at their times, with the turns between them.

use super::chain::{Planned, SLOT_MS, fixed, needs};
use super::sheet::{BackStep, Board};
use crate::batch::Batch;
use crate::recipe::{Do, Step, head};
use crate::schedule::{State, millis};

/// Most turns of a step.
const MOST_TURNS: usize = 200;

/// The tasks at their times, turns among them; a task that runs already keeps the time it was begun.
pub fn tasks(batch: &Batch, state: &State, plan: &Planned, times: &[usize], board: &Board) -> Vec<BackStep> {
    let mut out = Vec::new();
    let steps = &batch.recipe.steps;
    let mut before = None;
    let own = steps.iter().enumerate().skip(plan.first);
    for ((i, step), (from, to)) in own.zip(times.iter().zip(times.iter().skip(1))) {
        let running = plan.chain.running && i == plan.first;
        let id = format!("step:{i}");
        let begun = state
            .jobs
            .iter()
            .find(|j| j.id == id)
            .and_then(|j| j.ticked)
            .filter(|_| running);
        let (place, tended, _) = needs(step.act);
        let at = begun.unwrap_or_else(|| board.time(*from));
        let ends = board.time(*to);
        let fixed = if running {
            Some("It runs already.")
        } else {
            fixed(before)
        };
        let start = before.is_none() && i == 0;
        out.push(BackStep {
            step: i,
            head: if start {
                batch.recipe.method.words().job.0
            } else {
                head(step.act)
            },
            at,
            ends,
            place,
            tended,
            turn: false,
            fixed,
            moved: None,
        });
        out.extend(turns(step, i, at, ends, batch, board));
        before = Some(step.act);
    }
    if let Some(last) = times.last().filter(|_| before != Some(Do::Pack)) {
        let at = board.time(*last);
        out.push(BackStep {
            step: steps.len(),
            head: "Ready",
            at,
            ends: at,
            place: None,
            tended: false,
            turn: false,
            fixed: fixed(before),
            moved: None,
        });
    }
    out
}

/// Turns of a step, each at the nearest time that nobody rests; those that are past are left out.
fn turns(step: &Step, i: usize, from: i64, ends: i64, batch: &Batch, board: &Board) -> Vec<BackStep> {
    let every = millis(step.turn_every);
    if every < SLOT_MS {
        return Vec::new();
    }
    let due = (1_i64..).map(|k| from.saturating_add(every.saturating_mul(k)));
    let due = due
        .take_while(|t| *t < ends)
        .take(MOST_TURNS)
        .filter(|t| *t >= board.base);
    due.map(|at| {
        let slot = usize::try_from(at.saturating_sub(board.base).div_euclid(SLOT_MS)).unwrap_or(0);
        let awake = |s: &usize| board.far.rest.get(*s).is_some_and(|rest| !rest);
        let best = if awake(&slot) {
            None
        } else {
            // The nearer of the last time before and the first after.
            let earlier = (0..slot).rev().find(awake);
            let later = (slot..board.far.rest.len()).find(awake);
            earlier
                .into_iter()
                .chain(later)
                .min_by_key(|s| s.abs_diff(slot))
                .map(|s| board.time(s))
        };
        BackStep {
            step: i,
            head: batch.recipe.method.words().turn.0,
            at: best.unwrap_or(at),
            ends: best.unwrap_or(at),
            place: None,
            tended: false,
            turn: true,
            fixed: None,
            moved: best.map(|_| at),
        }
    })
    .collect()
}
