//! Tables of what is weighed and judged: the pantry, measures, limits, cautions.

use super::{decimal, rows, status, table, triple, variant, yes};

pub fn pantry() -> String {
    table("PANTRY", "crate::pantry::Ingredient", &rows("pantry.csv", 15), |r| {
        let names: Vec<&str> = [&r[2]]
            .into_iter()
            .chain(r[3].split('|').filter(|o| !o.is_empty()))
            .collect();
        let allergens: Vec<&str> = r[8].split(", ").filter(|a| !a.is_empty()).collect();
        let group = format!("{}{}", r[4][..1].to_uppercase(), &r[4][1..]);
        let spoon = triple(r, 5, |l, t, h| {
            format!("crate::pantry::SpoonWeight {{ low: {l:?}, typical: {t:?}, high: {h:?} }}")
        });
        format!(
            "crate::pantry::Ingredient {{ key: {:?}, number: {}, names: &{names:?}, group: crate::pantry::Group::{group}, \
             spoon: {spoon}, allergens: &{allergens:?}, nitrite: {:?}, nitrate: {:?}, source: {:?}, status: {}, ndb: {:?}, \
             each: {:?} }}",
            &r[0],
            &r[1],
            &r[9],
            &r[10],
            &r[11],
            status(&r[12]),
            &r[13],
            &r[14]
        )
    })
}

pub fn words() -> String {
    table("WORDS", "crate::reading::Word", &rows("words.csv", 4), |r| {
        let words: Vec<&str> = r[1].split('|').collect();
        let sort = format!("{}{}", r[0][..1].to_uppercase(), &r[0][1..]);
        format!(
            "crate::reading::Word {{ sort: crate::reading::Sort::{sort}, words: &{words:?}, value: {:?}, note: {:?} }}",
            &r[2], &r[3]
        )
    })
}

/// One constant a sign: a sign that nothing looks for fails the build.
pub fn signs() -> String {
    patterns("signs.csv", 3)
}

/// One constant a unit, likewise.
pub fn units() -> String {
    patterns("units.csv", 2)
}

fn patterns(name: &str, columns: usize) -> String {
    rows(name, columns)
        .iter()
        .map(|r| {
            let patterns: Vec<&str> = r[1].split('|').collect();
            let count = patterns.len();
            format!("pub(crate) static {}: [&str; {count}] = {patterns:?};\n", &r[0])
        })
        .collect()
}

pub fn limits() -> String {
    table("RULES", "crate::dose::Rule", &rows("limits.csv", 13), |r| {
        let basis = variant(&r[7]);
        let raw_only = match &r[5] {
            "raw" => true,
            "any" => false,
            other => panic!("{other} is neither any nor raw"),
        };
        format!(
            "crate::dose::Rule {{ key: {:?}, method: {:?}, cut: {:?}, limit: rust_decimal::dec!({}), \
             nitrate: {}, nitrate_raw_only: {raw_only}, together: {}, basis: crate::dose::Basis::{basis}, \
             undecided_to: rust_decimal::dec!({}), least: rust_decimal::dec!({}), ascorbate: {}, source: {:?}, \
             status: {} }}",
            &r[0],
            &r[1],
            &r[2],
            &r[3],
            decimal(&r[4]),
            yes(&r[6]),
            &r[8],
            &r[9],
            decimal(&r[10]),
            &r[11],
            status(&r[12])
        )
    })
}

pub fn spoons() -> String {
    table("SPOONS", "crate::dose::SpoonSize", &rows("spoons.csv", 7), |r| {
        format!(
            "crate::dose::SpoonSize {{ profile: {:?}, unit: crate::dose::Unit::{}, ml: crate::quantity::Range {{ \
             low: rust_decimal::dec!({}), typical: rust_decimal::dec!({}), high: rust_decimal::dec!({}) }}, \
             source: {:?}, status: {} }}",
            &r[0],
            variant(&r[1]),
            &r[2],
            &r[3],
            &r[4],
            &r[5],
            status(&r[6])
        )
    })
}

pub fn cautions() -> String {
    table("CAUTIONS", "crate::dose::Caution", &rows("cautions.csv", 2), |r| {
        format!("crate::dose::Caution {{ key: {:?}, source: {:?} }}", &r[0], &r[1])
    })
}

pub fn measures() -> String {
    table("MEASURES", "crate::dose::Measure", &rows("measures.csv", 6), |r| {
        format!(
            "crate::dose::Measure {{ word: {:?}, share: crate::quantity::Range {{ low: rust_decimal::dec!({}), \
             typical: rust_decimal::dec!({}), high: rust_decimal::dec!({}) }} }}",
            &r[0], &r[1], &r[2], &r[3]
        )
    })
}

pub fn slips() -> String {
    table("SLIPS", "crate::dose::Slip", &rows("slips.csv", 8), |r| {
        assert!(["over", "low"].contains(&&r[1]), "{} is neither over nor low", &r[1]);
        format!(
            "crate::dose::Slip {{ key: {:?}, over: {}, said: {}, printed: (rust_decimal::dec!({}), rust_decimal::dec!({})), \
             times: {}, meant: {}, water: rust_decimal::dec!({}) }}",
            &r[0],
            &r[1] == "over",
            match &r[2] {
                "any" => "crate::dose::Said::Any".to_owned(),
                "us_gallon" => "crate::dose::Said::UsGallon".to_owned(),
                "imperial_gallon" => "crate::dose::Said::ImperialGallon".to_owned(),
                unit => format!("crate::dose::Said::Unit(crate::dose::Unit::{})", variant(unit)),
            },
            &r[3],
            &r[4],
            decimal(&r[5]),
            decimal(&r[6]),
            &r[7]
        )
    })
}

pub fn lange() -> String {
    table(
        "GRAVITIES",
        "(rust_decimal::Decimal, rust_decimal::Decimal)",
        &rows("gravity.csv", 2),
        |r| format!("(rust_decimal::dec!({}), rust_decimal::dec!({}))", &r[0], &r[1]),
    )
}

pub fn accelerators() -> String {
    table(
        "ACCELERATORS",
        "crate::weigh::Accelerator",
        &rows("accelerators.csv", 4),
        |r| {
            format!(
                "crate::weigh::Accelerator {{ word: {:?}, limit: rust_decimal::dec!({}), rule: {:?} }}",
                &r[0], &r[1], &r[2]
            )
        },
    )
}
