//! Plans against every plan there is, on small instances drawn from a fixed row of numbers.

use cure_reckoner::plan::back::fit::{Chain, Leg, Taken, latest, turn};
use cure_reckoner::plan::back::share::{back, forth};

/// A fixed row of numbers (a 64-bit linear congruential generator, multiplier of Knuth's MMIX).
struct Row(u64);

impl Row {
    fn under(&mut self, n: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).expect("31 bits") % n
    }
}

struct Case {
    chains: Vec<Chain>,
    taken: Taken,
    by: usize,
}

fn case(row: &mut Row) -> Case {
    let slots = 8 + row.under(7);
    let chains = (0..1 + row.under(3))
        .map(|_| {
            let legs = (0..1 + row.under(3))
                .map(|_| {
                    let least = row.under(4);
                    Leg {
                        least,
                        most: least + row.under(3),
                        place: Some(row.under(3)).filter(|p| *p < 2),
                        load: 1 + u32::try_from(row.under(2)).expect("small"),
                        tended: row.under(4) == 0,
                    }
                })
                .collect();
            Chain {
                legs,
                running: row.under(6) == 0,
                held: Vec::new(),
            }
        })
        .collect();
    let rest = (0..slots).map(|_| row.under(4) == 0).collect();
    let taken = Taken::new(rest, &[2, 1 + u32::try_from(row.under(3)).expect("small")]);
    Case {
        chains,
        taken,
        by: slots - row.under(2),
    }
}

/// Every row of times that one chain may have, places apart.
fn alone(chain: &Chain, case: &Case) -> Vec<Vec<usize>> {
    let mut found = Vec::new();
    let mut open: Vec<Vec<usize>> = (0..=case.by).map(|t| vec![t]).collect();
    while let Some(times) = open.pop() {
        if !keeps(chain, &times, case) {
            continue;
        }
        if times.len() == chain.legs.len() + 1 {
            found.push(times);
            continue;
        }
        for t in times[times.len() - 1]..=case.by {
            open.push([times.as_slice(), &[t]].concat());
        }
    }
    found
}

/// The rules of one chain, said over again: bounds, lengths, rest, and somebody by where it is tended.
fn keeps(chain: &Chain, times: &[usize], case: &Case) -> bool {
    let rests = |t: usize| case.taken.rest.get(t).copied().unwrap_or(false);
    let started = chain.running && times[0] == 0;
    (!chain.running || started)
        && times
            .iter()
            .enumerate()
            .all(|(i, t)| *t <= case.by && (!rests(*t) || (started && i == 0)))
        && times.windows(2).zip(&chain.legs).all(|(w, leg)| {
            let length = w[1].checked_sub(w[0]);
            length.is_some_and(|l| leg.least <= l && l <= leg.most) && (!leg.tended || !(w[0]..w[1]).any(rests))
        })
}

/// True where no place holds more than it may.
fn share(chains: &[Chain], all: &[Vec<usize>], taken: &Taken) -> bool {
    (0..taken.rest.len()).all(|t| {
        taken.room.iter().enumerate().all(|(place, room)| {
            let inside = chains
                .iter()
                .zip(all)
                .flat_map(|(c, times)| c.legs.iter().zip(times.windows(2)));
            let load: u32 = inside
                .filter(|(leg, w)| leg.place == Some(place) && w[0] <= t && t < w[1])
                .map(|(leg, _)| leg.load)
                .sum();
            load <= room[t]
        })
    })
}

/// A plan is worth how many chains it holds and its first start, what was begun before apart.
type Worth = (usize, usize);

fn worth(chains: &[Chain], times: &[Option<Vec<usize>>]) -> Worth {
    let placed = chains.iter().zip(times).filter_map(|(c, t)| Some((c, t.as_ref()?)));
    let starts = placed.clone().filter(|(c, _)| !c.running).map(|(_, t)| t[0]);
    (placed.count(), starts.min().unwrap_or(0))
}

/// Every plan of all chains or some of them.
fn every(case: &Case) -> Vec<Vec<Option<Vec<usize>>>> {
    let mut plans: Vec<Vec<Option<Vec<usize>>>> = vec![Vec::new()];
    for chain in &case.chains {
        let rows: Vec<_> = alone(chain, case).into_iter().map(Some).chain([None]).collect();
        plans = plans
            .iter()
            .flat_map(|p| rows.iter().map(|r| [p.as_slice(), std::slice::from_ref(r)].concat()))
            .collect();
        plans.retain(|p| fits(&case.chains, p, &case.taken));
    }
    plans
}

/// True where the chains that are placed share their places.
fn fits(chains: &[Chain], times: &[Option<Vec<usize>>], taken: &Taken) -> bool {
    let placed = chains
        .iter()
        .zip(times)
        .filter_map(|(c, t)| Some((c.clone(), t.clone()?)));
    let (chains, placed): (Vec<_>, Vec<_>) = placed.unzip();
    share(&chains, &placed, taken)
}

#[test]
fn of_every_plan_there_is_it_is_the_one_that_starts_latest_and_keeps_every_rest() {
    let mut row = Row(20_261_114);
    let (mut all, mut shared) = (0, 0);
    for n in 0..200 {
        let case = case(&mut row);
        let plan = back(&case.chains, &case.taken, case.by);
        for (chain, times) in case.chains.iter().zip(&plan.times) {
            assert!(
                times.as_ref().is_none_or(|t| keeps(chain, t, &case)),
                "instance {n}: {times:?}"
            );
        }
        assert!(
            fits(&case.chains, &plan.times, &case.taken),
            "instance {n}: a place is too full"
        );
        let best = every(&case)
            .iter()
            .map(|p| worth(&case.chains, p))
            .max()
            .expect("none of them is a plan too");
        assert_eq!(worth(&case.chains, &plan.times), best, "instance {n}");
        assert!(plan.best && plan.gap == (0, 0), "instance {n}");
        all += usize::from(best.0 == case.chains.len());
        shared += usize::from(case.chains.len() > 1 && best.0 == case.chains.len());
    }
    println!("of 200 instances {all} can be planned whole, {shared} of them with two or three chains");
    assert!(all > 100 && shared > 50, "{all} {shared}");
}

/// Times with the earliest end: the latest of the chain with time running the other way.
fn earliest(chain: &Chain, taken: &Taken) -> Option<Vec<usize>> {
    let slots = taken.rest.len();
    latest(&chain.turned(slots), &taken.turned(), slots).map(|times| turn(&times, slots))
}

/// One chain alone is planned exactly: both ways, and never in vain.
#[test]
fn one_batch_alone_is_planned_exactly() {
    let mut row = Row(7);
    for n in 0..200 {
        let mut case = case(&mut row);
        case.chains.truncate(1);
        case.by = case.taken.rest.len();
        let mut rows = alone(&case.chains[0], &case);
        rows.retain(|t| share(&case.chains, std::slice::from_ref(t), &case.taken));
        let late = latest(&case.chains[0], &case.taken, case.by);
        let early = earliest(&case.chains[0], &case.taken);
        assert_eq!(
            late.as_ref().map(|t| t[0]),
            rows.iter().map(|t| t[0]).max(),
            "instance {n}"
        );
        assert_eq!(
            early.as_ref().map(|t| t[t.len() - 1]),
            rows.iter().map(|t| t[t.len() - 1]).min(),
            "instance {n}"
        );
        for times in [late, early].into_iter().flatten() {
            assert!(keeps(&case.chains[0], &times, &case), "instance {n}: {times:?}");
        }
    }
}

/// The earliest plan keeps the same rules, and its last end is the earliest there is.
#[test]
fn of_every_plan_there_is_it_is_the_one_that_ends_first() {
    let mut row = Row(1_492);
    let mut found = 0;
    for n in 0..200 {
        let mut case = case(&mut row);
        case.by = case.taken.rest.len();
        let plan = forth(&case.chains, &case.taken);
        for (chain, times) in case.chains.iter().zip(&plan.times) {
            assert!(
                times.as_ref().is_none_or(|t| keeps(chain, t, &case)),
                "instance {n}: {times:?}"
            );
        }
        assert!(fits(&case.chains, &plan.times, &case.taken), "instance {n}");
        let end = |p: &[Option<Vec<usize>>]| p.iter().flatten().map(|t| t[t.len() - 1]).max().unwrap_or(0);
        let worth = |p: &[Option<Vec<usize>>]| (p.iter().flatten().count(), std::cmp::Reverse(end(p)));
        let best = every(&case)
            .iter()
            .map(|p| worth(p))
            .max()
            .expect("none of them is a plan too");
        assert_eq!(worth(&plan.times), best, "instance {n}");
        found += usize::from(best.0 == case.chains.len());
    }
    assert!(found > 100, "{found}");
}
