//! An amount that is put right in its own line: `30 g no sorry 25`, `2 tsp (crossed out) 1 tsp`, `5 g (was 6)`. The right one
//! counts, and it is told that two stand there.

use super::amount::Amount;
use super::names::Names;
use super::number::{known_unit, range};
use super::scan::{RUN_ON, What, scan};
use super::token::tokens;
use super::words::Sort;
use crate::tables::{CORRECTS, STRUCK};

/// What is struck, the word for it, and what counts in its place, each by where it begins and ends.
struct Put {
    first: (usize, usize),
    word: (usize, usize),
    second: (usize, usize),
    /// True where the second is the one that is struck: `5 g (was 6)`.
    was: bool,
}

/// Where a word of a list stands by itself, the first of them.
fn said(lower: &str, list: &[&str]) -> Option<(usize, usize)> {
    let alone = |at: usize, word: &str| {
        let before = lower.get(..at).and_then(|t| t.chars().next_back());
        let behind = lower
            .get(at.saturating_add(word.len())..)
            .and_then(|t| t.chars().next());
        !before.is_some_and(char::is_alphanumeric) && !behind.is_some_and(char::is_alphanumeric)
    };
    let found = list.iter().flat_map(|word| lower.match_indices(word));
    let found = found.filter(|(at, word)| alone(*at, word));
    found
        .min_by_key(|(at, word)| (*at, std::cmp::Reverse(word.len())))
        .map(|(at, word)| (at, at.saturating_add(word.len())))
}

fn is_mark(c: char) -> bool {
    c.is_whitespace() || matches!(c, ',' | '(' | ')' | '-' | '–' | '—' | ':' | '.' | '!' | '*' | '[' | ']')
}

/// A number without a unit at the front, behind marks: where it stands.
fn bare(text: &str, from: usize) -> Option<(usize, usize)> {
    let rest = text.get(from..)?;
    let start = from.saturating_add(rest.len().saturating_sub(rest.trim_start_matches(is_mark).len()));
    let here = text.get(start..)?;
    let mut input = here;
    range(&mut input).ok()?;
    let end = start.saturating_add(here.len().saturating_sub(input.len()));
    let unit = known_unit(input.trim_start()).is_some();
    (!unit && !input.starts_with(char::is_alphanumeric)).then_some((start, end))
}

fn put(text: &str, names: &Names) -> Option<Put> {
    if text.len() > RUN_ON {
        return None;
    }
    let lower = text.to_ascii_lowercase();
    let (word, was) = match said(&lower, &CORRECTS) {
        Some(word) => (word, false),
        None => (said(&lower, &STRUCK)?, true),
    };
    let amounts: Vec<(usize, usize, Amount)> = scan(text, names)
        .into_iter()
        .filter_map(|f| match f.what {
            What::Amount(a) | What::Again(a) if a.sort() != Sort::Other => Some((f.start, f.end, a)),
            _ => None,
        })
        .collect();
    let (start, end, first) = amounts.iter().rev().find(|(_, end, _)| *end <= word.0)?;
    // Between the word and the second amount stands nothing else.
    let near = |at: usize| text.get(word.1..at).is_some_and(|t| t.chars().all(is_mark));
    let next = amounts.iter().find(|(start, _, _)| *start >= word.1 && near(*start));
    let second = match next {
        Some((from, to, second)) => (second.sort() == first.sort()).then_some((*from, *to)),
        None => bare(text, word.1),
    }?;
    // "30 g no sorry 25 g sugar": between them only the name of the one thing.
    let between = tokens(text.get(*end..word.0)?);
    (between.len() <= MOST_BETWEEN).then_some(Put {
        first: (*start, *end),
        word,
        second,
        was,
    })
}

/// So many words stand between the two amounts.
const MOST_BETWEEN: usize = 4;

/// The clause with the amount that counts in place of the other.
pub fn corrected(text: &str, names: &Names) -> Option<String> {
    let put = put(text, names)?;
    let part = |from: usize, to: usize| text.get(from..to).unwrap_or_default();
    // "No, sorry": the word before it goes with it.
    let open = |t: &str| {
        let t = t.trim_end_matches(is_mark);
        let bare = ["no", "No", "oh", "Oh"].iter().find_map(|w| t.strip_suffix(w));
        let bare = bare.filter(|t| !t.ends_with(char::is_alphanumeric));
        bare.unwrap_or(t).trim_end_matches(is_mark).to_owned()
    };
    let ahead = open(part(put.first.1, put.word.0));
    let behind = part(put.second.1, text.len()).trim_start_matches(')');
    if put.was {
        return Some(format!("{}{ahead}{behind}", part(0, put.first.1)));
    }
    let second = part(put.second.0, put.second.1);
    let mut unit = part(put.first.0, put.first.1);
    if !second.contains(char::is_alphabetic) && !second.contains('%') {
        // Its unit is that of the first.
        let _ = range(&mut unit);
    } else {
        unit = "";
    }
    Some(format!("{}{second}{unit}{ahead}{behind}", part(0, put.first.0)))
}

/// Where the part of a sentence begins and ends in which an amount is put right.
pub fn span(text: &str, names: &Names) -> Option<(usize, usize)> {
    let put = put(text, names)?;
    let ahead = text.get(..put.first.0)?;
    let named = |at: usize| ahead.get(at..).is_some_and(|t| names.find(&tokens(t)).is_some());
    let start = ahead
        .match_indices(", ")
        .map(|(at, joint)| at.saturating_add(joint.len()))
        .filter(|at| named(*at))
        .last();
    let behind = text.get(put.second.1..)?;
    let end = behind
        .find([',', ';'])
        .map_or(text.len(), |at| put.second.1.saturating_add(at));
    Some((start.unwrap_or(0), end))
}
