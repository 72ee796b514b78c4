//! Learning from the cut, on simulated cooks: each has meat of a hidden speed, every cook differs from the last, and
//! the ring is measured with a ruler. The cuts come from the series, not from the clock's own curves.

use crate::transport_series::{Around, Series, Shape};
use cure_reckoner::cure::{AskCut, Speed, learn};
use cure_reckoner::pantry::MeatKind::Bird;
use cure_reckoner::weigh::Finding;
use cure_reckoner_tests::rub;
use serde_json::json;

const HOUR: f64 = 3_600_000.0;
const COOKS: usize = 500;
const CUTS: usize = 5;
/// From one cook to the next, as a standard deviation of ln D.
const BETWEEN: f64 = 0.33;

struct Chance(u64);

impl Chance {
    fn even(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        ((self.0 >> 11) as f64 + 0.5) / (1_u64 << 53) as f64
    }

    fn normal(&mut self) -> f64 {
        (-2.0 * self.even().ln()).sqrt() * (std::f64::consts::TAU * self.even()).cos()
    }
}

/// Where the colour front stands: 27 % of a sealed dose, from the centre outwards, by halving.
fn front(series: &Series, fo: f64) -> Option<f64> {
    let share = 40.0 / 150.0;
    if series.at(fo, 0.0) >= share {
        return None;
    }
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..40 {
        let middle = 0.5 * (low + high);
        if series.at(fo, middle) < share {
            low = middle
        } else {
            high = middle
        }
    }
    Some(low)
}

/// One cut of a piece whose meat has this ln D.
fn cut(chance: &mut Chance, series: &Series, hidden: f64) -> Finding {
    let thickness = 20.0 + (40.0 * chance.even()).round();
    let half = thickness / 2000.0;
    // As thick as it is wide: the one lens that has a series of its own, the ball.
    let grams = 1.05 * std::f64::consts::PI / 6.0 * (thickness / 10.0).powi(3);
    let d = (hidden + BETWEEN * chance.normal()).exp() * 1e-10;
    // Taken out between a third of the time that is likely at the table's speed and one and a half times it.
    let likely = 0.0639 * half * half / (0.7 * 4e-10) / 3600.0;
    let hours = (likely * (1.0 / 3.0) * 4.5_f64.powf(chance.even())).round().max(1.0);
    // The refrigerator stands at 4 °C, where D is counted.
    let fo = 0.7 * d * hours * 3600.0 / (half * half);
    let ring = front(series, fo)
        .map(|x| (x * thickness).round())
        .filter(|mm| *mm >= 1.0 && *mm < thickness);
    let batch = json!({
        "tag": "TR", "name": "Trial", "recipe": rub("6.25 %", "150 ppm", "2.2 %"),
        "pieces": [{"cut": "mallard-breast", "count": 1, "thickness": format!("{thickness} mm"), "weight": format!("{grams:.1} g")}],
        "fridge": [{"at": 0, "what": "read", "reads": "4 °C"}],
        "ticks": [{"of": "rub", "at": 0}]
    });
    let mut ask = json!({"batch": batch, "class": 0, "found": "even", "at": (hours * HOUR) as i64});
    if let Some(mm) = ring {
        ask["found"] = json!("ring");
        ask["ring"] = json!(format!("{mm} mm"));
    }
    learn(&serde_json::from_value::<AskCut>(ask).unwrap()).unwrap()
}

#[test]
fn bands_hold_and_narrow() {
    let mut chance = Chance(20_261_126);
    let series = Series::new(Shape::Sphere, Around::Dose);
    let prior = Speed::table(Bird);
    let (mut held, mut widths) = ([0_u32; CUTS], [0.0; CUTS]);
    for _ in 0..COOKS {
        let hidden = prior.centre + prior.spread * chance.normal();
        let mut findings = Vec::new();
        for n in 0..CUTS {
            findings.push(cut(&mut chance, &series, hidden));
            let now = Speed::learned(Bird, &findings);
            held[n] += u32::from((hidden - now.centre).abs() <= 1.281_552 * now.spread);
            widths[n] += now.spread / prior.spread / COOKS as f64;
        }
    }
    for n in 0..CUTS {
        let share = f64::from(held[n]) / COOKS as f64;
        println!(
            "after {} cuts: the 80 % band holds the truth in {:.1} %, its width is {:.2}",
            n + 1,
            share * 100.0,
            widths[n]
        );
        assert!((0.75..=0.85).contains(&share), "after {} cuts: {share}", n + 1);
    }
    assert!(widths[CUTS - 1] <= 0.5, "{widths:?}");
}

#[test]
fn a_cut_moves_the_clock_and_can_be_forgotten() {
    let prior = Speed::table(Bird);
    let finding = |kind: &str, is: &str, speed: i32| -> Finding {
        serde_json::from_value(json!({"kind": kind, "at": 0, "is": is, "speed": speed})).unwrap()
    };
    let slow = (prior.centre * 1000.0) as i32 - 700;
    let near = Speed::learned(Bird, &[finding("bird", "near", slow)]);
    assert!(near.centre < prior.centre && near.spread < prior.spread);
    assert!(Speed::learned(Bird, &[finding("bird", "above", slow)]).centre > prior.centre);
    assert!(Speed::learned(Bird, &[finding("bird", "below", slow)]).centre < prior.centre);
    assert_eq!(
        Speed::learned(Bird, &[finding("red", "near", slow)]),
        prior,
        "another kind of meat"
    );
    assert_eq!(Speed::learned(Bird, &[]), prior, "forgotten");
    // Two exact findings by hand: precisions add.
    let two = Speed::learned(Bird, &[finding("bird", "near", slow), finding("bird", "near", slow)]);
    let (own, cut) = (1.0 / prior.spread.powi(2), 2.0 / 0.35_f64.powi(2));
    let centre = (own * prior.centre + cut * f64::from(slow) / 1000.0) / (own + cut);
    assert!(
        (two.centre - centre).abs() < 1e-3 && (two.spread - (own + cut).powf(-0.5)).abs() < 1e-3,
        "{two:?}"
    );
}
