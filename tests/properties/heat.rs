//! Credit for time at temperature.

use cure_reckoner::safety::{Table, credit};
use proptest::prelude::*;

fn tables() -> impl Strategy<Value = Table> {
    prop_oneof![Just(Table::Meat65), Just(Table::Meat70), Just(Table::Bird)]
}

/// Readings up to 20 minutes apart.
fn cooks() -> impl Strategy<Value = Vec<(f64, f64)>> {
    prop::collection::vec((1.0..1200.0f64, 120.0..157.0f64), 1..30).prop_map(|steps| {
        let mut at = 0.0;
        steps
            .into_iter()
            .map(|(span, f)| {
                at += span;
                (at, f)
            })
            .collect()
    })
}

proptest! {
    /// A credit is never more than the next warmer row of the table would give, nor less than the colder.
    #[test]
    fn between_the_rows_beside_it(table in tables(), f in 136.0..157.0f64) {
        let own = table.seconds(f).expect("above the floor");
        prop_assert!(own >= table.seconds(f.ceil()).expect("a row") - 1e-9);
        prop_assert!(own <= table.seconds(f.floor()).expect("a row") + 1e-9);
    }

    /// The same over a whole cook: every reading moved up to its next row earns at least as much.
    #[test]
    fn never_more_than_by_the_next_warmer_row(table in tables(), cook in cooks()) {
        let warmer: Vec<_> = cook.iter().map(|(at, f)| (*at, f.ceil())).collect();
        prop_assert!(credit(table, &cook, 0.0) <= credit(table, &warmer, 0.0) + 1e-9);
    }

    /// Never more than the coldest counted reading would earn, held for as long; never more for a worse thermometer or
    /// for a reading left out of one flat stretch.
    #[test]
    fn bounded_by_what_was_read(table in tables(), cook in cooks(), error in 0.0..5.0f64) {
        let hottest = cook.iter().map(|p| p.1).fold(0.0, f64::max);
        let span = cook.last().expect("readings").0 - cook[0].0;
        let most = table.seconds(hottest).map_or(0.0, |s| span / s);
        let earned = credit(table, &cook, 0.0);
        prop_assert!(earned <= most + 1e-9);
        prop_assert!((0.0..=1.0).contains(&earned));
        prop_assert!(credit(table, &cook, error) <= earned + 1e-9);
    }

    /// One reading made colder never earns more.
    #[test]
    fn colder_never_earns_more(table in tables(), cook in cooks(), at in any::<prop::sample::Index>(), by in 0.0..30.0f64) {
        let mut colder = cook.clone();
        let i = at.index(colder.len());
        colder[i].1 -= by;
        prop_assert!(credit(table, &colder, 0.0) <= credit(table, &cook, 0.0) + 1e-9);
    }
}
