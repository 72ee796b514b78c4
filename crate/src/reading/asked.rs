//! Questions on a text, and the answers to them.

use super::facts::{Offer, Question};
use serde::Serialize;

/// A question that settles what is ambiguous.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Asked {
    /// Its key, to send back with the answer: what is asked, and behind a colon the line it is about, so that an answer
    /// never settles another line.
    pub key: String,
    /// The question.
    pub ask: Question,
    /// Values to send back, with what each stands for.
    pub choices: Vec<(String, Offer)>,
    /// True where a weight or a per cent is typed; the choices are then offers.
    pub typed: bool,
    /// The answer that was given and could be taken.
    pub answer: Option<String>,
    /// The lines that it settles.
    pub of: Vec<String>,
}

/// Answers by key.
pub(crate) struct Answers<'a>(pub(super) &'a [(String, String)]);

impl Answers<'_> {
    pub(super) fn get(&self, key: &str) -> Option<&str> {
        self.among(key, |_| true)
    }

    /// The last answer that is one of those that can be given: a line with two such questions has answers to both.
    pub(super) fn among(&self, key: &str, fits: impl Fn(&str) -> bool) -> Option<&str> {
        let last = self.0.iter().rev().find(|(k, v)| k == key && fits(v));
        last.map(|(_, v)| v.as_str())
    }
}

/// The answer of whoever does not know.
pub(super) const UNSURE: &str = "unsure";

impl Asked {
    pub(super) fn new(
        key: String,
        ask: Question,
        choices: impl Iterator<Item = (String, Offer)>,
        answers: &Answers<'_>,
    ) -> Self {
        let choices: Vec<(String, Offer)> = choices.collect();
        let answer = answers.among(&key, |a| choices.iter().any(|(value, _)| value == a));
        Self {
            answer: answer.map(str::to_owned),
            key,
            ask,
            choices,
            typed: false,
            of: Vec::new(),
        }
    }

    /// A question for what is typed, with offers to choose from.
    pub(super) fn typed<T>(
        key: &str,
        ask: Question,
        offers: Vec<String>,
        answers: &Answers<'_>,
        read: impl Fn(&str) -> Option<T>,
    ) -> (Self, Option<T>) {
        let answer = answers.get(key);
        let given = answer.and_then(read);
        let asked = Self {
            key: key.to_owned(),
            ask,
            choices: offers.into_iter().map(Offer::said).collect(),
            typed: true,
            answer: answer.filter(|_| given.is_some()).map(str::to_owned),
            of: Vec::new(),
        };
        (asked, given)
    }

    /// The place of the answer among the choices.
    pub(super) fn chosen(&self) -> Option<usize> {
        let answer = self.answer.as_ref()?;
        self.choices.iter().position(|(value, _)| value == answer)
    }
}
