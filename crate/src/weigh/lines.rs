//! The lines of the weigh-out: rounded to the scale, in the order of weighing, with the running total.

use super::facts::{Changed, CureOf, LineWhy, Strength};
use super::model::WeighLine;
use super::plan::{self, Plan};
use super::spoon::spoons;
use crate::batch::{Batch, Tick, portion_of};
use crate::dose::{self, Portion};
use crate::pantry::{self, Agent, Group, ItemName, Made};
use crate::quantity::exact::Exact;
use crate::quantity::{Figure, Fraction, Mass, Range, fixed, grouped, plain};
use crate::recipe::{Cure, Line};
use rust_decimal::Decimal;

/// A cure on the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cured {
    /// Its strength: as ticked, else as the list asks for it, thinned for a premix.
    pub agent: Agent,
    /// Grams: as ticked, else rounded down to the step.
    pub grams: Decimal,
    /// Grams before rounding.
    pub exact: Decimal,
    /// One part in so many, where the list asks for a premix.
    pub parts: Option<u32>,
    /// True where it was ticked.
    pub done: bool,
}

/// What goes into the bowl, on one scale.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rounded {
    /// One for each cure of the recipe; none where the cure was put in by another measure.
    pub cures: Vec<Cured>,
    /// Grams of each line: ticked, or rounded to the nearest step, the salt of the cure taken off.
    pub lines: Vec<Decimal>,
    /// Each line before rounding, the salt of the cure taken off.
    pub exact: Vec<Decimal>,
    /// Salt that all cures bring.
    pub cure_salt: Decimal,
}

/// Id of a cure's tick.
pub fn cure_id(i: usize) -> String {
    format!("cure:{i}")
}

/// Id of a line's tick.
pub fn line_id(i: usize) -> String {
    format!("line:{i}")
}

/// Rounds a plan to the scale's step. A curing agent rounds down, all else to the nearest. `put_in` is cure that
/// was put in by another measure; then the list asks for none.
pub fn round(batch: &Batch, plan: &Plan, parts: Option<u32>, step: Decimal, put_in: &[Portion]) -> Option<Rounded> {
    let agents = plan::agents(&batch.recipe, parts)?;
    let planned = agents
        .into_iter()
        .zip(&plan.cures)
        .enumerate()
        .filter(|_| put_in.is_empty());
    let cures = planned
        .map(|(i, ((agent, _), exact))| {
            let tick = batch.tick(&cure_id(i));
            let as_made = |t: Agent| if t.is_as_strong(agent) { agent } else { t };
            let ticked = tick.and_then(|t| Some((as_made(t.agent()?), t.weight?.base())));
            Some(match ticked {
                Some((agent, grams)) => Cured {
                    agent,
                    grams,
                    exact: *exact,
                    parts,
                    done: true,
                },
                None => Cured {
                    agent,
                    grams: exact.down_to(step)?,
                    exact: *exact,
                    parts,
                    done: false,
                },
            })
        })
        .collect::<Option<Vec<Cured>>>()?;
    let put_salt = put_in.iter().try_fold(Decimal::ZERO, |sum, p| {
        p.agent
            .map_or(Some(sum), |a| sum.plus(a.salt()?.times(p.weight.typical)?))
    })?;
    let cure_salt = cures
        .iter()
        .try_fold(put_salt, |sum, c| sum.plus(c.grams.times(c.agent.salt()?)?))?;
    let salt = plan::salt_line(&batch.recipe);
    let less_salt = |(i, grams): (usize, &Decimal)| {
        if salt == Some(i) {
            grams.less(cure_salt).map(|g| g.max(Decimal::ZERO))
        } else {
            Some(*grams)
        }
    };
    let exact = plan
        .lines
        .iter()
        .enumerate()
        .map(less_salt)
        .collect::<Option<Vec<Decimal>>>()?;
    let on_scale = |(i, grams): (usize, &Decimal)| {
        let ticked = batch.tick(&line_id(i)).and_then(|t| t.weight);
        ticked.map_or_else(|| grams.nearest(step), |w| Some(w.base()))
    };
    let lines = exact
        .iter()
        .enumerate()
        .map(on_scale)
        .collect::<Option<Vec<Decimal>>>()?;
    Some(Rounded {
        cures,
        lines,
        exact,
        cure_salt,
    })
}

/// What the verdict counts: what the list asks for, what was ticked, and what was put in by another measure.
pub fn portions(
    batch: &Batch,
    rounded: &Rounded,
    step: Decimal,
    spread: Decimal,
    put_in: &[Portion],
) -> Option<Vec<Portion>> {
    let portion = |agent: Agent, grams: Decimal, step: Decimal, parts: Option<u32>, done: bool| {
        let portion = Portion {
            said: on_scale(grams, step).text,
            step,
            agent: Some(agent),
            weight: Range::weighed(grams, step)?,
            // A ticked premix was made on this scale as well: its strength is as uncertain.
            spread: if parts.is_some() { spread } else { Decimal::ZERO },
            parts: parts.map(|one_in| dose::Parts {
                one_in,
                in_water: false,
            }),
            unit: dose::Unit::Gram,
            done,
        };
        portion_of(portion, made(batch, agent))
    };
    let ticks = batch.went_in().filter(|t| t.of.starts_with("cure:"));
    let ticked = ticks.filter_map(|t| Some((t.agent()?, t.weight?.base(), t.step.map_or(step, Mass::base))));
    // Every ticked cure counts, also one that the recipe no longer asks for or that was ticked twice; each as exact as
    // the scale that weighed it.
    let done = ticked.map(|(agent, grams, step)| portion(agent, grams, step, thinned(batch, agent), true));
    let open = rounded
        .cures
        .iter()
        .filter(|c| !c.done)
        .map(|c| portion(c.agent, c.grams, step, c.parts, false));
    let put = put_in.iter().map(|p| Some(p.clone()));
    put.chain(done).chain(open).collect()
}

/// How the recipe's cure of this strength was made, where it is a mix.
fn made(batch: &Batch, agent: Agent) -> Option<Made> {
    let strong = |cure: &&Cure| cure.agent().is_some_and(|a| a.is_as_strong(agent));
    batch.recipe.cures.iter().find(strong)?.made
}

/// The parts of a ticked premix: how many times the packet is stronger, where that is a premix of this page.
fn thinned(batch: &Batch, agent: Agent) -> Option<u32> {
    let neat = plan::agents(&batch.recipe, None)?;
    let is = |parts: u32| neat.iter().any(|(a, _)| a.thinned(Decimal::from(parts)) == Some(agent));
    plan::PARTS.into_iter().find(|parts| is(*parts))
}

/// Grams with as many decimals as the scale shows.
pub fn on_scale(grams: Decimal, step: Decimal) -> Figure {
    Figure::new(grouped(&fixed(grams, step.normalize().scale())), "g")
}

/// What a line is called.
pub fn line_name(line: &Line) -> ItemName {
    ItemName::of(&line.item, &line.name)
}

/// What a cure is: by its strength, or as a premix of the list.
fn cure_of(agent: Agent, parts: Option<u32>, made: Option<Made>) -> CureOf {
    if let Some(parts) = parts {
        return CureOf::OneIn { parts };
    }
    let strength = strength(agent);
    match made {
        None => CureOf::Neat { strength },
        Some(made) if made.in_water => CureOf::Stock { strength },
        Some(_) => CureOf::Premix { strength },
    }
}

/// What a cure prints.
pub fn strength(agent: Agent) -> Strength {
    let printed = |percent: Decimal| (!percent.is_zero()).then(|| format!("{} %", plain(percent)));
    Strength {
        nitrite: printed(agent.nitrite),
        nitrate: printed(agent.nitrate),
    }
}

/// The bowl, cure first; and the vessel. `ends` are low and high where not all is weighed.
pub fn draw(
    batch: &Batch,
    rounded: &Rounded,
    plan: &Plan,
    ends: Option<&[Rounded; 2]>,
    step: Decimal,
) -> Option<(Vec<WeighLine>, Vec<WeighLine>)> {
    let (mut bowl, mut vessel) = (Vec::new(), Vec::new());
    for (i, cure) in rounded.cures.iter().enumerate() {
        bowl.push(cure_line(batch, i, cure, ends, step)?);
    }
    // Salt, sugar, spice, liquid; within each as the recipe has it.
    for group in [Group::Salt, Group::Sugar, Group::Spice, Group::Liquid, Group::Fat] {
        for (i, line) in batch
            .recipe
            .lines
            .iter()
            .enumerate()
            .filter(|(_, l)| plan::group(l) == group)
        {
            // Salt that the cure brings in full is no line to tick.
            if rounded.exact.get(i)?.is_zero() && batch.tick(&line_id(i)).is_none() {
                continue;
            }
            let row = plain_line(batch, i, rounded, plan, ends, step)?;
            if plan::is_in_vessel(line) {
                &mut vessel
            } else {
                &mut bowl
            }
            .push(row);
        }
    }
    Some((bowl, vessel))
}

fn cure_line(batch: &Batch, i: usize, cure: &Cured, ends: Option<&[Rounded; 2]>, step: Decimal) -> Option<WeighLine> {
    let asked = batch.recipe.cures.get(i)?;
    let parts = if cure.done {
        thinned(batch, cure.agent)
    } else {
        cure.parts
    };
    let item = pantry::ingredient(&asked.item).filter(|_| parts.is_none());
    let range = ends.and_then(|[low, high]| Some((low.cures.get(i)?.grams, high.cures.get(i)?.grams)));
    let rounded_off = cure.exact != cure.grams && !cure.done;
    let strength = |percent: Decimal| Fraction::new(percent).ok();
    let same_kind = parts == cure.parts;
    Some(WeighLine {
        cure: Some(cure_of(cure.agent, parts, made(batch, cure.agent))),
        spoon: item.and_then(|item| spoons(item, cure.grams)),
        why: rounded_off.then(|| LineWhy::RoundedDown {
            exact: format!("{} g", plain(cure.exact.half_away(3))),
        }),
        changed: changed(cure.done && same_kind, cure.grams, cure.exact.down_to(step)?, step),
        tick: Tick {
            nitrite: strength(cure.agent.nitrite),
            nitrate: strength(cure.agent.nitrate),
            step: batch.tick(&cure_id(i)).map_or_else(|| Mass::new(step).ok(), |t| t.step),
            ..tick(batch, cure_id(i), cure.grams)?
        },
        ..line(cure_id(i), None, batch, cure.grams, cure.exact, range, step)?
    })
}

fn plain_line(
    batch: &Batch,
    i: usize,
    rounded: &Rounded,
    plan: &Plan,
    ends: Option<&[Rounded; 2]>,
    step: Decimal,
) -> Option<WeighLine> {
    let row = batch.recipe.lines.get(i)?;
    let (grams, exact, whole) = (*rounded.lines.get(i)?, *rounded.exact.get(i)?, *plan.lines.get(i)?);
    let range = ends.and_then(|[low, high]| Some((*low.lines.get(i)?, *high.lines.get(i)?)));
    let takes_off = plan::salt_line(&batch.recipe) == Some(i) && rounded.cure_salt > Decimal::ZERO;
    Some(WeighLine {
        spoon: pantry::ingredient(&row.item).and_then(|item| spoons(item, grams)),
        why: takes_off.then(|| LineWhy::LessInCure {
            whole: format!("{} g", fixed(whole, 1)),
            in_cure: format!("{} g", fixed(rounded.cure_salt, 1)),
        }),
        changed: changed(batch.tick(&line_id(i)).is_some(), grams, exact.nearest(step)?, step),
        ..line(line_id(i), Some(line_name(row)), batch, grams, exact, range, step)?
    })
}

/// It was ticked, and the list now asks for something else.
fn changed(done: bool, is: Decimal, wanted: Decimal, step: Decimal) -> Option<Changed> {
    (done && is != wanted).then(|| Changed {
        is: on_scale(is, step),
        wanted: on_scale(wanted, step),
    })
}

fn tick(batch: &Batch, id: String, grams: Decimal) -> Option<Tick> {
    let at = batch.tick(&id).map_or(0, |t| t.at);
    Some(Tick {
        of: id,
        at,
        weight: Some(Mass::new(grams).ok()?),
        nitrite: None,
        nitrate: None,
        step: None,
    })
}

fn line(
    id: String,
    item: Option<ItemName>,
    batch: &Batch,
    grams: Decimal,
    exact: Decimal,
    range: Option<(Decimal, Decimal)>,
    step: Decimal,
) -> Option<WeighLine> {
    Some(WeighLine {
        item,
        cure: None,
        add: on_scale(grams, step),
        weight: format!("{} g", plain(grams)),
        exact: format!("{} g", plain(exact.half_away(6))),
        range: range.map(|(low, high)| (on_scale(low, step), on_scale(high, step))),
        reads: None,
        spoon: None,
        why: None,
        ticked: batch.tick(&id).map(|t| t.at),
        tick: tick(batch, id.clone(), grams)?,
        changed: None,
        id,
    })
}
