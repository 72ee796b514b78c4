//! Whether a class is hot enough by its readings.

use super::log::{Read, temperature};
use super::needed::Needed;
use crate::quantity::Temperature;
use crate::safety::{self, Table};
use serde::Serialize;

/// How far a class is cooked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "is")]
pub enum Heat {
    /// No reading of it over the fire.
    Unread,
    /// A reading of it is in question.
    InQuestion,
    /// Not hot enough; its coldest at the last reading.
    NotYet {
        /// What was read.
        #[cfg_attr(feature = "types", ts(type = "string"))]
        last: Temperature,
    },
    /// It was read hot enough, and then colder before it was taken out: another piece, or the fire went down.
    Colder {
        /// When it was read hot enough.
        #[cfg_attr(feature = "types", ts(type = "number"))]
        reached_at: i64,
        /// When it was read colder.
        #[cfg_attr(feature = "types", ts(type = "number"))]
        later_at: i64,
        /// What was read then.
        #[cfg_attr(feature = "types", ts(type = "string"))]
        later: Temperature,
    },
    /// Drying began before it was read hot enough.
    DriedFirst {
        /// When drying began.
        #[cfg_attr(feature = "types", ts(type = "number"))]
        dried_at: i64,
    },
    /// The coldest piece read is hot enough.
    Hot {
        /// Since when.
        #[cfg_attr(feature = "types", ts(type = "number"))]
        at: i64,
    },
    /// Hot enough by the table's time at temperature, below the consumer temperature.
    ByTable {
        /// Since when.
        #[cfg_attr(feature = "types", ts(type = "number"))]
        at: i64,
    },
}

impl Heat {
    /// When it was hot enough; nothing where it was not, or nobody can say.
    #[must_use]
    pub const fn enough(self) -> Option<i64> {
        match self {
            Self::Hot { at } | Self::ByTable { at } => Some(at),
            _ => None,
        }
    }
}

/// Out of the heat a middle may rise so far, °F; a piece further below was another one (judgement: roasts rise by up to
/// about so much).
const CARRY: f64 = 15.0;
/// Seconds after it was taken out in which a reading may still be of the rise (judgement).
const RISES: f64 = 3600.0;

/// When the coldest piece was hot enough for good, in seconds: the first reading from which on none over the fire is below
/// `least`. Else the first reading hot enough after it was taken out, while its middle still rises.
pub(super) fn hot(read: &Read, least: f64) -> Option<f64> {
    let over = read.over.iter().rev().take_while(|(_, f)| *f >= least).last();
    if let Some((at, _)) = over {
        return Some(*at);
    }
    let near = least - CARRY;
    if read.over.last().is_some_and(|(_, f)| *f < near) {
        return None;
    }
    let soon = read.out.iter().take_while(|(at, _)| *at - read.pulled <= RISES);
    let rises = soon.take_while(|(_, f)| *f >= near);
    rises.clone().find(|(_, f)| *f >= least).map(|p| p.0)
}

/// What was read of the coldest piece in the end, °F: at the last reading over the fire, or while it rose after it was taken
/// out, where that makes it hot enough.
pub(super) fn counts(read: &Read, least: f64) -> Option<f64> {
    let last = read.over.last().map(|p| p.1);
    let risen = || {
        let at = hot(read, least)?;
        read.out.iter().find(|p| p.0 >= at).map(|p| p.1)
    };
    last.filter(|f| *f >= least).or_else(risen).or(last)
}

/// The readings as of one piece that was never warmer than any later reading over the fire: what the coldest piece earned.
fn coldest(read: &Read) -> Vec<(f64, f64)> {
    let mut least = f64::INFINITY;
    let mut points: Vec<(f64, f64)> = read
        .over
        .iter()
        .rev()
        .map(|(at, f)| {
            least = least.min(*f);
            (*at, least)
        })
        .collect();
    points.reverse();
    points.extend_from_slice(&read.out);
    points
}

/// The part of the table's time that the coldest piece earned, 0 to 1.
pub(super) fn credit(read: &Read, table: Table) -> f64 {
    safety::credit(table, &coldest(read), safety::THERMOMETER)
}

/// When the table's whole time was earned.
fn earned(read: &Read, table: Table) -> Option<f64> {
    let points = coldest(read);
    let whole = |count: usize| {
        let some = points.get(..count).unwrap_or_default();
        safety::credit(table, some, safety::THERMOMETER) >= 1.0
    };
    // Each further reading adds, or adds nothing.
    let (mut low, mut high) = (0, points.len());
    whole(high).then_some(())?;
    loop {
        let half = usize::midpoint(low, high);
        if half == low {
            break;
        }
        if whole(half) {
            high = half;
        } else {
            low = half;
        }
    }
    points.get(high.checked_sub(1)?).map(|p| p.0)
}

/// `dried`: when drying began.
pub(super) fn heat(read: &Read, needed: &Needed, dried: Option<i64>) -> Heat {
    let least = needed.fahrenheit();
    let first = |at: f64| dried.filter(|d| needed.before_drying && *d < read.time(at));
    if let Some(at) = hot(read, least) {
        return match first(at) {
            Some(dried_at) => Heat::DriedFirst { dried_at },
            None => Heat::Hot { at: read.time(at) },
        };
    }
    let recipe = needed.recipe.map(super::log::fahrenheit);
    // Read hot enough and then colder, there are two pieces: how long the colder one was how warm nobody saw.
    let two = read.seen.iter().any(|(_, f)| *f >= least);
    if !two
        && let Some(table) = needed.table
        && let Some(at) = earned(read, table)
        && recipe.is_none_or(|least| hot(read, least).is_some())
    {
        return Heat::ByTable { at: read.time(at) };
    }
    let Some((last_at, last)) = read.over.last().or(read.out.first()) else {
        return Heat::Unread;
    };
    match read.over.iter().rposition(|(_, f)| *f >= least) {
        Some(place) => {
            let mut since = read.over.iter().skip(place).copied();
            let (reached, _) = since.next().unwrap_or((*last_at, *last));
            let (later_at, later) = since.next().unwrap_or((*last_at, *last));
            Heat::Colder {
                reached_at: read.time(reached),
                later_at: read.time(later_at),
                later: temperature(later),
            }
        }
        None => Heat::NotYet {
            last: temperature(*last),
        },
    }
}
