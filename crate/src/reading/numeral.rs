//! What numbers are made of: a number as it is said, a word by itself, and the unit behind it.

use super::words::{Sort, Word};
use crate::quantity::exact::Exact;
use crate::quantity::{Range, gap};
use rust_decimal::{Decimal, dec};
use winnow::combinator::fail;
use winnow::prelude::*;

/// A number as said: a range, and the other reading of `1,480`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Number {
    /// `2`, `2 to 3`.
    pub value: Range,
    /// A thousand in place of one and a half.
    pub other: Option<Decimal>,
}

/// How far `about` may be off either way, as a proportion (judgement).
const ABOUT: Decimal = dec!(0.1);

impl Number {
    pub fn widened(&self, about: bool) -> Option<Range> {
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

pub fn figure(unit: &Word) -> Option<Decimal> {
    unit.figures().next()
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

/// True where a unit of weight or measure stands behind; `short`, where it is one of few letters: "I pound it" is no number.
pub fn before_unit(rest: &str, short: bool) -> bool {
    let mut behind = rest;
    let _ = gap(&mut behind);
    behind.len() < rest.len()
        && known_unit(behind)
            .is_some_and(|(unit, length)| matches!(unit.sort, Sort::Mass | Sort::Volume) && (!short || length <= SHORT))
}

/// The longest word of a unit at the front of a text, and its length.
pub fn known_unit(text: &str) -> Option<(&'static Word, usize)> {
    const SORTS: [Sort; 7] = [
        Sort::Mass,
        Sort::Volume,
        Sort::Pinch,
        Sort::Count,
        Sort::Percent,
        Sort::Vague,
        Sort::Other,
    ];
    let found = SORTS.iter().filter_map(|sort| super::words::front(*sort, text));
    found.max_by_key(|(_, length)| *length)
}

/// The letters of `tbsp`.
pub const SHORT: usize = 4;
