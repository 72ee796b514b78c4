//! Slips that cooks make, each answered so that nobody is hurt. Common practice, no source, unless said.

use cure_reckoner_tests::{
    batch, exact, next_keys, ok, problems, remark, rub, settings, slips_asked, texts, weigh_out, weighed_in,
};
use serde_json::{Value, json};

fn trial() -> Value {
    batch(&rub("6.25 %", "150 ppm", "2.2 %"), 16, "1480 g")
}

fn neat(at: u64, weight: &str) -> Value {
    json!({"of": "cure:0", "at": at, "weight": weight, "nitrite": "6.25 %", "nitrate": "0 %"})
}

fn next(batch: &Value) -> Value {
    ok(&json!({"next": {"batches": [{"id": "b", "batch": batch}], "now": 1_000_000, "settings": settings("0.1 g")}}))
}

/// Cure that is in is never asked for again.
#[test]
fn the_cure_is_not_asked_for_twice() {
    let mut done = trial();
    assert_eq!(next(&done)["jobs"][0]["does"]["is"], "weigh_cure");
    done["ticks"] = json!([neat(1000, "3.5 g")]);
    assert_eq!(next(&done)["jobs"][0]["does"]["is"], "weigh_rest");
    done["ticks"] = json!([neat(1000, "3.5 g"), {"of": "line:0", "at": 2000, "weight": "29.3 g"}]);
    assert_eq!(next(&done)["jobs"][0]["does"]["is"], "start");
    let mut spooned = trial();
    spooned["put_in"] = json!({"amount": "3.5 g", "nitrite": "6.25 %"});
    assert_eq!(next(&spooned)["jobs"][0]["does"]["is"], "weigh_rest");
    assert!(
        texts(&weigh_out(&spooned, "0.1 g"), "bowl", "add").len() == 1,
        "the salt alone"
    );
}

/// A portion that was ticked keeps its own strength when the batch goes over to a premix.
#[test]
fn neat_cure_in_the_bowl_is_not_taken_for_premix() {
    let mut mixed = trial();
    mixed["ticks"] = json!([neat(1000, "3.5 g")]);
    mixed["premix"] = json!(true);
    let sheet = weigh_out(&mixed, "0.1 g");
    assert_eq!(
        sheet["bowl"][0]["cure"],
        json!({"is": "neat", "strength": {"nitrite": "6.25 %", "nitrate": null}})
    );
    assert!(sheet["bowl"][0]["changed"].is_null());
    assert_eq!(sheet["verdict"]["outcome"], "in_range");
    assert!(exact(&sheet["verdict"], "nitrite")[1] > 147.0);
}

/// A premix is never called cure.
#[test]
fn a_premix_says_that_it_is_one() {
    let mut premixed = trial();
    premixed["premix"] = json!(true);
    let sheet = weigh_out(&premixed, "0.1 g");
    assert_eq!(sheet["bowl"][0]["cure"], json!({"is": "one_in", "parts": 10}));
    assert_eq!(
        sheet["verdict"]["says"][0],
        json!({
            "is": "goes_in", "only_asked": false, "on": {"is": "meat", "green": "1480 g"},
            "portions": [{"said": "35.5 g", "of": "premix", "neat": "3.55", "grams": null}]
        })
    );
}

/// What was ticked and what was put in by the spoon both count, and so does a cure that was ticked twice.
#[test]
fn every_portion_counts() {
    let mut both = trial();
    both["ticks"] = json!([neat(1000, "3.5 g")]);
    both["put_in"] = json!({"amount": "3.5 g", "nitrite": "6.25 %"});
    let verdict = weigh_out(&both, "0.1 g")["verdict"].clone();
    assert!((exact(&verdict, "nitrite")[1] - 7.0 * 62500.0 / 1480.0).abs() < 0.001);
    assert_eq!(verdict["outcome"], "over");
    let mut twice = trial();
    twice["ticks"] = json!([neat(1000, "3.5 g"), neat(2000, "3.5 g")]);
    assert_eq!(weigh_out(&twice, "0.1 g")["verdict"]["outcome"], "over");
    // Also where the recipe no longer asks for cure.
    let mut dropped = trial();
    dropped["ticks"] = json!([neat(1000, "30 g")]);
    dropped["recipe"]["cures"] = json!([]);
    assert_eq!(weigh_out(&dropped, "0.1 g")["verdict"]["word"], "over");
}

/// Cure that is on the meat gets the advice for cure that is on the meat.
#[test]
fn too_much_in_the_bowl_is_not_told_to_aim_lower() {
    let mut over = trial();
    over["ticks"] = json!([neat(1000, "10.5 g"), {"of": "rub", "at": 2000}]);
    let verdict = weigh_out(&over, "0.1 g")["verdict"].clone();
    let next = next_keys(&verdict);
    assert!(next[0] == "do_not_taste" && next.contains(&"someone_ate"), "{next:?}");
}

/// Hanging for months excuses nothing but a weighed dry rub, and that is held until it is measured once it is on.
#[test]
fn hanging_for_months_is_no_pass() {
    let ask = |method: &str, amount: &str| {
        let mut ask = json!({"method": method, "green": "3000 g", "eaten": "hung_for_months", "put_in": {"amount": amount, "nitrite": "6.25 %"}, "settings": settings("0.1 g")});
        if method == "cover_brine" {
            ask["water"] = json!("100 g");
        }
        ok(&json!({"check_dose": ask}))
    };
    assert_eq!(ask("cover_brine", "17 g")["outcome"], "over");
    let spoon = ask("rub", "1 tbsp");
    assert_eq!(
        (spoon["outcome"].as_str(), spoon["held"].as_bool()),
        (Some("cannot_tell"), Some(true))
    );
    assert!(slips_asked(&spoon).contains(&"tablespoon"), "{spoon}");
    let mut cooked = rub("6.25 %", "150 ppm", "2.2 %");
    cooked["eaten"] = json!("hung_for_months");
    cooked["steps"] = json!([{"do": "cook"}]);
    let found = problems(&json!({"check": {"recipe": cooked}}));
    assert_eq!(
        (found[0]["code"].as_str(), found[0]["field"].as_str()),
        (Some("conflict"), Some("recipe.eaten"))
    );
}

/// Pink salt for the table is no cure, and a packet of 625 % is read again.
#[test]
fn a_packet_that_cannot_be() {
    let ask = |nitrite: &str| json!({"check_dose": {"method": "rub", "green": "1480 g", "put_in": {"amount": "5 g", "nitrite": nitrite}, "settings": settings("0.1 g")}});
    let none = ok(&ask("0 %"));
    assert_eq!(
        (none["word"].as_str(), none["held"].as_bool()),
        (Some("no_cure"), Some(true))
    );
    assert_eq!(none["next"][0], json!({"is": "treat_as_fresh", "put_in": true}));
    assert_eq!(problems(&ask("625 %"))[0]["field"], "put_in.nitrite");
    // A comma too far right could be true: then it is judged, and held.
    let strong = ok(&ask("62.5 %"));
    assert_eq!(
        (strong["word"].as_str(), strong["held"].as_bool()),
        (Some("over"), Some(true))
    );
}

/// A cure under another name does not slip past the verdict.
#[test]
fn a_cure_under_another_name_is_refused() {
    for name in ["Pink cure no. 1", "Saltpetre", "sodium NITRITE", "curing salt", "Cure"] {
        let mut hidden = rub("6.25 %", "150 ppm", "2.2 %");
        hidden["lines"][0] = json!({"item": "own", "name": name, "share": {"of": "green_weight", "amount": "2 %"}});
        let found = problems(&json!({"check": {"recipe": hidden}}));
        assert_eq!(found[0]["field"], "recipe.lines[0].name", "{name}");
    }
}

/// Nitrate alone has no least in the rule: it cannot be told, and over 500 ppm it is over (21 CFR 172.170, published).
#[test]
fn nitrate_alone_cannot_be_told() {
    let ask = |amount: &str| {
        ok(
            &json!({"check_dose": {"method": "rub", "green": "1000 g", "put_in": {"amount": amount, "nitrite": "0 %", "nitrate": "98 %"}, "settings": settings("0.01 g")}}),
        )
    };
    assert_eq!(ask("0.3 g")["outcome"], "cannot_tell");
    assert_eq!(ask("0.6 g")["outcome"], "over");
}

/// Weights of each piece were read once and count many times: the scale's half-step does too.
#[test]
fn a_weight_of_each_is_as_uncertain_as_its_count() {
    let mut each = trial();
    each["pieces"] = json!([{"cut": "mallard-breast", "count": 40, "weight": "37 g", "each": true}]);
    let [low, _, high] = exact(&weigh_out(&each, "1 g")["verdict"], "nitrite");
    // 3 g ± 0.5 g on 1480 g ± 20 g
    assert!(
        (low - 2.5 * 62500.0 / 1500.0).abs() < 0.001 && (high - 3.5 * 62500.0 / 1460.0).abs() < 0.001,
        "{low} to {high}"
    );
}

/// Pieces with no figure of their own are weighed before anything is reckoned, and the batch stays on the list.
#[test]
fn pieces_without_a_figure_are_weighed_first() {
    let mut geese = trial();
    geese["pieces"] = json!([{"cut": "goose-breast", "count": 4}]);
    let found = problems(&json!({"weigh_out": {"batch": geese, "settings": settings("0.1 g")}}));
    assert_eq!(found[0]["code"], "missing");
    assert_eq!(next(&geese)["jobs"][0]["does"]["is"], "weigh_pieces");
    geese["pieces"] = json!([]);
    assert_eq!(next(&geese)["jobs"][0]["does"]["is"], "say_pieces");
}

/// What the user named may be boar or bear, or a bird: at the fire both rules stand (CDC, MMWR 73(20), 2024, and USDA FSIS
/// safe temperature chart, 2025, published). At the dose only what can still be done otherwise there is said.
#[test]
fn unnamed_meat_gets_the_cautions_that_hurt_most() {
    let mut own = trial();
    own["recipe"]["steps"] = json!([{"do": "smoke", "lasts": "4 h", "at": "110 °C"}]);
    let heat = |pieces: Value| {
        let mut batch = own.clone();
        batch["pieces"] = pieces;
        let sheet = weigh_out(&batch, "0.1 g");
        let cautions = sheet["verdict"]["cautions"].as_array().expect("cautions").iter();
        let keys: Vec<_> = cautions.filter_map(|c| c["key"].as_str()).collect();
        assert_eq!(keys, ["nitrite-locked", "weigh-it", "keep-cold", "local-rules"]);
        batch["ticks"] = json!([{"of": "rub", "at": 2000}]);
        let list = next(&weighed_in(batch, 1000));
        let said = list["jobs"][0]["cautions"].as_array().expect("cautions").clone();
        (said.contains(&json!("boar-165")), said.contains(&json!("birds-165")))
    };
    let bear = json!({"cut": "own", "name": "Bear ham", "count": 1, "weight": "2 kg"});
    let duck = json!({"cut": "mallard-breast", "count": 2, "weight": "200 g"});
    assert_eq!(heat(json!([bear, duck])), (true, true));
    assert_eq!(heat(json!([bear])), (true, true));
    assert_eq!(heat(json!([duck])), (false, true));
}

/// Names hold no characters that turn or hide text, and are one line.
#[test]
fn names_are_what_they_look_like() {
    let nothing_to_see = ["", "  ", "\u{200d}\u{200c}", "\u{3164}", "\u{2800}\u{2800}", "\u{ad}"];
    let turned = [
        "Duck\u{202e}kcuD",
        "Du\u{200b}ck",
        "Duck\nbreast",
        "Du\u{ad}ck",
        "Duck\u{feff}",
    ];
    for name in nothing_to_see.into_iter().chain(turned) {
        let mut turned = rub("6.25 %", "150 ppm", "2.2 %");
        turned["name"] = json!(name);
        assert_eq!(
            problems(&json!({"check": {"recipe": turned}}))[0]["field"],
            "recipe.name",
            "{name:?}"
        );
    }
    // A family, a flag, and letters that are joined or kept apart.
    for name in [
        "\u{1f468}\u{200d}\u{1f469}\u{200d}\u{1f467} duck",
        "\u{1f1ec}\u{1f1e7}",
        "می\u{200c}خواهم",
        "❤\u{fe0f}",
    ] {
        let mut named = rub("6.25 %", "150 ppm", "2.2 %");
        named["name"] = json!(name);
        assert_eq!(
            ok(&json!({"check": {"recipe": named}})),
            json!({"good": true}),
            "{name:?}"
        );
    }
}

/// A day is a day of the calendar (Gregorian, ISO 8601; published).
#[test]
fn a_day_that_is_none_is_refused() {
    for (day, good) in [
        ("2026-11-14", true),
        ("2024-02-29", true),
        ("2026-02-29", false),
        ("2026-04-31", false),
        ("2026-+1-14", false),
        ("14.11.2026", false),
    ] {
        let mut killed = trial();
        killed["killed"] = json!(day);
        let answer = cure_reckoner_tests::answer(&json!({"check": {"batch": killed}}));
        assert_eq!(answer["ok"].is_object(), good, "{day}");
    }
}

/// What was weighed on a coarse scale stays as uncertain as it was when a finer scale is set later.
#[test]
fn a_finer_scale_does_not_bless_what_a_coarse_one_weighed() {
    let mut coarse = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 16, "1500 g");
    let ticked = weigh_out(&coarse, "1 g")["bowl"][0]["tick"].clone();
    assert_eq!(
        (ticked["weight"].as_str(), ticked["step"].as_str()),
        (Some("3 g"), Some("1 g"))
    );
    coarse["ticks"] = json!([ticked]);
    for step in ["1 g", "0.1 g", "0.01 g"] {
        let verdict = weigh_out(&coarse, step)["verdict"].clone();
        assert_eq!(verdict["word"], "may_be_too_low", "{step}");
        assert_eq!(remark(&verdict, "scale_step")["step"], "1", "{step}");
    }
    let mut put = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 16, "1500 g");
    put["put_in"] = json!({"amount": "3 g", "nitrite": "6.25 %", "step": "1 g"});
    assert_eq!(weigh_out(&put, "0.01 g")["verdict"]["word"], "may_be_too_low");
}

/// Cure that the scale cannot show at all is never ticked as done.
#[test]
fn nought_grams_of_cure_cannot_be_ticked() {
    let sheet = weigh_out(&batch(&rub("6.25 %", "150 ppm", "2.2 %"), 4, "416 g"), "1 g");
    assert_eq!(
        (sheet["bowl"][0]["weight"].as_str(), sheet["can_tick"].as_bool()),
        (Some("0 g"), Some(false))
    );
    assert!(
        sheet["remarks"]
            .as_array()
            .is_some_and(|r| { r.iter().any(|t| t["is"] == "cure_below_step") })
    );
}

/// A nought too many in a weight is asked about, on the board and on the list.
#[test]
fn a_nought_too_many_is_doubted() {
    for (weight, doubted) in [("14800 g", true), ("1480 g", false), ("1.48 g", true)] {
        let pieces = json!([{"cut": "mallard-breast", "count": 12, "weight": weight}]);
        let sheet = ok(&json!({"pieces": {"pieces": pieces, "settings": settings("0.1 g")}}));
        assert_eq!(sheet["rows"][0]["odd"].is_object(), doubted, "{weight}");
        let mut heavy = trial();
        heavy["pieces"] = pieces;
        let sheet = weigh_out(&heavy, "0.01 g");
        let mut remarks = sheet["remarks"].as_array().expect("remarks").iter();
        assert_eq!(remarks.any(|r| r["is"] == "odd_weight"), doubted, "{weight}");
    }
}

/// A packet's strength is read in per cent alone.
#[test]
fn a_packet_is_read_in_per_cent() {
    let read =
        |text: &str| ok(&json!({"read": {"fields": [{"key": "n", "kind": "printed", "text": text, "unit": "%"}]}}));
    assert_eq!(read("6.25")["values"][0]["value"], "6.25 %");
    for (text, wrong) in [
        ("150 ppm", "printed_wrong_unit"),
        ("62.5 g/kg", "printed_wrong_unit"),
        ("", "printed_missing"),
    ] {
        let problem = &read(text)["problems"][0];
        assert_eq!(
            (&problem["field"], &problem["wrong"]["is"]),
            (&json!("n"), &json!(wrong)),
            "{text}"
        );
    }
}

/// CDC, trichinellosis, published: raw game can carry parasites. Said of what is hung and eaten raw, and of nothing else.
#[test]
fn the_caution_for_raw_meat_stands_only_where_it_is_eaten_raw() {
    let said = |eaten: &str| {
        let ask = json!({"method": "rub", "green": "3000 g", "eaten": eaten, "put_in": {"amount": "7.2 g", "nitrite": "6.25 %"}, "settings": settings("0.1 g")});
        let verdict = ok(&json!({"check_dose": ask}));
        verdict["cautions"].to_string().contains("raw-hung")
    };
    assert!(said("hung_for_months") && !said("cooked"));
}
