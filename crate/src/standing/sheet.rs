//! The standing as it is answered.

use super::keeping::Packing;
use super::model::{Assurance, Doubt};
use super::of::Standing;
use crate::batch::Batch;
use crate::quantity::Problem;
use crate::weigh::Settings;
use serde::Serialize;

/// The doubts on a batch and what of it is assured.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct StandingSheet {
    /// Every doubt, what is past mending first.
    pub doubts: Vec<Doubt>,
    /// What may be said.
    pub assured: AssuredSheet,
}

/// What may be said of a batch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[expect(clippy::struct_excessive_bools, reason = "one for each word of assurance")]
pub struct AssuredSheet {
    /// Its dose is in range.
    pub dose: bool,
    /// No cure is in it.
    pub no_cure: bool,
    /// The cure's times hold.
    pub cured: bool,
    /// Hot enough, class by class.
    pub hot: Vec<bool>,
    /// To be taken out, class by class.
    pub pull: Vec<bool>,
    /// Chilled in time, class by class.
    pub chilled: Vec<bool>,
    /// All of it is cooked.
    pub cooked: bool,
    /// How long it keeps, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub use_by: Option<i64>,
    /// It may be given.
    pub gift: bool,
    /// The next job may be done.
    pub go_on: bool,
}

/// The standing of a batch at `now`.
///
/// # Errors
/// The problems of the batch and of the settings.
pub fn sheet(batch: &Batch, settings: &Settings, now: i64, packing: Packing) -> Result<StandingSheet, Vec<Problem>> {
    let mut problems: Vec<Problem> = batch.problems().into_iter().map(|p| p.at("batch")).collect();
    problems.extend(settings.problems());
    if !problems.is_empty() {
        return Err(problems);
    }
    let standing = Standing::of(batch, settings, now, packing);
    let may = |assurance| standing.leave(assurance).is_some();
    let each = |of: fn(u32) -> Assurance| (0..standing.classes()).map(|class| may(of(class))).collect();
    Ok(StandingSheet {
        assured: AssuredSheet {
            dose: may(Assurance::Dose),
            no_cure: may(Assurance::NoCure),
            cured: may(Assurance::Cured),
            hot: each(Assurance::Hot),
            pull: each(Assurance::Pull),
            chilled: each(Assurance::Chilled),
            cooked: may(Assurance::Cooked),
            use_by: standing.keeps().map(|(_, keeping)| keeping.until),
            gift: may(Assurance::Gift),
            go_on: may(Assurance::GoOn),
        },
        doubts: standing.doubts().to_vec(),
    })
}
