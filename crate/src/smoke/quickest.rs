//! The hottest that the middle of a piece can have come to be.

use super::cook::Cook;
use super::fit::Point;
use super::setup::Setup;

/// Three standard deviations from what is usual, one cook in seven hundred, all of it towards quick: thin, in much moving
/// air, hardly wet, soon dry, round, beside hot walls.
const QUICK: Point = [-1.6, 1.6, -1.0, -1.0, 0.0, 0.3, 1.0, 0.3, 0.3, 0.8, 0.0];

/// °C in the middle after `seconds` in air of this temperature, of a piece that was `begin` °C throughout.
#[must_use]
pub fn quickest(setup: &Setup, begin: f64, air: f64, seconds: f64) -> Option<f64> {
    let guess = setup.at(&QUICK);
    let smoker = guess.smoker(0.0)?;
    let mut cook = Cook::coarse(guess.piece, begin);
    let stride = 5.0 * Cook::stride(&guess.piece);
    // No cook is followed for longer than a day.
    let mut left = seconds.clamp(0.0, 86_400.0);
    while left > 0.0 {
        cook.step(stride.min(left), air, smoker);
        left -= stride;
    }
    Some(cook.centre() + guess.offset)
}
