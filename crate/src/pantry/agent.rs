//! A curing agent by its printed percentages.

use crate::quantity::exact::Exact;
use rust_decimal::{Decimal, dec};

/// Per cent by weight of sodium nitrite and sodium nitrate; what is left counts as salt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Agent {
    /// Sodium nitrite, per cent.
    pub nitrite: Decimal,
    /// Sodium nitrate, per cent.
    pub nitrate: Decimal,
}

impl Agent {
    /// Salt in it, as a proportion of 1.
    pub fn salt(self) -> Option<Decimal> {
        Decimal::ONE_HUNDRED
            .less(self.nitrite)?
            .less(self.nitrate)?
            .over(Decimal::ONE_HUNDRED)
    }

    /// What the aim is for: nitrite, or nitrate where it holds no nitrite. Per cent.
    pub fn active(self) -> Decimal {
        if self.nitrite.is_zero() {
            self.nitrate
        } else {
            self.nitrite
        }
    }

    /// One part of this in `parts` parts, filled up with salt.
    pub fn thinned(self, parts: Decimal) -> Option<Self> {
        Some(Self {
            nitrite: self.nitrite.over(parts)?,
            nitrate: self.nitrate.over(parts)?,
        })
    }
}

/// One per cent in ppm.
pub(crate) const PPM: Decimal = dec!(10_000);
