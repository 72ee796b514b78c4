//! Joints and breasts in three dimensions, against explicit finite differences at nodes, which share nothing with the
//! series and the table of the crate; two grids, extrapolated. And what the clock makes of them.

use crate::clock::{at, clock_of, cured};
use cure_reckoner::transport::{Decay, Solid};
use serde_json::{Value, json};

/// 40 of 150 ppm, and within a tenth.
const COLOUR: f64 = 40.0 / 150.0;
const EVEN: f64 = 0.9;

/// Nodes of one direction from the middle to the surface: what each holds, and what passes to the next.
struct Axis {
    holds: Vec<f64>,
    passes: Vec<f64>,
    /// Area of the surface over the volume.
    open: f64,
}

impl Axis {
    /// `power` 0 for a flat direction, 1 for a radius.
    fn new(nodes: usize, far: f64, power: i32) -> Self {
        let wide = far / nodes as f64;
        let inner = |i: usize| (i as f64 - 0.5).max(0.0) * wide;
        let outer = |i: usize| (i as f64 + 0.5).min(nodes as f64) * wide;
        let volume = |i: usize| (outer(i).powi(power + 1) - inner(i).powi(power + 1)) / f64::from(power + 1);
        let holds: Vec<f64> = (0..=nodes).map(volume).collect();
        Self {
            passes: (0..nodes).map(|i| outer(i).powi(power) / wide).collect(),
            open: far.powi(power) / holds.iter().sum::<f64>(),
            holds,
        }
    }

    fn quickest(&self) -> f64 {
        let both = |i: usize| self.passes.get(i).unwrap_or(&0.0) + if i > 0 { self.passes[i - 1] } else { 0.0 };
        (0..self.holds.len())
            .map(|i| both(i) / self.holds[i])
            .fold(0.0, f64::max)
    }
}

/// The Fo at which the middle is at each share, on one grid; `brine` as the water of the brine over that of the meat.
fn on_grid(axes: [Axis; 3], brine: Option<f64>, shares: [f64; 2]) -> [f64; 2] {
    let size = axes.each_ref().map(|a| a.holds.len());
    let step = 0.9 / axes.iter().map(Axis::quickest).sum::<f64>();
    let strides = [size[1] * size[2], size[2], 1];
    let count = size.iter().product::<usize>();
    let place = |n: usize| [n / strides[0], n / strides[1] % size[1], n % size[2]];
    let last = |at: [usize; 3]| [0, 1, 2].map(|d| size[d] > 1 && at[d] + 1 == size[d]);
    let holds: Vec<f64> = (0..count)
        .map(|n| (0..3).map(|d| axes[d].holds[place(n)[d]]).product())
        .collect();
    let whole: f64 = holds.iter().sum();
    let surface: Vec<bool> = (0..count).map(|n| last(place(n)).contains(&true)).collect();
    let thick = 1.0 / axes.iter().filter(|a| a.holds.len() > 1).map(|a| a.open).sum::<f64>();
    let mut now: Vec<f64> = (0..count)
        .map(|n| {
            let dose = |d: usize| {
                if last(place(n))[d] {
                    thick * axes[d].open * axes[d].holds.iter().sum::<f64>() / axes[d].holds[place(n)[d]]
                } else {
                    0.0
                }
            };
            if brine.is_some() { 0.0 } else { (0..3).map(dose).sum() }
        })
        .collect();
    // What each node gets a step, for each of its six neighbours.
    let links: Vec<[(usize, f64); 6]> = (0..count)
        .map(|n| {
            let mut links = [(n, 0.0); 6];
            for d in 0..3 {
                let i = place(n)[d];
                if i > 0 {
                    links[2 * d] = (n - strides[d], step * axes[d].passes[i - 1] / axes[d].holds[i]);
                }
                if i + 1 < size[d] {
                    links[2 * d + 1] = (n + strides[d], step * axes[d].passes[i] / axes[d].holds[i]);
                }
            }
            links
        })
        .collect();
    let skin: f64 = (0..count).filter(|n| surface[*n]).map(|n| holds[n]).sum::<f64>() / whole;
    let (mut fo, mut next, mut found, mut before) = (0.0, now.clone(), [f64::NAN; 2], 0.0);
    while found[1].is_nan() {
        if let Some(ratio) = brine {
            let within: f64 = (0..count).filter(|n| !surface[*n]).map(|n| holds[n] * now[n]).sum();
            // What is not within is in the bath, at whose value the surface's nodes stand.
            let bath = (1.0 + ratio - within / whole) / (ratio + skin);
            (0..count).filter(|n| surface[*n]).for_each(|n| now[n] = bath);
        }
        for n in 0..count {
            next[n] = now[n]
                + links[n]
                    .iter()
                    .map(|(to, share)| share * (now[*to] - now[n]))
                    .sum::<f64>();
        }
        std::mem::swap(&mut now, &mut next);
        fo += step;
        for (found, share) in found.iter_mut().zip(shares) {
            if found.is_nan() && now[0] >= share {
                *found = fo - step * (now[0] - share) / (now[0] - before);
            }
        }
        before = now[0];
    }
    found
}

/// Extrapolated from two grids.
fn reference(solid: Solid, brine: Option<f64>) -> [f64; 2] {
    let once = |nodes: usize| {
        let axes = match solid {
            Solid::Brick([wide, long]) => [1.0, wide, long].map(|far| Axis::new(nodes, far, 0)),
            Solid::Round(long) => [
                Axis::new(nodes, 1.0, 1),
                Axis::new(nodes, long, 0),
                Axis {
                    holds: vec![1.0],
                    passes: vec![],
                    open: 0.0,
                },
            ],
            Solid::Lens(_) => unreachable!("has a grid of its own"),
        };
        on_grid(axes, brine, [COLOUR, EVEN])
    };
    let (coarse, fine) = (once(7), once(14));
    [0, 1].map(|n| fine[n] + (fine[n] - coarse[n]) / 3.0)
}

fn course(solid: Solid, brine: Option<f64>) -> Decay {
    brine.map_or_else(|| solid.dosed(), |ratio| solid.bathed(ratio))
}

/// Prints, and says whether ours is within a share of the reference.
fn beside(solid: Solid, brine: Option<f64>, known: [f64; 2], within: f64) -> bool {
    let course = course(solid, brine);
    let ours = [COLOUR, EVEN].map(|share| course.when(0.0, share));
    let off = [0, 1].map(|n| ours[n] / known[n] - 1.0);
    println!(
        "{:<24} {:<9} colour {:>7.4} {:>7.4} {:>+6.2} %   even {:>7.4} {:>7.4} {:>+6.2} %",
        format!("{solid:?}"),
        format!("{brine:?}"),
        known[0],
        ours[0],
        off[0] * 100.0,
        known[1],
        ours[1],
        off[1] * 100.0
    );
    off.iter().all(|off| off.abs() <= within)
}

#[test]
fn bricks_and_rounds() {
    let mut failed = Vec::new();
    for brine in [None, Some(1.0), Some(3.0)] {
        for r in [1.0, 1.5, 2.0, 2.5, 3.0] {
            let solid = Solid::Brick([r, r]);
            if !beside(solid, brine, reference(solid, brine), 0.015) {
                failed.push((solid, brine));
            }
        }
        for solid in [
            Solid::Brick([1.0, 3.0]),
            // Rind on: twice as thick as it is wide.
            Solid::Brick([0.6, 0.6]),
            Solid::Round(1.0),
            Solid::Round(2.0),
            Solid::Round(4.0),
        ] {
            if !beside(solid, brine, reference(solid, brine), 0.015) {
                failed.push((solid, brine));
            }
        }
    }
    assert!(failed.is_empty(), "{failed:?}");
}

/// A lens as a stack of rings: cells of a grid over its section whose middle lies in it.
fn lens_on_grid(rim: f64, brine: Option<f64>, cells: usize) -> [f64; 2] {
    let wide = 1.0 / cells as f64;
    let ball = (rim * rim + 1.0) / 2.0;
    let height = |r: f64| (ball * ball - r * r).max(0.0).sqrt() - (ball - 1.0);
    let across = (rim / wide).ceil() as usize;
    let tall: Vec<usize> = (0..across)
        .map(|i| (height((i as f64 + 0.5) * wide) / wide).round() as usize)
        .collect();
    let tall = |i: usize| tall.get(i).copied().unwrap_or(0);
    let number = |i: usize, j: usize| i * cells + j;
    let count = across * cells;
    let mut now = vec![0.0; count];
    let ring = |i: usize| (i as f64 + 0.5) * wide * wide * wide;
    let inside: Vec<(usize, usize)> = (0..across).flat_map(|i| (0..tall(i)).map(move |j| (i, j))).collect();
    let whole: f64 = inside.iter().map(|(i, _)| ring(*i)).sum();
    if brine.is_none() {
        // Patch by patch of the cap, on the nearest cell.
        let patches = 4000;
        let widest = rim.atan2(ball - 1.0);
        let all = ball * ball * (1.0 - widest.cos());
        for n in 0..patches {
            let angle = (1.0 - (1.0 - widest.cos()) * (f64::from(n) + 0.5) / f64::from(patches)).acos();
            let (r, z) = (ball * angle.sin() / wide, (ball * angle.cos() - (ball - 1.0)) / wide);
            let off = |(i, j): &(usize, usize)| (*i as f64 + 0.5 - r).powi(2) + (*j as f64 + 0.5 - z).powi(2);
            let close = inside
                .iter()
                .filter(|(i, j)| (*i as f64 - r).abs() < 4.0 && (*j as f64 - z).abs() < 4.0);
            let (i, j) = close.min_by(|a, b| off(a).total_cmp(&off(b))).expect("a cell near");
            now[number(*i, *j)] += all / f64::from(patches) / all * whole / ring(*i);
        }
    }
    let step = 0.22 * wide * wide;
    let (mut fo, mut before, mut found) = (0.0, 0.0, [f64::NAN; 2]);
    let mut next = now.clone();
    while found[1].is_nan() {
        let bath = brine.map(|ratio| {
            let within: f64 = inside.iter().map(|(i, j)| ring(*i) * now[number(*i, *j)]).sum();
            (1.0 + ratio - within / whole) / ratio
        });
        for &(i, j) in &inside {
            let here = now[number(i, j)];
            let to = |i: usize, j: usize| {
                if j < tall(i) {
                    now[number(i, j)]
                } else {
                    bath.unwrap_or(here)
                }
            };
            let (middle, mut gain) = (i as f64 + 0.5, 0.0);
            gain += (i as f64 + 1.0) / middle * (to(i + 1, j) - here);
            if i > 0 {
                gain += i as f64 / middle * (to(i - 1, j) - here);
            }
            gain += to(i, j + 1) - here;
            if j > 0 {
                gain += to(i, j - 1) - here;
            }
            next[number(i, j)] = here + 0.22 * gain;
        }
        std::mem::swap(&mut now, &mut next);
        fo += step;
        for (found, share) in found.iter_mut().zip([COLOUR, EVEN]) {
            if found.is_nan() && now[0] >= share {
                *found = fo - step * (now[0] - share) / (now[0] - before);
            }
        }
        before = now[0];
    }
    found
}

#[test]
fn breasts_as_lenses() {
    let mut failed = Vec::new();
    for brine in [None, Some(1.0), Some(3.0)] {
        for rim in [1.0, 1.6, 2.2, 3.0, 4.4] {
            // A surface in steps is off by the first order.
            let (coarse, fine) = (lens_on_grid(rim, brine, 12), lens_on_grid(rim, brine, 24));
            let known = [0, 1].map(|n| 2.0 * fine[n] - coarse[n]);
            if !beside(Solid::Lens(rim), brine, known, 0.05) {
                failed.push((rim, brine));
            }
        }
    }
    assert!(failed.is_empty(), "{failed:?}");
    // A lens of aspect 1 is a ball: centre at 90 % under a held surface at Fo 0.3035 (computed).
    let ball = Solid::Lens(1.0).held().when(0.0, 0.9);
    assert!((ball / 0.3035 - 1.0).abs() < 0.003, "{ball}");
}

#[test]
fn the_computed_times() {
    // The same figures as the kernel's: slab and cylinder, dose, bath and held surface (computed).
    let slab = Solid::Brick([f64::INFINITY; 2]);
    let long = Solid::Round(f64::INFINITY);
    for (course, fo) in [
        (slab.dosed(), 0.3035),
        (slab.bathed(1.0), 0.6546),
        (slab.bathed(3.0), 0.8419),
        (slab.held(), 1.0311),
        (long.dosed(), 0.2187),
        (long.held(), 0.4796),
    ] {
        let ours = course.when(0.0, 0.9);
        assert!((ours - fo).abs() < 1.5e-4, "{ours} for {fo}");
    }
    let bath = slab.bathed(1.0);
    assert!((bath.mean(0.3) - 0.80963).abs() < 5e-5, "{}", bath.mean(0.3));
    assert!((bath.centre(0.3) - 0.57021).abs() < 5e-5, "{}", bath.centre(0.3));
    let held = slab.held();
    let fo = 2e-10 * 7.0 * 86_400.0 / 0.0127_f64.powi(2);
    assert!((held.centre(fo) - 0.79989).abs() < 2e-5 && (held.mean(fo) - 0.87260).abs() < 2e-5);
    // A cube's dose evens out as a slab's: three equal thirds.
    let cube = Solid::Brick([1.0; 2]).dosed();
    assert!((cube.when(0.0, 0.9) - slab.dosed().when(0.0, 0.9)).abs() < 1e-4);
    // 7 days per inch under a sealed dose at 2e-10: 100, 95, 83, 69 % (computed).
    for (inches, share) in [(1.0_f64, 1.00), (2.0, 0.95), (3.0, 0.83), (4.0, 0.69)] {
        let fo = 2e-10 * 7.0 * 86_400.0 * inches / (0.0127 * inches).powi(2);
        assert!((slab.dosed().centre(fo) - share).abs() < 0.005);
    }
}

#[test]
fn profiles_keep_within_bounds() {
    for solid in [
        Solid::Brick([1.0, 1.0]),
        Solid::Brick([0.5, 9.0]),
        Solid::Round(3.0),
        Solid::Lens(3.3),
        Solid::Lens(20.0),
    ] {
        for brine in [None, Some(0.2), Some(1.0), Some(8.0)] {
            let course = course(solid, brine);
            // Errors go with what the bath began at.
            let strong = brine.map_or(1.0, |ratio| (1.0 + ratio) / ratio);
            let (mut fo, mut before, mut mean) = (0.001, 0.0, 0.0);
            while fo < 100.0 {
                let line = course.at(fo);
                assert!(
                    line.windows(2).all(|p| p[0] <= p[1] + 0.03),
                    "{solid:?} {brine:?} {fo} {line:?}"
                );
                assert!(
                    line[0] >= before - 3e-3 * strong && line[0] < 1.01,
                    "{solid:?} {brine:?} {fo} {line:?}"
                );
                assert!(course.mean(fo) >= mean - 1e-9 && course.mean(fo) <= 1.0 + 1e-9);
                (before, mean) = (line[0], course.mean(fo));
                fo *= 1.3;
            }
            assert!((before - 1.0).abs() < 0.01, "{solid:?} {brine:?} ends at {before}");
        }
    }
}

/// Hours at 38 °F from an Fo, for red game at 2e-10 m²/s and 25 kJ/mol.
fn hours(fo: f64, thick_mm: f64, d: f64) -> f64 {
    let counts = (25_000.0 / 8.314 * (1.0 / 277.15_f64 - 1.0 / (6.0 / 1.8 + 273.15))).exp();
    fo * (thick_mm / 2000.0).powi(2) / d / 3600.0 / counts
}

#[test]
fn the_clock_of_a_joint() {
    let mut brined = json!({"item": "water", "share": {"of": "green_weight", "amount": "74 %"}});
    for brine in [None, Some(1.0)] {
        for r in [1.0_f64, 2.0, 3.0] {
            let known = reference(Solid::Brick([r, r]), brine);
            for thick in [30.0_f64, 60.0, 110.0] {
                let grams = (1.05 * thick.powi(3) * r * r / 1000.0).round();
                let piece = json!({"cut": "fallow-haunch", "count": 1, "thickness": format!("{thick} mm"), "weight": format!("{grams} g")});
                let mut batch = cured(json!([piece]), "10 d");
                if brine.is_some() {
                    batch["recipe"]["method"] = json!("cover_brine");
                    batch["recipe"]["lines"] = json!([
                        brined.take(),
                        {"item": "salt-sea-fine", "share": {"of": "meat_and_water", "amount": "2 %"}}
                    ]);
                    brined = batch["recipe"]["lines"][0].clone();
                }
                let clock = clock_of(&batch, 0.0);
                for (of, fo, d) in [("colour", known[0], 1.4e-10), ("even", known[1], 2e-10)] {
                    let (ours, wanted) = (at(&clock, 0, of, "likely"), hours(fo, thick, d));
                    println!("{thick} mm, 1:{r}:{r}, {brine:?}, {of}: reference {wanted:.1} h, clock {ours:.1} h");
                    // What stands still for a century is not compared.
                    assert!(
                        (ours / wanted - 1.0).abs() < 0.03,
                        "{thick} mm {r} {brine:?} {of}: {ours} for {wanted}"
                    );
                }
            }
        }
    }
}

#[test]
fn one_answer_for_a_belly_with_its_rind_on() {
    let belly = |cut: &str, skin: bool| -> Value {
        let piece = json!({"cut": cut, "count": 1, "thickness": "40 mm", "weight": "2 kg", "skin": skin});
        clock_of(&cured(json!([piece]), "7 d"), 0.0)["classes"][0].clone()
    };
    let by_cut = belly("boar-belly-rind", false);
    for (cut, skin) in [("boar-belly-rind", true), ("boar-belly", true)] {
        for of in ["colour", "even", "profile"] {
            assert_eq!(belly(cut, skin)[of], by_cut[of], "{cut} {skin}");
        }
    }
    // To the rind it is twice as far as to the middle of a bare one: four times as long, less by the edges, which are open.
    let hours = |class: &Value| at(&json!({"classes": [class]}), 0, "colour", "likely");
    let (bare, on) = (hours(&belly("boar-belly", false)), hours(&by_cut));
    println!("bare {bare:.1} h, rind on {on:.1} h");
    assert!(on / bare > 3.0 && on / bare < 5.0, "{bare} {on}");
    assert_eq!(by_cut["profile"][8]["at"], 1000, "the far end is the rind");
}
