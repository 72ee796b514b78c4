//! The readings of a batch, sorted out by class and in order of time.

use crate::batch::Batch;
use crate::quantity::Temperature;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// Readings of each class and of the cabinet: seconds from the first reading of all, °F.
pub(super) struct Log {
    /// Milliseconds since 1970 at second nought.
    pub origin: i64,
    /// By the place of the class.
    pub classes: Vec<Vec<(f64, f64)>>,
    /// The cabinet.
    pub cabinet: Vec<(f64, f64)>,
    /// When each class was pulled, in milliseconds.
    pub pulled: Vec<Option<i64>>,
}

/// Degrees Fahrenheit as a binary number.
pub(super) fn fahrenheit(temperature: Temperature) -> f64 {
    temperature.base().to_f64().unwrap_or_default()
}

/// A temperature to the nearest tenth of a degree Fahrenheit.
pub(super) fn temperature(fahrenheit: f64) -> Temperature {
    let tenths = (fahrenheit * 10.0).round() as i64;
    Temperature::new(Decimal::new(tenths, 1)).unwrap_or_default()
}

/// Milliseconds as seconds.
pub(super) fn seconds(milliseconds: i64) -> f64 {
    milliseconds as f64 / 1000.0
}

/// Seconds within which readings of one class count as one.
const TOGETHER: f64 = 120.0;

impl Log {
    /// Every reading that is not struck, in order of time.
    pub fn of(batch: &Batch) -> Self {
        let readings = batch.fire.iter().flat_map(|f| &f.readings).filter(|r| !r.struck);
        let origin = readings.clone().map(|r| r.at).min().unwrap_or_default();
        let points = |class: Option<u32>, pulled: Option<i64>| {
            let mut points: Vec<(f64, f64)> = readings
                .clone()
                .filter(|r| r.class == class)
                .map(|r| (seconds(r.at.saturating_sub(origin)), fahrenheit(r.temperature)))
                .collect();
            points.sort_by(|a, b| a.0.total_cmp(&b.0));
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
        let pull = |i: u32| batch.tick(&format!("pull:{i}")).map(|t| t.at);
        Self {
            origin,
            classes: places().map(|i| points(Some(i), pull(i))).collect(),
            cabinet: points(None, None),
            pulled: places().map(pull).collect(),
        }
    }

    /// When a class was pulled.
    pub fn pulled(&self, class: Option<u32>) -> Option<i64> {
        let place = usize::try_from(class?).ok()?;
        self.pulled.get(place).copied().flatten()
    }

    /// Seconds of a time.
    pub fn at(&self, milliseconds: i64) -> f64 {
        seconds(milliseconds.saturating_sub(self.origin))
    }

    /// The time of a second.
    pub fn time(&self, seconds: f64) -> i64 {
        self.origin.saturating_add((seconds * 1000.0) as i64)
    }

    /// The cabinet's hottest reading within an hour before a time, °F: what a piece in it cannot pass.
    pub fn cabinet_at(&self, milliseconds: i64) -> Option<f64> {
        let at = self.at(milliseconds);
        let near = self.cabinet.iter().filter(|(t, _)| *t <= at && at - t <= 3600.0);
        near.map(|p| p.1).reduce(f64::max)
    }
}
