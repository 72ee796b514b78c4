//! Time at temperature: the part of a table's requirement that readings have earned.

use serde::Serialize;

/// Readings of one piece, in order of time: seconds, degrees Fahrenheit.
pub type Points<'a> = &'a [(f64, f64)];

/// Readings further apart than this are not counted between, in seconds: nobody knows what lay between (judgement).
pub const GAP: f64 = 1800.0;

/// What the thermometer may show too much, °F (judgement: a good probe thermometer, not calibrated). It is added to the
/// limit of a table for time at temperature, as FSIS asks; a single temperature is judged as it is printed.
pub const THERMOMETER: f64 = 2.0;

/// Which rows are asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Table {
    /// Red meat for 6.5 log, FSIS Appendix A 1999, published.
    Meat65,
    /// Red meat for 7 log, the same.
    Meat70,
    /// Birds for 7 log at 12 % fat: the longer of chicken and turkey, FSIS Cooking Guideline 2021, quoted.
    Bird,
}

impl Table {
    fn rows(self) -> [&'static [(f64, f64)]; 2] {
        use crate::tables::{CHICKEN, MEAT_65, MEAT_70, TURKEY};
        match self {
            Self::Meat65 => [&MEAT_65, &MEAT_65],
            Self::Meat70 => [&MEAT_70, &MEAT_70],
            Self::Bird => [&CHICKEN, &TURKEY],
        }
    }

    /// The log reduction of a full credit.
    pub const fn log(self) -> f64 {
        match self {
            Self::Meat65 => 6.5,
            Self::Meat70 | Self::Bird => 7.0,
        }
    }

    /// Seconds for the whole credit at a temperature in °F; nothing below its first row; nought where the table asks
    /// for no time.
    ///
    /// Between two rows the logarithm of the time is interpolated; next to a row without a time, the colder row holds.
    pub fn seconds(self, fahrenheit: f64) -> Option<f64> {
        let [one, other] = self.rows();
        Some(between(one, fahrenheit)?.max(between(other, fahrenheit)?))
    }
}

pub(super) fn between(rows: &[(f64, f64)], at: f64) -> Option<f64> {
    let colder = rows.iter().rev().find(|(temp, _)| *temp <= at)?;
    let Some(warmer) = rows.iter().find(|(temp, _)| *temp >= at) else {
        return Some(colder.1);
    };
    if warmer.0 <= colder.0 || warmer.1 <= 0.0 || colder.1 <= 0.0 {
        return Some(colder.1);
    }
    let share = (at - colder.0) / (warmer.0 - colder.0);
    Some((colder.1.ln() + share * (warmer.1.ln() - colder.1.ln())).exp())
}

/// The part of the table's requirement that the readings have earned, 0 to 1.
///
/// Between two readings the colder one counts, so a dip that both neighbours bracket is the dip. `error` is taken off
/// every reading (°F): what the thermometer may show too much. Reached at once where the table asks for no time.
pub fn credit(table: Table, points: Points, error: f64) -> f64 {
    let at_once = |f: f64| table.seconds(f - error).is_some_and(|s| s <= 0.0);
    if points.iter().any(|(_, f)| at_once(*f)) {
        return 1.0;
    }
    let earned: f64 = points
        .iter()
        .zip(points.iter().skip(1))
        .filter_map(|((begin, one), (end, other))| {
            let span = end - begin;
            let needed = table.seconds(one.min(*other) - error)?;
            (span > 0.0 && span <= GAP).then_some(span / needed)
        })
        .sum();
    earned.clamp(0.0, 1.0)
}
