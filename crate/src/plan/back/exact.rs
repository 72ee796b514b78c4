//! Every plan of a few chains, the best of them: complete as long as a fixed number of looks reaches.

use super::worth::{Times, Worth, worth};
use crate::schedule::fit::{Chain, Taken};

/// Looks at a time of a task: enough for a handful of chains in a narrow window, and done in a few milliseconds.
const LOOKS: usize = 200_000;

/// A search that knows a plan already and looks for a better one.
pub struct Search<'a> {
    chains: &'a [Chain],
    /// The latest start of each by itself; nothing where it fits nowhere.
    alone: &'a [Option<usize>],
    by: usize,
    looks: usize,
    best: (Worth, Times),
}

impl<'a> Search<'a> {
    /// The best of all plans, and true where every one was looked at or ruled out.
    pub fn best(
        chains: &'a [Chain],
        alone: &'a [Option<usize>],
        taken: &Taken,
        by: usize,
        known: (Worth, Times),
    ) -> (Times, bool) {
        let mut search = Self {
            chains,
            alone,
            by,
            looks: LOOKS,
            best: known,
        };
        search.chain(&mut Vec::new(), taken);
        (search.best.1, search.looks > 0)
    }

    /// All that the next chain may do, the latest start first; at last, that it is left out.
    fn chain(&mut self, placed: &mut Times, taken: &Taken) {
        let i = placed.len();
        let Some(chain) = self.chains.get(i) else {
            let now = worth(self.chains, placed, taken);
            if now > self.best.0 {
                self.best = (now, placed.clone());
            }
            return;
        };
        let latest = self.alone.get(i).copied().flatten();
        for start in latest.into_iter().flat_map(|latest| (0..=latest).rev()) {
            if !self.can_win(placed, Some(Some(start)), taken) {
                break;
            }
            if !chain.is_barred(taken, 0, start) {
                self.leg(placed, taken, &mut vec![start]);
            }
        }
        if self.can_win(placed, Some(None), taken) {
            placed.push(None);
            self.chain(placed, taken);
            placed.pop();
        }
    }

    /// All times of the next task, until the last one; then the next chain.
    fn leg(&mut self, placed: &mut Times, taken: &Taken, times: &mut Vec<usize>) {
        let chains = self.chains;
        let (Some(chain), Some(from)) = (chains.get(placed.len()), times.last().copied()) else {
            return;
        };
        let Some(leg) = chain.legs.get(times.len().saturating_sub(1)) else {
            let mut taken = taken.clone();
            taken.take(chain, times);
            placed.push(Some(times.clone()));
            // A better plan may have been found since this start was taken up.
            if self.can_win(placed, None, &taken) {
                self.chain(placed, &taken);
            }
            placed.pop();
            return;
        };
        let shut = (from..self.by).find(|t| taken.is_shut(leg, *t)).unwrap_or(self.by);
        let last = from
            .saturating_add(leg.most)
            .min(if leg.least == 0 { shut.max(from) } else { shut });
        for to in from.saturating_add(leg.least)..=last {
            if self.looks == 0 {
                return;
            }
            self.looks = self.looks.saturating_sub(1);
            if chain.is_barred(taken, times.len(), to) {
                continue;
            }
            times.push(to);
            self.leg(placed, taken, times);
            times.pop();
        }
    }

    /// True where the best that can come of it, each chain that is left standing alone, beats what is known.
    fn can_win(&self, placed: &Times, next: Option<Option<usize>>, taken: &Taken) -> bool {
        let first = |t: &Option<Vec<usize>>| t.as_ref().and_then(|t| t.first().copied());
        let known = placed.iter().map(first).chain(next);
        let left = self
            .alone
            .iter()
            .skip(placed.len().saturating_add(usize::from(next.is_some())));
        let starts: Times = known.chain(left.copied()).map(|t| t.map(|t| vec![t])).collect();
        worth(self.chains, &starts, taken) > self.best.0
    }
}
