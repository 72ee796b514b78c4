//! What is asked of a reading and what it answers.

use super::asked::Asked;
use super::facts::{Beside, Danger, Lasts, LineFlag, NoRecipe, Taken, Thing};
use super::tongue::Tongue;
use crate::dose::Verdict;
use crate::quantity::Figure;
use crate::recipe::{Do, Recipe};
use crate::weigh::Settings;
use serde::{Deserialize, Serialize};

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
    /// The measure it goes by, of those that have one name, by its key: `us_cup`.
    #[cfg_attr(feature = "types", ts(type = "MeasureKey | null"))]
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
