//! What would bring a dose that is already on the meat in range. Each figure is judged again before it is promised.

use super::case::Case;
use super::formula::{Whole, cure_for};
use super::outcome::Outcome;
use crate::pantry::{Agent, PPM};
use crate::quantity::exact::Exact;
use crate::quantity::{Range, System};
use crate::recipe::{Counted, Method};
use rust_decimal::{Decimal, dec};

/// Raw meat beside what is there that brings the middle of the range to the middle between least and limit, and all of it
/// in range: rounded up to 10 g or to a whole ounce, finer where only that fits. `None` where no amount does, or where the dose does not go by the weight of the meat.
pub fn more_meat(case: &Case<'_>) -> Option<Decimal> {
    let evens_out = matches!(case.whole.counted, Counted::Green | Counted::GreenAndPickle);
    thinned_by(case, evens_out.then_some(Decimal::ONE)?, Case::with_meat)
}

/// Water beside what is in the brine that does the same. It has to go in before the brine does its work.
pub fn more_water(case: &Case<'_>) -> Option<Decimal> {
    thinned_by(case, case.whole.grows()?.0, Case::with_water)
}

/// Half-way between the least and the limit, ppm: what is aimed at where there is a choice.
fn middle(case: &Case<'_>) -> Option<Decimal> {
    case.rule.least.plus(case.rule.limit)?.over(Decimal::TWO)
}

/// The grams of something that bring the dose to the middle, where each adds `grows` grams to what it is counted on.
fn thinned_by<'a>(
    case: &Case<'a>,
    grows: Decimal,
    with: impl Fn(&Case<'a>, Decimal) -> Option<Case<'a>>,
) -> Option<Decimal> {
    let found = case.ingoing()?;
    let now = case.whole.base()?.low;
    let needed = |high: Decimal, limit: Decimal| high.times(now)?.over(limit);
    let counted = if case.rule.together {
        found.nitrite.plus(found.nitrate)?
    } else {
        found.nitrite
    };
    let centre = counted.low.plus(counted.high)?.over(Decimal::TWO)?;
    let nitrate = match case.rule.nitrate {
        Some(limit) if !case.rule.together && limit > Decimal::ZERO => needed(found.nitrate.high, limit)?,
        _ => Decimal::ZERO,
    };
    let most = needed(counted.high, case.rule.limit)?.max(nitrate);
    let half = case.step.over(Decimal::TWO)?;
    let grains = match case.units {
        System::Metric => [dec!(10), dec!(1)],
        System::Us => [dec!(28.349523125), dec!(2.8349523125)],
    };
    // What comes in is weighed too, and may be short by half a step.
    let good = |base: Decimal, grain: Decimal| {
        let grams = base.less(now)?.over(grows)?.plus(half)?.up_to(grain.max(case.step))?;
        (outcome(&with(case, grams)?) == Outcome::InRange).then_some(grams)
    };
    // Where what goes in does not thin alike at both ends, the middle may not fit and the limit may.
    let bases = [most.max(needed(centre, middle(case)?)?), most];
    let find = |base: Decimal| grains.into_iter().find_map(|grain| good(base, grain));
    bases.into_iter().filter(|base| *base > now).find_map(find)
}

/// Grams of the same cure to add so that the whole range lies between the least and the limits; `None` where the
/// range is too wide for that.
pub fn more_cure(case: &Case<'_>) -> Option<Decimal> {
    let (agent, found, base) = (agent(case)?, case.ingoing()?, case.whole.base()?);
    let strength = agent.nitrite.times(PPM)?;
    let half = case.step.over(Decimal::TWO)?;
    // Nitrite that is missing at the low end and nitrite that still fits at the high end, each over the strength.
    let missing = case
        .rule
        .least
        .less(found.nitrite.low)?
        .times(base.high)?
        .over(strength)?;
    let fits = case
        .rule
        .limit
        .less(found.nitrite.high)?
        .times(base.low)?
        .over(strength)?;
    let middle = missing
        .plus(half)?
        .plus(fits.less(half)?)?
        .over(Decimal::TWO)?
        .down_to(case.step)?;
    let good = middle > Decimal::ZERO && outcome(&case.with_cure(agent, middle)?) == Outcome::InRange;
    good.then_some(middle)
}

/// Least and most grams of a cure, weighed on the scale, that are in range on meat with no other cure; `None` where
/// none are.
pub fn in_range(alone: &Case<'_>, agent: Agent) -> Option<(Decimal, Decimal)> {
    let half = alone.step.over(Decimal::TWO)?;
    let strength = agent.nitrite.times(PPM)?;
    // In a brine the cure's own weight counts too.
    let (base, (low, high)) = (alone.whole.base()?, alone.whole.grows()?);
    let grams = |ppm: Decimal, base: Decimal, grows: Decimal| ppm.times(base)?.over(strength.less(ppm.times(grows)?)?);
    let least = grams(alone.rule.least, base.high, high)?
        .plus(half)?
        .up_to(alone.step)?;
    let most = grams(alone.rule.limit, base.low, low)?
        .less(half)?
        .down_to(alone.step)?;
    let good = |grams| Some(outcome(&alone.with_cure(agent, grams)?) == Outcome::InRange);
    (least <= most && good(least)? && good(most)?).then_some((least, most))
}

/// What the recipes that come with the page aim at, ppm.
pub const AIM: u32 = 150;

/// An aim for which the list weighed on this scale is in range: that of all recipes where it lies under the limit, or in the
/// middle between least and limit, to ten ppm, or where the steps of the scale miss both, the whole ppm of a weight that it
/// shows. `None` where no weight on it is in range, or where there is more than one cure.
pub fn aim(case: &Case<'_>) -> Option<Decimal> {
    let [portion] = case.portions.as_slice() else {
        return None;
    };
    let (agent, mut alone) = (agent(case)?, case.without_cure()?);
    let (usual, middle) = (Decimal::from(AIM), middle(case)?.down_to(dec!(10))?);
    let grams = |whole: Whole, pickle: Decimal, aim: Decimal| {
        let pickle = Range::point(pickle);
        let whole = Whole { pickle, ..whole };
        cure_for(&whole, &[(agent, aim.over(PPM)?)], false)?
            .pop()?
            .down_to(case.step)
    };
    let mut pickle = alone.whole.pickle;
    let about = grams(alone.whole, pickle.typical, usual.max(middle))?;
    let mut off = Decimal::ZERO;
    if case.method == Method::Ground {
        // For the least it is counted over all that goes in, itself included; and the fat in the list is not yet rounded to
        // the scale where the aim becomes grams.
        alone.whole.green.high = alone.whole.green.high.plus(about)?;
        off = case.step;
    }
    let bare = alone.clone();
    if case.method.has_brine() {
        // More cure than all else in the brine is no brine.
        if about > pickle.low {
            return None;
        }
        // The recipe takes the salt of its cure off its salt: by how much that moves is not known here.
        pickle.low = pickle.low.less(about)?;
        pickle.high = pickle.high.plus(portion.weight.typical)?;
        alone.whole.pickle = pickle;
    }
    let does = |pickle: Decimal, off: Decimal, aim: Decimal| {
        let mut whole = alone.whole;
        whole.green.typical = whole.green.typical.plus(off)?;
        let mut then = alone.with_cure(agent, grams(whole, pickle, aim)?)?;
        then.portions.iter_mut().for_each(|p| p.spread = portion.spread);
        Some(outcome(&then) == Outcome::InRange)
    };
    let under = Decimal::ZERO.less(off)?;
    let good = |aim: &Decimal| {
        let ends = [(pickle.low, under), (pickle.high, off)];
        ends.iter().all(|(pickle, off)| does(*pickle, *off, *aim) == Some(true))
    };
    let shown = || {
        let (least, most) = in_range(&bare, agent)?;
        let middle = least.plus(most)?.over(Decimal::TWO)?.down_to(case.step)?;
        let aim_of = |grams: Decimal| {
            let found = bare.with_cure(agent, grams)?.ingoing()?;
            found.nitrite.typical.up_to(Decimal::ONE)
        };
        [middle, most, least].into_iter().filter_map(aim_of).find(good)
    };
    // At the limit itself this weight may be in range and the next one over it by the scale.
    let usual = Some(usual).filter(|usual| *usual < case.rule.limit);
    let found = usual.into_iter().chain([middle]).find(|aim| good(aim));
    found.or_else(shown)
}

/// The agent of the first portion that holds nitrite.
pub(super) fn agent(case: &Case<'_>) -> Option<Agent> {
    case.portions
        .iter()
        .filter_map(|p| p.agent)
        .find(|a| !a.nitrite.is_zero())
}

fn outcome(case: &Case<'_>) -> Outcome {
    case.ingoing()
        .map_or(Outcome::CannotTell, |found| case.find(found).outcome)
}
