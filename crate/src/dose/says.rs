//! What is said beside the word: what goes in, on what it is counted, and what the range comes from.

use super::case::{Case, Portion};
use super::evens::Evens;
use super::formula::Ingoing;
use super::ground::Ground;
use super::judge::Finding;
use super::outcome::Outcome;
use super::ppm::{PpmEnds, ends, whole_ppm};
use super::remark::{CountedOn, DoseRemark};
use super::slip::slips;
use crate::quantity::exact::Exact;
use crate::quantity::{Mass, Span, plain};
use crate::recipe::Counted;
use rust_decimal::{Decimal, dec};

/// The remarks on a case, in the order in which they are said.
pub fn says(case: &Case<'_>, finding: Finding, ingoing: Option<&Ingoing>) -> Vec<DoseRemark> {
    if case.portions.is_empty() {
        return vec![DoseRemark::NothingHolds];
    }
    if !case.weighed {
        return vec![DoseRemark::Estimate];
    }
    let mut list = vec![DoseRemark::GoesIn {
        portions: case.portions.iter().map(Portion::told).collect(),
        on: counted_on(case),
        only_asked: !case.is_done() && finding.outcome == Outcome::Over,
    }];
    if finding.ground == Ground::NitrateNotAllowed {
        list.push(if case.rule.nitrate_raw_only {
            DoseRemark::NitrateRawOnly
        } else {
            DoseRemark::NitrateForbidden
        });
    }
    if let Some(strong) = case.strongest().filter(|_| case.is_lethal()) {
        let nitrite = plain(strong);
        list.push(DoseRemark::PureSalt { nitrite });
    }
    list.extend(why(case, finding, ingoing));
    list.extend(trap(case).into_iter().flatten());
    let asked = ingoing.map(|i| slips(case, i.nitrite)).unwrap_or_default();
    list.extend(asked.into_iter().map(|slip| DoseRemark::Slip { key: slip.key }));
    list
}

/// What is not known or not decided; else what the range comes from.
fn why(case: &Case<'_>, finding: Finding, ingoing: Option<&Ingoing>) -> Option<DoseRemark> {
    if case.is_unknown() {
        return Some(DoseRemark::StrengthUnknown);
    }
    if finding.outcome == Outcome::CannotTell && !case.is_no_cure() {
        return Some(if ingoing.is_some_and(|i| i.nitrite.high.is_zero()) {
            DoseRemark::NitrateAlone
        } else if finding.ground == Ground::NeedsAccelerator {
            let ppm = case.rule.ascorbate.map(whole_ppm).unwrap_or_default();
            DoseRemark::AscorbateLacks { ppm }
        } else if finding.ground == Ground::NitrateNoFigure {
            DoseRemark::NitrateNoFigure
        } else {
            let limit = whole_ppm(case.rule.limit);
            DoseRemark::FinishedDecides { limit }
        });
    }
    if case.spoon().is_some() {
        return None;
    }
    let steps = case.portions.iter().map(|p| p.step);
    let told = ingoing.map(|i| if i.nitrite.high.is_zero() { i.nitrate } else { i.nitrite })?;
    Some(DoseRemark::ScaleStep {
        step: plain(steps.fold(case.step, Decimal::max)),
        range: ends(told),
    })
}

/// What the dose is counted on.
fn counted_on(case: &Case<'_>) -> CountedOn {
    let show = |grams: Decimal| Mass::new(grams).map(|m| m.show(case.units).text).unwrap_or_default();
    let whole = case.whole;
    let (green, brine) = (show(whole.green.typical), show(whole.pickle.typical));
    let percent = percent(case).unwrap_or_default();
    match whole.counted {
        Counted::Green => CountedOn::Meat { green },
        Counted::Taken | Counted::TakenOrDiffused => CountedOn::Brine { brine, percent },
        _ if !whole.take.is_zero() && case.evens.is_none() => CountedOn::Pumped { green, brine, percent },
        _ => {
            let all = whole.green.typical.plus(whole.pickle.typical);
            let all = show(all.unwrap_or(whole.green.typical));
            CountedOn::Both { green, all }
        }
    }
}

/// The share that goes in, per cent of green weight.
fn percent(case: &Case<'_>) -> Option<String> {
    case.whole.take.times(Decimal::ONE_HUNDRED).map(plain)
}

/// Both figures of a brine that only counts by pick-up if the pieces leave it before they are equal with it.
fn trap(case: &Case<'_>) -> Option<Vec<DoseRemark>> {
    let figure = |counted| -> Option<PpmEnds> { Some(ends(case.by(counted).ingoing()?.nitrite)) };
    let both = DoseRemark::PickUp {
        percent: percent(case)?,
        taken: figure(Counted::Taken)?,
        equal: figure(Counted::GreenAndPickle)?,
    };
    let time = |hours: Decimal| {
        let span = Span::new(hours.times(dec!(60))?.down_to(Decimal::ONE)?).ok()?;
        Some(span.show(case.units).text)
    };
    Some(match case.evens? {
        Evens::Thin(hours) => vec![DoseRemark::EqualAfter { time: time(hours)? }, both],
        Evens::Unknown => vec![DoseRemark::EqualUnknown, both],
        Evens::Thick { soonest, .. } => {
            let range = figure(Counted::TakenOrDiffused)?;
            let surface = case
                .surface()
                .map(|range| DoseRemark::Surface { most: ends(range).high });
            let mut list = vec![both];
            if case.is_diffused() {
                list.push(DoseRemark::Diffuses { range });
                list.extend(surface);
            } else {
                list.extend(surface);
                list.push(DoseRemark::EqualNotBefore { time: time(soonest)? });
            }
            list
        }
    })
}
