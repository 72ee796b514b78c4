//! One piece in the cabinet, step by step.

use super::air::{evaporation, latent};
use crate::transport::{Body, Field, Surface};

/// Shells of a body; half of them where it is run many times to fit readings, a tenth of a degree off at the Bi of meat
/// over a fire.
const CELLS: usize = 24;

/// A piece of meat as a body.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Piece {
    /// Half the thickest part, m.
    pub half: f64,
    /// Exponent of its shape: 0 flat, 1 long and round, 2 a ball.
    pub exponent: f64,
    /// Conductivity, W/mK: 0.47 (0.42 to 0.52).
    pub conductivity: f64,
    /// Density times specific heat, J/m³K: 1055 x 3600.
    pub capacity: f64,
}

/// kg/m³ of meat.
const DENSITY: f64 = 1055.0;

impl Piece {
    /// Lean meat of this thickness, m.
    pub const fn lean(thickness: f64, exponent: f64) -> Self {
        Self {
            half: thickness / 2.0,
            exponent,
            conductivity: 0.47,
            capacity: DENSITY * 3600.0,
        }
    }
}

/// What the air does to it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Smoker {
    /// Convective coefficient, W/m²K: 9 (6 to 12) in still air, 15 to 30 with a fan.
    pub convection: f64,
    /// Radiation, W/m²K: 6.5.
    pub radiation: f64,
    /// Wetness of the surface at first: 0.8, wrapped 0.08. Nought: no evaporation.
    pub wetness: f64,
    /// Share of its weight lost at which it has dried to 1/e: 0.05 (0.03 to 0.10).
    pub dries: f64,
    /// How sharply it dries, 1 to 2.
    pub sharpness: f64,
    /// Dew point of the air, °C.
    pub dew: f64,
}

/// A piece under way.
#[derive(Clone, Debug)]
pub struct Cook {
    piece: Piece,
    field: Field,
    surface: f64,
    /// Share of its weight that has evaporated.
    pub loss: f64,
    /// Heat that the air has brought, J/m² of surface.
    pub brought: f64,
    /// Heat that evaporation has taken, the same.
    pub taken: f64,
    /// Water that has left, kg/m².
    pub water: f64,
}

impl Cook {
    /// A piece of one temperature throughout, °C.
    pub fn new(piece: Piece, celsius: f64) -> Self {
        Self::cut(piece, celsius, CELLS)
    }

    /// The same in half as many shells.
    pub(super) fn coarse(piece: Piece, celsius: f64) -> Self {
        Self::cut(piece, celsius, CELLS / 2)
    }

    fn cut(piece: Piece, celsius: f64, cells: usize) -> Self {
        let field = Field::new(&Body::new(piece.exponent, cells), celsius);
        Self {
            piece,
            field,
            surface: celsius,
            loss: 0.0,
            brought: 0.0,
            taken: 0.0,
            water: 0.0,
        }
    }

    /// A step that keeps the error of the centre below 0.05 °C in a slab, 0.08 in a cylinder and 0.14 in a ball up to
    /// Bi 10, s. A rounder body takes more of them, since it warms faster.
    pub fn stride(piece: &Piece) -> f64 {
        let fo = 0.012 / (1.0 + piece.exponent);
        (fo * piece.half * piece.half * piece.capacity / piece.conductivity).clamp(1.0, 300.0)
    }

    /// The surroundings change abruptly.
    pub fn disturb(&mut self) {
        self.field.disturb();
    }

    /// Goes on by `seconds` in air of this temperature.
    ///
    /// The flux of evaporation is taken as a straight line about the surface's last temperature, so it joins the
    /// exchange and nothing swings; what it took is worked back from what passed into the body, so heat and water are
    /// kept to rounding.
    pub fn step(&mut self, seconds: f64, air: f64, smoker: &Smoker) {
        let Piece {
            half,
            exponent,
            conductivity,
            capacity,
        } = self.piece;
        let h = smoker.convection + smoker.radiation;
        let wet = smoker.wetness * (-(self.loss / smoker.dries).max(0.0).powf(smoker.sharpness)).exp();
        let flux = |at: f64| wet * latent(at) * evaporation(smoker.convection, at, air, smoker.dew);
        let at = self.surface;
        let here = flux(at);
        let slope = (flux(at + 0.05) - here) / 0.05;
        let whole = h + slope;
        let ambient = (h * air - here + slope * at) / whole;
        let surface = Surface::Exchange {
            biot: whole * half / conductivity,
            ambient,
            flux: 0.0,
        };
        let rise = self
            .field
            .step(conductivity / capacity * seconds / (half * half), surface);
        let entered = rise * capacity * half / (exponent + 1.0);
        let brought = h * (air - ambient) * seconds + h / whole * entered;
        let water = (brought - entered) / latent(at);
        self.brought += brought;
        self.taken += brought - entered;
        self.water += water;
        self.loss += water * (exponent + 1.0) / (half * DENSITY);
        self.surface = self.field.surface(surface);
    }

    /// °C at the centre.
    pub fn centre(&self) -> f64 {
        self.field.centre()
    }

    /// °C at the surface.
    pub const fn surface(&self) -> f64 {
        self.surface
    }

    /// Mean over the piece, °C.
    pub fn mean(&self) -> f64 {
        self.field.mean()
    }
}
