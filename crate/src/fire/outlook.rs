//! When a class will be done, by the model of the piece and its readings.

use super::facts::{Degrees, OutlookBasis, OutlookNote};
use super::heats::heats;
use super::show::{FirePoint, celsius, difference, hours, point};
use crate::batch::{self, Batch, Cover, Fire, PieceName};
use crate::order::InOrder;
use crate::pantry;
use crate::quantity::{Figure, System};
use crate::record::Log;
use crate::smoke::{Covered, Forecast, Habit, Readings, Setup, forecast, joint};
use rust_decimal::prelude::ToPrimitive;
use serde::Serialize;

/// When it will be done.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Outlook {
    /// Earliest, likely and latest time, in milliseconds since 1970, four in five between the ends; nothing where it
    /// will not get there within a day.
    #[cfg_attr(feature = "types", ts(type = "[number, number, number] | null"))]
    pub window: Option<[i64; 3]>,
    /// What it is worked from: how many readings, or what is usual.
    pub from: OutlookBasis,
    /// What to know and what to do: a stall, the hotter oven, the carry-over.
    pub notes: Vec<OutlookNote>,
    /// The fire is out: the cabinet falls and the piece no longer warms. The times are as if it were lit now.
    pub fire_out: bool,
    /// When it is warm enough to be wrapped as planned, in milliseconds; nothing where that is not planned, or done.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub wrap: Option<i64>,
    /// Its course from now on.
    pub course: Vec<FirePoint>,
}

/// Milliseconds of a minute.
const MINUTE: i64 = 60_000;
/// So much warmer the forecast tries the cabinet, °F (10 °C).
const WARMER: f64 = 18.0;
/// The oven that the forecast tries, °C, and what an oven in °F has beside it.
const OVEN: (i64, i64) = (120, 250);

/// What is known of a class before the fire; nothing where its thickness is not.
pub(super) fn setup(batch: &Batch, log: &Log, place: usize, fire: &Fire, target: f64, habit: Habit) -> Option<Setup> {
    let piece = batch.pieces.get(place)?;
    let thick = piece.thickness?.base().to_f64()? / 1000.0;
    let flat = pantry::cut(&piece.cut).and_then(pantry::Cut::flat);
    // What is not flat is a joint, as a brick with a square face of its weight. The fit moves it.
    let (thickness, exponent) = match (flat, piece.one().and_then(|grams| grams.to_f64())) {
        (Some(flat), _) => (thick, flat),
        (None, Some(grams)) => joint(thick, grams / 1000.0, fire.fan),
        // A rounder one by judgement where nobody weighed it.
        (None, None) => (thick, 0.6),
    };
    Some(Setup {
        thickness,
        exponent,
        fan: fire.fan,
        covers: covers(log, place, fire.cover),
        wrap_at: fire.wrap_at.map(|at| celsius(crate::record::fahrenheit(at))),
        start: 4.0,
        target: celsius(target),
        habit,
    })
}

/// What is about a class, and since when: as it was hung, then what was put in or on while it hung.
fn covers(log: &Log, place: usize, cover: Cover) -> Vec<Covered> {
    let mut now = Covered {
        from: 0.0,
        pan: cover == Cover::Pan,
        wrapped: cover == Cover::Wrapped,
    };
    let mut all = vec![now];
    // Before the first reading of all there is no clock, and what is on is on from the start.
    let at = |milliseconds: i64| if log.origin == 0 { 0.0 } else { log.at(milliseconds) };
    let pan = log.pan.map(|t| (at(t), true));
    let wrap = log.wrapped.get(place).copied().flatten().map(|t| (at(t), false));
    let mut later: Vec<(f64, bool)> = pan.into_iter().chain(wrap).collect();
    later.order_by(|a, b| a.0.total_cmp(&b.0));
    for (from, is_pan) in later {
        now = Covered {
            from,
            pan: now.pan || is_pan,
            wrapped: now.wrapped || !is_pan,
        };
        all.push(now);
    }
    all
}

/// Another class whose probe speaks for one that has no reading of its own.
pub(super) struct Probe {
    pub of: PieceName,
    setup: Setup,
    /// Its readings over the fire, none after the pull: seconds, °C.
    readings: Vec<(f64, f64)>,
}

/// Whose probe speaks for a class; nothing where it has a reading of its own, or the other has none.
pub(super) fn probe(batch: &Batch, log: &Log, place: usize, fire: &Fire, target: f64, habit: Habit) -> Option<Probe> {
    let other = fire.probe(place)?;
    let pulled = log.pulled.get(other)?.map_or(f64::INFINITY, |at| log.at(at));
    let mut readings = degrees(log.classes.get(other)?);
    readings.retain(|p| p.0 <= pulled);
    (log.classes.get(place)?.is_empty() && !readings.is_empty()).then_some(())?;
    Some(Probe {
        of: batch.pieces.get(other).map(batch::name_of)?,
        setup: setup(batch, log, other, fire, target, habit)?,
        readings,
    })
}

pub(super) fn degrees(points: &[(f64, f64)]) -> Vec<(f64, f64)> {
    points.iter().map(|p| (p.0, celsius(p.1))).collect()
}

/// The outlook of a class that is still over the fire, or an unlit one.
pub(super) fn outlook(
    batch: &Batch,
    log: &Log,
    place: usize,
    setup: &Setup,
    probe: Option<&Probe>,
    now: i64,
    units: System,
) -> Option<Outlook> {
    let (piece, cabinet) = (degrees(log.classes.get(place)?), degrees(&log.cabinet));
    // Before the first reading of all the log has no clock of its own: it begins now.
    let origin = if log.origin == 0 { now } else { log.origin };
    let heats = heats(batch, origin, now);
    let readings = Readings {
        piece: &piece,
        cabinet: &cabinet,
        set: heats.set,
        next: &heats.next,
    };
    let at = crate::record::seconds(now.saturating_sub(origin));
    // A class that is not measured hung as long as the measured one, began as cold, and in the smoker that the other shows.
    let shown = probe.and_then(|p| {
        let own = Readings {
            piece: &p.readings,
            ..readings
        };
        forecast(&p.setup, &own, at)?.habit
    });
    let setup = &Setup {
        habit: shown.unwrap_or(setup.habit),
        ..setup.clone()
    };
    let begun = probe.and_then(|p| p.readings.get(..1));
    let readings = Readings {
        piece: begun.unwrap_or(&piece),
        ..readings
    };
    let found = forecast(setup, &readings, at)?;
    let time = |seconds: f64| origin.saturating_add((seconds * 1000.0) as i64);
    Some(Outlook {
        window: found.window.map(|w| w.map(time).map(minute_up)),
        from: match (probe, shown) {
            (Some(probe), Some(_)) => OutlookBasis::Shared {
                readings: probe.readings.len(),
                of: probe.of.clone(),
            },
            (Some(probe), None) => OutlookBasis::HungWith { of: probe.of.clone() },
            _ if found.fitted => OutlookBasis::Fitted { readings: piece.len() },
            _ => OutlookBasis::Usual,
        },
        fire_out: found.out,
        wrap: wrap(setup, &found, piece.last().copied(), at).map(time),
        notes: notes(&found, at.max(piece.last().map_or(at, |p| p.0)), units),
        course: found
            .course
            .iter()
            .map(|p| FirePoint {
                at: time(p.0),
                ..point(log, (0.0, p.1 * 1.8 + 32.0), units)
            })
            .collect(),
    })
}

/// A forecast to the minute, up, as a calendar can have it too.
fn minute_up(at: i64) -> i64 {
    let up = at.saturating_add(MINUTE.saturating_sub(1));
    up.div_euclid(MINUTE).saturating_mul(MINUTE)
}

/// When its middle comes to what it is wrapped at, in seconds of the log: when it was read so warm, or, by the forecast,
/// later than now, since nothing is wrapped that was not read.
fn wrap(setup: &Setup, found: &Forecast, last: Option<(f64, f64)>, now: f64) -> Option<f64> {
    let warm = setup.wrap_at.filter(|_| !setup.wrapped())?;
    if let Some((at, _)) = last.filter(|(_, degrees)| *degrees >= warm) {
        return Some(at);
    }
    let mut before: Option<(f64, f64)> = None;
    for &(at, degrees) in &found.course {
        if degrees >= warm {
            let then = before.map_or(now, |(t, d)| t + (at - t) * (warm - d) / (degrees - d));
            return Some(then.max(now + 60.0));
        }
        before = Some((at, degrees));
    }
    None
}

fn notes(found: &Forecast, now: f64, units: System) -> Vec<OutlookNote> {
    let mut notes = Vec::new();
    let away = |seconds: f64| hours(seconds / 3600.0);
    if found.window.is_none() {
        notes.push(OutlookNote::TooCold);
    }
    if found.stall {
        notes.push(OutlookNote::Stall);
    }
    let left = found.window.map(|w| w[1] - now);
    if let Some(warmer) = found.warmer.filter(|w| left.is_none_or(|l| w + 600.0 < l)) {
        notes.push(OutlookNote::Warmer {
            by: difference(WARMER, units),
            takes: away(warmer),
        });
    }
    if let Some(oven) = found.oven.filter(|o| left.is_none_or(|l| o + 600.0 < l)) {
        notes.push(OutlookNote::Oven {
            at: Degrees::round(OVEN.0, OVEN.1, units),
            takes: away(oven),
        });
    }
    if found.window.is_some() {
        let rise = (found.carry * if units == System::Us { 18.0 } else { 10.0 }).floor() as u32;
        let unit = if units == System::Us { "°F" } else { "°C" };
        notes.push(if rise < 10 {
            OutlookNote::NoRise
        } else {
            OutlookNote::Rise {
                by: Figure::new(format!("{}.{}", rise / 10, rise % 10), unit),
            }
        });
        notes.push(OutlookNote::Loss {
            percent: (found.loss * 100.0).round() as u32,
        });
    }
    notes
}
