//! Which language a text is in, by its small words: no assurance stands on a text that is not English.

use crate::tables::{ENGLISH, FRENCH, GERMAN};

/// The languages that are told apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Tongue {
    /// English.
    English,
    /// German.
    German,
    /// French.
    French,
    /// None of these.
    Other,
}

/// Letters that no English word has; a few foreign words stand in English recipes too.
const STRANGE: usize = 4;

/// The language of a text.
pub fn tongue(text: &str) -> Tongue {
    let lower = text.to_lowercase();
    let words: Vec<&str> = lower
        .split(|c: char| !(c.is_alphanumeric() || c == '\'' || c == '’'))
        .filter(|w| w.chars().any(char::is_alphabetic))
        .collect();
    let count = |list: &[&str]| words.iter().filter(|w| list.contains(w)).count();
    let (german, french, english) = (count(&GERMAN), count(&FRENCH), count(&ENGLISH));
    let umlauts = words.iter().filter(|w| w.contains(['ö', 'ä', 'ü', 'ß'])).count();
    let accents = words
        .iter()
        .filter(|w| w.contains(['é', 'è', 'ê', 'à', 'ç', 'œ']))
        .count();
    let german = german.saturating_add(umlauts);
    let french = french.saturating_add(accents);
    if german > english && german >= french {
        return Tongue::German;
    }
    if french > english {
        return Tongue::French;
    }
    let foreign = words
        .iter()
        .filter(|w| w.chars().any(|c| c.is_alphabetic() && !c.is_ascii()))
        .count();
    if english == 0 && foreign >= STRANGE
        || foreign.saturating_mul(3) > words.len().saturating_mul(2) && words.len() > 2
    {
        return Tongue::Other;
    }
    Tongue::English
}
