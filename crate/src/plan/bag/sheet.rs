//! From a bag to green weight, what to buy and how much room it takes.

use super::facts::{BagBasis, HoldsBag, HousePlace, HouseRoom, InHouse, LeftOf, RackRoom, Spread, Wanted};
use super::game::{Game, game};
use super::own::own;
use super::shopping::{Share, shopping};
use crate::batch::Batch;
use crate::dose::{Caution, cautions, dressing_keys};
use crate::pack::Kept;
use crate::plan::room;
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Mass, Problem, Range, System, Wrong};
use crate::recipe::{Do, Recipe};
use crate::weigh::Settings;
use rust_decimal::prelude::ToPrimitive;
use rust_decimal::{Decimal, dec};
use serde::{Deserialize, Serialize};

/// Most rows of one plan.
const MOST_ROWS: usize = 40;
/// Most birds or animals in a row.
const MOST: u32 = 5000;
/// Most recipes of one plan.
const MOST_RECIPES: usize = 12;

/// Content of `plan_bag`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskBag {
    /// What is in the bag.
    pub rows: Vec<BagAsk>,
    /// The recipes it is for: then the answer says what to buy.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Recipe>>"))]
    pub recipes: Vec<Recipe>,
    /// Pieces to a pack, for the bags; nothing where no bags are to be counted.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub per_pack: Option<u32>,
    /// What is in the house.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Kept>>"))]
    pub stock: Vec<Kept>,
    /// Batches of before, for the own weights.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Batch>>"))]
    pub batches: Vec<Batch>,
    /// The user's settings.
    pub settings: Settings,
}

/// One species, or one animal.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct BagAsk {
    /// Key of a row of the table of game.
    pub of: String,
    /// Hunters, 1 for what is there already.
    pub hunters: u32,
    /// Birds or animals for each.
    pub each: u32,
    /// `each` counts pieces, not animals: one haunch of a deer that was shared.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub by_piece: bool,
    /// Weight of one animal as the row weighs it; nothing for what is usual.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub weight: Option<Mass>,
    /// Index of its recipe; nothing where it is for none yet.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "number | null", optional))]
    pub recipe: Option<usize>,
}

/// The plan of a bag.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BagSheet {
    /// One for each row asked about, in order.
    pub rows: Vec<BagRow>,
    /// Pieces in all.
    pub pieces: u32,
    /// Green weight in all, typical.
    pub green: String,
    /// The same with both ends.
    pub range: Spread,
    /// What to buy for the recipes: enough for the high end.
    pub buy: Vec<Buy>,
    /// What is left at the end of each recipe, with its source.
    pub left: Vec<LeftOf>,
    /// Room on a rack or a shelf.
    pub room: Option<RackRoom>,
    /// Whether the refrigerator and the smoker have it, where the settings know them.
    pub places: Vec<HouseRoom>,
    /// Cautions that stand beside it.
    pub cautions: Vec<Caution>,
}

/// One row of the plan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BagRow {
    /// `Mallard breast`.
    pub name: &'static str,
    /// Key of its cut, or `own`.
    pub cut: &'static str,
    /// Pieces.
    pub pieces: u32,
    /// Grams of one piece, with both ends.
    pub each: Spread,
    /// Green weight of all, with both ends.
    pub all: Spread,
    /// Where the figures come from, with their status.
    pub basis: BagBasis,
}

/// One thing to buy.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Buy {
    /// The table's name, or the user's own word; empty for bags.
    pub name: String,
    /// How much of it.
    pub wanted: Wanted,
    /// Enough for the high end.
    pub most: String,
    /// What is in the house; nothing where none of it is written down.
    pub has: Option<InHouse>,
}

/// Plans a bag: pieces, green weight, what to buy, room.
///
/// # Errors
/// [`Code::Unknown`] for a row that is not in the table, [`Code::Missing`] where a weight is needed,
/// [`Code::TooSmall`] and [`Code::TooLarge`] for counts and sums, and the problems of the recipe and the settings.
pub fn bag(ask: &AskBag) -> Result<BagSheet, Vec<Problem>> {
    let mut problems = ask.settings.problems();
    if ask.rows.is_empty() || ask.rows.len() > MOST_ROWS {
        problems.push(Problem::of(Code::Missing, Wrong::BagRows { most: MOST_ROWS }).at("rows"));
    }
    for (i, recipe) in ask.recipes.iter().enumerate() {
        let at = format!("recipes[{i}]");
        problems.extend(recipe.problems().into_iter().map(|p| p.at(&at)));
    }
    if ask.recipes.len() > MOST_RECIPES
        || ask
            .rows
            .iter()
            .any(|r| r.recipe.is_some_and(|i| i >= ask.recipes.len()))
    {
        problems.push(Problem::of(Code::Unknown, Wrong::BagRecipes { most: MOST_RECIPES }).at("rows"));
    }
    let units = ask.settings.units;
    let mut rows = Vec::new();
    let mut kinds = Vec::new();
    let zero = Range::point(Decimal::ZERO);
    let (mut pieces, mut area) = (0_u32, Some(zero));
    let mut green = zero;
    // Green weight, pieces and kinds for each recipe.
    let mut shares = vec![(zero, 0_u32, Vec::new()); ask.recipes.len()];
    for (i, row) in ask.rows.iter().enumerate() {
        match worked(row, &ask.batches) {
            Ok(work) => {
                let Some((all, sum)) = work
                    .each
                    .map(|g| g.times(Decimal::from(work.pieces)))
                    .and_then(|all| Some((all, green.plus(all)?)))
                    .filter(|(_, sum)| Mass::new(sum.high).is_ok())
                else {
                    problems.push(Problem::of(Code::TooLarge, Wrong::BagTooHeavy).at("rows"));
                    continue;
                };
                green = sum;
                pieces = pieces.saturating_add(work.pieces);
                area = area.and_then(|a| a.plus(footprint(work.game, all)?));
                kinds.push(work.game.kind);
                if let Some((of, count, of_kinds)) = row.recipe.and_then(|i| shares.get_mut(i)) {
                    *of = of.plus(all).unwrap_or(*of);
                    *count = count.saturating_add(work.pieces);
                    of_kinds.push(work.game.kind);
                }
                rows.push(work.row(all, units));
            }
            Err(problem) => problems.push(problem.at(&format!("rows[{i}]"))),
        }
    }
    if !problems.is_empty() {
        return Err(problems);
    }
    let used = || ask.recipes.iter().zip(&shares).filter(|(_, (_, count, _))| *count > 0);
    // Between the bag and the board: gloves, a test, and whose word counts.
    let mut keys = dressing_keys(&kinds);
    keys.push("local-rules");
    let left = used()
        .filter_map(|(recipe, (green, ..))| left(recipe, *green, units))
        .collect();
    let shares: Vec<Share> = used()
        .map(|(recipe, (green, pieces, _))| (recipe, *green, *pieces))
        .collect();
    let buy = shopping(&shares, ask).map_err(|p| vec![p])?;
    let area = area.filter(|a| a.high > Decimal::ZERO);
    Ok(BagSheet {
        rows,
        pieces,
        green: show(green.typical, units),
        range: ends(green, units),
        buy,
        left,
        places: area.map(|a| places(a, &ask.settings)).unwrap_or_default(),
        room: area.and_then(|a| racks(a, units)),
        cautions: cautions(&keys),
    })
}

struct Work {
    game: &'static Game,
    pieces: u32,
    each: Range,
    weighed: Option<u32>,
}

fn worked(row: &BagAsk, batches: &[Batch]) -> Result<Work, Problem> {
    let game = game(&row.of)
        .filter(|g| g.kind != "finish")
        .ok_or_else(|| Problem::of(Code::Unknown, Wrong::NoSuchGame).at("of"))?;
    let animals = row.hunters.saturating_mul(row.each);
    if animals == 0 || animals > MOST {
        let (code, field) = if animals == 0 {
            (Code::TooSmall, "each")
        } else {
            (Code::TooLarge, "each")
        };
        return Err(Problem::of(code, Wrong::BagCount { most: MOST }).at(field));
    }
    // A weight that was typed is of this very animal; the own weights are of others.
    let own = own(game, batches).filter(|_| row.weight.is_none());
    let each = own
        .map(|(each, _)| each)
        .or_else(|| game.piece(row.weight.map(Mass::base)));
    let each = each.ok_or_else(|| {
        let weighed = game.weighed;
        Problem::of(Code::Missing, Wrong::AnimalUnweighed { weighed }).at("weight")
    })?;
    Ok(Work {
        game,
        pieces: if row.by_piece {
            animals
        } else {
            animals.saturating_mul(game.per)
        },
        each,
        weighed: own.map(|(_, count)| count),
    })
}

impl Work {
    fn row(&self, all: Range, units: System) -> BagRow {
        let Game {
            name,
            cut,
            source,
            status,
            ..
        } = *self.game;
        let basis = match self.weighed {
            Some(pieces) => BagBasis::Own { pieces },
            None => BagBasis::Table { source, status },
        };
        BagRow {
            name,
            cut,
            pieces: self.pieces,
            each: ends(self.each, units),
            all: ends(all, units),
            basis,
        }
    }
}

/// What is left when the recipe is done.
fn left(recipe: &Recipe, green: Range, units: System) -> Option<LeftOf> {
    let does = |act| recipe.steps.iter().any(|s| s.act == act);
    let key = match (does(Do::DryOut), does(Do::Smoke), does(Do::Cook)) {
        (true, ..) => "finish-jerky",
        (_, true, _) => "finish-smoke",
        (_, _, true) => "finish-cook",
        _ => return None,
    };
    let finish = game(key)?;
    Some(LeftOf {
        name: finish.name,
        weight: ends(finish.of(green)?, units),
        source: finish.source,
        status: finish.status,
    })
}

/// What all of it lies on; nothing where a thickness is not known.
fn footprint(game: &Game, all: Range) -> Option<Range> {
    all.map(|grams| room::lies_on(grams, Decimal::from(game.mm)))
}

/// In racks of a usual size.
fn racks(area: Range, units: System) -> Option<RackRoom> {
    let racks = area.high.over(dec!(1200))?.ceil().max(Decimal::ONE).to_u32()?;
    Some(RackRoom {
        low: room::show(area.low, units)?,
        likely: room::show(area.typical, units)?,
        high: room::show(area.high, units)?,
        racks,
    })
}

/// Whether the shelves and racks of the house have it.
fn places(area: Range, settings: &Settings) -> Vec<HouseRoom> {
    let places = [HousePlace::Fridge, HousePlace::Smoker];
    let all = settings.house.iter().flat_map(|h| &h.racks).zip(places);
    all.filter_map(|(racks, place)| {
        let has = room::area(racks.as_ref()?)?;
        let holds = if has >= area.high {
            HoldsBag::Most
        } else if has >= area.typical {
            HoldsBag::Likely
        } else {
            HoldsBag::Part {
                goes: area.typical.over(has)?.ceil().to_u32()?,
            }
        };
        let has = room::show(has, settings.units)?;
        Some(HouseRoom { place, has, holds })
    })
    .collect()
}

pub(super) fn show(grams: Decimal, units: System) -> String {
    Mass::new(grams).map(|m| m.show(units).text).unwrap_or_default()
}

pub(super) fn ends(range: Range, units: System) -> Spread {
    let both = || (show(range.low, units), show(range.high, units));
    Spread {
        likely: show(range.typical, units),
        ends: (!range.is_point()).then(both),
    }
}
