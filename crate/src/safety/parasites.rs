//! Trichinae, by the tables of the former 9 CFR 318.10 (removed in 2018, guideline since): for domestic pork.

use super::heat::between;
use serde::Serialize;

/// Which pieces a row for freezing is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Frozen {
    /// Up to 6 in thick.
    To6In,
    /// 6 to 27 in thick.
    To27In,
    /// Of any thickness, read in its middle.
    Middle,
}

/// Seconds at a temperature in °F; nothing below 120 °F. For bear, boar and their kin the consumer rule holds instead:
/// 160 °F everywhere.
pub fn trichinae_seconds(fahrenheit: f64) -> Option<f64> {
    between(&crate::tables::TRICHINAE, fahrenheit)
}

/// Whether domestic pork was frozen long enough; `Frozen::Middle` goes by its own temperature. Between
/// rows the warmer one holds.
///
/// It says nothing of boar, bear and their kin: freezing is never enough for them, however cold and long (CDC, published).
pub fn frozen_long_enough(group: Frozen, fahrenheit: f64, hours: f64) -> bool {
    let needed = crate::tables::TRICHINAE_COLD
        .iter()
        .rev()
        .find(|(name, temp, _)| *name == group && fahrenheit <= *temp);
    needed.is_some_and(|(_, _, least)| hours >= *least)
}
