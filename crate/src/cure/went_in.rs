//! How much of the dose has gone in by a time: a rub that is taken out when its middle has colour has not taken up all.
//!
//! For the limit all that was weighed for the meat counts, since what lies on it goes with it. For the least only what
//! surely went in by then counts: by the slow end of the clock's speeds, nitrite at 0.7 of salt's (judgement), out of a
//! rub's own liquid or out of the brine.

use super::course::Course;
use super::laid::{COLOUR, Enters};
use crate::batch::Batch;
use crate::dose::Ingoing;
use crate::quantity::Range;
use crate::quantity::exact::Exact;
use crate::recipe::{Counted, Method};
use crate::transport::{Solid, uptake};
use crate::weigh::{self, Settings};
use rust_decimal::Decimal;
use rust_decimal::prelude::FromPrimitive;

/// The liquid that a rub draws and stands in, over the water of the meat. Judgement.
const LIQUID: f64 = 0.1;

/// What has gone into one size class.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct WentIn {
    /// Its place in the batch.
    pub at: u32,
    /// Of the dose that is counted: the share that has gone in at least, likely, at most.
    pub share: Range,
    /// Nitrite, ppm.
    pub nitrite: Range,
    /// Nitrate, ppm.
    pub nitrate: Range,
}

/// What has gone in of the dose that the verdict counts, by `when`, in milliseconds since 1970, one for each size class.
/// A class of which the clock knows nothing has a low end of nought, since nobody knows what went in. Mince, a pump and
/// what was put on the meat by another way than a rub or a cover brine have gone in as they are.
///
/// `None` where the dose itself is not known.
#[must_use]
pub fn went_in(batch: &Batch, settings: &Settings, when: i64) -> Option<Vec<WentIn>> {
    let dose = weigh::verdict(batch, settings).ok()?.ingoing?;
    let by_clock = matches!(batch.recipe.method, Method::Rub | Method::CoverBrine);
    let mut course = Course::new(batch, when, settings, None);
    let classes = (0_u32..).zip(&batch.pieces);
    classes
        .map(|(at, piece)| {
            let share = if !by_clock {
                Range::point(Decimal::ONE)
            } else if batch.tick("rub").is_none() {
                Range::point(Decimal::ZERO)
            } else {
                let now = course.now_of(at);
                match course.ready(at, piece) {
                    Some(ready) => {
                        let counted = course.fridge.counted(now, now);
                        let [slow, likely, fast] = ready.speeds.map(|d| ready.laid.fo(counted, d));
                        let ratio = match ready.laid.enters {
                            Enters::Dose => LIQUID,
                            Enters::Brine(ratio) => ratio,
                        };
                        taken(
                            batch.recipe.method.counted(),
                            ready.laid.solid,
                            ratio,
                            [slow * COLOUR, likely * COLOUR, fast],
                        )?
                    }
                    None => Range {
                        low: Decimal::ZERO,
                        typical: Decimal::ONE,
                        high: Decimal::ONE,
                    },
                }
            };
            of(at, share, dose)
        })
        .collect()
}

fn of(at: u32, share: Range, dose: Ingoing) -> Option<WentIn> {
    let part = |range: Range| {
        Some(Range {
            low: range.low.times(share.low)?,
            typical: range.typical.times(share.typical)?,
            high: range.high.times(share.high)?,
        })
    };
    Some(WentIn {
        at,
        share,
        nitrite: part(dose.nitrite)?,
        nitrate: part(dose.nitrate)?,
    })
}

/// Shares of the dose: slow downward, fast upward. The dose of a rub is all there is, and a tenth of it may stay in the
/// liquid for ever; for the limit it counts as in. The dose of a brine is what the meat comes to when both are equal.
#[allow(
    clippy::float_arithmetic,
    reason = "physics, with an error of the model far above that of binary arithmetic"
)]
fn taken(counted: Counted, solid: Solid, ratio: f64, fo: [f64; 3]) -> Option<Range> {
    let whole = if counted == Counted::Green {
        1.0 / (1.0 + ratio)
    } else {
        1.0
    };
    let share = |fo: f64| Decimal::from_f64(solid.uptake(ratio, fo) * whole);
    // The rim of a lens and the edges of a brick fill first, and the middle waits: for the least, what a flat piece of that
    // thickness takes up, which of all shapes is least.
    let least = |fo: f64| Decimal::from_f64(uptake(0.0, fo, ratio) * whole);
    let [slow, likely, fast] = fo;
    let step = Decimal::new(1, 6);
    Some(Range {
        low: least(slow)?.down_to(step)?,
        typical: share(likely)?.nearest(step)?,
        high: if counted == Counted::Green {
            Decimal::ONE
        } else {
            share(fast)?.up_to(step)?.plus(step)?.min(Decimal::ONE)
        },
    })
}
