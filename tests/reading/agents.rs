//! A second agent under another name is counted, or nothing is said of the dose: in what is read, on a card, in a link, on a
//! batch. What a packet says decides; what a thing is called never clears it.

use cure_reckoner_tests::{batch, exact, ok, settings};
use serde_json::{Value, json};

const RUB: &str = "Rub for 1 kg of meat\n25 g salt\n";

fn read(text: &str, answers: &Value) -> Value {
    ok(&json!({"read_recipe": {"text": text, "answers": answers, "settings": settings("0.1 g")}}))
}

fn word(answer: &Value) -> &str {
    answer["verdict"]["word"].as_str().unwrap_or("cannot_say_yet")
}

/// Names of an agent, plain and disguised, and of things that nobody here knows.
const NAMES: [&str; 30] = [
    "pinksalt",
    "pink salt",
    "E250",
    "E 250",
    "E252",
    "NaNO2",
    "KNO3",
    "nitre",
    "niter",
    "saltpetre",
    "salt peter",
    "salt petre",
    "potassium nitrate",
    "sodium nitrate",
    "sodium nitrite",
    "Pökelsalz",
    "Poekelsalz",
    "nitritpökelsalz",
    "celery powder",
    "cure",
    "cu\u{ad}re no. 1",
    "c\u{200b}ure no. 1",
    "сure no. 1",
    "ρink sаlt",
    "ｃｕｒｅ ｎｏ. 2",
    "𝐜𝐮𝐫𝐞",
    "Auntie's maroon crystals",
    "Number Nine Meat Magic",
    "rosy salt",
    "TCM",
];

/// Whatever it is called, neither alone nor beside a cure does it pass for nothing.
#[test]
fn no_name_passes_for_nothing() {
    for name in NAMES {
        for how in ["2.5 g", "1/2 tsp", "2 tsp per kg", "0.25 %", "some", "1 packet of"] {
            let alone = read(&format!("{RUB}{how} {name}"), &json!([]));
            assert_ne!(word(&alone), "no_cure", "{how} {name}");
            let beside = read(&format!("{RUB}2.5 g cure no. 1\n{how} {name}"), &json!([]));
            let word = word(&beside);
            assert!(
                ["cannot_say_yet", "cannot_tell", "may_be_over", "over"].contains(&word),
                "{how} {name}: {word}"
            );
        }
    }
}

/// Published: 6 lb salt, 3 lb sugar and 1 oz nitrite or 3 oz nitrate per 100 lb (Clemson HGIC 3603); the ppm are computed.
/// Saltpetre is 1 in 1.18952 of sodium nitrate by molar mass (computed). What a text asks for is weighed on the scale of the
/// settings: cure and meat may each be off by half its step of 0.1 g, whichever way is worse.
#[test]
fn pure_salts_are_counted_as_pure() {
    let text = |agent: &str| format!("6 lb salt\n3 lb sugar\n{agent}\nfor 100 lb of pork, dry rub");
    let nitrite = read(&text("1 oz sodium nitrite (100 %)"), &json!([]));
    let weighed = |ounces: f64, [low, typical, high]: [f64; 3]| {
        let (grams, meat) = (ounces * 28.349_523_125, 45_359.237);
        let ppm = |cure: f64, meat: f64| cure / meat * 1e6;
        assert!((typical - ppm(grams, meat)).abs() < 1e-9, "{typical}");
        assert!((low - ppm(grams - 0.05, meat + 0.05)).abs() < 0.001, "{low}");
        assert!((high - ppm(grams + 0.05, meat - 0.05)).abs() < 0.001, "{high}");
    };
    weighed(1.0, exact(&nitrite["verdict"], "nitrite"));
    assert_eq!(word(&nitrite), "over");
    let nitrate = read(&text("3 oz sodium nitrate"), &json!([]));
    weighed(3.0, exact(&nitrate["verdict"], "nitrate"));
    let saltpetre = read(&text("2 oz saltpetre"), &json!([]));
    let [_, usual, _] = exact(&saltpetre["verdict"], "nitrate");
    assert!((usual - 1250.0 / 1.189_52).abs() < 0.01, "{usual}");
    // On the card the list weighs it back, and no salt for the table is taken off for it.
    let recipe = &saltpetre["recipe"];
    assert_eq!(recipe["cures"][0]["item"], "pure-potassium-nitrate");
    let card = ok(&json!({"card": {"recipe": recipe, "weight": "100 lb", "settings": settings("0.1 g")}}));
    let rows: Vec<f64> = card["rows"]
        .as_array()
        .expect("rows")
        .iter()
        .filter_map(|r| r["amount"]["num"].as_str()?.parse().ok())
        .collect();
    assert!(
        (rows[0] - 56.7).abs() < 0.11 && (rows[1] - 2721.6).abs() < 0.2,
        "{rows:?}"
    );
}

/// A pure salt of another strength than its own is refused: what its packet says goes under the cure by its packet.
#[test]
fn a_pure_salt_has_one_strength() {
    let recipe = |item: &str, nitrite: &str| {
        json!({"check": {"recipe": {"name": "Trial", "tag": "TR", "method": "rub",
            "cures": [{"item": item, "nitrite": nitrite, "nitrate": "0 %", "aim": "150 ppm"}]}}})
    };
    assert!(cure_reckoner_tests::answer(&recipe("pure-sodium-nitrite", "100 %"))["ok"].is_object());
    for (item, nitrite) in [("pure-sodium-nitrite", "6.25 %"), ("pure-sodium-nitrate", "100 %")] {
        assert!(
            cure_reckoner_tests::answer(&recipe(item, nitrite))["problems"].is_array(),
            "{item}"
        );
    }
}

/// Of a plant's nitrate nobody knows how much: it is asked, and without an answer the card is refused with the reason.
#[test]
fn a_vegetable_cure_is_refused_until_its_strength_is_known() {
    let text = "Rub for 5 lb of duck\n30 g salt\n20 g celery powder";
    let open = read(text, &json!([]));
    assert_eq!(open["questions"][0]["key"], "strength:20 g celery powder");
    let unknown = read(text, &json!([["strength:20 g celery powder", "0 %"]]));
    assert_eq!(unknown["recipe"], Value::Null);
    assert_eq!(unknown["bar"]["is"], "strength_unknown");
    assert_eq!(unknown["bar"]["text"], "20 g celery powder");
    assert_eq!(word(&unknown), "cannot_say_yet");
    let known = read(text, &json!([["strength:20 g celery powder", "2 %"]]));
    // 20 g of 2 % on 2268 g: 176.4 ppm.
    let [_, usual, _] = exact(&known["verdict"], "nitrite");
    assert!((usual - 176.37).abs() < 0.01, "{usual}");
}

/// What the pantry does not know is asked about once, by what its packet says.
#[test]
fn what_is_not_known_is_asked_about_by_its_packet() {
    let text = format!("{RUB}2.5 g cure no. 1\n5 g marsh dust\n3 g reed ash");
    let key = "agent:marsh dust / reed ash";
    let open = read(&text, &json!([]));
    assert_eq!(open["questions"].as_array().map(Vec::len), Some(1));
    assert_eq!(open["questions"][0]["key"], key);
    assert_eq!(
        (word(&open), &open["verdict"]["held"]),
        ("cannot_say_yet", &json!(true))
    );
    let none = read(&text, &json!([[key, "none"]]));
    assert_eq!(word(&none), "in_range");
    let [dust, ash] = [1, 2].map(|at| none["recipe"]["lines"][at]["agent"].clone());
    assert_eq!((dust, ash), (json!("none"), json!("none")));
    // "Not sure" makes a card that is held.
    let unsure = read(&text, &json!([[key, "unsure"]]));
    assert_eq!(word(&unsure), "cannot_say_yet");
    held_everywhere(&unsure["recipe"]);
    // One that names nitrite is a cure by its packet, and counted: 5 g of 0.6 % beside 156.25 ppm is over nothing yet.
    let answers = json!([[key, "yes 0"], ["strength:5 g marsh dust", "0.6 %"]]);
    let yes = read(&text, &answers);
    let [_, usual, _] = exact(&yes["verdict"], "nitrite");
    assert!((usual - 186.25).abs() < 0.001, "{usual}");
    assert_eq!(word(&yes), "cannot_say_yet", "nobody has said anything of the ash");
    assert_eq!(yes["recipe"]["cures"][1]["item"], "cure-packet");
    // A name that says nitrite is not cleared by a no.
    let named = read(
        &format!("{RUB}5 g my E 250 blend of herbs"),
        &json!([["agent:my E 250 blend of herbs", "none"]]),
    );
    assert_ne!(word(&named), "no_cure");
}

/// What was not read holds the dose, stays on the card and in the link, and holds there too.
#[test]
fn what_was_not_read_stays_until_it_is_settled() {
    let text = format!("{RUB}2.5 g cure no. 1\na hat full of wishes");
    let key = "agent:a hat full of wishes";
    assert_eq!(word(&read(&text, &json!([]))), "cannot_say_yet");
    let settled = read(&text, &json!([[key, "none"]]));
    assert_eq!(
        (word(&settled), &settled["recipe"]["unread"]),
        ("in_range", &Value::Null)
    );
    let unsure = read(&text, &json!([[key, "unsure"]]));
    assert_eq!(unsure["recipe"]["unread"], json!(["a hat full of wishes"]));
    held_everywhere(&unsure["recipe"]);
}

/// The card, the link and the weigh-out of a recipe in doubt say nothing of its dose, and hold it.
fn held_everywhere(recipe: &Value) {
    let opened = link(recipe);
    assert_eq!(link(&opened), opened);
    assert_eq!(opened["unread"], recipe["unread"]);
    let card = ok(&json!({"card": {"recipe": opened, "settings": settings("0.1 g")}}));
    assert_eq!(
        (word(&card), &card["verdict"]["held"]),
        ("cannot_say_yet", &json!(true))
    );
    let sheet = ok(&json!({"weigh_out": {"batch": batch(&opened, 2, "1 kg"), "settings": settings("0.1 g")}}));
    assert_eq!(
        (word(&sheet), &sheet["verdict"]["held"]),
        ("cannot_say_yet", &json!(true))
    );
    assert_ne!(sheet["verdict"]["may_hold"], json!([]));
    // Neither is it said of the batch that it has no cure in it.
    let standing = json!({"standing": {"batch": batch(&opened, 2, "1 kg"), "now": 0, "settings": settings("0.1 g"),
        "frozen": false, "vacuum": false}});
    let assured = ok(&standing)["assured"].clone();
    assert_eq!((&assured["dose"], &assured["no_cure"]), (&json!(false), &json!(false)));
}

fn link(recipe: &Value) -> Value {
    let link = ok(&json!({"link": {"recipe": recipe, "base": "https://example.org/"}}));
    ok(&json!({"open_link": {"text": link["link"]}}))["recipe"].clone()
}

/// Records and links from before this was asked open as they were, and are asked now.
#[test]
fn old_records_and_links_open_and_are_asked() {
    let old = json!({"name": "Old card", "tag": "OC", "method": "rub",
        "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "150 ppm"}],
        "lines": [{"item": "own", "name": "pinksalt", "share": {"of": "green_weight", "amount": "0.25 %"}}]});
    let check = cure_reckoner_tests::answer(&json!({"check": {"recipe": old}}));
    assert!(check["ok"].is_object(), "{check}");
    held_everywhere(&link(&old));
    let mut said = old.clone();
    said["lines"][0]["agent"] = json!("none");
    held_everywhere(&link(&said));
    let mut bare = old.clone();
    bare["cures"] = json!([]);
    held_everywhere(&link(&bare));
    let mut plain = said;
    plain["lines"][0]["name"] = json!("Marsh dust");
    let card = ok(&json!({"card": {"recipe": link(&plain), "settings": settings("0.1 g")}}));
    assert_eq!(word(&card), "in_range");
    // A row of the pantry under another name is as unknown as one of the user's own.
    let mut salt = old;
    salt["lines"][0]["item"] = json!("salt-table");
    held_everywhere(&link(&salt));
    salt["lines"][0]["name"] = json!("Fine Salt");
    let card = ok(&json!({"card": {"recipe": link(&salt), "settings": settings("0.1 g")}}));
    assert_eq!(word(&card), "in_range");
}
