//! Room by area: what pieces lie on, and what shelves and racks have. Square centimetres throughout.

use super::bag::Area;
use crate::batch::Batch;
use crate::quantity::System;
use crate::quantity::exact::Exact;
use crate::weigh::Racks;
use rust_decimal::prelude::ToPrimitive;
use rust_decimal::{Decimal, dec};

/// Grams in a cubic centimetre of lean meat: common practice, no source.
const DENSITY: Decimal = dec!(1.06);
/// Mean thickness of a half ellipsoid as a share of its thickest part, exact.
const MEAN: Decimal = dec!(0.666667);
/// Room between pieces, on top of their own: our own judgement.
const GAPS: Decimal = dec!(1.25);

/// What so many grams lie on, side by side, gaps and all, where the thickest part has so many millimetres.
pub fn lies_on(grams: Decimal, mm: Decimal) -> Option<Decimal> {
    let mean = mm.over(dec!(10))?.times(MEAN)?.times(DENSITY)?;
    (mean > Decimal::ZERO).then_some(())?;
    grams.times(GAPS)?.over(mean)
}

/// What a batch lies on; nothing where a class is not weighed, or neither measured nor in the table.
pub fn takes(batch: &Batch) -> Option<Decimal> {
    let mut sum = Decimal::ZERO;
    for piece in &batch.pieces {
        let usual = || {
            let row = super::bag::games().find(|g| g.cut == piece.cut && g.mm > 0);
            row.map(|g| Decimal::from(g.mm))
        };
        let mm = piece.thickness.map(|t| t.base()).or_else(usual)?;
        sum = sum.plus(lies_on(piece.all()?, mm)?)?;
    }
    (sum > Decimal::ZERO).then_some(sum)
}

/// What shelves or racks have in all.
pub fn area(racks: &Racks) -> Option<Decimal> {
    let one = racks.wide.base().times(racks.deep.base())?.over(dec!(100))?;
    one.times(Decimal::from(racks.count))
}

/// Whole square centimetres, rounded up.
pub fn whole(area: Decimal) -> u32 {
    area.ceil().to_u32().unwrap_or(u32::MAX)
}

/// An area in the person's units, to the nearest ten.
pub fn show(area: Decimal, units: System) -> Option<Area> {
    let size = match units {
        System::Metric => Decimal::ONE,
        System::Us => dec!(6.4516),
    };
    let number = area.over(size)?.nearest(dec!(10))?.to_u32()?;
    Some(Area { number, units })
}
