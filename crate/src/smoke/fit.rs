//! Maximum a posteriori by Levenberg and Marquardt, over parameters that are standard normal beforehand.
//!
//! Our own, and short: the step is solved by conjugate gradients, which need no matrix and no indices.

/// How many parameters.
pub(super) const SIZE: usize = 11;
/// Parameters in standard deviations from what is usual.
pub(super) type Point = [f64; SIZE];

const ROUNDS: u32 = 8;
/// Step of the differences.
const NUDGE: f64 = 0.05;

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

/// A point and, for each parameter, one that is nudged in it alone.
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

/// How figures lean on the parameters, by what they are here and at each of [`nudged`].
pub(super) fn leaning(here: &[f64], there: impl Iterator<Item = Vec<f64>>) -> Vec<Point> {
    let mut lean = vec![[0.0; SIZE]; here.len()];
    for (which, there) in there.enumerate() {
        for ((row, there), here) in lean.iter_mut().zip(there).zip(here) {
            if let Some(cell) = row.get_mut(which) {
                *cell = (there - here) / NUDGE;
            }
        }
    }
    lean
}

/// The most likely parameters. `residuals` in standard deviations, as many at every point.
///
/// The leaning is found once and then follows the steps (Broyden), so that a round asks for one evaluation; it is found
/// anew where a step leads nowhere.
pub(super) fn fit(residuals: impl Fn(&Point) -> Vec<f64>) -> Point {
    let cost = |at: &Point, rest: &[f64]| dot(at, at) + rest.iter().map(|r| r * r).sum::<f64>();
    let anew = |at: &Point, rest: &[f64]| leaning(rest, nudged(at).map(|z| residuals(&z)));
    let mut at = [0.0; SIZE];
    let mut rest = residuals(&at);
    let mut lean = anew(&at, &rest);
    let (mut now, mut damping, mut fresh) = (cost(&at, &rest), 0.1, true);
    for _ in 0..ROUNDS {
        let begin = along(&[0.0; SIZE], -1.0, &at);
        let down = lean.iter().zip(&rest).fold(begin, |sum, (row, r)| along(&sum, -r, row));
        let step = solve(&lean, damping, &down);
        let next = along(&at, 1.0, &step);
        let there = residuals(&next);
        let then = cost(&next, &there);
        if then < now {
            let gain = now - then;
            let long = dot(&step, &step).max(1e-12);
            for ((row, there), here) in lean.iter_mut().zip(&there).zip(&rest) {
                *row = along(row, (there - here - dot(row, &step)) / long, &step);
            }
            (at, rest, now, damping, fresh) = (next, there, then, damping / 5.0, false);
            if gain < 0.01 * now {
                break;
            }
        } else {
            damping *= 8.0;
            if !fresh {
                (lean, fresh) = (anew(&at, &rest), true);
            }
        }
    }
    at
}

/// Standard deviation of a figure that leans by `slope`, where the residuals lean by `lean`.
pub(super) fn spread(lean: &[Point], slope: &Point) -> f64 {
    dot(slope, &solve(lean, 0.0, slope)).max(0.0).sqrt()
}
