//! Cards for when something went wrong: each asks two or three things and answers with figures and a next step.

use crate::dose::{Caution, cautions};
use crate::quantity::{Code, Problem};
use serde::{Deserialize, Serialize};

/// A card as the table has it.
pub struct CardRow {
    /// Key, `froze`.
    pub key: &'static str,
    /// `It froze`.
    pub head: &'static str,
    /// When to open it.
    pub lead: &'static str,
}

/// Something a card asks.
pub struct AskRow {
    /// Key of the card.
    pub card: &'static str,
    /// Key of what is asked.
    pub key: &'static str,
    /// `For how long`.
    pub label: &'static str,
    /// Key and words of each option.
    pub options: &'static [(&'static str, &'static str)],
}

/// An answer of a card.
pub struct AnswerRow {
    /// Key of the card.
    pub card: &'static str,
    /// Choices that all have to hold, as ask and option; none for what is left.
    pub when: &'static [(&'static str, &'static str)],
    /// The answer.
    pub answer: Remedy,
}

/// Content of `trouble`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskTrouble {
    /// Key of the card; empty for the list alone.
    pub card: String,
    /// What was chosen: pairs of ask and option.
    pub chosen: Vec<(String, String)>,
}

/// Options of what is asked: key and words.
type Options = &'static [(&'static str, &'static str)];

/// The cards, and what the open one asks and answers.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Trouble {
    /// Key, head and lead of every card, in order.
    pub cards: Vec<(&'static str, &'static str, &'static str)>,
    /// What the open card asks: key, words, and its options by key and words.
    pub asks: Vec<(&'static str, &'static str, Options)>,
    /// The answer, once all is chosen.
    pub answer: Option<Remedy>,
    /// Cautions that stand beside an answer.
    pub cautions: Vec<Caution>,
}

/// What to do.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Remedy {
    /// `ok`, `care`, `stop`, `ask`.
    #[cfg_attr(feature = "types", ts(type = "'ok' | 'care' | 'stop' | 'ask'"))]
    pub mark: &'static str,
    /// `Throw it out`.
    pub word: &'static str,
    /// The fact, with its figures.
    pub says: &'static str,
    /// The next step.
    pub next: &'static str,
    /// Where it comes from, with its status.
    pub source: &'static str,
}

/// The cards, and what one of them asks and answers.
///
/// # Errors
/// [`Code::Unknown`] for a card or an option that is not there.
pub fn trouble(ask: &AskTrouble) -> Result<Trouble, Problem> {
    let cards = &crate::tables::TROUBLE_CARDS;
    let asks: Vec<&AskRow> = crate::tables::TROUBLE_ASKS
        .iter()
        .filter(|a| a.card == ask.card)
        .collect();
    if !ask.card.is_empty() && !cards.iter().any(|c| c.key == ask.card) {
        return Err(Problem::new(Code::Unknown, "There is no such card. Choose one from the list.").at("card"));
    }
    let chosen = |key: &str| {
        ask.chosen
            .iter()
            .find(|(of, _)| of == key)
            .map(|(_, option)| option.as_str())
    };
    let known = |(of, option): &(String, String)| {
        let row = asks.iter().find(|a| a.key == of);
        row.is_some_and(|a| a.options.iter().any(|(key, _)| key == option))
    };
    if !ask.chosen.iter().all(known) {
        return Err(Problem::new(
            Code::Unknown,
            "The card has no such choice. Choose one of those it shows.",
        )
        .at("chosen"));
    }
    let all = !asks.is_empty() && asks.iter().all(|a| chosen(a.key).is_some());
    let fits =
        |row: &&AnswerRow| row.card == ask.card && row.when.iter().all(|(of, option)| chosen(of) == Some(option));
    let answer = crate::tables::TROUBLE_ANSWERS
        .iter()
        .find(fits)
        .filter(|_| all)
        .map(|row| row.answer);
    Ok(Trouble {
        cards: cards.iter().map(|c| (c.key, c.head, c.lead)).collect(),
        asks: asks.iter().map(|a| (a.key, a.label, a.options)).collect(),
        answer,
        cautions: answer.map(|_| cautions(&["local-rules"])).unwrap_or_default(),
    })
}
