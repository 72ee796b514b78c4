//! The heat of a body in air, against the series of slab, cylinder and sphere.
//!
//! Sources: Carslaw and Jaeger, Conduction of Heat in Solids, 1959, quoted from memory; the printed first roots and
//! coefficients in `data/transient-conduction-coefficients.csv`, computed, agreeing with the printed table.

use cure_reckoner::smoke::{Cook, Piece, Smoker};
use cure_reckoner::transport::brick;

const COEFFICIENTS: &str = include_str!("data/transient-conduction-coefficients.csv");

/// The root equation without poles, and the coefficient of a root. 0 slab, 1 cylinder, 2 sphere.
fn equation(shape: u32, bi: f64, q: f64) -> f64 {
    match shape {
        0 => q * q.sin() - bi * q.cos(),
        1 => q * libm::j1(q) - bi * libm::j0(q),
        _ => q.sin() - q * q.cos() - bi * q.sin(),
    }
}

fn coefficient(shape: u32, q: f64) -> f64 {
    match shape {
        0 => 4.0 * q.sin() / (2.0 * q + (2.0 * q).sin()),
        1 => 2.0 / q * libm::j1(q) / (libm::j0(q).powi(2) + libm::j1(q).powi(2)),
        _ => 4.0 * (q.sin() - q * q.cos()) / (2.0 * q - (2.0 * q).sin()),
    }
}

fn roots(shape: u32, bi: f64, count: usize) -> Vec<f64> {
    let mut found = Vec::new();
    let mut at = 1e-6;
    while found.len() < count {
        let (mut low, mut high) = (at, at + 0.01);
        if equation(shape, bi, low).signum() != equation(shape, bi, high).signum() {
            for _ in 0..60 {
                let middle = f64::midpoint(low, high);
                if equation(shape, bi, low).signum() == equation(shape, bi, middle).signum() {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            found.push(low);
        }
        at += 0.01;
    }
    found
}

/// What is left of the difference at the centre.
fn series(roots: &[f64], shape: u32, fo: f64) -> f64 {
    roots.iter().map(|q| coefficient(shape, *q) * (-q * q * fo).exp()).sum()
}

/// The series itself: first roots and coefficients, Bi 0.01 to 100, to the last printed digit.
#[test]
fn the_series_by_its_printed_table() {
    let mut seen = 0;
    for line in COEFFICIENTS.lines().skip(1).filter(|l| !l.starts_with("inf")) {
        let row: Vec<f64> = line.split(',').map(|c| c.parse().expect("a number")).collect();
        for shape in 0..3 {
            let root = roots(shape, row[0], 1)[0];
            let place = 1 + 2 * shape as usize;
            assert!((root - row[place]).abs() < 1.01e-4, "{shape} {}: {root}", row[0]);
            let own = coefficient(shape, root);
            assert!((own - row[place + 1]).abs() < 1.01e-4, "{shape} {}: {own}", row[0]);
            seen += 1;
        }
    }
    assert_eq!(seen, 105);
}

/// Bi 0.1 to 50 in three shapes, 4 °C into 107 °C, from Fo 0.1 to where 5 % are left: the largest error at the centre.
/// Run with `--nocapture` for the table.
#[test]
fn the_centre_for_bi_of_a_tenth_to_fifty() {
    println!("Bi      slab   cylinder  sphere   (largest error at the centre, °C)");
    for bi in [0.1, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0] {
        let worst = [0, 1, 2].map(|shape| {
            let piece = Piece {
                half: 0.015,
                exponent: f64::from(shape),
                conductivity: 0.47,
                capacity: 3.75e6,
            };
            let convection = bi * piece.conductivity / piece.half;
            let air = only(convection);
            let roots = roots(shape, bi, 40);
            let (mut cook, mut at, mut worst) = (Cook::new(piece, 4.0), 0.0, 0.0f64);
            let stride = Cook::stride(&piece);
            loop {
                cook.step(stride, 107.0, &air);
                at += stride;
                let fo = at * piece.conductivity / piece.capacity / (piece.half * piece.half);
                let left = series(&roots, shape, fo);
                if fo >= 0.1 {
                    worst = worst.max((cook.centre() - (107.0 - 103.0 * left)).abs());
                }
                if left < 0.05 {
                    break worst;
                }
            }
        });
        println!("{bi:<6} {:6.3} {:9.3} {:8.3}", worst[0], worst[1], worst[2]);
        // Beyond Bi 10, which no smoker reaches, a little more.
        let most = if bi <= 10.0 {
            [0.05, 0.08, 0.14]
        } else {
            [0.07, 0.11, 0.20]
        };
        for (worst, most) in worst.into_iter().zip(most) {
            assert!(worst < most, "{bi}: {worst} °C");
        }
    }
}

/// What is left at the centre of a brick of these half-edges, by the product of its slabs. `fo` and `bi` on the shortest.
struct Brick([(f64, Vec<f64>); 3]);

impl Brick {
    fn new(half_edges: [f64; 3], bi: f64) -> Self {
        let shortest = half_edges.into_iter().fold(f64::INFINITY, f64::min);
        Self(half_edges.map(|half| {
            let edge = half / shortest;
            (edge, roots(0, bi * edge, 40))
        }))
    }

    fn left(&self, fo: f64) -> f64 {
        let slabs = self.0.iter();
        slabs
            .map(|(edge, roots)| series(roots, 0, fo / (edge * edge)))
            .product()
    }

    fn when(&self, left: f64) -> f64 {
        let (mut low, mut high) = (1e-3, 1e4);
        for _ in 0..60 {
            let middle = f64::sqrt(low * high);
            *(if self.left(middle) > left { &mut low } else { &mut high }) = middle;
        }
        low
    }
}

/// Half-edges 20 x 30 x 60 mm, k 0.47, density times heat 3.75e6, h 15, 4 °C into 107 °C, 7200 s: 90.6326 °C at the
/// centre, computed from the product of three slabs. The equivalent body is within 0.15 °C of it.
#[test]
fn a_brick_by_the_product_of_its_slabs() {
    let (half_edges, k, capacity, h) = ([0.020, 0.030, 0.060], 0.47, 3.75e6, 15.0);
    let product = Brick::new(half_edges, h * 0.020 / k);
    let fo = k / capacity * 7200.0 / (0.020 * 0.020);
    let exact = 107.0 - 103.0 * product.left(fo);
    assert!((exact - 90.6326).abs() < 5e-5, "{exact}");
    let (exponent, half) = brick(half_edges, h * 0.020 / k);
    let piece = Piece {
        half,
        exponent,
        conductivity: k,
        capacity,
    };
    let (mut cook, stride) = (Cook::new(piece, 4.0), 7200.0 / 600.0);
    for _ in 0..600 {
        cook.step(stride, 107.0, &only(h));
    }
    println!(
        "brick 20 x 30 x 60 mm: exponent {exponent:.3}, half {half:.4} m, {:.3} °C",
        cook.centre()
    );
    assert!((cook.centre() - 90.6326).abs() < 0.15, "{}", cook.centre());
}

/// Bricks for Bi 0.1 to 50: how far the equivalent body's time is from the product's, where 60, 35, 20, 10 and 5 % are
/// left. Run with `--nocapture` for the table.
#[test]
fn bricks_for_bi_of_a_tenth_to_fifty() {
    let (k, capacity) = (0.47, 3.75e6);
    let shares = [0.60, 0.35, 0.20, 0.10, 0.05];
    let mut all = [0.0f64; 5];
    println!("edges        Bi    exponent  half   60 %   35 %   20 %   10 %    5 %   (time, % of the product's)");
    for edges in [
        [1.0, 1.0, 1.0],
        [1.0, 1.5, 3.0],
        [1.0, 2.0, 2.0],
        [1.0, 1.0, 3.0],
        [1.0, 3.0, 3.0],
        [1.0, 2.0, 8.0],
        [1.0, 6.0, 6.0],
        [1.0, 1.0, 1.5],
        [1.0, 1.2, 6.0],
        [1.0, 4.0, 4.0],
    ] {
        for bi in [0.1, 0.5, 1.0, 2.0, 5.0, 10.0, 50.0] {
            let product = Brick::new(edges, bi);
            let half_edges = edges.map(|edge| 0.015 * edge);
            let (exponent, half) = brick(half_edges, bi);
            let piece = Piece {
                half,
                exponent,
                conductivity: k,
                capacity,
            };
            let air = only(bi * k / 0.015);
            let (mut cook, stride, mut at) = (Cook::new(piece, 4.0), Cook::stride(&piece), 0.0);
            let mut left = 1.0;
            let off = shares.map(|share| {
                let mut before = (at, left);
                while left > share {
                    before = (at, left);
                    cook.step(stride, 107.0, &air);
                    at += stride;
                    left = (107.0 - cook.centre()) / 103.0;
                }
                let part = (before.1 - share) / (before.1 - left);
                let fo = (before.0 + part * (at - before.0)) * k / capacity / (0.015 * 0.015);
                100.0 * (fo / product.when(share) - 1.0)
            });
            println!("{edges:?} {bi:>5} {exponent:8.2} {:6.2} {off:6.1?}", half / 0.015);
            for (all, off) in all.iter_mut().zip(off) {
                *all = all.max(off.abs());
            }
        }
    }
    println!("largest: {all:.1?}");
    assert!(all.into_iter().all(|off| off < 3.0), "{all:?}");
}

/// Air that only convects.
const fn only(convection: f64) -> Smoker {
    Smoker {
        convection,
        radiation: 0.0,
        wetness: 0.0,
        dries: 0.05,
        sharpness: 1.0,
        dew: 20.0,
    }
}
