//! Readings of the refrigerator, the meat and the room that none of them can have, or hardly: asked about, and until they
//! are answered nothing goes by them.

use super::fridge::{FridgeReading, Seen, Thermometer};
use super::model::Batch;
use crate::order::InOrder;
use crate::quantity::{Meant, Temperature};
use rust_decimal::{Decimal, dec};

/// Below this, °F, meat is frozen: salt and all, no refrigerator is set so cold (judgement).
const FREEZES: Decimal = dec!(28);
/// A refrigerator that runs is not so warm, °F: 15 °C (judgement).
const RUNS: Decimal = dec!(59);
/// Nor a room, °F: 43 °C (judgement). One that is colder than water freezes at is asked about too: typed in the other
/// scale it would be a warm one.
const HOTTEST: Decimal = dec!(110);
const ICE: Decimal = dec!(32);

/// A reading in question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OddCold {
    /// Its place in the list of readings.
    pub reading: usize,
    /// What may have been meant, by the scale in which it was typed.
    pub choices: Vec<Meant>,
}

/// What was seen before a reading.
#[derive(Clone, Copy, Default)]
struct Before {
    frozen: bool,
    dark: bool,
}

/// Questions about readings that nobody confirmed, in the order of their times.
#[must_use]
pub fn odd_cold(batch: &Batch) -> Vec<OddCold> {
    let mut log: Vec<(usize, &FridgeReading)> = batch.fridge.iter().enumerate().collect();
    log.order_by_key(|(_, r)| r.at);
    let mut before = Before::default();
    let mut found = Vec::new();
    for (place, reading) in log {
        match reading.what {
            Seen::Frozen => before.frozen = true,
            Seen::Thawed => before.frozen = false,
            // What it reads when the power is back it has come to without.
            Seen::PowerOff | Seen::PowerOn => before.dark = true,
            Seen::Read => {}
        }
        let odd = |t: Temperature| is_odd(t.base(), reading.of, before);
        if let Some(reads) = reading.reads.filter(|t| !reading.sure && odd(*t)) {
            found.push(OddCold {
                reading: place,
                choices: reads.meant().into_iter().filter(|meant| !odd(meant.value)).collect(),
            });
        }
        before.dark &= reading.what != Seen::PowerOn;
    }
    found
}

fn is_odd(f: Decimal, of: Thermometer, before: Before) -> bool {
    let (least, most) = match of {
        Thermometer::Room => (ICE, HOTTEST),
        Thermometer::Fridge | Thermometer::Meat if before.dark => (FREEZES, HOTTEST),
        Thermometer::Fridge | Thermometer::Meat => (FREEZES, RUNS),
    };
    f > most || f < least && !before.frozen
}

/// The log in the order of its times, without what a thermometer said where that is in question; what was seen stays.
#[must_use]
pub fn cold_log(batch: &Batch) -> Vec<FridgeReading> {
    let odd = odd_cold(batch);
    let read = |(place, one): (usize, &FridgeReading)| {
        let asked = odd.iter().any(|o| o.reading == place);
        let only = asked && one.what == Seen::Read;
        (!only).then(|| FridgeReading {
            reads: one.reads.filter(|_| !asked),
            ..one.clone()
        })
    };
    let mut log: Vec<FridgeReading> = batch.fridge.iter().enumerate().filter_map(read).collect();
    log.order_by_key(|r| r.at);
    log
}
