//! The words of a text as they are compared.

use super::compare::compared;
use super::spelling::meant;
use crate::pantry;

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

/// The words of a text, with their places.
pub fn tokens(text: &str) -> Vec<Token> {
    let mut list = Vec::new();
    let mut start = None;
    for (at, c) in text.char_indices().chain([(text.len(), ' ')]) {
        let inside = c.is_alphanumeric() || c == '\'' || c == '’' || pantry::is_unseen(c);
        match (inside, start) {
            (true, None) => start = Some(at),
            (false, Some(from)) => {
                start = None;
                for (from, word) in text.get(from..at).map(|word| apart(word, from)).into_iter().flatten() {
                    let at = from.saturating_add(word.len());
                    // "No. l": a one that was read as a letter.
                    let one = matches!(word, "l" | "I") && list.last().is_some_and(|t: &Token| t.text == "no");
                    list.push(Token {
                        start: from,
                        end: at,
                        text: if one {
                            "1".to_owned()
                        } else {
                            let word = compared(word);
                            meant(&word).map_or(word, str::to_owned)
                        },
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

/// `cure1`, `no2`, `springcure`: the number of a cure by itself, and the cure in a maker's name.
fn apart(word: &str, from: usize) -> Vec<(usize, &str)> {
    const NUMBERED: [&str; 5] = ["cure", "no", "number", "powder", "pink"];
    let lower = word.to_ascii_lowercase();
    let ends = |end: &str| lower.strip_suffix(end).map(str::len);
    let number = ["1", "2"]
        .iter()
        .find_map(|n| ends(n).filter(|at| NUMBERED.iter().any(|w| lower.get(..*at) == Some(w))));
    let cure = ends("cure")
        .filter(|at| *at > 0 && !["se", "obs", "pro", "mani", "pedi"].contains(&lower.get(..*at).unwrap_or_default()));
    match number.or(cure).and_then(|at| Some((at, word.split_at_checked(at)?))) {
        Some((at, (first, then))) => {
            let mut parts = apart(first, from);
            parts.push((from.saturating_add(at), then));
            parts
        }
        None => vec![(from, word)],
    }
}
