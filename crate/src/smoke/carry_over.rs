//! Out of the heat: how far the middle still rises, and how long until it is cold.

use super::cook::{Cook, Piece, Smoker};
use super::setup::Setup;

/// Whoever cools longer than this cools in no refrigerator, s.
const DAY: f64 = 86_400.0;

/// How far the centre rises once the piece rests in still air at 20 °C.
pub(super) fn carry_over(pulled: &Cook, smoker: &Smoker, stride: f64) -> f64 {
    let rest = Smoker {
        convection: 5.0,
        radiation: 5.5,
        dew: 10.0,
        ..*smoker
    };
    let mut cook = pulled.clone();
    cook.disturb();
    let begin = cook.centre();
    let mut top = begin;
    for _ in 0..400 {
        cook.step(stride, 20.0, &rest);
        if cook.centre() < top - 0.2 {
            break;
        }
        top = top.max(cook.centre());
    }
    top - begin
}

/// Seconds until the centre of a piece has come from `start` down to `end`, °C, in a refrigerator: still air at 3 °C,
/// 9.5 W/m²K, the piece warm throughout and alone. Nothing where that takes more than a day.
pub fn chilled(setup: &Setup, start: f64, end: f64) -> Option<f64> {
    let piece = Piece::lean(setup.thickness, setup.exponent);
    let still = Smoker {
        convection: 4.5,
        radiation: 5.0,
        wetness: 0.0,
        dries: 0.05,
        sharpness: 1.0,
        dew: 0.0,
    };
    let (mut cook, mut at) = (Cook::new(piece, start), 0.0);
    while cook.centre() > end {
        if at > DAY {
            return None;
        }
        cook.step(60.0, 3.0, &still);
        at += 60.0;
    }
    Some(at)
}
