//! Chilling: the published options and the time left in each.

use super::Points;
use crate::pantry::Status;
use serde::Serialize;

/// An option for chilling: the keys of `tables/cooling.csv`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Cooling {
    /// The Food Code's, for any cooked food.
    FoodCode,
    /// Option 1, for any meat.
    Option1,
    /// Option 2 for plants, for whole pieces.
    Option2,
    /// Cured, with erythorbate or ascorbate.
    Cured2021,
    /// Cured, as it was until 2022.
    Cured1999,
    /// Cured, with so much salt in its water.
    SaltyA,
    /// The same with more salt and less nitrite.
    SaltyB,
    /// Salt-cured, by its water activity.
    SaltyC,
}

/// What else must hold of a stage.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Also {
    /// All stages in so many hours, from the start of the first.
    InAll,
    /// It cools without a pause.
    Continuous,
    /// It begins within [`SOON`] minutes of the end of cooking.
    Soon,
    /// It is cooled on without a pause.
    NoPause,
    /// An outer limit for plants.
    OuterLimit,
    /// Not accepted since 14 December 2022.
    Withdrawn,
    /// A continuous drop, or a surface that is not within [`LINGERS`] for longer than there.
    NoLinger,
}

/// Minutes from the end of cooking in which such a stage begins (FSIS Stabilization Guideline 2021, published).
pub const SOON: u32 = 90;

/// Where a surface may not stay longer: from and to, °F, and the hours (FSIS Directive 7110.3, published).
pub const LINGERS: (f64, f64, f64) = (120.0, 80.0, 2.0);

/// Who an option for chilling is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scope {
    /// A home is judged by it.
    Home,
    /// Plants: it needs a measurement or a watch that a home does not have. Told, never judged by.
    Plants,
    /// Withdrawn: told as history, never judged by.
    History,
}

/// One stage of one option: a row of `tables/cooling.csv`, °F and hours.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stage {
    /// The option.
    pub key: Cooling,
    /// True where it is for cured meat only.
    pub cured: bool,
    /// Least nitrite that went in, ppm.
    pub nitrite: Option<f64>,
    /// Least erythorbate or ascorbate that went in, ppm.
    pub erythorbate: Option<f64>,
    /// Least salt in the water, %.
    pub brine: Option<f64>,
    /// Most water activity.
    pub activity: Option<f64>,
    /// Who it is for.
    pub scope: Scope,
    /// The stage begins when it falls below this.
    pub start: f64,
    /// And ends at this.
    pub end: f64,
    /// Most hours for it.
    pub hours: Option<f64>,
    /// Most hours for all stages, from the first one's start.
    pub total: Option<f64>,
    /// What else must hold.
    pub also: Option<Also>,
    /// Where it is published.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}

/// Every stage that a home is judged by, in the order of the table.
pub fn options() -> impl Iterator<Item = &'static Stage> {
    of(Scope::Home)
}

/// Every stage of this scope, in the order of the table.
pub fn of(scope: Scope) -> impl Iterator<Item = &'static Stage> {
    crate::tables::COOLING.iter().filter(move |s| s.scope == scope)
}

/// Where the first stage of the same option begins, °F.
#[must_use]
pub fn first_start(stage: &Stage) -> f64 {
    let mut all = crate::tables::COOLING.iter();
    all.find(|first| first.key == stage.key)
        .map_or(stage.start, |first| first.start)
}

/// Where a stage stands. Hours.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Left {
    /// A later stage, and still above its start.
    NotBegun,
    /// So many hours left.
    Running(f64),
    /// Reached its end, at this second.
    Done {
        /// In so many hours at most.
        took: f64,
        /// The second of that reading.
        at: f64,
    },
    /// Too late, whatever happened between the readings: so many hours at least, in place of so many at most.
    Late(f64, f64),
    /// Its time is over and no reading shows that it was met: so many hours by the longer reading of the time, in place
    /// of so many at most.
    Unseen(f64, f64),
}

/// When a stage began, in seconds: at the earliest and at the latest.
#[derive(Clone, Copy)]
struct Began {
    early: f64,
    late: f64,
}

/// The longer reading begins at the last reading above the start before the first that is not (or at the first reading of
/// all), by what was read; the shorter one at the first reading that is not above it, by the warmest.
fn began(start: f64, read: Points, warmest: Points, now: f64) -> Option<Began> {
    let below = read.iter().position(|(_, f)| *f <= start);
    let warm = read.get(..below.unwrap_or(read.len()))?.last();
    Some(Began {
        early: warm.or_else(|| read.first())?.0,
        late: warmest.iter().find(|(_, f)| *f <= start).map_or(now, |p| p.0),
    })
}

/// Where a stage stands at `now`, by readings since the piece was hot: as they were `read`, and each as warm as the
/// `warmest` piece that was read along with it.
///
/// It is done by the longer reading of its time only, and late by the shorter one only; between them nobody saw. It ends at
/// the first reading at or below its end after which none is above it: a warmer piece counts. `first` is the start of the
/// option's first stage, for the time that runs over all of them.
pub fn left(stage: &Stage, first: f64, read: Points, warmest: Points, now: f64) -> Left {
    let below = warmest.iter().any(|(_, f)| *f <= stage.start);
    let begins = |start: f64| began(start, read, warmest, now);
    let (Some(own), Some(all)) = (begins(stage.start), begins(first)) else {
        return Left::NotBegun;
    };
    if !below && stage.start < first {
        return Left::NotBegun;
    }
    let warm = warmest.iter().rposition(|(_, f)| *f > stage.end);
    let end = warmest.get(warm.map_or(0, |i| i.saturating_add(1))).map(|p| p.0);
    let seen = warm.and_then(|i| warmest.get(i)).map_or(own.late, |p| p.0);
    // Hours over or left, of the stage and of all stages, by these ends of the time.
    let spans = |until: f64, from: f64, from_all: f64| {
        let own = stage.hours.map(|most| ((until - from) / 3600.0, most));
        let whole = stage.total.map(|most| ((until - from_all) / 3600.0, most));
        let both = [own, whole].into_iter().flatten();
        both.min_by(|a, b| (a.1 - a.0).total_cmp(&(b.1 - b.0)))
    };
    let Some((took, most)) = spans(end.unwrap_or(now), own.early, all.early) else {
        return Left::NotBegun;
    };
    if took <= most {
        return end.map_or(Left::Running(most - took), |at| Left::Done {
            took: (at - own.early) / 3600.0,
            at,
        });
    }
    match spans(seen, own.late, all.late) {
        Some((least, most)) if least > most => Left::Late(least, most),
        _ => Left::Unseen(took, most),
    }
}

/// By when a chill has come so far, in hours from the end of the heat: below 70 °F, and below 41 °F in all. FDA Food Code
/// 3-501.14, published.
pub const CHILL_MARKS: [(&str, i64); 2] = [("two_hours", 2), ("cold", 6)];
