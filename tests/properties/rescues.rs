//! What the advice promises holds when it is done and judged again: each step with a figure ends in range.

use super::recipes::{recipe, step};
use cure_reckoner_tests::{answer, batch, settings};
use proptest::prelude::*;
use serde_json::{Value, json};

/// A dose that went in somehow.
#[derive(Clone, Debug)]
struct Dose {
    ask: Value,
    green: f64,
}

impl Dose {
    fn verdict(&self) -> Value {
        answer(&json!({"check_dose": self.ask}))["ok"].clone()
    }

    /// The same with other words for one of its parts.
    fn with(&self, part: &str, value: Value) -> Value {
        let mut ask = self.ask.clone();
        ask[part] = value;
        answer(&json!({"check_dose": ask}))["ok"].clone()
    }

    /// Grams of water in its brine.
    fn water(&self) -> f64 {
        let water = self.ask["water"]
            .as_str()
            .and_then(|w| w.trim_end_matches(" g").parse().ok());
        water.expect("a brine")
    }

    /// The same with so many grams of a cure beside what is in.
    fn with_cure(&self, grams: f64, nitrite: &Value, nitrate: &Value) -> Value {
        let more = json!({"amount": format!("{grams:.3} g"), "nitrite": nitrite, "nitrate": nitrate});
        self.with("also", more)
    }
}

const METHODS: [&str; 6] = [
    "rub",
    "ground",
    "cover_brine",
    "pick_up",
    "pumped",
    "pumped_and_covered",
];

fn dose() -> impl Strategy<Value = Dose> {
    let amount = prop_oneof![
        (1u32..400).prop_map(|g| format!("{}.{} g", g / 10, g % 10)),
        prop::sample::select(vec!["1/4 tsp", "1/2 tsp", "1 tsp", "2 tsp", "1 tbsp", "2 tbsp"]).prop_map(str::to_owned),
    ];
    let strength = prop::sample::select(vec![
        ("6.25 %", "0 %"),
        ("5.88 %", "0 %"),
        ("6.25 %", "4 %"),
        ("1 %", "5 %"),
        ("0.5 %", "0.5 %"),
        ("0 %", "0 %"),
    ]);
    let profile = prop::sample::select(vec!["us-home", "us-home", "ca", "eu", "codex", "us-plant"]);
    let units = prop::sample::select(vec!["metric", "us"]);
    let step = prop::sample::select(vec!["5 g", "1 g", "0.1 g", "0.01 g"]);
    (
        amount,
        strength,
        (units, profile, prop::option::of((1u32..60, 1u32..200))),
        step,
        300u32..8_000,
        prop::sample::select(METHODS.to_vec()),
    )
        .prop_map(
            |(amount, (nitrite, nitrate), (units, profile, stay), step, green, method)| {
                let mut ask = json!({
                    "method": method,
                    "green": format!("{green} g"),
                    "put_in": {"amount": amount, "nitrite": nitrite, "nitrate": nitrate},
                    "settings": {"units": units, "scale_step": step, "profile": profile},
                });
                if !["rub", "ground"].contains(&method) {
                    ask["water"] = json!(format!("{} g", green / 2));
                    ask["dissolved"] = json!(format!("{} g", green / 25));
                    if method != "cover_brine" {
                        ask["take"] = json!("10 %");
                    }
                    if let (Some((thick, hours)), "pick_up") = (stay, method) {
                        ask["thickness"] = json!(format!("{thick} mm"));
                        ask["stays"] = json!(format!("{hours} h"));
                    }
                }
                Dose {
                    ask,
                    green: f64::from(green),
                }
            },
        )
}

/// The first advice whose head holds this.
fn advice(verdict: &Value, part: &str) -> Option<(String, String)> {
    let all = verdict["next"].as_array()?;
    let found = all
        .iter()
        .find(|a| a["head"].as_str().is_some_and(|h| h.contains(part)))?;
    Some((found["head"].as_str()?.to_owned(), found["text"].as_str()?.to_owned()))
}

/// The weight that stands between two pieces of a text, as a person would type it again, in grams.
fn weight(text: &str, before: &str, behind: &str) -> f64 {
    let (_, rest) = text.split_once(before).expect("before it");
    let (weight, _) = rest.split_once(behind).expect("behind it");
    let read = cure_reckoner::quantity::Mass::read(&weight.replace('\u{202f}', ""), None).expect("a weight");
    read.base().to_string().parse().expect("grams")
}

/// The first figures of a text.
fn figures(text: &str) -> Vec<f64> {
    text.split(' ')
        .filter_map(|word| word.trim_end_matches(':').parse().ok())
        .collect()
}

proptest! {
    #![proptest_config(super::cases(1500))]

    #[test]
    fn more_meat_ends_in_range(dose in dose()) {
        if let Some((head, _)) = advice(&dose.verdict(), " more raw meat.") {
            let then = dose.with("green", json!(format!("{:.4} g", dose.green + weight(&head, "Bring in ", " more raw meat."))));
            prop_assert_eq!(&then["outcome"], "in_range", "{}", head);
        }
    }

    #[test]
    fn more_water_ends_in_range(dose in dose()) {
        if let Some((head, _)) = advice(&dose.verdict(), " more water.") {
            let had = dose.water();
            let then = dose.with("water", json!(format!("{:.4} g", had + weight(&head, "Stir in ", " more water."))));
            prop_assert_eq!(&then["outcome"], "in_range", "{}", head);
        }
    }

    #[test]
    fn more_cure_ends_in_range(dose in dose()) {
        if let Some((head, _)) = advice(&dose.verdict(), " of the same cure.").filter(|(head, _)| head.starts_with("Add ")) {
            let put = &dose.ask["put_in"];
            let then = dose.with_cure(weight(&head, "Add ", " of the same cure."), &put["nitrite"], &put["nitrate"]);
            prop_assert_eq!(&then["outcome"], "in_range", "{}", head);
        }
    }

    #[test]
    fn a_cure_in_place_of_none_ends_in_range(dose in dose()) {
        if let Some((head, _)) = advice(&dose.verdict(), "Or cure it now: ") {
            for grams in figures(&head).into_iter().take(2) {
                let then = dose.with_cure(grams, &json!("6.25 %"), &json!("0 %"));
                prop_assert_eq!(&then["outcome"], "in_range", "{} g of {}", grams, head);
            }
        }
    }

    #[test]
    fn a_spoon_weighed_between_the_two_is_in_range(dose in dose()) {
        if let Some((_, text)) = advice(&dose.verdict(), "Weigh one level ").filter(|(_, text)| text.contains(" g in all")) {
            // One figure where the scale has only one step that fits.
            for grams in figures(&text).into_iter().take(2) {
                let mut put = dose.ask["put_in"].clone();
                put["amount"] = json!(format!("{grams} g"));
                let then = dose.with("put_in", put);
                prop_assert_eq!(&then["outcome"], "in_range", "{} g of {}", grams, text);
            }
        }
    }

    #[test]
    fn an_aim_that_is_advised_is_in_range(mut recipe in recipe(), step in step(), green in 200u32..9_000) {
        let mut ask = json!({"weigh_out": {"batch": batch(&recipe, 3, &format!("{green} g")), "settings": settings(step)}});
        let verdict = answer(&ask)["ok"]["verdict"].clone();
        let told = verdict["next"].as_array().into_iter().flatten();
        let told = told.filter_map(|a| a["text"].as_str()).find_map(|text| {
            let (_, rest) = text.split_once("Aim at ").or_else(|| text.split_once("aim in the recipe: "))?;
            Some(rest.split_once(" ppm")?.0.to_owned())
        });
        if let Some(aim) = told {
            recipe["cures"][0]["aim"] = json!(format!("{aim} ppm"));
            ask["weigh_out"]["batch"]["recipe"] = recipe;
            let then = answer(&ask);
            prop_assert_eq!(&then["ok"]["verdict"]["outcome"], "in_range", "{} ppm: {}", aim, then);
        }
    }
}
