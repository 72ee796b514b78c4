//! What is said of a whole batch: the refrigerator, the method, the order of the classes, the date.

use super::cold::{Cold, Warmth};
use super::course::Course;
use super::facts::{Fate, Note, Noted};
use super::fridge::{Off, USUAL, hours, moment};
use super::laid::{COLOUR, Laid, colour_share, usual};
use super::learn::Speed;
use super::model::Class;
use super::say::{degrees, span};
use crate::batch::{By, kind};
use crate::dose::Mark;
use crate::quantity::Length;
use crate::recipe::{Do, Method};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// In hours.
const MINUTE: f64 = 1.0 / 60.0;
/// Fewer turns than these are nothing to speak of (judgement).
const MISSED: u32 = 3;

impl Course<'_> {
    pub fn fridge_notes(&self, runs: bool) -> Vec<Note> {
        let (stood, cold) = (self.fridge.stood(self.now), self.cold);
        let mut notes = Vec::new();
        notes.extend(self.warmth(&cold));
        if stood > 0.0 {
            let time = span(stood, self.units);
            notes.push(note(Mark::Care, Noted::Stood { time }));
        }
        notes.extend(self.turns().filter(|_| runs));
        notes.extend(self.fridge.off.map(|off| self.power(off, cold.warmth())));
        if runs && self.batch.fridge.is_empty() {
            let at =
                usual(&self.batch.recipe).map_or_else(|| degrees(USUAL, self.units), |at| at.show(self.units).text);
            notes.push(note(Mark::Ask, Noted::NoReading { at }));
        }
        notes
    }

    /// How long it was above 40 °F, so far as anybody knows, and whether that is too long.
    fn warmth(&self, cold: &Cold) -> Option<Note> {
        let (warm, unread) = (cold.warm, cold.unread);
        if warm + unread + cold.out <= 0.0 {
            return None;
        }
        let told = |hours: f64| (hours >= MINUTE).then(|| span(hours, self.units));
        let discard = cold.warmth() != Warmth::Warm;
        let mark = if discard { Mark::Stop } else { Mark::Care };
        Some(note(
            mark,
            Noted::TooWarm {
                warm: told(warm),
                unread: told(unread),
                out: told(cold.out),
                discard,
            },
        ))
    }

    /// Turns that were due by now, or until it came out, where more than half of them are not ticked; what stood frozen is not
    /// turned.
    fn turns(&self) -> Option<Note> {
        let step = self.batch.recipe.steps.first().filter(|s| s.act == Do::Cure)?;
        let every = step.turn_every?.base().to_f64()? / 60.0;
        let due = ((self.now - self.fridge.stood(self.now)) / every).floor().to_u32()?;
        let ticked = self.batch.ticks.iter().filter(|t| t.of.starts_with("turn:0:"));
        let missed = due.saturating_sub(u32::try_from(ticked.count()).unwrap_or(u32::MAX));
        let most = missed >= MISSED && missed.saturating_mul(2) > due;
        most.then(|| note(Mark::Care, Noted::TurnsMissed { missed, due }))
    }

    /// Date, order of the classes, method. `early`: it came out before it was surely through.
    pub fn notes(&self, classes: &[Class], ended: bool, early: bool) -> Vec<Note> {
        let mut notes = Vec::new();
        if self.batch.recipe.method == Method::PickUp {
            notes.push(note(Mark::Care, Noted::StaySetsDose));
            return notes;
        }
        if matches!(
            self.batch.recipe.method,
            Method::Ground | Method::Pumped | Method::PumpedAndCovered
        ) {
            notes.push(note(Mark::Ok, Noted::InTheMiddle));
            return notes;
        }
        let thick = self.batch.pieces.iter().any(|p| p.thickness.is_none());
        if thick {
            notes.push(note(Mark::Ask, Noted::ThicknessMissing));
        }
        if early && !thick {
            notes.push(note(Mark::Care, Noted::CameOutEarly));
        }
        let slowest = classes.iter().max_by_key(|c| c.colour.unwrap_or(c.even).likely);
        if let (Some(slow), Some(planned), false) = (slowest, self.planned, ended) {
            notes.extend(self.date(slow, planned));
        }
        notes
    }

    /// Whether the date of the recipe can be met by the slowest class.
    fn date(&self, slow: &Class, planned: f64) -> Option<Note> {
        let ready = slow.colour.unwrap_or(slow.even);
        let rinse = moment(self.begun, planned);
        if rinse >= ready.latest {
            let long = hours(moment(self.begun, self.now).saturating_sub(rinse));
            return (long > 24.0).then(|| note(Mark::Ok, Noted::LongerThanPlanned));
        }
        // By the clock it stays in until it is through.
        if self.batch.by != Some(By::Recipe) {
            return None;
        }
        let piece = self.batch.pieces.get(slow.at as usize)?;
        let thick = piece.thickness?.base().to_f64()?;
        // The thickness at which a slice as wide as the piece is through by the date.
        let laid = Laid::of(self.batch, piece)?;
        let colour = colour_share(&self.batch.recipe);
        let [_, d, _] = Speed::learned(kind(piece), self.learned).three();
        let factor = if colour.is_some() { COLOUR } else { 1.0 };
        let hours = self.fridge.counted(planned, self.now);
        let (mut thin, mut thinner) = (0.0, thick);
        for _ in 0..11 {
            let middle = f64::midpoint(thin, thinner);
            let slice = laid.sliced(middle / thick);
            let needed = slice.hours(slice.fills().when(0.0, colour.unwrap_or(0.9)), d * factor);
            *(if needed > hours { &mut thinner } else { &mut thin }) = middle;
        }
        let thinner = thin;
        let cut = Length::new(Decimal::from(thinner.floor().to_i64()?))
            .ok()?
            .show(self.units)
            .text;
        Some(note(
            Mark::Care,
            Noted::RinseEarly {
                of: slow.of.clone(),
                perhaps: rinse >= ready.likely,
                cut: (thinner < thick - 1.0).then_some(cut),
            },
        ))
    }

    /// What the hours without power mean. Published advice: see the constants of the refrigerator.
    fn power(&self, off: Off, warmth: Warmth) -> Note {
        // The same as the doubt that stands on the batch.
        let fate = match warmth {
            Warmth::Kept => Fate::Kept,
            Warmth::Warm => Fate::UseNow,
            Warmth::MayBeTooWarm | Warmth::TooWarm | Warmth::NoPower => Fate::Discard,
        };
        let mark = if fate == Fate::Kept { Mark::Care } else { Mark::Stop };
        note(
            mark,
            Noted::PowerOff {
                time: span(off.hours, self.units),
                highest: degrees(off.highest, self.units),
                warm: span(off.warm, self.units),
                fate,
                guessed: off.guessed,
            },
        )
    }
}

const fn note(mark: Mark, what: Noted) -> Note {
    Note { mark, what }
}
