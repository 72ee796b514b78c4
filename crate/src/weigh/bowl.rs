//! What the scale shows, with the bowl on it and zeroed once: what is in it in the order in which it went in, then what is
//! still to come in the order of the list.

use super::lines::on_scale;
use super::model::WeighLine;
use super::plan;
use crate::batch::{Batch, Tick};
use crate::order::InOrder;
use crate::quantity::Mass;
use crate::quantity::exact::Exact;
use rust_decimal::Decimal;

/// Says at each line what the scale shows after it, and gives what it shows when all is in.
pub fn running(batch: &Batch, bowl: &mut [WeighLine], step: Decimal) -> Option<Decimal> {
    let mut went_in: Vec<&Tick> = batch.went_in().filter(|t| is_in_bowl(batch, t)).collect();
    // Two ticks of one moment stay in the order in which they were set.
    went_in.order_by_key(|t| t.at);
    let mut shows = Decimal::ZERO;
    for tick in went_in {
        shows = shows.plus(tick.weight.map(Mass::base)?)?;
        if let Some(line) = bowl.iter_mut().find(|line| line.id == tick.of) {
            line.reads = Some(on_scale(shows, step));
        }
    }
    for line in bowl.iter_mut().filter(|line| line.ticked.is_none()) {
        shows = shows.plus(line.tick.weight.map(Mass::base)?)?;
        line.reads = Some(on_scale(shows, step));
    }
    Some(shows)
}

/// Whether a tick is of something on this scale: a cure or a line, but not what stands in a vessel of its own.
fn is_in_bowl(batch: &Batch, tick: &Tick) -> bool {
    let place = |kind: &str| tick.of.strip_prefix(kind)?.parse::<usize>().ok();
    let is_in_vessel = |at: usize| batch.recipe.lines.get(at).is_some_and(plan::is_in_vessel);
    place("cure:").is_some() || place("line:").is_some_and(|at| !is_in_vessel(at))
}
