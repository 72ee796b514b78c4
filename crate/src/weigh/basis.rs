//! What the list stands on: green weight, aim, salt, accelerators, scale.

use super::accelerator;
use super::facts::{Remark, SaltOf, SheetFact};
use super::model::SaltIn;
use super::plan;
use super::work::Work;
use crate::pantry::Group;
use crate::quantity::exact::Exact;
use crate::quantity::{Figure, Mass, plain};
use crate::recipe::Counted;
use rust_decimal::{Decimal, dec};

/// Least salt in cured meat, per cent of green weight. Common practice, no source.
const LEAST_SALT: Decimal = dec!(1.5);

impl Work<'_> {
    /// Green weight, aims, salt, accelerators and the scale.
    pub(super) fn facts(&self) -> Vec<SheetFact> {
        let green = Mass::new(self.green.meat.typical);
        let mut facts = vec![SheetFact::Green {
            weight: green.map_or_else(|_| String::new(), |m| m.show(self.settings.units).text),
        }];
        facts.extend(self.batch.recipe.cures.iter().map(|cure| SheetFact::Aim {
            ppm: cure.aim.ppm().text,
            by_rule: self.follows,
        }));
        facts.extend(self.salt().map(|(of, percent)| SheetFact::Salt {
            percent: format!("{} %", plain(percent)),
            of,
        }));
        facts.extend(self.accelerators().into_iter().map(|(fact, _)| fact));
        facts.push(SheetFact::Scale {
            step: format!("{} g", plain(self.step)),
        });
        facts
    }

    /// What comes in of it with the share of a brine that goes into the meat.
    pub(super) fn salt_in(&self) -> Option<SaltIn> {
        let (_, comes) = self.salt().filter(|_| self.batch.recipe.method.takes())?;
        Some(SaltIn {
            comes: Figure::new(plain(comes), "%"),
            least: Figure::new(plain(LEAST_SALT), "%"),
            is_short: comes < LEAST_SALT,
        })
    }

    /// Salt as weighed, the cure's included, per cent of the base it is usually given on.
    fn salt(&self) -> Option<(SaltOf, Decimal)> {
        let lines = self.batch.recipe.lines.iter().zip(&self.rounded.lines);
        let (mut salt, mut water) = (self.rounded.cure_salt, Decimal::ZERO);
        for (line, grams) in lines {
            if plan::group(line) == Group::Salt {
                salt = salt.plus(*grams)?;
            } else if line.is_water() {
                water = water.plus(*grams)?;
            }
        }
        let (of, base) = match self.batch.recipe.method.counted() {
            Counted::Green => (SaltOf::Green, self.whole(self.green.meat)?.green.typical),
            Counted::Taken => (SaltOf::TakenUp, self.whole(self.green.meat)?.base()?.typical),
            _ => (SaltOf::MeatAndWater, self.green.meat.typical.plus(water)?),
        };
        Some((of, salt.times(Decimal::ONE_HUNDRED)?.over(base)?.nearest(dec!(0.01))?))
    }

    /// Accelerators with their dose, counted as the cure is.
    pub(super) fn accelerators(&self) -> Vec<(SheetFact, Remark)> {
        let whole = self.whole(self.green.meat);
        let lines = self.batch.recipe.lines.iter().zip(&self.rounded.lines);
        lines
            .filter_map(|(line, grams)| {
                accelerator::told(line, *grams, self.step, whole.as_ref()?, self.rule.ascorbate)
            })
            .collect()
    }
}
