//! The main job, as the page shows it.

use cure_reckoner_tests::{batch, exact, next_step, ok, problems, rub, settings, slips_asked, texts, weigh_out};
use serde_json::{Value, json};

/// The demo batch: 16 breasts, 1480 g. Every figure follows from the proportions of the recipe (invented, our own) and
/// FSIS Directive 7620.3 (1995), p. 24 (quoted).
#[test]
fn the_demo_batch() {
    let demo = ok(&json!({"starters": {}}))["demo"].clone();
    let sheet = weigh_out(&demo, "0.1 g");
    assert_eq!(sheet["green"]["text"], "1480 g");
    assert_eq!(sheet["pieces"], 16);
    assert_eq!(
        texts(&sheet, "bowl", "add"),
        ["3.5 g", "29.3 g", "11.8 g", "5.9 g", "3.0 g"]
    );
    assert_eq!(
        texts(&sheet, "bowl", "reads"),
        ["3.5 g", "32.8 g", "44.6 g", "50.5 g", "53.5 g"]
    );
    assert_eq!(sheet["bowl_total"]["text"], "53.5 g");
    assert_eq!(sheet["bowl"][0]["exact"], "3.552 g");
    assert_eq!(sheet["verdict"]["word"], "in_range");
    // 3.5 g ± 0.05 g of 6.25 % on 1480 g ± 0.15 g
    let [low, typical, high] = exact(&sheet["verdict"], "nitrite");
    for (ours, by_hand) in [
        (low, 3.45 * 62500.0 / 1480.15),
        (typical, 3.5 * 62500.0 / 1480.0),
        (high, 3.55 * 62500.0 / 1479.85),
    ] {
        assert!((ours - by_hand).abs() < 0.0001, "{ours} and {by_hand}");
    }
    assert_eq!(sheet["can_tick"], true);
}

/// One tablespoon put in where 3.5 g belong: over, with its range, its likely cause and the next step; and held.
#[test]
fn the_tablespoon_slip() {
    let mut slipped = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 16, "1480 g");
    slipped["put_in"] = json!({"amount": "1 tbsp", "nitrite": "6.25 %"});
    let sheet = weigh_out(&slipped, "0.1 g");
    let verdict = &sheet["verdict"];
    assert_eq!(
        (verdict["outcome"].as_str(), verdict["sure"].as_bool()),
        (Some("over"), Some(true))
    );
    assert_eq!(
        (verdict["nitrite"]["low"].as_u64(), verdict["nitrite"]["high"].as_u64()),
        (Some(532), Some(1052))
    );
    assert_eq!(slips_asked(verdict), ["tablespoon"]);
    assert_eq!(verdict["next"][0]["is"], "do_not_taste");
    assert_eq!(
        (verdict["held"].as_bool(), sheet["can_tick"].as_bool()),
        (Some(true), Some(false))
    );
    let next =
        ok(&json!({"next": {"batches": [{"id": "b", "batch": slipped}], "now": 0, "settings": settings("0.1 g")}}));
    assert_eq!(next["batches"][0]["held"], true);
    assert_eq!(
        next["jobs"].as_array().map(Vec::len),
        Some(0),
        "nothing is to be done with a held batch"
    );
}

/// A held batch is released by its numbers alone: a smaller weighed amount.
#[test]
fn held_until_the_numbers_change() {
    let mut held = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 16, "1480 g");
    held["put_in"] = json!({"amount": "1 tbsp", "nitrite": "6.25 %"});
    held["ticks"] = json!([{"of": "rub", "at": 1000}]);
    assert_eq!(weigh_out(&held, "0.1 g")["verdict"]["held"], true);
    held["put_in"] = json!({"amount": "3.5 g", "nitrite": "6.25 %"});
    assert_eq!(weigh_out(&held, "0.1 g")["verdict"]["held"], false);
}

/// More meat, by the weight that the advice names, brings the dose to the middle between the least and the limit, and not to
/// the limit: what is weighed again may be a little off.
#[test]
fn more_meat_brings_the_dose_to_the_middle() {
    let ask = |green: &str| {
        ok(
            &json!({"check_dose": {"method": "rub", "green": green, "put_in": {"amount": "17 g", "nitrite": "6.25 %"}, "settings": settings("0.1 g")}}),
        )
    };
    let advised = next_step(&ask("1480 g"), "more_meat")["weight"].clone();
    let extra: f64 = advised
        .as_str()
        .and_then(|w| w.strip_suffix(" g")?.parse().ok())
        .expect("a weight in the advice");
    let then = ask(&format!("{} g", 1480.0 + extra));
    let [low, _, high] = exact(&then, "nitrite");
    assert!((low.midpoint(high) - 160.0).abs() < 1.5, "{low} to {high}");
    assert!(low >= 120.0 && high <= 200.0);
    assert_eq!(then["outcome"], "in_range");
}

/// A list that is over names the aim that would do on this scale.
#[test]
fn an_aim_that_does() {
    let over = batch(&rub("6.25 %", "234 ppm", "2.2 %"), 16, "2300 g");
    assert_eq!(
        weigh_out(&over, "0.1 g")["verdict"]["next"][0],
        json!({"is": "lower_aim", "aim": 150, "within": {"low": 120, "high": 200}})
    );
    let coarse = batch(&rub("6.25 %", "234 ppm", "2.2 %"), 4, "300 g");
    assert_eq!(
        weigh_out(&coarse, "1 g")["verdict"]["next"][0],
        json!({"is": "lower_aim", "aim": null, "within": {"low": 120, "high": 200}})
    );
}

/// Cure to add, by the weight that the advice names, brings the whole range between the least and the limit.
#[test]
fn more_cure_brings_it_in_range() {
    let ask = |amount: &str| {
        ok(
            &json!({"check_dose": {"method": "rub", "green": "2 kg", "put_in": {"amount": amount, "nitrite": "6.25 %"}, "settings": settings("0.1 g")}}),
        )
    };
    let first = ask("2 g");
    assert_eq!(first["outcome"], "too_little");
    let advised = &first["next"][0];
    assert_eq!(advised["is"], "more_cure");
    let add: f64 = advised["grams"]
        .as_str()
        .and_then(|w| w.parse().ok())
        .expect("a weight in the advice");
    assert_eq!(ask(&format!("{} g", 2.0 + add))["outcome"], "in_range", "{advised}");
}

/// A 1 g scale and half a kilogram: too coarse, with its range, and a premix as the way out that comes in range.
#[test]
fn a_coarse_scale_and_its_way_out() {
    let mut small = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 6, "500 g");
    let sheet = weigh_out(&small, "1 g");
    let coarse = &sheet["coarse"];
    assert_eq!((&coarse["cure"], &coarse["step"]), (&json!("1.2 g"), &json!("1 g")));
    assert_eq!((coarse["low"].as_u64(), coarse["high"].as_u64()), (Some(62), Some(188)));
    assert_eq!(coarse["premix_parts"], 10);
    small["premix"] = json!(true);
    let sheet = weigh_out(&small, "1 g");
    assert_eq!(sheet["premix"]["parts"], 10);
    assert_eq!(
        (
            sheet["premix"]["cure"]["text"].as_str(),
            sheet["premix"]["salt"]["text"].as_str()
        ),
        (Some("20 g"), Some("180 g"))
    );
    assert_eq!(texts(&sheet, "bowl", "add")[0], "12 g");
    assert_eq!(sheet["verdict"]["outcome"], "in_range");
    assert!(sheet["coarse"].is_null());
}

/// What is added to a premix is called a premix: so many grams of the bag itself would be ten times too much.
#[test]
fn more_of_a_premix_is_a_premix() {
    let more = |weight: &str, nitrite: &str, premix: bool| -> Value {
        let mut weak = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 1, "2400 g");
        weak["premix"] = json!(premix);
        weak["ticks"] = json!([
            {"of": "cure:0", "at": 0, "weight": weight, "nitrite": nitrite, "nitrate": "0 %", "step": "0.1 g"},
            {"of": "rub", "at": 0}
        ]);
        let verdict = weigh_out(&weak, "0.1 g")["verdict"].clone();
        assert_eq!(verdict["outcome"], "too_little", "{verdict}");
        assert_eq!(verdict["next"][0]["is"], "more_cure");
        verdict["next"][0]["of"].clone()
    };
    let (neat, thinned) = (more("2.6 g", "6.25 %", false), more("26 g", "0.625 %", true));
    assert_eq!((neat, thinned), (json!("cure"), json!("premix")));
}

/// Pieces without a weight make a range, and nothing can be ticked until they are weighed.
#[test]
fn a_limit_of_birds_not_yet_weighed() {
    let mut planned = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 12, "1 g");
    planned["pieces"][0].as_object_mut().expect("a piece").remove("weight");
    let sheet = weigh_out(&planned, "0.1 g");
    // 12 half breasts of mallard at 61, 109 and 168 g (from memory).
    assert_eq!(sheet["green"]["text"], "1308 g");
    assert_eq!(
        (
            sheet["green_range"][0]["text"].as_str(),
            sheet["green_range"][1]["text"].as_str()
        ),
        (Some("732 g"), Some("2016 g"))
    );
    assert_eq!(
        (sheet["weighed"].as_bool(), sheet["can_tick"].as_bool()),
        (Some(false), Some(false))
    );
    assert_eq!(sheet["verdict"]["word"], "cannot_say_yet");
    let range = &sheet["bowl"][0]["range"];
    assert_eq!(
        (range[0]["text"].as_str(), range[1]["text"].as_str()),
        (Some("1.7 g"), Some("4.8 g"))
    );
}

/// What was ticked stays what it was, and the verdict counts it, when the pieces change afterwards.
#[test]
fn a_tick_keeps_its_weight() {
    let mut begun = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 16, "1480 g");
    begun["ticks"] = json!([{"of": "cure:0", "at": 1000, "weight": "3.5 g", "nitrite": "6.25 %", "nitrate": "0 %"}]);
    begun["pieces"][0]["weight"] = json!("1000 g");
    let sheet = weigh_out(&begun, "0.1 g");
    assert_eq!(sheet["bowl"][0]["add"]["text"], "3.5 g");
    assert_eq!(sheet["bowl"][0]["ticked"], 1000);
    let changed = &sheet["bowl"][0]["changed"];
    assert_eq!(
        (&changed["is"]["text"], &changed["wanted"]["text"]),
        (&json!("3.5 g"), &json!("2.4 g"))
    );
    assert_eq!(sheet["verdict"]["outcome"], "over", "3.5 g on 1 kg is 219 ppm");
}

/// The five recipes that come with the page are in range on a 0.1 g scale for a kilogram.
#[test]
fn starters_are_in_range() {
    let recipes = ok(&json!({"starters": {}}))["recipes"]
        .as_array()
        .expect("recipes")
        .clone();
    assert_eq!(recipes.len(), 5);
    for recipe in recipes {
        let card = ok(&json!({"card": {"recipe": recipe, "settings": settings("0.1 g")}}));
        assert_eq!(card["verdict"]["outcome"], "in_range", "{}", recipe["name"]);
        assert!(!card["cautions"].as_array().expect("cautions").is_empty());
    }
}

/// Wrong forms are answers, with their place.
#[test]
fn wrong_requests_are_answers() {
    let place = |request: Value| {
        let found = problems(&request);
        (
            found[0]["code"].as_str().unwrap_or_default().to_owned(),
            found[0]["field"].as_str().unwrap_or_default().to_owned(),
        )
    };
    let mut bad = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 16, "1480 g");
    bad["recipe"]["lines"][0]["share"]["amount"] = json!("2,200 %");
    assert_eq!(
        place(json!({"weigh_out": {"batch": bad, "settings": settings("0.1 g")}})),
        ("bad_form".into(), "batch.recipe.lines[0].share".into())
    );
    let good = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 16, "1480 g");
    assert_eq!(
        place(json!({"weigh_out": {"batch": good, "settings": settings("0.3 g")}})),
        ("unknown".into(), "settings.scale_step".into())
    );
    assert_eq!(
        place(json!({"card": {"recipe": rub("65 %", "150 ppm", "2.2 %"), "settings": settings("0.1 g")}})),
        ("too_large".into(), "recipe.cures[0].nitrite".into())
    );
    assert_eq!(place(json!({"nonsense": {}})).0, "bad_form");
}
