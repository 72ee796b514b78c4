//! The grammar of a number as people type it, without its unit.
//!
//! ```text
//! number   = whole [gap fraction] | [whole] glyph | fraction | decimal
//! whole    = digits | groups                    480   1 480   1,234,567
//! decimal  = whole mark digits                  3.2   3,2     1,480.5   1.480,5
//! fraction = digits ("/" | "⁄") digits          1/4
//! glyph    = ½ ⅓ ¼ ⅛ …
//! mark     = "." | ","
//! ```
//!
//! A single comma before exactly three digits (`1,480`) is refused as ambiguous: it is a thousand to one
//! reader and one and a half to another. A point is always a decimal mark. Digits are plain ASCII.

use super::exact::Exact;
use rust_decimal::{Decimal, dec};
use winnow::ascii::digit1;
use winnow::combinator::{alt, opt, preceded, repeat};
use winnow::prelude::*;
use winnow::token::{one_of, take_while};

/// Most digits taken on either side of the decimal mark.
pub const MOST_WHOLE_DIGITS: usize = 9;
/// Most digits taken after the decimal mark.
pub const MOST_DECIMALS: usize = 12;

/// What a run of digits and marks can mean.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Reading {
    /// One value.
    One(Decimal),
    /// `1,480`: the decimal reading, then the grouped one.
    Either(Decimal, Decimal),
    /// More digits than are taken.
    TooManyDigits,
}

const GLYPHS: [(char, u32, u32); 15] = [
    ('½', 1, 2),
    ('⅓', 1, 3),
    ('⅔', 2, 3),
    ('¼', 1, 4),
    ('¾', 3, 4),
    ('⅕', 1, 5),
    ('⅖', 2, 5),
    ('⅗', 3, 5),
    ('⅘', 4, 5),
    ('⅙', 1, 6),
    ('⅚', 5, 6),
    ('⅛', 1, 8),
    ('⅜', 3, 8),
    ('⅝', 5, 8),
    ('⅞', 7, 8),
];

/// Blank characters that may stand in or around a number: space, no-break, thin and narrow no-break space.
pub(crate) fn is_gap(c: char) -> bool {
    matches!(c, ' ' | '\t' | '\u{a0}' | '\u{2009}' | '\u{202f}')
}

/// What a number may start with; a unit ends before it.
pub(crate) fn starts_number(c: char) -> bool {
    c.is_ascii_digit() || GLYPHS.iter().any(|g| g.0 == c)
}

pub(crate) fn gap(input: &mut &str) -> ModalResult<()> {
    take_while(0.., is_gap).void().parse_next(input)
}

/// Reads one number from the front of `input` and leaves the rest.
pub(crate) fn number(input: &mut &str) -> ModalResult<Reading> {
    alt((fraction.map(Reading::One), glyph.map(Reading::One), mixed)).parse_next(input)
}

/// A whole or decimal number, with a fraction behind it when the first part is whole.
fn mixed(input: &mut &str) -> ModalResult<Reading> {
    let first = marked.parse_next(input)?;
    let Reading::One(whole) = first else { return Ok(first) };
    if !whole.is_integer() || whole.scale() != 0 {
        return Ok(first);
    }
    // "1 480/3" is no mixed number: its end is left, and refused as a second number without a unit.
    let proper = fraction.verify(|part| *part < Decimal::ONE);
    let part = opt(preceded(opt(alt(('-', '+', is_gap_char))), alt((proper, glyph)))).parse_next(input)?;
    Ok(Reading::One(part.and_then(|p| whole.plus(p)).unwrap_or(whole)))
}

fn is_gap_char(input: &mut &str) -> ModalResult<char> {
    one_of(is_gap).parse_next(input)
}

/// `1/4`: one to four digits over one to four digits, not over nought.
fn fraction(input: &mut &str) -> ModalResult<Decimal> {
    (part, one_of(['/', '⁄']), part)
        .verify_map(|(n, _, d): (&str, char, &str)| {
            let (n, d) = (
                Decimal::from(n.parse::<u32>().ok()?),
                Decimal::from(d.parse::<u32>().ok()?),
            );
            n.over(d)
        })
        .parse_next(input)
}

fn part<'a>(input: &mut &'a str) -> ModalResult<&'a str> {
    take_while(1..=4, |c: char| c.is_ascii_digit()).parse_next(input)
}

fn glyph(input: &mut &str) -> ModalResult<Decimal> {
    one_of(|c: char| GLYPHS.iter().any(|g| g.0 == c))
        .verify_map(|c: char| {
            let (_, n, d) = GLYPHS.iter().find(|g| g.0 == c)?;
            Decimal::from(*n).over(Decimal::from(*d))
        })
        .parse_next(input)
}

/// Digits with marks and group gaps between them.
fn marked(input: &mut &str) -> ModalResult<Reading> {
    // A point with nothing before it is a decimal: ".5".
    let head = opt(digit1).parse_next(input)?.unwrap_or("");
    let tail: Vec<(char, &str)> = repeat(0.., (one_of(['.', ',']), digit1)).parse_next(input)?;
    if head.is_empty() && tail.is_empty() {
        return winnow::combinator::fail.parse_next(input);
    }
    if tail.is_empty() {
        return spaced(head, input);
    }
    Ok(weigh_marks(head, &tail))
}

/// `1 480` or `12 000 000`, and a decimal behind the last group.
fn spaced(head: &str, input: &mut &str) -> ModalResult<Reading> {
    let mut digits = head.to_owned();
    if head.len() <= 3 {
        loop {
            let before = *input;
            let Some(next) = opt(group).parse_next(input)? else {
                break;
            };
            // "7 1000" is no grouping, and "1 250/3" a fraction begun: give the digits back.
            if input.starts_with(|c: char| c.is_ascii_digit() || c == '/' || c == '⁄') {
                *input = before;
                break;
            }
            digits.push_str(next);
        }
    }
    if digits.len() > head.len() {
        let decimals = opt(preceded(one_of(['.', ',']), digit1)).parse_next(input)?;
        return Ok(assemble(&digits, decimals.unwrap_or("")));
    }
    Ok(assemble(&digits, ""))
}

fn group<'a>(input: &mut &'a str) -> ModalResult<&'a str> {
    preceded(one_of(is_gap), take_while(3..=3, |c: char| c.is_ascii_digit())).parse_next(input)
}

/// Tells decimal marks from group marks.
fn weigh_marks(head: &str, tail: &[(char, &str)]) -> Reading {
    let joined = |parts: &[(char, &str)]| parts.iter().fold(head.to_owned(), |a, (_, d)| a + d);
    match tail {
        [(',', d)] if d.len() == 3 && (1..=3).contains(&head.len()) && !head.starts_with('0') => {
            match (assemble(head, d), assemble(&joined(tail), "")) {
                (Reading::One(small), Reading::One(large)) => Reading::Either(small, large),
                _ => Reading::TooManyDigits,
            }
        }
        [(_, d)] => assemble(head, d),
        [groups @ .., (last, d)] => {
            let mark = groups.first().map_or(*last, |g| g.0);
            let grouped = (1..=3).contains(&head.len()) && groups.iter().all(|(m, g)| *m == mark && g.len() == 3);
            if grouped && *last != mark {
                assemble(&joined(groups), d)
            } else if grouped && d.len() == 3 {
                assemble(&joined(tail), "")
            } else {
                Reading::TooManyDigits
            }
        }
        [] => assemble(head, ""),
    }
}

fn assemble(whole: &str, decimals: &str) -> Reading {
    let whole = whole.trim_start_matches('0');
    if whole.len() > MOST_WHOLE_DIGITS || decimals.len() > MOST_DECIMALS {
        return Reading::TooManyDigits;
    }
    let value = format!("{whole}{decimals}").parse::<i128>().unwrap_or(0);
    let scale = u32::try_from(decimals.len()).unwrap_or(0);
    Decimal::try_from_i128_with_scale(value, scale).map_or(Reading::TooManyDigits, Reading::One)
}

/// Common fractions with their glyphs, for printing: eighths, thirds.
pub(crate) fn glyph_of(part: Decimal) -> Option<char> {
    let tolerance = dec!(0.000_000_001);
    GLYPHS.iter().find_map(|(c, n, d)| {
        let exact = Decimal::from(*n).over(Decimal::from(*d))?;
        (part.less(exact)?.abs() < tolerance).then_some(*c)
    })
}
