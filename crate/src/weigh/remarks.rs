//! What is said beside the list.

use super::lines::{Rounded, line_name};
use super::plan::{self, Plan};
use crate::batch::Batch;
use crate::quantity::exact::Exact;
use crate::quantity::{fixed, plain};
use rust_decimal::{Decimal, dec};

/// Lines that the scale cannot show, and salt that the cure alone exceeds.
pub fn remarks(batch: &Batch, rounded: &Rounded, plan: &Plan) -> Vec<String> {
    let mut remarks = Vec::new();
    for ((line, exact), grams) in batch.recipe.lines.iter().zip(&rounded.exact).zip(&rounded.lines) {
        if grams.is_zero() && *exact > Decimal::ZERO {
            remarks.push(format!(
                "{}: {} g is less than this scale can show. Take it by the spoon, or weigh it on a finer scale.",
                line_name(line),
                plain(exact.half_away(2))
            ));
        }
    }
    let wanted = plan::salt_line(&batch.recipe).and_then(|i| plan.lines.get(i));
    match wanted {
        Some(wanted) if rounded.cure_salt > *wanted => remarks.push(format!(
            "The {} alone brings {} g of salt, more than the {} g aimed at. No more salt is needed.",
            if rounded.cures.iter().any(|c| c.parts.is_some()) || batch.recipe.cures.iter().any(|c| c.made.is_some()) {
                "premix"
            } else {
                "cure"
            },
            fixed(rounded.cure_salt, 1),
            fixed(*wanted, 1)
        )),
        None if rounded.cure_salt > dec!(0.05) => remarks.push(format!(
            "The recipe has no salt of its own; the cure brings {} g.",
            fixed(rounded.cure_salt, 1)
        )),
        _ => {}
    }
    if batch.recipe.cures.iter().any(|c| c.item == "cure-sweet") {
        remarks.push(
            "All of the cure but nitrite and nitrate is reckoned as salt. A sweet cure holds sugar too: taste a test slice."
                .to_owned(),
        );
    }
    if batch.recipe.cures.iter().any(|c| c.made.is_some_and(|m| m.in_water)) {
        remarks.push(
            "A stock in water is made for the day and stirred each time: pour away what is left, and make the next one as its label says."
                .to_owned(),
        );
    }
    remarks
}
