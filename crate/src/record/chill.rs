//! Whether a class was chilled in time by one of the published options for a home.

use super::come_up::minutes;
use super::log::{Log, Read};
use crate::safety::{self, Left, Stage};
use serde::Serialize;

/// How the chill stands: one option that holds to its end is enough.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "is")]
pub enum Chill {
    /// It was not taken out yet.
    NotBegun,
    /// In time so far by one option at least.
    Running {
        /// The stage it is in has to be read as done by then.
        #[cfg_attr(feature = "types", ts(type = "number"))]
        until: i64,
    },
    /// Cold in time.
    Done {
        /// When it was read cold.
        #[cfg_attr(feature = "types", ts(type = "number"))]
        at: i64,
    },
    /// Too slow by every option, whatever happened between the readings.
    Late {
        /// The stage that is over took so many minutes at least.
        minutes: u32,
        /// And might have taken so many.
        most: u32,
    },
    /// Its time is over by every option, and no reading shows that it was cold in time.
    Unwatched {
        /// The stage that is over may have taken so many minutes.
        minutes: u32,
        /// And might have taken so many.
        most: u32,
    },
}

/// One stage of one option.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StageRecord {
    /// The published row.
    pub stage: &'static Stage,
    /// Where it stands.
    pub left: Left,
    /// When its time ends, in milliseconds, while it runs.
    pub until: Option<i64>,
}

/// Every stage of the options for a home, at `now` in milliseconds.
#[must_use]
pub fn stages(batch: &crate::batch::Batch, place: usize, now: i64) -> Vec<StageRecord> {
    let log = Log::of(batch);
    stages_of(&Read::of(batch, &log, place, now), log.at(now))
}

fn stages_of(read: &Read, now: f64) -> Vec<StageRecord> {
    let mut first = (None, 0.0);
    safety::options()
        .map(|stage| {
            if first.0 != Some(stage.key) {
                first = (Some(stage.key), stage.start);
            }
            let left = safety::left(stage, first.1, &read.cooling, &read.chill, now);
            let until = match left {
                Left::Running(hours) if hours.is_finite() => Some(read.time(now + hours * 3600.0)),
                _ => None,
            };
            StageRecord { stage, left, until }
        })
        .collect()
}

pub(super) fn chill(read: &Read, now: f64) -> Chill {
    if !read.pulled.is_finite() {
        return Chill::NotBegun;
    }
    let stages = stages_of(read, now);
    let mut ways: Vec<Way> = Vec::new();
    for option in stages.chunk_by(|a, b| a.stage.key == b.stage.key) {
        ways.push(way(option, now));
    }
    let all = |way: fn(&Way) -> bool| ways.iter().all(way);
    let done = ways
        .iter()
        .filter_map(|w| if let Way::Done(at) = w { Some(*at) } else { None });
    if let Some(at) = done.min_by(f64::total_cmp) {
        return Chill::Done { at: read.time(at) };
    }
    let running = ways.iter().filter_map(|w| {
        if let Way::Running(until) = w {
            Some(*until)
        } else {
            None
        }
    });
    if let Some(until) = running.max_by(f64::total_cmp) {
        return Chill::Running {
            until: read.time(until),
        };
    }
    let over = ways.iter().filter_map(|w| match w {
        Way::Late(hours, most) | Way::Unseen(hours, most) => Some((*hours, *most)),
        _ => None,
    });
    // Of the options, the one that it missed by least.
    let (hours, most) = over
        .min_by(|a, b| (a.0 - a.1).total_cmp(&(b.0 - b.1)))
        .unwrap_or_default();
    let (took, most) = (minutes(hours * 3600.0), (most * 60.0).round() as u32);
    if all(|w| matches!(w, Way::Late(..))) {
        Chill::Late { minutes: took, most }
    } else {
        Chill::Unwatched { minutes: took, most }
    }
}

/// How one option stands; hours, and seconds of the log.
enum Way {
    Done(f64),
    Running(f64),
    Late(f64, f64),
    Unseen(f64, f64),
}

fn way(option: &[StageRecord], now: f64) -> Way {
    let mut done = None;
    let mut unseen = None;
    let mut running = None;
    for StageRecord { left, .. } in option {
        match *left {
            Left::Late(took, most) => return Way::Late(took, most),
            Left::Unseen(took, most) => unseen = unseen.or(Some((took, most))),
            Left::Running(hours) => running = running.or(Some(now + hours * 3600.0)),
            // It waits for the stage before it.
            Left::NotBegun => {}
            Left::Done { at, .. } => done = Some(at),
        }
    }
    match (unseen, running, done) {
        (Some((took, most)), ..) => Way::Unseen(took, most),
        (_, Some(until), _) => Way::Running(until),
        (.., Some(at)) => Way::Done(at),
        // No stage of it could begin: nothing was read.
        _ => Way::Unseen(0.0, 0.0),
    }
}
