//! What a person sets once.

use super::finding::{self, Finding};
use crate::dose::{OwnSpoon, default_rule, profiles};
use crate::quantity::{Code, Mass, Problem, System};
use serde::{Deserialize, Serialize};

/// Steps a scale may have, the coarsest first.
pub const SCALE_STEPS: [&str; 4] = ["5 g", "1 g", "0.1 g", "0.01 g"];

/// Units, scale and jurisdiction. Stored values do not depend on it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Settings {
    /// Which units are printed.
    #[serde(default)]
    pub units: System,
    /// The smallest step the scale shows: `5 g`, `1 g`, `0.1 g`, `0.01 g`.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub scale_step: Mass,
    /// Key of the jurisdiction whose limits judge a dose, `us-home`.
    pub profile: String,
    /// Level spoons of the user's own, weighed; they stand in place of the general ranges.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<OwnSpoon>>"))]
    pub spoons: Vec<OwnSpoon>,
    /// What cut pieces told about how fast salt goes into this user's meat. Empty: nothing, or forgotten.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Finding>>"))]
    pub learned: Vec<Finding>,
}

impl Settings {
    /// Settings of a new page: metric, a 0.1 g scale, the first jurisdiction of the table.
    pub fn new_page() -> Self {
        Self {
            units: System::Metric,
            scale_step: Mass::read("0.1 g", None).unwrap_or_default(),
            profile: default_rule().key.to_owned(),
            spoons: Vec::new(),
            learned: Vec::new(),
        }
    }

    /// Everything that is wrong with them, at `settings`; empty when they can be used.
    pub fn problems(&self) -> Vec<Problem> {
        let mut found = Vec::new();
        if !SCALE_STEPS
            .iter()
            .any(|s| Mass::read(s, None).is_ok_and(|m| m == self.scale_step))
        {
            let steps = SCALE_STEPS.join(", ");
            found.push(
                Problem::new(Code::Unknown, format!("A scale's step is one of {steps}. Choose one."))
                    .at("settings.scale_step"),
            );
        }
        if !profiles().iter().any(|p| p.key == self.profile) {
            found.push(
                Problem::new(
                    Code::Unknown,
                    "This jurisdiction is not in the table. Choose one from the list.",
                )
                .at("settings.profile"),
            );
        }
        if !finding::good(&self.learned) {
            found.push(
                Problem::new(
                    Code::BadForm,
                    "What was learned from cuts is not of the form that this page writes. Forget it and cut again.",
                )
                .at("settings.learned"),
            );
        }
        found
    }
}
