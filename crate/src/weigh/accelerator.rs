//! Cure accelerators: ascorbic and erythorbic acid and their salts have a limit of their own.

use super::model::Fact;
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
    let named = ingredient(&line.item).map(|i| i.name).unwrap_or_default();
    let name = format!("{named} {}", line.name).to_lowercase();
    crate::tables::ACCELERATORS.iter().find(|a| name.contains(a.word))
}

impl Accelerator {
    /// True for the sodium salts, which the rule for pumped bacon names; an acid goes by another weight.
    pub fn is_salt(&self) -> bool {
        ["ascorbate", "erythorbate"].contains(&self.word)
    }
}

/// What so many grams on the scale come to, counted on `base`.
pub fn ppm(grams: Decimal, step: Decimal, base: Range) -> Option<Range> {
    let parts = |g: Decimal| g.times(PPM)?.times(Decimal::ONE_HUNDRED);
    Range::weighed(grams, step)?.map(parts)?.over(base)
}

/// Its dose as a fact, and a remark with the limit, which is a stop where it is passed. `wanted`: what the rule for the
/// cut wants of the sodium salts, which there stands in place of the limit.
pub fn told(
    line: &Line,
    grams: Decimal,
    step: Decimal,
    whole: &Whole,
    wanted: Option<Decimal>,
) -> Option<(Fact, String)> {
    let row = of(line)?;
    let range = ppm(grams, step, whole.base()?)?;
    let up = range.typical.up_to(Decimal::ONE)?.to_u32()?;
    let fact = Fact {
        label: "Accelerator going in".to_owned(),
        value: format!("{up} ppm"),
    };
    let (verdict, rule) = match wanted.filter(|_| row.is_salt()) {
        Some(wanted) if range.high < wanted => ("This is less than the rule for bacon wants: take more", BACON),
        Some(wanted) if range.low > wanted => ("This is more than the rule for bacon wants: take less", BACON),
        Some(_) => ("As the rule for bacon wants it", BACON),
        None if range.typical > row.limit => ("This is over the limit: take less", row.rule),
        None => ("Within the limit", row.rule),
    };
    Some((fact, format!("Accelerator: {up} ppm goes in. {verdict}. {rule}.")))
}

const BACON: &str = "550 ppm of sodium ascorbate or erythorbate with a pumped belly: 9 CFR 424.22(b), quoted by FSIS, “Bacon and Food Safety”";
