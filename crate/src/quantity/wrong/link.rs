//! What can be wrong with a link.

use serde::Serialize;

/// Why a recipe goes into no link, or comes out of none.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum LinkWrong {
    /// A recipe does not fit into a link.
    RecipeTooLong,
    /// Longer than any link.
    LinkTooLong,
    /// No link was pasted.
    LinkMissing,
    /// A link of another version of the page.
    LinkVersion,
    /// What was pasted is no link.
    NoLink,
    /// The end of a link is missing.
    LinkCut,
    /// A link whose checksum does not fit.
    LinkAltered,
    /// A link that is whole and holds no recipe.
    LinkHoldsNoRecipe,
    /// A link with an ingredient of a newer page.
    LinkIngredient,
    /// A figure has more digits than a link keeps.
    LinkDigits,
}
