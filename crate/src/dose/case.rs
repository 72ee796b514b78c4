//! What is to be judged: a list of weighed cures, or what somebody says went in.

use super::agent::Agent;
use super::formula::{Ingoing, ingoing};
use super::limits::Profile;
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Kind, Mass, MassKind, Problem, Range, System, Volume, plain};
use crate::recipe::{Eaten, Method};
use rust_decimal::{Decimal, dec};

/// One cure in the bowl.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Dosed {
    /// Its strength.
    pub agent: Agent,
    /// Grams of it, with the scale's half-step either way.
    pub weight: Range,
    /// Proportion by which its strength may be off: nought for a packet, more for a premix.
    pub spread: Decimal,
    /// What the recipe aims at, ppm.
    pub aim: Decimal,
}

/// Where the dose comes from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Put {
    /// Weighed by the list.
    Weighed(Vec<Dosed>),
    /// Put in by another measure.
    Measured(Measured),
    /// The recipe has no cure in it.
    NoCure,
}

/// What somebody says went in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Measured {
    /// As it was said: `1 tbsp`.
    pub said: String,
    /// Grams of it.
    pub weight: Range,
    /// Level teaspoons in the spoon and how many such spoons, where it was a spoon.
    pub spoon: Option<SpoonUsed>,
    /// Its strength; nothing when not known.
    pub agent: Option<Agent>,
}

/// A level spoon and how many of it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SpoonUsed {
    /// `teaspoon` or `tablespoon`.
    pub name: &'static str,
    /// How many.
    pub count: Decimal,
}

/// All that a verdict needs.
#[derive(Clone, Debug)]
pub struct Case<'a> {
    /// The jurisdiction.
    pub profile: &'a Profile,
    /// Cooked, or hung for months.
    pub eaten: Eaten,
    /// How it was put on.
    pub method: Method,
    /// Green weight, grams.
    pub green: Range,
    /// What the ppm are counted on, grams.
    pub base: Range,
    /// False while some pieces have no weight.
    pub weighed: bool,
    /// What goes in.
    pub put: Put,
    /// The scale's step, grams.
    pub step: Decimal,
    /// Units for reading.
    pub units: System,
}

impl Case<'_> {
    /// What goes in, in ppm; `None` when the strength or a weight is not known.
    pub fn ingoing(&self) -> Option<Ingoing> {
        match &self.put {
            Put::Weighed(dosed) => {
                let nought = Ingoing {
                    nitrite: Range::point(Decimal::ZERO),
                    nitrate: Range::point(Decimal::ZERO),
                };
                dosed.iter().try_fold(nought, |sum, d| {
                    let one = ingoing(d.agent, d.weight, self.base, d.spread)?;
                    Some(Ingoing {
                        nitrite: sum.nitrite.plus(one.nitrite)?,
                        nitrate: sum.nitrate.plus(one.nitrate)?,
                    })
                })
            }
            Put::Measured(m) => ingoing(m.agent?, m.weight, self.base, Decimal::ZERO),
            Put::NoCure => None,
        }
    }
}

/// Reads `1 tbsp`, `2½ tsp` or `3.5 g` of cure. A spoon is a range: 4.2 to 8.3 g a level teaspoon.
///
/// # Errors
/// The problem of the text; [`Code::TooSmall`] for nought.
pub fn measured(said: &str, agent: Option<Agent>, step: Decimal) -> Result<Measured, Problem> {
    let teaspoon = dec!(4.92892159375);
    let (weight, spoon) = match (Mass::read(said, None), Volume::read(said, None)) {
        (Ok(mass), _) => (Range::weighed(mass.base(), step), None),
        (Err(_), Ok(volume)) => {
            let spoons = volume.base().over(teaspoon).map(|t| t.round_dp(8));
            let of_three = |t: Decimal| {
                t.over(dec!(3))
                    .filter(|c| c.times(dec!(4)).is_some_and(|q| q.fract().is_zero()))
            };
            let in_tablespoons = said.to_lowercase().contains("tb") || said.to_lowercase().contains("table");
            let used = spoons.map(|t| match of_three(t).filter(|_| in_tablespoons) {
                Some(count) => SpoonUsed {
                    name: "tablespoon",
                    count,
                },
                None => SpoonUsed {
                    name: "teaspoon",
                    count: t,
                },
            });
            let level = crate::pantry::ingredient("cure-1")
                .and_then(|i| i.spoon)
                .and_then(|s| s.range());
            (spoons.zip(level).and_then(|(t, level)| level.map(|g| g.times(t))), used)
        }
        (Err(as_mass), Err(as_volume)) => {
            // The kinds know of different units; the one that knew the unit says more.
            let told = [as_mass, as_volume].into_iter().find(|p| p.code != Code::WrongUnit);
            return Err(told.filter(|p| p.code != Code::NotRead).unwrap_or_else(|| {
                Problem::new(
                    Code::NotRead,
                    format!("“{said}” is not read. Type level spoons or a weight, such as 1 tbsp, 2½ tsp or 3.5 g."),
                )
            }));
        }
    };
    let weight = weight.filter(|w| w.high <= MassKind::facts().max).ok_or_else(|| {
        Problem::new(
            Code::TooLarge,
            "That is more cure than this page reckons with. Type what went in, such as 3.5 g.",
        )
    })?;
    if weight.typical.is_zero() {
        return Err(Problem::new(
            Code::TooSmall,
            format!(
                "“{said}” is nothing. Type what went in, such as 1 tsp or {} g.",
                plain(dec!(3.5))
            ),
        ));
    }
    Ok(Measured {
        said: said.trim().to_owned(),
        weight,
        spoon,
        agent,
    })
}
