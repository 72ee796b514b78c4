//! From a bag to green weight, what to buy and how much room it takes.

use super::game::{Game, game};
use super::own::own;
use crate::batch::Batch;
use crate::dose::{Caution, cautions, keys_for};
use crate::pantry::{self, in_words};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Mass, Problem, Range, System};
use crate::recipe::{Do, Eaten, Method, Recipe};
use crate::weigh::{Settings, plan};
use rust_decimal::prelude::ToPrimitive;
use rust_decimal::{Decimal, dec};
use serde::{Deserialize, Serialize};

/// Most rows of one plan.
const MOST_ROWS: usize = 40;
/// Most birds or animals in a row.
const MOST: u32 = 5000;
/// Grams in a cubic centimetre of lean meat: common practice, no source.
const DENSITY: Decimal = dec!(1.06);
/// Mean thickness of a half ellipsoid as a share of its thickest part, exact.
const MEAN: Decimal = dec!(0.666667);
/// Room between pieces, on top of their own: our own judgement.
const GAPS: Decimal = dec!(1.25);

/// Content of `plan_bag`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskBag {
    /// What is in the bag.
    pub rows: Vec<BagAsk>,
    /// The recipe it is for: then the answer says what to buy.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub recipe: Option<Recipe>,
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
    /// Weight of one animal as the row weighs it; nothing for what is usual.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub weight: Option<Mass>,
}

/// The plan of a bag. A text of a range is `61 to 168 g, likely 109 g`.
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
    pub range: String,
    /// What to buy for a recipe: enough for the high end.
    pub buy: Vec<Buy>,
    /// What is left at the end of the recipe, with its source.
    pub left: Option<String>,
    /// Room on a rack or a shelf.
    pub room: Option<String>,
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
    pub each: String,
    /// Green weight of all, with both ends.
    pub all: String,
    /// Where the figures come from, with their status.
    pub basis: String,
    /// True for a figure from memory.
    pub memory: bool,
    /// True where the own weights have taken over.
    pub own: bool,
}

/// One thing to buy.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Buy {
    /// `Cure no. 1`.
    pub name: String,
    /// For the low and the high end: `1.46 to 4.03 g, likely 2.62 g`.
    pub range: String,
    /// Enough for the high end.
    pub most: String,
}

/// Plans a bag: pieces, green weight, what to buy, room.
///
/// # Errors
/// [`Code::Unknown`] for a row that is not in the table, [`Code::Missing`] where a weight is needed,
/// [`Code::TooSmall`] and [`Code::TooLarge`] for counts and sums, and the problems of the recipe and the settings.
pub fn bag(ask: &AskBag) -> Result<BagSheet, Vec<Problem>> {
    let mut problems = ask.settings.problems();
    if ask.rows.is_empty() || ask.rows.len() > MOST_ROWS {
        problems.push(Problem::new(Code::Missing, "A plan has 1 to 40 rows. Add what is in the bag.").at("rows"));
    }
    if let Some(recipe) = &ask.recipe {
        problems.extend(recipe.problems().into_iter().map(|p| p.at("recipe")));
    }
    let units = ask.settings.units;
    let mut rows = Vec::new();
    let mut kinds = Vec::new();
    let (mut pieces, mut area) = (0_u32, Some(Range::point(Decimal::ZERO)));
    let mut green = Range::point(Decimal::ZERO);
    for (i, row) in ask.rows.iter().enumerate() {
        match worked(row, &ask.batches) {
            Ok(work) => {
                let Some((all, sum)) = work
                    .each
                    .map(|g| g.times(Decimal::from(work.pieces)))
                    .and_then(|all| Some((all, green.plus(all)?)))
                    .filter(|(_, sum)| Mass::new(sum.high).is_ok())
                else {
                    problems.push(
                        Problem::new(
                            Code::TooLarge,
                            "All together weigh more than a tonne. Check the numbers.",
                        )
                        .at("rows"),
                    );
                    continue;
                };
                green = sum;
                pieces = pieces.saturating_add(work.pieces);
                area = area.and_then(|a| a.plus(footprint(work.game, all)?));
                kinds.push(work.game.kind);
                rows.push(work.row(all, units));
            }
            Err(problem) => problems.push(problem.at(&format!("rows[{i}]"))),
        }
    }
    if !problems.is_empty() {
        return Err(problems);
    }
    let method = ask.recipe.as_ref().map_or(Method::Rub, |r| r.method);
    let cured = ask.recipe.as_ref().is_some_and(|r| !r.cures.is_empty());
    let eaten = ask.recipe.as_ref().map_or(Eaten::Cooked, |r| r.eaten);
    let keys = keys_for(cured, method, eaten, &kinds);
    let buy = match &ask.recipe {
        Some(recipe) => shopping(recipe, green, pieces, units).map_err(|p| vec![p])?,
        None => Vec::new(),
    };
    Ok(BagSheet {
        rows,
        pieces,
        green: show(green.typical, units),
        range: ends(green, units),
        buy,
        left: ask.recipe.as_ref().and_then(|r| left(r, green, units)),
        room: area.and_then(|a| room(a, units)),
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
        .ok_or_else(|| Problem::new(Code::Unknown, "This is not in the table. Choose it from the list.").at("of"))?;
    let animals = row.hunters.saturating_mul(row.each);
    if animals == 0 || animals > MOST {
        let (code, field) = if animals == 0 {
            (Code::TooSmall, "each")
        } else {
            (Code::TooLarge, "each")
        };
        return Err(Problem::new(code, format!("Hunters times birds is 1 to {MOST}. Type both.")).at(field));
    }
    // A weight that was typed is of this very animal; the own weights are of others.
    let own = own(game, batches).filter(|_| row.weight.is_none());
    let each = own
        .map(|(each, _)| each)
        .or_else(|| game.piece(row.weight.map(Mass::base)));
    let each = each.ok_or_else(|| {
        Problem::new(
            Code::Missing,
            format!(
                "Type what the animal weighs {}: there is no figure without.",
                game.weighed
            ),
        )
        .at("weight")
    })?;
    Ok(Work {
        game,
        pieces: animals.saturating_mul(game.per),
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
            Some(count) => {
                format!("By {count} pieces you have weighed, with 15 % either way at the least (our own judgement).")
            }
            None => format!("{source} ({}).", in_words(status)),
        };
        BagRow {
            name,
            cut,
            pieces: self.pieces,
            each: ends(self.each, units),
            all: ends(all, units),
            basis,
            memory: self.weighed.is_none() && status == "memory",
            own: self.weighed.is_some(),
        }
    }
}

/// Cure and lines of the recipe at both ends and in the middle.
fn shopping(recipe: &Recipe, green: Range, pieces: u32, units: System) -> Result<Vec<Buy>, Problem> {
    let at = |grams| plan(recipe, grams, pieces, None);
    let (low, typical, high) = (at(green.low)?, at(green.typical)?, at(green.high)?);
    let three = |pick: fn(&crate::weigh::Plan) -> &Vec<Decimal>, i: usize| {
        let of = |plan| pick(plan).get(i).copied().unwrap_or_default();
        Range::new(of(&low), of(&typical), of(&high))
    };
    let name = |key: &str, own: &str| match pantry::ingredient(key) {
        Some(found) if own.is_empty() => found.name.to_owned(),
        _ => own.to_owned(),
    };
    let buy = |name: String, range: Range| Buy {
        name,
        range: ends(range, units),
        most: show(range.high, units),
    };
    let cures = recipe.cures.iter().enumerate();
    let cures = cures.map(|(i, cure)| buy(name(&cure.item, ""), three(|p| &p.cures, i)));
    let lines = recipe.lines.iter().enumerate().filter(|(_, line)| !line.is_water());
    let lines = lines.map(|(i, line)| buy(name(&line.item, &line.name), three(|p| &p.lines, i)));
    Ok(cures.chain(lines).collect())
}

/// What is left when the recipe is done.
fn left(recipe: &Recipe, green: Range, units: System) -> Option<String> {
    let does = |act| recipe.steps.iter().any(|s| s.act == act);
    let key = match (does(Do::DryOut), does(Do::Smoke), does(Do::Cook)) {
        (true, ..) => "finish-jerky",
        (_, true, _) => "finish-smoke",
        (_, _, true) => "finish-cook",
        _ => return None,
    };
    let finish = game(key)?;
    let range = ends(finish.of(green)?, units);
    Some(format!(
        "{}: {range}. {} ({}).",
        finish.name,
        finish.source,
        in_words(finish.status)
    ))
}

/// Square centimetres the pieces lie on, gaps and all.
fn footprint(game: &Game, all: Range) -> Option<Range> {
    let mean = Decimal::from(game.mm).over(dec!(10))?.times(MEAN)?.times(DENSITY)?;
    (game.mm > 0).then_some(())?;
    all.map(|grams| grams.times(GAPS)?.over(mean))
}

fn room(area: Range, units: System) -> Option<String> {
    let (size, unit) = match units {
        System::Metric => (Decimal::ONE, "cm²"),
        System::Us => (dec!(6.4516), "sq in"),
    };
    let number = |cm: Decimal| cm.over(size)?.nearest(dec!(10))?.to_u64();
    let racks = area.high.over(dec!(1200))?.ceil().max(Decimal::ONE).to_u64()?;
    let racks = if racks == 1 {
        "1 rack".to_owned()
    } else {
        format!("{racks} racks")
    };
    Some(format!(
        "{} to {} {unit}, likely {} {unit}, laid out side by side: {racks} of 40 by 30 cm (16 by 12 in) hold the most there may \
         be. From the weight and the usual thickness (from memory), with a quarter more for gaps (our own judgement).",
        number(area.low)?,
        number(area.high)?,
        number(area.typical)?
    ))
}

fn show(grams: Decimal, units: System) -> String {
    Mass::new(grams).map(|m| m.show(units).text).unwrap_or_default()
}

fn ends(range: Range, units: System) -> String {
    let (low, typical, high) = (
        show(range.low, units),
        show(range.typical, units),
        show(range.high, units),
    );
    if range.is_point() {
        typical
    } else {
        format!("{low} to {high}, likely {typical}")
    }
}
