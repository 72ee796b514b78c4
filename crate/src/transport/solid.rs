//! Bodies of three dimensions that the cure enters from all sides, solved without a grid.
//!
//! - **A dose** shared evenly over the surface, then sealed. What lies on one pair of faces evens out across them and
//!   knows nothing of the others, so a brick is the sum of three slabs, each by its share of the surface, and a round
//!   with ends that of a cylinder and a slab. Exact: a product would be one of what started even, and a dose does not.
//! - **A held surface.** What is lacking is the product of what is lacking in each direction (Carslaw and Jaeger 1959).
//! - **A bath** of limited volume, from the held surface ([`super::bath`]).
//! - **A lens** has no such series: its terms are a table, by finite elements (`scripts/lens-table.py`).
//!
//! Checked in `tests/published/joints.rs` against finite differences in three dimensions that share nothing with it.

use super::bath::bathed;
use super::decay::{Decay, PLACES, Term, Wave};
use super::lens;
use super::rates::Ladder;
use std::f64::consts::{FRAC_PI_2, PI};

/// A body with its sizes as multiples of `L`, half of what is measured as its thickness. The profile runs along that.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Solid {
    /// A brick of thickness 2, by the halves of its other two edges. Infinity: a slab.
    Brick([f64; 2]),
    /// A cylinder with ends, of diameter 2, by the half of its length.
    Round(f64),
    /// Two equal spherical caps, 2 thick together, by the radius of the rim.
    Lens(f64),
}

/// A mode of one direction.
struct Mode {
    rate: f64,
    line: [f64; PLACES],
    mean: f64,
}

/// Modes of a dose along the profile; more than the first Fo of a profile can show.
const DOSED: u32 = 16;
/// Modes of a held surface along the profile.
const HELD: u32 = 9;
/// Rates beyond this are over before a profile begins.
const FASTEST: f64 = 750.0;
/// Nothing of a dose on the far faces is at the middle before this Fo of theirs: less than 3e-5 of it.
const NOTHING: f64 = 0.02;
/// The first noughts of the Bessel functions J0 and J1 (DLMF 10.21, published).
const J0: [f64; 10] = [
    2.404_825_558,
    5.520_078_110,
    8.653_727_913,
    11.791_534_439,
    14.930_917_709,
    18.071_063_968,
    21.211_636_630,
    24.352_471_531,
    27.493_479_132,
    30.634_606_468,
];
const J1: [f64; 10] = [
    3.831_705_970,
    7.015_586_670,
    10.173_468_135,
    13.323_691_936,
    16.470_630_051,
    19.615_858_510,
    22.760_084_381,
    25.903_672_087,
    29.046_828_535,
    32.189_679_911,
];

impl Solid {
    /// The course of a dose that is shared over the surface and stays with the body.
    ///
    /// ```
    /// use cure_reckoner::transport::Solid;
    /// // A slab: 1 − 2 exp(−π² Fo) at the centre, 0.9 at Fo = ln(20)/π² (Carslaw and Jaeger 1959).
    /// let slab = Solid::Brick([f64::INFINITY, f64::INFINITY]).dosed();
    /// assert!((slab.centre(0.3035) - 0.9).abs() < 1e-4);
    /// ```
    #[must_use]
    pub fn dosed(&self) -> Decay {
        match *self {
            Self::Brick([wide, long]) => {
                let area = 1.0 + 1.0 / wide + 1.0 / long;
                Decay {
                    waves: vec![
                        slab_dosed(1.0 / area),
                        far_dosed(wide, 1.0 / wide / area),
                        far_dosed(long, 1.0 / long / area),
                    ],
                }
            }
            Self::Round(long) => {
                let ends = 1.0 / (2.0 * long + 1.0);
                let term = |q: f64| {
                    let surface = bessel(0, q);
                    dosed(q * q, across(|x| -(1.0 - ends) * bessel(0, q * x) / surface))
                };
                Decay {
                    waves: vec![all(J1.iter().map(|q| term(*q)).collect()), far_dosed(long, ends)],
                }
            }
            Self::Lens(rim) => Decay::of(lens::dosed(rim)),
        }
    }

    /// The course where the surface stands at 1.
    ///
    /// ```
    /// use cure_reckoner::transport::Solid;
    /// // What is lacking in a cube is what is lacking in a slab, to the third power (Carslaw and Jaeger 1959).
    /// let slab = Solid::Brick([f64::INFINITY, f64::INFINITY]).held();
    /// let cube = Solid::Brick([1.0, 1.0]).held();
    /// assert!(((1.0 - cube.mean(0.25)) - (1.0 - slab.mean(0.25)).powi(3)).abs() < 1e-3);
    /// ```
    #[must_use]
    pub fn held(&self) -> Decay {
        Decay::of(self.terms())
    }

    /// The course in a stirred bath of `ratio` times the body's volume (for brine: its water over the meat's water), that
    /// comes down to 1.
    ///
    /// ```
    /// use cure_reckoner::transport::Solid;
    /// // A bath without end is a held surface.
    /// let slab = Solid::Brick([f64::INFINITY, f64::INFINITY]);
    /// assert!((slab.bathed(1e6).mean(0.25) - slab.held().mean(0.25)).abs() < 1e-3);
    /// ```
    #[must_use]
    pub fn bathed(&self, ratio: f64) -> Decay {
        bathed(&self.terms(), ratio.max(1e-3))
    }

    /// How much of what it comes to it has taken up out of such a bath by an Fo. Never more than a half-space under a
    /// surface that does not weaken.
    ///
    /// ```
    /// use cure_reckoner::transport::Solid;
    /// let slab = Solid::Brick([f64::INFINITY, f64::INFINITY]);
    /// assert_eq!(slab.uptake(1.0, 0.0), 0.0);
    /// // Crank 1975, p. 48, published, for a bath without end: 0.562234.
    /// assert!((slab.uptake(1e6, 0.25) - 0.562_234).abs() < 1e-3);
    /// ```
    #[must_use]
    pub fn uptake(&self, ratio: f64, fo: f64) -> f64 {
        if !(fo > 0.0 && ratio > 0.0) {
            return 0.0;
        }
        let open = match *self {
            Self::Brick([wide, long]) => 1.0 + 1.0 / wide + 1.0 / long,
            Self::Round(long) => 2.0 + 1.0 / long,
            Self::Lens(rim) => 6.0 * (rim * rim + 1.0) / (3.0 * rim * rim + 1.0),
        };
        let most = open * 2.0 * (fo / PI).sqrt() * (1.0 + ratio) / ratio;
        self.bathed(ratio).mean(fo).clamp(0.0, most.min(1.0))
    }

    /// What is lacking under a held surface, slowest first.
    fn terms(&self) -> Vec<Term> {
        match *self {
            Self::Brick([wide, long]) => product(&slab_held(), &[wide, long]),
            Self::Round(long) => {
                let mode = |q: f64| {
                    let share = 2.0 / (q * bessel(1, q));
                    Mode {
                        rate: q * q,
                        line: across(|x| share * bessel(0, q * x)),
                        mean: 4.0 / (q * q),
                    }
                };
                product(&J0.map(mode), &[long])
            }
            Self::Lens(rim) => lens::held(rim),
        }
    }
}

/// A figure for each place from the centre to the surface.
fn across(of: impl Fn(f64) -> f64) -> [f64; PLACES] {
    let mut line = [0.0; PLACES];
    for (n, value) in (0_u32..).zip(line.iter_mut()) {
        *value = of(f64::from(n) / 8.0);
    }
    line
}

const fn dosed(rate: f64, line: [f64; PLACES]) -> Term {
    Term { rate, line, mean: 0.0 }
}

const fn all(terms: Vec<Term>) -> Wave {
    Wave {
        from: 0.0,
        whole: 0.0,
        terms,
    }
}

/// 1 and -1 by turns.
fn turns(n: u32) -> f64 {
    if n.is_multiple_of(2) { 1.0 } else { -1.0 }
}

/// A share of the dose on the two faces across the profile.
fn slab_dosed(share: f64) -> Wave {
    let term = |n: u32| {
        let q = f64::from(n) * PI;
        dosed(q * q, across(|x| -2.0 * share * turns(n) * (q * x).cos()))
    };
    all((1..=DOSED).map(term).collect())
}

/// A share of the dose on two faces that are `far` from the middle, as it comes to the profile.
fn far_dosed(far: f64, share: f64) -> Wave {
    let term = |n: u32| {
        let q = f64::from(n) * PI / far;
        dosed(q * q, [-2.0 * share * turns(n); PLACES])
    };
    Wave {
        from: NOTHING * far * far,
        whole: share,
        terms: (1..=8).map(term).collect(),
    }
}

/// Rate and share at the middle and of the mean, of a slab with its held faces `far` from the middle.
fn slab(n: u32, far: f64) -> (f64, f64, f64) {
    let q = (2.0 * f64::from(n) + 1.0) * FRAC_PI_2;
    (q * q / (far * far), 2.0 * turns(n) / q, 2.0 / (q * q))
}

fn slab_held() -> [Mode; HELD as usize] {
    std::array::from_fn(|n| {
        let (rate, middle, mean) = slab(u32::try_from(n).unwrap_or(0), 1.0);
        let q = rate.sqrt();
        Mode {
            rate,
            line: across(|x| middle * (q * x).cos()),
            mean,
        }
    })
}

/// Modes along the profile times those of the other directions, by how far their faces are.
fn product(modes: &[Mode], fars: &[f64]) -> Vec<Term> {
    let mut terms: Vec<Term> = modes
        .iter()
        .map(|mode| Term {
            rate: mode.rate,
            line: mode.line,
            mean: mode.mean,
        })
        .collect();
    for far in fars.iter().copied().filter(|far| far.is_finite()) {
        let slowest = terms.first().map_or(1.0, |term| term.rate) + slab(0, far).0;
        let mut ladder = Ladder::new(slowest, FASTEST);
        // So many that nothing of them shows at the middle before the cure has come there by the shorter way.
        let needed = (2.5 * far + 4.0).clamp(6.0, 44.0);
        for n in (0..44).take_while(|n| f64::from(*n) < needed) {
            let (rate, middle, mean) = slab(n, far);
            for term in &terms {
                ladder.add(
                    term.rate + rate,
                    &term.line.map(|share| share * middle),
                    term.mean * mean,
                );
            }
        }
        terms = ladder.terms();
    }
    terms
}

/// Bessel's function of order 0 or 1 up to about 32, by its power series: to 1e-5 there, far better below.
fn bessel(order: u32, x: f64) -> f64 {
    let quarter = -x * x / 4.0;
    let mut term = if order == 0 { 1.0 } else { x / 2.0 };
    let (mut sum, mut k) = (term, 1.0);
    // The terms grow until k is half of x; then they fall away.
    while k < 70.0 && (k < x / 2.0 || term.abs() > 1e-10) {
        term *= quarter / (k * (k + f64::from(order)));
        sum += term;
        k += 1.0;
    }
    sum
}
