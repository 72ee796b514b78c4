//! Words of food, meat and preparation with one letter amiss: `corriander`, `parsely`, `trirnmings`. The name of a cure is never
//! guessed.

use super::compare::{compared, is_like_a_cure};
use super::words::{Sort, of};
use crate::pantry::{self, Group};
use std::collections::{HashMap, HashSet};
use std::sync::OnceLock;

/// From here on a word has letters enough to be known with one amiss.
const LONG: usize = 6;

/// Words that are known, and those of them that a word may be meant for, by first letter and length.
struct Known {
    all: HashSet<String>,
    meant: HashMap<(char, usize), Vec<String>>,
}

fn known() -> &'static Known {
    static KNOWN: OnceLock<Known> = OnceLock::new();
    KNOWN.get_or_init(|| {
        let foods = pantry::ingredients().iter().filter(|i| i.group != Group::Cure);
        let foods = foods.flat_map(|i| i.names.iter().copied());
        let sorts = [Sort::Food, Sort::Meat, Sort::Harmless, Sort::Plain];
        let words = sorts.into_iter().flat_map(of).flat_map(|w| w.words.iter().copied());
        let mut known = Known {
            all: HashSet::new(),
            meant: HashMap::new(),
        };
        for word in foods
            .chain(words)
            .flat_map(|name| name.split(|c: char| !c.is_alphabetic()))
        {
            let word = compared(word);
            let first = word
                .chars()
                .next()
                .filter(|_| word.len() >= LONG && word.is_ascii() && !is_like_a_cure(&word));
            if let Some(first) = first
                && !known.all.contains(&word)
            {
                known.meant.entry((first, word.len())).or_default().push(word.clone());
            }
            known.all.insert(word);
        }
        for word in crate::tables::WORDS.iter().flat_map(|w| w.words) {
            known.all.extend(word.split(|c: char| !c.is_alphabetic()).map(compared));
        }
        known
    })
}

/// The word that is meant, where one is known that differs by a letter and this is no word itself.
pub fn meant(word: &str) -> Option<&'static str> {
    let plain = word.len() >= LONG && word.bytes().all(|b| b.is_ascii_lowercase()) && !is_like_a_cure(word);
    let known = plain.then(known)?;
    if known.all.contains(word) {
        return None;
    }
    // "rn" is how a scan sees an m.
    let scanned = word.replace("rn", "m");
    if let Some(same) = known.all.get(&scanned) {
        return Some(same);
    }
    let first = word.chars().next()?;
    let lengths = word.len().saturating_sub(1)..=word.len().saturating_add(1);
    let near = lengths.filter_map(|length| known.meant.get(&(first, length))).flatten();
    near.map(String::as_str)
        .find(|other| by_one(word.as_bytes(), other.as_bytes()))
}

/// True where one letter is more, less, another, or in the place of its neighbour.
fn by_one(a: &[u8], b: &[u8]) -> bool {
    let same = a.iter().zip(b).take_while(|(x, y)| x == y).count();
    let rest = |word: &'_ [u8], from: usize| word.get(same.saturating_add(from)..).map(<[u8]>::to_vec);
    let (one, other) = (rest(a, 1), rest(b, 1));
    match a.len().cmp(&b.len()) {
        std::cmp::Ordering::Less => rest(a, 0) == other,
        std::cmp::Ordering::Greater => one == rest(b, 0),
        std::cmp::Ordering::Equal => {
            let turned = a.get(same) == b.get(same.saturating_add(1)) && a.get(same.saturating_add(1)) == b.get(same);
            one == other || turned && rest(a, 2) == rest(b, 2)
        }
    }
}

/// The unit that is meant by a word with one letter amiss: `tablspoon`. A word that is known is meant as it stands.
pub fn unit_meant(word: &str) -> Option<&'static str> {
    let lower = word.to_ascii_lowercase();
    let plain = lower.len() >= LONG && lower.bytes().all(|b| b.is_ascii_lowercase()) && !is_like_a_cure(&lower);
    let known = plain.then(known)?;
    let units = [Sort::Mass, Sort::Volume]
        .into_iter()
        .flat_map(of)
        .flat_map(|w| w.words.iter());
    let mut near = units
        .copied()
        .filter(|u| u.len() >= LONG && by_one(lower.as_bytes(), u.as_bytes()));
    near.next().filter(|_| !known.all.contains(&compared(&lower)))
}
