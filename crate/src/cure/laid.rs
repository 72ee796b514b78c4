//! How a size class lies in its cure: shape, boundary, thickness.

use crate::batch::{Batch, Piece, kind, rind};
use crate::pantry::{self, LEAN_WATER, MeatKind};
use crate::quantity::Temperature;
use crate::recipe::{Do, Method, Recipe, Share};
use crate::transport::{Decay, Solid};
use rust_decimal::prelude::ToPrimitive;
use std::f64::consts::PI;

/// Nitrite against salt, for the colour front. Judgement.
pub(super) const COLOUR: f64 = 0.7;
/// The amount that is known to have some effect on colour, ppm ingoing: USDA Processing Inspectors' Calculations
/// Handbook, p. 12, published.
const SOME_EFFECT: f64 = 40.0;
/// Frozen and thawed muscle against fresh, published.
const THAWED: f64 = 1.3;
/// Grams of meat in a cubic centimetre. Memory.
const DENSITY: f64 = 1.05;

/// Shapes are taken in steps of so much, as a logarithm, so that like pieces share a curve: at most half a per cent in time.
const STEP: f64 = 0.02;
/// Where neither a weight nor the cut's usual one is known: a joint twice as wide and long as it is thick, which of all
/// bricks waits longest for its colour; a loin of four times its thickness; a breast as wide for its thickness as a
/// mallard's. Judgement.
const JOINT: f64 = 2.0;
const LOIN: f64 = 4.0;
const BREAST: f64 = 4.0;
/// No soaking is said to take longer than this.
const SOAKED: f64 = 3.0;

/// How the cure gets in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Enters {
    /// A weighed rub that stays with the meat, shared evenly over the open surface.
    Dose,
    /// A brine with so many times the water of the meat.
    Brine(f64),
}

/// Shape, boundary and size.
#[derive(Clone, Copy, Debug)]
pub(super) struct Laid {
    pub solid: Solid,
    pub enters: Enters,
    /// From the centre to the surface, in metres; the whole thickness where one side is closed.
    pub half: f64,
    /// How much faster than fresh meat.
    pub faster: f64,
    /// One side is closed by rind, skin or fat.
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
        // What is closed on one side fills as half of a piece twice as thick, and mirrored it is that piece. Rind keeps the
        // cure out: a belly with it on is dosed without its tenth of the weight (9 CFR 424.22(b), quoted). A fat cap is taken
        // as closed too: no figure for salt in fat was found, and closed is the late side (judgement).
        let one_sided = rind(piece);
        let faster = if piece.thawed { THAWED } else { 1.0 };
        Some(Self {
            solid: solid(piece, thick * 100.0, one_sided),
            enters,
            half: if one_sided { thick } else { thick / 2.0 },
            faster,
            one_sided,
        })
    }

    /// The course of its filling.
    pub fn fills(&self) -> Decay {
        match self.enters {
            Enters::Dose => self.solid.dosed(),
            Enters::Brine(ratio) => self.solid.bathed(ratio),
        }
    }

    /// The Fo after which it has come down to a share of its salt, on the mean, in fresh water: `ratio` times its own in a
    /// still bath, or changed so often that it stays fresh. Nothing where it does not come so far.
    pub fn soaked(&self, ratio: Option<f64>, share: f64) -> Option<f64> {
        match ratio {
            None => self.solid.held().when_mean(1.0 - share, SOAKED),
            Some(ratio) => {
                let gone = (1.0 - share) * (1.0 + ratio) / ratio;
                (gone < 1.0).then(|| self.solid.bathed(ratio).when_mean(gone, SOAKED))?
            }
        }
    }

    /// A slice of so much of its thickness, as wide and as long as it is.
    pub fn sliced(&self, part: f64) -> Self {
        let solid = match self.solid {
            Solid::Brick(far) => Solid::Brick(far.map(|far| far / part)),
            Solid::Round(long) => Solid::Brick([1.0 / part, long / part]),
            Solid::Lens(rim) => Solid::Lens(rim / part),
        };
        Self {
            solid,
            half: self.half * part,
            ..*self
        }
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

/// By weight and thickness: a bird's breast as a lens, a loin as a round with ends, all else as a brick with a square
/// face. What is closed on one side is the half of such a body: of twice its thickness, a brick where it is no lens.
fn solid(piece: &Piece, thick_cm: f64, one_sided: bool) -> Solid {
    let usual = || pantry::cut(&piece.cut)?.grams.map(|(_, typical, _)| f64::from(typical));
    let one = piece.one().and_then(|grams| grams.to_f64()).or_else(usual);
    let volume = one.map(|grams| grams / DENSITY);
    let half = if one_sided { thick_cm } else { thick_cm / 2.0 };
    let part = half / thick_cm;
    if kind(piece) == MeatKind::Bird && !piece.cut.ends_with("leg") {
        // Of one cap or of two, n: 6 V = n π h (3 r² + h²).
        let rim = volume.map(|v| (2.0 * part * v / (PI * half.powi(3)) - 1.0 / 3.0).max(1.0).sqrt());
        return Solid::Lens(stepped(rim.unwrap_or(BREAST / part / 2.0)));
    }
    let loin = ["-loin", "-backstrap"].iter().any(|end| piece.cut.ends_with(end));
    if loin && !one_sided {
        let long = volume.map(|v| v / (PI / 4.0 * thick_cm.powi(3)));
        return Solid::Round(stepped(long.unwrap_or(LOIN).max(1.0)));
    }
    let wide = volume.map_or(JOINT, |v| (v / thick_cm.powi(3)).sqrt().max(1.0));
    let far = stepped(wide / part / 2.0);
    Solid::Brick([far, far])
}

fn stepped(ratio: f64) -> f64 {
    ((ratio.ln() / STEP).round() * STEP).exp()
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
    batch.cure_ended()
}
