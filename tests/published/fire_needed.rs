//! What has to be read of the coldest piece, by rule, recipe and method, and what the log is worth by it. Written from the
//! published figures: USDA FSIS chart 2025, FSIS Game from Farm to Table (rev. 2011), FSIS Jerky and Food Safety, CDC MMWR
//! 73(20) 2024, FDA Food Code 2022, UNL extension.

use super::fire_log::{LIT, MIN, batch, first, log, read};
use cure_reckoner_tests::{ok, rub, settings};
use serde_json::{Value, json};

/// Up from the cold to these, ten minutes apart from the hundredth on.
fn cook(hot: &[&str]) -> Vec<Value> {
    let up = [
        read(Some(0), 0, "4 °C"),
        read(Some(0), 60, "40 °C"),
        read(Some(0), 90, "60 °C"),
    ];
    let hot = hot.iter().zip(0..).map(|(t, i)| read(Some(0), 100 + i * 10, t));
    up.into_iter().chain(hot).collect()
}

/// A batch with these steps.
fn with_steps(cut: &str, at_risk: Option<bool>, readings: &[Value], steps: &Value) -> Value {
    let mut one = batch(cut, at_risk, readings);
    one["recipe"]["steps"] = steps.clone();
    one
}

fn heat(batch: &Value, minute: i64) -> String {
    let row = first(batch, minute);
    row["record"]["heat"]["is"].as_str().unwrap_or_default().to_owned()
}

fn needed(batch: &Value) -> [String; 2] {
    let row = first(batch, 0);
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    [text(&row["needed"]["text"]), text(&row["record"]["needed"]["by"])]
}

/// Kind by kind, with nobody asked, nobody at risk and somebody at risk: the lower one for red game only where it was asked
/// for and nobody is at risk.
#[test]
fn the_consumer_rule_and_the_choice() {
    let cases = [
        // cut, at risk, target, what is needed, by which
        ("mallard-breast", None, None, "73.9 °C", "consumer"),
        ("mallard-breast", Some(false), Some("63 °C"), "73.9 °C", "consumer"),
        ("fallow-haunch", None, None, "71.1 °C", "consumer"),
        ("fallow-haunch", None, Some("63 °C"), "71.1 °C", "consumer"),
        ("fallow-haunch", Some(true), Some("63 °C"), "71.1 °C", "consumer"),
        ("fallow-haunch", Some(false), None, "71.1 °C", "consumer"),
        ("fallow-haunch", Some(false), Some("63 °C"), "63 °C", "choice"),
        ("fallow-haunch", Some(false), Some("145 °F"), "62.8 °C", "choice"),
        ("fallow-haunch", Some(false), Some("55 °C"), "62.8 °C", "choice"),
        ("boar-belly", None, None, "73.9 °C", "consumer"),
        ("boar-loin", Some(false), Some("71 °C"), "73.9 °C", "consumer"),
        ("hare-saddle", Some(false), Some("71 °C"), "73.9 °C", "consumer"),
        ("own", Some(false), Some("63 °C"), "73.9 °C", "consumer"),
    ];
    for (cut, at_risk, target, figure, by) in cases {
        let mut one = batch(cut, at_risk, &[]);
        one["pieces"][0]["name"] = "Bear ham".into();
        if let Some(target) = target {
            one["fire"]["target"] = target.into();
        }
        assert_eq!(needed(&one), [figure, by], "{cut} {at_risk:?} {target:?}");
    }
    // Minced, and so pumped: no choice.
    let mut minced = batch("fallow-haunch", Some(false), &[]);
    minced["recipe"]["method"] = "ground".into();
    minced["fire"]["target"] = "63 °C".into();
    assert_eq!(needed(&minced), ["71.1 °C", "consumer"]);
    minced["pieces"][0]["cut"] = "boar-loin".into();
    assert_eq!(needed(&minced), ["73.9 °C", "consumer"]);
}

/// FSIS, Jerky and Food Safety (published): meat 160 °F, birds 165 °F, before it is dried. The recipe's own end counts
/// where it is higher, of all its steps over the heat.
#[test]
fn the_recipe_and_the_method() {
    let dried = json!([{"do": "cook", "until": "63 °C"}, {"do": "dry_out", "lasts": "6 h", "at": "55 °C"}]);
    let plain = json!([{"do": "cook", "until": "63 °C"}]);
    let braised = json!([{"do": "smoke", "until": "90 °C"}, {"do": "cook", "until": "85 °C"}]);
    for (cut, steps, figure, by) in [
        ("venison-strips", &plain, "71.1 °C", "consumer"),
        ("fallow-haunch", &dried, "71.1 °C", "consumer"),
        ("mallard-breast", &dried, "73.9 °C", "consumer"),
        ("mallard-breast", &braised, "90 °C", "recipe"),
        ("fallow-haunch", &plain, "63 °C", "choice"),
    ] {
        let mut one = with_steps(cut, Some(false), &[], steps);
        one["fire"]["target"] = "63 °C".into();
        assert_eq!(needed(&one), [figure, by], "{cut} {steps}");
    }
    // Strips at 64 °C, with nobody at risk and a table that would do for a roast.
    let mut strips = with_steps(
        "venison-strips",
        Some(false),
        &cook(&["64 °C", "64 °C", "64 °C"]),
        &dried,
    );
    strips["fire"]["target"] = "63 °C".into();
    assert_eq!(heat(&strips, 130), "not_yet");
    assert!(first(&strips, 130)["credit"].is_null());
    // At 71.1 °C they are hot enough; dried before that they are not, whatever they reach after it.
    let mut hot = with_steps("venison-strips", Some(false), &cook(&["71.1 °C"]), &dried);
    assert_eq!(heat(&hot, 130), "hot");
    hot["ticks"] = json!([{"of": "step:1", "at": LIT + 110 * MIN}]);
    assert_eq!(heat(&hot, 130), "hot");
    hot["ticks"] = json!([{"of": "step:1", "at": LIT + 90 * MIN}]);
    assert_eq!(heat(&hot, 130), "dried_first");
    // By the recipe's own end: 80 °C is cooked, and not done by it.
    let short = with_steps("mallard-breast", Some(true), &cook(&["80 °C"]), &braised);
    assert_eq!(heat(&short, 130), "not_yet");
}

/// The coldest piece and the way it went: a later, lower reading that nobody struck undoes what was hot, until it is read
/// hot again.
#[test]
fn a_later_colder_reading_decides() {
    for cut in ["mallard-breast", "boar-loin", "fallow-haunch"] {
        let mut readings = cook(&["75 °C"]);
        assert_eq!(heat(&batch(cut, Some(true), &readings), 101), "hot", "{cut}");
        readings.push(json!({"class": 0, "temperature": "62 °C", "at": LIT + 105 * MIN, "sure": true}));
        let row = first(&batch(cut, Some(true), &readings), 106);
        assert_eq!(row["record"]["heat"]["is"], "colder", "{cut}");
        assert_eq!(row["record"]["heat"]["later"], "62 °C");
        assert!(row["reached"].is_null() && row["state"] == "colder" && row["colder"]["text"] == "62 °C");
        // A small fall raises no question, and counts as well.
        let mut small = cook(&["75 °C"]);
        small.push(read(Some(0), 105, "70.5 °C"));
        assert_eq!(heat(&batch(cut, Some(true), &small), 106), "colder", "{cut}");
        // In question it cannot be said; struck it never was.
        for (key, is) in [("sure", "in_question"), ("struck", "hot")] {
            let mut other = readings.clone();
            other[4]["sure"] = false.into();
            other[4][key] = (is == "hot").into();
            assert_eq!(heat(&batch(cut, Some(true), &other), 106), is, "{cut}");
        }
        readings.push(read(Some(0), 130, "74 °C"));
        assert_eq!(heat(&batch(cut, Some(true), &readings), 131), "hot", "{cut}");
    }
    // Within two minutes the coldest counts, whichever was logged last.
    for pair in [["75 °C", "70 °C"], ["70 °C", "75 °C"]] {
        let mut readings = cook(&[]);
        for (t, second) in pair.into_iter().zip([0, 100]) {
            readings.push(json!({"class": 0, "temperature": t, "at": LIT + 100 * MIN + second * 1000, "sure": true}));
        }
        assert_eq!(
            heat(&batch("mallard-breast", Some(true), &readings), 103),
            "not_yet",
            "{pair:?}"
        );
    }
}

/// What rises after it was taken out counts where it was read, and only of a piece that was nearly there.
#[test]
fn carry_over_counts_only_where_it_was_read() {
    let out = |readings: &[Value], minute: i64| {
        let mut one = batch("mallard-breast", Some(true), readings);
        one["ticks"] = json!([{"of": "pull:0", "at": LIT + minute * MIN}]);
        one
    };
    let before = cook(&["71 °C"]);
    let partly = first(&out(&before, 101), 115);
    assert_eq!(
        (partly["record"]["heat"]["is"].as_str(), &partly["record"]["partly"]),
        (Some("not_yet"), &json!(LIT + 101 * MIN))
    );
    let read_after = |t: &str, minute: i64| [&before[..], &[read(Some(0), minute, t)]].concat();
    assert_eq!(heat(&out(&read_after("74 °C", 112), 101), 115), "hot");
    assert_eq!(heat(&out(&read_after("73.8 °C", 112), 101), 115), "not_yet");
    // An hour later it does not rise any more: it was warmed, or is another.
    assert_eq!(heat(&out(&read_after("74 °C", 170), 101), 175), "not_yet");
    // From 60 °C nothing rises to 74.
    let cold = [&cook(&[])[..], &[read(Some(0), 112, "74 °C")]].concat();
    assert_eq!(heat(&out(&cold, 101), 115), "not_yet");
    // Hot enough in the fire, it may cool as it likes once it is out.
    let cooled = [&cook(&["75 °C"])[..], &[read(Some(0), 150, "40 °C")]].concat();
    assert_eq!(heat(&out(&cooled, 101), 150), "hot");
    assert_eq!(heat(&batch("mallard-breast", Some(true), &cooled), 150), "in_question");
}

/// Compared as it was read and shown in the same step: what is needed never stands beside the same figure and `not hot
/// enough`. 160 °F is printed as 71.1 °C by USDA.
#[test]
fn what_is_short_never_looks_like_what_is_needed() {
    for (cut, needed) in [
        ("mallard-breast", 165.0),
        ("fallow-haunch", 160.0),
        ("boar-belly", 165.0),
    ] {
        for tenth in -12..=12 {
            let in_f = needed + f64::from(tenth) / 10.0;
            let in_c = ((needed - 32.0) / 0.18).round() / 10.0 + f64::from(tenth) / 10.0;
            for (typed, met) in [
                (format!("{in_f:.1} °F"), tenth >= 0),
                (format!("{in_c:.1} °C"), tenth >= 0),
            ] {
                for units in ["metric", "us"] {
                    let one = batch(cut, Some(true), &cook(&[&typed]));
                    let mut settings = cure_reckoner_tests::settings("0.1 g");
                    settings["units"] = units.into();
                    let sheet = cure_reckoner_tests::ok(&json!({
                        "fire_log": {"batch": one, "now": LIT + 101 * MIN, "settings": settings}
                    }));
                    let row = &sheet["classes"][0];
                    let hot = row["record"]["heat"]["is"] == "hot";
                    assert_eq!(hot, met, "{cut} {typed}");
                    let number = |f: &Value| f["num"].as_str().and_then(|t| t.parse::<f64>().ok()).expect("a figure");
                    let (last, least) = (number(&row["last"]), number(&row["needed"]));
                    if !hot {
                        assert!(last < least, "{cut} {typed} in {units}: {last} of {least}");
                    }
                }
            }
        }
    }
}

/// No target below what has to be read without the time that the table wants there; none for guests at risk, none where
/// nobody was asked; and to be pulled only once it is earned.
#[test]
fn a_lower_target_has_its_hold() {
    let at = |cut: &str, at_risk: Option<bool>, target: &str, readings: &[Value]| {
        let mut one = batch(cut, at_risk, readings);
        one["fire"]["target"] = target.into();
        first(&one, 130)
    };
    // 145 °F is 143 by a thermometer that shows 2 °F too much: 19.8 min for turkey at 143 °F (FSIS 2021, quoted).
    let bird = at("mallard-breast", Some(false), "145 °F", &cook(&["62.8 °C"]));
    assert_eq!(
        (&bird["target"]["text"], &bird["hold"]),
        (&json!("62.8 °C"), &json!("20 min"))
    );
    assert!(bird["reached"].is_null() && bird["state"] == "not_yet", "{bird}");
    let held: Vec<&str> = vec!["63 °C"; 4];
    let bird = at("mallard-breast", Some(false), "145 °F", &cook(&held));
    assert_eq!(
        (bird["state"].as_str(), bird["reached"].is_null()),
        (Some("by_table"), false)
    );
    // Below the floor of the table (136 °F and 2 °F) there is no hold, and no target.
    let low = at("mallard-breast", Some(false), "137 °F", &[]);
    assert_eq!(
        (&low["target"]["text"], &low["hold"]),
        (&json!("73.9 °C"), &Value::Null)
    );
    for at_risk in [None, Some(true)] {
        let bird = at("mallard-breast", at_risk, "145 °F", &cook(&held));
        assert_eq!(
            (&bird["target"]["text"], &bird["hold"]),
            (&json!("73.9 °C"), &Value::Null)
        );
        assert!(bird["reached"].is_null() && bird["state"] == "not_yet", "{bird}");
    }
    // A higher one is the cook's own: pulled at it, not before.
    let higher = at("mallard-breast", None, "80 °C", &cook(&["75 °C"]));
    assert_eq!(
        (higher["state"].as_str(), higher["reached"].is_null()),
        (Some("made_it"), true)
    );
}

/// The way up, the gap in it, and the chill nobody watched, as facts. UNL extension: 4 h; Food Code 3-501.14: 2 h and 4 h
/// more; FSIS 2021 option 1: 1.5 h and 5 h more.
#[test]
fn slow_late_and_unwatched() {
    let up = |readings: &[Value], minute: i64| {
        first(&batch("mallard-breast", None, readings), minute)["record"]["come_up"].clone()
    };
    let begun = [read(Some(0), 0, "4 °C"), read(Some(0), 120, "30 °C")];
    assert_eq!(up(&begun[..1], 120)["is"], "not_begun");
    assert_eq!(up(&begun, 239), json!({"is": "running", "minutes": 239, "most": 240}));
    assert_eq!(up(&begun, 241), json!({"is": "slow", "minutes": 241, "most": 240}));
    let hot = |minute| [&begun[..], &[read(Some(0), minute, "60 °C")]].concat();
    assert_eq!(up(&hot(240), 600), json!({"is": "fine", "minutes": 240, "most": 240}));
    assert_eq!(up(&hot(241), 600), json!({"is": "slow", "minutes": 241, "most": 240}));
    assert_eq!(up(&begun[1..], 121), json!({"is": "unseen", "first": "30 °C"}));
    // The chill, pulled at 75 °C at minute 100.
    let chill = |cold: &[(i64, &str)], minute: i64| {
        let cold = cold.iter().map(|(at, t)| read(Some(0), *at, t));
        let mut one = batch(
            "mallard-breast",
            None,
            &cook(&["75 °C"]).into_iter().chain(cold).collect::<Vec<_>>(),
        );
        one["ticks"] = json!([{"of": "pull:0", "at": LIT + 100 * MIN}]);
        first(&one, minute)["record"]["chill"].clone()
    };
    assert_eq!(chill(&[], 150), json!({"is": "running", "until": LIT + 220 * MIN}));
    // Nobody read it within two hours: its time is over by every option.
    assert_eq!(chill(&[], 221)["is"], "unwatched");
    assert_eq!(
        chill(&[(215, "21 °C")], 221),
        json!({"is": "running", "until": LIT + 460 * MIN})
    );
    // 5 °C is 41 °F: cold by the true limit, with no hidden degree.
    let done = chill(&[(190, "25 °C"), (215, "21 °C"), (400, "5 °C")], 500);
    assert_eq!(done, json!({"is": "done", "at": LIT + 400 * MIN}));
    assert_eq!(
        chill(&[(190, "25 °C"), (215, "21 °C"), (400, "5.1 °C")], 500)["is"],
        "unwatched"
    );
    // Late by both, whatever lay between: below 54.4 °C at 110, above 26.6 at 230 and above 21.1.
    assert_eq!(
        chill(&[(110, "50 °C"), (240, "30 °C"), (500, "4 °C")], 600)["is"],
        "late"
    );
    // A chill within its time by one option is in time: 130 to 80 °F in 1.5 h, then 40 °F within 5 h.
    let slow_end = [
        (130, "50 °C"),
        (180, "27 °C"),
        (185, "26 °C"),
        (225, "22 °C"),
        (470, "4.4 °C"),
    ];
    assert_eq!(chill(&slow_end, 600), json!({"is": "done", "at": LIT + 470 * MIN}));
}

/// What was only partly cooked is finished at once (FSIS, partial cooking, quoted): taken out, or the recipe went on.
#[test]
fn partly_cooked() {
    let steps = json!([{"do": "smoke", "until": "74 °C"}, {"do": "chill"}, {"do": "pack"}]);
    let mut one = with_steps("mallard-breast", None, &cook(&["68 °C"]), &steps);
    let partly = |one: &Value| first(one, 120)["record"]["partly"].clone();
    assert_eq!(partly(&one), Value::Null);
    one["ticks"] = json!([{"of": "step:1", "at": LIT + 110 * MIN}]);
    assert_eq!(partly(&one), json!(LIT + 110 * MIN));
    one["ticks"] = json!([{"of": "pull:0", "at": LIT + 105 * MIN}]);
    assert_eq!(partly(&one), json!(LIT + 105 * MIN));
    assert_eq!(log(&one, 120)["classes"][0]["chill"], json!([]));
}

/// A card goes to another kitchen: a step that ends under what its meat has to read says so, by the chosen cut; where none
/// is chosen by the least that any kind asks for. 165 °F birds, 160 °F other game (USDA FSIS, published), 165 °F wild boar
/// (CDC, MMWR 73(20), 2024, published).
#[test]
fn a_card_says_where_a_step_ends_too_low() {
    let mut us = settings("0.1 g");
    us["units"] = json!("us");
    let low = |until: &str, cut: Option<&str>| {
        let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
        recipe["steps"] = json!([{"do": "cure"}, {"do": "smoke", "at": "225 °F", "until": until}]);
        let mut ask = json!({"recipe": recipe, "settings": us});
        if let Some(cut) = cut {
            ask["cut"] = json!(cut);
        }
        ok(&json!({"card": ask}))["low"].clone()
    };
    for (until, cut, least) in [
        ("160 °F", Some("mallard-breast"), Some("165 °F")),
        ("165 °F", Some("mallard-breast"), None),
        ("160 °F", Some("fallow-haunch"), None),
        ("145 °F", Some("fallow-haunch"), Some("160 °F")),
        ("160 °F", Some("boar-belly"), Some("165 °F")),
        ("160 °F", None, None),
        ("155 °F", None, Some("160 °F")),
        ("74 °C", None, None),
    ] {
        let said = low(until, cut);
        let is = said[0]["least"].as_str();
        assert_eq!(is, least, "{until} {cut:?} {said}");
        if is.is_some() {
            assert_eq!((&said[0]["step"], &said[0]["until"]), (&json!(1), &json!(until)));
            assert_eq!(said[0]["known"], json!(cut.is_some()));
        }
    }
}
