//! Hours in which nobody is about, and the moments beside them. The page makes moments of clock times, since it knows
//! the time zone.

use super::wrong::Wrong;
use super::{Code, Problem};
use crate::order::InOrder;
use serde::Deserialize;

/// Milliseconds of an hour.
pub const HOUR: i64 = 3_600_000;
/// Most stretches of rest in one request.
const MOST_RESTS: usize = 500;
/// So many milliseconds before somebody lies down a job may still be done: a quarter of an hour.
const BEFORE: i64 = HOUR / 4;

/// A stretch of rest: asleep, away, in the blind.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
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

/// When somebody is about: all hours but those of rest.
#[derive(Clone, Debug, Default)]
pub struct Awake {
    /// In order, none touching the next.
    rests: Vec<Rest>,
}

impl Awake {
    /// About but for these.
    ///
    /// # Errors
    /// [`Code::TooLong`] for more stretches than a request may have.
    pub fn but_for(rests: &[Rest]) -> Result<Self, Problem> {
        if rests.len() > MOST_RESTS {
            let wrong = Wrong::TooManyRests { most: MOST_RESTS };
            return Err(Problem::of(Code::TooLong, wrong).at("rests"));
        }
        let mut sorted: Vec<Rest> = rests.iter().filter(|r| r.from < r.to).copied().collect();
        sorted.order_by_key(|r| r.from);
        let mut merged: Vec<Rest> = Vec::with_capacity(sorted.len());
        for rest in sorted {
            match merged.last_mut().filter(|last| last.to >= rest.from) {
                Some(last) => last.to = last.to.max(rest.to),
                None => merged.push(rest),
            }
        }
        Ok(Self { rests: merged })
    }

    /// The stretches, in order.
    #[must_use]
    pub fn rests(&self) -> &[Rest] {
        &self.rests
    }

    /// The rest a moment falls into.
    #[must_use]
    pub fn rest_at(&self, at: i64) -> Option<Rest> {
        let after = self.rests.partition_point(|r| r.from <= at);
        let last = self.rests.get(after.checked_sub(1)?)?;
        (at < last.to).then_some(*last)
    }

    /// The first whole hour from a moment on at which somebody is about.
    #[must_use]
    pub fn hour_from(&self, at: i64) -> i64 {
        let mut hour = hour_up(at);
        while let Some(rest) = self.rest_at(hour) {
            hour = hour_up(rest.to);
        }
        hour
    }

    /// The last whole hour up to a moment at which somebody is about.
    #[must_use]
    pub fn hour_until(&self, at: i64) -> i64 {
        let mut hour = hour_down(at);
        while let Some(rest) = self.rest_at(hour) {
            hour = hour_down(rest.from.saturating_sub(BEFORE));
        }
        hour
    }

    /// The moment itself, or of the last before its rest and the first after it the nearer one within these bounds;
    /// nothing where neither is.
    #[must_use]
    pub fn near(&self, at: i64, after: i64, before: i64) -> Option<i64> {
        let Some(rest) = self.rest_at(at) else {
            return Some(at);
        };
        let sides = [rest.from.saturating_sub(BEFORE), rest.to];
        let within = sides.into_iter().filter(|side| (after..before).contains(side));
        within.min_by_key(|side| side.abs_diff(at))
    }
}

/// A whole hour, up.
#[must_use]
pub fn hour_up(at: i64) -> i64 {
    hour_down(at.saturating_add(HOUR.saturating_sub(1)))
}

/// A whole hour, down.
#[must_use]
pub fn hour_down(at: i64) -> i64 {
    at.div_euclid(HOUR).saturating_mul(HOUR)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::arithmetic_side_effects, reason = "a test may")]
    use super::*;

    fn nights() -> Awake {
        let night = |n: i64| Rest {
            from: (24 * n + 22) * HOUR + HOUR / 2,
            to: (24 * n + 30) * HOUR + HOUR / 2,
        };
        Awake::but_for(&[night(1), night(0), night(2)]).unwrap()
    }

    #[test]
    fn hours_beside_a_night() {
        let awake = nights();
        assert_eq!(awake.hour_from(23 * HOUR), 31 * HOUR);
        assert_eq!(awake.hour_from(20 * HOUR + 1), 21 * HOUR);
        assert_eq!(awake.hour_until(26 * HOUR), 22 * HOUR);
        assert_eq!(awake.near(26 * HOUR, 0, 100 * HOUR), Some(22 * HOUR + HOUR / 4));
        assert_eq!(awake.near(27 * HOUR, 0, 100 * HOUR), Some(30 * HOUR + HOUR / 2));
        assert_eq!(awake.near(27 * HOUR, 23 * HOUR, 30 * HOUR), None);
        assert_eq!(awake.near(12 * HOUR, 0, 100 * HOUR), Some(12 * HOUR));
    }

    #[test]
    fn stretches_that_touch_are_one() {
        let rest = |from, to| Rest { from, to };
        let awake = Awake::but_for(&[rest(5, 9), rest(0, 5), rest(20, 10)]).unwrap();
        assert_eq!(awake.rests(), [rest(0, 9)]);
        assert!(Awake::but_for(&vec![rest(0, 1); 501]).is_err());
    }
}
