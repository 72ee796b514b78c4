//! Whether pieces can be equal with their brine before they leave it. Then pick-up is no basis for a dose.
//!
//! t = Fo × (half thickness)² / D, with the figures of `tables/equalise.csv`: the fastest shape and the fast end of D,
//! since the error that hurts is to think a piece slower than it is.

use crate::quantity::exact::Exact;
use rust_decimal::{Decimal, dec};

/// How fast salt goes into one kind of meat.
#[derive(Clone, Copy, Debug)]
pub struct Speed {
    /// `bird`, `red`, `boar`, `hare`, `own`.
    pub kind: &'static str,
    /// Diffusion coefficient at its fast end, mm² an hour.
    pub fast: Decimal,
}

/// Centre at 90 %, sphere, surface kept at the strength of the brine. Computed.
const FO: Decimal = dec!(0.3035);

/// Whether the pieces even out with the brine while they are in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Evens {
    /// They can: the thinnest is equal after so many hours.
    Thin(Decimal),
    /// They cannot: it takes so many hours at least.
    Thick(Decimal),
    /// Thickness or stay is not known.
    Unknown,
}

/// Hours after which a piece so many millimetres thick can be equal with its brine.
pub fn hours(kind: &str, thickness: Decimal) -> Option<Decimal> {
    let table = &crate::tables::SPEEDS;
    let speed = table.iter().find(|s| s.kind == kind).or(table.last())?;
    let half = thickness.over(Decimal::TWO)?;
    half.times(half)?.times(FO)?.over(speed.fast)
}

/// Judges pieces by kind and thickness in millimetres, for a stay in minutes.
pub fn evens<'a>(pieces: impl IntoIterator<Item = (&'a str, Option<Decimal>)>, stay: Option<Decimal>) -> Evens {
    let soonest = pieces
        .into_iter()
        .map(|(kind, thickness)| hours(kind, thickness?))
        .reduce(|a, b| Some(a?.min(b?)))
        .flatten();
    match (soonest, stay.and_then(|m| m.over(dec!(60)))) {
        (Some(soonest), Some(stay)) if stay < soonest => Evens::Thick(soonest),
        (Some(soonest), Some(_)) => Evens::Thin(soonest),
        _ => Evens::Unknown,
    }
}
