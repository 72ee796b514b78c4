//! How long: when colour and salt have reached the middle of each size class, as earliest, likely and latest.
//!
//! Salt moves by Fick's law ([`crate::transport`]); colour goes with nitrite, taken as 0.7 of salt's speed, for the
//! front only (judgement: nitrite reacts, and has no agreed figure). One master curve serves each shape and boundary:
//! the speed of the meat, its thickness and the refrigerator enter through `Fo = ∫ D(T) dt / L²` alone. A joint is a brick
//! or a round with ends, a breast a lens, each in three dimensions; a rub lies where it was put, shared evenly over the
//! surface, so that the middle of a flat piece first gets less than its share and has to wait for the rest from the edges.
//!
//! A forecast, never a guarantee: the spread is a factor of 2.5 either way until cuts have taught it better.
//!
//! Published times for legs beside the clock's, for a weighed rub at 38 °F, red game, the legs as bricks of that weight
//! and thickness (judgement). They are compared, not fitted:
//!
//! | leg | 2 days per lb | 1 inch per week | sweet pickle | likely, even salt | earliest to latest |
//! |---|---|---|---|---|---|
//! | 6 lb, 4 in thick | 12 d | 28 d | 24 d | 95 d | 38 to 237 d |
//! | 15 lb, 6 in thick | 30 d | 42 d | 60 d | 163 d | 65 to 407 d |
//!
//! Sources: Clemson HGIC 3603, Rentfrow 2013 (Kentucky), USDA FB 2265, published. By the likely speed all of these rules
//! take a leg out before its middle has 90 % of its salt; Kentucky asks for 2 to 3 weeks of
//! equalising after it. The rules grow with the thickness or the weight, the clock with the square of the
//! thickness. The table is printed by the test `ham_rules` in `tests/published/clock.rs`.
#![allow(
    clippy::float_arithmetic,
    reason = "a forecast whose spread is a factor of 2.5; no dose is made here"
)]

mod cap;
mod clock;
mod cold;
mod course;
mod facts;
mod fridge;
mod laid;
mod learn;
mod model;
mod notes;
mod say;
mod through;
mod until;
mod went_in;

use crate::pantry::{MeatKind, Status};
pub use cap::{CapRow, keeps_until};
pub use clock::clock;
pub use cold::{Cold, TOO_LONG, TOO_LONG_MS, WARM, Warmth, cold, heated};
pub use facts::{Fate, Middle, Note, Noted, Thumb};
pub use laid::ended;
pub use learn::{Speed, learn};
pub use model::{
    AskClock, AskCut, Capped, Class, ClassUntil, ColdAsked, CureClock, Cutting, Learnt, Point, Rule, Soak, Span3,
    Through, Until,
};
pub use through::through;
pub use until::{Stay, stay};
pub use went_in::{WentIn, went_in};

/// How fast salt goes into one kind of meat: a row of `tables/diffusion.csv`.
#[derive(Clone, Copy, Debug)]
pub struct Diffusion {
    /// The kind of meat.
    pub kind: MeatKind,
    /// Likely diffusion coefficient at 4 °C, 1e-10 m²/s.
    pub likely: f64,
    /// Where it comes from.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}
