//! Time and temperature against the published tables. The rows stand in `data/`, as printed, with their status.

use cure_reckoner::safety::{
    COME_UP, GAP, JERKY, Left, Stage, Table, VACUUM_COLD, Wish, come_up, consumer, credit, for_plants,
    frozen_long_enough, left, may_go_lower, options, trichinae_seconds,
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

/// USDA FSIS safe temperature chart (2025, published), game from extension charts and the Food Code (quoted).
#[test]
fn consumer_temperatures_and_who_may_go_lower() {
    let at = |kind, minced| consumer(kind).at(minced);
    assert_eq!((at("bird", false), at("bird", true)), (165.0, 165.0));
    assert_eq!(
        (at("red", false), at("red", true), consumer("red").rest),
        (145.0, 160.0, 3.0)
    );
    assert_eq!((at("boar", false), at("boar", true)), (160.0, 160.0));
    assert_eq!(at("hare", false), 165.0);
    // What it is nobody knows: the warmest.
    assert_eq!((at("own", false), at("bear from next door", false)), (165.0, 165.0));
    let wish = |at_risk, minced| Wish { at_risk, minced };
    assert_eq!(may_go_lower(consumer("bird"), wish(false, false)), Ok(Table::Bird));
    assert_eq!(may_go_lower(consumer("red"), wish(false, false)), Ok(Table::Meat70));
    for kind in ["bird", "red", "boar", "hare", "own"] {
        assert!(may_go_lower(consumer(kind), wish(true, false)).is_err(), "{kind}");
        assert!(may_go_lower(consumer(kind), wish(false, true)).is_err(), "{kind}");
    }
    for kind in ["boar", "hare", "own"] {
        assert!(may_go_lower(consumer(kind), wish(false, false)).is_err(), "{kind}");
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
    let mut seen = 0;
    for row in rows(COLD) {
        let group = match row[1] {
            "group1_to_6in" => "to-6-in",
            "group2_6_to_27in" => "6-to-27-in",
            _ => "middle",
        };
        let hours = number(row[4]) * if row[5] == "day" { 24.0 } else { 1.0 };
        let (cold, frozen) = (number(row[2]), |f, h| frozen_long_enough("pork", group, f, h));
        assert_eq!(frozen(cold, hours), Some(true), "{row:?}");
        assert_eq!(frozen(cold, hours - 0.01), Some(false), "{row:?}");
        assert_ne!(frozen(cold + 0.01, hours), Some(true), "{row:?}");
        for kind in ["boar", "bear", "own"] {
            assert_eq!(frozen_long_enough(kind, group, cold, hours * 100.0), None, "{kind}");
        }
        seen += 1;
    }
    assert_eq!(seen, 14);
}

/// UNL extension, published: through 40 to 140 °F within 4 h at home.
#[test]
fn coming_up() {
    assert_eq!(COME_UP, 4.0);
    let h = 3600.0;
    let seen = [(0.0, 38.0), (h, 60.0), (3.0 * h, 120.0)];
    let up = come_up(&seen, 3.5 * h, 2.0).expect("warming");
    assert_eq!((up.hours, up.hot, up.unseen), (3.5, false, false));
    // Never seen cold: from the first reading on, and said to be so.
    let up = come_up(&seen[1..], 3.5 * h, 2.0).expect("warming");
    assert_eq!((up.hours, up.unseen), (2.5, true));
    // It stops where it was read hot by more than the thermometer's error.
    let hot = [(0.0, 38.0), (2.0 * h, 141.0), (2.5 * h, 142.0), (9.0 * h, 38.0)];
    let up = come_up(&hot, 9.0 * h, 2.0).expect("warming");
    assert_eq!((up.hours, up.hot), (2.5, true));
    assert_eq!(come_up(&[(0.0, 38.0)], h, 2.0), None);
    assert_eq!(come_up(&[], h, 2.0), None);
}

/// The options as printed: start, end, hours, hours in all. Food Code 3-501.14(A) and FSIS Appendix B 1999, options 1
/// and 3, published; 100 ppm of ingoing nitrite for the last.
#[test]
fn options_for_chilling() {
    let print = |ppm| {
        let rows = options(ppm).map(|s| (s.key, s.start, s.end, s.hours, s.total));
        rows.collect::<Vec<_>>()
    };
    let home = [
        ("food-code", 135.0, 70.0, Some(2.0), Some(6.0)),
        ("food-code", 70.0, 41.0, Some(4.0), Some(6.0)),
        ("plant-1", 130.0, 80.0, Some(1.5), Some(6.5)),
        ("plant-1", 80.0, 40.0, Some(5.0), Some(6.5)),
    ];
    let cured = [
        ("plant-3", 130.0, 80.0, Some(5.0), Some(15.0)),
        ("plant-3", 80.0, 45.0, Some(10.0), Some(15.0)),
    ];
    assert_eq!(print(None), home);
    assert_eq!(print(Some(99.9)), home);
    assert_eq!(print(Some(100.0)), [&home[..], &cured[..]].concat());
}

/// Every row as printed is in the table with its figures; each stage is done when its end is read in its time, and too
/// slow a minute later. Which of them a home is judged by hangs on the nitrite that went in, and on nothing else.
#[test]
fn every_row_for_chilling() {
    let key = |id: &str| match id {
        "FC" => "food-code".to_owned(),
        other => other.replace('B', "plant-"),
    };
    let optional = |cell: &str| (!cell.is_empty()).then(|| number(cell));
    let all: Vec<&Stage> = options(Some(150.0)).chain(for_plants(Some(150.0))).collect();
    let mut seen = 0;
    for row in rows(COOLING) {
        let mut of = all.iter().filter(|s| s.key == key(row[0]));
        let place = row[7].parse::<usize>().expect("a stage") - 1;
        let first = of.clone().next().expect("an option").start;
        let stage = of.nth(place).expect("a stage");
        let found = (stage.start, stage.end, stage.hours, stage.total);
        let printed = (number(row[8]), number(row[9]), optional(row[10]), optional(row[11]));
        assert_eq!(found, printed, "{row:?}");
        let needs = (stage.nitrite, stage.brine, stage.activity);
        assert_eq!(needs, (optional(row[3]), optional(row[5]), optional(row[6])), "{row:?}");
        if let Some(hours) = stage.hours {
            let points = |hours: f64| [(0.0, stage.start), (hours * 3600.0, stage.end)];
            let at = |hours: f64| left(stage, first, &points(hours), 30.0 * 3600.0, 0.0);
            assert_eq!(at(hours), Left::Done(hours), "{row:?}");
            assert!(matches!(at(hours + 1.0 / 60.0), Left::Late(_)), "{row:?}");
        }
        seen += 1;
    }
    assert_eq!((seen, all.len()), (12, 12));
    let keys = |nitrite| {
        let mut keys: Vec<&str> = for_plants(nitrite).map(|s| s.key).collect();
        keys.dedup();
        keys
    };
    let salty = ["plant-4a", "plant-4b", "plant-4c"];
    assert_eq!(keys(Some(150.0)), [&["plant-2"][..], &salty].concat());
    assert_eq!(keys(None), [&["plant-2", "plant-3"][..], &salty].concat());
}

fn stage(i: usize) -> &'static Stage {
    options(None).nth(i).expect("a stage")
}

#[test]
fn time_left_while_it_chills() {
    let h = 3600.0;
    let first = stage(0);
    let points = [(0.0, 150.0), (0.5 * h, 137.0), (h, 120.0)];
    // The clock runs from the last reading that was surely warm.
    assert_eq!(left(first, 135.0, &points, 2.0 * h, 2.0), Left::Running(0.5));
    assert_eq!(left(first, 135.0, &points, 3.0 * h, 2.0), Left::Running(-0.5));
    // Not read since: it may have cooled at once. A later stage waits for a reading below its start.
    assert_eq!(left(first, 135.0, &points[..2], h, 2.0), Left::Running(1.5));
    assert_eq!(left(stage(1), 135.0, &points, h, 2.0), Left::NotBegun);
    let done = [(0.0, 150.0), (h, 100.0), (2.0 * h, 68.0), (6.5 * h, 39.0)];
    assert_eq!(left(first, 135.0, &done, 7.0 * h, 2.0), Left::Done(2.0));
    // 70 to 41 °F in 4.5 h is too long, and so are 6.5 h in all.
    assert!(matches!(left(stage(1), 135.0, &done, 7.0 * h, 2.0), Left::Late(_)));
    // 70.5 °F is not surely 70.
    let near = [(0.0, 150.0), (h, 100.0), (1.9 * h, 70.5)];
    assert!(matches!(left(first, 135.0, &near, 1.9 * h, 2.0), Left::Running(_)));
}

/// USDA FSIS, jerky and food safety: heat first, then dry; packs at 38 °F or colder. Published.
#[test]
fn jerky_and_vacuum_packs() {
    assert_eq!((JERKY.heat, JERKY.dry), ((160.0, 165.0), (130.0, 140.0)));
    assert_eq!(JERKY.activity.0, 0.85);
    assert_eq!(VACUUM_COLD, 38.0);
}
