//! Figures of the log as they are answered.

use super::log::Log;
use crate::quantity::{Span, System};
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
        System::Metric => (fahrenheit - 32.0) / 1.8,
    };
    (degrees * 10.0).round() as i32
}
