//! What stands on a label or a tag, as facts: the page words them.

use crate::pantry::{ItemName, Status};
use crate::quantity::Figure;
use crate::recipe::Allergen;
use serde::Serialize;

/// Meat by what it is of.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Meat {
    /// Key of the cut.
    #[cfg_attr(feature = "types", ts(type = "CutKey | 'own'"))]
    pub cut: &'static str,
    /// The user's own word, where it is none of the cuts.
    pub name: String,
    /// How many; nothing where nobody counted them, and on a pack, which holds a part of them.
    pub count: Option<u32>,
}

/// A salt that is not for the taste.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum CureSalt {
    /// Sodium nitrite.
    Nitrite,
    /// Sodium nitrate.
    Nitrate,
}

/// One ingredient.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Inside {
    /// The meat.
    Meat {
        /// What it is of.
        of: Meat,
    },
    /// A line of the recipe.
    Item {
        /// What it is called.
        of: ItemName,
    },
    /// A cure.
    Cure {
        /// Its key; nothing where only the per cent is known.
        #[cfg_attr(feature = "types", ts(type = "IngredientKey | null"))]
        item: Option<&'static str>,
        /// What its packet names beside the salt.
        salts: Vec<CureSalt>,
    },
}

/// A fact on a paper.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum PaperFact {
    /// Which birds or animals are given and how many: only the giver knows.
    Species,
    /// The day of the kill.
    Killed {
        /// `2026-11-14`; empty where it is not known.
        on: String,
    },
    /// There is no cure in it.
    NoCure,
    /// What went in, the whole of the range in whole ppm as the sodium salt, rounded outward: a label is read by others.
    Cured {
        /// Sodium nitrite, least and most.
        nitrite: Option<(u32, u32)>,
        /// Sodium nitrate, least and most.
        nitrate: Option<(u32, u32)>,
    },
    /// Cured, with less than counts.
    CuredWeakly,
    /// How much went in is not known well enough to say.
    CureUnknown,
    /// In its cure, and not cooked yet.
    Raw,
    /// Read so hot in the middle.
    Cooked {
        /// What its coldest piece read.
        read: Figure,
    },
    /// Not cooked: this has to be read before it is eaten.
    CookTo {
        /// What it needs in the middle.
        needed: Figure,
    },
    /// Not cooked, and not to be.
    NotCooked,
    /// What is in it, the heaviest first as it went in.
    Contents {
        /// The ingredients.
        inside: Vec<Inside>,
        /// Allergens that the recipe names.
        allergens: Vec<Allergen>,
        /// What is the user's own and whose packet was not read for allergens.
        unread: Vec<String>,
    },
}

/// What is written onto a paper by hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Blank {
    /// How many birds in all.
    Birds,
    /// Name and address of the hunter.
    Hunter,
    /// The hunter's signature.
    Signature,
    /// Who gives it.
    From,
    /// Who gets it, and the day.
    GivenTo,
}

/// What a date rests on: the row of the keeping times that decides.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct KeptBy {
    /// The key of the row.
    #[cfg_attr(feature = "types", ts(type = "KeepingKey"))]
    pub row: &'static str,
    /// Where it is from.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}
