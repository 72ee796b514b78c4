//! Learning the smoker: what its fires tell makes the next forecast better, and its band stays honest.

use cure_reckoner::smoke::Habit;
use cure_reckoner_tests::cooks::{Cook, quantile};

/// Hidden smokers of another model, each with four cooks of other pieces; the fifth is forecast before its first reading,
/// by what is usual and by what the four told. Run with `--nocapture` for the figures.
#[test]
fn four_fires_teach_the_fifth() {
    let (mut usual, mut taught, mut held, mut count) = (Vec::new(), Vec::new(), 0, 0);
    for number in 5000..5080 {
        let cooks = Cook::in_one_smoker(number, 5);
        let (last, first) = cooks.split_last().expect("cooks");
        let told: Vec<Habit> = first.iter().filter_map(Cook::told).collect();
        let habit = Habit::learned(&told);
        usual.push(last.before(Habit::USUAL).0);
        let (off, holds) = last.before(habit);
        taught.push(off);
        held += u32::from(holds);
        count += 1;
    }
    let (before, after) = (quantile(usual, 0.5), quantile(taught, 0.5));
    let share = 100.0 * f64::from(held) / f64::from(count);
    println!(
        "median off before the first reading: {before:.3} by what is usual, {after:.3} taught; band holds {share:.0} %"
    );
    assert!(after < before, "{after} {before}");
    assert!((75.0..=90.0).contains(&share), "{share} %");
}

/// No fire: what is usual. More fires leave less open, never more than each, and the centre goes where they point.
#[test]
fn more_fires_leave_less_open() {
    assert_eq!(Habit::learned(&[]), Habit::USUAL);
    let fire = Habit {
        centre: [-0.8, 0.0, 0.5, 0.0, 0.2],
        spread: [0.5, 1.0, 0.8, 0.99, 0.9],
    };
    let (one, five) = (Habit::learned(&[fire]), Habit::learned(&[fire; 5]));
    assert!(fire.spread[0] < one.spread[0] && five.spread[0] < one.spread[0] && one.spread[0] < 1.0);
    assert!(five.centre[0] < one.centre[0] && one.centre[0] < 0.0);
    // What a fit did not narrow teaches nothing.
    assert_eq!((one.centre[1], one.spread[1]), (0.0, 1.0));
}
