//! How cold the meat was kept from the rub until the fire, by three thermometers: in the meat, in the refrigerator, in the
//! room. One reckoning, from which every screen takes its word.

use super::fridge::{ROOM, STANDS, USUAL, WARMS, hours, moment};
use super::laid::usual;
use crate::batch::{Batch, FridgeReading, Seen, Thermometer, cold_log};
use crate::recipe::Do;
use rust_decimal::prelude::ToPrimitive;

/// Degrees Fahrenheit above which the meat is too warm: 40 °F, USDA Farmers' Bulletin 2265, published.
pub const WARM: f64 = super::fridge::WARM;
/// Hours above 40 °F after which meat is thrown out: FoodSafety.gov, quoted.
pub const TOO_LONG: f64 = 2.0;
/// The same in milliseconds.
pub const TOO_LONG_MS: i64 = (TOO_LONG * 3_600_000.0) as i64;
/// Hours without power after which the meat in a refrigerator is thrown out, whatever it reads when it is cold again:
/// FoodSafety.gov and CDC, food safety in a power outage, quoted.
const POWER: f64 = 4.0;
/// Hours after a warm spell in which meat that is read cold was never warm: a piece does not cool so fast (judgement).
const SOON: f64 = 1.0;

/// Hours in the cure without an entry in the log after which nobody saw how cold it was: three days (judgement).
const UNSEEN: f64 = 72.0;

/// What the log says, in hours.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Cold {
    /// Above 40 °F, as far as it was read.
    pub warm: f64,
    /// Perhaps above it: before a warm reading, back to the last cold one; or without power, as it is reckoned.
    pub unread: f64,
    /// The longest without power in which nobody read it cold.
    pub dark: f64,
    /// From the rub until it went into the refrigerator, where that is two hours or more and nobody read it cold.
    pub out: f64,
    /// When it was first above 40 °F, in milliseconds since 1970.
    pub since: Option<i64>,
    /// It is above 40 °F now, by the last that was read.
    pub now: bool,
    /// It lies frozen by the last entry of the log.
    pub frozen: bool,
    /// The longest in its cure without an entry in the log, where that is too long to count as seen.
    pub unseen: f64,
}

/// What that comes to: one word for the doubts and for the notes of the clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Warmth {
    /// At 40 °F or colder.
    Kept,
    /// Above it, less than two hours.
    Warm,
    /// Two hours perhaps.
    MayBeTooWarm,
    /// Two hours and more.
    TooWarm,
    /// Four hours and more without power, and nobody read it cold.
    NoPower,
}

impl Cold {
    /// The word for it.
    #[must_use]
    pub fn warmth(&self) -> Warmth {
        let known = self.warm + self.unread + self.out;
        if self.warm >= TOO_LONG {
            Warmth::TooWarm
        } else if self.dark >= POWER {
            Warmth::NoPower
        } else if known >= TOO_LONG {
            Warmth::MayBeTooWarm
        } else if known > 0.0 {
            Warmth::Warm
        } else {
            Warmth::Kept
        }
    }
}

/// How cold a batch was kept up to `now`, in milliseconds since 1970; until the heat, once that is begun. Nothing of
/// it counts before the cure is on: the log is kept from then.
#[must_use]
pub fn cold(batch: &Batch, now: i64) -> Cold {
    let Some(begun) = batch.tick("rub").map(|t| t.at) else {
        return Cold::default();
    };
    let until = hours(heated(batch).unwrap_or(now).min(now).saturating_sub(begun)).max(0.0);
    let log = cold_log(batch);
    let steady = usual(&batch.recipe).and_then(|t| t.base().to_f64());
    let mut watch = Watch::new(steady.filter(|f| (STANDS..=WARM).contains(f)).unwrap_or(USUAL));
    for reading in &log {
        let at = hours(reading.at.saturating_sub(begun));
        if at > until {
            break;
        }
        watch.entry(reading, at.max(0.0));
    }
    let (found, since) = watch.end(until);
    let last = log
        .iter()
        .rfind(|r| matches!(r.what, Seen::Frozen | Seen::Thawed) && r.at <= now);
    let out = out(batch, begun, &log).unwrap_or_default();
    Cold {
        since: if out > 0.0 {
            Some(begun)
        } else {
            since.map(|hour| moment(begun, hour))
        },
        out,
        unseen: unseen(batch, begun, until, &log),
        frozen: last.is_some_and(|r| r.what == Seen::Frozen),
        ..found
    }
}

/// The longest from the rub on, until it came out of its cure, without an entry.
fn unseen(batch: &Batch, begun: i64, until: f64, log: &[FridgeReading]) -> f64 {
    let ended = super::ended(batch).map_or(until, |at| hours(at.saturating_sub(begun)).min(until));
    let mut last = 0.0;
    let mut longest = 0.0_f64;
    let seen = log.iter().filter(|r| r.of != Thermometer::Room || r.what != Seen::Read);
    for at in seen
        .map(|r| hours(r.at.saturating_sub(begun)).clamp(0.0, ended))
        .chain([ended])
    {
        longest = longest.max(at - last);
        last = at;
    }
    if longest > UNSEEN { longest } else { 0.0 }
}

/// Hours until it went into the refrigerator, where it is ticked that late: nothing where the meat, the room or a
/// refrigerator was read cold by then.
fn out(batch: &Batch, begun: i64, log: &[FridgeReading]) -> Option<f64> {
    let went_in = batch.tick("fridge")?.at;
    let cold = log.iter().any(|r| {
        let soon = if r.of == Thermometer::Meat { SOON } else { 0.0 };
        let by = hours(r.at.saturating_sub(went_in)) <= soon;
        by && r.at >= begun && r.reads.and_then(|t| t.base().to_f64()).is_some_and(|f| f <= WARM)
    });
    Some(hours(went_in.saturating_sub(begun))).filter(|long| *long >= TOO_LONG && !cold)
}

/// A warm spell, until it is counted, or until the meat is read cold and it never was one.
#[derive(Clone, Copy, Default)]
struct Spell {
    warm: f64,
    unread: f64,
    dark: f64,
    since: Option<f64>,
    /// When the refrigerator was cold again.
    over: Option<f64>,
}

/// Goes through the log; hours after the rub.
struct Watch {
    /// What was counted.
    found: Cold,
    since: Option<f64>,
    spell: Spell,
    /// The last entry.
    at: f64,
    air: f64,
    /// The refrigerator's before the power went: it comes back to that.
    steady: f64,
    room: f64,
    /// Meat that was read warm is so until it is read cold.
    meat_is_warm: bool,
    frozen: bool,
    /// Since when there is no power.
    dark: Option<f64>,
}

impl Watch {
    fn new(steady: f64) -> Self {
        Self {
            found: Cold::default(),
            since: None,
            spell: Spell::default(),
            at: 0.0,
            air: steady,
            steady,
            room: ROOM,
            meat_is_warm: false,
            frozen: false,
            dark: None,
        }
    }

    fn entry(&mut self, reading: &FridgeReading, at: f64) {
        let reads = reading.reads.and_then(|t| t.base().to_f64());
        if reading.of == Thermometer::Room {
            // The time up to it was in the room as it was taken until now.
            self.pass(at, None);
            self.room = reads.unwrap_or(self.room);
        } else {
            self.pass(at, reads);
            self.read(reads, reading.of, at);
        }
        match reading.what {
            Seen::Frozen => self.frozen = true,
            Seen::Thawed => self.frozen = false,
            Seen::PowerOff => self.dark = self.dark.or(Some(at)),
            Seen::PowerOn => {
                if let Some(since) = self.dark.take() {
                    self.spell.dark = at - since;
                    self.spell.over = Some(at);
                    self.air = self.steady;
                }
            }
            Seen::Read => {}
        }
        // What stands in the warmth is not frozen, whatever was said of it before.
        self.frozen &= reads.is_none_or(|reads| reads <= WARM) || reading.of == Thermometer::Room;
    }

    /// The time since the last entry, up to one that reads so.
    fn pass(&mut self, at: f64, reads: Option<f64>) {
        let (from, long) = (self.at, (at - self.at).max(0.0));
        self.at = at.max(from);
        if self.frozen {
            return;
        }
        let (warm, unread, begins) = match (self.dark, reads) {
            _ if self.is_warm() => (long, 0.0, from),
            // Straight from the one to the other.
            (Some(_), Some(reads)) => {
                let part = long * ((reads - WARM) / (reads - self.air)).clamp(0.0, 1.0);
                (if reads > WARM { part } else { 0.0 }, 0.0, at - part)
            }
            // Towards the warmth of the room by one time constant.
            (Some(_), None) if self.room > WARM => {
                let cold = WARMS * ((self.room - self.air) / (self.room - WARM)).ln();
                self.air = self.room - (self.room - self.air) * (-long / WARMS).exp();
                (0.0, (long - cold).max(0.0), from + cold.min(long))
            }
            // Warm since when? At the worst since the entry before.
            (None, Some(reads)) if reads > WARM => (0.0, long, at),
            _ => return,
        };
        self.spell.warm += warm;
        self.spell.unread += unread;
        if warm + unread > 0.0 {
            self.spell.since = self.spell.since.or(Some(begins));
        }
    }

    /// What a thermometer in the meat or in the refrigerator read.
    fn read(&mut self, reads: Option<f64>, of: Thermometer, at: f64) {
        let Some(reads) = reads else { return };
        let cold = reads <= WARM;
        let soon = self.spell.over.is_none_or(|over| at - over <= SOON);
        // Meat that is read cold was not warm before, and neither was a refrigerator that nothing cooled, unless it was read so.
        let was_cold =
            of == Thermometer::Meat && soon && !self.meat_is_warm || self.dark.is_some() && self.spell.warm <= 0.0;
        if cold && was_cold {
            self.spell = Spell::default();
        }
        if cold && (was_cold || self.dark.is_some()) {
            self.dark = self.dark.map(|_| at);
        }
        if self.spell.over.is_some() {
            self.count();
        }
        if of == Thermometer::Meat {
            self.meat_is_warm = !cold;
        } else {
            self.air = reads;
            if self.dark.is_none() {
                self.steady = if cold && reads >= STANDS { reads } else { self.steady };
            }
        }
        if !cold {
            self.spell.since = self.spell.since.or(Some(at));
        } else if !self.is_warm() && self.dark.is_none() && self.spell.since.is_some() {
            self.spell.over = Some(at);
        }
    }

    const fn is_warm(&self) -> bool {
        self.air > WARM || self.meat_is_warm
    }

    fn count(&mut self) {
        let spell = std::mem::take(&mut self.spell);
        self.found.warm += spell.warm;
        self.found.unread += spell.unread;
        self.found.dark = self.found.dark.max(spell.dark);
        self.since = self.since.or(spell.since);
    }

    fn end(mut self, until: f64) -> (Cold, Option<f64>) {
        self.pass(until, None);
        self.found.now = self.is_warm() || self.dark.is_some();
        if let Some(since) = self.dark {
            self.spell.dark = until - since;
        }
        self.count();
        (self.found, self.since)
    }
}

/// When the heat began: the first tick of a step that heats, or the first reading over the fire.
#[must_use]
pub fn heated(batch: &Batch) -> Option<i64> {
    let steps = batch.recipe.steps.iter().enumerate();
    let ticked = steps
        .filter(|(_, s)| matches!(s.act, Do::Smoke | Do::Cook | Do::DryOut))
        .filter_map(|(i, _)| batch.step(i).map(|t| t.at));
    let read = batch.fire.iter().flat_map(|f| &f.readings);
    let read = read.filter(|r| !r.struck).map(|r| r.at);
    ticked.chain(read).min()
}
