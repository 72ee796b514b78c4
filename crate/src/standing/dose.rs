//! Doubts of what goes in: the method, the weights, the cure.

use super::model::{Clears, Doubt, Kind, Stage, Weight};
use crate::batch::{Batch, kinds};
use crate::cure::WARM;
use crate::dose::{Outcome, Verdict};
use crate::pantry::MeatKind;
use crate::recipe::{Do, Eaten};
use crate::weigh::{Settings, bags};
use rust_decimal::prelude::ToPrimitive;

/// Doubts of the recipe itself, whatever was weighed.
pub(super) fn of_recipe(batch: &Batch) -> Vec<Doubt> {
    let mut doubts = Vec::new();
    if batch.recipe.eaten == Eaten::HungForMonths {
        // Curing, drying and smoking do not reliably kill what lives in these: CDC, trichinellosis (published);
        // wild game animals are cooked, FDA Food Code 3-401.11 (quoted).
        let never = kinds(&batch.pieces)
            .iter()
            .any(|kind| matches!(kind, MeatKind::Boar | MeatKind::Hare | MeatKind::Bird));
        let kind = if never { Kind::EatenRaw } else { Kind::HangingUnproven };
        doubts.push(Doubt::new(kind, Stage::Pieces, Weight::Holds, Clears::ChangeRecipe));
    }
    let cures = batch.recipe.steps.iter().filter(|s| s.act == Do::Cure);
    let warmest = cures
        .filter_map(|s| s.at)
        .max()
        .filter(|t| t.base().to_f64().is_some_and(|f| f > WARM));
    if warmest.is_some() {
        doubts.push(Doubt::new(
            Kind::RecipeTooWarm,
            Stage::Weigh,
            Weight::Holds,
            Clears::ChangeRecipe,
        ));
    }
    doubts.extend(batch.recipe.may_hold_cure().iter().map(|one| Doubt {
        line: u32::try_from(one.at).ok().filter(|_| !one.why.is_unread()),
        ..Doubt::new(Kind::MayBeCure, Stage::Weigh, Weight::Holds, Clears::ReadPacket)
    }));
    doubts
}

/// The list could not be reckoned.
pub(super) struct NotReckoned;

/// Doubts of the dose, by its verdict.
pub(super) fn of_dose(batch: &Batch, verdict: Result<&Verdict, NotReckoned>) -> Vec<Doubt> {
    let mut doubts = Vec::new();
    let weighed = !batch.pieces.is_empty() && batch.pieces.iter().all(|p| p.weight.is_some());
    if !weighed {
        doubts.push(Doubt::new(
            Kind::NotWeighed,
            Stage::Weigh,
            Weight::Holds,
            Clears::WeighPieces,
        ));
    }
    if let Some(since) = no_cure_in(batch) {
        doubts.push(Doubt::new(Kind::CureNotIn, Stage::Weigh, Weight::Holds, Clears::SayCure).since(Some(since)));
    }
    match verdict {
        Ok(verdict) => doubts.extend(judged(batch, verdict).filter(|_| weighed)),
        Err(_) if weighed => {
            doubts.push(Doubt::new(
                Kind::NotReckoned,
                Stage::Weigh,
                Weight::Holds,
                Clears::MendDose,
            ));
        }
        Err(_) => {}
    }
    doubts
}

/// Doubts of the bags, where the sizes are bagged apart: all together may be in range and one of them not.
pub(super) fn of_bags(batch: &Batch, settings: &Settings) -> Vec<Doubt> {
    let doubt = |kind, weight| Doubt::new(kind, Stage::Weigh, weight, Clears::MendDose);
    let unknown = || doubt(Kind::DoseUnknown, Weight::Holds);
    let weighed = batch.pieces.iter().all(|p| p.weight.is_some());
    if !weighed || !holds_cure(batch) {
        return Vec::new();
    }
    let Some(bags) = bags(batch, settings) else {
        return vec![unknown()];
    };
    // How much of what was put in by another measure went into which bag nobody said.
    if !bags.is_empty() && (batch.put_in.is_some() || batch.also.is_some()) {
        return vec![unknown()];
    }
    let judged = bags.iter().filter_map(|bag| {
        let doubt = match bag.outcome {
            Outcome::InRange => return None,
            Outcome::Over => doubt(Kind::DoseMayBeOver, Weight::Holds),
            Outcome::TooLittle => doubt(Kind::DoseMayBeLow, Weight::Warns),
            Outcome::CannotTell => unknown(),
        };
        Some(bag.classes.iter().map(move |class| doubt.clone().of_class(*class)))
    });
    judged.flatten().collect()
}

/// When it was rubbed in or closed up, where its recipe has a cure and none is ticked or told.
fn no_cure_in(batch: &Batch) -> Option<i64> {
    let asked = 0..batch.recipe.cures.len();
    let missing = batch.put_in.is_none() && asked.clone().any(|i| batch.tick(&format!("cure:{i}")).is_none());
    let closed = ["rub", "label"].into_iter().filter_map(|of| batch.tick(of));
    let steps = (0..batch.recipe.steps.len()).filter_map(|at| batch.step(at));
    closed.chain(steps).map(|t| t.at).min().filter(|_| missing)
}

fn judged(batch: &Batch, verdict: &Verdict) -> Option<Doubt> {
    let (kind, weight) = match (verdict.outcome, verdict.sure) {
        (Outcome::InRange, _) => return None,
        (Outcome::Over, true) => (Kind::DoseOver, Weight::Holds),
        (Outcome::Over, false) => (Kind::DoseMayBeOver, Weight::Holds),
        (Outcome::TooLittle, true) => (Kind::DoseLow, Weight::Warns),
        (Outcome::TooLittle, false) => (Kind::DoseMayBeLow, Weight::Warns),
        (Outcome::CannotTell, _) if !holds_cure(batch) => return None,
        (Outcome::CannotTell, _) => (Kind::DoseUnknown, Weight::Holds),
    };
    Some(Doubt::new(kind, Stage::Weigh, weight, Clears::MendDose))
}

/// True where cure is asked for, was ticked, or was told.
pub(super) fn holds_cure(batch: &Batch) -> bool {
    let ticked = batch.went_in().any(|t| t.of.starts_with("cure:"));
    !batch.recipe.cures.is_empty() || batch.put_in.is_some() || batch.also.is_some() || ticked
}
