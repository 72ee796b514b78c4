//! What to buy for the recipes of a bag, beside what is in the house.

use super::facts::{InHouse, Wanted};
use super::model::{AskBag, Buy};
use super::show::{ends, show};
use crate::pack::{BAGS, came_and_went, named};
use crate::pantry::ItemName;
use crate::quantity::exact::Exact;
use crate::quantity::{Problem, Range, System};
use crate::recipe::Recipe;
use crate::weigh::{Plan, plan};
use rust_decimal::Decimal;

/// Cure, salt and spice are grams for everybody: a scale shows grams.
const KITCHEN: System = System::Metric;

/// A recipe with the green weight and the pieces that are for it.
pub type Share<'a> = (&'a Recipe, Range, u32);

/// Cure and lines of all recipes at both ends and in the middle, each thing once; then the bags.
///
/// # Errors
/// Those of the weigh-out.
pub fn shopping(shares: &[Share], ask: &AskBag) -> Result<Vec<Buy>, Problem> {
    let mut list: Vec<(&str, &str, Range)> = Vec::new();
    for (recipe, green, pieces) in shares {
        let at = |grams| plan(recipe, grams, *pieces, None);
        let all = [at(green.low)?, at(green.typical)?, at(green.high)?];
        let range = |pick: fn(&Plan) -> &Vec<Decimal>, i: usize| {
            let [low, typical, high] = [0, 1, 2].map(|n: usize| {
                let plan = all.get(n);
                plan.and_then(|p| pick(p).get(i)).copied().unwrap_or_default()
            });
            Range::new(low, typical, high)
        };
        let cures = recipe.cures.iter().enumerate();
        let cures = cures.map(|(i, cure)| (cure.item.as_str(), "", range(|p| &p.cures, i)));
        let lines = recipe.lines.iter().enumerate().filter(|(_, line)| !line.is_water());
        let lines = lines.map(|(i, line)| (line.item.as_str(), line.name.as_str(), range(|p| &p.lines, i)));
        for (item, name, range) in cures.chain(lines) {
            let of = named(item, name);
            match list.iter_mut().find(|(item, name, _)| named(item, name) == of) {
                Some((.., sum)) => *sum = sum.plus(range).unwrap_or(*sum),
                None => list.push((item, name, range)),
            }
        }
    }
    let mut buy: Vec<Buy> = list
        .into_iter()
        .map(|(item, name, range)| {
            let weight = ends(range, KITCHEN);
            one(
                Some(ItemName::of(item, name)),
                Wanted::Weight { weight },
                range.high,
                named(item, name),
                ask,
            )
        })
        .collect();
    buy.extend(ask.per_pack.filter(|_| !shares.is_empty()).map(|per| {
        let packs = shares.iter().map(|(.., pieces)| pieces.div_ceil(per.max(1)));
        let packs = packs.fold(0, u32::saturating_add);
        let wanted = Wanted::Bags {
            cure: shares.len(),
            packs,
            per: per.max(1),
        };
        let all = Decimal::from(packs)
            .plus(Decimal::from(shares.len()))
            .unwrap_or_default();
        one(None, wanted, all, (BAGS, ""), ask)
    }));
    Ok(buy)
}

/// Beside what is in the house: bags are counted, the rest is weighed.
fn one(item: Option<ItemName>, wanted: Wanted, most: Decimal, of: (&str, &str), ask: &AskBag) -> Buy {
    let said = |of_it: Decimal| {
        if of.0 == BAGS {
            of_it.normalize().to_string()
        } else {
            show(of_it, KITCHEN)
        }
    };
    let left =
        came_and_went(of, &ask.stock, &ask.batches.iter().collect::<Vec<_>>()).and_then(|(came, went)| came.less(went));
    let left = left.map(|l| l.max(Decimal::ZERO));
    let missing = left.and_then(|left| most.less(left)).filter(|m| *m > Decimal::ZERO);
    Buy {
        of: item,
        wanted,
        most: said(most),
        has: left.map(|left| InHouse {
            left: said(left),
            missing: missing.map(said),
        }),
    }
}
