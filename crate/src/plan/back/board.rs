//! The slots of a plan.

use super::chain::Places;
use super::model::Wish;
use crate::quantity::Awake;
use crate::schedule::fit::Taken;
use crate::schedule::{MINUTE, SLOT_MS, resting, slots};

/// Milliseconds of a day.
pub const DAY: i64 = 1440 * MINUTE;
/// How much later than asked for, or than the longest batch takes by itself, the earliest finish is looked for.
const LATER_DAYS: i64 = 14;

/// The slots of a plan and what is taken in them.
pub struct Board {
    /// The time of slot 0.
    pub base: i64,
    /// When somebody is about.
    pub awake: Awake,
    /// The slot by which all is to be ready.
    pub by: usize,
    /// As far as that.
    pub near: Taken,
    /// As far as the earliest finish is looked for.
    pub far: Taken,
}

impl Board {
    /// What is taken from now on, `longest` slots being the longest batch.
    pub fn new(wish: &Wish, room: Places, base: i64, awake: Awake, longest: usize) -> Self {
        let by = usize::try_from(wish.ready_by.saturating_sub(base).div_euclid(SLOT_MS)).unwrap_or(0);
        let rests = |count: usize| Taken::new(resting(&awake, base, count), &room);
        Self {
            base,
            by,
            near: rests(by),
            far: rests(by.max(longest).saturating_add(slots(DAY.saturating_mul(LATER_DAYS)))),
            awake,
        }
    }

    /// When a slot begins.
    pub fn time(&self, slot: usize) -> i64 {
        let slots = i64::try_from(slot).unwrap_or(i64::MAX);
        self.base.saturating_add(slots.saturating_mul(SLOT_MS))
    }
}
