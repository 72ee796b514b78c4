//! The weigh-out: what to weigh, in which order, and what the scale will show.

mod accelerator;
mod bags;
mod basis;
mod bowl;
mod calibrate;
mod coarse;
mod facts;
mod finding;
mod follow;
mod lines;
mod model;
mod plan;
mod remarks;
mod settings;
mod sheet;
mod smoked;
mod spoon;
mod stock;
mod work;

pub use accelerator::{Accelerator, ppm as accelerator_ppm};
pub use bags::bags;
pub use calibrate::{AskScale, AskSpoon, ScaleRow, ScaleSheet, SpoonSheet, scale, spoon};
pub use facts::{
    Accelerated, Changed, CoarseWay, CureOf, LineWhy, Remark, SaltOf, SheetFact, SpoonSource, SpoonUnit, Strength,
};
pub use finding::{Finding, Lies};
pub use follow::followed;
pub(crate) use lines::on_scale;
pub use model::{BagLine, BagList, Coarse, Premix, SaltIn, Spoon, Todo, TodoOf, WeighLine, WeighSheet};
pub use plan::{Plan, plan};
pub use settings::{House, Racks, SCALE_STEPS, Settings};
pub use sheet::{sheet, verdict};
pub use smoked::Smoked;
pub use spoon::spoons;
pub use stock::{AskStock, StockSheet, stock};
