//! A number and its unit, and how numbers are written.

use super::exact::Exact;
use rust_decimal::Decimal;
use serde::Serialize;

/// A number and its unit, apart, so that a page can set the number large.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Figure {
    /// The number: `1480`, `3 lb 4.2`.
    pub num: String,
    /// Its unit: `g`, `oz`.
    pub unit: String,
    /// Both, as one text: `1480 g`.
    pub text: String,
}

impl Figure {
    /// A number with its unit.
    pub fn new(num: impl Into<String>, unit: impl Into<String>) -> Self {
        let (num, unit) = (num.into(), unit.into());
        let text = join(&num, &unit);
        Self { num, unit, text }
    }
}

/// `150` and `ppm` to `150 ppm`.
pub(crate) fn join(number: &str, unit: &str) -> String {
    format!("{number} {unit}")
}

/// A decimal without trailing noughts.
pub fn plain(value: Decimal) -> String {
    value.normalize().to_string()
}

/// Rounded to `places`, without trailing noughts.
pub(crate) fn plain_to(value: Decimal, places: u32) -> String {
    plain(value.half_away(places))
}

/// Half away from nought, at `places` decimals, with the noughts kept.
pub fn fixed(value: Decimal, places: u32) -> String {
    let mut rounded = value.half_away(places);
    rounded.rescale(places);
    rounded.to_string()
}

/// To the nearest whole.
pub(crate) fn whole(value: Decimal) -> String {
    fixed(value, 0)
}

/// Groups of three with a narrow no-break space, from five digits on.
pub fn grouped(number: &str) -> String {
    let (digits, decimals) = number.split_once('.').map_or((number, None), |(w, d)| (w, Some(d)));
    let mut out = String::new();
    for (i, c) in digits.chars().enumerate() {
        let left = digits.len().saturating_sub(i);
        if digits.len() >= 5 && i > 0 && left % 3 == 0 {
            out.push('\u{202f}');
        }
        out.push(c);
    }
    if let Some(decimals) = decimals {
        out.push('.');
        out.push_str(decimals);
    }
    out
}
