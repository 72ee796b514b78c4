//! The clock of a batch: each size class with its times, its profile, its rules of thumb, its soaking.

use super::course::Course;
use super::facts::{Middle, Thumb};
use super::fridge::{hours, moment};
use super::laid::{Laid, ended, goal};
use super::learn::learnt;
use super::model::{AskClock, Class, ColdAsked, CureClock, Point, Rule, Soak, Span3, Until};
use super::say::{milli, percent, span};
use crate::batch::{Piece, counted, odd_cold};
use crate::dose::Mark;
use crate::quantity::{Length, Problem};
use crate::transport::{Decay, PLACES};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// When colour and salt are through, class by class; `until` is when the batch comes out by its course.
///
/// # Errors
/// Problems of the batch and of the settings.
pub fn clock(ask: &AskClock, until: Option<Until>) -> Result<CureClock, Vec<Problem>> {
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
    if let Some(until) = &until {
        course.planned = Some(hours(until.at.saturating_sub(course.begun)));
    }
    let classes: Vec<Class> = (0_u32..)
        .zip(&batch.pieces)
        .filter_map(|(at, piece)| course.class(at, piece))
        .collect();
    let mut notes = course.fridge_notes(begun.is_some());
    let early = ended.is_some() && !super::through(batch, ask.now, &ask.settings);
    notes.extend(course.notes(&classes, ended.is_some(), early));
    Ok(CureClock {
        begun,
        planned: course.planned.map(|h| moment(course.begun, h)),
        ended,
        until,
        asked: odd_cold(batch)
            .into_iter()
            .filter_map(|odd| ColdAsked::of(batch, odd, ask.settings.units))
            .collect(),
        notes,
        learnt: learnt(batch, course.learned),
        classes,
    })
}

impl Course<'_> {
    fn class(&mut self, at: u32, piece: &Piece) -> Option<Class> {
        let ready = self.ready(at, piece)?;
        let (now, speeds) = (self.now_of(at), ready.speeds);
        let (_, curve) = self.curves.get(ready.curve)?;
        let goal = goal(&self.batch.recipe);
        let thickness = piece.thickness?;
        let (state, mark) = middle(moment(self.begun, now), ready.colour, ready.even);
        let [slow, likely, fast] = speeds;
        Some(Class {
            at,
            of: counted(piece),
            thickness: thickness.show(self.units).text,
            colour: ready.colour,
            even: ready.even,
            out: self.out(at),
            state,
            mark,
            profile: self.profile(&ready.laid, curve, speeds, thickness, goal, now),
            goal: goal.map(percent),
            rules: self.rules(&ready.laid, curve, likely, piece, thickness),
            soak: self.soak(&ready.laid, goal, [fast, slow]),
        })
    }

    /// From surface to surface; with skin on, from the open side to the skin.
    fn profile(
        &self,
        laid: &Laid,
        curve: &Decay,
        speeds: [f64; 3],
        thick: Length,
        goal: Option<f64>,
        now: f64,
    ) -> Vec<Point> {
        let counted = self.fridge.counted(now, now);
        let later = self.fridge.counted(self.planned.unwrap_or(now).max(now), now);
        let [_, likely, _] = speeds;
        let now = speeds.map(|d| curve.at(laid.fo(counted, d)));
        let rinse = curve.at(laid.fo(later, likely));
        let deep = if laid.one_sided { 1000.0 } else { 500.0 };
        let text = |share: f64| percent(share * goal.unwrap_or(100.0));
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
    fn rules(&self, laid: &Laid, curve: &Decay, d: f64, piece: &Piece, thick: Length) -> Vec<Rule> {
        let inches = thick.base().to_f64().unwrap_or_default() / 25.4;
        let rule = |rule: Thumb, days: f64| Rule {
            rule,
            gives: span(days * 24.0, self.units),
            centre: milli(curve.centre(laid.fo(days * 24.0, d)) / 10.0),
        };
        let mut rules = vec![
            rule(Thumb::SevenDaysAnInch, 7.0 * inches),
            rule(Thumb::QuarterInchADay, inches * 2.0),
        ];
        if let Some(one) = piece.one().and_then(|grams| grams.to_f64()) {
            rules.push(rule(Thumb::TwoDaysAPound, 2.0 * one / 453.592_37));
        }
        rules
    }

    fn soak(&self, laid: &Laid, goal: Option<f64>, speeds: [f64; 2]) -> Option<Soak> {
        let share = self.soak_to? / goal?;
        if !(0.05..1.0).contains(&share) {
            return None;
        }
        let times = |ratio: Option<f64>| {
            let fo = laid.soaked(ratio, share)?;
            Some(speeds.map(|d| span(laid.hours(fo, d), self.units)))
        };
        // Three times the weight of water, over the 0.74 of the meat that is water.
        Some(Soak {
            changed: times(None)?,
            still: times(Some(4.0)),
        })
    }
}

/// How far the middle has come by now.
fn middle(now: i64, colour: Option<Span3>, even: Span3) -> (Middle, Mark) {
    let ready = colour.unwrap_or(even);
    if now >= even.latest {
        (Middle::Even, Mark::Ok)
    } else if now >= ready.latest {
        (
            if colour.is_some() {
                Middle::Coloured
            } else {
                Middle::Even
            },
            Mark::Ok,
        )
    } else if now >= ready.likely {
        (Middle::Likely, Mark::Ask)
    } else {
        (Middle::NotYet, Mark::Ask)
    }
}
