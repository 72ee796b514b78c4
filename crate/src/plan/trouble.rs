//! Cards for when something went wrong: a card asks one thing at a time and ends in what is to be done, as keys.
//!
//! A card is a list of rows, and the first whose answers all hold is its end. A question is asked only where the next
//! row that is still open needs it, so each card asks first what ends the matter soonest. No end leads to another card.

mod keys;
mod log;

pub use keys::{Act, Ask, Card, Choice, Hazard, OnlyIf, Source, Way};
pub use log::{AskLog, LogSaid};

use crate::dose::{Caution, cautions};
use crate::pantry::Status;
use crate::quantity::{Code, Problem, Wrong};
use serde::de::IntoDeserializer as _;
use serde::de::value::{Error, StrDeserializer};
use serde::{Deserialize, Serialize};

/// What can be answered to a question.
pub struct AskRow {
    /// The question.
    pub ask: Ask,
    /// Its answers: three at most, the last one that nobody is sure.
    pub choices: &'static [Choice],
}

/// An end of a card.
pub struct EndRow {
    /// The card.
    pub card: Card,
    /// Questions with the answers of which one has to be given to each; none for what is left.
    pub when: &'static [(Ask, &'static [Choice])],
    /// What is to be done.
    pub remedy: Remedy,
}

/// A source of the table.
pub struct SourceRow {
    /// Its key.
    pub key: Source,
    /// Title, number, year.
    pub title: &'static str,
    /// How it is known: published, quoted, memory, judgement, common practice.
    pub status: Status,
}

/// Content of `trouble`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskTrouble {
    /// Key of the card; empty for the list alone.
    pub card: String,
    /// What was answered: pairs of question and answer. What the card does not ask now is kept and left alone.
    pub chosen: Vec<(String, String)>,
    /// The batch it happened to, where that is known: what its log says is not asked.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub log: Option<AskLog>,
}

/// The cards, and how far the open one is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Trouble {
    /// Every card, in order.
    pub cards: Vec<Card>,
    /// The questions answered so far that count, in the order in which they are asked.
    pub answered: Vec<(Ask, Choice)>,
    /// The question that is open, with its answers.
    pub question: Option<(Ask, &'static [Choice])>,
    /// The end, once nothing is open.
    pub remedy: Option<Remedy>,
    /// Title of its source, with what the title says of the figures.
    pub source: Option<&'static str>,
    /// How well the source is known.
    pub status: Option<Status>,
    /// Cautions that stand beside an end.
    pub cautions: Vec<Caution>,
    /// What the log of the batch says of it.
    pub log: Option<LogSaid>,
    /// The questions that the log answered, where nobody said otherwise.
    pub known: Vec<Ask>,
}

/// What is to be done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Remedy {
    /// Which end it is.
    pub way: Way,
    /// The act.
    pub act: Act,
    /// Conditions that all have to hold.
    pub only_if: &'static [OnlyIf],
    /// What hurts, where it has a name.
    pub hazard: Option<Hazard>,
    /// Where it comes from.
    pub source: Source,
}

/// The cards, and what one of them asks next or ends in.
///
/// # Errors
/// [`Code::Unknown`] for a card, a question or an answer that is not there.
pub fn trouble(ask: &AskTrouble) -> Result<Trouble, Problem> {
    let mut sheet = Trouble {
        cards: crate::tables::TROUBLE_CARDS.to_vec(),
        answered: Vec::new(),
        question: None,
        remedy: None,
        source: None,
        status: None,
        cautions: Vec::new(),
        log: None,
        known: Vec::new(),
    };
    if ask.card.is_empty() {
        return Ok(sheet);
    }
    let card =
        Card::deserialize(text(&ask.card)).map_err(|_| Problem::of(Code::Unknown, Wrong::NoSuchCard).at("card"))?;
    let mut chosen = chosen(&ask.chosen)?;
    if let Some((said, answers)) = ask.log.as_ref().filter(|_| card == Card::Warm).and_then(log::said) {
        sheet.log = Some(said);
        // What somebody said stays, but the hours go on: where the log is sure of too long it is what holds.
        let holds = |(of, choice): &(Ask, Choice)| {
            matches!(choice, Choice::Over1h | Choice::Over2h) || !chosen.iter().any(|(given, _)| given == of)
        };
        let known: Vec<(Ask, Choice)> = answers.into_iter().filter(holds).collect();
        sheet.known = known.iter().map(|(of, _)| *of).collect();
        chosen.retain(|(of, _)| !sheet.known.contains(of));
        chosen.extend(known);
    }
    for row in crate::tables::TROUBLE_ENDS.iter().filter(|row| row.card == card) {
        match sheet.holds(row, &chosen) {
            Some(true) => {
                let source = crate::tables::TROUBLE_SOURCES
                    .iter()
                    .find(|source| source.key == row.remedy.source);
                sheet.remedy = Some(row.remedy);
                sheet.source = source.map(|s| s.title);
                sheet.status = source.map(|s| s.status);
                sheet.cautions = cautions(&["local-rules"]);
                break;
            }
            Some(false) => {}
            None => break,
        }
    }
    Ok(sheet)
}

impl Trouble {
    /// Whether a row holds; none where a question is open, which is then the sheet's.
    fn holds(&mut self, row: &EndRow, chosen: &[(Ask, Choice)]) -> Option<bool> {
        for (ask, any) in row.when {
            let Some(&given) = chosen.iter().find(|(of, _)| of == ask) else {
                self.question = asked(*ask).map(|row| (row.ask, row.choices));
                return None;
            };
            if !self.answered.contains(&given) {
                self.answered.push(given);
            }
            if !any.contains(&given.1) {
                return Some(false);
            }
        }
        Some(true)
    }
}

fn text(key: &str) -> StrDeserializer<'_, Error> {
    key.into_deserializer()
}

fn asked(ask: Ask) -> Option<&'static AskRow> {
    crate::tables::TROUBLE_ASKS.iter().find(|row| row.ask == ask)
}

/// The answers as keys; each has to be one of its question's.
fn chosen(pairs: &[(String, String)]) -> Result<Vec<(Ask, Choice)>, Problem> {
    let known = |(ask, choice): &(String, String)| {
        let ask = Ask::deserialize(text(ask)).ok()?;
        let choice = Choice::deserialize(text(choice)).ok()?;
        asked(ask)
            .is_some_and(|row| row.choices.contains(&choice))
            .then_some((ask, choice))
    };
    pairs
        .iter()
        .map(known)
        .collect::<Option<_>>()
        .ok_or_else(|| Problem::of(Code::Unknown, Wrong::NoSuchAnswer).at("chosen"))
}
