//! What a batch comes to: its plan, rounded for the scale, and the dose of it.

use super::accelerator;
use super::bowl::running;
use super::coarse;
use super::follow::followed;
use super::lines::{Rounded, draw, portions, round};
use super::model::WeighLine;
use super::plan::{self, Plan, plan};
use super::settings::Settings;
use crate::batch::{Batch, Green, belly, green, kind};
use crate::dose::{self, Case, Portion, Rule, Verdict};
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

pub(super) fn lost() -> Vec<Problem> {
    vec![Problem::of(Code::TooLarge, Wrong::TooLargeToReckon)]
}

impl<'a> Work<'a> {
    /// What a batch comes to by these settings.
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

    /// Sodium ascorbate and erythorbate going in, ppm, counted as the cure is.
    fn ascorbate(&self) -> Option<Range> {
        let base = self.whole(self.green.meat)?.base()?;
        let lines = self.batch.recipe.lines.iter().zip(&self.rounded.lines);
        let salts = lines.filter(|(line, _)| accelerator::of(line).is_some_and(accelerator::Accelerator::is_salt));
        salts
            .filter_map(|(_, grams)| accelerator::ppm(*grams, self.step, base))
            .reduce(|a, b| a.plus(b).unwrap_or(a))
    }

    /// What is to be said of the dose.
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
}
