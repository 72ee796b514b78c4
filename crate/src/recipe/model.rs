//! The recipe as it is stored, shared and sent.

use super::method::Method;
use crate::pantry::{self, Agent, Made};
use crate::quantity::exact::Exact;
use crate::quantity::{Fraction, Mass, Span, Temperature};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// A recipe. Weights are proportions, so it has no size of its own.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Recipe {
    /// What it is called, 1 to 60 characters.
    pub name: String,
    /// Two capital letters by which a batch of it is known.
    pub tag: String,
    /// How the cure gets into the meat.
    pub method: Method,
    /// Where only a share of the brine goes into the meat, by pump or by pick-up: that share of green weight, `10 %`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub take: Option<Fraction>,
    /// When and how it is eaten; decides which limit can judge it.
    #[serde(default)]
    pub eaten: Eaten,
    /// Curing agents, at most two.
    #[serde(default)]
    pub cures: Vec<Cure>,
    /// Everything else that is weighed, in the order it is written.
    #[serde(default)]
    pub lines: Vec<Line>,
    /// What is done after weighing, in order.
    #[serde(default)]
    pub steps: Vec<Step>,
    /// Remarks for next time.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub notes: String,
    /// What stood in the text it was read from and was not understood, as it was written; each until somebody settles it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<String>>"))]
    pub unread: Vec<String>,
}

impl Recipe {
    /// Share of green weight that goes in of the brine, as a proportion; nought where the method has none.
    pub fn taken(&self) -> Decimal {
        self.take
            .filter(|_| self.method.takes())
            .and_then(|f| f.base().over(Decimal::ONE_HUNDRED))
            .unwrap_or_default()
    }

    /// Minutes that it stays in the cure by its steps; nothing where they do not say.
    pub fn stay(&self) -> Option<Decimal> {
        let lasts = self.steps.iter().filter(|s| s.act == Do::Cure);
        lasts
            .map(|s| s.lasts.map(Span::base))
            .reduce(|sum, one| sum?.plus(one?))
            .flatten()
    }
}

/// When and how the meat is eaten.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Eaten {
    /// Cooked, or eaten within weeks.
    #[default]
    Cooked,
    /// A whole muscle that hangs for months and is eaten raw.
    HungForMonths,
}

/// A curing agent.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Cure {
    /// Key in the pantry, such as `cure-1`.
    pub item: String,
    /// Sodium nitrite printed on the packet, `6.25 %`.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub nitrite: Fraction,
    /// Sodium nitrate printed on the packet, `0 %`. The rest counts as salt.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub nitrate: Fraction,
    /// Ingoing nitrite to aim at (nitrate, where the agent holds no nitrite), `150 ppm`.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub aim: Fraction,
    /// How it was made, for a premix or a stock of the user's own; its two percentages are those of the mix then.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub made: Option<Made>,
    /// The aim is a proposal: where the chosen rule has no room for it, the list is weighed for one that it has. Of a
    /// recipe that comes with the page; what a person types is judged as it stands.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub follows: bool,
}

impl Cure {
    /// Its strength, with what of it is neither nitrite, nitrate nor salt.
    pub fn agent(&self) -> Option<Agent> {
        let agent = Agent::printed(self.nitrite, Some(self.nitrate));
        match pantry::ingredient(&self.item).filter(|i| i.is_pure()) {
            Some(_) => agent.pure(),
            None => agent.made(self.made),
        }
    }
}

/// One thing to weigh beside the cure.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Line {
    /// Key in the pantry, or `own` for something of the user's with a `name`.
    pub item: String,
    /// The user's own word for it; empty for the pantry's.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub name: String,
    /// Of the user's own: the allergens its packet names, `celery, mustard`, or `none`. Empty: not known.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<String>"))]
    pub allergens: String,
    /// Whether it holds nitrite or nitrate, of what the pantry does not know.
    #[serde(default, skip_serializing_if = "Holds::is_unknown")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Holds>"))]
    pub agent: Holds,
    /// How much.
    pub share: Share,
}

/// Whether the packet of a thing names nitrite or nitrate, E 249 to E 252.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Holds {
    /// Nobody has looked, or nobody could say.
    #[default]
    Unknown,
    /// It names none.
    None,
    /// It names one. How much is not said here: what has a strength goes under cures.
    Yes,
}

impl Holds {
    /// True while nobody has said.
    pub fn is_unknown(&self) -> bool {
        *self == Self::Unknown
    }
}

/// How much of a line, on which base.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "of", content = "amount")]
pub enum Share {
    /// Per cent of the trimmed raw meat.
    GreenWeight(#[cfg_attr(feature = "types", ts(type = "string"))] Fraction),
    /// Per cent of meat and water together.
    MeatAndWater(#[cfg_attr(feature = "types", ts(type = "string"))] Fraction),
    /// Per cent of the brine's water.
    Brine(#[cfg_attr(feature = "types", ts(type = "string"))] Fraction),
    /// A weight for each piece.
    Piece(#[cfg_attr(feature = "types", ts(type = "string"))] Mass),
}

impl Share {
    /// What it is of.
    pub const fn of(self) -> ShareOf {
        match self {
            Self::GreenWeight(_) => ShareOf::GreenWeight,
            Self::MeatAndWater(_) => ShareOf::MeatAndWater,
            Self::Brine(_) => ShareOf::Brine,
            Self::Piece(_) => ShareOf::Piece,
        }
    }
}

/// What a share is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum ShareOf {
    /// The trimmed raw meat.
    GreenWeight,
    /// Meat and water together.
    MeatAndWater,
    /// The brine's water.
    Brine,
    /// Each piece.
    Piece,
}

/// One step after weighing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Step {
    /// What is done.
    #[serde(rename = "do")]
    pub act: Do,
    /// How long it takes, `36 h`. Nothing: done in a moment.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub lasts: Option<Span>,
    /// Turn the pieces every so often while it lasts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub turn_every: Option<Span>,
    /// Temperature of the refrigerator or the smoker.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub at: Option<Temperature>,
    /// Temperature in the middle of the coldest piece at which it ends.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub until: Option<Temperature>,
    /// In the user's own words.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
}

/// What a step does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Do {
    /// Keep cold with the cure on it.
    Cure,
    /// Rinse the cure off.
    Rinse,
    /// Soak out salt in cold water.
    Soak,
    /// Dry uncovered to a pellicle.
    Dry,
    /// Smoke, with or without cooking.
    Smoke,
    /// Cook through in an oven or a hotter smoker.
    Cook,
    /// Dry out, as jerky.
    DryOut,
    /// Rest off the heat.
    Rest,
    /// Chill.
    Chill,
    /// Pack and label.
    Pack,
}
