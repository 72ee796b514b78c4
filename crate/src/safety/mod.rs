//! Cooked enough, come up and chilled in time: published figures and how they are applied.
//!
//! Degrees Fahrenheit and seconds, as the tables print them. Nothing here licenses: every answer names its rule.
#![allow(
    clippy::float_arithmetic,
    reason = "times and temperatures as read; no dose is reckoned here"
)]

mod chill;
mod guard;
mod heat;
mod keep;
mod parasites;
mod target;

pub use chill::{Also, CHILL_MARKS, Cooling, LINGERS, Left, SOON, Scope, Stage, first_start, left, of, options};
pub use guard::{COME_UP, ComeUp, WARMING, come_up};
pub use heat::{GAP, Points, THERMOMETER, Table, credit};
pub use keep::{JERKY, Jerky, Keeps, VACUUM_COLD, VACUUM_GROWS, keeps};
pub use parasites::{Frozen, frozen_long_enough, trichinae_seconds};
pub use target::{Consumer, NoLower, Wish, consumer, least, lowest, may_go_lower, most};
