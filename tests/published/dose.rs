//! Worked doses of the inspectors' handbook and others, through the formulas and through the door.

use cure_reckoner::dose::{Whole, cure_for, ingoing};
use cure_reckoner::pantry::Agent;
use cure_reckoner::quantity::{Mass, Range};
use cure_reckoner::recipe::Method;
use cure_reckoner_tests::{batch, exact, ok, rub, settings, weigh_out, weighed_in};
use rust_decimal::{Decimal, dec};
use serde_json::json;

const CURE: Agent = Agent {
    nitrite: dec!(6.25),
    nitrate: dec!(0),
    water: Decimal::ZERO,
};

fn grams(text: &str) -> Decimal {
    Mass::read(text, None).expect("a weight").base()
}

fn whole(method: Method, green: Decimal, pickle: Decimal, take: Decimal) -> Whole {
    Whole {
        counted: method.counted(),
        green: Range::point(green),
        pickle: Range::point(pickle),
        take,
        fo: None,
    }
}

/// Ingoing nitrite and nitrate of `cure` on `green`, to `places` decimals.
#[track_caller]
fn dose(method: Method, agent: Agent, cure: &str, green: &str, pickle: Decimal, places: u32) -> (Decimal, Decimal) {
    let base = whole(method, grams(green), pickle, dec!(0)).base().expect("a base");
    let found = ingoing(agent, Range::point(grams(cure)), base, Decimal::ZERO).expect("a dose");
    (
        found.nitrite.typical.round_dp(places),
        found.nitrate.typical.round_dp(places),
    )
}

/// FSIS Directive 7620.3 (1995), p. 15, ground meat. Quoted.
#[test]
fn one_ounce_in_25_pounds() {
    assert_eq!(dose(Method::Ground, CURE, "1 oz", "25 lb", dec!(0), 6).0, dec!(156.25));
}

/// FSIS Directive 7620.3 (1995), p. 24, dry cure. Quoted.
#[test]
fn four_ounces_on_25_pounds() {
    assert_eq!(dose(Method::Rub, CURE, "4 oz", "25 lb", dec!(0), 6).0, dec!(625));
}

/// Grams of a 6.25 % cure a kilogram for 120, 200 and 625 ppm. Quoted.
#[test]
fn grams_a_kilogram() {
    for (ppm, wanted) in [
        (dec!(0.0120), dec!(1.92)),
        (dec!(0.0200), dec!(3.2)),
        (dec!(0.0625), dec!(10)),
    ] {
        let over = whole(Method::Rub, dec!(1000), dec!(0), dec!(0));
        let cure = cure_for(&over, &[(CURE, ppm)], true).expect("a cure");
        assert_eq!(cure, [wanted]);
    }
}

/// 7.8 g of a 6.25 % cure a kilogram, a dose in circulation that is far over. Quoted.
#[test]
fn seven_point_eight_grams_a_kilogram_is_over() {
    assert_eq!(dose(Method::Rub, CURE, "7.8 g", "1 kg", dec!(0), 6).0, dec!(487.5));
    let verdict = ok(&json!({"check_dose": {
        "method": "rub", "green": "1 kg", "put_in": {"amount": "7.8 g", "nitrite": "6.25 %"}, "settings": settings("0.1 g")
    }}));
    assert_eq!(
        (verdict["outcome"].as_str(), verdict["sure"].as_bool()),
        (Some("over"), Some(true))
    );
}

/// 1200 g of loin in 600 g of brine with 1.26 g of saltpetre and 60 g of salt, left until equal: 700 ppm nitrate
/// (as the salt that was weighed) and 3.33 % salt. Quoted.
#[test]
fn loin_in_a_brine_with_saltpetre() {
    let saltpetre = Agent {
        nitrite: dec!(0),
        nitrate: dec!(100),
        water: Decimal::ZERO,
    };
    let (_, nitrate) = dose(Method::CoverBrine, saltpetre, "1.26 g", "1200 g", dec!(600), 4);
    assert_eq!(nitrate, dec!(700));
    let salt = dec!(60) * dec!(100) / dec!(1800);
    assert_eq!(salt.round_dp(2), dec!(3.33));
}

/// 10 lb of meat, 8.33 lb of water, 0.5 lb of salt, 0.25 lb of sugar and 1 oz of a 6.25 % cure: 204.06 ppm.
/// Computed from FSIS Directive 7620.3 (1995), p. 22.
#[test]
fn ten_pounds_in_a_gallon() {
    let pickle = grams("8.33 lb") + grams("0.5 lb") + grams("0.25 lb") + grams("1 oz");
    assert_eq!(
        dose(Method::CoverBrine, CURE, "1 oz", "10 lb", pickle, 2).0,
        dec!(204.06)
    );
}

/// The same through the door, as somebody would ask it: at 204 ppm it is over, if barely.
#[test]
fn ten_pounds_in_a_gallon_through_the_door() {
    let verdict = ok(&json!({"check_dose": {
        "method": "cover_brine", "green": "10 lb", "water": "8.33 lb", "dissolved": "0.75 lb",
        "put_in": {"amount": "1 oz", "nitrite": "6.25 %"}, "settings": settings("0.01 g")
    }}));
    let [low, typical, high] = exact(&verdict, "nitrite");
    assert!((typical - 204.06).abs() < 0.005, "{typical}");
    assert!(low > 200.0 && high < 204.2, "{low} to {high}");
    assert_eq!(verdict["word"], "over");
}

/// 4 oz per 100 lb of a cure with 6.25 % nitrite and 4 % nitrate: 156.25 and 100 ppm. Computed, FSIS Directive
/// 7620.3 (1995), p. 15.
#[test]
fn nitrite_and_nitrate_of_one_cure() {
    let both = Agent {
        nitrite: dec!(6.25),
        nitrate: dec!(4),
        water: Decimal::ZERO,
    };
    assert_eq!(
        dose(Method::Rub, both, "4 oz", "100 lb", dec!(0), 6),
        (dec!(156.25), dec!(100))
    );
}

/// One level teaspoon to 4.5 lb and one and a half to 7 lb both lie between 120 and 200 ppm over the usual 4.7 to
/// 6.0 g of a level teaspoon. Common practice, no source.
#[test]
fn two_practice_ratios() {
    for (spoons, meat) in [(dec!(1), "4.5 lb"), (dec!(1.5), "7 lb")] {
        for level in [dec!(4.7), dec!(6.0)] {
            let cure = Range::point(spoons * level);
            let ppm = ingoing(CURE, cure, Range::point(grams(meat)), Decimal::ZERO)
                .expect("a dose")
                .nitrite
                .typical;
            assert!(
                dec!(120) <= ppm && ppm <= dec!(200),
                "{spoons} of {level} g on {meat}: {ppm}"
            );
        }
    }
}

/// A cover brine for an aim, exact: c = T B / (f 10⁶ − T), B the other weights. FSIS Directive 7620.3, p. 22, solved
/// for the cure; computed.
#[test]
fn cure_for_a_brine_counts_its_own_weight() {
    let over = whole(Method::CoverBrine, dec!(2000), dec!(1000), dec!(0));
    let cure = cure_for(&over, &[(CURE, dec!(0.0150))], false).expect("a cure")[0];
    let solved = dec!(150) * dec!(3000) / (dec!(62500) - dec!(150));
    assert_eq!(cure.round_dp(12), solved.round_dp(12));
    let back = ingoing(CURE, Range::point(cure), Range::point(dec!(3000) + cure), Decimal::ZERO).expect("a dose");
    assert_eq!(back.nitrite.typical.round_dp(12), dec!(150));
}

/// With salt in the recipe the cure's salt replaces some of it, and the whole still comes to the aim.
#[test]
fn brine_of_the_page_comes_to_its_aim() {
    let recipe = json!({
        "name": "Trial brine", "tag": "TB", "method": "cover_brine",
        "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "150 ppm"}],
        "lines": [
            {"item": "water", "share": {"of": "green_weight", "amount": "60 %"}},
            {"item": "salt-sea-fine", "share": {"of": "meat_and_water", "amount": "2.5 %"}},
            {"item": "sugar-white", "share": {"of": "meat_and_water", "amount": "1 %"}},
            {"item": "pepper-black-whole", "share": {"of": "brine", "amount": "0.3 %"}}
        ]
    });
    let sheet = weigh_out(&batch(&recipe, 1, "2220 g"), "0.01 g");
    let grams = |list: &str, i: usize| {
        sheet[list][i]["weight"]
            .as_str()
            .and_then(|t| t.trim_end_matches(" g").parse::<f64>().ok())
    };
    let (cure, salt, sugar, water) = (grams("bowl", 0), grams("bowl", 1), grams("bowl", 2), grams("vessel", 0));
    let [cure, salt, sugar, water] = [cure, salt, sugar, water].map(|g| g.expect("a weight"));
    // Pepper does not dissolve and is not counted.
    let ppm = cure * 0.0625 * 1e6 / (2220.0 + water + salt + sugar + cure);
    assert!(ppm <= 150.0 && ppm > 149.8, "{ppm}");
    assert!((exact(&sheet["verdict"], "nitrite")[1] - ppm).abs() < 0.001);
    let all_salt = salt + cure * 0.9375;
    assert!((all_salt / (2220.0 + water) - 0.025).abs() < 1e-5, "{all_salt}");
}

/// The cure of a rub counts with its salt: 93.75 % of a 6.25 % cure is salt.
#[test]
fn salt_in_the_cure_counts_as_salt() {
    let sheet = weigh_out(&batch(&rub("6.25 %", "150 ppm", "2.2 %"), 1, "1000 g"), "0.01 g");
    assert_eq!(sheet["bowl"][0]["weight"], "2.4 g");
    // 22 g − 2.4 × 0.9375 g
    assert_eq!(sheet["bowl"][1]["weight"], "19.75 g");
}

/// Mince is weighed and judged as a rub is, and stands under its own heat: 71 °C (160 °F) all through (USDA FSIS safe
/// temperature chart, 2025, published).
#[test]
fn mince_through_the_door() {
    let mut recipe = rub("6.25 %", "150 ppm", "1.8 %");
    recipe["method"] = json!("ground");
    let sheet = weigh_out(&batch(&recipe, 1, "25 lb"), "0.1 g");
    assert_eq!(sheet["bowl"][0]["exact"], "27.215542 g");
    assert_eq!(sheet["verdict"]["basis"], json!(["ground"]));
    let keys: Vec<&str> = sheet["verdict"]["cautions"]
        .as_array()
        .expect("cautions")
        .iter()
        .filter_map(|c| c["key"].as_str())
        .collect();
    assert_eq!(keys, ["nitrite-locked", "weigh-it", "keep-cold", "local-rules"]);
    // How hot it must get stands at the fire, and it is the rule for mince alone.
    let mut cooked = recipe.clone();
    cooked["steps"] = json!([{"do": "cook", "lasts": "1 h", "at": "110 °C"}]);
    let mut mince = batch(&cooked, 1, "25 lb");
    mince["ticks"] = json!([{"of": "rub", "at": 2}]);
    let mince = weighed_in(mince, 1);
    let list =
        ok(&json!({"next": {"batches": [{"id": "b", "batch": mince}], "now": 3, "settings": settings("0.1 g")}}));
    assert_eq!(list["jobs"][0]["cautions"], json!(["mince-heat"]));
    let linked = ok(&json!({"link": {"recipe": recipe, "base": "https://larder.example/"}}));
    assert_eq!(
        ok(&json!({"open_link": {"text": linked["code"]}}))["recipe"]["method"],
        "ground"
    );
}
