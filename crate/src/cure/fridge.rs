//! The refrigerator: time that counts. An hour counts as `D(T) / D(4 °C)`, below 34 °F as nothing.

use crate::batch::{FridgeReading, Seen, Thermometer};
use crate::order::InOrder;
use crate::quantity::Temperature;
use rust_decimal::prelude::ToPrimitive;

const HOUR: f64 = 3_600_000.0;
/// Below this the clock stands. Clemson HGIC 3603, published.
pub(super) const STANDS: f64 = 34.0;
/// Above this it warns. 36 to 40 °F: USDA Farmers' Bulletin 2265, published; to warn above it: quoted.
pub(super) const WARM: f64 = 40.0;
/// What is taken where nothing was read: 38 °F, Clemson HGIC 3603, published.
pub(super) const USUAL: f64 = 38.0;
/// Without power and without a reading it warms towards a room at 72 °F by one time constant, in hours: a shut one keeps
/// cold for about 4 hours (FoodSafety.gov, quoted), taken as from 34 to 40 °F, so 4 / ln(38 / 32). Judgement.
pub(super) const ROOM: f64 = 72.0;
pub(super) const WARMS: f64 = 23.28;
/// Activation energy over the gas constant, K: 25 kJ/mol, judgement (20 to 30).
const ACTIVATION: f64 = 25_000.0 / 8.314;

/// A stretch with one speed, until the next begins.
struct Stretch {
    from: f64,
    counts: f64,
}

/// The course of a refrigerator from the rub on, in hours after it.
pub(super) struct Fridge {
    stretches: Vec<Stretch>,
    /// What counts an hour of the forecast.
    ahead: f64,
    /// What is taken for the hours without power, if there were any.
    pub off: Option<Off>,
}

/// Hours without power.
#[derive(Clone, Copy, Default)]
pub(super) struct Off {
    pub hours: f64,
    /// Of these, above 40 °F.
    pub warm: f64,
    /// The warmest, in °F.
    pub highest: f64,
    /// A part of it was not read, and is reckoned.
    pub guessed: bool,
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
    /// From the readings up to `until`, in order of time, those before the rub too. `usual`: what is taken until one is
    /// there.
    pub fn new(readings: &[FridgeReading], begun: i64, until: f64, usual: Option<Temperature>) -> Self {
        let usual = usual
            .and_then(|t| t.base().to_f64())
            .filter(|f| (STANDS..=WARM).contains(f))
            .unwrap_or(USUAL);
        // The clock goes by the refrigerator; what was read in the meat or in the room is no reading of it.
        let of_it = |r: &&FridgeReading| r.of == Thermometer::Fridge || r.what != Seen::Read;
        let mut sorted: Vec<&FridgeReading> = readings.iter().filter(of_it).collect();
        sorted.order_by_key(|r| r.at);
        let mut made = Self {
            stretches: Vec::with_capacity(sorted.len().saturating_add(1)),
            ahead: 0.0,
            off: None,
        };
        let (mut fahrenheit, mut frozen, mut out) = (usual, false, false);
        // What it was before the power went: it comes back to that.
        let mut steady = usual;
        made.push(0.0, fahrenheit, frozen);
        for (n, reading) in sorted.iter().enumerate() {
            let next = sorted.get(n.saturating_add(1));
            let reads = own(reading);
            match reading.what {
                Seen::Frozen => frozen = true,
                Seen::Thawed => frozen = false,
                Seen::PowerOff => out = true,
                Seen::PowerOn => out = false,
                Seen::Read => {}
            }
            // What stands in the warmth is not frozen, whatever was said of it before.
            frozen &= reads.is_none_or(|reads| reads <= WARM);
            let from = hours(reading.at.saturating_sub(begun));
            let back = reading.what == Seen::PowerOn;
            fahrenheit = reads.unwrap_or(if back { steady } else { fahrenheit });
            if !out {
                steady = if (STANDS..=WARM).contains(&fahrenheit) {
                    fahrenheit
                } else {
                    usual
                };
            }
            made.push(from, fahrenheit, frozen);
            if out {
                let to = next.map_or(until, |next| hours(next.at.saturating_sub(begun)));
                let read = next.and_then(|next| own(next));
                fahrenheit = made.warms(from, to.min(until), fahrenheit, read, frozen);
            }
        }
        // The forecast goes on at the last reading where that is a refrigerator's, else at the usual.
        made.ahead = counts(if (STANDS..=WARM).contains(&fahrenheit) {
            fahrenheit
        } else {
            usual
        });
        made
    }

    fn push(&mut self, from: f64, fahrenheit: f64, frozen: bool) {
        self.stretches.push(Stretch {
            from: from.max(0.0),
            counts: if frozen { 0.0 } else { counts(fahrenheit) },
        });
    }

    /// Without power between two entries: straight to what was read at the end, else by the time constant. Gives the
    /// temperature at the end.
    fn warms(&mut self, from: f64, to: f64, first: f64, last: Option<f64>, frozen: bool) -> f64 {
        let from = from.max(0.0);
        let long = to - from;
        if long <= 0.0 {
            return last.unwrap_or(first);
        }
        // Half-hours, and never more than 96 parts.
        let parts = (long * 2.0).ceil().clamp(1.0, 96.0);
        let part = long / parts;
        let off = self.off.get_or_insert_default();
        off.hours += long;
        off.guessed |= last.is_none();
        let at = |t: f64| match last {
            Some(last) => first + (last - first) * t / long,
            None => ROOM - (ROOM - first) * (-t / WARMS).exp(),
        };
        off.highest = off.highest.max(at(long));
        let mut done = 0.0;
        while done < long - part / 2.0 {
            // Each part at the warmth of its middle.
            let now = at(done + part / 2.0);
            if let Some(off) = self.off.as_mut().filter(|_| now > WARM) {
                off.warm += part;
            }
            self.push(from + done, now, frozen);
            // What was not read makes no cure faster.
            if let Some(stretch) = self.stretches.last_mut().filter(|_| last.is_none()) {
                stretch.counts = stretch.counts.min(counts(first));
            }
            done += part;
        }
        at(long)
    }

    /// Whether it stood at an hour.
    pub fn stands(&self, hour: f64) -> bool {
        let at = self.stretches.iter().rfind(|s| s.from <= hour);
        at.is_some_and(|s| s.counts <= 0.0)
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
        self.reach(needed, now, self.ahead, |s| s.counts)
    }

    /// Hours after the rub by which the clock has run for so many, whatever each of them counts.
    pub fn has_run(&self, hours: f64, now: f64) -> f64 {
        self.reach(hours, now, 1.0, |s| f64::from(s.counts > 0.0))
    }

    fn reach(&self, needed: f64, now: f64, ahead: f64, rate: impl Fn(&Stretch) -> f64) -> f64 {
        let mut left = needed;
        for (stretch, span) in self.spans(now) {
            let gain = rate(stretch) * span;
            if gain >= left && gain > 0.0 {
                return stretch.from + left / rate(stretch);
            }
            left -= gain;
        }
        now + left / ahead
    }

    /// Hours that stood, up to now.
    pub fn stood(&self, now: f64) -> f64 {
        self.spans(now)
            .filter(|(s, _)| s.counts <= 0.0)
            .map(|(_, span)| span)
            .sum()
    }
}

/// What the refrigerator itself read.
fn own(reading: &FridgeReading) -> Option<f64> {
    reading
        .reads
        .filter(|_| reading.of == Thermometer::Fridge)?
        .base()
        .to_f64()
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
