//! The weigh-out of a batch, put together.

use super::coarse;
use super::lines::{Rounded, draw, on_scale, remarks, round};
use super::model::{Fact, Todo, WeighSheet};
use super::plan::{self, Plan, plan};
use super::settings::Settings;
use crate::batch::{Batch, Green, green, kinds};
use crate::dose::{self, Agent, Case, Dosed, Measured, Profile, Put, Verdict};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Figure, Mass, Problem, Range, plain};
use crate::recipe::Method;
use rust_decimal::{Decimal, dec};

/// What the sheet and its verdict are worked from.
struct Work<'a> {
    batch: &'a Batch,
    settings: &'a Settings,
    profile: &'a Profile,
    step: Decimal,
    green: Green,
    parts: Option<u32>,
    plan: Plan,
    rounded: Rounded,
    measured: Option<Measured>,
}

/// The weigh-out of a batch.
///
/// # Errors
/// Every problem of the batch and the settings; [`Code::Missing`] while there are no pieces.
pub fn sheet(batch: &Batch, settings: &Settings) -> Result<WeighSheet, Vec<Problem>> {
    let work = Work::new(batch, settings)?;
    work.sheet()
}

/// The verdict alone, for lists over many batches.
///
/// # Errors
/// As [`sheet`].
pub fn verdict(batch: &Batch, settings: &Settings) -> Result<Verdict, Vec<Problem>> {
    Work::new(batch, settings)?.verdict()
}

fn lost() -> Vec<Problem> {
    vec![Problem::new(
        Code::TooLarge,
        "These weights are too large to reckon exactly. Check the pieces and the shares.",
    )]
}

impl<'a> Work<'a> {
    fn new(batch: &'a Batch, settings: &'a Settings) -> Result<Self, Vec<Problem>> {
        let mut problems: Vec<Problem> = settings.problems();
        problems.extend(batch.problems().into_iter().map(|p| p.at("batch")));
        let profile = dose::profile(&settings.profile);
        let (Some(profile), true) = (profile, problems.is_empty()) else {
            return Err(problems);
        };
        let step = settings.scale_step.base();
        let green = green(&batch.pieces).map_err(|p| vec![p.at("batch")])?;
        if batch.pieces.is_empty() {
            return Err(vec![
                Problem::new(
                    Code::Missing,
                    "Nothing is on the board yet. Add the pieces first: how many, and what they weigh.",
                )
                .at("pieces"),
            ]);
        }
        let typical = green.grams.typical;
        let wants_premix = batch.premix && !batch.recipe.cures.is_empty() && batch.put_in.is_none();
        let parts = if wants_premix {
            plan::premix_parts(&batch.recipe, typical, green.count)
        } else {
            None
        };
        let measured = match &batch.put_in {
            None => None,
            Some(put) => {
                let agent = put.nitrite.map(|n| Agent {
                    nitrite: n.base(),
                    nitrate: put.nitrate.map_or(Decimal::ZERO, |n| n.base()),
                });
                Some(dose::measured(&put.amount, agent, step).map_err(|p| vec![p.at("batch.put_in.amount")])?)
            }
        };
        let already = measured.as_ref().map(|m| {
            m.agent
                .and_then(Agent::salt)
                .and_then(|s| s.times(m.weight.typical))
                .unwrap_or_default()
        });
        let plan = plan(&batch.recipe, typical, green.count, parts).map_err(|p| vec![p.at("batch.recipe")])?;
        let agents = plan::agents(&batch.recipe, parts).ok_or_else(lost)?;
        let rounded = round(batch, &plan, agents, step, already).ok_or_else(lost)?;
        Ok(Self {
            batch,
            settings,
            profile,
            step,
            green,
            parts,
            plan,
            rounded,
            measured,
        })
    }

    /// Green weight with the scale's half-step for each class that was weighed.
    fn green_range(&self) -> Option<Range> {
        let classes = u32::try_from(self.batch.pieces.len()).ok()?;
        let half = self.step.over(Decimal::TWO)?.times(Decimal::from(classes))?;
        let grams = self.green.grams;
        // Never to nought: the dose is counted on it.
        let low = grams.low.less(half)?.max(grams.low.over(Decimal::TWO)?);
        Some(Range {
            low,
            typical: grams.typical,
            high: grams.high.plus(half)?,
        })
    }

    fn put(&self) -> Option<Put> {
        if let Some(measured) = &self.measured {
            return Some(Put::Measured(measured.clone()));
        }
        if self.batch.recipe.cures.is_empty() {
            return Some(Put::NoCure);
        }
        let spread = match self.parts {
            Some(parts) => coarse::making(coarse::premix_grams(&self.plan)?, parts, self.step)?.2,
            None => Decimal::ZERO,
        };
        let dosed = self
            .rounded
            .agents
            .iter()
            .zip(&self.rounded.cures)
            .map(|((agent, aim), grams)| {
                Some(Dosed {
                    agent: *agent,
                    weight: Range::weighed(*grams, self.step)?,
                    spread,
                    aim: aim.times(dec!(10_000))?,
                })
            });
        Some(Put::Weighed(dosed.collect::<Option<Vec<Dosed>>>()?))
    }

    fn verdict(&self) -> Result<Verdict, Vec<Problem>> {
        let green = self.green_range().ok_or_else(lost)?;
        let cures: Vec<Decimal> = match &self.measured {
            Some(m) => vec![m.weight.typical],
            None => self.rounded.cures.clone(),
        };
        let base = plan::base_of(&self.batch.recipe, green, &self.rounded.lines, &cures).ok_or_else(lost)?;
        let put = self.put().ok_or_else(lost)?;
        let has_cure = !matches!(put, Put::NoCure);
        let case = Case {
            profile: self.profile,
            eaten: self.batch.recipe.eaten,
            method: self.batch.recipe.method,
            green,
            base,
            weighed: self.green.weighed,
            put,
            step: self.step,
            units: self.settings.units,
        };
        let keys = dose::keys_for(has_cure, &kinds(&self.batch.pieces));
        dose::judge(&case, dose::cautions(&keys)).map_err(|p| vec![p])
    }

    fn sheet(&self) -> Result<WeighSheet, Vec<Problem>> {
        let verdict = self.verdict()?;
        let ends = if self.green.weighed { None } else { Some(self.ends()?) };
        let weigh_cure = self.measured.is_none();
        let (bowl, vessel, total) = draw(
            self.batch,
            &self.rounded,
            &self.plan,
            ends.as_ref(),
            self.step,
            self.parts,
            weigh_cure,
        )
        .ok_or_else(lost)?;
        let show =
            |grams: Decimal| Mass::new(grams).map_or_else(|_| Figure::new("", ""), |m| m.show(self.settings.units));
        let grams = self.green.grams;
        let is_coarse = weigh_cure && !self.batch.recipe.cures.is_empty() && coarse::is_coarse(&self.plan, self.step);
        let notice = verdict
            .nitrite
            .as_ref()
            .or(verdict.nitrate.as_ref())
            .filter(|_| is_coarse && self.green.weighed);
        Ok(WeighSheet {
            green: show(grams.typical),
            green_range: (!grams.is_point()).then(|| (show(grams.low), show(grams.high))),
            weighed: self.green.weighed,
            pieces: self.green.count,
            can_tick: self.green.weighed && !verdict.held,
            bowl_total: on_scale(total, self.step),
            coarse: notice.map(|ppm| coarse::notice(ppm, &self.plan, self.step, self.premix_range())),
            premix: self
                .parts
                .and_then(|parts| coarse::premix(coarse::premix_grams(&self.plan)?, parts, self.step)),
            facts: self.facts(),
            remarks: self.remarks(),
            todo: self.todo(),
            bowl,
            vessel,
            verdict,
        })
    }

    /// The same at the low and at the high green weight.
    fn ends(&self) -> Result<[Rounded; 2], Vec<Problem>> {
        let at = |grams: Decimal| {
            let plan = plan(&self.batch.recipe, grams, self.green.count, self.parts).map_err(|p| vec![p])?;
            round(self.batch, &plan, self.rounded.agents.clone(), self.step, None).ok_or_else(lost)
        };
        Ok([at(self.green.grams.low)?, at(self.green.grams.high)?])
    }

    /// The range that a premix would give on this scale, where it lies in range and none is in use.
    fn premix_range(&self) -> Option<(u32, u32)> {
        if self.parts.is_some() {
            return None;
        }
        let batch = Batch {
            premix: true,
            ticks: Vec::new(),
            ..self.batch.clone()
        };
        let work = Work::new(&batch, self.settings).ok()?;
        let verdict = work.verdict().ok()?;
        let fine = !coarse::is_coarse(&work.plan, self.step) && verdict.outcome == dose::Outcome::InRange;
        verdict.nitrite.filter(|_| fine).map(|ppm| (ppm.low, ppm.high))
    }

    fn remarks(&self) -> Vec<String> {
        let mut list = remarks(self.batch, &self.rounded, &self.plan);
        list.extend(
            self.measured
                .as_ref()
                .map(|m| format!("The cure is in already: {}. It is not on this list.", m.said)),
        );
        list
    }

    fn facts(&self) -> Vec<Fact> {
        let fact = |label: &str, value: String| Fact {
            label: label.to_owned(),
            value,
        };
        let recipe = &self.batch.recipe;
        let mut facts = vec![fact(
            "Green weight",
            Mass::new(self.green.grams.typical).map_or_else(|_| String::new(), |m| m.show(self.settings.units).text),
        )];
        for cure in &recipe.cures {
            facts.push(fact("Aim", cure.aim.show(self.settings.units).text));
        }
        facts.extend(self.salt().map(|(label, percent)| fact(label, format!("{percent} %"))));
        facts.push(fact("Scale", format!("{} g steps", plain(self.step))));
        facts
    }

    /// Salt as weighed, the cure's included, per cent of the base it is usually given on.
    fn salt(&self) -> Option<(&'static str, String)> {
        let lines = self.batch.recipe.lines.iter().zip(&self.rounded.lines);
        let (mut salt, mut water) = (self.rounded.cure_salt, Decimal::ZERO);
        for (line, grams) in lines {
            if plan::group(line) == crate::pantry::Group::Salt {
                salt = salt.plus(*grams)?;
            } else if line.is_water() {
                water = water.plus(*grams)?;
            }
        }
        let (label, base) = match self.batch.recipe.method {
            Method::Rub => ("Salt, cure included, on green weight", self.green.grams.typical),
            Method::CoverBrine => (
                "Salt, cure included, on meat and water",
                self.green.grams.typical.plus(water)?,
            ),
        };
        Some((
            label,
            plain(salt.times(Decimal::ONE_HUNDRED)?.over(base)?.nearest(dec!(0.01))?),
        ))
    }

    fn todo(&self) -> Vec<Todo> {
        let n = self.green.count;
        let (pieces, all) = if n == 1 {
            ("1 piece".to_owned(), "the piece".to_owned())
        } else {
            (format!("{n} pieces"), format!("all {n} pieces"))
        };
        let put = match self.batch.recipe.method {
            Method::Rub => format!("Rub all of it in, {pieces}"),
            Method::CoverBrine => format!("Stir until clear, chill to 4 °C (40 °F), then put {all} under the brine"),
        };
        let close = match self.batch.recipe.method {
            Method::Rub => "Label the bag, then close it",
            Method::CoverBrine => "Label the vessel, then cover it",
        };
        [("rub", put.as_str()), ("label", close)]
            .map(|(id, text)| Todo {
                id: id.to_owned(),
                text: text.to_owned(),
                ticked: self.batch.tick(id).map(|t| t.at),
            })
            .to_vec()
    }
}
