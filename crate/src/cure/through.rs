//! Whether the cure has reached the middle, by the clock.

use super::course::Course;
use crate::batch::{Batch, Piece};
use crate::recipe::Method;
use crate::weigh::Settings;
use rust_decimal::prelude::ToPrimitive;

/// Days for an inch of thickness: Rentfrow, University of Kentucky, 2013, published.
const INCH: f64 = 7.0;

/// True where the cure is in the middle of every size class by `now`, or by when each came out: for nine pieces in ten by
/// the clock, or as long as the published rule has it, 7 days for each inch.
/// Mixed in or pumped it is there from the start; by pick-up, and where a thickness is missing, nobody can say.
#[must_use]
pub fn through(batch: &Batch, now: i64, settings: &Settings) -> bool {
    if batch.tick("rub").is_none() {
        return false;
    }
    match batch.recipe.method {
        Method::Ground | Method::Pumped | Method::PumpedAndCovered => return true,
        Method::PickUp => return false,
        Method::Rub | Method::CoverBrine => {}
    }
    let mut course = Course::new(batch, now, settings, None);
    let in_it = |course: &mut Course<'_>, (at, piece): (u32, &Piece)| {
        let ready = course.ready(at, piece)?;
        let surely = ready.colour.unwrap_or(ready.even).latest;
        let hours = course.now_of(at);
        let inches = piece.thickness?.base().to_f64()? / 25.4;
        let stood = course.fridge.stood(hours);
        let rule = hours - stood >= INCH * 24.0 * inches;
        Some(rule || super::fridge::moment(course.begun, hours) >= surely)
    };
    (0_u32..)
        .zip(&batch.pieces)
        .all(|class| in_it(&mut course, class).unwrap_or(false))
}
