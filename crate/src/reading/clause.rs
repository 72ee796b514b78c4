//! A text into clauses, each with one thing in it: at line ends, at the ends of sentences, and where the next amount,
//! ingredient or step begins. Nothing of the text is lost.

use super::amount::{Amount, amount, keyword, range};
use super::names::Names;
use super::token::tokens;
use super::words::{Sort, front, speaks_of, take};
use crate::pantry;
use crate::quantity::gap;
use winnow::combinator::{alt, fail, opt, preceded};
use winnow::prelude::*;

/// An amount or a base, with its place in the text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Found {
    /// Where it begins, in bytes.
    pub start: usize,
    /// Where it ends.
    pub end: usize,
    /// What it is.
    pub what: What,
}

/// What was found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum What {
    /// `2 tsp`.
    Amount(Amount),
    /// The same thing said again: in brackets, or behind `or`.
    Again(Amount),
    /// `per lb`, `for 10 lb`; true for `per`.
    Base(Amount, bool),
    /// `inject 10 %`: how much of a brine goes into the meat.
    Take(Amount),
    /// Said beside it, and never weighed: `(or 10 oz flaked)`, `(the ounce-to-25-pounds kind)`, `in two pieces`.
    Beside,
}

/// Every amount and base of a text, in order.
pub fn scan(text: &str, names: &Names) -> Vec<Found> {
    let mut list: Vec<Found> = Vec::new();
    let mut at = 0;
    let mut before = ' ';
    let mut depth = 0_u32;
    while let Some(c) = text.get(at..).and_then(|rest| rest.chars().next()) {
        let rest = text.get(at..).unwrap_or_default();
        let begins = !before.is_alphanumeric() || (c == '/' && !before.is_ascii_digit()) || !c.is_alphanumeric();
        let begins = begins && !(c.is_ascii_digit() && matches!(before, '.' | ',' | '/'));
        let step = if c == '('
            && let Some(length) = beside(rest)
        {
            list.push(Found {
                start: at,
                end: at.saturating_add(length),
                what: What::Beside,
            });
            at = at.saturating_add(length);
            before = ')';
            continue;
        } else if !begins {
            None
        } else if let Some(skipped) = numbered(rest) {
            Some(skipped)
        } else {
            let had = list.iter().any(|f| matches!(f.what, What::Amount(_)));
            let mut input = rest;
            let what = base(&mut input)
                .ok()
                .filter(|_| stands_alone(rest, input, had, names))
                .map(|(amount, each)| What::Base(amount, each))
                .or_else(|| {
                    input = rest;
                    let mut amount = amount(&mut input).ok()?;
                    let named = || is_named(text.get(..at).unwrap_or_default(), names);
                    cup_or_degree(&mut amount, text.get(..at).unwrap_or_default(), rest, input, named);
                    if goes_in(&amount, text.get(..at).unwrap_or_default(), input, names) {
                        return Some(What::Take(amount));
                    }
                    if amount.sort() == Sort::Count && cut_into(text.get(..at).unwrap_or_default()) {
                        return Some(What::Beside);
                    }
                    Some(if depth > 0 || follows_or(text.get(..at).unwrap_or_default()) {
                        What::Again(amount)
                    } else {
                        What::Amount(amount)
                    })
                });
            let length = rest.len().saturating_sub(input.len());
            what.map(|what| {
                list.push(Found {
                    start: at,
                    end: at.saturating_add(length),
                    what,
                });
                length
            })
        };
        match c {
            '(' | '[' => depth = depth.saturating_add(1),
            ')' | ']' => depth = depth.saturating_sub(1),
            _ => {}
        }
        at = at.saturating_add(step.unwrap_or(c.len_utf8()).max(1));
        before = text.get(..at).and_then(|t| t.chars().next_back()).unwrap_or(' ');
    }
    list
}

/// The length of a bracket that offers another thing, or says which kind is meant. Where it may name a cure it is read.
fn beside(text: &str) -> Option<usize> {
    let (end, _) = text.char_indices().take(BRACKET).find(|(_, c)| *c == ')')?;
    let inside = text
        .get(1..end)
        .filter(|t| !t.contains('(') && !pantry::names_agent(t))?;
    let kind = tokens(inside)
        .iter()
        .any(|t| ["kind", "sort", "type"].contains(&t.text.as_str()));
    let other = || {
        let mut rest = inside.trim_start().strip_prefix("or ")?;
        amount(&mut rest).ok()?;
        let words = tokens(rest);
        let says = |t: &super::token::Token| {
            rest.get(t.start..)
                .is_some_and(|at| front(Sort::Harmless, at).is_none())
        };
        words.iter().any(says).then_some(())
    };
    (kind || other().is_some()).then_some(end.saturating_add(1))
}

/// So many letters are looked through for the end of a bracket.
const BRACKET: usize = 120;

/// `in two pieces`, `cut into 4 slices`: how it lies, and not how much of it.
fn cut_into(before: &str) -> bool {
    let word = before.trim_end().rsplit(|c: char| !c.is_alphanumeric()).next();
    word.is_some_and(|w| ["in", "into"].iter().any(|i| w.eq_ignore_ascii_case(i)))
}

/// True where a line names an ingredient and nothing that is done: `white sugar` in front of `2 c`.
fn is_named(before: &str, names: &Names) -> bool {
    let line = before.rsplit(['\n', ';']).next().unwrap_or_default();
    let words = tokens(line);
    let does = |t: &super::token::Token| {
        line.get(t.start..)
            .is_some_and(|at| front(Sort::Act, at).is_some() || front(Sort::Step, at).is_some())
    };
    names.find(&words).is_some_and(|(at, length, _)| {
        let inside = at..at.saturating_add(length);
        let mut others = words.iter().enumerate().filter(|(i, _)| !inside.contains(i));
        !others.any(|(_, word)| does(word))
    })
}

/// A bare `c` is a cup before a name, or behind one at the end, and a degree behind `at` or above what a bowl takes.
fn cup_or_degree(amount: &mut Amount, before: &str, from: &str, behind: &str, named: impl Fn() -> bool) {
    let said = from.get(..from.len().saturating_sub(behind.len())).unwrap_or_default();
    let bare = said.trim_end_matches('.');
    let letter = bare.ends_with(['c', 'C'])
        && !bare
            .trim_end_matches(['c', 'C'])
            .ends_with(|c: char| c.is_alphabetic() || c == '°');
    let [(number, unit)] = amount.parts.as_mut_slice() else {
        return;
    };
    if !letter || bare.contains('°') {
        return;
    }
    let word = before
        .trim_end()
        .rsplit(|c: char| c.is_whitespace())
        .next()
        .unwrap_or_default()
        .to_lowercase();
    let warm = [
        "at", "to", "until", "below", "above", "under", "over", "between", "and", "reaches", "than", "–", "-",
    ];
    let next = behind.trim_start().chars().next();
    let hot = number.value.typical > CUPS
        || warm.contains(&word.as_str())
        || next.is_none_or(|c| !c.is_alphabetic()) && !named();
    let sort = if hot { Sort::Other } else { Sort::Volume };
    let key = if hot { "°C" } else { "us_cup" };
    if let Some(row) = super::words::of(sort).find(|w| w.note == key && w.words.contains(&"C") | w.words.contains(&"c"))
    {
        *unit = row;
    }
}

/// Nobody writes more cups than this with one letter (judgement).
const CUPS: rust_decimal::Decimal = rust_decimal::dec!(12);

/// True for the per cent of a pump or a pick-up: such a word stands before it or right behind, and no ingredient.
fn goes_in(amount: &Amount, before: &str, behind: &str, names: &Names) -> bool {
    let percent = amount.parts.first().is_some_and(|(_, unit)| unit.words.contains(&"%"));
    if !percent {
        return false;
    }
    let speaks = |text: &str| ["pumped", "pick_up"].iter().filter_map(|m| speaks_of(m, text)).max();
    // "inject a brine of 10 % salt" is salt.
    let end = behind.find([',', ';', ':', '(', '.']).unwrap_or(behind.len());
    let next = tokens(behind.get(..end).unwrap_or_default());
    let near = |most: usize| next.get(..next.len().min(most)).unwrap_or_default();
    let last = near(1).first().map_or(0, |t| t.end);
    names.find(near(4)).is_none()
        && (speaks(behind.get(..last).unwrap_or_default()).is_some()
            || speaks(before).is_some_and(|from| names.find(&tokens(before.get(from..).unwrap_or_default())).is_none()))
}

/// `#1`, `no. 2`: a number that is a name. Its length.
fn numbered(text: &str) -> Option<usize> {
    let mut input = text;
    let hash = |input: &mut &str| -> ModalResult<()> {
        alt(('#'.void(), (keyword("no"), opt('.')).void(), keyword("number"))).parse_next(input)
    };
    (hash, gap).parse_next(&mut input).ok()?;
    let digits = input.bytes().take_while(u8::is_ascii_digit).count();
    (digits == 1).then(|| text.len().saturating_sub(input.len()).saturating_add(1))
}

fn follows_or(before: &str) -> bool {
    let before = before.trim_end();
    before.ends_with('=')
        || before
            .rsplit(' ')
            .next()
            .is_some_and(|word| word.eq_ignore_ascii_case("or"))
}

/// `per lb`, `for each 5 lb`, `for 10 lb`, `into 5 lb`.
fn base(input: &mut &str) -> ModalResult<(Amount, bool)> {
    let each = alt((take(Sort::Rate).value(true), take(Sort::Base).value(false))).parse_next(input)?;
    let _ = gap(input);
    let before = *input;
    let found = match amount(input) {
        Ok(found) => found,
        Err(_) => {
            // "per lb": one of it. The grammar of amounts is used by putting the one before the unit.
            *input = before;
            let (word, length) = front(Sort::Mass, input)
                .or_else(|| front(Sort::Volume, input))
                .ok_or(())
                .or_else(|()| fail.parse_next(input))?;
            *input = input.get(length..).unwrap_or_default();
            let mut one = "1";
            Amount {
                parts: vec![(range(&mut one)?, word)],
                heap: None,
                pack: None,
                about: false,
            }
        }
    };
    match found.sort() {
        Sort::Mass => Ok((found, each)),
        Sort::Volume if each => Ok((found, each)),
        _ => fail.parse_next(input),
    }
}

/// True for a base that is no amount of an ingredient: `a pound of salt`, `with 2 oz of sugar`.
fn stands_alone(text: &str, rest: &str, had: bool, names: &Names) -> bool {
    let loose = preceded(
        opt(keyword("to")),
        alt((keyword("a"), keyword("each"), keyword("every"))),
    )
    .parse_peek(text)
    .is_ok();
    if loose && !had {
        return false;
    }
    // "3 g/kg pepper", "3 g per kg pepper": a rate, whatever is named behind it.
    if text.starts_with('/') || keyword("per").parse_peek(text).is_ok() {
        return true;
    }
    // Up to the next mark or number, no ingredient is named.
    let end = rest
        .find(|c: char| c.is_ascii_digit() || matches!(c, ',' | ';' | ':' | '(' | '.'))
        .unwrap_or(rest.len());
    let follows = tokens(near(rest.get(..end).unwrap_or_default()));
    let near = follows.get(..follows.len().min(3)).unwrap_or_default();
    match names.find(near) {
        Some((_, _, meaning)) => meaning.items.first().is_some_and(|i| i.key == "water"),
        None => true,
    }
}

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
    let behind = part.trim_start_matches('.');
    if behind.starts_with(|c: char| c.is_ascii_digit()) && behind.len() < part.len() {
        part
    } else {
        behind.trim_start_matches(mark)
    }
}

/// At a full stop that ends a sentence: a blank and a capital or a digit behind it, no short word before it.
fn sentences(text: &str) -> Vec<&str> {
    const SHORT: [&str; 46] = [
        "pkg", "pkt", "hr", "hrs", "min", "mins", "temp", "deg", "tbls", "tbl", "qts", "pts", "gals", "ozs", "doz",
        "med", "lg", "sm", "st", "mr", "mrs", "dr", "vs", "etc", "incl", "max", "wt", "vol", "gm", "kgs", "no",
        "approx", "ca", "fl", "oz", "lb", "lbs", "tsp", "tbsp", "tbs", "pt", "qt", "gal", "g", "kg", "ml",
    ];
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
        let next = after.trim_start().chars().next();
        let ends = after.starts_with(char::is_whitespace)
            // Messages begin a sentence with a small letter: behind a word of some length that is one too.
            && next.is_some_and(|n| n.is_uppercase() || n.is_ascii_digit() || n.is_lowercase() && (word.len() > 2 || word.ends_with(|c: char| c.is_ascii_digit()) || before_is_mark(text, at)))
            && !SHORT.iter().any(|s| word.eq_ignore_ascii_case(s));
        if ends {
            list.extend(text.get(from..at));
            from = at.saturating_add(1);
        }
    }
    list.extend(text.get(from..));
    list
}

/// True for a per cent or a bracket before the full stop.
fn before_is_mark(text: &str, at: usize) -> bool {
    text.get(..at).is_some_and(|t| t.ends_with(['%', ')']))
}

/// A sentence at the joints before each further amount, name or step.
fn parts<'a>(text: &'a str, names: &Names) -> Vec<&'a str> {
    // "No pink salt, just 2 cups of salt": what is left out ends at the comma.
    let bare = text.trim_start();
    if front(Sort::None, bare).is_some()
        && let Some((head, tail)) = text.split_once(',')
        && tail.chars().any(char::is_alphanumeric)
    {
        let mut list = vec![head];
        list.extend(parts(tail, names));
        return list;
    }
    let found = scan(text, names);
    let weighed = |f: &Found| matches!(&f.what, What::Amount(a) | What::Again(a) if a.sort() != Sort::Other);
    let act =
        |t: &str| front(Sort::Act, t).is_some_and(|(word, _)| !word.value.is_empty()) || front(Sort::Step, t).is_some();
    // A step is one sentence, whatever it names.
    if !found.iter().any(weighed)
        && (act(bare.trim_start_matches(|c: char| !c.is_alphabetic())) || found.iter().any(|f| !weighed(f)))
    {
        return vec![text];
    }
    let mut cuts = Vec::new();
    let (mut begin, mut last, mut main, mut name_first) = (0, 0, false, false);
    for found in found {
        let between = text.get(last..found.start).unwrap_or_default();
        let behind = text.get(found.end..).unwrap_or_default();
        if found.what == What::Beside || main && is_strength(&found.what, behind, names) {
            continue;
        }
        if matches!(&found.what, What::Amount(a) if a.sort() != Sort::Other) {
            let named = |from: usize| {
                let before = text.get(from..found.start).unwrap_or_default();
                names.find(&tokens(before)).is_some()
            };
            if !main {
                (main, name_first) = (true, named(begin));
            } else if name_first || says_something(between) {
                let joint = if name_first {
                    first_joint(between)
                } else {
                    last_joint(between)
                };
                begin = last.saturating_add(joint);
                cuts.push(begin);
                name_first = named(begin);
            }
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
        let joint = before.trim_end().strip_suffix(',').map(str::len)?;
        let (_, _, one) = names.find(&tokens(before))?;
        let end = behind.find([',', ';', ':', '(', '.', '\n']).unwrap_or(behind.len());
        let (_, _, other) = names.find(&tokens(behind.get(..end)?))?;
        let same = one.items.iter().any(|i| other.items.iter().any(|j| i.group == j.group));
        (!same).then(|| joint.saturating_add(1))
    });
    joint.unwrap_or(0)
}

/// True for a per cent that is printed beside what was just named: no other name stands behind it.
fn is_strength(what: &What, behind: &str, names: &Names) -> bool {
    let percent = matches!(what, What::Amount(a) | What::Again(a) if a.parts.first().is_some_and(|(_, u)| u.words.contains(&"%")));
    if !percent {
        return false;
    }
    let end = behind.find([',', ';', '.', '\n']).unwrap_or(behind.len());
    let next = tokens(behind.get(..end).unwrap_or_default());
    let agent = |t: &str| matches!(t, "nitrite" | "nitrate" | "sodium" | "potassium" | "strength");
    let rest: Vec<_> = next.iter().filter(|t| !agent(&t.text)).cloned().collect();
    names.find(&rest).is_none() && (rest.is_empty() || next.iter().any(|t| agent(&t.text)))
}

/// True where words stand that are more than joints.
fn says_something(text: &str) -> bool {
    const JOINTS: [&str; 8] = ["and", "or", "plus", "with", "of", "about", "i", "e"];
    tokens(text).iter().any(|t| !JOINTS.contains(&t.text.as_str()))
}

const JOINTS: [&str; 8] = [", ", " and ", " plus ", " with ", " in ", " then ", " & ", ": "];

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
    while let Some((cut, joint)) = next_joint(text, from, &[", then ", ", and ", ", ", " and ", " & ", " then "]) {
        // What lies between the joints is looked at once.
        let between = text.get(counted..cut).unwrap_or_default();
        depth = depth
            .saturating_add(between.matches('(').count())
            .saturating_sub(between.matches(')').count());
        whole |= names.find(&tokens(between)).is_some();
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
                    .is_some_and(|(at, _, _)| at == 0)
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

/// The first few words of a text, up to a joint: as long as a name can be.
fn near(text: &str) -> &str {
    const LONGEST: usize = 60;
    let end = text
        .char_indices()
        .find(|(at, c)| *at >= LONGEST || matches!(c, ',' | ';' | '('))
        .map_or(text.len(), |(at, _)| at);
    text.get(..end).unwrap_or_default()
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
    const JOINTS: [&str; 4] = [", and ", ", ", " and ", " & "];
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
