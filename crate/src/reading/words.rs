//! The words of the grammar, from `tables/words.csv`, and how one is found in a text.

use crate::quantity::{Range, is_gap};
use rust_decimal::Decimal;
use std::collections::HashMap;
use std::sync::OnceLock;
use winnow::combinator::fail;
use winnow::prelude::*;

/// What a word does in a recipe.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Sort {
    Number,
    Fraction,
    Third,
    Multiple,
    Heap,
    About,
    Pack,
    Mass,
    Volume,
    Pinch,
    Count,
    Percent,
    Vague,
    Other,
    Rate,
    Base,
    Meat,
    Step,
    Heading,
    None,
    Taste,
    Harmless,
    Brine,
    Act,
    Name,
    Food,
    Plain,
    Remark,
    Adds,
}

/// Words that mean the same.
#[derive(Debug, PartialEq, Eq)]
pub struct Word {
    /// What they do.
    pub sort: Sort,
    /// How they are written.
    pub words: &'static [&'static str],
    /// What they stand for.
    pub value: &'static str,
    /// What is told or asked beside it.
    pub note: &'static str,
}

impl Word {
    /// The figures of its value.
    pub fn figures(&self) -> impl Iterator<Item = Decimal> {
        self.value.split(' ').filter_map(|t| Decimal::from_str_exact(t).ok())
    }

    /// Its value as low, usual and high.
    pub fn range(&self) -> Option<Range> {
        let mut figures = self.figures();
        Some(Range::new(figures.next()?, figures.next()?, figures.next()?))
    }
}

/// All words that do this.
pub fn of(sort: Sort) -> impl Iterator<Item = &'static Word> {
    crate::tables::WORDS.iter().filter(move |w| w.sort == sort)
}

/// The longest word of this sort that stands at the front of a text, and its length.
pub fn front(sort: Sort, text: &str) -> Option<(&'static Word, usize)> {
    let first = text.chars().next()?.to_lowercase().next()?;
    let found = by_letter().get(&(sort, first))?.iter();
    let found = found.filter_map(|(word, pattern)| Some((*word, length(pattern, text)?)));
    found.max_by_key(|(_, length)| *length)
}

type ByLetter = HashMap<(Sort, char), Vec<(&'static Word, &'static str)>>;

/// Every pattern by what it does and its first letter: a text is held against a few of them at each place.
fn by_letter() -> &'static ByLetter {
    static INDEX: OnceLock<ByLetter> = OnceLock::new();
    INDEX.get_or_init(|| {
        let mut index = ByLetter::new();
        for word in &crate::tables::WORDS {
            for pattern in word.words {
                let first = pattern.chars().next().and_then(|c| c.to_lowercase().next());
                if let Some(first) = first {
                    index.entry((word.sort, first)).or_default().push((word, pattern));
                }
            }
        }
        index
    })
}

/// Takes a word of this sort from the front.
pub fn take(sort: Sort) -> impl FnMut(&mut &str) -> ModalResult<&'static Word> {
    move |input| match front(sort, input) {
        Some((word, length)) => {
            *input = input.get(length..).unwrap_or_default();
            Ok(word)
        }
        None => fail.parse_next(input),
    }
}

/// Length in bytes of a pattern at the front of a text: case does not matter but for a single letter, a blank stands
/// for blanks and hyphens, and a word ends where no letter or digit follows.
fn length(pattern: &str, text: &str) -> Option<usize> {
    // Most words fail at their first letter; the rest is only for those that do not.
    if !starts_alike(pattern, text) {
        return None;
    }
    let exact = pattern.chars().count() == 1;
    let mut rest = text;
    for c in pattern.chars() {
        if c == ' ' {
            let after = rest.trim_start_matches(|c| is_gap(c) || c == '-');
            if after.len() == rest.len() {
                return None;
            }
            rest = after;
            continue;
        }
        let first = rest.chars().next()?;
        let same = if exact {
            first == c
        } else {
            first.to_lowercase().eq(c.to_lowercase())
        };
        if !same {
            return None;
        }
        rest = rest.get(first.len_utf8()..)?;
    }
    let ends_in_letter = pattern.ends_with(char::is_alphanumeric);
    if ends_in_letter && rest.starts_with(char::is_alphanumeric) {
        return None;
    }
    Some(text.len().saturating_sub(rest.len()))
}

/// False where the first bytes cannot be the same letter.
fn starts_alike(pattern: &str, text: &str) -> bool {
    match (pattern.bytes().next(), text.bytes().next()) {
        (Some(a), Some(b)) => a.eq_ignore_ascii_case(&b) || !(a.is_ascii() && b.is_ascii()),
        _ => false,
    }
}
