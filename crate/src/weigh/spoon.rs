//! The spoon equivalent of a weight: low, usual, high, to catch a slip.

use super::facts::{SpoonSource, SpoonUnit};
use super::model::Spoon;
use crate::dose::OwnSpoon;
use crate::pantry::Ingredient;
use crate::quantity::exact::Exact;
use crate::quantity::{Range, plain};
use rust_decimal::{Decimal, dec};

/// Level spoons that hold `grams`; `None` where the weight of a spoon is not known, or for water, which is poured.
///
/// ```
/// use cure_reckoner::pantry::ingredient;
/// use cure_reckoner::weigh::spoons;
/// use rust_decimal::dec;
/// // A level teaspoon of this cure holds 4.2 to 8.3 g, usually 5.67 g.
/// let spoons = spoons(ingredient("cure-1").unwrap(), dec!(5.67)).unwrap();
/// assert_eq!([spoons.low, spoons.typical, spoons.high], ["0.68", "1", "1.4"]);
/// ```
pub fn spoons(item: &Ingredient, grams: Decimal) -> Option<Spoon> {
    let level = item.spoon?.range()?;
    if grams <= Decimal::ZERO || item.key == "water" {
        return None;
    }
    // Heavy spoons need fewer: the ends change places.
    let teaspoons = Range {
        low: grams.over(level.high)?,
        typical: grams.over(level.typical)?,
        high: grams.over(level.low)?,
    };
    let (each, unit) = match teaspoons.typical {
        t if t < dec!(9) => (dec!(1), SpoonUnit::Teaspoons),
        t if t < dec!(96) => (dec!(3), SpoonUnit::Tablespoons),
        _ => (dec!(48), SpoonUnit::Cups),
    };
    let spoons = teaspoons.map(|t| t.over(each))?;
    Some(Spoon {
        unit,
        low: count(spoons.low)?,
        typical: count(spoons.typical)?,
        high: count(spoons.high)?,
        source: SpoonSource::Table {
            source: item.source,
            ndb: item.ndb.split('|').filter(|n| !n.is_empty()).collect(),
            status: item.status,
        },
    })
}

/// The same by a level spoon of the user's own.
pub fn own_spoons(own: &OwnSpoon, grams: Decimal) -> Option<Spoon> {
    let level = own.range();
    if grams <= Decimal::ZERO {
        return None;
    }
    Some(Spoon {
        unit: if own.tablespoon {
            SpoonUnit::Tablespoons
        } else {
            SpoonUnit::Teaspoons
        },
        low: count(grams.over(level.high)?)?,
        typical: count(grams.over(level.typical)?)?,
        high: count(grams.over(level.low)?)?,
        source: SpoonSource::Own,
    })
}

/// Two figures under one, one decimal above.
fn count(spoons: Decimal) -> Option<String> {
    let step = if spoons < Decimal::ONE { dec!(0.01) } else { dec!(0.1) };
    Some(plain(spoons.nearest(step)?))
}
