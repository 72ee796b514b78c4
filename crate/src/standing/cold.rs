//! Doubts of the cold between the rub and the fire.

use super::model::{Clears, Doubt, Kind, Stage, Weight};
use crate::batch::Batch;
use crate::cure::{Warmth, cold};

pub(super) fn of_cold(batch: &Batch, now: i64) -> Vec<Doubt> {
    let cold = cold(batch, now);
    let known = cold.warm + cold.unread;
    let one = match cold.warmth() {
        Warmth::Kept => None,
        Warmth::Warm => Some((Kind::Warm, Weight::Warns, Clears::CoolNow, known)),
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
    warm.into_iter().chain(frozen).collect()
}
