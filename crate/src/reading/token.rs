//! The words of a text as they are compared.

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
                if let Some(word) = text.get(from..at) {
                    // "No. l": a one that was read as a letter.
                    let one = matches!(word, "l" | "I") && list.last().is_some_and(|t: &Token| t.text == "no");
                    list.push(Token {
                        start: from,
                        end: at,
                        text: if one {
                            "1".to_owned()
                        } else {
                            singular(&pantry::folded(word))
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

/// Both sides go through this, so that it need not be right, only the same.
fn singular(word: &str) -> String {
    if word == "number" {
        return "no".to_owned();
    }
    // As cards and messages shorten them; and the article of a French word.
    const SHORT: [(&str, &str); 14] = [
        ("leaves", "leaf"),
        ("pwdr", "powder"),
        ("powd", "powder"),
        ("pdr", "powder"),
        ("brn", "brown"),
        ("br", "brown"),
        ("blk", "black"),
        ("wht", "white"),
        ("grnd", "ground"),
        ("gr", "ground"),
        ("crsh", "crushed"),
        ("garl", "garlic"),
        ("worc", "worcestershire"),
        ("pkld", "pickled"),
    ];
    if let Some((_, long)) = SHORT.iter().find(|(short, _)| *short == word) {
        return (*long).to_owned();
    }
    let word = ["d'", "l'", "d’", "l’"]
        .iter()
        .find_map(|article| word.strip_prefix(article))
        .unwrap_or(word);
    if let Some(stem) = word.strip_suffix("ies") {
        return format!("{stem}y");
    }
    let keeps = word.len() <= 3 || word.ends_with("ss") || word.ends_with("us");
    match word.strip_suffix('s') {
        Some(stem) if !keeps => stem.to_owned(),
        _ => word.to_owned(),
    }
}
