//! What the clock steers: when each size class may be rinsed, and when the cure as a whole is over.

use super::course::{Course, draw, name};
use super::fridge::{hours, moment};
use super::model::{Span3, Window};
use super::say::span;
use crate::batch::Batch;
use crate::quantity::System;
use crate::recipe::Method;
use crate::weigh::Settings;

/// A class that is ready so many hours before the slowest is worth a way to the refrigerator. Judgement.
pub(super) const WORTH: f64 = 6.0;
/// Hours of the longest cure there is a published time for: 15 lb in sweet pickle, 60 days (USDA Farmers' Bulletin
/// 2265). What is not likely through by then is not waited for.
const LONGEST: f64 = 60.0 * 24.0;
const HALF_HOUR: i64 = 1_800_000;

/// The end of a cure by the clock.
pub struct Stay<'a> {
    course: Course<'a>,
    /// When the batch is to be rinsed, in milliseconds since 1970.
    pub ends: i64,
    /// One for each size class that is still in.
    pub windows: Vec<Window>,
    /// What the clock says of it, in a sentence or two.
    pub says: String,
    /// Classes that come out before the rest.
    pub draws: Vec<Draw>,
}

/// A size class that comes out before the rest.
pub struct Draw {
    /// Id for its tick: `draw:2`.
    pub id: String,
    /// `4 Teal`.
    pub name: String,
    /// When it is likely through, in milliseconds since 1970.
    pub due: i64,
    /// What the clock says of it.
    pub says: String,
}

/// When the cure of a batch that is rubbed in is over. The recipe's time, later by the hours the clock stood, and not
/// before the slowest class is likely through; nothing where the cure does not come from outside, or by pick-up, where
/// a longer stay is a higher dose, and where no class has a thickness.
#[must_use]
pub fn stay<'a>(batch: &'a Batch, now: i64, settings: &'a Settings) -> Option<Stay<'a>> {
    batch.tick("rub")?;
    if !matches!(batch.recipe.method, Method::Rub | Method::CoverBrine) {
        return None;
    }
    let mut course = Course::new(batch, now, settings, None);
    let (begun, units) = (course.begun, course.units);
    let recipe = moment(begun, course.planned.unwrap_or(0.0));
    let planned = moment(begun, course.fridge.has_run(course.planned.unwrap_or(0.0), course.now));
    let mut windows = Vec::new();
    let mut draws = Vec::new();
    let mut slowest: Option<(i64, String)> = None;
    let mut never = String::new();
    for (at, piece) in (0_u32..).zip(&batch.pieces) {
        let Some(ready) = course.ready(at, piece).filter(|_| course.out(at).is_none()) else {
            continue;
        };
        let (name, through) = (name(piece), ready.colour.unwrap_or(ready.even));
        windows.push(Window {
            at,
            name: name.clone(),
            earliest: through.likely,
            surely: through.latest,
            latest: ready.even.latest.max(recipe),
        });
        if hours(through.likely.saturating_sub(begun)) > LONGEST {
            never = format!(
                " {name}: not likely through within 60 days, the longest time published (USDA FB 2265), so it is not waited for. Cut it thinner or off the bone, or pump a measured pickle."
            );
            continue;
        }
        let says = by_clock(&name, ready.colour.is_some(), through, begun, units);
        if slowest.as_ref().is_none_or(|(late, _)| *late < through.likely) {
            slowest = Some((through.likely, says.clone()));
        }
        draws.push(Draw {
            id: draw(at),
            name,
            due: round(through.likely),
            says,
        });
    }
    let (likely, mut says) = slowest.unwrap_or_default();
    draws.retain(|d| hours(likely.saturating_sub(d.due)) > WORTH);
    if windows.is_empty() && planned == recipe {
        return None;
    }
    if likely > planned {
        says.push_str(
            " That is later than the recipe has it: a weighed dose only evens out, so it waits for the clock.",
        );
    } else if planned > recipe {
        says.push_str(" The hours that stood are added.");
    }
    says.push_str(&never);
    Some(Stay {
        course,
        ends: planned.max(round(likely)),
        windows,
        says: says.trim_start().to_owned(),
        draws,
    })
}

/// When a class is through, in hours after the rub: a text knows no time zone.
fn by_clock(name: &str, coloured: bool, ready: Span3, begun: i64, units: System) -> String {
    let [early, likely, late] =
        [ready.earliest, ready.likely, ready.latest].map(|at| span(hours(at.saturating_sub(begun)).round(), units));
    let through = if coloured { "coloured through" } else { "evenly salted" };
    format!(
        "By the cure clock, {name}: {through} likely {likely} after the rub, {early} at the earliest, {late} at the latest."
    )
}

/// Up to the half-hour: a minute would say more than is known.
const fn round(at: i64) -> i64 {
    let over = at.rem_euclid(HALF_HOUR);
    if over == 0 {
        at
    } else {
        at.saturating_add(HALF_HOUR.saturating_sub(over))
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
