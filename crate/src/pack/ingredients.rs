//! What is in it, in the order of weight as it went in, with its allergens.

use crate::batch::{Batch, green};
use crate::order::InOrder;
use crate::pantry;
use crate::quantity::Mass;
use crate::recipe::{self, Allergens};
use crate::weigh::{Settings, WeighLine, WeighSheet};
use rust_decimal::Decimal;

/// What is in a batch.
pub struct Contents {
    /// `mallard breast, fine sea salt, cure no. 1 (salt, sodium nitrite)`.
    pub list: String,
    /// `Contains: mustard.`, or that the list holds none; and what is not known of the user's own.
    pub allergens: String,
}

/// The meat first and the rest as weighed, the heaviest first.
pub fn contents(batch: &Batch, sheet: &WeighSheet, meat: &str, settings: &Settings) -> Contents {
    let grams = |line: &WeighLine| Mass::read(&line.weight, None).map(Mass::base).unwrap_or_default();
    let mut rows: Vec<(Decimal, String)> = sheet
        .bowl
        .iter()
        .chain(&sheet.vessel)
        .map(|l| (grams(l), said(batch, l)))
        .collect();
    let put_in = batch.put_in(settings.kit());
    for portion in put_in.unwrap_or_default() {
        rows.push((portion.weight.typical, "cure (salt, sodium nitrite)".to_owned()));
    }
    let weight = green(&batch.pieces).map(|g| g.grams.typical).unwrap_or_default();
    rows.push((weight, meat.to_owned()));
    rows.retain(|(grams, _)| *grams > Decimal::ZERO);
    rows.order_by_key(|(grams, _)| std::cmp::Reverse(*grams));
    let names: Vec<String> = rows.into_iter().map(|(_, name)| name).collect();
    Contents {
        list: names.join(", "),
        allergens: allergens(batch),
    }
}

/// The name of a line; a cure says what it is, by what its packet prints.
fn said(batch: &Batch, line: &WeighLine) -> String {
    let (kind, at) = line.id.split_once(':').unwrap_or_default();
    let at = at.parse::<usize>().unwrap_or(usize::MAX);
    let cure = batch.recipe.cures.get(at).filter(|_| kind == "cure");
    let Some(cure) = cure else {
        // The user's own word stays as it was typed.
        let own = batch.recipe.lines.get(at).is_some_and(|l| !l.name.is_empty());
        return if own {
            line.name.clone()
        } else {
            line.name.to_lowercase()
        };
    };
    let salts = [(cure.nitrite, "sodium nitrite"), (cure.nitrate, "sodium nitrate")];
    let salts = salts.into_iter().filter(|(share, _)| !share.base().is_zero());
    let salts: Vec<&str> = salts.map(|(_, name)| name).collect();
    let name = pantry::ingredient(&cure.item).map_or(line.name.as_str(), |i| i.name);
    format!("{} (salt, {})", name.to_lowercase(), salts.join(", "))
}

fn allergens(batch: &Batch) -> String {
    let Allergens { known, unknown } = recipe::allergens(&batch.recipe);
    let contains = match (known.is_empty(), unknown.is_empty()) {
        (true, true) => "No listed allergen is named in the recipe; packets not checked.".to_owned(),
        (true, false) => String::new(),
        (false, _) => format!("Contains: {}.", known.join(", ")),
    };
    let not_known = if unknown.is_empty() {
        String::new()
    } else {
        format!("Not known, read its packet: {}.", unknown.join(", "))
    };
    format!("{contains} {not_known}").trim().to_owned()
}
