//! The brine bench against published tables.

use cure_reckoner::brine::{Scale, Strength, percent_of};
use cure_reckoner_tests::{exact, ok, problems, settings};
use rust_decimal::{Decimal, dec};
use serde_json::{Value, json};

fn percent(figure: Decimal, scale: Scale) -> Decimal {
    percent_of(figure, scale, None).expect("a strength").percent
}

/// USDA bulletin on fermented pickles (Project Gutenberg 48722): per cent of salt to degrees of the salometer. Published;
/// it takes 26.5 % for saturated where 26.395 is used here, so the figures agree to its own whole degrees.
#[test]
fn the_published_salometer_table() {
    for (salt, degrees) in [
        (dec!(1.06), 4),
        (dec!(2.12), 8),
        (dec!(3.18), 12),
        (dec!(4.24), 16),
        (dec!(5.3), 20),
        (dec!(7.42), 28),
        (dec!(8.48), 32),
        (dec!(9.54), 36),
        (dec!(10.6), 40),
        (dec!(15.9), 60),
        (dec!(21.2), 80),
        (dec!(26.5), 100),
    ] {
        let found = Strength { percent: salt }.on(Scale::Salometer).expect("degrees");
        assert_eq!(found.round_dp(0), Decimal::from(degrees), "{salt} %");
    }
}

/// 100 degrees are saturated at 60 °F, 26.395 %; one degree is 0.264 %; one degree more for each 10 °F above. Quoted, the
/// last published.
#[test]
fn degrees() {
    assert_eq!(percent(dec!(100), Scale::Salometer), dec!(26.395));
    assert_eq!(percent(dec!(1), Scale::Salometer).round_dp(3), dec!(0.264));
    let warm = percent_of(dec!(40), Scale::Salometer, Some(dec!(80))).expect("a strength");
    assert_eq!(warm.percent, percent(dec!(42), Scale::Salometer));
}

/// 2.986 lb of salt to a US gallon of water at 100 degrees (quoted), to half of one per cent.
#[test]
fn salt_to_a_us_gallon() {
    let pounds = Strength { percent: dec!(26.395) }
        .on(Scale::PerUsGallon)
        .expect("pounds");
    assert!((pounds - dec!(2.986)).abs() < dec!(0.015), "{pounds}");
}

/// British Columbia fish-safety sheet: 60 degrees are 15.8 %, 1.882 lb to the Imperial gallon and 187.8 g to the litre
/// (published). The three agree within the rounding of 15.8 where they are salt to a gallon, or a litre, of water.
#[test]
fn sixty_degrees() {
    assert_eq!(percent(dec!(60), Scale::Salometer).round_dp(1), dec!(15.8));
    let on = |percent: Decimal, scale: Scale| Strength { percent }.on(scale).expect("a figure");
    for (scale, published) in [(Scale::PerLitre, dec!(187.8)), (Scale::PerImperialGallon, dec!(1.882))] {
        let (low, high) = (on(dec!(15.75), scale), on(dec!(15.85), scale));
        assert!(
            low <= published && published <= high,
            "{low} to {high}, not {published}"
        );
    }
    let ratio = on(dec!(15.8), Scale::PerLitre) / on(dec!(15.8), Scale::PerImperialGallon);
    assert_eq!(ratio.round_dp(1), (dec!(187.8) / dec!(1.882)).round_dp(1));
}

/// Lange's Handbook, 15th edition, table 5.13, at 15 °C. Published.
#[test]
fn specific_gravity() {
    for (percent_salt, gravity) in [
        (dec!(5), dec!(1.036)),
        (dec!(9), dec!(1.067)),
        (dec!(15), dec!(1.112)),
        (dec!(20), dec!(1.152)),
        (dec!(23), dec!(1.176)),
    ] {
        assert_eq!(Strength { percent: percent_salt }.on(Scale::Gravity), Some(gravity));
        assert_eq!(percent(gravity, Scale::Gravity).round_dp(12), percent_salt);
    }
}

/// There and back on every scale.
#[test]
fn every_scale_reads_back() {
    for scale in [
        Scale::Percent,
        Scale::Salometer,
        Scale::Gravity,
        Scale::PerLitre,
        Scale::PerUsGallon,
        Scale::PerImperialGallon,
    ] {
        for tenths in [5u32, 20, 75, 120, 200, 263] {
            let strength = Strength {
                percent: Decimal::from(tenths) / dec!(10),
            };
            let there = strength.on(scale).expect("a figure");
            let back = percent(there, scale);
            assert!(
                (back - strength.percent).abs() < dec!(0.000001),
                "{tenths} on {scale:?}: {back}"
            );
        }
    }
    assert!(percent_of(dec!(27), Scale::Percent, None).is_none());
    assert!(percent_of(dec!(0.9), Scale::Gravity, None).is_none());
}

fn bench(more: Value) -> Value {
    let mut ask = json!({"strength": "10", "scale": "percent", "settings": settings("0.1 g")});
    for (key, value) in more.as_object().expect("fields") {
        ask[key] = value.clone();
    }
    ask
}

fn grams(figure: &Value) -> f64 {
    figure["num"]
        .as_str()
        .and_then(|t| t.replace('\u{202f}', "").parse().ok())
        .expect("grams")
}

/// A box, a pot and a bag: what is filled, less the meat at 1.055 g to the millilitre, at the brine's own weight.
#[test]
fn vessels() {
    let water = |vessel: Value, meat: &str| {
        grams(&ok(&json!({"brine": bench(json!({"vessel": vessel, "meat": meat}))}))["water"])
    };
    let gravity = 1.067 + (1.112 - 1.067) / 6.0;
    let left = |ml: f64, meat: f64| (ml - meat / 1.055) * gravity * 0.9;
    let box_ = json!({"shape": "box", "length": "300 mm", "width": "200 mm", "depth": "100 mm"});
    assert!((water(box_, "2110 g") - left(6000.0, 2110.0)).abs() <= 0.5);
    let round = json!({"shape": "round", "across": "240 mm", "depth": "150 mm"});
    assert!((water(round, "2110 g") - left(std::f64::consts::PI * 120.0 * 120.0 * 0.15, 2110.0)).abs() <= 0.5);
    assert!((water(json!({"shape": "bag"}), "2000 g") - 1000.0 * gravity * 0.9).abs() <= 0.5);
    let full = json!({"brine": bench(json!({"vessel": {"shape": "box", "length": "100 mm", "width": "100 mm", "depth": "100 mm"}, "meat": "1050 g"}))});
    assert_eq!(problems(&full)[0]["field"], "vessel");
    let bag = json!({"brine": bench(json!({"vessel": {"shape": "bag"}}))});
    assert_eq!(problems(&bag)[0]["field"], "meat");
    let strong = json!({"brine": bench(json!({"vessel": {"shape": "bag"}, "meat": "1 kg", "strength": "30"}))});
    let problem = &problems(&strong)[0];
    assert_eq!(
        (&problem["field"], &problem["wrong"]["is"]),
        (&json!("strength"), &json!("no_brine_strength"))
    );
}

/// 1 kg of meat of 74 % water, 1 kg of water, 40 g of salt, left until equal: 1.96 % of all, and 1.67 % of the meat
/// (computed).
#[test]
fn salt_on_two_bases() {
    let sheet = ok(
        &json!({"brine": bench(json!({"vessel": {"shape": "water", "water": "1000 g"}, "meat": "1000 g", "strength": "3.846"}))}),
    );
    assert_eq!(
        sheet["even"],
        json!({"over_all": "1.96 %", "in_meat": "1.67 %", "water": "74 %"})
    );
}

/// Cure for a target, its own weight counted and its salt taken off; and the same weight judged the other way round.
#[test]
fn cure_both_ways() {
    let with = |cure: Value| {
        let mut fine = settings("0.01 g");
        fine["profile"] = json!("us-home");
        ok(
            &json!({"brine": bench(json!({"vessel": {"shape": "water", "water": "1200 g"}, "meat": "2000 g", "sugar": "2 %", "cure": cure, "settings": fine}))}),
        )
    };
    let aimed = with(json!({"nitrite": "6.25 %", "aim": "150 ppm"}));
    let (cure, salt, sugar) = (grams(&aimed["cure"]), grams(&aimed["salt"]), grams(&aimed["sugar"]));
    let ppm = cure * 62_500.0 / (2000.0 + 1200.0 + salt + sugar + cure);
    assert!(ppm <= 150.0 + 1e-9 && ppm > 149.8, "{ppm}");
    // 10 % of water and salt, the cure's salt among it.
    let all = salt + cure * 0.9375;
    assert!((all / (1200.0 + all) - 0.1).abs() < 1e-5, "{all}");
    let judged = with(json!({"nitrite": "6.25 %", "weight": format!("{cure} g")}));
    assert_eq!(judged["verdict"]["nitrite"], aimed["verdict"]["nitrite"]);
    assert_eq!(judged["verdict"]["word"], "in_range");
    let strong = with(json!({"nitrite": "6.25 %", "weight": "30 g"}));
    assert_eq!(strong["verdict"]["word"], "over");
    assert!(exact(&strong["verdict"], "nitrite")[1] > 500.0);
}

/// A belly by the rules for bacon: 120 ppm immersed without its rind, 108 with it (9 CFR 424.22(b); the tenth less from
/// memory), where a breast has 200; each just within and just over. A cut that is in no table is named.
#[test]
fn a_belly_in_the_bucket() {
    let ask = |cut: &str, cure: &str| {
        let mut plant = settings("0.01 g");
        plant["profile"] = json!("us-plant");
        json!({"brine": bench(json!({
            "vessel": {"shape": "water", "water": "1200 g"}, "meat": "2000 g", "cut": cut,
            "cure": {"nitrite": "6.25 %", "weight": cure}, "settings": plant
        }))})
    };
    // 2000 g of meat, 1200 g of water and 10 % of salt in it make 3333 g: 1 g of cure in it is 18.75 ppm.
    for (cut, limit, within, over) in [
        ("boar-belly", 120, "6.38 g", "6.43 g"),
        ("boar-belly-rind", 108, "5.74 g", "5.79 g"),
        ("mallard-breast", 200, "10.65 g", "10.71 g"),
    ] {
        let (good, bad) = (ok(&ask(cut, within)), ok(&ask(cut, over)));
        assert_eq!(good["verdict"]["limit"], limit, "{cut}");
        assert_eq!(
            good["verdict"]["word"], "in_range",
            "{cut}: {}",
            good["verdict"]["nitrite"]
        );
        assert_eq!(
            bad["verdict"]["outcome"], "over",
            "{cut}: {}",
            bad["verdict"]["nitrite"]
        );
    }
    let found = problems(&ask("unicorn-belly", "5 g"));
    assert_eq!((found.len(), &found[0]["field"]), (1, &json!("cut")));
}

/// A cure with nitrate too: each by its print over the same meat and brine, and each held to its own limit (21 CFR
/// 172.170, 500 ppm of nitrate, published); a belly takes none (9 CFR 424.22(b)); saltpetre is aimed at by its nitrate.
#[test]
fn nitrate_in_the_bucket() {
    let ask = |profile: &str, cut: &str, cure: Value| {
        let mut fine = settings("0.01 g");
        fine["profile"] = json!(profile);
        json!({"brine": bench(json!({
            "vessel": {"shape": "water", "water": "1200 g"}, "meat": "2000 g", "cut": cut, "cure": cure, "settings": fine
        }))})
    };
    let two = ok(&ask(
        "us-home",
        "boar-loin",
        json!({"nitrite": "6.25 %", "nitrate": "4 %", "aim": "150 ppm"}),
    ));
    let verdict = &two["verdict"];
    assert_eq!(verdict["word"], "in_range");
    let (nitrite, nitrate) = (exact(verdict, "nitrite"), exact(verdict, "nitrate"));
    assert!((nitrite[1] - 150.0).abs() < 0.2, "{nitrite:?}");
    assert!((nitrate[1] / nitrite[1] - 4.0 / 6.25).abs() < 1e-5, "{nitrate:?}");
    // All but 10.25 % of the cure is salt, and is taken off the salt.
    let (cure, salt) = (grams(&two["cure"]), grams(&two["salt"]));
    let all = salt + cure * 0.8975;
    assert!((all / (1200.0 + all) - 0.1).abs() < 1e-5, "{all}");
    let banned = ok(&ask(
        "us-plant",
        "boar-belly",
        json!({"nitrite": "6.25 %", "nitrate": "4 %", "weight": "6 g"}),
    ));
    assert_eq!(banned["verdict"]["outcome"], "over");
    let saltpetre = |ppm: &str| {
        ok(&ask(
            "us-home",
            "boar-loin",
            json!({"nitrite": "0 %", "nitrate": "98 %", "aim": ppm}),
        ))
    };
    let within = saltpetre("490 ppm");
    assert!(
        (exact(&within["verdict"], "nitrate")[1] - 490.0).abs() < 3.0,
        "{}",
        within["verdict"]
    );
    assert_eq!(within["verdict"]["outcome"], "cannot_tell");
    assert_eq!(saltpetre("520 ppm")["verdict"]["outcome"], "over");
    let strong = problems(&ask(
        "us-home",
        "boar-belly",
        json!({"nitrite": "15 %", "nitrate": "90 %", "weight": "5 g"}),
    ));
    assert_eq!(strong[0]["field"], "nitrate");
}

/// A hydrometer's figure comes with the caution about sugar.
#[test]
fn a_hydrometer_cannot_tell_sugar() {
    let with = |scale: &str, strength: &str| {
        ok(
            &json!({"brine": bench(json!({"vessel": {"shape": "water", "water": "1000 g"}, "scale": scale, "strength": strength}))}),
        )
    };
    let told = |sheet: &Value| {
        let remarks = sheet["remarks"].as_array().expect("remarks");
        remarks.contains(&json!("reads_sugar"))
    };
    assert!(told(&with("gravity", "1.074")) && told(&with("salometer", "40")) && !told(&with("percent", "10")));
    assert_eq!(
        with("salometer", "100")["strength"][0],
        json!({"scale": "percent", "number": "26.40"})
    );
}
