//! What can be said of one class: by which rule it is cooked enough, how it came up, when it is done.

use super::chill::{ChillRow, chill};
use super::log::{Log, temperature};
use super::outlook::{NOT_MEASURED, Outlook, outlook, probe, setup};
use super::show::{FirePoint, hours, point, tenths};
use crate::batch::{self, Batch};
use crate::quantity::{Figure, System};
use crate::recipe::Method;
use crate::safety::{self, COME_UP, Consumer, Table, Wish};
use crate::smoke::Habit;
use serde::Serialize;

/// What the thermometer may show too much or too little, °F (judgement: a good probe thermometer, not calibrated).
pub(super) const THERMOMETER: f64 = 2.0;

/// A first reading above this, °F, leaves the way up unknown.
const UNKNOWN: f64 = 50.0;

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
    /// A reading is doubtful.
    CannotSay,
}

/// One size class in the fire and the chill.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct FireClass {
    /// Its name.
    pub name: String,
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
    /// Where to pull: the consumer temperature, or what was set.
    pub target: Figure,
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
    /// When it was first read at its target.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub reached: Option<i64>,
    /// When it was pulled.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub pulled: Option<i64>,
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
    pub doubtful: bool,
    pub nitrite: Option<f64>,
    pub habit: Habit,
    pub now: i64,
    pub units: System,
}

pub(super) fn class(batch: &Batch, log: &Log, place: usize, consumer: &Consumer, ask: &Ask) -> Option<FireClass> {
    let points = log.classes.get(place)?;
    let pulled = log.pulled.get(place).copied().flatten();
    let fire = batch.fire.clone().unwrap_or_default();
    // What was outside is inside, in a piece that was pumped too.
    let minced = matches!(
        batch.recipe.method,
        Method::Ground | Method::Pumped | Method::PumpedAndCovered
    );
    // Nothing below the consumer temperature until somebody was asked who will eat it.
    let lower = match fire.at_risk {
        None => Err("First say who will eat it: nothing below the consumer temperature for guests at risk."),
        Some(at_risk) => safety::may_go_lower(consumer, Wish { at_risk, minced }),
    };
    let least = consumer.at(minced);
    let wished = fire
        .target
        .map(super::log::fahrenheit)
        .filter(|f| *f >= least || lower.is_ok());
    let target = wished.unwrap_or(least);
    let figure = |f: f64| temperature(f).show(ask.units);
    // What was read hot counts also when it was read after the pull: it carries over.
    let hot = points.iter().any(|(_, f)| *f >= least);
    let earned = lower
        .ok()
        .map(|table| (table, safety::credit(table, points, THERMOMETER)));
    let by_table = earned.filter(|(_, part)| *part >= 1.0);
    let up = safety::come_up(points, log.at(pulled.unwrap_or(ask.now)), THERMOMETER);
    let come_up = up
        // First read when it was warm already: nobody knows how long it had been on its way.
        .filter(|up| up.hours > COME_UP - 1.0 || up.unseen && points.first().is_some_and(|p| p.1 > UNKNOWN))
        .map(|up| slow(&up));
    let shared = probe(batch, log, place, &fire, target, ask.habit);
    let rest = if consumer.rest > 0.0 && !minced {
        " Let it rest 3 minutes at least before it is cut."
    } else {
        ""
    };
    let (state, word, says) = if ask.doubtful {
        let says = "A reading of it is in question. Answer that first.".to_owned();
        (FireState::CannotSay, "Cannot say yet", says)
    } else if hot {
        let says = format!("{} was read: the consumer temperature.{rest}", figure(least).text);
        (FireState::MadeIt, "Hot enough", says)
    } else if by_table.is_some() {
        let says = format!(
            "By the table, on its conditions. The consumer temperature is {}.",
            figure(least).text
        );
        (FireState::ByTable, "Hot enough by the table", says)
    } else {
        (
            FireState::NotYet,
            "Not hot enough yet",
            format!(
                "The consumer temperature is {}.{}",
                figure(least).text,
                shared.as_ref().map_or(String::new(), |_| format!(" {NOT_MEASURED}"))
            ),
        )
    };
    let after: Vec<(f64, f64)> = pulled.map_or_else(Vec::new, |at| {
        let from = points.iter().rposition(|(t, _)| *t <= log.at(at)).unwrap_or_default();
        points.iter().skip(from).copied().collect()
    });
    let before = setup(batch, place, &fire, target, ask.habit);
    let no_outlook = match (pulled, ask.doubtful, &before) {
        (Some(_), ..) => "",
        (_, true, _) => "A reading of it is in question.",
        (.., None) => "Its thickness is not known: give it under Pieces.",
        _ => "How warm the cabinet is was not said: log the cabinet.",
    };
    let outlook = before
        .filter(|_| pulled.is_none() && !ask.doubtful)
        .and_then(|setup| outlook(batch, log, place, &setup, shared.as_ref(), ask.now, ask.units));
    Some(FireClass {
        reached: points
            .iter()
            .find(|(_, f)| *f >= target && !ask.doubtful)
            .map(|read| point(log, *read, ask.units).at),
        no_outlook: if outlook.is_some() { "" } else { no_outlook },
        outlook,
        name: batch.pieces.get(place).map(batch::name_of)?,
        state,
        word,
        says,
        consumer: figure(least),
        rule: format!("{} {} ({}).", consumer.reason, consumer.source, consumer.status),
        target: figure(target),
        line: tenths(target, ask.units),
        no_lower: lower.err().unwrap_or_default(),
        credit: earned.map(|(table, part)| credit(table, part)),
        come_up,
        probe: shared.map(|p| p.name),
        last: points.last().map(|p| figure(p.1)),
        points: points.iter().map(|p| point(log, *p, ask.units)).collect(),
        pulled,
        chill: if pulled.is_some() {
            chill(log, &after, ask, before.as_ref())
        } else {
            Vec::new()
        },
    })
}

fn credit(table: Table, part: f64) -> Credit {
    // Rounded down: 6.99 of 7 is not a pass.
    let tenths = (part * table.log() * 10.0).floor() as u32;
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

fn slow(up: &safety::ComeUp) -> String {
    let hours = hours(up.hours);
    let since = if up.unseen {
        "since its first reading, which was not cold: it may be longer"
    } else {
        "since it was cold"
    };
    let limit = "At home it comes through 4 to 60 °C (40 to 140 °F) within 4 h (UNL extension, published).";
    match (up.hours > COME_UP, up.hot) {
        (true, true) => format!(
            "Too slow: {hours} to 60 °C (140 °F), {since}. {limit} Heat to a figure does not mend that: do not eat it."
        ),
        (true, false) => format!("Too slow: {hours} already, {since}. {limit} Do not eat it."),
        (false, true) => format!("It came up in {hours}, {since}. {limit}"),
        (false, false) => format!("On its way for {hours}, {since}. {limit} If it will not: into the hotter oven now."),
    }
}
