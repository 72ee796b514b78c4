//! The heat of a body in air, against the series of slab, cylinder and sphere.
//!
//! Sources: Carslaw and Jaeger, Conduction of Heat in Solids, 1959, quoted from memory; the printed first roots and
//! coefficients in `data/transient-conduction-coefficients.csv`, computed, agreeing with the printed table.

use cure_reckoner::smoke::{Cook, Piece, Smoker};

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
            let air = Smoker {
                convection,
                radiation: 0.0,
                wetness: 0.0,
                dries: 0.05,
                sharpness: 1.0,
                dew: 20.0,
            };
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
