//! Which next steps an outcome has, with their figures.

use super::case::{Case, Portion};
use super::ground::Ground;
use super::judge::Finding;
use super::next::NextStep;
use super::outcome::Outcome;
use super::ppm::{PpmEnds, ends};
use super::remark::CureAs;
use super::rescue::{agent, in_range, more_cure, more_meat, more_water};
use crate::pantry::Agent;
use crate::quantity::{Mass, plain};
use rust_decimal::prelude::ToPrimitive;
use rust_decimal::{Decimal, dec};

/// What to do next, the first first. `aim`: one for the recipe that does, where there is one.
pub fn steps(case: &Case<'_>, finding: Finding, aim: Option<Decimal>) -> Vec<NextStep> {
    if case.portions.is_empty() || case.is_no_cure() {
        return no_cure(case);
    }
    if case.is_unknown() {
        return vec![NextStep::FindPacket, NextStep::NoPacket, NextStep::KeepColdMeanwhile];
    }
    if case.is_lethal() && case.is_done() {
        return vec![NextStep::ReadPrintAgain, NextStep::ThrowOutPure, NextStep::AtePure];
    }
    if !case.weighed {
        return vec![NextStep::WeighPieces];
    }
    let method = case.method;
    let aim = aim.map(whole);
    let least = whole(case.rule.least);
    let within = PpmEnds {
        low: least,
        high: whole(case.rule.limit),
    };
    match (case.is_done(), finding.outcome) {
        (done, Outcome::CannotTell) if finding.ground == Ground::NeedsAccelerator => ascorbate(case, done),
        (true, Outcome::Over) => over(case, finding.sure),
        (true, Outcome::TooLittle) => too_little(case),
        (true, Outcome::InRange) => in_place(case),
        (true, Outcome::CannotTell) => vec![NextStep::MeasureFirst, NextStep::LabelUnmeasured],
        (false, Outcome::CannotTell) => {
            let aim = NextStep::AimAtLimit {
                nitrite: within.high,
                nitrate: case.rule.nitrate.map(whole).unwrap_or_default(),
            };
            vec![aim, NextStep::OrMeasure]
        }
        (false, Outcome::Over) if case.is_refused() => vec![NextStep::CoverBrineInstead, NextStep::SayThickness],
        (false, Outcome::Over) => vec![NextStep::LowerAim { aim, within }, NextStep::CheckPieces],
        // The usual figure is all right and only the scale's step takes it under.
        (false, Outcome::TooLittle) if !finding.sure => {
            vec![NextStep::FinerScaleOrPremix { least }, NextStep::KeepFresh]
        }
        (false, Outcome::TooLittle) => vec![NextStep::RaiseAim { aim, within }, NextStep::KeepFresh],
        (false, Outcome::InRange) => vec![NextStep::UseIt { method }],
    }
}

/// An aim, a least or a limit: each is in whole ppm.
fn whole(ppm: Decimal) -> u32 {
    ppm.to_u32().unwrap_or(u32::MAX)
}

fn no_cure(case: &Case<'_>) -> Vec<NextStep> {
    let put_in = !case.portions.is_empty();
    let mut list = vec![NextStep::TreatAsFresh { put_in }];
    list.extend(cure_now(case));
    list
}

/// Where nothing that was put in holds any: how much of the usual cure would be in range.
fn cure_now(case: &Case<'_>) -> Option<NextStep> {
    let usual = Agent {
        nitrite: dec!(6.25),
        nitrate: Decimal::ZERO,
        water: Decimal::ZERO,
    };
    let done = case.portions.first().filter(|_| case.weighed)?;
    let (least, most) = in_range(case, usual)?;
    Some(NextStep::CureNow {
        least: plain(least),
        most: plain(most),
        stays: done.said.clone(),
    })
}

fn ascorbate(case: &Case<'_>, done: bool) -> Vec<NextStep> {
    let ppm = case.rule.ascorbate.map(whole).unwrap_or_default();
    let first = if done {
        NextStep::TellAscorbate { ppm }
    } else {
        NextStep::AddAscorbate { ppm }
    };
    vec![first, NextStep::FryGently]
}

fn in_place(case: &Case<'_>) -> Vec<NextStep> {
    let mut list = vec![NextStep::LeaveCure { method: case.method }];
    if let Some(portion) = case.portions.iter().find(|p| p.spoon().is_some()) {
        let said = portion.said.clone();
        list.push(NextStep::WriteOnBag { said });
    }
    list
}

/// Grams in the reader's units.
fn grams(case: &Case<'_>, value: Decimal) -> String {
    Mass::new(value).map(|m| m.show(case.units).text).unwrap_or_default()
}

/// How to settle a spoon by weighing one, with the weights that are in range.
fn weigh_the_spoon(case: &Case<'_>) -> Option<NextStep> {
    let (spoon, (least, most)) = (case.spoon()?, in_range(&case.without_cure()?, agent(case)?)?);
    Some(NextStep::WeighSpoon {
        spoon,
        least: plain(least),
        most: plain(most),
    })
}

fn over(case: &Case<'_>, sure: bool) -> Vec<NextStep> {
    let mut list = vec![NextStep::DoNotTaste];
    list.extend(weigh_the_spoon(case).filter(|_| !sure));
    let spread: Vec<NextStep> = [spread_it(case), water_it(case)].into_iter().flatten().collect();
    // Where no amount of meat or water fits so wide a range: what would narrow it.
    if spread.is_empty() && list.len() == 1 {
        list.extend(case.spoon().map(|spoon| NextStep::NarrowSpoon { spoon }));
    }
    list.extend(spread);
    let brine = case.method.has_brine();
    list.extend([NextStep::ThrowOut { brine }, NextStep::SomeoneAte]);
    list
}

/// More raw meat, with the range that it leads to.
fn spread_it(case: &Case<'_>) -> Option<NextStep> {
    let extra = more_meat(case)?;
    Some(NextStep::MoreMeat {
        method: case.method,
        weight: grams(case, extra),
        then: ends(case.with_meat(extra)?.ingoing()?.nitrite),
    })
}

/// More water in a brine, with the range that it leads to.
fn water_it(case: &Case<'_>) -> Option<NextStep> {
    let extra = more_water(case)?;
    Some(NextStep::MoreWater {
        method: case.method,
        weight: grams(case, extra),
        then: ends(case.with_water(extra)?.ingoing()?.nitrite),
    })
}

/// What was weighed, which is not always the cure of the bag.
fn weighed_as(case: &Case<'_>) -> CureAs {
    let with_nitrite = |p: &&Portion| p.agent.is_some_and(|agent| !agent.nitrite.is_zero());
    let first = case.portions.iter().find(with_nitrite);
    first.map_or(CureAs::Cure, Portion::measured_as)
}

fn too_little(case: &Case<'_>) -> Vec<NextStep> {
    let more = more_cure(case).map(|add| NextStep::MoreCure {
        of: weighed_as(case),
        grams: plain(add),
        method: case.method,
    });
    let first = more.or_else(|| weigh_the_spoon(case)).unwrap_or(NextStep::FinerScale);
    vec![first, NextStep::KeepFresh]
}
