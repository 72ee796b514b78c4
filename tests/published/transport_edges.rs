//! What has gone into a body at the very first, at any moment of a bath, and what a jump of the surroundings does.

use cure_reckoner::transport::{Body, Field, Solid, Surface, uptake};

/// A thin front knows neither middle nor corner: out of a stirred bath of `ratio` times its volume a body of `open` of surface
/// over volume takes (1 + ratio) (1 − exp(h²) erfc(h)), h = open √Fo / ratio (Carslaw and Jaeger 1959, 12.4, from memory),
/// which is 2 h / √π − h² while h is small; and no more than 2 open √(Fo / π) (1 + ratio) / ratio, as if the bath did not
/// weaken. Half the thickness is 1: a brick has 1 + 1/wide + 1/long, a round bar 2 + 1/long, and a lens the surface of two caps
/// of a sphere over their volume.
#[test]
fn a_thin_front_goes_by_the_surface() {
    for (solid, open) in [
        (Solid::Brick([f64::INFINITY, f64::INFINITY]), 1.0),
        (Solid::Brick([2.0, 3.0]), 1.0 + 1.0 / 2.0 + 1.0 / 3.0),
        (Solid::Round(4.0), 2.0 + 1.0 / 4.0),
        (Solid::Lens(2.0), 6.0 * 5.0 / 13.0),
    ] {
        for ratio in [0.5, 2.0, 40.0] {
            for fo in [1e-7_f64, 1e-6, 1e-5] {
                let h = open * fo.sqrt() / ratio;
                let least = (1.0 + ratio) * (2.0 * h / std::f64::consts::PI.sqrt() - h * h);
                let most = (1.0 + ratio) * 2.0 * h / std::f64::consts::PI.sqrt();
                let got = solid.uptake(ratio, fo);
                // What two faces take at a corner is counted once.
                assert!(
                    got > 0.99 * least && got <= most * (1.0 + 1e-12),
                    "{open} {ratio} {fo}: {got} of {most}"
                );
            }
        }
    }
    let slab = Solid::Brick([f64::INFINITY, f64::INFINITY]);
    assert_eq!((slab.uptake(1.0, 0.0), slab.uptake(0.0, 1.0)), (0.0, 0.0));
}

/// A slab out of a bath without end, by the series for early times: 2 √Fo (1/√π + 2 Σ (−1)ⁿ ierfc(n/√Fo)) (Crank 1975,
/// eq. 4.20), whose sum is nought to 1e-6 up to Fo 0.05. At any moment, and not at that of the last whole step.
#[test]
fn an_uptake_is_of_its_moment() {
    for n in 1..40 {
        let fo = 0.0025 + f64::from(n) * 0.0012;
        let wanted = 2.0 * (fo / std::f64::consts::PI).sqrt();
        let got = uptake(0.0, fo, 1e6);
        assert!((got / wanted - 1.0).abs() < 0.01, "{fo}: {got} and {wanted}");
    }
}

/// The first moment of a mean: 0.562234 at Fo 1/4 (Crank 1975, p. 48, published), and nothing where it is not there in time.
#[test]
fn when_a_mean_is_reached() {
    let slab = Solid::Brick([f64::INFINITY, f64::INFINITY]).held();
    let when = slab.when_mean(0.562_234, 1.0).expect("in time");
    assert!((when - 0.25).abs() < 1e-4, "{when}");
    assert_eq!(slab.when_mean(0.562_234, 0.249), None);
}

/// From the brine into fresh water: by Crank-Nicolson alone the outermost shell would swing below what there is.
#[test]
fn a_jump_of_the_surroundings_does_not_ring() {
    for cells in [20, 80] {
        let mut slab = Field::new(&Body::new(0.0, cells), 0.0);
        slab.run(0.5, 50, Surface::Held(1.0));
        slab.disturb();
        for _ in 0..5 {
            slab.step(0.01, Surface::Held(0.0));
            assert!(slab.values().all(|value| (0.0..=1.0).contains(&value)), "{cells}");
        }
    }
}
