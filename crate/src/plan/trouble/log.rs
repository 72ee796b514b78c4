//! What the log of the refrigerator says already, so that the card on warmth asks only what it cannot know.
#![allow(
    clippy::float_arithmetic,
    reason = "hours as they were read; no dose is reckoned here"
)]

use super::keys::{Ask, Choice};
use crate::batch::{Batch, Thermometer, cold_log, odd_cold};
use crate::cure::{TOO_LONG, WARM, Warmth, cold};
use crate::quantity::{Span, System, Temperature};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::{Deserialize, Serialize};

/// Hotter around it than this, °F, it may lie for one hour: FoodSafety.gov, quoted.
const HOT: f64 = 90.0;
/// So many hours then.
const HOT_HOURS: f64 = 1.0;

/// The batch that a card is asked about.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskLog {
    /// The batch.
    pub batch: Batch,
    /// The time now, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub now: i64,
    /// Units to answer in.
    pub units: System,
}

/// What its log says of warmth.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LogSaid {
    /// So long above 40 °F as it was read; nothing where that is no minute.
    pub warm: Option<String>,
    /// So long more perhaps, which nobody read.
    pub unread: Option<String>,
    /// Since when, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub since: Option<i64>,
    /// The warmest that the meat or the refrigerator was read at.
    pub highest: Option<String>,
    /// It is above 40 °F by the last reading.
    pub now: bool,
}

/// What the log says, and what that answers; nothing where it says of no warmth, or a reading is in question.
pub(super) fn said(AskLog { batch, now, units }: &AskLog) -> Option<(LogSaid, Vec<(Ask, Choice)>)> {
    let cold = cold(batch, *now);
    let perhaps = cold.unread + cold.out;
    if cold.warmth() == Warmth::Kept || !odd_cold(batch).is_empty() {
        return None;
    }
    let span = |hours: f64| {
        let minutes = Decimal::try_from((hours * 60.0).round()).ok()?;
        let span = Span::new(minutes).ok().filter(|_| minutes >= Decimal::ONE)?;
        Some(span.show(*units).text)
    };
    let log = cold_log(batch);
    let read = |room: bool| {
        let own = log.iter().filter(move |r| (r.of == Thermometer::Room) == room);
        own.filter(|r| r.at <= *now).filter_map(|r| r.reads)
    };
    let room = read(true).filter_map(|t| t.base().to_f64()).reduce(f64::max);
    let warmest = read(false)
        .max()
        .filter(|t| t.base().to_f64().is_some_and(|f| f > WARM));
    let mut answers = vec![(Ask::Got40, Choice::Warm)];
    let sure = |most: f64, under: Choice, over: Choice| {
        if cold.warm >= most {
            Some(over)
        } else {
            (cold.warm + perhaps < most).then_some(under)
        }
    };
    if let Some(room) = room {
        answers.push((Ask::Air90, if room > HOT { Choice::Yes } else { Choice::No }));
    }
    let in_heat = sure(HOT_HOURS, Choice::Under1h, Choice::Over1h);
    answers.extend(in_heat.map(|c| (Ask::Warm1h, c)));
    answers.extend(sure(TOO_LONG, Choice::Under2h, Choice::Over2h).map(|c| (Ask::Warm2h, c)));
    let said = LogSaid {
        warm: span(cold.warm),
        unread: span(perhaps),
        since: cold.since,
        highest: warmest.map(|t: Temperature| t.show(*units).text),
        now: cold.now,
    };
    Some((said, answers))
}
