//! Time and temperature where a reading stands on a limit itself, and which of two times or kinds counts.

use cure_reckoner::pantry::MeatKind::{Bird, Red};
use cure_reckoner::safety::{Consumer, Left, Stage, come_up, consumer, keeps, least, left, options};

/// UNL extension, published: through 40 to 140 °F within 4 h. 40 °F itself is cold: nothing has begun at it, a first reading
/// of it has seen the piece cold, and the time counts from when the fire was lit. A reading of that very moment that is
/// warm says that it was not cold until then.
#[test]
fn forty_degrees_are_cold() {
    let h = 3600.0;
    assert_eq!(come_up(&[(0.0, 40.0)], &[(0.0, 40.0)], None, h), None);
    let lit_at = |reads: f64, lit: f64| {
        let points = [(0.0, 40.0), (h, reads), (3.0 * h, 150.0)];
        let up = come_up(&points, &points, Some(lit), 9.0 * h).expect("warming");
        (up.hours, up.unseen)
    };
    assert_eq!(lit_at(60.0, 0.5 * h), (2.5, false));
    assert_eq!(lit_at(60.0, h), (3.0, false));
}

fn stage(i: usize) -> &'static Stage {
    options().nth(i).expect("a stage")
}

/// A start that was read to the degree: the piece is no longer above it, so a later stage has begun, and what it is late by
/// counts from there. How long before that reading it fell below nobody saw, so what it is done in does not.
#[test]
fn a_stage_has_begun_at_its_start() {
    let h = 3600.0;
    let at = |stage, points: &[(f64, f64)], now| left(stage, 135.0, points, points, now);
    let start = [(0.0, 150.0), (h, 135.0), (2.5 * h, 70.0)];
    assert_eq!(at(stage(0), &start, 3.0 * h), Left::Unseen(2.5, 2.0));
    // Surely at 135 °F after an hour and above 70 °F two and a half hours after that.
    let late = [(0.0, 150.0), (h, 135.0), (3.5 * h, 75.0), (4.0 * h, 60.0)];
    assert_eq!(at(stage(0), &late, 4.0 * h), Left::Late(2.5, 2.0));
    // 70 °F after two hours leaves four of the six to 41 °F.
    let second = [(0.0, 150.0), (h, 100.0), (2.0 * h, 70.0)];
    assert_eq!(at(stage(1), &second, 2.0 * h), Left::Running(4.0));
}

/// Option 1 has 5 h for its second stage and 6.5 h in all (FSIS Stabilization Guideline 2021, published): whichever is over
/// first ends it.
#[test]
fn the_shorter_of_two_times_counts() {
    let h = 3600.0;
    let at = |points: &[(f64, f64)]| left(stage(3), 130.0, points, points, 9.0 * h);
    // Quick to 80 °F: its own 5 h are over while 6.5 in all are not.
    let quick = [(0.0, 140.0), (0.25 * h, 129.0), (0.5 * h, 79.0), (5.75 * h, 39.0)];
    assert_eq!(at(&quick), Left::Unseen(5.5, 5.0));
    // Slow to 80 °F: 4.75 h from there, and 6.75 in all.
    let slow = [
        (0.0, 140.0),
        (h, 129.0),
        (2.0 * h, 81.0),
        (2.25 * h, 79.0),
        (6.75 * h, 39.0),
    ];
    assert_eq!(at(&slow), Left::Unseen(6.75, 6.5));
}

/// Kinds that are packed together keep as long as the one that keeps shortest: raw birds one day, raw red meat three (USDA
/// FSIS cold storage chart, quoted).
#[test]
fn mixed_meat_keeps_as_the_one_that_keeps_shortest() {
    for kinds in [[Bird, Red], [Red, Bird]] {
        assert_eq!(keeps("raw", &kinds, "cold").expect("a row").low, 1);
    }
    assert_eq!(keeps("raw", &[Red], "cold").expect("a row").low, 3);
}

/// USDA FSIS chart (published) for farmed beef, veal and lamb: 145 °F whole, 160 °F ground. No game has two, so the row is
/// made up of those.
#[test]
fn mince_has_a_temperature_of_its_own() {
    let farmed = Consumer {
        whole: 145.0,
        minced: 160.0,
        ..*consumer(Red)
    };
    assert_eq!((farmed.at(false), farmed.at(true)), (least(145.0), least(160.0)));
}
