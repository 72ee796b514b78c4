//! One chain of tasks in slots of time: the latest start that ends by a bound, exactly, in time linear in the slots.

/// Minutes of a slot.
pub const SLOT: usize = 15;

/// What lies between the beginning of one task and that of the next.
#[derive(Clone, Debug)]
pub struct Leg {
    /// Least slots.
    pub least: usize,
    /// Most slots: more than the least where it may wait.
    pub most: usize,
    /// The place it takes while it lasts, by its number.
    pub place: Option<usize>,
    /// How much of that place it takes.
    pub load: u32,
    /// True where somebody has to be by.
    pub tended: bool,
}

/// A batch: legs in order. The first task begins leg 0; the last task ends the last leg.
#[derive(Clone, Debug)]
pub struct Chain {
    /// Legs in order.
    pub legs: Vec<Leg>,
    /// True where the first leg runs already: it begins at slot 0, whoever sleeps.
    pub running: bool,
    /// Tasks (by number, 0 the start) that are held at a slot.
    pub held: Vec<(usize, usize)>,
}

/// What is taken already.
#[derive(Clone, Debug)]
pub struct Taken {
    /// True for a slot of rest.
    pub rest: Vec<bool>,
    /// For each place, how much may still go into it at each slot.
    pub room: Vec<Vec<u32>>,
    /// True where time runs the other way.
    turned: bool,
}

impl Taken {
    /// Nothing taken yet: `slots` slots, places of this room.
    pub fn new(rest: Vec<bool>, room: &[u32]) -> Self {
        let slots = rest.len();
        Self {
            rest,
            room: room.iter().map(|r| vec![*r; slots]).collect(),
            turned: false,
        }
    }

    /// Takes the places of a chain at these times.
    pub fn take(&mut self, chain: &Chain, times: &[usize]) {
        for (leg, (from, to)) in chain.legs.iter().zip(times.iter().zip(times.iter().skip(1))) {
            let room = leg.place.and_then(|p| self.room.get_mut(p));
            for left in room.and_then(|r| r.get_mut(*from..*to)).into_iter().flatten() {
                *left = left.saturating_sub(leg.load);
            }
        }
    }

    /// The same with time running the other way.
    pub fn turned(&self) -> Self {
        let turn = |all: &Vec<u32>| all.iter().rev().copied().collect();
        Self {
            rest: self.rest.iter().rev().copied().collect(),
            room: self.room.iter().map(turn).collect(),
            turned: !self.turned,
        }
    }

    /// True where a task that falls on this slot falls into rest. A task at slot t is one at `slots - t` the other way,
    /// and rests where t rests.
    fn rests(&self, t: usize) -> bool {
        let at = if self.turned { t.checked_sub(1) } else { Some(t) };
        at.and_then(|t| self.rest.get(t)).copied().unwrap_or(false)
    }

    /// True where a slot cannot hold this leg: no room in its place, or nobody by.
    pub fn is_shut(&self, leg: &Leg, t: usize) -> bool {
        let room = leg.place.and_then(|p| self.room.get(p)).and_then(|r| r.get(t));
        room.is_some_and(|left| *left < leg.load) || (leg.tended && self.rest.get(t) == Some(&true))
    }

    /// True where the first time of a chain is a choice: what runs already was begun.
    pub const fn is_open(&self, chain: &Chain) -> bool {
        !chain.running || self.turned
    }
}

impl Chain {
    /// True where a task cannot be at a slot: somebody rests, it runs already, or it is held elsewhere.
    pub fn is_barred(&self, taken: &Taken, task: usize, t: usize) -> bool {
        let pin = if taken.turned {
            (self.legs.len(), taken.rest.len())
        } else {
            (0, 0)
        };
        let own = if self.running && task == pin.0 {
            t != pin.1
        } else {
            taken.rests(t)
        };
        own || self.held.iter().any(|(of, at)| *of == task && *at != t)
    }

    /// The same with time running the other way over so many slots.
    pub fn turned(&self, slots: usize) -> Self {
        let last = self.legs.len();
        let turn = |(task, t): &(usize, usize)| (last.saturating_sub(*task), slots.saturating_sub(*t));
        Self {
            legs: self.legs.iter().rev().cloned().collect(),
            running: self.running,
            held: self.held.iter().map(turn).collect(),
        }
    }
}

/// Slots in four days: as far as it is looked at first beyond what the chain lasts.
const NEAR: usize = 4 * 1440 / SLOT;

/// Latest times of the tasks of a chain, the last not after `by`; `None` where there are none.
///
/// For every task from the last back it is known at which slots it can be, and from there the earliest next task is
/// taken: that keeps a place for the shortest time and bars nothing before it, so the latest start is found exactly.
/// What begins within a window is the latest wherever there is one, so the near slots are looked at before all.
pub fn latest(chain: &Chain, taken: &Taken, by: usize) -> Option<Vec<usize>> {
    let length = chain.legs.iter().fold(NEAR, |sum, leg| sum.saturating_add(leg.least));
    let windows = [length, length.saturating_mul(3), by];
    let mut tried = usize::MAX;
    for window in windows {
        // What runs begins at slot 0.
        let from = if chain.running && !taken.turned {
            0
        } else {
            by.saturating_sub(window)
        };
        if from >= tried {
            continue;
        }
        tried = from;
        if let Some(times) = solve(chain, taken, from, by) {
            return Some(times);
        }
    }
    None
}

/// Times the other way round.
pub fn turn(times: &[usize], slots: usize) -> Vec<usize> {
    times.iter().rev().map(|t| slots.saturating_sub(*t)).collect()
}

/// The latest times within the slots `from` to `by`.
fn solve(chain: &Chain, taken: &Taken, from: usize, by: usize) -> Option<Vec<usize>> {
    let last = chain.legs.len();
    // Where the next task can be, and for every task the slot of the next one from there; both from `from` on.
    let count = by.saturating_sub(from).saturating_add(1);
    let mut good: Vec<bool> = (from..=by).map(|t| !chain.is_barred(taken, last, t)).collect();
    let mut chosen: Vec<Vec<usize>> = Vec::new();
    for (i, leg) in chain.legs.iter().enumerate().rev() {
        // From the last slot back: the first slot for the next task, the first that cannot hold the leg.
        let (mut then, mut shut) = (usize::MAX, usize::MAX);
        let mut now = vec![false; count];
        let mut to = vec![usize::MAX; count];
        for (n, (now, to)) in now.iter_mut().zip(to.iter_mut()).enumerate().rev() {
            let t = n.saturating_add(from);
            if good.get(n.saturating_add(leg.least)) == Some(&true) {
                then = t.saturating_add(leg.least);
            }
            if taken.is_shut(leg, t) {
                shut = t;
            }
            *to = then;
            *now = then <= t.saturating_add(leg.most) && (then == t || then <= shut) && !chain.is_barred(taken, i, t);
        }
        good = now;
        chosen.push(to);
    }
    let mut at = good.iter().rposition(|g| *g)?.saturating_add(from);
    let mut times = vec![at];
    for to in chosen.iter().rev() {
        at = *to.get(at.saturating_sub(from))?;
        times.push(at);
    }
    Some(times)
}
