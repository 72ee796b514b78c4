//! What is in it, in the order of weight as it went in, with its allergens.

use super::written::{CureSalt, Inside, Meat, PaperFact};
use crate::batch::{Batch, green};
use crate::order::InOrder;
use crate::pantry;
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
        let unnamed = Inside {
            name: String::new(),
            own: false,
            cure: vec![CureSalt::Nitrite],
        };
        rows.push((portion.weight.typical, vec![unnamed]));
    }
    let weight = green(&batch.pieces).map(|g| g.grams.typical).unwrap_or_default();
    let meat = |m: &Meat| Inside {
        name: m.name.clone(),
        own: m.own,
        cure: Vec::new(),
    };
    rows.push((weight, meats.iter().map(meat).collect()));
    rows.retain(|(grams, _)| *grams > Decimal::ZERO);
    rows.order_by_key(|(grams, _)| std::cmp::Reverse(*grams));
    let Allergens { known, unknown } = recipe::allergens(&batch.recipe);
    let owned = |names: Vec<&str>| names.into_iter().map(str::to_owned).collect();
    PaperFact::Contents {
        inside: rows.into_iter().flat_map(|(_, row)| row).collect(),
        allergens: owned(known),
        unread: owned(unknown),
    }
}

/// A line as an ingredient; a cure says what it is, by what its packet prints.
fn of_line(batch: &Batch, line: &WeighLine) -> Inside {
    let (kind, at) = line.id.split_once(':').unwrap_or_default();
    let at = at.parse::<usize>().unwrap_or(usize::MAX);
    let cure = batch.recipe.cures.get(at).filter(|_| kind == "cure");
    let Some(cure) = cure else {
        return Inside {
            name: line.name.clone(),
            own: batch.recipe.lines.get(at).is_some_and(|l| !l.name.is_empty()),
            cure: Vec::new(),
        };
    };
    let salts = [(cure.nitrite, CureSalt::Nitrite), (cure.nitrate, CureSalt::Nitrate)];
    let salts = salts.into_iter().filter(|(share, _)| !share.base().is_zero());
    let name = pantry::ingredient(&cure.item).map_or("", |i| i.name);
    Inside {
        name: name.to_owned(),
        own: false,
        cure: salts.map(|(_, salt)| salt).collect(),
    }
}
