//! When a batch comes out of its cure: one answer for all who ask.
//!
//! By the clock it is the hour at which nine pieces in ten of the thickest class are through; where somebody chose the
//! recipe's hours, those. Up to the hour, and beyond three days up to the day at the hour at which it went in; never in
//! hours of rest, and never past what raw meat keeps.

use super::cap::{Cap, cap};
use super::course::Course;
use super::fridge::{hours, moment};
use super::model::{Capped, ClassUntil, Through, Until};
use crate::batch::{Batch, By, Piece, counted, kind};
use crate::pantry::MeatKind;
use crate::quantity::{Awake, HOUR, hour_up};
use crate::recipe::{Basis, Do, Method, usual};
use crate::weigh::Settings;

/// A class that is ready so many hours before the last is worth a way to the refrigerator. Judgement.
const WORTH: f64 = 6.0;
/// Beyond this a forecast is said to the day.
const TO_THE_DAY: i64 = 72 * HOUR;
const DAY: i64 = 24 * HOUR;
const QUARTER: i64 = HOUR / 4;

/// The stay of a batch in its cure.
pub struct Stay<'a> {
    course: Course<'a>,
    /// When it comes out.
    pub until: Until,
    /// Milliseconds from the rub until it comes out, whenever it is begun: to the hour, or to the day.
    pub length: i64,
}

/// A class with its clock.
struct Ready {
    row: ClassUntil,
    latest: i64,
    coloured: bool,
}

/// The stay of a batch, from the rub or, before that, as if it went in now; nothing where the cure does not come from
/// outside and the recipe has no step for it.
#[must_use]
pub fn stay<'a>(batch: &'a Batch, now: i64, settings: &'a Settings, awake: &Awake) -> Option<Stay<'a>> {
    let method = batch.recipe.method;
    let by_clock = matches!(method, Method::Rub | Method::CoverBrine);
    if !by_clock && !batch.recipe.steps.iter().any(|s| s.act == Do::Cure) {
        return None;
    }
    let mut course = Course::new(batch, now, settings, None);
    let begun = course.begun;
    let inside: Vec<(u32, &Piece)> = (0..)
        .zip(&batch.pieces)
        .filter(|(at, _)| course.out(*at).is_none())
        .collect();
    let cap = inside
        .iter()
        .filter_map(|(_, piece)| cap(batch, piece, begun))
        .min_by_key(|cap| cap.at);
    let place = Place {
        begun,
        exact: method.is_timed_exactly(),
        awake,
    };
    let classes: Vec<Ready> = inside
        .iter()
        .filter(|_| by_clock)
        .filter_map(|(at, piece)| class(&mut course, *at, piece, &place))
        .collect();
    let needs_thickness: Vec<u32> = inside
        .iter()
        .filter(|(_, piece)| by_clock && piece.thickness.is_none())
        .map(|(at, _)| *at)
        .collect();

    // Hours that the clock stood are added.
    let run = |hours: f64| {
        let hours = if by_clock {
            course.fridge.has_run(hours, course.now)
        } else {
            hours
        };
        moment(begun, hours)
    };
    let own = course.planned.map(run);
    let kinds: Vec<MeatKind> = inside.iter().map(|(_, piece)| kind(piece)).collect();
    let by_use = usual(Do::Cure, &kinds).map(|row| run(hours(row.minutes.saturating_mul(60_000))));
    let given = own
        .map(|at| (at, Basis::Recipe))
        .or_else(|| by_use.map(|at| (at, Basis::Usual)));
    let slowest = classes.iter().max_by_key(|c| c.latest);
    let forecast = slowest.map(|c| (c.latest, Basis::Forecast));
    let all_out = (0..).zip(&batch.pieces).filter_map(|(at, _)| course.out(at)).max();
    let (raw, kind) = match (batch.by, own, forecast) {
        _ if inside.is_empty() && all_out.is_some() => (all_out?, Basis::Forecast),
        (Some(By::Recipe), Some(own), _) => (own, Basis::Recipe),
        (_, _, Some(forecast)) if needs_thickness.is_empty() => forecast,
        // Of a size without a thickness the clock knows nothing: the later of the two.
        (_, _, Some(forecast)) => given.into_iter().chain([forecast]).max_by_key(|(at, _)| *at)?,
        (_, _, None) => given?,
    };
    let at = if kind == Basis::Forecast {
        place.out(raw, cap)
    } else {
        place.given(raw, cap)
    };
    let clock = forecast
        .filter(|_| needs_thickness.is_empty())
        .map(|(latest, _)| place.out(latest, cap));
    let recipe = own.map(|own| place.given(own, cap));
    let differs = clock
        .zip(recipe)
        .is_some_and(|(clock, recipe)| clock.abs_diff(recipe).saturating_mul(10) > recipe.abs_diff(begun));
    let through = slowest
        .filter(|_| kind == Basis::Forecast)
        .map(|c| if c.coloured { Through::Colour } else { Through::Even });
    let rows = classes.into_iter().filter(|_| super::ended(batch).is_none());
    let classes = rows.map(|c| of_class(c.row, at, kind)).collect();
    Some(Stay {
        length: length(raw, kind, cap, begun),
        until: Until {
            last: cap.map(|cap| cap.at),
            at,
            kind,
            through,
            clock,
            recipe,
            differs,
            moved: kind == Basis::Forecast && place.moves(raw),
            capped: place.capped(raw, cap),
            needs_thickness,
            classes,
        },
        course,
    })
}

fn class(course: &mut Course<'_>, at: u32, piece: &Piece, place: &Place) -> Option<Ready> {
    let ready = course.ready(at, piece)?;
    let span = ready.colour.unwrap_or(ready.even);
    let cap = cap(course.batch, piece, course.begun);
    Some(Ready {
        latest: span.latest,
        coloured: ready.colour.is_some(),
        row: ClassUntil {
            class: at,
            of: counted(piece),
            from: span.earliest,
            until: place.out(span.latest, cap),
            first: false,
            capped: place.capped(span.latest, cap),
        },
    })
}

/// No class is in longer than the batch, and by the recipe's hours all are in as long.
fn of_class(mut row: ClassUntil, at: i64, kind: Basis) -> ClassUntil {
    if kind != Basis::Forecast && kind != Basis::Usual {
        row.until = row.until.max(at);
    }
    row.until = row.until.min(at);
    row.from = row.from.min(row.until);
    row.first = hours(at.saturating_sub(row.until)) > WORTH;
    row
}

/// Milliseconds in the cure, of a forecast to the hour or to the day; not past the cap.
fn length(raw: i64, kind: Basis, cap: Option<Cap>, begun: i64) -> i64 {
    let step = match kind {
        Basis::Forecast if raw.saturating_sub(begun) > TO_THE_DAY => DAY,
        Basis::Forecast => HOUR,
        _ => QUARTER,
    };
    let up = up_to(raw.saturating_sub(begun), step);
    cap.map_or(up, |cap| up.min(cap.at.saturating_sub(begun)))
}

fn up_to(at: i64, step: i64) -> i64 {
    at.saturating_add(step.saturating_sub(1))
        .div_euclid(step)
        .saturating_mul(step)
}

/// How a moment becomes an hour to be told.
struct Place<'a> {
    begun: i64,
    exact: bool,
    awake: &'a Awake,
}

impl Place<'_> {
    /// When it comes out by hours that were given: as they are, up to the quarter, but for sleep.
    fn given(&self, raw: i64, cap: Option<Cap>) -> i64 {
        let last = cap.map_or(i64::MAX, |cap| cap.at);
        if self.exact {
            return raw.min(last);
        }
        let up = up_to(raw, QUARTER);
        let at = if self.awake.rest_at(up).is_some() {
            self.awake.hour_from(up)
        } else {
            up
        };
        if at > last {
            self.awake.hour_until(last).max(self.begun)
        } else {
            at
        }
    }

    /// The hour at which what is ready at `raw` comes out.
    fn out(&self, raw: i64, cap: Option<Cap>) -> i64 {
        let last = cap.map_or(i64::MAX, |cap| cap.at);
        if self.exact {
            return raw.min(last);
        }
        let at = self.awake.hour_from(self.ready(raw));
        if at > last {
            self.awake.hour_until(last).max(self.begun)
        } else {
            at
        }
    }

    /// The hour of `raw`, or the day beyond three, whoever sleeps then.
    fn ready(&self, raw: i64) -> i64 {
        if raw.saturating_sub(self.begun) > TO_THE_DAY {
            let first = hour_up(self.begun);
            first.saturating_add(up_to(raw.saturating_sub(first), DAY))
        } else {
            hour_up(raw)
        }
    }

    /// What is ready at `raw` is ready in hours of rest.
    fn moves(&self, raw: i64) -> bool {
        !self.exact && self.awake.rest_at(self.ready(raw)).is_some()
    }

    fn capped(&self, raw: i64, cap: Option<Cap>) -> Option<Capped> {
        let cap = cap.filter(|cap| raw > cap.at)?;
        Some(Capped {
            last: cap.at,
            wants: self.out(raw, None),
            source: cap.source,
            status: cap.status,
        })
    }
}

impl Stay<'_> {
    /// Whether the clock stood at a moment that has been.
    #[must_use]
    pub fn stands(&self, at: i64) -> bool {
        let hour = hours(at.saturating_sub(self.course.begun));
        hour < self.course.now && self.course.fridge.stands(hour)
    }
}

impl Until {
    /// The same with the batch out at another hour, which others had to make way for.
    #[must_use]
    pub fn moved_to(mut self, at: i64) -> Self {
        for class in &mut self.classes {
            if class.until == self.at {
                class.until = at;
            }
            class.first = hours(at.saturating_sub(class.until)) > WORTH;
        }
        self.at = at;
        self
    }
}
