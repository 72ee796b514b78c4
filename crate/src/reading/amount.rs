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

/// One number, or so many dozen or brace of it.
fn number(input: &mut &str) -> ModalResult<Number> {
    let mut number = single.parse_next(input)?;
    let before = *input;
    let by = opt(preceded(alt((gap.void(), '-'.void())), take(Sort::Multiple))).parse_next(input)?;
    let times = |by: Decimal| number.value.map(|n| n.times(by));
    match by.and_then(figure).filter(|_| number.other.is_none()).and_then(times) {
        Some(value) => number.value = value,
        None => *input = before,
    }
    Ok(number)
}

/// Digits, words, or both (`2 and a half`).
fn single(input: &mut &str) -> ModalResult<Number> {
    let point = |value| Number {
        value: Range::point(value),
        other: None,
    };
    if let Some(part) = opt(fraction).parse_next(input)? {
        return Ok(point(part));
    }
    if let Some(number) = opt(alt((unspaced, scanned))).parse_next(input)? {
        return Ok(number);
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

/// `21/2 oz`: two and a half with its gap lost, or twenty-one halves. Both, where the part alone is less than one.
fn unspaced(input: &mut &str) -> ModalResult<Number> {
    let end = input
        .find(|c: char| !(c.is_ascii_digit() || c == '/'))
        .unwrap_or(input.len());
    let (token, rest) = input.split_at_checked(end).unwrap_or((input, ""));
    let whole = |text: &str| {
        let mut text = text;
        let read = digits.parse_next(&mut text).ok().filter(|_| text.is_empty());
        read.and_then(|r| match r {
            Reading::One(value) => Some(value),
            _ => None,
        })
    };
    let both = token.find('/').and_then(|stroke| {
        let (units, part) = token.split_at_checked(stroke.checked_sub(1)?)?;
        let part = whole(part).filter(|p| *p < Decimal::ONE && !p.is_zero())?;
        Some((whole(units)?.plus(part)?, whole(token)?))
    });
    match both.filter(|_| token.bytes().filter(|b| *b == b'/').count() == 1) {
        Some((mixed, halves)) => {
            *input = rest;
            Ok(Number {
                value: Range::point(mixed),
                other: Some(halves),
            })
        }
        None => fail.parse_next(input),
    }
}

/// `1O`, `25O`, `l lb`, `I½ oz`, `l-2 tsp`: a nought read as the letter o and a one as the letter l or I, beside a digit or
/// before a unit. What can be two digits is both: an `S`, and the stroke in `2l/2`.
fn scanned(input: &mut &str) -> ModalResult<Number> {
    let glyph = |c: char| "½⅓⅔¼¾⅛⅜⅝⅞".contains(c);
    let end = input
        .find(|c: char| !(c.is_alphanumeric() || c == '/') || glyph(c))
        .unwrap_or(input.len());
    let (token, rest) = input.split_at_checked(end).unwrap_or((input, ""));
    let like = |c: char| c.is_ascii_digit() || matches!(c, 'O' | 'o' | 'l' | 'I' | '/');
    let point = |value| Number {
        value: Range::point(value),
        other: None,
    };
    if token == "S" && before_unit(rest, true) {
        *input = rest;
        return Ok(Number {
            other: Some(dec!(8)),
            ..point(dec!(5))
        });
    }
    let digit = token.bytes().any(|b| b.is_ascii_digit());
    let letter = token.bytes().any(|b| b.is_ascii_alphabetic());
    let one = matches!(token, "l" | "I" | "ll" | "II");
    let alone = one && (rest.starts_with(glyph) || before_unit(rest, token != "l") || before_range(rest));
    if token.is_empty() || token.len() > 6 || !token.chars().all(like) || !(digit && letter || alone) {
        return fail.parse_next(input);
    }
    // "5l" is litres.
    let litres = token.trim_end_matches('l').bytes().all(|b| b.is_ascii_digit());
    if token.ends_with('l') && litres && !alone {
        return fail.parse_next(input);
    }
    let digits: String = token
        .chars()
        .chain(rest.chars().take_while(|c| glyph(*c)))
        .map(|c| match c {
            'O' | 'o' => '0',
            'l' | 'I' => '1',
            other => other,
        })
        .collect();
    // "2l/2" is two and a half, where it is not twenty-one halves.
    let mixed = token
        .find(['l', 'I'])
        .filter(|at| *at > 0 && token.get(at.saturating_add(1)..).is_some_and(|t| t.starts_with('/')));
    let whole = |text: &str| {
        let mut text = text;
        match self::digits.parse_next(&mut text) {
            Ok(Reading::One(value)) if text.is_empty() => Some(value),
            _ => None,
        }
    };
    let number = match mixed.and_then(|at| digits.split_at_checked(at)) {
        Some((units, part)) => whole(units)
            .zip(whole(part))
            .and_then(|(units, part)| units.plus(part))
            .map(|value| Number {
                other: whole(&digits),
                ..point(value)
            }),
        None => whole(&digits).map(point),
    };
    match number {
        Some(number) => {
            let glyphs: usize = rest.chars().take_while(|c| glyph(*c)).map(char::len_utf8).sum();
            *input = rest.get(glyphs..).unwrap_or_default();
            Ok(number)
        }
        None => fail.parse_next(input),
    }
}

/// True where a unit of weight or measure stands behind; `short`, where it is one of few letters: "I pound it" is no number.
fn before_unit(rest: &str, short: bool) -> bool {
    let mut behind = rest;
    let _ = gap(&mut behind);
    let start = behind;
    behind.len() < rest.len()
        && unit(&mut behind).is_ok_and(|u| matches!(u.sort, Sort::Mass | Sort::Volume))
        && (!short || start.len().saturating_sub(behind.len()) <= SHORT)
}

/// The letters of `tbsp`.
const SHORT: usize = 4;

/// `l-2 tsp`: the first end of a range.
fn before_range(rest: &str) -> bool {
    let behind = rest.strip_prefix(['-', '–', '—']).unwrap_or_default();
    behind.starts_with(|c: char| c.is_ascii_digit())
}

/// A part of another weight: `half`, `a third of`, `twice`.
pub fn share(input: &mut &str) -> ModalResult<Decimal> {
    alt((fraction, alt((keyword("twice"), keyword("double"))).value(Decimal::TWO))).parse_next(input)
}

/// `half a`, `three quarters of a`, `two thirds`.
fn fraction(input: &mut &str) -> ModalResult<Decimal> {
    let half = take(Sort::Fraction).verify_map(figure);
    let third = take(Sort::Third).verify_map(|w| figure(w)?.over(dec!(3)));
    let value = alt((half, third)).parse_next(input)?;
    if input.starts_with(|c: char| !is_gap(c) && c != '-') {
        return fail.parse_next(input);
    }
    Ok(value)
}
