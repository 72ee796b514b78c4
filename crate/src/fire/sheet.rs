//! The answer about a log.

use super::after::{After, after};
use super::class::{Ask, FireClass, class};
use super::doubts::{Questioned, doubts};
use super::facts::FireCaution;
use super::published::{Published, published};
use super::show::{FirePoint, point};
use super::smoker::{Known, habit, known};
use crate::batch::{self, Batch};
use crate::order::InOrder;
use crate::quantity::Problem;
use crate::record::{self, Log, in_question};
use crate::standing::{self, Assurance, Packing, Standing};
use crate::weigh::Settings;
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
    /// Something was read that is still in its cure by the ticks: no time of the batch goes by that reading.
    pub in_cure: bool,
    /// Questions about readings; while one stands, its class has no verdict.
    pub doubts: Vec<Questioned>,
    /// Yield and salt, once it was weighed after the fire.
    pub after: Option<After>,
    /// Why that weight cannot be right; nothing where it can.
    pub after_wrong: Option<Problem>,
    /// What earlier fires told of the smoker.
    pub smoker: Known,
    /// All that is in doubt on the batch, the gravest first.
    pub standing: Vec<standing::Doubt>,
    /// What stands beside every figure.
    pub cautions: [FireCaution; 3],
    /// Published tables by which nothing is judged.
    pub published: Vec<Published>,
}

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
    let odd = record::odd_readings(batch, now);
    let kinds = batch::kinds(&batch.pieces);
    let habit = habit(&batch.fire.clone().unwrap_or_default(), &settings.smoked);
    let ask = Ask { habit, now, units };
    let records = record::classes(batch, now);
    let standing = Standing::of(batch, settings, now, Packing::default());
    let classes: Vec<FireClass> = records
        .iter()
        .filter_map(|r| class(batch, &log, r, &ask, standing.leave(Assurance::Hot(r.place))))
        .collect();
    let cabinet = log.cabinet.iter().map(|p| point(&log, *p, units)).collect();
    let (after, after_wrong) = match after(batch) {
        Ok(after) => (after, None),
        Err(problem) => (None, Some(problem)),
    };
    Ok(FireSheet {
        smoker: known(batch, &log, &settings.smoked, |place| !in_question(&odd, place)),
        after,
        after_wrong,
        standing: standing.doubts().to_vec(),
        order: order(&classes),
        in_cure: classes
            .iter()
            .any(|c| !c.points.is_empty() && cures(batch, c.record.place)),
        classes,
        cabinet,
        doubts: doubts(&odd, units),
        cautions: [
            FireCaution::LocalCode,
            FireCaution::ProbeThickest,
            FireCaution::ChillMissed,
        ],
        published: published(&kinds, units),
    })
}

/// When a size class comes off the fire by its forecast, in milliseconds since 1970.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pull {
    /// Its place in the batch.
    pub class: u32,
    /// One in ten is sooner.
    pub earliest: i64,
    /// As likely sooner as later.
    pub likely: i64,
    /// One in ten is later.
    pub latest: i64,
    /// When it is wrapped, where that is planned and not done.
    pub wrap: Option<i64>,
}

/// When each size class that is over the fire comes off it; nothing before the first reading.
#[must_use]
pub fn pulls(batch: &Batch, now: i64, settings: &Settings) -> Vec<Pull> {
    let Some(fire) = batch.fire.as_ref().filter(|f| f.readings.iter().any(|r| !r.struck)) else {
        return Vec::new();
    };
    let log = Log::of(batch);
    let units = settings.units;
    let habit = habit(fire, &settings.smoked);
    let ask = Ask { habit, now, units };
    let pull = |record: &record::ClassRecord| {
        if cures(batch, record.place) {
            return None;
        }
        let found = class(batch, &log, record, &ask, None)?;
        let outlook = found.outlook?;
        let [earliest, likely, latest] = outlook.window?;
        Some(Pull {
            class: record.place,
            earliest,
            likely,
            latest,
            wrap: outlook.wrap,
        })
    };
    record::classes(batch, now).iter().filter_map(pull).collect()
}

/// By the ticks a class is in its cure.
fn cures(batch: &Batch, class: u32) -> bool {
    batch.is_in_cure() && batch.drawn(class).is_none()
}

/// Places of the classes that are still to be pulled: those that have reached their target by when they did, the others
/// by their likely time, and last those of which no time can be told: they still hang.
fn order(classes: &[FireClass]) -> Vec<u32> {
    let when = |class: &FireClass| {
        let window = class.outlook.as_ref().and_then(|outlook| outlook.window);
        class
            .reached
            .or(window.map(|[_, likely, _]| likely))
            .unwrap_or(i64::MAX)
    };
    let mut order: Vec<(i64, u32)> = classes
        .iter()
        .zip(0..)
        .filter(|(class, _)| class.pulled.is_none())
        .map(|(class, place)| (when(class), place))
        .collect();
    order.order_by(Ord::cmp);
    order.into_iter().map(|(_, place)| place).collect()
}
