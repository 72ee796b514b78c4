//! A scale that is too coarse for the dose, and the premix that is the way out.

use super::lines::on_scale;
use super::model::{Coarse, Premix};
use super::plan::Plan;
use crate::dose::{Advice, Ppm};
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

/// How to make and label a premix.
pub fn premix(needed: Decimal, parts: u32, step: Decimal) -> Option<Premix> {
    let (cure, salt, _) = making(needed, parts, step)?;
    let advice = |head: String, text: &str| Advice {
        head,
        text: text.to_owned(),
    };
    Some(Premix {
        parts,
        steps: vec![
            advice(
                format!(
                    "Weigh {} of cure and {} of salt of the same grain.",
                    on_scale(cure, step).text,
                    on_scale(salt, step).text
                ),
                "Each on its own, on this scale. Same grain, or the cure sinks to the bottom.",
            ),
            advice(
                "Shake it in a closed jar for two minutes.".to_owned(),
                "Shake it again each time before you weigh from it.",
            ),
            advice(
                format!("Label it: premix, 1 part cure in {parts}, with the date."),
                "It is still poisonous by the spoonful. Lock it away with the cure.",
            ),
        ],
        cure: on_scale(cure, step),
        salt: on_scale(salt, step),
    })
}

/// The notice, with the ways out.
pub fn notice(range: &Ppm, plan: &Plan, step: Decimal, premix: Option<(u32, (u32, u32))>) -> Coarse {
    let cure = plan.cures.iter().min().copied().unwrap_or_default();
    let mut ways = vec![Advice {
        head: "Borrow a finer scale.".to_owned(),
        text: "A pocket scale with 0.1 g steps, or 0.01 g for less than 300 g of meat.".to_owned(),
    }];
    if let Some((_, (low, high))) = premix {
        ways.insert(0, Advice {
            head: "Work with a premix.".to_owned(),
            text: format!("Cure thinned with salt is weighed in a larger amount. On this scale the dose then lies between {low} and {high} ppm."),
        });
    }
    ways.push(Advice {
        head: "Or pool the pieces.".to_owned(),
        text: format!(
            "More meat in one batch takes more cure; from {} of cure on, this scale is fine enough.",
            enough(step).text
        ),
    });
    Coarse {
        word: "Scale too coarse".to_owned(),
        says: format!(
            "The dose is {} g of cure and the scale steps by {} g. What it shows may mean {} to {} ppm.",
            plain(cure.half_away(2)),
            plain(step),
            range.low,
            range.high
        ),
        low: range.low,
        high: range.high,
        ways,
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
