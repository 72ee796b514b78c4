//! The same recipe by another method: each line of salt or sugar is carried by what of it comes into the meat.

use super::method::Method;
use super::model::{Line, Recipe, Share};
use crate::pantry::{self, Group};
use crate::quantity::Fraction;
use crate::quantity::exact::Exact;
use rust_decimal::{Decimal, dec};

/// Water of a new brine that covers its meat, per cent of green weight. Common practice, no source.
const COVERS: Decimal = dec!(60);
/// Share of green weight that is pumped where nothing is said: 10 %, as the rules for plants take it (9 CFR 424.21(c), quoted).
const PUMP: Decimal = dec!(10);
/// Pickle for a pump beside what goes in: a fifth more stays in the needle and leaks. Judgement.
const SPARE: Decimal = dec!(1.2);
/// The strongest that a pickle is made of its own accord, salt as a proportion of all of it: about 80 degrees of the salometer
/// with no sugar in it; a saturated one is 26.4 % (quoted). Judgement.
const STRONGEST: Decimal = dec!(0.2);
/// And salt and sugar together. Judgement.
const THICKEST: Decimal = dec!(0.35);

/// The recipe turned to a method. `None` where its shares are too large to reckon.
pub fn turned(recipe: &Recipe, method: Method) -> Option<Recipe> {
    let take = recipe.take.filter(|t| !t.base().is_zero());
    let take = take.map_or_else(|| Fraction::new(PUMP).ok(), Some)?;
    let per_cent = |f: Decimal| f.over(Decimal::ONE_HUNDRED);
    // What of each line comes into the meat, as a proportion of it.
    let mut comes = recipe
        .lines
        .iter()
        .map(|line| comes_in(recipe, line))
        .collect::<Option<Vec<_>>>()?;
    let mut water = None;
    if method.takes() {
        // Now as a proportion of the pickle.
        let taken = per_cent(take.base())?;
        let group = |wanted: Group, comes: &[Option<Decimal>]| {
            let lines = recipe.lines.iter().zip(comes);
            let mut some = lines.filter(|(line, _)| group(line) == wanted).filter_map(|(_, c)| *c);
            some.try_fold(Decimal::ZERO, |sum, one| sum.plus(one))
        };
        let (salt, sugar) = (
            group(Group::Salt, &comes)?.over(taken)?,
            group(Group::Sugar, &comes)?.over(taken)?,
        );
        let weaker = |of: Decimal, most: Decimal| if of > most { most.over(of) } else { Some(Decimal::ONE) };
        let salted = weaker(salt, STRONGEST)?;
        let all = weaker(salt.times(salted)?.plus(sugar)?, THICKEST)?;
        let mut solid = Decimal::ZERO;
        for (line, comes) in recipe.lines.iter().zip(&mut comes) {
            let Some(one) = comes else { continue };
            let salted = if self::group(line) == Group::Salt {
                salted
            } else {
                Decimal::ONE
            };
            *one = one.over(taken)?.times(salted)?.times(all)?;
            solid = solid.plus(*one)?;
        }
        let rest = Decimal::ONE.less(solid)?;
        for one in comes.iter_mut().flatten() {
            *one = one.over(rest)?;
        }
        let needed = take.base().times(SPARE)?.times(rest)?;
        water = Some(if method == Method::Pumped {
            needed.up_to(dec!(0.1))?
        } else {
            COVERS
        });
    } else if method.has_brine() {
        water = Some(COVERS);
    }
    let share = |amount: Decimal| {
        let amount = Fraction::new(amount.times(Decimal::ONE_HUNDRED)?.nearest(dec!(0.01))?).ok()?;
        Some(match method {
            _ if method.takes() => Share::Brine(amount),
            Method::CoverBrine => Share::MeatAndWater(amount),
            _ => Share::GreenWeight(amount),
        })
    };
    let mut lines = Vec::with_capacity(recipe.lines.len().saturating_add(1));
    if let Some(water) = water {
        lines.push(Line {
            item: "water".to_owned(),
            name: String::new(),
            allergens: String::new(),
            agent: super::Holds::Unknown,
            share: Share::GreenWeight(Fraction::new(water).ok()?),
        });
    }
    let dry = recipe.lines.iter().zip(comes).filter(|(line, _)| !line.is_water());
    for (line, comes) in dry {
        let share = match (comes, line.share) {
            (Some(amount), _) => share(amount)?,
            (None, Share::Piece(each)) => Share::Piece(each),
            (None, Share::GreenWeight(f) | Share::MeatAndWater(f) | Share::Brine(f)) => Share::GreenWeight(f),
        };
        lines.push(Line { share, ..line.clone() });
    }
    Some(Recipe {
        method,
        take: method.takes().then_some(take),
        lines,
        ..recipe.clone()
    })
}

fn group(line: &Line) -> Group {
    pantry::ingredient(&line.item).map_or(Group::Spice, |i| i.group)
}

/// What of a line of salt or sugar comes into the meat, as a proportion of its weight. `Some(None)` for all else, and for
/// what goes by the piece.
fn comes_in(recipe: &Recipe, line: &Line) -> Option<Option<Decimal>> {
    if !matches!(group(line), Group::Salt | Group::Sugar) {
        return Some(None);
    }
    let method = recipe.method;
    let per_cent = |f: Fraction| f.base().over(Decimal::ONE_HUNDRED);
    let mut water = recipe.lines.iter().filter(|l| l.is_water());
    let water = water.try_fold(Decimal::ZERO, |sum, l| match l.share {
        Share::GreenWeight(f) => sum.plus(per_cent(f)?),
        _ => Some(sum),
    })?;
    let on_meat = |share: Share| match share {
        Share::GreenWeight(f) => Some(Some(per_cent(f)?)),
        Share::MeatAndWater(f) => Some(Some(per_cent(f)?.times(Decimal::ONE.plus(water)?)?)),
        Share::Brine(f) => Some(Some(per_cent(f)?.times(water)?)),
        Share::Piece(_) => Some(None),
    };
    let Some(own) = on_meat(line.share)? else {
        return Some(None);
    };
    if !method.has_brine() {
        return Some(Some(own));
    }
    if !method.takes() {
        return Some(own.over(Decimal::ONE.plus(water)?));
    }
    let mut solids = recipe
        .lines
        .iter()
        .filter(|l| matches!(group(l), Group::Salt | Group::Sugar));
    let pickle = solids.try_fold(water, |sum, l| sum.plus(on_meat(l.share)?.unwrap_or_default()))?;
    Some(own.times(recipe.taken())?.over(pickle))
}
