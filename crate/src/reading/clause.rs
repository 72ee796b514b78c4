//! A text into clauses, each with one thing in it: at line ends, at the ends of sentences, and where the next amount,
//! ingredient or step begins. Nothing of the text is lost.

use super::corrected::span;
use super::names::{Meaning, Names};
use super::number::range;
use super::scan::{Found, RUN_ON, What, near, scan};
use super::token::{Token, tokens};
use super::words::{Sort, front};
use crate::pantry;
use crate::tables::{ABBREVIATED, FEW, PART_OF, PRINTED};

/// The clauses of a text, without the marks and joints around them.
///
/// Each with the number of its sentence.
pub fn clauses<'a>(text: &'a str, names: &Names) -> Vec<(usize, &'a str)> {
    let sentences = text.split(['\n', '\r', ';']).flat_map(sentences).enumerate();
    sentences
        .flat_map(|(at, sentence)| parts(sentence, names).into_iter().map(move |part| (at, trim(part))))
        .filter(|(_, part)| part.chars().any(char::is_alphanumeric))
        .collect()
}

/// Without the marks around it; the point of `.5` is part of the number.
fn trim(part: &str) -> &str {
    let mark = |c: char| {
        c.is_whitespace() || matches!(c, ',' | ';' | ':' | '*' | '•' | '-' | '–' | '—' | '·' | '!' | '&' | '>')
    };
    let part = part.trim_end_matches(|c| mark(c) || c == '.').trim_start_matches(mark);
    let part = part
        .strip_prefix("/ ")
        .or(part.strip_prefix('|'))
        .map_or(part, str::trim_start);
    let behind = part.trim_start_matches('.');
    if behind.starts_with(|c: char| c.is_ascii_digit()) && behind.len() < part.len() {
        part
    } else {
        behind.trim_start_matches(mark)
    }
}

/// At a full stop that ends a sentence: a blank and a capital or a digit behind it, no short word before it.
fn sentences(text: &str) -> Vec<&str> {
    let mut list = Vec::new();
    let mut from = 0;
    for (at, c) in text.char_indices() {
        if !matches!(c, '.' | '!' | '?') {
            continue;
        }
        let after = text.get(at.saturating_add(1)..).unwrap_or_default();
        let word = text
            .get(from..at)
            .and_then(|t| t.rsplit(|c: char| !c.is_alphanumeric()).next())
            .unwrap_or_default();
        // "5lb." and "2½lb." end no sentence either.
        let bare = word.trim_start_matches(char::is_numeric);
        let word = if bare.is_empty() { word } else { bare };
        let next = after.trim_start().chars().next();
        // "1 c. Worcestershire", "2 T. Pepper"; but "at 75 C. Rinse".
        let letter = ["c", "t"].iter().any(|l| word.eq_ignore_ascii_case(l)) && {
            let number = text
                .get(from..at)
                .unwrap_or_default()
                .trim_end_matches(char::is_alphabetic)
                .trim_end();
            let digits = number
                .len()
                .saturating_sub(number.trim_end_matches(|c: char| c.is_ascii_digit()).len());
            digits == 1 || number.ends_with(char::is_numeric) && digits == 0
        };
        let ends = !letter && after.starts_with(char::is_whitespace)
            // Messages begin a sentence with a small letter: behind a word of some length that is one too.
            && next.is_some_and(|n| n.is_uppercase() || n.is_ascii_digit() || n.is_lowercase() && (word.len() > 2 || word.ends_with(|c: char| c.is_ascii_digit()) || before_is_mark(text, at)))
            && !ABBREVIATED.iter().any(|s| word.eq_ignore_ascii_case(s));
        if ends {
            list.extend(text.get(from..at));
            from = at.saturating_add(1);
        }
    }
    list.extend(text.get(from..));
    list.into_iter().flat_map(spoken).collect()
}

/// `in the fridge period smoke at 225`: a full stop that was said, by who lets a telephone write.
fn spoken(text: &str) -> Vec<&str> {
    const SAID: &str = " period ";
    let cut = text.find(SAID).map(|at| at.saturating_add(SAID.len()));
    let cut = cut.filter(|at| {
        !text
            .get(*at..)
            .is_some_and(|t| ["of ", "for ", "in "].iter().any(|w| t.starts_with(w)))
    });
    match cut.and_then(|at| text.split_at_checked(at)) {
        Some((head, tail)) => [vec![head], spoken(tail)].concat(),
        None => vec![text],
    }
}

/// True for a per cent or a bracket before the full stop.
fn before_is_mark(text: &str, at: usize) -> bool {
    text.get(..at).is_some_and(|t| t.ends_with(['%', ')']))
}

/// A sentence at the joints before each further amount, name or step.
fn parts<'a>(text: &'a str, names: &Names) -> Vec<&'a str> {
    // "No pink salt, just 2 cups of salt": what is left out ends at the comma.
    let bare = text.trim_start();
    if let Some((head, tail)) = text.split_once(',')
        && (front(Sort::None, bare).is_some() || tokens(head).last().is_some_and(|t| t.text == "none"))
        && tail.chars().any(char::is_alphanumeric)
    {
        let mut list = vec![head];
        list.extend(parts(tail, names));
        return list;
    }
    // "30 g no sorry 25": the amount that is put right stays with the other.
    if let Some((from, to)) = span(text, names)
        && (from > 0 || to < text.len())
    {
        let mut list = parts(text.get(..from).unwrap_or_default(), names);
        list.extend(text.get(from..to));
        list.extend(parts(text.get(to..).unwrap_or_default(), names));
        return list;
    } else if span(text, names).is_some() {
        return vec![text];
    }
    if let Some(cut) = bare_count(text, names) {
        let (head, tail) = text.split_at_checked(cut).unwrap_or((text, ""));
        let mut list = parts(head, names);
        list.extend(parts(tail, names));
        return list;
    }
    let all = scan(text, names);
    let weighed = |f: &Found| matches!(&f.what, What::Amount(a) | What::Again(a) if a.sort() != Sort::Other);
    let act =
        |t: &str| front(Sort::Act, t).is_some_and(|(word, _)| !word.value.is_empty()) || front(Sort::Step, t).is_some();
    // A step is one sentence, whatever it names.
    if !all.iter().any(weighed)
        && (act(bare.trim_start_matches(|c: char| !c.is_alphabetic())) || all.iter().any(|f| !weighed(f)))
    {
        return vec![text];
    }
    let mut cuts = Vec::new();
    let (mut begin, mut last, mut main, mut name_first) = (0, 0, false, false);
    // "17 g cure #1 (6.25 %) and 1 tbsp allspice": the name stands before the bracket.
    let mut said = false;
    for (n, found) in all.iter().enumerate() {
        let between = text.get(last..found.start).unwrap_or_default();
        let behind = text.get(found.end..).unwrap_or_default();
        let printed = || main || before_amount(text, begin, all.get(n..).unwrap_or_default(), names);
        // "Salt 3 % sugar 1.5 % cure #1 0.25 %": each with its name before it.
        let percent = |f: &Found| matches!(&f.what, What::Amount(a) if a.sort() == Sort::Percent);
        let before = n.checked_sub(1).and_then(|n| all.get(n));
        let list = name_first && before.is_some_and(percent) && names.find(&unprinted(between)).is_some();
        if found.what == What::Beside || is_strength(&found.what, behind, names) && printed() && !list {
            continue;
        }
        if matches!(&found.what, What::Amount(a) if a.sort() != Sort::Other) {
            let named = |from: usize| {
                let before = text.get(from..found.start).unwrap_or_default();
                names.find(&tokens(before)).is_some() || weighs_next(behind, names) && meat(before)
            };
            if !main {
                (main, name_first) = (true, named(begin));
            } else if name_first || said || says_something(between) {
                let joint = if name_first {
                    first_joint(between)
                } else {
                    last_joint(between)
                };
                begin = last.saturating_add(joint);
                cuts.push(begin);
                name_first = named(begin);
            }
            said = false;
        } else if main {
            said |= names.find(&tokens(between)).is_some();
        }
        last = found.end;
    }
    cuts.push(text.len());
    let mut list = Vec::new();
    let mut from = 0;
    for cut in cuts {
        let part = text.get(from..cut).unwrap_or_default();
        let (head, rest) = part.split_at_checked(another(part, names)).unwrap_or(("", part));
        list.extend(tails(head, names));
        list.extend(tails(rest, names));
        from = cut;
    }
    list
}

/// `mallard breasts, 3 lb. 1 tbsp sugar`: another amount with its name follows at once.
fn weighs_next(behind: &str, names: &Names) -> bool {
    let behind = behind.trim_start();
    let next = scan(near(behind), names);
    let first = next
        .first()
        .filter(|f| f.start == 0 && matches!(f.what, What::Amount(_)));
    first
        .and_then(|f| behind.get(f.end..))
        .is_some_and(|t| names.find(&tokens(near(t))).is_some_and(|(at, _, _)| at < 2))
}

fn meat(text: &str) -> bool {
    let here = |t: &Token| text.get(t.start..).is_some_and(|at| front(Sort::Meat, at).is_some());
    tokens(text).iter().any(here)
}

/// `2 pintail, 2 wigeon`, `salt 3, sugar 1`, `half cup soy 2 onions`: where something begins of which only a number is said,
/// or what goes before it is all that.
fn bare_count(text: &str, names: &Names) -> Option<usize> {
    if text.len() > RUN_ON {
        return None;
    }
    let counts = |part: &str| {
        let words = tokens(part);
        let word = |t: &&Token| part.get(t.start..).is_some_and(|at| front(Sort::Number, at).is_some());
        let digits = |t: &&Token| t.text.chars().all(|c| c.is_ascii_digit());
        let numbers = words.iter().filter(|t| digits(t) || word(t)).count();
        let meat = words
            .iter()
            .any(|t| part.get(t.start..).is_some_and(|at| front(Sort::Meat, at).is_some()));
        let plain = words.len() <= 4 && scan(part, names).is_empty();
        plain && numbers == 1 && (meat || names.find(&words).is_some_and(|(_, _, m)| !is_cure(m)))
    };
    if let Some(at) = text.find(", ")
        && text.get(..at).is_some_and(counts)
    {
        let next = text.get(at.saturating_add(2)..)?;
        let end = next.find(',').unwrap_or(next.len());
        let next = next.get(..end)?;
        // "2 bay leaves, a few juniper berries".
        let few =
            tokens(next).iter().take(2).any(|t| FEW.contains(&t.text.as_str())) && names.find(&tokens(next)).is_some();
        if few || counts(next) || names.find(&tokens(next)).is_some() && !scan(next, names).is_empty() {
            return Some(at.saturating_add(1));
        }
    }
    // "2 onions 3 lb of venison": each has its own.
    let found = scan(text, names);
    let rest = uncounted(text.trim_start());
    let counted = rest.len() < text.trim_start().len();
    if let Some(first) = found
        .first()
        .filter(|f| counted && f.start > 0 && matches!(f.what, What::Amount(_)))
        && let (Some(ahead), Some(behind)) = (
            text.get(text.len().saturating_sub(rest.len())..first.start),
            text.get(first.end..),
        )
    {
        let words = tokens(ahead);
        let whole = names
            .find(&words)
            .is_some_and(|(at, length, m)| at == 0 && length == words.len() && !is_cure(m));
        let next = tokens(near(behind));
        let other = next
            .iter()
            .take(3)
            .any(|t| behind.get(t.start..).is_some_and(|at| front(Sort::Meat, at).is_some()));
        if whole && (other || names.find(&next).is_some_and(|(at, _, _)| at < 2)) {
            return Some(first.start);
        }
    }
    // Behind another amount, and right before its name.
    let mut places = text.match_indices(' ');
    places.find_map(|(at, _)| {
        let rest = text.get(at.saturating_add(1)..)?;
        let ahead = counted || found.iter().any(|f| f.end <= at && matches!(f.what, What::Amount(_)));
        let inside = found.iter().any(|f| f.start <= at && at < f.end);
        if !ahead || inside || !rest.starts_with(|c: char| c.is_ascii_digit()) || !says_a_name(text.get(..at)?, names) {
            return None;
        }
        let behind = uncounted(rest);
        let name = names
            .find(&tokens(near(behind)))
            .filter(|(first, _, m)| *first == 0 && !is_cure(m));
        (behind.len() < rest.len() && name.is_some()).then_some(at)
    })
}

fn is_cure(meaning: &Meaning) -> bool {
    meaning.items.iter().any(|i| i.group == pantry::Group::Cure)
}

/// True where a name stands, and no bracket is open behind it.
fn says_a_name(text: &str, names: &Names) -> bool {
    text.matches('(').count() == text.matches(')').count()
        && names.find(&tokens(text)).is_some_and(|(_, _, m)| !is_cure(m))
}

/// `2 bay leaves, 10 g salt`: where what stands before the comma ends, since the amount behind it is of something else;
/// nought where it is not.
fn another(part: &str, names: &Names) -> usize {
    let found = scan(part, names);
    let first = found
        .iter()
        .find(|f| matches!(&f.what, What::Amount(a) if a.sort() != Sort::Other));
    let joint = first.and_then(|amount| {
        let before = part.get(..amount.start)?;
        let behind = part.get(amount.end..)?;
        // "Salt enough to float an egg, in 6 litres of water".
        let bare = before.trim_end();
        let bare = ["in", "with", "to"]
            .iter()
            .find_map(|w| bare.strip_suffix(w))
            .unwrap_or(bare);
        let joint = bare.trim_end().strip_suffix(',').map(str::len)?;
        let (_, _, one) = names.find(&tokens(before))?;
        let end = behind.find([',', ';', ':', '(', '.', '\n']).unwrap_or(behind.len());
        // "Salt, 5 % of the water": what it is a part of.
        let percent = matches!(&amount.what, What::Amount(a) if a.sort() == Sort::Percent);
        let part = |b: &&str| percent && PART_OF.iter().any(|of| b.trim_start().starts_with(of));
        let behind = behind.get(..end).filter(|b| !part(b))?;
        let (_, _, other) = names.find(&tokens(behind))?;
        let same = one.items.iter().any(|i| other.items.iter().any(|j| i.group == j.group));
        (!same).then(|| joint.saturating_add(1))
    });
    joint.unwrap_or(0)
}

/// `nitrite salt 0.6 %, 60 g`: true where the first figure stands behind the name of a cure, and the next, which is no per
/// cent, has no name of its own.
fn before_amount(text: &str, begin: usize, found: &[Found], names: &Names) -> bool {
    let named = |from: usize, to: usize| names.find(&tokens(text.get(from..to).unwrap_or_default()));
    let amount = |f: &&Found| matches!(&f.what, What::Amount(a) if !matches!(a.sort(), Sort::Other | Sort::Percent));
    let Some((first, rest)) = found.split_first() else {
        return false;
    };
    let Some(next) = rest.iter().find(|f| matches!(f.what, What::Amount(_))).filter(amount) else {
        return false;
    };
    let behind = text.get(next.end..).unwrap_or_default();
    let end = behind.find([',', ';', '(', '.']).unwrap_or(behind.len());
    named(begin, first.start).is_some_and(|(_, _, m)| is_cure(m))
        && names
            .find(&unprinted(text.get(first.end..next.start).unwrap_or_default()))
            .is_none()
        && names.find(&tokens(behind.get(..end).unwrap_or_default())).is_none()
}

/// The words of a text but for those that go with a printed strength.
fn unprinted(text: &str) -> Vec<Token> {
    let mut words = tokens(text);
    words.retain(|t| !PRINTED.contains(&t.text.as_str()));
    words
}

/// True for a per cent that is printed beside what was just named: no other name stands behind it.
fn is_strength(what: &What, behind: &str, names: &Names) -> bool {
    let percent = matches!(what, What::Amount(a) | What::Again(a) if a.parts.first().is_some_and(|(_, u)| u.words.contains(&"%")));
    if !percent {
        return false;
    }
    let behind = near(behind);
    let end = behind.find(['.', '\n']).unwrap_or(behind.len());
    let behind = behind.get(..end).unwrap_or_default();
    let rest = unprinted(behind);
    names.find(&rest).is_none() && (rest.is_empty() || rest.len() < tokens(behind).len())
}

/// True where words stand that are more than joints.
fn says_something(text: &str) -> bool {
    const JOINTS: [&str; 9] = ["and", "n", "or", "plus", "with", "of", "about", "i", "e"];
    tokens(text).iter().any(|t| !JOINTS.contains(&t.text.as_str()))
}

const JOINTS: [&str; 9] = [", ", " and ", " plus ", " with ", " in ", " then ", " & ", " n ", ": "];

fn first_joint(text: &str) -> usize {
    let places = JOINTS.iter().filter_map(|j| text.find(j));
    places.min().unwrap_or(0)
}

fn last_joint(text: &str) -> usize {
    let places = JOINTS.iter().filter_map(|j| text.rfind(j));
    places.max().unwrap_or(text.len())
}

/// What hangs on behind a whole clause: a step, or an ingredient without an amount.
fn tails<'a>(text: &'a str, names: &Names) -> Vec<&'a str> {
    let amounts = scan(text, names);
    if tokens(text).iter().any(|t| t.text == "each") && amounts.iter().any(|f| matches!(f.what, What::Amount(_))) {
        return apart(text, names);
    }
    let main = amounts.iter().find(|f| matches!(f.what, What::Amount(_)));
    let mut list = Vec::new();
    let (mut from, mut begin, mut counted) = (main.map_or(0, |m| m.end), 0, 0);
    let (mut depth, mut whole) = (0_usize, false);
    while let Some((cut, joint)) = next_joint(
        text,
        from,
        &[", then ", ", and ", ", ", " and ", " & ", " n ", " then "],
    ) {
        // What lies between the joints is looked at once.
        let between = text.get(counted..cut).unwrap_or_default();
        depth = depth
            .saturating_add(between.matches('(').count())
            .saturating_sub(between.matches(')').count());
        whole |= names.find(&tokens(between)).is_some();
        let cure = || {
            names
                .find(&tokens(near(text.get(cut.saturating_add(joint)..).unwrap_or_default())))
                .is_some_and(|(at, _, m)| at < 2 && is_cure(m))
        };
        let meat = |t: &Token| between.get(t.start..).is_some_and(|at| front(Sort::Meat, at).is_some());
        whole |= tokens(between).iter().any(meat) && cure();
        counted = cut;
        let next = cut.saturating_add(joint);
        let tail = text.get(next..).unwrap_or_default();
        let tail = tail.trim_start();
        let behind = amounts.get(amounts.partition_point(|f| f.start < next));
        let strength = behind.is_some_and(|f| {
            text.get(next..f.start).is_some_and(|t| t.trim().is_empty())
                && is_strength(&f.what, text.get(f.end..).unwrap_or_default(), names)
        });
        let starts = !strength
            && (front(Sort::Step, tail).is_some()
                || front(Sort::None, tail).is_some()
                || names
                    .find(&tokens(near(uncounted(tail))))
                    // A maker's name may stand before "cure".
                    .is_some_and(|(at, _, m)| at == 0 || at == 1 && is_cure(m))
                || front(Sort::Taste, tail).is_some()
                || tail.starts_with("some "));
        if whole && depth == 0 && starts {
            list.extend(text.get(begin..cut));
            begin = next;
            whole = false;
            // Behind an amount only one thing hangs on, but for what is counted: "two bay leaves, ten peppercorns".
            // Without an amount the rest may hold further names.
            if main.is_some() && uncounted(tail).len() < tail.len() {
                list.extend(tails(text.get(next..).unwrap_or_default(), names));
                return list;
            }
            if main.is_some() {
                break;
            }
        }
        from = next;
    }
    list.extend(text.get(begin..));
    list
}

/// A text without the bare number at its front.
fn uncounted(text: &str) -> &str {
    let mut input = text;
    match range(&mut input) {
        Ok(_) => input.trim_start(),
        Err(_) => text,
    }
}

/// `2 tsp each of thyme and pepper`, `thyme and pepper, 2 tsp each`: at every joint before a name.
fn apart<'a>(text: &'a str, names: &Names) -> Vec<&'a str> {
    const JOINTS: [&str; 6] = [", and ", ", ", " and ", " & ", " n ", " + "];
    let mut list = Vec::new();
    let (mut from, mut at) = (0, 0);
    while let Some((cut, joint)) = next_joint(text, at, &JOINTS) {
        at = cut.saturating_add(joint);
        let end = next_joint(text, at, &JOINTS).map_or(text.len(), |(next, _)| next);
        let named = |from: usize, to: usize| names.find(&tokens(text.get(from..to).unwrap_or_default()));
        if named(at, end).is_some_and(|(first, _, _)| first == 0) && named(from, cut).is_some() {
            list.extend(text.get(from..cut));
            from = at;
        }
    }
    list.extend(text.get(from..));
    list
}

/// The first joint from a place on, the longest of those that begin there: where it is, and its length.
pub fn next_joint(text: &str, from: usize, joints: &[&str]) -> Option<(usize, usize)> {
    let rest = text.get(from..)?;
    // Every joint begins with a mark or a blank, so only those places are held against them.
    let places = rest.char_indices().filter(|(_, c)| !c.is_alphanumeric());
    places
        .filter_map(|(at, _)| {
            let here = rest.get(at..)?;
            let longest = joints.iter().filter(|j| here.starts_with(**j)).map(|j| j.len()).max()?;
            Some((from.saturating_add(at), longest))
        })
        .next()
}
