//! What a stay in a strong brine comes to: whether pieces can be equal with it before they leave it, and how much can
//! have diffused in by then. Pick-up alone is no basis for a dose.
//!
//! t = Fo × (half thickness)² / D, with the figures of `tables/equalise.csv`. For the limit: the fastest shape, a ball,
//! since a piece tapers, and the fast end of D; the error that hurts there is to think a piece slower than it is. For the
//! least: a flat piece at the slow end.

use crate::pantry::MeatKind;
use crate::quantity::Range;
use crate::quantity::exact::Exact;
use crate::transport::uptake;
use rust_decimal::prelude::{FromPrimitive, ToPrimitive};
use rust_decimal::{Decimal, dec};

/// How fast salt goes into one kind of meat, mm² an hour.
#[derive(Clone, Copy, Debug)]
pub struct Speed {
    /// The kind of meat.
    pub kind: MeatKind,
    /// Diffusion coefficient at its slow end.
    pub slow: Decimal,
    /// The likely one.
    pub likely: Decimal,
    /// At its fast end.
    pub fast: Decimal,
}

/// Centre at 90 %, sphere, surface kept at the strength of the brine. Computed.
const FO: Decimal = dec!(0.3035);
/// Nitrite against salt at the slow end, as for the colour front. Judgement.
const NITRITE: Decimal = dec!(0.7);
/// Frozen and thawed muscle against fresh. Published.
const THAWED: Decimal = dec!(1.3);

/// A piece, as far as this needs it.
#[derive(Clone, Copy, Debug)]
pub struct Lying {
    /// The kind of meat.
    pub kind: MeatKind,
    /// The thickest part, millimetres; nothing where it is not known.
    pub thickness: Option<Decimal>,
    /// It was frozen and thawed before.
    pub thawed: bool,
}

/// Whether the pieces even out with the brine while they are in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Evens {
    /// They can: the thinnest is equal after so many hours.
    Thin(Decimal),
    /// They cannot.
    Thick {
        /// Hours that it takes at least.
        soonest: Decimal,
        /// How far diffusion comes in the stay, D t / (half thickness)²: slow in the thickest piece, likely, fast in the
        /// thinnest.
        fo: Range,
    },
    /// Thickness or stay is not known.
    Unknown,
}

/// The row of a kind; the build wants one for each.
fn speed(kind: MeatKind) -> Option<&'static Speed> {
    crate::tables::SPEEDS.iter().find(|s| s.kind == kind)
}

/// Hours after which a piece so many millimetres thick can be equal with its brine.
///
/// ```
/// use cure_reckoner::dose::hours;
/// use cure_reckoner::pantry::MeatKind;
/// use rust_decimal::dec;
/// // Fo 0.3035 × (15 mm)² / 3.6 mm² an hour, the fast end for birds.
/// assert_eq!(hours(MeatKind::Bird, dec!(30)), Some(dec!(18.96875)));
/// ```
pub fn hours(kind: MeatKind, thickness: Decimal) -> Option<Decimal> {
    let half = thickness.over(Decimal::TWO)?;
    half.times(half)?.times(FO)?.over(speed(kind)?.fast)
}

/// Judges pieces for a stay in minutes.
///
/// ```
/// use cure_reckoner::dose::{Evens, Lying, evens};
/// use cure_reckoner::pantry::MeatKind;
/// use rust_decimal::dec;
/// let breast = Lying { kind: MeatKind::Bird, thickness: Some(dec!(30)), thawed: false };
/// // 20 h are enough for 18.97 h, 12 h are not.
/// assert_eq!(evens([breast], Some(dec!(1200))), Evens::Thin(dec!(18.96875)));
/// assert!(matches!(evens([breast], Some(dec!(720))), Evens::Thick { .. }));
/// assert_eq!(evens([breast], None), Evens::Unknown);
/// ```
pub fn evens(pieces: impl IntoIterator<Item = Lying>, stay: Option<Decimal>) -> Evens {
    let Some(stay) = stay.and_then(|m| m.over(dec!(60))) else {
        return Evens::Unknown;
    };
    let one = |piece: Lying| {
        let (speed, thickness) = (speed(piece.kind)?, piece.thickness?);
        let faster = if piece.thawed { THAWED } else { Decimal::ONE };
        let half = thickness.over(Decimal::TWO)?;
        let fo = |d: Decimal| d.times(stay)?.over(half.times(half)?);
        let fo = Range {
            low: fo(speed.slow.times(NITRITE)?)?,
            typical: fo(speed.likely)?,
            high: fo(speed.fast.times(faster)?)?,
        };
        Some((hours(piece.kind, thickness)?.over(faster)?, fo))
    };
    let all = pieces.into_iter().map(one).reduce(|a, b| {
        let ((soon, fo), (other, also)) = (a?, b?);
        Some((
            soon.min(other),
            Range {
                low: fo.low.min(also.low),
                typical: fo.typical.max(also.typical),
                high: fo.high.max(also.high),
            },
        ))
    });
    match all.flatten() {
        Some((soonest, _)) if stay >= soonest => Evens::Thin(soonest),
        Some((soonest, fo)) => Evens::Thick { soonest, fo },
        None => Evens::Unknown,
    }
}

/// Of what the meat comes to when it is equal with its brine, the share that has diffused in: at least, likely, at most.
/// `ratio`: grams of brine to the gram of meat. Rounded outward to a millionth, and the high end a thousandth more for the
/// steps of the reckoning: in coarser steps a little more cure could come to a little less of it.
pub fn diffused(fo: Range, ratio: Range) -> Option<Range> {
    const STEP: Decimal = dec!(0.000_001);
    const MORE: Decimal = dec!(0.001);
    // A flat piece, a long round one, a ball.
    let share = |exponent: f64, fo: Decimal, ratio: Decimal| {
        let share = uptake(exponent, fo.to_f64()?, ratio.to_f64()?);
        Decimal::from_f64(share)
    };
    Some(Range {
        low: share(0.0, fo.low, ratio.high)?.down_to(STEP)?,
        typical: share(1.0, fo.typical, ratio.typical)?.nearest(STEP)?,
        high: share(2.0, fo.high, ratio.low)?
            .up_to(STEP)?
            .plus(MORE)?
            .min(Decimal::ONE),
    })
}
