//! The recipes that come with the page, from `tables/starters.json`: data in the form in which a recipe is stored.

use crate::batch::{Batch, Piece};
use crate::quantity::{Code, Length, Problem, Wrong};
use crate::recipe::Recipe;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// The recipes that come with the page.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Starters {
    /// Five recipes.
    pub recipes: Vec<Recipe>,
    /// A batch of the first, with pieces, to learn by.
    pub demo: Batch,
}

#[derive(Deserialize)]
struct Table {
    recipes: Vec<Recipe>,
    demo: Demo,
    plain: Plain,
}

/// What a weight alone is weighed by: a rub of cure and salt.
#[derive(Deserialize)]
pub(super) struct Plain {
    /// One for each group of cuts, the first for all that is in none.
    pub recipes: Vec<PlainOf>,
    /// Usual thickness of a trimmed piece, by the key of a cut or by its kind: judgement, no source.
    pub thickness: BTreeMap<String, Length>,
}

/// A plain recipe, and which cuts or kinds it is for.
#[derive(Deserialize)]
pub(super) struct PlainOf {
    pub of: Vec<String>,
    pub recipe: Recipe,
}

#[derive(Deserialize)]
struct Demo {
    tag: String,
    name: String,
    killed: String,
    pieces: Vec<Piece>,
}

const TABLE: &str = include_str!(concat!(env!("OUT_DIR"), "/starters.json"));

/// Natively a JSON reader of our own; in the browser the browser's, so that the page does not ship a second one.
#[cfg(not(target_arch = "wasm32"))]
fn table() -> Result<Table, String> {
    serde_json::from_str(TABLE).map_err(|error| error.to_string())
}

#[cfg(target_arch = "wasm32")]
fn table() -> Result<Table, String> {
    let value = js_sys::JSON::parse(TABLE).map_err(|_| "JSON".to_owned())?;
    super::from_js::from_js(value)
}

/// The starters.
///
/// # Errors
/// [`Code::BadForm`] where the table is not of its form.
pub fn starters() -> Result<Starters, Vec<Problem>> {
    let Table { recipes, demo, .. } = table().map_err(unreadable)?;
    let recipe = recipes.first().cloned();
    let recipe = recipe.ok_or_else(|| vec![Problem::of(Code::Missing, Wrong::TableEmpty)])?;
    let demo = Batch {
        killed: demo.killed,
        pieces: demo.pieces,
        ..Batch::new(demo.tag, demo.name, recipe)
    };
    Ok(Starters { recipes, demo })
}

/// The plain recipes.
///
/// # Errors
/// [`Code::BadForm`] where the table is not of its form.
pub(super) fn plain() -> Result<Plain, Vec<Problem>> {
    table().map(|table| table.plain).map_err(unreadable)
}

fn unreadable(why: String) -> Vec<Problem> {
    vec![Problem::of(Code::BadForm, Wrong::NotOfForm { why })]
}
