//! The weigh-out: what to weigh, in which order, and what the scale will show.

mod coarse;
mod lines;
mod model;
mod plan;
mod settings;
mod sheet;
mod spoon;

pub use model::{Coarse, Fact, Premix, Spoon, Todo, WeighLine, WeighSheet};
pub use plan::{Plan, plan};
pub use settings::{SCALE_STEPS, Settings};
pub use sheet::{sheet, verdict};
pub use spoon::spoons;
