//! Spoons and scale of the cook's own.

use super::settings::Settings;
use crate::dose::OwnSpoon;
use crate::pantry::{self, ItemName, OWN};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Mass, Problem, Range, Volume, Wrong, fixed, plain};
use crate::recipe;
use rust_decimal::{Decimal, dec};
use serde::{Deserialize, Serialize};

/// Content of `spoon`: level spoons that were weighed.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskSpoon {
    /// Key in the pantry of what was in them.
    pub item: String,
    /// True for a tablespoon.
    pub tablespoon: bool,
    /// Weights, one for each spoon, or one for `count` together.
    #[cfg_attr(feature = "types", ts(type = "string[]"))]
    pub weights: Vec<Mass>,
    /// How many went onto the scale together; nothing where each was weighed.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "number | null", optional))]
    pub count: Option<u32>,
    /// The user's settings.
    pub settings: Settings,
}

/// A spoon as it is kept, and what it rests on.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SpoonSheet {
    /// To keep in the settings.
    pub spoon: OwnSpoon,
    /// Least, usual and most of one spoon in grams, for reading: `4.90`.
    pub holds: [String; 3],
    /// Only the sum was weighed: 15 % either way is a judgement. Else least and most, with a quarter of the distance beyond.
    pub together: bool,
    /// What was in it.
    pub of: ItemName,
    /// What such a spoon of it holds in general in grams, least and most.
    pub general: Option<[String; 2]>,
}

/// Content of `scale`: what it shows for what is known.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskScale {
    /// A known weight, `100 g`, or water from a syringe or a measuring jug, `50 ml`; and what the scale shows.
    #[cfg_attr(feature = "types", ts(type = "[string, string][]"))]
    pub checks: Vec<(String, Mass)>,
    /// The user's settings.
    pub settings: Settings,
}

/// How far the scale is off.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ScaleSheet {
    /// True where every reading fits: within its step, and what the known weight may be off.
    pub fits: bool,
    /// One row for each check.
    pub rows: Vec<ScaleRow>,
}

/// What a scale shows for one known weight.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ScaleRow {
    /// The known weight, as it was typed.
    pub known: String,
    /// What the scale shows.
    pub reads: String,
    /// By how much it is off, `+0.4 g`.
    pub off: String,
    /// The same in per cent of the known weight.
    pub percent: String,
}

/// Most spoons in one weighing.
const MOST: usize = 50;
/// Where only the sum is known, one spoon is taken to be this much off the mean either way (judgement).
const TOGETHER: Decimal = dec!(0.15);
/// Grams of water to the millilitre at 20 °C, weighed in air (published, CRC Handbook).
const WATER: Decimal = dec!(0.997);
/// By how much a syringe or a jug may be off (judgement).
const JUG: Decimal = dec!(0.03);

pub(super) fn lost() -> Problem {
    Problem::of(Code::TooLarge, Wrong::TooLargeToReckon)
}

/// Works out a level spoon from its weighings.
///
/// # Errors
/// The problems of the settings and the weights, at their fields.
///
/// ```
/// use cure_reckoner::weigh::{AskSpoon, spoon};
/// let ask: AskSpoon = serde_json::from_value(serde_json::json!({
///     "item": "cure-1", "tablespoon": false, "weights": ["5.0 g", "5.1 g", "5.2 g"],
///     "settings": {"scale_step": "0.1 g", "profile": "us-home"},
/// })).unwrap();
/// // A quarter of the distance beyond, 0.05 g, and half a step of the scale, 0.05 g.
/// assert_eq!(spoon(&ask).unwrap().holds, ["4.90", "5.10", "5.30"]);
/// ```
pub fn spoon(ask: &AskSpoon) -> Result<SpoonSheet, Vec<Problem>> {
    let mut problems = ask.settings.problems();
    let item = pantry::ingredient(&ask.item);
    let own = pantry::own_name(&ask.item).filter(|n| recipe::name(n).is_ok());
    let named = item
        .map(|i| ItemName::of(i.key, ""))
        .or_else(|| own.map(|name| ItemName::of(OWN, name)));
    if named.is_none() {
        problems.push(Problem::of(Code::Unknown, Wrong::SpoonOfWhat).at("item"));
    }
    let fine = !ask.weights.is_empty() && ask.weights.iter().all(|w| !w.base().is_zero());
    let counted = ask
        .count
        .is_none_or(|n| (2..=50).contains(&n) && ask.weights.len() == 1);
    if !fine || ask.weights.len() > MOST || !counted || (ask.count.is_none() && ask.weights.len() < 3) {
        problems.push(Problem::of(Code::Missing, Wrong::SpoonWeights).at("weights"));
    }
    let (Some(named), true) = (named, problems.is_empty()) else {
        return Err(problems);
    };
    let range = spread(ask).ok_or_else(|| vec![lost()])?;
    let gram = |value: Decimal| Mass::new(value.half_away(3)).map_err(|p| vec![p]);
    let grams = [gram(range.low)?, gram(range.typical)?, gram(range.high)?];
    let general = item.and_then(|i| i.spoon?.range()).and_then(|r| {
        let each = if ask.tablespoon { dec!(3) } else { Decimal::ONE };
        r.map(|g| g.times(each))
    });
    Ok(SpoonSheet {
        holds: [range.low, range.typical, range.high].map(|g| fixed(g, 2)),
        together: ask.count.is_some(),
        of: named,
        general: general.map(|g| [g.low, g.high].map(|g| fixed(g, 1))),
        spoon: OwnSpoon {
            item: ask.item.trim().to_owned(),
            tablespoon: ask.tablespoon,
            grams,
        },
    })
}

/// Mean and spread of one spoon, with the scale's half-step.
fn spread(ask: &AskSpoon) -> Option<Range> {
    let half = ask.settings.scale_step.base().over(Decimal::TWO)?;
    let weights: Vec<Decimal> = ask.weights.iter().map(|w| w.base()).collect();
    let sum = weights.iter().try_fold(Decimal::ZERO, |sum, w| sum.plus(*w))?;
    let spoons = ask.count.map_or_else(|| u32::try_from(weights.len()).ok(), Some)?;
    let mean = sum.over(Decimal::from(spoons))?;
    let (low, high) = if ask.count.is_some() {
        let off = mean.times(TOGETHER)?.plus(half.over(Decimal::from(spoons))?)?;
        (mean.less(off)?, mean.plus(off)?)
    } else {
        let (least, most) = (weights.iter().min()?, weights.iter().max()?);
        let beyond = most.less(*least)?.over(dec!(4))?.plus(half)?;
        (least.less(beyond)?, most.plus(beyond)?)
    };
    // A thousandth outward, so that rounding never narrows it.
    Some(Range {
        low: low.down_to(dec!(0.001))?.max(Decimal::ZERO),
        typical: mean.half_away(3),
        high: high.up_to(dec!(0.001))?,
    })
}

/// Holds a scale against known weights or water.
///
/// # Errors
/// The problems of the settings, and of a known figure at `checks[i]`.
///
/// ```
/// use cure_reckoner::weigh::{AskScale, scale};
/// let ask: AskScale = serde_json::from_value(serde_json::json!({
///     "checks": [["100 g", "100.1 g"], ["20 g", "20.4 g"]],
///     "settings": {"scale_step": "0.1 g", "profile": "us-home"},
/// })).unwrap();
/// let sheet = scale(&ask).unwrap();
/// assert_eq!(sheet.rows[0].off, "+0.1 g");
/// assert_eq!(sheet.rows[1].percent, "+2 %");
/// assert!(!sheet.fits, "0.4 g is more than a step");
/// ```
pub fn scale(ask: &AskScale) -> Result<ScaleSheet, Vec<Problem>> {
    let mut problems = ask.settings.problems();
    let step = ask.settings.scale_step.base();
    if ask.checks.is_empty() || ask.checks.len() > MOST {
        problems.push(Problem::of(Code::Missing, Wrong::NoKnownWeight).at("checks"));
    }
    let (mut rows, mut fits) = (Vec::new(), true);
    for (i, (known, reads)) in ask.checks.iter().enumerate() {
        match one(known, reads.base(), step) {
            Ok((good, row)) => {
                fits &= good;
                rows.push(row);
            }
            Err(problem) => problems.push(problem.at(&format!("checks[{i}]"))),
        }
    }
    if !problems.is_empty() {
        return Err(problems);
    }
    Ok(ScaleSheet { fits, rows })
}

fn one(known: &str, reads: Decimal, step: Decimal) -> Result<(bool, ScaleRow), Problem> {
    let (grams, may) = match (Mass::read(known, None), Volume::read(known, None)) {
        (Ok(mass), _) => (Some(mass.base()), Decimal::ZERO),
        (_, Ok(water)) => (water.base().times(WATER), JUG),
        (Err(problem), _) => return Err(problem),
    };
    let row = || {
        let grams = grams.filter(|g| !g.is_zero())?;
        let off = reads.less(grams)?;
        let allowed = step.plus(grams.times(may)?)?;
        let percent = off.times(Decimal::ONE_HUNDRED)?.over(grams)?.half_away(1);
        let sign = if off.is_sign_negative() { "" } else { "+" };
        Some((
            off.abs() <= allowed,
            ScaleRow {
                known: known.trim().to_owned(),
                reads: format!("{} g", plain(reads)),
                off: format!("{sign}{} g", plain(off.half_away(2))),
                percent: format!("{sign}{} %", plain(percent)),
            },
        ))
    };
    row().ok_or_else(|| Problem::of(Code::TooSmall, Wrong::KnownWeightNought))
}
