//! What is usual for a step whose recipe gives no time, and what a time rests on. The figures are in
//! `tables/usual-hours.csv`.

use super::{Do, Step};
use crate::pantry::{MeatKind, Status};
use crate::quantity::exact::Exact;
use crate::tables::COOL_SMOKE;
use rust_decimal::prelude::ToPrimitive;
use rust_decimal::{Decimal, dec};
use serde::Serialize;

/// What a time rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Basis {
    /// A published time.
    Published,
    /// The recipe's own.
    Recipe,
    /// What is usual, where the recipe gives none.
    Usual,
    /// Worked from the meat, its thickness and what was read.
    Forecast,
}

/// A row of the usual times.
#[derive(Clone, Copy, Debug)]
pub struct UsualRow {
    /// The act.
    pub act: Do,
    /// The kind of meat; nothing for any.
    pub kind: Option<MeatKind>,
    /// Minutes.
    pub minutes: i64,
    /// Where it is from.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}

/// What is usual for an act on meat of these kinds: the longest where they are mixed; nothing for what takes a moment.
#[must_use]
pub fn usual(act: Do, kinds: &[MeatKind]) -> Option<&'static UsualRow> {
    let rows = || crate::tables::USUAL_HOURS.iter().filter(|r| r.act == act);
    let of = |kind: &MeatKind| rows().find(|r| r.kind.is_none_or(|of| of == *kind));
    kinds
        .iter()
        .filter_map(of)
        .max_by_key(|r| r.minutes)
        .or_else(|| rows().find(|r| r.kind.is_none()))
}

/// Cold smoke stays under it, 90 °F (common practice, no source).
pub const COLD_SMOKE: Decimal = dec!(90);

impl Step {
    /// Smoke that cooks nothing: it is so cold, or is called so, and no middle ends it.
    #[must_use]
    pub fn is_cold_smoke(&self) -> bool {
        let called = || {
            let note = self.note.to_lowercase();
            COOL_SMOKE.iter().any(|sign| note.contains(sign))
        };
        self.act == Do::Smoke && self.until.is_none() && self.at.map_or_else(called, |at| at.base() < COLD_SMOKE)
    }

    /// How long it takes in milliseconds, by the recipe or as is usual; nothing for what is done in a moment.
    #[must_use]
    pub fn takes(&self, kinds: &[MeatKind]) -> Option<(i64, Basis)> {
        let own = self
            .lasts
            .and_then(|s| s.base().times(dec!(60_000)))
            .map(|ms| ms.round());
        if let Some(own) = own.and_then(|ms| ms.to_i64()) {
            return Some((own, Basis::Recipe));
        }
        let usual = usual(self.act, kinds)?;
        Some((usual.minutes.saturating_mul(60_000), Basis::Usual))
    }
}
