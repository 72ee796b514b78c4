//! The answer about a log.

use super::after::{After, after};
use super::class::{Ask, FireClass, class};
use super::doubts::{Doubt, doubts};
use super::log::{Log, temperature};
use super::published::{Published, published};
use super::show::{FirePoint, point};
use super::smoker::{Known, habit, known};
use crate::batch::{self, Batch, FireReading, Seen};
use crate::cure::too_warm;
use crate::quantity::{Problem, System, Temperature};
use crate::recipe::Do;
use crate::safety;
use crate::weigh::{self, Settings};
use serde::Serialize;

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
    /// What earlier fires told of the smoker.
    pub smoker: Known,
    /// What the heat does not settle: the batch is not rinsed, it lies frozen, it was too warm.
    pub open: Vec<String>,
    /// What stands beside every figure.
    pub cautions: Vec<&'static str>,
    /// Published tables by which nothing is judged.
    pub published: Vec<Published>,
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
    let habit = habit(&batch.fire.clone().unwrap_or_default(), &settings.smoked);
    let one = |(place, kind): (usize, &&'static str)| {
        let doubtful = in_doubt(&doubts, readings, place);
        class(
            batch,
            &log,
            place,
            safety::consumer(kind),
            &Ask {
                doubtful,
                nitrite,
                habit,
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
        smoker: known(batch, &log, &settings.smoked, |place| {
            !in_doubt(&doubts, readings, place)
        }),
        after,
        after_wrong,
        open: open(batch, now, settings),
        order: order(&classes),
        classes,
        cabinet,
        doubts,
        cautions: CAUTIONS.to_vec(),
        published: published(&kinds, nitrite, units),
    })
}

/// True where a reading of a class is in question.
fn in_doubt(doubts: &[Doubt], readings: &[FireReading], place: usize) -> bool {
    doubts.iter().any(|d| {
        let index = usize::try_from(d.reading).unwrap_or(usize::MAX);
        readings.get(index).and_then(|r| r.class) == u32::try_from(place).ok()
    })
}

/// What a batch was cooked to by its log: the least of what its classes read at their hottest. Nothing where a class is
/// not pulled, has no reading, or has one in question.
#[must_use]
pub fn cooked(batch: &Batch, now: i64, units: System) -> Option<Temperature> {
    let log = Log::of(batch);
    let readings = &batch.fire.as_ref()?.readings;
    let doubts = doubts(&log, readings, now, units);
    let hottest = |(place, points): (usize, &Vec<(f64, f64)>)| {
        log.pulled.get(place).copied().flatten()?;
        let sure = !in_doubt(&doubts, readings, place);
        points.iter().map(|p| p.1).reduce(f64::max).filter(|_| sure)
    };
    let all: Option<Vec<f64>> = log.classes.iter().enumerate().map(hottest).collect();
    all?.into_iter().reduce(f64::min).map(temperature)
}

/// What the log of the batch leaves open, whatever the thermometer read over the fire.
fn open(batch: &Batch, now: i64, settings: &Settings) -> Vec<String> {
    let steps = batch.recipe.steps.iter().enumerate();
    let rinse = steps.clone().find(|(_, s)| s.act == Do::Rinse);
    let rinsed = rinse.is_none_or(|(at, _)| batch.step(at).is_some());
    let frozen = batch
        .fridge
        .iter()
        .filter(|r| matches!(r.what, Seen::Frozen | Seen::Thawed))
        .max_by_key(|r| r.at)
        .is_some_and(|r| r.what == Seen::Frozen);
    let mut open = Vec::new();
    if !rinsed {
        open.push("It is not ticked as rinsed: by the ticks it is still in the cure.".to_owned());
    }
    if frozen {
        open.push("By the log of the refrigerator it is frozen, and not thawed yet.".to_owned());
    }
    open.extend(too_warm(batch, now, settings).map(|says| format!("It was too warm in the cure. {says}")));
    open
}

/// Places of the classes that are still to be pulled: those that have reached their target by when they did, the others
/// by their likely time.
fn order(classes: &[FireClass]) -> Vec<u32> {
    let likely = |class: &FireClass| {
        let window = class.outlook.as_ref()?.window;
        class.reached.or(window.map(|[_, likely, _]| likely))
    };
    let mut order: Vec<(i64, u32)> = classes
        .iter()
        .zip(0..)
        .filter_map(|(class, place)| Some((likely(class)?, place)))
        .collect();
    order.sort_unstable();
    order.into_iter().map(|(_, place)| place).collect()
}
