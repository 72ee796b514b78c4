//! A time of a batch, as it is answered.

use crate::recipe::Basis;
use serde::Serialize;

/// One time of a batch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Timed {
    /// `step:1`; `turn:0:2`; `draw:0`, `rinse:0` and `dry:0` of a size class that comes out of the cure first; `pull:0` of one over
    /// the fire; `two_hours:5` and `cold:5` of a chill; `end`.
    pub id: String,
    /// Index of its step; the number of steps for the end.
    pub step: u32,
    /// The size class it is of; nothing for all that are left.
    pub class: Option<u32>,
    /// When, in milliseconds since 1970: its tick, or when it is due.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
    /// When it ends if begun then.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub ends: Option<i64>,
    /// What its length rests on, or of a mark its time.
    pub kind: Basis,
    /// Somebody has to be by all the while.
    pub presence: bool,
    /// Where it was due before it made way for rest.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub moved: Option<i64>,
}

impl Timed {
    /// A time of the recipe for all sizes, that wants nobody by.
    pub(super) fn of(id: String, step: usize, at: i64) -> Self {
        Self {
            id,
            step: u32::try_from(step).unwrap_or(u32::MAX),
            class: None,
            at,
            ends: None,
            kind: Basis::Recipe,
            presence: false,
            moved: None,
        }
    }
}
