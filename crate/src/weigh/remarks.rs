//! What is remarked beside the list.

use super::facts::Remark;
use super::lines::line_name;
use super::plan;
use super::work::Work;
use crate::batch::odd_weights;
use crate::quantity::exact::Exact;
use crate::quantity::{fixed, plain};
use rust_decimal::{Decimal, dec};

impl Work<'_> {
    /// Lines that the scale cannot show, salt that the cure alone exceeds, accelerators, weights that are far from the
    /// usual, cure that is in already.
    pub(super) fn remarks(&self) -> Vec<Remark> {
        let mut list = self.of_lines();
        if self.weighs_nothing() {
            list.push(Remark::CureBelowStep);
        }
        list.extend(self.accelerators().into_iter().map(|(_, remark)| remark));
        list.extend(odd_weights(&self.batch.pieces, self.settings.units).map(|odd| Remark::OddWeight { odd }));
        list.extend(self.put_in.iter().map(|p| Remark::InAlready { portion: p.told() }));
        if self.batch.premix && self.parts.is_none() && self.put_in.is_empty() {
            list.push(Remark::NoPremix);
        }
        list
    }

    fn of_lines(&self) -> Vec<Remark> {
        let (recipe, rounded) = (&self.batch.recipe, &self.rounded);
        let mut remarks = Vec::new();
        for ((line, exact), grams) in recipe.lines.iter().zip(&rounded.exact).zip(&rounded.lines) {
            if grams.is_zero() && *exact > Decimal::ZERO {
                remarks.push(Remark::BelowStep {
                    of: line_name(line),
                    weight: format!("{} g", plain(exact.half_away(2))),
                });
            }
        }
        let gram = |grams: Decimal| format!("{} g", fixed(grams, 1));
        let brings = rounded.cure_salt;
        match plan::salt_line(recipe).and_then(|i| self.plan.lines.get(i)) {
            Some(wanted) if brings > *wanted => remarks.push(Remark::SaltInCure {
                premix: rounded.cures.iter().any(|c| c.parts.is_some())
                    || recipe.cures.iter().any(|c| c.made.is_some()),
                brings: gram(brings),
                aimed: gram(*wanted),
            }),
            None if brings > dec!(0.05) => remarks.push(Remark::NoSaltLine { brings: gram(brings) }),
            _ => {}
        }
        if recipe.cures.iter().any(|c| c.item == "cure-sweet") {
            remarks.push(Remark::SweetCure);
        }
        if recipe.cures.iter().any(|c| c.made.is_some_and(|m| m.in_water)) {
            remarks.push(Remark::StockOfTheDay);
        }
        remarks
    }
}
