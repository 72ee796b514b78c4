//! A scale that is too coarse for the dose, and the premix that is the way out.

use super::facts::CoarseWay;
use super::lines::on_scale;
use super::model::{Coarse, Premix};
use super::plan::Plan;
use crate::dose::Ppm;
use crate::quantity::exact::Exact;
use crate::quantity::{Figure, plain};
use rust_decimal::{Decimal, dec};

/// A step that moves the dose by more than this proportion makes the scale too coarse (common practice, no source).
const TOO_MUCH: Decimal = dec!(0.15);
/// Steps of cure that a premix is made with at least, so that its strength is known to about 2.5 %.
const STEPS_IN_PREMIX: Decimal = dec!(20);

/// True when one step of the scale moves the smallest cure by more than 15 %.
pub fn is_coarse(plan: &Plan, step: Decimal) -> bool {
    plan.cures
        .iter()
        .any(|grams| step.over(*grams).is_none_or(|moved| moved > TOO_MUCH))
}

/// Cure and salt to make a premix of `needed` grams with on this scale, and the proportion by which its strength
/// may be off.
pub fn making(needed: Decimal, parts: u32, step: Decimal) -> Option<(Decimal, Decimal, Decimal)> {
    let parts = Decimal::from(parts);
    let cure = needed.over(parts)?.max(step.times(STEPS_IN_PREMIX)?).up_to(step)?;
    let salt = cure.times(parts.less(Decimal::ONE)?)?;
    let half = step.over(Decimal::TWO)?;
    let spread = half.over(cure)?.plus(half.over(cure.times(parts)?)?)?;
    Some((cure, salt, spread))
}

/// What to make a premix of.
pub fn premix(needed: Decimal, parts: u32, step: Decimal) -> Option<Premix> {
    let (cure, salt, _) = making(needed, parts, step)?;
    Some(Premix {
        parts,
        cure: on_scale(cure, step),
        salt: on_scale(salt, step),
    })
}

/// The notice, with the ways out.
pub fn notice(range: &Ppm, plan: &Plan, step: Decimal, premix: Option<(u32, (u32, u32))>) -> Coarse {
    let cure = plan.cures.iter().min().copied().unwrap_or_default();
    let thinned = premix.map(|(_, (low, high))| CoarseWay::Premix { low, high });
    let pool = CoarseWay::Pool { from: enough(step) };
    Coarse {
        cure: format!("{} g", plain(cure.half_away(2))),
        step: format!("{} g", plain(step)),
        low: range.low,
        high: range.high,
        ways: thinned.into_iter().chain([CoarseWay::FinerScale, pool]).collect(),
        premix_parts: premix.map(|(parts, _)| parts),
        premix_range: premix.map(|(_, range)| range),
    }
}

/// The least cure that one step moves by no more than 15 %.
fn enough(step: Decimal) -> Figure {
    on_scale(
        step.over(TOO_MUCH).and_then(|g| g.up_to(step)).unwrap_or_default(),
        step,
    )
}
