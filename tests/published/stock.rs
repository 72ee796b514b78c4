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
    ok(&json!({"larder": {"stock": stock, "batches": batches, "now": 100 * DAY, "settings": settings("0.1 g")}}))
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
    assert_eq!(sheet["rows"][0]["left"]["text"], "96.5 g");
    assert_eq!(sheet["rows"][0]["ids"], json!(["a", "b"]));
    // 96.5 g of 6.25 % at 150 ppm: 96.5 x 62 500 / 150 = 40 208 g.
    let says = sheet["rows"][0]["says"]
        .as_str()
        .unwrap_or_default()
        .replace('\u{202f}', "");
    assert!(
        says.contains("40208 g") || says.contains("40.2 kg") || says.contains("40.21 kg"),
        "{says}"
    );
    // 1000 - 29.2 = 970.8 g, shown to the gram.
    assert_eq!(sheet["rows"][1]["left"]["text"], "971 g");
}

#[test]
fn a_premix_takes_only_the_cure_that_is_in_it() {
    // One part in ten: 0.625 %, so 35 g hold 3.5 g of cure.
    let sheet = ask(&[came("a", "cure-1", "50 g", 0)], &[ticked(DAY, "0.625 %", "35 g")]);
    assert_eq!(sheet["rows"][0]["left"]["text"], "46.5 g");
}

#[test]
fn more_ticked_than_came_in_says_so_and_promises_nothing() {
    let sheet = ask(&[came("a", "cure-1", "2 g", 0)], &[ticked(DAY, "6.25 %", "3.5 g")]);
    assert_eq!(sheet["rows"][0]["short"], true);
    assert_eq!(sheet["rows"][0]["left"]["num"], "0");
    let says = sheet["rows"][0]["says"].as_str().unwrap_or_default();
    assert!(says.contains("More was ticked") && !says.contains("cures"), "{says}");
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
