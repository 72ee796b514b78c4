//! Chilling: the published options and the time left in each.

use super::Points;

/// One stage of one option: a row of `tables/cooling.csv`, °F and hours.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stage {
    /// Key of the option.
    pub key: &'static str,
    /// Its name.
    pub name: &'static str,
    /// True where it is for cured meat only.
    pub cured: bool,
    /// Least nitrite that went in, ppm.
    pub nitrite: Option<f64>,
    /// Least salt in the water, %.
    pub brine: Option<f64>,
    /// Most water activity.
    pub activity: Option<f64>,
    /// True where a home follows it first.
    pub home: bool,
    /// The stage begins when it falls below this.
    pub start: f64,
    /// And ends at this.
    pub end: f64,
    /// Most hours for it.
    pub hours: Option<f64>,
    /// Most hours for all stages, from the first one's start.
    pub total: Option<f64>,
    /// What else must hold.
    pub condition: &'static str,
    /// Where it is published.
    pub source: &'static str,
    /// `published`, or what is from memory.
    pub status: &'static str,
}

impl Stage {
    /// Whether a home is judged by it: those for homes, and the option for cured meat where at least so much nitrite
    /// went in (ppm).
    ///
    /// Options that hang on salt in the water or on water activity need a measurement that a home does not have, and
    /// one for plants begins at an end of cooking that cannot be seen; none of them is judged by.
    fn applies(&self, nitrite: Option<f64>) -> bool {
        let salty = self.brine.is_some() || self.activity.is_some();
        let cured = self.cured && !salty && self.nitrite.is_some_and(|least| nitrite.is_some_and(|n| n >= least));
        self.home || cured
    }
}

/// Every stage that applies, in the order of the table.
pub fn options(nitrite: Option<f64>) -> impl Iterator<Item = &'static Stage> {
    crate::tables::COOLING.iter().filter(move |s| s.applies(nitrite))
}

/// Every other stage: published for plants, and nothing is judged by it here.
pub fn for_plants(nitrite: Option<f64>) -> impl Iterator<Item = &'static Stage> {
    crate::tables::COOLING.iter().filter(move |s| !s.applies(nitrite))
}

/// Where a stage stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Left {
    /// A later stage, and still above its start.
    NotBegun,
    /// So many hours left; below nought when it is late.
    Running(f64),
    /// Reached its end in so many hours.
    Done(f64),
    /// Reached its end too late: so many hours in place of what is allowed.
    Late(f64),
}

/// Where a stage stands at `now`, by readings since the piece was pulled.
///
/// The longer reading of the time: it begins at the last reading that was surely still as warm as the start (or the first
/// reading, where none was), and ends at the first that is surely as cold as the end, by the thermometer's error. `first` is the start of the option's first
/// stage, for the time that runs over all of them.
pub fn left(stage: &Stage, first: f64, points: Points, now: f64, error: f64) -> Left {
    let begun = |at: f64| -> Option<f64> {
        let warm = points.iter().rev().find(|(_, f)| f - error >= at);
        let below = points.iter().any(|(_, f)| f - error < at);
        // A piece that is out cools unseen: the option's clock runs from its last warm reading.
        (below || at >= first)
            .then(|| warm.or_else(|| points.first()).map(|p| p.0))
            .flatten()
    };
    let (Some(begin), Some(all)) = (begun(stage.start), begun(first)) else {
        return Left::NotBegun;
    };
    let end = points.iter().find(|(at, f)| *at >= begin && f + error <= stage.end);
    let until = end.map_or(now, |p| p.0);
    let own = stage.hours.map(|h| h - (until - begin) / 3600.0);
    let whole = stage.total.map(|h| h - (until - all) / 3600.0);
    let rest = own.unwrap_or(f64::INFINITY).min(whole.unwrap_or(f64::INFINITY));
    match end {
        Some(_) if rest >= 0.0 => Left::Done((until - begin) / 3600.0),
        Some(_) => Left::Late((until - begin) / 3600.0),
        None => Left::Running(rest),
    }
}
