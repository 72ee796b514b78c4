//! The kinds: mass, length, temperature, time, share and volume, with their bounds, units and exact factors.

use super::exact::Exact;
use super::figure::{Figure, grouped, plain, plain_to, whole};
use super::kind::{Facts, Kind, Quantity, System, Unit};
use super::wrong::KindOf;
use crate::tables as units;
use rust_decimal::{Decimal, dec};

const METRIC: Option<System> = Some(System::Metric);
const US: Option<System> = Some(System::Us);

const fn unit(names: &'static [&'static str], factor: Decimal, system: Option<System>) -> Unit {
    Unit {
        names,
        factor,
        offset: Decimal::ZERO,
        system,
        printed: true,
    }
}

/// A unit that people type and the page does not print.
const fn read_only(names: &'static [&'static str], factor: Decimal, system: Option<System>) -> Unit {
    Unit {
        names,
        factor,
        offset: Decimal::ZERO,
        system,
        printed: false,
    }
}

macro_rules! kinds {
    ($($(#[$doc:meta])* $kind:ident = $facts:ident;)*) => {
        $(
            $(#[$doc])*
            #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
            pub enum $kind {}
            impl Kind for $kind {
                fn facts() -> &'static Facts {
                    &$facts
                }
            }
        )*
    };
}

kinds! {
    /// Base unit: gram. International pound of 0.45359237 kg exactly (US Federal Register 24 FR 5348, 1959).
    MassKind = MASS;
    /// Base unit: millimetre. Inch of 25.4 mm exactly (same source as the pound).
    LengthKind = LENGTH;
    /// Base unit: degree Fahrenheit, since every Celsius figure is a finite Fahrenheit one and not the other way round.
    TemperatureKind = TEMPERATURE;
    /// Base unit: minute.
    TimeKind = TIME;
    /// Base unit: per cent by weight. A ppm is a milligram in a kilogram.
    FractionKind = FRACTION;
    /// Base unit: millilitre. US teaspoon of 4.92892159375 ml exactly (a sixth of a US fluid ounce).
    VolumeKind = VOLUME;
}

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

static MASS: Facts = Facts {
    what: KindOf::Weight,
    min: Decimal::ZERO,
    max: dec!(1_000_000),
    scale: 9,
    units: &[
        read_only(&units::MILLIGRAM, dec!(0.001), METRIC),
        unit(&units::GRAM, dec!(1), METRIC),
        unit(&units::KILOGRAM, dec!(1000), METRIC),
        unit(&units::OUNCE, dec!(28.349523125), US),
        unit(&units::POUND, dec!(453.59237), US),
    ],
    pairs: &[("lb", "oz")],
    sums: true,
    show: show_mass,
};

static LENGTH: Facts = Facts {
    what: KindOf::Length,
    min: Decimal::ZERO,
    max: dec!(2000),
    scale: 9,
    units: &[
        unit(&units::MILLIMETRE, dec!(1), METRIC),
        read_only(&units::CENTIMETRE, dec!(10), METRIC),
        unit(&units::INCH, dec!(25.4), US),
    ],
    pairs: &[],
    sums: false,
    show: |millimetres, system| match system {
        System::Metric => Figure::new(plain_to(millimetres, 1), "mm"),
        System::Us => Figure::new(plain_to(quotient(millimetres, dec!(25.4)), 2), "in"),
    },
};

static TEMPERATURE: Facts = Facts {
    what: KindOf::Temperature,
    min: dec!(-40),
    max: dec!(572),
    scale: 6,
    units: &[
        Unit {
            names: &units::CELSIUS,
            factor: dec!(1.8),
            offset: dec!(32),
            system: METRIC,
            printed: true,
        },
        unit(&units::FAHRENHEIT, dec!(1), US),
    ],
    pairs: &[],
    sums: false,
    show: |fahrenheit, system| match system {
        System::Us => Figure::new(plain_to(fahrenheit, 0), "°F"),
        System::Metric => {
            let celsius = quotient(fahrenheit.less(dec!(32)).unwrap_or_default(), dec!(1.8));
            Figure::new(plain_to(celsius, 1), "°C")
        }
    },
};

static TIME: Facts = Facts {
    what: KindOf::Time,
    min: Decimal::ZERO,
    max: dec!(576_000),
    scale: 6,
    units: &[
        unit(&units::MINUTES, dec!(1), None),
        unit(&units::HOURS, dec!(60), None),
        unit(&units::DAYS, dec!(1440), None),
        read_only(&units::WEEK, dec!(10080), None),
    ],
    pairs: &[("d", "h"), ("h", "min")],
    sums: false,
    // Hours are hours everywhere.
    show: |minutes, _| match minutes {
        m if m < dec!(90) => Figure::new(plain_to(m, 1), "min"),
        m if m < dec!(4320) => Figure::new(plain_to(quotient(m, dec!(60)), 1), "h"),
        m => Figure::new(plain_to(quotient(m, dec!(1440)), 1), "d"),
    },
};

static FRACTION: Facts = Facts {
    what: KindOf::Share,
    min: Decimal::ZERO,
    max: dec!(1000),
    scale: 9,
    units: &[
        unit(&units::PPM, dec!(0.0001), None),
        unit(&units::PER_CENT, dec!(1), None),
        read_only(&units::GRAMS_A_KILOGRAM, dec!(0.1), None),
    ],
    pairs: &[],
    sums: false,
    // A share has no system. Two figures below a tenth of a per cent, two decimals above.
    show: |percent, _| match percent {
        p if p >= dec!(0.1) || p.is_zero() => Figure::new(plain_to(p, 2), "%"),
        p if p >= dec!(0.001) => Figure::new(plain_to(p, 4), "%"),
        p => Figure::new(plain_to(p, 9), "%"),
    },
};

static VOLUME: Facts = Facts {
    what: KindOf::SpoonOrCup,
    min: Decimal::ZERO,
    max: dec!(1_000_000),
    scale: 11,
    units: &[
        unit(&units::MILLILITRE, dec!(1), METRIC),
        unit(&units::LITRE, dec!(1000), METRIC),
        unit(&units::TEASPOON, dec!(4.92892159375), US),
        unit(&units::TABLESPOON, dec!(14.78676478125), US),
        unit(&units::CUP, dec!(236.5882365), US),
    ],
    pairs: &[],
    sums: false,
    show: |millilitres, system| match system {
        System::Metric if millilitres >= dec!(1000) => Figure::new(plain_to(quotient(millilitres, dec!(1000)), 2), "l"),
        System::Metric => Figure::new(plain_to(millilitres, 0), "ml"),
        System::Us => match quotient(millilitres, dec!(4.92892159375)) {
            t if t < dec!(6) => Figure::new(plain_to(t, 2), "tsp"),
            t if t < dec!(48) => Figure::new(plain_to(quotient(t, dec!(3)), 1), "tbsp"),
            t => Figure::new(plain_to(quotient(t, dec!(48)), 2), "cup"),
        },
    },
};

impl super::Quantity<FractionKind> {
    /// A dose for reading: in ppm, to a tenth.
    pub fn ppm(self) -> Figure {
        Figure::new(plain_to(self.base().times(dec!(10_000)).unwrap_or_default(), 1), "ppm")
    }
}

fn quotient(value: Decimal, by: Decimal) -> Decimal {
    value.over(by).unwrap_or_default()
}

/// Two decimals under 10 g, one under 100 g, none above; ounces to a thousandth, a hundredth, a tenth.
fn show_mass(grams: Decimal, system: System) -> Figure {
    if system == System::Metric {
        let places = if grams < dec!(10) {
            2
        } else {
            u32::from(grams < dec!(100))
        };
        let text = if places == 0 {
            whole(grams)
        } else {
            plain_to(grams, places)
        };
        return Figure::new(grouped(&text), "g");
    }
    let ounces = quotient(grams, dec!(28.349523125));
    let places = match ounces {
        o if o < dec!(1) => 3,
        o if o < dec!(16) => 2,
        _ => 1,
    };
    let ounces = ounces.half_away(places);
    let pounds = quotient(ounces, dec!(16)).floor();
    let rest = pounds.times(dec!(16)).and_then(|p| ounces.less(p)).unwrap_or_default();
    match (pounds.is_zero(), rest.is_zero()) {
        (true, _) => Figure::new(plain(ounces), "oz"),
        (_, true) => Figure::new(plain(pounds), "lb"),
        _ => Figure::new(format!("{} lb {}", plain(pounds), plain(rest)), "oz"),
    }
}
