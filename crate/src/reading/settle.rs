//! What a line is taken for.

use super::facts::Taken;
use super::figures::by_the_packet;
use super::line::Line;
use super::names::Names;
use super::said::{gives, has, heading, is_title, name_of_own, remark, said, which_meat, without};
use super::token::{Token, tokens};
use super::words::{Sort, front};
use crate::pantry::{Group, names_agent};
use crate::tables::DOES;

impl Line {
    /// What it is taken for, from what was found and the words that are left.
    pub(super) fn settle(&mut self, text: &str, rest: Vec<Token>, timed: bool, names: &Names) {
        let rest = without(text, rest, Sort::Taste);
        let taste = rest.1;
        let mut rest = rest.0;
        let negated = has(Sort::None, text, &rest);
        let meat = has(Sort::Meat, text, &rest);
        self.meat = meat;
        let step = has(Sort::Step, text, &without(text, rest.clone(), Sort::Harmless).0);
        let first = text.get(rest.first().map_or(0, |t| t.start)..).unwrap_or_default();
        let acts = [text, first]
            .iter()
            .any(|t| front(Sort::Step, t).is_some() || front(Sort::Act, t).is_some_and(|(w, _)| !w.value.is_empty()));
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
        if self.meaning.is_none() && meat {
            rest = which_meat(text, &rest);
        }
        let left: Vec<Token> = without(text, rest.clone(), Sort::Harmless).0;
        // A word that is understood, and changes nothing, is not told as one that is not.
        // But a number, a unit or "twice" beside an amount changes it.
        let weighed = self.amount.is_some() && self.meaning.is_some();
        let figure = |t: &Token| {
            let at = text.get(t.start..).unwrap_or_default();
            let digits = at.starts_with(|c: char| c.is_ascii_digit());
            let word = [Sort::Number, Sort::Fraction, Sort::Third, Sort::Mass]
                .iter()
                .any(|sort| front(*sort, at).is_some());
            digits || word && !["a", "an", "one", "g", "ein", "eine", "une", "un"].contains(&t.text.as_str())
        };
        let strange: Vec<Token> = left
            .iter()
            .filter(|t| !names.is_plain(t) || weighed && figure(t))
            .cloned()
            .collect();
        self.strange = said(text, &strange);
        let known = self.meaning.is_some() || meat;
        let left = if known {
            without(text, strange.clone(), Sort::Vague).0
        } else {
            left
        };
        self.left = said(text, &left);
        self.left_out = negated && self.amount.is_none() && without(text, strange, Sort::None).0.is_empty();
        let liquid = self
            .meaning
            .as_ref()
            .and_then(|m| m.items.first())
            .is_some_and(|i| i.group == Group::Liquid);
        // "Mix until sticky" is a deed as well, where nothing is weighed in it.
        let acts =
            acts || self.amount.is_none() && DOES.iter().any(|d| tokens(text).first().is_some_and(|t| t.text == *d));
        let heads = self.amount.is_none() && !timed && heading(text);
        self.taken = match (&self.amount, &self.meaning) {
            (None, _) if heads => Taken::Heading,
            (None, _) if remark(text) && !self.is_cure() => Taken::Remark,
            (Some(_), None) if gives(text) && !names_agent(text) => Taken::Remark,
            (Some(_), _) if negated && !self.only_beside(text) => Taken::Unread,
            (Some(_), Some(_)) if step && liquid => Taken::Step,
            (Some(_), Some(_)) => Taken::Item,
            (Some(a), None) if meat && a.sort() == Sort::Mass => Taken::Meat,
            (Some(a), None) if meat && a.sort() == Sort::Count => Taken::Meat,
            (Some(_), None) if acts || timed => Taken::Step,
            (Some(a), None) if matches!(a.sort(), Sort::Vague | Sort::Count) || left.is_empty() => Taken::Unread,
            (Some(_), None) => {
                (self.own, self.left) = name_of_own(text, &rest, &left);
                Taken::Item
            }
            (None, None) if self.base.is_some() && !(acts && timed) => Taken::Meat,
            // "Cure as the packet says" is a cure of which nobody says how much, and no deed.
            (None, Some(_)) if self.is_cure() && by_the_packet(text) => Taken::Taste,
            (None, _) if acts || timed || self.take.is_some() => Taken::Step,
            (None, Some(_)) if negated => Taken::Unread,
            (None, Some(_)) if front(Sort::Heading, text).is_some() => Taken::Heading,
            (None, Some(_)) if !taste && !self.is_cure() && text.split_whitespace().count() > 2 && is_title(text) => {
                Taken::Heading
            }
            (None, Some(_)) => {
                self.bare = !taste;
                Taken::Taste
            }
            (None, None) if front(Sort::Heading, text).is_some() => Taken::Heading,
            (None, None) if remark(text) => Taken::Remark,
            (None, None) if is_title(text) => Taken::Heading,
            (None, None) if meat && text.contains(|c: char| c.is_ascii_digit()) => Taken::Heading,
            (None, None) if self.strange.is_empty() => Taken::Remark,
            (None, None) => Taken::Unread,
        };
        if self.taken == Taken::Item && self.called.is_empty() {
            self.called.clone_from(&self.own);
        }
        if self.taken == Taken::Item && self.meaning.as_ref().is_some_and(|m| m.food) {
            self.own.clone_from(&self.called);
        }
        if self.taken == Taken::Meat {
            self.leads = true;
            self.left = said(text, &without(text, left, Sort::Meat).0);
        }
        self.strength();
        if self.taken == Taken::Taste && self.is_cure() && self.left.is_empty() && self.strength.is_none() {
            self.unsaid = true;
        }
    }

    /// True where a negation stands behind the amount, after a comma or in brackets: `3 tbsp sugar, no nitrite in this one`.
    pub(super) fn only_beside(&self, text: &str) -> bool {
        let at = text.find([',', '(', ';']).unwrap_or(text.len());
        let head = tokens(text.get(..at).unwrap_or_default());
        let clean = !head.iter().any(|t| {
            text.get(t.start..)
                .is_some_and(|rest| front(Sort::None, rest).is_some())
        });
        let said = text.find(self.measure.as_str()).is_some_and(|start| start < at);
        clean && said && (self.meaning.is_some() || self.meat) && !text.to_lowercase().contains("instead")
    }
}
