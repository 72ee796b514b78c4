//! A batch: the pieces on the board, what was put in and what was ticked, and when.

mod check;
mod fire;
mod fridge;
mod id;
mod model;
mod odd_cold;
mod odd_times;
mod pieces;
mod stay;

pub use check::{MOST_CLASSES, MOST_PIECES, MOST_TICKS, classes, portion_of};
pub use fire::{Cover, Fire, FireReading, MOST_READINGS};
pub use fridge::{FridgeReading, Seen, Thermometer};
pub use model::{Batch, By, CameOut, Piece, PutIn, Tick};
pub use odd_cold::{OddCold, cold_log, odd_cold};
pub use odd_times::{AHEAD, KILL, OddTime, Untimely, odd_times};
pub use pieces::{
    Counted, CutSource, Green, Mixed, OddThickness, OddWeight, PieceName, PieceRow, PieceSheet, belly, counted, green,
    kind, kinds, name_of, odd_thickness, odd_weights, rind, sheet,
};
pub use stay::killed;
