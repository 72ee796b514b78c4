//! Several chains that share places: every plan of a few, one after the other in the best of a few orders for many.

use super::exact::Search;
use super::worth::{Times, Worth, worth};
use crate::order::InOrder;
use crate::schedule::fit::{Chain, Taken, latest, turn};

/// Up to so many chains every order is tried, and where that may not be the best, every plan.
const FEW: usize = 4;

/// A plan of all chains that can be kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// Times of each.
    pub times: Times,
    /// True where no plan is better.
    pub best: bool,
    /// How many more may fit, and by how many slots the first start may be later where as many fit: none where it is
    /// the best.
    pub gap: (usize, usize),
}

/// The plan with most chains, of those the one whose first start is latest, of those the one with the latest starts
/// in all. Of few chains it is the best there is; of many a better one may exist, and the gap says how much better.
pub fn back(chains: &[Chain], taken: &Taken, by: usize) -> Plan {
    // No plan can be better than each chain by itself.
    let alone: Times = chains.iter().map(|c| latest(c, taken, by)).collect();
    let most = worth(chains, &alone, taken);
    let mut found: Option<(Worth, Times)> = None;
    for order in orders(chains) {
        if found.as_ref().is_some_and(|(before, _)| *before >= most) {
            break;
        }
        let mut left = taken.clone();
        let mut times: Times = vec![None; chains.len()];
        for i in order {
            if let (Some(chain), Some(time)) = (chains.get(i), times.get_mut(i)) {
                *time = latest(chain, &left, by);
                if let Some(at) = time {
                    left.take(chain, at);
                }
            }
        }
        let now = worth(chains, &times, taken);
        if found.as_ref().is_none_or(|(before, _)| now > *before) {
            found = Some((now, times));
        }
    }
    let Some((now, times)) = found else {
        return Plan {
            times: Vec::new(),
            best: true,
            gap: (0, 0),
        };
    };
    let (times, best) = if now >= most {
        (times, true)
    } else if chains.len() <= FEW {
        let starts: Vec<Option<usize>> = alone.iter().map(|t| t.as_ref()?.first().copied()).collect();
        Search::best(chains, &starts, taken, by, (now, times))
    } else {
        (times, false)
    };
    let now = worth(chains, &times, taken);
    let gap = match (best, most.0.saturating_sub(now.0)) {
        (true, _) => (0, 0),
        (false, 0) => (0, most.1.saturating_sub(now.1)),
        (false, more) => (more, 0),
    };
    Plan { times, best, gap }
}

/// The same with the earliest ends: all of it turned round.
pub fn forth(chains: &[Chain], taken: &Taken) -> Plan {
    let slots = taken.rest.len();
    let turned: Vec<Chain> = chains.iter().map(|c| c.turned(slots)).collect();
    let plan = back(&turned, &taken.turned(), slots);
    let times = plan.times.iter().map(|t| t.as_ref().map(|t| turn(t, slots)));
    Plan {
        times: times.collect(),
        ..plan
    }
}

/// What runs already always comes first. Few chains: every order. Many: as given, the longest first, the shortest
/// first.
fn orders(chains: &[Chain]) -> Vec<Vec<usize>> {
    let length = |i: &usize| {
        chains
            .get(*i)
            .map_or(0, |c| c.legs.iter().map(|l| l.least).sum::<usize>())
    };
    let waits = |i: &usize| chains.get(*i).is_some_and(|c| !c.running);
    let given: Vec<usize> = (0..chains.len()).collect();
    let mut all = vec![given.clone()];
    if chains.len() <= FEW {
        all = vec![Vec::new()];
        for i in given {
            all = all
                .iter()
                .flat_map(|order| {
                    (0..=order.len()).map(move |at| {
                        let mut more = order.clone();
                        more.insert(at, i);
                        more
                    })
                })
                .collect();
        }
    } else {
        let mut long = given;
        long.order_by_key(|i| std::cmp::Reverse(length(i)));
        all.push(long.clone());
        long.reverse();
        all.push(long);
    }
    for order in &mut all {
        order.order_by_key(waits);
    }
    all.order_by(Ord::cmp);
    all.dedup();
    all
}
