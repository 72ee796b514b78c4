//! What is left in the house. The sums are worked by hand.

use cure_reckoner_tests::{batch, ok, problems, rub, settings};
use serde_json::{Value, json};

const DAY: i64 = 86_400_000;

fn came(id: &str, item: &str, weight: &str, at: i64) -> Value {
    json!({"id": id, "stock": {"item": item, "weight": weight, "at": at}})
}

fn ticked(at: i64, nitrite: &str, weight: &str) -> Value {
    let mut batch = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 16, "1480 g");
    batch["ticks"] = json!([
        {"of": "cure:0", "at": at, "weight": weight, "nitrite": nitrite, "nitrate": "0 %"},
        {"of": "line:0", "at": at, "weight": "29.2 g"},
        {"of": "rub", "at": at}
    ]);
    batch
}

fn ask(stock: &[Value], batches: &[Value]) -> Value {
    let entry = |(i, batch): (usize, &Value)| json!({"id": format!("b{i}"), "batch": batch});
    let named: Vec<Value> = batches.iter().enumerate().map(entry).collect();
    ok(&json!({"larder": {"stock": stock, "batches": named, "now": 100 * DAY, "settings": settings("0.1 g")}}))
}

#[test]
fn what_batches_ticked_is_taken_off_what_came_in() {
    let stock = [
        came("a", "cure-1", "50 g", 10 * DAY),
        came("b", "cure-1", "50 g", 20 * DAY),
        came("c", "salt-sea-fine", "1 kg", 10 * DAY),
    ];
    // One before anything came in, which took from what is not written down; one after.
    let batches = [ticked(5 * DAY, "6.25 %", "3.5 g"), ticked(12 * DAY, "6.25 %", "3.5 g")];
    let sheet = ask(&stock, &batches);
    assert_eq!(sheet["rows"][0]["held"]["left"], "96.5 g");
    assert_eq!(sheet["rows"][0]["ids"], json!(["a", "b"]));
    // 96.5 g of 6.25 % at 150 ppm: 96.5 x 62 500 / 150 = 40 208 g.
    let cures = &sheet["rows"][0]["held"]["cures"];
    assert_eq!(
        (&cures["meat"], &cures["ppm"]),
        (&json!("40\u{202f}208 g"), &json!(150))
    );
    // 1000 - 29.2 = 970.8 g, shown to the gram.
    assert_eq!(sheet["rows"][1]["held"]["left"], "971 g");
}

#[test]
fn a_premix_takes_only_the_cure_that_is_in_it() {
    // One part in ten: 0.625 %, so 35 g hold 3.5 g of cure.
    let sheet = ask(&[came("a", "cure-1", "50 g", 0)], &[ticked(DAY, "0.625 %", "35 g")]);
    assert_eq!(sheet["rows"][0]["held"]["left"], "46.5 g");
}

#[test]
fn more_ticked_than_came_in_says_so_and_promises_nothing() {
    let sheet = ask(&[came("a", "cure-1", "2 g", 0)], &[ticked(DAY, "6.25 %", "3.5 g")]);
    assert_eq!(sheet["rows"][0]["short"], true);
    let held = &sheet["rows"][0]["held"];
    assert_eq!((&held["left"], &held["cures"]), (&json!("0 g"), &Value::Null));
}

#[test]
fn packs_are_first_in_first_out_and_what_went_is_apart() {
    let pack = |id: &str, until: i64| json!({"id": id, "stock": {"item": "pack", "name": "Duck", "weight": "203 g", "at": DAY, "until": until}});
    let mut given = pack("c", 105 * DAY);
    given["stock"]["to"] = json!("The neighbour");
    given["stock"]["gone"] = json!(90 * DAY);
    let sheet = ask(&[pack("a", 120 * DAY), pack("b", 99 * DAY), given], &[]);
    assert_eq!(sheet["packs"][0]["id"], "b");
    assert_eq!(sheet["packs"][0]["over"], true);
    assert_eq!(sheet["packs"][1]["id"], "a");
    assert_eq!(sheet["packs"][1]["over"], false);
    assert_eq!(sheet["gone"][0]["to"], "The neighbour");
}

#[test]
fn stock_is_checked_like_every_record() {
    let good = json!({"check": {"stock": {"item": "cure-1", "weight": "50 g", "at": 0}}});
    assert_eq!(ok(&good)["good"], true);
    let unnamed = problems(&json!({"check": {"stock": {"item": "own", "weight": "50 g", "at": 0}}}));
    assert_eq!(unnamed[0]["field"], "stock.name");
}

#[test]
fn a_batch_without_an_outcome_reads_as_before_and_one_with_it_is_checked() {
    let mut one = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 16, "1480 g");
    assert_eq!(ok(&json!({"check": {"batch": one}}))["good"], true);
    one["after"] = json!({"out": "1190 g", "cut": "rosy", "taste": "salt, smoke, marsh", "change": "2.0 % salt"});
    assert_eq!(ok(&json!({"check": {"batch": one}}))["good"], true);
    one["after"]["taste"] = json!("x".repeat(61));
    assert_eq!(
        problems(&json!({"check": {"batch": one}}))[0]["field"],
        "batch.after.taste"
    );
}

/// 20 bags came in, a batch was bagged and three packs were packed since; one was packed before.
#[test]
fn bags_are_counted() {
    let pack =
        |id: &str, at: i64| json!({"id": id, "stock": {"item": "pack", "name": "Duck", "weight": "0 g", "at": at}});
    let mut bagged = ticked(12 * DAY, "6.25 %", "3.5 g");
    bagged["ticks"]
        .as_array_mut()
        .expect("ticks")
        .push(json!({"of": "label", "at": 12 * DAY}));
    let bags = json!({"id": "a", "stock": {"item": "bags", "weight": "0 g", "count": 20, "at": 10 * DAY}});
    let stock = [
        bags,
        pack("b", 5 * DAY),
        pack("c", 20 * DAY),
        pack("d", 20 * DAY),
        pack("e", 20 * DAY),
    ];
    let sheet = ask(&stock, &[bagged]);
    assert_eq!(
        sheet["rows"][0]["held"],
        json!({"is": "bags", "came": 20, "went": 4, "left": 16})
    );
    // What is not weighed shows no weight.
    assert_eq!(sheet["packs"][0]["weight"], Value::Null);
    let none = problems(&json!({"check": {"stock": {"item": "bags", "weight": "0 g", "at": 0}}}));
    assert_eq!(
        (&none[0]["field"], &none[0]["wrong"]),
        (
            &json!("stock.count"),
            &json!({"is": "bags_not_counted", "most": 10_000})
        )
    );
}

fn book(weight: Option<&str>, thickness: Option<&str>, stock: &[Value]) -> Value {
    let mut duck = ticked(12 * DAY, "6.25 %", "3.5 g");
    duck["pieces"] = json!([
        {"cut": "mallard-breast", "count": 8, "weight": "944 g", "thickness": "26 mm"},
        {"cut": "teal-breast", "count": 4, "weight": "152 g", "thickness": "15 mm"}
    ]);
    duck["after"] = json!({"out": "877 g"});
    let mut belly = duck.clone();
    belly["pieces"] = json!([{"cut": "boar-belly", "count": 1, "weight": "940 g", "thickness": "35 mm"}]);
    belly["after"] = Value::Null;
    let mut open = belly.clone();
    open["pieces"] = json!([{"cut": "boar-belly", "count": 1}]);
    let entry = |id: &str, of: &Value| json!({"id": id, "pieces": of["pieces"], "out": of["after"]["out"]});
    let named = json!([entry("duck", &duck), entry("belly", &belly), entry("open", &open)]);
    ok(
        &json!({"ledger": {"batches": named, "stock": stock, "weight": weight, "thickness": thickness, "settings": settings("0.1 g")}}),
    )
}

/// 944 + 152 = 1096 g in and 877 g out, 80.0 %; the belly 940 g in, and of its packs 700 g.
#[test]
fn a_year_adds_up_what_went_in_and_came_out() {
    let pack =
        json!({"id": "p", "stock": {"item": "pack", "name": "Belly", "weight": "700 g", "batch": "belly", "at": 0}});
    let out = |weight: &str, of: &str, share: &str| json!({"weight": weight, "of": of, "share": share});
    let alone = book(None, None, &[]);
    assert_eq!(
        (&alone["green"], &alone["out"]),
        (&json!("2036 g"), &out("877 g", "1096 g", "80 %"))
    );
    let both = book(None, None, std::slice::from_ref(&pack));
    // 1577 of 2036 g is 77.5 %.
    assert_eq!(both["out"], out("1577 g", "2036 g", "77.5 %"));
    assert_eq!(both["rows"][1]["out"], out("700 g", "940 g", "74.5 %"));
    assert_eq!(
        (&both["rows"][2]["green"], &both["rows"][2]["out"]),
        (&Value::Null, &Value::Null)
    );
}

/// A bag of 150 g and 14 mm can only be the teal; one of 950 g the belly (1.1 % off) before the mallard (0.6 % off) only
/// where its thickness speaks for it.
#[test]
fn a_bag_without_a_label_is_found_by_weight_and_thickness() {
    let ids = |book: &Value| -> Vec<String> {
        let rows = book["rows"].as_array().expect("rows").iter();
        rows.map(|r| r["batch"].as_str().unwrap_or_default().to_owned())
            .collect()
    };
    let teal = book(Some("150 g"), Some("14 mm"), &[]);
    assert_eq!(ids(&teal), ["duck"]);
    assert_eq!(
        teal["rows"][0]["why"],
        json!([{"is": "all", "class": 1, "weight": "152 g"}, {"is": "thick", "class": 1, "thickness": "15 mm"}])
    );
    assert_eq!(ids(&book(Some("950 g"), None, &[])), ["duck", "belly"]);
    assert_eq!(ids(&book(Some("950 g"), Some("36 mm"), &[])), ["belly"]);
    assert!(ids(&book(Some("3 kg"), None, &[])).is_empty());
    let pack =
        json!({"id": "p", "stock": {"item": "pack", "name": "Belly", "weight": "310 g", "batch": "belly", "at": 0}});
    let packed = book(Some("310 g"), None, &[pack]);
    assert_eq!(
        (ids(&packed), &packed["rows"][0]["why"]),
        (vec!["belly".to_owned()], &json!([{"is": "pack", "weight": "310 g"}]))
    );
}
