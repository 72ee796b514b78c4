//! Words that are understood and that no part of the grammar took, but that may change how much a line is, of what, or
//! for what: they are told with the line, never passed over.

use super::facts::Taken;
use super::line::Line;
use super::names::{Meaning, Names};
use super::token::{Token, tokens};
use super::words::{Sort, front};
use crate::pantry::Group;
use crate::tables::{AT_WILL, CHANGES, CHANGES_NOTHING, NOT_ALONE, PLACES};

/// Where phrases stand that change nothing: `no more`, `or so`.
fn harmless(lower: &str) -> Vec<(usize, usize)> {
    let found = CHANGES_NOTHING.iter().flat_map(|phrase| lower.match_indices(*phrase));
    let found = found.map(|(at, phrase)| (at, at.saturating_add(phrase.len())));
    // "Double it if you like heat": as far as the mark before it.
    let willed = AT_WILL.iter().filter_map(|w| {
        let end = lower.find(w)?;
        let from = lower.get(..end)?.rfind([',', '(', ';', '-'])?;
        Some((from, end))
    });
    found.chain(willed).collect()
}

/// A number, a unit or a part, that is no cut of meat and no article.
fn figure(text: &str, token: &Token, meat: bool) -> bool {
    const SORTS: [Sort; 8] = [
        Sort::Number,
        Sort::Fraction,
        Sort::Third,
        Sort::Multiple,
        Sort::Mass,
        Sort::Volume,
        Sort::Pinch,
        Sort::Percent,
    ];
    let at = text.get(token.start..).unwrap_or_default();
    let digits = at.starts_with(|c: char| c.is_ascii_digit() || "½⅓⅔¼¾⅛⅜⅝⅞".contains(c));
    let word = || SORTS.iter().any(|sort| front(*sort, at).is_some());
    // "Breast half", "leg quarters", "no shot" are no figures, nor is an article.
    let that = at
        .split_whitespace()
        .nth(1)
        .is_some_and(|w| ["that", "as", "the"].contains(&w));
    let cut = meat && !that && ["half", "halve", "quarter"].contains(&token.text.as_str());
    let article = ["a", "an", "one", "g", "ein", "eine", "une", "un", "shot", "spoon"].contains(&token.text.as_str());
    digits || !cut && !article && word()
}

impl Line {
    /// Such words among those that are left.
    pub(super) fn changes(&self, text: &str, rest: &[Token], names: &Names) -> Vec<Token> {
        let lower = text.to_lowercase();
        let plain = harmless(&lower);
        let inside = |t: &Token| plain.iter().any(|(from, to)| t.start >= *from && t.end <= *to);
        let each = |at: usize, t: &Token| {
            // "2 oz salt each side": an amount for each of what is no ingredient.
            let next = rest.get(at.saturating_add(1)).map(|t| t.text.as_str());
            t.text == "each" && self.amount.is_some() && next.is_some_and(|next| !["of", "the"].contains(&next))
        };
        let other = self.other_name(text, rest, names);
        let base = self.base_of(text, names);
        let mut list = Vec::new();
        for (at, token) in rest.iter().enumerate().filter(|(_, t)| !inside(t)) {
            let says = CHANGES.contains(&token.text.as_str()) || figure(text, token, self.meat) || each(at, token);
            if says || other.is_some_and(|(from, to)| (from..to).contains(&at)) || base == Some(token.start) {
                list.push(token.clone());
            }
        }
        list
    }

    /// `per kg of salt`: where the `of` stands, if that is no meat and no water.
    fn base_of(&self, text: &str, names: &Names) -> Option<usize> {
        let (_, each) = self.base.as_ref()?;
        let end = text.find(self.base_said.as_str())?.saturating_add(self.base_said.len());
        let behind = text.get(end..)?;
        let of = behind
            .find("of ")
            .filter(|at| behind.get(..*at).is_some_and(|b| b.trim().is_empty()))?;
        let next = tokens(behind.get(of.saturating_add(3)..)?);
        let named = names.find(&next).is_some_and(|(at, _, _)| at < 2);
        (*each && named).then(|| end.saturating_add(of))
    }

    /// A second name: what it is of may be that, or both.
    fn other_name(&self, text: &str, rest: &[Token], names: &Names) -> Option<(usize, usize)> {
        let first = self.meaning.as_ref()?;
        let (at, length, second) = names.find(rest)?;
        let same = |m: &Meaning| m.items.iter().any(|i| first.items.iter().any(|f| f.key == i.key));
        let water = second.items.iter().any(|i| i.key == "water");
        let word = rest.get(at)?;
        // "For the cure", "to the brine": what it is for.
        let ahead = text.get(..word.start).unwrap_or_default().trim_end().to_lowercase();
        let purpose = [
            " the", " for", " to", " with", " on", " in", " as", " like", " such", " no", " without",
        ]
        .iter()
        .any(|w| ahead.ends_with(w));
        let before = ahead.rsplit(|c: char| !c.is_alphanumeric()).next().unwrap_or_default();
        let denied = ["no", "not", "without", "like", "as"].contains(&before);
        // "Stuck in an onion": where it goes.
        let place = PLACES.iter().any(|w| ahead.ends_with(w));
        let cures = |m: &Meaning| !m.food && m.items.iter().all(|i| i.group == Group::Cure);
        // "A cure of 5.88 % sodium nitrite" is one thing.
        if cures(first) && cures(second) && second.items.len() > 1 {
            return None;
        }
        let cure = second.items.iter().any(|i| i.group == Group::Cure);
        (!water
            && !denied
            && !place
            && !same(second)
            && !(purpose && (cure || second.food))
            && word.text.chars().count() > 2)
            .then(|| (at, at.saturating_add(length)))
    }

    /// Of what may change it, the words that do so by themselves: no joint, and no second name of the same kind: "demerara / soft
    /// brown sugar".
    pub(super) fn by_themselves(&self, text: &str, changes: &[Token], names: &Names) -> Vec<Token> {
        let group = |m: &Meaning| m.items.first().map(|i| i.group);
        let first = self.meaning.as_ref().and_then(group);
        let kind = |t: &Token| {
            let named = names.find(std::slice::from_ref(t));
            let before = text.get(..t.start).unwrap_or_default().trim_end().to_lowercase();
            let joined = [" and", "+", "&", " plus", " n"].iter().any(|w| before.ends_with(w));
            first.is_some() && named.is_some_and(|(_, _, m)| group(m) == first) && !joined
        };
        let alone = |t: &&Token| !NOT_ALONE.contains(&t.text.as_str()) && !kind(t);
        changes.iter().filter(alone).cloned().collect()
    }

    /// True for what is told with its flags.
    pub fn is_told(&self) -> bool {
        matches!(self.taken, Taken::Item | Taken::Taste | Taken::Meat)
    }
}
