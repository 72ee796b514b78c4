//! How long a pack keeps: earned by dose, heat and chill, counted from the end of the heat or from the kill, never from
//! today, and the shortest published time wins. The figures are in `tables/keeping.csv`.

use crate::batch::{Batch, killed, kinds};
use crate::recipe::Do;
use crate::safety::{Keeps, keeps};

const DAY: i64 = 86_400_000;

/// What was done to the meat, as far as it decides how long it keeps.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Done {
    /// Cured with enough, smoked and cooked.
    SmokedCured,
    /// Smoked and cooked.
    Smoked,
    /// Cooked.
    Cooked,
    /// Not cooked, and without cure.
    Raw,
    /// The same, and minced: what was on the outside is inside.
    RawMinced,
    /// Cured and not cooked: no keeping time is published for what is cured at home.
    RawCured,
}

impl Done {
    const fn key(self) -> Option<&'static str> {
        match self {
            Self::SmokedCured => Some("smoked-cured"),
            Self::Smoked => Some("smoked"),
            Self::Cooked => Some("cooked"),
            Self::Raw => Some("raw"),
            Self::RawMinced => Some("raw-minced"),
            Self::RawCured => None,
        }
    }
}

/// How a batch is packed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Packing {
    /// For the freezer.
    pub frozen: bool,
    /// Vacuum packs.
    pub vacuum: bool,
}

/// How long it keeps, and by which row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Keeping {
    /// The last moment, in milliseconds since 1970.
    pub until: i64,
    /// What it is counted from.
    pub from: i64,
    /// The row that decides.
    pub row: &'static Keeps,
    /// True where it is over: kept cold, by now; frozen, when it was packed.
    pub past: bool,
}

/// How long it keeps; nothing where no time is published, or where what it is counted from is not known.
pub(super) fn keeping(
    batch: &Batch,
    done: Done,
    heat_ended: Option<i64>,
    now: i64,
    packing: Packing,
) -> Option<Keeping> {
    let kinds = kinds(&batch.pieces);
    let state = done.key()?;
    let from = if matches!(done, Done::Raw | Done::RawMinced) {
        killed(&batch.killed)?
    } else {
        heat_ended?
    };
    let last = |place: &str| {
        let row = keeps(state, &kinds, place)?;
        Some((from.saturating_add(i64::from(row.low).saturating_mul(DAY)), row))
    };
    let cold = last("cold")?;
    let cold = if packing.vacuum {
        last("vacuum").into_iter().chain([cold]).min_by_key(|l| l.0)?
    } else {
        cold
    };
    // What lay longer than it keeps is not mended by frost.
    let packed = packed(batch).unwrap_or(now);
    let (until, row) = if packing.frozen { last("frozen")? } else { cold };
    let past = if packing.frozen { packed > cold.0 } else { now > cold.0 };
    Some(Keeping { until, from, row, past })
}

/// When it was packed, by its tick.
#[must_use]
pub fn packed(batch: &Batch) -> Option<i64> {
    let at = batch.recipe.steps.iter().rposition(|s| s.act == Do::Pack)?;
    batch.step(at).map(|t| t.at)
}
