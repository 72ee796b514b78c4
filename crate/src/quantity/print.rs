//! Quantity to text. [`Quantity::print`] reads back to the same value; [`Quantity::show`] is rounded for reading.

use super::kind::{Kind, Quantity, System, Unit};
use super::number::glyph_of;
use super::read::{join, units_of};
use rust_decimal::{Decimal, RoundingStrategy, dec};
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

/// A decimal without trailing noughts.
pub fn plain(value: Decimal) -> String {
    value.normalize().to_string()
}

/// Half away from nought, at `places` decimals, with the noughts kept.
pub fn fixed(value: Decimal, places: u32) -> String {
    let mut rounded = value.round_dp_with_strategy(places, RoundingStrategy::MidpointAwayFromZero);
    rounded.rescale(places);
    rounded.to_string()
}

/// Most decimals a unit may need before the other system's unit is printed in its place.
const READABLE: u32 = 3;

impl<K: Kind> Quantity<K> {
    /// Text that [`Quantity::read`] turns back into exactly this value: in `system` where that is short,
    /// else in the other, else in the base unit with all its decimals.
    ///
    /// ```
    /// use cure_reckoner::quantity::{Mass, System};
    /// let typed = Mass::read("7 lb 3 oz", None)?;
    /// assert_eq!(typed.print(System::Us), "7 lb 3 oz");
    /// assert_eq!(Mass::read("1480 g", None)?.print(System::Us), "1480 g");
    /// # Ok::<(), cure_reckoner::quantity::Problem>(())
    /// ```
    pub fn print(self, system: System) -> String {
        let other = if system == System::Metric {
            System::Us
        } else {
            System::Metric
        };
        self.short_in(system)
            .or_else(|| self.short_in(other))
            .unwrap_or_else(|| self.in_base())
    }

    fn in_base(self) -> String {
        let base = K::UNITS.iter().find(|u| u.factor == Decimal::ONE && u.offset.is_zero());
        join(
            &plain(self.base()),
            base.and_then(|u| u.names.first()).copied().unwrap_or_default(),
        )
    }

    /// The shortest exact text in one system's units, if one has few enough decimals.
    fn short_in(self, system: System) -> Option<String> {
        let mut candidates: Vec<String> = Vec::new();
        for unit in units_of::<K>(system).filter(|u| is_printed::<K>(u)) {
            candidates.extend(self.in_unit(unit));
        }
        candidates.extend(self.in_two(system));
        candidates
            .into_iter()
            .filter(|t| Self::read(t, None).is_ok_and(|v| v == self))
            .min_by_key(|t| t.chars().count())
    }

    fn in_unit(self, unit: &Unit) -> Option<String> {
        let value = self.base().checked_sub(unit.offset)?.checked_div(unit.factor)?;
        let name = unit.names.first()?;
        Some(join(&spell(value), name))
    }

    /// `7 lb 3 oz`, `1 d 12 h`.
    fn in_two(self, system: System) -> Option<String> {
        let (large, small) = two_units::<K>(system)?;
        let whole = self.base().checked_div(large.factor)?.floor();
        let rest = self
            .base()
            .checked_sub(whole.checked_mul(large.factor)?)?
            .checked_div(small.factor)?;
        let whole_text = join(&plain(whole), large.names.first()?);
        (whole > Decimal::ZERO && rest > Decimal::ZERO)
            .then(|| Some(format!("{whole_text} {}", join(&spell(rest), small.names.first()?))))
            .flatten()
    }

    /// Rounded for reading, in `system`.
    pub fn show(self, system: System) -> Figure {
        K::show(self.base(), system)
    }
}

/// A number with few decimals, its fraction as a glyph where it has no finite decimal.
fn spell(value: Decimal) -> String {
    let rounded = value.round_dp_with_strategy(READABLE, RoundingStrategy::MidpointAwayFromZero);
    let part = value.checked_sub(value.trunc()).unwrap_or_default();
    match glyph_of(part) {
        Some(glyph) if part.scale() > READABLE && value.trunc().is_zero() => glyph.to_string(),
        Some(glyph) if part.scale() > READABLE => format!("{}{glyph}", plain(value.trunc())),
        _ => plain(rounded),
    }
}

/// Units that are printed: those a person would write for a label. Milligrams, weeks and grams a kilogram are only read.
fn is_printed<K: Kind>(unit: &Unit) -> bool {
    !matches!(unit.names.first(), Some(&("mg" | "wk" | "g/kg" | "cm")))
        && K::UNITS.iter().any(|u| std::ptr::eq(u, unit))
}

fn two_units<K: Kind>(system: System) -> Option<(&'static Unit, &'static Unit)> {
    let find = |name: &str| units_of::<K>(system).find(|u| u.names.first() == Some(&name));
    match (find("lb"), find("oz"), find("d"), find("h")) {
        (Some(lb), Some(oz), _, _) => Some((lb, oz)),
        (_, _, Some(d), Some(h)) => Some((d, h)),
        _ => None,
    }
}

/// Groups of three with a narrow no-break space, from five digits on.
pub fn grouped(number: &str) -> String {
    let (whole, decimals) = number.split_once('.').map_or((number, None), |(w, d)| (w, Some(d)));
    let digits = whole.trim_start_matches('-').len();
    let mut out = String::new();
    for (i, c) in whole.chars().enumerate() {
        let left = whole.len().saturating_sub(i);
        if digits >= 5 && i > 0 && left % 3 == 0 && !(i == 1 && whole.starts_with('-')) {
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

/// A weight for reading: two figures behind the point under 10 g, none from 100 g; ounces to a tenth.
pub(crate) fn show_mass(grams: Decimal, system: System) -> Figure {
    match system {
        System::Metric => {
            let places = if grams < dec!(10) {
                2
            } else {
                u32::from(grams < dec!(100))
            };
            let text = if places == 0 {
                fixed(grams, 0)
            } else {
                plain_to(grams, places)
            };
            Figure::new(grouped(&text), "g")
        }
        System::Us => {
            let ounces = grams.checked_div(dec!(28.349523125)).unwrap_or_default();
            let places = if ounces < dec!(1) {
                3
            } else if ounces < dec!(16) {
                2
            } else {
                1
            };
            let ounces = ounces.round_dp_with_strategy(places, RoundingStrategy::MidpointAwayFromZero);
            let pounds = ounces.checked_div(dec!(16)).unwrap_or_default().floor();
            let rest = pounds
                .checked_mul(dec!(16))
                .and_then(|p| ounces.checked_sub(p))
                .unwrap_or_default();
            match (pounds.is_zero(), rest.is_zero()) {
                (true, _) => Figure::new(plain(ounces), "oz"),
                (_, true) => Figure::new(plain(pounds), "lb"),
                _ => Figure::new(format!("{} lb {}", plain(pounds), plain(rest)), "oz"),
            }
        }
    }
}

/// Rounded to `places`, without trailing noughts.
pub(crate) fn plain_to(value: Decimal, places: u32) -> String {
    plain(value.round_dp_with_strategy(places, RoundingStrategy::MidpointAwayFromZero))
}
