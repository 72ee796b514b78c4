//! Names of what goes in: the pantry's own, their other names, and the words that can mean several things.

use super::compare::is_like_a_cure;
use super::token::{Token, tokens};
use super::words::{self, Sort};
use crate::order::InOrder;
use crate::pantry::{self, Group, Ingredient};
use std::collections::HashSet;
use std::sync::OnceLock;

/// What a name can mean.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Meaning {
    /// Rows of the pantry, the usual first.
    pub items: Vec<&'static Ingredient>,
    /// True where the difference counts for a spoon alone.
    pub spoon_only: bool,
    /// The question that settles it; empty for one row.
    pub ask: &'static str,
    /// True for food that the pantry has no figures for: it is known what it is, and that it is no cure.
    pub food: bool,
}

/// Every name, as tokens, in the order of the first of them.
pub struct Names {
    list: Vec<(Vec<String>, Meaning)>,
    /// Words that are understood and can be no curing agent, as they are compared.
    plain: HashSet<String>,
}

impl Names {
    /// All names of the tables, put in order once.
    pub fn all() -> &'static Self {
        static ALL: OnceLock<Names> = OnceLock::new();
        ALL.get_or_init(Self::of_tables)
    }

    /// A name of `words.csv` goes before the same one of the pantry.
    fn of_tables() -> Self {
        let mut list: Vec<(Vec<String>, Meaning)> = Vec::new();
        for word in words::of(Sort::Name) {
            let (spoon, ask) = word.note.split_once('|').unwrap_or_default();
            let meaning = Meaning {
                items: word.value.split('|').filter_map(pantry::ingredient).collect(),
                spoon_only: !spoon.is_empty(),
                ask,
                food: false,
            };
            list.extend(word.words.iter().map(|w| (plain(w), meaning.clone())));
        }
        // A mix is known by how it was made, which no recipe of another says.
        for item in pantry::ingredients()
            .iter()
            .filter(|i| ![pantry::MADE, pantry::PACKET].contains(&i.key))
        {
            let meaning = Meaning {
                items: vec![item],
                spoon_only: false,
                ask: "",
                food: false,
            };
            // "Sage, ground" is also said "ground sage".
            let first = item.names.first().and_then(|name| name.split_once(", "));
            let turned = first.map(|(noun, how)| format!("{how} {noun}"));
            let names = item.names.iter().copied().map(plain);
            // The same name twice is no harm: the first is found.
            list.extend(
                names
                    .chain(turned.as_deref().map(plain))
                    .map(|name| (name, meaning.clone())),
            );
        }
        for word in words::of(Sort::Food) {
            let meaning = Meaning {
                items: Vec::new(),
                spoon_only: false,
                ask: "",
                food: true,
            };
            list.extend(word.words.iter().map(|w| (plain(w), meaning.clone())));
        }
        list.order_by(|(a, _), (b, _)| a.first().cmp(&b.first()));
        let sorts = [
            Sort::Number,
            Sort::Fraction,
            Sort::Third,
            Sort::Multiple,
            Sort::Heap,
            Sort::About,
            Sort::Pack,
            Sort::Mass,
            Sort::Volume,
            Sort::Pinch,
            Sort::Count,
            Sort::Other,
            Sort::Rate,
            Sort::Base,
            Sort::Meat,
            Sort::Step,
            Sort::Heading,
            Sort::None,
            Sort::Taste,
            Sort::Harmless,
            Sort::Act,
            Sort::Plain,
            Sort::Remark,
        ];
        let known = sorts
            .into_iter()
            .flat_map(words::of)
            .flat_map(|w| w.words)
            .flat_map(|w| plain(w));
        // A food by any of its words: "fresh juniper" is no more a cure than "juniper".
        let foods = list
            .iter()
            .filter(|(_, m)| m.food || m.items.iter().all(|i| i.group != Group::Cure));
        let foods = foods.filter(|(_, m)| m.food || m.items.iter().any(|i| i.group != Group::Salt));
        let foods = foods.flat_map(|(name, _)| name.clone());
        let plain = known.chain(foods).filter(|w| w != "no").collect();
        Self { list, plain }
    }

    /// True for a word that is understood, or a number: it names nothing that may be a cure.
    pub fn is_plain(&self, token: &Token) -> bool {
        let word = token.text.trim_end_matches("'s").trim_end_matches("’s");
        let number = word.chars().all(|c| c.is_ascii_digit() || "½⅓⅔¼¾⅛⅜⅝⅞".contains(c));
        number
            || word.chars().count() < 2
            || self.plain.contains(word)
            || word == "no"
            || word == "salt"
            || is_done(word)
    }

    /// The longest name among the tokens, the first of equals: its place in them, and what it means.
    pub fn find(&self, tokens: &[Token]) -> Option<(usize, usize, &Meaning)> {
        let mut best: Option<(usize, usize, &Meaning)> = None;
        for start in 0..tokens.len() {
            let (Some(rest), Some(first)) = (tokens.get(start..), tokens.get(start)) else {
                break;
            };
            let head = |name: &Vec<String>| name.first().map(String::as_str).cmp(&Some(first.text.as_str()));
            let from = self.list.partition_point(|(name, _)| head(name).is_lt());
            let same = self.list.iter().skip(from).take_while(|(name, _)| head(name).is_eq());
            for (name, meaning) in same {
                let here = rest.len() >= name.len() && name.iter().zip(rest).all(|(n, t)| *n == t.text);
                if here && best.is_none_or(|(_, length, _)| name.len() > length) {
                    best = Some((start, name.len(), meaning));
                }
            }
        }
        best
    }
}

/// True for a word that says how a thing was treated or how it is done: `paunched`, `lightly`. No cure is called so.
pub fn is_done(word: &str) -> bool {
    word.chars().count() > 4
        && ["ed", "ly", "ing", "wise", "ness"]
            .iter()
            .any(|end| word.ends_with(end))
        && !is_like_a_cure(word)
        && !["season", "tint", "pickling"].iter().any(|w| word.contains(w))
}

fn plain(text: &str) -> Vec<String> {
    tokens(text).into_iter().map(|t| t.text).collect()
}
