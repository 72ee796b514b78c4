//! What a bag gives, against the published figures, and the own weights that take over.

use cure_reckoner_tests::{batch, ok, problems, rub, settings};
use serde_json::{Value, json};

fn plan(rows: Value, more: &[(&str, Value)]) -> Value {
    let mut ask = json!({"rows": rows, "settings": settings("0.1 g")});
    for (key, value) in more {
        ask[*key] = value.clone();
    }
    ok(&json!({"plan_bag": ask}))
}

/// Grams of `61 to 168 g, likely 109 g` or `748 g`: low, typical, high.
fn grams(text: &str) -> [f64; 3] {
    let number = |t: &str| -> f64 {
        t.replace(['\u{202f}', 'g'], "")
            .trim()
            .parse()
            .expect("a number of grams")
    };
    match text
        .split_once(" to ")
        .and_then(|(low, rest)| Some((low, rest.split_once(", likely ")?)))
    {
        Some((low, (high, typical))) => [number(low), number(typical), number(high)],
        None => [number(text); 3],
    }
}

/// Published rows: a whole weight and what was found on it, from the same study where there is one. The table's own
/// share is rounded to two figures, so a hundredth either way is its rounding.
#[test]
fn the_published_yields_are_met() {
    let rows = [
        // University of Wyoming 2003, published: means of 114 and 55, 93 and 44, 437 and 218, 339 and 169 lb.
        ("mule-deer-buck", "114 lb", 24_948.0),
        ("mule-deer-doe", "93 lb", 19_958.0),
        ("elk-bull", "437 lb", 98_883.0),
        ("elk-cow", "339 lb", 76_657.0),
        // Trocino et al. 2017, published: hind legs and loins of a 2022 g carcass.
        ("hare-legs", "2022 g", 754.0),
        ("hare-saddle", "2022 g", 280.0),
        // Janiszewski 2018, published: 41.2 % lean of a live mallard.
        ("mallard-lean", "1150 g", 473.8),
        // Kokoszynski et al. 2008, published: 251.2 g of breast on about 1187 g.
        ("pheasant-breast", "1187 g", 251.2),
    ];
    for (of, weight, found) in rows {
        let sheet = plan(json!([{"of": of, "hunters": 1, "each": 1, "weight": weight}]), &[]);
        let [low, typical, high] = grams(sheet["range"].as_str().expect("text"));
        assert!((typical / found - 1.0).abs() < 0.015, "{of}: {typical} g for {found} g");
        assert!(
            low * 0.99 <= found && found <= high * 1.01,
            "{of}: {found} g is not in {low} to {high} g"
        );
        assert_eq!(sheet["rows"][0]["memory"], false, "{of}");
        assert!(
            sheet["rows"][0]["basis"]
                .as_str()
                .expect("text")
                .contains("(published)"),
            "{of}"
        );
    }
}

/// University of Wyoming 2003, published: 56 % of a skinned doe, 59 % of a skinned buck; elk 57.5 and 60 %.
#[test]
fn the_published_shares_are_the_ends() {
    for (of, ends) in [
        ("mule-deer-skinned", [560.0, 580.0, 600.0]),
        ("elk-skinned", [570.0, 590.0, 600.0]),
    ] {
        let sheet = plan(json!([{"of": of, "hunters": 1, "each": 1, "weight": "1 kg"}]), &[]);
        assert_eq!(grams(sheet["range"].as_str().expect("text")), ends);
    }
}

/// Where no weight is typed, the usual weight of the animal widens the range: 36 287 g times 0.43 to 49 895 g times 0.51.
#[test]
fn without_a_weight_both_ranges_count() {
    let sheet = plan(json!([{"of": "mule-deer-doe", "hunters": 1, "each": 1}]), &[]);
    assert_eq!(
        grams(sheet["range"].as_str().expect("text")),
        [15_603.0, 19_826.0, 25_446.0]
    );
}

#[test]
fn hunters_times_limit_gives_pieces_and_memory_is_marked() {
    let sheet = plan(
        json!([{"of": "mallard-breast", "hunters": 3, "each": 4}, {"of": "green-winged-teal-breast", "hunters": 3, "each": 2}]),
        &[],
    );
    assert_eq!(sheet["pieces"], 36);
    // 24 x 61, 109, 168 g and 12 x 23, 34, 50 g.
    assert_eq!(
        grams(sheet["range"].as_str().expect("text")),
        [1_740.0, 3_024.0, 4_632.0]
    );
    for row in sheet["rows"].as_array().expect("rows") {
        assert_eq!(row["memory"], true);
        assert!(row["basis"].as_str().expect("text").contains("from memory"));
    }
    assert!(sheet["cautions"].to_string().contains("74 °C (165 °F)"));
}

/// Six half breasts are three birds; five are not.
#[test]
fn own_weights_take_over_after_three_birds() {
    let past = |pieces: u32, weight: &str| json!([batch(&rub("6.25 %", "150 ppm", "2.2 %"), pieces, weight)]);
    let rows = json!([{"of": "mallard-breast", "hunters": 1, "each": 6}]);
    let two = plan(rows.clone(), &[("batches", past(5, "650 g"))]);
    assert_eq!(
        (&two["rows"][0]["own"], two["green"].as_str()),
        (&json!(false), Some("1308 g"))
    );
    let three = plan(rows.clone(), &[("batches", past(6, "780 g"))]);
    assert_eq!(
        (&three["rows"][0]["own"], three["green"].as_str()),
        (&json!(true), Some("1560 g"))
    );
    assert_eq!(three["rows"][0]["memory"], false);
    // 130 g a piece, 15 % either way.
    assert_eq!(
        grams(three["rows"][0]["each"].as_str().expect("text")),
        [111.0, 130.0, 150.0]
    );
    // What was never weighed says nothing, and teal says nothing of mallard.
    let mut unweighed = past(16, "1480 g");
    unweighed[0]["pieces"][0]["weight"] = Value::Null;
    assert_eq!(plan(rows.clone(), &[("batches", unweighed)])["rows"][0]["own"], false);
    let mut teal = past(16, "640 g");
    teal[0]["pieces"][0]["cut"] = json!("teal-breast");
    assert_eq!(plan(rows, &[("batches", teal)])["rows"][0]["own"], false);
}

/// 150 ppm of 6.25 % cure is 2.4 g to the kilogram, and 2.2 % salt 22 g: enough is bought for the high end.
#[test]
fn what_to_buy_is_enough_for_the_high_end() {
    let sheet = plan(
        json!([{"of": "mule-deer-skinned", "hunters": 1, "each": 1, "weight": "10 kg"}]),
        &[("recipe", rub("6.25 %", "150 ppm", "2.2 %"))],
    );
    let buy = sheet["buy"].as_array().expect("lines");
    assert_eq!(grams(buy[0]["range"].as_str().expect("text")), [13.4, 13.9, 14.4]);
    assert_eq!(buy[0]["most"], "14.4 g");
    assert_eq!(buy[1]["most"], "132 g");
    assert!(sheet["cautions"].to_string().contains("locked"));
}

/// 12 mallard halves of 109 g, 20 mm at the thickest: 1308 g / 1.06 / (2 cm x 2/3) x 1.25 = 1157 cm2.
#[test]
fn room_follows_from_weight_and_thickness() {
    let sheet = plan(json!([{"of": "mallard-breast", "hunters": 1, "each": 6}]), &[]);
    let room = sheet["room"].as_str().expect("room");
    assert!(room.contains("likely 1160 cm²"), "{room}");
    assert!(room.contains("2 racks"), "{room}");
    assert!(plan(json!([{"of": "mule-deer-doe", "hunters": 1, "each": 1}]), &[])["room"].is_null());
}

#[test]
fn what_cannot_be_planned_says_why() {
    let ask = |row: Value| problems(&json!({"plan_bag": {"rows": [row], "settings": settings("0.1 g")}}));
    let code = |row: Value| ask(row)[0]["code"].as_str().unwrap_or_default().to_owned();
    assert_eq!(code(json!({"of": "heron", "hunters": 1, "each": 1})), "unknown");
    assert_eq!(code(json!({"of": "finish-jerky", "hunters": 1, "each": 1})), "unknown");
    assert_eq!(
        code(json!({"of": "mallard-breast", "hunters": 0, "each": 1})),
        "too_small"
    );
    assert_eq!(
        code(json!({"of": "mallard-breast", "hunters": 5001, "each": 1})),
        "too_large"
    );
    assert_eq!(code(json!({"of": "deer-live", "hunters": 1, "each": 1})), "missing");
    assert_eq!(code(json!({"of": "elk-bull", "hunters": 50, "each": 1})), "too_large");
}
