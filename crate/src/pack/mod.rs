//! What leaves the board: labels, gift tags, how long a pack keeps.

mod ingredients;
mod labels;
mod ledger;
mod stock;

pub use labels::{KeepWord, Labels, Packed, Paper, PaperKind, labels};
pub use ledger::{Entry, Ledger, LedgerRow, ledger};
pub use stock::{BAGS, Kept, LarderRow, LarderSheet, PackRow, Stock, came_and_went, larder, named};
