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
///
/// ```
/// use cure_reckoner::dose::rule;
/// use cure_reckoner::pantry::Belly;
/// use cure_reckoner::recipe::{Method, Recipe};
/// use cure_reckoner::weigh::followed;
/// let recipe: Recipe = serde_json::from_value(serde_json::json!({
///     "name": "Salt and cure", "tag": "SC", "method": "rub",
///     "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "150 ppm", "follows": true}],
/// })).unwrap();
/// let aim = |key| followed(&recipe, rule(key, Method::Rub, Belly::No).unwrap()).cures[0].aim.ppm().text;
/// assert_eq!(aim("us-home"), "150 ppm");
/// // Between 40 and 119 ppm lies 79.5, and 70 is the whole ten under it.
/// assert_eq!(aim("eu"), "70 ppm");
/// ```
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
