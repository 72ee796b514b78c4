//! What leaves the board: labels, gift tags, how long a pack keeps.

mod heavy;
mod ingredients;
mod labels;
mod ledger;
mod stock;
mod written;

pub use heavy::TooHeavy;
pub use labels::{KeepWord, Labels, Packed, Paper, PaperKind, labels};
pub use ledger::{Entry, Ledger, LedgerRow, MayBe, OutOf, ledger};
pub use stock::{BAGS, Held, Kept, LarderRow, LarderSheet, PackRow, Reach, Stock, came_and_went, larder, named};
pub use written::{Blank, CureSalt, Inside, KeptBy, Meat, PaperFact};
