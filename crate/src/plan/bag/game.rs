//! One row of the table of what a bird or an animal gives.

use crate::pantry::{MeatKind, Status};
use crate::quantity::Range;
use crate::quantity::exact::Exact;
use rust_decimal::Decimal;
use serde::Serialize;

/// What a bird or an animal gives: grams a piece, or a share of the animal's weight.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Game {
    /// Key, `mule-deer-buck`; the page has its name.
    pub key: &'static str,
    /// The kind of meat; nothing for what is left of green weight at the end.
    pub kind: Option<MeatKind>,
    /// Key in the table of cuts, or `own`.
    pub cut: &'static str,
    /// Pieces of one animal.
    pub per: u32,
    /// The thickest part in millimetres, from memory; 0 where not known.
    pub mm: u32,
    /// Grams of the animal where none are typed: low, typical, high.
    pub whole: Option<[u32; 3]>,
    /// How the animal is weighed for the share: `field_dressed`; empty where the row has grams a piece.
    pub weighed: &'static str,
    /// Share of that weight: low, typical, high.
    pub share: Option<[Decimal; 3]>,
    /// Grams a piece: low, typical, high.
    pub grams: Option<[u32; 3]>,
    /// Where the figures come from.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}

/// A row for a picker. The page has its name.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct GameName {
    /// Key to ask by.
    #[cfg_attr(feature = "types", ts(type = "GameKey"))]
    pub key: &'static str,
    /// The kind of meat.
    pub kind: MeatKind,
    /// How the animal is weighed, `field_dressed`; empty where no weight is asked for.
    #[cfg_attr(feature = "types", ts(type = "WeighedKey | ''"))]
    pub weighed: &'static str,
    /// True where there is no figure without a weight.
    pub needs_weight: bool,
    /// True for a figure from memory.
    pub memory: bool,
}

/// Every row that can be planned by.
pub fn games() -> impl Iterator<Item = &'static Game> {
    crate::tables::GAME.iter().filter(|g| g.kind.is_some())
}

/// The row of a key, that of an ending too.
pub fn game(key: &str) -> Option<&'static Game> {
    crate::tables::GAME.iter().find(|g| g.key == key)
}

/// Rows for a picker, in the order of the table.
pub fn names() -> Vec<GameName> {
    let name = |g: &Game| {
        Some(GameName {
            key: g.key,
            kind: g.kind?,
            weighed: g.weighed,
            needs_weight: g.share.is_some() && g.whole.is_none(),
            memory: g.status == Status::Memory,
        })
    };
    crate::tables::GAME.iter().filter_map(name).collect()
}

fn range(grams: [u32; 3]) -> Range {
    let [low, typical, high] = grams.map(Decimal::from);
    Range::new(low, typical, high)
}

impl Game {
    /// Grams of one piece; of an animal of this weight, where the row is a share. `None` where a weight is needed.
    pub fn piece(&self, whole: Option<Decimal>) -> Option<Range> {
        if let Some(grams) = self.grams {
            return Some(range(grams));
        }
        let of = whole.map(Range::point).or_else(|| self.whole.map(range))?;
        self.of(of)?.map(|g| g.over(Decimal::from(self.per)))
    }

    /// The share of a weight, end by end.
    pub fn of(&self, whole: Range) -> Option<Range> {
        let [low, typical, high] = self.share?;
        Some(Range::new(
            whole.low.times(low)?,
            whole.typical.times(typical)?,
            whole.high.times(high)?,
        ))
    }
}
