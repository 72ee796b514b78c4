//! Words as they are compared.

use crate::pantry;

/// A word as it is compared.
pub fn compared(word: &str) -> String {
    singular(&pantry::folded(word))
}

/// Both sides go through this, so that it need not be right, only the same.
fn singular(word: &str) -> String {
    if word == "number" {
        return "no".to_owned();
    }
    // As cards and messages shorten them; and the article of a French word.
    const SHORT: [(&str, &str); 15] = [
        ("ea", "each"),
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
    // "sa1t": an l that was read as a one.
    let scanned = word.strip_prefix(char::is_alphabetic).is_some_and(|w| w.contains('1'))
        && word.ends_with(char::is_alphabetic)
        && word.chars().all(|c| c.is_alphabetic() || c == '1');
    let read = if scanned {
        word.replace('1', "l")
    } else {
        word.to_owned()
    };
    let word = read.as_str();
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

/// True for a word that sounds like a cure, or has a figure in it.
pub fn is_like_a_cure(word: &str) -> bool {
    ["cur", "pink", "nitr", "salp", "pokel", "petre", "prague"]
        .iter()
        .any(|w| word.contains(w))
        || !word.chars().all(|c| c.is_alphabetic() || c == '\'')
        || pantry::names_agent(word)
}
