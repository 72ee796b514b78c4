//! Cure thinned with salt or with water so that a coarse scale can weigh it: making, label, and what to keep of it.

use super::calibrate::lost;
use super::coarse::making;
use super::lines::on_scale;
use super::settings::Settings;
use crate::dose::{Advice, ingoing, ppm};
use crate::pantry::{Agent, MADE, Made};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Figure, Fraction, Mass, Problem, Range, plain};
use crate::recipe::Cure;
use rust_decimal::{Decimal, dec};
use serde::{Deserialize, Serialize};

/// Content of `stock`: cure thinned with salt or with water.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskStock {
    /// True for a solution in water, false for a premix with salt.
    pub in_water: bool,
    /// Sodium nitrite printed on the packet.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub nitrite: Fraction,
    /// Sodium nitrate printed on it; nothing for none.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub nitrate: Option<Fraction>,
    /// Ingoing nitrite to aim at.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub aim: Fraction,
    /// Green weight it is for.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub meat: Mass,
    /// The user's settings.
    pub settings: Settings,
}

/// How to make it and how much to take.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct StockSheet {
    /// Making, using, keeping.
    pub steps: Vec<Advice>,
    /// What to weigh of it for this meat.
    pub take: Figure,
    /// The dose with the cure weighed neat on this scale, `94 to 219 ppm`; and by way of this.
    pub ranges: [String; 2],
    /// Lines of the label.
    pub label: Vec<String>,
    /// To keep in the settings.
    pub mix: Cure,
}

/// One part in so many.
const PARTS: u32 = 10;

/// How to thin a cure so that this scale can weigh it.
///
/// # Errors
/// The problems of the settings and of the strength.
pub fn stock(ask: &AskStock) -> Result<StockSheet, Vec<Problem>> {
    let mut problems = ask.settings.problems();
    let agent = Agent::printed(ask.nitrite, ask.nitrate);
    problems.extend(agent.problem());
    if ask.meat.base().is_zero()
        || agent.nitrite.is_zero()
        || ask.aim.base().is_zero()
        || ask.aim.base() >= agent.nitrite
    {
        problems.push(
            Problem::new(
                Code::Conflict,
                "Meat, printed nitrite and aim are each above nought, and the aim below the print. Type them, such as 500 g, 6.25 % and 150 ppm.",
            )
            .at("aim"),
        );
    }
    if !problems.is_empty() {
        return Err(problems);
    }
    thinned(ask, agent).ok_or_else(|| vec![lost()])
}

fn thinned(ask: &AskStock, agent: Agent) -> Option<StockSheet> {
    let (step, meat) = (ask.settings.scale_step.base(), ask.meat.base());
    let parts = Decimal::from(PARTS);
    let neat = meat.times(ask.aim.base())?.over(agent.nitrite)?;
    let take = neat.times(parts)?.down_to(step)?;
    let (cure, filler, spread) = making(take, PARTS, step)?;
    let green = Range::weighed(meat, step)?;
    let green = Range {
        low: green.low.max(meat.over(Decimal::TWO)?),
        ..green
    };
    let told = |agent: Agent, grams: Decimal, spread: Decimal| {
        let range = ppm(ingoing(agent, Range::weighed(grams, step)?, green, spread)?.nitrite);
        Some(format!("{} to {} ppm", range.low, range.high))
    };
    let (with, name, mix, keep) = if ask.in_water {
        (
            "cold boiled water",
            "Stock solution",
            "Stir until nothing lies on the bottom, and again each time before you weigh from it.",
            "Closed, in the refrigerator, for this day's work. Pour away what is left (common practice, no source).",
        )
    } else {
        (
            "salt of the same grain",
            "Premix",
            "Shake it in a closed jar for two minutes, and again each time before you weigh from it.",
            "Closed and dry, for a year at most, and never beyond the date on the cure (common practice, no source).",
        )
    };
    let advice = |head: String, text: &str| Advice {
        head,
        text: text.to_owned(),
    };
    let weak = agent.thinned(parts)?;
    let printed = |agent: Agent| {
        let nitrate = (!agent.nitrate.is_zero()).then(|| format!(" and {} % nitrate", plain(agent.nitrate)));
        format!("{} % nitrite{}", plain(agent.nitrite), nitrate.unwrap_or_default())
    };
    let (cure_text, filler_text) = (on_scale(cure, step).text, on_scale(filler, step).text);
    Some(StockSheet {
        steps: vec![
            advice(format!("Weigh {cure_text} of cure and {filler_text} of {with}."), mix),
            advice(
                format!("For this meat, weigh {} of it.", on_scale(take, step).text),
                if ask.in_water {
                    "Into the mince or the brine, its water counted as water."
                } else {
                    "Its salt counts as salt: take as much off the recipe's."
                },
            ),
            advice(
                "Lock it away with the cure.".to_owned(),
                "It is poisonous by the spoonful, and in water it looks like nothing at all.",
            ),
            advice("Keep it no longer than it lasts.".to_owned(), keep),
        ],
        take: on_scale(take, step),
        ranges: [
            told(agent, neat.down_to(step)?, Decimal::ZERO)?,
            told(weak, take, spread)?,
        ],
        label: vec![
            format!("{name}: 1 part cure in {PARTS}"),
            format!("{}, from a cure of {}", printed(weak), printed(agent)),
            format!("{cure_text} cure, {filler_text} {with}"),
            "Poison by the spoonful. Not table salt, not drinking water.".to_owned(),
            "Made on:".to_owned(),
        ],
        mix: Cure {
            item: MADE.to_owned(),
            nitrite: Fraction::new(weak.nitrite).ok()?,
            nitrate: Fraction::new(weak.nitrate).ok()?,
            aim: ask.aim,
            follows: false,
            made: Some(Made {
                parts: PARTS,
                in_water: ask.in_water,
                // Outward, so that rounding never narrows it.
                off: Fraction::new(spread.times(Decimal::ONE_HUNDRED)?.up_to(dec!(0.01))?).ok()?,
            }),
        },
    })
}
