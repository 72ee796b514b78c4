//! Random batches. A lawful one is drawn first, at any stage from the plan to the pack; then, in rather more than half of
//! them, one to three things go wrong. So every rule fires often, and it is known of a third that nothing may be barred.

use crate::oracle_dose::{per_gram, planned};
use crate::told::{
    Agent, Amount, Class, DAY, HOUR, KILLED, Kind, MINUTE, Method, Ms, Own, Put, Reading, Seen, Told, fahrenheit,
};
use rand::rngs::SmallRng;
use rand::seq::IndexedRandom;
use rand::{Rng, SeedableRng};

/// Wednesday 25 November 2026, 09:46 UTC.
const MORNING: Ms = 1_795_600_000_000;

/// How far a batch has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stage {
    Planned,
    Weighed,
    InCure,
    Lit,
    Pulled,
    Chilled,
    Packed,
}

const STAGES: [Stage; 7] = [
    Stage::Planned,
    Stage::Weighed,
    Stage::InCure,
    Stage::Lit,
    Stage::Pulled,
    Stage::Chilled,
    Stage::Packed,
];

const LAWS: [&str; 7] = ["us-home", "us-plant", "ca", "uk", "eu", "codex", "anz"];

/// Cuts: key, kind, bare belly, rind, grams of one, millimetres.
type Cut = (&'static str, Kind, bool, bool, f64, f64);
const CUTS: [Cut; 11] = [
    ("mallard-breast", Kind::Bird, false, false, 110.0, 26.0),
    ("teal-breast", Kind::Bird, false, false, 36.0, 15.0),
    ("mallard-leg", Kind::Bird, false, false, 65.0, 28.0),
    ("goose-breast", Kind::Bird, false, false, 380.0, 38.0),
    ("hare-saddle", Kind::Hare, false, false, 280.0, 35.0),
    ("hare-legs", Kind::Hare, false, false, 375.0, 45.0),
    ("fallow-haunch", Kind::Red, false, false, 1600.0, 58.0),
    ("venison-strips", Kind::Red, false, false, 25.0, 6.0),
    ("boar-belly", Kind::Boar, true, false, 900.0, 35.0),
    ("boar-belly-rind", Kind::Boar, true, true, 900.0, 38.0),
    ("boar-loin", Kind::Boar, false, false, 1500.0, 60.0),
];

/// Cures under other names, one with a soft hyphen in it, one with a Cyrillic letter.
const HIDDEN: [&str; 12] = [
    "pinksalt",
    "E250",
    "E 252",
    "NaNO2",
    "nitre",
    "salt peter",
    "Pökelsalz",
    "KNO3",
    "sodium nitrate",
    "celery powder, cultured",
    "nit\u{ad}rite mix",
    "s\u{430}ltpetre",
];
const HARMLESS: [&str; 4] = ["dried sour cherry", "spruce tips", "birch sugar", "sea lettuce"];

pub struct Drawn {
    pub told: Told,
    pub stage: Stage,
    /// Nothing went wrong with it.
    pub lawful: bool,
}

/// The batch with that number.
pub fn batch(number: u64) -> Drawn {
    let mut rng = SmallRng::seed_from_u64(number.wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ 0x00c0_ffee);
    let stage = *STAGES.choose(&mut rng).unwrap_or(&Stage::Packed);
    let mut told = lawful(stage, &mut rng);
    let lawful = rng.random_bool(0.45);
    if !lawful {
        for _ in 0..rng.random_range(1..=3) {
            spoil(&mut told, stage, &mut rng);
        }
        if rng.random_bool(0.02) {
            told.thrown_out = Some(told.now - rng.random_range(0..3) * HOUR);
        }
    }
    Drawn { told, stage, lawful }
}

fn round(value: f64, step: f64) -> f64 {
    // Through the decimal text, so that what is judged is what is typed.
    let text = format!("{:.3}", (value / step).round() * step);
    text.parse().unwrap_or(value)
}

/// A reading typed in either scale.
fn reading(celsius: f64, at: Ms, in_f: bool) -> Reading {
    let shown = if in_f { fahrenheit(celsius) } else { celsius };
    Reading {
        shown: round(shown, if in_f { 1.0 } else { 0.1 }),
        fahrenheit: in_f,
        at,
        struck: false,
        sure: false,
    }
}

fn lawful(stage: Stage, rng: &mut SmallRng) -> Told {
    let law = *LAWS.choose(rng).unwrap_or(&"us-home");
    let first = *CUTS.choose(rng).unwrap_or(&CUTS[0]);
    let (_, kind, belly, _, _, _) = first;
    let jerky = first.0 == "venison-strips";
    let method = match rng.random_range(0..10) {
        _ if belly || jerky => Method::Rub,
        0..=4 => Method::Rub,
        5 | 6 => Method::CoverBrine,
        7 | 8 => Method::Pumped,
        _ => Method::Ground,
    };
    let others: Vec<Cut> = CUTS
        .into_iter()
        .filter(|c| c.1 == kind && c.2 == belly && (c.0 == "venison-strips") == jerky)
        .collect();
    let mut cuts = vec![first];
    if rng.random_bool(0.4) {
        cuts.extend(others.choose(rng));
    }
    let mut classes: Vec<Class> = cuts.into_iter().map(|c| class(c, rng)).collect();
    // One scale that can weigh this.
    let step = *[0.1, 0.01].choose(rng).unwrap_or(&0.1);
    let light: f64 = classes.iter().map(|c| c.grams).sum();
    if light < 800.0 {
        classes.iter_mut().for_each(|c| c.grams *= 4.0);
        classes.iter_mut().for_each(|c| c.count *= 4);
    }
    let aim = match law {
        "us-home" | "us-plant" if method == Method::Ground && law == "us-plant" => 140.0,
        "us-home" | "us-plant" => rng.random_range(140..=170).into(),
        "ca" if belly => 112.0,
        "ca" => rng.random_range(135..=180).into(),
        "uk" => rng.random_range(132..=140).into(),
        _ => rng.random_range(70..=110).into(),
    };
    let thickest = classes.iter().filter_map(|c| c.thick).fold(0.0, f64::max);
    let by_inch = rng.random_bool(0.6);
    let even = if rng.random_bool(0.7) { 15.0 * 24.0 } else { 0.0 };
    let stay = if by_inch {
        (7.0 * 24.0 * thickest / 25.4_f64).ceil() + 6.0 + even
    } else {
        rng.random_range(24..=96).into()
    };
    let from = MORNING - rng.random_range(0..12) * HOUR;
    let agent = rng.random_bool(0.92).then_some(Agent {
        item: "cure-1",
        nitrite: Some(*[6.25, 6.25, 6.25, 5.88].choose(rng).unwrap_or(&6.25)),
        nitrate: 0.0,
    });
    let mut told = Told {
        classes,
        method,
        hung: false,
        jerky,
        law,
        step,
        agent,
        aim,
        put: Put::Planned,
        also: None,
        own: Own::None,
        salt: if method == Method::Pumped { 8.0 } else { 2.4 },
        water: if method.brine() { 60.0 } else { 0.0 },
        take: if method == Method::Pumped { 10.0 } else { 0.0 },
        stay,
        until: match kind {
            Kind::Bird | Kind::Boar | Kind::Hare => 74.0,
            Kind::Red => 72.0,
        },
        rubbed: None,
        cure_out: None,
        fridge: Vec::new(),
        lit: None,
        at_risk: Some(rng.random_bool(0.4)),
        target: None,
        packed: None,
        thrown_out: None,
        frozen: rng.random_bool(0.2),
        vacuum: false,
        now: from,
    };
    go(&mut told, stage, from, rng);
    told
}

fn class(cut: Cut, rng: &mut SmallRng) -> Class {
    let (key, kind, belly, rind, grams, thick) = cut;
    let count = if grams > 500.0 {
        rng.random_range(1..=4)
    } else {
        rng.random_range(4..=24)
    };
    let by = rng.random_range(0.8..1.25);
    Class {
        cut: key,
        kind,
        belly,
        rind,
        count,
        grams: round(grams * by * f64::from(count), 1.0),
        thick: Some(round(thick * by, 1.0)),
        readings: Vec::new(),
        pulled: None,
    }
}

/// Takes a batch as far as a stage, by the book.
fn go(told: &mut Told, stage: Stage, from: Ms, rng: &mut SmallRng) {
    if stage == Stage::Planned {
        return;
    }
    if told.agent.is_some() {
        told.put = Put::Ticked(round(planned(told), told.step));
    }
    told.now = from + 3 * MINUTE;
    if stage == Stage::Weighed {
        return;
    }
    told.rubbed = Some(from + 10 * MINUTE);
    let stayed = (told.stay * HOUR as f64) as Ms;
    for day in 0..=(stayed / DAY).min(9) {
        let at = from + HOUR + day * DAY;
        told.fridge
            .push((at, Seen::Read(round(rng.random_range(2.0..3.8), 0.1))));
    }
    if stage == Stage::InCure {
        told.now = from + HOUR + rng.random_range(0..stayed + HOUR);
        let now = told.now;
        return told.fridge.retain(|(at, _)| *at <= now);
    }
    let out = from + 10 * MINUTE + stayed + rng.random_range(1..10) * HOUR;
    told.cure_out = Some(out);
    let lit = out + rng.random_range(1..20) * HOUR;
    told.lit = Some(lit);
    let in_f = rng.random_bool(0.3);
    let mut last = lit;
    let (until, jerky) = (told.until, told.jerky);
    for class in &mut told.classes {
        let rise: Ms = if jerky {
            rng.random_range(20..60)
        } else {
            rng.random_range(100..190)
        };
        let done = until + rng.random_range(0.8..4.0);
        let points = rng.random_range(3..9);
        let upto = if stage == Stage::Lit {
            rng.random_range(1..=points)
        } else {
            points
        };
        for n in 0..=upto {
            let share = f64::from(n) / f64::from(points);
            let at = lit + (rise as f64 * share * MINUTE as f64) as Ms;
            let start = rng.random_range(1.0..3.5);
            // The middle lags, then rises.
            let c = start + (done - start) * share.powf(1.3);
            class.readings.push(reading(c, at, in_f));
            last = last.max(at);
        }
    }
    told.now = last + 2 * MINUTE;
    if stage == Stage::Lit {
        return;
    }
    let pulled = last + 4 * MINUTE;
    told.classes.iter_mut().for_each(|c| c.pulled = Some(pulled));
    told.now = pulled + 5 * MINUTE;
    if stage == Stage::Pulled {
        return;
    }
    const CHILL: [(Ms, f64); 7] = [
        (15, 66.0),
        (35, 52.0),
        (60, 38.0),
        (85, 24.0),
        (118, 19.5),
        (170, 11.0),
        (260, 3.6),
    ];
    let stretch = rng.random_range(80..=100);
    for class in &mut told.classes {
        for (minutes, c) in CHILL {
            let at = pulled + minutes * MINUTE * stretch / 100;
            class.readings.push(reading(c - rng.random_range(0.0..0.6), at, in_f));
        }
    }
    told.now = pulled + 270 * MINUTE;
    if stage == Stage::Packed {
        let at = told.now;
        told.packed = Some(at);
        told.now = at + rng.random_range(0..20) * HOUR;
    }
}

/// One thing goes wrong, or comes near it.
fn spoil(told: &mut Told, stage: Stage, rng: &mut SmallRng) {
    let last = if stage < Stage::InCure {
        15
    } else if stage < Stage::Lit {
        21
    } else if stage < Stage::Pulled {
        34
    } else if stage < Stage::Chilled {
        36
    } else {
        41
    };
    // Late stages get late faults more often.
    let first = if rng.random_bool(0.5) { (last - 12).max(0) } else { 0 };
    match rng.random_range(first..=last) {
        fault @ 0..=15 => spoil_dose(told, fault, rng),
        fault @ 16..=21 => spoil_cold(told, fault, rng),
        fault @ 22..=34 => spoil_heat(told, fault, rng),
        fault => spoil_end(told, fault, rng),
    }
}

fn spoil_dose(told: &mut Told, fault: i32, rng: &mut SmallRng) {
    let scaled = |told: &Told, by: f64| round(planned(told) * by, told.step);
    let told_now = !matches!(told.put, Put::Planned);
    match fault {
        0..=2 if told.agent.as_ref().is_some_and(|a| a.nitrite.is_some()) => {
            let by = if fault == 2 {
                rng.random_range(0.05..0.8)
            } else {
                rng.random_range(1.05..5.0)
            };
            if told_now {
                told.put = Put::Ticked(scaled(told, by).max(told.step));
            } else {
                told.aim = round(told.aim * by, 1.0).max(1.0);
            }
        }
        3 => told.step = *[1.0, 5.0].choose(rng).unwrap_or(&1.0),
        4 | 5 if told_now && told.agent.is_some() => {
            let spoons = round((planned(told) / 5.67 * rng.random_range(0.4..4.0)).max(0.25), 0.25);
            told.put = Put::Told(if fault == 4 || spoons < 3.0 {
                Amount::Teaspoons(spoons)
            } else {
                Amount::Tablespoons(round(spoons / 3.0, 0.25))
            });
        }
        6 if told_now => {
            told.put = Put::Told(Amount::Grams(scaled(told, 1.0).max(told.step)));
            if let Some(agent) = &mut told.agent {
                agent.nitrite = None;
            }
        }
        7 | 8 if told_now => {
            // Or saltpetre, as a pure salt.
            let saltpetre = rng.random_bool(0.5);
            let agent = Agent {
                item: "cure-1",
                nitrite: Some(if saltpetre { 0.0 } else { 6.25 }),
                nitrate: if saltpetre { 98.0 } else { 0.0 },
            };
            let grams = if saltpetre {
                round(told.green() / 1000.0 * rng.random_range(0.1..3.5), told.step).max(told.step)
            } else {
                scaled(told, rng.random_range(0.2..1.5)).max(told.step)
            };
            told.also = Some((Amount::Grams(grams), agent));
        }
        9 | 10 => told.own = Own::Cure(HIDDEN.choose(rng).unwrap_or(&"E250")),
        11 => told.own = Own::Plain(HARMLESS.choose(rng).unwrap_or(&"spruce tips")),
        12 => {
            if let Some(agent) = &mut told.agent {
                agent.item = "cure-2";
                agent.nitrate = 4.0;
            }
        }
        13 => {
            if let (Some(agent), true) = (&mut told.agent, told_now) {
                agent.nitrite = Some(99.0);
                let grams = told.aim / per_gram(told) / 0.99 * rng.random_range(0.8..8.0);
                told.put = Put::Told(Amount::Grams(round(grams, told.step).max(told.step)));
            }
        }
        14 => told.hung = true,
        15 => strong_brine(told, rng),
        _ => {}
    }
}

/// A strong brine for a short time, counted by pick-up.
fn strong_brine(told: &mut Told, rng: &mut SmallRng) {
    told.method = Method::PickUp;
    told.water = rng.random_range(60..200).into();
    told.salt = round(told.water * 0.1, 0.1);
    told.take = 10.0;
    if told.rubbed.is_none() {
        told.stay = rng.random_range(2..48).into();
    }
    if matches!(told.put, Put::Ticked(_)) {
        told.put = Put::Ticked(round(planned(told), told.step));
    }
    if rng.random_bool(0.15) {
        told.classes.iter_mut().for_each(|c| c.thick = None);
    }
}

fn spoil_cold(told: &mut Told, fault: i32, rng: &mut SmallRng) {
    let Some(rubbed) = told.rubbed else { return };
    let end = told.cure_out.unwrap_or(told.now);
    if end - rubbed < 3 * HOUR {
        return;
    }
    let at = rubbed + rng.random_range(HOUR..end - rubbed - HOUR);
    let long = (rng.random_range(0.3..12.0) * HOUR as f64) as Ms;
    let back = at + long;
    told.fridge.retain(|(t, _)| *t <= at || *t >= back);
    let mut see = |at: Ms, seen: Seen| {
        if at <= told.now {
            told.fridge.push((at, seen));
        }
    };
    match fault {
        16 | 17 => {
            see(at, Seen::Read(round(rng.random_range(4.0..16.0), 0.1)));
            see(back, Seen::Read(3.0));
        }
        18 => {
            see(at, Seen::PowerOff);
            see(back, Seen::PowerOn);
            see(back + 5 * MINUTE, Seen::Read(3.0));
        }
        19 => {
            see(at, Seen::Frozen);
            see(back, Seen::Thawed);
            see(back, Seen::Read(3.0));
        }
        20 => {
            told.put = Put::Silent;
            told.also = None;
        }
        _ if told.lit.is_none() => {
            let out = rubbed + rng.random_range(MINUTE..4 * HOUR);
            told.cure_out = Some(out.min(told.now));
        }
        // The clock was put right between the rub and what came after it.
        _ => told.rubbed = Some(rubbed.min(KILLED) - 2 * DAY),
    }
    told.fridge.sort_by_key(|(at, _)| *at);
}

fn spoil_heat(told: &mut Told, fault: i32, rng: &mut SmallRng) {
    let Some(lit) = told.lit else { return };
    let place = rng.random_range(0..told.classes.len());
    let (now, until) = (told.now, told.until);
    let pulled = told.classes[place].pulled;
    match fault {
        22 => told.classes[place].readings.clear(),
        // The way up takes longer: everything after the fire's start is stretched, and what follows moves.
        23 | 24 => {
            let by = rng.random_range(1.2..4.0);
            let late = |at: Ms| lit + ((at - lit) as f64 * by) as Ms;
            for class in &mut told.classes {
                let end = class.pulled.unwrap_or(Ms::MAX);
                let moved = class.pulled.map_or(0, |p| late(p) - p);
                for reading in &mut class.readings {
                    reading.at = if reading.at <= end {
                        late(reading.at)
                    } else {
                        reading.at + moved
                    };
                }
                class.pulled = class.pulled.map(late);
            }
            told.now = now + (late(pulled.unwrap_or(now)) - pulled.unwrap_or(now)).max(0);
            told.packed = told.packed.map(|p| p + told.now - now);
        }
        25 => {
            let from = told.classes[place].readings.iter().map(|r| r.at).min();
            told.classes[place].readings.retain(|r| Some(r.at) != from);
        }
        // A colder piece, or a later reading that is lower.
        26 | 27 => {
            let class = &mut told.classes[place];
            let top = class
                .readings
                .iter()
                .filter(|r| pulled.is_none_or(|p| r.at <= p))
                .max_by(|a, b| a.celsius().total_cmp(&b.celsius()));
            let Some(top) = top.cloned() else { return };
            let at = top.at + rng.random_range(30_000..110_000);
            let mut colder = reading(top.celsius() - rng.random_range(1.0..25.0), at, top.fahrenheit);
            colder.sure = rng.random_bool(0.7);
            class.readings.push(colder);
        }
        // It never got so hot.
        28 | 29 => {
            let by = rng.random_range(0.75..0.99);
            for reading in &mut told.classes[place].readings {
                if pulled.is_none_or(|p| reading.at <= p) && reading.celsius() > 30.0 {
                    let cooler = reading.celsius() * by;
                    let shown = if reading.fahrenheit { fahrenheit(cooler) } else { cooler };
                    reading.shown = round(shown, 0.1);
                }
            }
        }
        30 => {
            // The degree signs were swapped, or the probe lay on the rack.
            let class = &mut told.classes[place];
            for reading in &mut class.readings {
                if reading.celsius() > until - 2.0 {
                    reading.shown = if reading.fahrenheit { 290.0 } else { 165.0 };
                }
            }
        }
        31 => {
            for reading in &mut told.classes[place].readings {
                reading.struck |= reading.celsius() > until - 2.0;
            }
        }
        32 => told.at_risk = *[None, Some(true)].choose(rng).unwrap_or(&None),
        33 => told.target = Some(round(rng.random_range(54.0..72.0), 0.5)),
        _ => told.until = round(rng.random_range(55.0..92.0), 1.0),
    }
}

fn spoil_end(told: &mut Told, fault: i32, rng: &mut SmallRng) {
    let place = rng.random_range(0..told.classes.len());
    let Some(pulled) = told.classes[place].pulled else {
        return;
    };
    match fault {
        // The chill takes longer, or stops half way.
        35..=37 => {
            let by = rng.random_range(1.1..12.0);
            for class in &mut told.classes {
                for reading in class.readings.iter_mut().filter(|r| r.at > pulled) {
                    reading.at = pulled + ((reading.at - pulled) as f64 * by) as Ms;
                }
            }
            let now = told.now;
            told.now = pulled + ((now - pulled) as f64 * by) as Ms;
            told.packed = told.packed.map(|p| p + told.now - now);
            if fault == 37 {
                told.classes[place]
                    .readings
                    .retain(|r| r.at <= pulled || r.celsius() > 10.0);
            }
        }
        38 => told.classes[place].readings.retain(|r| r.at <= pulled),
        39 => told.vacuum = true,
        _ => {
            told.now += rng.random_range(1..30) * DAY;
            told.packed = None;
        }
    }
}
