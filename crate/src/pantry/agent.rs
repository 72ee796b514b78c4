//! A curing agent by its printed percentages.

use crate::quantity::exact::Exact;
use crate::quantity::{Code, Fraction, Problem, System};
use rust_decimal::{Decimal, dec};

/// Per cent by weight of sodium nitrite and sodium nitrate; what is left is taken as salt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Agent {
    /// Sodium nitrite, per cent.
    pub nitrite: Decimal,
    /// Sodium nitrate, per cent.
    pub nitrate: Decimal,
}

/// Strongest cure taken, per cent nitrite: home cures are made to 6.25 % or less (common practice, no source).
const STRONGEST: Decimal = dec!(20);

/// One per cent in ppm.
pub(crate) const PPM: Decimal = dec!(10_000);

impl Agent {
    /// From what is printed; no nitrate where none is.
    pub fn printed(nitrite: Fraction, nitrate: Option<Fraction>) -> Self {
        Self {
            nitrite: nitrite.base(),
            nitrate: nitrate.map_or(Decimal::ZERO, Fraction::base),
        }
    }

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

    /// What is wrong with it as a packet's print, at `nitrite` or `nitrate`.
    pub fn problem(self) -> Option<Problem> {
        if let Some(problem) = too_strong(self.nitrite) {
            return Some(problem.at("nitrite"));
        }
        let sum = self.nitrite.plus(self.nitrate);
        sum.is_none_or(|s| s > Decimal::ONE_HUNDRED).then(|| {
            Problem::new(
                Code::Conflict,
                "Nitrite and nitrate together are more than 100 %. Read the packet again.",
            )
            .at("nitrate")
        })
    }
}

/// Refuses a strength that no home cure has: a comma in the wrong place, most often.
pub fn too_strong(nitrite: Decimal) -> Option<Problem> {
    (nitrite > STRONGEST).then(|| {
        let text = Fraction::new(nitrite)
            .map(|f| f.show(System::Metric).text)
            .unwrap_or_default();
        Problem::new(
            Code::TooLarge,
            format!("{text} nitrite is too strong to be a cure. Read the packet again: most say 6.25 % or less."),
        )
    })
}
