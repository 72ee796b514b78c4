//! Readings that cannot be right, or hardly: asked about, never thrown away.

use super::log::{AHEAD, Log, fahrenheit, seconds};
use crate::batch::{Batch, FireReading};
use crate::quantity::Temperature;
use rust_decimal::{Decimal, dec};
use serde::Serialize;

/// What is odd about a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Odd {
    /// Its time is still to come.
    ToCome,
    /// It is earlier than the reading logged before it.
    Earlier,
    /// Hotter than boiling water.
    Boiling,
    /// Warmer than the cabinet.
    AboveCabinet,
    /// Much colder than the last one.
    Fell,
    /// Warmed faster than a piece can.
    TooFast,
}

/// A reading in question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OddReading {
    /// Its place in the list of readings.
    pub reading: usize,
    /// The place of its class; nothing for the cabinet.
    pub class: Option<usize>,
    /// What is odd about it.
    pub odd: Odd,
    /// What may have been meant.
    pub choices: Vec<Temperature>,
}

/// The middle of a piece does not get hotter than this, °F: water boils.
const BOILING: f64 = 212.0;
/// Nor warms faster than this, °F a minute (judgement: the surface of a thin breast in a hot oven).
const FASTEST: f64 = 6.0;
/// A fall of so many °F while it is over the fire: a probe that was moved, or another piece.
const FALL: f64 = 9.0;
/// Slack of two thermometers beside each other, °F.
const SLACK: f64 = 9.0;

/// Questions about readings that are neither struck nor confirmed. `now` in milliseconds.
#[must_use]
pub fn odd_readings(batch: &Batch, now: i64) -> Vec<OddReading> {
    let log = Log::of(batch);
    let readings = batch.fire.as_ref().map_or(&[][..], |f| &f.readings);
    let mut found = Vec::new();
    for (place, reading) in readings.iter().enumerate() {
        // Nobody can be sure of what no meat can have.
        if reading.struck || reading.sure && !boils(reading) {
            continue;
        }
        let before = readings.iter().take(place);
        let last = before.rev().find(|r| !r.struck && r.class == reading.class);
        let Some(what) = odd(&log, reading, last, now) else {
            continue;
        };
        let near = |t: &Temperature| likely(&log, reading, *t, last, now);
        let of_value = !matches!(what, Odd::ToCome | Odd::Earlier);
        found.push(OddReading {
            reading: place,
            class: reading.class.and_then(|c| usize::try_from(c).ok()),
            odd: what,
            choices: meant(reading.temperature)
                .into_iter()
                .flatten()
                .filter(|t| of_value && near(t))
                .collect(),
        });
    }
    found
}

/// True where a reading of a class is in question.
#[must_use]
pub fn in_question(odd: &[OddReading], place: usize) -> bool {
    odd.iter().any(|o| o.class == Some(place))
}

/// Hotter in the middle of a piece than water boils.
fn boils(reading: &FireReading) -> bool {
    reading.class.is_some() && fahrenheit(reading.temperature) > BOILING
}

fn odd(log: &Log, reading: &FireReading, last: Option<&FireReading>, now: i64) -> Option<Odd> {
    if reading.at > now.saturating_add(AHEAD) {
        return Some(Odd::ToCome);
    }
    if last.is_some_and(|l| l.at > reading.at) {
        return Some(Odd::Earlier);
    }
    let f = fahrenheit(reading.temperature);
    reading.class?;
    if boils(reading) {
        return Some(Odd::Boiling);
    }
    let cabinet = log.cabinet_at(reading.at);
    if log.pulled(reading.class).is_none_or(|at| reading.at < at) {
        if cabinet.is_some_and(|c| f > c + SLACK) {
            return Some(Odd::AboveCabinet);
        }
        if last.is_some_and(|l| fahrenheit(l.temperature) - f > FALL) {
            return Some(Odd::Fell);
        }
    }
    let fast = last.is_some_and(|l| {
        let minutes = seconds(reading.at.saturating_sub(l.at)) / 60.0;
        f - fahrenheit(l.temperature) > SLACK + FASTEST * minutes
    });
    fast.then_some(Odd::TooFast)
}

/// What may have been meant by it: a tenth, the other scale.
fn meant(typed: Temperature) -> [Option<Temperature>; 4] {
    use crate::quantity::exact::Exact;
    let f = typed.base();
    let celsius = f.less(dec!(32)).and_then(|c| c.over(dec!(1.8)));
    let new = |v: Option<Decimal>| v.and_then(|v| Temperature::new(v).ok());
    let tenth_c = celsius
        .and_then(|c| c.over(dec!(10)))
        .and_then(|c| c.times(dec!(1.8)))
        .and_then(|c| c.plus(dec!(32)));
    // Typed as °F and meant as °C; typed as °C and meant as °F; a tenth of what was typed as °C or °F.
    let other = f.times(dec!(1.8)).and_then(|v| v.plus(dec!(32)));
    [new(other), new(celsius), new(tenth_c), new(f.over(dec!(10)))]
}

/// Whether a value would raise no question.
fn likely(log: &Log, reading: &FireReading, value: Temperature, last: Option<&FireReading>, now: i64) -> bool {
    let other = FireReading {
        temperature: value,
        ..reading.clone()
    };
    let frozen = fahrenheit(value) < 28.0;
    value != reading.temperature && !frozen && odd(log, &other, last, now).is_none()
}
