//! A batch as a chain of tasks: what lasts how long, what may wait, what must not move.

use super::facts::{Fixed, Snag};
use crate::batch::{Batch, kinds};
use crate::cure::stay;
use crate::plan::room::{self, area, whole};
use crate::quantity::Awake;
use crate::recipe::{Do, Step};
use crate::schedule::fit::{Chain, Leg};
use crate::schedule::{COLD, FIRE, HOUR, OVERDUE, SLOT_MS, State, lead, leg, needs, slots};
use crate::standing::Stage;
use crate::weigh::Settings;

/// A figure for each place by its number: the refrigerator, the smoker or oven, the rack.
pub type Places = [u32; 3];

/// How much each place holds: by area where its shelves or racks are known, else so many batches.
pub fn holds(wish: Places, settings: &Settings) -> Places {
    let [cold, fire, rack] = wish;
    let by_area = |place: usize, count: u32| {
        let racks = settings.house.as_ref().and_then(|h| h.racks.get(place)?.as_ref());
        racks.and_then(area).map_or(count, |a| whole(a).max(1))
    };
    [by_area(COLD, cold), by_area(FIRE, fire), rack]
}

/// How much of each place a batch takes. What it lies on is not known before it is weighed and measured: until then it
/// counts as one of so many batches.
pub fn takes(batch: &Batch, wish: Places, holds: Places) -> Places {
    let lies = room::takes(batch).map(whole);
    let mut loads = [1; 3];
    for (load, (count, holds)) in loads.iter_mut().zip(wish.into_iter().zip(holds)) {
        if count != holds {
            *load = lies.unwrap_or_else(|| holds.div_ceil(count.max(1)));
        }
    }
    loads
}

/// A batch to be planned: its chain, and the step its first task is.
pub struct Planned {
    /// The chain.
    pub chain: Chain,
    /// Index of the step that begins leg 0.
    pub first: usize,
}

/// Why a task must not move against the one before it; nothing where it may wait.
pub fn fixed(before: Option<Do>) -> Option<Fixed> {
    match before? {
        Do::Cure | Do::Dry | Do::Chill => None,
        Do::Smoke | Do::Cook | Do::DryOut => Some(Fixed::Hot),
        Do::Rest => Some(Fixed::Rested),
        Do::Rinse => Some(Fixed::Wet),
        Do::Soak => Some(Fixed::InWater),
        Do::Pack => Some(Fixed::Packed),
    }
}

/// Legs of the steps from one on, with the room that the batch takes.
fn legs(batch: &Batch, first: usize, loads: Places) -> Vec<Leg> {
    let kinds = kinds(&batch.pieces);
    let steps = batch.recipe.steps.iter().skip(first);
    steps
        .map(|step| {
            let leg = leg(step, &kinds);
            let load = leg.place.and_then(|p| loads.get(p)).copied().unwrap_or(1);
            Leg { load, ..leg }
        })
        .collect()
}

/// The stay in the cure of a batch that is still to be begun, whenever that is.
fn with_stay(legs: &mut [Leg], batch: &Batch, now: i64, settings: &Settings) {
    let mut cures = batch.recipe.steps.iter().enumerate().filter(|(_, s)| s.act == Do::Cure);
    let (Some((at, _)), None) = (cures.next(), cures.next()) else {
        return;
    };
    let stay = stay(batch, now, settings, &Awake::default());
    if let (Some(stay), Some(leg)) = (stay, legs.get_mut(at)) {
        let may = leg.most.saturating_sub(leg.least);
        leg.least = slots(stay.length);
        let most = stay.until.last.map_or(usize::MAX, |last| {
            usize::try_from(last.saturating_sub(now).max(0) / SLOT_MS).unwrap_or(usize::MAX)
        });
        leg.most = leg.least.saturating_add(may).min(most.max(leg.least));
    }
}

/// The leg that runs: until the next step of the batch's course, and as long as it may wait then.
fn running(leg: &mut Leg, step: Option<&Step>, first: usize, state: &State, base: i64) {
    let at = |id: String| state.times.iter().find(|timed| timed.id == id);
    let next = at(format!("step:{}", first.saturating_add(1))).or_else(|| at("end".to_owned()));
    let own = at(format!("step:{first}"));
    let ends = own.map_or(base, |own| own.ends.unwrap_or(own.at));
    let wait = step.map_or(0, |s| needs(s.act).2.saturating_mul(HOUR));
    let last = state.until.as_ref().filter(|_| step.is_some_and(|s| s.act == Do::Cure));
    let last = last
        .and_then(|until| until.last)
        .map_or(usize::MAX, |last| lead(last, base));
    leg.least = next.map_or(0, |next| lead(next.at, base));
    // What is over already waits for whoever sleeps.
    leg.most = if leg.least == 0 {
        OVERDUE
    } else {
        lead(ends, base).saturating_add(wait).min(last).max(leg.least)
    };
    leg.tended = false;
}

/// The chain of a batch from where it stands, `base` being slot 0; why not, where it is not planned.
pub fn planned(batch: &Batch, state: &State, base: i64, loads: Places, settings: &Settings) -> Result<Planned, Snag> {
    if state.held {
        return Err(Snag::Held);
    }
    if state.finished {
        return Err(Snag::Done);
    }
    let steps = &batch.recipe.steps;
    if steps.is_empty() {
        return Err(Snag::NoSteps);
    }
    let mut begun = state.jobs.iter().filter_map(|job| {
        let step: usize = job.id.strip_prefix("step:")?.parse().ok()?;
        Some((step, job.ticked?))
    });
    let last = begun
        .next_back()
        .filter(|_| !matches!(state.stage, Stage::Pieces | Stage::Weigh));
    let first = last.map_or(0, |(step, _)| step);
    let mut legs = legs(batch, first, loads);
    match (last, legs.first_mut()) {
        (Some(_), Some(now)) => running(now, steps.get(first), first, state, base),
        _ => with_stay(&mut legs, batch, base, settings),
    }
    Ok(Planned {
        chain: Chain {
            legs,
            running: last.is_some(),
            held: Vec::new(),
        },
        first,
    })
}
