//! Master curves: how a body of one shape under one boundary fills, over Fo. All values are shares of the final.

use crate::transport::{Body, Field, Surface};

const CELLS: usize = 20;
/// Places of the profile from the centre to the surface.
pub(super) const PLACES: usize = 9;
const FIRST: f64 = 0.002;
const GROWS: f64 = 1.06;
const LAST: f64 = 6.0;

/// How the cure gets in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Enters {
    /// A weighed rub that stays with the meat.
    Dose,
    /// A brine with so many times the water of the meat.
    Brine(f64),
}

/// Shape, boundary, and one row of places for each Fo.
pub(super) struct Curve {
    pub exponent: f64,
    pub enters: Enters,
    rows: Vec<(f64, [f64; PLACES])>,
}

impl Curve {
    pub fn new(exponent: f64, enters: Enters) -> Self {
        let mut field = Field::new(&Body::new(exponent, CELLS), 0.0);
        let surface = match enters {
            Enters::Dose => {
                field.dose(1.0);
                Surface::Sealed
            }
            Enters::Brine(ratio) => {
                field.bath = (1.0 + ratio) / ratio;
                Surface::Bath { ratio }
            }
        };
        field.run(FIRST, 8, surface);
        let mut fo = FIRST;
        let mut rows = Vec::with_capacity(160);
        while fo < LAST {
            rows.push((fo, places(&field, surface)));
            field.step(fo * (GROWS - 1.0), surface);
            fo *= GROWS;
        }
        Self { exponent, enters, rows }
    }

    /// The Fo at which `place` (0 the centre, the last the surface) reaches a share of the final value.
    pub fn when(&self, place: f64, share: f64) -> f64 {
        let mut before = (0.0, 0.0);
        for (fo, row) in &self.rows {
            let now = between(row, place);
            if now >= share {
                return before.0 + (fo - before.0) * (share - before.1) / (now - before.1).max(1e-12);
            }
            before = (*fo, now);
        }
        LAST
    }

    /// Values from the centre to the surface at an Fo.
    pub fn at(&self, fo: f64) -> [f64; PLACES] {
        let after = self.rows.iter().position(|(at, _)| *at >= fo);
        let row = |n: usize| self.rows.get(n).copied().unwrap_or((0.0, [0.0; PLACES]));
        match after {
            None => row(self.rows.len().saturating_sub(1)).1,
            Some(0) => row(0).1,
            Some(n) => {
                let ((low, mut values), (high, next)) = (row(n.saturating_sub(1)), row(n));
                let share = (fo - low) / (high - low);
                for (value, next) in values.iter_mut().zip(next) {
                    *value += share * (next - *value);
                }
                values
            }
        }
    }

    pub fn centre(&self, fo: f64) -> f64 {
        let [centre, ..] = self.at(fo);
        centre
    }
}

/// Centre, the places between, surface.
fn places(field: &Field, surface: Surface) -> [f64; PLACES] {
    let mut values = [0.0; PLACES];
    let mut cells = field.values();
    let (mut inner, mut outer) = (0.0, cells.next().unwrap_or(0.0));
    // Where the outer of the two cells in hand has its middle.
    let mut middle = field.width() / 2.0;
    for (n, value) in (0_u32..).zip(values.iter_mut()) {
        let place = f64::from(n) / 8.0;
        while middle < place {
            let Some(next) = cells.next() else { break };
            (inner, outer) = (outer, next);
            middle += field.width();
        }
        *value = outer - (outer - inner) * (middle - place).max(0.0) / field.width();
    }
    if let Some(first) = values.first_mut() {
        *first = field.centre();
    }
    if let Some(last) = values.last_mut() {
        *last = field.surface(surface);
    }
    values
}

/// The value at a place between 0 and 1.
fn between(row: &[f64; PLACES], place: f64) -> f64 {
    let mut sum = 0.0;
    for (n, value) in (0_u32..).zip(row) {
        sum += value * (1.0 - (f64::from(n) - place * 8.0).abs()).max(0.0);
    }
    sum
}

/// The Fo after which a body that stands at 1 has come down to `share`, on the mean, in fresh water: `ratio` times its
/// own in a still bath, or changed so often that it stays fresh. None where it does not come so far.
pub(super) fn soaked(exponent: f64, ratio: Option<f64>, share: f64) -> Option<f64> {
    let mut field = Field::new(&Body::new(exponent, CELLS), 1.0);
    let surface = ratio.map_or(Surface::Held(0.0), |ratio| Surface::Bath { ratio });
    let (mut fo, mut step) = (0.0, 0.0005);
    while fo < 3.0 {
        let before = field.mean();
        field.step(step, surface);
        let now = field.mean();
        if now <= share {
            return Some(fo + step * (before - share) / (before - now).max(1e-12));
        }
        fo += step;
        step = (fo * 0.05).max(step);
    }
    None
}
