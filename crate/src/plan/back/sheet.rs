//! Planning back: the answer.

use super::board::{Board, DAY};
use super::chain::{Places, Planned, holds, planned, takes};
use super::facts::{Gap, Snag, WouldFit};
use super::model::{Back, BackBatch, Wish};
use super::share::{Plan, back as latest, forth};
use super::tasks::tasks;
use super::ways::ways;
use crate::batch::Batch;
use crate::quantity::{Awake, Code, Problem, Span, System, Wrong};
use crate::schedule::fit::Chain;
use crate::schedule::{MINUTE, SLOT_MS, State, next, slot_up};
use crate::weigh::Settings;
use rust_decimal::Decimal;

/// How far ahead a plan reaches.
const MOST_DAYS: i64 = 100;
/// Most batches in one plan.
const MOST_BATCHES: usize = 40;
/// Most stretches of rest.
const MOST_RESTS: usize = 500;

/// Plans batches back from a date.
///
/// # Errors
/// Problems of the settings; [`Code::TooSmall`] for a date that is past, [`Code::TooLarge`] for one too far off,
/// [`Code::TooLong`] for too many batches or rests.
pub fn back(batches: &[(&str, &Batch)], wish: &Wish, now: i64, settings: &Settings) -> Result<Back, Vec<Problem>> {
    let mut problems = Vec::new();
    let ahead = wish.ready_by.saturating_sub(now);
    if ahead <= 0 {
        problems.push(Problem::of(Code::TooSmall, Wrong::DatePast).at("wish.ready_by"));
    }
    if ahead > DAY.saturating_mul(MOST_DAYS) {
        let wrong = Wrong::DateTooFar { days: MOST_DAYS };
        problems.push(Problem::of(Code::TooLarge, wrong).at("wish.ready_by"));
    }
    if batches.len() > MOST_BATCHES || wish.rests.len() > MOST_RESTS {
        let wrong = Wrong::PlanTooLong {
            batches: MOST_BATCHES,
            rests: MOST_RESTS,
        };
        problems.push(Problem::of(Code::TooLong, wrong));
    }
    if !problems.is_empty() {
        return Err(problems);
    }
    let states = next(batches, now, &wish.rests, None, settings)?.batches;
    let room = holds(wish.room, settings);
    let awake = Awake::but_for(&wish.rests).map_err(|problem| vec![problem])?;
    let base = slot_up(now);
    let mut chains = Vec::new();
    let mut plans: Vec<Result<(usize, Planned), Snag>> = Vec::new();
    for ((id, batch), state) in batches.iter().zip(&states) {
        let loads = takes(batch, wish.room, room);
        plans.push(planned(batch, state, base, loads, settings).map(|mut plan| {
            hold(&mut plan, wish, id, base);
            chains.push(plan.chain.clone());
            (chains.len().saturating_sub(1), plan)
        }));
    }
    let board = Board::new(wish, with_what_is_in(room, &chains), base, awake, longest(&chains));
    let late = latest(&chains, &board.near, board.by);
    let early = forth(&chains, &board.far);
    let answers = batches.iter().zip(&plans).zip(&states);
    let batches: Vec<BackBatch> = answers
        .map(|(((id, batch), plan), state)| {
            let (i, plan) = match plan {
                Ok((i, plan)) => (*i, plan),
                Err(snag) => return refused(id, *snag),
            };
            let (late, early) = (time_of(&late, i), time_of(&early, i));
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
        fits: batches.iter().filter(fit).all(|b| b.fits) && late.times.iter().all(Option::is_some),
        start: batches.iter().filter_map(|b| b.start).min(),
        finish: finish.and_then(|all| all.into_iter().max()),
        gap: gap(&late),
        batches,
    })
}

fn time_of(plan: &Plan, i: usize) -> Option<Vec<usize>> {
    plan.times.get(i).cloned().flatten()
}

/// Of many batches not every plan is looked at: what that may have cost.
fn gap(plan: &Plan) -> Option<Gap> {
    let (more, slots) = plan.gap;
    let minutes = i64::try_from(slots).ok()?.checked_mul(SLOT_MS)?.checked_div(MINUTE)?;
    match (more, minutes) {
        (0, 0) => None,
        (0, _) => Some(Gap::Later {
            by: Span::new(Decimal::from(minutes)).ok()?.show(System::Metric).text,
        }),
        (batches, _) => Some(Gap::More { batches }),
    }
}

/// What lies in a place has room there, however few were said to go in.
fn with_what_is_in(mut room: Places, chains: &[Chain]) -> Places {
    for (place, holds) in room.iter_mut().enumerate() {
        let runs = chains.iter().filter(|c| c.running).filter_map(|c| c.legs.first());
        let inside = runs.filter(|leg| leg.place == Some(place)).map(|leg| leg.load);
        *holds = inside.fold(0, u32::saturating_add).max(*holds);
    }
    room
}

/// Slots of the longest chain, nothing waiting.
fn longest(chains: &[Chain]) -> usize {
    let long = |c: &Chain| c.legs.iter().map(|l| l.least).fold(0, usize::saturating_add);
    chains.iter().map(long).max().unwrap_or(0)
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

fn refused(id: &str, snag: Snag) -> BackBatch {
    BackBatch {
        batch: id.to_owned(),
        fits: false,
        start: None,
        finish: None,
        slack: None,
        snag: Some(snag),
        ways: Vec::new(),
        steps: Vec::new(),
    }
}

/// Where a batch lies on more than a place has, even by itself.
fn too_big(plan: &Planned, board: &Board) -> Option<Snag> {
    let over = plan.chain.legs.iter().find_map(|leg| {
        let place = leg.place?;
        let holds = *board.near.room.get(place)?.first()?;
        (leg.load > holds && leg.most > 0).then_some((place, leg.load, holds))
    });
    let (place, load, holds) = over?;
    Some(if holds == 0 {
        Snag::NoRoom { place }
    } else {
        Snag::TooLarge { place, load, holds }
    })
}

/// Beyond three days what is to spare is said in whole days, never more than there are.
fn to_the_day(minutes: i64) -> i64 {
    const DAY: i64 = 24 * 60;
    if minutes > 3 * DAY {
        minutes.saturating_sub(minutes.rem_euclid(DAY))
    } else {
        minutes
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
    ways: &dyn Fn() -> Vec<WouldFit>,
) -> BackBatch {
    let fits = late.is_some();
    let end = early.as_ref().and_then(|t| t.last()).copied();
    let full = too_big(plan, board);
    let spare = end.and_then(|end| board.by.checked_sub(end)).filter(|s| *s > 0 && fits);
    let minutes = spare.and_then(|s| board.time(s).saturating_sub(board.base).checked_div(MINUTE));
    let snag = match (fits, &early) {
        (true, _) => None,
        (false, Some(_)) if !plan.chain.held.is_empty() => Some(Snag::HeldSteps),
        (false, Some(_)) => Some(Snag::TooLate),
        (false, None) => Some(Snag::NoTime),
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
            .map(to_the_day)
            .and_then(|m| Span::new(Decimal::from(m)).ok())
            .map(|s| s.show(System::Metric).text),
        snag: full.or(snag),
        ways: if fits { Vec::new() } else { ways() },
        steps: times.map(|t| tasks(batch, state, plan, t, board)).unwrap_or_default(),
    }
}
