//! A verdict: never a bare number. Range, limit, basis, source, word and next step.

use super::case::{Case, Put};
use super::formula::Ingoing;
use super::judge::{Finding, UNKNOWN, axis, find, ppm};
use super::next_step::{slip, steps};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Mass, Problem, fixed, plain};
use crate::recipe::Method;
use rust_decimal::Decimal;
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
    /// Cautions that stand beside the figure.
    pub cautions: Vec<Caution>,
}

/// Judges a case.
///
/// # Errors
/// [`Code::TooLarge`] where the figures leave the range of exact arithmetic.
pub fn judge(case: &Case<'_>, cautions: Vec<Caution>) -> Result<Verdict, Problem> {
    let ingoing = case.ingoing();
    let lost = || {
        Problem::new(
            Code::TooLarge,
            "These weights are too far apart to reckon exactly. Check each of them.",
        )
    };
    let known = matches!(&case.put, Put::Weighed(_)) || matches!(&case.put, Put::Measured(m) if m.agent.is_some());
    if known && ingoing.is_none() {
        return Err(lost());
    }
    let finding = match (&ingoing, &case.put) {
        (_, Put::NoCure) => Finding {
            word: "No cure in it",
            ..UNKNOWN
        },
        (Some(ingoing), _) if case.weighed => find(*ingoing, case.profile, case.eaten),
        _ => UNKNOWN,
    };
    let unknown_strength = matches!(&case.put, Put::Measured(m) if m.agent.is_none());
    let high = ingoing.map_or(Decimal::ZERO, |i| i.nitrite.high);
    Ok(Verdict {
        outcome: finding.outcome,
        sure: finding.sure,
        word: finding.word.to_owned(),
        mark: finding.mark,
        says: says(case, finding, ingoing.as_ref()),
        held: finding.outcome == Outcome::Over || unknown_strength,
        nitrite: ingoing.map(|i| ppm(i.nitrite)),
        nitrate: ingoing
            .filter(|i| i.nitrate.high > Decimal::ZERO)
            .map(|i| ppm(i.nitrate)),
        least: case.profile.least,
        limit: case.profile.limit,
        axis: axis(high, case.profile.limit),
        basis: match case.method {
            Method::Rub => "Ingoing sodium nitrite, counted on green weight.".to_owned(),
            Method::CoverBrine => "Ingoing sodium nitrite, counted on green weight and brine together.".to_owned(),
        },
        profile: case.profile.name.to_owned(),
        source: case.profile.source.to_owned(),
        next: steps(case, finding),
        cautions,
    })
}

/// One or two plain sentences: the fact, then what the range comes from.
fn says(case: &Case<'_>, finding: Finding, ingoing: Option<&Ingoing>) -> String {
    let green = Mass::new(case.green.typical)
        .map(|m| m.show(case.units).text)
        .unwrap_or_default();
    let whole = match case.method {
        Method::Rub => green.clone(),
        Method::CoverBrine => {
            let base = Mass::new(case.base.typical)
                .map(|m| m.show(case.units).text)
                .unwrap_or_default();
            format!("{green} of meat in {base} of meat and brine")
        }
    };
    let step = plain(case.step);
    match &case.put {
        Put::NoCure => "Nothing here holds nitrite or nitrate.".to_owned(),
        Put::Weighed(_) if !case.weighed => "Some pieces have no weight yet, so the dose is an estimate.".to_owned(),
        Put::Weighed(dosed) => {
            let cure = dosed
                .iter()
                .try_fold(Decimal::ZERO, |sum, d| sum.plus(d.weight.typical))
                .unwrap_or_default();
            let cure = plain(cure);
            if finding.outcome == Outcome::CannotTell {
                return format!(
                    "{cure} g of cure on {whole}. Above {} ppm this rule counts the finished meat, and what goes in cannot decide it.",
                    case.profile.limit
                );
            }
            format!("{cure} g of cure on {whole}. The scale steps by {step} g, so the dose lies between these ends.")
        }
        Put::Measured(m) if m.agent.is_none() => format!("{} of a cure of unknown strength on {whole}.", m.said),
        Put::Measured(m) => {
            let range = m.spoon.map_or_else(
                || format!("{} of cure on {whole}.", m.said),
                |_| {
                    let [low, typical, high] = [m.weight.low, m.weight.typical, m.weight.high].map(|g| fixed(g, 1));
                    format!(
                        "{} of cure holds {low} to {high} g, usually {typical} g, and it went on {whole}.",
                        m.said
                    )
                },
            );
            let slipped = ingoing
                .filter(|_| finding.outcome == Outcome::Over)
                .and_then(|i| slip(case, m, i.nitrite));
            slipped.map_or(range.clone(), |s| format!("{range} {s}"))
        }
    }
}
