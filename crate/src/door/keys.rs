//! The keys of the tables, for the types of the page.

use crate::reading::Sort;
use crate::tables::{CAUTIONS, CUTS, GAME, KEEPING, PANTRY, SLIPS, SOURCES, WORDS};

/// The keys of the tables that the page has words for, by the name of their type there: its type check then misses a word
/// that is not there, and finds one for a key that is none.
#[must_use]
pub fn table_keys() -> Vec<(&'static str, Vec<&'static str>)> {
    let game = |finish: bool| GAME.iter().filter(move |g| (g.kind.is_none()) == finish).map(|g| g.key);
    let each = |keys: &mut dyn Iterator<Item = &'static str>| -> Vec<&'static str> {
        let mut keys: Vec<&str> = keys.filter(|key| !key.is_empty()).collect();
        keys.sort_unstable();
        keys.dedup();
        keys
    };
    let notes = |sorts: &'static [Sort]| WORDS.iter().filter(|w| sorts.contains(&w.sort)).map(|w| w.note);
    let asks = notes(&[Sort::Name]).filter_map(|note| Some(note.split_once('|')?.1));
    let measures = notes(&[Sort::Volume, Sort::Pack])
        .flat_map(|note| note.split('|'))
        .chain(["clove"]);
    vec![
        ("CautionKey", CAUTIONS.iter().map(|c| c.key).collect()),
        ("CutKey", CUTS.iter().map(|c| c.key).collect()),
        ("GameKey", game(false).collect()),
        ("FinishKey", game(true).collect()),
        ("WeighedKey", each(&mut GAME.iter().map(|g| g.weighed))),
        ("IngredientKey", PANTRY.iter().map(|i| i.key).collect()),
        (
            "AllergenKey",
            each(&mut PANTRY.iter().flat_map(|i| i.allergens).copied()),
        ),
        ("ProfileKey", crate::dose::profiles().iter().map(|p| p.key).collect()),
        ("KeepingKey", KEEPING.iter().map(|k| k.key).collect()),
        ("SlipKey", SLIPS.iter().map(|s| s.key).collect()),
        ("TableKey", SOURCES.iter().map(|(key, _)| *key).collect()),
        ("WhichKey", each(&mut asks.into_iter())),
        ("MeasureKey", each(&mut measures.into_iter())),
    ]
}
