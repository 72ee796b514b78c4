//! When a piece will be done: the prior, then a fit of the readings, then a blend with their own tail, and a band.

use super::cook::{Cook, Piece, Smoker};
use super::fit::{Point, SIZE, fit, leaning, nudged, spread};
use super::habit::Habit;
use crate::order::InOrder;
use crate::transport::MOST;

/// What is known before the fire.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Setup {
    /// Thickest part, m.
    pub thickness: f64,
    /// Exponent of the shape; a breast 0.3.
    pub exponent: f64,
    /// A fan moves the air.
    pub fan: bool,
    /// A pan of water stands in it.
    pub pan: bool,
    /// The pieces are wrapped.
    pub wrapped: bool,
    /// What it starts at, °C, where no reading says it.
    pub start: f64,
    /// Where to pull, °C.
    pub target: f64,
    /// What is known of this smoker beyond its kind.
    pub habit: Habit,
}

/// What was read: seconds and °C, in order of time.
#[derive(Clone, Copy, Debug)]
pub struct Readings<'a> {
    /// Of the piece.
    pub piece: &'a [(f64, f64)],
    /// Of the cabinet.
    pub cabinet: &'a [(f64, f64)],
    /// What the cabinet is set to, where it was not read.
    pub set: Option<f64>,
}

/// When it will be done. Seconds on the clock of the readings.
#[derive(Clone, Debug, PartialEq)]
pub struct Forecast {
    /// True where three readings or more were fitted; else by what is usual.
    pub fitted: bool,
    /// What the fit tells of the smoker; nothing where there is none.
    pub habit: Option<Habit>,
    /// The likely time and its band of four in five; nothing where it will not get there within a day.
    pub window: Option<[f64; 3]>,
    /// Its course from now on: seconds, °C.
    pub course: Vec<(f64, f64)>,
    /// It hardly warms though it is far from the target: evaporation holds it.
    pub stall: bool,
    /// Seconds from now with the cabinet 10 °C warmer.
    pub warmer: Option<f64>,
    /// Seconds from now in an oven at 120 °C.
    pub oven: Option<f64>,
    /// How far the centre still rises after the pull, °C.
    pub carry: f64,
    /// Share of the weight lost by the pull.
    pub loss: f64,
}

/// Standard deviation of a reading, °C: thermometer, place of the probe, lid.
const NOISE: f64 = 1.0;
/// It is not forecast further than this, s.
const DAY: f64 = 86_400.0;
/// Standard deviations either way. 1.28 would be 10 to 90 per cent if the model were right; with this, about four in five
/// of the cooks simulated by another model end within the band (see the head of [`crate::smoke`]).
const FOUR_IN_FIVE: f64 = 1.9;
const OVEN: f64 = 120.0;

impl Setup {
    /// The piece, the smoker and the offset of the probe at a point of the prior. Spreads are judgements about the ranges
    /// beside [`Smoker`].
    fn at(&self, z: &Point) -> (Piece, Smoker, f64) {
        let [
            thick,
            convection,
            wet,
            dries,
            sharp,
            dew,
            shape,
            offset,
            conductivity,
            radiation,
        ] = self.habit.apply(z);
        let spread = |usual: f64, share: f64, z: f64| usual * (share * z).exp();
        let mut piece = Piece::lean(
            spread(self.thickness, 0.10, thick),
            (self.exponent + 0.25 * shape).clamp(0.0, MOST),
        );
        piece.conductivity = spread(piece.conductivity, 0.05, conductivity);
        let smoker = Smoker {
            convection: spread(if self.fan { 21.0 } else { 9.0 }, 0.22, convection),
            radiation: spread(6.5, 0.15, radiation),
            wetness: spread(
                if self.wrapped { 0.08 } else { 0.8 },
                if self.wrapped { 0.5 } else { 0.15 },
                wet,
            )
            .min(1.0),
            dries: spread(if self.fan { 0.03 } else { 0.05 }, 0.30, dries),
            sharpness: spread(1.2, 0.2, sharp),
            dew: if self.pan { 35.0 } else { 22.0 } + 7.0 * dew,
        };
        (piece, smoker, offset)
    }

    const fn open(&self) -> bool {
        !self.pan && !self.wrapped
    }
}

/// A line through points at a time, held before the first and after the last.
fn line(points: &[(f64, f64)], at: f64) -> Option<f64> {
    let next = points.partition_point(|p| p.0 <= at);
    let before = next.checked_sub(1).and_then(|i| points.get(i)).copied();
    match (before, points.get(next).copied()) {
        (Some(a), Some(b)) => Some(a.1 + (b.1 - a.1) * (at - a.0) / (b.0 - a.0)),
        (one, other) => one.or(other).map(|p| p.1),
    }
}

/// What the cabinet will be: the middle one of its last five readings or the last, whichever is warmer, since a lid lets
/// it fall only for a while. Within its first hour it may still come up to what it is set to.
fn ahead(readings: &Readings) -> Option<f64> {
    let mut last: Vec<f64> = readings.cabinet.iter().rev().take(5).map(|p| p.1).collect();
    let newest = last.first().copied();
    last.order_by(f64::total_cmp);
    let lately = warmer(last.get(last.len() / 2).copied(), newest);
    let young = readings
        .cabinet
        .last()
        .zip(readings.cabinet.first())
        .is_none_or(|(l, f)| l.0 - f.0 < 3600.0);
    if young {
        warmer(lately, readings.set)
    } else {
        lately.or(readings.set)
    }
}

/// The warmer of two temperatures that may not be known.
fn warmer(one: Option<f64>, other: Option<f64>) -> Option<f64> {
    one.into_iter().chain(other).reduce(f64::max)
}

/// One cook by one set of parameters.
struct Run<'a> {
    setup: &'a Setup,
    readings: &'a Readings<'a>,
    begin: (f64, f64),
    air: f64,
}

impl Run<'_> {
    /// Between readings of the cabinet along them; after the last as it was lately.
    fn air(&self, at: f64) -> f64 {
        let read = self.readings.cabinet.last().is_some_and(|p| at <= p.0);
        line(self.readings.cabinet, at).filter(|_| read).unwrap_or(self.air)
    }

    /// Goes on from `from` to `until`, telling every step; stops early when told to. `warmer` is added to the air.
    fn go(
        &self,
        cook: &mut Cook,
        (piece, smoker): (&Piece, &Smoker),
        (from, until): (f64, f64),
        warmer: f64,
        mut tell: impl FnMut(f64, &Cook) -> bool,
    ) {
        // Five times as long: a tenth of a degree at the Bi of meat over a fire, far below the noise of a reading.
        let stride = 5.0 * Cook::stride(piece);
        let mut at = from;
        while at < until {
            let step = stride.min(until - at);
            cook.step(step, self.air(at + step / 2.0) + warmer, smoker);
            at += step;
            if tell(at, cook) {
                break;
            }
        }
    }

    /// How far off what the probe should have shown is at each reading, in deviations; and the cook as it is `now`.
    fn follow(&self, (piece, smoker, offset): &(Piece, Smoker, f64), now: f64) -> (Vec<f64>, Cook) {
        let mut cook = Cook::coarse(*piece, self.begin.1);
        let mut at = self.begin.0;
        let mut to = |time: f64, cook: &mut Cook| {
            self.go(cook, (piece, smoker), (at, time), 0.0, |_, _| false);
            at = at.max(time);
        };
        let one = |(time, read): &(f64, f64)| {
            to(*time, &mut cook);
            (cook.centre() + offset - read) / NOISE
        };
        let off = self.readings.piece.iter().map(one).collect();
        to(now, &mut cook);
        (off, cook)
    }

    /// Seconds until the probe shows the target, from `now` on.
    fn finish(
        &self,
        (piece, smoker, offset): &(Piece, Smoker, f64),
        from: &Cook,
        now: f64,
        warmer: f64,
    ) -> Option<f64> {
        let target = self.setup.target - offset;
        let mut cook = from.clone();
        if cook.centre() >= target {
            return Some(0.0);
        }
        let mut last = (now, cook.centre());
        let mut found = None;
        self.go(&mut cook, (piece, smoker), (now, now + DAY), warmer, |at, cook| {
            let centre = cook.centre();
            if centre >= target {
                found = Some(last.0 + (at - last.0) * (target - last.1) / (centre - last.1) - now);
            }
            last = (at, centre);
            found.is_some()
        });
        found
    }
}

/// Remaining seconds by a straight line in the logarithm of what is missing to the air, through the last four readings.
fn tail(piece: &[(f64, f64)], air: f64, target: f64, now: f64) -> Option<f64> {
    let last = piece.get(piece.len().checked_sub(4)?..)?;
    let missing: Vec<(f64, f64)> = last
        .iter()
        .filter(|p| p.1 < air - 1.0)
        .map(|p| (p.0, (air - p.1).ln()))
        .collect();
    let count = missing.len() as f64;
    if missing.len() < 3 || target >= air - 1.0 {
        return None;
    }
    let mean = |of: fn(&(f64, f64)) -> f64| missing.iter().map(of).sum::<f64>() / count;
    let (time, level) = (mean(|p| p.0), mean(|p| p.1));
    let square: f64 = missing.iter().map(|p| (p.0 - time) * (p.0 - time)).sum();
    let slope = missing.iter().map(|p| (p.0 - time) * (p.1 - level)).sum::<f64>() / square;
    let at = time + ((air - target).ln() - level) / slope;
    (slope < 0.0 && at > now).then_some(at - now)
}

/// When a piece will reach its target. `now` on the clock of the readings; nothing where nobody said how warm the
/// cabinet is.
///
/// Fewer than three readings: by what is usual, and said to be so. Past half-way in an open smoker a share of 35 % of
/// the readings' own tail is blended in. The band is the widest of the fit's four in five, 65 % of what remains either
/// way (30 % wrapped), and ten minutes.
pub fn forecast(setup: &Setup, readings: &Readings, now: f64) -> Option<Forecast> {
    let air = ahead(readings)?;
    let begin = readings.piece.first().copied().unwrap_or((now, setup.start));
    let run = Run {
        setup,
        readings,
        begin,
        air,
    };
    let now = readings.piece.last().map_or(now, |p| p.0.max(now));
    let fitted = readings.piece.len() >= 3;
    let last = readings.piece.last().copied().unwrap_or(begin);
    let found = if fitted {
        fit(|z| run.follow(&setup.at(z), last.0).0)
    } else {
        [0.0; SIZE]
    };
    let usual = setup.at(&found);
    let (off, cook) = run.follow(&usual, now);
    let remains = run.finish(&usual, &cook, now, 0.0);
    let half = last.1 - begin.1 > 0.5 * (setup.target - begin.1);
    let (window, habit) = remains
        .map(|by_fit| {
            let own = if fitted && half && setup.open() {
                tail(readings.piece, air, setup.target, now)
            } else {
                None
            };
            let likely = own.map_or(by_fit, |own| 0.65 * by_fit + 0.35 * own);
            // What was not measured is as uncertain as its whole time over the fire, however little of it is left.
            let gone = if fitted { 0.0 } else { now - begin.0 };
            // Logarithms: a time left is never below nought. The last figure of each is that, the others are the readings'.
            let with = |mut off: Vec<f64>, left: f64| {
                off.truncate(if fitted { off.len() } else { 0 });
                off.push(left);
                off
            };
            let here = (by_fit + gone + 60.0).ln();
            let there = nudged(&found).map(|z| {
                let other = setup.at(&z);
                let (off, cook) = run.follow(&other, now);
                let left = run.finish(&other, &cook, now, 0.0);
                with(off, left.map_or(here + 0.05, |t| (t + gone + 60.0).ln()))
            });
            let mut lean = leaning(&with(off, here), there);
            let slope = lean.pop().unwrap_or_default();
            let spread = (FOUR_IN_FIVE * spread(&lean, &slope)).exp();
            let share = if setup.wrapped { 0.3 } else { 0.65 };
            let whole = likely + gone;
            let low = (whole / spread - gone)
                .min(likely - whole * share)
                .min(likely - 600.0)
                .max(0.0);
            let high = (whole * spread - gone).max(likely + whole * share).max(likely + 600.0);
            // A tail that has gone flat or a fit that knows nothing would promise years.
            let habit = setup.habit.after(&found, &lean);
            ([low, likely, high].map(|t| now + t.min(DAY)), habit)
        })
        .unzip();
    let (piece, smoker, offset) = &usual;
    let until = remains.map_or(now + 4.0 * 3600.0, |r| now + r);
    let mut course = vec![(now, cook.centre() + offset)];
    let mut pulled = cook.clone();
    let apart = (until - now) / 24.0;
    run.go(&mut pulled, (piece, smoker), (now, until), 0.0, |at, cook| {
        if course.last().is_none_or(|p| at - p.0 >= apart) || at >= until {
            course.push((at, cook.centre() + offset));
        }
        false
    });
    let loss = pulled.loss;
    let oven = Run {
        readings: &Readings {
            cabinet: &[],
            ..*readings
        },
        air: OVEN,
        ..run
    };
    let warmer = run.finish(&usual, &cook, now, 10.0);
    Some(Forecast {
        fitted,
        habit: habit.filter(|_| fitted),
        window,
        stall: stalls(readings.piece, setup.target),
        warmer,
        oven: oven.finish(&usual, &cook, now, 0.0),
        carry: carry_over(&pulled, smoker, Cook::stride(piece)),
        loss,
        course,
    })
}

/// Less than 3 °C in the last hour's worth of readings, and more than 5 °C to go.
fn stalls(piece: &[(f64, f64)], target: f64) -> bool {
    let Some(last) = piece.last() else { return false };
    let earlier = piece.iter().rev().find(|p| last.0 - p.0 >= 1200.0);
    earlier.is_some_and(|e| target - last.1 > 5.0 && (last.1 - e.1) / (last.0 - e.0) * 3600.0 < 3.0 && last.1 > 30.0)
}

/// How far the centre rises once the piece rests in still air at 20 °C.
pub(super) fn carry_over(pulled: &Cook, smoker: &Smoker, stride: f64) -> f64 {
    let rest = Smoker {
        convection: 5.0,
        radiation: 5.5,
        dew: 10.0,
        ..*smoker
    };
    let mut cook = pulled.clone();
    cook.disturb();
    let begin = cook.centre();
    let mut top = begin;
    for _ in 0..400 {
        cook.step(stride, 20.0, &rest);
        if cook.centre() < top - 0.2 {
            break;
        }
        top = top.max(cook.centre());
    }
    top - begin
}

/// Seconds until the centre of a piece has come from `start` down to `end`, °C, in a refrigerator: still air at 3 °C,
/// 9.5 W/m²K, the piece warm throughout and alone. Nothing where that takes more than a day.
pub fn chilled(setup: &Setup, start: f64, end: f64) -> Option<f64> {
    let piece = Piece::lean(setup.thickness, setup.exponent);
    let still = Smoker {
        convection: 4.5,
        radiation: 5.0,
        wetness: 0.0,
        dries: 0.05,
        sharpness: 1.0,
        dew: 0.0,
    };
    let (mut cook, mut at) = (Cook::new(piece, start), 0.0);
    while cook.centre() > end {
        if at > DAY {
            return None;
        }
        cook.step(60.0, 3.0, &still);
        at += 60.0;
    }
    Some(at)
}
