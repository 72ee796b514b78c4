//! A body cut into shells of equal thickness.

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
    ///
    /// ```
    /// use cure_reckoner::transport::{Body, Field};
    /// // A ball in 40 shells.
    /// let ball = Field::new(&Body::new(2.0, 40), 0.0);
    /// assert_eq!(ball.values().count(), 40);
    /// ```
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
}
