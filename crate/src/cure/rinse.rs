//! What the clock says to the plan: which class comes out when, and how far the rinse moves.

use super::clock::{Course, draw};
use super::fridge::{hours, moment};
use super::laid::span;
use super::model::Span3;
use crate::batch::{Batch, name_of};
use crate::weigh::Settings;

/// A class that is ready so many hours before the slowest is worth a way to the refrigerator. Judgement.
pub(super) const WORTH: f64 = 6.0;

/// When a batch comes out of its cure, by the clock.
pub struct Rinse {
    /// Not before this: the slowest class is likely through, and the hours that stood are made up for.
    pub due: i64,
    /// What the clock says of it, in a sentence or two.
    pub says: String,
    /// Classes that come out before the rest.
    pub draws: Vec<Draw>,
}

/// A size class that comes out before the rest.
pub struct Draw {
    /// Id for its tick: `draw:2`.
    pub id: String,
    /// `4 Teal`.
    pub name: String,
    /// When it is likely through, in milliseconds since 1970.
    pub due: i64,
    /// What the clock says of it.
    pub says: String,
}

/// For the plan; nothing before the rub, and where the cure has no clock: by pick-up or pumped, or no thickness.
#[must_use]
pub fn rinse(batch: &Batch, now: i64, settings: &Settings) -> Option<Rinse> {
    let begun = batch.tick("rub")?.at;
    let mut course = Course::new(batch, now, settings, None);
    let mut classes: Vec<(u32, String, bool, Span3)> = Vec::new();
    for (at, piece) in (0_u32..).zip(&batch.pieces) {
        if let Some(class) = course.ready(at, piece) {
            let name = format!("{} {}", piece.count, name_of(piece));
            classes.push((at, name, class.colour.is_some(), class.colour.unwrap_or(class.even)));
        }
    }
    let says = |name: &str, coloured: bool, ready: Span3| {
        let [early, likely, late] = [ready.earliest, ready.likely, ready.latest]
            .map(|at| span(hours(at.saturating_sub(begun)).round(), settings.units));
        let through = if coloured { "coloured through" } else { "evenly salted" };
        format!(
            "By the cure clock {name} is {through} {likely} after the rub, {early} at the earliest, {late} at the latest."
        )
    };
    let (slow_at, slow, coloured, last) = classes.iter().max_by_key(|(_, _, _, ready)| ready.likely)?.clone();
    let (_, stood) = course.fridge.warm_and_stood(course.now);
    let planned = moment(begun, course.planned.unwrap_or(0.0) + stood);
    let mut text = says(&slow, coloured, last);
    if last.likely > planned {
        text.push_str(
            " That is later than the recipe has it: a weighed dose only evens out, so it waits for the clock.",
        );
    } else if stood > 0.0 {
        text.push_str(" The hours that stood are added.");
    }
    let draws = classes
        .iter()
        .filter(|(at, _, _, ready)| *at != slow_at && hours(last.likely.saturating_sub(ready.likely)) > WORTH)
        .map(|(at, name, coloured, ready)| Draw {
            id: draw(*at),
            name: name.clone(),
            due: ready.likely,
            says: says(name, *coloured, *ready),
        });
    Some(Rinse {
        due: planned.max(last.likely),
        says: text,
        draws: draws.collect(),
    })
}
