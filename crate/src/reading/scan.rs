//! The amounts, bases and remarks in brackets that stand in a text, each with its place.

use super::amount::{Amount, amount, misspelt};
use super::names::{Names, is_done};
use super::number::{fraction, keyword, range};
use super::token::{Token, tokens};
use super::words::{Sort, front, take};
use crate::pantry;
use crate::quantity::exact::Exact;
use crate::quantity::gap;
use crate::tables::{AS_IT_COMES, GIVES, OF_WATER, SIZES};
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

/// Nobody writes down more in one breath, in bytes (judgement): what is longer is looked through once.
pub const RUN_ON: usize = 300;

/// Every amount and base of a text, in order.
pub fn scan(text: &str, names: &Names) -> Vec<Found> {
    let mut list: Vec<Found> = Vec::new();
    let mut at = 0;
    let mut before = ' ';
    let mut depth = 0_u32;
    while let Some(c) = text.get(at..).and_then(|rest| rest.chars().next()) {
        let rest = text.get(at..).unwrap_or_default();
        let begins = !before.is_alphanumeric() || (c == '/' && !before.is_ascii_digit()) || !c.is_alphanumeric();
        // "Salt,25 g" is no quarter of a gram.
        let mark = text.get(..at.saturating_sub(1)).and_then(|t| t.chars().next_back());
        let word = |c: Option<char>| c.is_some_and(char::is_alphabetic);
        let begins = begins
            && !(c.is_ascii_digit() && matches!(before, '.' | ',' | '/') && !(before == ',' && word(mark)))
            && !(c == ',' && word(Some(before)));
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
            let last = list.iter().rev().find_map(|f| match &f.what {
                What::Amount(a) => Some(a),
                _ => None,
            });
            let what = base(&mut input)
                .ok()
                .filter(|(amount, _)| {
                    stands_alone(rest, input, had, names)
                        && !in_so_much(text.get(..at).unwrap_or_default(), rest)
                        && !(rest.starts_with('/') && last.is_some_and(|last| is_like(last, amount)))
                })
                .map(|(amount, each)| {
                    of_the_water(&mut input);
                    What::Base(amount, each)
                })
                .or_else(|| {
                    input = rest.strip_prefix('/').map_or(rest, str::trim_start);
                    let again = input.len() < rest.len();
                    let mut amount = amount(&mut input)
                        .ok()
                        .or_else(|| one_of_it(text.get(..at).unwrap_or_default(), rest, &mut input, names))?;
                    if again && last.is_some_and(|last| is_same(last, &amount)) {
                        return Some(What::Again(amount));
                    }
                    let named = || is_named(text.get(..at).unwrap_or_default(), names);
                    let follows = || names.find(&tokens(near(input))).is_some();
                    cup_or_degree(
                        &mut amount,
                        text.get(..at).unwrap_or_default(),
                        rest,
                        input,
                        named,
                        follows,
                    );
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

/// Grams or millilitres of an amount that can mean one thing.
fn usual(amount: &Amount) -> Option<rust_decimal::Decimal> {
    let plain = matches!(amount.sort(), Sort::Mass | Sort::Volume);
    amount.sum(None, None).filter(|_| plain).map(|sum| sum.typical)
}

/// `4 oz/113 g`, `50 g salt / 25 g sugar`: of the same size, and so no base: that is many times as much.
fn is_like(first: &Amount, then: &Amount) -> bool {
    let most = usual(first).and_then(|n| n.times(rust_decimal::dec!(12)));
    first.sort() == then.sort() && most.zip(usual(then)).is_some_and(|(most, then)| then < most)
}

/// True where both are one amount, rounded.
fn is_same(first: &Amount, then: &Amount) -> bool {
    let apart = usual(first)
        .zip(usual(then))
        .and_then(|(a, b)| a.less(b)?.abs().over(a));
    first.sort() == then.sort() && apart.is_some_and(|a| a <= rust_decimal::dec!(0.07))
}

/// ` of water`, ` of the water`, ` water` behind a base.
fn of_the_water(input: &mut &str) {
    let tail = input.trim_start();
    let tail = OF_WATER
        .iter()
        .find_map(|w| tail.strip_prefix(w))
        .filter(|rest| !rest.starts_with(char::is_alphanumeric));
    *input = tail.unwrap_or(input);
}

/// `handful of parsley`, `good pinch mace`: one of it, where a clause begins with the measure. A measure that is an act as
/// well has its `of`.
fn one_of_it<'a>(before: &str, rest: &'a str, input: &mut &'a str, names: &Names) -> Option<Amount> {
    let before = before.trim_end();
    let begins = before.is_empty()
        || before.ends_with([',', ';', ':', '\n', '-', '–', '+', '&'])
        || before.ends_with(" and")
        || before.ends_with(" n");
    if !begins || !rest.starts_with(char::is_alphabetic) {
        return None;
    }
    let full = front(Sort::Heap, rest);
    let from = rest.get(full.map_or(0, |(_, length)| length)..)?.trim_start();
    let from = SIZES
        .iter()
        .find_map(|size| from.strip_prefix(size)?.strip_prefix(' '))
        .unwrap_or(from);
    let sorts = [Sort::Pinch, Sort::Vague, Sort::Volume, Sort::Mass];
    let (unit, length) = sorts
        .iter()
        .filter_map(|sort| front(*sort, from))
        .max_by_key(|(_, l)| *l)
        .or_else(|| misspelt(from))?;
    let mut behind = from.get(length..)?.trim_start_matches('.').trim_start();
    // "Cup and a half".
    let part = opt(preceded((keyword("and"), gap), fraction))
        .parse_next(&mut behind)
        .ok()?;
    let after = behind;
    let behind = behind.trim_start();
    let each = ["each ", "ea. ", "ea "].iter().find_map(|w| behind.strip_prefix(w));
    let behind = each.unwrap_or(behind);
    let of = behind.strip_prefix("of ");
    // A letter is a spoon or a cup; of a gram or a litre the number is lost.
    let letter = length < 2 && !from.starts_with(['T', 't', 'c', 'C']);
    let act = [Sort::Act, Sort::Step].iter().any(|sort| front(*sort, from).is_some()) || letter;
    if of.is_none() && act {
        return None;
    }
    let words = tokens(near(of.unwrap_or(behind)));
    let known = |t: &Token| !(is_done(&t.text) || AS_IT_COMES.contains(&t.text.as_str()));
    let named = words.iter().position(known);
    let meat = of.and_then(|t| front(Sort::Meat, t)).is_some();
    let name = named
        .and_then(|from| names.find(words.get(from..)?))
        .filter(|(at, _, _)| *at == 0);
    // "Vinegar - cup and a half", "thyme, sage - tsp each": the name stands before it.
    let line = before.rsplit(['\n', ';']).next().unwrap_or_default();
    let last = behind.is_empty() || ["each", "ea", "ea."].contains(&behind.trim_end());
    let ahead = || last && length > 1 && names.find(&tokens(line)).is_some();
    if name.is_none() && !meat && !ahead() {
        return None;
    }
    *input = if part.is_some() { after } else { from.get(length..)? };
    let mut number = range(&mut "1").ok()?;
    if let Some(value) = part.and_then(|part| number.value.map(|n| n.plus(part))) {
        number.value = value;
    }
    Some(Amount {
        parts: vec![(number, unit)],
        heap: full.map(|(word, _)| word),
        pack: None,
        about: false,
    })
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
    let gives = tokens(inside).first().is_some_and(|t| GIVES.contains(&t.text.as_str()));
    (kind || gives || other().is_some()).then_some(end.saturating_add(1))
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
fn cup_or_degree(
    amount: &mut Amount,
    before: &str,
    from: &str,
    behind: &str,
    named: impl Fn() -> bool,
    follows: impl Fn() -> bool,
) {
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
    // "3/4 c. (180 ml) vinegar": the bracket says it again.
    let behind = behind.trim_start();
    let behind = behind
        .strip_prefix('(')
        .and_then(|inside| inside.split_once(')'))
        .map_or(behind, |(_, rest)| rest);
    let next = behind.trim_start().chars().next();
    // "Salt - 1 c": a dash behind a name joins no two degrees.
    let ahead = before.trim_end().trim_end_matches(['-', '–']);
    let dash = ahead.len() < before.trim_end().len()
        && !ahead
            .trim_end()
            .ends_with(|c: char| c.is_numeric() || "°cCfF".contains(c));
    let hot = number.value.typical > CUPS
        || warm.contains(&word.as_str()) && !dash
        || (next.is_none_or(|c| !c.is_alphabetic()) || said.ends_with('C') && !follows()) && !named();
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
    let before = last_words(before);
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

/// Whether `of water`, `of ice water` stands in it.
fn of_water(text: &str) -> bool {
    let is = |word: &str, what| {
        word.trim_matches(|c: char| !c.is_alphanumeric())
            .eq_ignore_ascii_case(what)
    };
    let mut words = text.split_whitespace();
    words.any(|word| is(word, "of")) && words.take(2).any(|word| is(word, "water"))
}

/// `salt in a gallon of water`: how much water there is.
fn in_so_much(before: &str, rest: &str) -> bool {
    let lower = before.to_ascii_lowercase();
    let inside = [" in ", " with ", " into ", " and ", " to ", ", ", " plus "]
        .iter()
        .any(|w| lower.ends_with(w));
    inside && keyword("a").parse_peek(rest).is_ok() && of_water(rest)
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

/// The first few words of a text, up to a joint: as long as a name can be.
pub fn near(text: &str) -> &str {
    const LONGEST: usize = 60;
    let end = text
        .char_indices()
        .find(|(at, c)| *at >= LONGEST || matches!(c, ',' | ';' | '('))
        .map_or(text.len(), |(at, _)| at);
    text.get(..end).unwrap_or_default()
}

/// Where a word of the brine stands that speaks of this method, the last of them.
pub fn speaks_of(value: &str, text: &str) -> Option<usize> {
    let here = |at: usize| {
        let (word, length) = front(Sort::Brine, text.get(at..)?)?;
        (word.value == value).then_some(at.saturating_add(length))
    };
    let starts = tokens(text);
    starts.iter().rev().find_map(|t| here(t.start))
}

/// The end of a text, as far as a phrase reaches.
fn last_words(text: &str) -> &str {
    const PHRASE: usize = 160;
    let from = text.char_indices().rev().take(PHRASE).last().map_or(0, |(at, _)| at);
    text.get(from..).unwrap_or_default()
}
