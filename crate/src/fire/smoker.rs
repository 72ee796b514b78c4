//! What fires told of this user's smoker, and what this one would add.

use super::outlook::{degrees, setup};
use super::show::celsius;
use crate::batch::{Batch, Fire};
use crate::record::Log;
use crate::smoke::{Habit, Readings, forecast};
use crate::weigh::Smoked;
use serde::Serialize;

/// So many readings at least, over a third of the way, teach something.
const ENOUGH: usize = 6;

/// What is known of the smoker.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Known {
    /// Fires in a smoker set up like this that taught something.
    pub fires: u32,
    /// What they say; nothing where there are none.
    pub air: Option<AirHabit>,
    /// What this fire tells, once a class with readings enough is pulled.
    pub tells: Option<Smoked>,
}

/// What fires told of the air of a smoker.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct AirHabit {
    /// How much heat it brings, in per cent of what is usual for its kind.
    pub heat: u32,
    /// How wide the range of that still is, in per cent of what it was.
    pub range: u32,
}

/// The habit of a smoker set up like this.
pub(super) fn habit(fire: &Fire, smoked: &[Smoked]) -> Habit {
    let share = |all: [i32; 5]| all.map(|one| f64::from(one) / 1000.0);
    let alike: Vec<Habit> = own(fire, smoked)
        .map(|s| Habit {
            centre: share(s.centre),
            spread: share(s.spread),
        })
        .collect();
    Habit::learned(&alike)
}

fn own<'a>(fire: &Fire, smoked: &'a [Smoked]) -> impl Iterator<Item = &'a Smoked> {
    let (fan, cover) = (fire.fan, fire.cover);
    smoked.iter().filter(move |s| s.fan == fan && s.cover == cover)
}

/// What is known, and what the longest read of the classes that are pulled tells.
pub(super) fn known(batch: &Batch, log: &Log, smoked: &[Smoked], sure: impl Fn(usize) -> bool) -> Known {
    let fire = batch.fire.clone().unwrap_or_default();
    let fires = u32::try_from(own(&fire, smoked).count()).unwrap_or(u32::MAX);
    let habit = habit(&fire, smoked);
    let [air, ..] = habit.centre;
    let [left, ..] = habit.spread;
    let told = (fires > 0).then(|| AirHabit {
        heat: ((0.22 * air).exp() * 100.0).round() as u32,
        range: (left * 100.0).round() as u32,
    });
    let pulled = |place: usize| {
        let out = log.at(log.pulled.get(place).copied().flatten()?);
        let mut piece = degrees(log.classes.get(place)?);
        piece.retain(|p| p.0 <= out);
        (piece.len() >= ENOUGH && sure(place)).then_some((place, piece))
    };
    let longest = (0..batch.pieces.len())
        .filter_map(pulled)
        .max_by_key(|(_, piece)| piece.len());
    Known {
        fires,
        air: told,
        tells: longest.and_then(|(place, piece)| tells(batch, log, &fire, place, &piece)),
    }
}

fn tells(batch: &Batch, log: &Log, fire: &Fire, place: usize, piece: &[(f64, f64)]) -> Option<Smoked> {
    let (first, last) = (piece.first()?, piece.last()?);
    let setup = setup(batch, log, place, fire, 165.0, Habit::USUAL)?;
    // A third of the way to the coolest consumer temperature.
    (last.1 - first.1 > (celsius(145.0) - first.1) / 3.0).then_some(())?;
    let cabinet = degrees(&log.cabinet);
    let readings = Readings {
        piece,
        cabinet: &cabinet,
        set: None,
        next: &[],
    };
    let found = forecast(&setup, &readings, last.0)?.habit?;
    let thousandths = |one: f64| (one * 1000.0).round() as i32;
    Some(Smoked {
        fan: fire.fan,
        cover: fire.cover,
        at: log.origin,
        centre: found.centre.map(|c| thousandths(c).clamp(-9000, 9000)),
        spread: found.spread.map(|c| thousandths(c).clamp(1, 1000)),
    })
}
