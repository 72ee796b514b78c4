//! One row of the table of cuts.

use serde::Serialize;

/// A cut in the table of pieces.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Cut {
    /// Key, `mallard-breast`.
    pub key: &'static str,
    /// `Mallard breast`.
    pub name: &'static str,
    /// `bird`, `red`, `boar`, `hare`: decides cautions and temperatures.
    pub kind: &'static str,
    /// True for a belly, which some jurisdictions judge by rules of its own.
    pub belly: bool,
    /// Grams a piece: low, typical, high; nothing where no range is known.
    pub grams: Option<(u32, u32, u32)>,
    /// Where the range comes from.
    pub source: &'static str,
    /// `published`, `memory`, `judgement`; `none` where no range is known.
    pub status: &'static str,
}
