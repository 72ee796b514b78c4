//! Text to quantity: `7 lb 3 oz`, `1 480 g`, `2½ tsp`, `38 °F`, `1.5 d`.
//!
//! ```text
//! quantity = ["-" | "−"] term { gap term }         terms from the larger unit to the smaller
//! term     = number gap [unit]                     a unit may be left out where the field has one of its own
//! ```

use super::kind::{Kind, Quantity, System, Unit};
use super::number::{self, Reading};
use super::print::plain;
use super::problem::{Code, Problem};
use rust_decimal::Decimal;

/// Longest text taken for one quantity, in bytes.
pub const MOST_TEXT: usize = 64;

/// The unit a bare number has: by the kind's printed unit name, such as `g`.
pub type DefaultUnit<'a> = Option<&'a str>;

impl<K: Kind> Quantity<K> {
    /// Reads what a person typed.
    ///
    /// # Errors
    /// A [`Problem`] that says the rule, the value and what to type: [`Code::Missing`], [`Code::NotRead`],
    /// [`Code::AmbiguousNumber`] with its two readings, [`Code::NoUnit`], [`Code::WrongUnit`],
    /// [`Code::TooSmall`], [`Code::TooLarge`].
    ///
    /// # Example: a weight in pounds and ounces
    /// ```
    /// use cure_reckoner::quantity::Mass;
    /// assert_eq!(Mass::read("7 lb 3 oz", None)?.base().to_string(), "3260.195159375");
    /// let twice = Mass::read("1,480", Some("g")).unwrap_err();
    /// assert_eq!(twice.choices, ["1480 g", "1.48 g"]);
    /// # Ok::<(), cure_reckoner::quantity::Problem>(())
    /// ```
    pub fn read(text: &str, default: DefaultUnit<'_>) -> Result<Self, Problem> {
        let shown = shorten(text);
        if text.len() > MOST_TEXT {
            return Err(Problem::new(
                Code::TooLong,
                format!("“{shown}” is too long for a {}. Type {}.", K::WHAT, K::EXAMPLE),
            ));
        }
        let mut rest = text.trim_matches(|c: char| number::is_gap(c) || c == '\n' || c == '\r');
        if rest.is_empty() {
            return Err(Problem::new(
                Code::Missing,
                format!("Nothing is typed here. Type a {}, such as {}.", K::WHAT, K::EXAMPLE),
            ));
        }
        let negative = rest.starts_with(['-', '−']);
        if negative {
            rest = rest.strip_prefix(['-', '−']).unwrap_or(rest);
        }
        let mut sum = Decimal::ZERO;
        let mut last: Option<&Unit> = None;
        while !rest.is_empty() {
            let reading = number::number(&mut rest).map_err(|_| not_read::<K>(&shown))?;
            let _ = number::gap(&mut rest);
            let unit = match take_unit::<K>(&mut rest) {
                Found::Unit(unit) => unit,
                Found::None => match default.and_then(|d| by_name::<K>(d)) {
                    Some(unit) if last.is_none() && rest.is_empty() => unit,
                    _ if rest.is_empty() && last.is_none() => return Err(no_unit::<K>(&shown)),
                    _ => return Err(not_read::<K>(&shown)),
                },
                Found::Unknown(word) => {
                    return Err(Problem::new(
                        Code::WrongUnit,
                        format!(
                            "“{}” is no unit of {} here. Type {}.",
                            shorten(word),
                            K::WHAT,
                            K::EXAMPLE
                        ),
                    ));
                }
            };
            let value = settle::<K>(reading, unit, last.is_some() || !rest.is_empty(), &shown)?;
            if let Some(larger) = last
                && (larger.factor <= unit.factor || larger.system != unit.system || !unit.offset.is_zero())
            {
                return Err(not_read::<K>(&shown));
            }
            let base = value
                .checked_mul(unit.factor)
                .and_then(|v| v.checked_add(if negative { Decimal::ZERO } else { unit.offset }))
                .ok_or_else(|| too_large::<K>())?;
            let base = if negative {
                unit.offset.checked_sub(base).ok_or_else(|| too_large::<K>())?
            } else {
                base
            };
            sum = sum.checked_add(base).ok_or_else(|| too_large::<K>())?;
            last = Some(unit);
            let _ = number::gap(&mut rest);
        }
        Self::new(sum)
    }
}

/// One value, or the question which of two was meant.
fn settle<K: Kind>(reading: Reading, unit: &Unit, compound: bool, shown: &str) -> Result<Decimal, Problem> {
    match reading {
        Reading::One(value) => Ok(value),
        Reading::TooManyDigits => Err(Problem::new(
            Code::NotRead,
            format!(
                "“{shown}” has too many digits or marks. Type at most {} digits and {} decimals, such as {}.",
                number::MOST_WHOLE_DIGITS,
                number::MOST_DECIMALS,
                K::EXAMPLE
            ),
        )),
        Reading::Either(small, large) => {
            let name = unit.names.first().copied().unwrap_or_default();
            let texts = [large, small].map(|v| join(&plain(v), name));
            let mut problem = Problem::new(
                Code::AmbiguousNumber,
                format!(
                    "“{shown}” can be read two ways. Which do you mean: {} or {}?",
                    texts[0], texts[1]
                ),
            );
            if !compound {
                problem.choices = texts.to_vec();
            }
            Err(problem)
        }
    }
}

/// `150` and `ppm` to `150 ppm`.
pub(crate) fn join(number: &str, unit: &str) -> String {
    format!("{number} {unit}")
}

/// Refuses what lies outside the kind's bounds.
pub(crate) fn within<K: Kind>(base: Decimal) -> Result<(), Problem> {
    if base < K::MIN {
        let least = bound::<K>(K::MIN);
        return Err(Problem::new(
            Code::TooSmall,
            format!("A {} here is at least {least}. Type {}.", K::WHAT, K::EXAMPLE),
        ));
    }
    if base > K::MAX {
        return Err(too_large::<K>());
    }
    Ok(())
}

fn too_large<K: Kind>() -> Problem {
    let most = bound::<K>(K::MAX);
    Problem::new(
        Code::TooLarge,
        format!("A {} here is at most {most}. Type {}.", K::WHAT, K::EXAMPLE),
    )
}

/// A bound in the base unit, in words.
fn bound<K: Kind>(value: Decimal) -> String {
    let base = K::UNITS.iter().find(|u| u.factor == Decimal::ONE && u.offset.is_zero());
    join(
        &plain(value),
        base.and_then(|u| u.names.first()).copied().unwrap_or_default(),
    )
}

fn not_read<K: Kind>(shown: &str) -> Problem {
    Problem::new(
        Code::NotRead,
        format!("“{shown}” is not read as a {}. Type {}.", K::WHAT, K::EXAMPLE),
    )
}

fn no_unit<K: Kind>(shown: &str) -> Problem {
    Problem::new(
        Code::NoUnit,
        format!(
            "“{shown}” has no unit. Type a {} with its unit, such as {}.",
            K::WHAT,
            K::EXAMPLE
        ),
    )
}

enum Found<'a> {
    Unit(&'static Unit),
    None,
    Unknown(&'a str),
}

/// The unit by one of its names, whatever the case of its letters.
pub(crate) fn by_name<K: Kind>(name: &str) -> Option<&'static Unit> {
    K::UNITS
        .iter()
        .find(|u| u.names.iter().any(|n| n.eq_ignore_ascii_case(name)))
}

/// The unit of `system` with this printed name's kind, in the order of the table.
pub(crate) fn units_of<K: Kind>(system: System) -> impl DoubleEndedIterator<Item = &'static Unit> {
    K::UNITS.iter().filter(move |u| u.system.is_none_or(|s| s == system))
}

/// Takes the letters and signs up to the next digit or end, and a full stop behind an abbreviation.
fn take_unit<'a, K: Kind>(rest: &mut &'a str) -> Found<'a> {
    let starts_number = |c: char| c.is_ascii_digit() || "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞".contains(c);
    let end = rest.find(starts_number).unwrap_or(rest.len());
    let (word, after) = rest.split_at_checked(end).unwrap_or((rest, ""));
    let name = word.trim_matches(|c: char| number::is_gap(c) || c == ',' || c == '.');
    let name = name.strip_suffix(" and").unwrap_or(name);
    if name.is_empty() {
        return Found::None;
    }
    *rest = after;
    by_name::<K>(name).map_or(Found::Unknown(name), Found::Unit)
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
