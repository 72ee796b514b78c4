//! The readings of a batch, sorted out by class and in order of time.

use crate::batch::{AHEAD, Batch};
use crate::order::InOrder;
use crate::quantity::Temperature;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// Readings of each class and of the cabinet: seconds from the first reading of all, °F.
#[derive(Clone, Debug)]
pub struct Log {
    /// Milliseconds since 1970 at second nought.
    pub origin: i64,
    /// By the place of the class.
    pub classes: Vec<Vec<(f64, f64)>>,
    /// The cabinet.
    pub cabinet: Vec<(f64, f64)>,
    /// When each class was pulled, in milliseconds.
    pub pulled: Vec<Option<i64>>,
    /// When each class was wrapped while it hung, in milliseconds.
    pub wrapped: Vec<Option<i64>>,
    /// When a pan of water was put in while they hung, in milliseconds.
    pub pan: Option<i64>,
}

/// Degrees Fahrenheit as a binary number.
#[must_use]
pub fn fahrenheit(temperature: Temperature) -> f64 {
    temperature.base().to_f64().unwrap_or_default()
}

/// A temperature to the nearest hundredth of a degree Fahrenheit, which holds every tenth of either scale.
#[must_use]
pub fn temperature(fahrenheit: f64) -> Temperature {
    let hundredths = (fahrenheit * 100.0).round() as i64;
    Temperature::new(Decimal::new(hundredths, 2)).unwrap_or_default()
}

/// Milliseconds as seconds.
#[must_use]
pub fn seconds(milliseconds: i64) -> f64 {
    milliseconds as f64 / 1000.0
}

/// Seconds within which readings of one class count as one.
pub(super) const TOGETHER: f64 = 120.0;

/// A chill begins at the last reading of this or more, °F: where the first published option does.
const HOT: f64 = 135.0;

impl Log {
    /// Every reading that is not struck, in order of time.
    #[must_use]
    pub fn of(batch: &Batch) -> Self {
        let readings = batch.fire.iter().flat_map(|f| &f.readings).filter(|r| !r.struck);
        let origin = readings.clone().map(|r| r.at).min().unwrap_or_default();
        let points = |class: Option<u32>, pulled: Option<i64>| {
            let mut points: Vec<(f64, f64)> = readings
                .clone()
                .filter(|r| r.class == class)
                .map(|r| (seconds(r.at.saturating_sub(origin)), fahrenheit(r.temperature)))
                .collect();
            points.order_by(|a, b| a.0.total_cmp(&b.0));
            let pulled = pulled.map_or(f64::INFINITY, |at| seconds(at.saturating_sub(origin)));
            // Pieces probed one after another are one reading: of the coldest over the fire, of the warmest in the chill.
            points.dedup_by(|next, kept| {
                let same = next.0 - kept.0 <= TOGETHER && (next.0 < pulled) == (kept.0 < pulled);
                if same {
                    kept.1 = if next.0 < pulled {
                        kept.1.min(next.1)
                    } else {
                        kept.1.max(next.1)
                    };
                }
                same
            });
            points
        };
        let places = || (0..batch.pieces.len()).filter_map(|i| u32::try_from(i).ok());
        let done = |of: &str| batch.tick(of).map(|t| t.at);
        let pull = |i: u32| done(&format!("pull:{i}"));
        Self {
            origin,
            classes: places().map(|i| points(Some(i), pull(i))).collect(),
            cabinet: points(None, None),
            pulled: places().map(pull).collect(),
            wrapped: places().map(|i| done(&format!("wrap:{i}"))).collect(),
            pan: done("pan"),
        }
    }

    /// How many readings the last point of a class stands for: those within two minutes of it count as one.
    #[must_use]
    pub fn last_of(&self, batch: &Batch, place: u32) -> usize {
        let points = usize::try_from(place).ok().and_then(|at| self.classes.get(at));
        let Some((from, _)) = points.and_then(|points| points.last()) else {
            return 0;
        };
        let pulled = self.pulled(Some(place)).map_or(f64::INFINITY, |at| self.at(at));
        let readings = batch.fire.iter().flat_map(|f| &f.readings);
        let own = readings
            .filter(|r| !r.struck && r.class == Some(place))
            .map(|r| self.at(r.at));
        own.filter(|at| (0.0..=TOGETHER).contains(&(at - from)) && (*at < pulled) == (*from < pulled))
            .count()
    }

    /// When a class was pulled.
    #[must_use]
    pub fn pulled(&self, class: Option<u32>) -> Option<i64> {
        let place = usize::try_from(class?).ok()?;
        self.pulled.get(place).copied().flatten()
    }

    /// Seconds of a time.
    #[must_use]
    pub fn at(&self, milliseconds: i64) -> f64 {
        seconds(milliseconds.saturating_sub(self.origin))
    }

    /// The time of a second.
    #[must_use]
    pub fn time(&self, seconds: f64) -> i64 {
        self.origin.saturating_add((seconds * 1000.0) as i64)
    }

    /// The cabinet's hottest reading within an hour before a time, °F: what a piece in it cannot pass.
    #[must_use]
    pub fn cabinet_at(&self, milliseconds: i64) -> Option<f64> {
        let at = self.at(milliseconds);
        let near = self.cabinet.iter().filter(|(t, _)| *t <= at && at - t <= 3600.0);
        near.map(|p| p.1).reduce(f64::max)
    }
}

/// The readings of one class as they are judged: seconds of the log, °F, in order of time.
#[derive(Clone, Debug)]
pub(super) struct Read {
    origin: i64,
    /// Over the fire, as they were read.
    pub seen: Vec<(f64, f64)>,
    /// Over the fire: each as cold as the coldest read within two minutes of it.
    pub over: Vec<(f64, f64)>,
    /// After it was taken out, as cold as the coldest beside it.
    pub out: Vec<(f64, f64)>,
    /// The chill as it was read, from the last reading over the fire that was hot.
    pub cooling: Vec<(f64, f64)>,
    /// The same, each as warm as the warmest beside it.
    pub chill: Vec<(f64, f64)>,
    /// The second at which it was taken out; endless while it was not.
    pub pulled: f64,
}

/// Each reading as the least (or most) of those within two minutes on either side, so that one more reading never takes
/// another out of the count.
fn beside(points: &[(f64, f64)], pick: fn(f64, f64) -> f64) -> Vec<(f64, f64)> {
    points
        .iter()
        .map(|(at, f)| {
            let near = points.iter().filter(|(t, _)| (t - at).abs() <= TOGETHER);
            (*at, near.map(|p| p.1).fold(*f, pick))
        })
        .collect()
}

impl Read {
    pub(super) fn of(batch: &Batch, log: &Log, place: usize, now: i64) -> Self {
        let readings = batch.fire.iter().flat_map(|f| &f.readings);
        let own = |class: Option<u32>| class.and_then(|c| usize::try_from(c).ok()) == Some(place);
        let mut points: Vec<(f64, f64)> = readings
            .filter(|r| !r.struck && own(r.class) && r.at <= now.saturating_add(AHEAD))
            .map(|r| (log.at(r.at), fahrenheit(r.temperature)))
            .collect();
        points.order_by(|a, b| a.0.total_cmp(&b.0));
        let pulled = log.pulled.get(place).copied().flatten();
        let pulled = pulled.map_or(f64::INFINITY, |at| log.at(at));
        let split = points.partition_point(|(at, _)| *at <= pulled);
        let (over, out) = points.split_at(split);
        // A fire that went out chills its meat before anybody takes it out.
        let hot = over.iter().rposition(|(_, f)| *f >= HOT);
        let from = hot.unwrap_or(over.len().saturating_sub(1));
        let joined = |over: &[(f64, f64)], out: &[(f64, f64)]| {
            let mut chill = over.get(from..).unwrap_or_default().to_vec();
            if chill.is_empty() && pulled.is_finite() {
                chill.push((pulled, f64::INFINITY));
            }
            chill.extend(out);
            chill
        };
        Self {
            origin: log.origin,
            seen: over.to_vec(),
            over: beside(over, f64::min),
            out: beside(out, f64::min),
            cooling: joined(over, out),
            chill: joined(&beside(over, f64::max), &beside(out, f64::max)),
            pulled,
        }
    }

    /// The time of a second.
    pub(super) fn time(&self, seconds: f64) -> i64 {
        self.origin.saturating_add((seconds * 1000.0).round() as i64)
    }
}
