//! How hot a piece gets over the fire, and when it will be done. Celsius, seconds, metres, watts.
//!
//! One piece is a body on the kernel of [`crate::transport`]: the cabinet's air warms it, its radiation too, and water
//! that evaporates from the surface cools it until the surface dries. Evaporation goes by the convective part alone
//! (Lewis); with the whole coefficient, or with a surface that never dries, it would stall for ever.
#![allow(
    clippy::float_arithmetic,
    reason = "physics with an error of the model far above that of binary arithmetic; no dose is made here"
)]

mod air;
mod cook;
mod fit;
mod forecast;
mod salt;

pub use air::{evaporation, latent, saturation, wet_bulb};
pub use cook::{Cook, Piece, Smoker};
pub use forecast::{Forecast, Readings, Setup, chilled, forecast};
pub use salt::{activity, concentrated};
