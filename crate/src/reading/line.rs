//! A line: one clause as read, and what is told of it.

use super::amount::Amount;
use super::cased::Cased;
use super::facts::{Of, Taken};
use super::names::{Meaning, Names};
use super::said::is_title;
use super::scan::{What, scan};
use super::token::{Token, tokens};
use super::words::{Sort, front};
use crate::pantry::{Group, names_agent};
use crate::quantity::Range;
use crate::tables::{DISHES, OR, SAID_TO, TELLS};

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
    /// What it is called in the text.
    pub called: String,
    /// How many pieces, where their number is said beside their weight.
    pub count: Option<Range>,
    /// Its own name, where the pantry has none.
    pub own: String,
    /// Printed per cent of nitrite, where it was said.
    pub strength: Option<Range>,
    /// Words that were not understood.
    pub left: String,
    /// True for one of two that the text offers, while it is not settled which.
    pub either: bool,
    /// True for a cure without an amount.
    pub unsaid: bool,
    /// True for a cure of which its packet says how much.
    pub by_packet: bool,
    /// Words that are understood, were not used, and may change how much it is or of what.
    pub changed: String,
    /// Those of them that are figures, names or changes in themselves: it is asked what they are.
    pub unused: String,
    /// Words that are no plain ones, whatever the line is taken for.
    pub strange: String,
    /// True where the meat is named.
    pub meat: bool,
    /// True where it is told to leave out what is named, and nothing else is said.
    pub left_out: bool,
    /// True for a name without an amount, and without a word such as `to taste`.
    pub bare: bool,
    /// What its per cent is of, where it says so.
    pub of: Option<Of>,
    /// Two weights of the meat that the line can mean: of one piece, and of all.
    pub each_or_all: bool,
    /// True for what goes on at the fire or the table: not in the brine.
    pub apart: bool,
    /// True where its amount was put right in the text: another stands there too.
    pub corrected: bool,
    /// Which cases of letters the text is written in.
    pub cased: Cased,
}

/// A sentence has more words than a name.
pub(super) const SAYING: usize = 6;

impl Line {
    /// The first line without an amount is a title: `My belly cure`.
    pub fn title(&mut self) {
        let bare = self.taken == Taken::Taste && self.bare && self.base.is_none();
        let words = self.text.split_whitespace().count();
        let named = matches!(self.taken, Taken::Unread | Taken::Remark)
            && self.amount.is_none()
            && (words > 2 || is_title(&self.text) || words == 2 && !names_agent(&self.text));
        // Nobody is told to do anything: "Rinse the ham" is a step.
        let tokens = tokens(&self.text);
        let at = |t: &Token| self.text.get(t.start..).unwrap_or_default();
        let told = |t: &Token| TELLS.contains(&t.text.as_str()) || SAID_TO.iter().any(|w| at(t).starts_with(w));
        let short = self.taken == Taken::Step
            && self.amount.is_none()
            && words > 1
            && !self.text.contains(',')
            && !tokens.iter().any(told);
        // "Overnight Turkey Brine" is none of its steps.
        let called = short && is_title(&self.text) && !self.text.contains(|c: char| c.is_ascii_digit());
        // "Dry cured venison loin", "Three day bacon": a dish is the last word.
        let last = tokens.last();
        let ends = last.is_some_and(|t| DISHES.contains(&t.text.as_str()) || front(Sort::Meat, at(t)).is_some());
        let dish = short && ends && words <= SAYING;
        // "Deer Bacon (25 lb)".
        let weighed = self.taken == Taken::Item
            && self.meaning.as_ref().is_some_and(|m| m.food)
            && self
                .text
                .split_once('(')
                .is_some_and(|(head, _)| is_title(head) && !head.contains(|c: char| c.is_ascii_digit()));
        if bare || named || called || weighed || dish {
            self.taken = Taken::Heading;
        }
    }

    /// `1 tbsp brown sugar or maple syrup`, `1 oz saltpetre or 2 oz cure`: both as texts of their own.
    pub fn alternatives(&self, names: &Names) -> Option<(String, String)> {
        let (Taken::Item, Some(_)) = (self.taken, &self.amount) else {
            return None;
        };
        let lower = self.text.to_lowercase();
        let (at, joint) = OR.iter().find_map(|j| Some((lower.find(j)?, j.len())))?;
        let one = self.text.get(..at)?;
        let other = self.text.get(at.saturating_add(joint)..)?;
        if one.matches('(').count() > one.matches(')').count() {
            return None;
        }
        let named = |text: &str| names.find(&tokens(text)).map(|(_, _, m)| m.clone());
        let (first, second) = (named(one)?, named(other)?);
        let same =
            !first.food && !second.food && first.items.iter().any(|i| second.items.iter().any(|o| o.key == i.key));
        let weighed = scan(other, names)
            .iter()
            .any(|f| matches!(f.what, What::Amount(_) | What::Again(_)));
        let other = if weighed {
            other.to_owned()
        } else {
            format!("{} {other}", self.measure)
        };
        (!same).then(|| (one.to_owned(), other))
    }

    /// True for cups of garlic by one letter, which may be cloves.
    pub fn cup_or_clove(&self) -> bool {
        let garlic = self
            .meaning
            .as_ref()
            .is_some_and(|m| m.items.iter().any(|i| i.key == "garlic-fresh"));
        let letter = self.measure.trim_end_matches('.').ends_with([' ', 'c', 'C']);
        let cup = self.amount.as_ref().is_some_and(|a| a.unit() == "cup");
        garlic && cup && letter
    }

    /// `Shop cures are mostly salt, so I mix mine`: said of cures, where another line weighs one.
    pub fn said_of_cures(&self) -> bool {
        let any = self
            .meaning
            .as_ref()
            .is_some_and(|m| m.items.len() > 2 && m.items.iter().any(|i| i.group == Group::Cure));
        let words = tokens(&self.text);
        let verb = words
            .iter()
            .any(|t| ["are", "is", "were", "was"].contains(&t.text.as_str()));
        self.taken == Taken::Taste && any && verb && words.len() > SAYING && self.strange.is_empty()
    }

    /// True where the only figure of a cure is its strength.
    pub fn strength_alone(&self) -> bool {
        self.strength.is_some() && self.amount.as_ref().is_none_or(|a| a.sort() == Sort::Percent)
    }

    pub(super) fn is_cure(&self) -> bool {
        self.meaning
            .as_ref()
            .is_some_and(|m| m.items.iter().any(|i| i.group == Group::Cure))
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
}
