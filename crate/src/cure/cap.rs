//! The longest that raw meat stays in its cure. The figures are in `tables/cure-cap.csv`; meat in salt alone keeps as raw
//! meat does.

use super::fridge::moment;
use crate::batch::{Batch, Piece, killed, kind};
use crate::pantry::{self, MeatKind, Status};
use crate::recipe::Method;
use crate::safety::keeps;
use rust_decimal::prelude::ToPrimitive;

/// A row of the table, in days.
#[derive(Clone, Copy, Debug)]
pub struct CapRow {
    /// `rub`, `brine` or `ground`.
    pub way: &'static str,
    /// The kind of meat; nothing for any.
    pub kind: Option<MeatKind>,
    /// Not under this.
    pub least: f64,
    /// Whatever its size.
    pub plus: f64,
    /// For each inch of the thickest part.
    pub per_inch: f64,
    /// For each pound of one piece.
    pub per_lb: f64,
    /// Not over this.
    pub most: f64,
    /// Where it is from.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}

/// When raw meat is out of its cure at the latest, and by what.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Cap {
    /// In milliseconds since 1970.
    pub at: i64,
    pub source: &'static str,
    pub status: Status,
}

/// The last hour at which every piece of a batch that was rubbed keeps raw in its cure, in milliseconds since 1970.
#[must_use]
pub fn keeps_until(batch: &Batch) -> Option<i64> {
    let begun = batch.tick("rub")?.at;
    let caps = batch.pieces.iter().filter_map(|piece| cap(batch, piece, begun));
    caps.map(|cap| cap.at).min()
}

/// The cap of a size class that went into its cure at `begun`.
pub(super) fn cap(batch: &Batch, piece: &Piece, begun: i64) -> Option<Cap> {
    let kind = kind(piece);
    if batch.recipe.cures.is_empty() && batch.put_in.is_none() && batch.also.is_none() {
        let state = if batch.recipe.method == Method::Ground {
            "raw-minced"
        } else {
            "raw"
        };
        let row = keeps(state, &[kind], "cold")?;
        let from = killed(&batch.killed).unwrap_or(begun);
        return Some(Cap {
            at: moment(from, f64::from(row.low) * 24.0).max(begun),
            source: row.source,
            status: row.status,
        });
    }
    let way = match batch.recipe.method {
        Method::Rub => "rub",
        Method::Ground => "ground",
        Method::CoverBrine | Method::PickUp | Method::Pumped | Method::PumpedAndCovered => "brine",
    };
    let mut rows = crate::tables::CURE_CAPS.iter().filter(|r| r.way == way);
    let row = rows.find(|r| r.kind.is_none_or(|of| of == kind))?;
    Some(Cap {
        at: moment(begun, row.days(piece) * 24.0),
        source: row.source,
        status: row.status,
    })
}

impl CapRow {
    /// Days for a piece; where what they go by is not known, the most.
    fn days(&self, piece: &Piece) -> f64 {
        let by = |per: f64, size: Option<f64>| {
            if per > 0.0 {
                size.map(|size| per * size)
            } else {
                Some(0.0)
            }
        };
        let inches = piece.thickness.and_then(|t| t.base().to_f64()).map(|mm| mm / 25.4);
        let usual = || pantry::cut(&piece.cut)?.grams.map(|(_, typical, _)| f64::from(typical));
        let one = piece.one().and_then(|grams| grams.to_f64()).or_else(usual);
        let pounds = one.map(|grams| grams / 453.592_37);
        let days = by(self.per_inch, inches).zip(by(self.per_lb, pounds));
        days.map_or(self.most, |(inch, lb)| {
            (self.plus + inch + lb).clamp(self.least, self.most)
        })
    }
}
