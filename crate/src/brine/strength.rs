//! How strong a brine is. Everything goes by per cent of salt in water and salt together, by weight.
//!
//! 100 degrees of the salometer are a saturated brine at 60 °F, 26.395 % (quoted); a reading above 60 °F gets one degree
//! for each 10 °F (published). Specific gravity by Lange's table at 15 °C (published), between its rows in a straight line.

use crate::quantity::exact::Exact;
use rust_decimal::{Decimal, dec};
use serde::{Deserialize, Serialize};

/// Saturated at 60 °F, per cent.
const SATURATED: Decimal = dec!(26.395);
/// Grams of water to the litre at 15 °C (CRC Handbook, published).
const WATER: Decimal = dec!(999.1);
/// Grams to the litre in a pound to the US gallon of 3.785411784 l, and to the Imperial gallon of 4.54609 l (exact).
const LB_US: Decimal = dec!(119.8264273);
const LB_IMPERIAL: Decimal = dec!(99.7763726);

/// A measure of strength.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Scale {
    /// Per cent of salt in water and salt.
    Percent,
    /// Degrees of the salometer.
    Salometer,
    /// Specific gravity at 15 °C.
    Gravity,
    /// Grams of salt to a litre of water.
    PerLitre,
    /// Pounds of salt to a US gallon of water.
    PerUsGallon,
    /// Pounds of salt to an Imperial gallon of water.
    PerImperialGallon,
}

/// A strength in every measure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Strength {
    /// Per cent of salt in water and salt.
    pub percent: Decimal,
}

impl Strength {
    /// In a measure.
    pub fn on(self, scale: Scale) -> Option<Decimal> {
        let rest = Decimal::ONE_HUNDRED.less(self.percent)?;
        let per_litre = || self.percent.times(WATER)?.over(rest);
        match scale {
            Scale::Percent => Some(self.percent),
            Scale::Salometer => self.percent.times(Decimal::ONE_HUNDRED)?.over(SATURATED),
            Scale::Gravity => between(self.percent, |row| (row.0, row.1)),
            Scale::PerLitre => per_litre(),
            Scale::PerUsGallon => per_litre()?.over(LB_US),
            Scale::PerImperialGallon => per_litre()?.over(LB_IMPERIAL),
        }
    }
}

/// Per cent of salt for a figure on a scale, read at `fahrenheit` where that matters. `None` above saturation or below
/// nought.
pub fn percent_of(figure: Decimal, scale: Scale, fahrenheit: Option<Decimal>) -> Option<Strength> {
    let warm = match fahrenheit {
        Some(f) => f.less(dec!(60))?.over(dec!(10))?,
        None => Decimal::ZERO,
    };
    let by_degrees = |degrees: Decimal| degrees.plus(warm)?.times(SATURATED)?.over(Decimal::ONE_HUNDRED);
    let to_litre = |grams: Decimal| grams.times(Decimal::ONE_HUNDRED)?.over(grams.plus(WATER)?);
    let percent = match scale {
        Scale::Percent => figure,
        Scale::Salometer => by_degrees(figure)?,
        Scale::Gravity => {
            let percent = between(figure, |row| (row.1, row.0))?;
            by_degrees(Strength { percent }.on(Scale::Salometer)?)?
        }
        Scale::PerLitre => to_litre(figure)?,
        Scale::PerUsGallon => to_litre(figure.times(LB_US)?)?,
        Scale::PerImperialGallon => to_litre(figure.times(LB_IMPERIAL)?)?,
    };
    // A saturated brine by the bulletin's table is 26.5 %.
    (Decimal::ZERO..=dec!(26.5))
        .contains(&percent)
        .then_some(Strength { percent })
}

/// Between two rows of the table in a straight line.
fn between(at: Decimal, pair: impl Fn(&(Decimal, Decimal)) -> (Decimal, Decimal)) -> Option<Decimal> {
    let rows = &crate::tables::GRAVITIES;
    let last = rows.len().checked_sub(2)?;
    let (i, _) = rows
        .windows(2)
        .enumerate()
        .find(|(i, two)| two.last().is_some_and(|row| at <= pair(row).0) || *i == last)?;
    let ((x0, y0), (x1, y1)) = (pair(rows.get(i)?), pair(rows.get(i.checked_add(1)?)?));
    at.less(x0)?.times(y1.less(y0)?)?.over(x1.less(x0)?)?.plus(y0)
}
