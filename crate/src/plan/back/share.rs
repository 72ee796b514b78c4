//! Several chains that share places: one after the other, in the best of a few orders.

use super::fit::{Chain, Taken, latest, turn};

/// Up to so many chains every order is tried.
const EVERY_ORDER: usize = 4;

/// Times of each chain, `None` for one that does not fit.
pub type Times = Vec<Option<Vec<usize>>>;

/// The plan with most chains, of those the one whose first start is latest, of those the one with the latest starts
/// in all. Every plan is one that can be kept; with many chains a later one may exist.
pub fn back(chains: &[Chain], taken: &Taken, by: usize) -> Times {
    // No order can be better than each chain by itself.
    let most = worth(&chains.iter().map(|c| latest(c, taken, by)).collect());
    let mut found: Option<(Worth, Times)> = None;
    for order in orders(chains) {
        if found.as_ref().is_some_and(|(before, _)| *before >= most) {
            break;
        }
        let mut taken = taken.clone();
        let mut times: Times = vec![None; chains.len()];
        for i in order {
            if let (Some(chain), Some(time)) = (chains.get(i), times.get_mut(i)) {
                *time = latest(chain, &taken, by);
                if let Some(at) = time {
                    taken.take(chain, at);
                }
            }
        }
        let now = worth(&times);
        if found.as_ref().is_none_or(|(before, _)| now > *before) {
            found = Some((now, times));
        }
    }
    found.map(|(_, times)| times).unwrap_or_default()
}

/// The same with the earliest ends: all of it turned round.
pub fn forth(chains: &[Chain], taken: &Taken) -> Times {
    let slots = taken.rest.len();
    let turned: Vec<Chain> = chains.iter().map(|c| c.turned(slots)).collect();
    let times = back(&turned, &taken.turned(), slots);
    times.iter().map(|t| t.as_ref().map(|t| turn(t, slots))).collect()
}

/// How many fit, the first start, all starts together.
type Worth = (usize, usize, usize);

fn worth(times: &Times) -> Worth {
    let starts = || times.iter().flatten().filter_map(|t| t.first());
    (
        starts().count(),
        starts().min().copied().unwrap_or(0),
        starts().sum::<usize>(),
    )
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
    if chains.len() <= EVERY_ORDER {
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
        long.sort_by_key(|i| std::cmp::Reverse(length(i)));
        all.push(long.clone());
        long.reverse();
        all.push(long);
    }
    for order in &mut all {
        order.sort_by_key(waits);
    }
    all.sort_unstable();
    all.dedup();
    all
}
