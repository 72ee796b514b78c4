//! What in a recipe may hold nitrite or nitrate without being counted: nothing is assured of its dose until that is settled.

use super::model::{Holds, Line, Recipe};
use crate::pantry::{self, OWN};
use serde::Serialize;

/// Something in a recipe that may be a curing agent.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct MayHold {
    /// Why it may.
    pub why: Why,
    /// Its place among the lines; among what was not read where that is why.
    pub at: usize,
    /// What it is called, or how it was written.
    pub name: String,
}

/// Why something may be a curing agent.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Why {
    /// The pantry does not know it, and nobody has said what its packet says.
    NotAsked,
    /// Its packet names nitrite or nitrate, and how much is not counted.
    Holds,
    /// Its packet is said to name none, and its own name says nitrite or nitrate.
    NameSaysSo,
    /// It was not understood where the recipe was read.
    NotRead,
    /// The same, and its own words say nitrite, nitrate or cure.
    NotReadSaysSo,
}

impl Why {
    /// Whether it is a text that was not understood, and no line.
    pub fn is_unread(self) -> bool {
        matches!(self, Self::NotRead | Self::NotReadSaysSo)
    }
}

impl Line {
    /// Why it may be a curing agent; nothing where it is known to be none.
    pub fn may_hold_cure(&self) -> Option<Why> {
        let item = pantry::ingredient(&self.item).filter(|_| self.item != OWN);
        // A row of the pantry under its own name, or under none, is what it is.
        if item.is_some_and(|i| self.name.trim().is_empty() || i.is_called(&self.name)) {
            return None;
        }
        match self.agent {
            Holds::Unknown => Some(Why::NotAsked),
            Holds::Yes => Some(Why::Holds),
            Holds::None if pantry::names_agent(&self.name) => Some(Why::NameSaysSo),
            Holds::None => None,
        }
    }
}

impl Recipe {
    /// All that may hold nitrite or nitrate and is not counted as a cure, in the order of the card. While there is any,
    /// no dose of this recipe is in range, and it is never without cure.
    pub fn may_hold_cure(&self) -> Vec<MayHold> {
        let lines = self.lines.iter().enumerate().filter_map(|(at, line)| {
            Some(MayHold {
                why: line.may_hold_cure()?,
                at,
                name: line.name.clone(),
            })
        });
        let unread = self.unread.iter().enumerate().map(|(at, text)| MayHold {
            why: if pantry::names_agent(text) {
                Why::NotReadSaysSo
            } else {
                Why::NotRead
            },
            at,
            name: text.clone(),
        });
        lines.chain(unread).collect()
    }
}
