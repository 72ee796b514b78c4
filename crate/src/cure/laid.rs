//! How a size class lies in its cure: shape, boundary, thickness.

use super::curve::Enters;
use crate::batch::{Batch, Piece, kind};
use crate::pantry::LEAN_WATER;
use crate::quantity::Temperature;
use crate::recipe::{Do, Method, Recipe, Share};
use crate::transport::Body;
use rust_decimal::prelude::ToPrimitive;

/// Nitrite against salt, for the colour front. Judgement.
pub(super) const COLOUR: f64 = 0.7;
/// The amount that is known to have some effect on colour, ppm ingoing: USDA Processing Inspectors' Calculations
/// Handbook, p. 12, published.
const SOME_EFFECT: f64 = 40.0;
/// Frozen and thawed muscle against fresh, published.
const THAWED: f64 = 1.3;
/// Grams of meat in a cubic centimetre. Memory.
const DENSITY: f64 = 1.05;

/// Shape, boundary and size.
pub(super) struct Laid {
    pub exponent: f64,
    pub enters: Enters,
    /// From the centre to the surface, in metres; the whole thickness where one side is closed.
    pub half: f64,
    /// How much faster than fresh meat.
    pub faster: f64,
    /// One side is closed by skin.
    pub one_sided: bool,
}

impl Laid {
    /// Nothing where the thickness is not known, or the cure does not come from outside.
    pub fn of(batch: &Batch, piece: &Piece) -> Option<Self> {
        let thick = piece.thickness.and_then(|t| t.base().to_f64()).filter(|t| *t > 0.0)? / 1000.0;
        let enters = match batch.recipe.method {
            Method::Rub => Enters::Dose,
            Method::CoverBrine => Enters::Brine(brine(&batch.recipe)?),
            // By pick-up the stay sets the dose: a clock that says how much longer would raise it.
            Method::PickUp | Method::Ground | Method::Pumped | Method::PumpedAndCovered => return None,
        };
        let exponent = if piece.skin {
            0.0
        } else {
            exponent(piece, thick * 100.0)
        };
        let half = if piece.skin { thick } else { thick / 2.0 };
        let faster = if piece.thawed { THAWED } else { 1.0 };
        // Shapes in steps, so that like pieces share a curve.
        let exponent = (exponent * 20.0).round() / 20.0;
        Some(Self {
            exponent,
            enters,
            half,
            faster,
            one_sided: piece.skin,
        })
    }

    /// Hours at 4 °C that bring it to an Fo, at a diffusion coefficient in m²/s.
    pub fn hours(&self, fo: f64, d: f64) -> f64 {
        fo * self.half * self.half / (d * self.faster) / 3600.0
    }

    /// The Fo after so many hours at 4 °C.
    pub fn fo(&self, hours: f64, d: f64) -> f64 {
        hours * 3600.0 * d * self.faster / (self.half * self.half)
    }
}

/// Water of the brine over water of the meat.
fn brine(recipe: &Recipe) -> Option<f64> {
    let water = recipe
        .lines
        .iter()
        .filter(|l| l.is_water())
        .filter_map(|l| match l.share {
            Share::GreenWeight(f) => f.base().to_f64(),
            _ => None,
        });
    Some(water.sum::<f64>() / 100.0 / LEAN_WATER.to_f64()?).filter(|ratio| *ratio > 0.01)
}

/// By weight and thickness: a bird's breast as a round oval, all else as a brick with a square face.
fn exponent(piece: &Piece, thick_cm: f64) -> f64 {
    let Some(one) = piece.one().and_then(|grams| grams.to_f64()) else {
        return 0.0;
    };
    let volume = one / DENSITY;
    if kind(piece) == "bird" {
        let across = (6.0 * volume / (std::f64::consts::PI * thick_cm)).sqrt();
        Body::oval([thick_cm, across.max(thick_cm), across.max(thick_cm)])
    } else {
        let across = (volume / thick_cm).sqrt().max(thick_cm);
        Body::brick([thick_cm, across, across])
    }
}

/// The share of the final amount at which the centre has colour; nothing where no cure is.
pub(super) fn colour_share(recipe: &Recipe) -> Option<f64> {
    let aims = recipe.cures.iter().filter_map(|c| c.aim.base().to_f64());
    // A share, in per cent; a ppm is a ten-thousandth of it.
    let ppm = aims.sum::<f64>() * 10_000.0;
    (ppm > 0.0).then(|| (SOME_EFFECT / ppm).clamp(0.05, 0.95))
}

/// What the salt comes to in the meat, per cent; nothing where the recipe gives it on another base.
pub(super) fn goal(recipe: &Recipe) -> Option<f64> {
    let salt = recipe.lines.iter().find(|l| l.item.starts_with("salt"))?;
    match (salt.share, recipe.method) {
        (Share::GreenWeight(f), Method::Rub) | (Share::MeatAndWater(f), _) => f.base().to_f64(),
        _ => None,
    }
}

/// The temperature of the recipe's cure.
pub(super) fn usual(recipe: &Recipe) -> Option<Temperature> {
    recipe.steps.iter().find(|s| s.act == Do::Cure)?.at
}

/// When the cure came off: the first tick of a step that follows it.
#[must_use]
pub fn ended(batch: &Batch) -> Option<i64> {
    let steps = batch.recipe.steps.iter().enumerate();
    steps
        .filter(|(_, s)| s.act != Do::Cure)
        .find_map(|(i, _)| batch.step(i))
        .map(|t| t.at)
}
