//! One clause as a line: what is in it, how much, on which base, and which words were not understood.

use super::amount::Amount;
use super::cased::Cased;
use super::corrected::corrected;
use super::facts::{Of, Taken};
use super::figures::{counted, of_the_salt, or_before};
use super::line::Line;
use super::names::Names;
use super::said::{food_by_its_noun, has, headed, said, turned};
use super::scan::{Found, What, scan};
use super::token::{Token, tokens};
use super::words::Sort;
use crate::pantry::{Group, names_agent};
use crate::tables::INSTEAD;

/// Reads one clause.
pub fn line(text: &str, names: &Names) -> Line {
    if let Some(kept) = instead(text, names) {
        return Line {
            text: text.to_owned(),
            ..line(kept, names)
        };
    }
    if let Some(right) = corrected(text, names) {
        let read = line(&right, names);
        return Line {
            text: text.to_owned(),
            corrected: read.amount.is_some(),
            ..read
        };
    }
    let found = scan(text, names);
    let words = tokens(text);
    let mut line = Line {
        text: text.to_owned(),
        taken: Taken::Unread,
        amount: None,
        measure: String::new(),
        again: None,
        base: None,
        base_said: String::new(),
        shared: None,
        leads: false,
        each: false,
        take: None,
        meaning: None,
        called: String::new(),
        count: None,
        own: String::new(),
        strength: None,
        left: String::new(),
        either: false,
        unsaid: false,
        by_packet: false,
        changed: String::new(),
        strange: String::new(),
        meat: false,
        left_out: false,
        bare: false,
        of: None,
        each_or_all: false,
        apart: false,
        corrected: false,
        unused: String::new(),
        cased: Cased::default(),
    };
    let mut aside: Vec<(usize, usize)> = Vec::new();
    let mut used: Vec<(usize, usize)> = Vec::new();
    if let Some(end) = titled(text, &found, names) {
        used.push((0, end));
    }
    let mut timed = false;
    for f in &found {
        let again = matches!(f.what, What::Again(_));
        used.push((if again { or_before(text, f.start) } else { f.start }, f.end));
        match &f.what {
            What::Amount(a) | What::Again(a) if a.sort() == Sort::Other => timed = true,
            What::Base(a, each) if line.base.is_none() => {
                line.leads = line.amount.is_none();
                line.base = Some((a.clone(), *each));
                line.base_said = text.get(f.start..f.end).unwrap_or_default().trim().to_owned();
            }
            What::Take(a) if line.take.is_none() => line.take = a.sum(None, None),
            What::Amount(a) if line.amount.is_none() => {
                line.amount = Some(a.clone());
                line.measure = text.get(f.start..f.end).unwrap_or_default().trim().to_owned();
            }
            // "30 g + 1 tsp": a sum over two kinds of measure is not the same said again.
            What::Amount(_) if line.again.is_none() && is_added(text.get(..f.start).unwrap_or_default()) => {
                used.pop();
            }
            What::Amount(a) | What::Again(a) if line.again.is_none() => line.again = Some(a.clone()),
            // "(that's 2.5 % of 2 kg)": the working of the amount.
            What::Amount(a) | What::Again(a) if line.worked(a, text.get(..f.start).unwrap_or_default()) => {}
            What::Beside => {
                used.pop();
                aside.push((f.start, f.end));
            }
            // A third figure is not understood: it stays among the words that are left.
            _ => {
                used.pop();
            }
        }
    }
    // "5 cloves or 1 tsp powder": a number and a name come first.
    let again = found
        .iter()
        .find(|f| matches!(f.what, What::Again(_)))
        .map_or(0, |f| f.start);
    let first = text
        .get(..again)
        .filter(|t| line.amount.is_none() && names.find(&tokens(t)).is_some());
    if let Some((start, end, amount)) = first.and_then(|t| counted(t, &used, names)) {
        line.measure = text.get(start..end).unwrap_or_default().to_owned();
        line.amount = Some(amount);
        used.push((start, end));
    }
    // "cure no. 1 (1 tsp per 5 lb)": what stands in brackets alone is the amount.
    if line.amount.is_none() {
        line.amount = line.again.take();
        line.measure = text.to_owned();
    }
    // "1 bottle of wine (750 ml)": what the vessel holds is the amount.
    let weighable = |a: &Amount| matches!(a.sort(), Sort::Mass | Sort::Volume);
    if let (Some(first), Some(again)) = (&line.amount, &line.again)
        && first.sort() == Sort::Vague
        && weighable(again)
    {
        let count = first.parts.first().map(|(number, _)| number.value);
        let mut held = again.clone();
        if let Some(count) = count {
            held.times(count);
        }
        line.amount = Some(held);
        line.again = None;
    }
    line.pieces(text, &found, &mut used);
    if line.amount.is_none()
        && let Some((start, end, amount)) = of_the_salt(text, names)
    {
        line.measure = text.get(start..end).unwrap_or_default().to_owned();
        line.amount = Some(amount);
        line.of = Some(Of::Salt);
        used.push((start, end));
    }
    let within = |list: &[(usize, usize)], t: &Token| list.iter().any(|(from, to)| t.start >= *from && t.end <= *to);
    // What is said beside it is not weighed; a word of it that may be a cure still stands.
    let unsaid = |t: &Token| within(&aside, t) && (names.is_plain(t) || t.text.chars().any(|c| c.is_ascii_digit()));
    let mut rest: Vec<Token> = words
        .iter()
        .filter(|t| !within(&used, t) && !unsaid(t))
        .cloned()
        .collect();
    let named = names.find(&rest).filter(|(at, _, m)| {
        let start = rest.get(*at).map_or(0, |t| t.start);
        !of_the_meat(text, &found, start, m)
    });
    if let Some((at, length, meaning)) = named {
        line.meaning = Some(meaning.clone());
        let end = at.saturating_add(length);
        // "Sugar, brown" is brown sugar.
        let turned = turned(text, &rest, at, end, names);
        let end = if turned.is_some() { end.saturating_add(1) } else { end };
        line.meaning = turned.or(line.meaning);
        // "Bay salt", "port wine": the last word says what it is.
        let headed = line.meaning.as_ref().and_then(|m| headed(text, &rest, end, m, names));
        let end = if headed.is_some() { end.saturating_add(1) } else { end };
        line.meaning = headed.or(line.meaning);
        let named = rest.get(at..end).unwrap_or_default();
        line.called = said(text, named);
        let from = named.first().map_or(0, |t| t.start);
        rest.drain(at..end);
        line.pure(&mut rest);
        line.attributes(&found, from, &mut rest, names);
        line.said_twice(&mut rest, names);
    } else if let Some((_, unit)) = line.amount.as_mut().and_then(|a| a.parts.first_mut())
        && unit.sort == Sort::Count
    {
        // "6 cloves": the unit is the name.
        let name = unit.words.first().copied().unwrap_or_default();
        line.meaning = names.find(&tokens(name)).map(|(_, _, m)| m.clone());
        line.called = name.to_owned();
        if let (Some(_), Some(each)) = (&line.meaning, super::words::of(Sort::Count).next()) {
            *unit = each;
        }
    }
    line.cloves();
    line.aims(names);
    line.part_of(text);
    // "6 juniper berries", "2 oranges": a number and a name.
    if line.amount.is_none()
        && !timed
        && let Some((start, end, amount)) = counted(text, &used, names)
        && (line.meaning.is_some() || has(Sort::Meat, text, &rest) || food_by_its_noun(text).is_some())
    {
        line.measure = text.get(start..end).unwrap_or_default().to_owned();
        line.amount = Some(amount);
        rest.retain(|t| t.start < start || t.end > end);
    }
    line.each = rest.iter().any(|t| t.text == "each");
    line.settle(text, rest, timed, names);
    line
}

/// `Duck pastrami: 4 lb breasts`: where a title ends that stands before what is weighed. It names nothing that goes in.
fn titled(text: &str, found: &[Found], names: &Names) -> Option<usize> {
    let end = text.find(": ")?;
    let head = text.get(..end)?;
    let tail = text.get(end..)?;
    let weighed = |f: &&Found| matches!(&f.what, What::Amount(a) if a.sort() != Sort::Other);
    let first = found.iter().find(weighed)?;
    let behind = tokens(tail.get(first.end.checked_sub(end)?..)?);
    let meat = |words: &[Token], text: &str| has(Sort::Meat, text, words);
    let words = tokens(head);
    let free = first.start > end && !found.iter().any(|f| f.start < end) && words.len() <= TITLE;
    let named = names.find(&words).map(|(_, _, m)| m);
    let next = names.find(&behind);
    // "Wet cure: 2 l water": the head of a list, since the amount has a name of its own.
    let list = named.is_some_and(|m| m.items.len() > 1 && m.items.iter().all(|i| i.group == Group::Cure))
        && next.is_some_and(|(at, _, m)| at < 2 && m.items.iter().all(|i| i.group != Group::Cure));
    let title = named.is_none() && !names_agent(head) && (next.is_some() || meat(&behind, tail));
    (free && (list || title)).then_some(end)
}

fn is_added(before: &str) -> bool {
    let word = before
        .trim_end()
        .rsplit(' ')
        .next()
        .unwrap_or_default()
        .to_ascii_lowercase();
    ["+", "plus", "and", "&"].contains(&word.as_str())
}

/// A title has no more words (judgement).
const TITLE: usize = 6;

/// `1 lb venison (the rest is for chili)`, `3 lb elk, for the stew pot`: the amount is of the meat that stands right behind it,
/// and what is named behind a mark is another thing.
fn of_the_meat(text: &str, found: &[Found], name: usize, meaning: &super::names::Meaning) -> bool {
    let plain = meaning.food
        || meaning
            .items
            .iter()
            .all(|i| !matches!(i.group, Group::Cure | Group::Salt));
    let weight = |f: &&Found| matches!(&f.what, What::Amount(a) if a.sort() == Sort::Mass);
    // "2 kg venison plus half that of pork fat".
    let Some(end) = found.iter().find(weight).map(|f| f.end).filter(|_| plain) else {
        return false;
    };
    let between = text.get(end..name).unwrap_or_default();
    let lower = between.to_lowercase();
    let mark = lower
        .find(['(', ','])
        .or_else(|| lower.find(" for "))
        .or_else(|| lower.find(" with "))
        .or_else(|| lower.find(" and "))
        .or_else(|| lower.find(" plus "));
    let first = mark.and_then(|at| between.get(..at)).unwrap_or_default();
    let words = tokens(first);
    !words.is_empty() && words.len() <= 4 && has(Sort::Meat, first, &words)
}

/// `2 tbsp rum instead of the brandy`: what goes in. Where a cure is named it is asked about.
fn instead<'a>(text: &'a str, names: &Names) -> Option<&'a str> {
    let lower = text.to_ascii_lowercase();
    let (at, joint) = INSTEAD.iter().find_map(|w| Some((lower.find(w)?, w.len())))?;
    let (kept, out) = text.split_at_checked(at)?;
    let weighed = |t: &str| scan(t, names).iter().any(|f| matches!(f.what, What::Amount(_)));
    let plain = |t: &str| {
        let words = tokens(t);
        let known = words.iter().all(|w| names.is_plain(w));
        known
            && names
                .find(&words)
                .is_some_and(|(_, _, m)| !m.items.iter().any(|i| i.group == Group::Cure))
    };
    let out = out.get(joint..)?;
    (weighed(kept) && plain(kept) && plain(out) && !names_agent(text)).then_some(kept)
}
