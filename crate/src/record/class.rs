//! The record of one size class.

use super::chill::{Chill, chill};
use super::come_up::{ComeUp, come_up};
use super::heat::{self, Heat};
use super::log::{Log, Read, temperature};
use super::needed::{Needed, needed};
use super::odd::{in_question, odd_readings};
use crate::batch::Batch;
use crate::quantity::Temperature;
use crate::recipe::Do;
use serde::Serialize;

/// What the log shows of one size class.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ClassRecord {
    /// Its place in the batch.
    pub place: u32,
    /// What has to be read.
    pub needed: Needed,
    /// How far it is cooked.
    pub heat: Heat,
    /// What was read of its coldest piece in the end, over the fire or while it rose after it.
    #[cfg_attr(feature = "types", ts(type = "string | null"))]
    pub read: Option<Temperature>,
    /// The part of the table's time that it earned, in ten-thousandths and rounded down, where a table may stand in.
    pub credit: Option<u32>,
    /// How it came up.
    pub come_up: ComeUp,
    /// When it was taken out.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub pulled: Option<i64>,
    /// Partly cooked: it was over the fire, that ended at this time, and it is not hot enough.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub partly: Option<i64>,
    /// Since when it is no longer to be finished: partly cooked it was read cold, or it stood two hours.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub abandoned: Option<i64>,
    /// How the chill stands.
    pub chill: Chill,
    /// What a keeping time is counted from: when it was taken out.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub heat_ended: Option<i64>,
}

/// Every size class, in the order of the batch, at `now` in milliseconds.
#[must_use]
pub fn classes(batch: &Batch, now: i64) -> Vec<ClassRecord> {
    let (log, odd) = (Log::of(batch), odd_readings(batch, now));
    (0..batch.pieces.len())
        .map(|place| record(batch, &log, place, in_question(&odd, place), now))
        .collect()
}

/// The class at this place.
#[must_use]
pub fn class(batch: &Batch, place: usize, now: i64) -> ClassRecord {
    let odd = odd_readings(batch, now);
    record(batch, &Log::of(batch), place, in_question(&odd, place), now)
}

/// Warmer than this, °F, it was over the fire; at or under it, it is cold.
const COLD: f64 = 40.0;
/// As warm as this, °F, it counts as partly cooked (40 °C; judgement).
const PARTLY: f64 = 104.0;
/// Hot holding, °F: USDA FSIS, Danger Zone, quoted.
const HELD_HOT: f64 = 140.0;
/// Partly cooked, it stands so long at most, in seconds: USDA FSIS, Danger Zone, 2 hours, quoted.
const STANDS: f64 = 7200.0;
/// A middle falls from [`PARTLY`] to [`COLD`] in no less, in seconds; what is read so soon is another piece (judgement).
const FALLS: f64 = 1200.0;

fn record(batch: &Batch, log: &Log, place: usize, doubtful: bool, now: i64) -> ClassRecord {
    let read = Read::of(batch, log, place, now);
    let needed = needed(batch, place);
    let at = log.at(now);
    let found = if doubtful {
        Heat::InQuestion
    } else {
        heat::heat(&read, &needed, began(batch, |act| act == Do::DryOut))
    };
    let pulled = log.pulled.get(place).copied().flatten();
    // A later step that is ticked ends the fire too.
    let ended = pulled.or_else(|| began(batch, |act| matches!(act, Do::Rest | Do::Chill | Do::Pack)));
    let warmed = read.seen.iter().any(|(_, f)| *f > COLD);
    let partly = ended.filter(|_| warmed && !doubtful && found.enough().is_none());
    ClassRecord {
        place: u32::try_from(place).unwrap_or(u32::MAX),
        heat: found,
        read: heat::counts(&read, needed.fahrenheit()).map(temperature),
        credit: needed.table.map(|table| (heat::credit(&read, table) * 10_000.0) as u32),
        come_up: come_up(&read, lit(batch, log), at),
        pulled,
        partly,
        abandoned: abandoned(&read, found, partly.map(|since| log.at(since)), at).filter(|_| !doubtful),
        chill: chill(&read, at),
        heat_ended: pulled,
        needed,
    }
}

/// Since when partly cooked meat is past finishing: USDA FSIS, Smoking Meat and Poultry, has it go from one heat to the next
/// at once, since what lives in it survives and grows. `since` is when it came off the heat, `now` in seconds of the log.
fn abandoned(read: &Read, found: Heat, since: Option<f64>, now: f64) -> Option<i64> {
    let enough = found.enough();
    let raw = |at: f64| enough.is_none_or(|hot| read.time(at) < hot);
    let all = || read.over.iter().chain(&read.out).filter(|(at, _)| raw(*at));
    let warm = all().find(|(_, f)| *f >= PARTLY).map(|p| p.0);
    let cold = warm.and_then(|warm| all().find(|(at, f)| *f <= COLD && at - warm >= FALLS));
    let stood = since.map(|since| since + STANDS).filter(|over| {
        let on_heat = |(at, f): &(f64, f64)| *f >= HELD_HOT && *at >= over - STANDS && *at <= *over;
        now > *over && warm.is_some() && !read.over.iter().chain(&read.out).any(on_heat)
    });
    [cold.map(|p| p.0), stood]
        .into_iter()
        .flatten()
        .min_by(f64::total_cmp)
        .map(|at| read.time(at))
}

/// The earliest tick of a step of this kind, of those behind the recipe's first heat.
fn began(batch: &Batch, kind: impl Fn(Do) -> bool) -> Option<i64> {
    let hot = |act: Do| matches!(act, Do::Smoke | Do::Cook | Do::DryOut);
    let steps = batch.recipe.steps.iter().enumerate();
    let behind = steps.skip_while(|(_, s)| !hot(s.act)).filter(|(_, s)| kind(s.act));
    behind.filter_map(|(at, _)| Some(batch.step(at)?.at)).min()
}

/// When the smoke or the cooking was lit, in seconds of the log: by its tick, or by the first reading of the cabinet.
fn lit(batch: &Batch, log: &Log) -> Option<f64> {
    let tick = began(batch, |act| matches!(act, Do::Smoke | Do::Cook)).map(|at| log.at(at));
    let cabinet = log.cabinet.first().map(|p| p.0);
    [tick, cabinet].into_iter().flatten().min_by(f64::total_cmp)
}
