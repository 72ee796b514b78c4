//! No recipe and no scale gives a dose over the limit unmarked; scaling is linear; parts sum to the whole.

use super::recipes::{recipe, step};
use cure_reckoner_tests::{answer, batch, exact, settings, weigh_out};
use proptest::prelude::*;
use serde_json::{Value, json};
use std::collections::BTreeSet;

fn grams(text: &Value) -> f64 {
    text.as_str()
        .and_then(|t| t.trim_end_matches(" g").parse().ok())
        .expect("grams")
}

fn per_cent(text: &Value) -> f64 {
    text.as_str()
        .and_then(|t| t.trim_end_matches(" %").parse().ok())
        .expect("per cent")
}

/// The most nitrite that the bowl can hold by the scale's half-step, in ppm, worked out apart from the crate, from
/// the weights on the sheet alone.
fn most_ppm(recipe: &Value, sheet: &Value, green: f64, step: f64, dissolves: impl Fn(&str) -> bool) -> f64 {
    let all = || {
        sheet["bowl"]
            .as_array()
            .into_iter()
            .chain(sheet["vessel"].as_array())
            .flatten()
    };
    let cures = || all().filter(|l| !l["cure"].is_null());
    let nitrite: f64 = cures()
        .zip(recipe["cures"].as_array().expect("cures"))
        .map(|(line, cure)| (grams(&line["weight"]) + step / 2.0) * per_cent(&cure["nitrite"]) * 1e4)
        .sum();
    let pickle: f64 = all()
        .filter(|l| !l["cure"].is_null() || dissolves(l["id"].as_str().unwrap_or_default()))
        .map(|l| grams(&l["weight"]))
        .sum();
    let equal = green - step / 2.0 + pickle;
    let take = recipe.get("take").map_or(0.0, per_cent) / 100.0;
    match recipe["method"].as_str() {
        Some("cover_brine") => nitrite / equal,
        Some("pumped") => nitrite * take / pickle,
        Some("pumped_and_covered") => nitrite * take / pickle + nitrite / equal,
        // No thickness is known, so it may be either.
        Some("pick_up") => (nitrite * take / pickle).max(nitrite / equal),
        // The meat block is the meat and the fat that is ground in: FSIS Directive 7620.3 (1995), p. 15, quoted.
        Some("ground") => {
            let lines = recipe["lines"].as_array().into_iter().flatten().enumerate();
            let fats = lines.filter(|(_, line)| line["item"].as_str().is_some_and(|item| item.starts_with("fat-")));
            let ids: Vec<String> = fats.map(|(at, _)| format!("line:{at}")).collect();
            let fat: f64 = all()
                .filter(|l| ids.iter().any(|id| l["id"] == *id))
                .map(|l| grams(&l["weight"]))
                .sum();
            nitrite / (green - step / 2.0 + fat)
        }
        _ => nitrite / (green - step / 2.0),
    }
}

proptest! {
    #![proptest_config(super::cases(400))]

    #[test]
    fn no_dose_over_the_limit_is_unmarked(recipe in recipe(), step in step(), tenths in 200u32..400_000, pieces in 1u32..40) {
        let green = f64::from(tenths) / 10.0;
        let batch = batch(&recipe, pieces, &format!("{green} g"));
        let answer = answer(&json!({"weigh_out": {"batch": batch, "settings": settings(step)}}));
        // A cure too weak for its aim in this brine is refused, which marks it too.
        if let Some(sheet) = answer.get("ok") {
            let dissolves = |id: &str| {
                let i: Option<usize> = id.strip_prefix("line:").and_then(|i| i.parse().ok());
                let key = i.and_then(|i| recipe["lines"][i]["item"].as_str()).unwrap_or_default();
                cure_reckoner::pantry::ingredient(key).is_some_and(|i| i.group.dissolves())
            };
            let step = grams(&json!(step));
            let most = most_ppm(&recipe, sheet, green, step, dissolves);
            let verdict = &sheet["verdict"];
            if most > 200.0 + 1e-6 {
                prop_assert_eq!(&verdict["outcome"], "over", "{} ppm", most);
                prop_assert_eq!(&verdict["held"], true);
                prop_assert_eq!(&sheet["can_tick"], false);
            }
            if verdict["outcome"] == "in_range" {
                prop_assert!(most <= 200.0 + 1e-6 && verdict["mark"] == "ok");
            }
        } else {
            prop_assert_eq!(&answer["problems"][0]["code"], "conflict");
        }
    }

    #[test]
    fn the_cure_is_never_rounded_up(recipe in recipe(), step in step(), green in 20u32..40_000) {
        let answer = answer(&json!({"weigh_out": {"batch": batch(&recipe, 3, &format!("{green} g")), "settings": settings(step)}}));
        for line in answer["ok"]["bowl"].as_array().into_iter().flatten().filter(|l| !l["cure"].is_null()) {
            let (weight, exact) = (grams(&line["weight"]), grams(&line["exact"]));
            prop_assert!(weight <= exact + 1e-9 && exact - weight < grams(&json!(step)) + 1e-6, "{} of {}", weight, exact);
        }
    }

    #[test]
    fn the_running_total_is_the_sum_of_its_parts(recipe in recipe(), step in step(), green in 20u32..9_000) {
        let answer = answer(&json!({"weigh_out": {"batch": batch(&recipe, 3, &format!("{green} g")), "settings": settings(step)}}));
        let number = |figure: &Value| figure["num"].as_str().and_then(|t| t.replace('\u{202f}', "").parse::<f64>().ok()).expect("a number");
        let mut sum = 0.0;
        for line in answer["ok"]["bowl"].as_array().into_iter().flatten() {
            sum += number(&line["add"]);
            prop_assert!((sum - number(&line["reads"])).abs() < 1e-6);
        }
        if answer["ok"].is_object() {
            prop_assert!((sum - number(&answer["ok"]["bowl_total"])).abs() < 1e-6);
        }
    }

    #[test]
    fn scaling_is_linear(recipe in recipe(), green in 100u32..4_000, times in 2u32..9) {
        // By the piece, twice the meat must be twice the pieces.
        let once = answer(&json!({"weigh_out": {"batch": batch(&recipe, 2, &format!("{green} g")), "settings": settings("0.01 g")}}));
        let more = answer(&json!({"weigh_out": {"batch": batch(&recipe, 2 * times, &format!("{} g", green * times)), "settings": settings("0.01 g")}}));
        prop_assert_eq!(once["ok"].is_object(), more["ok"].is_object());
        let lines = |answer: &Value| -> Vec<Value> {
            ["bowl", "vessel"].iter().flat_map(|list| answer["ok"][list].as_array().cloned().unwrap_or_default()).collect()
        };
        let (once, more) = (lines(&once), lines(&more));
        let (mut salts, mut more_salts) = (0.0, 0.0);
        let ids: BTreeSet<&str> = once.iter().chain(&more).filter_map(|line| line["id"].as_str()).collect();
        for id in ids {
            let of = |lines: &[Value]| lines.iter().find(|line| line["id"] == id).cloned().unwrap_or_default();
            let (a, b) = (of(&once), of(&more));
            let exact = |line: &Value| if line.is_null() { 0.0 } else { grams(&line["exact"]) };
            let (a_exact, b_exact) = (exact(&a), exact(&b));
            if a["cure"].is_object() || (a["why"].is_null() && b["why"].is_null() && !a.is_null() && !b.is_null()) {
                prop_assert!((a_exact * f64::from(times) - b_exact).abs() < 1e-4, "{} x {} and {}", a_exact, times, b_exact);
            } else {
                salts += a_exact;
                more_salts += b_exact;
            }
        }
        // The salts together are what is left after the cure's salt as it was rounded to the scale; which of them has less
        // of it may turn on a hundredth of a gram.
        let off = (salts * f64::from(times) - more_salts).abs();
        prop_assert!(off <= 0.02 * f64::from(times + 1), "{} x {} and {}", salts, times, more_salts);
    }

    #[test]
    fn more_cure_never_lowers_the_dose(first in 1u32..2_000, more in 0u32..2_000, green in 100u32..9_000) {
        let ask = |tenths: u32| {
            let amount = format!("{}.{} g", tenths / 10, tenths % 10);
            let request = json!({"check_dose": {"method": "rub", "green": format!("{green} g"), "put_in": {"amount": amount, "nitrite": "6.25 %"}, "settings": settings("0.1 g")}});
            exact(&answer(&request)["ok"], "nitrite")
        };
        let (less, more) = (ask(first), ask(first + more));
        prop_assert!(less.iter().zip(&more).all(|(a, b)| a <= b));
        prop_assert!(less[0] <= less[1] && less[1] <= less[2]);
    }

    #[test]
    fn more_cure_never_lowers_the_dose_in_any_brine(first in 1u32..2_000, more in 0u32..2_000, green in 100u32..9_000, take in 1u32..40, method in 0usize..4) {
        let method = ["cover_brine", "pick_up", "pumped", "pumped_and_covered"][method];
        let ask = |tenths: u32| {
            let amount = format!("{}.{} g", tenths / 10, tenths % 10);
            let mut ask = json!({"method": method, "green": format!("{green} g"), "water": "1000 g", "dissolved": "80 g", "put_in": {"amount": amount, "nitrite": "6.25 %"}, "settings": settings("0.1 g")});
            if method != "cover_brine" {
                ask["take"] = json!(format!("{take} %"));
            }
            exact(&answer(&json!({"check_dose": ask}))["ok"], "nitrite")
        };
        let (less, more) = (ask(first), ask(first + more));
        prop_assert!(less.iter().zip(&more).all(|(a, b)| a <= b), "{:?} {:?}", less, more);
    }

    #[test]
    fn a_wider_spoon_never_narrows_the_verdict(low in 20u32..80, wide in 0u32..40, under in 0u32..15, over in 0u32..40, green in 300u32..9_000, spoons in 1u32..5) {
        let ask = |low: u32, high: u32| {
            let mut settings = settings("0.1 g");
            let grams = |tenths: u32| format!("{}.{} g", tenths / 10, tenths % 10);
            settings["spoons"] = json!([{"item": "cure-1", "grams": [grams(low), grams((low + high) / 2), grams(high)]}]);
            answer(&json!({"check_dose": {"method": "rub", "green": format!("{green} g"), "put_in": {"amount": format!("{spoons} tsp"), "nitrite": "6.25 %"}, "settings": settings}}))["ok"].clone()
        };
        let (narrow, wider) = (ask(low, low + wide), ask(low - under, low + wide + over));
        let ([a, _, b], [c, _, d]) = (exact(&narrow, "nitrite"), exact(&wider, "nitrite"));
        prop_assert!(c <= a && b <= d);
        // What is not in range does not become so, and what may be over does not become anything milder.
        if narrow["outcome"] != "in_range" {
            prop_assert_ne!(&wider["outcome"], "in_range");
        }
        if narrow["outcome"] == "over" {
            prop_assert_eq!(&wider["outcome"], "over");
        }
        // What is sure with the wider one was sure with the narrower, and the same.
        if wider["sure"] == true {
            prop_assert_eq!(&narrow["outcome"], &wider["outcome"]);
            prop_assert_eq!(&narrow["sure"], true);
        }
    }
}

/// Weights do not depend on the units they are shown in.
#[test]
fn units_change_nothing_that_is_weighed() {
    let recipe = cure_reckoner_tests::rub("6.25 %", "150 ppm", "2.2 %");
    let metric = weigh_out(&batch(&recipe, 4, "7 lb 3 oz"), "0.1 g");
    let us = answer(
        &json!({"weigh_out": {"batch": batch(&recipe, 4, "7 lb 3 oz"), "settings": {"units": "us", "scale_step": "0.1 g", "profile": "us-home"}}}),
    );
    assert_eq!(metric["bowl"], us["ok"]["bowl"]);
    assert_eq!(us["ok"]["green"]["text"], "7 lb 3 oz");
    assert_eq!(metric["verdict"]["nitrite"], us["ok"]["verdict"]["nitrite"]);
}
