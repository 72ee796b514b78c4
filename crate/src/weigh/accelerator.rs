//! Cure accelerators: ascorbic and erythorbic acid and their salts have a limit of their own.

use super::facts::{Accelerated, Remark, SheetFact};
use crate::dose::Whole;
use crate::pantry::{PPM, ingredient};
use crate::quantity::Range;
use crate::quantity::exact::Exact;
use crate::recipe::Line;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// One row of `tables/accelerators.csv`.
#[derive(Clone, Copy, Debug)]
pub struct Accelerator {
    /// A part of the name, in small letters.
    pub word: &'static str,
    /// Most, ppm of green weight.
    pub limit: Decimal,
    /// The limit in words with its source and status.
    pub rule: &'static str,
}

/// What a line is as an accelerator, by its own name or the pantry's.
pub fn of(line: &Line) -> Option<&'static Accelerator> {
    let named = ingredient(&line.item)
        .and_then(|i| i.names.first())
        .copied()
        .unwrap_or_default();
    let name = format!("{named} {}", line.name).to_lowercase();
    crate::tables::ACCELERATORS.iter().find(|a| name.contains(a.word))
}

impl Accelerator {
    /// True for the sodium salts, which the rule for pumped bacon names; an acid goes by another weight.
    pub(super) fn is_salt(&self) -> bool {
        ["ascorbate", "erythorbate"].contains(&self.word)
    }
}

/// What so many grams on the scale come to, counted on `base`.
///
/// ```
/// use cure_reckoner::quantity::Range;
/// use cure_reckoner::weigh::accelerator_ppm;
/// use rust_decimal::dec;
/// // 0.5 g on 1000 g, by a scale of 0.1 g.
/// let found = accelerator_ppm(dec!(0.5), dec!(0.1), Range::point(dec!(1000))).unwrap();
/// assert_eq!((found.low, found.typical, found.high), (dec!(450), dec!(500), dec!(550)));
/// ```
pub fn ppm(grams: Decimal, step: Decimal, base: Range) -> Option<Range> {
    let parts = |g: Decimal| g.times(PPM)?.times(Decimal::ONE_HUNDRED);
    Range::weighed(grams, step)?.map(parts)?.over(base)
}

/// Its dose as a fact, and a remark with the limit, which is a stop where it is passed. `wanted`: what the rule for the
/// cut wants of the sodium salts, which there stands in place of the limit: 550 ppm with a pumped belly, 9 CFR 424.22(b),
/// quoted by FSIS.
pub fn told(
    line: &Line,
    grams: Decimal,
    step: Decimal,
    whole: &Whole,
    wanted: Option<Decimal>,
) -> Option<(SheetFact, Remark)> {
    let row = of(line)?;
    let range = ppm(grams, step, whole.base()?)?;
    let ppm = range.typical.up_to(Decimal::ONE)?.to_u32()?;
    let (lies, rule) = match wanted.filter(|_| row.is_salt()) {
        Some(wanted) if range.high < wanted => (Accelerated::Less, None),
        Some(wanted) if range.low > wanted => (Accelerated::More, None),
        Some(_) => (Accelerated::AsWanted, None),
        None if range.typical > row.limit => (Accelerated::Over, Some(row.rule)),
        None => (Accelerated::Within, Some(row.rule)),
    };
    Some((SheetFact::Accelerator { ppm }, Remark::Accelerator { ppm, lies, rule }))
}
