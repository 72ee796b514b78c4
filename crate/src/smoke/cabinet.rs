//! What the cabinet's air was, and what it will be.

use super::forecast::Readings;
use crate::order::InOrder;

/// A line through points at a time, held before the first and after the last.
pub(super) fn line(points: &[(f64, f64)], at: f64) -> Option<f64> {
    let next = points.partition_point(|p| p.0 <= at);
    let before = next.checked_sub(1).and_then(|i| points.get(i)).copied();
    match (before, points.get(next).copied()) {
        (Some(a), Some(b)) => Some(a.1 + (b.1 - a.1) * (at - a.0) / (b.0 - a.0)),
        (one, other) => one.or(other).map(|p| p.1),
    }
}

/// What the cabinet will be: the middle one of its last five readings or the last, whichever is warmer, since a lid lets
/// it fall only for a while. Within its first hour it may still come up to what it is set to.
pub(super) fn ahead(readings: &Readings) -> Option<f64> {
    let mut last: Vec<f64> = readings.cabinet.iter().rev().take(5).map(|p| p.1).collect();
    let newest = last.first().copied();
    last.order_by(f64::total_cmp);
    let lately = warmer(last.get(last.len() / 2).copied(), newest);
    let young = readings
        .cabinet
        .last()
        .zip(readings.cabinet.first())
        .is_none_or(|(l, f)| l.0 - f.0 < 3600.0);
    if young {
        warmer(lately, readings.set)
    } else {
        lately.or(readings.set)
    }
}

/// The warmer of two temperatures that may not be known.
fn warmer(one: Option<f64>, other: Option<f64>) -> Option<f64> {
    one.into_iter().chain(other).reduce(f64::max)
}
