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
    /// For each place, how many may still be in it at each slot.
    pub room: Vec<Vec<u32>>,
}

/// First slot from each on that is not good.
fn until(good: impl DoubleEndedIterator<Item = bool> + ExactSizeIterator) -> Vec<usize> {
    let length = good.len();
    let mut out = vec![length; length.saturating_add(1)];
    let mut next = length;
    for (t, (good, at)) in good.zip(out.iter_mut()).enumerate().rev() {
        if !good {
            next = t;
        }
        *at = next;
    }
    out
}

impl Taken {
    /// Nothing taken yet: `slots` slots, places of this room.
    pub fn new(rest: Vec<bool>, room: &[u32]) -> Self {
        let slots = rest.len();
        Self {
            rest,
            room: room.iter().map(|r| vec![*r; slots]).collect(),
        }
    }

    /// Takes the places of a chain at these times.
    pub fn take(&mut self, chain: &Chain, times: &[usize]) {
        for (leg, (from, to)) in chain.legs.iter().zip(times.iter().zip(times.iter().skip(1))) {
            let room = leg.place.and_then(|p| self.room.get_mut(p));
            for left in room.and_then(|r| r.get_mut(*from..*to)).into_iter().flatten() {
                *left = left.saturating_sub(1);
            }
        }
    }

    /// The same with time running the other way.
    pub fn turned(&self) -> Self {
        let turn = |all: &Vec<u32>| all.iter().rev().copied().collect();
        Self {
            rest: self.rest.iter().rev().copied().collect(),
            room: self.room.iter().map(turn).collect(),
        }
    }
}

/// Latest times of the tasks of a chain, the last not after `by`; `None` where there are none.
///
/// For every task from the last back it is known at which slots it can be, and from there the earliest next task is
/// taken: that keeps a place for the shortest time and bars nothing before it, so the latest start is found exactly.
pub fn latest(chain: &Chain, taken: &Taken, by: usize) -> Option<Vec<usize>> {
    solve(chain, taken, by, |task, t| {
        !(chain.running && task == 0) && taken.rest.get(t).copied().unwrap_or(false)
    })
}

/// Times with the earliest end, the first not before slot 0: the latest of the chain turned round.
pub fn earliest(chain: &Chain, taken: &Taken) -> Option<Vec<usize>> {
    let slots = taken.rest.len();
    let last = chain.legs.len();
    let turned = Chain {
        legs: chain.legs.iter().rev().cloned().collect(),
        // What runs is the last leg now, held at the far end.
        running: false,
        held: chain
            .held
            .iter()
            .copied()
            .chain(chain.running.then_some((0, 0)))
            .map(|(task, t)| (last.saturating_sub(task), slots.saturating_sub(t)))
            .collect(),
    };
    // A task at slot t is one at slots - t now, and rests where t rests.
    let rests = |task: usize, u: usize| {
        let t = slots.saturating_sub(u);
        !(chain.running && task == last) && taken.rest.get(t).copied().unwrap_or(false)
    };
    let times = solve(&turned, &taken.turned(), slots, rests)?;
    Some(times.iter().rev().map(|u| slots.saturating_sub(*u)).collect())
}

fn solve(chain: &Chain, taken: &Taken, by: usize, rests: impl Fn(usize, usize) -> bool) -> Option<Vec<usize>> {
    let slots = taken.rest.len();
    let awake = until(taken.rest.iter().map(|r| !r));
    let free: Vec<Vec<usize>> = taken
        .room
        .iter()
        .map(|r| until(r.iter().map(|left| *left > 0)))
        .collect();
    let last = chain.legs.len();
    let barred = |task: usize, t: usize| {
        rests(task, t)
            || (chain.running && task == 0 && t > 0)
            || chain.held.iter().any(|(of, at)| *of == task && *at != t)
    };
    let mut good: Vec<bool> = (0..=slots).map(|t| t <= by && !barred(last, t)).collect();
    let mut chosen: Vec<Vec<usize>> = Vec::new();
    for (i, leg) in chain.legs.iter().enumerate().rev() {
        // The first good slot of the next task from each slot on.
        let next = until(good.iter().map(|g| !g));
        let free = leg.place.and_then(|p| free.get(p));
        let mut to = vec![usize::MAX; slots.saturating_add(1)];
        good = (0..=slots)
            .zip(to.iter_mut())
            .map(|(t, to)| {
                let from = t.saturating_add(leg.least);
                let Some(then) = next.get(from).copied().filter(|s| *s <= slots) else {
                    return false;
                };
                let lasts = |ends: &Vec<usize>| then == t || ends.get(t).is_some_and(|end| *end >= then);
                let fits = then <= t.saturating_add(leg.most)
                    && free.is_none_or(lasts)
                    && (!leg.tended || lasts(&awake))
                    && !barred(i, t);
                *to = then;
                fits
            })
            .collect();
        chosen.push(to);
    }
    let mut at = good.iter().rposition(|g| *g)?;
    let mut times = vec![at];
    for to in chosen.iter().rev() {
        at = *to.get(at)?;
        times.push(at);
    }
    Some(times)
}
