//! How long meat keeps, by published time; jerky's own rules, and the cold of a vacuum pack.

use crate::pantry::{MeatKind, Status};

/// Vacuum packs are kept at this or colder, °F, or frozen: some clostridia grow from 37.9 °F (published).
pub const VACUUM_COLD: f64 = 38.0;

/// From here on, °F, they grow (published).
pub const VACUUM_GROWS: f64 = 37.9;

/// Jerky's own rules, °F (USDA FSIS, published; the figure for vacuum packs from memory).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Jerky {
    /// Heated first to this: meat, birds.
    pub heat: (f64, f64),
    /// Then dried between these.
    pub dry: (f64, f64),
    /// Most water activity: in air (published), vacuum-packed (memory).
    pub activity: (f64, f64),
}

/// Heat first, then dry.
pub const JERKY: Jerky = Jerky {
    heat: (160.0, 165.0),
    dry: (130.0, 140.0),
    activity: (0.85, 0.91),
};

/// A row of the keeping times.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Keeps {
    /// State, kind and place, as `cooked-any-cold`; the page words the rule.
    pub key: &'static str,
    /// `smoked-cured`, `smoked`, `cooked`, `raw`, `raw-minced`, or `any`.
    pub state: &'static str,
    /// The kind of meat; nothing for any.
    pub kind: Option<MeatKind>,
    /// `cold`, `vacuum` or `frozen`.
    pub place: &'static str,
    /// Days at the low end: what counts.
    pub low: u32,
    /// Days at the high end.
    pub high: u32,
    /// Where it is from.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}

/// The row for meat of these kinds: where they are mixed, the one that keeps shortest.
pub fn keeps(state: &str, kinds: &[MeatKind], place: &str) -> Option<&'static Keeps> {
    let row = |kind: Option<MeatKind>| {
        let rows = crate::tables::KEEPING.iter();
        let mut fits = rows.filter(|k| (k.state == state || k.state == "any") && k.place == place);
        fits.find(|k| k.kind.is_none() || k.kind == kind)
    };
    let known = kinds.iter().filter_map(|kind| row(Some(*kind)));
    known.min_by_key(|k| k.low).or_else(|| row(None))
}
