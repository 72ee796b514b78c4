//! What the advice promises holds when it is done and judged again: each step with a figure ends in range.

use super::recipes::{recipe, step};
use cure_reckoner_tests::{answer, batch, next_step, settings};
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

/// A step of this key, where the verdict has it.
fn advice(verdict: &Value, is: &str) -> Option<Value> {
    Some(next_step(verdict, is)).filter(|step| !step.is_null())
}

/// Its weight, as a person would type it again, in grams.
fn weight(step: &Value) -> f64 {
    let text = step["weight"].as_str().expect("a weight").replace('\u{202f}', "");
    let read = cure_reckoner::quantity::Mass::read(&text, None).expect("a weight");
    read.base().to_string().parse().expect("grams")
}

/// Grams that are told as a bare figure.
fn grams(figure: &Value) -> f64 {
    figure.as_str().and_then(|text| text.parse().ok()).expect("grams")
}

proptest! {
    #![proptest_config(super::cases(1500))]

    #[test]
    fn more_meat_ends_in_range(dose in dose()) {
        if let Some(step) = advice(&dose.verdict(), "more_meat") {
            let then = dose.with("green", json!(format!("{:.4} g", dose.green + weight(&step))));
            prop_assert_eq!(&then["outcome"], "in_range", "{}", step);
        }
    }

    #[test]
    fn more_water_ends_in_range(dose in dose()) {
        if let Some(step) = advice(&dose.verdict(), "more_water") {
            let had = dose.water();
            let then = dose.with("water", json!(format!("{:.4} g", had + weight(&step))));
            prop_assert_eq!(&then["outcome"], "in_range", "{}", step);
        }
    }

    #[test]
    fn more_cure_ends_in_range(dose in dose()) {
        if let Some(step) = advice(&dose.verdict(), "more_cure").filter(|step| step["of"] == "cure") {
            let put = &dose.ask["put_in"];
            let then = dose.with_cure(grams(&step["grams"]), &put["nitrite"], &put["nitrate"]);
            prop_assert_eq!(&then["outcome"], "in_range", "{}", step);
        }
    }

    #[test]
    fn a_cure_in_place_of_none_ends_in_range(dose in dose()) {
        if let Some(step) = advice(&dose.verdict(), "cure_now") {
            for grams in [&step["least"], &step["most"]].map(grams) {
                let then = dose.with_cure(grams, &json!("6.25 %"), &json!("0 %"));
                prop_assert_eq!(&then["outcome"], "in_range", "{} g of {}", grams, step);
            }
        }
    }

    #[test]
    fn a_spoon_weighed_between_the_two_is_in_range(dose in dose()) {
        if let Some(step) = advice(&dose.verdict(), "weigh_spoon") {
            for grams in [&step["least"], &step["most"]].map(grams) {
                let mut put = dose.ask["put_in"].clone();
                put["amount"] = json!(format!("{grams} g"));
                let then = dose.with("put_in", put);
                prop_assert_eq!(&then["outcome"], "in_range", "{} g of {}", grams, step);
            }
        }
    }

    #[test]
    fn an_aim_that_is_advised_is_in_range(mut recipe in recipe(), step in step(), green in 200u32..9_000) {
        let mut ask = json!({"weigh_out": {"batch": batch(&recipe, 3, &format!("{green} g")), "settings": settings(step)}});
        let verdict = answer(&ask)["ok"]["verdict"].clone();
        let told = ["raise_aim", "lower_aim"].into_iter().filter(|_| verdict.is_object());
        let told = told.filter_map(|is| advice(&verdict, is)).find_map(|step| step["aim"].as_u64());
        if let Some(aim) = told {
            recipe["cures"][0]["aim"] = json!(format!("{aim} ppm"));
            ask["weigh_out"]["batch"]["recipe"] = recipe;
            let then = answer(&ask);
            prop_assert_eq!(&then["ok"]["verdict"]["outcome"], "in_range", "{} ppm: {}", aim, then);
        }
    }
}
