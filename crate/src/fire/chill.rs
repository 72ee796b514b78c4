//! The chill by the published options.

use super::class::{Ask, THERMOMETER};
use super::log::{Log, temperature};
use super::outlook;
use super::show::hours;
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

pub(super) fn chill(log: &Log, points: &[(f64, f64)], ask: &Ask, setup: Option<&Setup>) -> Vec<ChillRow> {
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
