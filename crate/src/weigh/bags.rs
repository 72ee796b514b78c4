//! One bag, one bowl: where the sizes are bagged apart, what goes into each is weighed by itself.

use super::model::{BagLine, BagList, WeighLine};
use super::settings::Settings;
use super::work::Work;
use crate::batch::{Batch, Piece};
use std::collections::BTreeSet;

/// The list of each bag; an empty one where all lie in one, nothing where it cannot be reckoned.
///
/// ```
/// use cure_reckoner::batch::Batch;
/// use cure_reckoner::weigh::{Settings, bags};
/// # let recipe = serde_json::json!({
/// #     "name": "Salt and cure", "tag": "SC", "method": "rub",
/// #     "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "150 ppm"}],
/// #     "lines": [{"item": "salt-table", "share": {"of": "green_weight", "amount": "2 %"}}],
/// # });
/// // A rub that aims at 150 ppm with a cure of 6.25 %, two bags of 500 g.
/// let batch: Batch = serde_json::from_value(serde_json::json!({
///     "tag": "SC", "name": "Salt and cure", "recipe": recipe,
///     "pieces": [
///         {"cut": "own", "name": "leg", "count": 1, "weight": "500 g", "bag": 1},
///         {"cut": "own", "name": "neck", "count": 1, "weight": "500 g", "bag": 2},
///     ],
/// })).unwrap();
/// let lists = bags(&batch, &Settings::new_page()).unwrap();
/// // 500 × 0.015 / 6.25 in each.
/// let cures: Vec<&str> = lists.iter().map(|bag| bag.bowl[0].add.text.as_str()).collect();
/// assert_eq!(cures, ["1.2 g", "1.2 g"]);
/// ```
#[must_use]
pub fn bags(batch: &Batch, settings: &Settings) -> Option<Vec<BagList>> {
    let all: BTreeSet<u32> = batch.pieces.iter().map(|p| p.bag).collect();
    if all.len() < 2 {
        return Some(Vec::new());
    }
    all.into_iter().map(|bag| one(batch, settings, bag)).collect()
}

fn one(batch: &Batch, settings: &Settings, bag: u32) -> Option<BagList> {
    let is_in = |piece: &&Piece| piece.bag == bag;
    let part = Batch {
        pieces: batch.pieces.iter().filter(is_in).cloned().collect(),
        ticks: Vec::new(),
        put_in: None,
        also: None,
        ..batch.clone()
    };
    let work = Work::new(&part, settings).ok()?;
    let (bowl, vessel, green) = work.lists()?;
    let verdict = work.verdict().ok()?;
    let line = |line: WeighLine| BagLine {
        id: line.id,
        add: line.add,
        reads: line.reads,
    };
    let places = (0_u32..).zip(&batch.pieces);
    Some(BagList {
        bag,
        classes: places.filter(|(_, p)| p.bag == bag).map(|(at, _)| at).collect(),
        green,
        bowl: bowl.into_iter().map(line).collect(),
        vessel: vessel.into_iter().map(line).collect(),
        outcome: verdict.outcome,
        nitrite: verdict.nitrite,
    })
}
