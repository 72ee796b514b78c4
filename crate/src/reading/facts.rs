//! What is asked and told of a text, as facts: the page words them. What stands in the text is handed back as it was
//! written, and what the tables know by its key.

use crate::pantry::{Group, Ingredient};
use crate::quantity::Problem;
use crate::recipe::Method;
use serde::Serialize;

/// What a clause is taken for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Taken {
    /// Something to weigh.
    Item,
    /// Something without an amount: `to taste`.
    Taste,
    /// The meat, or how much the recipe is for.
    Meat,
    /// A step: a time, a temperature, an act.
    Step,
    /// A heading.
    Heading,
    /// Said beside the recipe: a greeting, how many it serves. Nothing in it can be a cure.
    Remark,
    /// Not read.
    Unread,
}

/// What a per cent is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS), ts(rename = "PercentOf"))]
#[serde(rename_all = "snake_case")]
pub enum Of {
    /// The green weight.
    Meat,
    /// The water of a brine.
    Water,
    /// Meat and water together.
    Both,
    /// All the salt of the recipe.
    Salt,
}

/// A row of the pantry, as it is offered or was taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct RowOf {
    /// Its key.
    #[cfg_attr(feature = "types", ts(type = "IngredientKey"))]
    pub item: &'static str,
    /// Of a curing agent: per cent of nitrite and of nitrate that its packet says, as the table has them; empty where it
    /// says nothing of one.
    pub cure: Option<(&'static str, &'static str)>,
    /// True for what is called like a cure and is none: pink salt for the table.
    pub no_cure: bool,
}

impl RowOf {
    /// A row of the pantry.
    pub fn of(item: &Ingredient) -> Self {
        Self {
            item: item.key,
            cure: (item.group == Group::Cure).then_some((item.nitrite, item.nitrate)),
            no_cure: item.key == "salt-mineral-pink",
        }
    }
}

/// What a clause names.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Thing {
    /// A row of the pantry.
    Row {
        /// That row.
        row: RowOf,
    },
    /// One of several, and it is not settled which.
    Open {
        /// Their keys.
        #[cfg_attr(feature = "types", ts(type = "IngredientKey[]"))]
        items: Vec<&'static str>,
    },
    /// A food of which there are no figures; it is no cure.
    Food {
        /// As it is called.
        name: String,
    },
    /// What is not in the pantry.
    Own {
        /// As it is called.
        name: String,
    },
}

/// What is to be known of a clause.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum LineFlag {
    /// Words that were not understood.
    Left {
        /// As they were written.
        words: String,
    },
    /// How much of it is not said.
    AmountUnsaid,
    /// What a spoon of it weighs is not known.
    SpoonUnknown,
    /// What one of it weighs is not known.
    PieceUnknown,
    /// Its amount is none that can be weighed.
    Unweighable,
    /// Two amounts stand there, and only one is read.
    OneOfTwo,
    /// For how much of the meat it is can be read two ways.
    BaseTwofold,
}

/// How long a deed takes, in the person's units.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Lasts {
    /// So long.
    Span {
        /// With its unit.
        time: String,
    },
    /// From so many hours to so many.
    Hours {
        /// The least.
        from: String,
        /// The most.
        to: String,
    },
}

/// A question.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Question {
    /// For how much meat it is.
    Meat {
        /// More than one weight of it stands in the text; else none.
        several: bool,
    },
    /// How the cure goes on.
    Method,
    /// How much of the brine goes in, per cent of green weight.
    Take,
    /// How much water there is.
    Water,
    /// What a per cent is of.
    PercentOf,
    /// Whether any of these holds nitrite or nitrate.
    Holds {
        /// As they are called, or the first characters of how they were written.
        names: Vec<String>,
    },
    /// How much nitrite a packet says, per cent; nought where it does not say.
    Strength {
        /// The first characters of its line.
        of: String,
    },
    /// Which of two things that the text offers.
    Either,
    /// Whether a `c` is a cup or a clove.
    Letter,
    /// Which of the measures that have one name.
    Measure,
    /// Which of two amounts.
    Amounts,
    /// How much of a cure, where that is not said.
    Grams,
    /// Whether words that nothing was made of change how much it is, or of what.
    Unused {
        /// As they were written.
        words: String,
    },
    /// In which unit a number is that stands without one.
    Bare,
    /// Which of two readings of a number.
    Number,
    /// Whether what another thing of the sentence is for, is for this as well.
    Shared {
        /// What that is for, as it was written: `per 5 lb`.
        base: String,
    },
    /// Whether sugar is packed into the spoon.
    Packed,
    /// Which row of the pantry.
    Which {
        /// The key of the question in the table of words: `which_salt`.
        #[cfg_attr(feature = "types", ts(type = "WhichKey"))]
        ask: &'static str,
    },
}

/// What can be answered.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Offer {
    /// A part of the text, or a figure with its unit.
    Said {
        /// As it is shown.
        text: String,
    },
    /// A measure.
    Measure {
        /// Its key in the table of words: `us_cup`.
        #[cfg_attr(feature = "types", ts(type = "MeasureKey"))]
        of: &'static str,
    },
    /// A row of the pantry.
    Row {
        /// That row.
        row: RowOf,
    },
    /// A method.
    Method {
        /// That method.
        method: Method,
    },
    /// A per cent of this.
    PercentOf {
        /// What it is of.
        of: Of,
    },
    /// None of it holds nitrite or nitrate.
    HoldsNone,
    /// This one does.
    Holds {
        /// As it is called.
        name: String,
    },
    /// It is for what the other thing of the sentence is for.
    Shared {
        /// As it was written.
        base: String,
    },
    /// It is for all of the meat.
    All,
    /// They change nothing.
    AsRead,
    /// They do: it is not weighed, and stays as it was written.
    NotAsRead,
    /// Nobody knows.
    Unsure,
}

impl Offer {
    /// What is its own value and stands as it is.
    pub fn said(text: String) -> (String, Self) {
        (text.clone(), Self::Said { text })
    }

    /// A measure, by its key.
    pub fn measure(of: &'static str) -> (String, Self) {
        (of.to_owned(), Self::Measure { of })
    }
}

/// Why there is no recipe.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum NoRecipe {
    /// A question is open.
    Open,
    /// The amounts are too far apart to be reckoned with.
    TooFarApart,
    /// How much nitrite or nitrate is in a cure, nobody can say.
    StrengthUnknown {
        /// Its line.
        text: String,
        /// What the pantry says of it.
        source: &'static str,
    },
    /// How much of a cure is not said.
    AmountUnsaid {
        /// Its line.
        text: String,
    },
    /// Nothing in the text can be weighed.
    Nothing,
    /// What came out breaks a rule of recipes.
    Wrong {
        /// That rule.
        problem: Box<Problem>,
    },
}

impl From<Problem> for NoRecipe {
    fn from(problem: Problem) -> Self {
        Self::Wrong {
            problem: Box::new(problem),
        }
    }
}

/// What is to be known of the recipe that comes out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Beside {
    /// It asks for the cure by weight, at the usual figure of the spoon.
    CureByWeight,
    /// What is not weighed stands in its notes, as it was written.
    Notes,
    /// The text says nothing of heat.
    NoHeat,
}

/// A danger in a text.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Danger {
    /// What it is.
    pub key: DangerKey,
    /// The text that says it; empty for the whole.
    pub text: String,
    /// Its figure: °F of a temperature, ppm of a dose, hours of a time; nothing where it has none.
    pub figure: Option<String>,
    /// The figure of the rule, in the same unit.
    pub rule: Option<String>,
}

/// The kinds of danger.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum DangerKey {
    /// Kept where germs grow, longer than a few hours.
    TemperatureDanger,
    /// Without air, without enough cure, not cold.
    Botulism,
    /// Done at less than the consumer temperature.
    CookLow,
    /// More nitrite than the limit.
    CureOver,
    /// Less nitrite than has its effect.
    CureUnder,
    /// Two curing agents.
    TwoAgents,
    /// Nitrite without salt to thin it, weighed by hand.
    PureAgent,
    /// Saltpetre or another nitrate.
    NitratePresent,
    /// Nothing in it cooks the meat.
    NotCooked,
    /// Meat that may hold parasites, not cooked.
    Parasite,
    /// Smoked cold: that cooks nothing.
    ColdSmoke,
    /// A cure that was not read.
    CureUnread,
}
