//! A step as it is told: what is done, and its figures in the person's units.

use super::model::{Do, Step};
use crate::quantity::System;
use serde::Serialize;

/// A step with its figures.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Told {
    /// What is done.
    #[serde(rename = "do")]
    pub act: Do,
    /// How long it lasts.
    pub lasts: Option<String>,
    /// At what temperature.
    pub at: Option<String>,
    /// How often it is turned.
    pub turn_every: Option<String>,
    /// What the coldest piece has to read.
    pub until: Option<String>,
    /// The user's own word behind it; empty where there is none.
    pub note: String,
}

/// A step in the person's units.
pub fn told(step: &Step, units: System) -> Told {
    let time = |span: crate::quantity::Span| span.show(units).text;
    let heat = |temperature: crate::quantity::Temperature| temperature.show(units).text;
    Told {
        act: step.act,
        lasts: step.lasts.map(time),
        at: step.at.map(heat),
        turn_every: step.turn_every.map(time),
        until: step.until.map(heat),
        note: step.note.clone(),
    }
}
