//! Spoons and scale of the user's own.

use super::model::Fact;
use super::settings::Settings;
use crate::dose::OwnSpoon;
use crate::pantry;
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Mass, Problem, Range, Volume, fixed, plain};
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

/// A spoon as it is kept, and in words.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SpoonSheet {
    /// To keep in the settings.
    pub spoon: OwnSpoon,
    /// `4.9 to 5.6 g, usually 5.2 g`
    pub says: String,
    /// How it compares with the general range, and what the range comes from.
    pub why: String,
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
    /// `Fits`, `Does not fit`.
    pub word: String,
    /// True where every reading fits.
    pub fits: bool,
    /// One row for each check.
    pub rows: Vec<Fact>,
    /// What to do.
    pub says: String,
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
    Problem::new(
        Code::TooLarge,
        "These weights are too large to reckon exactly. Check each of them.",
    )
}

/// Works out a level spoon from its weighings.
///
/// # Errors
/// The problems of the settings and the weights, at their fields.
pub fn spoon(ask: &AskSpoon) -> Result<SpoonSheet, Vec<Problem>> {
    let mut problems = ask.settings.problems();
    let item = pantry::ingredient(&ask.item);
    let named = item
        .map(|i| i.name)
        .or_else(|| pantry::own_name(&ask.item).filter(|n| recipe::name(n).is_ok()));
    if named.is_none() {
        problems.push(
            Problem::new(
                Code::Unknown,
                "This is not in the pantry. Choose from the list, or type its name.",
            )
            .at("item"),
        );
    }
    let fine = !ask.weights.is_empty() && ask.weights.iter().all(|w| !w.base().is_zero());
    let counted = ask
        .count
        .is_none_or(|n| (2..=50).contains(&n) && ask.weights.len() == 1);
    if !fine || ask.weights.len() > MOST || !counted || (ask.count.is_none() && ask.weights.len() < 3) {
        problems.push(
            Problem::new(
                Code::Missing,
                "Weigh ten level spoons, one by one or all together. Type each weight, three at least, or one weight and how many it was.",
            )
            .at("weights"),
        );
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
    let from = if ask.count.is_some() {
        "One weighing of all together shows no spread: 15 % either way is our own judgement."
    } else {
        "The least and the most that were weighed, with a quarter of the distance beyond each."
    };
    let name = if ask.tablespoon { "tablespoon" } else { "teaspoon" };
    Ok(SpoonSheet {
        says: format!(
            "{} to {} g, usually {} g",
            fixed(range.low, 2),
            fixed(range.high, 2),
            fixed(range.typical, 2)
        ),
        why: match general {
            Some(g) => format!(
                "{from} In general a level {name} of {} is {} to {} g.",
                named.to_lowercase(),
                fixed(g.low, 1),
                fixed(g.high, 1)
            ),
            None => from.to_owned(),
        },
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
pub fn scale(ask: &AskScale) -> Result<ScaleSheet, Vec<Problem>> {
    let mut problems = ask.settings.problems();
    let step = ask.settings.scale_step.base();
    if ask.checks.is_empty() || ask.checks.len() > MOST {
        problems.push(
            Problem::new(
                Code::Missing,
                "Type at least one known weight and what the scale shows.",
            )
            .at("checks"),
        );
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
    Ok(ScaleSheet {
        word: if fits { "Fits" } else { "Does not fit" }.to_owned(),
        says: if fits {
            "Within its step and what the known weight may be off. Check it again after a fall, a new battery or a cold night."
        } else {
            "Set it level on something hard, change the battery, set it to nought and try again. If it stays so, weigh no cure on it: borrow another."
        }
        .to_owned(),
        fits,
        rows,
    })
}

fn one(known: &str, reads: Decimal, step: Decimal) -> Result<(bool, Fact), Problem> {
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
            Fact {
                label: format!("{} shows {} g", known.trim(), plain(reads)),
                value: format!("{sign}{} g, {sign}{} %", plain(off.half_away(2)), plain(percent)),
            },
        ))
    };
    row().ok_or_else(|| {
        Problem::new(
            Code::TooSmall,
            "A known weight is above nought. Type it, such as 100 g, or 50 ml of water.",
        )
    })
}
