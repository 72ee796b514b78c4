//! One clause as a line: what is in it, how much, on which base, and which words were not understood.

use super::amount::{Amount, range};
use super::cased::Cased;
use super::clause::{What, scan};
use super::facts::{Of, Taken};
use super::names::{Meaning, Names};
use super::token::{Token, tokens};
use super::words::{Sort, Word, front};
use crate::pantry::Group;
use crate::quantity::Range;
use crate::quantity::exact::Exact;
use crate::tables::{
    ALL_MEAT, AND_WATER, APIECE, BEFORE_APIECE, BESIDE_STRENGTH, BY_PACKET, DOES, ENDS_APIECE, GIVES, INSTEAD,
    OF_ANOTHER, OR, PACKETS, PART_OF, TOGETHER,
};
use rust_decimal::{Decimal, dec};
use winnow::Parser;

/// A clause as read, before any question is answered.
#[derive(Clone, Debug)]
pub struct Line {
    /// As it was written.
    pub text: String,
    /// What it is taken for.
    pub taken: Taken,
    /// How much.
    pub amount: Option<Amount>,
    /// The same as it was written.
    pub measure: String,
    /// The same said again, in another measure.
    pub again: Option<Amount>,
    /// For how much meat or water, and true for `per`.
    pub base: Option<(Amount, bool)>,
    /// The same as it was written.
    pub base_said: String,
    /// The base of another thing in the same sentence, where this has none: it may be meant for both.
    pub shared: Option<(Amount, String)>,
    /// True where the base stands before all else, or with the meat.
    pub leads: bool,
    /// True for an amount that is for each of what the sentence names.
    pub each: bool,
    /// How much of a brine goes into the meat, per cent.
    pub take: Option<Range>,
    /// What it can be.
    pub meaning: Option<Meaning>,
    /// What it is called in the text.
    pub called: String,
    /// How many pieces, where their number is said beside their weight.
    pub count: Option<Range>,
    /// Its own name, where the pantry has none.
    pub own: String,
    /// Printed per cent of nitrite, where it was said.
    pub strength: Option<Range>,
    /// Words that were not understood.
    pub left: String,
    /// True for one of two that the text offers, while it is not settled which.
    pub either: bool,
    /// True for a cure without an amount.
    pub unsaid: bool,
    /// Words that are no plain ones, whatever the line is taken for.
    pub strange: String,
    /// True where the meat is named.
    pub meat: bool,
    /// True where it is told to leave out what is named, and nothing else is said.
    pub left_out: bool,
    /// True for a name without an amount, and without a word such as `to taste`.
    pub bare: bool,
    /// What its per cent is of, where it says so.
    pub of: Option<Of>,
    /// Two weights of the meat that the line can mean: of one piece, and of all.
    pub each_or_all: bool,
    /// True for what goes on at the fire or the table: not in the brine.
    pub apart: bool,
    /// Which cases of letters the text is written in.
    pub cased: Cased,
}

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
    (weighed(kept) && plain(kept) && plain(out) && !crate::pantry::names_agent(text)).then_some(kept)
}

/// `half the weight of the salt`: as a per cent of it, with its place.
fn of_the_salt(text: &str, names: &Names) -> Option<(usize, usize, Amount)> {
    let percent = super::words::of(Sort::Percent).next()?;
    tokens(text).iter().find_map(|t| {
        let rest = text.get(t.start..)?;
        let mut input = rest;
        let part = super::amount::share.parse_next(&mut input).ok()?;
        let input = input.trim_start().to_ascii_lowercase();
        let behind = OF_ANOTHER.iter().find_map(|of| input.strip_prefix(of))?;
        let next = tokens(behind);
        let (at, length, meaning) = names.find(next.get(..next.len().min(2))?)?;
        let salt = at == 0 && meaning.items.first().is_some_and(|i| i.group == Group::Salt);
        let last = next.get(length.checked_sub(1)?)?.end;
        let end = text.len().saturating_sub(behind.len()).saturating_add(last);
        let number = super::amount::Number {
            value: Range::point(part.times(Decimal::ONE_HUNDRED)?),
            other: None,
        };
        let amount = Amount {
            parts: vec![(number, percent)],
            heap: None,
            pack: None,
            about: false,
        };
        salt.then_some((t.start, end, amount))
    })
}

/// What a name and the word behind its comma mean together: `Salt, kosher`.
fn turned(text: &str, rest: &[Token], at: usize, end: usize, names: &Names) -> Option<Meaning> {
    let (last, next) = (rest.get(end.checked_sub(1)?)?, rest.get(end)?);
    if text.get(last.end..next.start)?.trim() != "," {
        return None;
    }
    let mut words = vec![next.clone()];
    words.extend(rest.get(at..end)?.iter().cloned());
    let (from, length, meaning) = names.find(&words)?;
    (from == 0 && length == words.len()).then(|| meaning.clone())
}

/// Where the `or` before an amount begins, if one is there.
fn or_before(text: &str, start: usize) -> usize {
    let before = text.get(..start).unwrap_or_default().trim_end();
    let word = before.rsplit(' ').next().filter(|w| w.eq_ignore_ascii_case("or"));
    word.map_or(start, |w| before.len().saturating_sub(w.len()))
}

/// A bare number before or behind the name of something that is counted.
fn counted(text: &str) -> Option<(usize, usize, Amount)> {
    let unit = super::words::of(Sort::Count).next()?;
    let first = text.find(|c: char| c.is_alphanumeric()).unwrap_or(0);
    let from = [
        text.find(|c: char| c.is_ascii_digit() || "½⅓⅔¼¾".contains(c)),
        Some(first),
        // "roe liver, one".
        text.rfind(", ").map(|at| at.saturating_add(2)),
    ];
    let (start, rest, number, length) = from.into_iter().flatten().find_map(|start| {
        let before = text.get(..start)?;
        // The digits of "E250" are no number of it.
        if before.ends_with(char::is_alphanumeric) {
            return None;
        }
        let before = before.trim_end();
        let rest = text.get(start..)?;
        let mut input = rest;
        let number = range(&mut input).ok()?;
        let length = rest.len().saturating_sub(input.len());
        // "#2", "no. 2" and "2nd" are names.
        let name =
            before.ends_with('#') || before.to_lowercase().ends_with("no.") || before.to_lowercase().ends_with(" no");
        let whole = input.is_empty() || input.starts_with(|c: char| !c.is_alphanumeric());
        (!name && whole && !input.starts_with('%')).then_some((start, rest, number, length))
    })?;
    let _ = rest;
    let amount = Amount {
        parts: vec![(number, unit)],
        heap: None,
        pack: None,
        about: false,
    };
    Some((start, start.saturating_add(length), amount))
}

fn has(sort: Sort, text: &str, rest: &[Token]) -> bool {
    rest.iter()
        .any(|t| text.get(t.start..).is_some_and(|at| front(sort, at).is_some()))
}

/// Where a bare number stands at the front: how many pieces.
fn lead(text: &str) -> Option<(usize, usize, Range)> {
    let start = text.find(|c: char| c.is_alphanumeric())?;
    let rest = text.get(start..)?;
    let mut input = rest;
    let number = range(&mut input).ok().filter(|n| n.other.is_none())?;
    let end = start.saturating_add(rest.len().saturating_sub(input.len()));
    // "5-lb" is no number of pieces.
    let whole = input.starts_with(|c: char| !c.is_alphanumeric());
    whole.then_some((start, end, number.value))
}

/// A sentence has more words than a name.
const SAYING: usize = 6;

/// `cure #1 (6.25)`: a bare number in brackets that a packet prints as per cent.
fn bracketed(text: &str) -> Option<Range> {
    let (inside, _) = text.split_once('(')?.1.split_once(')')?;
    let mut input = inside.trim();
    let number = range(&mut input)
        .ok()
        .filter(|n| n.other.is_none() && input.is_empty())?;
    let printed = number.value.low >= dec!(0.4) && number.value.high <= dec!(10);
    printed.then_some(number.value)
}

/// `per the bag`, `see packet`, `as the label says`: how much stands on what it came in.
fn by_the_packet(text: &str) -> bool {
    let words = tokens(text);
    let from = words.iter().position(|t| BY_PACKET.contains(&t.text.as_str()));
    from.and_then(|from| words.get(from..)).is_some_and(|rest| {
        rest.iter()
            .take(4)
            .any(|t| PACKETS.contains(&t.text.trim_end_matches("'s")))
    })
}

/// So many words say which of a thing it is.
const MOST_ATTRIBUTES: usize = 3;

impl Line {
    /// `3 x 400 g`, `two 5-lb roasts`, `4 pheasants (2¼ lb each)`, `1 goose, 8 lb`: pieces, and the weight of one or of all.
    fn pieces(&mut self, text: &str, found: &[super::clause::Found], used: &mut Vec<(usize, usize)>) {
        let Some(amount) = self
            .amount
            .as_mut()
            .filter(|a| matches!(a.sort(), Sort::Mass | Sort::Volume))
        else {
            return;
        };
        let first = found
            .iter()
            .find(|f| matches!(f.what, What::Amount(_) | What::Again(_)));
        let (Some(first), Some((start, end, count))) = (first, lead(text)) else {
            return;
        };
        if end > first.start {
            return;
        }
        let between = text.get(end..first.start).unwrap_or_default();
        let behind = text.get(first.end..).unwrap_or_default();
        let next = behind.trim_start_matches([')', ' ', ',']).to_lowercase();
        let close = between.trim().trim_matches(['-', '(', '~']).trim().to_lowercase();
        let vessel = front(Sort::Vague, behind.trim_start_matches([')', ' '])).is_some();
        let one = close.is_empty()
            || BEFORE_APIECE.contains(&close.as_str())
            || ENDS_APIECE.iter().any(|w| close.ends_with(w))
            || vessel
            || APIECE.iter().any(|word| next.starts_with(word));
        let several = count.high > Decimal::ONE;
        let glued = one
            && !close.ends_with(" of")
            && !close.ends_with(" at")
            && (close.is_empty() || close.chars().count() < 2);
        used.push((start, if glued { first.start } else { end }));
        if one {
            amount.times(count);
            if let Some(again) = self.again.as_mut().filter(|_| several) {
                again.times(count);
            }
        } else if several {
            self.count = Some(count);
            // "2 backstraps (about 4 lb)": nobody says of what.
            let bracket = between.contains('(') && !between.contains(')');
            let lower = text.to_lowercase();
            let said = TOGETHER.iter().any(|w| lower.contains(w));
            self.each_or_all = bracket && !said && count.is_point();
        }
    }

    /// `2.5 % of 2 kg`: the working of what stands before it; true where it is one.
    fn worked(&mut self, whole: &Amount, before: &str) -> bool {
        let Some(percent) = self.again.as_ref().filter(|a| a.sort() == Sort::Percent) else {
            return false;
        };
        if whole.sort() != Sort::Mass || !before.trim_end().to_lowercase().ends_with(" of") {
            return false;
        }
        let share = percent
            .sum(None, None)
            .and_then(|p| p.map(|p| p.over(Decimal::ONE_HUNDRED)));
        let Some(share) = share else { return false };
        let mut part = whole.clone();
        part.times(share);
        self.again = Some(part);
        true
    }

    /// Words between an amount and a name that is no salt and no cure say which of it: `sweet Hungarian paprika`.
    fn attributes(&self, found: &[super::clause::Found], name: usize, rest: &mut Vec<Token>, names: &Names) {
        let plain = |m: &Meaning| m.food || m.items.iter().all(|i| !matches!(i.group, Group::Cure | Group::Salt));
        let end = found
            .iter()
            .filter(|f| f.end <= name && matches!(f.what, What::Amount(_)))
            .map(|f| f.end)
            .max();
        let (Some(from), true) = (end, self.meaning.as_ref().is_some_and(plain)) else {
            return;
        };
        let between: Vec<&Token> = rest.iter().filter(|t| t.start >= from && t.end <= name).collect();
        let letters = |t: &&Token| t.text.chars().all(char::is_alphabetic) && !crate::pantry::names_agent(&t.text);
        if between.len() <= MOST_ATTRIBUTES && between.iter().all(letters) {
            rest.retain(|t| t.start < from || t.end > name || names.is_plain(t));
        }
    }

    /// `150 ppm sodium nitrite`: what the meat is to hold, and not what is weighed.
    fn aims(&mut self, names: &Names) {
        let ppm = self.amount.as_ref().is_some_and(|a| a.unit() == "ppm");
        let pure = self
            .meaning
            .as_ref()
            .is_some_and(|m| matches!(m.items.as_slice(), [one] if one.key == "pure-sodium-nitrite"));
        if ppm && pure {
            self.meaning = names.find(&tokens("nitrite")).map(|(_, _, m)| m.clone());
        }
    }

    /// `2 % of the meat`, `7 % to the weight of water`.
    fn part_of(&mut self, text: &str) {
        let percent = self.amount.as_ref().is_some_and(|a| a.sort() == Sort::Percent);
        if !percent || self.of.is_some() {
            return;
        }
        let lower = text.to_lowercase();
        let says = |what: &str| {
            PART_OF.iter().any(|of| lower.contains(&format!("{of}{what}")))
                || lower.contains(&format!("{what} weight"))
                || AND_WATER.iter().any(|and| lower.contains(&format!("{what} {and}")))
        };
        let named = |key: &str| {
            self.meaning
                .as_ref()
                .is_some_and(|m| m.items.iter().any(|i| i.key.starts_with(key)))
        };
        let water = says("water") || AND_WATER.iter().any(|and| lower.contains(and));
        let meat = ALL_MEAT.iter().any(|meat| says(meat));
        self.of = match (meat, water && !named("water")) {
            (true, true) => Some(Of::Both),
            (true, false) => Some(Of::Meat),
            (false, true) => Some(Of::Water),
            (false, false) if says("salt") && !named("salt") => Some(Of::Salt),
            (false, false) => None,
        };
    }

    /// `3 cl garlic` is cloves.
    fn cloves(&mut self) {
        let garlic = self
            .meaning
            .as_ref()
            .is_some_and(|m| m.items.iter().any(|i| i.key == "garlic-fresh"));
        let clove = super::words::of(Sort::Count).find(|w| w.words.contains(&"clove"));
        if let (true, Some(clove), Some(amount)) = (garlic, clove, self.amount.as_mut()) {
            for (_, unit) in amount.parts.iter_mut().filter(|(_, u)| u.words.contains(&"cl")) {
                *unit = clove;
            }
        }
    }

    /// What it is taken for, from what was found and the words that are left.
    fn settle(&mut self, text: &str, rest: Vec<Token>, timed: bool, names: &Names) {
        let rest = without(text, rest, Sort::Taste);
        let taste = rest.1;
        let mut rest = rest.0;
        let negated = has(Sort::None, text, &rest);
        let meat = has(Sort::Meat, text, &rest);
        self.meat = meat;
        let step = has(Sort::Step, text, &without(text, rest.clone(), Sort::Harmless).0);
        let first = text.get(rest.first().map_or(0, |t| t.start)..).unwrap_or_default();
        let acts = [text, first]
            .iter()
            .any(|t| front(Sort::Step, t).is_some() || front(Sort::Act, t).is_some_and(|(w, _)| !w.value.is_empty()));
        if self.amount.is_some() && self.meaning.is_some() {
            // What the meat is called beside an ingredient says nothing of it.
            if self.base.is_some() {
                rest = without(text, rest, Sort::Meat).0;
            }
            let packed = rest.iter().find_map(|t| front(Sort::Pack, text.get(t.start..)?));
            if let (Some(amount), Some((pack, _))) = (&mut self.amount, packed) {
                amount.pack = amount.pack.or(Some(pack));
            }
            rest = without(text, rest, Sort::Pack).0;
            rest = without(text, rest, Sort::Heap).0;
        }
        if self.meaning.is_none() && meat {
            rest = which_meat(text, &rest);
        }
        let left: Vec<Token> = without(text, rest.clone(), Sort::Harmless).0;
        // A word that is understood, and changes nothing, is not told as one that is not.
        // But a number, a unit or "twice" beside an amount changes it.
        let weighed = self.amount.is_some() && self.meaning.is_some();
        let figure = |t: &Token| {
            let at = text.get(t.start..).unwrap_or_default();
            let digits = at.starts_with(|c: char| c.is_ascii_digit());
            let word = [Sort::Number, Sort::Fraction, Sort::Third, Sort::Mass]
                .iter()
                .any(|sort| front(*sort, at).is_some());
            digits || word && !["a", "an", "one", "g", "ein", "eine", "une", "un"].contains(&t.text.as_str())
        };
        let strange: Vec<Token> = left
            .iter()
            .filter(|t| !names.is_plain(t) || weighed && figure(t))
            .cloned()
            .collect();
        self.strange = said(text, &strange);
        let known = self.meaning.is_some() || meat;
        let left = if known {
            without(text, strange.clone(), Sort::Vague).0
        } else {
            left
        };
        self.left = said(text, &left);
        self.left_out = negated && self.amount.is_none() && without(text, strange, Sort::None).0.is_empty();
        let liquid = self
            .meaning
            .as_ref()
            .and_then(|m| m.items.first())
            .is_some_and(|i| i.group == Group::Liquid);
        // "Mix until sticky" is a deed as well, where nothing is weighed in it.
        let acts =
            acts || self.amount.is_none() && DOES.iter().any(|d| tokens(text).first().is_some_and(|t| t.text == *d));
        let heads = self.amount.is_none() && !timed && heading(text);
        self.taken = match (&self.amount, &self.meaning) {
            (None, _) if heads => Taken::Heading,
            (None, _) if remark(text) && !self.is_cure() => Taken::Remark,
            (Some(_), None) if gives(text) && !crate::pantry::names_agent(text) => Taken::Remark,
            (Some(_), _) if negated && !self.only_beside(text) => Taken::Unread,
            (Some(_), Some(_)) if step && liquid => Taken::Step,
            (Some(_), Some(_)) => Taken::Item,
            (Some(a), None) if meat && a.sort() == Sort::Mass => Taken::Meat,
            (Some(a), None) if meat && a.sort() == Sort::Count => Taken::Meat,
            (Some(_), None) if acts || timed => Taken::Step,
            (Some(a), None) if matches!(a.sort(), Sort::Vague | Sort::Count) || left.is_empty() => Taken::Unread,
            (Some(_), None) => {
                (self.own, self.left) = name_of_own(text, &rest, &left);
                Taken::Item
            }
            (None, None) if self.base.is_some() && !(acts && timed) => Taken::Meat,
            // "Cure as the packet says" is a cure of which nobody says how much, and no deed.
            (None, Some(_)) if self.is_cure() && by_the_packet(text) => Taken::Taste,
            (None, _) if acts || timed || self.take.is_some() => Taken::Step,
            (None, Some(_)) if negated => Taken::Unread,
            (None, Some(_)) if front(Sort::Heading, text).is_some() => Taken::Heading,
            (None, Some(_)) if !taste && !self.is_cure() && text.split_whitespace().count() > 2 && is_title(text) => {
                Taken::Heading
            }
            (None, Some(_)) => {
                self.bare = !taste;
                Taken::Taste
            }
            (None, None) if front(Sort::Heading, text).is_some() => Taken::Heading,
            (None, None) if remark(text) => Taken::Remark,
            (None, None) if is_title(text) => Taken::Heading,
            (None, None) if meat && text.contains(|c: char| c.is_ascii_digit()) => Taken::Heading,
            (None, None) if self.strange.is_empty() => Taken::Remark,
            (None, None) => Taken::Unread,
        };
        if self.taken == Taken::Item && self.called.is_empty() {
            self.called.clone_from(&self.own);
        }
        if self.taken == Taken::Item && self.meaning.as_ref().is_some_and(|m| m.food) {
            self.own.clone_from(&self.called);
        }
        if self.taken == Taken::Meat {
            self.leads = true;
            self.left = said(text, &without(text, left, Sort::Meat).0);
        }
        self.strength();
        if self.taken == Taken::Taste && self.is_cure() && self.left.is_empty() && self.strength.is_none() {
            self.unsaid = true;
        }
    }

    /// The first line without an amount is a title: `My belly cure`.
    pub fn title(&mut self) {
        let bare = self.taken == Taken::Taste && self.bare && self.base.is_none();
        let words = self.text.split_whitespace().count();
        let named = matches!(self.taken, Taken::Unread | Taken::Remark)
            && self.amount.is_none()
            && (words > 2 || is_title(&self.text));
        if bare || named {
            self.taken = Taken::Heading;
        }
    }

    /// `1 tbsp brown sugar or maple syrup`, `1 oz saltpetre or 2 oz cure`: both as texts of their own.
    pub fn alternatives(&self, names: &Names) -> Option<(String, String)> {
        let (Taken::Item, Some(_)) = (self.taken, &self.amount) else {
            return None;
        };
        let lower = self.text.to_lowercase();
        let (at, joint) = OR.iter().find_map(|j| Some((lower.find(j)?, j.len())))?;
        let one = self.text.get(..at)?;
        let other = self.text.get(at.saturating_add(joint)..)?;
        if one.matches('(').count() > one.matches(')').count() {
            return None;
        }
        let named = |text: &str| names.find(&tokens(text)).map(|(_, _, m)| m.clone());
        let (first, second) = (named(one)?, named(other)?);
        let same =
            !first.food && !second.food && first.items.iter().any(|i| second.items.iter().any(|o| o.key == i.key));
        let weighed = scan(other, names)
            .iter()
            .any(|f| matches!(f.what, What::Amount(_) | What::Again(_)));
        let other = if weighed {
            other.to_owned()
        } else {
            format!("{} {other}", self.measure)
        };
        (!same).then(|| (one.to_owned(), other))
    }

    /// True for cups of garlic by one letter, which may be cloves.
    pub fn cup_or_clove(&self) -> bool {
        let garlic = self
            .meaning
            .as_ref()
            .is_some_and(|m| m.items.iter().any(|i| i.key == "garlic-fresh"));
        let letter = self.measure.trim_end_matches('.').ends_with([' ', 'c', 'C']);
        let cup = self.amount.as_ref().is_some_and(|a| a.unit() == "cup");
        garlic && cup && letter
    }

    /// `Shop cures are mostly salt, so I mix mine`: said of cures, where another line weighs one.
    pub fn said_of_cures(&self) -> bool {
        let any = self
            .meaning
            .as_ref()
            .is_some_and(|m| m.items.len() > 2 && m.items.iter().any(|i| i.group == Group::Cure));
        let words = tokens(&self.text);
        let verb = words
            .iter()
            .any(|t| ["are", "is", "were", "was"].contains(&t.text.as_str()));
        self.taken == Taken::Taste && any && verb && words.len() > SAYING && self.strange.is_empty()
    }

    /// True where the only figure of a cure is its strength.
    pub fn strength_alone(&self) -> bool {
        self.strength.is_some() && self.amount.as_ref().is_none_or(|a| a.sort() == Sort::Percent)
    }

    fn is_cure(&self) -> bool {
        self.meaning
            .as_ref()
            .is_some_and(|m| m.items.iter().any(|i| i.group == Group::Cure))
    }

    /// True where a negation stands behind the amount, after a comma or in brackets: `3 tbsp sugar, no nitrite in this one`.
    fn only_beside(&self, text: &str) -> bool {
        let at = text.find([',', '(', ';']).unwrap_or(text.len());
        let head = tokens(text.get(..at).unwrap_or_default());
        let clean = !head.iter().any(|t| {
            text.get(t.start..)
                .is_some_and(|rest| front(Sort::None, rest).is_some())
        });
        let said = text.find(self.measure.as_str()).is_some_and(|start| start < at);
        clean && said && (self.meaning.is_some() || self.meat) && !text.to_lowercase().contains("instead")
    }

    /// Takes on the amount that another line says for each.
    pub fn like(&mut self, other: &Self) {
        self.amount = other.amount.clone();
        self.measure = other.measure.clone();
        if self.base.is_none() {
            self.base = other.base.clone();
            self.base_said = other.base_said.clone();
            self.leads = other.leads;
        }
        self.each = true;
        self.bare = false;
        self.taken = Taken::Item;
    }

    /// True for a base that is for a part of the meat only, or by the pound.
    pub fn is_partial(&self) -> bool {
        self.base.as_ref().is_some_and(|(_, each)| *each || !self.leads)
    }

    /// `cure (6.25 %), 1 tsp`: the per cent is the packet's, not a share of the meat.
    fn strength(&mut self) {
        let cure = |m: &Meaning| m.items.first().is_some_and(|i| i.group == Group::Cure);
        if !self.meaning.as_ref().is_some_and(cure) {
            return;
        }
        let percent = |a: &Option<Amount>| a.as_ref().filter(|a| a.sort() == Sort::Percent)?.sum(None, None);
        match (percent(&self.amount), percent(&self.again)) {
            (Some(strength), None) if self.again.is_some() => {
                self.strength = Some(strength);
                self.amount = self.again.take();
                self.measure = self.text.clone();
            }
            (None | Some(_), Some(strength)) => {
                self.strength = Some(strength);
                self.again = None;
            }
            // Nobody weighs a hundredth of the meat in strong cure: the packet's print, and no amount.
            (Some(strength), None) if strength.low >= STRONG => {
                self.strength = Some(strength);
                self.amount = None;
                self.taken = Taken::Taste;
            }
            (None, None) => {
                self.strength = bracketed(&self.text);
                if self.strength.is_some() {
                    let words = self.left.split(' ').filter(|w| !w.bytes().all(|b| b.is_ascii_digit()));
                    self.left = words.collect::<Vec<&str>>().join(" ");
                }
            }
            _ => {}
        }
        if self.strength.is_some() {
            self.by_packet();
        }
    }

    /// With its strength beside it, a cure of any name is what its packet says.
    fn by_packet(&mut self) {
        let several = self.meaning.as_ref().is_some_and(|m| m.items.len() > 1);
        if let (true, Some(packet), Some(meaning)) = (
            several,
            crate::pantry::ingredient(crate::pantry::PACKET),
            self.meaning.as_mut(),
        ) {
            meaning.items = vec![packet];
        }
        let kept: Vec<&str> = self
            .left
            .split(' ')
            .filter(|w| !BESIDE_STRENGTH.contains(&w.to_lowercase().as_str()))
            .collect();
        self.left = kept.join(" ");
    }
}

/// Without the words before the animal or the cut: `feral pig`, `grain-fed wild boar belly`. No cure is named so.
fn which_meat(text: &str, rest: &[Token]) -> Vec<Token> {
    let meat = rest
        .iter()
        .position(|t| text.get(t.start..).is_some_and(|at| front(Sort::Meat, at).is_some()))
        .unwrap_or_default();
    let ahead = rest.get(..meat).unwrap_or_default();
    let close = |t: &Token| t.text.chars().all(char::is_alphabetic) && !crate::pantry::names_agent(&t.text);
    let joined = ahead
        .iter()
        .any(|t| ["and", "with", "plu", "plus", "in"].contains(&t.text.as_str()));
    if ahead.len() > MOST_ATTRIBUTES || joined || !ahead.iter().all(close) {
        return rest.to_vec();
    }
    rest.get(meat..).unwrap_or_default().to_vec()
}

/// True for a heading: its word is all of it, or it is all in capitals.
fn heading(text: &str) -> bool {
    let text = text.trim().trim_end_matches([':', '.', ' ']);
    let whole = front(Sort::Heading, text).is_some_and(|(_, length)| length == text.len());
    let letters = text.chars().filter(|c| c.is_alphabetic());
    let loud = text.chars().filter(|c| c.is_alphabetic()).count() > 3
        && letters.clone().all(char::is_uppercase)
        && text.split_whitespace().count() > 1;
    whole || loud
}

/// True for what is said beside a recipe.
fn remark(text: &str) -> bool {
    front(Sort::Remark, text.trim_start_matches(|c: char| !c.is_alphanumeric())).is_some()
}

/// True for how much it gives: `Makes about 3 lb of sticks`.
fn gives(text: &str) -> bool {
    tokens(text).first().is_some_and(|t| GIVES.contains(&t.text.as_str()))
}

/// True for a title: most of its longer words begin with a capital, and it is no sentence.
fn is_title(text: &str) -> bool {
    let words: Vec<&str> = text.split_whitespace().filter(|w| w.chars().count() > 3).collect();
    let capital = |w: &&&str| w.chars().next().is_some_and(char::is_uppercase);
    let capitals = words.iter().filter(capital).count();
    !text.ends_with('.')
        && !words.is_empty()
        && capitals.saturating_mul(3) >= words.len().saturating_mul(2)
        && text.chars().next().is_some_and(char::is_uppercase)
}

/// From here on a per cent on its own is the strength of a cure, and not a share of the meat (judgement).
const STRONG: Decimal = dec!(4);

/// The tokens without the words of a sort, and true where one was among them.
fn without(text: &str, rest: Vec<Token>, sort: Sort) -> (Vec<Token>, bool) {
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
fn name_of_own(text: &str, rest: &[Token], left: &[Token]) -> (String, String) {
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
fn said(text: &str, tokens: &[Token]) -> String {
    let words: Vec<&str> = tokens.iter().filter_map(|t| text.get(t.start..t.end)).collect();
    words.join(" ")
}
