//! Figures of the clock as text.

use crate::quantity::{Span, System, Temperature};
use rust_decimal::Decimal;

/// Hours as a text.
pub(super) fn span(hours: f64, units: System) -> String {
    Decimal::try_from((hours * 60.0).round())
        .ok()
        .and_then(|minutes| Span::new(minutes).ok())
        .map(|s| s.show(units).text)
        .unwrap_or_default()
}

/// To a tenth of a degree Fahrenheit.
pub(super) fn degrees(fahrenheit: f64, units: System) -> String {
    Decimal::try_from((fahrenheit * 10.0).round() / 10.0)
        .ok()
        .and_then(|f| Temperature::new(f).ok())
        .map(|t| t.show(units).text)
        .unwrap_or_default()
}

/// A thousand times as a whole number.
#[allow(clippy::cast_possible_truncation, reason = "held within ten million")]
pub(super) fn milli(value: f64) -> i32 {
    (value * 1000.0).clamp(-1e7, 1e7).round() as i32
}

/// Per cent: one decimal below ten, none above.
pub(super) fn percent(value: f64) -> String {
    let places = u32::from(value < 10.0);
    let number = Decimal::new(i64::from(milli(value)), 3).round_dp(places).normalize();
    format!("{number} %")
}
