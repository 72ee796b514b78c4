//! The clock of a batch.

use super::curve::{Curve, PLACES, soaked};
use super::fridge::{Fridge, hours, moment};
use super::laid::{COLOUR, Laid, colour_share, ended, goal, span, usual};
use super::learn::Speed;
use super::model::{AskClock, Class, CureClock, Point, Rule, Soak, Span3};
use crate::batch::{Batch, Piece, kind, name_of};
use crate::dose::Mark;
use crate::quantity::{Length, Problem, System};
use crate::weigh::{Finding, Settings};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// Everything that holds for the whole batch.
pub(super) struct Course<'a> {
    pub batch: &'a Batch,
    pub fridge: Fridge,
    pub begun: i64,
    /// Hours from the rub until now, or until the cure came off.
    pub now: f64,
    /// Hours from the rub until the planned rinse.
    pub planned: Option<f64>,
    pub units: System,
    soak_to: Option<f64>,
    pub learned: &'a [Finding],
    curves: Vec<Curve>,
}

/// When colour and salt are through, class by class.
///
/// # Errors
/// Problems of the batch and of the settings.
pub fn clock(ask: &AskClock) -> Result<CureClock, Vec<Problem>> {
    let batch = &ask.batch;
    let mut problems: Vec<Problem> = batch.problems().into_iter().map(|p| p.at("batch")).collect();
    problems.extend(ask.settings.problems());
    if !problems.is_empty() {
        return Err(problems);
    }
    let begun = batch.tick("rub").map(|t| t.at);
    let ended = ended(batch);
    let soak_to = ask.soak_to.and_then(|f| f.base().to_f64());
    let mut course = Course::new(batch, ask.now, &ask.settings, soak_to);
    let classes: Vec<Class> = (0_u32..)
        .zip(&batch.pieces)
        .filter_map(|(at, piece)| course.class(at, piece))
        .collect();
    let mut notes = course.fridge_notes(begun.is_some());
    notes.extend(course.notes(&classes, ended.is_some()));
    Ok(CureClock {
        begun,
        planned: course.planned.map(|h| moment(course.begun, h)),
        ended,
        notes,
        learnt: course.learnt(),
        classes,
    })
}

/// When one size class is through, and what that was reckoned by.
pub(super) struct Ready {
    laid: Laid,
    /// Its place among the curves.
    curve: usize,
    /// Slow, likely, fast, in m²/s.
    speeds: [f64; 3],
    pub colour: Option<Span3>,
    pub even: Span3,
    /// Hours from the rub until now, until the cure came off, or until this class was drawn.
    now: f64,
}

/// The tick of a size class that is taken out before the others.
pub(super) fn draw(at: u32) -> String {
    format!("draw:{at}")
}

impl<'a> Course<'a> {
    pub fn new(batch: &'a Batch, now: i64, settings: &'a Settings, soak_to: Option<f64>) -> Self {
        let begun = batch.tick("rub").map(|t| t.at);
        let from = begun.unwrap_or(now);
        let readings = if begun.is_some() { batch.fridge.as_slice() } else { &[] };
        let stay = batch.recipe.stay().and_then(|minutes| minutes.to_f64());
        Self {
            batch,
            fridge: Fridge::new(readings, from, usual(&batch.recipe)),
            begun: from,
            now: hours(ended(batch).unwrap_or(now).min(now).saturating_sub(from)).max(0.0),
            planned: stay.map(|minutes| minutes / 60.0),
            units: settings.units,
            soak_to,
            learned: &settings.learned,
            curves: Vec::new(),
        }
    }

    /// The curve of a shape and boundary, made once.
    fn curve(&mut self, laid: &Laid) -> usize {
        let known = self
            .curves
            .iter()
            .position(|c| c.enters == laid.enters && (c.exponent - laid.exponent).abs() < 1e-9);
        known.unwrap_or_else(|| {
            self.curves.push(Curve::new(laid.exponent, laid.enters));
            self.curves.len().saturating_sub(1)
        })
    }

    /// When the size class at this place is through; nothing where it has no clock.
    pub fn ready(&mut self, at: u32, piece: &Piece) -> Option<Ready> {
        let laid = Laid::of(self.batch, piece)?;
        let index = self.curve(&laid);
        let curve = self.curves.get(index)?;
        let drawn = self
            .batch
            .tick(&draw(at))
            .map(|t| hours(t.at.saturating_sub(self.begun)));
        let now = drawn.unwrap_or(self.now).clamp(0.0, self.now);
        let speeds = Speed::learned(kind(piece), self.learned).three();
        let [slow, likely, fast] = speeds;
        let by = |fo: f64, factor: f64| {
            let when = |d: f64| moment(self.begun, self.fridge.when(laid.hours(fo, d * factor), self.now));
            Span3 {
                earliest: when(fast),
                likely: when(likely),
                latest: when(slow),
            }
        };
        let colour = colour_share(&self.batch.recipe).map(|share| by(curve.when(0.0, share), COLOUR));
        let even = by(curve.when(0.0, 0.9), 1.0);
        Some(Ready {
            laid,
            curve: index,
            speeds,
            colour,
            even,
            now,
        })
    }

    fn class(&mut self, at: u32, piece: &Piece) -> Option<Class> {
        let Ready {
            laid,
            curve,
            speeds,
            colour,
            even,
            now,
        } = self.ready(at, piece)?;
        let [slow, likely, fast] = speeds;
        let curve = self.curves.get(curve)?;
        let goal = goal(&self.batch.recipe);
        let thickness = piece.thickness?;
        let (word, mark) = word(moment(self.begun, now), colour, even);
        Some(Class {
            at,
            name: format!("{} {}", piece.count, name_of(piece)),
            thickness: thickness.show(self.units).text,
            colour,
            even,
            word: word.to_owned(),
            mark,
            profile: self.profile(&laid, curve, (speeds, now), thickness, goal),
            goal: goal.map(|g| percent(g, "%")),
            rules: self.rules(&laid, curve, likely, piece, thickness),
            soak: self.soak(&laid, goal, [fast, slow]),
        })
    }

    /// From surface to surface; with skin on, from the open side to the skin.
    fn profile(
        &self,
        laid: &Laid,
        curve: &Curve,
        (speeds, now): ([f64; 3], f64),
        thick: Length,
        goal: Option<f64>,
    ) -> Vec<Point> {
        let counted = self.fridge.counted(now, self.now);
        let later = self.fridge.counted(self.planned.unwrap_or(now).max(now), self.now);
        let [_, likely, _] = speeds;
        let now = speeds.map(|d| curve.at(laid.fo(counted, d)));
        let rinse = curve.at(laid.fo(later, likely));
        let deep = if laid.one_sided { 1000.0 } else { 500.0 };
        let text = |share: f64| goal.map_or_else(|| percent(share * 100.0, "% of final"), |g| percent(share * g, "%"));
        let point = |n: usize| {
            let place = n.to_f64().unwrap_or_default() / 8.0;
            let at = (1.0 - place) * deep;
            let of = |row: &[f64; PLACES]| row.get(n).copied().unwrap_or_default();
            let [_, seen, _] = now.each_ref().map(of);
            let depth = thick
                .base()
                .checked_mul(Decimal::new(milli(at / 1000.0).into(), 3))
                .unwrap_or_default();
            Point {
                at: milli(at / 1000.0),
                depth: Length::new(depth).map(|d| d.show(self.units).text).unwrap_or_default(),
                now: now.each_ref().map(|row| milli(of(row))),
                rinse: milli(of(&rinse)),
                now_text: text(seen),
                rinse_text: text(of(&rinse)),
            }
        };
        (0..PLACES).rev().map(point).collect()
    }

    /// Rules of thumb as they are said, and what this clock says of each. Kentucky, Rentfrow 2013, and Clemson HGIC
    /// 3603, published; a quarter-inch a day from each side is common practice, no source.
    fn rules(&self, laid: &Laid, curve: &Curve, d: f64, piece: &Piece, thick: Length) -> Vec<Rule> {
        let inches = thick.base().to_f64().unwrap_or_default() / 25.4;
        let rule = |name: &str, days: f64| Rule {
            name: name.to_owned(),
            gives: span(days * 24.0, self.units),
            centre: milli(curve.centre(laid.fo(days * 24.0, d)) / 10.0),
        };
        let mut rules = vec![
            rule("7 days per inch", 7.0 * inches),
            rule("a quarter-inch a day", inches * 2.0),
        ];
        if let Some(all) = piece.weight.and_then(|w| w.base().to_f64()) {
            let each = if piece.each {
                all
            } else {
                all / f64::from(piece.count.max(1))
            };
            rules.push(rule("2 days per lb", 2.0 * each / 453.592_37));
        }
        rules
    }

    fn soak(&self, laid: &Laid, goal: Option<f64>, speeds: [f64; 2]) -> Option<Soak> {
        let share = self.soak_to? / goal?;
        if !(0.05..1.0).contains(&share) {
            return None;
        }
        let times = |ratio: Option<f64>| {
            let fo = soaked(laid.exponent, ratio, share)?;
            let [fast, slow] = speeds.map(|d| span(laid.hours(fo, d), self.units));
            Some(format!("{fast} to {slow}"))
        };
        // Three times the weight of water, over the 0.74 of the meat that is water.
        Some(Soak {
            changed: times(None)?,
            still: times(Some(4.0)),
        })
    }
}

/// The word for now.
fn word(now: i64, colour: Option<Span3>, even: Span3) -> (&'static str, Mark) {
    let ready = colour.unwrap_or(even);
    if now >= even.latest {
        ("Even", Mark::Ok)
    } else if now >= ready.latest {
        (if colour.is_some() { "Coloured" } else { "Even" }, Mark::Ok)
    } else if now >= ready.likely {
        ("Likely", Mark::Ask)
    } else {
        ("Not yet", Mark::Ask)
    }
}

/// A thousand times as a whole number.
#[allow(clippy::cast_possible_truncation, reason = "held within ten million")]
fn milli(value: f64) -> i32 {
    (value * 1000.0).clamp(-1e7, 1e7).round() as i32
}

/// One decimal below ten, none above.
pub(super) fn percent(value: f64, unit: &str) -> String {
    let places = u32::from(value < 10.0);
    let number = Decimal::new(i64::from(milli(value)), 3).round_dp(places).normalize();
    format!("{number} {unit}")
}
