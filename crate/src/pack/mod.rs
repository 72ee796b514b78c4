//! What leaves the board: labels, gift tags, how long a pack keeps.

mod ingredients;
mod keeping;
mod labels;
mod stock;

pub use keeping::{CookedAt, Keeps, cooked_at, keeps};
pub use labels::{Labels, Paper, PaperKind, labels};
pub use stock::{Kept, LarderRow, LarderSheet, PackRow, Stock, larder};
