//! The book of batches: what went in and what came out, and which batch a bag without a label may be of.

use super::stock::{Kept, packs_of};
use crate::batch::{Piece, green};
use crate::order::InOrder;
use crate::quantity::exact::Exact;
use crate::quantity::{Fraction, Length, Mass, Problem};
use crate::weigh::Settings;
use rust_decimal::{Decimal, dec};
use serde::{Deserialize, Serialize};

/// How far a bag may be from what was weighed: what is in the cure with it, what ran off, what a spoon of scale is off.
/// Our own judgement.
const NEAR: Decimal = dec!(0.15);
/// How far a thickness may be off, in millimetres: our own judgement.
const NEAR_MM: Decimal = dec!(4);

/// What the book needs of a batch, and no more: a thousand of them are asked about at a key press.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// The batch's id.
    pub id: String,
    /// Its size classes.
    pub pieces: Vec<Piece>,
    /// What came out, where it is noted.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub out: Option<Mass>,
}

/// The book of some batches.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Ledger {
    /// In the order asked; for a bag that is sought only those that may be it, the nearest on top.
    pub rows: Vec<LedgerRow>,
    /// Green weight of all that are weighed.
    pub green: String,
    /// What came out of those of which both are known.
    pub out: Option<OutOf>,
}

/// What came out of what went in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct OutOf {
    /// Weight that came out.
    pub weight: String,
    /// Green weight that it came out of; nothing where that is not known.
    pub of: Option<String>,
    /// The first as a share of the second, to a tenth of a per cent.
    pub share: Option<String>,
}

/// Why a bag may be of a batch: what of it weighs or measures about as much.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum MayBe {
    /// One piece of a size class.
    One {
        /// Place of the class.
        class: usize,
        /// What it weighs.
        weight: String,
    },
    /// All pieces of a size class.
    All {
        /// Place of the class.
        class: usize,
        /// What they weigh.
        weight: String,
    },
    /// All pieces of all classes.
    Every {
        /// What they weigh.
        weight: String,
    },
    /// One of its packs.
    Pack {
        /// What it weighs.
        weight: String,
    },
    /// A size class as thick.
    Thick {
        /// Place of the class.
        class: usize,
        /// Its thickest part.
        thickness: String,
    },
}

/// One batch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LedgerRow {
    /// Its id.
    pub batch: String,
    /// Green weight; nothing before all is weighed.
    pub green: Option<String>,
    /// What came out.
    pub out: Option<OutOf>,
    /// Why a bag may be of it, the nearest first.
    pub why: Vec<MayBe>,
}

/// The book of these batches; with a weight or a thickness, which of them such a bag may be of.
///
/// # Errors
/// The problems of the settings.
pub fn ledger(
    batches: &[Entry],
    stock: &[Kept],
    weight: Option<Mass>,
    thickness: Option<Length>,
    settings: &Settings,
) -> Result<Ledger, Vec<Problem>> {
    let problems = settings.problems();
    if !problems.is_empty() {
        return Err(problems);
    }
    let show = |grams: Decimal| Mass::new(grams).map_or_else(|_| String::new(), |m| m.show(settings.units).text);
    let (mut all, mut from, mut came) = (Decimal::ZERO, Decimal::ZERO, Decimal::ZERO);
    let mut rows = Vec::new();
    for batch in batches {
        let packs = packs_of(&batch.id, stock);
        let mut why = Vec::new();
        let mut off = Decimal::ZERO;
        if let Some(sought) = weight {
            let mut near = weights(&batch.pieces, &packs);
            near.retain_mut(|(_, of, away)| {
                let gap = sought.base().less(*of).and_then(|gap| gap.abs().over(*of));
                *away = gap.unwrap_or(Decimal::ONE);
                *away <= NEAR
            });
            near.order_by_key(|(_, _, away)| *away);
            let Some((_, _, nearest)) = near.first() else {
                continue;
            };
            off = *nearest;
            why.extend(near.iter().map(|(part, of, _)| part.weighing(show(*of))));
        }
        if let Some(sought) = thickness {
            let away = |p: &Piece| Some(p.thickness?.base().less(sought.base())?.abs());
            let classes = batch.pieces.iter().enumerate();
            let near = classes.filter(|(_, p)| away(p).is_some_and(|a| a <= NEAR_MM));
            let near: Vec<(usize, &Piece)> = near.collect();
            if near.is_empty() {
                continue;
            }
            off = off
                .plus(near.iter().filter_map(|(_, p)| away(p)).min().unwrap_or_default())
                .unwrap_or(off);
            let thick = |(class, p): &(usize, &Piece)| {
                Some(MayBe::Thick {
                    class: *class,
                    thickness: p.thickness?.show(settings.units).text,
                })
            };
            why.extend(near.iter().filter_map(thick));
        }
        let green = green(&batch.pieces).ok().filter(|g| g.weighed).map(|g| g.grams.typical);
        let sum = || {
            packs
                .iter()
                .try_fold(Decimal::ZERO, |sum, p| sum.plus(*p))
                .filter(|s| *s > Decimal::ZERO)
        };
        let out = batch.out.map(Mass::base).or_else(sum);
        all = all.plus(green.unwrap_or_default()).unwrap_or(all);
        let share = green.zip(out).and_then(|(green, out)| {
            from = from.plus(green)?;
            came = came.plus(out)?;
            per_cent(out, green, settings)
        });
        let row = LedgerRow {
            batch: batch.id.clone(),
            green: green.map(show),
            out: out.map(|out| OutOf {
                weight: show(out),
                of: green.map(show),
                share,
            }),
            why,
        };
        rows.push((off, row));
    }
    rows.order_by_key(|(off, _)| *off);
    let share = per_cent(came, from, settings);
    Ok(Ledger {
        rows: rows.into_iter().map(|(_, row)| row).collect(),
        green: show(all),
        out: share.map(|share| OutOf {
            weight: show(came),
            of: Some(show(from)),
            share: Some(share),
        }),
    })
}

fn per_cent(part: Decimal, of: Decimal, settings: &Settings) -> Option<String> {
    let share = Fraction::new(part.times(dec!(100))?.over(of)?.half_away(1)).ok()?;
    Some(share.show(settings.units).text)
}

/// A part of a batch that may lie in a bag.
#[derive(Clone, Copy)]
enum Part {
    One(usize),
    All(usize),
    Every,
    Pack,
}

impl Part {
    const fn weighing(self, weight: String) -> MayBe {
        match self {
            Self::One(class) => MayBe::One { class, weight },
            Self::All(class) => MayBe::All { class, weight },
            Self::Every => MayBe::Every { weight },
            Self::Pack => MayBe::Pack { weight },
        }
    }
}

/// Everything of a batch that may lie in a bag, with its grams.
fn weights(pieces: &[Piece], packs: &[Decimal]) -> Vec<(Part, Decimal, Decimal)> {
    let mut all = Vec::new();
    let mut add = |part: Part, grams: Option<Decimal>| {
        all.extend(grams.filter(|g| *g > Decimal::ZERO).map(|g| (part, g, Decimal::ONE)));
    };
    for (class, piece) in pieces.iter().enumerate() {
        if piece.count > 1 && !piece.about {
            add(Part::One(class), piece.one());
        }
        add(Part::All(class), piece.all());
    }
    if pieces.len() > 1 {
        let sum = green(pieces).ok().filter(|g| g.weighed);
        add(Part::Every, sum.map(|g| g.grams.typical));
    }
    for pack in packs {
        add(Part::Pack, Some(*pack));
    }
    all
}
