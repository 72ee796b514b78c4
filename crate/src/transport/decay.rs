//! How a body fills along the line through its middle, as a sum of decaying terms: no steps, any Fo at once.

/// Places of a profile, from the centre to the surface.
pub const PLACES: usize = 9;
/// Before this Fo a profile is not told from the one at it.
const FIRST: f64 = 0.006;
/// After this Fo a body is taken as level.
const LAST: f64 = 200.0;

/// A term is over when `rate * Fo` is this: 1e-11 of it is left.
const OVER: f64 = 25.0;

/// What is lacking at an Fo: `exp(-rate * Fo)` times a share for each place, and for the mean.
#[derive(Clone, Copy, Debug)]
pub(super) struct Term {
    pub rate: f64,
    pub line: [f64; PLACES],
    pub mean: f64,
}

/// Terms that hold from an Fo on. Before it all that they stand for is lacking: nothing has come so far.
#[derive(Clone, Debug)]
pub(super) struct Wave {
    pub from: f64,
    /// What is lacking before `from`, everywhere alike.
    pub whole: f64,
    /// Slowest first.
    pub terms: Vec<Term>,
}

impl Wave {
    /// The terms with what is left of each; those that are over are passed by.
    fn left(&self, fo: f64) -> impl Iterator<Item = (&Term, f64)> {
        let lasts = self.terms.iter().take_while(move |term| term.rate * fo < OVER);
        lasts.map(move |term| (term, (-term.rate * fo).exp()))
    }
}

/// The course of a body from the beginning to its final value, 1.
#[derive(Clone, Debug)]
pub struct Decay {
    pub(super) waves: Vec<Wave>,
}

impl Decay {
    pub(super) fn of(terms: Vec<Term>) -> Self {
        Self {
            waves: vec![Wave {
                from: 0.0,
                whole: 0.0,
                terms,
            }],
        }
    }

    /// What is lacking in all, by what is taken of each term.
    fn lacks(&self, fo: f64, of: impl Fn(&Term) -> f64) -> f64 {
        let wave = |wave: &Wave| -> f64 {
            if fo < wave.from {
                return wave.whole;
            }
            wave.left(fo).map(|(term, left)| of(term) * left).sum()
        };
        self.waves.iter().map(wave).sum()
    }

    /// Values from the centre to the surface at an Fo, as shares of the final.
    ///
    /// ```
    /// use cure_reckoner::transport::Solid;
    /// let slab = Solid::Brick([f64::INFINITY, f64::INFINITY]).held();
    /// let profile = slab.at(1.0311);
    /// // From the centre, as below, to the surface, where it is held.
    /// assert!((profile[0] - 0.9).abs() < 1e-4 && (profile[8] - 1.0).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn at(&self, fo: f64) -> [f64; PLACES] {
        let fo = fo.max(FIRST);
        let mut values = [1.0; PLACES];
        for wave in &self.waves {
            if fo < wave.from {
                values.iter_mut().for_each(|value| *value -= wave.whole);
                continue;
            }
            for (term, left) in wave.left(fo) {
                for (value, share) in values.iter_mut().zip(term.line) {
                    *value -= share * left;
                }
            }
        }
        // A cut series may ring by a little where nothing has come yet.
        values.map(|value| value.max(0.0))
    }

    /// The value at the centre at an Fo.
    ///
    /// ```
    /// use cure_reckoner::transport::Solid;
    /// let slab = Solid::Brick([f64::INFINITY, f64::INFINITY]).held();
    /// // Carslaw and Jaeger 1959, the series of a slab: 1 − 4/π exp(−π² Fo / 4) at Fo = 4/π² ln(40/π).
    /// assert!((slab.centre(1.0311) - 0.9).abs() < 1e-4);
    /// ```
    #[must_use]
    pub fn centre(&self, fo: f64) -> f64 {
        self.place(0.0, fo)
    }

    /// The mean at an Fo.
    ///
    /// ```
    /// use cure_reckoner::transport::Solid;
    /// let slab = Solid::Brick([f64::INFINITY, f64::INFINITY]).held();
    /// // Crank 1975, p. 48, published.
    /// assert!((slab.mean(0.25) - 0.562_233_541_762).abs() < 1e-6);
    /// ```
    #[must_use]
    pub fn mean(&self, fo: f64) -> f64 {
        1.0 - self.lacks(fo.max(0.0), |term| term.mean)
    }

    /// The value at a place between 0, the centre, and 1, the surface.
    fn place(&self, place: f64, fo: f64) -> f64 {
        let steps = f64::from(u32::try_from(PLACES - 1).unwrap_or(1));
        let on = |line: &[f64; PLACES]| -> f64 {
            let near = |(n, share): (u32, &f64)| share * (1.0 - (f64::from(n) - place * steps).abs()).max(0.0);
            (0_u32..).zip(line).map(near).sum()
        };
        1.0 - self.lacks(fo.max(FIRST), |term| on(&term.line))
    }

    /// The first Fo at which a place, from 0 the centre to 1 the surface, is at a share of the final value.
    ///
    /// ```
    /// use cure_reckoner::transport::Solid;
    /// let slab = Solid::Brick([f64::INFINITY, f64::INFINITY]).held();
    /// // Nine tenths at the centre: 4/π² ln(40/π).
    /// assert!((slab.when(0.0, 0.9) - 1.0311).abs() < 1e-4);
    /// ```
    #[must_use]
    pub fn when(&self, place: f64, share: f64) -> f64 {
        reaches(share, |fo| self.place(place, fo))
    }

    /// The first Fo at which the mean is at a share of the final value; nothing where it is not before `last`.
    ///
    /// ```
    /// use cure_reckoner::transport::Solid;
    /// let slab = Solid::Brick([f64::INFINITY, f64::INFINITY]).held();
    /// // Half of it is in about when a half-space would have it: 2 √(Fo/π) = 1/2, Fo = π/16.
    /// let half = slab.when_mean(0.5, 1.0).unwrap();
    /// assert!((half - std::f64::consts::PI / 16.0).abs() < 1e-3);
    /// assert_eq!(slab.when_mean(0.5, 0.1), None);
    /// ```
    #[must_use]
    pub fn when_mean(&self, share: f64, last: f64) -> Option<f64> {
        Some(reaches(share, |fo| self.mean(fo))).filter(|fo| *fo < last)
    }
}

/// The first Fo at which a course is at a value: by steps of a quarter, then between the last two by halves and chords.
fn reaches(share: f64, course: impl Fn(f64) -> f64) -> f64 {
    let (mut low, mut below) = (0.0, 0.0);
    let (mut high, mut above) = (FIRST, course(FIRST));
    while above < share {
        if high >= LAST {
            return LAST;
        }
        (low, below) = (high, above);
        high *= 1.25;
        above = course(high);
    }
    for turn in 0..7 {
        let chord = low + (high - low) * (share - below) / (above - below).max(1e-12);
        let at = if turn % 3 == 2 { f64::midpoint(low, high) } else { chord };
        let value = course(at);
        if value < share {
            (low, below) = (at, value);
        } else {
            (high, above) = (at, value);
        }
    }
    low + (high - low) * (share - below) / (above - below).max(1e-12)
}
