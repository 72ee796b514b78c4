//! In which unit a person typed what went in, and what a spoon or a cup holds where the rule comes from.

use super::next::SpoonKind;
use crate::pantry::Status;
use crate::quantity::exact::Exact;
use crate::quantity::{Mass, Range, Volume};

/// The unit of what was typed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Unit {
    /// A weight in grams, milligrams or kilograms.
    #[default]
    Gram,
    /// A thousandth of a gram: never taken for grams.
    Milligram,
    /// A thousand grams.
    Kilogram,
    /// An ounce.
    Ounce,
    /// A pound.
    Pound,
    /// A teaspoon.
    Teaspoon,
    /// A tablespoon.
    Tablespoon,
    /// A cup.
    Cup,
    /// A millilitre or a litre.
    Millilitre,
    /// A packet, by the weight printed on it.
    Packet,
}

/// One row of `tables/spoons.csv`.
#[derive(Clone, Copy, Debug)]
pub struct SpoonSize {
    /// Key of the jurisdiction.
    pub profile: &'static str,
    /// Teaspoon, tablespoon or cup.
    pub unit: Unit,
    /// Millilitres of a level one.
    pub ml: Range,
    /// Where that comes from.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}

impl Unit {
    /// The smallest unit of a text that is a weight or a volume: `7 lb 3 oz` is in ounces.
    pub(super) fn of(text: &str) -> Option<Self> {
        let is = |unit: &str| {
            let one = format!("1 {unit}");
            let same = |named: &str| {
                let mass = Mass::read(&one, None).ok().map(Mass::base);
                let volume = Volume::read(&one, None).ok().map(Volume::base);
                let other = format!("1 {named}");
                (mass.is_some() && mass == Mass::read(&other, None).ok().map(Mass::base))
                    || (volume.is_some() && volume == Volume::read(&other, None).ok().map(Volume::base))
            };
            [
                ("mg", Self::Milligram),
                ("g", Self::Gram),
                ("kg", Self::Kilogram),
                ("oz", Self::Ounce),
                ("lb", Self::Pound),
                ("tsp", Self::Teaspoon),
                ("tbsp", Self::Tablespoon),
                ("cup", Self::Cup),
                ("ml", Self::Millilitre),
                ("l", Self::Millilitre),
            ]
            .into_iter()
            .find(|(named, _)| same(named))
            .map(|(_, unit)| unit)
        };
        let last = text.rfind(|c: char| c.is_ascii_digit() || !c.is_ascii() && c.is_numeric());
        let behind = text.get(last?..)?.trim_start_matches(char::is_numeric);
        is(behind.trim().trim_end_matches('.'))
    }

    /// The spoon to weigh, where it was measured by volume.
    pub(super) const fn spoon(self) -> Option<SpoonKind> {
        match self {
            Self::Tablespoon => Some(SpoonKind::Tablespoon),
            Self::Teaspoon | Self::Cup | Self::Millilitre => Some(SpoonKind::Teaspoon),
            _ => None,
        }
    }

    /// Millilitres of a level one where the rule of `profile` holds; by the first jurisdiction where it has no row.
    /// Nothing for what is no spoon.
    fn size(self, profile: &str) -> Option<Range> {
        let rows = || crate::tables::SPOONS.iter().filter(|s| s.unit == self);
        let row = rows().find(|s| s.profile == profile).or_else(|| rows().next());
        row.map(|s| s.ml)
    }

    /// By how much a level one holds more than the US one that the weighings of the pantry were made with.
    pub(super) fn over_us(self, profile: &str) -> Option<Range> {
        let us = self.size("us-home")?.low;
        self.size(profile)?.map(|ml| ml.over(us))
    }
}
