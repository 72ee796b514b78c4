//! Checked decimal arithmetic under short names. `rust_decimal`'s operators panic on overflow and are not used.

use rust_decimal::{Decimal, RoundingStrategy};

/// Checked steps: `None` on overflow or division by nought.
pub trait Exact: Sized {
    /// Sum.
    fn plus(self, other: Self) -> Option<Self>;
    /// Difference.
    fn less(self, other: Self) -> Option<Self>;
    /// Product.
    fn times(self, other: Self) -> Option<Self>;
    /// Quotient.
    fn over(self, other: Self) -> Option<Self>;
    /// The largest whole number of `step` that is not above.
    fn down_to(self, step: Self) -> Option<Self>;
    /// The nearest whole number of `step`, halves upward.
    fn nearest(self, step: Self) -> Option<Self>;
    /// The smallest whole number of `step` that is not below.
    fn up_to(self, step: Self) -> Option<Self>;
    /// Rounded to so many decimals, halves away from nought: `round_dp` alone would round them to even.
    fn half_away(self, places: u32) -> Self;
}

// Not inlined: each is a few kilobytes of code, and they are called everywhere.
impl Exact for Decimal {
    #[inline(never)]
    fn plus(self, other: Self) -> Option<Self> {
        self.checked_add(other)
    }
    #[inline(never)]
    fn less(self, other: Self) -> Option<Self> {
        self.checked_sub(other)
    }
    #[inline(never)]
    fn times(self, other: Self) -> Option<Self> {
        self.checked_mul(other)
    }
    #[inline(never)]
    fn over(self, other: Self) -> Option<Self> {
        self.checked_div(other)
    }
    #[inline(never)]
    fn down_to(self, step: Self) -> Option<Self> {
        self.over(step)?.floor().times(step).map(|v| v.normalize())
    }
    #[inline(never)]
    fn nearest(self, step: Self) -> Option<Self> {
        self.over(step)?.half_away(0).times(step).map(|v| v.normalize())
    }
    #[inline(never)]
    fn up_to(self, step: Self) -> Option<Self> {
        self.over(step)?.ceil().times(step).map(|v| v.normalize())
    }
    #[inline(never)]
    fn half_away(self, places: u32) -> Self {
        self.round_dp_with_strategy(places, RoundingStrategy::MidpointAwayFromZero)
    }
}
