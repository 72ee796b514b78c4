//! The tasks of a planned batch at their times, with the turns between them.

use super::board::Board;
use super::chain::{Planned, fixed};
use super::facts::{Fixed, Task};
use super::model::BackStep;
use crate::batch::Batch;
use crate::recipe::Do;
use crate::schedule::{State, Timed, needs, turns};

/// The tasks at their times, turns among them; a task that runs already keeps the time it was begun.
pub fn tasks(batch: &Batch, state: &State, plan: &Planned, times: &[usize], board: &Board) -> Vec<BackStep> {
    let mut out = Vec::new();
    let steps = &batch.recipe.steps;
    let mut before = None;
    let own = steps.iter().enumerate().skip(plan.first);
    for ((i, step), (from, to)) in own.zip(times.iter().zip(times.iter().skip(1))) {
        let running = plan.chain.running && i == plan.first;
        let own = |i: usize| state.times.iter().find(|t| t.id == format!("step:{i}"));
        let (place, tended, _) = needs(step.act);
        let at = match own(i) {
            Some(timed) if running => timed.at,
            // What is overdue keeps the time it was due.
            Some(timed) if plan.chain.running && i == plan.first.saturating_add(1) && timed.at <= board.base => {
                timed.at
            }
            _ => board.time(*from),
        };
        let ends = board.time(*to);
        let fixed = if running { Some(Fixed::Runs) } else { fixed(before) };
        let start = before.is_none() && i == 0;
        out.push(BackStep {
            step: i,
            task: if start {
                Task::Start {
                    method: batch.recipe.method,
                }
            } else {
                Task::Step { act: step.act }
            },
            at,
            ends,
            place,
            tended,
            fixed,
            moved: None,
        });
        let due: Vec<Timed> = if running {
            let own = |t: &&Timed| t.id.starts_with("turn:") && usize::try_from(t.step) == Ok(i);
            state.times.iter().filter(own).cloned().collect()
        } else {
            turns(step, i, (at, ends), &board.awake)
        };
        let ahead = due.into_iter().filter(|t| t.at >= board.base && t.at < ends);
        out.extend(ahead.map(|t| turn(batch, i, &t)));
        before = Some(step.act);
    }
    if let Some(last) = times.last().filter(|_| before != Some(Do::Pack)) {
        let at = board.time(*last);
        out.push(BackStep {
            step: steps.len(),
            task: Task::Ready,
            at,
            ends: at,
            place: None,
            tended: false,
            fixed: fixed(before),
            moved: None,
        });
    }
    out
}

fn turn(batch: &Batch, step: usize, timed: &Timed) -> BackStep {
    BackStep {
        step,
        task: Task::Turn {
            method: batch.recipe.method,
        },
        at: timed.at,
        ends: timed.at,
        place: None,
        tended: false,
        fixed: None,
        moved: timed.moved,
    }
}
