//! Plan the bag: what birds or an animal will give, before any is weighed.

mod facts;
mod game;
mod model;
mod own;
mod sheet;
mod shopping;
mod show;

pub use facts::{Area, BagBasis, HoldsBag, HousePlace, HouseRoom, InHouse, LeftOf, RackRoom, Spread, Wanted};
pub use game::{Game, GameName, game, games, names};
pub use model::{AskBag, BagAsk, BagRow, BagSheet, Buy};
pub use sheet::bag;
