//! The kinds of quantity: their name, bounds, units and exact factors, each in one place.

use super::print::{self, Figure, plain_to};
use rust_decimal::{Decimal, dec};
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
}

const fn unit(names: &'static [&'static str], factor: Decimal, system: Option<System>) -> Unit {
    Unit {
        names,
        factor,
        offset: Decimal::ZERO,
        system,
    }
}

const METRIC: Option<System> = Some(System::Metric);
const US: Option<System> = Some(System::Us);

/// A kind of quantity. The constants feed the check, the message, the documentation and the test generators.
pub trait Kind: 'static {
    /// The kind's name in a sentence.
    const WHAT: &'static str;
    /// Least and most, in the base unit.
    const MIN: Decimal;
    /// See [`Kind::MIN`].
    const MAX: Decimal;
    /// Decimals kept in the base unit.
    const SCALE: u32;
    /// Units from small to large within each system; the base unit among them.
    const UNITS: &'static [Unit];
    /// What to type, for messages.
    const EXAMPLE: &'static str;
    /// The value, in the base unit, rounded for reading.
    fn show(base: Decimal, system: System) -> Figure;
}

/// Base unit: gram. International pound of 0.45359237 kg exactly (US Federal Register 24 FR 5348, 1959).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum MassKind {}
impl Kind for MassKind {
    const WHAT: &'static str = "weight";
    const MIN: Decimal = Decimal::ZERO;
    const MAX: Decimal = dec!(1_000_000);
    const SCALE: u32 = 9;
    const UNITS: &'static [Unit] = &[
        unit(&["mg", "milligram", "milligrams"], dec!(0.001), METRIC),
        unit(
            &["g", "gr", "gram", "grams", "gramme", "grammes", "gm", "gms"],
            dec!(1),
            METRIC,
        ),
        unit(
            &[
                "kg",
                "kgs",
                "kilo",
                "kilos",
                "kilogram",
                "kilograms",
                "kilogramme",
                "kilogrammes",
            ],
            dec!(1000),
            METRIC,
        ),
        unit(&["oz", "ounce", "ounces", "ozs"], dec!(28.349523125), US),
        unit(&["lb", "lbs", "pound", "pounds", "#"], dec!(453.59237), US),
    ];
    const EXAMPLE: &'static str = "1480 g, 3.2 kg or 7 lb 3 oz";
    fn show(base: Decimal, system: System) -> Figure {
        print::show_mass(base, system)
    }
}

/// Base unit: millimetre. Inch of 25.4 mm exactly (same source as the pound).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum LengthKind {}
impl Kind for LengthKind {
    const WHAT: &'static str = "length";
    const MIN: Decimal = Decimal::ZERO;
    const MAX: Decimal = dec!(2000);
    const SCALE: u32 = 9;
    const UNITS: &'static [Unit] = &[
        unit(
            &["mm", "millimetre", "millimetres", "millimeter", "millimeters"],
            dec!(1),
            METRIC,
        ),
        unit(
            &["cm", "centimetre", "centimetres", "centimeter", "centimeters"],
            dec!(10),
            METRIC,
        ),
        unit(&["in", "\"", "″", "inch", "inches", "ins"], dec!(25.4), US),
    ];
    const EXAMPLE: &'static str = "26 mm, 2.6 cm or 1 1/4 in";
    fn show(base: Decimal, system: System) -> Figure {
        match system {
            System::Metric => Figure::new(plain_to(base, 1), "mm"),
            System::Us => Figure::new(plain_to(base.checked_div(dec!(25.4)).unwrap_or_default(), 2), "in"),
        }
    }
}

/// Base unit: degree Fahrenheit, since every Celsius figure is a finite Fahrenheit one and not the other way round.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum TemperatureKind {}
impl Kind for TemperatureKind {
    const WHAT: &'static str = "temperature";
    const MIN: Decimal = dec!(-40);
    const MAX: Decimal = dec!(572);
    const SCALE: u32 = 6;
    const UNITS: &'static [Unit] = &[
        Unit {
            names: &["°C", "C", "c", "℃", "ºC", "deg C", "degC", "celsius"],
            factor: dec!(1.8),
            offset: dec!(32),
            system: METRIC,
        },
        unit(&["°F", "F", "f", "℉", "ºF", "deg F", "degF", "fahrenheit"], dec!(1), US),
    ];
    const EXAMPLE: &'static str = "3 °C, 38 °F or 145F";
    fn show(base: Decimal, system: System) -> Figure {
        match system {
            System::Us => Figure::new(plain_to(base, 0), "°F"),
            System::Metric => {
                let celsius = base
                    .checked_sub(dec!(32))
                    .and_then(|v| v.checked_div(dec!(1.8)))
                    .unwrap_or_default();
                Figure::new(plain_to(celsius, 1), "°C")
            }
        }
    }
}

/// Base unit: minute.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum TimeKind {}
impl Kind for TimeKind {
    const WHAT: &'static str = "time";
    const MIN: Decimal = Decimal::ZERO;
    const MAX: Decimal = dec!(576_000);
    const SCALE: u32 = 6;
    const UNITS: &'static [Unit] = &[
        unit(&["min", "mins", "minute", "minutes"], dec!(1), None),
        unit(&["h", "hr", "hrs", "hour", "hours"], dec!(60), None),
        unit(&["d", "day", "days"], dec!(1440), None),
        unit(&["wk", "week", "weeks"], dec!(10080), None),
    ];
    const EXAMPLE: &'static str = "36 h, 1.5 d or 1 d 12 h";
    fn show(base: Decimal, system: System) -> Figure {
        let _ = system; // Hours are hours everywhere.
        let (factor, unit) = match base {
            b if b < dec!(90) => (dec!(1), "min"),
            b if b < dec!(4320) => (dec!(60), "h"),
            _ => (dec!(1440), "d"),
        };
        Figure::new(plain_to(base.checked_div(factor).unwrap_or_default(), 1), unit)
    }
}

/// Base unit: per cent by weight. A ppm is a milligram in a kilogram.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FractionKind {}
impl Kind for FractionKind {
    const WHAT: &'static str = "share";
    const MIN: Decimal = Decimal::ZERO;
    const MAX: Decimal = dec!(1000);
    const SCALE: u32 = 9;
    const UNITS: &'static [Unit] = &[
        unit(&["ppm", "mg/kg"], dec!(0.0001), None),
        unit(&["%", "per cent", "percent", "pct"], dec!(1), None),
        unit(&["g/kg"], dec!(0.1), None),
    ];
    const EXAMPLE: &'static str = "2.2 % or 150 ppm";
    fn show(base: Decimal, system: System) -> Figure {
        let _ = system; // A share has no system.
        if base < dec!(0.1) && !base.is_zero() {
            return Figure::new(plain_to(base.checked_mul(dec!(10_000)).unwrap_or_default(), 0), "ppm");
        }
        Figure::new(plain_to(base, 2), "%")
    }
}

/// Base unit: millilitre. US teaspoon of 4.92892159375 ml exactly (a third of half a US fluid ounce).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum VolumeKind {}
impl Kind for VolumeKind {
    const WHAT: &'static str = "spoon or cup";
    const MIN: Decimal = Decimal::ZERO;
    const MAX: Decimal = dec!(1_000_000);
    const SCALE: u32 = 11;
    const UNITS: &'static [Unit] = &[
        unit(
            &["ml", "mL", "millilitre", "millilitres", "milliliter", "milliliters"],
            dec!(1),
            METRIC,
        ),
        unit(&["l", "L", "litre", "litres", "liter", "liters"], dec!(1000), METRIC),
        unit(&["tsp", "teaspoon", "teaspoons", "tsps"], dec!(4.92892159375), US),
        unit(
            &["tbsp", "tablespoon", "tablespoons", "tbsps", "tbs"],
            dec!(14.78676478125),
            US,
        ),
        unit(&["cup", "cups"], dec!(236.5882365), US),
    ];
    const EXAMPLE: &'static str = "2½ tsp, 1 1/2 tbsp or 250 ml";
    fn show(base: Decimal, system: System) -> Figure {
        match system {
            System::Metric if base >= dec!(1000) => {
                Figure::new(plain_to(base.checked_div(dec!(1000)).unwrap_or_default(), 2), "l")
            }
            System::Metric => Figure::new(plain_to(base, 0), "ml"),
            System::Us => {
                let teaspoons = base.checked_div(dec!(4.92892159375)).unwrap_or_default();
                match teaspoons {
                    t if t < dec!(6) => Figure::new(plain_to(t, 2), "tsp"),
                    t if t < dec!(48) => Figure::new(plain_to(t.checked_div(dec!(3)).unwrap_or_default(), 1), "tbsp"),
                    t => Figure::new(plain_to(t.checked_div(dec!(48)).unwrap_or_default(), 2), "cup"),
                }
            }
        }
    }
}

/// An exact quantity of one kind, held in its base unit within the kind's bounds.
pub struct Quantity<K: Kind>(Decimal, PhantomData<K>);

/// A weight, in grams.
pub type Mass = Quantity<MassKind>;
/// A length, in millimetres.
pub type Length = Quantity<LengthKind>;
/// A temperature, in degrees Fahrenheit.
pub type Temperature = Quantity<TemperatureKind>;
/// A span of time, in minutes.
pub type Span = Quantity<TimeKind>;
/// A share by weight, in per cent.
pub type Fraction = Quantity<FractionKind>;
/// A volume, in millilitres.
pub type Volume = Quantity<VolumeKind>;

impl<K: Kind> Quantity<K> {
    /// The value in the base unit, kept to the kind's decimals (half away from nought).
    ///
    /// # Errors
    /// [`Code::TooSmall`](super::Code) or [`Code::TooLarge`](super::Code) outside the kind's bounds.
    pub fn new(base: Decimal) -> Result<Self, super::Problem> {
        let kept = base.round_dp_with_strategy(K::SCALE, rust_decimal::RoundingStrategy::MidpointAwayFromZero);
        super::read::within::<K>(kept)?;
        Ok(Self(kept.normalize(), PhantomData))
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
        Self(Decimal::ZERO.max(K::MIN), PhantomData)
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
