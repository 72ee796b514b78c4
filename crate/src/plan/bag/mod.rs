//! Plan the bag: what birds or an animal will give, before any is weighed.

mod game;
mod own;
mod sheet;
mod shopping;

pub use game::{Game, GameName, game, games, names};
pub use sheet::{AskBag, BagAsk, BagRow, BagSheet, Buy, bag};
