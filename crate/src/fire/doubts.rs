//! Readings that cannot be right, or hardly: asked about, never thrown away.

use super::log::{Log, fahrenheit};
use crate::batch::FireReading;
use crate::quantity::{System, Temperature};
use rust_decimal::{Decimal, dec};
use serde::Serialize;

/// A question about one reading.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Doubt {
    /// Its place in the list of readings.
    pub reading: u32,
    /// What is odd about it, and what to do.
    pub says: String,
    /// What may have been meant, to choose from.
    pub choices: Vec<String>,
}

/// The middle of a piece does not get hotter than this, °F: water boils.
const BOILING: f64 = 212.0;
/// Nor warms faster than this, °F a minute (judgement: the surface of a thin breast in a hot oven).
const FASTEST: f64 = 6.0;
/// A fall of so many °F while it is over the fire: a probe that was moved, or another piece.
const FALL: f64 = 9.0;
/// Slack of two thermometers beside each other, °F.
const SLACK: f64 = 9.0;
/// Minutes a reading may lie ahead of the clock.
const AHEAD: i64 = 120_000;

/// Questions about readings that are neither struck nor confirmed. `now` in milliseconds.
pub(super) fn doubts(log: &Log, readings: &[FireReading], now: i64, units: System) -> Vec<Doubt> {
    let mut found = Vec::new();
    for (place, reading) in readings.iter().enumerate() {
        if reading.struck || reading.sure {
            continue;
        }
        let before = readings.iter().take(place);
        let last = before.rev().find(|r| !r.struck && r.class == reading.class);
        let Some((says, value)) = odd(log, reading, last, now) else {
            continue;
        };
        let mut choices = Vec::new();
        if value {
            let near = |t: &Temperature| likely(log, reading, *t, last, now);
            choices = meant(reading.temperature)
                .into_iter()
                .flatten()
                .filter(near)
                .map(|t| t.show(units).text)
                .collect();
        }
        found.push(Doubt {
            reading: u32::try_from(place).unwrap_or(u32::MAX),
            says: says.to_owned(),
            choices,
        });
    }
    found
}

/// What is odd about a reading, and whether it is its temperature.
fn odd(log: &Log, reading: &FireReading, last: Option<&FireReading>, now: i64) -> Option<(&'static str, bool)> {
    if reading.at > now.saturating_add(AHEAD) {
        return Some((
            "This time is still to come. Correct the time, or look at the clock of this device.",
            false,
        ));
    }
    if last.is_some_and(|l| l.at > reading.at) {
        return Some((
            "This is earlier than the reading logged before it. Keep it if its time is right; if the clock was changed, \
             correct the time.",
            false,
        ));
    }
    let f = fahrenheit(reading.temperature);
    reading.class?;
    if f > BOILING {
        return Some((
            "Hotter than boiling water inside a piece: a slip of the decimal point, or a probe in the air.",
            true,
        ));
    }
    let cabinet = log.cabinet_at(reading.at);
    if log.pulled(reading.class).is_none_or(|at| reading.at < at) {
        if cabinet.is_some_and(|c| f > c + SLACK) {
            return Some((
                "Warmer than the cabinet: a probe in the air, or the other scale of degrees.",
                true,
            ));
        }
        if last.is_some_and(|l| fahrenheit(l.temperature) - f > FALL) {
            return Some((
                "Colder than the last one: another piece, a probe that slipped, or the other scale of degrees. A colder \
                 piece counts: keep it.",
                true,
            ));
        }
    }
    let fast = last.is_some_and(|l| {
        let minutes = super::log::seconds(reading.at.saturating_sub(l.at)) / 60.0;
        f - fahrenheit(l.temperature) > SLACK + FASTEST * minutes
    });
    fast.then_some((
        "It cannot have warmed so fast: a probe in the air or at a bone, or a slip of the keys.",
        true,
    ))
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
