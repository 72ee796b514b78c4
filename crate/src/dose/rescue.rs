//! What would bring a dose that is already on the meat in range. Each figure is judged again before it is promised.

use super::case::Case;
use super::verdict::Outcome;
use crate::pantry::{Agent, PPM};
use crate::quantity::System;
use crate::quantity::exact::Exact;
use rust_decimal::{Decimal, dec};

/// Raw meat beside what is there, so that even the heaviest reading is within the limits: rounded up to 10 g or to
/// a whole ounce. `None` where it is within them already.
pub fn more_meat(case: &Case<'_>) -> Option<Decimal> {
    let found = case.ingoing()?;
    let now = case.whole.base()?;
    let needed = |high: Decimal, limit: Decimal| high.times(now.low)?.over(limit);
    let counted = if case.rule.together {
        found.nitrite.high.plus(found.nitrate.high)?
    } else {
        found.nitrite.high
    };
    let nitrate = match case.rule.nitrate {
        Some(limit) if !case.rule.together && limit > Decimal::ZERO => needed(found.nitrate.high, limit)?,
        _ => Decimal::ZERO,
    };
    let base = needed(counted, case.rule.limit)?.max(nitrate);
    let extra = base.less(now.low)?;
    let grain = match case.units {
        System::Metric => dec!(10),
        System::Us => dec!(28.349523125),
    };
    let extra = (extra > Decimal::ZERO).then(|| extra.up_to(grain)).flatten()?;
    (outcome(&case.with_meat(extra)?) != Outcome::Over).then_some(extra)
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

/// Least and most grams of a cure alone, weighed on the scale, that are in range on this meat; `None` where none are.
pub fn in_range(case: &Case<'_>, agent: Agent) -> Option<(Decimal, Decimal)> {
    let alone = case.without_cure()?;
    let half = case.step.over(Decimal::TWO)?;
    let strength = agent.nitrite.times(PPM)?;
    // In a brine the cure's own weight counts too.
    let (base, (low, high)) = (alone.whole.base()?, alone.whole.grows()?);
    let grams = |ppm: Decimal, base: Decimal, grows: Decimal| ppm.times(base)?.over(strength.less(ppm.times(grows)?)?);
    let least = grams(case.rule.least, base.high, high)?.plus(half)?.up_to(case.step)?;
    let most = grams(case.rule.limit, base.low, low)?.less(half)?.down_to(case.step)?;
    let good = |grams| Some(outcome(&alone.with_cure(agent, grams)?) == Outcome::InRange);
    (least <= most && good(least)? && good(most)?).then_some((least, most))
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
