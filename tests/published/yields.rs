//! What a bag gives against every published row of the two tables of weights and yields, and every row from memory
//! marked. The tables stand in `data/`; their rows carry source and status.

use super::bag::{grams, plan};
use cure_reckoner_tests::{ok, rub};
use serde_json::json;
use std::collections::BTreeMap;

const WEIGHTS: &str = include_str!("data/game-weights.csv");
const FACTORS: &str = include_str!("data/game-yield-factors.csv");

struct Row {
    of: String,
    part: String,
    figures: [f64; 3],
    source: String,
    published: bool,
}

fn rows(text: &str) -> Vec<Row> {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let rows = reader.records().map(|record| {
        let record = record.expect("a row");
        let figure = |i: usize| record[i].parse().expect("a figure");
        Row {
            of: record[0].to_owned(),
            part: record[1].to_owned(),
            figures: [figure(2), figure(3), figure(4)],
            source: record[5].to_owned(),
            published: record[6].starts_with("published"),
        }
    });
    rows.collect()
}

/// What one bird or animal gives, in grams, by a typed weight or without.
fn gives(key: &str, weight: Option<&str>) -> [f64; 3] {
    let sheet = plan(json!([{"of": key, "hunters": 1, "each": 1, "weight": weight}]), &[]);
    grams(&sheet["range"])
}

/// Within what the screen rounds to: a gram, or three figures of a small weight.
#[track_caller]
fn same(found: [f64; 3], wanted: [f64; 3], what: &str) {
    for (found, wanted) in found.into_iter().zip(wanted) {
        assert!((found - wanted).abs() <= 0.6, "{what}: {found} g for {wanted} g");
    }
}

fn times(a: [f64; 3], b: [f64; 3]) -> [f64; 3] {
    [a[0] * b[0], a[1] * b[1], a[2] * b[2]]
}

/// Birds of which a live weight is published: its row of the plan, and the row of the tables that says which share of
/// it the breasts are assumed to be.
const BIRDS: &[(&str, &str, &str)] = &[
    ("mallard", "mallard-breast", "mallard"),
    (
        "american black duck",
        "american-black-duck-breast",
        "american black duck",
    ),
    ("gadwall", "gadwall-breast", "gadwall"),
    ("american wigeon", "american-wigeon-breast", "american wigeon"),
    ("northern shoveler", "northern-shoveler-breast", "northern shoveler"),
    ("blue-winged teal", "blue-winged-teal-breast", "blue-winged teal"),
    ("green-winged teal", "green-winged-teal-breast", "green-winged teal"),
    ("wood duck", "wood-duck-breast", "wood duck"),
    ("lesser scaup", "scaup-lesser-breast", "scaup (lesser)"),
    ("common goldeneye", "common-goldeneye-breast", "common goldeneye"),
    ("bufflehead", "bufflehead-breast", "bufflehead"),
    ("ruddy duck", "ruddy-duck-breast", "diving duck"),
    ("common merganser", "common-merganser-breast", "diving duck"),
    ("long-tailed duck (male)", "long-tailed-duck-breast", "diving duck"),
    (
        "greater white-fronted goose",
        "greater-white-fronted-goose-breast",
        "greater white-fronted goose",
    ),
    (
        "cackling goose (smallest race)",
        "cackling-goose-small-breast",
        "cackling goose",
    ),
    (
        "Canada goose, gander (all races)",
        "canada-gander-breast",
        "Canada goose (large/resident)",
    ),
    (
        "Canada goose, goose (all races)",
        "canada-goose-breast",
        "Canada goose (large/resident)",
    ),
    (
        "ring-necked pheasant cock (farmed)",
        "pheasant-cock-farmed-breast",
        "pheasant",
    ),
    (
        "ring-necked pheasant hen (farmed)",
        "pheasant-hen-farmed-breast",
        "pheasant",
    ),
    ("ruffed grouse", "ruffed-grouse-breast", "ruffed grouse"),
    ("chukar", "chukar-breast", "chukar"),
    ("wild turkey hen", "wild-turkey-hen-breast", "wild turkey hen"),
    ("wild turkey tom", "wild-turkey-tom-breast", "wild turkey tom"),
];

/// Animals of which a whole weight is published: the row of the plan, and the row of factors it is planned by.
const WHOLE: &[(&str, &str, &str, &str)] = &[
    (
        "mule deer buck",
        "mule-deer-buck",
        "mule deer buck",
        "field-dressed -> boneless lean",
    ),
    (
        "mule deer doe",
        "mule-deer-doe",
        "mule deer doe",
        "field-dressed -> boneless lean",
    ),
    ("elk bull", "elk-bull", "elk", "field-dressed -> boneless lean"),
    ("elk cow", "elk-cow", "elk", "field-dressed -> boneless lean"),
];

/// Factors that are a share of a weight: the row of the plan that goes by them.
const SHARES: &[(&str, &str, &str)] = &[
    ("mule deer buck", "field-dressed -> boneless lean", "mule-deer-buck"),
    ("mule deer doe", "field-dressed -> boneless lean", "mule-deer-doe"),
    ("mule deer", "skinned headless -> boneless lean", "mule-deer-skinned"),
    ("elk", "field-dressed -> boneless lean", "elk-bull"),
    ("elk", "skinned headless -> boneless lean", "elk-skinned"),
    ("brown hare", "carcass -> hind legs", "hare-legs"),
    ("brown hare", "carcass -> loins", "hare-saddle"),
    ("wild mallard", "live -> all lean meat", "mallard-lean"),
    ("wild mallard", "live -> skin + subcutaneous fat", "mallard-skin"),
    ("wild mallard", "live -> giblets", "mallard-giblets"),
    ("pheasant", "live -> dressed", "pheasant-dressed"),
    ("pheasant", "live -> both breast muscles", "pheasant-breast"),
];

/// The share of the live weight that both breasts are assumed to be: of a species, or of its order.
fn assumed(of: &str) -> [f64; 3] {
    let derived = rows(WEIGHTS)
        .into_iter()
        .find(|r| r.of == of && r.source.contains("both-breast fraction"));
    if let Some(row) = derived {
        let (_, tail) = row.source.split_once("fraction ").expect("three shares");
        let shares: Vec<f64> = tail
            .split(['/', ','])
            .take(3)
            .map(|t| t.trim().parse().expect("a share"))
            .collect();
        return [shares[0], shares[1], shares[2]];
    }
    let both = |r: &Row| r.of == of && r.part.contains("both breast");
    rows(FACTORS)
        .iter()
        .find(|r| both(r))
        .expect("a row of factors")
        .figures
}

/// Every published weight is what the plan goes by where none is typed, end by end.
#[test]
fn every_published_weight_is_planned_by() {
    let mut checked = 0;
    for row in rows(WEIGHTS).iter().filter(|r| r.published) {
        let (of, part) = (row.of.as_str(), row.part.as_str());
        let bird = BIRDS.iter().find(|(bird, ..)| *bird == of).filter(|_| part == "live");
        let whole = WHOLE
            .iter()
            .find(|(animal, ..)| *animal == of)
            .filter(|_| part.starts_with("field-dressed"));
        if let Some((_, key, share)) = bird {
            same(gives(key, None), times(row.figures, assumed(share)), of);
        } else if let Some((_, key, factor, how)) = whole {
            let all = rows(FACTORS);
            let share = all
                .iter()
                .find(|r| r.of == *factor && r.part == *how)
                .expect("a factor");
            same(gives(key, None), times(row.figures, share.figures), of);
        } else {
            found_on_one(row);
        }
        checked += 1;
    }
    assert_eq!(checked, 24 + 4 + 6, "a published row is not looked at, or one is new");
}

/// What a study found on animals of which it gives the weight too: the plan for that weight meets it.
fn found_on_one(row: &Row) {
    let [low, found, high] = row.figures;
    let near = |gives: [f64; 3], figure: f64| {
        assert!(
            (gives[1] / figure - 1.0).abs() < 0.015,
            "{}: {gives:?} for {figure} g",
            row.of
        );
    };
    match (row.of.as_str(), row.part.as_str()) {
        // Kokoszynski 2008: 251.2 g of about 1187 g.
        ("ring-necked pheasant (farmed, mixed sex)", "both breast muscles") => {
            let plan = gives("pheasant-breast", Some("1187 g"));
            near(plan, found);
            assert!(plan[0] <= low && high <= plan[2], "{plan:?}");
        }
        // University of Wyoming 2003: means of 93 and 44 lb.
        ("mule deer doe", "boneless lean") => near(gives("mule-deer-doe", Some("93 lb")), found),
        // Trocino 2017: the two carcasses, typed; they are the ends of the range where none is.
        ("brown hare sub-adult (farmed)", "carcass") => {
            // Where none is typed it is the low end.
            let typed = gives("hare-legs", Some("2022 g"));
            same(typed, times([found; 3], [0.363, 0.37, 0.373]), "hare");
            assert!((gives("hare-legs", None)[0] - typed[0]).abs() < 1.0);
        }
        ("brown hare adult (farmed)", "carcass") => {
            let typed = gives("hare-legs", Some("3391 g"));
            same(typed, times([found; 3], [0.363, 0.37, 0.373]), "hare");
            assert!((gives("hare-legs", None)[2] - typed[2]).abs() < 1.0);
        }
        ("brown hare (carcass 2022 g)", "hind legs, both, bone-in") => near(gives("hare-legs", Some("2022 g")), found),
        ("brown hare (carcass 2022 g)", "loins, both") => near(gives("hare-saddle", Some("2022 g")), found),
        (of, part) => panic!("no check for the published row {of}, {part}"),
    }
}

/// Every published factor: a kilogram typed gives so much of it.
#[test]
fn every_published_factor_is_planned_by() {
    let kilogram = |key: &str| gives(key, Some("1 kg"));
    let mut checked = 0;
    for row in rows(FACTORS).iter().filter(|r| r.published) {
        let share = SHARES.iter().find(|(of, part, _)| *of == row.of && *part == row.part);
        if let Some((.., key)) = share {
            same(kilogram(key), row.figures.map(|share| share * 1000.0), &row.part);
        } else {
            match (row.of.as_str(), row.part.as_str()) {
                ("brown hare", "hind-leg muscle:bone") => {
                    let (all, meat) = (
                        gives("hare-legs", Some("20 kg")),
                        gives("hare-legs-boned", Some("20 kg")),
                    );
                    for i in 0..3 {
                        let ratio = meat[i] / (all[i] - meat[i]);
                        assert!(
                            (ratio / row.figures[i] - 1.0).abs() < 0.01,
                            "{ratio} for {}",
                            row.figures[i]
                        );
                    }
                }
                // Minnesota, 1027 deer: the row by live weight is the row by dressed weight times this.
                ("white-tailed deer", "live -> field-dressed") => {
                    let (live, dressed) = (kilogram("white-tailed-live"), kilogram("white-tailed-deer"));
                    for i in 0..3 {
                        let share = live[i] / dressed[i];
                        assert!((share - row.figures[i]).abs() < 0.002, "{share} for {}", row.figures[i]);
                    }
                }
                // A herd of over 200: what is planned for the dressed deer lies in the range for the live one.
                ("white-tailed deer", "field-dressed -> live multiplier") => {
                    let dressed = kilogram("white-tailed-deer");
                    for times in row.figures {
                        let live = gives("white-tailed-live", Some(&format!("{} g", 1000.0 * times)));
                        assert!(live[0] <= dressed[1] && dressed[1] <= live[2], "{live:?} {dressed:?}");
                    }
                }
                // USDA: a pound gives about 4 oz.
                ("any red game", "raw strips -> jerky") => {
                    let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
                    recipe["steps"] = json!([{"do": "cure", "lasts": "12 h"}, {"do": "dry_out", "lasts": "6 h"}]);
                    let sheet = plan(
                        json!([{"of": "mule-deer-skinned", "hunters": 1, "each": 1, "weight": "10 kg", "recipe": 0}]),
                        &[("recipes", json!([recipe]))],
                    );
                    let green = grams(&sheet["range"]);
                    let left = &sheet["left"][0];
                    same(grams(&left["weight"]), times(green, row.figures), &left.to_string());
                }
                (of, part) => panic!("no check for the published factor {of}, {part}"),
            }
        }
        checked += 1;
    }
    assert_eq!(checked, 16, "a published factor is not looked at, or one is new");
}

/// A row rests on memory where its breasts do; each of them says so to the picker and in the plan.
#[test]
fn every_row_from_memory_is_marked() {
    let tables = ok(&json!({"tables": {}}));
    let mut count = BTreeMap::new();
    for game in tables["game"].as_array().expect("rows") {
        let key = game["key"].as_str().expect("a key");
        let sheet = plan(json!([{"of": key, "hunters": 1, "each": 1, "weight": "2 kg"}]), &[]);
        let row = &sheet["rows"][0];
        let status = row["basis"]["status"].as_str().expect("a status").to_owned();
        let memory = status == "memory";
        assert_eq!(game["memory"], memory, "{key}: {status}");
        assert!(
            memory || ["published", "uncontrolled"].contains(&status.as_str()),
            "{key}: {status}"
        );
        *count.entry(status).or_insert(0) += 1;
        // The assumed share of the breasts is from memory, whatever the live weight is.
        let assumed = BIRDS.iter().any(|(_, of, share)| *of == key && *share != "pheasant");
        assert!(memory || !assumed, "{key}");
    }
    assert!(count["memory"] > 40 && count["published"] >= 12, "{count:?}");
}
