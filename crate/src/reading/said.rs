//! What the words of a clause are: a name, a heading, a title, a remark.

use super::names::{Meaning, Names};
use super::token::{Token, tokens};
use super::words::{Sort, Word, front};
use crate::pantry::{Group, names_agent};
use crate::tables::{CHANGES, FOOD_NOUNS, GIVES, HEADS, PRAISE};

pub(super) fn has(sort: Sort, text: &str, rest: &[Token]) -> bool {
    // Of meat its word as it is compared too: "pheasent".
    let here = |t: &Token| text.get(t.start..).is_some_and(|at| front(sort, at).is_some());
    rest.iter()
        .any(|t| here(t) || sort == Sort::Meat && front(sort, &t.text).is_some_and(|(_, l)| l == t.text.len()))
}

/// What a name and the word behind its comma mean together: `Salt, kosher`.
pub(super) fn turned(text: &str, rest: &[Token], at: usize, end: usize, names: &Names) -> Option<Meaning> {
    let (last, next) = (rest.get(end.checked_sub(1)?)?, rest.get(end)?);
    if text.get(last.end..next.start)?.trim() != "," {
        return None;
    }
    let mut words = vec![next.clone()];
    words.extend(rest.get(at..end)?.iter().cloned());
    let (from, length, meaning) = names.find(&words)?;
    (from == 0 && length == words.len()).then(|| meaning.clone())
}

/// What a name and the noun right behind it mean together: `bay salt`, `rye whisky`, `demerara sugar`. A kind of sugar stays that
/// kind; what a cure or a salt is called before a noun is asked or told elsewhere.
pub(super) fn headed(text: &str, rest: &[Token], end: usize, first: &Meaning, names: &Names) -> Option<Meaning> {
    let (last, next) = (rest.get(end.checked_sub(1)?)?, rest.get(end)?);
    let close = text.get(last.end..next.start)? == " ";
    let modifies = first.food || !first.items.iter().any(|i| matches!(i.group, Group::Cure | Group::Salt));
    if !close || !modifies || !HEADS.contains(&next.text.as_str()) {
        return None;
    }
    // "Wild plum jelly", "oatmeal rusk": a food all the same.
    let Some((_, _, noun)) = names.find(std::slice::from_ref(next)) else {
        return food_by_its_noun(&next.text).or_else(|| first.food.then(|| first.clone()));
    };
    let same = first
        .items
        .iter()
        .any(|i| noun.items.iter().any(|n| n.group == i.group));
    Some(if same { first.clone() } else { noun.clone() })
}

/// Without the words before the animal or the cut: `feral pig`, `grain-fed wild boar belly`. No cure is named so.
pub(super) fn which_meat(text: &str, rest: &[Token]) -> Vec<Token> {
    let meat = rest
        .iter()
        .position(|t| text.get(t.start..).is_some_and(|at| front(Sort::Meat, at).is_some()))
        .unwrap_or_default();
    let ahead = rest.get(..meat).unwrap_or_default();
    let counts = |t: &Token| {
        let at = text.get(t.start..).unwrap_or_default();
        let unit = [Sort::Mass, Sort::Volume, Sort::Number]
            .iter()
            .any(|sort| front(*sort, at).is_some());
        CHANGES.contains(&t.text.as_str()) || t.text == "each" || unit && t.text.chars().count() > 1
    };
    let close = |t: &Token| t.text.chars().all(char::is_alphabetic) && !names_agent(&t.text) && !counts(t);
    let joined = ahead
        .iter()
        .any(|t| ["and", "with", "plu", "plus", "in"].contains(&t.text.as_str()));
    if ahead.len() > MOST_ATTRIBUTES || joined || !ahead.iter().all(close) {
        return rest.to_vec();
    }
    rest.get(meat..).unwrap_or_default().to_vec()
}

/// So many words say which of a thing it is.
pub(super) const MOST_ATTRIBUTES: usize = 3;

/// True for a heading: its word is all of it, or it is all in capitals.
pub(super) fn heading(text: &str) -> bool {
    let text = text.trim().trim_end_matches([':', '.', ' ']);
    let whole = front(Sort::Heading, text).is_some_and(|(_, length)| length == text.len());
    let letters = text.chars().filter(|c| c.is_alphabetic());
    let loud = text.chars().filter(|c| c.is_alphabetic()).count() > 3
        && letters.clone().all(char::is_uppercase)
        && text.split_whitespace().count() > 1;
    whole || loud
}

/// `Brine for two hares`: a heading that says what it is for.
pub(super) fn heads_for(text: &str) -> bool {
    let behind = front(Sort::Heading, text).and_then(|(_, length)| text.get(length..));
    behind.is_some_and(|rest| rest.trim_start().to_lowercase().starts_with("for "))
}

/// `Killer on rye`, `great with crackers`: what it is eaten with. Nothing stands before that but how good it is, and a cure is
/// not eaten so.
pub(super) fn praises(text: &str, named: &Meaning, names: &Names) -> bool {
    let words = tokens(text);
    let at = words
        .iter()
        .position(|t| ["on", "with", "alongside", "over"].contains(&t.text.as_str()));
    let Some((ahead, behind)) = at.and_then(|at| words.split_at_checked(at)) else {
        return false;
    };
    let plain = named.food
        || named
            .items
            .iter()
            .all(|i| !matches!(i.group, Group::Cure | Group::Salt));
    let said = |t: &Token| text.get(t.start..t.end).unwrap_or_default().to_lowercase();
    let good = ahead.iter().any(|t| PRAISE.contains(&said(t).as_str()));
    let does = ahead.iter().any(|t| {
        let at = text.get(t.start..).unwrap_or_default();
        [Sort::Act, Sort::Adds].iter().any(|sort| front(*sort, at).is_some())
    });
    let eaten = behind.first().is_some_and(|t| t.text == "on") && named.food;
    plain && names.find(ahead).is_none() && (good || eaten && !does && ahead.len() <= MOST_ATTRIBUTES)
}

/// `Pepperberry`, `quandong jam`: food by its last word, whatever stands before it.
pub(super) fn food_by_its_noun(name: &str) -> Option<Meaning> {
    let words = tokens(name);
    let last = words.last()?;
    let food = FOOD_NOUNS.iter().any(|noun| last.text.ends_with(noun)) && !names_agent(name);
    food.then(|| Meaning {
        items: Vec::new(),
        spoon_only: false,
        ask: "",
        food: true,
    })
}

/// True for what is said beside a recipe.
pub(super) fn remark(text: &str) -> bool {
    front(Sort::Remark, text.trim_start_matches(|c: char| !c.is_alphanumeric())).is_some()
}

/// True for how much it gives: `Makes about 3 lb of sticks`.
pub(super) fn gives(text: &str) -> bool {
    tokens(text).first().is_some_and(|t| GIVES.contains(&t.text.as_str()))
}

/// True for a title: most of its longer words begin with a capital, and it is no sentence.
pub(super) fn is_title(text: &str) -> bool {
    let words: Vec<&str> = text.split_whitespace().filter(|w| w.chars().count() > 3).collect();
    let capital = |w: &&&str| w.chars().next().is_some_and(char::is_uppercase);
    let capitals = words.iter().filter(capital).count();
    !text.ends_with('.')
        && !words.is_empty()
        && capitals.saturating_mul(3) >= words.len().saturating_mul(2)
        && text.chars().next().is_some_and(char::is_uppercase)
}

/// The tokens without the words of a sort, and true where one was among them.
pub(super) fn without(text: &str, rest: Vec<Token>, sort: Sort) -> (Vec<Token>, bool) {
    let mut kept = Vec::new();
    let mut until = 0;
    let mut met = false;
    for token in rest {
        if token.end <= until {
            continue;
        }
        let found: Option<(&Word, usize)> = text.get(token.start..).and_then(|at| front(sort, at));
        match found {
            Some((_, length)) => {
                until = token.start.saturating_add(length);
                met = true;
            }
            None => kept.push(token),
        }
    }
    (kept, met)
}

/// The name of what the pantry has not: from its first word on, as far as the words stand together; and what is left.
pub(super) fn name_of_own(text: &str, rest: &[Token], left: &[Token]) -> (String, String) {
    let from = left.first().map_or(0, |t| t.start);
    let mut end = from;
    for token in rest.iter().filter(|t| t.start >= from) {
        let between = text.get(end..token.start).unwrap_or_default();
        if end > from && !between.chars().all(|c| c.is_whitespace() || c == '-') {
            break;
        }
        end = token.end;
    }
    let beyond: Vec<Token> = left.iter().filter(|t| t.start >= end).cloned().collect();
    (text.get(from..end).unwrap_or_default().to_owned(), said(text, &beyond))
}

/// Words as they were written.
pub(super) fn said(text: &str, tokens: &[Token]) -> String {
    let words: Vec<&str> = tokens.iter().filter_map(|t| text.get(t.start..t.end)).collect();
    words.join(" ")
}
