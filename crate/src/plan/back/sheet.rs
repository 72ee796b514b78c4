//! The question and the answer of planning back.

use super::chain::{PLACES, Planned, SLOT_MS, fixed, needs, planned, slots};
use super::fit::Taken;
use super::share::{back as latest, forth};
use super::ways::ways;
use crate::batch::Batch;
use crate::quantity::{Code, Problem, Span};
use crate::recipe::{Do, Step, head};
use crate::schedule::{MINUTE, State, millis, next};
use crate::weigh::Settings;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// Milliseconds of a day.
const DAY: i64 = 1440 * MINUTE;
/// How far ahead a plan reaches.
const MOST_DAYS: i64 = 100;
/// How much later than asked for the earliest finish is looked for.
const LATER_DAYS: i64 = 14;
/// Most batches in one plan.
const MOST_BATCHES: usize = 40;
/// Most stretches of rest.
const MOST_RESTS: usize = 500;
/// Most turns of a step.
const MOST_TURNS: usize = 200;

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

/// A stretch of rest.
#[derive(Clone, Copy, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Rest {
    /// From.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub from: i64,
    /// To.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub to: i64,
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
    /// One for each batch, in the order of the request.
    pub batches: Vec<BackBatch>,
    /// Names of the places, by number.
    pub places: [&'static str; 3],
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
    pub says: Option<String>,
    /// What would make it fit.
    pub ways: Vec<&'static str>,
    /// Its tasks: at the latest where it fits, at the earliest where it does not.
    pub steps: Vec<BackStep>,
}

/// One task.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BackStep {
    /// Index of the step; the number of steps for the end. A turn has that of its step.
    pub step: usize,
    /// `Rinse off the cure`.
    pub head: &'static str,
    /// When it begins.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
    /// When the next task begins.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub ends: i64,
    /// Number of the place it takes.
    pub place: Option<usize>,
    /// True where somebody has to be by all the while.
    pub tended: bool,
    /// True for a turn, which only goes along.
    pub turn: bool,
    /// Why it must not move; nothing where it may.
    pub fixed: Option<&'static str>,
    /// Where it was due before it made way for rest.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub moved: Option<i64>,
}

/// Plans batches back from a date.
///
/// # Errors
/// Problems of the settings; [`Code::TooSmall`] for a date that is past, [`Code::TooLarge`] for one too far off,
/// [`Code::TooLong`] for too many batches or rests.
pub fn back(batches: &[(&str, &Batch)], wish: &Wish, now: i64, settings: &Settings) -> Result<Back, Vec<Problem>> {
    let mut problems = Vec::new();
    let ahead = wish.ready_by.saturating_sub(now);
    if ahead <= 0 {
        problems.push(
            Problem::new(Code::TooSmall, "The date is past. Choose a day and an hour to come.").at("wish.ready_by"),
        );
    }
    if ahead > DAY.saturating_mul(MOST_DAYS) {
        problems.push(
            Problem::new(
                Code::TooLarge,
                format!("A plan reaches {MOST_DAYS} days ahead. Choose a nearer date."),
            )
            .at("wish.ready_by"),
        );
    }
    if batches.len() > MOST_BATCHES || wish.rests.len() > MOST_RESTS {
        let text = format!("A plan has at most {MOST_BATCHES} batches and {MOST_RESTS} stretches of rest.");
        problems.push(Problem::new(Code::TooLong, text));
    }
    if !problems.is_empty() {
        return Err(problems);
    }
    let states = next(batches, now, settings)?.batches;
    let board = Board::new(wish, now);
    let mut chains = Vec::new();
    let mut plans: Vec<Result<(usize, Planned), String>> = Vec::new();
    for ((id, batch), state) in batches.iter().zip(&states) {
        plans.push(planned(batch, state, board.base).map(|mut plan| {
            hold(&mut plan, wish, id, board.base);
            chains.push(plan.chain.clone());
            (chains.len().saturating_sub(1), plan)
        }));
    }
    let late = latest(&chains, &board.near, board.by);
    let early = forth(&chains, &board.far);
    let answers = batches.iter().zip(&plans).zip(&states);
    let batches: Vec<BackBatch> = answers
        .map(|(((id, batch), plan), state)| {
            let (i, plan) = match plan {
                Ok((i, plan)) => (*i, plan),
                Err(says) => return refused(id, says.clone()),
            };
            let (late, early) = (late.get(i).cloned().flatten(), early.get(i).cloned().flatten());
            one(id, batch, state, plan, (late, early), &board, &|| {
                ways(&chains, i, &batch.recipe, &board.near, board.by)
            })
        })
        .collect();
    let fit = |b: &&BackBatch| !b.steps.is_empty();
    let finish = batches
        .iter()
        .filter(fit)
        .map(|b| b.finish)
        .collect::<Option<Vec<i64>>>();
    Ok(Back {
        fits: batches.iter().filter(fit).all(|b| b.fits) && late.iter().all(Option::is_some),
        start: batches.iter().filter_map(|b| b.start).min(),
        finish: finish.and_then(|all| all.into_iter().max()),
        batches,
        places: PLACES,
    })
}

/// The slots of a plan and what is taken in them.
struct Board {
    base: i64,
    by: usize,
    near: Taken,
    far: Taken,
}

impl Board {
    fn new(wish: &Wish, now: i64) -> Self {
        let base = now
            .saturating_add(SLOT_MS.saturating_sub(1))
            .div_euclid(SLOT_MS)
            .saturating_mul(SLOT_MS);
        let by = usize::try_from(wish.ready_by.saturating_sub(base).div_euclid(SLOT_MS)).unwrap_or(0);
        let rests = |count: usize| {
            let mut rest = vec![false; count];
            for r in &wish.rests {
                let from = usize::try_from(r.from.saturating_sub(base).max(0).div_euclid(SLOT_MS)).unwrap_or(0);
                let to = slots(r.to.saturating_sub(base)).min(count);
                for slot in rest.get_mut(from..to).into_iter().flatten() {
                    *slot = true;
                }
            }
            Taken::new(rest, &wish.room)
        };
        Self {
            base,
            by,
            near: rests(by),
            far: rests(by.saturating_add(slots(DAY.saturating_mul(LATER_DAYS)))),
        }
    }

    fn time(&self, slot: usize) -> i64 {
        let slots = i64::try_from(slot).unwrap_or(i64::MAX);
        self.base.saturating_add(slots.saturating_mul(SLOT_MS))
    }
}

fn hold(plan: &mut Planned, wish: &Wish, id: &str, base: i64) {
    for hold in wish.holds.iter().filter(|h| h.batch == id) {
        // A step that is over or a time that is past cannot be held to.
        let (Some(task), at) = (hold.step.checked_sub(plan.first), hold.at.saturating_sub(base)) else {
            continue;
        };
        if at >= 0 && (task > 0 || !plan.chain.running) {
            plan.chain
                .held
                .push((task, usize::try_from(at.div_euclid(SLOT_MS)).unwrap_or(usize::MAX)));
        }
    }
}

fn refused(id: &str, says: String) -> BackBatch {
    BackBatch {
        batch: id.to_owned(),
        fits: false,
        start: None,
        finish: None,
        slack: None,
        says: Some(says),
        ways: Vec::new(),
        steps: Vec::new(),
    }
}

type Both = (Option<Vec<usize>>, Option<Vec<usize>>);

fn one(
    id: &str,
    batch: &Batch,
    state: &State,
    plan: &Planned,
    (late, early): Both,
    board: &Board,
    ways: &dyn Fn() -> Vec<&'static str>,
) -> BackBatch {
    let fits = late.is_some();
    let end = early.as_ref().and_then(|t| t.last()).copied();
    let spare = end.and_then(|end| board.by.checked_sub(end)).filter(|s| *s > 0 && fits);
    let minutes = spare.and_then(|s| board.time(s).saturating_sub(board.base).checked_div(MINUTE));
    let says = match (fits, &early) {
        (true, _) => None,
        (false, Some(_)) if !plan.chain.held.is_empty() => {
            Some("It does not fit with the steps you have put to a time.")
        }
        (false, Some(_)) => Some("It cannot be ready by then. The times below are the earliest."),
        (false, None) => Some("No time was found for it in the hours that are left free."),
    };
    let times = late.as_ref().or(early.as_ref());
    BackBatch {
        batch: id.to_owned(),
        fits,
        start: late
            .as_ref()
            .filter(|_| !plan.chain.running)
            .and_then(|t| t.first())
            .map(|t| board.time(*t)),
        finish: end.map(|t| board.time(t)),
        slack: minutes
            .and_then(|m| Span::new(Decimal::from(m)).ok())
            .map(|s| s.show(crate::quantity::System::Metric).text),
        says: says.map(str::to_owned),
        ways: if fits { Vec::new() } else { ways() },
        steps: times.map(|t| tasks(batch, state, plan, t, board)).unwrap_or_default(),
    }
}

/// The tasks at their times, turns among them; a task that runs already keeps the time it was begun.
fn tasks(batch: &Batch, state: &State, plan: &Planned, times: &[usize], board: &Board) -> Vec<BackStep> {
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
