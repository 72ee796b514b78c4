//! Maximum a posteriori by Levenberg and Marquardt, over parameters that are standard normal beforehand.
//!
//! Our own, and short: the step is solved by conjugate gradients, which need no matrix and no indices.

/// How many parameters.
pub(super) const SIZE: usize = 10;
/// Parameters in standard deviations from what is usual.
pub(super) type Point = [f64; SIZE];

const ROUNDS: u32 = 8;
/// Step of the differences.
const NUDGE: f64 = 0.05;

/// What was found: where, and how the residuals lean there.
pub(super) struct Fitted {
    pub at: Point,
    lean: Vec<Point>,
}

fn dot(a: &Point, b: &Point) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

fn along(a: &Point, by: f64, b: &Point) -> Point {
    let mut sum = *a;
    for (sum, b) in sum.iter_mut().zip(b) {
        *sum += by * b;
    }
    sum
}

/// `(1 + damping) v + lean' lean v`.
fn bend(lean: &[Point], damping: f64, v: &Point) -> Point {
    let begin = along(&[0.0; SIZE], 1.0 + damping, v);
    lean.iter().fold(begin, |sum, row| along(&sum, dot(row, v), row))
}

/// Solves `bend x = right`.
fn solve(lean: &[Point], damping: f64, right: &Point) -> Point {
    let (mut x, mut rest, mut way) = ([0.0; SIZE], *right, *right);
    let mut norm = dot(&rest, &rest);
    for _ in 0..3 * SIZE {
        if norm < 1e-18 {
            break;
        }
        let bent = bend(lean, damping, &way);
        let step = norm / dot(&way, &bent);
        x = along(&x, step, &way);
        rest = along(&rest, -step, &bent);
        let next = dot(&rest, &rest);
        way = along(&rest, next / norm, &way);
        norm = next;
    }
    x
}

/// Differences of a function of the parameters, one for each.
pub(super) fn nudged(at: &Point) -> impl Iterator<Item = Point> + '_ {
    (0..SIZE).map(|which| {
        let mut moved = *at;
        for (place, value) in moved.iter_mut().enumerate() {
            if place == which {
                *value += NUDGE;
            }
        }
        moved
    })
}

/// The most likely parameters. `residuals` in standard deviations, as many at every point.
pub(super) fn fit(residuals: impl Fn(&Point) -> Vec<f64>) -> Fitted {
    let cost = |at: &Point, rest: &[f64]| dot(at, at) + rest.iter().map(|r| r * r).sum::<f64>();
    let mut at = [0.0; SIZE];
    let mut rest = residuals(&at);
    let mut lean = leaning(&residuals, &at, &rest);
    let (mut now, mut damping) = (cost(&at, &rest), 0.1);
    for _ in 0..ROUNDS {
        let begin = along(&[0.0; SIZE], -1.0, &at);
        let down = lean.iter().zip(&rest).fold(begin, |sum, (row, r)| along(&sum, -r, row));
        let next = along(&at, 1.0, &solve(&lean, damping, &down));
        let there = residuals(&next);
        let then = cost(&next, &there);
        if then < now {
            let gain = now - then;
            (at, rest, now, damping) = (next, there, then, damping / 5.0);
            lean = leaning(&residuals, &at, &rest);
            if gain < 0.01 * now {
                break;
            }
        } else {
            damping *= 8.0;
        }
    }
    Fitted { at, lean }
}

fn leaning(residuals: &impl Fn(&Point) -> Vec<f64>, at: &Point, rest: &[f64]) -> Vec<Point> {
    let mut lean = vec![[0.0; SIZE]; rest.len()];
    for (which, moved) in nudged(at).enumerate() {
        for ((row, there), here) in lean.iter_mut().zip(residuals(&moved)).zip(rest) {
            if let Some(cell) = row.get_mut(which) {
                *cell = (there - here) / NUDGE;
            }
        }
    }
    lean
}

impl Fitted {
    /// Nothing was read: what is usual.
    pub const fn prior() -> Self {
        Self {
            at: [0.0; SIZE],
            lean: Vec::new(),
        }
    }

    /// Standard deviation of a figure, by its value here and at each of [`nudged`].
    pub fn spread(&self, here: f64, there: impl Iterator<Item = f64>) -> f64 {
        let mut slope = [0.0; SIZE];
        for (slope, there) in slope.iter_mut().zip(there) {
            *slope = (there - here) / NUDGE;
        }
        dot(&slope, &solve(&self.lean, 0.0, &slope)).max(0.0).sqrt()
    }
}
