//! A verdict: never a bare number. Range, limit, basis, source, word and next step, as facts.

use super::case::Case;
use super::evens::Evens;
use super::formula::Ingoing;
use super::ground::Ground;
use super::judge::{Finding, UNKNOWN, undecided};
use super::next::NextStep;
use super::next_step::steps;
use super::outcome::{Mark, Outcome};
use super::ppm::{Ppm, axis, ppm, whole_ppm};
use super::remark::{DoseRemark, VerdictWord};
use super::rescue::{aim, more_meat};
use super::says::says;
use crate::pantry::Status;
use crate::quantity::{Code, Figure, Mass, Problem, Wrong, plain};
use crate::recipe::{MayHold, Method};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::Serialize;

/// A caution that stands beside a figure.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Caution {
    /// Stable key, such as `nitrite-locked`; the page has its words.
    #[cfg_attr(feature = "types", ts(type = "CautionKey"))]
    pub key: &'static str,
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
    /// Its word.
    pub word: VerdictWord,
    /// The shape beside it.
    pub mark: Mark,
    /// What is said beside the word, in this order.
    pub says: Vec<DoseRemark>,
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
    /// The methods by which it is counted: two where it is not known which.
    pub basis: Vec<Method>,
    /// Key of the jurisdiction.
    #[cfg_attr(feature = "types", ts(type = "ProfileKey"))]
    pub profile: &'static str,
    /// Limit and least with where they are published.
    pub source: &'static str,
    /// How well that is known; by a limit from memory nothing is in range that is not so by the published one too.
    pub status: Status,
    /// What to do next, the first first.
    pub next: Vec<NextStep>,
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
///
/// ```
/// use cure_reckoner::dose::{Case, Kit, VerdictWord, Whole, judge, measured, rule};
/// use cure_reckoner::pantry::{Agent, Belly};
/// use cure_reckoner::quantity::{Range, System};
/// use cure_reckoner::recipe::{Counted, Eaten, Method};
/// use rust_decimal::{Decimal, dec};
///
/// let cure = Agent { nitrite: dec!(6.25), nitrate: dec!(0), water: dec!(0) };
/// let (green, pickle) = (Range::point(dec!(1000)), Range::point(Decimal::ZERO));
/// let case = Case {
///     rule: rule("us-home", Method::Rub, Belly::No).unwrap(),
///     eaten: Eaten::Cooked,
///     method: Method::Rub,
///     whole: Whole { counted: Counted::Green, green, pickle, take: Decimal::ZERO, fo: None },
///     water: Decimal::ZERO,
///     evens: None,
///     ascorbate: None,
///     weighed: true,
///     portions: vec![measured("2.5 g", Some(cure), Kit::PLAIN).unwrap()],
///     step: dec!(0.1),
///     units: System::Metric,
/// };
/// let verdict = judge(&case, Vec::new()).unwrap();
/// assert_eq!(verdict.word, VerdictWord::InRange);
/// // 2.45 × 62.5 and 2.55 × 62.5: what a scale of 0.1 g leaves open of 156.25 ppm.
/// let nitrite = verdict.nitrite.unwrap();
/// assert_eq!((nitrite.low, nitrite.high), (153, 160));
/// ```
pub fn judge(case: &Case<'_>, cautions: Vec<Caution>) -> Result<Verdict, Problem> {
    let ingoing = case.ingoing();
    if ingoing.is_none() && !case.is_unknown() {
        return Err(Problem::of(Code::TooLarge, Wrong::TooFarApart));
    }
    let ingoing = ingoing.filter(|_| !case.portions.is_empty());
    let finding = match ingoing {
        _ if case.portions.is_empty() || case.is_no_cure() => undecided(VerdictWord::NoCure, Ground::NoCure),
        None => undecided(VerdictWord::CannotSayYet, Ground::StrengthUnknown),
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
        word: finding.word,
        mark: finding.word.mark(),
        says: says(case, finding, ingoing.as_ref()),
        held: finding.outcome == Outcome::Over || case.is_unknown() || case.is_lethal() || doubtful,
        ingoing,
        nitrite: ingoing.map(|i| ppm(i.nitrite)),
        nitrate: ingoing
            .filter(|i| i.nitrate.high > Decimal::ZERO)
            .map(|i| ppm(i.nitrate)),
        surface: case.surface().map(ppm),
        least: case.rule.least.ceil().to_u32().unwrap_or(u32::MAX),
        limit: whole_ppm(case.rule.limit),
        axis: axis(ingoing.map_or(Decimal::ZERO, |i| i.nitrite.high), case.rule.limit),
        basis: match case.evens {
            Some(Evens::Thin(_)) => vec![Method::CoverBrine],
            Some(Evens::Unknown) => vec![case.method, Method::CoverBrine],
            _ => vec![case.method],
        },
        profile: case.rule.key,
        source: case.rule.source,
        status: case.rule.status,
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
