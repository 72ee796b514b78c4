//! Parts in a million as they are shown: whole, and outward where it is a range.

use crate::quantity::exact::Exact;
use crate::quantity::{Range, fixed};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::Serialize;

/// A range in ppm, rounded outward to whole ppm for reading.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Ppm {
    /// The least it may be, rounded down.
    pub low: u32,
    /// What it usually is, to the nearest.
    pub typical: u32,
    /// The most it may be, rounded up.
    pub high: u32,
    /// The same three, exact to four decimals: `["145.6797", "147.8041", "149.9307"]`.
    pub exact: [String; 3],
}

/// A range in whole ppm, outward; one figure where both are the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PpmEnds {
    /// The least it may be.
    pub low: u32,
    /// The most it may be.
    pub high: u32,
}

/// Both ends of a range in whole ppm, outward.
pub fn ends(range: Range) -> PpmEnds {
    let Ppm { low, high, .. } = ppm(range);
    PpmEnds { low, high }
}

/// A range in whole ppm, outward.
///
/// ```
/// use cure_reckoner::dose::ppm;
/// use cure_reckoner::quantity::Range;
/// use rust_decimal::dec;
/// let shown = ppm(Range::new(dec!(145.68), dec!(147.8), dec!(149.93)));
/// assert_eq!((shown.low, shown.typical, shown.high), (145, 148, 150));
/// ```
pub fn ppm(range: Range) -> Ppm {
    let whole = |v: Option<Decimal>| v.and_then(|v| v.to_u32()).unwrap_or(u32::MAX);
    Ppm {
        low: whole(range.low.down_to(Decimal::ONE)),
        typical: whole(range.typical.nearest(Decimal::ONE)),
        high: whole(range.high.up_to(Decimal::ONE)),
        exact: [range.low, range.typical, range.high].map(|v| fixed(v, 4)),
    }
}

/// Right end of the picture's axis: the first of these above the high end.
///
/// ```
/// use cure_reckoner::dose::axis;
/// use rust_decimal::dec;
/// assert_eq!(axis(dec!(156.25), dec!(200)), 300);
/// assert_eq!(axis(dec!(300), dec!(200)), 700);
/// ```
pub fn axis(high: Decimal, limit: Decimal) -> u32 {
    const ENDS: [u32; 8] = [300, 700, 1500, 3000, 7000, 15_000, 70_000, 1_000_000];
    ENDS.into_iter()
        .find(|e| Decimal::from(*e) > high && Decimal::from(*e) > limit)
        .unwrap_or(1_000_000)
}

/// Whole ppm, downward, for reading.
pub fn whole_ppm(ppm: Decimal) -> u32 {
    ppm.floor().to_u32().unwrap_or_default()
}
