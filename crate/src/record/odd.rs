//! Readings that cannot be right, or hardly: asked about, never thrown away.

use super::log::{Log, fahrenheit, seconds};
use crate::batch::{AHEAD, Batch, Cover, FireReading, Piece};
use crate::pantry;
use crate::quantity::{Meant, Temperature};
use crate::smoke::{Covered, Habit, Setup, quickest};
use rust_decimal::prelude::ToPrimitive;
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
    /// Cooled faster than a piece can.
    CooledFast,
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
    /// What may have been meant, by the scale in which it was typed.
    pub choices: Vec<Meant>,
}

/// The middle of a piece does not get hotter than this, °F: water boils.
const BOILING: f64 = 212.0;
/// Nor warms faster than this, °F a minute (judgement: the surface of a thin breast in a hot oven).
const FASTEST: f64 = 6.0;
/// A fall of so many °F while it is over the fire: a probe that was moved, or another piece.
const FALL: f64 = 9.0;
/// Another piece of its size may be thinner than the thickest by this share (judgement).
const THINNER: f64 = 0.8;
/// Millimetres of a piece whose thickness is not typed: a thin breast (judgement).
const THIN: f64 = 15.0;
/// Two pieces of one size may lie so far apart while they cool, °F (judgement).
const APART: f64 = 20.0;
/// Iced water, °F.
const ICE: f64 = 32.0;
/// First root of J0 squared, and its coefficient, of a long round whose surface is at once as cold as what is around it
/// (Carslaw and Jaeger, Conduction of Heat in Solids, 7.6; from memory), and the diffusivity of lean meat, mm² a minute.
const ROOT: f64 = 5.783;
const COEFFICIENT: f64 = 1.602;
const DIFFUSES: f64 = 0.14 * 60.0;
/// Slack of two thermometers beside each other, °F.
const SLACK: f64 = 9.0;
/// What is colder earns nothing by any table, °F, and is not asked whether it can be so hot so soon.
const EARNS: f64 = 130.0;
/// Colder than this, °F, a piece has not been over the fire for long, and how it warms from there can be told (judgement).
const COLD: f64 = 70.0;
/// Exponent of a ball.
const BALL: f64 = 2.0;
/// So many seconds it may have been over the fire before its first reading (judgement).
const UNREAD: f64 = 900.0;

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
        let piece = reading.class.and_then(|c| batch.pieces.get(usize::try_from(c).ok()?));
        let over = readings
            .iter()
            .take(place)
            .filter(|r| !r.struck && r.class == reading.class);
        let beside = Beside {
            log: &log,
            last,
            first: over.min_by_key(|r| r.at),
            setup: piece.map(|piece| setup(batch, piece, reading)),
            thick: piece.and_then(|p| p.thickness?.base().to_f64()).unwrap_or(THIN),
            now,
        };
        let Some(what) = odd(&beside, reading) else {
            continue;
        };
        let near = |t: &Temperature| likely(&beside, reading, *t);
        let of_value = !matches!(what, Odd::ToCome | Odd::Earlier);
        found.push(OddReading {
            reading: place,
            class: reading.class.and_then(|c| usize::try_from(c).ok()),
            odd: what,
            choices: reading
                .temperature
                .meant()
                .into_iter()
                .filter(|meant| of_value && near(&meant.value))
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

/// What a reading is held against.
struct Beside<'a> {
    log: &'a Log,
    /// The one before it of the same class.
    last: Option<&'a FireReading>,
    /// The first of all of the same class.
    first: Option<&'a FireReading>,
    /// How it heats.
    setup: Option<Setup>,
    /// Millimetres of the thickest piece.
    thick: f64,
    /// In milliseconds.
    now: i64,
}

fn odd(beside: &Beside<'_>, reading: &FireReading) -> Option<Odd> {
    let Beside {
        log, last, thick, now, ..
    } = *beside;
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
        if hottest(beside, reading).is_some_and(|most| f >= EARNS && f > most) {
            return Some(Odd::TooFast);
        }
    }
    let last = last?;
    let minutes = seconds(reading.at.saturating_sub(last.at)) / 60.0;
    let rise = f - fahrenheit(last.temperature);
    if rise > SLACK + FASTEST * minutes {
        return Some(Odd::TooFast);
    }
    (f + APART < coldest(fahrenheit(last.temperature), thick, minutes)).then_some(Odd::CooledFast)
}

/// The hottest, °F, that the middle can be by the model at its quickest, since it was first read, and cold; nothing where
/// it was not, or nobody read the smoker. Its air counts as the hottest read of it till then.
fn hottest(beside: &Beside<'_>, reading: &FireReading) -> Option<f64> {
    let first = beside.first.filter(|r| fahrenheit(r.temperature) <= COLD)?;
    let at = beside.log.at(reading.at);
    let air = beside.log.cabinet.iter().filter(|(t, _)| *t <= at);
    let air = air.map(|p| p.1).reduce(f64::max)? + SLACK;
    let since = at - beside.log.at(first.at) + UNREAD;
    let celsius = |f: f64| (f - 32.0) / 1.8;
    let most = quickest(
        beside.setup.as_ref()?,
        celsius(fahrenheit(first.temperature)),
        celsius(air),
        since,
    )?;
    Some(most * 1.8 + 32.0 + SLACK)
}

/// What is known of how a piece heats, and what is put on it or below it till then as if it always was: both make it
/// quicker. What is no bird's breast and no belly may be as round as a ball.
fn setup(batch: &Batch, piece: &Piece, reading: &FireReading) -> Setup {
    let fire = batch.fire.clone().unwrap_or_default();
    let put = |of: &str| batch.tick(of).is_some_and(|t| t.at <= reading.at);
    let wrap = format!("wrap:{}", reading.class.unwrap_or_default());
    Setup {
        thickness: piece.thickness.and_then(|t| t.base().to_f64()).unwrap_or(THIN) / 1000.0,
        exponent: pantry::cut(&piece.cut).and_then(pantry::Cut::flat).unwrap_or(BALL),
        fan: fire.fan,
        covers: vec![Covered {
            from: 0.0,
            pan: fire.cover == Cover::Pan || put("pan"),
            wrapped: fire.cover == Cover::Wrapped || put(&wrap),
        }],
        wrap_at: None,
        start: 4.0,
        target: 0.0,
        habit: Habit::USUAL,
    }
}

/// The coldest, °F, that the middle of a long round of so many millimetres can be after minutes in iced water.
fn coldest(from: f64, thick: f64, minutes: f64) -> f64 {
    let radius = thick * THINNER / 2.0;
    let left = COEFFICIENT * (-ROOT * DIFFUSES * minutes / (radius * radius)).exp();
    ICE + (from - ICE) * left.min(1.0)
}

/// Whether a value would raise no question.
fn likely(beside: &Beside<'_>, reading: &FireReading, value: Temperature) -> bool {
    let other = FireReading {
        temperature: value,
        ..reading.clone()
    };
    let frozen = fahrenheit(value) < 28.0;
    value != reading.temperature && !frozen && odd(beside, &other).is_none()
}
