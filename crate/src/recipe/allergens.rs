//! The allergens of what a recipe names: the pantry's, and what the user read on a packet.

use super::Recipe;
use crate::pantry;

/// What the user writes where a packet names no allergen.
pub const NO_ALLERGEN: &str = "none";

/// What is known of the allergens of a recipe. What stands on no list of the law's is not looked for.
pub struct Allergens<'r> {
    /// By name, each once, in the order in which they are first met.
    pub known: Vec<&'r str>,
    /// Names of what is the user's own and whose allergens were not said.
    pub unknown: Vec<&'r str>,
}

/// The allergens of a recipe.
pub fn allergens(recipe: &Recipe) -> Allergens<'_> {
    let (mut known, mut unknown): (Vec<&str>, Vec<&str>) = (Vec::new(), Vec::new());
    for line in &recipe.lines {
        let packet = line.allergens.trim();
        let named = match pantry::ingredient(&line.item) {
            Some(item) => item.allergen,
            None if packet.is_empty() => {
                unknown.push(&line.name);
                ""
            }
            None if packet.eq_ignore_ascii_case(NO_ALLERGEN) => "",
            None => packet,
        };
        for one in named.split(',').map(str::trim).filter(|one| !one.is_empty()) {
            if !known.iter().any(|met| met.eq_ignore_ascii_case(one)) {
                known.push(one);
            }
        }
    }
    Allergens { known, unknown }
}
