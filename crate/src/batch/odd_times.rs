//! Times that cannot be right: asked about, never mended by themselves.
//!
//! A tick has the time of the device, and the device's clock may be wrong, put right in between, or the batch may come
//! from another device. What nobody can have done shows it: a step before the rub, a rub before the kill, a time that is
//! still to come.

use super::model::Batch;
use super::stay::killed;
use crate::recipe::Do;
use serde::Serialize;

/// Times later than now by more than this, in milliseconds, are still to come: two clocks of one house differ by less.
pub const AHEAD: i64 = 120_000;
const MINUTE: i64 = 60_000;
const DAY: i64 = 86_400_000;
/// Where nobody says how far east it is: a day begins nowhere earlier than this before it does in Greenwich.
const EASTMOST: i64 = 14 * 60 * MINUTE;
/// From the kill to the rub so many days, fresh: raw game hangs or lies for a week or two (judgement).
const FRESH: i64 = 30 * DAY;

/// The day of the kill, in place of a tick.
pub const KILL: &str = "killed";

/// What is odd about a time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Untimely {
    /// It is still to come.
    ToCome,
    /// Nothing is rubbed before it is killed.
    BeforeKill,
    /// It is earlier than what has to be done before it.
    Earlier,
    /// Rubbed weeks after the kill, and nothing said that it was frozen. This may be so.
    LongAfterKill,
}

/// A time in question.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct OddTime {
    /// The id of its tick; `killed` for the day of the kill, `fridge` for a reading of the refrigerator.
    pub of: String,
    /// When it is said to have been, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
    /// What is odd about it.
    pub odd: Untimely,
    /// The id of the tick that it comes before, for one that is earlier.
    pub than: Option<String>,
}

impl OddTime {
    fn of(of: &str, at: i64, odd: Untimely) -> Self {
        Self {
            of: of.to_owned(),
            at,
            odd,
            than: None,
        }
    }

    /// True where nobody can have done it then: some clock was wrong, or something was mistyped.
    #[must_use]
    pub fn is_impossible(&self) -> bool {
        self.odd != Untimely::LongAfterKill
    }
}

/// The times of a batch that cannot be right, or hardly, at `now` in milliseconds since 1970. `east`: minutes that the
/// clocks of the place are ahead of Greenwich; without it only what is wrong everywhere is told.
#[must_use]
pub fn odd_times(batch: &Batch, now: i64, east: Option<i32>) -> Vec<OddTime> {
    let to_come = |at: i64| at > now.saturating_add(AHEAD);
    let sure = killed(&batch.killed);
    let east = east.map(|minutes| i64::from(minutes).saturating_mul(MINUTE));
    // When that day began in the place, or at the latest anywhere.
    let began = |earliest: i64| sure.map(|at| at.saturating_sub(east.unwrap_or(earliest)));
    let mut found = Vec::new();
    let kill_to_come = began(EASTMOST).filter(|at| to_come(*at));
    found.extend(kill_to_come.map(|at| OddTime::of(KILL, at, Untimely::ToCome)));

    // Each against the latest of what has to be done before it.
    let mut last: Option<(&str, i64)> = None;
    let rub = batch.tick("rub").map(|t| t.at);
    let steps: Vec<String> = (0..batch.recipe.steps.len()).map(|i| format!("step:{i}")).collect();
    let order = ["rub"]
        .into_iter()
        .chain(steps.iter().map(String::as_str))
        .chain(["end"]);
    for of in order {
        let Some(tick) = batch.tick(of) else { continue };
        if to_come(tick.at) {
            found.push(OddTime::of(of, tick.at, Untimely::ToCome));
            continue;
        }
        let before = last.filter(|(_, at)| *at > tick.at.saturating_add(AHEAD));
        if began(EASTMOST).is_some_and(|day| tick.at < day) && kill_to_come.is_none() {
            found.push(OddTime::of(of, tick.at, Untimely::BeforeKill));
        } else if let Some((than, _)) = before {
            found.push(OddTime {
                than: Some(than.to_owned()),
                ..OddTime::of(of, tick.at, Untimely::Earlier)
            });
        }
        if last.is_none_or(|(_, at)| tick.at > at) {
            last = Some((of, tick.at));
        }
    }
    for tick in &batch.ticks {
        let in_cure = tick.of.starts_with("turn:") || tick.of.starts_with("draw:");
        if in_cure && to_come(tick.at) {
            found.push(OddTime::of(&tick.of, tick.at, Untimely::ToCome));
        } else if in_cure && rub.is_some_and(|rub| !to_come(rub) && rub > tick.at.saturating_add(AHEAD)) {
            found.push(OddTime {
                than: Some("rub".to_owned()),
                ..OddTime::of(&tick.of, tick.at, Untimely::Earlier)
            });
        }
    }
    let read = batch.fridge.iter().map(|r| r.at).filter(|at| to_come(*at));
    found.extend(read.map(|at| OddTime::of("fridge", at, Untimely::ToCome)));

    let long = rub.filter(|rub| sure.is_some_and(|at| rub.saturating_sub(at) > FRESH) && found.is_empty());
    let fresh = !batch.pieces.iter().any(|p| p.thawed) && batch.recipe.steps.iter().any(|s| s.act == Do::Cure);
    found.extend(
        long.filter(|_| fresh)
            .map(|at| OddTime::of("rub", at, Untimely::LongAfterKill)),
    );
    found
}
