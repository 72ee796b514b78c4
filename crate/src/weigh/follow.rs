//! Aims that follow the rule: those of the recipes that come with the page, which were written for one jurisdiction.

use crate::dose::Rule;
use crate::pantry::PPM;
use crate::quantity::Fraction;
use crate::quantity::exact::Exact;
use crate::recipe::Recipe;
use rust_decimal::{Decimal, dec};
use std::borrow::Cow;

/// Room that an aim keeps to least and limit, as a proportion: a scale has steps. Judgement.
const ROOM: Decimal = dec!(0.05);

/// The recipe with an aim that the rule has room for, where its own is a proposal and the rule has none for it.
pub fn followed<'a>(recipe: &'a Recipe, rule: &Rule) -> Cow<'a, Recipe> {
    let [cure] = recipe.cures.as_slice() else {
        return Cow::Borrowed(recipe);
    };
    if !cure.follows || cure.nitrite.base().is_zero() || has_room(cure.aim, rule) == Some(true) {
        return Cow::Borrowed(recipe);
    }
    let Some(aim) = middle(rule) else {
        return Cow::Borrowed(recipe);
    };
    let mut other = recipe.clone();
    other.cures.iter_mut().for_each(|c| c.aim = aim);
    Cow::Owned(other)
}

fn has_room(aim: Fraction, rule: &Rule) -> Option<bool> {
    let aim = aim.base().times(PPM)?;
    let least = rule.least.times(Decimal::ONE.plus(ROOM)?)?;
    let most = rule.limit.times(Decimal::ONE.less(ROOM)?)?;
    Some(aim >= least && aim <= most)
}

/// Between least and limit, to ten ppm where that is between them too, else to one.
fn middle(rule: &Rule) -> Option<Fraction> {
    let middle = rule.least.plus(rule.limit)?.over(Decimal::TWO)?;
    let tens = middle.down_to(dec!(10))?;
    let ppm = if tens > rule.least {
        tens
    } else {
        middle.down_to(Decimal::ONE)?
    };
    Fraction::new(ppm.over(PPM)?).ok()
}
