//! What a step asks for: its place, whether somebody has to be by, how long it lasts and how long it may wait.

use super::fit::{Chain, Leg, SLOT, Taken, latest};
use crate::pantry::MeatKind;
use crate::quantity::Awake;
use crate::recipe::{Do, Step};

/// Milliseconds of a minute.
pub const MINUTE: i64 = 60_000;
/// Milliseconds of a slot.
pub const SLOT_MS: i64 = (SLOT as i64).saturating_mul(MINUTE);
/// Slots in an hour.
pub const HOUR: usize = 60 / SLOT;
/// How long what is overdue may still wait: our own judgement.
pub const OVERDUE: usize = 24 * HOUR;

/// The refrigerator, by its number among the places.
pub const COLD: usize = 0;
/// The smoker or oven.
pub const FIRE: usize = 1;
/// The rack.
pub const RACK: usize = 2;

/// What a step needs: its place, whether somebody has to be by, and how many hours longer it may last. Longer in a
/// weighed cure only evens out, longer uncovered dries a little more, longer in the cold costs little; how much longer
/// is our own judgement.
#[must_use]
pub const fn needs(act: Do) -> (Option<usize>, bool, usize) {
    match act {
        Do::Cure => (Some(COLD), false, 48),
        Do::Dry => (Some(RACK), false, 12),
        Do::Chill => (Some(COLD), false, 24),
        Do::Smoke | Do::Cook | Do::DryOut => (Some(FIRE), true, 0),
        Do::Rinse | Do::Soak | Do::Rest | Do::Pack => (None, false, 0),
    }
}

/// Slots of milliseconds, rounded up.
#[must_use]
pub fn slots(ms: i64) -> usize {
    let up = ms.saturating_add(SLOT_MS.saturating_sub(1)).max(0) / SLOT_MS;
    usize::try_from(up).unwrap_or(usize::MAX)
}

/// The beginning of the slot that a moment falls on or before.
#[must_use]
pub fn slot_up(at: i64) -> i64 {
    at.saturating_add(SLOT_MS.saturating_sub(1))
        .div_euclid(SLOT_MS)
        .saturating_mul(SLOT_MS)
}

/// The leg of a step on meat of these kinds; it takes no room of its place yet.
#[must_use]
pub fn leg(step: &Step, kinds: &[MeatKind]) -> Leg {
    let (place, tended, hours) = needs(step.act);
    let least = slots(step.takes(kinds).map_or(0, |(ms, _)| ms));
    Leg {
        least,
        most: least.saturating_add(hours.saturating_mul(HOUR)),
        place,
        load: 0,
        tended,
    }
}

/// True for each slot from `base` on in which somebody rests.
#[must_use]
pub fn resting(awake: &Awake, base: i64, count: usize) -> Vec<bool> {
    let mut rest = vec![false; count];
    for r in awake.rests() {
        let from = r.from.saturating_sub(base).max(0).div_euclid(SLOT_MS);
        let from = usize::try_from(from).unwrap_or(0).min(count);
        let to = slots(r.to.saturating_sub(base)).min(count);
        for slot in rest.get_mut(from..to).into_iter().flatten() {
            *slot = true;
        }
    }
    rest
}

/// Times of steps one after the other, and of their end: the first at `from` or at most `wait` slots later, each as soon
/// as it can be so that none falls into rest; nothing where there is no such way.
#[must_use]
pub fn flow(steps: &[Leg], from: i64, wait: usize, awake: &Awake) -> Option<Vec<i64>> {
    let lead = Leg {
        least: 0,
        most: wait,
        place: None,
        load: 0,
        tended: false,
    };
    let legs: Vec<Leg> = [lead].into_iter().chain(steps.iter().cloned()).collect();
    let base = slot_up(from);
    let by = legs.iter().fold(1_usize, |sum, leg| sum.saturating_add(leg.most));
    let taken = Taken::new(resting(awake, base, by), &[]);
    let chain = Chain {
        legs,
        running: true,
        held: Vec::new(),
    };
    // What runs begins at slot 0, whoever sleeps: the lead is no task.
    let times = latest(&chain, &taken, by)?;
    let time = |slot: &usize| {
        let slots = i64::try_from(*slot).unwrap_or(i64::MAX);
        base.saturating_add(slots.saturating_mul(SLOT_MS))
    };
    Some(times.iter().skip(1).map(time).collect())
}
