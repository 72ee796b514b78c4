//! The clock of a batch.

use super::curve::{Curve, PLACES, soaked};
use super::fridge::{Fridge, hours, moment};
use super::laid::{COLOUR, Laid, colour_share, ended, goal, span, usual};
use super::learn::Speed;
use super::model::{AskClock, Class, CureClock, Learnt, Note, Point, Rule, Soak, Span3};
use crate::batch::{Batch, Piece, Seen, kind, name_of};
use crate::dose::Mark;
use crate::quantity::{Length, Problem, System};
use crate::recipe::Method;
use crate::weigh::{Finding, Settings};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// Everything that holds for the whole batch.
struct Course<'a> {
    batch: &'a Batch,
    fridge: Fridge,
    begun: i64,
    /// Hours from the rub until now, or until the cure came off.
    now: f64,
    /// Hours from the rub until the planned rinse.
    planned: Option<f64>,
    units: System,
    soak_to: Option<f64>,
    learned: &'a [Finding],
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

/// For the plan: when the slowest class is through, in hours after the rub; nothing where that is not known.
#[must_use]
pub fn through(batch: &Batch, now: i64, settings: &Settings) -> Option<String> {
    let begun = batch.tick("rub")?.at;
    let mut course = Course::new(batch, now, settings, None);
    let classes = (0_u32..)
        .zip(&batch.pieces)
        .filter_map(|(at, piece)| course.class(at, piece));
    let slow = classes.max_by_key(|c| c.colour.unwrap_or(c.even).likely)?;
    let ready = slow.colour.unwrap_or(slow.even);
    let [early, likely, late] = [ready.earliest, ready.likely, ready.latest]
        .map(|at| span(hours(at.saturating_sub(begun)).round(), settings.units));
    Some(format!(
        "By the cure clock {} is {} {likely} after the rub, {early} at the earliest, {late} at the latest.",
        slow.name,
        if slow.colour.is_some() {
            "coloured through"
        } else {
            "evenly salted"
        }
    ))
}

impl<'a> Course<'a> {
    fn new(batch: &'a Batch, now: i64, settings: &'a Settings, soak_to: Option<f64>) -> Self {
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

    fn class(&mut self, at: u32, piece: &Piece) -> Option<Class> {
        let laid = Laid::of(self.batch, piece)?;
        let index = self.curve(&laid);
        let curve = self.curves.get(index)?;
        let [slow, likely, fast] = Speed::learned(kind(piece), self.learned).three();
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
        let goal = goal(&self.batch.recipe);
        let thickness = piece.thickness?;
        let (word, mark) = word(moment(self.begun, self.now), colour, even);
        Some(Class {
            at,
            name: format!("{} {}", piece.count, name_of(piece)),
            thickness: thickness.show(self.units).text,
            colour,
            even,
            word: word.to_owned(),
            mark,
            profile: self.profile(&laid, curve, [slow, likely, fast], thickness, goal),
            goal: goal.map(|g| percent(g, "%")),
            rules: self.rules(&laid, curve, likely, piece, thickness),
            soak: self.soak(&laid, goal, [fast, slow]),
        })
    }

    /// From surface to surface; with skin on, from the open side to the skin.
    fn profile(&self, laid: &Laid, curve: &Curve, speeds: [f64; 3], thick: Length, goal: Option<f64>) -> Vec<Point> {
        let counted = self.fridge.counted(self.now, self.now);
        let later = self
            .fridge
            .counted(self.planned.unwrap_or(self.now).max(self.now), self.now);
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

    fn fridge_notes(&self, runs: bool) -> Vec<Note> {
        let (warm, stood) = self.fridge.warm_and_stood(self.now);
        let mut notes = Vec::new();
        if warm > 0.0 {
            notes.push(note(
                Mark::Stop,
                "It was too warm",
                format!(
                    "{} above 4 °C (40 °F). Salt ran faster then, and so did what spoils meat: more cure does not undo it. Raw meat that stood above 4 °C for more than 2 hours may not be safe: if in doubt, throw it out.",
                    span(warm, self.units)
                ),
            ));
        }
        if stood > 0.0 {
            notes.push(note(
                Mark::Care,
                "The clock stood",
                format!(
                    "{} frozen or below 1 °C (34 °F) do not count. The times below have moved by as much.",
                    span(stood, self.units)
                ),
            ));
        }
        if self.batch.fridge.iter().any(|r| r.what == Seen::PowerOff) {
            notes.push(note(
                Mark::Care,
                "The power was off",
                "The clock goes by what was read, and nobody knows what was not. Read the thermometer, and the meat's own warmth, when it is back, and type both the highest and the present.".into(),
            ));
        }
        if runs && self.batch.fridge.is_empty() {
            notes.push(note(
                Mark::Ask,
                "No reading yet",
                "The times are for a refrigerator as in the recipe, or at 3 °C (38 °F). Put a thermometer in it."
                    .into(),
            ));
        }
        notes
    }

    /// Date, order of the classes, method.
    fn notes(&self, classes: &[Class], ended: bool) -> Vec<Note> {
        let mut notes = Vec::new();
        if self.batch.recipe.method == Method::PickUp {
            let says = "By pick-up, more cure goes in with every hour. Take it out when the recipe says, coloured through or not, and never leave it in longer for the colour.";
            notes.push(note(Mark::Care, "The stay sets the dose", says.into()));
            return notes;
        }
        if matches!(
            self.batch.recipe.method,
            Method::Ground | Method::Pumped | Method::PumpedAndCovered
        ) {
            let says =
                "Mixed or pumped in, the cure need not find its way from outside. Give it the time of the recipe.";
            notes.push(note(Mark::Ok, "In the middle from the start", says.into()));
            return notes;
        }
        let thick = self.batch.pieces.iter().any(|p| p.thickness.is_none());
        if thick {
            let says = "A size class without its thickest part has no clock. Measure it under Pieces.";
            notes.push(note(Mark::Ask, "Thickness missing", says.into()));
        }
        let ready = |c: &Class| c.colour.unwrap_or(c.even);
        let slowest = classes.iter().max_by_key(|c| ready(c).likely);
        let quickest = classes.iter().min_by_key(|c| ready(c).likely);
        if let (Some(slow), Some(quick)) = (slowest, quickest)
            && hours(ready(slow).likely.saturating_sub(ready(quick).likely)) > 6.0
        {
            let says = format!(
                "{} may come out {} before {}. Bags of their own let them.",
                quick.name,
                span(
                    hours(ready(slow).likely.saturating_sub(ready(quick).likely)),
                    self.units
                ),
                slow.name
            );
            notes.push(note(Mark::Ok, "Small pieces out first", says));
        }
        if let (Some(slow), Some(planned), false) = (slowest, self.planned, ended) {
            notes.extend(self.date(slow, planned));
        }
        notes
    }

    /// Whether the date of the recipe can be met by the slowest class.
    fn date(&self, slow: &Class, planned: f64) -> Option<Note> {
        let ready = slow.colour.unwrap_or(slow.even);
        let rinse = moment(self.begun, planned);
        if rinse >= ready.latest {
            let long = hours(moment(self.begun, self.now).saturating_sub(rinse));
            return (long > 24.0).then(|| {
                let says = "A weighed dose only evens out, it gets no saltier. How long it keeps is another question: cold all the time, and smell it.";
                note(Mark::Ok, "Longer than planned", says.into())
            });
        }
        let piece = self.batch.pieces.get(slow.at as usize)?;
        let thick = piece.thickness?.base().to_f64()?;
        // Cut thinner it is a flat piece, whatever it was: the thickness whose slab is through by the date.
        let laid = Laid::of(self.batch, piece)?;
        let colour = colour_share(&self.batch.recipe);
        let fo = Curve::new(0.0, laid.enters).when(0.0, colour.unwrap_or(0.9));
        let [_, d, _] = Speed::learned(kind(piece), self.learned).three();
        let factor = if colour.is_some() { COLOUR } else { 1.0 };
        let reach = (self.fridge.counted(planned, self.now) * 3600.0 * d * factor * laid.faster / fo).sqrt();
        let thinner = reach * if laid.one_sided { 1000.0 } else { 2000.0 };
        let cut = Length::new(Decimal::from(thinner.floor().to_i64()?))
            .ok()?
            .show(self.units)
            .text;
        let word = if rinse >= ready.likely {
            "The planned rinse may be early"
        } else {
            "The planned rinse is early"
        };
        let tail = if thinner < thick - 1.0 {
            format!(
                " If the date stands: pieces no thicker than {cut}, or pump a measured pickle. Never more cure to go faster."
            )
        } else {
            " Never more cure to go faster.".to_owned()
        };
        Some(note(
            Mark::Care,
            word,
            format!(
                "{} may not be through by then. Leave it in the cold longer: a weighed dose only evens out.{tail}",
                slow.name
            ),
        ))
    }

    fn learnt(&self) -> Vec<Learnt> {
        let mut kinds: Vec<&str> = self.batch.pieces.iter().map(kind).collect();
        kinds.sort_unstable();
        kinds.dedup();
        let one = |kind: &str| {
            let cuts = self.learned.iter().filter(|f| f.kind == kind).count();
            let (table, now) = (Speed::table(kind), Speed::learned(kind, self.learned));
            let faster = (now.centre - table.centre).exp() * 100.0;
            let spread = (now.spread / table.spread * 100.0).round();
            (cuts > 0).then(|| Learnt {
                kind: kind.to_owned(),
                cuts: u32::try_from(cuts).unwrap_or(u32::MAX),
                says: format!(
                    "Salt goes into it at {} of the usual speed; the range of the times is {} of what it was.",
                    percent(faster.round(), "%"),
                    percent(spread, "%")
                ),
            })
        };
        kinds.into_iter().filter_map(one).collect()
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

fn note(mark: Mark, word: &str, says: String) -> Note {
    Note {
        mark,
        word: word.to_owned(),
        says,
    }
}

/// A thousand times as a whole number.
#[allow(clippy::cast_possible_truncation, reason = "held within ten million")]
fn milli(value: f64) -> i32 {
    (value * 1000.0).clamp(-1e7, 1e7).round() as i32
}

/// One decimal below ten, none above.
fn percent(value: f64, unit: &str) -> String {
    let places = u32::from(value < 10.0);
    let number = Decimal::new(i64::from(milli(value)), 3).round_dp(places).normalize();
    format!("{number} {unit}")
}
