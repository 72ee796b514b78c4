//! One row of the pantry.

use crate::pantry::Status;
use crate::quantity::Range;
use rust_decimal::Decimal;
use serde::Serialize;

/// What kind of thing it is; decides the order of weighing and what dissolves.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Group {
    /// Holds nitrite or nitrate.
    Cure,
    /// Salt; the salt in the cure is taken off it.
    Salt,
    /// Sugar or syrup.
    Sugar,
    /// Water or another liquid; weighed in a vessel of its own.
    Liquid,
    /// Fat that is ground in with the meat; counts as meat and is weighed in a vessel of its own.
    Fat,
    /// Spice, herb and the rest; does not dissolve.
    Spice,
}

/// What a level US teaspoon weighs, in grams as text.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SpoonWeight {
    /// Least.
    pub low: &'static str,
    /// Usual.
    pub typical: &'static str,
    /// Most.
    pub high: &'static str,
}

/// One row of the pantry.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Ingredient {
    /// Key, `salt-sea-fine`; the page has its name.
    #[cfg_attr(feature = "types", ts(type = "IngredientKey"))]
    pub key: &'static str,
    /// Number that stands for it in links; never used again for another.
    pub number: u32,
    /// What recipes call it, `Fine sea salt` first: to recognise and to search by, never shown.
    pub names: &'static [&'static str],
    /// What kind of thing it is.
    pub group: Group,
    /// What a level teaspoon weighs, where known.
    pub spoon: Option<SpoonWeight>,
    /// Keys of its allergens.
    #[cfg_attr(feature = "types", ts(type = "AllergenKey[]"))]
    pub allergens: &'static [&'static str],
    /// Nitrite printed on such a packet, in per cent, to begin with; empty for what is no cure.
    pub nitrite: &'static str,
    /// Nitrate printed on such a packet, in per cent, to begin with; empty for what is no cure.
    pub nitrate: &'static str,
    /// Where the figures come from.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
    /// Numbers of the foods in the USDA National Nutrient Database that it stands for, `14411|14555`; empty for none.
    #[serde(skip)]
    pub ndb: &'static str,
    /// Grams of one clove, leaf, berry or fruit, `2 3 5` for low, usual, high (judgement); empty where none is counted.
    #[serde(skip)]
    pub each: &'static str,
}

/// What a line is called: an ingredient, whose name the page knows, or the user's own word.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ItemName {
    /// Key of the ingredient.
    #[cfg_attr(feature = "types", ts(type = "IngredientKey | 'own'"))]
    pub item: &'static str,
    /// The user's own word; empty where there is none.
    pub name: String,
}

impl Ingredient {
    /// Grams of one, where it is counted: a clove of garlic, a bay leaf.
    pub fn each(&self) -> Option<Range> {
        let mut ends = self.each.split(' ').map(|text| Decimal::from_str_exact(text).ok());
        Some(Range::new(ends.next()??, ends.next()??, ends.next()??))
    }

    /// True for a pure salt of nitrite or nitrate: its strength is what it is, and not what a packet says.
    pub fn is_pure(&self) -> bool {
        self.key.starts_with("pure-")
    }

    /// True for a name of this row, however it is spelled.
    pub fn is_called(&self, name: &str) -> bool {
        let wanted = super::folded(name.trim());
        self.names.iter().any(|known| super::folded(known) == wanted)
    }
}

impl SpoonWeight {
    /// Grams in a level US teaspoon, as a range.
    pub fn range(&self) -> Option<Range> {
        let read = |text: &str| Decimal::from_str_exact(text).ok();
        Some(Range::new(read(self.low)?, read(self.typical)?, read(self.high)?))
    }
}

impl Group {
    /// True for what goes into solution and counts as pickle in a brine.
    pub const fn dissolves(self) -> bool {
        !matches!(self, Self::Spice | Self::Fat)
    }
}
