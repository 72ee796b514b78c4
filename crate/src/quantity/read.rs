//! Text to quantity: `7 lb 3 oz`, `1 480 g`, `2½ tsp`, `38 °F`, `1.5 d`.
//!
//! ```text
//! quantity = [sign gap] term { gap term }          terms from the larger unit to the smaller
//! sign     = "-" | "−"
//! term     = number gap [unit]                     a unit may be left out where the field has one of its own
//! sum      = quantity { "+" quantity }             of weights alone; each with its unit, or the last with that of all
//! ```

use super::exact::Exact;
use super::figure::{join, plain};
use super::kind::{Facts, Kind, Quantity, System, Unit};
use super::number::{self, Reading};
use super::problem::{Code, Problem};
use super::wrong::TypedWrong;
use rust_decimal::Decimal;

/// Longest text taken for one quantity, in bytes.
pub const MOST_TEXT: usize = 64;

impl<K: Kind> Quantity<K> {
    /// Reads what a person typed. `default` is the unit of a bare number, by its printed name, such as `g`.
    ///
    /// # Errors
    /// A [`Problem`] that says the rule, the value and what to type: [`Code::Missing`], [`Code::NotRead`],
    /// [`Code::AmbiguousNumber`] with its two readings, [`Code::NoUnit`], [`Code::WrongUnit`],
    /// [`Code::TooSmall`], [`Code::TooLarge`], [`Code::TooLong`].
    ///
    /// # Example: a weight in pounds and ounces
    /// ```
    /// use cure_reckoner::quantity::Mass;
    /// assert_eq!(Mass::read("7 lb 3 oz", None)?.base().to_string(), "3260.195159375");
    /// let twice = Mass::read("1,480", Some("g")).unwrap_err();
    /// assert_eq!(twice.choices, ["1480 g", "1.48 g"]);
    /// # Ok::<(), cure_reckoner::quantity::Problem>(())
    /// ```
    pub fn read(text: &str, default: Option<&str>) -> Result<Self, Problem> {
        K::facts().read(text, default).map(Self::kept)
    }
}

impl Facts {
    /// The value of a text in the base unit, within the bounds and rounded to the decimals kept.
    pub(crate) fn read(&'static self, text: &str, default: Option<&str>) -> Result<Decimal, Problem> {
        let shown = shorten(text);
        if text.len() > MOST_TEXT {
            let wrong = TypedWrong::QuantityTooLong {
                of: self.what,
                typed: shown,
            };
            return Err(Problem::of(Code::TooLong, wrong));
        }
        match self.single(text, default) {
            Err(_) if self.sums && text.contains('+') => self.summed(text, default),
            read => read,
        }
    }

    /// `112+98+140`, `112 g + 3 oz`, `112 + 98 g`: a bare number beside one with a unit only where the last has the unit of
    /// all, since `112 g + 98` may be of another.
    fn summed(&'static self, text: &str, default: Option<&str>) -> Result<Decimal, Problem> {
        let bare = |part: &&str| self.single(part, None).is_err_and(|p| p.code == Code::NoUnit);
        let (rest, last) = text.rsplit_once('+').unwrap_or((text, ""));
        let unit = match (rest.split('+').all(|p| bare(&p)), bare(&last)) {
            (true, true) => default,
            (true, false) => self.only_unit(last),
            (false, _) => None,
        };
        let mut sum = Decimal::ZERO;
        for part in text.split('+') {
            let part = self.single(part, unit).map_err(|problem| match problem.code {
                Code::TooLarge | Code::TooSmall | Code::AmbiguousNumber | Code::WrongUnit => problem,
                Code::NoUnit if unit.is_none() && default.is_none() => problem,
                _ => self.not_read(&shorten(text)),
            })?;
            sum = sum.plus(part).ok_or_else(|| self.too_large())?;
        }
        self.keep(sum)
    }

    /// The unit of one number with a unit behind it; nothing where there are two, or none.
    fn only_unit(&self, text: &str) -> Option<&'static str> {
        let mut rest = text.trim_matches(number::is_gap);
        number::number(&mut rest).ok()?;
        match self.take_unit(&mut rest) {
            Found::Unit(unit) if rest.is_empty() => Some(unit.name()),
            _ => None,
        }
    }

    fn single(&'static self, text: &str, default: Option<&str>) -> Result<Decimal, Problem> {
        let (of, shown) = (self.what, shorten(text));
        let mut rest = text.trim_matches(|c: char| number::is_gap(c) || c == '\n' || c == '\r');
        if rest.is_empty() {
            return Err(Problem::of(Code::Missing, TypedWrong::QuantityMissing { of }));
        }
        let negative = rest.strip_prefix(['-', '−']);
        if let Some(unsigned) = negative {
            rest = unsigned.trim_start_matches(number::is_gap);
        }
        let mut sum = Decimal::ZERO;
        let mut last: Option<&Unit> = None;
        while !rest.is_empty() {
            let reading = number::number(&mut rest).map_err(|_| self.not_read(&shown))?;
            let _ = number::gap(&mut rest);
            let unit = match self.take_unit(&mut rest) {
                Found::Unit(unit) => unit,
                Found::None => match default.and_then(|d| self.unit(d)) {
                    Some(unit) if last.is_none() && rest.is_empty() => unit,
                    None if last.is_none() && rest.is_empty() => {
                        return Err(Problem::of(Code::NoUnit, TypedWrong::NoUnit { of, typed: shown }));
                    }
                    _ => return Err(self.not_read(&shown)),
                },
                Found::Unknown(word) if word.contains(|c: char| c.is_ascii_alphabetic() || !c.is_ascii()) => {
                    let unit = shorten(word);
                    return Err(Problem::of(Code::WrongUnit, TypedWrong::WrongUnit { of, unit }));
                }
                Found::Unknown(_) => return Err(self.not_read(&shown)),
            };
            let value = self.settle(reading, unit, last.is_some() || !rest.is_empty(), &shown)?;
            let follows =
                |larger: &Unit| larger.factor > unit.factor && larger.system == unit.system && unit.offset.is_zero();
            if !last.is_none_or(follows) {
                let wrong = TypedWrong::UnitsOutOfOrder { of, typed: shown };
                return Err(Problem::of(Code::NotRead, wrong));
            }
            let part = value.times(unit.factor).and_then(|part| {
                if negative.is_some() {
                    unit.offset.less(part)
                } else {
                    unit.offset.plus(part)
                }
            });
            sum = part.and_then(|part| sum.plus(part)).ok_or_else(|| self.too_large())?;
            last = Some(unit);
            let _ = number::gap(&mut rest);
        }
        if last.is_none() {
            Err(self.not_read(&shown))
        } else {
            self.keep(sum)
        }
    }

    /// One value, or the question which of two was meant.
    fn settle(&self, reading: Reading, unit: &Unit, compound: bool, shown: &str) -> Result<Decimal, Problem> {
        match reading {
            Reading::One(value) => Ok(value),
            Reading::TooManyDigits => {
                let typed = shown.to_owned();
                let wrong = TypedWrong::TooManyDigits { of: self.what, typed };
                Err(Problem::of(Code::NotRead, wrong))
            }
            Reading::Either(small, large) => {
                let texts = [large, small].map(|v| join(&plain(v), unit.name()));
                let choices = if compound { Vec::new() } else { texts.to_vec() };
                let wrong = TypedWrong::TwoReadings {
                    typed: shown.to_owned(),
                    readings: Box::new(texts),
                };
                Err(Problem {
                    choices,
                    ..Problem::of(Code::AmbiguousNumber, wrong)
                })
            }
        }
    }

    /// A value rounded to the decimals kept, half away from nought; refused where it lies outside the bounds.
    pub(crate) fn keep(&self, base: Decimal) -> Result<Decimal, Problem> {
        let base = base.half_away(self.scale);
        if base < self.min {
            let least = join(&plain(self.min), self.base_name());
            let wrong = TypedWrong::QuantityTooSmall { of: self.what, least };
            return Err(Problem::of(Code::TooSmall, wrong));
        }
        if base > self.max {
            Err(self.too_large())
        } else {
            Ok(base.normalize())
        }
    }

    fn too_large(&self) -> Problem {
        let most = join(&plain(self.max), self.base_name());
        Problem::of(Code::TooLarge, TypedWrong::QuantityTooLarge { of: self.what, most })
    }

    fn not_read(&self, shown: &str) -> Problem {
        let typed = shown.to_owned();
        Problem::of(Code::NotRead, TypedWrong::QuantityNotRead { of: self.what, typed })
    }

    /// The unit by one of its names, whatever the case of its letters.
    fn unit(&self, name: &str) -> Option<&'static Unit> {
        self.units
            .iter()
            .find(|u| u.names.iter().any(|n| n.eq_ignore_ascii_case(name)))
    }

    /// The printed name of the base unit.
    pub(crate) fn base_name(&self) -> &'static str {
        let base = self
            .units
            .iter()
            .find(|u| u.factor == Decimal::ONE && u.offset.is_zero());
        base.map(Unit::name).unwrap_or_default()
    }

    /// Units that are printed in a system, in the order of the table.
    pub(crate) fn printed(&self, system: System) -> impl Iterator<Item = &'static Unit> {
        self.units
            .iter()
            .filter(move |u| u.printed && u.system.is_none_or(|s| s == system))
    }

    /// Takes the letters and signs up to the next digit or end, and a full stop behind an abbreviation.
    fn take_unit<'a>(&self, rest: &mut &'a str) -> Found<'a> {
        let end = rest.find(number::starts_number).unwrap_or(rest.len());
        let (word, after) = rest.split_at_checked(end).unwrap_or((rest, ""));
        let name = word.trim_matches(|c: char| number::is_gap(c) || c == ',' || c == '.');
        let name = name.strip_suffix(" and").unwrap_or(name);
        if name.is_empty() {
            return Found::None;
        }
        *rest = after;
        self.unit(name).map_or(Found::Unknown(name), Found::Unit)
    }
}

impl Unit {
    /// The name that is printed.
    pub(crate) fn name(&self) -> &'static str {
        self.names.first().copied().unwrap_or_default()
    }
}

enum Found<'a> {
    Unit(&'static Unit),
    None,
    Unknown(&'a str),
}

/// The first characters of a text, for a message.
pub(crate) fn shorten(text: &str) -> String {
    let text = text.trim();
    let mut short: String = text.chars().take(24).collect();
    if text.chars().count() > 24 {
        short.push('…');
    }
    short
}
