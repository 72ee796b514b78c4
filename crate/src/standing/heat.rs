//! Doubts of the fire and the chill, and what they earned, size class by size class.

use super::model::{Clears, Doubt, Kind, Stage, Weight};
use crate::batch::Batch;
use crate::quantity::{System, Temperature};
use crate::recipe::{Do, Step};
use crate::record::{Chill, ClassRecord, ComeUp, Heat, classes};
use crate::safety::COME_UP;
use rust_decimal::{Decimal, dec};

/// A smoke that is no warmer than this, °F, cooks nothing: 30 °C, common practice, no source.
const COLD_SMOKE: Decimal = dec!(86);

/// From the start of the heat to its first reading, in milliseconds: half of the hours in which a piece has to come through,
/// so that there is time to do something about it (judgement).
const FIRST_READING: i64 = (COME_UP * 1_800_000.0) as i64;

/// What the record shows of a batch.
pub(super) struct Heated {
    pub doubts: Vec<Doubt>,
    records: Vec<ClassRecord>,
    /// The least that its classes had to be read at, where every one was read so; nothing where a table stood in.
    pub to: Option<Temperature>,
    /// What has to be read of the class that needs most.
    pub needed: Option<Temperature>,
    /// When the heat ended for the class that came out first, where all are out.
    pub ended: Option<i64>,
}

impl Heated {
    pub fn classes(&self) -> u32 {
        u32::try_from(self.records.len()).unwrap_or(u32::MAX)
    }

    fn class(&self, place: u32) -> Option<&ClassRecord> {
        self.records.iter().find(|r| r.place == place)
    }

    pub fn is_hot(&self, place: u32) -> bool {
        self.class(place).is_some_and(|r| r.heat.enough().is_some())
    }

    pub fn is_chilled(&self, place: u32) -> bool {
        self.class(place).is_some_and(|r| matches!(r.chill, Chill::Done { .. }))
    }

    pub fn all_hot(&self) -> bool {
        !self.records.is_empty() && self.records.iter().all(|r| r.heat.enough().is_some())
    }

    pub fn all_chilled(&self) -> bool {
        !self.records.is_empty() && self.records.iter().all(|r| matches!(r.chill, Chill::Done { .. }))
    }
}

pub(super) fn of_fire(batch: &Batch, now: i64, units: System) -> Heated {
    let records = classes(batch, now);
    let lit = lit(batch, now);
    let due = lit.is_some_and(|lit| now >= lit.saturating_add(FIRST_READING)) || heat_is_over(batch);
    let doubts = records.iter().flat_map(|r| of_class(r, lit, due, units)).collect();
    let hot = || {
        records
            .iter()
            .map(|r| matches!(r.heat, Heat::Hot { .. }).then_some(r.needed.at))
    };
    let to: Option<Vec<Temperature>> = hot().collect();
    let ended: Option<Vec<i64>> = records.iter().map(|r| r.heat_ended).collect();
    Heated {
        doubts,
        to: to.and_then(|all| all.into_iter().min()),
        needed: records.iter().map(|r| r.needed.at).max(),
        ended: ended.and_then(|all| all.into_iter().min()),
        records,
    }
}

/// When a step that cooks was begun, by its tick.
fn lit(batch: &Batch, now: i64) -> Option<i64> {
    let steps = batch.recipe.steps.iter().enumerate();
    let hot = steps.filter(|(_, s)| cooks(s));
    hot.filter_map(|(i, _)| batch.step(i).map(|t| t.at))
        .filter(|at| *at <= now)
        .min()
}

/// A step that follows the heat is ticked, or the end: by that it is all out.
fn heat_is_over(batch: &Batch) -> bool {
    let steps = batch.recipe.steps.iter().enumerate();
    let mut after = steps.skip_while(|(_, s)| !cooks(s));
    let done = after.any(|(i, s)| matches!(s.act, Do::Rest | Do::Chill | Do::Pack) && batch.step(i).is_some());
    done || batch.tick("end").is_some()
}

/// Whether a step is to cook: smoke that ends at no temperature and is cold, or does not say how warm it is, is not.
#[must_use]
pub fn cooks(step: &Step) -> bool {
    match step.act {
        Do::Cook => true,
        Do::Smoke => step.until.is_some() || step.at.is_some_and(|t| t.base() > COLD_SMOKE),
        _ => false,
    }
}

fn of_class(record: &ClassRecord, lit: Option<i64>, due: bool, units: System) -> Vec<Doubt> {
    let doubt = |kind, stage, weight, clears| Doubt::new(kind, stage, weight, clears).of_class(record.place);
    let fire = |kind, weight, clears| Doubt {
        needed: Some(record.needed.at.show(units)),
        ..doubt(kind, Stage::Fire, weight, clears)
    };
    let read = |doubt: Doubt, read: Temperature| Doubt {
        read: Some(read.show(units)),
        ..doubt
    };
    let mut doubts = Vec::new();
    if let Some(since) = record.abandoned {
        let doubt = fire(Kind::PartlyAbandoned, Weight::Forbids, Clears::Nothing);
        doubts.push(doubt.since(Some(since)));
    }
    match record.heat {
        Heat::Hot { .. } | Heat::ByTable { .. } => {
            if record.pulled.is_none() {
                doubts.push(fire(Kind::InFire, Weight::Holds, Clears::TakeOut));
            }
        }
        Heat::InQuestion => doubts.push(fire(Kind::ReadingInQuestion, Weight::Holds, Clears::AnswerReading)),
        Heat::Unread if lit.is_some() => {
            let due = due || record.pulled.is_some();
            let kind = if due { Kind::NotRead } else { Kind::ToRead };
            doubts.push(fire(kind, Weight::Holds, Clears::ReadHot).since(lit));
        }
        Heat::Unread => {}
        // What is past finishing is not told to be finished.
        Heat::NotYet { .. } if record.abandoned.is_some() => {}
        Heat::NotYet { last } => {
            let found = match record.partly {
                Some(at) => fire(Kind::PartlyCooked, Weight::Holds, Clears::FinishNow).since(Some(at)),
                None => fire(Kind::NotHot, Weight::Holds, Clears::ReadHot),
            };
            doubts.push(read(found, last));
        }
        Heat::Colder { later_at, later, .. } => {
            let found = fire(Kind::ColderSince, Weight::Holds, Clears::ReadHot).since(Some(later_at));
            doubts.push(read(found, later));
        }
        Heat::DriedFirst { dried_at } => {
            doubts.push(fire(Kind::DriedFirst, Weight::Forbids, Clears::Nothing).since(Some(dried_at)));
        }
    }
    match record.come_up {
        ComeUp::Slow { minutes, .. } => doubts.push(Doubt {
            minutes: Some(minutes),
            ..doubt(Kind::SlowUp, Stage::Fire, Weight::Forbids, Clears::Nothing)
        }),
        ComeUp::Unseen { first } => {
            doubts.push(read(
                doubt(Kind::UpUnseen, Stage::Fire, Weight::Warns, Clears::NextTime),
                first,
            ));
        }
        ComeUp::NotBegun | ComeUp::Running { .. } | ComeUp::Fine { .. } => {}
    }
    // What is not hot enough is not chilled, it is finished.
    let cools = record.heat.enough().is_some();
    match record.chill {
        Chill::Late { minutes, .. } => doubts.push(Doubt {
            minutes: Some(minutes),
            ..doubt(Kind::ChillLate, Stage::Pack, Weight::Forbids, Clears::Nothing).since(record.pulled)
        }),
        Chill::Unwatched { minutes, .. } if cools => doubts.push(Doubt {
            minutes: Some(minutes),
            ..doubt(Kind::ChillUnread, Stage::Pack, Weight::Holds, Clears::Nothing).since(record.pulled)
        }),
        Chill::Running { .. } if cools => {
            doubts.push(doubt(Kind::Chilling, Stage::Pack, Weight::Holds, Clears::Chill).since(record.pulled));
        }
        Chill::Unwatched { .. } | Chill::Running { .. } | Chill::Done { .. } | Chill::NotBegun => {}
    }
    doubts
}
