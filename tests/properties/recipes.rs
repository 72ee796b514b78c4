//! Random recipes within the bounds of the page.

use cure_reckoner::pantry::{Group, ingredients};
use proptest::prelude::*;
use serde_json::{Value, json};

/// Steps of a scale.
pub fn step() -> impl Strategy<Value = &'static str> {
    prop::sample::select(vec!["5 g", "1 g", "0.1 g", "0.01 g"])
}

/// A cure of 0.4 to 12 % nitrite, with an aim from a trace to far over the limit.
fn cure() -> impl Strategy<Value = Value> {
    (40u32..1200, 0u32..500, 1u32..700).prop_map(|(nitrite, nitrate, aim)| {
        json!({
            "item": "cure-1",
            "nitrite": format!("{}.{:02} %", nitrite / 100, nitrite % 100),
            "nitrate": format!("{}.{:02} %", nitrate / 100, nitrate % 100),
            "aim": format!("{aim} ppm"),
        })
    })
}

fn line(method: &'static str) -> impl Strategy<Value = Value> {
    let keys: Vec<&str> = ingredients()
        .iter()
        .filter(|i| i.group != Group::Cure && i.key != "water")
        .map(|i| i.key)
        .chain(["own"])
        .collect();
    let bases = match method {
        "rub" | "ground" => vec!["green_weight", "piece"],
        "cover_brine" => vec!["green_weight", "meat_and_water", "brine", "piece"],
        _ => vec!["green_weight", "brine", "piece"],
    };
    let packets = prop::sample::select(vec!["", "none", "celery, mustard"]);
    let drawn = (
        prop::sample::select(keys),
        prop::sample::select(bases),
        1u32..500,
        packets,
    );
    drawn.prop_map(|(item, of, n, packet)| {
        let amount = if of == "piece" {
            format!("{}.{:02} g", n / 100, n % 100)
        } else {
            format!("{}.{:02} %", n / 100, n % 100)
        };
        let share = json!({"of": of, "amount": amount});
        match (item, packet) {
            ("own", "") => json!({"item": item, "name": "Marsh rub", "share": share}),
            ("own", packet) => json!({"item": item, "name": "Marsh rub", "allergens": packet, "share": share}),
            _ => json!({"item": item, "share": share}),
        }
    })
}

/// Any method with up to eight lines and one or two cures.
pub fn recipe() -> impl Strategy<Value = Value> {
    let methods = [
        "rub",
        "ground",
        "cover_brine",
        "pick_up",
        "pumped",
        "pumped_and_covered",
    ];
    prop::sample::select(methods.to_vec()).prop_flat_map(|method| {
        let brine = !["rub", "ground"].contains(&method);
        let takes = brine && method != "cover_brine";
        (
            prop::collection::vec(cure(), 1..3),
            prop::collection::vec(line(method), 0..8),
            20u32..200,
            1u32..20,
        )
            .prop_map(move |(cures, mut lines, water, take)| {
                if brine {
                    lines.insert(
                        0,
                        json!({"item": "water", "share": {"of": "green_weight", "amount": format!("{water} %")}}),
                    );
                }
                let mut recipe = json!({"name": "Any", "tag": "AN", "method": method, "cures": cures, "lines": lines});
                if takes {
                    recipe["take"] = json!(format!("{take} %"));
                }
                recipe
            })
    })
}
