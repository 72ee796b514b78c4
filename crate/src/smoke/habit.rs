//! What is known of one smoker beyond its kind.

use super::fit::{Point, SIZE, spread};

/// What one fire leaves open of the next in the same smoker, in standard deviations of what is usual: weather, load, and
/// that the model is not the smoker. Judgement, held by simulated smokers (`tests/published/smoke_habit.rs`).
const BETWEEN: f64 = 0.7;

/// How a smoker differs from what is usual for its kind: the air that it moves, the wetness of what hangs in it, how much it
/// dries and how sharply, the dew point; in standard deviations of what is usual, and how much of each is left open.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Habit {
    /// Where each lies.
    pub centre: [f64; 5],
    /// The standard deviation of each, 1 where nothing is known.
    pub spread: [f64; 5],
}

impl Habit {
    /// Nothing is known but its kind.
    pub const USUAL: Self = Self {
        centre: [0.0; 5],
        spread: [1.0; 5],
    };

    /// A point beside what is usual, where the smoker's own parameters stand second to sixth.
    pub(super) fn apply(&self, z: &Point) -> Point {
        let mut own = *z;
        for ((z, centre), spread) in own.iter_mut().skip(1).zip(self.centre).zip(self.spread) {
            *z = centre + spread * *z;
        }
        own
    }

    /// What a fit leaves of it: where it found the parameters, and what the readings narrowed, by how they `lean`.
    pub(super) fn after(&self, found: &Point, lean: &[Point]) -> Self {
        let mut habit = *self;
        for (centre, own) in habit.centre.iter_mut().zip(self.apply(found).into_iter().skip(1)) {
            *centre = own;
        }
        for (which, left) in habit.spread.iter_mut().enumerate() {
            let mut axis = [0.0; SIZE];
            if let Some(one) = axis.iter_mut().skip(1).nth(which) {
                *one = 1.0;
            }
            *left *= spread(lean, &axis);
        }
        habit
    }

    /// What fires in one smoker tell together, each fitted by what is usual. What a fit adds to that is weighed as a finding
    /// that leaves `BETWEEN` open besides; so a hundred fires leave less than one, and none leaves nothing.
    #[must_use]
    pub fn learned(fires: &[Self]) -> Self {
        let mut habit = Self::USUAL;
        for (place, (centre, spread)) in habit.centre.iter_mut().zip(&mut habit.spread).enumerate() {
            let (mut whole, mut sum) = (1.0, 0.0);
            for fire in fires {
                let own = fire.centre.iter().zip(&fire.spread).nth(place);
                let Some((at, left)) = own else { continue };
                // The fit's own share, without what it took from before.
                let told = 1.0 / (left * left) - 1.0;
                if told > 0.05 {
                    let weight = 1.0 / (1.0 / told + BETWEEN * BETWEEN);
                    whole += weight;
                    sum += weight * at * (1.0 + told) / told;
                }
            }
            (*centre, *spread) = (sum / whole, 1.0 / f64::sqrt(whole));
        }
        habit
    }
}
