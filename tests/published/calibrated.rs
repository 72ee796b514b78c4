//! Spoons and scales of the user's own, and cure thinned for a coarse scale.

use cure_reckoner_tests::{exact, ok, problems, settings};
use serde_json::{Value, json};

const TEN: [&str; 10] = [
    "5.1 g", "5.3 g", "5.0 g", "5.4 g", "5.2 g", "5.2 g", "5.1 g", "5.3 g", "5.5 g", "4.9 g",
];

fn spoon(weights: &[&str], count: Option<u32>) -> Value {
    let mut ask = json!({"item": "cure-1", "tablespoon": false, "weights": weights, "settings": settings("0.1 g")});
    if let Some(count) = count {
        ask["count"] = json!(count);
    }
    json!({"spoon": ask})
}

/// Ten one by one: the mean is theirs, and the range is a quarter of their distance wider either way, with half a step.
#[test]
fn ten_spoons_one_by_one() {
    let sheet = ok(&spoon(&TEN, None));
    // 4.9 - 0.15 - 0.05 and 5.5 + 0.15 + 0.05
    assert_eq!(sheet["spoon"]["grams"], json!(["4.7 g", "5.2 g", "5.7 g"]));
    assert_eq!(sheet["holds"], json!(["4.70", "5.20", "5.70"]));
    assert_eq!(sheet["together"], false);
}

/// Ten together: the mean is exact and the spread is a judgement of 15 %.
#[test]
fn ten_spoons_together() {
    let sheet = ok(&spoon(&["52 g"], Some(10)));
    assert_eq!(sheet["spoon"]["grams"], json!(["4.415 g", "5.2 g", "5.985 g"]));
    assert_eq!(sheet["together"], true);
    for wrong in [
        spoon(&["52 g"], None),
        spoon(&[], None),
        spoon(&["52 g", "51 g"], Some(10)),
    ] {
        assert_eq!(problems(&wrong)[0]["field"], "weights");
    }
}

/// A spoon that was weighed stands in place of the general range, for its own kind of cure and its own size alone.
#[test]
fn ones_own_spoon_replaces_the_range() {
    let own = ok(&spoon(&TEN, None))["spoon"].clone();
    let dose = |amount: &str, nitrite: &str, own: Option<&Value>| {
        let mut settings = settings("0.1 g");
        if let Some(own) = own {
            settings["spoons"] = json!([own]);
        }
        ok(
            &json!({"check_dose": {"method": "rub", "green": "2200 g", "put_in": {"amount": amount, "nitrite": nitrite}, "settings": settings}}),
        )
    };
    assert_eq!(dose("1 tsp", "6.25 %", None)["word"], "may_be_over");
    let mine = dose("1 tsp", "6.25 %", Some(&own));
    assert_eq!(mine["word"], "in_range");
    assert!((exact(&mine, "nitrite")[1] - 5.2 * 62_500.0 / 2200.0).abs() < 0.001);
    for (amount, nitrite) in [("1 tbsp", "6.25 %"), ("1 tsp", "0.5 %")] {
        assert_eq!(
            dose(amount, nitrite, Some(&own))["nitrite"],
            dose(amount, nitrite, None)["nitrite"],
            "{amount} of {nitrite}"
        );
    }
}

/// A scale fits within its step; water from a jug is known to 3 % (judgement) and weighs 0.997 g to the millilitre in
/// air at 20 °C (CRC Handbook, published).
#[test]
fn a_scale_is_held_against_what_is_known() {
    let ask =
        |known: &str, reads: &str| ok(&json!({"scale": {"checks": [[known, reads]], "settings": settings("0.1 g")}}));
    for (known, reads, fits) in [
        ("100 g", "100.1 g", true),
        ("100 g", "100.2 g", false),
        ("100 g", "99.8 g", false),
        ("50 ml", "49.9 g", true),
        ("50 ml", "51.4 g", true),
        ("50 ml", "52 g", false),
    ] {
        assert_eq!(ask(known, reads)["fits"], fits, "{known} shows {reads}");
    }
    let wrong = json!({"scale": {"checks": [["a coin", "8 g"]], "settings": settings("0.1 g")}});
    assert_eq!(problems(&wrong)[0]["field"], "checks[0]");
}

/// 500 g of meat on a scale of 1 g: neat 94 to 219 ppm, thinned ten times 149 to 163 (computed; common practice).
#[test]
fn thinning_on_a_coarse_scale() {
    for in_water in [false, true] {
        let sheet = ok(
            &json!({"stock": {"in_water": in_water, "nitrite": "6.25 %", "aim": "156.25 ppm", "meat": "500 g", "settings": settings("1 g")}}),
        );
        let ends = |i: usize| -> Vec<f64> {
            let ends = sheet["ranges"][i].as_array().expect("a range");
            ends.iter().filter_map(Value::as_f64).collect()
        };
        let (neat, thinned) = (ends(0), ends(1));
        // 1.25 g shows as 1 g: 0.5 to 1.5 g.
        assert_eq!(neat, [62.0, 188.0]);
        // 12 g of it, from 20 g of cure in 200 g: 11.5 x 0.9725 to 12.5 x 1.0275 of 0.625 %.
        let end = |grams: f64, off: f64, green: f64| grams * off * 6250.0 / green;
        assert_eq!(
            thinned,
            [end(11.5, 0.9725, 500.5).floor(), end(12.5, 1.0275, 499.5).ceil()]
        );
        assert_eq!(sheet["take"]["text"], "12\u{202f}g".replace('\u{202f}', " "));
        let printed = |nitrite: &str| json!({"nitrite": nitrite, "nitrate": null});
        assert_eq!(
            (&sheet["strength"], &sheet["neat"]),
            (&printed("0.625 %"), &printed("6.25 %"))
        );
    }
}

/// On the weigh-out too: 3.5 g of cure in spoons of 4.7 to 5.7 g, usually 5.2.
#[test]
fn ones_own_spoon_stands_on_the_list() {
    let own = ok(&spoon(&TEN, None))["spoon"].clone();
    let mut settings = settings("0.1 g");
    settings["spoons"] = json!([own]);
    let recipe = cure_reckoner_tests::rub("6.25 %", "150 ppm", "2.2 %");
    let batch = cure_reckoner_tests::batch(&recipe, 16, "1480 g");
    let sheet = ok(&json!({"weigh_out": {"batch": batch, "settings": settings}}));
    let told = &sheet["bowl"][0]["spoon"];
    assert_eq!(
        (told["low"].as_str(), told["typical"].as_str(), told["high"].as_str()),
        (Some("0.61"), Some("0.67"), Some("0.74"))
    );
    assert_eq!(told["source"]["is"], "own");
    assert_eq!(sheet["bowl"][1]["spoon"]["source"]["is"], "table");
}

fn made(in_water: bool, nitrate: &str) -> Value {
    let ask = json!({"stock": {
        "in_water": in_water, "nitrite": "6.25 %", "nitrate": nitrate, "aim": "150 ppm", "meat": "1000 g",
        "settings": settings("1 g")
    }});
    ok(&ask)["mix"].clone()
}

/// A tenth of the packet on a 1 g scale: 20 g of cure and 180 g of salt, each known to half a gram, so 0.5 / 20 +
/// 0.5 / 200 = 2.75 % either way (computed).
#[test]
fn a_mix_is_kept_with_how_it_was_made() {
    let mix = made(false, "4 %");
    assert_eq!((&mix["nitrite"], &mix["nitrate"]), (&json!("0.625 %"), &json!("0.4 %")));
    assert_eq!(mix["made"], json!({"parts": 10, "in_water": false, "off": "2.75 %"}));
    let mut kept = settings("1 g");
    kept["mixes"] = json!([mix, made(true, "0 %")]);
    assert_eq!(ok(&json!({"check": {"settings": kept}}))["good"], true);
    kept["mixes"][0].as_object_mut().expect("a mix").remove("made");
    assert_eq!(
        problems(&json!({"check": {"settings": kept}}))[0]["field"],
        "settings.mixes"
    );
    // One part in ten of it cannot be stronger than a cure is.
    let mut recipe = cure_reckoner_tests::rub("6.25 %", "150 ppm", "2.2 %");
    recipe["cures"] = json!([made(false, "0 %")]);
    recipe["cures"][0]["nitrite"] = json!("6.25 %");
    assert_eq!(
        problems(&json!({"check": {"recipe": recipe}}))[0]["field"],
        "recipe.cures[0].nitrite"
    );
    recipe["cures"][0]["nitrite"] = json!("0.625 %");
    recipe["cures"][0]["item"] = json!("cure-1");
    assert_eq!(
        problems(&json!({"check": {"recipe": recipe}}))[0]["field"],
        "recipe.cures[0].item"
    );
}

/// 1000 g of meat at 150 ppm take 24 g of a mix of 0.625 %. A premix brings 24 x 0.99375 g of salt, a stock a tenth of
/// what a packet has, 24 x 0.09375 g (computed); each is as uncertain as it was made. The link carries it all.
#[test]
fn a_mix_is_the_cure_of_a_recipe() {
    for (in_water, name, brings) in [(false, "premix", 24.0 * 0.99375), (true, "stock", 24.0 * 0.09375)] {
        let mut recipe = cure_reckoner_tests::rub("6.25 %", "150 ppm", "3 %");
        recipe["cures"] = json!([made(in_water, "0 %")]);
        let sheet = cure_reckoner_tests::weigh_out(&cure_reckoner_tests::batch(&recipe, 6, "1000 g"), "0.01 g");
        assert_eq!(
            sheet["bowl"][0]["cure"],
            json!({"is": name, "strength": {"nitrite": "0.625 %", "nitrate": null}})
        );
        assert_eq!(sheet["bowl"][0]["add"]["text"], "24.00 g");
        let salt: f64 = sheet["bowl"][1]["exact"]
            .as_str()
            .and_then(|t| t.trim_end_matches(" g").parse().ok())
            .expect("grams");
        assert!((salt - (30.0 - brings)).abs() < 1e-6, "{name}: {salt}");
        let range = exact(&sheet["verdict"], "nitrite");
        assert!((range[1] - 150.0).abs() < 1e-4, "{range:?}");
        // Half a step of the scale on 24 g and on 1000 g beside the 2.75 %.
        assert!((range[0] - 150.0 * 0.9725).abs() < 0.05, "{range:?}");
        assert!((range[2] - 150.0 * 1.0275).abs() < 0.05, "{range:?}");
        // Ticked it is the same mix.
        let mut batch = cure_reckoner_tests::batch(&recipe, 6, "1000 g");
        let mut tick = sheet["bowl"][0]["tick"].clone();
        tick["at"] = json!(1);
        batch["ticks"] = json!([tick]);
        let ticked = cure_reckoner_tests::weigh_out(&batch, "0.01 g");
        assert_eq!(ticked["verdict"]["nitrite"], sheet["verdict"]["nitrite"]);
        assert_eq!(ticked["bowl"][1]["exact"], sheet["bowl"][1]["exact"]);
        assert_eq!(ticked["bowl"][0]["cure"], sheet["bowl"][0]["cure"]);
        let linked = ok(&json!({"link": {"recipe": recipe, "base": "https://larder.example/"}}));
        let opened = ok(&json!({"open_link": {"text": linked["code"]}}))["recipe"].clone();
        assert_eq!(opened["cures"], recipe["cures"]);
    }
}

/// In what is on the meat already the mix is as uncertain, and is told as what it is.
#[test]
fn a_mix_is_checked_as_it_was_made() {
    for (in_water, of) in [(false, "premix"), (true, "stock")] {
        let mix = made(in_water, "0 %");
        let verdict = ok(&json!({"check_dose": {
            "method": "ground", "green": "1000 g", "settings": settings("0.01 g"),
            "put_in": {"amount": "24 g", "nitrite": mix["nitrite"], "made": mix["made"]}
        }}));
        let range = exact(&verdict, "nitrite");
        assert!((range[0] - 150.0 * 0.9725).abs() < 0.05 && (range[2] - 150.0 * 1.0275).abs() < 0.05);
        let told = &verdict["says"][0]["portions"][0];
        assert_eq!(
            (&told["said"], &told["of"], &told["neat"]),
            (&json!("24 g"), &json!(of), &json!("2.4"))
        );
    }
}
