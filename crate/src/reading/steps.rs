//! Steps in plain words, each read by itself: what, how long, how warm, until what.
//!
//! `cure 24 h in the fridge, rinse, dry 2 h, smoke at 90 °C until 74 °C`. What is not read stays in its place as a note.

use super::amount::Amount;
use super::clause::next_joint;
use super::facts::Lasts;
use super::model::ReadStep;
use super::names::Names;
use super::scan::{What, scan};
use super::warm::{Warm, degrees_in, is, temperatures};
use super::words::{Sort, Word, front};
use crate::quantity::exact::Exact;
use crate::quantity::{Range, Span, System, Temperature, fixed, plain};
use crate::recipe::{Do, MOST_NOTE, Step};
use crate::tables::{
    ACT_JOINTS, AFTER, BARE, BRINE, BY_WEIGHT, COLD_PLACE, DAILY, ENDS, EVERY, EVERY_OTHER, FROZEN, MIDDLE, MINCED,
    MOST, MOST_TIME, NIGHT, OFTEN, PICKLE, PREHEAT, STAGE, TURNS, TWICE_DAILY,
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
    /// Figures of it that no part of the step took: they stand in its note.
    pub unread: String,
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

    /// A figure that is kept in the note alone, and told.
    fn unread(&mut self, text: &str, start: usize, end: usize) {
        self.more = true;
        if !self.unread.is_empty() {
            self.unread.push_str(", ");
        }
        self.unread.push_str(text.get(start..end).unwrap_or_default().trim());
    }

    /// Bare figures that may be a temperature and stand in no place of one.
    fn bare_figures(&mut self, text: &str, names: &Names, degrees: &[(usize, usize)]) {
        let found = scan(text, names);
        for (at, digits) in super::number::figures(text) {
            let end = at.saturating_add(digits.len());
            let within = |from: usize, to: usize| from <= at && end <= to;
            let value = Decimal::from_str_exact(digits).ok();
            let more = text.get(..at).is_some_and(|t| t.ends_with("to "));
            let may = value.is_some_and(|n| (DEGREES[0] <= n || more) && n <= DEGREES[1]);
            let unit = text.get(end..).is_some_and(|t| {
                let t = t.trim_start();
                t.starts_with(['%', '/', '-']) || super::number::known_unit(t).is_some()
            });
            let taken =
                degrees.iter().any(|(from, to)| within(*from, *to)) || found.iter().any(|f| within(f.start, f.end));
            if may && !unit && !taken {
                self.unread(text, at, end);
            }
        }
    }

    /// True where a time or a temperature was read.
    pub fn has_figures(&self) -> bool {
        self.minutes.is_some() || self.at.is_some() || self.until.is_some()
    }
}

/// How long a night is, minutes (judgement).
const NIGHT_LASTS: (Decimal, Decimal) = (dec!(480), dec!(720));

/// The deeds of a clause. `before` are those of the text so far.
pub fn deeds(text: &str, names: &Names, units: System, before: &[Deed]) -> Vec<Deed> {
    let mut list: Vec<Deed> = Vec::new();
    let mut first = None;
    for part in acts(text, names, units) {
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
fn acts<'a>(text: &'a str, names: &Names, units: System) -> Vec<&'a str> {
    let mut list = Vec::new();
    let (mut from, mut at, mut seen, mut warm) = (0, 0, 0, false);
    while let Some((cut, joint)) = next_joint(text, at, &ACT_JOINTS) {
        at = cut.saturating_add(joint);
        let tail = text.get(at..).unwrap_or_default();
        let act = front(Sort::Act, tail)
            .is_some_and(|(word, _)| !(word.value.is_empty() || word.value == "turn" && tail.starts_with("turning")));
        // Each stretch between two joints is looked at once.
        let next = next_joint(text, at, &ACT_JOINTS).map_or(text.len(), |(next, _)| next);
        let so_far = text.get(seen..cut).unwrap_or_default();
        warm |=
            scan(so_far, names).iter().any(|f| degrees_in(&f.what)) || !temperatures(so_far, names, units).is_empty();
        seen = cut;
        let ahead = text.get(at..next).unwrap_or_default();
        let staged = warm
            && (tail.starts_with(|c: char| c.is_ascii_digit()) || tail.starts_with("at "))
            && match scan(ahead, names).iter().filter(|f| degrees_in(&f.what)).count() {
                0 => false,
                // ", 74 °C at the thigh" is the end of the same stage.
                1 => tail.starts_with("at ") || !MIDDLE.iter().any(|w| ahead.contains(w)),
                _ => true,
            };
        let lower = ahead.to_lowercase();
        let bare = temperatures(ahead, names, units);
        let staged = staged
            || warm && !bare.is_empty() && STAGE.iter().any(|w| lower.starts_with(w))
            || warm && bare.first().is_some_and(|t| t.start == 0) && !MIDDLE.iter().any(|w| ahead.contains(w));
        if act || staged {
            list.extend(text.get(from..cut));
            from = at;
            warm = false;
        }
    }
    list.extend(text.get(from..));
    list
}

/// `4 hours, up to a day`: from the one to the other.
fn wider(from: Range, to: Range) -> Option<Range> {
    let middle = from.low.plus(to.high)?.over(Decimal::TWO)?;
    (from.low < to.high).then(|| Range::new(from.low, middle, to.high))
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

/// Minutes in the cold from which on it is a cure, where nothing else is said (judgement).
const LONG: Decimal = dec!(360);

/// A rest that is no longer is one of what is done, minutes (judgement).
const REST: Decimal = dec!(180);

/// What is kept no warmer is chilled, °F (judgement).
const COOL: Decimal = dec!(55);

/// A bare figure between these may be a temperature.
const DEGREES: [Decimal; 2] = [dec!(30), dec!(600)];

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
        unread: String::new(),
        text: text.trim().chars().take(MOST_NOTE).collect(),
    };
    let times: Vec<(usize, usize, Amount)> = scan(text, names)
        .into_iter()
        .filter_map(|f| match f.what {
            What::Amount(a) | What::Again(a) if is(&a, &["time"]) => Some((f.start, f.end, a)),
            _ => None,
        })
        .collect();
    let mut last = None;
    for (start, end, amount) in &times {
        let ahead = lower.get(..*start).unwrap_or_default().trim_end();
        let behind = lower.get(*end..).unwrap_or_default().trim_start();
        // "20 min a pound", "a day per inch": of what is not known here.
        let by_weight = BY_WEIGHT.iter().any(|w| behind.starts_with(w));
        // "Once a day", "6 hours a day": how often, and not how long.
        let said = lower.get(*start..*end).unwrap_or_default();
        let often = (said.starts_with("a ") || said.starts_with("per ") || said.starts_with("each "))
            && (OFTEN.iter().any(|w| ahead.ends_with(w)) || last == Some(ahead.len()));
        last = Some(*end);
        if often {
            deed.more = true;
            continue;
        }
        // "Plus 2 days", "up to 24 hours": it goes with the time before it.
        if deed.more && ["plus", "+"].iter().any(|w| ahead.ends_with(w)) {
            deed.unread(text, *start, *end);
            continue;
        }
        // "After 2 h it is ready": when it begins, and not how long it takes.
        if AFTER.iter().any(|w| ahead.ends_with(w)) {
            deed.more = true;
            continue;
        }
        let every = EVERY.iter().any(|w| ahead.ends_with(w));
        match minutes(amount) {
            Some(every_minutes) if every => deed.turn = Some(every_minutes.typical),
            // A time by the weight of the meat is none until that is known.
            Some(_) if by_weight => deed.unread(text, *start, *end),
            Some(lasts) if deed.minutes.is_none() => {
                // "Overnight or up to 24 hours".
                let night = NIGHT.iter().any(|w| ahead.contains(w)) && MOST_TIME.iter().any(|w| ahead.ends_with(w));
                let from = Range::point(NIGHT_LASTS.0);
                deed.minutes = wider(from, lasts).filter(|_| night).or(Some(lasts));
            }
            Some(then) if MOST_TIME.iter().any(|w| ahead.ends_with(w)) => {
                deed.minutes = deed.minutes.and_then(|m| wider(m, then));
            }
            _ => deed.unread(text, *start, *end),
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
        deed.turn = if EVERY_OTHER.iter().any(|w| lower.contains(w)) {
            Some(dec!(2880))
        } else if TWICE_DAILY.iter().any(|w| lower.contains(w)) {
            Some(dec!(720))
        } else {
            DAILY.iter().any(|w| lower.contains(w)).then_some(dec!(1440))
        };
    }
    let degrees = temperatures(text, names, units);
    let places: Vec<(usize, usize)> = degrees.iter().map(|t| (t.start, t.end)).collect();
    warm(&mut deed, text, &lower, degrees);
    deed.bare_figures(text, names, &places);
    let fire = PREHEAT.iter().any(|w| lower.starts_with(w));
    let short = deed.minutes.is_some_and(|m| m.high <= REST);
    deed.act = verb
        .filter(|_| !fire)
        .and_then(|w| {
            if w.value == "rest" && short {
                Some(Do::Rest)
            } else {
                act(w.value, &lower, before)
            }
        })
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
    if deed.act.is_none() && !deed.turns && !fire && (deed.until.is_some() || deed.at.is_some()) {
        let hot =
            deed.until.is_some_and(|t| t.base() > dec!(120)) || deed.at.is_some_and(|(_, t)| t.base() > dec!(140));
        let cold = deed.until.or(deed.at.map(|(_, t)| t)).is_some_and(|t| t.base() <= COOL);
        deed.act = if hot { Some(Do::Cook) } else { cold.then_some(Do::Chill) };
    }
    if deed.act == Some(Do::Cure) && FROZEN.iter().any(|w| lower.contains(w)) {
        deed.act = Some(Do::Pack);
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
fn warm(deed: &mut Deed, text: &str, lower: &str, found: Vec<Warm>) {
    let mut last = 0;
    let fire = PREHEAT.iter().any(|w| lower.starts_with(w));
    for (n, Warm { start, end, low, high }) in found.iter().enumerate() {
        let between = lower.get(last..*start).unwrap_or_default();
        let next = found.get(n.saturating_add(1)).map_or(lower.len(), |t| t.start);
        let behind = lower.get(*end..next).unwrap_or_default();
        last = *end;
        let says_end = |text: &str| ENDS.iter().any(|w| text.contains(w));
        // "Up to 225 till 155": the fire, where the meat has a figure of its own.
        let later = found
            .iter()
            .skip(n.saturating_add(1))
            .any(|t| lower.get(*end..t.start).is_some_and(says_end));
        let to = !later
            && !fire
            && (between.trim_end().ends_with(" to")
                || between.trim() == "to"
                || between.trim_end().ends_with(" à") && lower.contains("cuire"));
        // "225 °F (107 °C)", "180 °C/160 °C fan": the same again.
        let again = |t: &Temperature| t.base().less(high.base()).is_some_and(|d| d.abs() <= SAME);
        let fan = behind.trim_start().starts_with("fan");
        let beside = between.trim().is_empty() || ["(", "/", "=", "or", "c/", "f/"].contains(&between.trim());
        if fan || beside && (deed.at.is_some_and(|(_, at)| again(&at)) || deed.until.as_ref().is_some_and(again)) {
            continue;
        }
        let middle = MIDDLE.iter().any(|w| behind.trim_start().starts_with(w));
        let ends = middle || to || !fire && says_end(between);
        let below = MOST.iter().any(|w| between.trim_end().ends_with(w));
        let most = below && !ends;
        if ends && deed.until.is_none() {
            // Of a range the hotter end: the meat is to be at least that.
            deed.until = Some(*high);
        } else if !ends && deed.at.is_none() {
            deed.at = Some((if most { None } else { Some(*low) }, *high));
        } else {
            deed.unread(text, *start, *end);
        }
    }
}

/// Two temperatures no further apart, in degrees Fahrenheit, are one in two scales, rounded (judgement).
const SAME: Decimal = dec!(5);

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
