//! What comes next and when, over all batches.

mod model;
mod next;

pub use model::{Job, NextList, Stage, State};
pub(crate) use next::millis;
pub use next::next;
