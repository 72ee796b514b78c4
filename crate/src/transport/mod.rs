//! What moves through a body by Fick's or Fourier's law: salt into meat, salt out of it into fresh water, heat.
//!
//! Two ways. Where the surroundings change as they like, heat above all: one finite-volume kernel in one dimension. Position is a share of `L`, the distance from the centre to the
//! surface; time is `Fo`, the integral of `D dt / L²`; so one run serves every diffusivity, every thickness and every
//! course of temperature. The body's exponent `m` gives the area at `x` as `x^m`: 0 a slab, 1 a long cylinder, 2 a
//! sphere, between them a body that warms as a brick does ([`brick`]). Where the boundary is known beforehand, as for a
//! cure: bodies of three dimensions in closed form ([`Solid`]).
//!
//! - **Salt:** `u` is the amount in the water of the meat, in any unit; the final mean is usually 1.
//! - **Heat:** `u` is the temperature, `D` the thermal diffusivity, and [`Surface::Exchange`] takes
//!   `biot = h L / k` and `flux = q L / k` (a temperature difference), `q` in W/m² into the body, such as the warmth
//!   that condensing or evaporating water brings or takes.
//!
//! Second order in space and in time: cell-centred, Crank-Nicolson, with two half-steps of backward Euler after each
//! abrupt change of surroundings ([`Field::disturb`]). What leaves one cell is what enters the next, to rounding.
//! A step allocates nothing.
//!
//! Source of the method: Patankar 1980 (finite volumes), Rannacher 1984 (the half-steps), from memory; checked
//! against the series of Crank 1975 and Carslaw and Jaeger 1959 in `tests/published/transport.rs`.
#![allow(
    clippy::float_arithmetic,
    reason = "physics with an error of the model far above that of binary arithmetic; no dose is made here"
)]

/// Largest exponent of a body. Above 2 it is no shape, but that of a brick with more surface than a ball for its thickness.
pub const MOST: f64 = 5.0;

mod bath;
mod body;
mod brick;
mod decay;
mod field;
mod lens;
mod rates;
mod solid;
mod uptake;

pub use body::Body;
pub use brick::brick;
pub use decay::{Decay, PLACES};
pub use field::{Field, Surface};
pub use lens::LensRow;
pub use solid::Solid;
pub use uptake::uptake;
