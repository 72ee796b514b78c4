//! What a line is taken for.

use super::amount::Amount;
use super::compare::is_like_a_cure;
use super::facts::{Of, Taken};
use super::figures::by_the_packet;
use super::line::{Line, SAYING};
use super::names::{Meaning, Names};
use super::number::{Number, figures};
use super::said::{
    food_by_its_noun, gives, has, heading, heads_for, is_title, name_of_own, praises, remark, said, which_meat, without,
};
use super::token::{Token, tokens};
use super::words::{Sort, Word, front};
use crate::pantry::{Group, names_agent};
use crate::quantity::exact::Exact;
use crate::tables::{CONDITIONS, DOES, INSIDE};
use rust_decimal::{Decimal, dec};

/// From here on, grams, it is the meat and nothing for it (judgement).
const HEAVY: Decimal = dec!(400);

/// Nobody cures so little meat, grams: what is called after it is something for it (judgement).
const LIGHT: Decimal = dec!(100);

fn is_light(amount: &Amount) -> bool {
    amount.sort() == Sort::Mass && amount.sum(None, None).is_some_and(|sum| sum.high < LIGHT)
}

/// The most of a range is no more times its least (judgement).
const WIDE: Decimal = dec!(4);

/// Behind these a further thing may stand.
const JOINTS: [&str; 6] = ["and", "with", "plus", "plu", "w", "containing"];

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
        // "Day 7: rinse".
        let behind_colon = text
            .split_once(": ")
            .filter(|_| self.meaning.is_none())
            .map_or("", |(_, t)| t);
        // "Cure #1, the usual amount": the name begins with a word that is an act as well.
        let at_front = names
            .find(&tokens(text))
            .is_some_and(|(at, length, _)| at == 0 && length > 1);
        // "Brown sugar" is none either.
        let whole = names
            .find(&tokens(text))
            .is_some_and(|(at, length, _)| at == 0 && length > 1 && length == tokens(text).len());
        let named = whole && !timed || self.is_cure() && (at_front || negated) && !timed;
        let acts = !named
            && [text, first, behind_colon].iter().any(|t| {
                front(Sort::Step, t).is_some() || front(Sort::Act, t).is_some_and(|(w, _)| !w.value.is_empty())
            });
        if self.amount.is_some() && self.meaning.is_some() {
            // What the meat is called beside an ingredient says nothing of it.
            if self.base.is_some() {
                rest = without(text, rest, Sort::Meat).0;
            }
            let packed = rest.iter().find_map(|t| front(Sort::Pack, text.get(t.start..)?));
            if let (Some(amount), Some((pack, _))) = (&mut self.amount, packed) {
                amount.pack = amount.pack.or(Some(pack));
            }
            let full = rest.iter().find_map(|t| front(Sort::Heap, text.get(t.start..)?));
            if let (Some(amount), Some((heap, _))) = (&mut self.amount, full)
                && matches!(amount.sort(), Sort::Volume | Sort::Pinch | Sort::Vague)
            {
                amount.heap = amount.heap.or(Some(heap));
            }
            rest = without(text, rest, Sort::Pack).0;
            rest = without(text, rest, Sort::Heap).0;
        }
        // "Binder 1.75 % of meat block": the meat is what the per cent is of.
        let share = self.amount.as_ref().is_some_and(|a| a.sort() == Sort::Percent);
        let of_meat = share && self.of == Some(Of::Meat);
        if of_meat {
            rest = without(text, rest, Sort::Meat).0;
        } else if self.meaning.is_none() && meat && !self.amount.as_ref().is_some_and(is_light) {
            rest = which_meat(text, &rest);
        }
        if self.amount.is_some() {
            self.without_purpose(text, &mut rest);
        }
        let changes = self.changes(text, &rest, names);
        self.unused = said(text, &self.by_themselves(text, &changes, names));
        let left: Vec<Token> = without(text, rest.clone(), Sort::Harmless).0;
        // A word that is understood, and changes nothing, is not told as one that is not. Of a cure what may change it is as
        // much as a word that nobody knows.
        let cure = self.is_cure() && self.amount.is_some();
        let strange: Vec<Token> = left
            .iter()
            .filter(|t| !names.is_plain(t) || cure && changes.contains(t))
            .cloned()
            .collect();
        let (strange, placed) = self.by_place(text, strange);
        let told = |t: &Token| changes.contains(t) && !strange.contains(t) || placed.contains(t);
        let told: Vec<Token> = rest.iter().filter(|t| told(t)).cloned().collect();
        self.changed = said(text, &told);
        self.strange = said(text, &strange);
        let batch = tokens(text).iter().any(|t| t.text == "batch");
        let known = self.meaning.is_some() || meat || batch || self.base.is_some() && self.amount.is_none();
        let left = if known {
            without(text, strange.clone(), Sort::Vague).0
        } else {
            left
        };
        self.left = said(text, &left);
        // A cure on a condition is none that is left out.
        let condition = |t: &Token| CONDITIONS.contains(&t.text.as_str());
        let on_condition = self.is_cure() && tokens(text).iter().any(condition);
        self.left_out =
            negated && self.amount.is_none() && !on_condition && without(text, strange, Sort::None).0.is_empty();
        let liquid = self
            .meaning
            .as_ref()
            .and_then(|m| m.items.first())
            .is_some_and(|i| i.group == Group::Liquid);
        // "Mix until sticky" is a deed as well, where nothing is weighed in it.
        let acts =
            acts || self.amount.is_none() && DOES.iter().any(|d| tokens(text).first().is_some_and(|t| t.text == *d));
        let acts = acts || self.amount.is_none() && is_heat(text);
        let heads = self.amount.is_none() && !timed && heading(text);
        let whole = self.base.as_ref().is_some_and(|(_, each)| !each);
        let for_so_much = whole && tokens(text).len() <= SAYING && text.find(&self.base_said) == text.find("for ");
        self.taken = match (&self.amount, &self.meaning) {
            (None, _) if heads || !timed && meat && heads_for(text) => Taken::Heading,
            (None, _) if remark(text) && !self.is_cure() => Taken::Remark,
            (None, Some(m)) if praises(text, m, names) => Taken::Remark,
            (_, None) if gives(text) && !timed && !names_agent(text) => Taken::Remark,
            (Some(_), _) if negated && !self.only_beside(text) => Taken::Unread,
            (Some(_), Some(_)) if step && liquid && !text.starts_with(&self.measure) => Taken::Step,
            (Some(_), Some(_)) => Taken::Item,
            (Some(a), None) if (meat || batch) && a.sort() == Sort::Mass => Taken::Meat,
            (Some(a), None) if meat && a.sort() == Sort::Count => Taken::Meat,
            // "Fat: 20 % of the whole".
            (Some(_), None) if meat && share && left.is_empty() => Taken::Meat,
            (Some(_), None) if acts || timed => Taken::Step,
            (Some(a), None)
                if matches!(a.sort(), Sort::Vague | Sort::Count) && food_by_its_noun(&said(text, &left)).is_none()
                    || left.is_empty() =>
            {
                Taken::Unread
            }
            (Some(_), None) => {
                (self.own, self.left) = name_of_own(text, &rest, &left);
                self.meaning = food_by_its_noun(&self.own);
                Taken::Item
            }
            (None, None) if self.base.is_some() && !(acts && timed) => Taken::Meat,
            // "Cure for 100 lb of hams".
            (None, Some(_)) if self.is_cure() && !timed && for_so_much => Taken::Meat,
            // "Cure as the packet says" is a cure of which nobody says how much, and no deed.
            (None, Some(_)) if self.is_cure() && by_the_packet(text) => Taken::Taste,
            (None, _) if acts || timed || self.take.is_some() => Taken::Step,
            // "You don't need any cure for this one": a sentence, and no name that is left out.
            (None, Some(_)) if self.left_out => Taken::Remark,
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
            // "Venison 75 % pork 25 %": of the second nothing is made.
            let part = |a: &Option<Amount>| a.as_ref().is_some_and(|a| a.sort() == Sort::Percent);
            if part(&self.amount) && self.again.is_some() || part(&self.again) {
                self.changed.push_str(" %");
            }
            self.leads = true;
            self.left = said(text, &without(text, left, Sort::Meat).0);
        }
        // "3 - 16 oz bottles": hardly from three to sixteen.
        let far = |(number, _): &(Number, &Word)| {
            number
                .value
                .low
                .times(WIDE)
                .is_some_and(|most| number.value.high > most)
        };
        if self.amount.as_ref().is_some_and(|a| a.parts.iter().any(far)) {
            self.changed = format!("{} {}", self.changed, self.measure);
        }
        self.strength();
        if self.taken == Taken::Taste && self.is_cure() && self.left.is_empty() && self.strength.is_none() {
            self.unsaid = true;
            self.by_packet = by_the_packet(text);
        }
    }

    /// Words that nobody knows, without those that can be no cure by their place: beside the meat, and beside what is no salt and
    /// no cure, where no joint leads to a further thing. What stands right behind a name may make another of it: that is
    /// told.
    fn by_place(&self, text: &str, strange: Vec<Token>) -> (Vec<Token>, Vec<Token>) {
        let salt = |m: &Meaning| !m.food && m.items.iter().any(|i| matches!(i.group, Group::Cure | Group::Salt));
        // No cure is weighed by the pound, and some are called after the meat that they are for.
        let heavy = |a: &Amount| match a.sort() {
            Sort::Mass => a.sum(None, None).is_some_and(|sum| sum.low >= HEAVY),
            sort => sort == Sort::Count,
        };
        let known = match &self.meaning {
            Some(meaning) => self.amount.is_some() && !salt(meaning),
            // "Ingredients (for 5 kg)".
            None if self.base.is_some() => self.amount.is_none(),
            None => self.meat && self.amount.as_ref().is_some_and(heavy),
        };
        let first = strange.first().map_or(0, |t| t.start);
        let ahead = tokens(text.get(..first).unwrap_or_default());
        let joined = ahead.iter().any(|t| JOINTS.contains(&t.text.as_str())) || text.contains(['+', '&']);
        if !known || joined || strange.iter().any(|t| is_like_a_cure(&t.text)) {
            return (strange, Vec::new());
        }
        let name = self.called.as_str();
        let end = text
            .find(name)
            .filter(|_| !name.is_empty())
            .map(|at| at.saturating_add(name.len()));
        let close = |t: &Token| {
            end.and_then(|end| text.get(end..t.start))
                .is_some_and(|between| between == " ")
        };
        (Vec::new(), strange.into_iter().filter(close).collect())
    }

    /// `from the garden`, `for barding the grouse`, `enough to float the ham`: where it is from and what it is for. A salt may
    /// be a cure by such words.
    fn without_purpose(&self, text: &str, rest: &mut Vec<Token>) {
        let Some(meaning) = &self.meaning else { return };
        let plain = meaning
            .items
            .iter()
            .all(|i| !matches!(i.group, Group::Cure | Group::Salt));
        let from = rest
            .iter()
            .position(|t| ["from", "for", "enough"].contains(&t.text.as_str()));
        let Some(tail) = from.and_then(|from| rest.get(from..)) else {
            return;
        };
        let more = |t: &Token| ["and", "plu", "plus", "with"].contains(&t.text.as_str());
        let says = |t: &Token| t.text.chars().all(char::is_alphabetic) && !more(t);
        if let (true, Some(start)) = (plain && tail.iter().all(says), tail.first().map(|t| t.start))
            && !text.get(start..).is_some_and(names_agent)
        {
            rest.retain(|t| t.start < start);
        }
    }

    /// True where a negation stands behind the amount, after a comma or in brackets: `3 tbsp sugar, no nitrite in this one`.
    pub(super) fn only_beside(&self, text: &str) -> bool {
        // "if you have no smoker", "or 3 kg if bone in": on which condition; of a cure that counts.
        let condition = text.find(" if ").filter(|_| !self.is_cure());
        let mark = text.find([',', '(', ';']).unwrap_or(text.len());
        let at = condition.map_or(mark, |at| at.min(mark));
        let negates = |text: &str| {
            tokens(text).iter().any(|t| {
                text.get(t.start..)
                    .is_some_and(|rest| front(Sort::None, rest).is_some())
            })
        };
        // "Himalayan pink salt (just salt, NOT cure) 30 g": the bracket alone denies.
        let around = text
            .split_once('(')
            .and_then(|(head, rest)| Some(format!("{head} {}", rest.split_once(')')?.1)));
        if around.is_some_and(|around| !negates(&around) && around.contains(self.measure.as_str())) {
            return (self.meaning.is_some() || self.meat) && !self.is_cure();
        }
        let clean = !negates(text.get(..at).unwrap_or_default());
        let said = text.find(self.measure.as_str()).is_some_and(|start| start < at);
        clean && said && (self.meaning.is_some() || self.meat) && !text.to_lowercase().contains("instead")
    }
}

/// `165 internal`, `IT of 165`, `several days in the fridge`: a figure of the middle, or a time without one.
fn is_heat(text: &str) -> bool {
    let lower = text.to_lowercase();
    let figure = figures(text).any(|(_, digits)| digits.len() >= 2);
    let inside = || INSIDE.iter().any(|w| lower.contains(w));
    let words = tokens(text);
    let time = |t: &Token| {
        text.get(t.start..)
            .and_then(|at| front(Sort::Other, at))
            .is_some_and(|(w, _)| w.note == "time")
    };
    let vague = || {
        words
            .iter()
            .zip(words.iter().skip(1))
            .any(|(few, next)| ["few", "several"].contains(&few.text.as_str()) && time(next))
    };
    figure && inside() || vague()
}
