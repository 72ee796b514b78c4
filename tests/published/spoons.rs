//! Spoons against published and practice figures.

use cure_reckoner::pantry::Status::{Judgement, Memory, Published, Uncontrolled};
use cure_reckoner::pantry::{Group, Ingredient, MADE, ingredient, ingredients};
use cure_reckoner_tests::{exact, ok, settings};
use rust_decimal::{Decimal, dec};
use serde_json::json;

fn teaspoon(key: &str) -> [Decimal; 3] {
    let spoon = ingredient(key)
        .and_then(|i| i.spoon)
        .and_then(|s| s.range())
        .expect("a spoon");
    [spoon.low, spoon.typical, spoon.high]
}

/// USDA National Nutrient Database, Standard Reference 28, household measures, grams a teaspoon. Published.
#[test]
fn teaspoons_of_the_nutrient_database() {
    let rows = [
        ("salt-table", dec!(6.0)),
        ("sugar-white", dec!(4.2)),
        ("sugar-turbinado", dec!(4.6)),
        ("sugar-maple", dec!(3.0)),
        ("pepper-black-ground", dec!(2.3)),
        ("pepper-black-whole", dec!(2.9)),
        ("pepper-white", dec!(2.4)),
        ("pepper-cayenne", dec!(1.8)),
        ("mustard-ground", dec!(2.0)),
        ("garlic-powder", dec!(3.1)),
        ("garlic-fresh", dec!(2.8)),
        ("onion-powder", dec!(2.4)),
        ("paprika", dec!(2.3)),
        ("coriander-seed", dec!(1.8)),
        ("thyme-dried", dec!(1.0)),
        ("rosemary-dried", dec!(1.2)),
        ("sage-ground", dec!(0.7)),
        ("bay-crumbled", dec!(0.6)),
        ("allspice-ground", dec!(1.9)),
        ("clove-ground", dec!(2.1)),
        ("ginger-ground", dec!(1.8)),
        ("mace-ground", dec!(1.7)),
        ("nutmeg-ground", dec!(2.2)),
        ("cinnamon-ground", dec!(2.6)),
        ("fennel-seed", dec!(2.0)),
        ("celery-seed", dec!(2.0)),
        ("chili-powder", dec!(2.7)),
        ("marjoram-dried", dec!(0.6)),
        ("soy-sauce", dec!(5.3)),
        ("vinegar-cider", dec!(5.0)),
    ];
    for (key, grams) in rows {
        assert_eq!(teaspoon(key)[1], grams, "{key}");
    }
    // Brown sugar: 3.0 g unpacked, 4.6 g packed.
    assert_eq!(teaspoon("sugar-brown")[..2], [dec!(3.0), dec!(4.6)]);
}

/// Every row of the pantry has its three figures in order, a source and a status. No figures have the user's own mix, whose
/// spoon weighs what it was thinned with; a cure that only its packet knows, or a plant; and the pure salts, which no spoon
/// measures. A spoon of those is read as of a cure that is not known by its grain.
#[test]
fn every_row_has_a_source_and_a_status() {
    let bare = |row: &&Ingredient| row.key == MADE || row.group == Group::Cure && row.number > 168;
    let (unweighed, rows): (Vec<&Ingredient>, Vec<&Ingredient>) = ingredients().iter().partition(bare);
    assert_eq!(unweighed.len(), 7);
    for row in unweighed {
        assert!(row.spoon.is_none() && !row.source.is_empty(), "{}", row.key);
    }
    for row in rows {
        let [low, typical, high] = teaspoon(row.key);
        assert!(Decimal::ZERO < low && low <= typical && typical <= high, "{}", row.key);
        assert!(!row.source.is_empty(), "{}", row.key);
        assert!(
            matches!(row.status, Published | Uncontrolled | Memory | Judgement),
            "{}",
            row.key
        );
    }
    let mut numbers: Vec<u32> = ingredients().iter().map(|i| i.number).collect();
    numbers.sort_unstable();
    numbers.dedup();
    assert_eq!(
        numbers.len(),
        ingredients().len(),
        "a number stands for one ingredient only"
    );
}

/// A level teaspoon of a 6.25 % cure: 4.2 to 8.3 g in home weighings, 5.67 g by the packet rule 1 oz = 5 teaspoons.
/// Quoted, uncontrolled.
#[test]
fn a_level_teaspoon_of_cure() {
    assert_eq!(teaspoon("cure-1"), [dec!(4.2), dec!(5.67), dec!(8.3)]);
}

/// 2 tablespoons on 11 lb: 316 to 624 ppm; one teaspoon to 5 lb: 116 to 229 ppm. Computed from the home weighings.
#[test]
fn spoons_as_ranges() {
    for (amount, meat, low, high) in [("2 tbsp", "11 lb", 316.0, 624.0), ("1 tsp", "5 lb", 116.0, 229.0)] {
        let verdict = ok(&json!({"check_dose": {
            "method": "rub", "green": meat, "put_in": {"amount": amount, "nitrite": "6.25 %"}, "settings": settings("0.1 g")
        }}));
        let [least, _, most] = exact(&verdict, "nitrite");
        assert!(
            (least - low).abs() < 0.5 && (most - high).abs() < 0.5,
            "{amount} on {meat}: {least} to {most}"
        );
    }
}

/// A quarter teaspoon to 5 lb, in circulation, is about 41 ppm at most 57: too low. Computed.
#[test]
fn a_quarter_teaspoon_to_five_pounds_is_too_low() {
    let verdict = ok(&json!({"check_dose": {
        "method": "rub", "green": "5 lb", "put_in": {"amount": "1/4 tsp", "nitrite": "6.25 %"}, "settings": settings("0.1 g")
    }}));
    assert_eq!(verdict["word"], "too_low");
}

/// One tablespoon of coarse salt to a pound is 1.8 to 4.1 % by the kind of salt. Computed from home weighings.
#[test]
fn a_tablespoon_of_salt_to_a_pound() {
    let percent = |key: &str| teaspoon(key)[1] * dec!(3) * dec!(100) / dec!(453.59237);
    assert_eq!(percent("salt-flake-large").round_dp(1), dec!(1.8));
    assert_eq!(percent("salt-pickling").round_dp(1), dec!(4.1));
}
