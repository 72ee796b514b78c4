//! Several chains that share places: one after the other, in the best of a few orders.

use super::fit::{Chain, Taken, earliest, latest};

/// Up to so many chains every order is tried.
const EVERY_ORDER: usize = 5;

/// Times of each chain, `None` for one that does not fit.
pub type Times = Vec<Option<Vec<usize>>>;

/// The plan with most chains, of those the one whose first start is latest, of those the one with the latest starts
/// in all. Every plan is one that can be kept; with many chains a later one may exist.
pub fn back(chains: &[Chain], taken: &Taken, by: usize) -> Times {
    best(
        chains,
        taken,
        |chain, taken| latest(chain, taken, by),
        |times| {
            let starts = || times.iter().flatten().filter_map(|t| t.first());
            (
                starts().count(),
                starts().min().copied().unwrap_or(0),
                starts().sum::<usize>(),
            )
        },
    )
}

/// The same with the earliest ends.
pub fn forth(chains: &[Chain], taken: &Taken) -> Times {
    let slots = taken.rest.len();
    best(chains, taken, earliest, |times| {
        let early = || {
            times
                .iter()
                .flatten()
                .filter_map(|t| t.last())
                .map(|t| slots.saturating_sub(*t))
        };
        (early().count(), early().min().unwrap_or(0), early().sum::<usize>())
    })
}

fn best(
    chains: &[Chain],
    taken: &Taken,
    place: impl Fn(&Chain, &Taken) -> Option<Vec<usize>>,
    worth: impl Fn(&Times) -> (usize, usize, usize),
) -> Times {
    let mut found: Option<((usize, usize, usize), Times)> = None;
    for order in orders(chains) {
        let mut taken = taken.clone();
        let mut times: Times = vec![None; chains.len()];
        for i in order {
            if let (Some(chain), Some(time)) = (chains.get(i), times.get_mut(i)) {
                *time = place(chain, &taken);
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
