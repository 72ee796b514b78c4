//! From proportions to grams, exact, before any rounding.

use crate::dose::{Whole, cure_for};
use crate::pantry::{self, Agent, Group};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Problem, Range, Wrong};
use crate::recipe::{Line, Method, Recipe, Share};
use rust_decimal::{Decimal, dec};

/// A recipe worked for one green weight, in grams.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// One for each cure of the recipe.
    pub cures: Vec<Decimal>,
    /// One for each line of the recipe, with the salt still whole.
    pub lines: Vec<Decimal>,
}

/// The agents of a recipe with their aims in ppm; thinned to one part in `parts` for a premix.
pub fn agents(recipe: &Recipe, parts: Option<u32>) -> Option<Vec<(Agent, Decimal)>> {
    recipe
        .cures
        .iter()
        .map(|cure| {
            let neat = cure.agent()?;
            let agent = parts.map_or(Some(neat), |parts| neat.thinned(Decimal::from(parts)))?;
            Some((agent, cure.aim.base()))
        })
        .collect()
}

/// The group a line is weighed with.
pub fn group(line: &Line) -> Group {
    pantry::ingredient(&line.item).map_or(Group::Spice, |i| i.group)
}

/// Whether a line is weighed in a vessel of its own: water, and fat for the mince.
pub fn is_in_vessel(line: &Line) -> bool {
    line.is_water() || group(line) == Group::Fat
}

/// Index of the line that the salt in the cure is taken off.
pub fn salt_line(recipe: &Recipe) -> Option<usize> {
    recipe.lines.iter().position(|l| group(l) == Group::Salt)
}

/// Works a recipe for `green` grams in `pieces` pieces.
///
/// # Errors
/// [`Code::Conflict`] where an aim cannot be reached with its cure, [`Code::TooLarge`] on overflow.
///
/// ```
/// use cure_reckoner::recipe::Recipe;
/// use cure_reckoner::weigh::plan;
/// use rust_decimal::dec;
/// let recipe: Recipe = serde_json::from_value(serde_json::json!({
///     "name": "Salt and cure", "tag": "SC", "method": "rub",
///     "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "150 ppm"}],
///     "lines": [{"item": "salt-table", "share": {"of": "green_weight", "amount": "2 %"}}],
/// })).unwrap();
/// let plan = plan(&recipe, dec!(1000), 1, None).unwrap();
/// // 1000 × 0.015 / 6.25, and 1000 × 0.02.
/// assert_eq!((plan.cures, plan.lines), (vec![dec!(2.4)], vec![dec!(20)]));
/// ```
pub fn plan(recipe: &Recipe, green: Decimal, pieces: u32, parts: Option<u32>) -> Result<Plan, Problem> {
    let lines = lines(recipe, green, pieces).ok_or_else(too_large)?;
    let agents = agents(recipe, parts).ok_or_else(too_large)?;
    let whole = whole_of(recipe, Range::point(green), &lines, &[]).ok_or_else(too_large)?;
    let wanted = green.times(whole.take).ok_or_else(too_large)?;
    if recipe.method.takes() && whole.pickle.typical < wanted {
        return Err(Problem::of(Code::Conflict, Wrong::TooLittleBrine).at("lines"));
    }
    let too_weak = || Problem::of(Code::Conflict, Wrong::CureTooWeak).at("cures");
    let cures = cure_for(&whole, &agents, salt_line(recipe).is_some()).ok_or_else(too_weak)?;
    // More cure than all else in the brine is no brine.
    let all = cures
        .iter()
        .try_fold(Decimal::ZERO, |sum, c| sum.plus(*c))
        .ok_or_else(too_large)?;
    if recipe.method.has_brine() && all > whole.pickle.typical {
        return Err(too_weak());
    }
    Ok(Plan { cures, lines })
}

fn lines(recipe: &Recipe, green: Decimal, pieces: u32) -> Option<Vec<Decimal>> {
    let of = |percent: Decimal, base: Decimal| percent.times(base)?.over(Decimal::ONE_HUNDRED);
    let alone = |line: &Line| match line.share {
        Share::GreenWeight(f) => of(f.base(), green),
        Share::Piece(m) => m.base().times(Decimal::from(pieces)),
        Share::MeatAndWater(_) | Share::Brine(_) => Some(Decimal::ZERO),
    };
    let water = recipe
        .lines
        .iter()
        .filter(|l| l.is_water())
        .try_fold(Decimal::ZERO, |sum, line| sum.plus(alone(line)?))?;
    recipe
        .lines
        .iter()
        .map(|line| match line.share {
            Share::MeatAndWater(f) => of(f.base(), green.plus(water)?),
            Share::Brine(f) => of(f.base(), water),
            Share::GreenWeight(_) | Share::Piece(_) => alone(line),
        })
        .collect()
}

/// Grams of water and of what dissolves in it, cure apart.
pub fn dissolved(recipe: &Recipe, lines: &[Decimal]) -> Option<Decimal> {
    recipe
        .lines
        .iter()
        .zip(lines)
        .filter(|(line, _)| group(line).dissolves())
        .try_fold(Decimal::ZERO, |sum, (_, grams)| sum.plus(*grams))
}

/// What the ppm are counted over, with these weights.
pub fn whole_of(recipe: &Recipe, green: Range, lines: &[Decimal], cures: &[Decimal]) -> Option<Whole> {
    let pickle = cures
        .iter()
        .try_fold(dissolved(recipe, lines)?, |sum, grams| sum.plus(*grams))?;
    Some(Whole {
        counted: recipe.method.counted(),
        green: if recipe.method == Method::Ground {
            ground(recipe, green, lines, cures)?
        } else {
            green
        },
        pickle: Range::point(if recipe.method.has_brine() {
            pickle
        } else {
            Decimal::ZERO
        }),
        take: recipe.taken(),
        fo: None,
    })
}

/// What a cure for mince is counted over. A limit is counted over the meat block, which is the meat and the fat that is
/// ground in (FSIS Directive 7620.3, 1995, p. 15, quoted); water, spice and all else thin what there is of it, so that the
/// least is counted over all that goes in.
fn ground(recipe: &Recipe, green: Range, lines: &[Decimal], cures: &[Decimal]) -> Option<Range> {
    let (mut fat, mut rest) = (Decimal::ZERO, Decimal::ZERO);
    for (line, grams) in recipe.lines.iter().zip(lines) {
        let sum = if group(line) == Group::Fat { &mut fat } else { &mut rest };
        *sum = sum.plus(*grams)?;
    }
    let rest = cures.iter().try_fold(rest, |sum, grams| sum.plus(*grams))?;
    Some(Range {
        low: green.low.plus(fat)?,
        typical: green.typical.plus(fat)?,
        high: green.high.plus(fat)?.plus(rest)?,
    })
}

/// Parts of a premix, the thinnest first: one part cure in so many.
pub const PARTS: [u32; 3] = [10, 5, 3];

/// The thinnest premix whose salt is at most a tenth above the salt aimed at; `None` where none is, where the recipe
/// has no salt to give way, or with two cures, whose premixes could be mistaken for each other, or with one that is a mix already.
pub fn premix_parts(recipe: &Recipe, green: Decimal, pieces: u32) -> Option<u32> {
    // One that is thin already is not thinned again.
    let [cure] = recipe.cures.as_slice() else {
        return None;
    };
    if cure.made.is_some() {
        return None;
    }
    let fits = |parts: u32| {
        let plan = plan(recipe, green, pieces, Some(parts)).ok()?;
        let wanted = salt_line(recipe).and_then(|i| plan.lines.get(i).copied())?;
        let (agent, _) = agents(recipe, Some(parts))?.pop()?;
        let brings = plan.cures.first()?.times(agent.salt()?)?;
        Some(brings <= wanted.times(dec!(1.1))?)
    };
    PARTS.into_iter().find(|p| fits(*p) == Some(true))
}

fn too_large() -> Problem {
    Problem::of(Code::TooLarge, Wrong::TooLargeToReckon)
}
