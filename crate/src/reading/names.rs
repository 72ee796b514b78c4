//! Names of what goes in: the pantry's own, their other names, and the words that can mean several things.

use super::words::{self, Sort};
use crate::pantry::{self, Ingredient};

/// A word of a text, as it is compared: small letters, no plural, `no` for `#`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Token {
    /// Where it begins, in bytes.
    pub start: usize,
    /// Where it ends.
    pub end: usize,
    /// As it is compared.
    pub text: String,
}

/// What a name can mean.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Meaning {
    /// Rows of the pantry, the usual first.
    pub items: Vec<&'static Ingredient>,
    /// True where the difference counts for a spoon alone.
    pub spoon_only: bool,
    /// The question that settles it; empty for one row.
    pub ask: &'static str,
}

/// Every name, as tokens, in the order of the first of them.
pub struct Names(Vec<(Vec<String>, Meaning)>);

impl Names {
    /// All names of the tables. A name of `words.csv` goes before the same one of the pantry.
    pub fn all() -> Self {
        let mut list: Vec<(Vec<String>, Meaning)> = Vec::new();
        for word in words::of(Sort::Name) {
            let (spoon, ask) = word.note.split_once('|').unwrap_or_default();
            let meaning = Meaning {
                items: word.value.split('|').filter_map(pantry::ingredient).collect(),
                spoon_only: !spoon.is_empty(),
                ask,
            };
            list.extend(word.words.iter().map(|w| (plain(w), meaning.clone())));
        }
        // A mix is known by how it was made, which no recipe of another says.
        for item in pantry::ingredients().iter().filter(|i| i.key != pantry::MADE) {
            let meaning = Meaning {
                items: vec![item],
                spoon_only: false,
                ask: "",
            };
            // "Sage, ground" is also said "ground sage".
            let turned = item.name.split_once(", ").map(|(noun, how)| format!("{how} {noun}"));
            let names = [item.name].into_iter().chain(item.others.iter().copied()).map(plain);
            // The same name twice is no harm: the first is found.
            list.extend(
                names
                    .chain(turned.as_deref().map(plain))
                    .map(|name| (name, meaning.clone())),
            );
        }
        list.sort_by(|(a, _), (b, _)| a.first().cmp(&b.first()));
        Self(list)
    }

    /// The longest name among the tokens, the first of equals: its place in them, and what it means.
    pub fn find(&self, tokens: &[Token]) -> Option<(usize, usize, &Meaning)> {
        let mut best: Option<(usize, usize, &Meaning)> = None;
        for start in 0..tokens.len() {
            let (Some(rest), Some(first)) = (tokens.get(start..), tokens.get(start)) else {
                break;
            };
            let head = |name: &Vec<String>| name.first().map(String::as_str).cmp(&Some(first.text.as_str()));
            let from = self.0.partition_point(|(name, _)| head(name).is_lt());
            let same = self.0.iter().skip(from).take_while(|(name, _)| head(name).is_eq());
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

fn plain(text: &str) -> Vec<String> {
    tokens(text).into_iter().map(|t| t.text).collect()
}

/// The words of a text, with their places.
pub fn tokens(text: &str) -> Vec<Token> {
    let mut list = Vec::new();
    let mut start = None;
    for (at, c) in text.char_indices().chain([(text.len(), ' ')]) {
        let inside = c.is_alphanumeric() || c == '\'' || c == '’';
        match (inside, start) {
            (true, None) => start = Some(at),
            (false, Some(from)) => {
                start = None;
                if let Some(word) = text.get(from..at) {
                    list.push(Token {
                        start: from,
                        end: at,
                        text: singular(&word.to_lowercase()),
                    });
                }
            }
            _ => {}
        }
        if c == '#' {
            list.push(Token {
                start: at,
                end: at.saturating_add(1),
                text: "no".to_owned(),
            });
        }
    }
    list
}

/// Both sides go through this, so that it need not be right, only the same.
fn singular(word: &str) -> String {
    if word == "number" {
        return "no".to_owned();
    }
    if word == "leaves" {
        return "leaf".to_owned();
    }
    if let Some(stem) = word.strip_suffix("ies") {
        return format!("{stem}y");
    }
    let keeps = word.len() <= 3 || word.ends_with("ss") || word.ends_with("us");
    match word.strip_suffix('s') {
        Some(stem) if !keeps => stem.to_owned(),
        _ => word.to_owned(),
    }
}
