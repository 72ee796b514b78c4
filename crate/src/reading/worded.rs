//! Numbers in words of more than one: `a hundred and twenty`, `two point five`, `one fifty`.

use super::numeral::{Number, before_unit, figure, keyword};
use super::words::{Sort, take};
use crate::quantity::exact::Exact;
use crate::quantity::{Range, gap};
use rust_decimal::{Decimal, dec};
use winnow::combinator::{alt, fail, opt, preceded, repeat};
use winnow::prelude::*;

const THOUSAND: Decimal = dec!(1000);

/// So many digits are read behind a point.
const DIGITS: usize = 4;

fn point(value: Decimal) -> Number {
    Number {
        value: Range::point(value),
        other: None,
    }
}

/// A hyphen or a blank between two words of one number.
fn joint(input: &mut &str) -> ModalResult<()> {
    alt(('-'.void(), gap)).parse_next(input)
}

/// A number of one word, and no article.
fn word(input: &mut &str) -> ModalResult<Decimal> {
    let from = *input;
    let value = take(Sort::Number).verify_map(figure).parse_next(input)?;
    let said = from.get(..from.len().saturating_sub(input.len())).unwrap_or_default();
    let article = ["a", "an", "ein", "eine", "einen", "une"].contains(&said.to_lowercase().as_str());
    if article || input.starts_with(char::is_alphanumeric) {
        return fail.parse_next(input);
    }
    Ok(value)
}

/// `twenty`, `seventy five`, `forty-two`; but `twenty two-pound roasts`.
fn below_hundred(input: &mut &str) -> ModalResult<Decimal> {
    let tens = word.verify(|n| *n < Decimal::ONE_HUNDRED).parse_next(input)?;
    let mut ahead = *input;
    let unit = opt(preceded(joint, word.verify(|n| *n < Decimal::TEN))).parse_next(&mut ahead)?;
    let round = tens >= dec!(20) && tens.over(Decimal::TEN).is_some_and(|r| r == r.trunc());
    match unit
        .filter(|_| round && !ahead.starts_with('-'))
        .and_then(|u| tens.plus(u))
    {
        Some(sum) => {
            *input = ahead;
            Ok(sum)
        }
        None => Ok(tens),
    }
}

/// What goes on behind hundreds or thousands: `and twenty`.
fn rest(most: Decimal) -> impl FnMut(&mut &str) -> ModalResult<Decimal> {
    move |input| {
        let and = opt((gap, keyword("and")));
        let more = alt((hundreds, below_hundred)).verify(|n| *n < most);
        let mut ahead = *input;
        let found = preceded((and, joint), more).parse_next(&mut ahead)?;
        *input = ahead;
        Ok(found)
    }
}

/// `a hundred and twenty`, `three hundred`.
fn hundreds(input: &mut &str) -> ModalResult<Decimal> {
    let mut ahead = *input;
    let whole = take(Sort::Number).verify_map(figure).parse_next(&mut ahead)?;
    let whole = if whole == Decimal::ONE_HUNDRED {
        Some(whole)
    } else {
        let said = opt(preceded(joint, keyword("hundred"))).parse_next(&mut ahead)?;
        said.and_then(|()| whole.times(Decimal::ONE_HUNDRED))
    };
    let Some(whole) = whole.filter(|n| *n < THOUSAND) else {
        return fail.parse_next(input);
    };
    let more = opt(rest(Decimal::ONE_HUNDRED)).parse_next(&mut ahead)?;
    *input = ahead;
    Ok(more.and_then(|m| whole.plus(m)).unwrap_or(whole))
}

/// `a thousand`, `two thousand five hundred`.
fn thousands(input: &mut &str) -> ModalResult<Decimal> {
    let mut ahead = *input;
    let whole = alt((below_hundred, take(Sort::Number).verify_map(figure))).parse_next(&mut ahead)?;
    preceded(joint, keyword("thousand")).parse_next(&mut ahead)?;
    let Some(whole) = whole.times(THOUSAND) else {
        return fail.parse_next(input);
    };
    let more = opt(rest(THOUSAND)).parse_next(&mut ahead)?;
    *input = ahead;
    Ok(more.and_then(|m| whole.plus(m)).unwrap_or(whole))
}

/// `two point five`, `nought point two five`.
fn decimal(input: &mut &str) -> ModalResult<Decimal> {
    let nought = || alt((keyword("zero"), keyword("nought"), keyword("naught"), keyword("oh"))).value(Decimal::ZERO);
    let mut ahead = *input;
    let whole = opt(alt((nought(), below_hundred))).parse_next(&mut ahead)?;
    if whole.is_some() {
        gap.parse_next(&mut ahead)?;
    }
    preceded(keyword("point"), gap).parse_next(&mut ahead)?;
    let digit = alt((nought(), word.verify(|n| *n < Decimal::TEN)));
    let digits: Vec<Decimal> = repeat(1..=DIGITS, preceded(gap, digit)).parse_next(&mut ahead)?;
    let mut value = whole.unwrap_or_default();
    let mut place = Decimal::ONE;
    for digit in digits {
        let next = place
            .over(Decimal::TEN)
            .and_then(|p| Some((p, value.plus(digit.times(p)?)?)));
        let Some((smaller, sum)) = next else {
            return fail.parse_next(input);
        };
        (place, value) = (smaller, sum);
    }
    *input = ahead;
    Ok(value)
}

/// `one fifty`: hundreds without their word. `Two fifty` may be two of fifty as well.
fn short(input: &mut &str) -> ModalResult<Number> {
    let mut ahead = *input;
    let first = word.verify(|n| *n < Decimal::TEN).parse_next(&mut ahead)?;
    let tens = preceded(gap, below_hundred.verify(|n| *n >= dec!(20))).parse_next(&mut ahead)?;
    let large = first.times(Decimal::ONE_HUNDRED).and_then(|h| h.plus(tens));
    let Some((large, small)) = large.zip(first.times(tens)) else {
        return fail.parse_next(input);
    };
    if !before_unit(ahead, false) {
        return fail.parse_next(input);
    }
    *input = ahead;
    Ok(if first == Decimal::ONE {
        point(large)
    } else {
        Number {
            other: Some(large),
            ..point(small)
        }
    })
}

/// `seventy five`; a word alone is read by its own row.
fn twenty_five(input: &mut &str) -> ModalResult<Decimal> {
    let from = *input;
    let value = below_hundred.parse_next(input)?;
    let said = from.get(..from.len().saturating_sub(input.len())).unwrap_or_default();
    if said.contains([' ', '-']) {
        return Ok(value);
    }
    *input = from;
    fail.parse_next(input)
}

/// A number of several words; one of one word is none of these.
pub fn worded(input: &mut &str) -> ModalResult<Number> {
    if !input.starts_with(char::is_alphabetic) {
        return fail.parse_next(input);
    }
    alt((
        decimal.map(point),
        thousands.map(point),
        hundreds.map(point),
        twenty_five.map(point),
        short,
    ))
    .parse_next(input)
}
