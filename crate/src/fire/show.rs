//! Figures of the log as they are answered.

use super::facts::{ChillAlso, ChillStage, Degrees};
use crate::quantity::{Figure, Span, System, Temperature, plain};
use crate::record::{Log, fahrenheit, temperature};
use crate::safety::{self, Also, LINGERS, SOON};
use rust_decimal::Decimal;
use serde::Serialize;

/// A point of a picture: the user's degrees, in tenths.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct FirePoint {
    /// Milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
    /// Tenths of a degree, °C or °F by the settings.
    pub tenths: i32,
}

impl Degrees {
    fn both(units: System, show: impl Fn(System) -> Figure) -> Self {
        let other = match units {
            System::Us => System::Metric,
            System::Metric => System::Us,
        };
        Self {
            own: show(units).text,
            other: show(other).text,
        }
    }

    /// To the tenth.
    pub(super) fn of(fahrenheit: f64, units: System) -> Self {
        Self::both(units, |units| {
            in_tenths((degrees(fahrenheit, units) * 10.0).round(), units)
        })
    }

    /// A least: to the tenth, never rounded down.
    pub(super) fn least(fahrenheit: f64, units: System) -> Self {
        Self::both(units, |units| needed_figure(temperature(fahrenheit), units))
    }

    /// So many degrees more or less.
    pub(super) fn apart(fahrenheit: f64, units: System) -> Self {
        Self::both(units, |units| difference(fahrenheit, units))
    }

    /// A round figure of either scale.
    pub(super) fn round(celsius: i64, fahrenheit: i64, units: System) -> Self {
        Self::both(units, |units| match units {
            System::Us => in_tenths(fahrenheit as f64 * 10.0, units),
            System::Metric => in_tenths(celsius as f64 * 10.0, units),
        })
    }
}

/// `1.3 h`, `40 min`.
pub(super) fn hours(hours: f64) -> String {
    let minutes = Decimal::from((hours * 60.0).round() as i64);
    Span::new(minutes)
        .map(|s| s.show(System::Metric).text)
        .unwrap_or_default()
}

pub(super) fn point(log: &Log, (at, f): (f64, f64), units: System) -> FirePoint {
    FirePoint {
        at: log.time(at),
        tenths: tenths(f, units),
    }
}

pub(super) fn tenths(fahrenheit: f64, units: System) -> i32 {
    let degrees = match units {
        System::Us => fahrenheit,
        System::Metric => celsius(fahrenheit),
    };
    (degrees * 10.0).round() as i32
}

/// Celsius of Fahrenheit.
pub(super) fn celsius(fahrenheit: f64) -> f64 {
    (fahrenheit - 32.0) / 1.8
}

fn degrees(fahrenheit: f64, units: System) -> f64 {
    match units {
        System::Us => fahrenheit,
        System::Metric => celsius(fahrenheit),
    }
}

/// Tenths of a degree in the user's unit.
fn in_tenths(tenths: f64, units: System) -> Figure {
    let unit = if units == System::Us { "°F" } else { "°C" };
    Figure::new(plain(Decimal::new(tenths as i64, 1).normalize()), unit)
}

/// A hair, so that a tenth that is exact in its own unit stays what it is.
const HAIR: f64 = 1e-6;

/// A temperature rounded for reading.
pub(super) fn figure(fahrenheit: f64, units: System) -> Figure {
    temperature(fahrenheit).show(units)
}

/// So many degrees more or less.
pub(super) fn difference(fahrenheit: f64, units: System) -> Figure {
    let degrees = if units == System::Us {
        fahrenheit
    } else {
        fahrenheit / 1.8
    };
    in_tenths((degrees * 10.0).round(), units)
}

/// A least: to the tenth, never rounded down.
pub(super) fn needed_figure(least: Temperature, units: System) -> Figure {
    in_tenths((degrees(fahrenheit(least), units) * 10.0 - HAIR).ceil(), units)
}

/// A reading that falls short of a least: to the tenth, never rounded up to it.
pub(super) fn short_figure(fahrenheit: f64, units: System) -> Figure {
    in_tenths((degrees(fahrenheit, units) * 10.0 + HAIR).floor(), units)
}

/// A most, printed in °F: to the tenth, never rounded up.
pub(super) fn most_figure(fahrenheit: f64, units: System) -> Figure {
    short_figure(fahrenheit, units)
}

/// To the whole degree, as a rule of thumb names it.
pub(super) fn whole_figure(fahrenheit: f64, units: System) -> Figure {
    in_tenths(degrees(fahrenheit, units).round() * 10.0, units)
}

/// A number of a table, to the hundredth.
pub(super) fn number(value: f64) -> String {
    plain(Decimal::new((value * 100.0).round() as i64, 2).normalize())
}

/// A stage of an option for chilling with its figures.
pub(super) fn stage(of: &safety::Stage, units: System) -> ChillStage {
    let ppm = |least: Option<f64>| least.map(|n| n as u32);
    let also = |also: Also| match also {
        Also::InAll => ChillAlso::InAll {
            within: of.total.map(hours).unwrap_or_default(),
            from: figure(safety::first_start(of), units),
            to: most_figure(of.end, units),
        },
        Also::Continuous => ChillAlso::Continuous,
        Also::Soon => ChillAlso::Soon { minutes: SOON },
        Also::NoPause => ChillAlso::NoPause,
        Also::OuterLimit => ChillAlso::OuterLimit,
        Also::Withdrawn => ChillAlso::Withdrawn,
        Also::NoLinger => ChillAlso::NoLinger {
            from: figure(LINGERS.0, units),
            to: figure(LINGERS.1, units),
            over: hours(LINGERS.2),
        },
    };
    ChillStage {
        of: of.key,
        start: figure(of.start, units),
        end: most_figure(of.end, units),
        within: of.hours.map(hours),
        nitrite: ppm(of.nitrite),
        erythorbate: ppm(of.erythorbate),
        brine: of.brine.map(number),
        activity: of.activity.map(number),
        also: of.also.map(also),
        source: of.source,
        status: of.status,
    }
}
