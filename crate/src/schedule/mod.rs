//! The one clock of a batch, and what comes next over all of them.

mod course;
mod deed;
pub mod fit;
mod legs;
mod model;
mod next;
mod times;

use crate::cure::{self, AskClock, CureClock};
use crate::quantity::{Awake, Problem};
pub use course::{Course, course, lead, turns, until};
pub use deed::{Deed, Whereabouts};
pub use legs::{COLD, FIRE, HOUR, MINUTE, OVERDUE, SLOT_MS, leg, needs, resting, slot_up, slots};
pub use model::{Job, NextList, State};
pub use next::next;
pub use times::Timed;

/// The cure clock, with the hour of the batch's course.
///
/// # Errors
/// Problems of the batch, of the settings and of the hours of rest.
pub fn clock(ask: &AskClock) -> Result<CureClock, Vec<Problem>> {
    let awake = Awake::but_for(&ask.rests).map_err(|problem| vec![problem])?;
    cure::clock(ask, until(&ask.batch, ask.now, &ask.settings, &awake))
}
