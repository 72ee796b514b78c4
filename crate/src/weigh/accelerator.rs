//! Cure accelerators: ascorbic and erythorbic acid and their salts have a limit of their own.

use super::model::Fact;
use crate::dose::Whole;
use crate::pantry::{PPM, ingredient};
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

/// Its dose as a fact, and a remark with the limit, which is a stop where it is passed.
pub fn told(line: &Line, grams: Decimal, whole: &Whole) -> Option<(Fact, String)> {
    let row = of(line)?;
    let ppm = grams
        .times(PPM)?
        .times(Decimal::ONE_HUNDRED)?
        .over(whole.base()?.typical)?;
    let up = ppm.up_to(Decimal::ONE)?.to_u32()?;
    let fact = Fact {
        label: "Accelerator going in".to_owned(),
        value: format!("{up} ppm"),
    };
    let verdict = if ppm > row.limit {
        "This is over the limit: take less"
    } else {
        "Within the limit"
    };
    Some((fact, format!("Accelerator: {up} ppm goes in. {verdict}. {}.", row.rule)))
}
