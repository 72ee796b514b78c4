//! What is in it, in the order of weight as it went in, with its allergens.

use super::written::{CureSalt, Inside, Meat, PaperFact};
use crate::batch::{Batch, green};
use crate::order::InOrder;
use crate::pantry::{self, ItemName, OWN};
use crate::quantity::Mass;
use crate::recipe::{self, Allergens};
use crate::weigh::{Settings, WeighLine, WeighSheet};
use rust_decimal::Decimal;

/// The meat and the rest as weighed, the heaviest first.
pub fn contents(batch: &Batch, sheet: &WeighSheet, meats: &[Meat], settings: &Settings) -> PaperFact {
    let grams = |line: &WeighLine| Mass::read(&line.weight, None).map(Mass::base).unwrap_or_default();
    let mut rows: Vec<(Decimal, Vec<Inside>)> = sheet
        .bowl
        .iter()
        .chain(&sheet.vessel)
        .map(|l| (grams(l), vec![of_line(batch, l)]))
        .collect();
    let put_in = batch.put_in(settings.kit());
    for portion in put_in.unwrap_or_default() {
        let unnamed = Inside::Cure {
            item: None,
            salts: vec![CureSalt::Nitrite],
        };
        rows.push((portion.weight.typical, vec![unnamed]));
    }
    let weight = green(&batch.pieces).map(|g| g.grams.typical).unwrap_or_default();
    let meat = |m: &Meat| Inside::Meat { of: m.clone() };
    rows.push((weight, meats.iter().map(meat).collect()));
    rows.retain(|(grams, _)| *grams > Decimal::ZERO);
    rows.order_by_key(|(grams, _)| std::cmp::Reverse(*grams));
    let Allergens { known, unknown } = recipe::allergens(&batch.recipe);
    PaperFact::Contents {
        inside: rows.into_iter().flat_map(|(_, row)| row).collect(),
        allergens: known,
        unread: unknown.into_iter().map(str::to_owned).collect(),
    }
}

/// A line as an ingredient; a cure says what it is, by what its packet prints.
fn of_line(batch: &Batch, line: &WeighLine) -> Inside {
    let (kind, at) = line.id.split_once(':').unwrap_or_default();
    let at = at.parse::<usize>().unwrap_or(usize::MAX);
    let cure = batch.recipe.cures.get(at).filter(|_| kind == "cure");
    let Some(cure) = cure else {
        let of = line.item.clone().unwrap_or_else(|| ItemName::of(OWN, ""));
        return Inside::Item { of };
    };
    let salts = [(cure.nitrite, CureSalt::Nitrite), (cure.nitrate, CureSalt::Nitrate)];
    let salts = salts.into_iter().filter(|(share, _)| !share.base().is_zero());
    Inside::Cure {
        item: pantry::ingredient(&cure.item).map(|i| i.key),
        salts: salts.map(|(_, salt)| salt).collect(),
    }
}
