//! Steps in plain words: `cure 24 h in the fridge, rinse, dry 2 h, smoke at 90 °C until 74 °C`.

use super::amount::Amount;
use super::clause::{What, next_joint, scan};
use super::names::{Names, tokens};
use super::words::{Sort, front};
use crate::quantity::exact::Exact;
use crate::quantity::{Span, Temperature, plain};
use crate::recipe::{Do, MOST_NOTE, Step};
use rust_decimal::{Decimal, dec};

/// What came of a clause.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Came {
    /// All of it is in the steps.
    Whole,
    /// Some of it, or nothing that takes time, is not.
    Part,
    /// A step with a time or a temperature is not: what comes before and after it does not make a plan.
    Hole,
}

/// Adds the steps of a clause to those before it.
pub fn add(text: &str, names: &Names, list: &mut Vec<Step>) -> Came {
    let mut came = Came::Whole;
    for part in acts(text) {
        match step(part, names, list) {
            Came::Whole => {}
            Came::Part if came == Came::Whole => came = Came::Part,
            Came::Part => {}
            Came::Hole => came = Came::Hole,
        }
    }
    came
}

/// A clause at its joints, where an act begins behind them.
fn acts(text: &str) -> Vec<&str> {
    const JOINTS: [&str; 9] = [
        ", and then ",
        " and then ",
        ", then ",
        ", and ",
        "; ",
        ", ",
        " and ",
        " then ",
        ". ",
    ];
    let mut list = Vec::new();
    let (mut from, mut at) = (0, 0);
    while let Some((cut, joint)) = next_joint(text, at, &JOINTS) {
        at = cut.saturating_add(joint);
        if text.get(at..).is_some_and(|tail| front(Sort::Act, tail).is_some()) {
            list.extend(text.get(from..cut));
            from = at;
        }
    }
    list.extend(text.get(from..));
    list
}

fn is(amount: &Amount, notes: &[&str]) -> bool {
    amount.parts.first().is_some_and(|(_, unit)| notes.contains(&unit.note))
}

/// How long a night is, minutes (judgement).
const NIGHT: Decimal = dec!(720);

/// Minutes; the longer end of a range.
fn minutes(amount: &Amount) -> Option<Decimal> {
    let (number, unit) = amount.parts.first()?;
    let number = number.other.is_none().then_some(number.value.high)?;
    number.times(unit.figures().next()?)
}

fn degrees(amount: &Amount) -> Option<Temperature> {
    let (number, unit) = amount.parts.first()?;
    let one = number.other.is_none() && number.value.is_point();
    Temperature::read(
        &format!("{} {}", plain(one.then_some(number.value.typical)?), unit.note),
        None,
    )
    .ok()
}

fn step(text: &str, names: &Names, list: &mut Vec<Step>) -> Came {
    let found: Vec<(usize, Amount)> = scan(text, names)
        .into_iter()
        .filter_map(|f| match f.what {
            What::Amount(a) | What::Again(a) if a.sort() == Sort::Other => Some((f.start, a)),
            _ => None,
        })
        .collect();
    let Some(read) = read(text, &found, list) else {
        // A time that leads nowhere may be a whole step; a turn is none.
        let turn = front(Sort::Act, text).is_some_and(|(word, _)| word.value == "turn");
        let timed = !found.is_empty() || text.contains("overnight");
        return if timed && !turn { Came::Hole } else { Came::Part };
    };
    list.extend(read);
    Came::Whole
}

/// The step of a part; `Some(None)` where it went into the one before.
fn read(text: &str, found: &[(usize, Amount)], list: &mut [Step]) -> Option<Option<Step>> {
    let (word, length) = front(Sort::Act, text)?;
    let lower = text.to_lowercase();
    let mut times = found.iter().filter(|(_, a)| is(a, &["time"]));
    let time = times.next();
    if times.next().is_some() {
        return None;
    }
    let lasts = match time {
        Some((_, amount)) => Some(Span::new(minutes(amount)?).ok()?),
        None if lower.contains("overnight") => Span::new(NIGHT).ok(),
        None => None,
    };
    if word.value == "turn" {
        return turn(&lower, lasts, list.last_mut()?).then_some(None);
    }
    let mut step = Step {
        act: act(word.value, &lower, list)?,
        lasts,
        turn_every: None,
        at: None,
        until: None,
        note: String::new(),
    };
    if step.act == Do::Cure && lasts.is_none() {
        return None;
    }
    for (start, amount) in found.iter().filter(|(_, a)| is(a, &["°F", "°C"])) {
        let before = lower.get(..*start).unwrap_or_default().trim_end();
        let last = before.rsplit(' ').next().unwrap_or_default();
        let place = match last {
            "at" => &mut step.at,
            "to" | "until" | "reaches" | "reads" | "hits" => &mut step.until,
            "of" if before.contains("internal") => &mut step.until,
            _ => return None,
        };
        if place.is_some() {
            return None;
        }
        *place = Some(degrees(amount)?);
    }
    // What the figures do not say stands in its words.
    let said = |t: &super::names::Token| {
        let here = text.get(t.start..).unwrap_or_default();
        let plain = [Sort::Harmless, Sort::Other]
            .iter()
            .any(|sort| front(*sort, here).is_some());
        t.start < length
            || plain
            || here.starts_with(|c: char| c.is_ascii_digit())
            || ["fridge", "refrigerator", "uncovered", "until", "inside"].contains(&t.text.as_str())
    };
    let exact = time.is_none_or(|(_, a)| !a.about && a.parts.first().is_some_and(|(n, _)| n.value.is_point()));
    let all = found.iter().all(|(_, a)| is(a, &["°F", "°C", "time"]));
    if !(exact && all && tokens(text).iter().all(said)) {
        step.note = text.chars().take(MOST_NOTE).collect();
    }
    Some(Some(step))
}

/// What is done, by the word and by what has been done before.
fn act(word: &str, text: &str, list: &[Step]) -> Option<Do> {
    let done = |acts: &[Do]| list.iter().any(|s| acts.contains(&s.act));
    let bare = text.contains("uncovered");
    match word {
        "cure" | "rest" if bare && !list.is_empty() => Some(Do::Dry),
        "cure" if list.is_empty() && !bare => Some(Do::Cure),
        "rinse" => Some(Do::Rinse),
        "soak" => Some(Do::Soak),
        "dry" => Some(Do::Dry),
        "smoke" => Some(Do::Smoke),
        "cook" => Some(Do::Cook),
        "rest" if done(&[Do::Smoke, Do::Cook]) => Some(Do::Rest),
        "chill" if !list.is_empty() => Some(Do::Chill),
        "pack" if !list.is_empty() => Some(Do::Pack),
        _ => None,
    }
}

/// Puts a turn into the step before it.
fn turn(text: &str, every: Option<Span>, step: &mut Step) -> bool {
    let day = || (text.contains("day") || text.contains("daily")).then_some(dec!(1440));
    let minutes = if text.contains("twice") {
        Some(dec!(720))
    } else {
        every.map(Span::base).or_else(day)
    };
    let (Some(minutes), Some(lasts)) = (minutes, step.lasts) else {
        return false;
    };
    // Within what a recipe takes, and at least once.
    let fits = minutes >= dec!(30) && minutes < lasts.base();
    let few = lasts.base().over(minutes).is_some_and(|n| n <= dec!(200));
    step.turn_every = Span::new(minutes).ok().filter(|_| fits && few);
    step.turn_every.is_some()
}
