//! What is left after the fire: yield, salt, and an estimate of water activity.

use crate::batch::{self, Batch};
use crate::pantry::Group;
use crate::quantity::{Problem, Wrong, fixed};
use crate::recipe::{Method, Share};
use crate::smoke::{activity, concentrated};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::Serialize;

/// Water in lean raw meat, per cent of its weight (usual, from memory; fat meat holds less).
const WATER: f64 = 72.0;
/// What the meat's own solutes take off water activity (from memory).
const OWN: f64 = 0.992;

/// After the fire, by the weight of all pieces then.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct After {
    /// `78 %` of the green weight.
    pub share: String,
    /// Salt in per cent of what it weighs now; nothing where the method does not say how much stays in.
    pub salt: Option<String>,
    /// Salt in per cent of salt and water.
    pub brine: Option<String>,
    /// Water activity, an estimate.
    pub activity: Option<String>,
    /// What it is worked from beside the recipe's salt: water in lean meat, in per cent (usual, from memory). All that was
    /// lost is taken as water. An estimate, not a measurement: it says nothing of whether it keeps.
    pub water: String,
}

/// Nothing while it was not weighed after the fire.
///
/// # Errors
/// It cannot weigh more than before, nor next to nothing.
pub(super) fn after(batch: &Batch) -> Result<Option<After>, Problem> {
    use crate::quantity::Code;
    let Some(out) = batch.fire.as_ref().and_then(|f| f.out) else {
        return Ok(None);
    };
    let green = batch::green(&batch.pieces)?;
    // By a usual weight there is no yield.
    if !green.weighed {
        return Ok(None);
    }
    let green = green.grams.typical.to_f64().unwrap_or_default();
    let part = out.base().to_f64().unwrap_or_default() / green;
    if !(0.2..=1.1).contains(&part) {
        return Err(Problem::of(Code::Conflict, Wrong::WeightAfterFire).at("batch.fire.out"));
    }
    let print = |value: f64, places: u32| fixed(Decimal::new((value * 1000.0).round() as i64, 3), places);
    // What is rubbed on and stays is known; what a brine leaves behind is not.
    let stays = matches!(batch.recipe.method, Method::Rub | Method::Ground);
    let salt: Option<f64> = stays
        .then(|| {
            let lines = batch.recipe.lines.iter();
            let salty = lines.filter(|l| crate::pantry::ingredient(&l.item).is_some_and(|i| i.group == Group::Salt));
            salty
                .filter_map(|l| {
                    if let Share::GreenWeight(share) = l.share {
                        share.base().to_f64()
                    } else {
                        None
                    }
                })
                .sum()
        })
        .filter(|salt: &f64| *salt > 0.0);
    let found = salt.map(|salt| concentrated(salt, WATER, (1.0 - part).max(0.0)));
    let brine = found.map(|f| f.1).filter(|b| (0.0..26.0).contains(b));
    Ok(Some(After {
        share: format!("{} %", print(part * 100.0, 0)),
        salt: found.map(|f| format!("{} %", print(f.0, 2))),
        brine: brine.map(|b| format!("{} %", print(b, 1))),
        activity: brine.map(|b| print(OWN * activity(b), 2)),
        water: format!("{} %", print(WATER, 0)),
    }))
}
