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
mod line;
mod names;
mod recipe;
mod steps;
mod weigh;
mod words;

use crate::dose::Verdict;
use crate::quantity::{Code, Figure, Problem};
use crate::recipe::Recipe;
use crate::weigh::Settings;
use serde::{Deserialize, Serialize};

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
    /// The recipe in proportions; nothing while a question is open.
    pub recipe: Option<Recipe>,
    /// What stands in the way of the recipe, or what to know of it.
    pub says: String,
}

/// One clause as read.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ReadLine {
    /// As it was written.
    pub text: String,
    /// `item`, `taste`, `meat`, `step`, `heading` or `unread`.
    pub taken: &'static str,
    /// Key in the pantry, when only one is left; empty otherwise.
    pub item: &'static str,
    /// What it is taken for, in words.
    pub says: String,
    /// Grams for the meat, or for what the line itself says: low, usual, high. Empty where it is not weighed.
    pub grams: Vec<String>,
    /// Words that were not understood, and what is to be known; empty for a line that is plain.
    pub flag: String,
}

/// A question that settles what is ambiguous.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Asked {
    /// Its key, to send back with the answer: what is asked, and behind a colon the line it is about, so that an answer
    /// never settles another line.
    pub key: String,
    /// The question.
    pub ask: String,
    /// Values with their words.
    pub choices: Vec<(String, String)>,
    /// True where a weight or a per cent is typed; the choices are then offers.
    pub typed: bool,
    /// The answer that was given and could be taken.
    pub answer: Option<String>,
}

/// Answers by key.
pub(crate) struct Answers<'a>(&'a [(String, String)]);

impl Answers<'_> {
    fn get(&self, key: &str) -> Option<&str> {
        self.0.iter().rev().find(|(k, _)| k == key).map(|(_, v)| v.as_str())
    }
}

impl Asked {
    fn new(key: String, ask: &str, choices: impl Iterator<Item = (String, String)>, answers: &Answers<'_>) -> Self {
        let choices: Vec<(String, String)> = choices.collect();
        let answer = answers
            .get(&key)
            .filter(|a| choices.iter().any(|(value, _)| value == a));
        Self {
            answer: answer.map(str::to_owned),
            key,
            ask: ask.to_owned(),
            choices,
            typed: false,
        }
    }

    /// A question for what is typed, with offers to choose from.
    fn typed<T>(
        key: &str,
        ask: &str,
        offers: Vec<String>,
        answers: &Answers<'_>,
        read: impl Fn(&str) -> Option<T>,
    ) -> (Self, Option<T>) {
        let answer = answers.get(key);
        let given = answer.and_then(read);
        let asked = Self {
            key: key.to_owned(),
            ask: ask.to_owned(),
            choices: offers.into_iter().map(|o| (o.clone(), o)).collect(),
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

/// Reads a recipe.
///
/// # Errors
/// [`Code::Missing`] for no text, [`Code::TooLong`] for more than 6000 bytes or 120 lines, and the problems of the
/// settings.
pub fn read(ask: &AskReading) -> Result<Reading, Vec<Problem>> {
    let refuse = |code, why: &str| Err(vec![Problem::new(code, why).at("text")]);
    if ask.text.len() > MOST_TEXT {
        return refuse(
            Code::TooLong,
            "This is longer than a recipe: 6000 characters are read at most. Paste the part with the amounts.",
        );
    }
    if ask.text.trim().is_empty() {
        return refuse(
            Code::Missing,
            "Nothing is here. Paste or type a recipe, such as 2 tsp cure no. 1 for 10 lb of meat.",
        );
    }
    let problems = ask.settings.problems();
    if !problems.is_empty() {
        return Err(problems);
    }
    // What cannot be seen cannot be checked by eye.
    let hidden = |c: char| {
        (c.is_control() && c != '\n')
            || matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
    };
    let text: String = ask.text.chars().map(|c| if hidden(c) { ' ' } else { c }).collect();
    let names = names::Names::all();
    let clauses = clause::clauses(&text, &names);
    if clauses.len() > MOST_CLAUSES {
        return refuse(
            Code::TooLong,
            "There are more than 120 lines here. Paste the part with the amounts.",
        );
    }
    let mut lines: Vec<(usize, line::Line)> = clauses.into_iter().map(|(at, c)| (at, line::line(c, &names))).collect();
    if let [(_, first), _, ..] = lines.as_mut_slice() {
        first.title();
    }
    each(&mut lines);
    let partial: Vec<(usize, line::Line)> = lines.iter().filter(|(_, l)| l.is_partial()).cloned().collect();
    for (at, line) in lines.iter_mut().filter(|(_, l)| l.base.is_none()) {
        let same = partial.iter().find(|(sentence, _)| sentence == at);
        line.shared = same.and_then(|(_, l)| Some((l.base.as_ref()?.0.clone(), l.base_said.clone())));
    }
    let lines: Vec<line::Line> = lines.into_iter().map(|(_, l)| l).collect();
    Ok(recipe::reading(
        &text,
        &lines,
        &names,
        &Answers(&ask.answers),
        &ask.settings,
    ))
}
