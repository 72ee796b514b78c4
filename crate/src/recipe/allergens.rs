//! The allergens of what a recipe names: the pantry's, and what the user read on a packet.

use super::Recipe;
use crate::pantry;
use serde::Serialize;

/// What the user writes where a packet names no allergen.
pub const NO_ALLERGEN: &str = "none";

/// An allergen.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Allergen {
    /// One of the pantry's, by its key.
    Of(#[cfg_attr(feature = "types", ts(type = "AllergenKey"))] &'static str),
    /// As the user read it on a packet.
    Read(String),
}

impl Allergen {
    fn as_str(&self) -> &str {
        match self {
            Self::Of(key) => key,
            Self::Read(text) => text,
        }
    }
}

/// What is known of the allergens of a recipe. What stands on no list of the law's is not looked for.
pub struct Allergens<'r> {
    /// Each once, in the order in which they are first met.
    pub known: Vec<Allergen>,
    /// Names of what is the user's own and whose allergens were not said.
    pub unknown: Vec<&'r str>,
}

/// The allergens of a recipe.
pub fn allergens(recipe: &Recipe) -> Allergens<'_> {
    let (mut known, mut unknown): (Vec<Allergen>, Vec<&str>) = (Vec::new(), Vec::new());
    for line in &recipe.lines {
        let packet = line.allergens.trim();
        let found: Vec<Allergen> = match pantry::ingredient(&line.item) {
            Some(item) => item.allergens.iter().copied().map(Allergen::Of).collect(),
            None if packet.is_empty() => {
                unknown.push(&line.name);
                Vec::new()
            }
            None if packet.eq_ignore_ascii_case(NO_ALLERGEN) => Vec::new(),
            None => {
                let read = packet.split(',').map(str::trim).filter(|one| !one.is_empty());
                read.map(|one| Allergen::Read(one.to_owned())).collect()
            }
        };
        for one in found {
            if !known.iter().any(|met| met.as_str().eq_ignore_ascii_case(one.as_str())) {
                known.push(one);
            }
        }
    }
    Allergens { known, unknown }
}
