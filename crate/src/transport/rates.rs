//! Rates on a ladder: the many modes of a body of three dimensions, gathered into few.

use super::decay::{PLACES, Term};
use rust_decimal::prelude::ToPrimitive;

/// From one rung to the next. Within 0.2 % of the final value of the modes themselves.
const RUNG: f64 = 1.2;

/// Terms whose rates stand in equal ratios. The slowest keeps its rate; what lies between two rungs is shared out to both
/// by the logarithm of its rate.
pub(super) struct Ladder {
    slowest: f64,
    rungs: Vec<Term>,
}

impl Ladder {
    pub fn new(slowest: f64, fastest: f64) -> Self {
        let mut rungs = Vec::with_capacity(64);
        let mut rate = slowest;
        while rungs.is_empty() || rate < fastest * RUNG {
            rungs.push(Term {
                rate,
                line: [0.0; PLACES],
                mean: 0.0,
            });
            rate *= RUNG;
        }
        Self { slowest, rungs }
    }

    /// Puts a mode on the ladder; what is faster than the last rung is left out.
    pub fn add(&mut self, rate: f64, line: &[f64; PLACES], mean: f64) {
        let place = ((rate / self.slowest).ln() / RUNG.ln()).max(0.0);
        let over = place.fract();
        let below = place.to_usize().unwrap_or(usize::MAX);
        for (rung, near) in self.rungs.iter_mut().skip(below).zip([1.0 - over, over]) {
            for (sum, share) in rung.line.iter_mut().zip(line) {
                *sum += near * share;
            }
            rung.mean += near * mean;
        }
    }

    /// The rungs on which something stands.
    pub fn terms(self) -> Vec<Term> {
        self.rungs.into_iter().filter(|rung| rung.mean > 1e-9).collect()
    }
}
