//! The kernel against a general-purpose integrator: Dormand-Prince 5(4) of the crate `ode_solvers`, on finite
//! differences at nodes, extrapolated from two grids. Nothing in it is shared with the kernel.

use cure_reckoner::transport::{Body, Field, Surface};
use ode_solvers::dop_shared::OutputType;
use ode_solvers::{DVector, Dopri5, System};

/// Nodes at `i / n`, with the bath's value behind them.
struct Nodes {
    exponent: f64,
    surface: Surface,
}

impl System<f64, DVector<f64>> for Nodes {
    fn system(&self, _: f64, y: &DVector<f64>, dy: &mut DVector<f64>) {
        let last = y.len() - 2;
        let width = 1.0 / last as f64;
        let m = self.exponent;
        // At the centre the bend counts m + 1 times, by symmetry.
        dy[0] = (m + 1.0) * 2.0 * (y[1] - y[0]) / (width * width);
        for i in 1..last {
            let x = i as f64 * width;
            dy[i] =
                (y[i + 1] - 2.0 * y[i] + y[i - 1]) / (width * width) + m / x * (y[i + 1] - y[i - 1]) / (2.0 * width);
        }
        let ghost = |slope: f64| 2.0 * (y[last - 1] - y[last] + width * slope) / (width * width) + m * slope;
        dy[last + 1] = 0.0;
        match self.surface {
            Surface::Sealed => dy[last] = ghost(0.0),
            Surface::Held(_) => dy[last] = 0.0,
            Surface::Exchange { biot, ambient, flux } => dy[last] = ghost(biot * (ambient - y[last]) + flux),
            Surface::Bath { ratio } => {
                // The surface stands at the bath's value, which falls by what passes.
                let slope = (3.0 * y[last] - 4.0 * y[last - 1] + y[last - 2]) / (2.0 * width);
                dy[last] = -(m + 1.0) / ratio * slope;
            }
        }
    }
}

fn by_integrator(exponent: f64, surface: Surface, start: impl Fn(f64) -> f64, bath: f64, fo: f64) -> (f64, f64) {
    let once = |n: usize| {
        let mut y = DVector::from_fn(n + 2, |i, _| start(i as f64 / n as f64));
        match surface {
            Surface::Held(value) => y[n] = value,
            Surface::Bath { .. } => y[n] = bath,
            _ => {}
        }
        let mut solver = Dopri5::from_param(
            Nodes { exponent, surface },
            0.0,
            fo,
            fo,
            y,
            1e-9,
            1e-10,
            0.9,
            0.04,
            0.2,
            10.0,
            fo,
            0.0,
            10_000_000,
            // It is stiff, and small: the integrator may take as many steps as it likes.
            u32::MAX,
            OutputType::Sparse,
        );
        solver.integrate().unwrap();
        let end = solver.y_out().last().unwrap().clone();
        (end[0], end[n])
    };
    let (coarse, fine) = (once(24), once(48));
    (fine.0 + (fine.0 - coarse.0) / 3.0, fine.1 + (fine.1 - coarse.1) / 3.0)
}

/// Numbers between 0 and 1 from a fixed seed.
fn spread(seed: &mut u64) -> f64 {
    *seed = seed
        .wrapping_mul(6_364_136_223_846_793_005)
        .wrapping_add(1_442_695_040_888_963_407);
    (*seed >> 11) as f64 / (1_u64 << 53) as f64
}

#[test]
fn against_a_general_integrator() {
    let mut seed = 20_261_125;
    for case in 0..24 {
        let exponent = 2.0 * spread(&mut seed);
        let fo = 0.05 + 0.6 * spread(&mut seed);
        let (low, high) = (spread(&mut seed), 1.0 + spread(&mut seed));
        let surface = match case % 4 {
            0 => Surface::Sealed,
            1 => Surface::Held(high),
            2 => Surface::Bath {
                ratio: 0.5 + 3.0 * spread(&mut seed),
            },
            _ => Surface::Exchange {
                biot: 0.2 + 8.0 * spread(&mut seed),
                ambient: high,
                flux: spread(&mut seed) - 0.5,
            },
        };
        // Where nothing passes, a wave to level out; else a level start.
        let wave = move |x: f64| {
            if case % 4 == 0 {
                low + (std::f64::consts::PI * x).cos()
            } else {
                low
            }
        };
        let mut field = Field::new(&Body::new(exponent, 100), 0.0);
        field.fill(wave);
        field.bath = high;
        // Small steps while the step of the surface is young.
        field.run(fo * 0.01, 100, surface);
        field.run(fo * 0.99, 1000, surface);
        let (centre, face) = by_integrator(exponent, surface, wave, high, fo);
        let (found, at_face) = (field.centre(), field.surface(surface));
        println!(
            "{case:>2} m {exponent:.3} Fo {fo:.3} {surface:.3?}: centre {found:.6} {centre:.6}, face {at_face:.6} {face:.6}"
        );
        assert!(
            (found - centre).abs() < 1e-3 * high,
            "case {case}: centre {found}, by the integrator {centre}"
        );
        assert!(
            (at_face - face).abs() < 2e-3 * high,
            "case {case}: face {at_face}, by the integrator {face}"
        );
    }
}
