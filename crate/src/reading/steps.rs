//! Steps in plain words, each read by itself: what, how long, how warm, until what.
//!
//! `cure 24 h in the fridge, rinse, dry 2 h, smoke at 90 °C until 74 °C`. What is not read stays in its place as a note.

use super::amount::{Amount, range};
use super::clause::{What, next_joint, scan};
use super::facts::Lasts;
use super::model::ReadStep;
use super::names::Names;
use super::words::{Sort, Word, front, of};
use crate::order::InOrder;
use crate::quantity::exact::Exact;
use crate::quantity::{Range, Span, System, Temperature, fixed, plain};
use crate::recipe::{Do, MOST_NOTE, Step};
use crate::tables::{
    ACT_JOINTS, AFTER, BARE, BEFORE_DEGREES, BRINE, COLD_PLACE, DAILY, ENDS, EVERY, MIDDLE, MINCED, MOST, NIGHT,
    PICKLE, TURNS, TWICE_DAILY,
};
use rust_decimal::{Decimal, dec};

/// One deed of a text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Deed {
    /// What is done; nothing where it is none of the card's.
    pub act: Option<Do>,
    /// Minutes.
    pub minutes: Option<Range>,
    /// Degrees Celsius around it; the first nothing where only a most is said.
    pub at: Option<(Option<Temperature>, Temperature)>,
    /// Degrees in the middle.
    pub until: Option<Temperature>,
    /// Minutes between turns.
    pub turn: Option<Decimal>,
    /// True for a turn and nothing else.
    pub turns: bool,
    /// True where its words say more than its figures.
    pub more: bool,
    /// As it was written.
    pub text: String,
}

impl Deed {
    /// How long it takes, in the person's units; `2 to 3 h` stays a range.
    fn lasts(&self, units: System) -> Option<Lasts> {
        let minutes = self.minutes?;
        if minutes.is_point() {
            let time = Span::new(minutes.typical).map(|s| s.show(units).text);
            return time.ok().map(|time| Lasts::Span { time });
        }
        let hours = |d: Decimal| {
            d.over(dec!(60))
                .map(|h| plain(h.half_away(1)))
                .unwrap_or_else(|| fixed(d, 0))
        };
        Some(Lasts::Hours {
            from: hours(minutes.low),
            to: hours(minutes.high),
        })
    }

    /// As a fact for reading.
    pub fn fact(&self, units: System) -> ReadStep {
        let celsius = |t: Temperature| {
            let degrees = t.base().less(dec!(32)).and_then(|d| d.over(dec!(1.8)));
            plain(degrees.unwrap_or_default().half_away(2))
        };
        ReadStep {
            act: self.act,
            minutes: self
                .minutes
                .map(|m| (plain(m.low.half_away(3)), plain(m.high.half_away(3)))),
            at: self
                .at
                .map(|(low, high)| (low.map(celsius).unwrap_or_default(), celsius(high))),
            until: self.until.map(celsius),
            lasts: self.lasts(units),
            heat: self.at.map(|(_, high)| high.show(units).text),
            inside: self.until.map(|t| t.show(units).text),
        }
    }

    /// True where the other goes on with what this one began, and only one of them says how: `pat dry, leave on a rack
    /// overnight`.
    fn is_same(&self, other: &Self) -> bool {
        self.act.is_some()
            && self.act == other.act
            && !(self.has_figures() && other.has_figures())
            && !(self.turns || other.turns)
    }

    fn join(&mut self, other: Self) {
        let said = [&*self, &other].map(|d| (d.more || !d.has_figures()).then_some(d.text.as_str()));
        let said: Vec<&str> = said.into_iter().flatten().collect();
        let said = said.join(", ").chars().take(MOST_NOTE).collect();
        self.text = said;
        self.minutes = self.minutes.or(other.minutes);
        self.at = self.at.or(other.at);
        self.until = self.until.or(other.until);
        self.turn = self.turn.or(other.turn);
        self.more = !self.text.is_empty();
    }

    /// True where a time or a temperature was read.
    pub fn has_figures(&self) -> bool {
        self.minutes.is_some() || self.at.is_some() || self.until.is_some()
    }
}

/// How long a night is, minutes (judgement).
const NIGHT_LASTS: (Decimal, Decimal) = (dec!(480), dec!(720));

/// From here on a bare number behind `at` is a temperature of a smoker or an oven in degrees Fahrenheit.
const BARE_DEGREES: (Decimal, Decimal) = (dec!(100), dec!(600));

/// The deeds of a clause. `before` are those of the text so far.
pub fn deeds(text: &str, names: &Names, units: System, before: &[Deed]) -> Vec<Deed> {
    let mut list: Vec<Deed> = Vec::new();
    let mut first = None;
    for part in acts(text, names) {
        let so_far: Vec<&Deed> = before.iter().chain(&list).collect();
        let deed = deed(part, names, units, &so_far, first);
        first = deed.act.or(first);
        match list.last_mut().filter(|last| last.is_same(&deed)) {
            Some(last) => last.join(deed),
            None => list.push(deed),
        }
    }
    list
}

/// A clause at its joints, where an act begins behind them, or another time after a temperature.
fn acts<'a>(text: &'a str, names: &Names) -> Vec<&'a str> {
    let mut list = Vec::new();
    let (mut from, mut at, mut seen, mut warm) = (0, 0, 0, false);
    while let Some((cut, joint)) = next_joint(text, at, &ACT_JOINTS) {
        at = cut.saturating_add(joint);
        let tail = text.get(at..).unwrap_or_default();
        let act = front(Sort::Act, tail)
            .is_some_and(|(word, _)| !(word.value.is_empty() || word.value == "turn" && tail.starts_with("turning")));
        // Each stretch between two joints is looked at once.
        let next = next_joint(text, at, &ACT_JOINTS).map_or(text.len(), |(next, _)| next);
        warm |= scan(text.get(seen..cut).unwrap_or_default(), names)
            .iter()
            .any(|f| degrees_in(&f.what));
        seen = cut;
        let ahead = text.get(at..next).unwrap_or_default();
        let staged = warm
            && (tail.starts_with(|c: char| c.is_ascii_digit()) || tail.starts_with("at "))
            && scan(ahead, names).iter().any(|f| degrees_in(&f.what));
        if act || staged {
            list.extend(text.get(from..cut));
            from = at;
            warm = false;
        }
    }
    list.extend(text.get(from..));
    list
}

fn degrees_in(what: &What) -> bool {
    matches!(what, What::Amount(a) | What::Again(a) if is(a, &["°F", "°C"]))
}

fn is(amount: &Amount, notes: &[&str]) -> bool {
    amount.parts.first().is_some_and(|(_, unit)| notes.contains(&unit.note))
}

fn minutes(amount: &Amount) -> Option<Range> {
    let (number, unit) = amount.parts.first()?;
    let each = unit.figures().next()?;
    let mut sum = number.value.map(|n| n.times(each))?;
    for (number, unit) in amount.parts.iter().skip(1) {
        let each = unit.figures().next()?;
        sum = sum.plus(number.value.map(|n| n.times(each))?)?;
    }
    number.other.is_none().then_some(sum)
}

fn degrees(value: Decimal, unit: &str) -> Option<Temperature> {
    Temperature::read(&format!("{} {unit}", plain(value)), None).ok()
}

/// A temperature with its place in the text.
struct Warm {
    start: usize,
    end: usize,
    low: Temperature,
    high: Temperature,
}

/// Every temperature, with a degree sign or, behind `at` or `until`, without.
fn temperatures(text: &str, names: &Names, units: System) -> Vec<Warm> {
    let mut list: Vec<Warm> = Vec::new();
    for found in scan(text, names) {
        if let What::Amount(a) | What::Again(a) = &found.what
            && is(a, &["°F", "°C"])
            && let Some((number, unit)) = a.parts.first()
            && let (Some(low), Some(high)) = (
                degrees(number.value.low, unit.note),
                degrees(number.value.high, unit.note),
            )
        {
            list.push(Warm {
                start: found.start,
                end: found.end,
                low,
                high,
            });
        }
    }
    if units != System::Us {
        return list;
    }
    let lower = text.to_ascii_lowercase();
    for word in BEFORE_DEGREES {
        for (at, _) in lower.match_indices(word) {
            let start = at.saturating_add(word.len());
            let mut input = text.get(start..).unwrap_or_default();
            let whole = input.len();
            let Ok(number) = range(&mut input) else { continue };
            let end = start.saturating_add(whole.saturating_sub(input.len()));
            let bare = input.trim_start().to_ascii_lowercase();
            let unit = bare.starts_with(['°', '%', '/'])
                || of(Sort::Other).flat_map(|w| w.words).filter(|w| **w != "in").any(|w| {
                    bare.strip_prefix(&w.to_ascii_lowercase())
                        .is_some_and(|r| !r.starts_with(char::is_alphanumeric))
                });
            let fits = BARE_DEGREES.0 <= number.value.low && number.value.high <= BARE_DEGREES.1;
            let known = list.iter().any(|t| t.start < end && start < t.end);
            if !unit
                && fits
                && !known
                && let (Some(low), Some(high)) = (degrees(number.value.low, "°F"), degrees(number.value.high, "°F"))
            {
                list.push(Warm { start, end, low, high });
            }
        }
    }
    list.order_by_key(|t| t.start);
    list
}

/// Minutes in the cold from which on it is a cure, where nothing else is said (judgement).
const LONG: Decimal = dec!(360);

/// The deed of a part of a clause.
fn deed(text: &str, names: &Names, units: System, before: &[&Deed], first: Option<Do>) -> Deed {
    let lower = text.to_lowercase();
    let trimmed = text.trim_start_matches(|c: char| !c.is_alphabetic());
    let verb = verb(trimmed);
    let mut deed = Deed {
        act: None,
        minutes: None,
        at: None,
        until: None,
        turn: None,
        turns: verb.is_some_and(|w| w.value == "turn"),
        more: false,
        text: text.trim().chars().take(MOST_NOTE).collect(),
    };
    let times: Vec<(usize, usize, Amount)> = scan(text, names)
        .into_iter()
        .filter_map(|f| match f.what {
            What::Amount(a) | What::Again(a) if is(&a, &["time"]) => Some((f.start, f.end, a)),
            _ => None,
        })
        .collect();
    for (start, end, amount) in &times {
        let ahead = lower.get(..*start).unwrap_or_default().trim_end();
        let by_weight = lower
            .get(*end..)
            .is_some_and(|rest| rest.trim_start().starts_with("per ") || rest.starts_with('/'));
        // "After 2 h it is ready": when it begins, and not how long it takes.
        if AFTER.iter().any(|w| ahead.ends_with(w)) {
            deed.more = true;
            continue;
        }
        let every = EVERY.iter().any(|w| ahead.ends_with(w));
        match minutes(amount) {
            Some(every_minutes) if every => deed.turn = Some(every_minutes.typical),
            // A time by the weight of the meat is none until that is known.
            Some(_) if by_weight => deed.more = true,
            Some(lasts) if deed.minutes.is_none() => deed.minutes = Some(lasts),
            _ => deed.more = true,
        }
        deed.more |= amount.about;
    }
    let night = NIGHT.iter().any(|w| lower.contains(w));
    if deed.minutes.is_none() && night {
        deed.minutes = NIGHT_LASTS
            .0
            .plus(NIGHT_LASTS.1)
            .and_then(|s| s.over(Decimal::TWO))
            .map(|m| Range::new(NIGHT_LASTS.0, m, NIGHT_LASTS.1));
    }
    let turned = TURNS.iter().any(|w| lower.contains(w));
    if turned && deed.turn.is_none() {
        deed.turn = if TWICE_DAILY.iter().any(|w| lower.contains(w)) {
            Some(dec!(720))
        } else {
            DAILY.iter().any(|w| lower.contains(w)).then_some(dec!(1440))
        };
    }
    warm(&mut deed, &lower, temperatures(text, names, units));
    deed.act = verb
        .and_then(|w| act(w.value, &lower, before))
        .or(if verb.is_none() { first } else { None });
    // "Breasts in for 36 h in the fridge": what lies so long in the cold and is not said to do anything else cures.
    let cold = COLD_PLACE.iter().any(|place| lower.contains(place));
    if deed.act.is_none() && verb.is_none() && cold && deed.minutes.is_some_and(|m| m.low >= LONG) {
        deed.act = Some(Do::Cure);
    }
    // "Boil the brine": nothing of it cooks the meat.
    if deed.act == Some(Do::Cook) && of_the_brine(&deed, text, &lower) {
        deed.act = None;
    }
    if deed.act.is_none() && !deed.turns && (deed.until.is_some() || deed.at.is_some()) {
        let hot =
            deed.until.is_some_and(|t| t.base() > dec!(120)) || deed.at.is_some_and(|(_, t)| t.base() > dec!(140));
        deed.act = Some(if hot { Do::Cook } else { Do::Chill });
    }
    if deed.turns && deed.minutes.is_some() {
        deed.act = Some(Do::Cure);
    }
    let exact = deed.minutes.is_none_or(|m| m.is_point()) && deed.at.is_none_or(|(low, high)| low == Some(high));
    let words = super::token::tokens(text).len();
    deed.more |= !exact || words > FEW || deed.act == Some(Do::Cure) && !deed.has_figures();
    deed
}

/// True where a pickle is boiled and no meat with it.
fn of_the_brine(deed: &Deed, text: &str, lower: &str) -> bool {
    let meat = super::token::tokens(text)
        .iter()
        .any(|t| text.get(t.start..).is_some_and(|at| front(Sort::Meat, at).is_some()));
    let short = deed.minutes.is_none_or(|m| m.high <= SHORT);
    short && deed.until.is_none() && !meat && PICKLE.iter().any(|w| lower.contains(w))
}

/// A brine is boiled for no longer, minutes (judgement).
const SHORT: Decimal = dec!(30);

/// A deed of so many words says no more than its figures (judgement).
const FEW: usize = 6;

/// The act's word: at the front, or else the first in it.
fn verb(text: &str) -> Option<&'static Word> {
    let at_front = front(Sort::Act, text).map(|(word, _)| word);
    at_front.filter(|w| !w.value.is_empty()).or_else(|| {
        let starts = super::token::tokens(text);
        let mut found = starts
            .iter()
            .filter_map(|t| front(Sort::Act, text.get(t.start..)?).map(|(word, _)| word));
        found
            .find(|w| !w.value.is_empty() && !["cure", "rest"].contains(&w.value))
            .or_else(|| {
                let mut all = starts
                    .iter()
                    .filter_map(|t| front(Sort::Act, text.get(t.start..)?).map(|(word, _)| word));
                all.find(|w| !w.value.is_empty())
            })
    })
}

/// Puts the temperatures where they belong: around the meat, or in its middle.
fn warm(deed: &mut Deed, lower: &str, found: Vec<Warm>) {
    let mut last = 0;
    for (n, Warm { start, end, low, high }) in found.iter().enumerate() {
        let between = lower.get(last..*start).unwrap_or_default();
        let next = found.get(n.saturating_add(1)).map_or(lower.len(), |t| t.start);
        let behind = lower.get(*end..next).unwrap_or_default();
        last = *end;
        let to = between.trim_end().ends_with(" to")
            || between.trim() == "to"
            || between.trim_end().ends_with(" à") && lower.contains("cuire");
        let middle = MIDDLE.iter().any(|w| behind.trim_start().starts_with(w));
        let ends = middle || to || ENDS.iter().any(|w| between.contains(w));
        let below = MOST.iter().any(|w| between.trim_end().ends_with(w));
        let most = below && !ends;
        if ends && deed.until.is_none() {
            // Of a range the hotter end: the meat is to be at least that.
            deed.until = Some(*high);
        } else if !ends && deed.at.is_none() {
            deed.at = Some((if most { None } else { Some(*low) }, *high));
        } else {
            deed.more = true;
        }
    }
}

/// What is done, by the word and by what has been done before.
fn act(word: &str, text: &str, before: &[&Deed]) -> Option<Do> {
    let done = |acts: &[Do]| before.iter().any(|s| s.act.is_some_and(|a| acts.contains(&a)));
    let heated = done(&[Do::Smoke, Do::Cook]);
    let ground = before
        .iter()
        .any(|d| MINCED.iter().any(|w| d.text.to_lowercase().contains(w)));
    let bare = BARE.iter().any(|w| text.contains(w));
    Some(match word {
        "cure" | "rest" if bare && !heated && (!before.is_empty() || word == "rest") => Do::Dry,
        "cure" if heated || ground => Do::Chill,
        "cure" => Do::Cure,
        "brine" => Do::Cure,
        "rinse" => Do::Rinse,
        // In a brine it cures; in water it loses salt.
        "soak" if BRINE.iter().any(|w| text.contains(w)) => Do::Cure,
        "soak" => Do::Soak,
        "hang" if heated => Do::Rest,
        "dry" | "hang" => Do::Dry,
        "smoke" => Do::Smoke,
        "cook" => Do::Cook,
        "rest" if heated => Do::Rest,
        "rest" if done(&[Do::Cure]) => Do::Dry,
        "rest" => Do::Cure,
        "chill" => Do::Chill,
        "pack" => Do::Pack,
        _ => return None,
    })
}

/// The steps of the card: in the order of the text, each note in its place.
pub fn card(deeds: &[Deed], cured: bool) -> (Vec<Step>, Vec<String>) {
    let mut steps: Vec<Step> = Vec::new();
    let mut ahead: Vec<String> = Vec::new();
    let mut beside: Vec<String> = Vec::new();
    let note = |step: &mut Step, text: &str, beside: &mut Vec<String>| {
        let joined = if step.note.is_empty() {
            text.to_owned()
        } else {
            format!("{}. {text}", step.note)
        };
        if joined.chars().count() > MOST_NOTE {
            beside.push(text.to_owned());
        } else {
            step.note = joined;
        }
    };
    for deed in deeds {
        let turn = deed.turn.and_then(|m| Span::new(m).ok());
        let fits = |step: &Step| {
            let lasts = step.lasts.map(Span::base);
            turn.zip(lasts).is_some_and(|(every, lasts)| {
                every.base() >= dec!(30)
                    && every.base() < lasts
                    && lasts.over(every.base()).is_some_and(|n| n <= dec!(200))
            })
        };
        let act = deed.act.filter(|_| !deed.turns || deed.has_figures());
        let same = steps
            .last()
            .is_some_and(|s| Some(s.act) == act && s.act == Do::Cure && s.lasts.is_none() && s.at.is_none());
        let begins = cured
            && act.is_some()
            && act != Some(Do::Cure)
            && steps.is_empty()
            && deeds.iter().any(|d| d.act == Some(Do::Cure));
        match act {
            // What goes before the cure is a note to it: the cure is the first of the plan.
            None | Some(_) if act.is_none() || begins => match steps.last_mut() {
                Some(step) => {
                    if deed.turns && fits(step) {
                        step.turn_every = turn;
                    } else {
                        note(step, &deed.text, &mut beside);
                    }
                }
                None => ahead.push(deed.text.clone()),
            },
            Some(act) => {
                let made = Step {
                    act,
                    lasts: deed.minutes.and_then(|m| Span::new(m.high).ok()),
                    turn_every: None,
                    // Of what is to stay cold the warmer end, of a fire the cooler one: the less safe of both.
                    at: deed.at.map(|(low, high)| {
                        if matches!(act, Do::Smoke | Do::Cook) {
                            low.unwrap_or(high)
                        } else {
                            high
                        }
                    }),
                    until: deed.until,
                    note: String::new(),
                };
                let old = if same { steps.pop() } else { None };
                let mut step = made;
                let said = old
                    .map(|o| o.note)
                    .into_iter()
                    .filter(|n| !n.is_empty())
                    .chain(std::mem::take(&mut ahead));
                for text in said.collect::<Vec<_>>() {
                    note(&mut step, &text, &mut beside);
                }
                if fits(&step) {
                    step.turn_every = turn;
                }
                if deed.more {
                    note(&mut step, &deed.text, &mut beside);
                }
                steps.push(step);
            }
            None => {}
        }
    }
    beside.splice(0..0, ahead);
    (steps, beside)
}
