//! One clause as a line: what is in it, how much, on which base, and which words were not understood.

use super::amount::{Amount, range};
use super::clause::{What, scan};
use super::names::{Meaning, Names, Token, tokens};
use super::words::{Sort, Word, front};
use crate::pantry::Group;
use crate::quantity::Range;
use rust_decimal::{Decimal, dec};

/// What a clause is taken for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Taken {
    /// Something to weigh.
    Item,
    /// Something without an amount: `to taste`.
    Taste,
    /// The meat, or how much the recipe is for.
    Meat,
    /// A step: a time, a temperature, an act.
    Step,
    /// A heading.
    Heading,
    /// Not read.
    Unread,
}

/// A clause as read, before any question is answered.
#[derive(Clone, Debug)]
pub struct Line {
    /// As it was written.
    pub text: String,
    /// What it is taken for.
    pub taken: Taken,
    /// How much.
    pub amount: Option<Amount>,
    /// The same as it was written.
    pub measure: String,
    /// The same said again, in another measure.
    pub again: Option<Amount>,
    /// For how much meat or water, and true for `per`.
    pub base: Option<(Amount, bool)>,
    /// The same as it was written.
    pub base_said: String,
    /// The base of another thing in the same sentence, where this has none: it may be meant for both.
    pub shared: Option<(Amount, String)>,
    /// True where the base stands before all else, or with the meat.
    pub leads: bool,
    /// True for an amount that is for each of what the sentence names.
    pub each: bool,
    /// How much of a brine goes into the meat, per cent.
    pub take: Option<Range>,
    /// What it can be.
    pub meaning: Option<Meaning>,
    /// Its own name, where the pantry has none.
    pub own: String,
    /// Printed per cent of nitrite, where it was said.
    pub strength: Option<Range>,
    /// Words that were not understood.
    pub left: String,
    /// True for a name without an amount, and without a word such as `to taste`.
    pub bare: bool,
}

/// Reads one clause.
pub fn line(text: &str, names: &Names) -> Line {
    let found = scan(text, names);
    let words = tokens(text);
    let mut line = Line {
        text: text.to_owned(),
        taken: Taken::Unread,
        amount: None,
        measure: String::new(),
        again: None,
        base: None,
        base_said: String::new(),
        shared: None,
        leads: false,
        each: false,
        take: None,
        meaning: None,
        own: String::new(),
        strength: None,
        left: String::new(),
        bare: false,
    };
    let mut used: Vec<(usize, usize)> = Vec::new();
    let mut timed = false;
    for f in &found {
        let again = matches!(f.what, What::Again(_));
        used.push((if again { or_before(text, f.start) } else { f.start }, f.end));
        match &f.what {
            What::Amount(a) | What::Again(a) if a.sort() == Sort::Other => timed = true,
            What::Base(a, each) if line.base.is_none() => {
                line.leads = line.amount.is_none();
                line.base = Some((a.clone(), *each));
                line.base_said = text.get(f.start..f.end).unwrap_or_default().trim().to_owned();
            }
            What::Take(a) if line.take.is_none() => line.take = a.sum(None, None),
            What::Amount(a) if line.amount.is_none() => {
                line.amount = Some(a.clone());
                line.measure = text.get(f.start..f.end).unwrap_or_default().trim().to_owned();
            }
            What::Amount(a) | What::Again(a) if line.again.is_none() => line.again = Some(a.clone()),
            // A third figure is not understood: it stays among the words that are left.
            _ => {
                used.pop();
            }
        }
    }
    // "cure no. 1 (1 tsp per 5 lb)": what stands in brackets alone is the amount.
    if line.amount.is_none() {
        line.amount = line.again.take();
        line.measure = text.to_owned();
    }
    let free = |used: &[(usize, usize)]| -> Vec<Token> {
        let inside = |t: &Token| used.iter().any(|(from, to)| t.start >= *from && t.end <= *to);
        words.iter().filter(|t| !inside(t)).cloned().collect()
    };
    let mut rest = free(&used);
    if let Some((at, length, meaning)) = names.find(&rest) {
        line.meaning = Some(meaning.clone());
        rest.drain(at..at.saturating_add(length));
    } else if let Some(a) = line.amount.as_ref().filter(|a| a.sort() == Sort::Count) {
        // "6 cloves": the unit is the name.
        let unit = a.parts.first().and_then(|(_, u)| u.words.first());
        line.meaning = unit.and_then(|u| names.find(&tokens(u))).map(|(_, _, m)| m.clone());
    }
    // "6 juniper berries": a number and a name of what is counted.
    if line.amount.is_none()
        && let Some((start, end, amount)) = counted(text, line.meaning.as_ref())
    {
        line.amount = Some(amount);
        rest.retain(|t| t.start < start || t.end > end);
    }
    line.each = rest.iter().any(|t| t.text == "each");
    line.settle(text, rest, timed);
    line
}

/// Where the `or` before an amount begins, if one is there.
fn or_before(text: &str, start: usize) -> usize {
    let before = text.get(..start).unwrap_or_default().trim_end();
    let word = before.rsplit(' ').next().filter(|w| w.eq_ignore_ascii_case("or"));
    word.map_or(start, |w| before.len().saturating_sub(w.len()))
}

/// A bare number before or behind the name of something that is counted.
fn counted(text: &str, meaning: Option<&Meaning>) -> Option<(usize, usize, Amount)> {
    meaning?.items.iter().find(|i| i.each().is_some())?;
    let unit = super::words::of(Sort::Count).next()?;
    let start = text.find(|c: char| c.is_ascii_digit()).unwrap_or(0);
    let rest = text.get(start..)?;
    let mut input = rest;
    let number = range(&mut input).ok()?;
    let length = rest.len().saturating_sub(input.len());
    let amount = Amount {
        parts: vec![(number, unit)],
        heap: None,
        pack: None,
        about: false,
    };
    Some((start, start.saturating_add(length), amount))
}

fn has(sort: Sort, text: &str, rest: &[Token]) -> bool {
    rest.iter()
        .any(|t| text.get(t.start..).is_some_and(|at| front(sort, at).is_some()))
}

impl Line {
    /// What it is taken for, from what was found and the words that are left.
    fn settle(&mut self, text: &str, rest: Vec<Token>, timed: bool) {
        let rest = without(text, rest, Sort::Taste);
        let taste = rest.1;
        let mut rest = rest.0;
        let negated = has(Sort::None, text, &rest);
        let meat = has(Sort::Meat, text, &rest);
        let step = has(Sort::Step, text, &without(text, rest.clone(), Sort::Harmless).0);
        let first = text.get(rest.first().map_or(0, |t| t.start)..).unwrap_or_default();
        let acts = front(Sort::Step, text).is_some() || front(Sort::Step, first).is_some();
        if self.amount.is_some() && self.meaning.is_some() {
            // What the meat is called beside an ingredient says nothing of it.
            if self.base.is_some() {
                rest = without(text, rest, Sort::Meat).0;
            }
            let packed = rest.iter().find_map(|t| front(Sort::Pack, text.get(t.start..)?));
            if let (Some(amount), Some((pack, _))) = (&mut self.amount, packed) {
                amount.pack = amount.pack.or(Some(pack));
            }
            rest = without(text, rest, Sort::Pack).0;
            rest = without(text, rest, Sort::Heap).0;
        }
        let left = without(text, rest.clone(), Sort::Harmless).0;
        self.left = said(text, &left);
        let liquid = self
            .meaning
            .as_ref()
            .and_then(|m| m.items.first())
            .is_some_and(|i| i.group == Group::Liquid);
        self.taken = match (&self.amount, &self.meaning) {
            (Some(_), _) if negated => Taken::Unread,
            (Some(_), Some(_)) if step && liquid => Taken::Step,
            (Some(_), Some(_)) => Taken::Item,
            (Some(a), None) if meat && a.sort() == Sort::Mass => Taken::Meat,
            (Some(a), None) if meat && a.sort() == Sort::Count => Taken::Heading,
            (Some(_), None) if acts || timed => Taken::Step,
            (Some(a), None) if matches!(a.sort(), Sort::Vague | Sort::Count) || left.is_empty() => Taken::Unread,
            (Some(_), None) => {
                (self.own, self.left) = name_of_own(text, &rest, &left);
                Taken::Item
            }
            (None, None) if self.base.is_some() && !(acts && timed) => Taken::Meat,
            (None, _) if acts || timed || self.take.is_some() => Taken::Step,
            (None, Some(_)) if negated => Taken::Unread,
            (None, Some(_)) if front(Sort::Heading, text).is_some() => Taken::Heading,
            (None, Some(_)) => {
                self.bare = !taste;
                Taken::Taste
            }
            (None, None) if front(Sort::Heading, text).is_some() => Taken::Heading,
            (None, None) if meat && text.contains(|c: char| c.is_ascii_digit()) => Taken::Heading,
            (None, None) => Taken::Unread,
        };
        if self.taken == Taken::Meat {
            self.leads = true;
            self.left = said(text, &without(text, left, Sort::Meat).0);
        }
        self.strength();
    }

    /// The first line without an amount is a title: `My belly cure`.
    pub fn title(&mut self) {
        if self.taken == Taken::Taste && self.bare && self.base.is_none() {
            self.taken = Taken::Heading;
        }
    }

    /// Takes on the amount that another line says for each.
    pub fn like(&mut self, other: &Self) {
        self.amount = other.amount.clone();
        self.measure = other.measure.clone();
        if self.base.is_none() {
            self.base = other.base.clone();
            self.base_said = other.base_said.clone();
            self.leads = other.leads;
        }
        self.each = true;
        self.bare = false;
        self.taken = Taken::Item;
    }

    /// True for a base that is for a part of the meat only, or by the pound.
    pub fn is_partial(&self) -> bool {
        self.base.as_ref().is_some_and(|(_, each)| *each || !self.leads)
    }

    /// `cure (6.25 %), 1 tsp`: the per cent is the packet's, not a share of the meat.
    fn strength(&mut self) {
        let cure = |m: &Meaning| m.items.first().is_some_and(|i| i.group == Group::Cure);
        if !self.meaning.as_ref().is_some_and(cure) {
            return;
        }
        let percent = |a: &Option<Amount>| a.as_ref().filter(|a| a.sort() == Sort::Percent)?.sum(None, None);
        match (percent(&self.amount), percent(&self.again)) {
            (Some(strength), None) if self.again.is_some() => {
                self.strength = Some(strength);
                self.amount = self.again.take();
                self.measure = self.text.clone();
            }
            (None, Some(strength)) => {
                self.strength = Some(strength);
                self.again = None;
            }
            // Nobody weighs a hundredth of the meat in strong cure: the packet's print, and no amount.
            (Some(strength), None) if strength.low >= STRONG => {
                self.strength = Some(strength);
                self.amount = None;
                self.taken = Taken::Taste;
            }
            _ => {}
        }
    }
}

/// From here on a per cent on its own is the strength of a cure, and not a share of the meat (judgement).
const STRONG: Decimal = dec!(4);

/// The tokens without the words of a sort, and true where one was among them.
fn without(text: &str, rest: Vec<Token>, sort: Sort) -> (Vec<Token>, bool) {
    let mut kept = Vec::new();
    let mut until = 0;
    let mut met = false;
    for token in rest {
        if token.end <= until {
            continue;
        }
        let found: Option<(&Word, usize)> = text.get(token.start..).and_then(|at| front(sort, at));
        match found {
            Some((_, length)) => {
                until = token.start.saturating_add(length);
                met = true;
            }
            None => kept.push(token),
        }
    }
    (kept, met)
}

/// The name of what the pantry has not: from its first word on, as far as the words stand together; and what is left.
fn name_of_own(text: &str, rest: &[Token], left: &[Token]) -> (String, String) {
    let from = left.first().map_or(0, |t| t.start);
    let mut end = from;
    for token in rest.iter().filter(|t| t.start >= from) {
        let between = text.get(end..token.start).unwrap_or_default();
        if end > from && !between.chars().all(|c| c.is_whitespace() || c == '-') {
            break;
        }
        end = token.end;
    }
    let beyond: Vec<Token> = left.iter().filter(|t| t.start >= end).cloned().collect();
    (text.get(from..end).unwrap_or_default().to_owned(), said(text, &beyond))
}

/// Words as they were written.
fn said(text: &str, tokens: &[Token]) -> String {
    let words: Vec<&str> = tokens.iter().filter_map(|t| text.get(t.start..t.end)).collect();
    words.join(" ")
}
