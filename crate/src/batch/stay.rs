//! How long a batch stayed in its cure, by its ticks, and when its meat was killed.

use super::model::Batch;
use crate::quantity::exact::Exact;
use crate::recipe::Do;
use rust_decimal::{Decimal, dec};

const DAY: i64 = 86_400_000;

impl Batch {
    /// When the cure came off, in milliseconds since 1970: the first tick of a step that follows it.
    #[must_use]
    pub fn cure_ended(&self) -> Option<i64> {
        let steps = self.recipe.steps.iter().enumerate();
        steps
            .filter(|(_, s)| s.act != Do::Cure)
            .find_map(|(i, _)| self.step(i))
            .map(|t| t.at)
    }

    /// When a size class was taken out of the cure before the others, in milliseconds since 1970.
    #[must_use]
    pub fn drawn(&self, class: u32) -> Option<i64> {
        self.tick(&format!("draw:{class}")).map(|t| t.at)
    }

    /// By its ticks it is in its cure: rubbed, and nothing that follows the cure is begun.
    #[must_use]
    pub fn is_in_cure(&self) -> bool {
        let cures = self.recipe.steps.iter().any(|s| s.act == Do::Cure);
        cures && self.tick("rub").is_some() && self.cure_ended().is_none() && self.tick("end").is_none()
    }

    /// Minutes from the rub to the end of the cure; nothing until both were ticked.
    #[must_use]
    pub fn stayed(&self) -> Option<Decimal> {
        let (begun, ended) = (self.tick("rub")?.at, self.cure_ended()?);
        Decimal::from(ended.saturating_sub(begun).max(0)).over(dec!(60_000))
    }
}

/// The beginning of the day of the kill, as if there were no time zones: at most half a day early or late, and what
/// keeps for days is printed as a day.
#[must_use]
pub fn killed(day: &str) -> Option<i64> {
    let mut parts = day.splitn(3, '-').map(str::parse::<i64>);
    let (year, month, day) = (parts.next()?.ok()?, parts.next()?.ok()?, parts.next()?.ok()?);
    // Days from 1970-01-01 in the proleptic Gregorian calendar, counted from 1 March.
    let (year, month) = if month > 2 {
        (year, month.checked_sub(3)?)
    } else {
        (year.checked_sub(1)?, month.checked_add(9)?)
    };
    let (era, of_era) = (year.div_euclid(400), year.rem_euclid(400));
    let leap = of_era.div_euclid(4).checked_sub(of_era.div_euclid(100))?;
    let of_year = month
        .checked_mul(153)?
        .checked_add(2)?
        .div_euclid(5)
        .checked_add(day)?
        .checked_sub(1)?;
    let days = era
        .checked_mul(146_097)?
        .checked_add(of_era.checked_mul(365)?)?
        .checked_add(leap)?
        .checked_add(of_year)?
        .checked_sub(719_468)?;
    days.checked_mul(DAY)
}
