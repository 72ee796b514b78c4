//! Weights of a plan as they are answered.

use super::facts::Spread;
use crate::quantity::{Mass, Range, System};
use rust_decimal::Decimal;

pub(super) fn show(grams: Decimal, units: System) -> String {
    Mass::new(grams).map(|m| m.show(units).text).unwrap_or_default()
}

pub(super) fn ends(range: Range, units: System) -> Spread {
    let both = || (show(range.low, units), show(range.high, units));
    Spread {
        likely: show(range.typical, units),
        ends: (!range.is_point()).then(both),
    }
}
