//! What is known of a piece and its smoker before the fire, and what that makes of them at a point of the prior.

use super::cook::{Piece, Smoker};
use super::fit::Point;
use super::habit::Habit;
use crate::transport::{MOST, brick};

/// What is known before the fire.
#[derive(Clone, Debug, PartialEq)]
pub struct Setup {
    /// Thickest part, m.
    pub thickness: f64,
    /// Exponent of the shape; a breast 0.3.
    pub exponent: f64,
    /// A fan moves the air.
    pub fan: bool,
    /// What stands below it or is about it, in order of time; nothing where it hangs bare over dry heat.
    pub covers: Vec<Covered>,
    /// It will be wrapped once its middle is this warm, °C.
    pub wrap_at: Option<f64>,
    /// What it starts at, °C, where no reading says it.
    pub start: f64,
    /// Where to pull, °C.
    pub target: f64,
    /// What is known of this smoker beyond its kind.
    pub habit: Habit,
}

/// From when a pan of water stands in the smoker or a piece is wrapped. The first holds before its time too.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Covered {
    /// Seconds on the clock of the readings.
    pub from: f64,
    /// A pan of water stands in it.
    pub pan: bool,
    /// It is wrapped.
    pub wrapped: bool,
}

/// A piece, what the air does to it from when on and once it is wrapped, and how much too high the probe reads, °C.
#[derive(Clone, Debug)]
pub(super) struct Guess {
    pub piece: Piece,
    pub smokers: Vec<(f64, Smoker)>,
    pub wrapped: Smoker,
    pub offset: f64,
}

impl Guess {
    /// The smoker at a time.
    pub fn smoker(&self, at: f64) -> Option<&Smoker> {
        let since = self.smokers.iter().rev().find(|(from, _)| *from <= at);
        since.or(self.smokers.first()).map(|(_, smoker)| smoker)
    }
}

impl Setup {
    /// The piece, the smoker and the offset of the probe at a point of the prior. Spreads are judgements about the ranges
    /// beside [`Smoker`].
    pub(super) fn at(&self, z: &Point) -> Guess {
        let [
            thick,
            convection,
            wet,
            dries,
            sharp,
            dew,
            shape,
            offset,
            conductivity,
            radiation,
            later,
        ] = self.habit.apply(z);
        let spread = |usual: f64, share: f64, z: f64| usual * (share * z).exp();
        let mut piece = Piece::lean(
            spread(self.thickness, 0.10, thick),
            (self.exponent + 0.25 * shape).clamp(0.0, MOST),
        );
        piece.conductivity = spread(piece.conductivity, 0.05, conductivity);
        let at_first = self.covers.first().copied().unwrap_or_default();
        let smoker = |cover: &Covered| {
            // A smoker's habit tells of how it begins; what is put on later has a wetness of its own.
            let z = if cover.wrapped == at_first.wrapped { wet } else { later };
            let (usual, share) = if cover.wrapped { (0.08, 0.5) } else { (0.8, 0.15) };
            let smoker = Smoker {
                convection: spread(if self.fan { 21.0 } else { 9.0 }, 0.22, convection),
                radiation: spread(6.5, 0.15, radiation),
                wetness: spread(usual, share, z).min(1.0),
                dries: spread(if self.fan { 0.03 } else { 0.05 }, 0.30, dries),
                sharpness: spread(1.2, 0.2, sharp),
                dew: if cover.pan { 35.0 } else { 22.0 } + 7.0 * dew,
            };
            (cover.from, smoker)
        };
        let smokers = if self.covers.is_empty() {
            vec![smoker(&at_first)]
        } else {
            self.covers.iter().map(smoker).collect()
        };
        let last = self.covers.last().copied().unwrap_or_default();
        let (_, wrapped) = smoker(&Covered { wrapped: true, ..last });
        Guess {
            piece,
            smokers,
            wrapped,
            offset,
        }
    }

    /// It is wrapped now.
    #[must_use]
    pub fn wrapped(&self) -> bool {
        self.covers.last().is_some_and(|c| c.wrapped)
    }
}

/// Thickness, m, and exponent of the body that heats as a joint this thick (m) and this heavy (kg) does: a brick with a
/// square face of its weight.
#[must_use]
pub fn joint(thick: f64, kilograms: f64, fan: bool) -> (f64, f64) {
    let volume = kilograms / 1055.0;
    let across = (volume / thick).sqrt().max(thick) / 2.0;
    // Air and radiation at what is usual, on meat that conducts 0.47 W/mK.
    let exchange = if fan { 27.5 } else { 15.5 };
    let (exponent, half) = brick([thick / 2.0, across, across], exchange * thick / 2.0 / 0.47);
    (2.0 * half, exponent)
}
