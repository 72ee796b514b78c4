//! What a cut tells of the speed of salt, and what all cuts together tell: a posterior on a grid.

use super::Diffusion;
use super::fridge::{Fridge, hours};
use super::laid::{COLOUR, Laid, colour_share, ended, usual};
use super::model::{AskCut, Cutting, Learnt};
use super::say::percent;
use crate::batch::{Batch, cold_log, kind};
use crate::order::InOrder;
use crate::pantry::MeatKind;
use crate::quantity::{Code, Problem, Wrong};
use crate::weigh::{Finding, Lies};
use rust_decimal::prelude::ToPrimitive;

/// A quantile of the normal law: 10 % below and 10 % above.
const TENTH: f64 = 1.281_552;
/// What one cut leaves open, as a standard deviation of ln D: one cook differs from the next, and a ruler is coarse.
/// Judgement.
const CUT: f64 = 0.35;
/// Half of the grid's points.
const HALF: i32 = 60;

/// The diffusion coefficient at 4 °C in 1e-10 m²/s as a log-normal spread.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Speed {
    /// ln D, likely.
    pub centre: f64,
    /// Standard deviation of ln D.
    pub spread: f64,
}

impl Speed {
    /// What is known of a kind before any cut: the table, 80 % within a factor of 2.5.
    #[must_use]
    pub fn table(kind: MeatKind) -> Self {
        let likely = row(kind).map_or(2.0, |d| d.likely);
        Self {
            centre: likely.ln(),
            spread: 2.5_f64.ln() / TENTH,
        }
    }

    /// The same with what cuts told: prior times likelihood on a grid of ln D, and its mean and deviation.
    #[must_use]
    pub fn learned(kind: MeatKind, findings: &[Finding]) -> Self {
        let prior = Self::table(kind);
        let own: Vec<&Finding> = findings.iter().filter(|f| f.kind == kind).collect();
        if own.is_empty() {
            return prior;
        }
        let (mut whole, mut first, mut second) = (0.0, 0.0, 0.0);
        for n in -HALF..=HALF {
            let z = f64::from(n) / 15.0;
            let at = prior.centre + z * prior.spread;
            let told: f64 = own.iter().map(|f| weight(f, at)).sum();
            let share = (told - z * z / 2.0).exp();
            whole += share;
            first += share * at;
            second += share * at * at;
        }
        if whole <= 1e-280 {
            return prior;
        }
        let centre = first / whole;
        Self {
            centre,
            spread: (second / whole - centre * centre).max(1e-4).sqrt(),
        }
    }

    /// D in m²/s at its slow end, likely, at its fast end.
    pub(super) fn three(self) -> [f64; 3] {
        [-TENTH, 0.0, TENTH].map(|z| (self.centre + z * self.spread).exp() * 1e-10)
    }
}

/// The row of a kind; the build wants one for each.
pub(super) fn row(kind: MeatKind) -> Option<&'static Diffusion> {
    crate::tables::DIFFUSION.iter().find(|d| d.kind == kind)
}

/// Logarithm of how likely a finding is at a speed.
fn weight(finding: &Finding, at: f64) -> f64 {
    let off = (at - f64::from(finding.speed) / 1000.0) / CUT;
    match finding.is {
        Lies::Near => -off * off / 2.0,
        Lies::Above => below(off).ln(),
        Lies::Below => below(-off).ln(),
    }
}

/// The share of the normal law below `z`: the logistic that lies within 0.01 of it; a rounder figure than the spread.
fn below(z: f64) -> f64 {
    1.0 / (1.0 + (-1.702 * z.clamp(-30.0, 30.0)).exp())
}

/// What cuts have taught of each kind in a batch.
pub(super) fn learnt(batch: &Batch, learned: &[Finding]) -> Vec<Learnt> {
    let mut kinds: Vec<MeatKind> = batch.pieces.iter().map(kind).collect();
    kinds.order_by(Ord::cmp);
    kinds.dedup();
    let one = |kind: MeatKind| {
        let cuts = learned.iter().filter(|f| f.kind == kind).count();
        let (table, now) = (Speed::table(kind), Speed::learned(kind, learned));
        let faster = (now.centre - table.centre).exp() * 100.0;
        let spread = (now.spread / table.spread * 100.0).round();
        (cuts > 0).then(|| Learnt {
            kind,
            cuts: u32::try_from(cuts).unwrap_or(u32::MAX),
            speed: percent(faster.round()),
            range: percent(spread),
        })
    };
    kinds.into_iter().filter_map(one).collect()
}

/// What one cut tells.
///
/// # Errors
/// [`Code::Missing`] without thickness, clock or class, [`Code::TooLarge`] for a ring that is thicker than the piece.
pub fn learn(ask: &AskCut) -> Result<Finding, Problem> {
    let missing = |wrong: Wrong| Problem::of(Code::Missing, wrong);
    let batch = &ask.batch;
    let piece = batch
        .pieces
        .get(ask.class as usize)
        .ok_or_else(|| missing(Wrong::NoClassCut))?;
    let (Some(laid), Some(begun)) = (Laid::of(batch, piece), batch.tick("rub").map(|t| t.at)) else {
        return Err(missing(Wrong::CutWantsClock));
    };
    let out = batch.drawn(ask.class);
    let ended = out.or(ended(batch)).unwrap_or(ask.at).min(ask.at);
    let time = hours(ended.saturating_sub(begun));
    let fridge = Fridge::new(&cold_log(batch), begun, time, usual(&batch.recipe));
    let counted = fridge.counted(time, time) * 3600.0;
    if counted <= 0.0 {
        return Err(missing(Wrong::NoHourCounts));
    }
    let curve = laid.fills();
    let colour = colour_share(&batch.recipe);
    // D from the Fo that the cut shows.
    let speed = |fo: f64, factor: f64| fo * laid.half * laid.half / (counted * factor * laid.faster * 1e-10);
    let (is, d) = match (ask.found, colour) {
        (Cutting::Ring, Some(share)) => {
            let ring = ask.ring.and_then(|r| r.base().to_f64()).unwrap_or_default();
            // Across the middle; with skin on, from the skin.
            let grey = ring / if laid.one_sided { 1000.0 } else { 2000.0 } / laid.half;
            if !(0.0..1.0).contains(&grey) || ring <= 0.0 {
                return Err(Problem::of(Code::TooLarge, Wrong::RingTooWide).at("ring"));
            }
            (Lies::Near, speed(curve.when(grey, share), COLOUR))
        }
        (Cutting::Even, Some(share)) => (Lies::Above, speed(curve.when(0.0, share), COLOUR)),
        (Cutting::Ring | Cutting::Even, None) => return Err(missing(Wrong::NoColour)),
        // Too salty outside or bland in the middle: the salt is not even yet.
        (Cutting::TooSalty | Cutting::Bland, _) => (Lies::Below, speed(curve.when(0.0, 0.9), 1.0)),
    };
    #[allow(clippy::cast_possible_truncation, reason = "held within the bounds of the record")]
    let speed = (d.ln() * 1000.0).clamp(-7000.0, 7000.0).round() as i32;
    Ok(Finding {
        kind: kind(piece),
        at: ask.at,
        is,
        speed,
    })
}
