//! Handing a recipe on: its card, its link and its QR code.

mod card;
mod link;
mod qr;
mod wire;

pub use card::{CardRow, For, RecipeCard, card};
pub use link::{Link, MOST_LINK, open, write};
