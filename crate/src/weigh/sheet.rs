//! The weigh-out of a batch, put together.

use super::bags::bags;
use super::bowl::running;
use super::coarse;
use super::follow::followed;
use super::lines::{Rounded, draw, on_scale, portions, round};
use super::model::{Todo, TodoOf, WeighLine, WeighSheet};
use super::plan::{self, Plan, plan};
use super::settings::Settings;
use super::spoon::own_spoons;
use crate::batch::{Batch, Green, belly, green, kind};
use crate::dose::{self, Case, OwnSpoon, Portion, Rule, Verdict};
use crate::pantry::{OWN, own_name};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Figure, Mass, Problem, Range, Wrong};
use crate::recipe::Method;
use rust_decimal::Decimal;
use std::borrow::Cow;

/// What the sheet and its verdict are worked from.
pub(super) struct Work<'a> {
    pub(super) batch: Cow<'a, Batch>,
    pub(super) settings: &'a Settings,
    pub(super) rule: &'a Rule,
    pub(super) step: Decimal,
    pub(super) green: Green,
    pub(super) parts: Option<u32>,
    pub(super) plan: Plan,
    pub(super) rounded: Rounded,
    pub(super) put_in: Vec<Portion>,
    /// The aim is not the recipe's own but the rule's.
    pub(super) follows: bool,
}

/// The weigh-out of a batch.
///
/// # Errors
/// Every problem of the batch and the settings; [`Code::Missing`] while there is nothing to reckon from.
pub fn sheet(batch: &Batch, settings: &Settings) -> Result<WeighSheet, Vec<Problem>> {
    Work::new(batch, settings)?.sheet()
}

/// The verdict alone, for lists over many batches.
///
/// # Errors
/// As [`sheet`].
pub fn verdict(batch: &Batch, settings: &Settings) -> Result<Verdict, Vec<Problem>> {
    Work::new(batch, settings)?.verdict()
}

fn lost() -> Vec<Problem> {
    vec![Problem::of(Code::TooLarge, Wrong::TooLargeToReckon)]
}

impl<'a> Work<'a> {
    pub(super) fn new(batch: &'a Batch, settings: &'a Settings) -> Result<Self, Vec<Problem>> {
        let mut problems: Vec<Problem> = settings.problems();
        problems.extend(batch.problems().into_iter().map(|p| p.at("batch")));
        let rule = dose::rule(&settings.profile, batch.recipe.method, belly(&batch.pieces));
        let (Some(rule), true) = (rule, problems.is_empty()) else {
            return Err(problems);
        };
        let batch = match followed(&batch.recipe, rule) {
            Cow::Borrowed(_) => Cow::Borrowed(batch),
            Cow::Owned(recipe) => Cow::Owned(Batch {
                recipe,
                ..batch.clone()
            }),
        };
        let step = settings.scale_step.base();
        let green = green(&batch.pieces).map_err(|p| vec![p.at("batch")])?;
        let missing = if batch.pieces.is_empty() {
            Some(Wrong::NoPieces)
        } else if !green.known {
            Some(Wrong::PiecesUnweighed)
        } else {
            None
        };
        if let Some(missing) = missing {
            return Err(vec![Problem::of(Code::Missing, missing).at("batch.pieces")]);
        }
        let put_in = batch.put_in(settings.kit()).map_err(|p| vec![p.at("batch")])?;
        let typical = green.meat.typical;
        let wants_premix = batch.premix && put_in.is_empty();
        let parts = if wants_premix {
            plan::premix_parts(&batch.recipe, typical, green.count)
        } else {
            None
        };
        let plan = plan(&batch.recipe, typical, green.count, parts).map_err(|p| vec![p.at("batch.recipe")])?;
        let rounded = round(&batch, &plan, parts, step, &put_in).ok_or_else(lost)?;
        Ok(Self {
            follows: matches!(batch, Cow::Owned(_)),
            batch,
            settings,
            rule,
            step,
            green,
            parts,
            plan,
            rounded,
            put_in,
        })
    }

    /// Green weight with a half-step for each weighing that it is the sum of.
    fn green_range(&self) -> Option<Range> {
        dose::summed(self.green.meat, self.step, self.green.weighings)
    }

    /// What the ppm are counted over: green weight, and in a brine all that is dissolved, each weighed once.
    pub(super) fn whole(&self, green: Range) -> Option<dose::Whole> {
        let weighed: Vec<Decimal> = self.rounded.cures.iter().map(|c| c.grams).collect();
        let put_in = self.put_in.iter().map(|p| p.weight.typical);
        let cures: Vec<Decimal> = weighed.into_iter().chain(put_in).collect();
        let recipe = &self.batch.recipe;
        let mut whole = plan::whole_of(recipe, green, &self.rounded.lines, &cures)?;
        let lines = recipe.lines.iter().zip(&self.rounded.lines);
        let in_it = lines.filter(|(line, grams)| plan::group(line).dissolves() && !grams.is_zero());
        if recipe.method.has_brine() {
            whole.pickle = dose::summed(whole.pickle, self.step, u32::try_from(in_it.count()).ok()?)?;
        }
        Some(whole)
    }

    /// Water of a brine; what is stirred into mince is none.
    fn water(&self) -> Option<Decimal> {
        let lines = self.batch.recipe.lines.iter().zip(&self.rounded.lines);
        lines
            .filter(|(line, _)| line.is_water() && self.batch.recipe.method.has_brine())
            .try_fold(Decimal::ZERO, |sum, (_, grams)| sum.plus(*grams))
    }

    /// For a pick-up: whether the pieces even out with the brine all the same, and what diffuses in. By the time it took
    /// where that is known, else by the time the recipe has it.
    fn evens(&self) -> Option<dose::Evens> {
        let pieces = self.batch.pieces.iter().map(|p| dose::Lying {
            kind: kind(p),
            thickness: p.thickness.map(|t| t.base()),
            thawed: p.thawed,
        });
        let stay = || self.batch.stayed().or_else(|| self.batch.recipe.stay());
        (self.batch.recipe.method == Method::PickUp).then(|| dose::evens(pieces, stay()))
    }

    /// By how much a premix made on this scale may be off.
    fn spread(&self) -> Option<Decimal> {
        let ticked = || self.rounded.cures.iter().map(|c| c.grams).max();
        let parts = self.parts.or(plan::PARTS.last().copied())?;
        // A premix that was ticked is no more exact than the scale it was made on.
        let ticked_on = self.batch.ticks.iter().filter_map(|t| t.step).map(Mass::base).max();
        let step = ticked_on.map_or(self.step, |s| s.max(self.step));
        Some(coarse::making(ticked().unwrap_or_default(), parts, step)?.2)
    }

    pub(super) fn verdict(&self) -> Result<Verdict, Vec<Problem>> {
        let green = self.green_range().ok_or_else(lost)?;
        let spread = self.spread().ok_or_else(lost)?;
        let portions = portions(&self.batch, &self.rounded, self.step, spread, &self.put_in).ok_or_else(lost)?;
        let mut keys = dose::keys_for(!portions.is_empty(), self.batch.recipe.method, self.batch.recipe.eaten);
        if !portions.is_empty() {
            dose::add_bacon(&mut keys, belly(&self.batch.pieces));
        }
        let case = Case {
            rule: self.rule,
            eaten: self.batch.recipe.eaten,
            method: self.batch.recipe.method,
            whole: self.whole(green).ok_or_else(lost)?,
            water: self.water().ok_or_else(lost)?,
            evens: self.evens(),
            ascorbate: self.ascorbate(),
            weighed: self.green.weighed,
            portions,
            step: self.step,
            units: self.settings.units,
        };
        let verdict = dose::judge(&case.settled(), dose::cautions(&keys)).map_err(|p| vec![p])?;
        Ok(verdict.in_question(self.batch.recipe.may_hold_cure()))
    }

    /// The bowl, the vessel and the green weight.
    pub(super) fn lists(&self) -> Option<(Vec<WeighLine>, Vec<WeighLine>, Figure)> {
        let (mut bowl, vessel) = draw(&self.batch, &self.rounded, &self.plan, None, self.step)?;
        running(&self.batch, &mut bowl, self.step)?;
        let green = Mass::new(self.green.meat.typical).ok()?.show(self.settings.units);
        Some((bowl, vessel, green))
    }

    fn sheet(&self) -> Result<WeighSheet, Vec<Problem>> {
        let verdict = self.verdict()?;
        let ends = if self.green.weighed { None } else { Some(self.ends()?) };
        let (mut bowl, vessel) =
            draw(&self.batch, &self.rounded, &self.plan, ends.as_ref(), self.step).ok_or_else(lost)?;
        let total = running(&self.batch, &mut bowl, self.step).ok_or_else(lost)?;
        bowl.iter_mut().for_each(|line| self.own_spoon(line));
        let show =
            |grams: Decimal| Mass::new(grams).map_or_else(|_| Figure::new("", ""), |m| m.show(self.settings.units));
        let grams = self.green.meat;
        let is_coarse = self.rounded.cures.iter().any(|c| !c.done) && coarse::is_coarse(&self.plan, self.step);
        let told = verdict
            .nitrite
            .as_ref()
            .filter(|n| n.high > 0)
            .or(verdict.nitrate.as_ref());
        let notice = told.filter(|_| is_coarse && self.green.weighed);
        Ok(WeighSheet {
            green: show(grams.typical),
            green_range: (!grams.is_point()).then(|| (show(grams.low), show(grams.high))),
            weighed: self.green.weighed,
            pieces: self.green.count,
            can_tick: self.green.weighed && !verdict.held && !self.weighs_nothing(),
            bowl_total: on_scale(total, self.step),
            coarse: notice.map(|ppm| coarse::notice(ppm, &self.plan, self.step, self.premix_helps())),
            premix: self
                .parts
                .and_then(|parts| coarse::premix(*self.plan.cures.first()?, parts, self.step)),
            facts: self.facts(),
            salt: self.salt_in(),
            bags: bags(&self.batch, self.settings).unwrap_or_default(),
            remarks: self.remarks(),
            todo: self.todo(),
            bowl,
            vessel,
            verdict,
        })
    }

    /// True where the scale cannot show a cure at all: a list without it is not this recipe.
    pub(super) fn weighs_nothing(&self) -> bool {
        self.rounded.cures.iter().any(|c| !c.done && c.grams.is_zero())
    }

    /// The same at the low and at the high green weight.
    fn ends(&self) -> Result<[Rounded; 2], Vec<Problem>> {
        let at = |grams: Decimal| {
            let plan = plan(&self.batch.recipe, grams, self.green.count, self.parts).map_err(|p| vec![p])?;
            round(&self.batch, &plan, self.parts, self.step, &self.put_in).ok_or_else(lost)
        };
        Ok([at(self.green.meat.low)?, at(self.green.meat.high)?])
    }

    /// How strong a premix would be, and the range that it would give on this scale, where that lies in range and none is in
    /// use.
    fn premix_helps(&self) -> Option<(u32, (u32, u32))> {
        if self.parts.is_some() {
            return None;
        }
        let batch = Batch {
            premix: true,
            ticks: Vec::new(),
            ..self.batch.clone().into_owned()
        };
        let work = Work::new(&batch, self.settings).ok()?;
        let verdict = work.verdict().ok()?;
        let fine = !coarse::is_coarse(&work.plan, self.step) && verdict.outcome == dose::Outcome::InRange;
        Some((
            work.parts?,
            verdict.nitrite.filter(|_| fine).map(|ppm| (ppm.low, ppm.high))?,
        ))
    }

    /// The spoon of the cook's own in place of the general one, where it was weighed with this.
    fn own_spoon(&self, line: &mut WeighLine) {
        let (kind, at) = line.id.split_once(':').unwrap_or_default();
        let at: Option<usize> = at.parse().ok();
        let recipe = &self.batch.recipe;
        let item = at.and_then(|i| match kind {
            "cure" => recipe.cures.get(i).map(|c| c.item.as_str()),
            _ => recipe.lines.get(i).map(|l| l.item.as_str()),
        });
        let grams = line.tick.weight.map(Mass::base);
        if let (Some(item), Some(grams), true) = (item, grams, line.spoon.is_some() || item == Some(OWN)) {
            // What is the cook's own goes by its name.
            let is_it = |s: &&OwnSpoon| s.item == item || (item == OWN && own_name(&s.item) == Some(line.name.trim()));
            let own = self.settings.spoons.iter().find(is_it);
            line.spoon = own.and_then(|own| own_spoons(own, grams)).or(line.spoon.take());
        }
    }

    fn todo(&self) -> Vec<Todo> {
        let method = self.batch.recipe.method;
        let put_on = TodoOf::PutOn {
            method,
            pieces: self.green.count,
            about: self.batch.pieces.iter().any(|p| p.about),
        };
        [("rub", put_on), ("label", TodoOf::Close { method })]
            .map(|(id, what)| Todo {
                id: id.to_owned(),
                what,
                ticked: self.batch.tick(id).map(|t| t.at),
            })
            .to_vec()
    }
}
