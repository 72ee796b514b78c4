//! A curing agent by its printed percentages.

use crate::quantity::exact::Exact;
use crate::quantity::{Code, Fraction, Problem, Wrong, plain};
use rust_decimal::{Decimal, dec};
use serde::{Deserialize, Serialize};

/// Per cent by weight of sodium nitrite, sodium nitrate and what is no salt; what is left is taken as salt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Agent {
    /// Sodium nitrite, per cent.
    pub nitrite: Decimal,
    /// Sodium nitrate, per cent.
    pub nitrate: Decimal,
    /// What is none of these and no salt, per cent: the water of a stock, the potassium of a pure salt; else nought.
    pub water: Decimal,
}

/// Key in the pantry of a premix or a stock of the user's own.
pub const MADE: &str = "cure-made";

/// How a premix or a stock was made of a packet's cure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Made {
    /// One part of the cure in so many, 2 to 100.
    pub parts: u32,
    /// Filled up with water: a stock. With salt where not: a premix.
    pub in_water: bool,
    /// By how much its strength may be off either way, per cent of it.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub off: Fraction,
}

impl Made {
    /// What is wrong with it, for a mix of this strength.
    pub fn problem(self, agent: Agent) -> Option<Problem> {
        let parts = Decimal::from(self.parts);
        let packet = || {
            Some(Agent {
                nitrite: agent.nitrite.times(parts)?,
                nitrate: agent.nitrate.times(parts)?,
                water: Decimal::ZERO,
            })
        };
        let good = (2..=100).contains(&self.parts) && self.off.base() <= dec!(20);
        if !good || packet()?.problem().is_some() {
            return Some(Problem::of(Code::Conflict, Wrong::MixParts));
        }
        None
    }

    /// The proportion by which its strength may be off.
    pub fn spread(self) -> Option<Decimal> {
        self.off.base().over(Decimal::ONE_HUNDRED)
    }
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
            water: Decimal::ZERO,
        }
    }

    /// The same of a pure salt of nitrite or nitrate: there is no salt for the table in it.
    pub fn pure(self) -> Option<Self> {
        let water = Decimal::ONE_HUNDRED.less(self.nitrite)?.less(self.nitrate)?;
        Some(Self { water, ..self })
    }

    /// The same with the water of a stock.
    pub fn made(self, made: Option<Made>) -> Option<Self> {
        let water = match made.filter(|m| m.in_water) {
            Some(made) => {
                let neat = Decimal::ONE_HUNDRED.over(Decimal::from(made.parts))?;
                Decimal::ONE_HUNDRED.less(neat)?
            }
            None => Decimal::ZERO,
        };
        Some(Self { water, ..self })
    }

    /// True for the same strength: a tick knows no more than that.
    pub fn is_as_strong(self, other: Self) -> bool {
        (self.nitrite, self.nitrate) == (other.nitrite, other.nitrate)
    }

    /// Salt in it, as a proportion of 1.
    pub fn salt(self) -> Option<Decimal> {
        Decimal::ONE_HUNDRED
            .less(self.nitrite)?
            .less(self.nitrate)?
            .less(self.water)?
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
            water: self.water.over(parts)?,
        })
    }

    /// What is wrong with it as a packet's print, at `nitrite` or `nitrate`.
    pub fn problem(self) -> Option<Problem> {
        let strong = too_strong(self.nitrite).map(|p| p.at("nitrite"));
        strong.or_else(|| self.impossible())
    }

    /// What is wrong with it as a strength of something that is on the meat already: what can kill is no reason not to
    /// judge it.
    pub fn impossible(self) -> Option<Problem> {
        let whole = Decimal::ONE_HUNDRED;
        let place = if self.nitrite > whole { "nitrite" } else { "nitrate" };
        let sum = self.nitrite.plus(self.nitrate);
        sum.is_none_or(|s| s > whole)
            .then(|| Problem::of(Code::Conflict, Wrong::CureOverWhole).at(place))
    }
}

/// True for a strength that no home cure has: a comma in the wrong place, most often.
pub fn is_too_strong(nitrite: Decimal) -> bool {
    nitrite > STRONGEST
}

/// Refuses such a strength.
pub fn too_strong(nitrite: Decimal) -> Option<Problem> {
    is_too_strong(nitrite).then(|| {
        let nitrite = plain(nitrite);
        Problem::of(Code::TooLarge, Wrong::CureTooStrong { nitrite })
    })
}
