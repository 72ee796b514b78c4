//! Reads a recipe that somebody wrote or said, in lines or in prose, and says what it was taken for.
//!
//! ```text
//! text    = clause { (line end | ";" | full stop | joint before the next amount, name or step) clause }
//! clause  = { word } [ amount ] { word } [ name ] { word } { base | again | word }     in any order
//! amount  = [about] [heap] range [heap] [pack] unit { ("+" | "plus" | "and" | blank) smaller amount } [pack]
//! range   = number [ ("-" | "–" | "to" | "or") number ]  |  "between" number "and" number
//! number  = digits as in a field (`1/2`, `½`, `1 1/2`, `1½`, `1,5`) or words, [ "and" fraction ]
//! heap    = heaping, heaped, rounded, generous, scant, level …       unit = tsp, lb, g, %, pinch, clove …
//! base    = ("per" | "for each" | "/" …) amount of meat or water  |  ("for" | "into" | "to" …) weight of meat
//! again   = the same said twice: "(about 30 g)", "or 30 g"
//! take    = ("inject" | "pump" | "pick-up" …) { word } per cent  |  per cent ("pump" | "pick-up" …)
//! each    = an amount with "each": for every name of its sentence
//! step    = act { word } [ time ] [ "at" temperature ] [ ("to" | "until" …) temperature ]
//! ```
//!
//! All words are in `tables/words.csv`, all names in the pantry. A spoon is level where nothing else is said. What can mean several things
//! stays a range over all of them until its question is answered. A clause with words that were not understood says
//! which; one that was not read is shown as such; none is dropped. A negation (`no salt`, `instead of`) is never read.

mod amount;
mod asks;
mod card;
mod clause;
mod dangers;
mod doubts;
mod facts;
mod line;
mod names;
mod recipe;
mod steps;
mod token;
mod tongue;
mod unwrap;
mod weigh;
mod words;

use crate::dose::Verdict;
use crate::pantry;
use crate::quantity::{Code, Figure, Problem, Wrong};
use crate::recipe::{Do, Recipe};
use crate::tables::OUTSIDE;
use crate::weigh::Settings;
use serde::{Deserialize, Serialize};

pub use dangers::{Danger, DangerKey};
pub use facts::{Beside, Lasts, LineFlag, NoRecipe, Offer, Question, RowOf, Thing};
pub use line::{Of, Taken};
pub use tongue::Tongue;
pub(crate) use words::{Sort, Word};

/// Longest text that is read, in bytes.
pub const MOST_TEXT: usize = 6000;
/// Most clauses that are read.
const MOST_CLAUSES: usize = 120;

/// Content of `read_recipe`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskReading {
    /// What was pasted.
    pub text: String,
    /// Answers so far: the key of a question and the value of a choice, or what was typed.
    #[serde(default)]
    pub answers: Vec<(String, String)>,
    /// What the recipe is called where its text has no title. Where nothing is handed in either, it is called by its tag.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<String>"))]
    pub untitled: String,
    /// The user's settings.
    pub settings: Settings,
}

/// A recipe as read.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Reading {
    /// Every clause, in order.
    pub lines: Vec<ReadLine>,
    /// Questions, answered or not, in the order of the text.
    pub questions: Vec<Asked>,
    /// The meat it is reckoned for; nothing until it is known.
    pub meat: Option<Figure>,
    /// The verdict on the dose; nothing where the meat or the method is not known.
    pub verdict: Option<Verdict>,
    /// Dangers in what it tells to do.
    pub dangers: Vec<Danger>,
    /// The language it is in: nothing is assured of what is not English.
    pub tongue: Tongue,
    /// The recipe in proportions; nothing while a question is open.
    pub recipe: Option<Recipe>,
    /// Why there is none; nothing where there is one.
    pub bar: Option<NoRecipe>,
    /// What is to be known of it.
    pub beside: Vec<Beside>,
}

/// One clause as read.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ReadLine {
    /// As it was written.
    pub text: String,
    /// What it is taken for.
    pub taken: Taken,
    /// Key in the pantry, when only one is left; empty otherwise.
    pub item: &'static str,
    /// What it names; nothing where it names nothing.
    pub thing: Option<Thing>,
    /// An amount that is for each of what its sentence names, as it was written.
    pub each: Option<String>,
    /// The measure it goes by, of those that have one name: `US cup`.
    pub by: Option<&'static str>,
    /// Grams for the meat, or for what the line itself says: low, usual, high. Empty where it is not weighed.
    pub grams: Vec<String>,
    /// What is to be known of it; empty for a line that is plain.
    pub flags: Vec<LineFlag>,
    /// What it is called in the text; empty where it names nothing.
    pub name: String,
    /// How much, in its own unit, as least and most; empty where it does not say.
    pub amount: Vec<String>,
    /// That unit by its key, such as `lb` or `each`; empty without an amount.
    pub unit: &'static str,
    /// For how much meat or water: least and most, and the unit.
    pub per: Option<(String, String, &'static str)>,
    /// Per cent printed beside a cure.
    pub strength: Option<String>,
    /// What is done, in order, where it is a step.
    pub steps: Vec<ReadStep>,
}

/// One deed of a step as read; what it does not say is nothing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ReadStep {
    /// What is done; nothing where it is no step of the card, and stays as it was written.
    #[serde(rename = "do")]
    pub act: Option<Do>,
    /// Minutes, least and most.
    pub minutes: Option<(String, String)>,
    /// Degrees Celsius around it, least and most.
    pub at: Option<(String, String)>,
    /// Degrees Celsius in the middle of the meat at which it ends.
    pub until: Option<String>,
    /// How long, in the person's units.
    pub lasts: Option<Lasts>,
    /// The warmer end around it, in the person's units.
    pub heat: Option<String>,
    /// What the middle has to reach, in the person's units.
    pub inside: Option<String>,
}

/// A question that settles what is ambiguous.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Asked {
    /// Its key, to send back with the answer: what is asked, and behind a colon the line it is about, so that an answer
    /// never settles another line.
    pub key: String,
    /// The question.
    pub ask: Question,
    /// Values to send back, with what each stands for.
    pub choices: Vec<(String, Offer)>,
    /// True where a weight or a per cent is typed; the choices are then offers.
    pub typed: bool,
    /// The answer that was given and could be taken.
    pub answer: Option<String>,
}

/// Answers by key.
pub(crate) struct Answers<'a>(&'a [(String, String)]);

impl Answers<'_> {
    fn get(&self, key: &str) -> Option<&str> {
        self.among(key, |_| true)
    }

    /// The last answer that is one of those that can be given: a line with two such questions has answers to both.
    fn among(&self, key: &str, fits: impl Fn(&str) -> bool) -> Option<&str> {
        let last = self.0.iter().rev().find(|(k, v)| k == key && fits(v));
        last.map(|(_, v)| v.as_str())
    }
}

/// The answer of whoever does not know.
const UNSURE: &str = "unsure";

impl Asked {
    fn new(key: String, ask: Question, choices: impl Iterator<Item = (String, Offer)>, answers: &Answers<'_>) -> Self {
        let choices: Vec<(String, Offer)> = choices.collect();
        let answer = answers.among(&key, |a| choices.iter().any(|(value, _)| value == a));
        Self {
            answer: answer.map(str::to_owned),
            key,
            ask,
            choices,
            typed: false,
        }
    }

    /// A question for what is typed, with offers to choose from.
    fn typed<T>(
        key: &str,
        ask: Question,
        offers: Vec<String>,
        answers: &Answers<'_>,
        read: impl Fn(&str) -> Option<T>,
    ) -> (Self, Option<T>) {
        let answer = answers.get(key);
        let given = answer.and_then(read);
        let asked = Self {
            key: key.to_owned(),
            ask,
            choices: offers.into_iter().map(Offer::said).collect(),
            typed: true,
            answer: answer.filter(|_| given.is_some()).map(str::to_owned),
        };
        (asked, given)
    }

    /// The place of the answer among the choices.
    fn chosen(&self) -> Option<usize> {
        let answer = self.answer.as_ref()?;
        self.choices.iter().position(|(value, _)| value == answer)
    }
}

/// `2 tsp each of thyme and pepper`: what stands bare in the sentence takes on the amount.
fn each(lines: &mut [(usize, line::Line)]) {
    let said: Vec<(usize, line::Line)> = lines
        .iter()
        .filter(|(_, l)| l.each && l.taken == line::Taken::Item)
        .cloned()
        .collect();
    for (at, line) in lines.iter_mut().filter(|(_, l)| l.bare) {
        if let Some((_, like)) = said.iter().find(|(sentence, _)| sentence == at) {
            line.like(like);
        }
    }
}

/// A clause as it is read; one that offers two things is asked about, and neither counts until then.
fn either(clause: &str, names: &names::Names, answers: &Answers<'_>, asked: &mut Vec<Asked>) -> Vec<line::Line> {
    let read = line::line(clause, names);
    let Some((one, other)) = read.alternatives(names) else {
        return vec![read];
    };
    let choices = [one.clone(), other.clone()].map(Offer::said);
    let question = Asked::new(format!("or:{clause}"), Question::Either, choices.into_iter(), answers);
    let chosen = question.chosen();
    asked.push(question);
    // What was chosen stands beside what was not: nothing of the text is lost from sight.
    let taken = |text: &str| line::Line {
        text: clause.to_owned(),
        ..line::line(text, names)
    };
    let open = |text: &str| line::Line {
        text: text.to_owned(),
        either: true,
        ..line::line(text, names)
    };
    match chosen {
        Some(0) => vec![taken(&one)],
        Some(_) => vec![taken(&other)],
        None => vec![open(&one), open(&other)],
    }
}

/// `Per 5 lb: …`, and a head of its own over a list, up to the next heading or empty line.
fn head_rates(lines: &mut [(usize, line::Line)]) {
    let mut rate: Option<(usize, bool, line::Line)> = None;
    let mut last = 0;
    for (at, line) in lines {
        let broken = at.saturating_sub(last) > 1 || line.taken == line::Taken::Heading;
        last = *at;
        let water = |m: &names::Meaning| m.items.iter().any(|i| i.key == "water");
        let alone = line.taken == line::Taken::Meat || line.amount.is_none() && line.meaning.as_ref().is_none_or(water);
        if let Some((_, each)) = line.base.as_ref()
            && line.leads
            && *each
        {
            rate = Some((*at, alone, line.clone()));
            continue;
        }
        if broken {
            rate = rate.filter(|(from, _, _)| from == at);
        }
        let Some((from, alone, head)) = &rate else { continue };
        let under = *from == *at || *alone;
        if under && line.base.is_none() && line.taken == line::Taken::Item {
            line.base = head.base.clone();
            line.base_said = head.base_said.clone();
            line.leads = false;
        }
    }
}

/// Which letters a text is written in: where both cases stand, a `T` is no `t`.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
struct Cased {
    /// Capitals stand in it, besides the unit itself.
    capitals: bool,
    /// Small letters stand in it.
    small: bool,
}

impl Cased {
    fn of(text: &str) -> Self {
        let words = || {
            text.split(|c: char| !c.is_alphabetic())
                .filter(|w| w.chars().count() > 1 || *w == "T" || *w == "t")
        };
        Self {
            capitals: words().any(|w| w.starts_with(char::is_uppercase)),
            small: words().any(|w| w.contains(char::is_lowercase)),
        }
    }
}

/// What stands under a heading of its own for the outside of the meat is not in its brine.
fn apart(lines: &mut [(usize, line::Line)]) {
    let mut outside = false;
    for (_, line) in lines {
        if line.taken == line::Taken::Heading {
            let lower = line.text.to_lowercase();
            let bare = lower.trim_start_matches("for ").trim_start_matches("the ");
            outside = OUTSIDE.iter().any(|w| bare.starts_with(w));
        }
        line.apart = outside;
    }
}

/// Reads a recipe.
///
/// # Errors
/// [`Code::Missing`] for no text, [`Code::TooLong`] for more than 6000 bytes or 120 lines, and the problems of the
/// settings.
pub fn read(ask: &AskReading) -> Result<Reading, Vec<Problem>> {
    let refuse = |code, wrong| Err(vec![Problem::of(code, wrong).at("text")]);
    if ask.text.len() > MOST_TEXT {
        return refuse(Code::TooLong, Wrong::RecipeTextTooLong { most: MOST_TEXT });
    }
    if ask.text.trim().is_empty() {
        return refuse(Code::Missing, Wrong::TextMissing);
    }
    let problems = ask.settings.problems();
    if !problems.is_empty() {
        return Err(problems);
    }
    // What cannot be seen cannot be checked by eye, and may stand in the middle of a word.
    let seen = ask.text.chars().filter(|c| !pantry::is_unseen(*c));
    let text: String = seen
        .map(|c| if c.is_control() && c != '\n' { ' ' } else { c })
        .collect();
    let text = unwrap::in_one_line(&unwrap::without_leaders(&text));
    let names = names::Names::all();
    let clauses = clause::clauses(&text, names);
    if clauses.len() > MOST_CLAUSES {
        return refuse(Code::TooLong, Wrong::RecipeLinesTooMany { most: MOST_CLAUSES });
    }
    let cased = Cased::of(&text);
    let answers = Answers(&ask.answers);
    let mut choices = Vec::new();
    let mut lines: Vec<(usize, line::Line)> = Vec::new();
    for (at, clause) in clauses {
        lines.extend(
            either(clause, names, &answers, &mut choices)
                .into_iter()
                .map(|l| (at, l)),
        );
    }
    if let [(at, first), (next, _), ..] = lines.as_mut_slice()
        && at != next
    {
        first.title();
    }
    let weighs_cure = |l: &line::Line| {
        let cure = |m: &names::Meaning| m.items.iter().all(|i| i.group == pantry::Group::Cure) && !m.food;
        l.taken == line::Taken::Item && l.amount.is_some() && l.meaning.as_ref().is_some_and(cure)
    };
    if lines.iter().any(|(_, l)| weighs_cure(l)) {
        for (_, line) in lines.iter_mut().filter(|(_, l)| l.said_of_cures()) {
            line.taken = line::Taken::Remark;
        }
    }
    each(&mut lines);
    head_rates(&mut lines);
    apart(&mut lines);
    let partial: Vec<(usize, line::Line)> = lines.iter().filter(|(_, l)| l.is_partial()).cloned().collect();
    // Without a weight of the meat an amount is for nothing but that base.
    let weighed = lines
        .iter()
        .any(|(_, l)| l.taken == line::Taken::Meat && (l.amount.is_some() || l.base.is_some()));
    for (at, line) in lines.iter_mut() {
        line.cased = cased;
        if line.base.is_some() {
            continue;
        }
        let same = partial.iter().find(|(sentence, _)| sentence == at);
        let Some((_, like)) = same else { continue };
        if weighed {
            line.shared = like
                .base
                .as_ref()
                .map(|(base, _)| (base.clone(), like.base_said.clone()));
        } else if line.taken == line::Taken::Item {
            line.base.clone_from(&like.base);
            line.base_said.clone_from(&like.base_said);
        }
    }
    let lines: Vec<line::Line> = lines.into_iter().map(|(_, l)| l).collect();
    Ok(recipe::reading(
        &text,
        tongue::tongue(&text),
        &lines,
        names,
        choices,
        &answers,
        ask,
    ))
}
