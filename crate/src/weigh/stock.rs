//! Cure thinned with salt or with water so that a coarse scale can weigh it: making, label, and what to keep of it.

use super::calibrate::lost;
use super::coarse::making;
use super::facts::Strength;
use super::lines::{on_scale, strength};
use super::settings::Settings;
use crate::dose::{ingoing, ppm};
use crate::pantry::{Agent, MADE, Made};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Figure, Fraction, Mass, Problem, Range, Wrong};
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
    /// Cure to weigh for making it.
    pub cure: Figure,
    /// Salt or water to weigh for making it.
    pub filler: Figure,
    /// What to weigh of it for this meat.
    pub take: Figure,
    /// Least and most of the dose in ppm with the cure weighed neat on this scale, and by way of this.
    pub ranges: [[u32; 2]; 2],
    /// What the cure's bag prints.
    pub neat: Strength,
    /// How strong this is.
    pub strength: Strength,
    /// To keep in the settings.
    pub mix: Cure,
}

/// One part in so many.
const PARTS: u32 = 10;

/// How to thin a cure so that this scale can weigh it.
///
/// # Errors
/// The problems of the settings and of the strength.
///
/// ```
/// use cure_reckoner::weigh::{AskStock, stock};
/// let ask: AskStock = serde_json::from_value(serde_json::json!({
///     "in_water": false, "nitrite": "6.25 %", "aim": "150 ppm", "meat": "1000 g",
///     "settings": {"scale_step": "1 g", "profile": "us-home"},
/// })).unwrap();
/// let sheet = stock(&ask).unwrap();
/// // Ten times 2.4 g, a tenth as strong.
/// assert_eq!(sheet.take.text, "24 g");
/// assert_eq!(sheet.strength.nitrite.as_deref(), Some("0.625 %"));
/// ```
pub fn stock(ask: &AskStock) -> Result<StockSheet, Vec<Problem>> {
    let mut problems = ask.settings.problems();
    let agent = Agent::printed(ask.nitrite, ask.nitrate);
    problems.extend(agent.problem());
    if ask.meat.base().is_zero()
        || agent.nitrite.is_zero()
        || ask.aim.base().is_zero()
        || ask.aim.base() >= agent.nitrite
    {
        problems.push(Problem::of(Code::Conflict, Wrong::StockFigures).at("aim"));
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
        Some([range.low, range.high])
    };
    let weak = agent.thinned(parts)?;
    Some(StockSheet {
        cure: on_scale(cure, step),
        filler: on_scale(filler, step),
        neat: strength(agent),
        strength: strength(weak),
        take: on_scale(take, step),
        ranges: [
            told(agent, neat.down_to(step)?, Decimal::ZERO)?,
            told(weak, take, spread)?,
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
