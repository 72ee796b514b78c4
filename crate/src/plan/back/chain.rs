//! A batch as a chain of tasks: what lasts how long, what may wait, what must not move.

use super::fit::{Chain, Leg, SLOT};
use crate::batch::Batch;
use crate::plan::room::{self, area, whole};
use crate::recipe::{Do, Step};
use crate::schedule::{MINUTE, Stage, State, millis};
use crate::weigh::Settings;

/// Milliseconds of a slot.
pub const SLOT_MS: i64 = (SLOT as i64).saturating_mul(MINUTE);
/// Slots in an hour.
const HOUR: usize = 60 / SLOT;
/// How long what is overdue may still wait: our own judgement.
const OVERDUE: usize = 24 * HOUR;

/// Places by number.
pub const PLACES: [&str; 3] = ["Refrigerator", "Smoker or oven", "Rack"];
const COLD: usize = 0;
const FIRE: usize = 1;
const RACK: usize = 2;

/// A figure for each place.
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

/// What a step needs: its place, whether somebody has to be by, and how many hours longer it may last. Longer in a
/// weighed cure only evens out, longer uncovered dries a little more, longer in the cold costs little; how much longer
/// is our own judgement.
pub fn needs(act: Do) -> (Option<usize>, bool, usize) {
    match act {
        Do::Cure => (Some(COLD), false, 48),
        Do::Dry => (Some(RACK), false, 12),
        Do::Chill => (Some(COLD), false, 24),
        Do::Smoke | Do::Cook | Do::DryOut => (Some(FIRE), true, 0),
        Do::Rinse | Do::Soak | Do::Rest | Do::Pack => (None, false, 0),
    }
}

/// Why a task must not move against the one before it; nothing where it may wait.
pub fn fixed(before: Option<Do>) -> Option<&'static str> {
    match before? {
        Do::Cure | Do::Dry | Do::Chill => None,
        Do::Smoke | Do::Cook | Do::DryOut => Some("Must not move: what is hot goes on at once."),
        Do::Rest => Some("Must not move: it is chilled as soon as it has rested."),
        Do::Rinse => Some("Must not move: wet meat does not wait."),
        Do::Soak => Some("Must not move: longer in the water takes out more."),
        Do::Pack => Some("Must not move."),
    }
}

/// Slots of milliseconds, rounded up.
pub fn slots(ms: i64) -> usize {
    let up = ms.saturating_add(SLOT_MS.saturating_sub(1)).max(0) / SLOT_MS;
    usize::try_from(up).unwrap_or(usize::MAX)
}

fn leg(step: &Step, loads: Places) -> Leg {
    let (place, tended, hours) = needs(step.act);
    let least = slots(millis(step.lasts));
    Leg {
        least,
        most: least.saturating_add(hours.saturating_mul(HOUR)),
        place,
        load: place.and_then(|p| loads.get(p)).copied().unwrap_or(1),
        tended,
    }
}

/// The chain of a batch from where it stands, `base` being slot 0; why not, where it is not planned.
pub fn planned(batch: &Batch, state: &State, base: i64, loads: Places) -> Result<Planned, String> {
    if state.held {
        return Err(format!(
            "{}. Nothing is planned until the dose is in order.",
            state.says
        ));
    }
    if state.finished {
        return Err("Every step is done.".to_owned());
    }
    let steps = &batch.recipe.steps;
    if steps.is_empty() {
        return Err("This recipe has no steps to plan by.".to_owned());
    }
    let mut begun = state.jobs.iter().filter_map(|job| {
        let step: usize = job.id.strip_prefix("step:")?.parse().ok()?;
        Some((step, job.ticked?))
    });
    let last = begun
        .next_back()
        .filter(|_| !matches!(state.stage, Stage::Pieces | Stage::Weigh));
    let first = last.map_or(0, |(step, _)| step);
    let mut legs: Vec<Leg> = steps.iter().skip(first).map(|s| leg(s, loads)).collect();
    if let (Some((_, at)), Some(now)) = (last, legs.first_mut()) {
        let passed = base.saturating_sub(at);
        let full = i64::try_from(now.least).unwrap_or(i64::MAX).saturating_mul(SLOT_MS);
        let may = now.most.saturating_sub(now.least);
        now.least = slots(full.saturating_sub(passed));
        // What is over already waits for whoever sleeps.
        now.most = if now.least == 0 {
            OVERDUE
        } else {
            now.least.saturating_add(may)
        };
        now.tended = false;
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
