//! What would make a batch fit: thinner, a smaller batch, a pump, another place. Each is tried before it is said, and
//! none of them is more cure.

use super::share::back;
use crate::recipe::{Do, Method, Recipe};
use crate::schedule::fit::{Chain, Leg, Taken};

/// A change of a leg that does not run yet: whom it concerns, what it leaves of the time as a fraction, and its words.
struct Way {
    /// True for what takes the cold, false for what is tended.
    cure: bool,
    parts: (usize, usize),
    says: &'static str,
}

/// Time goes with thickness squared (diffusion, computed). For the pump and the smaller fire: common practice, no
/// source.
static WAYS: [Way; 4] = [
    Way {
        cure: true,
        parts: (9, 16),
        says: "Thinner: cut to three quarters of the thickness, the cure needs 9 parts in 16 of the time, since it goes \
               with thickness squared (computed).",
    },
    Way {
        cure: true,
        parts: (1, 4),
        says: "Thinner: cut to half the thickness, the cure needs a quarter of the time, since it goes with thickness \
               squared (computed).",
    },
    Way {
        cure: true,
        parts: (1, 3),
        says: "Injection: a recipe of its own that is pumped in, with its own dose, takes about a third of the time \
               (common practice, no source).",
    },
    Way {
        cure: false,
        parts: (1, 2),
        says: "A smaller batch: fewer and thinner pieces over the fire come up in about half the time (common practice, \
               no source). Draw by the thermometer all the same.",
    },
];

/// Said after every change: none of them touches the dose.
const NEVER: &str = "More cure does not make it faster: the dose stays what it is for this meat.";

/// What would make chain `i` fit beside the others.
pub fn ways(chains: &[Chain], i: usize, recipe: &Recipe, taken: &Taken, by: usize) -> Vec<&'static str> {
    let Some(own) = chains.get(i) else {
        return Vec::new();
    };
    let all_fit = |chains: &[Chain], taken: &Taken| back(chains, taken, by).times.iter().all(Option::is_some);
    let cures = recipe.steps.first().is_some_and(|s| s.act == Do::Cure);
    let mut said: Vec<&'static str> = Vec::new();
    for way in &WAYS {
        let pump = way.parts == (1, 3);
        if (way.cure && (!cures || own.running)) || (pump && (recipe.method.takes() || recipe.method == Method::Ground))
        {
            continue;
        }
        // The milder of two thinner cuts will do.
        if way.parts == (1, 4) && !said.is_empty() {
            continue;
        }
        let mut changed = chains.to_vec();
        let legs = changed.get_mut(i).map(|c| c.legs.iter_mut().enumerate());
        for (n, leg) in legs.into_iter().flatten() {
            if (way.cure && n == 0) || (!way.cure && leg.tended) {
                shorten(leg, way.parts);
                if !way.cure {
                    leg.load = leg.load.div_ceil(2);
                }
            }
        }
        if all_fit(&changed, taken) {
            said.push(way.says);
        }
    }
    for (place, words) in MORE.into_iter().enumerate() {
        let mut more = taken.clone();
        let loads = own.legs.iter().filter(|l| l.place == Some(place)).map(|l| l.load);
        let load = loads.max().unwrap_or(0);
        for left in more.room.get_mut(place).into_iter().flatten() {
            *left = left.saturating_add(load);
        }
        if all_fit(chains, &more) {
            said.push(words);
        }
    }
    if !said.is_empty() {
        said.push(NEVER);
    }
    said
}

/// One more place, in the order of the places.
const MORE: [&str; 3] = [
    "Room for one more batch in the refrigerator, or one batch less: then it fits.",
    "A second fire, or one batch less: then it fits.",
    "A second rack, or one batch less: then it fits.",
];

fn shorten(leg: &mut Leg, (part, of): (usize, usize)) {
    let may = leg.most.saturating_sub(leg.least);
    leg.least = leg.least.saturating_mul(part).div_ceil(of.max(1));
    leg.most = leg.least.saturating_add(may);
}
