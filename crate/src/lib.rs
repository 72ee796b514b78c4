//! Reckons cure, salt and seasoning for wild game: what to weigh for exactly this meat, whether the dose is all
//! right, what comes next and when.
//!
//! The floors, each importing only those before it: [`quantity`], [`transport`], [`pantry`], [`recipe`], [`dose`], [`batch`],
//! [`weigh`], [`cure`], [`safety`], [`smoke`], [`record`], [`standing`], [`schedule`], [`plan`], [`share`], [`pack`], [`fire`], [`reading`],
//! [`door`]. Everything up to
//! the door is pure: no clock, no chance, no JavaScript. The same request gives the same answer natively and in the browser.

// Doses are exact decimals. The physics floors (transport and what stands on it) allow floats, each with its reason.
#![deny(clippy::float_arithmetic)]
// A page in the field has nobody to restart it: nothing outside tests may panic.
#![warn(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    clippy::arithmetic_side_effects
)]

pub mod batch;
pub mod brine;
pub mod cure;
pub mod door;
pub mod dose;
pub mod fire;
mod order;
pub mod pack;
pub mod pantry;
pub mod plan;
pub mod quantity;
pub mod reading;
pub mod recipe;
pub mod record;
pub mod safety;
pub mod schedule;
pub mod share;
pub mod smoke;
pub mod standing;
mod tables;
pub mod transport;
pub mod weigh;
