//! Reckons cure, salt and seasoning for wild game.
pub mod door;
