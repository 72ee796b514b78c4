//! The answer about a log.

use super::after::{After, after};
use super::doubts::{Doubt, doubts};
use super::log::{Log, temperature};
use super::outlook::{self, Outlook, outlook, setup};
use super::show::{FirePoint, hours, point, tenths};
use crate::batch::{self, Batch};
use crate::quantity::{Figure, Problem, System};
use crate::recipe::Method;
use crate::safety::{self, COME_UP, Consumer, Left, Table, Wish};
use crate::smoke::{self, Setup};
use crate::weigh::{self, Settings};
use serde::Serialize;

/// What the thermometer may show too much or too little, °F (judgement: a good probe thermometer, not calibrated).
const THERMOMETER: f64 = 2.0;

/// A first reading above this, °F, leaves the way up unknown.
const UNKNOWN: f64 = 50.0;

/// A log, class by class.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct FireSheet {
    /// In the order of the batch.
    pub classes: Vec<FireClass>,
    /// Places of the classes still over the fire, the first to be pulled first.
    pub order: Vec<u32>,
    /// The cabinet.
    pub cabinet: Vec<FirePoint>,
    /// Questions about readings; while one stands, its class has no verdict.
    pub doubts: Vec<Doubt>,
    /// Yield and salt, once it was weighed after the fire.
    pub after: Option<After>,
    /// Why that weight cannot be right; empty where it can.
    pub after_wrong: String,
    /// What stands beside every figure.
    pub cautions: Vec<&'static str>,
}

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
    /// `Made it`, `Not a pass yet`.
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
    /// Its last reading.
    pub last: Option<Figure>,
    /// Its readings, in order of time.
    pub points: Vec<FirePoint>,
    /// When it will be done, while it is not pulled and nothing about it is in question.
    pub outlook: Option<Outlook>,
    /// Why there is no outlook; empty where there is one or none is needed.
    pub no_outlook: &'static str,
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

/// A stage of an option for chilling.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ChillRow {
    /// Name of the option.
    pub name: &'static str,
    /// `57 to 21 °C in 2 h`.
    pub stage: String,
    /// `1.3 h left`, `done in 1.2 h`, `late`.
    pub says: String,
    /// True when its time is over.
    pub late: bool,
    /// When its time ends; nothing while it has not begun or when it is done.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub until: Option<i64>,
    /// When it should get there in a refrigerator at 3 °C, alone on its shelf, by the model; only while it runs.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub expected: Option<i64>,
    /// What else must hold, and where it is published.
    pub source: String,
}

/// What stands beside every figure of the log.
const CAUTIONS: [&str; 3] = [
    "Your local code and the food-safety authority decide. This log informs; it does not license.",
    "Probe the thickest part of the coldest piece, away from bone. A shot breast is not an intact muscle: pellets carry \
     feather and gut inwards.",
    "A chill whose time is over in every option, or that nobody watched: throw it out. Heating again does not take away \
     what grew. To be faster: one layer, an ice bath for bags, a fan, no stacking.",
];

/// The log of a batch at `now`, in milliseconds since 1970.
///
/// # Errors
/// The problems of the batch or of the settings.
pub fn sheet(batch: &Batch, now: i64, settings: &Settings) -> Result<FireSheet, Vec<Problem>> {
    let problems: Vec<Problem> = batch
        .problems()
        .into_iter()
        .map(|p| p.at("batch"))
        .chain(settings.problems())
        .collect();
    if !problems.is_empty() {
        return Err(problems);
    }
    let units = settings.units;
    let log = Log::of(batch);
    let readings = batch.fire.as_ref().map_or(&[][..], |f| &f.readings);
    let doubts = doubts(&log, readings, now, units);
    // Without a weigh-out that can be read nothing is known of the nitrite, and the options for cured meat are not shown.
    let nitrite = weigh::sheet(batch, settings)
        .ok()
        .and_then(|sheet| sheet.verdict.nitrite)
        .and_then(|ppm| ppm.exact[0].parse::<f64>().ok());
    let kinds = batch::kinds(&batch.pieces);
    let one = |(place, kind): (usize, &&'static str)| {
        let doubtful = doubts.iter().any(|d| {
            let index = usize::try_from(d.reading).unwrap_or(usize::MAX);
            readings.get(index).and_then(|r| r.class) == u32::try_from(place).ok()
        });
        class(
            batch,
            &log,
            place,
            safety::consumer(kind),
            &Ask {
                doubtful,
                nitrite,
                now,
                units,
            },
        )
    };
    let classes: Vec<FireClass> = kinds.iter().enumerate().filter_map(one).collect();
    let cabinet = log.cabinet.iter().map(|p| point(&log, *p, units)).collect();
    let (after, after_wrong) = match after(batch) {
        Ok(after) => (after, String::new()),
        Err(problem) => (None, problem.message),
    };
    Ok(FireSheet {
        after,
        after_wrong,
        order: order(&classes),
        classes,
        cabinet,
        doubts,
        cautions: CAUTIONS.to_vec(),
    })
}

/// Places of the classes that are still to be pulled, by their likely time.
fn order(classes: &[FireClass]) -> Vec<u32> {
    let likely = |class: &FireClass| {
        class
            .outlook
            .as_ref()
            .and_then(|o| o.window)
            .map(|[_, likely, _]| likely)
    };
    let mut order: Vec<(i64, u32)> = classes
        .iter()
        .zip(0..)
        .filter_map(|(class, place)| Some((likely(class)?, place)))
        .collect();
    order.sort_unstable();
    order.into_iter().map(|(_, place)| place).collect()
}

/// What is asked of every class alike.
struct Ask {
    doubtful: bool,
    nitrite: Option<f64>,
    now: i64,
    units: System,
}

fn class(batch: &Batch, log: &Log, place: usize, consumer: &Consumer, ask: &Ask) -> Option<FireClass> {
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
        (FireState::MadeIt, "Made it", says)
    } else if by_table.is_some() {
        let says = format!(
            "By the table, on its conditions. The consumer temperature is {}.",
            figure(least).text
        );
        (FireState::ByTable, "Made it by the table", says)
    } else {
        (
            FireState::NotYet,
            "Not a pass yet",
            format!("The consumer temperature is {}.", figure(least).text),
        )
    };
    let after: Vec<(f64, f64)> = pulled.map_or_else(Vec::new, |at| {
        let from = points.iter().rposition(|(t, _)| *t <= log.at(at)).unwrap_or_default();
        points.iter().skip(from).copied().collect()
    });
    let before = setup(batch, place, &fire, target);
    let no_outlook = match (pulled, ask.doubtful, &before) {
        (Some(_), ..) => "",
        (_, true, _) => "A reading of it is in question.",
        (.., None) => "Its thickness is not known: give it under Pieces.",
        _ => "How warm the cabinet is was not said: log the cabinet.",
    };
    let outlook = before
        .filter(|_| pulled.is_none() && !ask.doubtful)
        .and_then(|setup| outlook(batch, log, place, &setup, ask.now, ask.units));
    Some(FireClass {
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

fn chill(log: &Log, points: &[(f64, f64)], ask: &Ask, setup: Option<&Setup>) -> Vec<ChillRow> {
    let now = log.at(ask.now);
    let mut first = ("", 0.0);
    safety::options(ask.nitrite)
        .map(|stage| {
            if first.0 != stage.key {
                first = (stage.key, stage.start);
            }
            let state = safety::left(stage, first.1, points, now, THERMOMETER);
            let says = match state {
                Left::NotBegun => "not begun".to_owned(),
                Left::Running(left) if left >= 0.0 => format!("{} left", hours(left)),
                Left::Running(over) => format!("late by {}", hours(-over)),
                Left::Done(took) => format!("done in {}", hours(took)),
                Left::Late(took) => format!("too slow: took {}", hours(took)),
            };
            let show = |f: f64| temperature(f).show(ask.units).text;
            let most = stage.hours.map(|h| format!(" in {}", hours(h))).unwrap_or_default();
            let until = match state {
                Left::Running(left) if left.is_finite() => Some(ask.now.saturating_add((left * 3.6e6) as i64)),
                _ => None,
            };
            let also = if stage.condition.is_empty() {
                String::new()
            } else {
                format!("{}; ", stage.condition)
            };
            let expected = until.and(setup).zip(points.last()).and_then(|(setup, (at, f))| {
                let (from, to) = (outlook::celsius(*f), outlook::celsius(stage.end - THERMOMETER));
                Some(log.time(at + smoke::chilled(setup, from, to)?))
            });
            ChillRow {
                expected,
                name: stage.name,
                stage: format!("{} to {}{most}", show(stage.start), show(stage.end)),
                says,
                late: matches!(state, Left::Late(_)) || matches!(state, Left::Running(left) if left < 0.0),
                until,
                source: format!("{also}{} ({})", stage.source, stage.status),
            }
        })
        .collect()
}
