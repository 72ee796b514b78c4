//! What comes next and when, over all batches.

mod model;
mod next;

pub use model::{Job, NextList, Stage, State};
pub use next::next;
pub(crate) use next::{MINUTE, millis};
