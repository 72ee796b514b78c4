//! Ingredients, curing agents and cuts: names, what a level teaspoon weighs, allergens, source. Data in `tables/`.

mod agent;
mod cut;
mod fold;
mod ingredient;
mod meat;
mod status;

pub(crate) use agent::PPM;
pub use agent::{Agent, MADE, Made, is_too_strong, too_strong};
pub use cut::{Belly, Cut, said as cut_said};
pub(crate) use fold::is_unseen;
pub use fold::{folded, names_agent, names_nitrite};
pub use ingredient::{Group, Ingredient, ItemName, SpoonWeight};
pub use meat::{MeatKind, OWN};
pub use status::Status;

/// Key of a cure that is known by what its packet says.
pub const PACKET: &str = "cure-packet";

/// Water in lean meat, by weight, where salt spreads between meat and brine. Judgement, 70 to 76 %.
pub const LEAN_WATER: rust_decimal::Decimal = rust_decimal::dec!(0.74);

/// The name in the key of an ingredient of the user's own, as it stands with its spoon: `own/Marsh samphire salt`.
pub fn own_name(key: &str) -> Option<&str> {
    key.strip_prefix(OWN)?
        .strip_prefix('/')
        .map(str::trim)
        .filter(|name| !name.is_empty())
}

/// Every ingredient, in the order of the table.
pub fn ingredients() -> &'static [Ingredient] {
    &crate::tables::PANTRY
}

/// The ingredient of a key.
pub fn ingredient(key: &str) -> Option<&'static Ingredient> {
    ingredients().iter().find(|i| i.key == key)
}

/// The ingredient of a number in a link.
pub fn by_number(number: u32) -> Option<&'static Ingredient> {
    ingredients().iter().find(|i| i.number == number)
}

/// Every cut, in the order of the table.
pub fn cuts() -> &'static [Cut] {
    &crate::tables::CUTS
}

/// The cut of a key.
pub fn cut(key: &str) -> Option<&'static Cut> {
    cuts().iter().find(|c| c.key == key)
}

impl ItemName {
    /// Of the key and the word of a line.
    pub fn of(item: &str, name: &str) -> Self {
        Self {
            item: ingredient(item).map_or(OWN, |i| i.key),
            name: name.to_owned(),
        }
    }
}
