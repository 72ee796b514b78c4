//! What is in the house: cure, salt and spice that came in, less what batches took by their ticks; packs, first in
//! first out; who got what.

use crate::batch::{Batch, Tick};
use crate::dose::AIM;
use crate::order::InOrder;
use crate::pantry::{self, ItemName, OWN};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Figure, Mass, Problem, System, Wrong};
use crate::recipe::{MOST_NAME, name, text};
use crate::standing::{Assurance, Doubt, Packing, Standing};
use crate::weigh::Settings;
use rust_decimal::prelude::ToPrimitive;
use rust_decimal::{Decimal, dec};
use serde::{Deserialize, Serialize};

/// The item of a finished pack.
const PACK: &str = "pack";
/// The item of bags, which are counted.
pub const BAGS: &str = "bags";
/// Most bags in an entry.
const MOST_BAGS: u32 = 10_000;
/// Longest id of a batch.
const MOST_ID: usize = 64;

/// One thing that came into the house: something for the pantry, or a pack.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Stock {
    /// Key in the pantry, `own`, `bags`, or `pack`.
    pub item: String,
    /// What it is called; empty for the pantry's word.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub name: String,
    /// How much came in; nought for bags, and for a pack that is not weighed.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub weight: Mass,
    /// For bags: how many.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "number | null", optional))]
    pub count: Option<u32>,
    /// For a pack: the id of its batch.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<String>"))]
    pub batch: String,
    /// When it came in or was packed, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
    /// For a pack: it lies in the freezer.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub frozen: bool,
    /// For a pack: its use-by.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "number | null", optional))]
    pub until: Option<i64>,
    /// For a pack: who got it, or how it was eaten. Empty while it is here.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub to: String,
    /// When it went.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "number | null", optional))]
    pub gone: Option<i64>,
}

impl Stock {
    /// Everything that is wrong with it.
    pub fn problems(&self) -> Vec<Problem> {
        let known = [PACK, BAGS].contains(&self.item.as_str()) || pantry::ingredient(&self.item).is_some();
        let named = if known {
            text(&self.name, MOST_NAME)
        } else {
            name(&self.name)
        };
        let counted = if self.item == BAGS && !self.count.is_some_and(|n| (1..=MOST_BAGS).contains(&n)) {
            Err(Problem::of(Code::Missing, Wrong::BagsNotCounted { most: MOST_BAGS }))
        } else {
            Ok(())
        };
        let from = text(&self.batch, MOST_ID);
        [
            (named, "name"),
            (text(&self.to, MOST_NAME), "to"),
            (counted, "count"),
            (from, "batch"),
        ]
        .into_iter()
        .filter_map(|(checked, at)| checked.err().map(|p| p.at(at)))
        .collect()
    }
}

/// A stored thing under its id.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Kept {
    /// The id.
    pub id: String,
    /// The thing.
    pub stock: Stock,
}

/// The stock screen.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LarderSheet {
    /// One row for each thing of the pantry.
    pub rows: Vec<LarderRow>,
    /// Packs that are here, the one to eat first on top.
    pub packs: Vec<PackRow>,
    /// Packs that went, the latest on top.
    pub gone: Vec<PackRow>,
}

/// One thing of the pantry.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LarderRow {
    /// What it is called; nothing for bags.
    pub of: Option<ItemName>,
    /// Ids of what came in.
    pub ids: Vec<String>,
    /// What came in, went and is left.
    pub held: Held,
    /// True where more was ticked than came in: something that came in is not written down.
    pub short: bool,
}

/// What came in of a thing, what went of it, and what is left: nought where more went than came in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Held {
    /// Bags, counted: batches and packs took them.
    Bags {
        /// How many came in.
        came: u32,
        /// How many went.
        went: u32,
        /// How many are left.
        left: u32,
    },
    /// What is weighed: batches took it.
    Weighed {
        /// What came in.
        came: String,
        /// What went.
        went: String,
        /// What is left.
        left: String,
        /// Of a cure: how far what is left goes; nothing of anything else, and where more went than came in.
        cures: Option<Reach>,
    },
}

/// How far a cure goes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Reach {
    /// So much meat, in a rub.
    pub meat: String,
    /// At this aim, in ppm of sodium nitrite.
    pub ppm: u32,
}

/// A pack.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PackRow {
    /// Its id.
    pub id: String,
    /// What it is.
    pub name: String,
    /// Its weight; nothing where it is not weighed.
    pub weight: Option<Figure>,
    /// The id of its batch, where it was put in from its labels.
    pub batch: String,
    /// True in the freezer.
    pub frozen: bool,
    /// Its use-by.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub until: Option<i64>,
    /// True when that day is past.
    pub over: bool,
    /// What forbids to keep it or to give it, where its batch is known.
    pub doubts: Vec<Doubt>,
    /// Its batch is known, and nothing shows that it was cooked: for whom it is not stands where it is given.
    pub raw: bool,
    /// Who got it.
    pub to: String,
    /// When it went.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub gone: Option<i64>,
}

/// What is left of everything at `now`, with what these batches took since it came in.
///
/// # Errors
/// The problems of the settings.
pub fn larder(
    kept: &[Kept],
    batches: &[(&str, &Batch)],
    now: i64,
    settings: &Settings,
) -> Result<LarderSheet, Vec<Problem>> {
    let problems = settings.problems();
    if !problems.is_empty() {
        return Err(problems);
    }
    // What forbids each batch that has a pack here; a pack that lies in the freezer was packed for it.
    let forbids = |frozen: bool| -> Vec<(&str, (Vec<Doubt>, bool))> {
        let here = |id: &str| {
            let mut packs = kept
                .iter()
                .map(|k| &k.stock)
                .filter(|s| s.item == PACK && s.gone.is_none());
            packs.any(|s| s.batch == id && s.frozen == frozen)
        };
        let packing = Packing { frozen, vacuum: false };
        let of = |batch| {
            let standing = Standing::of(batch, settings, now, packing);
            let raw = standing.leave(Assurance::Cooked).is_none();
            (standing.barring(Assurance::Gift), raw)
        };
        let with = batches.iter().filter(|(id, _)| here(id));
        with.map(|(id, batch)| (*id, of(*batch))).collect()
    };
    let (cold, frozen) = (forbids(false), forbids(true));
    let judged = |stock: &Stock| -> (Vec<Doubt>, bool) {
        let known = if stock.frozen { &frozen } else { &cold };
        let found = known.iter().find(|(id, _)| *id == stock.batch);
        found.map(|(_, judged)| judged.clone()).unwrap_or_default()
    };
    let row_of = |k: &Kept, (doubts, raw): (Vec<Doubt>, bool)| PackRow {
        doubts,
        raw,
        id: k.id.clone(),
        name: k.stock.name.clone(),
        weight: (k.stock.weight.base() > Decimal::ZERO).then(|| k.stock.weight.show(settings.units)),
        batch: k.stock.batch.clone(),
        frozen: k.stock.frozen,
        until: k.stock.until,
        over: k.stock.until.is_some_and(|until| until < now),
        to: k.stock.to.clone(),
        gone: k.stock.gone,
    };
    let pack = |k: &Kept| row_of(k, judged(&k.stock));
    let (packs, things): (Vec<&Kept>, Vec<&Kept>) = kept.iter().partition(|k| k.stock.item == PACK);
    let (mut gone, mut here): (Vec<PackRow>, Vec<PackRow>) =
        packs.into_iter().map(pack).partition(|p| p.gone.is_some());
    // What has no date is oldest for all anyone knows.
    here.order_by_key(|p| p.until);
    gone.order_by_key(|p| std::cmp::Reverse(p.gone));
    let mut names: Vec<(&str, &str)> = Vec::new();
    for thing in &things {
        let named = named(&thing.stock.item, &thing.stock.name);
        if !names.contains(&named) {
            names.push(named);
        }
    }
    let batches: Vec<&Batch> = batches.iter().map(|(_, batch)| *batch).collect();
    let rows = names.into_iter().filter_map(|of| row(of, kept, &batches, settings));
    Ok(LarderSheet {
        rows: rows.collect(),
        packs: here,
        gone,
    })
}

/// By which a thing is known: its key, and the user's word only where there is no key.
pub fn named<'a>(item: &'a str, name: &'a str) -> (&'a str, &'a str) {
    (item, if item == OWN { name } else { "" })
}

/// What came in of a thing and what went of it since: grams, or how many bags. Nothing where none came in.
pub fn came_and_went(of: (&str, &str), kept: &[Kept], batches: &[&Batch]) -> Option<(Decimal, Decimal)> {
    let mine = || kept.iter().map(|k| &k.stock).filter(|k| named(&k.item, &k.name) == of);
    let since = mine().map(|k| k.at).min()?;
    let bags = of.0 == BAGS;
    let came = mine().try_fold(Decimal::ZERO, |sum, k| {
        sum.plus(if bags {
            Decimal::from(k.count.unwrap_or(0))
        } else {
            k.weight.base()
        })
    })?;
    let mut went = Decimal::ZERO;
    for batch in batches {
        for tick in batch.ticks.iter().filter(|t| t.at >= since) {
            let one = (bags && tick.of == "label").then_some(Decimal::ONE);
            went = went.plus(one.or_else(|| taken(batch, tick, of)).unwrap_or_default())?;
        }
    }
    // Every pack is in a bag of its own.
    let packs = kept
        .iter()
        .filter(|k| bags && k.stock.item == PACK && k.stock.at >= since);
    Some((came, went.plus(Decimal::from(packs.count()))?))
}

fn row(of: (&str, &str), kept: &[Kept], batches: &[&Batch], settings: &Settings) -> Option<LarderRow> {
    let mine = kept.iter().filter(|k| named(&k.stock.item, &k.stock.name) == of);
    let (came, took) = came_and_went(of, kept, batches)?;
    let bags = of.0 == BAGS;
    let left = came.less(took)?;
    let short = left < Decimal::ZERO;
    let left = left.max(Decimal::ZERO);
    let shown = |of: Decimal, units: System| Mass::new(of).ok().map(|m| m.show(units).text);
    // Cure, salt and spice are grams for everybody: a scale shows grams.
    let show = |of: Decimal| shown(of, System::Metric);
    let held = if bags {
        Held::Bags {
            came: came.to_u32()?,
            went: took.to_u32()?,
            left: left.to_u32()?,
        }
    } else {
        let meat = reach(of.0, left)
            .filter(|_| !short)
            .and_then(|of| shown(of, settings.units));
        Held::Weighed {
            came: show(came)?,
            went: show(took)?,
            left: show(left)?,
            cures: meat.map(|meat| Reach { meat, ppm: AIM }),
        }
    };
    Some(LarderRow {
        of: (!bags).then(|| ItemName::of(of.0, of.1)),
        ids: mine.map(|k| k.id.clone()).collect(),
        held,
        short,
    })
}

/// What a tick took of a thing; of a premix only the cure that was in it.
fn taken(batch: &Batch, tick: &Tick, of: (&str, &str)) -> Option<Decimal> {
    let (kind, at) = tick.of.split_once(':')?;
    let at: usize = at.parse().ok()?;
    let weight = tick.weight?.base();
    match kind {
        "line" => {
            let line = batch.recipe.lines.get(at)?;
            (named(&line.item, &line.name) == of).then_some(weight)
        }
        "cure" => {
            let cure = batch.recipe.cures.get(at).filter(|c| (c.item.as_str(), "") == of)?;
            let part = |now: Option<Decimal>, neat: Decimal| now.and_then(|now| now.over(neat));
            let thinned = part(tick.nitrite.map(|n| n.base()), cure.nitrite.base())
                .or_else(|| part(tick.nitrate.map(|n| n.base()), cure.nitrate.base()));
            weight.times(thinned.unwrap_or(Decimal::ONE).min(Decimal::ONE))
        }
        _ => None,
    }
}

/// Grams of meat that so much of a cure brings to the aim.
fn reach(item: &str, left: Decimal) -> Option<Decimal> {
    let nitrite = Decimal::from_str_exact(pantry::ingredient(item)?.nitrite).ok()?;
    let ppm = nitrite.times(dec!(10_000))?;
    left.times(ppm)?.over(Decimal::from(AIM))?.half_away(0).into()
}

/// Grams of the packs of a batch that are weighed, here or gone.
pub fn packs_of(batch: &str, kept: &[Kept]) -> Vec<Decimal> {
    let mine = kept.iter().filter(|k| k.stock.item == PACK && k.stock.batch == batch);
    mine.map(|k| k.stock.weight.base())
        .filter(|w| *w > Decimal::ZERO)
        .collect()
}
