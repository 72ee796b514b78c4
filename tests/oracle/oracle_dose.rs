//! The rules of the dose: what went in of nitrite and nitrate, counted on what, against which limit.

use crate::oracle::{Fired, Three};
use crate::table::figure;
use crate::told::{Agent, Amount, Kind, Method, Own, Put, Told};

/// An amount in grams: the least, what bars when it is over, the most.
#[derive(Clone, Copy, Debug, Default)]
struct Grams {
    low: f64,
    bars: f64,
    high: f64,
}

impl Grams {
    fn times(self, by: f64) -> Self {
        Self {
            low: self.low * by,
            bars: self.bars * by,
            high: self.high * by,
        }
    }

    fn plus(self, other: Self) -> Self {
        Self {
            low: self.low + other.low,
            bars: self.bars + other.bars,
            high: self.high + other.high,
        }
    }
}

fn grams(amount: Amount, told: &Told) -> Grams {
    match amount {
        Amount::Grams(g) => Grams {
            low: (g - told.step / 2.0).max(0.0),
            bars: g,
            high: g + told.step / 2.0,
        },
        Amount::Teaspoons(n) => Grams {
            low: n * figure("S.low"),
            bars: n * figure("S.text-high"),
            high: n * figure("S.high"),
        },
        Amount::Tablespoons(n) => {
            let anz = told.law == "anz";
            let each = figure(if anz { "S.tsp-tbsp-anz" } else { "S.tsp-tbsp" });
            grams(Amount::Teaspoons(n * each), told)
        }
    }
}

/// Ppm on what the method counts on, of one gram.
pub fn per_gram(told: &Told) -> f64 {
    let (green, pickle) = (told.green(), told.pickle());
    match told.method {
        Method::Rub | Method::Ground => 1e6 / green,
        Method::CoverBrine => 1e6 / (green + pickle),
        Method::PickUp | Method::Pumped => 1e6 * told.take / 100.0 / pickle,
    }
}

/// The cure that the recipe asks for, rounded down to the scale.
pub fn planned(told: &Told) -> f64 {
    let strength = told.agent.as_ref().and_then(|a| a.nitrite).unwrap_or(0.0) / 100.0;
    if strength <= 0.0 {
        return 0.0;
    }
    let exact = told.aim / per_gram(told) / strength;
    (exact / told.step + 1e-9).floor() * told.step
}

/// Every agent that went in or is to go in, with its weight.
fn agents(told: &Told) -> Vec<(Grams, &Agent)> {
    let first = told.agent.as_ref().map(|agent| {
        let amount = match told.put {
            Put::Planned | Put::Silent => Amount::Grams(planned(told)),
            Put::Ticked(g) => Amount::Grams(g),
            Put::Told(amount) => amount,
        };
        (grams(amount, told), agent)
    });
    let second = told.also.as_ref().map(|(amount, agent)| (grams(*amount, told), agent));
    first.into_iter().chain(second).collect()
}

/// The most nitrite by the chosen rule: what bars, and up to where it must be allowed.
fn limit(told: &Told) -> (f64, f64) {
    let belly = told.classes.iter().any(|c| c.belly);
    let rind = told.classes.iter().any(|c| c.rind);
    let row = match (told.law, told.method) {
        ("us-home", m) if belly && m.brine() => "L.us-home.belly-brine",
        ("us-home", _) => "L.us-home.any",
        ("us-plant", m) if belly && m.brine() => "L.us-plant.belly-brine",
        ("us-plant", Method::Ground) => "L.us-plant.ground",
        ("us-plant", Method::Rub) => "L.us-plant.rub",
        ("us-plant", _) => "L.us-plant.brine",
        ("ca", _) if belly => "L.ca.belly",
        ("ca", _) => "L.ca.any",
        ("uk", _) => "L.uk.any",
        ("eu", _) => "L.eu.any",
        ("codex", _) => "L.codex.any",
        ("anz", _) => "L.anz.any",
        (law, _) => panic!("no limit is written for {law}"),
    };
    let most = figure(row);
    let us = told.law.starts_with("us");
    (most, if rind && us { most * figure("L.rind") } else { most })
}

/// The effective least: what bars, and from where on it must be allowed.
fn least(told: &Told) -> (f64, f64) {
    match told.law {
        // What is 120 ppm at most cannot be 120 ppm at least.
        "us-home" | "us-plant" if told.method.brine() && told.classes.iter().any(|c| c.belly) => {
            (figure("E.effect"), figure("E.us"))
        }
        "us-home" | "us-plant" => (figure("E.us"), figure("E.us")),
        "ca" => (figure("E.ca"), figure("E.us")),
        "uk" => (figure("E.effect"), figure("E.us")),
        _ => (figure("E.effect"), figure("E.effect")),
    }
}

fn nitrate_limit(told: &Told) -> Option<f64> {
    match (told.law, told.method) {
        ("us-home", _) => Some(figure("N.us-home")),
        ("us-plant", Method::Ground) => Some(figure("N.us-plant.ground")),
        ("us-plant", Method::Rub) => Some(figure("N.us-plant.rub")),
        ("us-plant", _) => Some(figure("N.us-plant.brine")),
        _ => None,
    }
}

/// Share of the final that has gone into a slab from both sides, for a short time: 2 sqrt(Fo / pi), at most 1.
fn uptake(speed: f64, hours: f64, thick_mm: f64) -> f64 {
    let half = thick_mm / 2000.0;
    let fourier = speed * hours * 3600.0 / (half * half);
    (2.0 * (fourier / std::f64::consts::PI).sqrt()).min(1.0)
}

pub fn dose(told: &Told, fired: &mut Vec<Fired>) {
    let mut fire = |id, bars, may| {
        fired.push(Fired {
            id,
            class: None,
            says: Three::of(bars, may),
        });
    };
    let raw = |k: Kind| matches!(k, Kind::Boar | Kind::Hare);
    fire("R1", told.hung && told.classes.iter().any(|c| raw(c.kind)), false);
    fire("R2", told.hung, told.hung);
    let (own_cure, own_plain) = match told.own {
        Own::None => (false, false),
        Own::Plain(_) => (false, true),
        Own::Cure(_) => (true, false),
    };
    fire("D5", own_cure, own_plain);
    let agents = agents(told);
    fire("A1", !agents.is_empty() || own_cure, false);
    // Where the recipe has no cure, none is missing.
    fire("D9", matches!(told.put, Put::Silent) && told.agent.is_some(), false);
    // Without an agent there is nothing to be in range.
    if agents.is_empty() {
        return fire("D2", true, true);
    }
    fire("D6", agents.iter().any(|(_, a)| a.nitrite.is_none()), false);

    let sum = |strength: &dyn Fn(&Agent) -> f64| {
        let each = agents.iter().map(|(g, a)| g.times(strength(a) / 100.0));
        each.fold(Grams::default(), Grams::plus)
    };
    let nitrite = sum(&|a| a.nitrite.unwrap_or(0.0)).times(per_gram(told));
    let nitrate = sum(&|a| a.nitrate).times(per_gram(told));
    // Steps of the scale under the water and the salt of a brine move the dose too.
    let slack = if told.method.brine() {
        1.02 + 1.5 * told.step / told.pickle()
    } else {
        1.0 + 1e-6
    };
    let summed = matches!(told.law, "ca" | "anz");
    let counted = if summed { nitrite.plus(nitrate) } else { nitrite };
    let (most, allowed) = limit(told);
    // A brine is known to half a step of the scale under each thing in it.
    let known = if told.method.brine() {
        1.0 + 2.0 * told.step / told.pickle()
    } else {
        1.0 + 1e-6
    };
    let over = |g: Grams| (g.bars > most * known, g.high * slack > allowed);
    let (bars, may) = over(counted);
    fire("D1", bars, may);

    let equal = |g: Grams| g.times(1e6 / (told.green() + told.pickle()) / per_gram(told));
    let top = if told.method == Method::PickUp {
        nitrite.high.max(equal(nitrite).high)
    } else {
        nitrite.high
    };
    let (needs, surely) = least(told);
    fire("D2", top * slack < needs, nitrite.low / slack < surely);

    let most_nitrate = nitrate_limit(told).unwrap_or(f64::INFINITY);
    fire(
        "D3",
        nitrate.bars > most_nitrate * known,
        nitrate.high * slack > most_nitrate,
    );
    let has_nitrate = agents.iter().any(|(_, a)| a.nitrate > 0.0);
    let belly = told.classes.iter().any(|c| c.belly);
    let none = matches!(told.law, "uk" | "eu") && !told.hung || told.law == "us-plant" && belly;
    fire("D7", has_nitrate && none, has_nitrate);

    if told.method == Method::PickUp {
        let thinnest = told
            .classes
            .iter()
            .map(|c| c.thick)
            .try_fold(f64::INFINITY, |a, t| Some(a.min(t?)));
        let even = equal(nitrite);
        match thinnest {
            None => fire("D10", even.bars > most, true),
            Some(thick) => {
                let slow = even.times(uptake(figure("V.slow"), told.stayed(), thick));
                fire("D8", slow.bars > most, even.high > allowed);
            }
        }
    }
    let strong = agents.iter().any(|(_, a)| a.nitrite.unwrap_or(0.0) > figure("D11"));
    fire("D11", strong && bars, strong);
}
