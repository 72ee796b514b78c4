//! Time and temperature against the published tables. The rows stand in `data/`, as printed, with their status.

use cure_reckoner::pantry::MeatKind::{Bird, Boar, Hare, Own, Red};
use cure_reckoner::safety::{
    COME_UP, Cooling, Frozen, GAP, JERKY, Left, NoLower, Scope, Stage, Table, VACUUM_COLD, Wish, come_up, consumer,
    credit, frozen_long_enough, least, left, may_go_lower, most, of, options, trichinae_seconds,
};

const MEAT: &str = include_str!("data/cooking-meat.csv");
const BIRDS: &str = include_str!("data/cooking-poultry.csv");
const TRICHINAE: &str = include_str!("data/parasite-cooking.csv");
const COLD: &str = include_str!("data/parasite-freezing.csv");
const COOLING: &str = include_str!("data/cooling.csv");

/// Rows of a printed table, by its columns.
fn rows(text: &str) -> impl Iterator<Item = Vec<&str>> {
    text.lines().skip(1).map(|line| line.split(',').collect())
}

fn number(cell: &str) -> f64 {
    cell.parse().expect("a number")
}

fn seconds(value: &str, unit: &str) -> f64 {
    let unit = match unit {
        "sec" | "sec_lt" | "instant" => 1.0,
        "min" => 60.0,
        "hour" => 3600.0,
        other => panic!("{other}?"),
    };
    number(value) * unit
}

/// As many readings as it takes at one temperature, ten minutes apart at most.
fn held(fahrenheit: f64, seconds: f64) -> Vec<(f64, f64)> {
    let steps = (seconds / 600.0).ceil().max(1.0);
    (0..=steps as u32)
        .map(|i| (seconds * f64::from(i) / steps, fahrenheit))
        .collect()
}

/// FSIS Appendix A (1999), published: each row of both columns gives the whole credit in its time, and not before.
#[test]
fn every_row_for_meat() {
    let mut seen = 0;
    for row in rows(MEAT) {
        let table = match row[5] {
            "6.5" => Table::Meat65,
            "7.0" => Table::Meat70,
            // The column for 5 log is from memory and gives no credit.
            "5.0" => continue,
            other => panic!("{other}?"),
        };
        row_holds(table, number(row[2]), seconds(row[3], row[4]));
        seen += 1;
    }
    assert_eq!(seen, 62);
}

#[track_caller]
fn row_holds(table: Table, fahrenheit: f64, needed: f64) {
    assert_eq!(
        table.seconds(fahrenheit).map(|s| (s * 1e6).round()),
        Some((needed * 1e6).round()),
        "{table:?} {fahrenheit}"
    );
    if needed > 0.0 {
        let full = credit(table, &held(fahrenheit, needed), 0.0);
        let short = credit(table, &held(fahrenheit, needed * 0.99), 0.0);
        assert!(full > 1.0 - 1e-9, "{table:?} {fahrenheit}: {full}");
        assert!((short - 0.99).abs() < 1e-9, "{table:?} {fahrenheit}: {short}");
    } else {
        assert_eq!(credit(table, &[(0.0, fahrenheit)], 0.0), 1.0);
    }
}

/// FSIS Cooking Guideline (2021), quoted: ducks, geese and other birds take the longer of chicken and turkey at 12 % fat.
#[test]
fn every_row_for_birds() {
    let mut seen = 0;
    for row in rows(BIRDS).filter(|r| r[0] == "other_poultry_duck_goose") {
        row_holds(Table::Bird, number(row[2]), seconds(row[3], row[4]));
        seen += 1;
    }
    assert_eq!(seen, 30);
    // And no row of chicken or turkey, at any fat, asks for longer.
    for row in rows(BIRDS) {
        let ours = Table::Bird.seconds(number(row[2])).expect("a row");
        assert!(ours > seconds(row[3], row[4]) - 1e-6, "{row:?}: {ours}");
    }
    // Each of the two is the longer somewhere: 136 °F chicken 81.4 min, 150 °F turkey 4.9 min.
    assert_eq!(Table::Bird.seconds(136.0), Some(81.4 * 60.0));
    assert!((Table::Bird.seconds(150.0).expect("a row") - 4.9 * 60.0).abs() < 1e-9);
}

/// The line t = L x 10.37 s x 10^((150 - T) / 10), computed from the published columns: its own check values, and the
/// columns within 11 % of it, 2 to 4 % as a mean square, most of it their rounding.
#[test]
fn red_meat_beside_its_line() {
    let line = |f: f64, s: f64| s / 10.37 * 10f64.powf((f - 150.0) / 10.0);
    for (f, s, log) in [(140.0, 720.0, 6.94), (145.0, 240.0, 7.32), (150.0, 67.0, 6.46)] {
        assert!((line(f, s) - log).abs() < 0.005, "{f} {s}: {}", line(f, s));
    }
    // A ramp of 1 °F a minute from 130 to 140 °F: 2.26 log by the line.
    let ramp: Vec<(f64, f64)> = (0..=600).map(|s| (f64::from(s), 130.0 + f64::from(s) / 60.0)).collect();
    let by_line: f64 = ramp.windows(2).map(|w| line((w[0].1 + w[1].1) / 2.0, 1.0)).sum();
    assert!((by_line - 2.26).abs() < 0.005, "{by_line}");
    let by_table = 7.0 * credit(Table::Meat70, &ramp, 0.0);
    assert!((by_table / by_line - 1.0).abs() < 0.04, "{by_table} {by_line}");
    for table in [Table::Meat65, Table::Meat70] {
        let off: Vec<f64> = (130..=157)
            .map(|f| {
                let (f, seconds) = (f64::from(f), table.seconds(f64::from(f)).expect("a row"));
                table.log() / line(f, seconds) - 1.0
            })
            .collect();
        let rms = (off.iter().map(|o| o * o).sum::<f64>() / off.len() as f64).sqrt();
        assert!(rms < 0.045, "{table:?}: {rms}");
        assert!(off.iter().all(|o| o.abs() < 0.115), "{table:?}: {off:?}");
    }
}

#[test]
fn nothing_below_the_floor() {
    assert_eq!(credit(Table::Meat70, &held(129.9, 100_000.0), 0.0), 0.0);
    assert_eq!(credit(Table::Bird, &held(135.9, 100_000.0), 0.0), 0.0);
    // The thermometer's error is added to the limit.
    assert_eq!(credit(Table::Bird, &held(137.9, 100_000.0), 2.0), 0.0);
    assert!(credit(Table::Bird, &[(0.0, 159.0), (20.0, 159.0)], 2.0) < 0.4);
    assert!(credit(Table::Meat70, &[(0.0, 159.9)], 2.0) < 1.0);
}

#[test]
fn two_readings_that_bracket_a_dip_are_the_dip() {
    let flat = [(0.0, 145.0), (600.0, 145.0), (1200.0, 145.0)];
    let dip = [(0.0, 145.0), (600.0, 137.0), (1200.0, 145.0)];
    let bottom = [(0.0, 137.0), (600.0, 137.0), (1200.0, 137.0)];
    assert_eq!(credit(Table::Bird, &dip, 0.0), credit(Table::Bird, &bottom, 0.0));
    assert!(credit(Table::Bird, &dip, 0.0) < credit(Table::Bird, &flat, 0.0));
    let through = [(0.0, 145.0), (600.0, 135.0), (1200.0, 145.0)];
    assert_eq!(credit(Table::Bird, &through, 0.0), 0.0);
}

#[test]
fn readings_too_far_apart_count_nothing_between() {
    assert!(credit(Table::Bird, &[(0.0, 140.0), (GAP, 140.0)], 0.0) > 0.8);
    assert_eq!(credit(Table::Bird, &[(0.0, 140.0), (GAP + 1.0, 140.0)], 0.0), 0.0);
    // And a clock that ran backwards counts nothing.
    assert_eq!(credit(Table::Bird, &[(600.0, 140.0), (0.0, 140.0)], 0.0), 0.0);
}

/// Birds: USDA FSIS chart (2025, published). Red game, whole and minced: FSIS, Game from Farm to Table (rev. 2011, quoted);
/// 145 °F and 3 minutes is the chart for farmed cuts, by choice only. Boar, bear and kin: CDC, MMWR 73(20), 2024 (published;
/// 160 °F before). Hare and other wild game: FDA Food Code 2022, 3-401.11 (quoted).
#[test]
fn consumer_temperatures_and_who_may_go_lower() {
    let printed = |kind| {
        let row = consumer(kind);
        (row.whole, row.minced, row.choice, row.rest)
    };
    assert_eq!(printed(Bird), (165.0, 165.0, None, 0.0));
    assert_eq!(printed(Red), (160.0, 160.0, Some(145.0), 3.0));
    assert_eq!(printed(Boar), (165.0, 165.0, None, 0.0));
    assert_eq!(printed(Hare), (165.0, 165.0, None, 0.0));
    // What it is nobody knows: the strictest.
    assert_eq!(printed(Own), (165.0, 165.0, None, 0.0));
    let wish = |at_risk, minced, dried| Wish { at_risk, minced, dried };
    let nobody = wish(Some(false), false, false);
    assert_eq!(may_go_lower(consumer(Bird), nobody), Ok(Table::Bird));
    assert_eq!(may_go_lower(consumer(Red), nobody), Ok(Table::Meat70));
    assert_eq!(may_go_lower(consumer(Boar), nobody), Err(NoLower::Parasites));
    assert_eq!(may_go_lower(consumer(Hare), nobody), Err(NoLower::NoTable));
    assert_eq!(may_go_lower(consumer(Own), nobody), Err(NoLower::NoTable));
    for kind in [Bird, Red, Boar, Hare, Own] {
        let lower = |wish| may_go_lower(consumer(kind), wish);
        assert_eq!(lower(wish(None, false, false)), Err(NoLower::NotAsked), "{kind:?}");
        assert_eq!(lower(wish(Some(true), false, false)), Err(NoLower::AtRisk), "{kind:?}");
        assert_eq!(lower(wish(Some(false), true, false)), Err(NoLower::Minced), "{kind:?}");
        assert_eq!(lower(wish(Some(false), false, true)), Err(NoLower::Dried), "{kind:?}");
    }
}

/// The least that has to be read: the °F, or the °C that USDA prints beside it. USDA prints 165 °F as 73.9 °C, 160 as 71.1,
/// 145 as 62.8.
#[test]
fn a_least_is_met_in_the_scale_it_was_read_in() {
    let enough = |read: f64, printed: f64| read >= least(printed);
    // To the hundredth of a degree Fahrenheit, as readings are kept.
    let celsius = |c: f64| ((c * 1.8 + 32.0) * 100.0).round() / 100.0;
    for (printed, met, short) in [
        (165.0, [165.0, celsius(73.9), celsius(74.0)], [164.9, celsius(73.8)]),
        (160.0, [160.0, celsius(71.1), celsius(72.0)], [159.9, celsius(71.0)]),
        (145.0, [145.0, celsius(62.8), celsius(63.0)], [144.9, celsius(62.7)]),
    ] {
        for read in met {
            assert!(enough(read, printed), "{read} {printed}");
        }
        for read in short {
            assert!(!enough(read, printed), "{read} {printed}");
        }
    }
    // And a most is never rounded up: 80 °F is 26.67 °C, 70 is 21.11, 41 is 5, 40 is 4.44, 38 is 3.33.
    for (printed, tenth) in [(80.0, 26.6), (70.0, 21.1), (41.0, 5.0), (40.0, 4.4), (38.0, 3.3)] {
        assert!(
            (most(printed) - celsius(tenth)).abs() < 1e-9,
            "{printed}: {}",
            most(printed)
        );
        assert!(most(printed) <= printed);
    }
}

/// Former 9 CFR 318.10, published.
#[test]
fn every_row_for_trichinae() {
    for row in rows(TRICHINAE) {
        let needed = seconds(row[2], row[3]);
        assert_eq!(trichinae_seconds(number(row[0])), Some(needed), "{row:?}");
    }
    assert_eq!(trichinae_seconds(119.9), None);
    // Half-way between two rows, two degrees apart, the time is their geometric mean: its logarithm goes evenly.
    let times: Vec<(f64, f64)> = rows(TRICHINAE)
        .map(|row| (number(row[0]), seconds(row[2], row[3])))
        .filter(|(_, needed)| *needed > 0.0)
        .collect();
    for pair in times.windows(2) {
        let between = trichinae_seconds((pair[0].0 + pair[1].0) / 2.0).expect("a time");
        let mean = (pair[0].1 * pair[1].1).sqrt();
        assert!((between / mean - 1.0).abs() < 1e-9, "{pair:?}: {between}");
    }
    let mut seen = 0;
    for row in rows(COLD) {
        let group = match row[1] {
            "group1_to_6in" => Frozen::To6In,
            "group2_6_to_27in" => Frozen::To27In,
            _ => Frozen::Middle,
        };
        let hours = number(row[4]) * if row[5] == "day" { 24.0 } else { 1.0 };
        let (cold, frozen) = (number(row[2]), |f, h| frozen_long_enough(group, f, h));
        assert!(frozen(cold, hours), "{row:?}");
        assert!(!frozen(cold, hours - 0.01), "{row:?}");
        assert!(!frozen(cold + 0.01, hours), "{row:?}");
        seen += 1;
    }
    assert_eq!(seen, 14);
}

/// UNL extension, published: through 40 to 140 °F within 4 h at home.
#[test]
fn coming_up() {
    assert_eq!(COME_UP, 4.0);
    let h = 3600.0;
    let come_up = |points: &[(f64, f64)], lit, now| come_up(points, points, lit, now);
    let seen = [(0.0, 38.0), (h, 60.0), (3.0 * h, 120.0)];
    let up = come_up(&seen, None, 3.5 * h).expect("warming");
    assert_eq!((up.hours, up.hot, up.unseen), (3.5, false, false));
    // Never seen cold: from the first reading on, and said to be so.
    let up = come_up(&seen[1..], None, 3.5 * h).expect("warming");
    assert_eq!((up.hours, up.unseen), (2.5, true));
    // It stops where it was read hot, at the printed figure.
    let hot = |f: f64| [(0.0, 38.0), (2.0 * h, f), (2.5 * h, 142.0)];
    let up = |f| come_up(&hot(f), None, 9.0 * h).expect("warming");
    assert_eq!((up(140.0).hours, up(140.0).hot), (2.0, true));
    assert_eq!((up(139.9).hours, up(139.9).hot), (2.5, true));
    // A colder piece read later is still on its way; one that is 130 °F or more is not.
    let with = |f: f64| [(0.0, 38.0), (2.0 * h, 141.0), (2.5 * h, f), (4.5 * h, 150.0)];
    let up = |f| come_up(&with(f), None, 9.0 * h).expect("warming");
    assert_eq!((up(129.9).hours, up(130.0).hours), (4.5, 2.0));
    // It counts from when it was lit, where it was cold until then; else from its first reading: the outside warms first.
    let late = [(0.0, 38.0), (h, 39.0), (5.0 * h, 150.0)];
    let hours = |lit| come_up(&late, lit, 9.0 * h).expect("warming").hours;
    assert_eq!((hours(None), hours(Some(h)), hours(Some(6.0 * h))), (5.0, 4.0, 5.0));
    assert_eq!(come_up(&[(0.0, 38.0)], None, h), None);
    assert_eq!(come_up(&[], None, h), None);
}

/// The options a home is judged by, as printed: start, end, hours, hours in all. Food Code 3-501.14(A) and FSIS
/// Stabilization Guideline 2021, option 1, published. Whatever went in as cure: the option for cured meat of 1999 was
/// withdrawn on 14 December 2022 (86 FR 71007, FSIS Notice 66-22, published), that of 2021 is for plants.
#[test]
fn options_for_chilling() {
    let print = |scope| -> Vec<_> { of(scope).map(|s| (s.key, s.start, s.end, s.hours, s.total)).collect() };
    let home = [
        (Cooling::FoodCode, 135.0, 70.0, Some(2.0), Some(6.0)),
        (Cooling::FoodCode, 70.0, 41.0, None, Some(6.0)),
        (Cooling::Option1, 130.0, 80.0, Some(1.5), Some(6.5)),
        (Cooling::Option1, 80.0, 40.0, Some(5.0), Some(6.5)),
    ];
    assert_eq!(print(Scope::Home), home);
    assert_eq!(options().count(), home.len());
    let cured = [
        (Cooling::Cured1999, 130.0, 80.0, Some(5.0), Some(15.0)),
        (Cooling::Cured1999, 80.0, 45.0, Some(10.0), Some(15.0)),
    ];
    assert_eq!(print(Scope::History), cured);
    // Since 2021 it wants erythorbate or ascorbate too (250 ppm, from memory).
    let now: Vec<_> = of(Scope::Plants).filter(|s| s.key == Cooling::Cured2021).collect();
    assert_eq!(now.len(), 2);
    for stage in now {
        assert_eq!((stage.nitrite, stage.erythorbate), (Some(100.0), Some(250.0)));
    }
}

/// Every row as printed is in the table with its figures; each stage is done when its end is read in its time, and not a
/// minute later.
#[test]
fn every_row_for_chilling() {
    let keys = |id: &str| match id {
        "FC" => vec![Cooling::FoodCode],
        "B1" => vec![Cooling::Option1],
        "B2" => vec![Cooling::Option2],
        "B3" => vec![Cooling::Cured2021, Cooling::Cured1999],
        other => vec![match other {
            "B4a" => Cooling::SaltyA,
            "B4b" => Cooling::SaltyB,
            _ => Cooling::SaltyC,
        }],
    };
    let optional = |cell: &str| (!cell.is_empty()).then(|| number(cell));
    let all: Vec<&Stage> = [Scope::Home, Scope::Plants, Scope::History]
        .into_iter()
        .flat_map(of)
        .collect();
    let mut seen = 0;
    for row in rows(COOLING) {
        for key in keys(row[0]) {
            let mut of = all.iter().filter(|s| s.key == key);
            let place = row[7].parse::<usize>().expect("a stage") - 1;
            let first = of.clone().next().expect("an option").start;
            let stage = of.nth(place).expect("a stage");
            let found = (stage.start, stage.end, stage.hours, stage.total);
            // The table has 4 hours for what is left of the 6. The Food Code itself, 3-501.14(A), has 2 hours to 70 °F and "a
            // total of 6 hours" from 135 to 41 °F (published; the same words in 16 Del. Admin. Code 3-501.14): its last stage
            // has no time of its own.
            let whole = key == Cooling::FoodCode && place == 1;
            let hours = optional(row[10]).filter(|_| !whole);
            let printed = (number(row[8]), number(row[9]), hours, optional(row[11]));
            assert_eq!(found, printed, "{row:?}");
            let needs = (stage.nitrite, stage.brine, stage.activity);
            assert_eq!(needs, (optional(row[3]), optional(row[5]), optional(row[6])), "{row:?}");
            if let Some(hours) = stage.hours {
                let points = |hours: f64| [(0.0, stage.start), (hours * 3600.0, stage.end)];
                let at = |hours: f64| left(stage, first, &points(hours), &points(hours), 30.0 * 3600.0);
                let done = Left::Done {
                    took: hours,
                    at: hours * 3600.0,
                };
                assert_eq!(at(hours), done, "{row:?}");
                assert!(matches!(at(hours + 1.0 / 60.0), Left::Unseen(..)), "{row:?}");
            }
            seen += 1;
        }
    }
    assert_eq!((seen, all.len()), (14, 14));
}

fn stage(i: usize) -> &'static Stage {
    options().nth(i).expect("a stage")
}

/// The clock of a stage: by the longer reading it is done, by the shorter one late, and between them nobody saw.
#[test]
fn time_left_while_it_chills() {
    let h = 3600.0;
    let first = stage(0);
    let points = [(0.0, 150.0), (0.5 * h, 137.0), (h, 120.0)];
    // The clock runs from the last reading above the start.
    assert_eq!(left(first, 135.0, &points, &points, 2.0 * h), Left::Running(0.5));
    // Not read since: it may have cooled at once. A later stage waits for a reading at its start.
    assert_eq!(left(first, 135.0, &points[..2], &points[..2], h), Left::Running(1.5));
    assert_eq!(left(first, 135.0, &points, &points, 3.0 * h), Left::Unseen(2.5, 2.0));
    assert_eq!(left(stage(1), 135.0, &points, &points, h), Left::NotBegun);
    let done = [(0.0, 150.0), (h, 100.0), (2.0 * h, 68.0), (6.5 * h, 39.0)];
    assert_eq!(
        left(first, 135.0, &done, &done, 7.0 * h),
        Left::Done { took: 2.0, at: 2.0 * h }
    );
    // 135 to 41 °F in up to 6.5 h is over; whether it was cold in time nobody saw.
    assert_eq!(left(stage(1), 135.0, &done, &done, 7.0 * h), Left::Unseen(6.5, 6.0));
    // Quick to 70 °F, it has what is left of 6 hours in all: 5.9 h are in time, and 6.1 are not.
    let quick = |cold: f64| [(0.0, 150.0), (0.5 * h, 134.0), (1.5 * h, 68.0), (cold * h, 40.0)];
    assert_eq!(
        left(stage(1), 135.0, &quick(5.9), &quick(5.9), 7.0 * h),
        Left::Done { took: 5.4, at: 5.9 * h }
    );
    assert!(matches!(
        left(stage(1), 135.0, &quick(6.1), &quick(6.1), 7.0 * h),
        Left::Unseen(..)
    ));
    // At the true limit: 70 °F is there, 70.1 is not; 41 is cold, 41.1 is not.
    let at = |stage, points: &[(f64, f64)], now| left(stage, 135.0, points, points, now);
    let near = |f| at(first, &[(0.0, 150.0), (h, 100.0), (1.9 * h, f)], 1.9 * h);
    assert!(matches!(near(70.0), Left::Done { .. }) && matches!(near(70.1), Left::Running(_)));
    let cold = |f| at(stage(1), &[(0.0, 150.0), (h, 69.0), (4.0 * h, f)], 4.0 * h);
    assert!(matches!(cold(41.0), Left::Done { .. }) && matches!(cold(41.1), Left::Running(_)));
    // Read warm after its time had run since it was surely below the start: late, whatever lay between.
    let late = [(0.0, 150.0), (h, 130.0), (3.1 * h, 75.0), (4.0 * h, 60.0)];
    assert!(matches!(left(first, 135.0, &late, &late, 4.0 * h), Left::Late(least, 2.0) if (least - 2.1).abs() < 1e-9));
    // A warmer piece read after a cold one counts.
    let two = [(0.0, 150.0), (h, 69.0), (2.2 * h, 72.0), (2.3 * h, 60.0)];
    assert!(!matches!(left(first, 135.0, &two, &two, 3.0 * h), Left::Done { .. }));
    // Warmed again: the clock does not begin again.
    let again = [(0.0, 150.0), (h, 100.0), (2.0 * h, 140.0), (3.5 * h, 65.0)];
    assert_eq!(left(first, 135.0, &again, &again, 4.0 * h), Left::Unseen(3.5, 2.0));
}

/// USDA FSIS, jerky and food safety: heat first, then dry; packs at 38 °F or colder. Published.
#[test]
fn jerky_and_vacuum_packs() {
    assert_eq!((JERKY.heat, JERKY.dry), ((160.0, 165.0), (130.0, 140.0)));
    assert_eq!(JERKY.activity.0, 0.85);
    assert_eq!(VACUUM_COLD, 38.0);
}
