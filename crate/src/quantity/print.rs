//! Quantity to text. [`Quantity::print`] reads back to the same value; [`Quantity::show`] is rounded for reading.

use super::exact::Exact;
use super::figure::{Figure, join, plain, plain_to};
use super::kind::{Facts, Kind, Quantity, System, Unit};
use super::number::glyph_of;
use rust_decimal::Decimal;

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
        K::facts().print(self.base(), system)
    }

    /// Rounded for reading, in `system`.
    pub fn show(self, system: System) -> Figure {
        (K::facts().show)(self.base(), system)
    }
}

impl Facts {
    fn print(&'static self, base: Decimal, system: System) -> String {
        let other = if system == System::Metric {
            System::Us
        } else {
            System::Metric
        };
        let short = |system| self.short(base, system);
        short(system)
            .or_else(|| short(other))
            .unwrap_or_else(|| join(&plain(base), self.base_name()))
    }

    /// The likeliest exact text in one system: pounds and ounces where they are, else the shortest.
    fn short(&'static self, base: Decimal, system: System) -> Option<String> {
        let exact = |text: &String| self.read(text, None).is_ok_and(|v| v == base);
        let pair = self.pairs.iter().find_map(|(large, small)| {
            let find = |name| self.printed(system).find(|u| u.name() == name);
            in_pair(base, find(*large)?, find(*small)?).filter(exact)
        });
        if pair.as_ref().is_some_and(|text| text.contains("lb")) {
            return pair;
        }
        let single = self
            .printed(system)
            .filter_map(|unit| in_unit(base, unit))
            .filter(exact);
        single.chain(pair).min_by_key(String::len)
    }
}

fn in_unit(base: Decimal, unit: &Unit) -> Option<String> {
    let value = base.less(unit.offset)?.over(unit.factor)?;
    Some(join(&spell(value), unit.name()))
}

/// `7 lb 3 oz`, `1 d 12 h`.
fn in_pair(base: Decimal, large: &Unit, small: &Unit) -> Option<String> {
    let count = base.over(large.factor)?.floor();
    let rest = base.less(count.times(large.factor)?)?.over(small.factor)?;
    (count > Decimal::ZERO && rest > Decimal::ZERO).then(|| {
        format!(
            "{} {}",
            join(&plain(count), large.name()),
            join(&spell(rest), small.name())
        )
    })
}

/// A number with few decimals, its fraction as a glyph where it has no short decimal.
fn spell(value: Decimal) -> String {
    let part = value.less(value.trunc()).unwrap_or_default();
    match glyph_of(part).filter(|_| part.scale() > READABLE) {
        Some(glyph) if value.trunc().is_zero() => glyph.to_string(),
        Some(glyph) => format!("{}{glyph}", plain(value.trunc())),
        None => plain_to(value, READABLE),
    }
}
