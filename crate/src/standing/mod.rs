//! The standing of a batch: all doubts on it, from every stage, and the only maker of a right to assure anything.
//!
//! Each stage by itself knows only its own figures: a fire may be read hot enough on meat that stood warm for a day.
//! So what a batch is in doubt of is gathered here, once, and rides on: an answer that says "in range", "hot enough",
//! "take it out", "chilled", "keeps until", "give it" or "go on" says it with a [`Leave`], and nothing but a
//! [`Standing`] gives one. Which doubt takes which right is in `bars.rs`; the words for doubts are the page's.
#![allow(
    clippy::float_arithmetic,
    reason = "hours and degrees as read; no dose is reckoned here"
)]

mod bars;
mod cold;
mod dose;
mod heat;
mod keeping;
mod model;
mod of;
mod sheet;
mod vouch;

pub use heat::cooks;
pub use keeping::{Done, Keeping, Packing, packed};
pub use model::{Assurance, Assured, Clears, Doubt, Kind, Leave, Stage, Weight};
pub use of::Standing;
pub use sheet::{AssuredSheet, StandingSheet, sheet};
pub use vouch::{Vouched, of_card, on_its_own, weigh_out};
