//! What can be said of one class: by which rule it is cooked enough, how it came up, when it is done.

use super::chill::{ChillRow, chill};
use super::facts::{Conditions, Degrees, HeatRule, NoOutlook, WayStands, WayUp};
use super::outlook::{Outlook, outlook, probe, setup};
use super::show::{FirePoint, figure, hours, needed_figure, point, short_figure, tenths, whole_figure};
use crate::batch::{self, Batch, PieceName};
use crate::quantity::{Figure, System};
use crate::record::{ClassRecord, ComeUp, Heat, Log, Needed, fahrenheit};
use crate::safety::{self, COME_UP, Consumer, GAP, THERMOMETER, Table, WARMING};
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
    /// What it is called.
    pub of: PieceName,
    /// The facts that this is worded from.
    pub record: ClassRecord,
    /// What can be said.
    pub state: FireState,
    /// What was read of it after it was hot enough, and before it came out, where that is colder.
    pub colder: Option<Figure>,
    /// The consumer temperature, which comes first.
    pub consumer: Figure,
    /// Its rule, with where it is published.
    pub rule: HeatRule,
    /// What has to be read: the strictest of rule, recipe and method.
    pub needed: Figure,
    /// Where to pull: what has to be read, or what was set.
    pub target: Figure,
    /// How long it is held there by the table, where that lies below what has to be read.
    pub hold: Option<String>,
    /// The same in tenths, for the picture.
    pub line: i32,
    /// Credit by a table for time at temperature, where one may be given.
    pub credit: Option<Credit>,
    /// How long it is between cold and hot, where that is worth a word.
    pub come_up: Option<WayUp>,
    /// The class whose probe speaks for it while it has no reading of its own: it is not measured.
    pub probe: Option<PieceName>,
    /// Its last reading.
    pub last: Option<Figure>,
    /// How many readings that is: within two minutes the coldest counts, and once it is out the warmest.
    pub last_of: usize,
    /// Its readings, in order of time.
    pub points: Vec<FirePoint>,
    /// When it will be done, while it is not pulled and nothing about it is in question.
    pub outlook: Option<Outlook>,
    /// Why there is no outlook; nothing where there is one or none is needed.
    pub no_outlook: Option<NoOutlook>,
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
    pub table: Table,
    /// On what conditions it holds.
    pub conditions: Conditions,
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
        (Some(_), ..) => None,
        (_, true, _) => Some(NoOutlook::InQuestion),
        (.., None) => Some(NoOutlook::NoThickness),
        _ => Some(NoOutlook::NoCabinet),
    };
    let outlook = before
        .as_ref()
        .filter(|_| pulled.is_none() && !doubtful)
        .and_then(|setup| outlook(batch, log, place, setup, shared.as_ref(), ask.now, ask.units));
    Some(FireClass {
        reached: reached(log, points, record, target).filter(|_| leave.is_some()),
        no_outlook: no_outlook.filter(|_| outlook.is_none()),
        outlook,
        of: batch.pieces.get(place).map(batch::name_of)?,
        state: state(record.heat, leave),
        colder: match record.heat {
            Heat::Colder { later, .. } => Some(short_figure(fahrenheit(later), ask.units)),
            _ => None,
        },
        consumer: needed_figure(needed.consumer, ask.units),
        rule: told(rule, ask.units),
        needed: needed_figure(needed.at, ask.units),
        target: needed_figure(crate::record::temperature(target), ask.units),
        hold: hold.map(|minutes| hours(minutes / 60.0)),
        line: tenths(target, ask.units),
        credit: needed
            .table
            .zip(record.credit)
            .map(|(table, part)| credit(table, part, ask.units)),
        come_up: come_up(record.come_up, ask.units),
        probe: shared.map(|p| p.of),
        last: points.last().map(|p| {
            if p.1 < needed.fahrenheit() {
                short_figure(p.1, ask.units)
            } else {
                figure(p.1, ask.units)
            }
        }),
        last_of: log.last_of(batch, record.place),
        points: points.iter().map(|p| point(log, *p, ask.units)).collect(),
        pulled,
        wrapped: log.wrapped.get(place).copied().flatten(),
        // What is only partly cooked is not chilled.
        chill: if pulled.is_some() && record.partly.is_none() {
            chill(batch, log, place, (ask.now, ask.units), before.as_ref())
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

const fn state(heat: Heat, leave: Option<Leave>) -> FireState {
    match heat {
        Heat::Hot { .. } | Heat::ByTable { .. } if leave.is_none() => FireState::InDoubt,
        Heat::InQuestion => FireState::CannotSay,
        Heat::Hot { .. } => FireState::MadeIt,
        Heat::ByTable { .. } => FireState::ByTable,
        Heat::Colder { .. } => FireState::Colder,
        Heat::DriedFirst { .. } => FireState::DriedFirst,
        Heat::Unread | Heat::NotYet { .. } => FireState::NotYet,
    }
}

fn told(rule: &Consumer, units: System) -> HeatRule {
    HeatRule {
        of: rule.kind,
        at: Degrees::least(rule.at(false), units),
        choice: rule.chosen().map(|f| Degrees::least(f, units)),
        // Minutes in the table are whole.
        rest: rule.rest as u32,
        source: rule.source,
        status: rule.status,
    }
}

/// Below this, °F, one study found the rows of a table short.
const SHORT_BELOW: f64 = 140.0;

fn credit(table: Table, part: u32, units: System) -> Credit {
    // Rounded down: 6.99 of 7 is not a pass.
    let tenths = (f64::from(part) * table.log() / 1000.0) as u32;
    let print = |tenths: u32| format!("{}.{}", tenths / 10, tenths % 10);
    Credit {
        num: print(tenths),
        of: print((table.log() * 10.0) as u32),
        tenths,
        table,
        conditions: Conditions {
            less: Degrees::apart(THERMOMETER, units),
            gap: (GAP / 60.0) as u32,
            short_below: Degrees::of(SHORT_BELOW, units),
        },
    }
}

/// How long it is between cold and hot, where that is worth a word.
fn come_up(up: ComeUp, units: System) -> Option<WayUp> {
    let time = |minutes: u32| hours(f64::from(minutes) / 60.0);
    let near = |minutes: u32, most: u32| minutes.saturating_add(60) > most;
    let stands = match up {
        ComeUp::Slow { minutes, .. } => WayStands::Slow { took: time(minutes) },
        ComeUp::Running { minutes, most } if near(minutes, most) => WayStands::Running { took: time(minutes) },
        ComeUp::Fine { minutes, most } if near(minutes, most) => WayStands::Fine { took: time(minutes) },
        ComeUp::Unseen { first } => WayStands::Unseen {
            first: first.show(units).text,
        },
        _ => return None,
    };
    Some(WayUp {
        stands,
        from: whole_figure(WARMING.0, units),
        to: whole_figure(WARMING.1, units),
        most: hours(COME_UP),
    })
}
