//! The times of a batch, made once: whoever shows a time of it reads it here.
//!
//! A tick says when a step was begun, or done if it takes no time; the next step falls due when that one has lasted its
//! time. The cure lasts as [`crate::cure::stay`] has it, the fire as its readings forecast it, a step without a time as
//! is usual. What can move makes way for rest.

use super::fit::Leg;
use super::legs::{HOUR, MINUTE, OVERDUE, SLOT_MS, flow, leg, needs, slot_up};
use super::times::Timed;
use crate::batch::{Batch, kinds};
use crate::cure::{Stay, Until, stay};
use crate::fire::pulls;
use crate::order::InOrder;
use crate::pantry::MeatKind;
use crate::quantity::exact::Exact;
use crate::quantity::{Awake, hour_down, hour_up};
use crate::recipe::{Basis, Do, Step};
use crate::safety::CHILL_MARKS;
use crate::weigh::Settings;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// How many whole hours later than the clock has it a batch may come out so that the rest of the work finds its time.
const LATER: usize = 48;
/// Most turns of a step.
const MOST_TURNS: i64 = 200;

/// The course of a batch.
#[derive(Clone, Debug)]
pub struct Course {
    /// When it comes out of the cure.
    pub until: Option<Until>,
    /// Every time, in the order of the steps.
    pub times: Vec<Timed>,
}

/// When a batch comes out of its cure: as the clock has it, or the first whole hour after it from which the rest of the
/// work falls into nobody's sleep.
#[must_use]
pub fn until(batch: &Batch, now: i64, settings: &Settings, awake: &Awake) -> Option<Until> {
    let stay = stay(batch, now, settings, awake)?;
    let at = settled(batch, &stay, awake);
    Some(stay.until.moved_to(at))
}

fn settled(batch: &Batch, stay: &Stay<'_>, awake: &Awake) -> i64 {
    let first = stay.until.at;
    let after = batch.recipe.steps.iter().rposition(|s| s.act == Do::Cure);
    let tail = tail(batch, after.map_or(0, |at| at.saturating_add(1)));
    if batch.recipe.method.is_timed_exactly() || awake.rests().is_empty() {
        return first;
    }
    let mut at = first;
    for _ in 0..LATER {
        if flow(&tail, at, 0, awake).is_some() {
            return at;
        }
        at = awake.hour_from(at.saturating_add(1));
        if stay.until.last.is_some_and(|last| at > last) {
            break;
        }
    }
    first
}

/// The legs of the steps from one on.
fn tail(batch: &Batch, from: usize) -> Vec<Leg> {
    let kinds = kinds(&batch.pieces);
    batch.recipe.steps.iter().skip(from).map(|s| leg(s, &kinds)).collect()
}

/// When a step was begun: its tick; for a cure that comes first, the tick of the rub.
pub fn tick_of(batch: &Batch, i: usize, begun: i64) -> Option<i64> {
    let own = batch.step(i).map(|t| t.at);
    own.or_else(|| (i == 0 && batch.recipe.steps.first().is_some_and(|s| s.act == Do::Cure)).then_some(begun))
        .or_else(|| by_log(batch, i))
}

/// What a log says of a step that nobody ticked, where the one before it is done: what was probed lies over the fire, and
/// what was all taken out of it rests and chills. Out of its cure it is by a tick alone; a drying that nobody ticked is over
/// once it lies in the heat.
fn by_log(batch: &Batch, i: usize) -> Option<i64> {
    let steps = &batch.recipe.steps;
    let heats = |s: &Step| matches!(s.act, Do::Smoke | Do::Cook | Do::DryOut);
    let (earlier, from) = steps.split_at_checked(i)?;
    let done = |j: usize| batch.step(j).map(|t| t.at).or_else(|| by_log(batch, j));
    let dries = |j: usize| earlier.get(j).is_some_and(|s| s.act == Do::Dry);
    let last = (0..i).rev().find(|j| !dries(*j) || done(*j).is_some())?;
    let before = done(last)?;
    let at = match from.first()?.act {
        Do::Smoke | Do::Cook if !earlier.iter().any(heats) => {
            let readings = batch.fire.iter().flat_map(|f| &f.readings);
            readings.filter(|r| !r.struck && r.class.is_some()).map(|r| r.at).min()
        }
        // A second heat was in the first where all of it is hot enough; else it is still to come.
        Do::Smoke | Do::Cook => all_out(batch).filter(|out| {
            let classes = crate::record::classes(batch, *out);
            classes.iter().all(|class| class.heat.enough().is_some())
        }),
        Do::Rest | Do::Chill if earlier.iter().any(heats) && !from.iter().any(heats) => all_out(batch),
        _ => None,
    };
    Some(at?.max(before))
}

/// When the last size was taken out of the heat; nothing while one is in it.
fn all_out(batch: &Batch) -> Option<i64> {
    let pulled = (0..batch.pieces.len()).map(|at| batch.tick(&format!("pull:{at}")).map(|t| t.at));
    pulled.collect::<Option<Vec<i64>>>()?.into_iter().max()
}

/// The course of a batch whose cure is on; nothing before.
#[must_use]
pub fn course(batch: &Batch, now: i64, settings: &Settings, awake: &Awake) -> Option<Course> {
    let begun = batch.tick("rub")?.at;
    let mut stay = stay(batch, now, settings, awake);
    if let Some(stay) = &mut stay {
        let at = settled(batch, stay, awake);
        stay.until = stay.until.clone().moved_to(at);
    }
    let work = Work {
        batch,
        now,
        settings,
        awake,
        kinds: kinds(&batch.pieces),
        begun,
        stay,
    };
    let times = work.times();
    Some(Course {
        until: work.stay.map(|stay| stay.until),
        times,
    })
}

struct Work<'a> {
    batch: &'a Batch,
    now: i64,
    settings: &'a Settings,
    awake: &'a Awake,
    kinds: Vec<MeatKind>,
    begun: i64,
    stay: Option<Stay<'a>>,
}

/// When all has come out of the last heat, by the forecast.
#[derive(Clone, Copy)]
struct Out {
    step: usize,
    at: i64,
}

/// When a step begins and ends, and by what.
#[derive(Clone, Copy)]
struct Span {
    at: i64,
    ends: i64,
    kind: Basis,
}

impl Work<'_> {
    fn steps(&self) -> &[Step] {
        &self.batch.recipe.steps
    }

    fn ticked(&self, i: usize) -> Option<i64> {
        tick_of(self.batch, i, self.begun)
    }

    /// The last step that is ticked: what runs, or has just been done.
    fn last(&self) -> Option<usize> {
        (0..self.steps().len()).rev().find(|i| self.ticked(*i).is_some())
    }

    /// The last step of the cure, which ends as its stay does.
    fn is_stay(&self, i: usize) -> bool {
        self.steps().iter().rposition(|s| s.act == Do::Cure) == Some(i)
    }

    /// When a step ends that begins at `start`, and by what.
    fn ends(&self, i: usize, start: i64, runs: bool) -> (i64, Basis) {
        let own = self.steps().get(i).and_then(|s| s.takes(&self.kinds));
        let own = own.map_or((start, Basis::Recipe), |(ms, kind)| (start.saturating_add(ms), kind));
        match &self.stay {
            Some(stay) if runs && self.is_stay(i) => (stay.until.at.max(start), stay.until.kind),
            _ => own,
        }
    }

    /// Begin, end and basis of every step, and the end of all. Where the last heat has a time at which all comes out of
    /// it, that ends it, and no heat before it goes on beyond that.
    fn spans(&self, out: Option<Out>) -> (Vec<Span>, i64) {
        let count = self.steps().len();
        let last = self.last();
        let mut spans = Vec::with_capacity(count);
        let mut due = self.begun;
        let ticked = last.map_or(0, |last| last.saturating_add(1));
        // What hangs over the fire goes from one heat into the next, whoever sleeps.
        let to = out.map_or(ticked, |out| ticked.max(out.step.saturating_add(1)));
        for i in 0..to {
            // Nothing is begun before the cure is on, whatever a clock said.
            let start = match (self.ticked(i), out) {
                (Some(at), _) => at.max(self.begun),
                (None, Some(out)) if i >= ticked => due.min(out.at),
                (None, _) => due,
            };
            let (mut ends, mut kind) = self.ends(i, start, Some(i) == last);
            let open = i.saturating_add(1) >= ticked;
            if let Some(out) = out.filter(|out| i == out.step || open && ends > out.at) {
                (ends, kind) = (out.at.max(start), Basis::Forecast);
            }
            spans.push(Span { at: start, ends, kind });
            due = ends;
        }
        let legs = tail(self.batch, to);
        // What is in its cure comes out at the hour; what dries or chills may wait.
        let before = to.checked_sub(1).and_then(|i| self.steps().get(i));
        let wait = before.map_or(0, |s| match s.act {
            Do::Cure => 0,
            act => needs(act).2.saturating_mul(HOUR),
        });
        let mut times = self.flow(&legs, due, wait);
        if let Some(at) = times
            .first_mut()
            .filter(|_| self.batch.recipe.method.is_timed_exactly() && wait == 0)
        {
            *at = due;
        }
        // What is overdue keeps its time, and what follows waits for it.
        if let Some(first) = times.first().copied().filter(|at| *at <= self.now)
            && !legs.is_empty()
        {
            times = self.flow(&legs, self.now, OVERDUE);
            if let Some(at) = times.first_mut() {
                *at = first;
            }
        }
        for (i, at) in (to..count).zip(&times) {
            let (ends, kind) = self.ends(i, *at, false);
            spans.push(Span { at: *at, ends, kind });
        }
        (spans, times.last().copied().unwrap_or(due))
    }

    /// The times of these legs; where rest leaves no way, one after the other whoever rests.
    fn flow(&self, legs: &[Leg], from: i64, wait: usize) -> Vec<i64> {
        let none = Awake::default();
        let found = flow(legs, from, wait, self.awake).or_else(|| flow(legs, from, 0, &none));
        found.unwrap_or_default()
    }

    fn times(&self) -> Vec<Timed> {
        let last = self.last();
        let last_of = |acts: &[Do]| self.steps().iter().rposition(|s| acts.contains(&s.act));
        let dried = last_of(&[Do::DryOut]);
        // Strips are hot before they are dried: what the readings forecast is the heat before it.
        let hot = last_of(&[Do::Smoke, Do::Cook]).or(dried);
        let over_fire = last <= hot && self.batch.tick("end").is_none();
        let pulls = if over_fire {
            pulls(self.batch, self.now, self.settings)
        } else {
            Vec::new()
        };
        // What comes out of the cure first may be over the fire while the rest is in it: that ends nothing.
        let likely = pulls
            .iter()
            .map(|pull| pull.likely)
            .max()
            .filter(|_| !self.batch.is_in_cure());
        let (spans, end) = self.spans(hot.zip(likely).map(|(step, at)| Out { step, at }));
        let mut out = Vec::new();
        for (i, (step, span)) in self.steps().iter().zip(&spans).enumerate() {
            let lasts = step.takes(&self.kinds).is_some();
            out.push(Timed {
                kind: span.kind,
                ends: lasts.then_some(span.ends),
                presence: needs(step.act).1,
                ..Timed::of(format!("step:{i}"), i, span.at)
            });
            let from = out.len();
            out.extend(self.turns(step, i, *span, last));
            if step.act == Do::Cure {
                out.extend(self.draws(i));
            }
            if Some(i) == hot {
                out.extend(pulls.iter().filter_map(|pull| {
                    Some(Timed {
                        class: Some(pull.class),
                        kind: Basis::Forecast,
                        presence: true,
                        ..Timed::of(format!("wrap:{}", pull.class), i, pull.wrap?)
                    })
                }));
                out.extend(pulls.iter().map(|pull| Timed {
                    class: Some(pull.class),
                    ends: Some(pull.latest),
                    kind: Basis::Forecast,
                    presence: true,
                    ..Timed::of(format!("pull:{}", pull.class), i, pull.earliest)
                }));
            }
            if let Some(sorted) = out.get_mut(from..) {
                sorted.order_by_key(|timed| timed.at);
            }
        }
        out.extend(self.chill(&spans, hot.max(dried)));
        out.push(Timed {
            kind: spans.last().map_or(Basis::Recipe, |span| span.kind),
            ..Timed::of("end".to_owned(), spans.len(), end)
        });
        out
    }

    /// The turns of a step that are done or to be done; what lay frozen is not turned.
    fn turns(&self, step: &Step, i: usize, span: Span, last: Option<usize>) -> Vec<Timed> {
        let runs = last == Some(i) && step.act == Do::Cure;
        let stood = |at: i64| runs && self.stay.as_ref().is_some_and(|stay| stay.stands(at));
        let due = turns(step, i, (span.at, span.ends), self.awake).into_iter();
        due.filter_map(|timed| match self.batch.tick(&timed.id) {
            Some(tick) => Some(Timed {
                at: tick.at,
                moved: None,
                ..timed
            }),
            None => (!stood(timed.moved.unwrap_or(timed.at))).then_some(timed),
        })
        .collect()
    }

    /// Sizes that come out of the cure before the rest, and what they do then.
    fn draws(&self, cure: usize) -> Vec<Timed> {
        let mut out = Vec::new();
        for k in (0..).take(self.batch.pieces.len()) {
            let id = format!("draw:{k}");
            let done = self.batch.tick(&id).map(|t| t.at);
            let rows = self.stay.iter().flat_map(|stay| &stay.until.classes);
            let mut first = rows.filter(|c| c.class == k && c.first).map(|c| c.until);
            let over = self.last().is_some_and(|last| last > cure) || self.batch.tick("end").is_some();
            let Some(at) = done.or_else(|| first.next().filter(|_| !over && self.is_stay(cure))) else {
                continue;
            };
            let of_class = |id: String, step: usize, at: i64| Timed {
                class: Some(k),
                kind: Basis::Forecast,
                ..Timed::of(id, step, at)
            };
            out.push(of_class(id, cure, at));
            // It is rinsed and dries from then on, whatever the rest does.
            let next = self.steps().iter().enumerate().skip(cure.saturating_add(1));
            let rinse = next
                .clone()
                .find(|(_, s)| s.act == Do::Rinse)
                .filter(|_| done.is_some());
            out.extend(rinse.map(|(i, _)| Timed {
                presence: true,
                ..of_class(format!("rinse:{k}"), i, at)
            }));
            // What was rinsed dries from then on.
            let rinsed = self.batch.tick(&format!("rinse:{k}")).map_or(at, |t| t.at.max(at));
            let dry = next.clone().find(|(_, s)| s.act == Do::Dry);
            if let Some((i, (lasts, kind))) = dry.and_then(|(i, s)| Some((i, s.takes(&self.kinds)?))) {
                out.push(Timed {
                    ends: Some(rinsed.saturating_add(lasts)),
                    kind,
                    ..of_class(format!("dry:{k}"), i, rinsed)
                });
            }
        }
        out
    }

    /// The marks of a chill, counted from the end of the heat: by then it has to be so cold.
    fn chill(&self, spans: &[Span], last_hot: Option<usize>) -> Vec<Timed> {
        let Some(hot) = last_hot else {
            return Vec::new();
        };
        let from = hot.saturating_add(1);
        let chill = self.steps().iter().skip(from).position(|s| s.act == Do::Chill);
        let (Some(chill), Some(off)) = (chill, spans.get(from)) else {
            return Vec::new();
        };
        let chill = chill.saturating_add(from);
        // A step after the chill is begun: it was read by then, or is in doubt.
        if self.last().is_some_and(|last| last > chill) || self.batch.tick("end").is_some() {
            return Vec::new();
        }
        let mark = |(key, hours): (&str, i64)| Timed {
            kind: Basis::Published,
            ..Timed::of(
                format!("{key}:{chill}"),
                chill,
                off.at.saturating_add(hours.saturating_mul(60 * MINUTE)),
            )
        };
        CHILL_MARKS.into_iter().map(mark).collect()
    }
}

/// Times of the turns within a step that lasts from one moment to another, its end left out: then the next step is due.
/// Each at the nearest time that nobody rests; two that would fall on one moment are one.
#[must_use]
pub fn turns(step: &Step, i: usize, (from, ends): (i64, i64), awake: &Awake) -> Vec<Timed> {
    let every = step.turn_every.and_then(millis).unwrap_or(0);
    if every < SLOT_MS {
        return Vec::new();
    }
    // A turn is told to the hour, up: nobody sets a clock for 5:37.
    let due = (1..=MOST_TURNS).map(|k| hour_up(from.saturating_add(every.saturating_mul(k))));
    let mut before = from;
    let mut out = Vec::new();
    for (k, due) in due.take_while(|at| *at < ends).enumerate() {
        let after = before.saturating_add(SLOT_MS);
        if let Some(near) = awake.near(due, after, ends) {
            // What makes way for rest stands on the hour too, where that is nobody's sleep.
            let hour = if near < due { hour_down(near) } else { hour_up(near) };
            let free = (after..ends).contains(&hour) && awake.rest_at(hour).is_none();
            let at = if free { hour } else { near };
            before = at;
            out.push(Timed {
                moved: (at != due).then_some(due),
                ..Timed::of(format!("turn:{i}:{k}"), i, at)
            });
        }
    }
    out
}

fn millis(span: crate::quantity::Span) -> Option<i64> {
    span.base().times(Decimal::from(MINUTE))?.round().to_i64()
}

/// What a plan begins with: slots that a running batch still needs before its next step, and slots it may wait then.
#[must_use]
pub fn lead(next: i64, base: i64) -> usize {
    let left = slot_up(next).saturating_sub(base).max(0);
    usize::try_from(left / SLOT_MS).unwrap_or(usize::MAX)
}
