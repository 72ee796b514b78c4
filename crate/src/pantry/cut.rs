//! One row of the table of cuts.

use super::{MeatKind, Status};
use crate::quantity::{Code, Problem, Wrong};
use serde::Serialize;

/// A belly by its rind.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Belly {
    /// No belly.
    No,
    /// A belly without its rind.
    Bare,
    /// A belly with its rind on: some limits are a tenth less.
    RindOn,
}

/// A cut in the table of pieces.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Cut {
    /// Key, `mallard-breast`; the page has its name.
    #[cfg_attr(feature = "types", ts(type = "CutKey"))]
    pub key: &'static str,
    /// Decides cautions and temperatures.
    pub kind: MeatKind,
    /// Whether it is a belly, which some jurisdictions judge by rules of its own.
    pub belly: Belly,
    /// Grams a piece: low, typical, high; nothing where no range is known.
    pub grams: Option<(u32, u32, u32)>,
    /// Where the range comes from.
    pub source: &'static str,
    /// How well it is known; nothing where no range is.
    pub status: Option<Status>,
    /// Thousandths of its weight that are bone where it is left in: low, typical, high; nothing where none is in such a cut.
    pub bone: Option<(u32, u32, u32)>,
}

impl Cut {
    /// Exponent of the shape by which it heats, where it is flat: a belly and a breast (judgement). Of a joint it goes by its
    /// weight, which the cut does not know.
    #[must_use]
    pub fn flat(&self) -> Option<f64> {
        match (self.belly, self.kind) {
            (Belly::Bare | Belly::RindOn, _) => Some(0.1),
            (Belly::No, MeatKind::Bird) => Some(0.3),
            (Belly::No, _) => None,
        }
    }
}

/// The cut of a key that a person chose; nothing where none was said.
///
/// # Errors
/// [`Code::Unknown`] at `cut`.
pub fn said(key: Option<&str>) -> Result<Option<&'static Cut>, Problem> {
    let unknown = || Problem::of(Code::Unknown, Wrong::NoSuchCut).at("cut");
    key.map(|key| super::cut(key).ok_or_else(unknown)).transpose()
}
