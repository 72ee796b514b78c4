//! The consumer temperature, which comes first, and when a lower one or a table may stand in for it.

use crate::pantry::{MeatKind, Status};
use serde::Serialize;

/// One row of `tables/targets.csv`, °F and minutes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Consumer {
    /// What it is for.
    pub kind: MeatKind,
    /// For whole pieces.
    pub whole: f64,
    /// Minced or pumped.
    pub minced: f64,
    /// A lower one for whole pieces, that is asked for and never for guests at risk.
    pub choice: Option<f64>,
    /// Minutes to stay before it is cut, with that lower one.
    pub rest: f64,
    /// `bird` or `meat`: whose rows may give credit below it; empty where none may.
    pub table: &'static str,
    /// Where it is published: title, number, year.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}

impl Consumer {
    /// What has to be read of whole pieces or of mince.
    #[must_use]
    pub fn at(&self, minced: bool) -> f64 {
        least(if minced { self.minced } else { self.whole })
    }

    /// What has to be read where the lower one was chosen.
    #[must_use]
    pub fn chosen(&self) -> Option<f64> {
        self.choice.map(least)
    }
}

/// The least that has to be read for a published °F: that, or what the same page prints in °C where it is a hair less
/// (160 °F is printed as 71.1 °C; 71.0 °C is not enough, and neither is 159.9 °F).
#[must_use]
pub fn least(fahrenheit: f64) -> f64 {
    let celsius = (fahrenheit - 32.0) / 1.8;
    let printed = (celsius * 10.0).round() / 10.0;
    // To the hundredth, which holds every tenth of either scale.
    fahrenheit.min(((printed * 1.8 + 32.0) * 100.0).round() / 100.0)
}

/// The most that may be read for a published °F, as °C to a tenth, in °F: never rounded up.
#[must_use]
pub fn most(fahrenheit: f64) -> f64 {
    let celsius = (fahrenheit - 32.0) / 1.8;
    let tenths = (celsius * 10.0 + 1e-9).floor();
    ((tenths * 0.18 + 32.0) * 100.0).round() / 100.0
}

/// The rule for a kind of meat.
#[must_use]
pub fn consumer(kind: MeatKind) -> &'static Consumer {
    let rows = &crate::tables::TARGETS;
    // The build wants a row for each kind; the strictest is the one for what is not known.
    rows.iter()
        .find(|c| c.kind == kind)
        .unwrap_or(&crate::tables::STRICTEST)
}

/// What has to be read of any meat at all: the least that a kind asks for, °F.
#[must_use]
pub fn lowest(minced: bool) -> f64 {
    let rows = &crate::tables::TARGETS;
    rows.iter().map(|c| c.at(minced)).fold(f64::INFINITY, f64::min)
}

/// What is asked for below the consumer temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wish {
    /// Someone under 5, old, pregnant or ill will eat it; nothing while it was not asked.
    pub at_risk: Option<bool>,
    /// It is minced, or pumped: what was outside is inside.
    pub minced: bool,
    /// It is dried out, as strips.
    pub dried: bool,
}

/// Why nothing below the consumer temperature is offered.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum NoLower {
    /// Who will eat it was not asked.
    NotAsked,
    /// Guests at risk.
    AtRisk,
    /// Minced or pumped.
    Minced,
    /// Dried out.
    Dried,
    /// Boar, bear and their kin.
    Parasites,
    /// No table is known for this meat.
    NoTable,
}

/// Whether less than the consumer temperature may be asked for: by which table.
///
/// # Errors
/// Why not: never for boar, bear and their kin, for guests at risk, for mince or for what is dried.
pub fn may_go_lower(consumer: &Consumer, wish: Wish) -> Result<super::Table, NoLower> {
    match (wish.at_risk, consumer.table) {
        (None, _) => Err(NoLower::NotAsked),
        (Some(true), _) => Err(NoLower::AtRisk),
        _ if wish.minced => Err(NoLower::Minced),
        _ if wish.dried => Err(NoLower::Dried),
        (_, "bird") => Ok(super::Table::Bird),
        (_, "meat") => Ok(super::Table::Meat70),
        _ if consumer.kind == MeatKind::Boar => Err(NoLower::Parasites),
        _ => Err(NoLower::NoTable),
    }
}
