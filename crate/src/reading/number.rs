//! Numbers as they are said, written and misread, and ranges of them.

use super::numeral::before_unit;
pub use super::numeral::{Number, SHORT, figure, keyword, known_unit};
use super::worded::worded;
use super::words::{Sort, take};
use crate::quantity::exact::Exact;
use crate::quantity::{Range, Reading, gap, is_gap, number as digits};
use rust_decimal::{Decimal, dec};
use winnow::combinator::{alt, fail, opt, preceded};
use winnow::prelude::*;
use winnow::token::one_of;

/// `2`, `2-3`, `2 to 3`, `two or three`, `between 2 and 3`.
pub fn range(input: &mut &str) -> ModalResult<Number> {
    let between_words = opt((keyword("between"), gap)).parse_next(input)?.is_some();
    // "Between 1/2 and 3/4": the "and" is not that of "2 and a half".
    if between_words {
        let one = || {
            alt((
                fraction,
                digits.verify_map(|r| if let Reading::One(n) = r { Some(n) } else { None }),
            ))
        };
        let ends = opt((one(), gap, keyword("and"), gap, one())).parse_next(input)?;
        let point = |n: Decimal| Number {
            value: Range::point(n),
            other: None,
        };
        if let Some(number) = ends.and_then(|(low, (), (), (), high)| between(&point(low), &point(high))) {
            return Ok(number);
        }
    }
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
pub fn between(from: &Number, to: &Number) -> Option<Number> {
    let (low, high) = (from.value.low, to.value.high);
    let single = from.value.is_point() && to.value.is_point() && from.other.is_none() && to.other.is_none();
    let middle = low.plus(high)?.over(Decimal::TWO)?;
    (single && low < high).then_some(Number {
        value: Range::new(low, middle, high),
        other: None,
    })
}

pub fn joint(input: &mut &str) -> ModalResult<()> {
    alt((one_of(['-', '–', '—']).void(), keyword("to"), keyword("or"))).parse_next(input)
}

/// One number, or so many dozen or brace of it.
fn number(input: &mut &str) -> ModalResult<Number> {
    let from = *input;
    let mut number = alt((single, several)).parse_next(input)?;
    endings(
        from.get(..from.len().saturating_sub(input.len())).unwrap_or_default(),
        input,
    )?;
    let before = *input;
    let by = opt(preceded(alt(('-'.void(), gap.void())), take(Sort::Multiple))).parse_next(input)?;
    let times = |by: Decimal| number.value.map(|n| n.times(by));
    match by.and_then(figure).filter(|_| number.other.is_none()).and_then(times) {
        Some(value) => number.value = value,
        None => *input = before,
    }
    Ok(number)
}

/// `brace of pheasants`: one brace.
fn several(input: &mut &str) -> ModalResult<Number> {
    let mut ahead = *input;
    take(Sort::Multiple).parse_next(&mut ahead)?;
    if !ahead.starts_with(" of ") {
        return fail.parse_next(input);
    }
    Ok(Number {
        value: Range::point(Decimal::ONE),
        other: None,
    })
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
    let worded = opt(worded).parse_next(input)?;
    if let Some(number) = worded.as_ref().filter(|n| n.other.is_some()) {
        return Ok(number.clone());
    }
    let reading = match worded {
        Some(number) => Reading::One(number.value.typical),
        None => alt((digits, take(Sort::Number).verify_map(|w| figure(w).map(Reading::One)))).parse_next(input)?,
    };
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
    // "One-and-a-half", "1 - 1/2".
    let and = alt((
        (gap, alt((keyword("and"), one_of(['&', '+']).void())), gap).void(),
        "-and-".void(),
    ));
    let part = opt(alt((
        preceded(and, alt((hyphened, fraction, proper))),
        preceded(" - ", glyphs_of_a_part).verify(|_| whole >= Decimal::ONE),
    )))
    .parse_next(input)?;
    Ok(point(part.and_then(|p| whole.plus(p)).unwrap_or(whole)))
}

/// `a-half`.
fn hyphened(input: &mut &str) -> ModalResult<Decimal> {
    preceded("a-", take(Sort::Fraction).verify_map(figure)).parse_next(input)
}

/// `1/2` and `½`, no `0.5`.
fn glyphs_of_a_part(input: &mut &str) -> ModalResult<Decimal> {
    let from = *input;
    let part = digits.parse_next(input)?;
    let said = from.get(..from.len().saturating_sub(input.len())).unwrap_or_default();
    match part {
        Reading::One(value) if value < Decimal::ONE && !said.contains(['.', ',']) => Ok(value),
        _ => fail.parse_next(input),
    }
}

/// `2/3rds`, `12ish`, `2x`: what hangs on a number and says nothing more. `1/?` is none.
fn endings(said: &str, input: &mut &str) -> ModalResult<()> {
    let ends: &[&str] = if said.contains('/') {
        &["rds", "rd", "ths", "th"]
    } else {
        &["ish", "-ish", "x", "+"]
    };
    let rest = ends.iter().find_map(|end| input.strip_prefix(end));
    if let Some(rest) = rest.filter(|rest| !rest.starts_with(char::is_alphanumeric)) {
        *input = rest;
    }
    if input.starts_with("/?") || input.starts_with('?') && input.len() > 1 && !input.starts_with("? ") {
        return fail.parse_next(input);
    }
    Ok(())
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
    if token.ends_with('l') && litres && !alone && !before_time(rest) {
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

/// `2l days`: a one after all.
fn before_time(rest: &str) -> bool {
    let behind = rest.trim_start();
    behind.len() < rest.len() && super::words::front(Sort::Other, behind).is_some_and(|(unit, _)| unit.note == "time")
}

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
pub fn fraction(input: &mut &str) -> ModalResult<Decimal> {
    let half = take(Sort::Fraction).verify_map(figure);
    let third = take(Sort::Third).verify_map(|w| figure(w)?.over(dec!(3)));
    let value = alt((half, third)).parse_next(input)?;
    if input.starts_with(|c: char| !is_gap(c) && c != '-') {
        return fail.parse_next(input);
    }
    Ok(value)
}

/// Every run of digits that stands by itself, with its place.
pub fn figures(text: &str) -> impl Iterator<Item = (usize, &str)> {
    let starts = text.char_indices().filter(move |(at, c)| {
        let before = text.get(..*at).and_then(|t| t.chars().next_back());
        c.is_ascii_digit() && before.is_none_or(|b| !(b.is_alphanumeric() || matches!(b, '.' | ',' | '/' | '#')))
    });
    starts.filter_map(move |(at, _)| {
        let rest = text.get(at..)?;
        let end = rest.find(|c: char| !c.is_ascii_digit()).unwrap_or(rest.len());
        let alone = !rest.get(end..)?.starts_with(|c: char| c.is_alphanumeric());
        alone.then(|| (at, rest.get(..end).unwrap_or_default()))
    })
}
