//! Figures of a clause that stand without a unit, or for another thing.

use super::amount::Amount;
use super::names::Names;
use super::number::{Number, range, share};
use super::token::tokens;
use super::words::{Sort, front, of};
use crate::pantry::Group;
use crate::quantity::Range;
use crate::quantity::exact::Exact;
use crate::tables::{BY_PACKET, FEW, OF_ANOTHER, PACKETS};
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
pub(super) fn counted(text: &str, used: &[(usize, usize)], names: &Names) -> Option<(usize, usize, Amount)> {
    let unit = of(Sort::Count).next()?;
    let first = text.find(|c: char| c.is_alphanumeric()).unwrap_or(0);
    let about = text.get(first..).and_then(|t| front(Sort::About, t));
    let first = first.saturating_add(about.map_or(0, |(_, length)| length.saturating_add(1)));
    // "Juice of half a lemon".
    let of_one = text
        .find(" of ")
        .map(|at| at.saturating_add(4))
        .filter(|at| names_at(text.get(*at..).unwrap_or_default(), names))
        .filter(|at| {
            let before = text.get(..*at).unwrap_or_default();
            before.split_whitespace().rev().nth(1) != Some("size")
        });
    let from = [
        text.to_ascii_lowercase().find("between "),
        text.find(|c: char| c.is_ascii_digit() || "½⅓⅔¼¾".contains(c)),
        Some(first),
        // "roe liver, one", "cure #1 - 2".
        text.rfind(", ").map(|at| at.saturating_add(2)),
        text.rfind(" - ").map(|at| at.saturating_add(3)),
        text.rfind(": ").map(|at| at.saturating_add(2)),
        of_one,
    ];
    let (start, rest, number, length) = from.into_iter().flatten().find_map(|start| {
        let before = text.get(..start)?;
        // The digits of "E250" are no number of it.
        if before.ends_with(char::is_alphanumeric) {
            return None;
        }
        // "Roast at 350": no number of roasts.
        let degrees = ["at ", "to ", "til ", "till ", "until ", "hits ", "reaches "];
        if degrees.iter().any(|w| before.to_ascii_lowercase().ends_with(w)) {
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
        // "A few bay leaves" are not one; and what stands for something else is no number of it.
        let few = tokens(input).first().is_some_and(|t| FEW.contains(&t.text.as_str()));
        let free = !used
            .iter()
            .any(|(from, to)| start < *to && *from < start.saturating_add(length));
        // "Through a 3/16" plate".
        let long = tokens(input)
            .first()
            .is_some_and(|t| ["inch", "in", "mm", "cm", "plate", "hole"].contains(&t.text.as_str()));
        let long = long || input.starts_with(['"', '”', '″']);
        (!name && whole && !few && free && !long && !input.starts_with('%')).then_some((start, rest, number, length))
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

/// True where a number and a name stand there.
fn names_at(text: &str, names: &Names) -> bool {
    let mut input = text;
    let number = range(&mut input).is_ok();
    number && names.find(&tokens(input)).is_some_and(|(at, _, _)| at == 0)
}

/// Where a bare number stands at the front: how many pieces.
pub(super) fn lead(text: &str) -> Option<(usize, usize, Range)> {
    let start = text.find(|c: char| c.is_alphanumeric())?;
    let rest = text
        .get(start..)
        .filter(|_| !text.get(..start).is_some_and(|t| t.ends_with('#')))?;
    let mut input = rest;
    let number = range(&mut input).ok().filter(|n| n.other.is_none())?;
    let end = start.saturating_add(rest.len().saturating_sub(input.len()));
    // "5-lb" is no number of pieces.
    let whole = input.starts_with(|c: char| !c.is_alphanumeric());
    whole.then_some((start, end, number.value))
}

/// `saddle of hare, 2,`, `pheasants (4),`: a bare number between marks, behind a name: how many pieces.
pub(super) fn aside(text: &str) -> Option<(usize, usize, Range)> {
    let mut start = 0_usize;
    for part in text.split_inclusive([',', '(', ')', ':', '@']) {
        let from = start;
        start = start.saturating_add(part.len());
        let alone = part.trim_end_matches([',', '(', ')', ':', '@']).trim();
        // "Geese: 2 @ 4 lb": the sign says that it is the weight of one.
        let end = start.saturating_sub(usize::from(part.ends_with('@')));
        let mut input = alone.strip_prefix(['x', '×']).unwrap_or(alone).trim_start();
        let number = range(&mut input).ok().filter(|n| n.other.is_none() && input.is_empty());
        if let Some(number) = number.filter(|_| from > 0) {
            return Some((from, end, number.value));
        }
    }
    None
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
