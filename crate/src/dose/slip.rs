//! What likely happened where a dose is out of range: each slip of `tables/slips.csv` is taken back and judged again.

use super::case::{Case, Portion};
use super::spoons::Unit;
use crate::quantity::Range;
use crate::quantity::exact::Exact;
use rust_decimal::{Decimal, dec};

/// What was typed where a slip is asked about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Said {
    /// Whatever it was.
    Any,
    /// In this unit.
    Unit(Unit),
    /// Water by the US gallon.
    UsGallon,
    /// Water by the Imperial gallon.
    ImperialGallon,
}

/// One row of the table.
#[derive(Clone, Copy, Debug)]
pub struct Slip {
    /// Key of the row, `tablespoon`.
    pub key: &'static str,
    /// True where it leads over the limit, false where it leads under the least.
    pub over: bool,
    /// What was typed.
    pub said: Said,
    /// Printed nitrite for which it is asked, per cent.
    pub printed: (Decimal, Decimal),
    /// What the dose would be without it, as a multiple.
    pub times: Option<Decimal>,
    /// The printed nitrite that was meant, in place of a multiple.
    pub meant: Option<Decimal>,
    /// By how much the water was to be larger.
    pub water: Decimal,
}

/// A vessel so near to whole half gallons was measured by them.
const NEAR: Decimal = dec!(0.02);
/// Grams of water in a US and in an Imperial gallon: 3785.411784 and 4546.09 ml (exact), by 0.998 g to the ml at 20 °C.
const US_GALLON: Decimal = dec!(3777.8);
const IMPERIAL_GALLON: Decimal = dec!(4537.0);
/// More questions than this help nobody.
const MOST: usize = 2;

/// Questions for a dose that is in and out of range, the surest first; each would bring it in range.
pub fn slips(case: &Case<'_>, nitrite: Range) -> Vec<&'static Slip> {
    let [portion] = case.portions.as_slice() else {
        return Vec::new();
    };
    let over = nitrite.high > case.rule.limit;
    if !portion.done || !(over || nitrite.low < case.rule.least) {
        return Vec::new();
    }
    let rows = crate::tables::SLIPS.iter().filter(|s| s.over == over);
    rows.filter(|s| is_asked(s, case, portion) && would_do(s, case, portion, nitrite) == Some(true))
        .take(MOST)
        .collect()
}

fn is_asked(slip: &Slip, case: &Case<'_>, portion: &Portion) -> bool {
    let nitrite = portion.agent.map_or(Decimal::ZERO, |a| a.nitrite);
    let by_measure = match slip.said {
        Said::Any => true,
        Said::Unit(unit) => portion.unit == unit,
        Said::UsGallon => is_near(case.water, US_GALLON),
        Said::ImperialGallon => is_near(case.water, IMPERIAL_GALLON),
    };
    by_measure && nitrite >= slip.printed.0 && nitrite <= slip.printed.1
}

/// True for water that is a whole number of half gallons.
fn is_near(water: Decimal, gallon: Decimal) -> bool {
    let halves = gallon.over(Decimal::TWO).and_then(|half| water.over(half));
    halves.is_some_and(|n| {
        let whole = n.half_away(0);
        whole > Decimal::ZERO
            && n.less(whole)
                .zip(NEAR.times(whole))
                .is_some_and(|(off, near)| off.abs() <= near)
    })
}

/// True where the dose without the slip could lie between the least and the limit.
fn would_do(slip: &Slip, case: &Case<'_>, portion: &Portion, nitrite: Range) -> Option<bool> {
    let times = match (slip.meant, slip.times) {
        (Some(meant), _) => meant.over(portion.agent?.nitrite)?,
        (None, times) => times?,
    };
    let more = case.water.times(slip.water.less(Decimal::ONE)?)?;
    let mut other = case.clone();
    other.whole.pickle = case.whole.pickle.map(|g| g.plus(more))?;
    let without = if more.is_zero() {
        nitrite
    } else {
        other.ingoing()?.nitrite
    };
    let meant = without.map(|v| v.times(times))?;
    Some(meant.low <= case.rule.limit && meant.high >= case.rule.least)
}
