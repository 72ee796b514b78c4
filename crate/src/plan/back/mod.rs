//! Plan back: the latest start and the earliest finish of batches that share places and must leave hours of rest free.

mod board;
mod chain;
mod exact;
mod facts;
mod model;
pub mod share;
mod sheet;
mod tasks;
mod ways;
mod worth;

pub use crate::schedule::fit;
pub use facts::{Fixed, Gap, Snag, Task, WouldFit};
pub use model::{Back, BackBatch, BackStep, Hold, Wish};
pub use sheet::back;
