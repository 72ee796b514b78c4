//! A value that is known only as low, typical and high.

use super::exact::Exact;
use rust_decimal::Decimal;

/// Low, typical and high of one figure, in the same unit; `low <= typical <= high`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Range {
    /// The least it may be.
    pub low: Decimal,
    /// What it usually is.
    pub typical: Decimal,
    /// The most it may be.
    pub high: Decimal,
}

impl Range {
    /// A value that is known exactly.
    pub const fn point(value: Decimal) -> Self {
        Self {
            low: value,
            typical: value,
            high: value,
        }
    }

    /// Three values, put in order.
    pub fn new(low: Decimal, typical: Decimal, high: Decimal) -> Self {
        let (low, high) = (low.min(high), high.max(low));
        Self {
            low,
            typical: typical.clamp(low, high),
            high,
        }
    }

    /// A value that a scale showed: half a step either way, never under nought.
    pub fn weighed(value: Decimal, step: Decimal) -> Option<Self> {
        let half = step.over(Decimal::TWO)?;
        Some(Self {
            low: value.less(half)?.max(Decimal::ZERO),
            typical: value,
            high: value.plus(half)?,
        })
    }

    /// Both ends and the middle, each by the same step.
    pub fn map(self, f: impl Fn(Decimal) -> Option<Decimal>) -> Option<Self> {
        Some(Self::new(f(self.low)?, f(self.typical)?, f(self.high)?))
    }

    /// End by end.
    pub fn plus(self, other: Self) -> Option<Self> {
        Some(Self {
            low: self.low.plus(other.low)?,
            typical: self.typical.plus(other.typical)?,
            high: self.high.plus(other.high)?,
        })
    }

    /// The widest ratio: low over high, typical over typical, high over low. `None` over nought.
    pub fn over(self, base: Self) -> Option<Self> {
        Some(Self {
            low: self.low.over(base.high)?,
            typical: self.typical.over(base.typical)?,
            high: self.high.over(base.low)?,
        })
    }

    /// True when low and high are the same.
    pub fn is_point(self) -> bool {
        self.low == self.high
    }
}
