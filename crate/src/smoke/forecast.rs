//! When a piece will be done: the prior, then a fit of the readings, then a blend with their own tail, and a band.

use super::band::{self, NOISE, blend, straight};
use super::cabinet::{Ahead, line};
use super::carry_over::carry_over;
use super::cook::Cook;
use super::fit::{SIZE, fit, leaning, nudged, spread};
use super::model::{Forecast, Readings};
use super::setup::{Guess, Setup};

/// It is not forecast further than this, s.
const DAY: f64 = 86_400.0;
const OVEN: f64 = 120.0;

/// One cook by one set of parameters.
struct Run<'a> {
    setup: &'a Setup,
    readings: &'a Readings<'a>,
    begin: (f64, f64),
    /// The last reading of the piece, s.
    seen: f64,
    air: Ahead,
}

impl Run<'_> {
    /// Between readings of the cabinet along them; after the last as it was lately.
    fn air(&self, at: f64) -> f64 {
        let read = self.readings.cabinet.last().is_some_and(|p| at <= p.0);
        line(self.readings.cabinet, at)
            .filter(|_| read)
            .unwrap_or_else(|| self.ahead(at))
    }

    /// After the last reading: as it was lately, then as it will be set.
    fn ahead(&self, at: f64) -> f64 {
        let begun = self.readings.next.iter().take_while(|(from, _)| *from <= at);
        begun.fold(self.air, |air, &(from, level)| air.set(from, level)).at(at)
    }

    /// Goes on from `from` to `until`, telling every step; stops early when told to. `warmer` is added to the air.
    fn go(
        &self,
        cook: &mut Cook,
        guess: &Guess,
        (from, until): (f64, f64),
        warmer: f64,
        mut tell: impl FnMut(f64, &Cook) -> bool,
    ) {
        // Five times as long: a tenth of a degree at the Bi of meat over a fire, far below the noise of a reading.
        let stride = 5.0 * Cook::stride(&guess.piece);
        let mut at = from;
        while at < until {
            let step = stride.min(until - at);
            let middle = at + step / 2.0;
            let Some(smoker) = guess.smoker(middle) else { break };
            // What is still to come: from the last reading on it is wrapped when it is warm enough for that.
            let wrap = at >= self.seen
                && self
                    .setup
                    .wrap_at
                    .is_some_and(|warm| cook.centre() + guess.offset >= warm);
            let smoker = if wrap { &guess.wrapped } else { smoker };
            cook.step(step, self.air(middle) + warmer, smoker);
            at += step;
            if tell(at, cook) {
                break;
            }
        }
    }

    /// How far off what the probe should have shown is at each reading, in deviations; and the cook as it is `now`.
    fn follow(&self, guess: &Guess, now: f64) -> (Vec<f64>, Cook) {
        let mut cook = Cook::coarse(guess.piece, self.begin.1);
        let mut at = self.begin.0;
        let mut to = |time: f64, cook: &mut Cook| {
            self.go(cook, guess, (at, time), 0.0, |_, _| false);
            at = at.max(time);
        };
        let one = |(time, read): &(f64, f64)| {
            to(*time, &mut cook);
            (cook.centre() + guess.offset - read) / NOISE
        };
        let off = self.readings.piece.iter().map(one).collect();
        to(now, &mut cook);
        (off, cook)
    }

    /// Seconds until the probe shows the target, from `now` on.
    fn finish(&self, guess: &Guess, from: &Cook, now: f64, warmer: f64) -> Option<f64> {
        let target = self.setup.target - guess.offset;
        let mut cook = from.clone();
        if cook.centre() >= target {
            return Some(0.0);
        }
        let mut last = (now, cook.centre());
        let mut found = None;
        self.go(&mut cook, guess, (now, now + DAY), warmer, |at, cook| {
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

/// When a piece will reach its target. `now` on the clock of the readings; nothing where nobody said how warm the
/// cabinet is.
///
/// Fewer than three readings: by what is usual, and said to be so. From half-way on the readings' own line is blended in, by
/// what it is worth.
pub fn forecast(setup: &Setup, readings: &Readings, now: f64) -> Option<Forecast> {
    let air = Ahead::of(readings)?;
    let begin = readings.piece.first().copied().unwrap_or((now, setup.start));
    let run = Run {
        setup,
        readings,
        begin,
        seen: readings.piece.last().map_or(begin.0, |p| p.0),
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
    // How far it has come of its way.
    let way = (last.1 - begin.1) / (setup.target - begin.1);
    let (window, habit) = remains
        .map(|by_fit| {
            // A line knows nothing of another heat that is still to come.
            let same = readings.next.iter().all(|(from, _)| *from >= now + by_fit);
            let line = (fitted && same)
                .then(|| straight(readings.piece, setup.target, now))
                .flatten();
            let likely = blend(by_fit, line, way);
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
            let spread = spread(&lean, &slope);
            let window = if fitted {
                band::of(likely, spread, way, setup.wrapped())
            } else {
                band::unfitted(likely, gone, spread, setup.wrapped())
            };
            let habit = setup.habit.after(&found, &lean);
            // A line that has gone flat or a fit that knows nothing would promise years.
            (window.map(|t| now + t.min(DAY)), habit)
        })
        .unzip();
    let until = remains.map_or(now + 4.0 * 3600.0, |r| now + r);
    let mut course = vec![(now, cook.centre() + usual.offset)];
    let mut pulled = cook.clone();
    let apart = (until - now) / 24.0;
    run.go(&mut pulled, &usual, (now, until), 0.0, |at, cook| {
        if course.last().is_none_or(|p| at - p.0 >= apart) || at >= until {
            course.push((at, cook.centre() + usual.offset));
        }
        false
    });
    let loss = pulled.loss;
    let oven = Run {
        readings: &Readings {
            cabinet: &[],
            next: &[],
            ..*readings
        },
        air: Ahead::still(OVEN),
        ..run
    };
    let warmer = run.finish(&usual, &cook, now, 10.0);
    let out = air.falls && cools(readings.piece);
    Some(Forecast {
        fitted,
        habit: habit.filter(|_| fitted),
        window,
        stall: !out && stalls(readings.piece, setup.target),
        out,
        warmer,
        oven: oven.finish(&usual, &cook, now, 0.0),
        carry: usual
            .smoker(until)
            .map_or(0.0, |smoker| carry_over(&pulled, smoker, Cook::stride(&usual.piece))),
        loss,
        course,
    })
}

/// The last reading is no warmer than the one before.
fn cools(piece: &[(f64, f64)]) -> bool {
    matches!(piece, [.., before, last] if last.1 <= before.1)
}

/// Less than 3 °C in the last hour's worth of readings, and more than 5 °C to go.
fn stalls(piece: &[(f64, f64)], target: f64) -> bool {
    let Some(last) = piece.last() else { return false };
    let earlier = piece.iter().rev().find(|p| last.0 - p.0 >= 1200.0);
    earlier.is_some_and(|e| target - last.1 > 5.0 && (last.1 - e.1) / (last.0 - e.0) * 3600.0 < 3.0 && last.1 > 30.0)
}
