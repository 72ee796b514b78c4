//! The chill by the published options, in words.

use super::class::Ask;
use super::outlook;
use super::show::{difference, figure, hours, most_figure};
use crate::batch::Batch;
use crate::quantity::Figure;
use crate::record::{self, Log, StageRecord};
use crate::safety::{self, Left};
use crate::smoke::{self, Setup};
use serde::Serialize;

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
    /// True when it was too slow, whatever happened between the readings.
    pub late: bool,
    /// True when its time is over and nobody saw whether it was met.
    pub unseen: bool,
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
    /// What else must hold, and where it is published.
    pub source: String,
}

pub(super) fn chill(batch: &Batch, log: &Log, place: usize, ask: &Ask, setup: Option<&Setup>) -> Vec<ChillRow> {
    let points = log.classes.get(place).map_or(&[][..], Vec::as_slice);
    let row = |StageRecord { stage, left }: StageRecord| {
        let says = match left {
            Left::NotBegun => "not begun".to_owned(),
            Left::Running(left) => format!("{} left", hours(left)),
            Left::Done { took, .. } => format!("done in {}", hours(took)),
            Left::Late(least, most) => format!("too slow: {} at least, {} allowed", hours(least), hours(most)),
            Left::Unseen(took, most) => format!(
                "its time is over and nobody saw it met: up to {}, {} allowed",
                hours(took),
                hours(most)
            ),
        };
        let most_hours = stage.hours.map(|h| format!(" in {}", hours(h))).unwrap_or_default();
        let until = match left {
            Left::Running(left) if left.is_finite() => Some(ask.now.saturating_add((left * 3.6e6) as i64)),
            _ => None,
        };
        let also = if stage.condition.is_empty() {
            String::new()
        } else {
            format!("{}; ", stage.condition)
        };
        let expected = until.and(setup).zip(points.last()).and_then(|(setup, (at, f))| {
            let (from, to) = (outlook::celsius(*f), outlook::celsius(stage.end));
            Some(log.time(at + smoke::chilled(setup, from, to)?))
        });
        let unseen = matches!(left, Left::Unseen(..));
        let by_model = setup.filter(|_| unseen).and_then(|setup| {
            let seconds = smoke::chilled(setup, outlook::celsius(stage.start), outlook::celsius(stage.end))?;
            Some((seconds / 60.0).ceil() as u32)
        });
        ChillRow {
            unseen,
            by_model,
            may_be_off: difference(safety::THERMOMETER, ask.units),
            expected,
            name: stage.name,
            stage: format!(
                "{} to {}{most_hours}",
                figure(stage.start, ask.units).text,
                most_figure(stage.end, ask.units).text
            ),
            says,
            late: matches!(left, Left::Late(..)),
            until,
            source: format!("{also}{} ({})", stage.source, stage.status),
        }
    };
    record::stages(batch, place, ask.now).into_iter().map(row).collect()
}
