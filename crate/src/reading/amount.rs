//! Numbers, ranges of numbers, and amounts with their unit. The grammar stands at the head of this floor.

use super::words::{Sort, Word, take};
use crate::quantity::exact::Exact;
use crate::quantity::{Range, Reading, gap, is_gap, number as digits};
use rust_decimal::{Decimal, dec};
use winnow::combinator::{alt, fail, opt, preceded, repeat};
use winnow::prelude::*;
use winnow::token::one_of;

/// A number as said: a range, and the other reading of `1,480`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Number {
    /// `2`, `2 to 3`.
    pub value: Range,
    /// A thousand in place of one and a half.
    pub other: Option<Decimal>,
}

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

/// How far `about` may be off either way, as a proportion (judgement).
const ABOUT: Decimal = dec!(0.1);

impl Number {
    fn widened(&self, about: bool) -> Option<Range> {
        if !about {
            return Some(self.value);
        }
        let by = |end: Decimal, share: Decimal| end.times(share);
        Some(Range::new(
            by(self.value.low, Decimal::ONE.less(ABOUT)?)?,
            self.value.typical,
            by(self.value.high, Decimal::ONE.plus(ABOUT)?)?,
        ))
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
                let usual = *figures.get(unit.unwrap_or(0))?;
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
        preceded(
            (
                gap,
                opt((alt((one_of(['+', '&']).void(), keyword("plus"), keyword("and"))), gap)),
            ),
            one.verify(|(part, _, _, _)| {
                // One question settles one thing: what can mean several does not make a sum.
                let plain = |(number, unit): &(Number, &Word)| number.other.is_none() && !unit.note.contains('|');
                let last = amount.parts.last().filter(|last| plain(last) && plain(part));
                last.is_some_and(|(_, unit)| unit.sort == part.1.sort && figure(part.1) < figure(unit))
                    && matches!(part.1.sort, Sort::Mass | Sort::Volume)
            }),
        )
        .parse_next(input)
    })
    .parse_next(input)?;
    for (part, _, heaped, packed) in more {
        amount.parts.push(part);
        amount.heap = amount.heap.or(heaped);
        pack = pack.or(packed);
    }
    // "2 tsp to 3 tsp", "1 oz - 2 oz".
    let before = *input;
    let to = opt(preceded(
        (gap, joint, gap),
        one.verify(|(part, _, _, _)| {
            amount.parts.len() == 1 && amount.parts.first().is_some_and(|(_, unit)| *unit == part.1)
        }),
    ))
    .parse_next(input)?;
    if let (Some((end, _, _, _)), Some((number, _))) = (to, amount.parts.first_mut()) {
        match between(number, &end.0) {
            Some(range) => *number = range,
            None => *input = before,
        }
    }
    amount.pack = pack.or(opt(preceded((gap, opt((',', gap))), take(Sort::Pack))).parse_next(input)?);
    Ok(amount)
}

fn figure(unit: &Word) -> Option<Decimal> {
    unit.figures().next()
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
    let number = range.parse_next(input)?;
    let _ = gap(input);
    let heap = opt((take(Sort::Heap), gap)).parse_next(input)?.map(|(w, ())| w);
    let pack = opt((take(Sort::Pack), gap)).parse_next(input)?.map(|(w, ())| w);
    let _ = opt((alt((keyword("small"), keyword("large"), keyword("whole"))), gap)).parse_next(input)?;
    let unit = unit.parse_next(input)?;
    // "tsp." and "lb." carry a full stop of their own.
    if input.starts_with('.')
        && !input
            .get(1..)
            .is_some_and(|r| r.starts_with(|c: char| c.is_ascii_digit()))
    {
        *input = input.get(1..).unwrap_or_default();
    }
    Ok(((number, unit), about, before.or(heap), pack))
}

/// A unit of any sort; the longest word wins.
fn unit(input: &mut &str) -> ModalResult<&'static Word> {
    const SORTS: [Sort; 7] = [
        Sort::Mass,
        Sort::Volume,
        Sort::Pinch,
        Sort::Count,
        Sort::Percent,
        Sort::Vague,
        Sort::Other,
    ];
    let found = SORTS.iter().filter_map(|sort| super::words::front(*sort, input));
    match found.max_by_key(|(_, length)| *length).or_else(|| run_on(input)) {
        Some((word, length)) => {
            *input = input.get(length..).unwrap_or_default();
            Ok(word)
        }
        None => fail.parse_next(input),
    }
}

/// The unit of `2lb3oz`: no blank behind it, but another amount.
fn run_on(input: &str) -> Option<(&'static Word, usize)> {
    let end = input.find(|c: char| !c.is_alphabetic())?;
    let (letters, rest) = input.split_at_checked(end)?;
    let (word, length) = super::words::front(Sort::Mass, letters).filter(|(_, length)| *length == end)?;
    let mut rest = rest;
    (rest.starts_with(|c: char| c.is_ascii_digit()) && one(&mut rest).is_ok()).then_some((word, length))
}

/// `2`, `2-3`, `2 to 3`, `two or three`, `between 2 and 3`.
pub fn range(input: &mut &str) -> ModalResult<Number> {
    let between_words = opt((keyword("between"), gap)).parse_next(input)?.is_some();
    let first = number.parse_next(input)?;
    let before = *input;
    let end = if between_words {
        opt(preceded((gap, keyword("and"), gap), number)).parse_next(input)?
    } else {
        opt(preceded((gap, joint, gap), number)).parse_next(input)?
    };
    Ok(match end.map(|end| between(&first, &end)) {
        Some(Some(range)) => range,
        Some(None) => {
            *input = before;
            first
        }
        None => first,
    })
}

/// A range from two numbers, the smaller first; nothing where it falls, or where one of them can be read two ways.
fn between(from: &Number, to: &Number) -> Option<Number> {
    let (low, high) = (from.value.low, to.value.high);
    let single = from.value.is_point() && to.value.is_point() && from.other.is_none() && to.other.is_none();
    let middle = low.plus(high)?.over(Decimal::TWO)?;
    (single && low < high).then_some(Number {
        value: Range::new(low, middle, high),
        other: None,
    })
}

fn joint(input: &mut &str) -> ModalResult<()> {
    alt((one_of(['-', '–', '—']).void(), keyword("to"), keyword("or"))).parse_next(input)
}

/// A word on its own, whatever the case of its letters.
pub fn keyword(word: &'static str) -> impl FnMut(&mut &str) -> ModalResult<()> {
    move |input| {
        let head = input.get(..word.len()).filter(|h| h.eq_ignore_ascii_case(word));
        let rest = input.get(word.len()..).unwrap_or_default();
        if head.is_none() || rest.starts_with(char::is_alphanumeric) {
            return fail.parse_next(input);
        }
        *input = rest;
        Ok(())
    }
}

/// One number: digits, words, or both (`2 and a half`).
fn number(input: &mut &str) -> ModalResult<Number> {
    let point = |value| Number {
        value: Range::point(value),
        other: None,
    };
    if let Some(part) = opt(fraction).parse_next(input)? {
        return Ok(point(part));
    }
    let reading = alt((digits, take(Sort::Number).verify_map(|w| figure(w).map(Reading::One)))).parse_next(input)?;
    let whole = match reading {
        Reading::One(value) => value,
        Reading::Either(small, large) => {
            return Ok(Number {
                value: Range::point(small),
                other: Some(large),
            });
        }
        Reading::TooManyDigits => return fail.parse_next(input),
    };
    let proper = digits.verify_map(|r| match r {
        Reading::One(value) if value < Decimal::ONE => Some(value),
        _ => None,
    });
    let part = opt(preceded(
        (gap, alt((keyword("and"), one_of(['&', '+']).void())), gap),
        alt((fraction, proper)),
    ))
    .parse_next(input)?;
    Ok(point(part.and_then(|p| whole.plus(p)).unwrap_or(whole)))
}

/// `half a`, `three quarters of a`, `two thirds`.
fn fraction(input: &mut &str) -> ModalResult<Decimal> {
    let half = take(Sort::Fraction).verify_map(figure);
    let third = take(Sort::Third).verify_map(|w| figure(w)?.over(dec!(3)));
    let value = alt((half, third)).parse_next(input)?;
    if input.starts_with(|c: char| !is_gap(c)) {
        return fail.parse_next(input);
    }
    Ok(value)
}
