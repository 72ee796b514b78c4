//! A verdict: never a bare number. Range, limit, basis, source, word and next step.

use super::case::{Case, Portion};
use super::evens::Evens;
use super::formula::Ingoing;
use super::ground::Ground;
use super::judge::{Finding, UNKNOWN, axis, ppm, undecided};
use super::limits::Status;
use super::next_step::steps;
use super::rescue::{aim, more_meat};
use super::slip::slips;
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Figure, Mass, Problem, Span, fixed, plain};
use crate::recipe::{Counted, MayHold, Method};
use rust_decimal::prelude::ToPrimitive;
use rust_decimal::{Decimal, dec};
use serde::Serialize;

/// What can be said of a dose.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// All of the range lies between the least and the limit.
    InRange,
    /// Some of the range lies under the least, none over the limit.
    TooLittle,
    /// Some of the range lies over the limit.
    Over,
    /// Something that is needed is not known, or the rule does not decide it.
    CannotTell,
}

/// The shape beside the word.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Mark {
    /// Disc with a tick.
    Ok,
    /// Triangle.
    Care,
    /// Octagon with a bar.
    Stop,
    /// Open diamond.
    Ask,
}

/// A range in ppm, rounded outward to whole ppm for reading.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Ppm {
    /// The least it may be, rounded down.
    pub low: u32,
    /// What it usually is, to the nearest.
    pub typical: u32,
    /// The most it may be, rounded up.
    pub high: u32,
    /// The same three, exact to four decimals: `["145.6797", "147.8041", "149.9307"]`.
    pub exact: [String; 3],
}

/// One thing to do next.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Advice {
    /// The act, in a few words.
    pub head: String,
    /// Why, and with which figures.
    pub text: String,
}

/// A caution that stands beside a figure.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Caution {
    /// Stable key, such as `nitrite-locked`.
    pub key: &'static str,
    /// One or two short sentences.
    pub text: &'static str,
    /// Where it comes from, with its status.
    pub source: &'static str,
}

/// More raw meat for a dose that is over.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct MoreMeat {
    /// How much more, in the person's units: to the middle between least and limit.
    pub weight: Figure,
    /// Ingoing nitrite over all of the meat then.
    pub then: Ppm,
}

/// The verdict on a dose.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Verdict {
    /// What can be said.
    pub outcome: Outcome,
    /// What that rests on, the deciding one first.
    pub grounds: Vec<Ground>,
    /// True when all of the range supports it; false for "may be".
    pub sure: bool,
    /// The word: `In range`, `May be over`, `Stop: over the limit`, `Cannot say yet`.
    pub word: String,
    /// The shape beside it.
    pub mark: Mark,
    /// One or two plain sentences.
    pub says: String,
    /// True when nothing may be done with the batch until its numbers change.
    pub held: bool,
    /// Ingoing nitrite and nitrate, exact; nothing when they cannot be reckoned.
    #[serde(skip)]
    pub ingoing: Option<Ingoing>,
    /// Ingoing nitrite. Nothing when it cannot be reckoned.
    pub nitrite: Option<Ppm>,
    /// Ingoing nitrate, where the agent holds any.
    pub nitrate: Option<Ppm>,
    /// Of what is taken out of a strong brine before it evens out: the nitrite at the surface then.
    pub surface: Option<Ppm>,
    /// The effective least, in ppm of sodium nitrite.
    pub least: u32,
    /// The limit, in ppm of sodium nitrite.
    pub limit: u32,
    /// Right end of the picture's axis, in ppm: 300, 700, 1500 …
    pub axis: u32,
    /// What was reckoned over what: `Ingoing sodium nitrite on green weight`.
    pub basis: String,
    /// Name of the jurisdiction's rule.
    pub profile: String,
    /// Limit and least with where they are published.
    pub source: String,
    /// What to do next, the first first.
    pub next: Vec<Advice>,
    /// Of a dose that is on the meat and over: the raw meat that would bring it in range. Nothing where no amount is known
    /// to, an unweighed spoon above all.
    pub more_meat: Option<MoreMeat>,
    /// An aim for the recipe, `160 ppm`, with which the same list is in range on this scale; while nothing is on the meat
    /// yet and the aim it has does not do.
    pub aim: Option<String>,
    /// Cautions that stand beside the figure.
    pub cautions: Vec<Caution>,
    /// What may hold nitrite or nitrate and is not counted.
    pub may_hold: Vec<MayHold>,
}

/// Judges a case.
///
/// # Errors
/// [`Code::TooLarge`] where the figures leave the range of exact arithmetic.
pub fn judge(case: &Case<'_>, cautions: Vec<Caution>) -> Result<Verdict, Problem> {
    let ingoing = case.ingoing();
    if ingoing.is_none() && !case.is_unknown() {
        return Err(Problem::new(
            Code::TooLarge,
            "These weights are too far apart to reckon exactly. Check each of them.",
        ));
    }
    let ingoing = ingoing.filter(|_| !case.portions.is_empty());
    let finding = match ingoing {
        _ if case.portions.is_empty() || case.is_no_cure() => undecided("No cure in it", Ground::NoCure),
        None => undecided("Cannot say yet", Ground::StrengthUnknown),
        Some(ingoing) if case.weighed => case.find(ingoing),
        Some(_) => UNKNOWN,
    };
    // What is on the meat and cannot be vouched for is held, not only what is surely over. What lacks ascorbate lacks
    // nothing that would keep it from being safe in the refrigerator.
    let doubtful = case.is_done()
        && finding.outcome == Outcome::CannotTell
        && finding.ground != Ground::NeedsAccelerator
        && case.weighed;
    // Before anything is on the meat the recipe itself can change.
    let changeable = !case.is_done() && !case.is_refused();
    let aim = if changeable && matches!(finding.outcome, Outcome::Over | Outcome::TooLittle) {
        aim(case)
    } else {
        None
    };
    Ok(Verdict {
        outcome: finding.outcome,
        grounds: grounds(case, finding),
        sure: finding.sure,
        word: finding.word.to_owned(),
        mark: finding.mark,
        says: says(case, finding, ingoing.as_ref()),
        held: finding.outcome == Outcome::Over || case.is_unknown() || case.is_lethal() || doubtful,
        ingoing,
        nitrite: ingoing.map(|i| ppm(i.nitrite)),
        nitrate: ingoing
            .filter(|i| i.nitrate.high > Decimal::ZERO)
            .map(|i| ppm(i.nitrate)),
        surface: surface(case),
        least: case.rule.least.ceil().to_u32().unwrap_or(u32::MAX),
        limit: whole_ppm(case.rule.limit),
        axis: axis(ingoing.map_or(Decimal::ZERO, |i| i.nitrite.high), case.rule.limit),
        basis: match case.evens {
            Some(Evens::Thin(_)) => Method::CoverBrine.words().basis.to_owned(),
            Some(Evens::Unknown) => format!("{} {}", case.method.words().basis, Method::CoverBrine.words().basis),
            _ => case.method.words().basis.to_owned(),
        },
        profile: case.rule.name.to_owned(),
        source: if case.rule.status == Status::Memory {
            format!(
                "{} Its status is memory: it has not been seen, and “in range” rests on the published US limit for home curing as well.",
                case.rule.source
            )
        } else {
            case.rule.source.to_owned()
        },
        next: steps(case, finding, aim),
        more_meat: (finding.outcome == Outcome::Over && case.is_done())
            .then(|| more_meat(case))
            .flatten()
            .and_then(|grams| {
                Some(MoreMeat {
                    weight: Mass::new(grams).ok()?.show(case.units),
                    then: ppm(case.with_meat(grams)?.ingoing()?.nitrite),
                })
            }),
        aim: aim.map(|aim| format!("{} ppm", plain(aim))),
        cautions,
        may_hold: Vec::new(),
    })
}

/// What the finding rests on, and what else is found of the case.
fn grounds(case: &Case<'_>, finding: Finding) -> Vec<Ground> {
    let evens = match case.evens {
        Some(Evens::Thin(_)) => Some(Ground::EvensOut),
        Some(Evens::Unknown) => Some(Ground::MayEvenOut),
        Some(Evens::Thick { .. }) if case.is_diffused() => Some(Ground::DiffusesIn),
        _ => None,
    };
    let more = [
        evens,
        case.is_unknown().then_some(Ground::StrengthUnknown),
        case.is_lethal().then_some(Ground::StrengthLethal),
        (!case.weighed).then_some(Ground::NotWeighed),
        case.lacks_ascorbate().then_some(Ground::NeedsAccelerator),
        case.is_done().then_some(Ground::IsIn),
    ];
    let mut list = vec![finding.ground];
    list.extend(more.into_iter().flatten().filter(|g| *g != finding.ground));
    list
}

/// At the surface it is as strong as the brine, for what is taken out before it evens out.
fn surface(case: &Case<'_>) -> Option<Ppm> {
    matches!(case.evens?, Evens::Thick { .. }).then_some(())?;
    let mut there = case.by(Counted::Taken);
    there.whole.take = Decimal::ONE;
    Some(ppm(there.ingoing()?.nitrite))
}

/// Whole ppm, downward, for reading.
fn whole_ppm(ppm: Decimal) -> u32 {
    ppm.floor().to_u32().unwrap_or_default()
}

/// One or two plain sentences: the fact, then what the range comes from.
fn says(case: &Case<'_>, finding: Finding, ingoing: Option<&Ingoing>) -> String {
    if case.portions.is_empty() {
        return "Nothing here holds nitrite or nitrate.".to_owned();
    }
    if !case.weighed {
        return "Some pieces have no weight yet, so the dose is an estimate.".to_owned();
    }
    let show = |grams: Decimal| Mass::new(grams).map(|m| m.show(case.units).text).unwrap_or_default();
    let whole = case.whole;
    let (green, pickle) = (show(whole.green.typical), show(whole.pickle.typical));
    let taken = plain(whole.take.times(Decimal::ONE_HUNDRED).unwrap_or_default());
    let whole = match whole.counted {
        Counted::Green => format!("on {green}"),
        Counted::Taken | Counted::TakenOrDiffused => {
            format!("in {pickle} of brine, of which {taken} % of green weight goes in")
        }
        _ if !whole.take.is_zero() && case.evens.is_none() => {
            format!("on {green} of meat and {pickle} of pickle, {taken} % of green weight pumped")
        }
        _ => format!(
            "on {green} of meat, {} with its brine",
            show(
                whole
                    .green
                    .typical
                    .plus(whole.pickle.typical)
                    .unwrap_or(whole.green.typical)
            )
        ),
    };
    let parts: Vec<String> = case.portions.iter().map(said).collect();
    let mut text = format!("{} {whole}.", parts.join(" and "));
    if !case.is_done() && finding.outcome == Outcome::Over {
        text = format!("The list asks for {text} Nothing of it is on the meat yet.");
    }
    if finding.ground == Ground::NitrateNotAllowed {
        text.push_str(if case.rule.nitrate_raw_only {
            " By this rule nitrate goes only into what is not heat-treated."
        } else {
            " By this rule no nitrate goes into it."
        });
    }
    if let Some(strong) = case.strongest().filter(|_| case.is_lethal()) {
        text.push_str(&format!(
            " {} % nitrite is the strength of the pure salt and not of a cure for the kitchen: is it a slip of the comma? Read the packet again. If it is true, this meat can kill: nobody tastes it, and whoever ate of it rings the poison centre at once, with signs or without.",
            plain(strong)
        ));
    }
    if case.is_unknown() {
        text.push_str(" The strength of the cure is not known.");
    } else if finding.outcome == Outcome::CannotTell && !case.is_no_cure() {
        let nitrate_only = ingoing.is_some_and(|i| i.nitrite.high.is_zero());
        text.push_str(&if nitrate_only {
            " Nitrate alone works only as it slowly turns to nitrite; the rule gives no least for it.".to_owned()
        } else if finding.ground == Ground::NeedsAccelerator {
            format!(
                " The dose lies between least and limit, and this rule wants {} ppm of sodium ascorbate or erythorbate with it, which is not in what was told.",
                case.rule.ascorbate.map(plain).unwrap_or_default()
            )
        } else if finding.ground == Ground::NitrateNoFigure {
            " This rule gives no figure for nitrate.".to_owned()
        } else {
            format!(
                " Above {} ppm this rule counts the finished meat, and what goes in cannot decide it.",
                whole_ppm(case.rule.limit)
            )
        });
    } else if case.spoon().is_none() {
        let steps = case.portions.iter().map(|p| p.step);
        let step = steps.fold(case.step, Decimal::max);
        let told = ingoing.map(|i| if i.nitrite.high.is_zero() { i.nitrate } else { i.nitrite });
        if let Some(Ppm { low, high, .. }) = told.map(ppm) {
            text.push_str(&format!(
                " The scale steps by {} g, so the dose is {low} to {high} ppm.",
                plain(step)
            ));
        }
    }
    text.push_str(&trap(case).unwrap_or_default());
    for asked in ingoing.map(|i| slips(case, i.nitrite)).unwrap_or_default() {
        text.push(' ');
        text.push_str(asked);
    }
    text
}

/// Both figures of a brine that only counts by pick-up if the pieces leave it before they are equal with it.
fn trap(case: &Case<'_>) -> Option<String> {
    let figure = |counted| {
        let range = ppm(case.by(counted).ingoing()?.nitrite);
        Some(if range.low == range.high {
            format!("{} ppm", range.typical)
        } else {
            format!("{} to {} ppm", range.low, range.high)
        })
    };
    let (taken, equal) = (figure(Counted::Taken)?, figure(Counted::GreenAndPickle)?);
    let percent = plain(case.whole.take.times(Decimal::ONE_HUNDRED)?);
    let soon = |hours: Decimal| Span::new(hours.times(dec!(60))?.down_to(Decimal::ONE)?).ok();
    let soon = |hours| soon(hours).map(|s| s.show(case.units).text);
    let both = format!("By pick-up at {percent} % it is {taken}; left until meat and brine are equal, {equal}.");
    Some(match case.evens? {
        Evens::Thin(hours) => format!(
            " Pick-up is no basis here: the thinnest piece can be equal with the brine after {}. {both}",
            soon(hours)?
        ),
        Evens::Thick { soonest, .. } => {
            let diffused = figure(Counted::TakenOrDiffused)?;
            let surface =
                surface(case).map(|p| format!(" At the surface it is {} ppm until it has evened out.", p.high));
            let surface = surface.unwrap_or_default();
            if case.is_diffused() {
                format!(
                    " {both} By the time it comes out it may be {diffused}, by the speeds of the cure clock; the larger counts.{surface}"
                )
            } else {
                format!(
                    " {both}{surface} No piece is equal with the brine before {}: take all of it out on time, and not later.",
                    soon(soonest)?
                )
            }
        }
        Evens::Unknown => format!(
            " Whether pick-up is a basis cannot be said without the thickest part of every class and the time in the brine. {both}"
        ),
    })
}

/// `3.5 g of cure`, `35.5 g of premix (3.55 g of cure)`, `1 tbsp of cure (12.6 to 24.9 g, usually 17.0 g)`.
fn said(portion: &Portion) -> String {
    if let Some(parts) = portion.parts {
        let neat = portion
            .weight
            .typical
            .over(Decimal::from(parts))
            .map(|g| plain(g.half_away(2)))
            .unwrap_or_default();
        return format!("{} of premix ({neat} g of cure)", portion.said);
    }
    if portion.spoon().is_some() {
        let [low, typical, high] =
            [portion.weight.low, portion.weight.typical, portion.weight.high].map(|g| fixed(g, 1));
        return format!("{} of cure ({low} to {high} g, usually {typical} g)", portion.said);
    }
    format!("{} of cure", portion.said)
}
