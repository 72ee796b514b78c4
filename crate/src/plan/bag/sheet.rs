//! From a bag to green weight, what to buy and how much room it takes.

use super::facts::{BagBasis, HoldsBag, HousePlace, HouseRoom, LeftOf, RackRoom};
use super::game::{Game, game};
use super::model::{AskBag, BagAsk, BagRow, BagSheet};
use super::own::own;
use super::shopping::{Share, shopping};
use super::show::{ends, show};
use crate::batch::Batch;
use crate::dose::{cautions, dressing_keys};
use crate::plan::room;
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Mass, Problem, Range, System, Wrong};
use crate::recipe::{Do, Recipe};
use crate::weigh::Settings;
use rust_decimal::prelude::ToPrimitive;
use rust_decimal::{Decimal, dec};

/// Most rows of one plan.
const MOST_ROWS: usize = 40;
/// Most birds or animals in a row.
const MOST: u32 = 5000;
/// Most recipes of one plan.
const MOST_RECIPES: usize = 12;

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
                kinds.extend(work.game.kind);
                if let Some((of, count, of_kinds)) = row.recipe.and_then(|i| shares.get_mut(i)) {
                    *of = of.plus(all).unwrap_or(*of);
                    *count = count.saturating_add(work.pieces);
                    of_kinds.extend(work.game.kind);
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
        .filter(|g| g.kind.is_some())
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
    let own = own(game, &row.called, batches).filter(|_| row.weight.is_none());
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
            key,
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
            game: key,
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
        finish: finish.key,
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
