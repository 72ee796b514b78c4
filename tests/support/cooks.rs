//! Cooks by a model of its own, and what a forecast of them is worth.

use cure_reckoner::smoke::{Covered, Habit, Readings, Setup, evaporation, forecast, latent};
use std::fmt::Write as _;

/// A repeatable source of numbers (xorshift).
struct Chance(u64);

impl Chance {
    fn next(&mut self) -> f64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) as f64 / (1u64 << 53) as f64
    }
    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }
    /// Nearly normal: twelve numbers.
    fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.next()).sum::<f64>() - 6.0
    }
}

/// A smoker of its own model, the same in several cooks.
#[derive(Clone, Copy)]
pub struct Hidden {
    how: How,
    fan: bool,
    convection: f64,
    radiation: f64,
    wet: f64,
    dries: f64,
    dew: f64,
}

/// How the pieces stand in the smoker.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum How {
    /// Neither pan nor wrap.
    Open,
    /// Over water.
    Pan,
    /// Wrapped.
    Wrapped,
}

/// One cook: what was handed over, what was read, and when it was done.
pub struct Cook {
    /// What the cook says of it.
    pub setup: Setup,
    /// How it stands.
    pub how: How,
    hidden: Hidden,
    piece: Vec<(f64, f64)>,
    cabinet: Vec<(f64, f64)>,
    /// What the dial says, a few degrees off.
    dial: f64,
    done: f64,
}

/// Errors at 25, 50 and 75 % of a cook, as shares of the whole of it.
pub struct Scores {
    /// How it stood.
    pub how: How,
    /// The forecast's error.
    pub model: [f64; 3],
    /// The straight line's.
    pub line: [f64; 3],
    /// Whether the band held the true time.
    pub held: [bool; 3],
}

impl Cook {
    /// The cook of this number: always the same.
    pub fn simulated(number: u64) -> Self {
        let mut chance = Chance(0x9e37_79b9_7f4a_7c15 ^ (number + 1).wrapping_mul(0xd134_2543_de82_ef95));
        for _ in 0..8 {
            chance.next();
        }
        loop {
            if let Some(cook) = Self::tried(&mut chance, None) {
                return cook;
            }
        }
    }

    /// So many cooks in the smoker of this number, each of another piece on another day.
    pub fn in_one_smoker(number: u64, count: usize) -> Vec<Self> {
        let hidden = Self::simulated(number).hidden;
        let mut chance = Chance(0x2545_f491_4f6c_dd1d ^ (number + 1).wrapping_mul(0xd134_2543_de82_ef95));
        let mut cooks = Vec::new();
        while cooks.len() < count {
            let today = Hidden {
                convection: hidden.convection * (1.0 + 0.07 * chance.normal()),
                dew: hidden.dew + 2.5 * chance.normal(),
                ..hidden
            };
            cooks.extend(Self::tried(&mut chance, Some(today)));
        }
        cooks
    }

    /// Before its first reading: the likely time by what is known of the smoker, as a share of the whole off, and whether
    /// the band holds it.
    pub fn before(&self, habit: Habit) -> (f64, bool) {
        let none = Readings {
            piece: &[],
            cabinet: &[],
            set: Some(self.dial),
            next: &[],
        };
        let setup = Setup {
            habit,
            ..self.setup.clone()
        };
        let window = forecast(&setup, &none, 0.0).and_then(|f| f.window);
        window.map_or((1.0, false), |[low, likely, high]| {
            (
                ((likely - self.done) / self.done).abs().min(1.0),
                (low..=high).contains(&self.done),
            )
        })
    }

    /// What its readings tell of the smoker.
    pub fn told(&self) -> Option<Habit> {
        let readings = Readings {
            piece: &self.piece,
            cabinet: &self.cabinet,
            set: Some(self.dial),
            next: &[],
        };
        let long = self.piece.len() >= 6;
        forecast(&self.setup, &readings, self.piece.last()?.0)?
            .habit
            .filter(|_| long)
    }

    fn tried(chance: &mut Chance, given: Option<Hidden>) -> Option<Self> {
        let how = match (chance.next() * 3.0) as u32 {
            0 => How::Open,
            1 => How::Pan,
            _ => How::Wrapped,
        };
        let fan = chance.next() < 0.5;
        let thickness = chance.between(0.022, 0.070);
        let half = thickness / 2.0 * (1.0 + 0.12 * chance.normal()).clamp(0.7, 1.3);
        let exponent = chance.between(0.0, 1.2);
        let convection = if fan {
            chance.between(15.0, 30.0)
        } else {
            chance.between(6.0, 12.0)
        };
        let radiation = chance.between(5.5, 7.5);
        let wet = if how == How::Wrapped {
            chance.between(0.04, 0.16)
        } else {
            chance.between(0.65, 0.95)
        };
        let dries = chance.between(0.02, 0.06);
        let dew = if how == How::Pan {
            chance.between(28.0, 45.0)
        } else {
            chance.between(12.0, 32.0)
        };
        let drawn = Hidden {
            how,
            fan,
            convection,
            radiation,
            wet,
            dries,
            dew,
        };
        let hidden = given.unwrap_or(drawn);
        let Hidden {
            how,
            fan,
            convection,
            radiation,
            wet,
            dries,
            dew,
        } = hidden;
        let conductivity = chance.between(0.43, 0.51);
        let set = chance.between(75.0, 115.0);
        let target = chance.between(60.0, 74.0);
        let start = chance.between(3.0, 10.0);
        let (swing, period) = (chance.between(1.0, 6.0), chance.between(1200.0, 3600.0));
        let every = chance.between(300.0, 1200.0);
        let dial = set + 4.0 * chance.normal();
        let warm = 900.0;

        const CELLS: usize = 30;
        let capacity = 3.8e6;
        let width = half / CELLS as f64;
        let face = |i: usize| (i as f64 / CELLS as f64).powf(exponent);
        let volume: Vec<f64> = (0..CELLS)
            .map(|i| {
                let edge = |i: usize| (i as f64 / CELLS as f64).powf(exponent + 1.0) / (exponent + 1.0);
                (edge(i + 1) - edge(i)) * half
            })
            .collect();
        let mut u = vec![start; CELLS];
        let step = 0.2 * width * width * capacity / conductivity;
        let (mut at, mut loss, mut lid) = (0.0, 0.0, f64::NEG_INFINITY);
        let mut next = 0.0;
        let (mut piece, mut cabinet) = (Vec::new(), Vec::new());
        while u[0] < target {
            if at > 14.0 * 3600.0 {
                return None;
            }
            let mut air = set + swing * (at / period * std::f64::consts::TAU).sin();
            air -= 35.0 * (-at / warm).exp();
            air -= 18.0 * (-(at - lid) / 200.0).exp().min(1.0);
            if at >= next {
                // Now and then the probe reads the lid's cold, or sits a little off.
                piece.push((at, u[0] + 0.7 * chance.normal()));
                cabinet.push((at, air + 1.5 * chance.normal()));
                next = at + every * chance.between(0.7, 1.3);
                if chance.next() < 0.25 {
                    lid = at + 1.0;
                }
            }
            // The surface lies half a cell outside the last mean; its heat balance is solved by a few rounds.
            let inner = u[CELLS - 1];
            let mut surface = inner;
            let conduct = conductivity / (width / 2.0);
            let wetness = wet / (1.0 + (loss / dries) * (loss / dries));
            let mut gone = 0.0;
            for _ in 0..3 {
                gone = wetness * evaporation(convection, surface, air, dew);
                let h = convection + radiation;
                let next = (h * air + conduct * inner - gone * latent(surface)) / (h + conduct);
                surface = 0.5 * (surface + next);
            }
            let mut flux = vec![0.0; CELLS + 1];
            for i in 1..CELLS {
                flux[i] = conductivity * (u[i] - u[i - 1]) / width * face(i);
            }
            flux[CELLS] = conduct * (surface - inner);
            for i in 0..CELLS {
                u[i] += step * (flux[i + 1] - flux[i]) / (volume[i] * capacity);
            }
            loss += gone * step * (exponent + 1.0) / (half * 1055.0);
            at += step;
        }
        let setup = Setup {
            thickness,
            exponent: 0.3,
            fan,
            covers: vec![Covered {
                from: 0.0,
                pan: how == How::Pan,
                wrapped: how == How::Wrapped,
            }],
            wrap_at: None,
            start: 4.0,
            target,
            habit: Habit::USUAL,
        };
        (at > 1800.0).then_some(Self {
            setup,
            how,
            hidden,
            piece,
            cabinet,
            dial,
            done: at,
        })
    }

    /// The forecasts at a quarter, a half and three quarters of it.
    pub fn scores(&self) -> Scores {
        let mut scores = Scores {
            how: self.how,
            model: [1.0; 3],
            line: [1.0; 3],
            held: [false; 3],
        };
        for (i, share) in [0.25, 0.5, 0.75].into_iter().enumerate() {
            let now = share * self.done;
            let until =
                |points: &[(f64, f64)]| -> Vec<(f64, f64)> { points.iter().copied().filter(|p| p.0 <= now).collect() };
            let (piece, cabinet) = (until(&self.piece), until(&self.cabinet));
            let off = |time: f64| ((time - self.done) / self.done).abs().min(1.0);
            let readings = Readings {
                piece: &piece,
                cabinet: &cabinet,
                set: Some(self.dial),
                next: &[],
            };
            if let Some([low, likely, high]) = forecast(&self.setup, &readings, now).and_then(|f| f.window) {
                scores.model[i] = off(likely);
                scores.held[i] = (low..=high).contains(&self.done);
            }
            if let Some(time) = straight(&piece, self.setup.target) {
                scores.line[i] = off(time.max(now));
            }
        }
        scores
    }
}

/// Where the least-squares line through the last three readings meets the target; nothing where it does not rise.
fn straight(piece: &[(f64, f64)], target: f64) -> Option<f64> {
    let last = &piece[piece.len().saturating_sub(3)..];
    let count = last.len() as f64;
    let (t, c) = (
        last.iter().map(|p| p.0).sum::<f64>() / count,
        last.iter().map(|p| p.1).sum::<f64>() / count,
    );
    let slope = last.iter().map(|p| (p.0 - t) * (p.1 - c)).sum::<f64>()
        / last.iter().map(|p| (p.0 - t) * (p.0 - t)).sum::<f64>();
    (last.len() > 1 && slope > 0.0).then(|| t + (target - c) / slope)
}

/// A share of a list from below: 0.5 the median.
pub fn quantile(mut values: Vec<f64>, share: f64) -> f64 {
    values.sort_by(f64::total_cmp);
    values[((values.len() - 1) as f64 * share).round() as usize]
}

/// The errors in a table, per cent of the whole cook. An end that was not foreseen at all counts as 100.
pub fn table(scores: &[Scores]) -> String {
    let mut out =
        String::from("                      model median  p90   band holds   line median  p90   (% of the cook)\n");
    for how in [None, Some(How::Open), Some(How::Pan), Some(How::Wrapped)] {
        let some: Vec<&Scores> = scores.iter().filter(|s| how.is_none_or(|h| h == s.how)).collect();
        for (i, at) in ["25 %", "50 %", "75 %"].into_iter().enumerate() {
            let of = |pick: fn(&Scores) -> &[f64; 3], share| {
                100.0 * quantile(some.iter().map(|s| pick(s)[i]).collect(), share)
            };
            let held = 100.0 * some.iter().filter(|s| s.held[i]).count() as f64 / some.len() as f64;
            let name = how.map_or("all".to_owned(), |h| format!("{h:?}").to_lowercase());
            writeln!(
                out,
                "{name:8} {:4} at {at}   {:8.1} {:7.1} {held:8.0} %    {:8.1} {:7.1}",
                some.len(),
                of(|s| &s.model, 0.5),
                of(|s| &s.model, 0.9),
                of(|s| &s.line, 0.5),
                of(|s| &s.line, 0.9)
            )
            .expect("a string takes all");
        }
    }
    out
}
