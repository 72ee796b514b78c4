//! What holds for a whole batch in its cure, and when each size class is ready.

use super::cold::{Cold, cold};
use super::fridge::{Fridge, hours, moment};
use super::laid::{COLOUR, Laid, colour_share, ended, usual};
use super::learn::Speed;
use super::model::Span3;
use crate::batch::{Batch, Piece, cold_log, kind};
use crate::quantity::System;
use crate::transport::Decay;
use crate::weigh::{Finding, Settings};
use rust_decimal::prelude::ToPrimitive;

/// Everything that holds for the whole batch.
pub(super) struct Course<'a> {
    pub batch: &'a Batch,
    pub fridge: Fridge,
    /// How cold the meat was kept.
    pub cold: Cold,
    pub begun: i64,
    /// Hours from the rub until now, or until the cure came off.
    pub now: f64,
    /// Hours from the rub until the planned rinse.
    pub planned: Option<f64>,
    pub units: System,
    pub soak_to: Option<f64>,
    pub learned: &'a [Finding],
    pub curves: Vec<(Laid, Decay)>,
}

/// When a size class is ready, and by which curve.
pub(super) struct Ready {
    pub laid: Laid,
    /// Its place among the curves.
    pub curve: usize,
    /// Diffusion coefficient at the slow end, likely, at the fast end.
    pub speeds: [f64; 3],
    /// Colour at the centre; nothing where there is no cure.
    pub colour: Option<Span3>,
    /// Salt at the centre within a tenth.
    pub even: Span3,
}

impl<'a> Course<'a> {
    pub fn new(batch: &'a Batch, now: i64, settings: &'a Settings, soak_to: Option<f64>) -> Self {
        let begun = batch.tick("rub").map(|t| t.at);
        let from = begun.unwrap_or(now);
        let readings = begun.map(|_| cold_log(batch)).unwrap_or_default();
        let stay = batch.recipe.stay().and_then(|minutes| minutes.to_f64());
        let now = ended(batch).unwrap_or(now).min(now);
        let kept = cold(batch, now);
        let now = hours(now.saturating_sub(from)).max(0.0);
        Self {
            batch,
            cold: kept,
            fridge: Fridge::new(&readings, from, now, usual(&batch.recipe)),
            begun: from,
            now,
            planned: stay.map(|minutes| minutes / 60.0),
            units: settings.units,
            soak_to,
            learned: &settings.learned,
            curves: Vec::new(),
        }
    }

    /// When a class came out before the others.
    pub fn out(&self, at: u32) -> Option<i64> {
        self.batch.drawn(at)
    }

    /// Hours from the rub until now, or until the class came out.
    pub fn now_of(&self, at: u32) -> f64 {
        let out = self.out(at).map(|out| hours(out.saturating_sub(self.begun)).max(0.0));
        out.map_or(self.now, |out| out.min(self.now))
    }

    /// The curve of a shape and boundary, made once.
    fn curve(&mut self, laid: &Laid) -> usize {
        let known = self
            .curves
            .iter()
            .position(|(other, _)| other.enters == laid.enters && other.solid == laid.solid);
        known.unwrap_or_else(|| {
            self.curves.push((*laid, laid.fills()));
            self.curves.len().saturating_sub(1)
        })
    }

    /// Nothing for a class that has no clock.
    pub fn ready(&mut self, at: u32, piece: &Piece) -> Option<Ready> {
        let laid = Laid::of(self.batch, piece)?;
        let index = self.curve(&laid);
        let (_, curve) = self.curves.get(index)?;
        let speeds = Speed::learned(kind(piece), self.learned).three();
        let now = self.now_of(at);
        let by = |fo: f64, factor: f64| {
            let [latest, likely, earliest] =
                speeds.map(|d| moment(self.begun, self.fridge.when(laid.hours(fo, d * factor), now)));
            Span3 {
                earliest,
                likely,
                latest,
            }
        };
        let colour = colour_share(&self.batch.recipe).map(|share| by(curve.when(0.0, share), COLOUR));
        let even = by(curve.when(0.0, 0.9), 1.0);
        Some(Ready {
            laid,
            curve: index,
            speeds,
            colour,
            even,
        })
    }
}
