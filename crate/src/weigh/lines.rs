//! The lines of the weigh-out: rounded to the scale, in the order of weighing, with the running total.

use super::model::WeighLine;
use super::plan::{self, Plan};
use super::spoon::spoons;
use crate::batch::{Batch, Tick};
use crate::dose::Agent;
use crate::pantry::{self, Group, Ingredient, OWN};
use crate::quantity::exact::Exact;
use crate::quantity::{Figure, Mass, fixed, grouped, plain};
use crate::recipe::{Line, Recipe};
use rust_decimal::{Decimal, dec};

/// What goes into the bowl, on one scale.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Rounded {
    /// The agents with their aims, thinned for a premix.
    pub agents: Vec<(Agent, Decimal)>,
    /// Grams of each cure: ticked, or rounded down to the step.
    pub cures: Vec<Decimal>,
    /// Grams of each line: ticked, or rounded to the nearest step, the salt of the cure taken off.
    pub lines: Vec<Decimal>,
    /// Each line before rounding, the salt of the cure taken off.
    pub exact: Vec<Decimal>,
    /// Salt that the cure brings.
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

fn ticked(batch: &Batch, id: &str) -> Option<Decimal> {
    batch.tick(id).and_then(|t| t.weight).map(Mass::base)
}

/// Rounds a plan to the scale's step. A curing agent rounds down, all else to the nearest. `already` is the salt of
/// a cure that was put in by another measure; then no cure is weighed.
pub fn round(
    batch: &Batch,
    plan: &Plan,
    agents: Vec<(Agent, Decimal)>,
    step: Decimal,
    already: Option<Decimal>,
) -> Option<Rounded> {
    let cures = plan
        .cures
        .iter()
        .enumerate()
        .map(|(i, grams)| ticked(batch, &cure_id(i)).map_or_else(|| grams.down_to(step), Some))
        .collect::<Option<Vec<Decimal>>>()?;
    let cure_salt = already.map_or_else(|| plan::salt_in(&agents, &cures), Some)?;
    let salt = plan::salt_line(&batch.recipe);
    let exact = plan
        .lines
        .iter()
        .enumerate()
        .map(|(i, grams)| {
            if salt == Some(i) {
                grams.less(cure_salt).map(|g| g.max(Decimal::ZERO))
            } else {
                Some(*grams)
            }
        })
        .collect::<Option<Vec<Decimal>>>()?;
    let lines = exact
        .iter()
        .enumerate()
        .map(|(i, grams)| ticked(batch, &line_id(i)).map_or_else(|| grams.nearest(step), Some))
        .collect::<Option<Vec<Decimal>>>()?;
    Some(Rounded {
        agents,
        cures,
        lines,
        exact,
        cure_salt,
    })
}

/// Grams with as many decimals as the scale shows.
pub fn on_scale(grams: Decimal, step: Decimal) -> Figure {
    Figure::new(grouped(&fixed(grams, step.normalize().scale())), "g")
}

/// What a line is called.
pub fn line_name(line: &Line) -> String {
    if line.item == OWN || !line.name.is_empty() {
        return line.name.clone();
    }
    pantry::ingredient(&line.item)
        .map(|i| i.name.to_owned())
        .unwrap_or_default()
}

/// What a cure is called: by its printed strength.
pub fn cure_name(recipe: &Recipe, i: usize, parts: Option<u32>) -> String {
    let Some(cure) = recipe.cures.get(i) else {
        return String::new();
    };
    let nitrite = (!cure.nitrite.base().is_zero()).then(|| format!("{} % nitrite", plain(cure.nitrite.base())));
    let nitrate = (!cure.nitrate.base().is_zero()).then(|| format!("{} % nitrate", plain(cure.nitrate.base())));
    let strength: Vec<String> = nitrite.into_iter().chain(nitrate).collect();
    match parts {
        Some(parts) => format!("Premix, 1 part cure in {parts}"),
        None => format!("Cure, {}", strength.join(" and ")),
    }
}

/// All that a line needs to be drawn.
struct Draft<'a> {
    id: String,
    name: String,
    is_cure: bool,
    grams: Decimal,
    exact: Decimal,
    ends: Option<(Decimal, Decimal)>,
    item: Option<&'a Ingredient>,
    why: Option<String>,
}

impl Draft<'_> {
    fn line(self, batch: &Batch, step: Decimal, reads: Option<Decimal>) -> WeighLine {
        let tick: Option<&Tick> = batch.tick(&self.id);
        let wanted = if self.is_cure {
            self.exact.down_to(step)
        } else {
            self.exact.nearest(step)
        }
        .unwrap_or_default();
        WeighLine {
            add: on_scale(self.grams, step),
            weight: format!("{} g", plain(self.grams)),
            exact: format!("{} g", plain(self.exact.round_dp(6))),
            range: self.ends.map(|(low, high)| (on_scale(low, step), on_scale(high, step))),
            reads: reads.map(|g| on_scale(g, step)),
            spoon: self.item.and_then(|item| spoons(item, self.grams)),
            ticked: tick.map(|t| t.at),
            changed: tick.filter(|_| wanted != self.grams).map(|_| {
                format!(
                    "{} is in the bowl. The list now asks for {}.",
                    on_scale(self.grams, step).text,
                    on_scale(wanted, step).text
                )
            }),
            id: self.id,
            name: self.name,
            is_cure: self.is_cure,
            why: self.why,
        }
    }
}

/// The bowl, cure first, and the vessel, with low and high from `ends` where not all is weighed.
pub fn draw(
    batch: &Batch,
    rounded: &Rounded,
    plan: &Plan,
    ends: Option<&[Rounded; 2]>,
    step: Decimal,
    parts: Option<u32>,
    weigh_cure: bool,
) -> Option<(Vec<WeighLine>, Vec<WeighLine>, Decimal)> {
    let recipe = &batch.recipe;
    let mut bowl = Vec::new();
    let mut total = Decimal::ZERO;
    for (i, grams) in rounded.cures.iter().enumerate().filter(|_| weigh_cure) {
        total = total.plus(*grams)?;
        let exact = *plan.cures.get(i)?;
        let draft = Draft {
            id: cure_id(i),
            name: cure_name(recipe, i, parts),
            is_cure: true,
            grams: *grams,
            exact,
            ends: ends.and_then(|[low, high]| Some((*low.cures.get(i)?, *high.cures.get(i)?))),
            item: recipe.cures.get(i).and_then(|c| pantry::ingredient(&c.item)),
            why: (exact != *grams && batch.tick(&cure_id(i)).is_none())
                .then(|| format!("{} g, rounded down to the scale's step.", plain(exact.round_dp(3)))),
        };
        bowl.push(draft.line(batch, step, Some(total)));
    }
    let salt = plan::salt_line(recipe);
    let mut order: Vec<usize> = (0..recipe.lines.len()).collect();
    order.sort_by_key(|i| recipe.lines.get(*i).map_or(9, |l| rank(plan::group(l))));
    let mut vessel = Vec::new();
    for i in order {
        let (line, grams) = (recipe.lines.get(i)?, *rounded.lines.get(i)?);
        let whole = *plan.lines.get(i)?;
        let takes_off = salt == Some(i) && rounded.cure_salt > Decimal::ZERO;
        let draft = Draft {
            id: line_id(i),
            name: line_name(line),
            is_cure: false,
            grams,
            exact: *rounded.exact.get(i)?,
            ends: ends.and_then(|[low, high]| Some((*low.lines.get(i)?, *high.lines.get(i)?))),
            item: pantry::ingredient(&line.item),
            why: takes_off.then(|| {
                format!(
                    "{} g in all, less {} g that is already in the cure.",
                    fixed(whole, 1),
                    fixed(rounded.cure_salt, 1)
                )
            }),
        };
        if line.is_water() {
            vessel.push(draft.line(batch, step, None));
        } else {
            total = total.plus(grams)?;
            bowl.push(draft.line(batch, step, Some(total)));
        }
    }
    Some((bowl, vessel, total))
}

/// Order of weighing after the cure.
const fn rank(group: Group) -> u8 {
    match group {
        Group::Cure => 0,
        Group::Salt => 1,
        Group::Sugar => 2,
        Group::Spice => 3,
        Group::Liquid => 4,
    }
}

/// Lines that the scale cannot show, and salt that the cure alone exceeds.
pub fn remarks(batch: &Batch, rounded: &Rounded, plan: &Plan) -> Vec<String> {
    let mut remarks = Vec::new();
    for ((line, exact), grams) in batch.recipe.lines.iter().zip(&rounded.exact).zip(&rounded.lines) {
        if grams.is_zero() && *exact > Decimal::ZERO {
            remarks.push(format!(
                "{}: {} g is less than this scale can show. Take it by the spoon, or weigh it on a finer scale.",
                line_name(line),
                plain(exact.round_dp(2))
            ));
        }
    }
    let wanted = plan::salt_line(&batch.recipe).and_then(|i| plan.lines.get(i));
    match wanted {
        Some(wanted) if rounded.cure_salt > *wanted => remarks.push(format!(
            "The cure alone brings {} g of salt, more than the {} g aimed at. No more salt is needed.",
            fixed(rounded.cure_salt, 1),
            fixed(*wanted, 1)
        )),
        None if rounded.cure_salt > dec!(0.05) => remarks.push(format!(
            "The recipe has no salt of its own; the cure brings {} g.",
            fixed(rounded.cure_salt, 1)
        )),
        _ => {}
    }
    remarks
}
