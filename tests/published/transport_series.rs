//! The series solutions of diffusion in slab, cylinder and sphere, with half-thickness or radius 1 and Fo for time.
//!
//! Sources: Crank, The Mathematics of Diffusion, 1975, chapters 4 to 6; Carslaw and Jaeger, Conduction of Heat in
//! Solids, 1959. Status: quoted from memory, and tied to the printed check values in `transport.rs`.

/// Which body.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Shape {
    Slab,
    Cylinder,
    Sphere,
}

/// What is around it. The final value is 1 in all.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Around {
    Constant,
    /// A dose put on the surface at the start, and nothing after.
    Dose,
    /// A bath of this many times the body's volume.
    Bath(f64),
}

const TERMS: usize = 50;

impl Shape {
    pub fn exponent(self) -> f64 {
        match self {
            Self::Slab => 0.0,
            Self::Cylinder => 1.0,
            Self::Sphere => 2.0,
        }
    }

    /// The eigenfunction, 1 at the centre.
    fn wave(self, q: f64, x: f64) -> f64 {
        let y = q * x;
        match self {
            Self::Slab => y.cos(),
            Self::Cylinder => libm::j0(y),
            Self::Sphere if y.abs() < 1e-8 => 1.0,
            Self::Sphere => y.sin() / y,
        }
    }

    /// Minus its slope over q, at the surface.
    fn slope(self, q: f64) -> f64 {
        match self {
            Self::Slab => q.sin(),
            Self::Cylinder => libm::j1(q),
            Self::Sphere => q.sin() / (q * q) - q.cos() / q,
        }
    }
}

/// Zeros of a function in order, found by its changes of sign and halving.
fn zeros(f: impl Fn(f64) -> f64) -> Vec<f64> {
    let step = 0.01;
    let mut found = Vec::new();
    let mut low = 1e-4;
    while found.len() < TERMS {
        let high = low + step;
        if f(low) * f(high) < 0.0 {
            let (mut a, mut b) = (low, high);
            for _ in 0..60 {
                let middle = 0.5 * (a + b);
                if f(a) * f(middle) <= 0.0 {
                    b = middle
                } else {
                    a = middle
                }
            }
            found.push(0.5 * (a + b));
        }
        low = high;
    }
    found
}

/// A solution as a sum: `1 + Σ weight wave(q x) exp(-q² Fo)`.
pub struct Series {
    shape: Shape,
    pub terms: Vec<(f64, f64)>,
}

impl Series {
    pub fn new(shape: Shape, around: Around) -> Self {
        let sides = shape.exponent() + 1.0;
        let roots = match around {
            Around::Constant => zeros(|q| shape.wave(q, 1.0)),
            Around::Dose => zeros(|q| shape.slope(q)),
            // What the body takes up, the bath loses.
            Around::Bath(ratio) => zeros(|q| ratio * q * shape.wave(q, 1.0) + sides * shape.slope(q)),
        };
        let terms = roots
            .into_iter()
            .map(|q| {
                let at_surface = shape.wave(q, 1.0);
                let weight = match around {
                    Around::Constant => -2.0 / (q * shape.slope(q)),
                    Around::Dose => 2.0 / (sides * at_surface),
                    Around::Bath(a) => {
                        2.0 * sides * (1.0 + a) / (sides * sides * (1.0 + a) + (a * q).powi(2)) / at_surface
                    }
                };
                (q, weight)
            })
            .collect();
        Self { shape, terms }
    }

    pub fn at(&self, fo: f64, x: f64) -> f64 {
        let sum = |&(q, weight): &(f64, f64)| weight * self.shape.wave(q, x) * (-q * q * fo).exp();
        1.0 + self.terms.iter().map(sum).sum::<f64>()
    }

    pub fn mean(&self, fo: f64) -> f64 {
        let sides = self.shape.exponent() + 1.0;
        let sum = |&(q, weight): &(f64, f64)| weight * sides * self.shape.slope(q) / q * (-q * q * fo).exp();
        1.0 + self.terms.iter().map(sum).sum::<f64>()
    }

    /// The mean of a shell, by Gauss with five points.
    pub fn between(&self, fo: f64, low: f64, high: f64) -> f64 {
        let m = self.shape.exponent();
        let points = [
            (0.0, 0.568_888_888_888_888_9),
            (0.538_469_310_105_683_1, 0.478_628_670_499_366_5),
            (-0.538_469_310_105_683_1, 0.478_628_670_499_366_5),
            (0.906_179_845_938_664, 0.236_926_885_056_189_08),
            (-0.906_179_845_938_664, 0.236_926_885_056_189_08),
        ];
        let (mut whole, mut sum) = (0.0, 0.0);
        for (place, share) in points {
            let x = 0.5 * (low + high + place * (high - low));
            let volume: f64 = share * x.powf(m);
            whole += volume;
            sum += volume * self.at(fo, x);
        }
        sum / whole
    }

    /// The Fo at which the centre reaches `share`, by halving.
    pub fn when_centre(&self, share: f64) -> f64 {
        let (mut low, mut high) = (0.01, 5.0);
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if self.at(middle, 0.0) < share {
                low = middle
            } else {
                high = middle
            }
        }
        0.5 * (low + high)
    }
}

#[test]
fn the_roots_are_the_printed_ones() {
    // tan q = -q, Crank 1975, table 4.1: 2.0288, 4.9132, 7.9787 (published).
    let bath = Series::new(Shape::Slab, Around::Bath(1.0));
    for (found, printed) in bath.terms.iter().zip([2.0288, 4.9132, 7.9787]) {
        assert!((found.0 - printed).abs() < 5e-5, "{found:?}");
    }
}
