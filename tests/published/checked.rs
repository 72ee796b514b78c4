//! Check a dose: every slip is recognised, every measure is read, and what is promised holds when it is judged again.

use cure_reckoner_tests::{exact, next_step, ok, problems, settings, slips_asked};
use serde_json::{Value, json};

fn ask(more: Value) -> Value {
    let mut ask = json!({"method": "rub", "settings": settings("0.1 g")});
    for (key, value) in more.as_object().expect("fields") {
        ask[key] = value.clone();
    }
    ok(&json!({"check_dose": ask}))
}

fn put(amount: &str, nitrite: &str) -> Value {
    json!({"amount": amount, "nitrite": nitrite})
}

/// Each slip as it happens, with its key; and the same dose done right, without it.
#[test]
fn each_slip_is_recognised() {
    // (what is asked, as it went wrong, the slip, as it was meant)
    let brine = |water: &str, amount: &str| json!({"method": "cover_brine", "green": "2 kg", "water": water, "put_in": put(amount, "6.25 %")});
    let rub = |green: &str, amount: &str, nitrite: &str| json!({"green": green, "put_in": put(amount, nitrite)});
    for (slipped, key, meant) in [
        // 2 tablespoons on 11 lb, about 450 ppm (common practice).
        (
            rub("11 lb", "2 tbsp", "6.25 %"),
            "tablespoon",
            rub("11 lb", "2 tsp", "6.25 %"),
        ),
        (
            rub("6.5 kg", "1 tsp", "6.25 %"),
            "teaspoon",
            rub("6.5 kg", "1 tbsp", "6.25 %"),
        ),
        (
            rub("1480 g", "3.5 oz", "6.25 %"),
            "ounce",
            rub("1480 g", "3.5 g", "6.25 %"),
        ),
        (rub("25 lb", "1 g", "6.25 %"), "gram", rub("25 lb", "1 oz", "6.25 %")),
        // 2.4 g for each pound in place of each kilogram.
        (
            rub("2 kg", "10.6 g", "6.25 %"),
            "per-pound",
            rub("2 kg", "4.8 g", "6.25 %"),
        ),
        (
            rub("2 kg", "2.2 g", "6.25 %"),
            "per-kilogram",
            rub("2 kg", "4.85 g", "6.25 %"),
        ),
        // 30 g a kilogram is right for a cure of 0.5 %.
        (
            rub("1 kg", "30 g", "6.25 %"),
            "no-1-for-sweet",
            rub("1 kg", "30 g", "0.5 %"),
        ),
        (
            rub("1 kg", "2.4 g", "0.5 %"),
            "sweet-for-no-1",
            rub("1 kg", "2.4 g", "6.25 %"),
        ),
        // One gallon of water, 20.3 g of cure: 150 ppm of 6.5 kg, 204 of 5.8.
        (brine("3785 g", "19 g"), "us-gallon", brine("4546 g", "19 g")),
        (brine("4546 g", "12.2 g"), "imperial-gallon", brine("3785 g", "12.2 g")),
    ] {
        let verdict = ask(slipped.clone());
        assert!(slips_asked(&verdict).contains(&key), "{slipped}: {verdict}");
        assert_ne!(verdict["outcome"], "in_range", "{slipped}");
        let right = ask(meant.clone());
        assert!(!slips_asked(&right).contains(&key), "{meant}: {right}");
        let [low, _, high] = exact(&right, "nitrite");
        assert!(low <= 200.0 && high >= 120.0, "{meant}: {low} to {high}");
    }
}

/// Pink salt for the table is no cure; how much of a real one would be in range is said, and is.
#[test]
fn pink_salt_for_the_table() {
    let verdict = ask(json!({"green": "1480 g", "put_in": put("1 tsp", "0 %")}));
    assert_eq!(verdict["word"], "no_cure");
    assert_eq!(verdict["next"][0], json!({"is": "treat_as_fresh", "put_in": true}));
    let now = next_step(&verdict, "cure_now");
    for amount in [&now["least"], &now["most"]] {
        let amount = amount.as_str().expect("grams");
        let then = ask(json!({"green": "1480 g", "put_in": put(&format!("{amount} g"), "6.25 %")}));
        assert_eq!(then["outcome"], "in_range", "{amount} g of {now}");
    }
}

/// A heaped spoon is wider than a level one and lies above it; a scant one below (judgement, in the table).
#[test]
fn spoons_that_are_not_level() {
    let dose = |amount: &str| {
        exact(
            &ask(json!({"green": "3 kg", "put_in": put(amount, "6.25 %")})),
            "nitrite",
        )
    };
    let (level, heaped, scant) = (dose("1 tsp"), dose("1 heaped tsp"), dose("1 scant tsp"));
    assert_eq!(level, dose("1 level tsp"));
    assert_eq!(heaped, dose("a heaping tsp".replace("a ", "1 ").as_str()));
    assert!(heaped[0] > level[0] && heaped[2] / heaped[0] > level[2] / level[0]);
    assert!(scant[0] < level[0] && (scant[2] - level[2]).abs() < 1e-9);
    // 8.3 g x 3 in a heap at most.
    assert!((heaped[2] - 8.3 * 3.0 * 62_500.0 / 2999.95).abs() < 0.001, "{heaped:?}");
}

/// A packet of 25 g may hold 9 % less than is printed on it (Directive 76/211/EEC, from memory).
#[test]
fn packets() {
    let dose = |amount: &str| {
        exact(
            &ask(json!({"green": "10 kg", "put_in": put(amount, "6.25 %")})),
            "nitrite",
        )
    };
    let one = dose("1 packet of 25 g");
    assert!(
        (one[1] - 156.25).abs() < 1e-9 && (one[0] - 156.25 * 0.91 / 1.000_005).abs() < 0.001,
        "{one:?}"
    );
    assert_eq!(one, dose("packet 25 g"));
    assert_eq!(one, dose("1 bag of 25 g"));
    assert!((dose("2 packets of 25 g")[1] - 312.5).abs() < 1e-9);
    let refused = json!({"check_dose": {"method": "rub", "green": "2 kg", "put_in": put("1 packet", "6.25 %"), "settings": settings("0.1 g")}});
    assert_eq!(problems(&refused)[0]["field"], "put_in.amount");
}

/// A belly is judged as a belly, rind on or off (9 CFR 424.22(b), quoted; a tenth less with the rind on, FSIS Directive
/// 7620.3, quoted), and bacon has a caution of its own (the frying heat from memory). How hot it must get is said at the fire, not at the dose.
#[test]
fn a_belly_has_its_own_limits() {
    let limit = |cut: Option<&str>| {
        let mut plant = settings("0.1 g");
        plant["profile"] = json!("us-plant");
        let mut more = json!({"green": "2 kg", "put_in": put("5 g", "6.25 %"), "settings": plant});
        if let Some(cut) = cut {
            more["cut"] = json!(cut);
        }
        let verdict = ask(more);
        let cautions = verdict["cautions"].as_array().expect("cautions").iter();
        let keys: Vec<_> = cautions
            .map(|c| c["key"].as_str().unwrap_or_default().to_owned())
            .collect();
        (verdict["limit"].as_u64(), keys)
    };
    let keys = |bacon: bool| {
        let all = ["nitrite-locked", "weigh-it", "keep-cold", "bacon-fry", "local-rules"];
        let mut all = all.map(str::to_owned).to_vec();
        all.retain(|key| bacon || key != "bacon-fry");
        all
    };
    assert_eq!(limit(None), (Some(200), keys(false)));
    assert_eq!(limit(Some("boar-belly")), (Some(200), keys(true)));
    assert_eq!(limit(Some("boar-belly-rind")), (Some(180), keys(true)));
    let unknown = json!({"check_dose": {"method": "rub", "green": "2 kg", "cut": "griffin", "put_in": put("5 g", "6.25 %"), "settings": settings("0.1 g")}});
    assert_eq!(problems(&unknown)[0]["field"], "cut");
}

/// The figures of the rescues, worked by hand: c = 120 x 1500.05 / 62 500 + 0.05 to 200 x 1499.95 / 62 500 - 0.05 for a
/// weighed spoon; and on a 5 g scale the middle of 12.5 x 62 500 / 1482.5 and 17.5 x 62 500 / 1477.5, 633.6 ppm, wants
/// 633.6 x 1477.5 / 160 = 5851 g for the middle between least and limit, less the 1477.5 g that are there at least. Computed.
#[test]
fn rescues_say_no_more_than_is_needed() {
    let spoon = ask(json!({"green": "1500 g", "put_in": put("1 tsp", "6.25 %")}));
    assert_eq!(
        next_step(&spoon, "weigh_spoon"),
        json!({"is": "weigh_spoon", "spoon": "teaspoon", "least": "3", "most": "4.7"})
    );
    let coarse = ask(json!({"green": "1480 g", "put_in": put("15 g", "6.25 %"), "settings": settings("5 g")}));
    assert_eq!(next_step(&coarse, "more_meat")["weight"], "4380 g");
}

/// A figure is offered only where the whole range then lies between least and limit. A level tablespoon is 12.6 to
/// 24.9 g, which no amount of meat fits: 24.9 / 12.6 is more than 200 / 120. In a bucket more water does as well as
/// more meat. Worked by hand: 10 g on 1000 g and 1064 g is 302.8 ppm, which wants 302.8 x 2063.95 / 160 = 3906 g for 160 ppm,
/// the middle between least and limit: 1842 g more than is there at least. Computed.
#[test]
fn no_figure_where_none_can_help() {
    let wide = ask(json!({"green": "1500 g", "put_in": put("1 tbsp", "6.25 %")}));
    assert_eq!(
        wide["next"],
        json!([
            {"is": "do_not_taste"}, {"is": "narrow_spoon", "spoon": "tablespoon"}, {"is": "throw_out", "brine": false},
            {"is": "someone_ate"}
        ])
    );
    let bucket = ask(
        json!({"method": "cover_brine", "green": "1000 g", "water": "1000 g", "dissolved": "54 g", "put_in": put("10 g", "6.25 %")}),
    );
    assert_eq!(next_step(&bucket, "more_water")["weight"], "1850 g");
    assert_eq!(next_step(&bucket, "more_meat")["weight"], "1850 g");
    // What is pumped is in the piece that was pumped; other meat does not lessen it.
    let pumped = ask(
        json!({"method": "pumped", "green": "1000 g", "water": "1000 g", "dissolved": "54 g", "take": "10 %", "put_in": put("70 g", "6.25 %")}),
    );
    assert_eq!(next_step(&pumped, "more_water")["method"], "pumped");
    assert!(next_step(&pumped, "more_meat").is_null(), "{pumped}");
}

/// Nitrite and nitrate of two agents are summed each: 2 g of 6.25 % and 1 g of 98 % nitrate on 1000 g. Computed.
#[test]
fn two_agents_are_summed() {
    let both = ask(
        json!({"green": "1000 g", "put_in": put("2 g", "6.25 %"), "also": {"amount": "0.4 g", "nitrite": "0 %", "nitrate": "98 %"}, "settings": settings("0.01 g")}),
    );
    assert_eq!(exact(&both, "nitrite")[1], 125.0);
    assert_eq!(exact(&both, "nitrate")[1], 392.0);
    assert_eq!(both["outcome"], "in_range");
    let twice = ask(json!({"green": "1000 g", "put_in": put("2 g", "6.25 %"), "also": put("2 g", "6.25 %")}));
    assert_eq!(exact(&twice, "nitrite")[1], 250.0);
    assert_eq!(twice["outcome"], "over");
    let wrong = json!({"check_dose": {"method": "rub", "green": "2 kg", "put_in": put("5 g", "6.25 %"), "also": put("lots", "6.25 %"), "settings": settings("0.1 g")}});
    assert_eq!(problems(&wrong)[0]["field"], "also.amount");
}

/// What is typed into Check a dose and cannot be: the field, the rule in its own words, and what to type. A packet with
/// nothing typed is not one of a gram.
#[test]
fn every_field_says_what_to_type() {
    let told = |kind: &str, unit: &str, text: &str| {
        let field = json!({"key": "it", "kind": kind, "unit": unit, "text": text});
        let read = ok(&json!({"read": {"fields": [field]}}));
        let problem = read["problems"][0].clone();
        assert!(
            read["values"].as_array().is_some_and(Vec::is_empty) && problem["field"] == "it",
            "{kind} {unit} “{text}”: {read}"
        );
        (problem["wrong"].clone(), problem["message"].clone())
    };
    for (unit, by) in [
        ("tsp", "spoons"),
        ("heaped tbsp", "spoons"),
        ("g", "scale"),
        ("1 packet of # g", "packet"),
    ] {
        for (text, is) in [
            ("", "put_in_missing"),
            (" ", "put_in_missing"),
            ("abc", "put_in_not_read"),
            ("-3", "put_in_out_of_bounds"),
            ("0", "put_in_out_of_bounds"),
            ("99999999", "put_in_out_of_bounds"),
        ] {
            let (wrong, _) = told("amount", unit, text);
            // A packet is above nought and at most so large; what else is typed of one is no amount.
            let is = if by == "packet" && ["-3", "99999999"].contains(&text) {
                "put_in_not_read"
            } else {
                is
            };
            assert_eq!(
                (&wrong["is"], &wrong["by"]),
                (&json!(is), &json!(by)),
                "{unit} “{text}”: {wrong}"
            );
            // What was typed, without the unit that was put to it.
            assert!(wrong["typed"].is_null() || wrong["typed"] == text, "{unit}: {wrong}");
        }
    }
    for kind in ["printed", "printed_nitrate"] {
        for (text, is) in [
            ("", "printed_missing"),
            ("abc", "printed_not_read"),
            ("-1", "printed_out_of_bounds"),
            ("150 ppm", "printed_wrong_unit"),
        ] {
            assert_eq!(told(kind, "%", text).0["is"], is, "{kind} “{text}”");
        }
        // Over a hundred is no share; of nitrite that is asked about as a slip, with what it would do.
        let (wrong, _) = told(kind, "%", "101");
        let is = if kind == "printed" {
            "cure_too_strong"
        } else {
            "printed_out_of_bounds"
        };
        assert_eq!(wrong["is"], is, "{kind}: {wrong}");
    }
    for (kind, unit) in [("mass", "g"), ("length", "mm"), ("time", "h"), ("share", "%")] {
        for text in ["", "abc", "-5", "999999999"] {
            let (wrong, _) = told(kind, unit, text);
            assert!(wrong["is"].is_string(), "{kind} {unit} “{text}”: {wrong}");
        }
    }
    // Saltpetre is nearly all nitrate.
    let field = json!({"key": "it", "kind": "printed_nitrate", "unit": "%", "text": "98"});
    assert_eq!(ok(&json!({"read": {"fields": [field]}}))["values"][0]["value"], "98 %");
}
