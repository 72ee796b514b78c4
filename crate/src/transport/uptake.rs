//! How much a body has taken up out of a bath of limited volume.

use super::{Body, Field, Surface};

const CELLS: usize = 100;
/// Below it the front is thinner than the outermost shells, and what enters a half-space is taken.
const THIN: f64 = 0.002;
const GROWS: f64 = 1.06;
/// The last 1 % is left to the slow end of a small bath.
const LAST: f64 = 12.0;

/// The mean over a body that began at nought, as a share of what it comes to when it is equal with its bath. `ratio`:
/// the bath's volume over the body's own. Never below the true share while the front is thin: a half-space under a
/// surface that does not weaken takes up more than a round body out of a small bath.
///
/// ```
/// use cure_reckoner::transport::uptake;
/// // Crank 1975, p. 48, published, for a slab in a bath without end: 0.562234.
/// assert!((uptake(0.0, 0.25, 1e6) - 0.562_234).abs() < 1e-3);
/// assert!((uptake(0.0, 50.0, 1.0) - 1.0).abs() < 1e-6);
/// ```
#[must_use]
pub fn uptake(exponent: f64, fo: f64, ratio: f64) -> f64 {
    if !(fo > 0.0 && ratio > 0.0) {
        return 0.0;
    }
    if fo <= THIN {
        return thin(exponent, fo, ratio);
    }
    let mut field = Field::new(&Body::new(exponent, CELLS), 0.0);
    field.bath = (1.0 + ratio) / ratio;
    let surface = Surface::Bath { ratio };
    field.run(THIN, 16, surface);
    let (mut at, end) = (THIN, fo.min(LAST));
    while at < end {
        let step = (at * (GROWS - 1.0)).min(end - at);
        field.step(step, surface);
        at += step;
        if end - at < 1e-12 {
            break;
        }
    }
    // Where the two meet, the thin front is a little above: longer is never less.
    field.mean().max(thin(exponent, THIN, ratio)).clamp(0.0, 1.0)
}

/// While the front is thin: a half-space under a stirred bath that weakens, with the surface and the bath of this body.
/// 1 − exp(h²) erfc(h) of the bath goes in, h = surface over bath × √Fo (Carslaw and Jaeger 1959, 12.4, from memory).
/// Never below a round body's true share, whose surface is wider than what lies under it.
fn thin(exponent: f64, fo: f64, ratio: f64) -> f64 {
    let h = (exponent.clamp(0.0, super::MOST) + 1.0) / ratio * fo.sqrt();
    ((1.0 + ratio) * (1.0 - erfcx(h))).clamp(0.0, 1.0)
}

/// exp(x²) erfc(x) for x from nought on: Abramowitz and Stegun 1964, 7.1.26, published; within 1.5e-7 of exp(x²).
fn erfcx(x: f64) -> f64 {
    const A: [f64; 5] = [
        0.254_829_592,
        -0.284_496_736,
        1.421_413_741,
        -1.453_152_027,
        1.061_405_429,
    ];
    let t = 1.0 / (1.0 + 0.327_591_1 * x);
    A.iter().rev().fold(0.0, |sum, a| (sum + a) * t)
}
