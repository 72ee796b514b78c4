//! One clause as a line: what is in it, how much, on which base, and which words were not understood.

use super::amount::Amount;
use super::cased::Cased;
use super::clause::{What, scan};
use super::facts::{Of, Taken};
use super::figures::{counted, of_the_salt, or_before};
use super::line::Line;
use super::names::Names;
use super::said::{has, said, turned};
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
        strange: String::new(),
        meat: false,
        left_out: false,
        bare: false,
        of: None,
        each_or_all: false,
        apart: false,
        cased: Cased::default(),
    };
    let mut aside: Vec<(usize, usize)> = Vec::new();
    let mut used: Vec<(usize, usize)> = Vec::new();
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
    if let Some((at, length, meaning)) = names.find(&rest) {
        line.meaning = Some(meaning.clone());
        let end = at.saturating_add(length);
        // "Sugar, brown" is brown sugar.
        let turned = turned(text, &rest, at, end, names);
        let end = if turned.is_some() { end.saturating_add(1) } else { end };
        line.meaning = turned.or(line.meaning);
        let named = rest.get(at..end).unwrap_or_default();
        line.called = said(text, named);
        let from = named.first().map_or(0, |t| t.start);
        rest.drain(at..end);
        line.attributes(&found, from, &mut rest, names);
    } else if let Some(a) = line.amount.as_ref().filter(|a| a.sort() == Sort::Count) {
        // "6 cloves": the unit is the name.
        let unit = a.parts.first().and_then(|(_, u)| u.words.first());
        line.meaning = unit.and_then(|u| names.find(&tokens(u))).map(|(_, _, m)| m.clone());
        line.called = unit.copied().unwrap_or_default().to_owned();
    }
    line.cloves();
    line.aims(names);
    line.part_of(text);
    // "6 juniper berries", "2 oranges": a number and a name.
    if line.amount.is_none()
        && !timed
        && let Some((start, end, amount)) = counted(text)
        && (line.meaning.is_some() || has(Sort::Meat, text, &rest))
    {
        line.measure = text.get(start..end).unwrap_or_default().to_owned();
        line.amount = Some(amount);
        rest.retain(|t| t.start < start || t.end > end);
    }
    line.each = rest.iter().any(|t| t.text == "each");
    line.settle(text, rest, timed, names);
    line
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
