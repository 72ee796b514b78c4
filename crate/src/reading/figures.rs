//! Figures of a clause that stand without a unit, or for another thing.

use super::amount::{Amount, Number, range, share};
use super::names::Names;
use super::token::tokens;
use super::words::{Sort, of};
use crate::pantry::Group;
use crate::quantity::Range;
use crate::quantity::exact::Exact;
use crate::tables::{BY_PACKET, OF_ANOTHER, PACKETS};
use rust_decimal::Decimal;
use rust_decimal::dec;
use winnow::Parser;

/// `half the weight of the salt`: as a per cent of it, with its place.
pub(super) fn of_the_salt(text: &str, names: &Names) -> Option<(usize, usize, Amount)> {
    let percent = of(Sort::Percent).next()?;
    tokens(text).iter().find_map(|t| {
        let rest = text.get(t.start..)?;
        let mut input = rest;
        let part = share.parse_next(&mut input).ok()?;
        let input = input.trim_start().to_ascii_lowercase();
        let behind = OF_ANOTHER.iter().find_map(|of| input.strip_prefix(of))?;
        let next = tokens(behind);
        let (at, length, meaning) = names.find(next.get(..next.len().min(2))?)?;
        let salt = at == 0 && meaning.items.first().is_some_and(|i| i.group == Group::Salt);
        let last = next.get(length.checked_sub(1)?)?.end;
        let end = text.len().saturating_sub(behind.len()).saturating_add(last);
        let number = Number {
            value: Range::point(part.times(Decimal::ONE_HUNDRED)?),
            other: None,
        };
        let amount = Amount {
            parts: vec![(number, percent)],
            heap: None,
            pack: None,
            about: false,
        };
        salt.then_some((t.start, end, amount))
    })
}

/// Where the `or` before an amount begins, if one is there.
pub(super) fn or_before(text: &str, start: usize) -> usize {
    let before = text.get(..start).unwrap_or_default().trim_end();
    let word = before.rsplit(' ').next().filter(|w| w.eq_ignore_ascii_case("or"));
    word.map_or(start, |w| before.len().saturating_sub(w.len()))
}

/// A bare number before or behind the name of something that is counted.
pub(super) fn counted(text: &str) -> Option<(usize, usize, Amount)> {
    let unit = of(Sort::Count).next()?;
    let first = text.find(|c: char| c.is_alphanumeric()).unwrap_or(0);
    let from = [
        text.find(|c: char| c.is_ascii_digit() || "½⅓⅔¼¾".contains(c)),
        Some(first),
        // "roe liver, one".
        text.rfind(", ").map(|at| at.saturating_add(2)),
    ];
    let (start, rest, number, length) = from.into_iter().flatten().find_map(|start| {
        let before = text.get(..start)?;
        // The digits of "E250" are no number of it.
        if before.ends_with(char::is_alphanumeric) {
            return None;
        }
        let before = before.trim_end();
        let rest = text.get(start..)?;
        let mut input = rest;
        let number = range(&mut input).ok()?;
        let length = rest.len().saturating_sub(input.len());
        // "#2", "no. 2" and "2nd" are names.
        let name =
            before.ends_with('#') || before.to_lowercase().ends_with("no.") || before.to_lowercase().ends_with(" no");
        let whole = input.is_empty() || input.starts_with(|c: char| !c.is_alphanumeric());
        (!name && whole && !input.starts_with('%')).then_some((start, rest, number, length))
    })?;
    let _ = rest;
    let amount = Amount {
        parts: vec![(number, unit)],
        heap: None,
        pack: None,
        about: false,
    };
    Some((start, start.saturating_add(length), amount))
}

/// Where a bare number stands at the front: how many pieces.
pub(super) fn lead(text: &str) -> Option<(usize, usize, Range)> {
    let start = text.find(|c: char| c.is_alphanumeric())?;
    let rest = text.get(start..)?;
    let mut input = rest;
    let number = range(&mut input).ok().filter(|n| n.other.is_none())?;
    let end = start.saturating_add(rest.len().saturating_sub(input.len()));
    // "5-lb" is no number of pieces.
    let whole = input.starts_with(|c: char| !c.is_alphanumeric());
    whole.then_some((start, end, number.value))
}

/// `cure #1 (6.25)`: a bare number in brackets that a packet prints as per cent.
pub(super) fn bracketed(text: &str) -> Option<Range> {
    let (inside, _) = text.split_once('(')?.1.split_once(')')?;
    let mut input = inside.trim();
    let number = range(&mut input)
        .ok()
        .filter(|n| n.other.is_none() && input.is_empty())?;
    let printed = number.value.low >= dec!(0.4) && number.value.high <= dec!(10);
    printed.then_some(number.value)
}

/// `per the bag`, `see packet`, `as the label says`: how much stands on what it came in.
pub(super) fn by_the_packet(text: &str) -> bool {
    let words = tokens(text);
    let from = words.iter().position(|t| BY_PACKET.contains(&t.text.as_str()));
    from.and_then(|from| words.get(from..)).is_some_and(|rest| {
        rest.iter()
            .take(4)
            .any(|t| PACKETS.contains(&t.text.trim_end_matches("'s")))
    })
}
