//! Packs that are heavier than the meat in them can be.

use crate::batch::{Batch, green};
use crate::quantity::exact::Exact;
use crate::quantity::{Figure, Mass, System};
use rust_decimal::{Decimal, dec};
use serde::Serialize;

/// A rub adds next to nothing, and what is smoked or dried gets lighter (judgement).
const GAIN: Decimal = dec!(1.1);
/// Out of a brine meat is up to a quarter heavier (judgement).
const BRINE_GAIN: Decimal = dec!(1.25);

/// What the packs weigh beside their meat.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct TooHeavy {
    /// Of those that are weighed, in all.
    pub packs: Figure,
    /// The meat before its cure.
    pub meat: Figure,
}

/// What they weigh in all; nothing where there are none.
pub(super) fn in_all(packs: &[Mass]) -> Option<Mass> {
    let sum = packs
        .iter()
        .try_fold(Decimal::ZERO, |sum, pack| sum.plus(pack.base()))?;
    Mass::new(sum).ok().filter(|_| !packs.is_empty())
}

/// Nothing where they may weigh so much, or where the meat was not weighed.
pub(super) fn too_heavy(batch: &Batch, packs: Option<Mass>, units: System) -> Option<TooHeavy> {
    let green = green(&batch.pieces).ok().filter(|g| g.known)?;
    let gain = if batch.recipe.method.has_brine() {
        BRINE_GAIN
    } else {
        GAIN
    };
    let most = green.grams.high.times(gain)?;
    let packs = packs.filter(|packs| packs.base() > most)?;
    Some(TooHeavy {
        packs: packs.show(units),
        meat: Mass::new(green.grams.typical).ok()?.show(units),
    })
}
