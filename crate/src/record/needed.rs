//! What has to be read in the middle of the coldest piece, and what asks for it: the strictest of the consumer rule, the
//! recipe and the method.

use super::log::{fahrenheit, temperature};
use crate::batch::{self, Batch};
use crate::pantry::MeatKind;
use crate::quantity::Temperature;
use crate::recipe::Do;
use crate::safety::{self, JERKY, Table, Wish};
use serde::Serialize;

/// What asks for a temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Demand {
    /// The consumer temperature of this kind of meat.
    Consumer,
    /// The lower one for whole cuts, which was asked for, and nobody at risk eats it.
    Choice,
    /// Strips are hot before they are dried.
    Jerky,
    /// The recipe's own.
    Recipe,
}

/// What has to be read before a class is hot enough.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Needed {
    /// This or more.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub at: Temperature,
    /// What asks for it, the strictest.
    pub by: Demand,
    /// The consumer temperature of this kind, whoever eats it.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub consumer: Temperature,
    /// Minutes it stays before it is cut.
    pub rest: u32,
    /// It has to be that hot before it is dried out.
    pub before_drying: bool,
    /// What the recipe asks for by itself.
    #[cfg_attr(feature = "types", ts(type = "string | null"))]
    pub recipe: Option<Temperature>,
    /// The table whose time at temperature may stand in for the consumer temperature.
    pub table: Option<Table>,
    /// Why none may, and why no lower one may be chosen.
    pub no_lower: Option<safety::NoLower>,
}

impl Needed {
    /// °F.
    #[must_use]
    pub fn fahrenheit(&self) -> f64 {
        fahrenheit(self.at)
    }
}

/// Strips, or meat that is dried out.
fn jerky(batch: &Batch, place: usize) -> bool {
    let strips = batch.pieces.get(place).is_some_and(|p| p.cut.ends_with("-strips"));
    strips || batch.recipe.steps.iter().any(|s| s.act == Do::DryOut)
}

/// The hottest end of the recipe's steps over the heat.
fn of_recipe(batch: &Batch) -> Option<Temperature> {
    let hot = batch.recipe.steps.iter();
    hot.filter(|s| matches!(s.act, Do::Smoke | Do::Cook))
        .filter_map(|s| s.until)
        .max()
}

/// What has to be read of the class at this place; for a kind that is not known, what the strictest rule asks.
#[must_use]
pub fn needed(batch: &Batch, place: usize) -> Needed {
    let kind = batch.pieces.get(place).map_or(MeatKind::Own, batch::kind);
    let rule = safety::consumer(kind);
    let (minced, dried) = (batch.recipe.method.through(), jerky(batch, place));
    let fire = batch.fire.as_ref();
    let wish = Wish {
        at_risk: fire.and_then(|f| f.at_risk),
        minced,
        dried,
    };
    let lower = safety::may_go_lower(rule, wish);
    let consumer = rule.at(minced);
    let target = fire.and_then(|f| f.target).map(fahrenheit);
    let chosen = target
        .filter(|t| *t < consumer && lower.is_ok())
        .and_then(|t| Some(rule.chosen()?.max(t)));
    let (mut at, mut by) = chosen.map_or((consumer, Demand::Consumer), |at| (at, Demand::Choice));
    let strips = safety::least(if kind == MeatKind::Bird {
        JERKY.heat.1
    } else {
        JERKY.heat.0
    });
    if dried && strips > at {
        (at, by) = (strips, Demand::Jerky);
    }
    let recipe = of_recipe(batch);
    if let Some(own) = recipe.map(|t| safety::least(fahrenheit(t))).filter(|own| *own > at) {
        (at, by) = (own, Demand::Recipe);
    }
    Needed {
        at: temperature(at),
        by,
        consumer: temperature(consumer),
        // Minutes in the table are whole.
        rest: if chosen.is_some() { rule.rest as u32 } else { 0 },
        before_drying: dried,
        recipe,
        table: lower.ok(),
        no_lower: lower.err(),
    }
}
