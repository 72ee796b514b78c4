//! The same dose, told in another way, is judged alike; and more cure is never better than over.

use cure_reckoner_tests::{answer, exact, ok, settings};
use proptest::prelude::*;
use serde_json::{Value, json};

fn under(profile: &str, step: &str) -> Value {
    let mut settings = settings(step);
    settings["profile"] = json!(profile);
    settings
}

fn profile() -> impl Strategy<Value = &'static str> {
    prop::sample::select(vec!["us-home", "us-plant", "ca", "uk", "eu", "codex", "anz"])
}

fn cut() -> impl Strategy<Value = &'static str> {
    prop::sample::select(vec![
        "mallard-breast",
        "boar-loin",
        "boar-belly",
        "boar-belly-rind",
        "hare-legs",
    ])
}

fn hundredths(n: u32) -> String {
    format!("{}.{:02} g", n / 100, n % 100)
}

/// Outcome, word and whether it is held: what a cook sees of a verdict.
fn seen(verdict: &Value) -> [Value; 4] {
    ["outcome", "word", "limit", "least"].map(|key| verdict[key].clone())
}

proptest! {
    #![proptest_config(super::cases(200))]

    /// Over stays over, and what may be over is never in range, however it goes in.
    #[test]
    fn more_cure_is_never_better_than_over(
        first in 1u32..4_000, more in 0u32..4_000, green in 100u32..9_000, method in 0usize..6, hours in 1u32..60,
        thick in 5u32..150, nitrate in 0u32..500, hung in any::<bool>(), profile in profile(), cut in cut(),
    ) {
        let method = ["rub", "ground", "cover_brine", "pick_up", "pumped", "pumped_and_covered"][method];
        let ask = |weight: u32| {
            let mut ask = json!({
                "method": method, "green": format!("{green} g"), "cut": cut, "eaten": if hung { "hung_for_months" } else { "cooked" },
                "put_in": {"amount": hundredths(weight), "nitrite": "6.25 %", "nitrate": format!("{}.{:02} %", nitrate / 100, nitrate % 100)},
                "settings": under(profile, "0.01 g")
            });
            if !["rub", "ground"].contains(&method) {
                ask["water"] = json!("1000 g");
                ask["dissolved"] = json!("80 g");
            }
            if ["pick_up", "pumped", "pumped_and_covered"].contains(&method) {
                ask["take"] = json!("10 %");
            }
            if method == "pick_up" {
                ask["thickness"] = json!(format!("{thick} mm"));
                ask["stays"] = json!(format!("{hours} h"));
            }
            ok(&json!({"check_dose": ask}))
        };
        let (less, more) = (ask(first), ask(first + more));
        if less["outcome"] == "over" {
            prop_assert_eq!(&more["outcome"], "over", "{} {}", less, more);
        }
        if less["word"] == "over" {
            prop_assert_eq!(&more["word"], "over");
        }
        if more["outcome"] == "in_range" {
            prop_assert_ne!(&less["outcome"], "over");
        }
        let (a, b) = (exact(&less, "nitrite"), exact(&more, "nitrite"));
        prop_assert!(a.iter().zip(&b).all(|(a, b)| a <= b), "{:?} {:?}", a, b);
    }

    /// Longer in a strong brine, or thinner: never less of it, to the ten-thousandth of a ppm that is told.
    #[test]
    fn longer_or_thinner_is_never_less(
        weight in 1u32..20_000, hours in 1u32..90, later in 0u32..60, thick in 6u32..150, thinner in 0u32..100, cut in cut(),
    ) {
        let ask = |hours: u32, thick: u32| exact(&ok(&json!({"check_dose": {
            "method": "pick_up", "green": "2000 g", "water": "2000 g", "dissolved": "200 g", "take": "8 %", "cut": cut,
            "thickness": format!("{thick} mm"), "stays": format!("{hours} h"),
            "put_in": {"amount": hundredths(weight), "nitrite": "6.25 %"}, "settings": settings("0.01 g")
        }})), "nitrite")[2];
        prop_assert!(ask(hours, thick) <= ask(hours + later, thick.saturating_sub(thinner).max(3)) * 1.000_001 + 1e-4);
    }

    /// A cover brine told by the weigh-out, by Check a dose and by the bench: the same grams, the same word.
    #[test]
    fn a_brine_is_judged_alike_by_all(
        green in 300u32..6_000, water in 40u32..200, aim in 20u32..320, profile in profile(), cut in cut(),
        step in prop::sample::select(vec!["5 g", "1 g", "0.1 g", "0.01 g"]),
    ) {
        let settings = under(profile, step);
        let recipe = json!({
            "name": "Any brine", "tag": "AB", "method": "cover_brine",
            "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": format!("{aim} ppm")}],
            "lines": [
                {"item": "water", "share": {"of": "green_weight", "amount": format!("{water} %")}},
                {"item": "salt-sea-fine", "share": {"of": "meat_and_water", "amount": "4 %"}}
            ]
        });
        let batch = |recipe: &Value| json!({
            "tag": "AB", "name": "Any", "recipe": recipe,
            "pieces": [{"cut": cut, "count": 1, "weight": format!("{green} g")}]
        });
        let weighed = answer(&json!({"weigh_out": {"batch": batch(&recipe), "settings": settings}}));
        // A scale that cannot show the cure has no list to compare.
        let sheet = &weighed["ok"];
        let grams = |of: &Value| of["weight"].as_str().and_then(|t| t.trim_end_matches(" g").parse::<f64>().ok()).unwrap_or_default();
        let (cure, salt) = (grams(&sheet["bowl"][0]), grams(&sheet["bowl"][1]));
        let bucket = grams(&sheet["vessel"][0]);
        prop_assume!(sheet.is_object() && cure > 0.0 && salt > 0.0 && bucket > 0.0);
        let told = ok(&json!({"check_dose": {
            "method": "cover_brine", "green": format!("{green} g"), "water": format!("{bucket} g"), "dissolved": format!("{salt} g"),
            "weighings": 1, "cut": cut, "put_in": {"amount": format!("{cure} g"), "nitrite": "6.25 %"}, "settings": settings
        }}));
        prop_assert_eq!(seen(&sheet["verdict"]), seen(&told));
        prop_assert_eq!(&sheet["verdict"]["nitrite"], &told["nitrite"]);
        let opened = {
            let link = ok(&json!({"link": {"recipe": recipe, "base": "https://larder.example/"}}));
            ok(&json!({"open_link": {"text": link["code"]}}))["recipe"].clone()
        };
        let linked = ok(&json!({"weigh_out": {"batch": batch(&opened), "settings": settings}}));
        prop_assert_eq!(&linked["verdict"], &sheet["verdict"]);
        // The bench takes its salt by the strength of the brine: the same where its rounding comes to the same grams.
        let strength = format!("{}", salt_percent(salt, cure, bucket));
        let bench = answer(&json!({"brine": {
            "vessel": {"shape": "water", "water": format!("{bucket} g")}, "meat": format!("{green} g"), "cut": cut,
            "strength": strength, "scale": "percent", "cure": {"nitrite": "6.25 %", "weight": format!("{cure} g")}, "settings": settings
        }}));
        let same = |figure: &Value, wanted: f64| {
            let text = figure["num"].as_str().unwrap_or_default().replace('\u{202f}', "");
            text.parse::<f64>().is_ok_and(|n| (n - wanted).abs() < 1e-9)
        };
        if same(&bench["ok"]["salt"], salt) && bucket.fract() == 0.0 {
            prop_assert_eq!(seen(&bench["ok"]["verdict"]), seen(&sheet["verdict"]));
            prop_assert_eq!(&bench["ok"]["verdict"]["nitrite"], &sheet["verdict"]["nitrite"]);
        }
    }

    /// A rub told by the weigh-out, by what was ticked, and by Check a dose.
    #[test]
    fn a_rub_is_judged_alike_by_all(green in 200u32..6_000, aim in 20u32..320, profile in profile(), cut in cut(), step in prop::sample::select(vec!["1 g", "0.1 g", "0.01 g"])) {
        let settings = under(profile, step);
        let recipe = cure_reckoner_tests::rub("6.25 %", &format!("{aim} ppm"), "2.2 %");
        let mut batch = cure_reckoner_tests::batch(&recipe, 1, &format!("{green} g"));
        batch["pieces"][0]["cut"] = json!(cut);
        let sheet = ok(&json!({"weigh_out": {"batch": batch, "settings": settings}}));
        let cure = sheet["bowl"][0]["weight"].as_str().unwrap_or_default().to_owned();
        prop_assume!(cure != "0 g");
        let told = ok(&json!({"check_dose": {"method": "rub", "green": format!("{green} g"), "cut": cut, "put_in": {"amount": cure, "nitrite": "6.25 %"}, "settings": settings}}));
        prop_assert_eq!(seen(&sheet["verdict"]), seen(&told));
        prop_assert_eq!(&sheet["verdict"]["nitrite"], &told["nitrite"]);
        batch["put_in"] = json!({"amount": cure, "nitrite": "6.25 %"});
        let put = ok(&json!({"weigh_out": {"batch": batch, "settings": settings}}));
        prop_assert_eq!(&put["verdict"], &told);
        // Written down by hand and pasted.
        let text = format!("{green} g meat\n{cure} cure no. 1 (6.25 %)\ndry rub");
        let read = ok(&json!({"read_recipe": {"text": text, "answers": [], "settings": settings}}));
        if cut == "mallard-breast" && read["verdict"].is_object() {
            prop_assert_eq!(&read["verdict"]["outcome"], &told["outcome"], "{}", text);
        }
    }
}

/// Salt in water and salt, per cent by weight, the cure's salt counted.
fn salt_percent(salt: f64, cure: f64, water: f64) -> f64 {
    let all = salt + cure * 0.9375;
    (all / (all + water) * 100.0 * 1e6).round() / 1e6
}
