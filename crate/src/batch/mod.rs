//! A batch: the pieces on the board, what was put in and what was ticked, and when.

mod check;
mod fire;
mod fridge;
mod model;
mod pieces;

pub use check::{MOST_CLASSES, MOST_PIECES, MOST_TICKS, classes, portion_of};
pub use fire::{Cover, Fire, FireReading, MOST_READINGS};
pub use fridge::{FridgeReading, Seen};
pub use model::{Batch, CameOut, Piece, PutIn, Tick};
pub use pieces::{Green, PieceRow, PieceSheet, belly, doubts, green, kind, kinds, name_of, sheet};
