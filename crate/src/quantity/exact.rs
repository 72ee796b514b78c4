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
}

impl Exact for Decimal {
    fn plus(self, other: Self) -> Option<Self> {
        self.checked_add(other)
    }
    fn less(self, other: Self) -> Option<Self> {
        self.checked_sub(other)
    }
    fn times(self, other: Self) -> Option<Self> {
        self.checked_mul(other)
    }
    fn over(self, other: Self) -> Option<Self> {
        self.checked_div(other)
    }
    fn down_to(self, step: Self) -> Option<Self> {
        self.over(step)?.floor().times(step).map(|v| v.normalize())
    }
    fn nearest(self, step: Self) -> Option<Self> {
        let whole = self
            .over(step)?
            .round_dp_with_strategy(0, RoundingStrategy::MidpointAwayFromZero);
        whole.times(step).map(|v| v.normalize())
    }
    fn up_to(self, step: Self) -> Option<Self> {
        self.over(step)?.ceil().times(step).map(|v| v.normalize())
    }
}
