//! A batch: the pieces on the board, what was put in and what was ticked, and when.

mod check;
mod model;
mod pieces;

pub use check::{MOST_CLASSES, MOST_PIECES, MOST_TICKS, classes};
pub use model::{Batch, Piece, PutIn, Tick};
pub use pieces::{Green, PieceRow, PieceSheet, belly, doubts, green, kind, kinds, sheet};
