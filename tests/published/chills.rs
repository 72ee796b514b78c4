//! Chills by a model of its own, lawful and not, read as a cook reads them: what is assured of them, and what is called
//! late.
//!
//! A chill is lawful by its true curve: 135 to 70 °F in 2 h and to 41 °F in 6 h in all (FDA Food Code 2022, 3-501.14(A),
//! published), or 130 to 80 °F in 1.5 h and to 40 °F in 5 h more (FSIS Stabilization Guideline 2021, option 1, published).

use cure_reckoner::batch::Batch;
use cure_reckoner::record::{Chill, classes};
use cure_reckoner_tests::rub;
use rand::rngs::SmallRng;
use rand::{Rng, SeedableRng};
use serde_json::{Value, json};

const MINUTE: i64 = 60_000;
const LIT: i64 = 1_795_600_000_000;
/// When it was taken out, minutes after it was lit.
const OUT: i64 = 100;

/// Degrees Fahrenheit of the middle, minute by minute after it was taken out.
struct Cooling(Vec<f64>);

fn fahrenheit(celsius: f64) -> f64 {
    celsius * 1.8 + 32.0
}

impl Cooling {
    /// A ball or a long round of so many millimetres across, hot all through, in a warm room and then in the cold: shells of
    /// equal width, stepped forward.
    fn drawn(chance: &mut SmallRng) -> Self {
        const SHELLS: usize = 10;
        // Meat of 0.47 W/mK and 3.6 MJ/m³K (usual figures of lean meat, from memory).
        let (conducts, holds) = (0.47, 3.6e6);
        let power = if chance.random_bool(0.5) { 1 } else { 2 };
        let radius = chance.random_range(0.006..0.045);
        let hot = chance.random_range(68.0..78.0);
        let (room, waits) = (chance.random_range(15.0..26.0), chance.random_range(0.0..75.0));
        let (cold, in_water) = (chance.random_range(0.5..4.2), chance.random_bool(0.3));
        // Still air, a fan, or ice and water, W/m²K, radiation and what dries off included.
        let (open, shut) = (
            chance.random_range(8.0..16.0),
            if in_water {
                chance.random_range(80.0..250.0)
            } else {
                chance.random_range(7.0..28.0)
            },
        );
        let width = radius / SHELLS as f64;
        let edge = |i: usize| i as f64 * width;
        let face = |i: usize| edge(i).powi(power);
        let volume = |i: usize| (edge(i + 1).powi(power + 1) - edge(i).powi(power + 1)) / f64::from(power + 1);
        let mut inside = [hot; SHELLS];
        let step = (0.2 * width * width * holds / conducts).min(60.0);
        let steps = (60.0 / step).ceil() as usize;
        let step = 60.0 / steps as f64;
        let mut minutes = vec![fahrenheit(hot)];
        for minute in 0..15 * 60 {
            // Below that nothing is read.
            if inside[0] < 3.0 {
                break;
            }
            let (air, takes) = if f64::from(minute) < waits {
                (room, open)
            } else {
                (cold, shut)
            };
            for _ in 0..steps {
                let mut flow = [0.0; SHELLS + 1];
                for i in 1..SHELLS {
                    flow[i] = conducts * (inside[i - 1] - inside[i]) / width * face(i);
                }
                let through = 1.0 / (1.0 / takes + width / 2.0 / conducts);
                flow[SHELLS] = through * (inside[SHELLS - 1] - air) * face(SHELLS);
                for i in 0..SHELLS {
                    inside[i] += step * (flow[i] - flow[i + 1]) / (volume(i) * holds);
                }
            }
            minutes.push(fahrenheit(inside[0]));
        }
        Self(minutes)
    }

    /// When it is at a temperature, in minutes.
    fn at(&self, fahrenheit: f64) -> Option<f64> {
        let below = self.0.iter().position(|f| *f <= fahrenheit)?;
        let Some(before) = below.checked_sub(1) else {
            return Some(0.0);
        };
        let (warm, cold) = (self.0[before], self.0[below]);
        Some(before as f64 + (warm - fahrenheit) / (warm - cold))
    }

    fn is_lawful(&self) -> bool {
        let takes = |from: f64, to: f64| Some(self.at(to)? - self.at(from)?);
        let within = |span: Option<f64>, hours: f64| span.is_some_and(|minutes| minutes <= hours * 60.0);
        let food_code = within(takes(135.0, 70.0), 2.0) && within(takes(135.0, 41.0), 6.0);
        let option_1 = within(takes(130.0, 80.0), 1.5) && within(takes(80.0, 40.0), 5.0);
        food_code || option_1
    }

    /// Read when it is taken out and then every 20 to 60 minutes, each reading a little off and to a tenth of a degree.
    fn read(&self, chance: &mut SmallRng) -> Vec<(i64, f64)> {
        let (mut at, mut readings) = (0, Vec::new());
        let last = self.0.len() - 1;
        loop {
            // Nearly normal, 0.3 °C.
            let off: f64 = (0..12).map(|_| chance.random_range(0.0..1.0)).sum::<f64>() - 6.0;
            let celsius = (self.0[at] - 32.0) / 1.8 + 0.3 * off;
            readings.push((i64::try_from(at).expect("minutes"), (celsius * 10.0).round() / 10.0));
            if self.0[at] < 38.5 || at == last {
                break;
            }
            at = (at + chance.random_range(20..=60)).min(last);
        }
        readings
    }
}

/// What the record says of it, long after the last reading.
fn judged(readings: &[(i64, f64)]) -> Chill {
    let log: Vec<Value> = [json!({"class": 0, "temperature": "4 °C", "at": LIT})]
        .into_iter()
        .chain(readings.iter().map(|(at, celsius)| {
            json!({"class": 0, "temperature": format!("{celsius} °C"), "at": LIT + (OUT + at) * MINUTE, "sure": true})
        }))
        .collect();
    let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
    recipe["steps"] = json!([{"do": "cook"}, {"do": "chill"}]);
    let batch: Batch = serde_json::from_value(json!({
        "tag": "TR", "name": "Trial", "recipe": recipe,
        "fire": {"readings": log}, "ticks": [{"of": "pull:0", "at": LIT + OUT * MINUTE}],
        "pieces": [{"cut": "mallard-breast", "count": 8, "weight": "900 g", "thickness": "30 mm"}]
    }))
    .expect("a batch");
    classes(&batch, LIT + 40 * 60 * MINUTE).remove(0).chill
}

/// Of 200 lawful and 200 unlawful chills, read every 20 to 60 minutes, none that is unlawful passes, and at most a tenth of
/// the lawful are called late.
#[test]
fn no_unlawful_chill_passes_and_few_lawful_are_called_late() {
    let mut chance = SmallRng::seed_from_u64(0x5a17_4a25);
    // Done, late, not seen.
    let mut told = [[0_u32; 3]; 2];
    while told.iter().any(|t| t.iter().sum::<u32>() < 200) {
        let cooling = Cooling::drawn(&mut chance);
        // What never comes to 40 °F is no chill.
        if cooling.at(38.5).is_none() {
            continue;
        }
        let kind = usize::from(!cooling.is_lawful());
        if told[kind].iter().sum::<u32>() == 200 {
            continue;
        }
        let says = match judged(&cooling.read(&mut chance)) {
            Chill::Done { .. } => 0,
            Chill::Late { .. } => 1,
            Chill::Unwatched { .. } => 2,
            other => panic!("{other:?} long after the last reading"),
        };
        told[kind][says] += 1;
    }
    for (name, [done, late, unseen]) in ["lawful", "unlawful"].into_iter().zip(told) {
        println!("{name}: {done} chilled in time, {late} late, {unseen} not seen");
    }
    let [[_, late, _], [passed, ..]] = told;
    assert_eq!(passed, 0, "unlawful chills that passed");
    assert!(late <= 20, "{late} of 200 lawful chills are called late");
}
