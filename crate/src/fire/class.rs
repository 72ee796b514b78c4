//! What can be said of one class: by which rule it is cooked enough, how it came up, when it is done.

use super::chill::{ChillRow, chill};
use super::outlook::{NOT_MEASURED, Outlook, outlook, probe, setup};
use super::show::{FirePoint, figure, hours, needed_figure, point, short_figure, tenths};
use crate::batch::{self, Batch};
use crate::quantity::{Figure, System};
use crate::record::{ClassRecord, ComeUp, Demand, Heat, Log, Needed, fahrenheit};
use crate::safety::{self, NoLower, THERMOMETER, Table};
use crate::smoke::Habit;
use crate::standing::Leave;
use serde::Serialize;

/// What can be said of a class.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum FireState {
    /// The consumer temperature was read.
    MadeIt,
    /// The table's time at temperature was earned.
    ByTable,
    /// Neither.
    NotYet,
    /// It was read hot enough, and then colder.
    Colder,
    /// Drying began before it was hot enough.
    DriedFirst,
    /// A reading is doubtful.
    CannotSay,
    /// It was read hot enough, and something else about the batch forbids to call it so.
    InDoubt,
}

/// One size class in the fire and the chill.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct FireClass {
    /// Its name.
    pub name: String,
    /// The facts that this is worded from.
    pub record: ClassRecord,
    /// What can be said.
    pub state: FireState,
    /// `Hot enough`, `Not hot enough yet`.
    pub word: &'static str,
    /// By which rule, and what to do.
    pub says: String,
    /// The consumer temperature, which comes first.
    pub consumer: Figure,
    /// Its rule, with where it is published.
    pub rule: String,
    /// What has to be read: the strictest of rule, recipe and method.
    pub needed: Figure,
    /// Where to pull: what has to be read, or what was set.
    pub target: Figure,
    /// How long it is held there by the table, where that lies below what has to be read.
    pub hold: Option<String>,
    /// The same in tenths, for the picture.
    pub line: i32,
    /// Why no lower one is offered; empty where one may be set.
    pub no_lower: &'static str,
    /// Credit by a table for time at temperature, where one may be given.
    pub credit: Option<Credit>,
    /// How long it is between cold and hot, where that is worth a word.
    pub come_up: Option<String>,
    /// The class whose probe speaks for it while it has no reading of its own: it is not measured.
    pub probe: Option<String>,
    /// Its last reading.
    pub last: Option<Figure>,
    /// Its readings, in order of time.
    pub points: Vec<FirePoint>,
    /// When it will be done, while it is not pulled and nothing about it is in question.
    pub outlook: Option<Outlook>,
    /// Why there is no outlook; empty where there is one or none is needed.
    pub no_outlook: &'static str,
    /// Since when it may be pulled: it is at its target, and hot enough.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub reached: Option<i64>,
    /// When it was pulled.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub pulled: Option<i64>,
    /// When it was wrapped while it hung.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub wrapped: Option<i64>,
    /// The options for chilling, once it is pulled.
    pub chill: Vec<ChillRow>,
}

/// Credit for time at temperature.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Credit {
    /// `4.1`.
    pub num: String,
    /// `7.0`.
    pub of: String,
    /// Tenths of a log earned, for the picture.
    pub tenths: u32,
    /// Which table, with its source and status.
    pub table: &'static str,
    /// On what conditions it holds.
    pub conditions: &'static str,
}

/// What is asked of every class alike.
pub(super) struct Ask {
    pub habit: Habit,
    pub now: i64,
    pub units: System,
}

/// Where to pull, °F, and the minutes it is held there: what was set, but below what has to be read only where a table
/// gives a time for it, less the thermometer's error.
fn pull(batch: &Batch, needed: &Needed) -> (f64, Option<f64>) {
    let least = needed.fahrenheit();
    let set = batch.fire.as_ref().and_then(|f| f.target).map(fahrenheit);
    let recipe = needed.recipe.map(fahrenheit);
    match set {
        Some(set) if set >= least => (set, None),
        Some(set) if recipe.is_none_or(|own| own <= set) => {
            let seconds = needed.table.and_then(|table| table.seconds(set - THERMOMETER));
            seconds.map_or((least, None), |s| (set, Some(s / 60.0)))
        }
        _ => (least, None),
    }
}

/// `leave`: the right to call it hot enough.
pub(super) fn class(
    batch: &Batch,
    log: &Log,
    record: &ClassRecord,
    ask: &Ask,
    leave: Option<Leave>,
) -> Option<FireClass> {
    let place = usize::try_from(record.place).ok()?;
    let points = log.classes.get(place)?;
    let fire = batch.fire.clone().unwrap_or_default();
    let rule = safety::consumer(batch::kind(batch.pieces.get(place)?));
    let needed = &record.needed;
    let (target, hold) = pull(batch, needed);
    let doubtful = record.heat == Heat::InQuestion;
    let pulled = record.pulled;
    let shared = probe(batch, log, place, &fire, target, ask.habit);
    let before = setup(batch, log, place, &fire, target, ask.habit);
    let no_outlook = match (pulled, doubtful, &before) {
        (Some(_), ..) => "",
        (_, true, _) => "A reading of it is in question.",
        (.., None) => "Its thickness is not known: give it under Pieces.",
        _ => "How warm the cabinet is was not said: log the cabinet.",
    };
    let outlook = before
        .as_ref()
        .filter(|_| pulled.is_none() && !doubtful)
        .and_then(|setup| outlook(batch, log, place, setup, shared.as_ref(), ask.now, ask.units));
    let (state, word) = state(record.heat, leave);
    Some(FireClass {
        reached: reached(log, points, record, target).filter(|_| leave.is_some()),
        no_outlook: if outlook.is_some() { "" } else { no_outlook },
        outlook,
        name: batch.pieces.get(place).map(batch::name_of)?,
        state,
        word,
        says: says(record, ask.units, shared.is_some()),
        consumer: needed_figure(needed.consumer, ask.units),
        rule: format!("{} {} ({}).", rule.reason, rule.source, rule.status),
        needed: needed_figure(needed.at, ask.units),
        target: needed_figure(crate::record::temperature(target), ask.units),
        hold: hold.map(|minutes| hours(minutes / 60.0)),
        line: tenths(target, ask.units),
        no_lower: needed.no_lower.map_or("", no_lower),
        credit: needed.table.zip(record.credit).map(|(table, part)| credit(table, part)),
        come_up: come_up(record.come_up, ask.units),
        probe: shared.map(|p| p.name),
        last: points.last().map(|p| {
            if p.1 < needed.fahrenheit() {
                short_figure(p.1, ask.units)
            } else {
                figure(p.1, ask.units)
            }
        }),
        points: points.iter().map(|p| point(log, *p, ask.units)).collect(),
        pulled,
        wrapped: log.wrapped.get(place).copied().flatten(),
        // What is only partly cooked is not chilled.
        chill: if pulled.is_some() && record.partly.is_none() {
            chill(batch, log, place, ask, before.as_ref())
        } else {
            Vec::new()
        },
        record: record.clone(),
    })
}

/// Since when it may be pulled.
fn reached(log: &Log, points: &[(f64, f64)], record: &ClassRecord, target: f64) -> Option<i64> {
    let enough = record.heat.enough()?;
    if target <= record.needed.fahrenheit() {
        return Some(enough);
    }
    let there = points.iter().find(|(_, f)| *f >= target)?;
    Some(log.time(there.0).max(enough))
}

const fn state(heat: Heat, leave: Option<Leave>) -> (FireState, &'static str) {
    match heat {
        Heat::Hot { .. } | Heat::ByTable { .. } if leave.is_none() => (FireState::InDoubt, "Read hot, but in doubt"),
        Heat::InQuestion => (FireState::CannotSay, "Cannot say yet"),
        Heat::Hot { .. } => (FireState::MadeIt, "Hot enough"),
        Heat::ByTable { .. } => (FireState::ByTable, "Hot enough by the table"),
        Heat::Colder { .. } => (FireState::Colder, "Not hot enough: it was read colder"),
        Heat::DriedFirst { .. } => (FireState::DriedFirst, "Dried before it was hot"),
        Heat::Unread | Heat::NotYet { .. } => (FireState::NotYet, "Not hot enough yet"),
    }
}

/// Who asks for what has to be read.
fn asked_by(needed: &Needed, units: System) -> String {
    let consumer = needed_figure(needed.consumer, units).text;
    match needed.by {
        Demand::Consumer if needed.before_drying => "the consumer temperature, before it is dried".to_owned(),
        Demand::Consumer => "the consumer temperature".to_owned(),
        Demand::Choice => format!("chosen, with nobody at risk; the consumer temperature is {consumer}"),
        Demand::Jerky => "what strips need before they are dried".to_owned(),
        Demand::Recipe => format!("the recipe’s own; the consumer temperature is {consumer}"),
    }
}

fn says(record: &ClassRecord, units: System, shared: bool) -> String {
    let needed = needed_figure(record.needed.at, units).text;
    let by = asked_by(&record.needed, units);
    match record.heat {
        Heat::InQuestion => "A reading of it is in question. Answer that first.".to_owned(),
        Heat::Hot { .. } => {
            let rest = record.needed.rest;
            let rest = if rest > 0 {
                format!(" Let it rest {rest} minutes at least before it is cut.")
            } else {
                String::new()
            };
            format!("{needed} was read: {by}.{rest}")
        }
        Heat::ByTable { .. } => format!("By the table, on its conditions. Without it {needed} is needed: {by}."),
        Heat::Colder { later, .. } => format!(
            "{} was read after it, and {needed} is needed: {by}. The coldest piece counts. If it was out of the heat by \
             then, pull it at the time it came out.",
            short_figure(fahrenheit(later), units).text
        ),
        Heat::DriedFirst { .. } => format!(
            "{needed} is needed before drying begins: {by}. What dries first lives through the heat after it. Do not eat \
             it by this log."
        ),
        Heat::Unread | Heat::NotYet { .. } => {
            let probe = if shared {
                format!(" {NOT_MEASURED}")
            } else {
                String::new()
            };
            format!("{needed} is needed: {by}.{probe}")
        }
    }
}

const fn no_lower(why: NoLower) -> &'static str {
    match why {
        NoLower::NotAsked => "First say who will eat it: nothing below the consumer temperature for guests at risk.",
        NoLower::AtRisk => "Guests at risk: the consumer temperature, nothing below it.",
        NoLower::Minced => "Minced or pumped: the consumer temperature, nothing below it.",
        NoLower::Dried => "Strips to be dried: the consumer temperature before they are, nothing below it.",
        NoLower::Parasites => "Bear, wild boar and their kin: 73.9 °C (165 °F) everywhere, no table.",
        NoLower::NoTable => "No table is known for this meat: the consumer temperature, nothing below it.",
    }
}

fn credit(table: Table, part: u32) -> Credit {
    // Rounded down: 6.99 of 7 is not a pass.
    let tenths = (f64::from(part) * table.log() / 1000.0) as u32;
    let print = |tenths: u32| format!("{}.{}", tenths / 10, tenths % 10);
    Credit {
        num: print(tenths),
        of: print((table.log() * 10.0) as u32),
        tenths,
        table: match table {
            Table::Bird => {
                "Birds, 12 % fat, the longer of chicken and turkey, 7 log: FSIS Cooking Guideline 2021 (quoted)."
            }
            Table::Meat65 => "Meat, 6.5 log: FSIS Appendix A 1999 (published).",
            Table::Meat70 => "Meat, 7 log: FSIS Appendix A 1999 (published).",
        },
        conditions: "A plant's table, for moist cooking: 90 % humidity for an hour or a quarter of the cook, or a sealed or \
                     steamed oven. A dry cabinet may give less than it says. The lowest reading of the coldest piece \
                     counts, less 1 °C (2 °F) for the thermometer; nothing below its floor, nothing between readings more \
                     than 30 minutes apart. Below 60 °C (140 °F) one study found its rows short (McMinn 2018, published).",
    }
}

/// How long it is between cold and hot, where that is worth a word.
fn come_up(up: ComeUp, units: System) -> Option<String> {
    let limit = "At home it comes through 4 to 60 °C (40 to 140 °F) within 4 h (UNL extension, published).";
    let time = |minutes: u32| hours(f64::from(minutes) / 60.0);
    let near = |minutes: u32, most: u32| minutes.saturating_add(60) > most;
    match up {
        ComeUp::Slow { minutes, .. } => Some(format!(
            "Too slow: {} on its way. {limit} Heat to a figure does not mend that: do not eat it.",
            time(minutes)
        )),
        ComeUp::Running { minutes, most } if near(minutes, most) => Some(format!(
            "On its way for {}. {limit} If it will not: into the hotter oven now.",
            time(minutes)
        )),
        ComeUp::Fine { minutes, most } if near(minutes, most) => {
            Some(format!("It came up in {}. {limit}", time(minutes)))
        }
        ComeUp::Unseen { first } => Some(format!(
            "Its first reading was {}: how long it had been on its way nobody saw. {limit}",
            first.show(units).text
        )),
        _ => None,
    }
}
