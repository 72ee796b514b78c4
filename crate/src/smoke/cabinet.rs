//! What the cabinet's air was, and what it will be.

use super::model::Readings;
use crate::order::InOrder;

/// A line through points at a time, held before the first and after the last.
pub(super) fn line(points: &[(f64, f64)], at: f64) -> Option<f64> {
    let next = points.partition_point(|p| p.0 <= at);
    let before = next.checked_sub(1).and_then(|i| points.get(i)).copied();
    match (before, points.get(next).copied()) {
        (Some(a), Some(b)) => Some(a.1 + (b.1 - a.1) * (at - a.0) / (b.0 - a.0)),
        (one, other) => one.or(other).map(|p| p.1),
    }
}

/// The air from the last reading on: it goes to a level, in a quarter of an hour most of the way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Ahead {
    /// Where it goes, °C.
    pub level: f64,
    /// The last reading: seconds, °C.
    last: (f64, f64),
    /// It fell far below what it was, and falls on.
    pub falls: bool,
}

/// How fast a cabinet comes back to its level, s.
const PACE: f64 = 900.0;
/// So much colder than it was, °C, more than once: the fire is low, or it was turned down.
const LOW: f64 = 12.0;
/// So much from one reading to the next, °C, is a way up or down.
const MOVES: f64 = 3.0;
/// What is longer ago tells nothing of the fire, s.
const LATELY: f64 = 3.0 * 3600.0;

impl Ahead {
    /// Air that stays as it is, °C.
    pub const fn still(level: f64) -> Self {
        Self {
            level,
            last: (0.0, level),
            falls: false,
        }
    }

    /// °C at a time.
    pub fn at(&self, at: f64) -> f64 {
        self.level + (self.last.1 - self.level) * (-(at - self.last.0).max(0.0) / PACE).exp()
    }

    /// The same air, set to another level from a time on.
    pub fn set(self, from: f64, level: f64) -> Self {
        Self {
            level,
            last: (from, self.at(from)),
            ..self
        }
    }

    /// What the readings let expect; nothing where nobody said how warm it is.
    ///
    /// A lid lets it fall for one reading, so the middle one of the last seven is its level. Where it fell and falls on,
    /// or comes back, the fire was out: it is taken to come back to what it was, and what was read meanwhile does not count.
    /// Where it stays low it was turned down.
    /// Within its first hour it comes up to what it is set to.
    pub fn of(readings: &Readings) -> Option<Self> {
        let all = readings.cabinet;
        let Some((&last, &first)) = all.last().zip(all.first()) else {
            return readings.set.map(Self::still);
        };
        let since = |seconds: f64| {
            all.get(all.partition_point(|p| p.0 < last.0 - seconds)..)
                .unwrap_or_default()
        };
        let few = |count: usize| all.get(all.len().saturating_sub(count)..).unwrap_or_default();
        let middle = share(few(7), 0.5)?;
        let high = share(since(LATELY), 0.75)?;
        let young = last.0 - first.0 < 3600.0;
        let low = all.len() >= 4 && few(2).iter().all(|p| p.1 < high - LOW);
        let spread = |few: &[(f64, f64)]| {
            share(few, 1.0)
                .zip(share(few, 0.0))
                .map_or(0.0, |(most, least)| most - least)
        };
        // So long as the fire was out, the air tells nothing of how warm it is now that it burns again.
        let out = few(7).windows(2).any(|two| two.iter().all(|p| p.1 < high - LOW));
        let burning: Vec<(f64, f64)> = few(7).iter().filter(|p| p.1 >= high - LOW).copied().collect();
        let level = if low && (spread(few(3)) > 2.0 * MOVES) {
            high
        } else if low {
            share(few(3), 0.5)?
        } else if young {
            readings.set.map_or(middle, |set| set.max(middle))
        } else if out {
            share(&burning, 0.5)?
        } else {
            middle
        };
        Some(Self {
            level,
            last: if low || young || out { last } else { (last.0, level) },
            falls: low && few(2).windows(2).all(|two| matches!(two, [a, b] if b.1 < a.1 - MOVES)),
        })
    }
}

/// The reading below which this share of them lies.
fn share(points: &[(f64, f64)], share: f64) -> Option<f64> {
    let mut all: Vec<f64> = points.iter().map(|p| p.1).collect();
    all.order_by(f64::total_cmp);
    all.get((all.len().saturating_sub(1) as f64 * share).round() as usize)
        .copied()
}
