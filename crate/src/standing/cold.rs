//! Doubts of the cold between the rub and the fire.

use super::model::{Clears, Doubt, Kind, Stage, Weight};
use crate::batch::{Batch, odd_cold};
use crate::cure::{Cold, Warmth, cold, ended, heated};
use crate::quantity::System;
use crate::recipe::Do;

pub(super) fn of_cold(batch: &Batch, now: i64, units: System) -> Vec<Doubt> {
    let cold = cold(batch, now);
    let known = cold.warm + cold.unread + cold.out;
    let one = match cold.warmth() {
        Warmth::Kept => None,
        Warmth::Warm if cold.now => Some((Kind::Warm, Weight::Warns, Clears::CoolNow, known)),
        // It is cold again: nothing takes the warm hours back.
        Warmth::Warm => Some((Kind::Warm, Weight::Warns, Clears::CookThrough, known)),
        Warmth::MayBeTooWarm => Some((Kind::MayBeTooWarm, Weight::Holds, Clears::SayCold, known)),
        Warmth::TooWarm => Some((Kind::TooWarm, Weight::Forbids, Clears::Nothing, cold.warm)),
        Warmth::NoPower => Some((Kind::PowerOff, Weight::Forbids, Clears::Nothing, cold.dark)),
    };
    let warm = one.map(|(kind, weight, clears, hours)| {
        Doubt::new(kind, Stage::Cure, weight, clears)
            .since(cold.since)
            .lasting(hours)
    });
    let frozen = cold
        .frozen
        .then(|| Doubt::new(Kind::Frozen, Stage::Fire, Weight::Holds, Clears::Thaw));
    warm.into_iter()
        .chain(frozen)
        .chain(in_question(batch, now, units))
        .chain(unseen(batch, &cold))
        .collect()
}

/// What nobody saw is not kept cold: no time of the cure is sure by it.
fn unseen(batch: &Batch, cold: &Cold) -> Option<Doubt> {
    let cures = batch.recipe.steps.iter().any(|s| s.act == Do::Cure);
    let clears = if ended(batch).is_some() {
        Clears::CookThrough
    } else {
        Clears::ReadCold
    };
    let doubt = Doubt::new(Kind::ColdUnseen, Stage::Cure, Weight::Warns, clears);
    (cures && cold.unseen > 0.0).then(|| doubt.lasting(cold.unseen))
}

/// The first reading of the time in its cure that no refrigerator can have: how cold it was nobody knows.
fn in_question(batch: &Batch, now: i64, units: System) -> Option<Doubt> {
    batch.tick("rub")?;
    let until = heated(batch).unwrap_or(now);
    let asked = odd_cold(batch)
        .into_iter()
        .filter_map(|odd| batch.fridge.get(odd.reading));
    let first = asked.filter(|r| r.at <= until).min_by_key(|r| r.at)?;
    let doubt = Doubt::new(Kind::ColdInQuestion, Stage::Cure, Weight::Holds, Clears::AnswerCold);
    Some(Doubt {
        read: first.reads.map(|t| t.show(units)),
        ..doubt.since(Some(first.at))
    })
}
