//! What has gone in by the time it is taken out, and what a body takes out of a bath, against Crank's series.

use cure_reckoner::batch::Batch;
use cure_reckoner::cure::went_in;
use cure_reckoner::transport::uptake;
use cure_reckoner::weigh::Settings;
use cure_reckoner_tests::{batch, rub, settings};
use rust_decimal::prelude::ToPrimitive;
use serde_json::{Value, json};

/// Share of the final that a slab has taken out of a stirred bath of `ratio` times its volume: Crank, The Mathematics of
/// Diffusion, 1975, eq. 4.37, from memory; its roots by bisection here.
fn slab_in_a_bath(fo: f64, ratio: f64) -> f64 {
    let mut left = 0.0;
    for n in 1..200 {
        // tan q = -ratio q between (n - 1/2) pi and n pi.
        let (mut low, mut high) = (
            (f64::from(n) - 0.5) * std::f64::consts::PI + 1e-9,
            f64::from(n) * std::f64::consts::PI,
        );
        for _ in 0..80 {
            let middle = f64::midpoint(low, high);
            if middle.tan() + ratio * middle < 0.0 {
                low = middle;
            } else {
                high = middle;
            }
        }
        let q = low;
        left += 2.0 * ratio * (1.0 + ratio) / (1.0 + ratio + ratio * ratio * q * q) * (-q * q * fo).exp();
    }
    1.0 - left
}

/// Mean of a ball under a surface that stays: Crank 1975, eq. 6.20, from memory.
fn ball(fo: f64) -> f64 {
    let term = |n: u32| {
        let n = f64::from(n);
        (-(n * std::f64::consts::PI).powi(2) * fo).exp() / (n * n)
    };
    1.0 - 6.0 / std::f64::consts::PI.powi(2) * (1..400).map(term).sum::<f64>()
}

#[test]
fn uptake_against_the_series() {
    for fo in [0.003, 0.01, 0.05, 0.2, 0.8] {
        for ratio in [0.1, 0.5, 2.0] {
            let (got, wanted) = (uptake(0.0, fo, ratio), slab_in_a_bath(fo, ratio));
            assert!((got - wanted).abs() < 0.01, "slab {fo} {ratio}: {got} and {wanted}");
        }
        let (got, wanted) = (uptake(2.0, fo, 1e6), ball(fo));
        assert!((got - wanted).abs() < 0.005, "ball {fo}: {got} and {wanted}");
    }
    // While the front is thin it is never too little.
    for fo in [1e-6, 1e-5, 1e-4, 1e-3, 0.002] {
        assert!(uptake(2.0, fo, 1e6) >= ball(fo) - 1e-3, "{fo}");
        assert!(uptake(0.0, fo, 0.5) >= slab_in_a_bath(fo, 0.5) - 1e-3, "{fo}");
    }
    let grows: Vec<f64> = (1..400).map(|n| uptake(1.0, f64::from(n) * 0.001, 0.7)).collect();
    assert!(grows.windows(2).all(|w| w[0] <= w[1] + 1e-3));
    assert_eq!((uptake(1.0, 0.0, 1.0), uptake(1.0, 0.1, 0.0)), (0.0, 0.0));
}

const HOUR: i64 = 3_600_000;

fn of(batch: &Value, when: i64) -> [f64; 3] {
    let batch: Batch = serde_json::from_value(batch.clone()).expect("a batch");
    let settings: Settings = serde_json::from_value(settings("0.1 g")).expect("settings");
    let found = went_in(&batch, &settings, when).expect("a dose");
    [found[0].nitrite.low, found[0].nitrite.typical, found[0].nitrite.high].map(|v| v.to_f64().expect("a number"))
}

fn rubbed(thickness: &str) -> Value {
    let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
    recipe["steps"] = json!([{"do": "cure", "lasts": "36 h", "at": "4 °C"}, {"do": "rinse"}]);
    let mut one = batch(&recipe, 1, "1000 g");
    one["pieces"][0]["thickness"] = json!(thickness);
    one["pieces"][0]["skin"] = json!(true);
    one["ticks"] = json!([{"of": "rub", "at": 0}]);
    one
}

/// A breast with its skin on, 26 mm, out after 36 h: for the limit all of it, for the least what the slow end of the clock
/// (4e-10 m²/s over 2.5) times 0.7 has brought in out of a liquid of a tenth, by Crank's series.
#[test]
fn a_rub_that_is_taken_out_early_has_not_taken_up_all() {
    let breast = rubbed("26 mm");
    let fo = |d: f64| d * 36.0 * 3600.0 / (0.026 * 0.026);
    let share = |d: f64| slab_in_a_bath(fo(d), 0.1) / 1.1;
    let [low, usual, high] = of(&breast, 36 * HOUR);
    // 2.4 g rounded down to 0.1 g on a kilogram.
    assert!((low - (2.35 * 62.5 * share(1.6e-10 * 0.7))).abs() < 1.5, "{low}");
    // Likely by its shape: a breast is a lens, whose thin rim takes up more than a flat piece as thick as its middle.
    assert!(usual > 150.0 * share(4e-10 * 0.7) && usual < 150.0 / 1.1, "{usual}");
    assert!(high > 150.0 && high < 154.0, "{high}");
    assert!(low < 120.0, "what surely went in is under the least: {low}");
    // Longer and thinner: more for the least, never more for the limit.
    let week = of(&breast, 168 * HOUR);
    assert!(week[0] > low && (week[2] - high).abs() < 1e-9);
    assert!(of(&rubbed("15 mm"), 36 * HOUR)[0] > low);
    // Taken out after 2 h: the clock stands still from then on.
    let mut early = breast.clone();
    early["ticks"] = json!([{"of": "rub", "at": 0}, {"of": "step:1", "at": 2 * HOUR}]);
    let out = of(&early, 36 * HOUR);
    assert!(out[0] < low && out[0] == of(&early, 2 * HOUR)[0]);
}

/// Nothing is in before it is rubbed in; without a thickness nobody knows the least; mince has all of it at once.
#[test]
fn what_the_clock_does_not_know_has_no_least() {
    let mut unrubbed = rubbed("26 mm");
    unrubbed["ticks"] = json!([]);
    assert_eq!(of(&unrubbed, 36 * HOUR)[2], 0.0);
    let mut unknown = rubbed("26 mm");
    unknown["pieces"][0]
        .as_object_mut()
        .expect("a piece")
        .remove("thickness");
    let found = of(&unknown, 36 * HOUR);
    assert!(found[0] == 0.0 && found[2] > 150.0);
    let mut mince = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 1, "1000 g");
    mince["recipe"]["method"] = json!("ground");
    let found = of(&mince, HOUR);
    assert!(found[0] > 140.0);
}
