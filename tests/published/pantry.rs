//! The pantry against the household measures of the USDA National Nutrient Database, Standard Reference 28. Published.

use cure_reckoner::pantry::{Ingredient, by_number, ingredients};
use rust_decimal::{Decimal, dec};
use std::collections::BTreeSet;

struct Measure {
    ndb: String,
    /// Level teaspoons in it, and what they weigh; one of it, where it is counted.
    teaspoons: Option<Decimal>,
    words: String,
    grams: Decimal,
}

fn measures() -> Vec<Measure> {
    let text = include_str!("../data/household-measures.csv");
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    let row = |r: csv::StringRecord| {
        let amount: Decimal = r[2].parse().expect("an amount");
        let words = r[3].to_owned();
        let each = match words.split([' ', ',']).next() {
            Some("tsp") => Some(dec!(1)),
            Some("tbsp" | "tablespoon") => Some(dec!(3)),
            Some("cup") => Some(dec!(48)),
            _ if words == "fl oz" => Some(dec!(6)),
            _ => None,
        };
        Measure {
            ndb: r[0].to_owned(),
            teaspoons: each.map(|e| e * amount),
            words,
            grams: r[4].parse().expect("grams"),
        }
    };
    reader.records().map(|r| row(r.expect("a row"))).collect()
}

fn of(ndb: &str) -> Vec<&'static Ingredient> {
    ingredients()
        .iter()
        .filter(|i| i.ndb.split('|').any(|n| n == ndb))
        .collect()
}

/// All 97 foods stand in the pantry by their numbers.
#[test]
fn every_food_of_the_database() {
    let foods: BTreeSet<String> = measures().into_iter().map(|m| m.ndb).collect();
    assert_eq!(foods.len(), 97);
    for food in &foods {
        assert!(!of(food).is_empty(), "NDB {food}");
    }
    for row in ingredients() {
        for number in row.ndb.split('|').filter(|n| !n.is_empty()) {
            assert!(
                foods.contains(number),
                "{}: NDB {number} is no food of the table",
                row.key
            );
        }
    }
}

/// Every spoon, cup and fluid ounce of the database lies in the range of a row of its food.
#[test]
fn every_published_measure_is_in_range() {
    let mut held = 0;
    for m in measures() {
        let Some(spoons) = m.teaspoons else { continue };
        let fits = of(&m.ndb).into_iter().any(|i| {
            let r = i.spoon.and_then(|s| s.range()).expect("a spoon");
            r.low * spoons <= m.grams && m.grams <= r.high * spoons
        });
        assert!(fits, "NDB {}: {} of {} g", m.ndb, m.words, m.grams);
        held += 1;
    }
    assert!(held > 150, "{held} measures were held against the pantry");
}

/// A teaspoon of the database is the usual figure of a row of its food, to the rounding of the table.
#[test]
fn every_published_teaspoon_is_usual() {
    let spoons = measures().into_iter().filter(|m| m.words.starts_with("tsp"));
    for m in spoons {
        let spoons = m.teaspoons.expect("teaspoons");
        let fits = of(&m.ndb).into_iter().any(|i| {
            let r = i.spoon.and_then(|s| s.range()).expect("a spoon");
            // Brown sugar lies between packed and unpacked.
            // The table gives tenths of a gram. Brown sugar lies between unpacked and packed.
            let usual = if m.words == "tsp unpacked" { r.low } else { r.typical };
            (usual * spoons - m.grams).abs() <= dec!(0.05) || m.words == "tsp brownulated"
        });
        assert!(fits, "NDB {}: {} of {} g", m.ndb, m.words, m.grams);
    }
}

/// What is counted: a clove of garlic 3.0 g, an onion 70, 110, 150 g, a lemon's juice 48 g, an orange's 86 g.
#[test]
fn what_is_counted() {
    for (number, grams) in [
        (50, dec!(3)),
        (137, dec!(110)),
        (152, dec!(48)),
        (153, dec!(86)),
        (136, dec!(2.2)),
    ] {
        let item = by_number(number).expect("a row");
        assert_eq!(item.each().map(|r| r.typical), Some(grams), "{}", item.key);
    }
}
