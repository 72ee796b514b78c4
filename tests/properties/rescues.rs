//! What the advice promises holds when it is done and judged again.

use cure_reckoner_tests::answer;
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
        *ask.pointer_mut(part).expect("a part") = value;
        answer(&json!({"check_dose": ask}))["ok"].clone()
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
    ]);
    let units = prop::sample::select(vec!["metric", "us"]);
    let step = prop::sample::select(vec!["1 g", "0.1 g", "0.01 g"]);
    (
        amount,
        strength,
        units,
        step,
        300u32..8_000,
        prop::sample::select(METHODS.to_vec()),
    )
        .prop_map(|(amount, (nitrite, nitrate), units, step, green, method)| {
            let mut ask = json!({
                "method": method,
                "green": format!("{green} g"),
                "put_in": {"amount": amount, "nitrite": nitrite, "nitrate": nitrate},
                "settings": {"units": units, "scale_step": step, "profile": "us-home"},
            });
            if !["rub", "ground"].contains(&method) {
                ask["water"] = json!(format!("{} g", green / 2));
                ask["dissolved"] = json!(format!("{} g", green / 25));
                if method != "cover_brine" {
                    ask["take"] = json!("10 %");
                }
            }
            Dose {
                ask,
                green: f64::from(green),
            }
        })
}

/// The first advice whose head starts so.
fn advice(verdict: &Value, start: &str) -> Option<(String, String)> {
    let all = verdict["next"].as_array()?;
    let found = all
        .iter()
        .find(|a| a["head"].as_str().is_some_and(|h| h.starts_with(start)))?;
    Some((found["head"].as_str()?.to_owned(), found["text"].as_str()?.to_owned()))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 1500, ..ProptestConfig::default() })]

    #[test]
    fn more_meat_ends_within_the_limits(dose in dose()) {
        if let Some((head, _)) = advice(&dose.verdict(), "Put in within the hour? Bring in ") {
            let weight = head.trim_start_matches("Put in within the hour? Bring in ").trim_end_matches(" more raw meat.");
            let values = answer(&json!({"read": {"fields": [{"key": "w", "label": "W", "kind": "mass", "text": weight.replace('\u{202f}', "")}]}}));
            let read = values["ok"]["values"][0]["value"].as_str().expect("the advice reads back").to_owned();
            // Meat of its own class: weighed apart, in whatever unit the advice is in.
            let extra = cure_reckoner::quantity::Mass::read(&read, None).expect("a weight").base();
            let extra: f64 = extra.to_string().parse().expect("grams");
            let then = dose.with("/green", json!(format!("{} g", dose.green + extra)));
            prop_assert_ne!(&then["outcome"], "over", "{}", head);
        }
    }

    #[test]
    fn more_cure_ends_in_range(dose in dose()) {
        let verdict = dose.verdict();
        if let Some((head, _)) = advice(&verdict, "Add ") {
            let add: f64 = head.split(' ').nth(1).and_then(|w| w.parse().ok()).expect("grams");
            // As two portions of one batch: a spoon or a weight that is in, and one that is weighed.
            if let Some(had) = dose.ask["put_in"]["amount"].as_str().and_then(|a| a.strip_suffix(" g")).and_then(|a| a.parse::<f64>().ok()) {
                let then = dose.with("/put_in/amount", json!(format!("{:.3} g", had + add)));
                prop_assert_eq!(&then["outcome"], "in_range", "{}", head);
            }
        }
    }

    #[test]
    fn a_spoon_weighed_between_the_two_is_in_range(dose in dose()) {
        if let Some((_, text)) = advice(&dose.verdict(), "Weigh one level ") {
            let mut figures = text.split(' ').filter_map(|w| w.parse::<f64>().ok());
            let least = figures.next().expect("least");
            // One figure where the scale has only one step that fits.
            let most = figures.next().unwrap_or(least);
            for grams in [least, most] {
                let then = dose.with("/put_in/amount", json!(format!("{grams} g")));
                prop_assert_eq!(&then["outcome"], "in_range", "{} g of {}", grams, text);
            }
        }
    }
}
