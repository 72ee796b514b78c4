//! The chill by the published options.

use super::facts::{ChillStage, StageLeft};
use super::show::{self, celsius, difference, hours};
use crate::batch::Batch;
use crate::quantity::{Figure, System};
use crate::record::{self, Log, StageRecord};
use crate::safety::{self, Left};
use crate::smoke::{self, Setup};
use serde::Serialize;

/// A stage of an option for chilling.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ChillRow {
    /// The stage as it is published.
    pub stage: ChillStage,
    /// Where it stands.
    pub left: StageLeft,
    /// Where nobody saw it: minutes from its start to its end in a refrigerator at 3 °C, alone on its shelf, by the model. A
    /// likely figure, never an assurance.
    pub by_model: Option<u32>,
    /// By how much a thermometer of a home may be off either way. What is read is judged as it is read.
    pub may_be_off: Figure,
    /// When its time ends; nothing while it has not begun or when it is done.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub until: Option<i64>,
    /// When it should get there in a refrigerator at 3 °C, alone on its shelf, by the model; only while it runs.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub expected: Option<i64>,
}

pub(super) fn chill(
    batch: &Batch,
    log: &Log,
    place: usize,
    (now, units): (i64, System),
    setup: Option<&Setup>,
) -> Vec<ChillRow> {
    let points = log.classes.get(place).map_or(&[][..], Vec::as_slice);
    let row = |StageRecord { stage, left, until }: StageRecord| {
        let stands = match left {
            Left::NotBegun => StageLeft::NotBegun,
            Left::Running(left) => StageLeft::Running { left: hours(left) },
            Left::Done { took, .. } => StageLeft::Done { took: hours(took) },
            Left::Late(least, most) => StageLeft::Late {
                least: hours(least),
                most: hours(most),
            },
            Left::Unseen(took, most) => StageLeft::Unseen {
                took: hours(took),
                most: hours(most),
            },
        };
        let expected = until.and(setup).zip(points.last()).and_then(|(setup, (at, f))| {
            let (from, to) = (celsius(*f), celsius(stage.end));
            Some(log.time(at + smoke::chilled(setup, from, to)?))
        });
        let by_model = setup.filter(|_| matches!(left, Left::Unseen(..))).and_then(|setup| {
            let seconds = smoke::chilled(setup, celsius(stage.start), celsius(stage.end))?;
            Some((seconds / 60.0).ceil() as u32)
        });
        ChillRow {
            by_model,
            may_be_off: difference(safety::THERMOMETER, units),
            expected,
            stage: show::stage(stage, units),
            left: stands,
            until,
        }
    };
    record::stages(batch, place, now).into_iter().map(row).collect()
}
