//! How long a class was between fridge-cold and hot.

use super::log::{Read, temperature};
use crate::quantity::Temperature;
use crate::safety::{self, COME_UP};
use serde::Serialize;

/// A first reading above this, °F, leaves the way up unknown.
const UNKNOWN: f64 = 50.0;

/// The way up, in minutes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "is")]
pub enum ComeUp {
    /// It was never read, or it is cold.
    NotBegun,
    /// Under way, and still in time.
    Running {
        /// So long by now.
        minutes: u32,
        /// And so long at most.
        most: u32,
    },
    /// In time.
    Fine {
        /// It took so long.
        minutes: u32,
        /// And might have taken so long.
        most: u32,
    },
    /// Too slow: its time is over, hot or not.
    Slow {
        /// It took so long, up to now or to when it was hot or taken out.
        minutes: u32,
        /// And might have taken so long.
        most: u32,
    },
    /// First read when it was warm already: how long it was on its way cannot be said.
    Unseen {
        /// What was read first.
        #[cfg_attr(feature = "types", ts(type = "string"))]
        first: Temperature,
    },
}

/// Seconds as minutes, rounded up: a time is never told too short.
pub(super) fn minutes(seconds: f64) -> u32 {
    (seconds / 60.0).ceil() as u32
}

/// `lit`: the second at which the smoke or the cooking began, where it is known. `now` in seconds.
pub(super) fn come_up(read: &Read, lit: Option<f64>, now: f64) -> ComeUp {
    let end = read.pulled.min(now);
    let Some(up) = safety::come_up(&read.seen, &read.over, lit, end) else {
        return ComeUp::NotBegun;
    };
    let most = (COME_UP * 60.0) as u32;
    let took = minutes(up.hours * 3600.0);
    let first = read.seen.first().map(|p| p.1).filter(|f| up.unseen && *f > UNKNOWN);
    match first {
        _ if up.hours > COME_UP => ComeUp::Slow { minutes: took, most },
        Some(first) => ComeUp::Unseen {
            first: temperature(first),
        },
        None if up.hot => ComeUp::Fine { minutes: took, most },
        None => ComeUp::Running { minutes: took, most },
    }
}
