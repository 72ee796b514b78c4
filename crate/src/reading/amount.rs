//! Numbers, ranges of numbers, and amounts with their unit. The grammar stands at the head of this floor.

use super::number::{Number, SHORT, between, figure, fraction, joint, keyword, known_unit, range};
use super::spelling::unit_meant;
use super::words::{Sort, Word, take};
use crate::quantity::exact::Exact;
use crate::quantity::{Range, gap};
use rust_decimal::Decimal;
use winnow::combinator::{alt, fail, opt, preceded, repeat};
use winnow::prelude::*;
use winnow::token::one_of;

/// `2 tsp`, `2 lb 3 oz`, `a heaping tablespoon`, `2.5 %`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Amount {
    /// Numbers with their units, all of one sort.
    pub parts: Vec<(Number, &'static Word)>,
    /// Heaping, scant, level.
    pub heap: Option<&'static Word>,
    /// Packed or loose.
    pub pack: Option<&'static Word>,
    /// True for `about`.
    pub about: bool,
}

impl Amount {
    /// What its unit measures.
    pub fn sort(&self) -> Sort {
        self.parts.first().map_or(Sort::Other, |(_, unit)| unit.sort)
    }
}

impl Amount {
    /// True for a number of which one reading is as good as the other: the letter S.
    pub fn is_guess(&self) -> bool {
        let guess = |n: &Number| {
            n.other
                .is_some_and(|other| other < n.value.typical.times(Decimal::TWO).unwrap_or_default())
        };
        self.parts.iter().any(|(number, _)| guess(number))
    }

    /// Least and most in the unit of its first part, as written.
    pub fn ends(&self) -> Vec<String> {
        let ends = || {
            let factor = figure(self.parts.first()?.1)?;
            let mut sum = Range::point(Decimal::ZERO);
            for (number, unit) in &self.parts {
                let share = figure(unit)?.over(factor)?;
                sum = sum.plus(number.value.map(|n| n.times(share))?)?;
            }
            let exact = |n: Decimal| crate::quantity::plain(n.half_away(6));
            Some(vec![exact(sum.low), exact(sum.high)])
        };
        if self.parts.len() == 1 {
            let value = self.parts.first().map(|(number, _)| number.value);
            return value
                .map(|v| [v.low, v.high].map(|n| crate::quantity::plain(n.half_away(6))).to_vec())
                .unwrap_or_default();
        }
        ends().unwrap_or_default()
    }

    /// Its unit by its key.
    pub fn unit(&self) -> &'static str {
        self.parts
            .first()
            .and_then(|(_, unit)| unit.words.first())
            .copied()
            .unwrap_or_default()
    }

    /// So many times as much.
    pub fn times(&mut self, count: Range) {
        for (number, _) in &mut self.parts {
            if let Some(value) = times(number.value, count) {
                number.value = value;
            }
            number.other = None;
        }
    }
}

impl Amount {
    /// The sum in the base unit of its sort, each unit by the figure chosen of those it can mean, or by all of them.
    pub fn sum(&self, unit: Option<usize>, large: Option<bool>) -> Option<Range> {
        let mut sum = Range::point(Decimal::ZERO);
        for (number, word) in &self.parts {
            let mut value = number.widened(self.about)?;
            if let Some(other) = number.other {
                value = match large {
                    Some(true) => Range::point(other),
                    Some(false) => value,
                    None => Range::new(value.low, value.typical, other),
                };
            }
            let part = if word.sort == Sort::Pinch {
                times(value, word.range()?)?
            } else {
                let figures: Vec<Decimal> = word.figures().collect();
                // A measure of one meaning is that, whichever was chosen of the other's.
                let usual = *figures.get(unit.unwrap_or(0)).or(figures.first())?;
                let (low, high) = match unit {
                    Some(_) => (usual, usual),
                    None => (*figures.iter().min()?, *figures.iter().max()?),
                };
                times(value, Range::new(low, usual, high))?
            };
            sum = sum.plus(part)?;
        }
        match self.heap.and_then(Word::range) {
            Some(heap) => times(sum, heap),
            None => Some(sum),
        }
    }
}

/// End by end.
pub fn times(a: Range, b: Range) -> Option<Range> {
    Some(Range::new(
        a.low.times(b.low)?,
        a.typical.times(b.typical)?,
        a.high.times(b.high)?,
    ))
}

/// One amount from the front of `input`.
pub fn amount(input: &mut &str) -> ModalResult<Amount> {
    let (first, about, heap, mut pack) = one.parse_next(input)?;
    let mut amount = Amount {
        parts: vec![first],
        heap,
        pack: None,
        about,
    };
    // "2 lb 3 oz", "1 tbsp plus 1 tsp": the same sort, and the smaller behind.
    let more: Vec<_> = repeat(0..4, |input: &mut &str| {
        let joint = opt((alt((one_of(['+', '&']).void(), keyword("plus"), keyword("and"))), gap));
        (preceded(gap, joint), one)
            .verify(|(joint, (part, _, _, _))| {
                let plain = |(number, _): &(Number, &Word)| number.other.is_none();
                let last = amount.parts.last().filter(|last| plain(last) && plain(part));
                // "4 oz 113 g" is the same said twice.
                last.is_some_and(|(_, unit)| {
                    unit.sort == part.1.sort
                        && (unit.sort != Sort::Other || is_time(unit) && is_time(part.1))
                        && figure(part.1) < figure(unit)
                        && (joint.is_some() || is_metric(unit) == is_metric(part.1))
                }) && matches!(part.1.sort, Sort::Mass | Sort::Volume | Sort::Other)
            })
            .parse_next(input)
    })
    .parse_next(input)?;
    for (_, (part, _, heaped, packed)) in more {
        amount.parts.push(part);
        amount.heap = amount.heap.or(heaped);
        pack = pack.or(packed);
    }
    // "2 tsp to 3 tsp", "1 oz - 2 oz", "30 minutes to an hour".
    let before = *input;
    let to = opt(preceded(
        (gap, joint, gap),
        one.verify(|(part, _, _, _)| {
            amount.parts.len() == 1
                && amount
                    .parts
                    .first()
                    .is_some_and(|(_, unit)| *unit == part.1 || is_time(unit) && is_time(part.1))
        }),
    ))
    .parse_next(input)?;
    if let (Some((mut end, _, _, _)), Some((number, unit))) = (to, amount.parts.first_mut()) {
        let into = figure(end.1)
            .zip(figure(unit))
            .and_then(|(then, first)| then.over(first));
        if let Some(value) = into.and_then(|by| end.0.value.map(|n| n.times(by))) {
            end.0.value = value;
        }
        match between(number, &end.0) {
            Some(range) => *number = range,
            None => *input = before,
        }
    }
    amount.pack = pack.or(opt(preceded((gap, opt((',', gap))), take(Sort::Pack))).parse_next(input)?);
    Ok(amount)
}

fn is_time(unit: &Word) -> bool {
    unit.note == "time"
}

/// Pounds and pints do not go on in grams and millilitres.
fn is_metric(unit: &Word) -> bool {
    const METRIC: [&str; 8] = ["mg", "g", "kg", "ml", "cl", "dl", "l", "Pfund"];
    unit.words.first().is_some_and(|w| METRIC.contains(w))
}

type One = (
    (Number, &'static Word),
    bool,
    Option<&'static Word>,
    Option<&'static Word>,
);

/// A number, how full, and a unit.
fn one(input: &mut &str) -> ModalResult<One> {
    let about = opt((take(Sort::About), gap)).parse_next(input)?.is_some();
    let before = opt((take(Sort::Heap), gap)).parse_next(input)?.map(|(w, ())| w);
    let before_number = *input;
    let number = range.parse_next(input)?;
    // "¾ of a cup", "1/2 of an ounce".
    if number.value.high < Decimal::ONE {
        let _ = opt((gap, keyword("of"), gap, alt((keyword("an"), keyword("a"))))).parse_next(input)?;
    }
    // "5-lb", "12-oz": the hyphen joins them.
    let _ = opt((
        '-',
        winnow::combinator::peek(winnow::token::one_of(char::is_alphabetic)),
    ))
    .parse_next(input)?;
    let _ = gap(input);
    let heap = opt((take(Sort::Heap), gap)).parse_next(input)?.map(|(w, ())| w);
    let pack = opt((take(Sort::Pack), gap)).parse_next(input)?.map(|(w, ())| w);
    let _ = opt((alt((keyword("small"), keyword("large"), keyword("whole"))), gap)).parse_next(input)?;
    let unit = unit.parse_next(input)?;
    let number = read_twofold(number, before_number, unit);
    // "tsp." and "lb." carry a full stop of their own.
    if input.starts_with('.')
        && !input
            .get(1..)
            .is_some_and(|r| r.starts_with(|c: char| c.is_ascii_digit()))
    {
        *input = input.get(1..).unwrap_or_default();
    }
    // "a pound and a half", "an hour and a quarter".
    let more = opt(preceded((gap, keyword("and"), gap), fraction_alone)).parse_next(input)?;
    let number = match more.and_then(|more| number.value.map(|n| n.plus(more))) {
        Some(value) => Number { value, other: None },
        None => number,
    };
    // "(heaping)" behind its spoon.
    let behind = opt((gap, '(', take(Sort::Heap), ')'))
        .parse_next(input)?
        .map(|(_, _, w, _)| w);
    Ok(((number, unit), about, before.or(heap).or(behind), pack))
}

/// `and a half` behind a unit: no unit of its own follows.
fn fraction_alone(input: &mut &str) -> ModalResult<Decimal> {
    let part = fraction.parse_next(input)?;
    let mut rest = *input;
    let _ = gap(&mut rest);
    if unit(&mut rest).is_ok() {
        return fail.parse_next(input);
    }
    Ok(part)
}

/// `1.000 g` is a gram to one reader and a kilogram to another; of kilograms and pounds nobody writes thousands.
fn read_twofold(number: Number, written: &str, unit: &Word) -> Number {
    let end = written
        .find(|c: char| !(c.is_ascii_digit() || c == '.'))
        .unwrap_or(written.len());
    let digits = written.get(..end).unwrap_or_default();
    let grouped = digits.split_once('.').is_some_and(|(whole, part)| {
        (1..=3).contains(&whole.len())
            && !whole.starts_with('0')
            && part.len() == 3
            && part.bytes().all(|b| b.is_ascii_digit())
    });
    let small = unit.words.iter().any(|w| ["g", "ml"].contains(w));
    let large = Decimal::from_str_exact(&digits.replace('.', "")).ok();
    match large.filter(|_| grouped && small && number.value.is_point() && number.other.is_none()) {
        Some(large) => Number {
            other: Some(large),
            ..number
        },
        None => number,
    }
}

/// A unit of any sort; the longest word wins.
fn unit(input: &mut &str) -> ModalResult<&'static Word> {
    match known_unit(input)
        .or_else(|| run_on(input))
        .or_else(|| misread(input))
        .or_else(|| misspelt(input))
    {
        Some((word, length)) => {
            *input = input.get(length..).unwrap_or_default();
            Ok(word)
        }
        None => fail.parse_next(input),
    }
}

/// `tablespoonfuIs`: an l that was read as a capital I or a one, in a word of some length.
fn misread(input: &str) -> Option<(&'static Word, usize)> {
    let end = input.find(|c: char| !c.is_alphanumeric()).unwrap_or(input.len());
    let word = input.get(..end).filter(|w| w.len() > SHORT)?;
    let meant = word.replace(['I', '1'], "l");
    let found = [Sort::Mass, Sort::Volume]
        .iter()
        .find_map(|sort| super::words::front(*sort, &meant));
    found.filter(|(_, length)| *length == end && meant != word)
}

/// `tablspoon`, `teaspon`: a letter amiss in a word of some length.
pub fn misspelt(input: &str) -> Option<(&'static Word, usize)> {
    let end = input.find(|c: char| !c.is_alphanumeric()).unwrap_or(input.len());
    let meant = unit_meant(input.get(..end)?)?;
    let found = [Sort::Mass, Sort::Volume]
        .iter()
        .find_map(|sort| super::words::front(*sort, meant));
    found.map(|(word, _)| (word, end))
}

/// The unit of `2lb3oz`: no blank behind it, but another amount.
fn run_on(input: &str) -> Option<(&'static Word, usize)> {
    let end = input.find(|c: char| !c.is_alphabetic())?;
    let (letters, rest) = input.split_at_checked(end)?;
    let (word, length) = super::words::front(Sort::Mass, letters).filter(|(_, length)| *length == end)?;
    let mut rest = rest;
    (rest.starts_with(|c: char| c.is_ascii_digit()) && one(&mut rest).is_ok()).then_some((word, length))
}
