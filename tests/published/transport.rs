//! The kernel of transport against the series solutions, and its balance and order.

use crate::transport_series::{Around, Series, Shape};
use cure_reckoner::transport::{Body, Field, Surface};

const SHAPES: [Shape; 3] = [Shape::Slab, Shape::Cylinder, Shape::Sphere];
const AROUND: [Around; 4] = [Around::Constant, Around::Dose, Around::Bath(1.0), Around::Bath(3.0)];

fn start(shape: Shape, around: Around, cells: usize) -> (Field, Surface) {
    let mut field = Field::new(&Body::new(shape.exponent(), cells), 0.0);
    let surface = match around {
        Around::Constant => Surface::Held(1.0),
        Around::Dose => {
            field.dose(1.0);
            Surface::Sealed
        }
        Around::Bath(ratio) => {
            field.bath = (1.0 + ratio) / ratio;
            Surface::Bath { ratio }
        }
    };
    (field, surface)
}

/// Largest errors of centre, mean and shells over Fo 0.02 to 2, as shares of the final value.
fn largest(shape: Shape, around: Around, cells: usize) -> [f64; 3] {
    let series = Series::new(shape, around);
    let (mut field, surface) = start(shape, around, cells);
    field.run(0.02, 80, surface);
    let (mut fo, mut worst) = (0.02, [0.0_f64; 3]);
    while fo < 2.0 {
        let width = field.width();
        let shells = field.values().enumerate().map(|(place, value)| {
            let inner = width * f64::from(u32::try_from(place).unwrap());
            (value - series.between(fo, inner, inner + width)).abs()
        });
        let errors = [
            (field.centre() - series.at(fo, 0.0)).abs(),
            (field.mean() - series.mean(fo)).abs(),
            shells.fold(0.0, f64::max),
        ];
        for (kept, error) in worst.iter_mut().zip(errors) {
            *kept = kept.max(error);
        }
        field.step(fo * 0.02, surface);
        fo *= 1.02;
    }
    worst
}

#[test]
fn against_the_series() {
    println!("largest error over Fo 0.02 to 2, share of the final value");
    println!(
        "{:<9} {:<10} {:>5} {:>9} {:>9} {:>9}",
        "body", "around", "cells", "centre", "mean", "shells"
    );
    let mut failed = Vec::new();
    for shape in SHAPES {
        for around in AROUND {
            for (cells, [centre, mean, shells]) in [(20, [0.005, 0.005, 0.03]), (40, [0.00125, 0.00125, 0.0075])] {
                let found = largest(shape, around, cells);
                println!(
                    "{:<9} {:<10} {cells:>5} {:>9.6} {:>9.6} {:>9.6}",
                    format!("{shape:?}"),
                    format!("{around:?}"),
                    found[0],
                    found[1],
                    found[2],
                );
                if found[0] > centre || found[1] > mean || found[2] > shells {
                    failed.push((shape, around, cells, found));
                }
            }
        }
    }
    assert!(failed.is_empty(), "{failed:?}");
}

/// Fo at which the kernel's centre reaches a share of the final value.
fn when_centre(shape: Shape, around: Around, share: f64) -> f64 {
    let (mut field, surface) = start(shape, around, 200);
    let (mut fo, mut before, step) = (0.0, 0.0, 1e-4);
    while field.centre() < share {
        before = field.centre();
        field.step(step, surface);
        fo += step;
    }
    fo - step * (field.centre() - share) / (field.centre() - before)
}

#[test]
fn the_times_of_the_centre() {
    // Centre at 90 % of the final value. Computed from the series; the same figures by the kernel.
    let given = [
        (Shape::Slab, Around::Dose, 0.3035),
        (Shape::Slab, Around::Bath(1.0), 0.6546),
        (Shape::Slab, Around::Bath(3.0), 0.8419),
        (Shape::Slab, Around::Constant, 1.0311),
        (Shape::Cylinder, Around::Dose, 0.2187),
        (Shape::Cylinder, Around::Constant, 0.4796),
        (Shape::Sphere, Around::Constant, 0.3035),
    ];
    for (shape, around, fo) in given {
        let (series, kernel) = (
            Series::new(shape, around).when_centre(0.9),
            when_centre(shape, around, 0.9),
        );
        println!("{shape:?} {around:?}: given {fo}, series {series:.5}, kernel {kernel:.5}");
        assert!((series - fo).abs() <= 5.1e-5, "{shape:?} {around:?}: series {series}");
        assert!((kernel - fo).abs() <= 1e-4, "{shape:?} {around:?}: kernel {kernel}");
    }
    // The colour front: 40 of 150 ppm, 27 % of a sealed dose in a slab, given as Fo 0.095; it is 0.0955.
    let share = 40.0 / 150.0;
    let series = Series::new(Shape::Slab, Around::Dose).when_centre(share);
    let front = when_centre(Shape::Slab, Around::Dose, share);
    assert!(
        (front - series).abs() < 5e-5 && (series - 0.0955).abs() < 1e-4,
        "{front} {series}"
    );
    // The hours it gives: 15 and 34 for the colour in 25 and 38 mm at 2.8e-10, 33 and 76 for the salt at 4e-10.
    let hours = |fo: f64, mm: f64, d: f64| fo * (mm / 2000.0).powi(2) / d / 3600.0;
    let given = [
        (front, 25.0, 2.8e-10, 15.0),
        (front, 38.0, 2.8e-10, 34.0),
        (0.3035, 25.0, 4e-10, 33.0),
        (0.3035, 38.0, 4e-10, 76.0),
    ];
    for (fo, mm, d, wanted) in given {
        assert!((hours(fo, mm, d) - wanted).abs() < 0.5, "{mm} mm: {}", hours(fo, mm, d));
    }
}

#[test]
fn printed_values() {
    // Half-thickness 12.7 mm, D 2e-10 m²/s, 7 days, constant surface (computed).
    let (mut field, surface) = start(Shape::Slab, Around::Constant, 200);
    field.run(2e-10 * 7.0 * 86_400.0 / 0.0127_f64.powi(2), 2000, surface);
    assert!((field.centre() - 0.79989).abs() < 5e-5, "{}", field.centre());
    assert!((field.mean() - 0.87260).abs() < 5e-5, "{}", field.mean());
    // Stirred brine as large as the meat, Fo 0.3, of the final (computed).
    let (mut field, surface) = start(Shape::Slab, Around::Bath(1.0), 200);
    field.run(0.3, 2000, surface);
    assert!((field.mean() - 0.80963).abs() < 5e-5, "{}", field.mean());
    assert!((field.centre() - 0.57021).abs() < 5e-5, "{}", field.centre());
    // A sheet, half-thickness 0.2 mm, D 1e-10, 100 s: 0.562233541762 (Crank 1975, p. 48, published).
    let fo = 1e-10 * 100.0 / 0.0002_f64.powi(2);
    let series = Series::new(Shape::Slab, Around::Constant).mean(fo);
    assert!((series - 0.562_233_541_762).abs() < 1e-11, "{series}");
    let (mut field, surface) = start(Shape::Slab, Around::Constant, 200);
    field.run(fo, 2000, surface);
    assert!((field.mean() - 0.562_233_541_762).abs() < 5e-5, "{}", field.mean());
    // 7 days per inch under a sealed dose at 2e-10: 100, 95, 83, 69 % at the centre for 1, 2, 3, 4 inches (computed).
    for (inches, share) in [(1.0_f64, 1.00), (2.0, 0.95), (3.0, 0.83), (4.0, 0.69)] {
        let (mut field, surface) = start(Shape::Slab, Around::Dose, 100);
        field.run(
            2e-10 * 7.0 * 86_400.0 * inches / (0.0127 * inches).powi(2),
            1000,
            surface,
        );
        assert!(
            (field.centre() - share).abs() < 0.005,
            "{inches} in: {}",
            field.centre()
        );
    }
}

#[test]
fn nothing_is_lost() {
    for exponent in [0.0, 0.4, 1.0, 1.37, 2.0] {
        let body = Body::new(exponent, 40);
        let mut sealed = Field::new(&body, 0.3);
        sealed.dose(0.7);
        let mut bath = Field::new(&body, 0.1);
        bath.bath = 2.0;
        let mut heated = Field::new(&body, 4.0);
        let (all, mut entered) = (0.1 + 1.7 * 2.0, 0.0);
        for turn in 0..2000 {
            if turn % 100 == 0 {
                sealed.disturb();
                bath.disturb();
            }
            let fo = if turn % 3 == 0 { 0.01 } else { 0.0004 };
            sealed.step(fo, Surface::Sealed);
            bath.step(fo, Surface::Bath { ratio: 1.7 });
            entered += heated.step(
                fo,
                Surface::Exchange {
                    biot: 2.5,
                    ambient: 80.0,
                    flux: -3.0,
                },
            );
            assert!(
                (sealed.mean() - 1.0).abs() < 1e-12,
                "{exponent} {turn}: {}",
                sealed.mean()
            );
            assert!(
                (bath.mean() + 1.7 * bath.bath - all).abs() < 1e-12 * all,
                "{exponent} {turn}"
            );
            assert!(
                (heated.mean() - 4.0 - entered).abs() < 1e-12 * 80.0,
                "{exponent} {turn}"
            );
        }
        heated.run(
            40.0,
            4000,
            Surface::Exchange {
                biot: 2.5,
                ambient: 80.0,
                flux: -3.0,
            },
        );
        assert!(
            (heated.mean() - (80.0 - 3.0 / 2.5)).abs() < 1e-9,
            "steady at ambient + flux / biot"
        );
    }
}

#[test]
fn of_second_order() {
    for shape in SHAPES {
        for around in AROUND {
            let series = Series::new(shape, around);
            let error = |cells: u32| {
                let (mut field, surface) = start(shape, around, cells as usize);
                field.run(0.15, 4 * cells, surface);
                (field.centre() - series.at(0.15, 0.0)).abs()
            };
            let errors = [20, 40, 80, 160].map(error);
            let orders: Vec<f64> = errors.windows(2).map(|pair| (pair[0] / pair[1]).log2()).collect();
            println!(
                "{shape:?} {around:?}: {errors:.3?} orders {orders:.2?}",
                errors = errors.map(|e| e * 1e6)
            );
            assert!(
                orders.iter().all(|order| *order > 1.7 && *order < 2.4),
                "{shape:?} {around:?} {orders:?}"
            );
        }
    }
}
