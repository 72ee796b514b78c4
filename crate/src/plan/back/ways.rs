//! What would make a batch fit: thinner, a smaller batch, a pump, another place. Each is tried before it is said, and
//! none of them is more cure.

use super::facts::WouldFit;
use super::share::back;
use crate::recipe::{Do, Method, Recipe};
use crate::schedule::fit::{Chain, Leg, Taken};

/// A change of a leg that does not run yet: whom it concerns, and what it leaves of the time as a fraction.
struct Way {
    /// True for what takes the cold, false for what is tended.
    cure: bool,
    parts: (usize, usize),
    remedy: WouldFit,
}

/// Time goes with thickness squared (diffusion, computed). For the pump and the smaller fire: common practice, no
/// source.
static WAYS: [Way; 4] = [
    Way {
        cure: true,
        parts: (9, 16),
        remedy: WouldFit::Thinner,
    },
    Way {
        cure: true,
        parts: (1, 4),
        remedy: WouldFit::HalfAsThick,
    },
    Way {
        cure: true,
        parts: (1, 3),
        remedy: WouldFit::Pump,
    },
    Way {
        cure: false,
        parts: (1, 2),
        remedy: WouldFit::Smaller,
    },
];

/// What would make chain `i` fit beside the others.
pub fn ways(chains: &[Chain], i: usize, recipe: &Recipe, taken: &Taken, by: usize) -> Vec<WouldFit> {
    let Some(own) = chains.get(i) else {
        return Vec::new();
    };
    let all_fit = |chains: &[Chain], taken: &Taken| back(chains, taken, by).times.iter().all(Option::is_some);
    let cures = recipe.steps.first().is_some_and(|s| s.act == Do::Cure);
    let mut said: Vec<WouldFit> = Vec::new();
    for way in &WAYS {
        let pump = way.remedy == WouldFit::Pump;
        if (way.cure && (!cures || own.running)) || (pump && (recipe.method.takes() || recipe.method == Method::Ground))
        {
            continue;
        }
        // The milder of two thinner cuts will do.
        if way.remedy == WouldFit::HalfAsThick && !said.is_empty() {
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
            said.push(way.remedy);
        }
    }
    for (place, remedy) in MORE.into_iter().enumerate() {
        let mut more = taken.clone();
        let loads = own.legs.iter().filter(|l| l.place == Some(place)).map(|l| l.load);
        let load = loads.max().unwrap_or(0);
        for left in more.room.get_mut(place).into_iter().flatten() {
            *left = left.saturating_add(load);
        }
        if all_fit(chains, &more) {
            said.push(remedy);
        }
    }
    said
}

/// One more place, in the order of the places.
const MORE: [WouldFit; 3] = [WouldFit::MoreCold, WouldFit::MoreFire, WouldFit::MoreRack];

fn shorten(leg: &mut Leg, (part, of): (usize, usize)) {
    let may = leg.most.saturating_sub(leg.least);
    leg.least = leg.least.saturating_mul(part).div_ceil(of.max(1));
    leg.most = leg.least.saturating_add(may);
}
