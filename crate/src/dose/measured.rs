//! Reads what went in as cure: a weight, level or heaped spoons, packets. A spoon is a range.

use super::case::Portion;
use super::spoons::Unit;
use crate::pantry::{self, Agent, Group};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Kind, Mass, MassKind, Problem, Range, Volume, Wrong};
use rust_decimal::{Decimal, dec};
use serde::{Deserialize, Serialize};

/// One row of `tables/measures.csv`.
#[derive(Clone, Copy, Debug)]
pub struct Measure {
    /// The word in front of the spoon, or `packet`.
    pub word: &'static str,
    /// Share of a level spoon, or of the printed weight.
    pub share: Range,
}

/// A level spoon of the user's own, weighed with one thing in it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct OwnSpoon {
    /// Key in the pantry of what was weighed in it.
    pub item: String,
    /// True for a tablespoon, false for a teaspoon.
    #[serde(default)]
    pub tablespoon: bool,
    /// Least, usual and most of one level spoon.
    #[cfg_attr(feature = "types", ts(type = "[string, string, string]"))]
    pub grams: [Mass; 3],
}

impl OwnSpoon {
    /// Grams of one level spoon.
    ///
    /// ```
    /// use cure_reckoner::dose::OwnSpoon;
    /// use cure_reckoner::quantity::Mass;
    /// use rust_decimal::dec;
    /// let grams = ["4.9 g", "5.1 g", "5.3 g"].map(|text| Mass::read(text, None).unwrap());
    /// let spoon = OwnSpoon { item: "cure-1".into(), tablespoon: false, grams };
    /// assert_eq!(spoon.range().high, dec!(5.3));
    /// ```
    pub fn range(&self) -> Range {
        let [low, typical, high] = self.grams.map(Mass::base);
        Range::new(low, typical, high)
    }

    fn is_of(&self, agent: Agent) -> bool {
        let item = pantry::ingredient(&self.item).filter(|i| i.group == Group::Cure);
        let own = item.and_then(|i| Decimal::from_str_exact(i.nitrite).ok());
        own.is_some_and(|nitrite| is_strong(Agent { nitrite, ..agent }) == is_strong(agent))
    }
}

/// The kind of a cure by its print: those of about 6 % are alike in grain.
fn is_strong(agent: Agent) -> bool {
    agent.nitrite >= dec!(4)
}

/// Grams in a level teaspoon of a cure: the weighings of the 6.25 % kind where it is of that strength, else the
/// widest of all kinds.
fn level(agent: Option<Agent>) -> Option<Range> {
    let kinds = || {
        pantry::ingredients()
            .iter()
            .filter(|i| i.group == Group::Cure)
            .filter_map(|i| i.spoon?.range())
    };
    let first = kinds().next()?;
    if agent.is_some_and(is_strong) {
        return Some(first);
    }
    kinds().try_fold(first, |wide, r| {
        Some(Range {
            low: wide.low.min(r.low),
            typical: wide.typical,
            high: wide.high.max(r.high),
        })
    })
}

/// A word of the table that stands in the text, and the text without it and without a full stop or an "of".
fn word_in(said: &str) -> (Option<&'static Measure>, String) {
    let mut found = None;
    let rest: Vec<&str> = said
        .split_whitespace()
        .filter(|part| {
            let lower = part.to_ascii_lowercase();
            let bare = lower.trim_end_matches('s');
            let row = crate::tables::MEASURES
                .iter()
                .find(|m| m.word == bare || m.word == lower);
            found = found.or(row);
            row.is_none() && !["level", "of", "a"].contains(&lower.as_str())
        })
        .collect();
    (found, rest.join(" "))
}

/// The grams of `2 packets of 25 g`, with how often.
fn packets(rest: &str) -> Option<(Decimal, Decimal)> {
    if let Ok(one) = Mass::read(rest, None) {
        return Some((Decimal::ONE, one.base()));
    }
    let (count, weight) = rest.split_once(' ')?;
    let count = count.parse::<u8>().ok().filter(|n| *n > 0)?;
    Some((Decimal::from(count), Mass::read(weight, None).ok()?.base()))
}

/// What is known of the cook's scale and spoons.
#[derive(Clone, Copy, Debug)]
pub struct Kit<'a> {
    /// The scale's step, grams.
    pub step: Decimal,
    /// The user's own spoons.
    pub own: &'a [OwnSpoon],
    /// Key of the jurisdiction whose rule is chosen: its spoons are meant.
    pub profile: &'a str,
}

impl Kit<'_> {
    /// For what does not depend on it: whether a text can be read at all.
    pub const PLAIN: Self = Self {
        step: dec!(0.1),
        own: &[],
        profile: "",
    };
}

/// Reads `1 tbsp`, `2½ tsp`, `1 heaped tsp`, `1 bag of 25 g` or `3.5 g` of cure that is in already. Where a
/// spoon of the user's own was weighed with such a cure, its weighings stand in place of the general range.
///
/// # Errors
/// The problem of the text; [`Code::TooSmall`] for nought.
///
/// ```
/// use cure_reckoner::dose::{Kit, measured};
/// use rust_decimal::dec;
/// // On a scale of 0.1 g: half a step either way.
/// let portion = measured("2.5 g", None, Kit::PLAIN).unwrap();
/// assert_eq!((portion.weight.low, portion.weight.high), (dec!(2.45), dec!(2.55)));
/// assert!(measured("a pinch or so", None, Kit::PLAIN).is_err());
/// ```
pub fn measured(said: &str, agent: Option<Agent>, kit: Kit<'_>) -> Result<Portion, Problem> {
    let (word, rest) = word_in(said);
    let share = word.map_or(Range::point(Decimal::ONE), |m| m.share);
    let times = |one: Range, n: Decimal| {
        Some(Range {
            low: one.low.times(share.low)?.times(n)?,
            typical: one.typical.times(share.typical)?.times(n)?,
            high: one.high.times(share.high)?.times(n)?,
        })
    };
    let in_packets = word
        .filter(|m| ["packet", "sachet", "bag"].contains(&m.word))
        .and_then(|_| packets(&rest));
    let (weight, unit) = match (in_packets, Mass::read(&rest, None), Volume::read(&rest, None)) {
        (Some((count, one)), _, _) => (times(Range::point(one), count), Unit::Packet),
        (None, Ok(mass), _) if word.is_none() => (
            Range::weighed(mass.base(), kit.step),
            Unit::of(&rest).unwrap_or_default(),
        ),
        (None, _, Ok(volume)) => {
            let unit = Unit::of(&rest).unwrap_or(Unit::Millilitre);
            let tablespoon = unit == Unit::Tablespoon;
            let mine = kit
                .own
                .iter()
                .find(|s| s.tablespoon == tablespoon && agent.is_some_and(|a| s.is_of(a)));
            // The weighings are of US teaspoons; the spoons of another country hold more.
            let country = match mine {
                Some(_) => None,
                None => unit.over_us(kit.profile),
            };
            let each = if tablespoon && mine.is_some() {
                "1 tbsp"
            } else {
                "1 tsp"
            };
            let one = Volume::read(each, None).ok().map(Volume::base);
            let count = one.and_then(|t| volume.base().over(t)).map(|t| t.half_away(8));
            let level = mine.map(OwnSpoon::range).or_else(|| level(agent));
            let weight = count.zip(level).and_then(|(n, level)| {
                let weight = times(level, n)?;
                let country = country.unwrap_or(Range::point(Decimal::ONE));
                Some(Range {
                    low: weight.low.times(country.low)?,
                    typical: weight.typical.times(country.typical)?,
                    high: weight.high.times(country.high)?,
                })
            });
            (weight, unit)
        }
        (None, as_mass, Err(as_volume)) => {
            // The kinds know of different units; the one that knew the unit says more.
            let told = [as_mass.err(), Some(as_volume)]
                .into_iter()
                .flatten()
                .find(|p| !matches!(p.code, Code::WrongUnit | Code::NotRead | Code::NoUnit));
            return Err(told.unwrap_or_else(|| {
                let typed = crate::quantity::shorten(said);
                Problem::of(Code::NotRead, Wrong::CureNotRead { typed })
            }));
        }
    };
    let weight = weight
        .filter(|w| w.high <= MassKind::facts().max)
        .ok_or_else(|| Problem::of(Code::TooLarge, Wrong::CureTooMuch))?;
    if weight.typical.is_zero() {
        let typed = crate::quantity::shorten(said);
        return Err(Problem::of(Code::TooSmall, Wrong::CureNothing { typed }));
    }
    Ok(Portion {
        said: said.trim().to_owned(),
        agent,
        weight,
        spread: Decimal::ZERO,
        parts: None,
        unit,
        step: kit.step,
        done: true,
    })
}
