//! A body cut into shells of equal thickness.

use std::f64::consts::PI;

/// One shell: how much it holds and how easily it passes on to the next one outwards.
#[derive(Clone, Copy, Debug)]
pub(super) struct Shell {
    /// Volume, of a whole of `1 / (m + 1)`.
    pub volume: f64,
    /// Area over distance of the outer face. None for the outermost: that is [`Body::skin`]'s.
    pub passes: f64,
    /// Mean of `x²` in the shell.
    pub square: f64,
}

/// A body of one dimension: its shells from the centre outwards.
#[derive(Clone, Debug)]
pub struct Body {
    pub(super) shells: Vec<Shell>,
    pub(super) volume: f64,
    /// Distance from the surface at which the outermost shell's mean stands.
    pub(super) skin: f64,
}

impl Body {
    /// A body with the area `x^exponent` at `x`, cut into `cells` shells. The exponent is kept within 0 and
    /// [`super::MOST`], the shells within 2 and 1000. For a piece that is open on one side only: exponent 0, and `L` is the whole
    /// thickness.
    #[must_use]
    pub fn new(exponent: f64, cells: usize) -> Self {
        let m = if exponent.is_finite() {
            exponent.clamp(0.0, super::MOST)
        } else {
            0.0
        };
        let count = u32::try_from(cells.clamp(2, 1000)).unwrap_or(2);
        let width = 1.0 / f64::from(count);
        let moment = |x: f64, power: f64| x.powf(m + power) / (m + power);
        let mut shells = Vec::with_capacity(cells);
        let mut skin = width / 2.0;
        for place in 0..count {
            let (inner, outer) = (f64::from(place) * width, (f64::from(place) + 1.0) * width);
            let between = |power: f64| moment(outer, power) - moment(inner, power);
            let volume = between(1.0);
            let (first, square) = (between(2.0) / volume, between(3.0) / volume);
            shells.push(Shell {
                volume,
                passes: 0.0,
                square,
            });
            // Against the surface the profile is that of steady passage, bent by the body's roundness.
            skin = 1.0 - first + m / 2.0 * (1.0 - 2.0 * first + square);
        }
        // The distance between two means is the one at which the flux of a parabola is exact.
        let mut outwards: Option<f64> = None;
        let mut face = 1.0;
        for shell in shells.iter_mut().rev() {
            if let Some(square) = outwards {
                shell.passes = 2.0 * f64::powf(face, m + 1.0) / (square - shell.square);
            }
            outwards = Some(shell.square);
            face -= width;
        }
        Self {
            shells,
            volume: 1.0 / (m + 1.0),
            skin,
        }
    }

    /// The exponent of a brick of these edges (any unit, any order): that of the body whose centre is at 90 % under a
    /// constant surface when the brick's is. `L` is half the shortest edge. An edge that is not known: infinity.
    /// Source: product of slabs by their first terms, Carslaw and Jaeger 1959; the fit through slab, cylinder and
    /// sphere is ours.
    #[must_use]
    pub fn brick(edges: [f64; 3]) -> f64 {
        let shortest = edges.into_iter().fold(f64::INFINITY, f64::min);
        let lacks = |fo: f64| -> f64 {
            let slab = |edge: f64| {
                let fo = fo * (shortest / edge).powi(2);
                ((4.0 / PI).ln() - (PI / 2.0).powi(2) * fo).min(0.0)
            };
            edges.into_iter().map(slab).sum()
        };
        let (mut low, mut high) = (0.3, 1.1);
        for _ in 0..40 {
            let middle = f64::midpoint(low, high);
            *(if lacks(middle) > 0.1_f64.ln() {
                &mut low
            } else {
                &mut high
            }) = middle;
        }
        // 1 / Fo is 0.9698, 2.0851, 3.2949 for m = 0, 1, 2; the parabola through them.
        let (straight, bent) = (1.06805, 0.04725);
        let over = (1.0 / low - 0.9698).max(0.0);
        (((straight * straight + 4.0 * bent * over).sqrt() - straight) / (2.0 * bent)).clamp(0.0, 2.0)
    }

    /// The exponent of an oval of these axes: 0 for a sheet, 1 for a long round, 2 for a ball, by the squares of the
    /// axes between. `L` is half the shortest axis. Judgement; exact in the three cases.
    #[must_use]
    pub fn oval(axes: [f64; 3]) -> f64 {
        flatness(axes)
    }
}

/// `(a/b)² + (a/c)²`, `a` the shortest.
fn flatness(sides: [f64; 3]) -> f64 {
    let shortest = sides.into_iter().fold(f64::INFINITY, f64::min);
    let all: f64 = sides.into_iter().map(|side| (shortest / side).powi(2)).sum();
    if all.is_finite() {
        (all - 1.0).clamp(0.0, 2.0)
    } else {
        0.0
    }
}
