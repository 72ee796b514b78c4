//! One bag, one bowl: where the sizes are bagged apart, what goes into each is weighed by itself.

use super::model::{BagLine, BagList, WeighLine};
use super::settings::Settings;
use super::work::Work;
use crate::batch::{Batch, Piece};
use std::collections::BTreeSet;

/// The list of each bag; an empty one where all lie in one, nothing where it cannot be reckoned.
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
