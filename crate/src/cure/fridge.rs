//! The refrigerator: time that counts. An hour counts as `D(T) / D(4 °C)`, below 34 °F as nothing.

use crate::batch::{FridgeReading, Seen};
use crate::quantity::Temperature;
use rust_decimal::prelude::ToPrimitive;

const HOUR: f64 = 3_600_000.0;
/// Below this the clock stands. Clemson HGIC 3603, published.
const STANDS: f64 = 34.0;
/// Above this it warns. 36 to 40 °F: USDA Farmers' Bulletin 2265, published; to warn above it: quoted.
const WARM: f64 = 40.0;
/// What is taken where nothing was read: 38 °F, Clemson HGIC 3603, published.
const USUAL: f64 = 38.0;
/// Activation energy over the gas constant, K: 25 kJ/mol, judgement (20 to 30).
const ACTIVATION: f64 = 25_000.0 / 8.314;

/// A shut refrigerator keeps cold so many hours without power. FoodSafety.gov, quoted.
const KEEPS: f64 = 4.0;
/// A refrigerator that warms without power is taken in so many steps.
const STEPS: u32 = 8;

/// A stretch with one speed, until the next begins.
struct Stretch {
    from: f64,
    counts: f64,
    /// Above 40 °F, or not known to be below.
    warm: bool,
}

impl Stretch {
    fn at(from: f64, fahrenheit: f64) -> Self {
        Self {
            from,
            counts: counts(fahrenheit),
            warm: fahrenheit > WARM,
        }
    }
}

/// The course of a refrigerator from the rub on, in hours after it.
pub(super) struct Fridge {
    stretches: Vec<Stretch>,
    /// What counts an hour of the forecast.
    ahead: f64,
}

/// How much an hour counts at a temperature.
fn counts(fahrenheit: f64) -> f64 {
    if fahrenheit < STANDS {
        return 0.0;
    }
    let kelvin = (fahrenheit - 32.0) / 1.8 + 273.15;
    (ACTIVATION * (1.0 / 277.15 - 1.0 / kelvin)).exp()
}

impl Fridge {
    /// From the readings, in order of time, those before the rub too. `usual`: what is taken until one is there.
    pub fn new(readings: &[FridgeReading], begun: i64, usual: Option<Temperature>) -> Self {
        let usual = usual
            .and_then(|t| t.base().to_f64())
            .filter(|f| (STANDS..=WARM).contains(f))
            .unwrap_or(USUAL);
        let mut sorted: Vec<&FridgeReading> = readings.iter().collect();
        sorted.sort_by_key(|r| r.at);
        let (mut fahrenheit, mut frozen) = (usual, false);
        let mut stretches = vec![Stretch::at(0.0, fahrenheit)];
        // Without power: since when nothing was read, and how many stretches there were by then.
        let mut dark: Option<(f64, usize)> = None;
        for reading in sorted {
            let from = hours(reading.at.saturating_sub(begun)).max(0.0);
            let read = reading.reads.and_then(|t| t.base().to_f64());
            if let Some((since, known)) = dark {
                if let Some(read) = read.filter(|_| !frozen) {
                    stretches.truncate(known);
                    stretches.extend(warming((since, fahrenheit), (from, read)));
                } else {
                    stretches.retain(|s| s.from < from);
                }
            }
            fahrenheit = read.unwrap_or(fahrenheit);
            frozen = match reading.what {
                Seen::Frozen => true,
                Seen::Thawed => false,
                Seen::Read | Seen::PowerOff | Seen::PowerOn => frozen,
            };
            let mut stretch = Stretch::at(from, fahrenheit);
            if frozen {
                (stretch.counts, stretch.warm) = (0.0, false);
            }
            let counts = stretch.counts;
            stretches.push(stretch);
            let off = reading.what == Seen::PowerOff || dark.is_some() && reading.what != Seen::PowerOn;
            let since = dark.filter(|_| read.is_none()).map_or(from, |(since, _)| since);
            dark = (off && !frozen).then_some((since, stretches.len()));
            if dark.is_some() {
                let from = (since + KEEPS).max(from);
                stretches.push(Stretch {
                    from,
                    counts,
                    warm: true,
                });
            }
        }
        // The forecast goes on at the last reading where that is a refrigerator's, else at the usual.
        let ahead = if (STANDS..=WARM).contains(&fahrenheit) {
            counts(fahrenheit)
        } else {
            counts(usual)
        };
        Self { stretches, ahead }
    }

    /// Each stretch up to `until`, with its hours.
    fn spans(&self, until: f64) -> impl Iterator<Item = (&Stretch, f64)> {
        let ends = self.stretches.iter().skip(1).map(|s| s.from).chain([f64::INFINITY]);
        let ends = ends.map(move |end| end.min(until));
        self.stretches
            .iter()
            .zip(ends)
            .map(|(s, end)| (s, (end - s.from).max(0.0)))
    }

    /// Hours that count, of the first `hours`; `now` of them have been, the rest is forecast.
    pub fn counted(&self, hours: f64, now: f64) -> f64 {
        let been: f64 = self.spans(hours.min(now)).map(|(s, span)| s.counts * span).sum();
        been + (hours - now).max(0.0) * self.ahead
    }

    /// Hours after the rub by which so many count.
    pub fn when(&self, needed: f64, now: f64) -> f64 {
        let mut left = needed;
        for (stretch, span) in self.spans(now) {
            let gain = stretch.counts * span;
            if gain >= left && gain > 0.0 {
                return stretch.from + left / stretch.counts;
            }
            left -= gain;
        }
        now + left / self.ahead
    }

    /// Hours above 40 °F and hours that stood, up to now.
    pub fn warm_and_stood(&self, now: f64) -> (f64, f64) {
        let sum = |which: fn(&Stretch) -> bool| self.spans(now).filter(|(s, _)| which(s)).map(|(_, span)| span).sum();
        (sum(|s| s.warm), sum(|s| s.counts <= 0.0))
    }
}

/// Evenly warmer, or colder, from one reading to the next.
fn warming((since, from): (f64, f64), (until, to): (f64, f64)) -> impl Iterator<Item = Stretch> {
    (0..STEPS).map(move |step| {
        let share = |more: f64| (f64::from(step) + more) / f64::from(STEPS);
        Stretch::at(since + (until - since) * share(0.0), from + (to - from) * share(0.5))
    })
}

/// Milliseconds as hours.
#[allow(clippy::cast_precision_loss, reason = "times of this millennium are below 2^53")]
pub(super) fn hours(millis: i64) -> f64 {
    millis as f64 / HOUR
}

/// Hours after a moment, as a moment.
#[allow(clippy::cast_possible_truncation, reason = "held within a century")]
pub(super) fn moment(begun: i64, hours: f64) -> i64 {
    begun.saturating_add((hours.clamp(0.0, 876_000.0) * HOUR).round() as i64)
}
