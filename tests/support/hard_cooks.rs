//! Harder cooks: solid pieces in two and three dimensions, fires that go out, pieces that are wrapped half-way, and what
//! a forecast of them is worth. Written from the physics of the oven alone, without a look at what forecasts it.

use cure_reckoner::smoke::{Covered, Habit, Readings, Setup, forecast, joint};
use std::f64::consts::TAU;
use std::fmt::Write as _;

mod solid;
use solid::{Around, Drying, Solid, saturation};

/// A repeatable source of numbers (splitmix64).
#[derive(Clone)]
struct Chance(u64);

impl Chance {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let z = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }
    fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.next()
    }
    /// Normal, of Box and Muller.
    fn normal(&mut self) -> f64 {
        let radius = (-2.0 * (1.0 - self.next()).ln()).sqrt();
        radius * (TAU * self.next()).cos()
    }
}

/// How the piece stands in the smoker.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum How {
    /// Neither pan nor wrap.
    Open,
    /// Over water.
    Pan,
    /// Wrapped from the start.
    Wrapped,
    /// Wrapped half-way.
    Halfway,
}

/// The form of a piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// A brick.
    Brick,
    /// A roll.
    Round,
}

/// One cook: how it went, what was read, and when it was done.
pub struct Cook {
    /// How it stands.
    pub how: How,
    /// The form of the piece.
    pub shape: Shape,
    /// True dimensions, the thickness first, m.
    pub size: [f64; 3],
    /// When the fire was out, s; nothing when it burned on.
    pub out: Option<[f64; 2]>,
    /// When it was wrapped, s.
    pub wrapped: Option<f64>,
    /// Readings of the piece, s and °C.
    pub piece: Vec<(f64, f64)>,
    /// Readings of the cabinet.
    pub cabinet: Vec<(f64, f64)>,
    /// What the dial says, a few degrees off.
    pub dial: f64,
    /// When the middle is at the target, s.
    pub done: f64,
    /// The water that has gone by then, as a share of the piece.
    pub lost: f64,
    setup: Setup,
}

impl Cook {
    /// The cook of this number: always the same.
    pub fn simulated(number: u64) -> Self {
        let mut chance = Chance(number.wrapping_mul(0xa076_1d64_78bd_642f) ^ 0xe703_7ed1_a0b4_28db);
        loop {
            if let Some(cook) = Self::tried(&mut chance) {
                return cook;
            }
        }
    }

    fn tried(c: &mut Chance) -> Option<Self> {
        let how = match c.next() {
            x if x < 0.27 => How::Open,
            x if x < 0.54 => How::Pan,
            x if x < 0.80 => How::Wrapped,
            _ => How::Halfway,
        };
        let pan = how == How::Pan || (how == How::Halfway && c.next() < 0.3);
        let shape = if c.next() < 0.5 { Shape::Brick } else { Shape::Round };
        let thick = c.between(0.025, 0.075);
        let mut size = [thick, thick * c.between(1.0, 3.5), thick * c.between(1.0, 3.5)];
        if shape == Shape::Round {
            size[1] = thick;
        }
        let thickness = thick * (1.0 + 0.08 * c.normal()).clamp(0.75, 1.25);
        let volume = match shape {
            Shape::Brick => size.iter().product(),
            Shape::Round => TAU / 8.0 * thick * thick * size[2],
        };
        let (conductivity, capacity) = (c.between(0.43, 0.51), c.between(3.6e6, 3.9e6));
        let (target, start) = (c.between(60.0, 74.0), c.between(3.0, 10.0));
        let fan = c.next() < 0.5;
        // A thin skin has less to give: ten millimetres of volume over area are the measure.
        let deep = (50.0 / size.iter().map(|s| 1.0 / s).sum::<f64>()).sqrt();
        let drying = match (c.next() * 3.0) as u32 {
            0 => Drying::Bell(deep * c.between(0.2, 0.6)),
            1 => Drying::Critical(
                deep * c.between(0.1, 0.5),
                deep * c.between(0.3, 1.0),
                c.between(0.02, 0.06),
            ),
            _ => Drying::Exponential(deep * c.between(0.25, 0.8)),
        };
        let (blows, dew) = (
            if fan { (15.0, 30.0) } else { (6.0, 12.0) },
            if pan { (30.0, 48.0) } else { (8.0, 30.0) },
        );
        let bare = Around {
            convection: c.between(blows.0, blows.1),
            emissivity: c.between(0.6, 0.9),
            wet: c.between(0.7, 1.0),
            drying,
            air: 0.0,
            vapour: saturation(c.between(dew.0, dew.1)).0,
        };
        let covered = c.between(0.02, 0.1);
        let wrap_at = c.between(45.0, 60.0).min(target - 3.0);
        let set = c.between(75.0, 115.0);
        let dial = set + 4.0 * c.normal();
        let outside = c.between(15.0, 25.0);
        let (short, lag) = (c.between(5.0, 55.0), c.between(400.0, 1200.0));
        let (swing, period, phase) = (c.between(1.0, 6.0), c.between(1200.0, 4000.0), c.between(0.0, TAU));
        let (every, lids) = (c.between(375.0, 1000.0), c.between(2400.0, 7200.0));
        let goes_out = c.next() < 0.2;
        let (out_at, out_for) = (c.between(0.15, 0.8), c.between(1200.0, 3600.0));
        let seed = Chance(c.next().to_bits());

        // The same cook without and with the fire's going out.
        // The cook has weighed it, and measured how thick it is; and said when it will be wrapped, which is done within two
        // degrees of that.
        let intended = wrap_at + 2.0 * Chance(target.to_bits()).normal();
        let (thickness, exponent) = joint(thickness, 1055.0 * volume, fan);
        let run = |out: Option<[f64; 2]>| -> Option<Self> {
            let mut c = seed.clone();
            let half = size.map(|s| s / 2.0);
            let mut solid = match shape {
                Shape::Brick => Solid::brick(half, 10, conductivity, capacity, start),
                Shape::Round => Solid::round(half[0], half[2], 14, conductivity, capacity, start),
            };
            let (mut at, mut next, mut box_heat, mut lid) = (0.0, 0.0, set - short, 0.0);
            let mut lid_at = -lids * (1.0 - c.next()).ln();
            let mut wrapped = (how == How::Wrapped).then_some(0.0);
            let (mut piece, mut cabinet) = (Vec::new(), Vec::new());
            let mut around = bare;
            while solid.heat[0] < target {
                let open = wrapped.is_none() && how == How::Halfway && solid.heat[0] >= wrap_at;
                if open {
                    wrapped = Some(at);
                }
                if open || at >= lid_at {
                    lid += c.between(8.0, 30.0);
                    lid_at = at - lids * (1.0 - c.next()).ln();
                }
                let cold = out.is_some_and(|[from, to]| (from..to).contains(&at));
                let (goal, pace) = if cold { (outside, 1500.0) } else { (set, lag) };
                box_heat += (goal - box_heat) * (1.0 - (-solid.step / pace).exp());
                lid *= (-solid.step / 200.0).exp();
                let warm = (box_heat - outside) / (set - outside);
                around.air = box_heat + warm * (swing * (TAU * at / period + phase).sin() - lid);
                around.vapour = bare.vapour.min(saturation(around.air).0);
                around.wet = bare.wet * if wrapped.is_some() { covered } else { 1.0 };
                if at >= next {
                    piece.push((at, solid.heat[0] + 0.7 * c.normal()));
                    cabinet.push((at, around.air + 1.5 * c.normal()));
                    next = at + every * c.between(0.8, 1.2);
                }
                solid.step(&around);
                at += solid.step;
                if at > 14.0 * 3600.0 {
                    return None;
                }
            }
            (at >= 1800.0).then_some(Self {
                how,
                shape,
                size,
                out,
                wrapped,
                piece,
                cabinet,
                dial,
                done: at,
                lost: solid.lost(),
                setup: Setup {
                    thickness,
                    exponent,
                    fan,
                    covers: vec![Covered {
                        pan,
                        ..Covered::default()
                    }],
                    wrap_at: (how == How::Halfway).then_some(intended),
                    start: 4.0,
                    target,
                    habit: Habit::USUAL,
                },
            })
        };
        let whole = run(None)?;
        if !goes_out {
            return Some(whole);
        }
        let from = out_at * whole.done;
        run(Some([from, from + out_for]))
    }

    /// What the cook says of it by now: a wrap, once it is on, with the time at which it was put on.
    pub fn setup_at(&self, now: f64) -> Setup {
        let mut setup = self.setup.clone();
        let begins = setup.covers.first().copied().unwrap_or_default();
        if let Some(from) = self.wrapped.filter(|at| *at <= now) {
            setup.covers.push(Covered {
                from,
                wrapped: true,
                ..begins
            });
            setup.wrap_at = None;
        }
        // Wrapped from the start is wrapped before it.
        setup
            .covers
            .retain(|cover| cover.from > 0.0 || cover.wrapped || self.wrapped != Some(0.0));
        setup
    }

    /// What has been read by now.
    pub fn readings(&self, now: f64) -> Readings<'_> {
        let count = self.piece.partition_point(|p| p.0 <= now);
        Readings {
            piece: &self.piece[..count],
            cabinet: &self.cabinet[..count],
            set: Some(self.dial),
            next: &[],
        }
    }

    /// The forecasts at a quarter, a half and three quarters of it.
    pub fn scores(&self) -> [Score; 3] {
        [0.25, 0.5, 0.75].map(|share| {
            let now = share * self.done;
            let readings = self.readings(now);
            let off = |time: f64| ((time - self.done) / (self.done - now)).abs().min(1.0);
            let window = forecast(&self.setup_at(now), &readings, now).and_then(|f| f.window);
            Score {
                model: window.map_or(1.0, |w| off(w[1])),
                line: straight(readings.piece, self.setup.target).map_or(1.0, |time| off(time.max(now))),
                held: window.is_some_and(|w| (w[0]..=w[2]).contains(&self.done)),
                early: window.is_some_and(|w| self.done < w[0]),
                late: window.is_some_and(|w| self.done > w[2]),
            }
        })
    }
}

/// What a forecast at one moment is worth; errors as shares of the time that remains. None at all: an error of 1.
pub struct Score {
    /// The forecast's error.
    pub model: f64,
    /// The straight line's.
    pub line: f64,
    /// Whether the band held the true end.
    pub held: bool,
    /// It was done before the band began.
    pub early: bool,
    /// It was done after the band ended.
    pub late: bool,
}

/// Where the least-squares line through the last three readings meets the target; nothing where it does not rise.
fn straight(piece: &[(f64, f64)], target: f64) -> Option<f64> {
    let last = &piece[piece.len().saturating_sub(3)..];
    let mean = |of: fn(&(f64, f64)) -> f64| last.iter().map(of).sum::<f64>() / last.len() as f64;
    let (t, c) = (mean(|p| p.0), mean(|p| p.1));
    let rise: f64 = last.iter().map(|p| (p.0 - t) * (p.1 - c)).sum();
    let run: f64 = last.iter().map(|p| (p.0 - t).powi(2)).sum();
    (last.len() > 1 && rise > 0.0).then(|| t + (target - c) * run / rise)
}

/// The scores in a table, per cent.
pub fn table(cooks: &[Cook]) -> String {
    type Group = (&'static str, fn(&Cook) -> bool);
    const GROUPS: [Group; 6] = [
        ("all", |_| true),
        ("open", |c| c.how == How::Open),
        ("pan", |c| c.how == How::Pan),
        ("wrapped", |c| c.how == How::Wrapped),
        ("half-way", |c| c.how == How::Halfway),
        ("fire out", |c| c.out.is_some()),
    ];
    let scores: Vec<[Score; 3]> = cooks.iter().map(Cook::scores).collect();
    let mut out = String::from(
        "errors in % of the time that remains\n\
         group       n   at   model  p90   line  p90   band %  early %  late %\n",
    );
    for (name, belongs) in GROUPS {
        for (i, at) in [25, 50, 75].into_iter().enumerate() {
            let some: Vec<&Score> = cooks
                .iter()
                .zip(&scores)
                .filter(|(cook, _)| belongs(cook))
                .map(|(_, s)| &s[i])
                .collect();
            if some.is_empty() {
                continue;
            }
            let of = |pick: fn(&Score) -> f64, share| {
                100.0 * crate::cooks::quantile(some.iter().map(|s| pick(s)).collect(), share)
            };
            let part =
                |is: fn(&Score) -> bool| 100.0 * some.iter().filter(|s| is(s)).count() as f64 / some.len() as f64;
            writeln!(
                out,
                "{name:9} {:3} {at:4}   {:5.1} {:4.0}  {:5.1} {:4.0}   {:6.0}  {:7.0} {:7.0}",
                some.len(),
                of(|s| s.model, 0.5),
                of(|s| s.model, 0.9),
                of(|s| s.line, 0.5),
                of(|s| s.line, 0.9),
                part(|s| s.held),
                part(|s| s.early),
                part(|s| s.late)
            )
            .expect("a string takes all");
        }
    }
    out
}
