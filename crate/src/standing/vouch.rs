//! The verdict on a dose, as a batch may give it.

use super::bars::bars;
use super::dose::{of_dose, of_recipe};
use super::model::{Assurance, Kind};
use crate::batch::Batch;
use crate::dose::{Ground, Outcome, Verdict, VerdictWord};
use crate::quantity::Problem;
use crate::recipe::{Eaten, Recipe};
use crate::weigh::{self, Settings, WeighSheet};
use serde::Serialize;

/// An answer with a verdict in it that was held against all that is known of the batch. Only a standing makes one, and
/// the door gives no other.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(transparent)]
pub struct Vouched<T>(T);

impl<T> Vouched<T> {
    /// What is answered.
    pub const fn said(&self) -> &T {
        &self.0
    }
}

/// The weigh-out of a batch. Its verdict is in range only where no doubt of the recipe or of the dose forbids it.
///
/// # Errors
/// As [`weigh::sheet`].
pub fn weigh_out(batch: &Batch, settings: &Settings) -> Result<Vouched<WeighSheet>, Vec<Problem>> {
    let mut sheet = weigh::sheet(batch, settings)?;
    sheet.verdict = vouch(batch, sheet.verdict);
    sheet.can_tick &= !sheet.verdict.held;
    Ok(Vouched(sheet))
}

/// A verdict on a dose that is in no batch: it rests on what was said of it alone. Of what hangs for months nothing is
/// said yet.
#[must_use]
pub fn on_its_own(verdict: Verdict, eaten: Eaten) -> Vouched<Verdict> {
    Vouched(held_back(verdict, eaten == Eaten::HungForMonths))
}

/// The verdict of a recipe that is worked for a weight, with no batch yet.
#[must_use]
pub fn of_card(recipe: &Recipe, verdict: Verdict) -> Vouched<Verdict> {
    let batch = Batch::new(recipe.tag.clone(), recipe.name.clone(), recipe.clone());
    let doubts = of_recipe(&batch);
    Vouched(held_back(verdict, doubts.iter().any(|d| bars(d, Assurance::Dose))))
}

/// The verdict on the dose of a batch.
fn vouch(batch: &Batch, verdict: Verdict) -> Verdict {
    let mut doubts = of_recipe(batch);
    doubts.extend(of_dose(batch, Ok(&verdict)));
    let barring: Vec<_> = doubts.iter().filter(|d| bars(d, Assurance::Dose)).collect();
    let held = verdict.held;
    let vouched = held_back(verdict, !barring.is_empty());
    // Where only the tick of the cure is missing, the list is what it is ticked on.
    let asked = barring.iter().all(|d| d.kind == Kind::CureNotIn);
    Verdict {
        held: if asked { held } else { vouched.held },
        ..vouched
    }
}

/// In range, and no cure in it, become "cannot say yet" where something forbids it.
fn held_back(mut verdict: Verdict, barred: bool) -> Verdict {
    let assures = |ground: &Ground| matches!(ground, Ground::InRange | Ground::NoCure);
    if !barred || !(verdict.outcome == Outcome::InRange || verdict.grounds.iter().any(assures)) {
        return verdict;
    }
    verdict.grounds.retain(|ground| !assures(ground));
    Verdict {
        outcome: Outcome::CannotTell,
        sure: false,
        word: VerdictWord::CannotSayYet,
        mark: VerdictWord::CannotSayYet.mark(),
        next: Vec::new(),
        held: true,
        ..verdict
    }
}
