//! What is said of a whole batch: the refrigerator, the method, the order of the classes, the date.

use super::cold::{Cold, Warmth};
use super::course::Course;
use super::fridge::{Off, USUAL, hours, moment};
use super::laid::{COLOUR, Laid, colour_share, usual};
use super::learn::Speed;
use super::model::{Class, Note};
use super::say::{degrees, note, span};
use crate::batch::{By, kind};
use crate::dose::Mark;
use crate::quantity::Length;
use crate::recipe::Method;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// In hours.
const MINUTE: f64 = 1.0 / 60.0;

impl Course<'_> {
    pub fn fridge_notes(&self, runs: bool) -> Vec<Note> {
        let (stood, cold) = (self.fridge.stood(self.now), self.cold);
        let mut notes = Vec::new();
        if let Some(says) = self.warmth(&cold) {
            let mark = if cold.warmth() == Warmth::Warm {
                Mark::Care
            } else {
                Mark::Stop
            };
            notes.push(note(mark, "It was too warm", says));
        }
        if stood > 0.0 {
            notes.push(note(
                Mark::Care,
                "The clock stood",
                format!(
                    "{} frozen or below 1 °C (34 °F) do not count. The times below have moved by as much.",
                    span(stood, self.units)
                ),
            ));
        }
        notes.extend(self.fridge.off.map(|off| self.power(off, cold.warmth())));
        if runs && self.batch.fridge.is_empty() {
            notes.push(note(
                Mark::Ask,
                "No reading yet",
                format!(
                    "The times are for a refrigerator at {}. Put a thermometer in it.",
                    usual(&self.batch.recipe).map_or_else(|| degrees(USUAL, self.units), |at| at.show(self.units).text)
                ),
            ));
        }
        notes
    }

    /// How long it was above 40 °F, so far as anybody knows, and what that means.
    fn warmth(&self, cold: &Cold) -> Option<String> {
        let (warm, unread) = (cold.warm, cold.unread);
        if warm + unread <= 0.0 {
            return None;
        }
        let mut known = format!("{} above 4 °C (40 °F) by the log", span(warm, self.units));
        if warm < MINUTE {
            "Above 4 °C (40 °F) now".clone_into(&mut known);
        }
        if unread >= MINUTE {
            known.push_str(&format!(
                ", and up to {} more before it that nobody read: if it was read cold in between, put that in the log with its time",
                span(unread, self.units)
            ));
        }
        let then = if cold.warmth() == Warmth::Warm {
            "Under 2 hours in all it can still be used: cool it now, and look at the thermometer within the hour."
        } else {
            "Meat above 4 °C for 2 hours or more, or nobody knows how long, is thrown out (FoodSafety.gov, quoted), unless the meat itself was measured and was colder."
        };
        Some(format!(
            "{known}. {then} Salt runs faster in the warmth, and so does what spoils meat: more cure does not undo it."
        ))
    }

    /// Date, order of the classes, method.
    pub fn notes(&self, classes: &[Class], ended: bool) -> Vec<Note> {
        let mut notes = Vec::new();
        if self.batch.recipe.method == Method::PickUp {
            let says = "By pick-up, more cure goes in with every hour. Take it out when the recipe says, coloured through or not, and never leave it in longer for the colour.";
            notes.push(note(Mark::Care, "The stay sets the dose", says.into()));
            return notes;
        }
        if matches!(
            self.batch.recipe.method,
            Method::Ground | Method::Pumped | Method::PumpedAndCovered
        ) {
            let says =
                "Mixed or pumped in, the cure need not find its way from outside. Give it the time of the recipe.";
            notes.push(note(Mark::Ok, "In the middle from the start", says.into()));
            return notes;
        }
        let thick = self.batch.pieces.iter().any(|p| p.thickness.is_none());
        if thick {
            let says = "A size class without its thickest part has no clock. Measure it under Pieces.";
            notes.push(note(Mark::Ask, "Thickness missing", says.into()));
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
            return (long > 24.0).then(|| {
                let says = "A weighed dose only evens out, it gets no saltier. How long it keeps is another question: cold all the time, and smell it.";
                note(Mark::Ok, "Longer than planned", says.into())
            });
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
        let word = if rinse >= ready.likely {
            "The planned rinse may be early"
        } else {
            "The planned rinse is early"
        };
        let tail = if thinner < thick - 1.0 {
            format!(
                " If the date stands: pieces no thicker than {cut}, or pump a measured pickle. Never more cure to go faster."
            )
        } else {
            " Never more cure to go faster.".to_owned()
        };
        Some(note(
            Mark::Care,
            word,
            format!(
                "{} may not be through by then. Leave it in the cold longer: a weighed dose only evens out.{tail}",
                slow.name
            ),
        ))
    }

    /// What the hours without power mean. Published advice: see the constants of the refrigerator.
    fn power(&self, off: Off, warmth: Warmth) -> Note {
        let basis = if off.guessed {
            "Nothing was read when it came back, so this is reckoned: a shut door in a room at 22 °C (72 °F), which keeps cold for about 4 hours (FoodSafety.gov, quoted). Opened, or in a warmer room, it was sooner. Type what the thermometer and the meat read."
        } else {
            "Taken as a straight line between what was read before and after it."
        };
        // The same word as the doubt that stands on the batch.
        let meaning = match warmth {
            Warmth::Kept => "It stayed at 4 °C (40 °F) or colder: go on.",
            Warmth::Warm => {
                "Up to 2 hours above 4 °C (40 °F) in all it can still be used: cool it at once, cook it through. If in doubt, throw it out."
            }
            Warmth::MayBeTooWarm | Warmth::TooWarm | Warmth::NoPower => {
                "Meat above 4 °C (40 °F) for more than 2 hours is thrown out (FoodSafety.gov, quoted), cured or not."
            }
        };
        let mark = if warmth == Warmth::Kept { Mark::Care } else { Mark::Stop };
        let says = format!(
            "{} without power, up to {}; {} of it above 4 °C (40 °F). {meaning} {basis}",
            span(off.hours, self.units),
            degrees(off.highest, self.units),
            span(off.warm, self.units),
        );
        note(mark, "The power was off", says)
    }
}
