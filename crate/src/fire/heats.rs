//! Two steps of heat are two: what the smoker is set to, and what it will be set to by the steps that are still to come.

use crate::batch::{self, Batch};
use crate::recipe::{Do, Step};
use crate::record::{fahrenheit, seconds};

use super::show::celsius;

/// What the recipe sets the smoker to.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Heats {
    /// °C by the step that runs, or by the first.
    pub set: Option<f64>,
    /// By the steps after it: seconds on the clock of the readings, none before now, and °C.
    pub next: Vec<(f64, f64)>,
}

/// The heats of a batch; `origin` is nought on the clock of the readings, in milliseconds.
pub(super) fn heats(batch: &Batch, origin: i64, now: i64) -> Heats {
    let steps = &batch.recipe.steps;
    let hot = |step: &Step| matches!(step.act, Do::Smoke | Do::Cook);
    let begun = (0..steps.len()).rev().find(|i| batch.step(*i).is_some());
    let runs = begun.filter(|i| steps.get(*i).is_some_and(hot));
    let Some(runs) = runs.or_else(|| steps.iter().position(hot)) else {
        return Heats::default();
    };
    let kinds = batch::kinds(&batch.pieces);
    let mut due = batch.step(runs).map_or(origin, |tick| tick.at);
    let mut heats = Heats::default();
    for (i, step) in steps.iter().enumerate().skip(runs) {
        let at = step.at.filter(|_| hot(step)).map(|at| celsius(fahrenheit(at)));
        if i == runs {
            heats.set = at;
        } else if let Some(at) = at {
            // What is due and not begun begins at the earliest now.
            heats.next.push((seconds(due.max(now).saturating_sub(origin)), at));
        }
        due = due.saturating_add(step.takes(&kinds).map_or(0, |(lasts, _)| lasts));
    }
    heats
}
