//! A verdict: never a bare number. Range, limit, basis, source, word and next step.

use super::case::{Case, Portion};
use super::evens::Evens;
use super::formula::Ingoing;
use super::judge::{Finding, UNKNOWN, axis, ppm};
use super::next_step::steps;
use super::rescue::aim;
use super::slip::slips;
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Mass, Problem, Span, fixed, plain};
use crate::recipe::{Counted, Method};
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

/// The verdict on a dose.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Verdict {
    /// What can be said.
    pub outcome: Outcome,
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
    /// Ingoing nitrite. Nothing when it cannot be reckoned.
    pub nitrite: Option<Ppm>,
    /// Ingoing nitrate, where the agent holds any.
    pub nitrate: Option<Ppm>,
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
    /// An aim for the recipe, `160 ppm`, with which the same list is in range on this scale; while nothing is on the meat
    /// yet and the aim it has does not do.
    pub aim: Option<String>,
    /// Cautions that stand beside the figure.
    pub cautions: Vec<Caution>,
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
        _ if case.portions.is_empty() || case.is_no_cure() => Finding {
            word: "No cure in it",
            ..UNKNOWN
        },
        Some(ingoing) if case.weighed => case.find(ingoing),
        _ => UNKNOWN,
    };
    // What is on the meat and cannot be vouched for is held, not only what is surely over.
    let doubtful = case.is_done() && finding.outcome == Outcome::CannotTell && case.weighed;
    // Before anything is on the meat the recipe itself can change.
    let changeable = !case.is_done() && !case.is_refused();
    let aim = if changeable && matches!(finding.outcome, Outcome::Over | Outcome::TooLittle) {
        aim(case)
    } else {
        None
    };
    Ok(Verdict {
        outcome: finding.outcome,
        sure: finding.sure,
        word: finding.word.to_owned(),
        mark: finding.mark,
        says: says(case, finding, ingoing.as_ref()),
        held: finding.outcome == Outcome::Over || case.is_unknown() || doubtful,
        nitrite: ingoing.map(|i| ppm(i.nitrite)),
        nitrate: ingoing
            .filter(|i| i.nitrate.high > Decimal::ZERO)
            .map(|i| ppm(i.nitrate)),
        least: whole_ppm(case.rule.least),
        limit: whole_ppm(case.rule.limit),
        axis: axis(ingoing.map_or(Decimal::ZERO, |i| i.nitrite.high), case.rule.limit),
        basis: match case.evens {
            Some(Evens::Thin(_)) => Method::CoverBrine.words().basis.to_owned(),
            Some(Evens::Unknown) => format!("{} {}", case.method.words().basis, Method::CoverBrine.words().basis),
            _ => case.method.words().basis.to_owned(),
        },
        profile: case.rule.name.to_owned(),
        source: if case.rule.status == "memory" {
            format!(
                "{} Its status is memory: it has not been seen, and “in range” rests on the published US limit for home curing as well.",
                case.rule.source
            )
        } else {
            case.rule.source.to_owned()
        },
        next: steps(case, finding, aim),
        aim: aim.map(|aim| format!("{} ppm", plain(aim))),
        cautions,
    })
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
        Counted::Taken => format!("in {pickle} of brine, of which {taken} % of green weight goes in"),
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
    if case.is_unknown() {
        text.push_str(" The strength of the cure is not known.");
    } else if finding.outcome == Outcome::CannotTell && !case.is_no_cure() {
        let nitrate_only = ingoing.is_some_and(|i| i.nitrite.high.is_zero());
        text.push_str(&if nitrate_only {
            " Nitrate alone works only as it slowly turns to nitrite; the rule gives no least for it.".to_owned()
        } else {
            format!(
                " Above {} ppm this rule counts the finished meat, and what goes in cannot decide it.",
                whole_ppm(case.rule.limit)
            )
        });
    } else if case.spoon().is_none() {
        let step = case.portions.iter().map(|p| p.step).max().unwrap_or(case.step);
        text.push_str(&format!(
            " The scale steps by {} g, so the dose lies between these ends.",
            plain(step)
        ));
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
        Evens::Thick(hours) => format!(
            " {both} No piece is equal with the brine before {}: take all of it out by then.",
            soon(hours)?
        ),
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
    if portion.spoon.is_some() {
        let [low, typical, high] =
            [portion.weight.low, portion.weight.typical, portion.weight.high].map(|g| fixed(g, 1));
        return format!("{} of cure ({low} to {high} g, usually {typical} g)", portion.said);
    }
    format!("{} of cure", portion.said)
}
