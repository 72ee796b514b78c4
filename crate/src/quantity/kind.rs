//! The kinds of quantity: their name, bounds, units and exact factors, each in one place.

use super::figure::Figure;
use super::wrong::KindOf;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};
use std::fmt;
use std::marker::PhantomData;

/// Which units a person reads. Stored values do not depend on it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum System {
    /// Grams, millimetres, degrees Celsius.
    #[default]
    Metric,
    /// Pounds and ounces, inches, degrees Fahrenheit.
    Us,
}

/// A unit: what people write for it and how it turns into the kind's base unit.
#[derive(Debug)]
pub struct Unit {
    /// The first is the one that is printed.
    pub names: &'static [&'static str],
    /// Base units in one of this, exact.
    pub factor: Decimal,
    /// Base units at nought of this (degrees Celsius start at 32 °F).
    pub offset: Decimal,
    /// Who reads it; `None` for both.
    pub system: Option<System>,
    /// True where it is printed; the others are only read.
    pub printed: bool,
}

/// What a kind of quantity is. One place feeds the check, the documentation and the test generators.
#[derive(Debug)]
pub struct Facts {
    /// Which kind it is.
    pub what: KindOf,
    /// Least, in the base unit.
    pub min: Decimal,
    /// Most, in the base unit.
    pub max: Decimal,
    /// Decimals kept in the base unit.
    pub scale: u32,
    /// Units, the smaller before the larger; the base unit among them.
    pub units: &'static [Unit],
    /// A large and a small unit that are said together: pounds and ounces, days and hours.
    pub pairs: &'static [(&'static str, &'static str)],
    /// Several of them may be typed with a plus between them, as they are read off a scale one after another.
    pub sums: bool,
    /// The value, in the base unit, rounded for reading.
    pub show: fn(Decimal, System) -> Figure,
}

/// A kind of quantity, for the type of [`Quantity`].
pub trait Kind: 'static {
    /// What it is.
    fn facts() -> &'static Facts;
}

/// An exact quantity of one kind, held in its base unit within the kind's bounds.
pub struct Quantity<K: Kind>(Decimal, PhantomData<K>);

impl<K: Kind> Quantity<K> {
    /// The value in the base unit, kept to the kind's decimals (half away from nought).
    ///
    /// # Errors
    /// [`Code::TooSmall`](super::Code) or [`Code::TooLarge`](super::Code) outside the kind's bounds.
    pub fn new(base: Decimal) -> Result<Self, super::Problem> {
        K::facts().keep(base).map(Self::kept)
    }

    /// A value that is within the bounds and rounded already.
    pub(super) const fn kept(base: Decimal) -> Self {
        Self(base, PhantomData)
    }

    /// The value in the base unit.
    pub const fn base(self) -> Decimal {
        self.0
    }
}

// Written out, because a derive would ask the same of `K`.
impl<K: Kind> Clone for Quantity<K> {
    fn clone(&self) -> Self {
        *self
    }
}
impl<K: Kind> Copy for Quantity<K> {}
/// Nought, or the least of the kind.
impl<K: Kind> Default for Quantity<K> {
    fn default() -> Self {
        Self(Decimal::ZERO.max(K::facts().min), PhantomData)
    }
}
impl<K: Kind> PartialEq for Quantity<K> {
    fn eq(&self, other: &Self) -> bool {
        self.0 == other.0
    }
}
impl<K: Kind> Eq for Quantity<K> {}
impl<K: Kind> PartialOrd for Quantity<K> {
    fn partial_cmp(&self, other: &Self) -> Option<std::cmp::Ordering> {
        Some(self.cmp(other))
    }
}
impl<K: Kind> Ord for Quantity<K> {
    fn cmp(&self, other: &Self) -> std::cmp::Ordering {
        self.0.cmp(&other.0)
    }
}
impl<K: Kind> fmt::Debug for Quantity<K> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.print(System::Metric))
    }
}
