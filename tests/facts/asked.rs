//! The requests whose answers are kept: the demo batch from the board to the pack, other recipes that come with the page,
//! and what goes wrong.

use cure_reckoner_tests::{ok, settings, weighed_in};
use serde_json::{Value, json};

const MINUTE: i64 = 60_000;
const HOUR: i64 = 60 * MINUTE;
/// 2026-11-14 06:00:00 UTC.
const RUB: i64 = 1_794_636_000_000;
/// The smoker is lit a day and a half later, after a rinse and a night on the rack.
const LIT: i64 = RUB + 61 * HOUR;

fn american() -> Value {
    json!({"units": "us", "scale_step": "1 g", "profile": "us-home"})
}

/// A recipe that comes with the page.
fn recipe(starters: &Value, name: &str) -> Value {
    let mut all = starters["recipes"].as_array().expect("recipes").iter();
    all.find(|recipe| recipe["name"] == name).expect("a starter").clone()
}

fn tick(batch: &mut Value, of: &str, at: i64) {
    let ticks = batch["ticks"].as_array_mut().expect("ticks");
    ticks.push(json!({"of": of, "at": at}));
}

/// The demo, weighed in and rubbed.
fn rubbed(demo: &Value) -> Value {
    let mut batch = weighed_in(demo.clone(), RUB);
    tick(&mut batch, "rub", RUB);
    batch
}

/// The same over the fire: one size read, taken out and cold in time, one on its way, one not read.
fn over_the_fire(demo: &Value) -> Value {
    let mut batch = rubbed(demo);
    tick(&mut batch, "step:1", RUB + 36 * HOUR);
    tick(&mut batch, "step:2", RUB + 37 * HOUR);
    tick(&mut batch, "step:3", LIT);
    let read = |class: Option<u32>, minute: i64, temperature: &str| match class {
        Some(class) => json!({"class": class, "temperature": temperature, "at": LIT + minute * MINUTE}),
        None => json!({"temperature": temperature, "at": LIT + minute * MINUTE}),
    };
    batch["fire"] = json!({"fan": true, "at_risk": false, "readings": [
        read(None, 0, "110 °C"),
        read(Some(0), 0, "4 °C"),
        read(Some(1), 0, "4 °C"),
        read(Some(0), 30, "31 °C"),
        read(None, 40, "112 °C"),
        read(Some(0), 60, "48 °C"),
        read(Some(1), 60, "74.5 °C"),
    ]});
    tick(&mut batch, "pull:1", LIT + 62 * MINUTE);
    batch
}

/// A small batch that is done: hot, cold in time and packed.
fn packed(demo: &Value) -> Value {
    let mut small = demo.clone();
    small["pieces"].as_array_mut().expect("sizes").truncate(1);
    let mut batch = over_the_fire(&small);
    let readings = [
        (0, "4 °C"),
        (60, "40 °C"),
        (100, "60 °C"),
        (130, "74.5 °C"),
        (200, "20 °C"),
        (330, "4 °C"),
    ];
    batch["fire"]["readings"] = readings
        .iter()
        .map(|(minute, reads)| json!({"class": 0, "temperature": reads, "at": LIT + minute * MINUTE}))
        .collect();
    let ticks = batch["ticks"].as_array_mut().expect("ticks");
    ticks.retain(|tick| tick["of"] != "pull:1");
    tick(&mut batch, "pull:0", LIT + 132 * MINUTE);
    tick(&mut batch, "step:4", LIT + 331 * MINUTE);
    tick(&mut batch, "step:5", LIT + 340 * MINUTE);
    batch
}

/// Each request by the name of its file.
pub fn all() -> Vec<(&'static str, Value)> {
    let starters = ok(&json!({"starters": {}}));
    let demo = &starters["demo"];
    let metric = settings("0.1 g");
    let haunch = json!({
        "tag": "FH", "name": "Haunch", "recipe": recipe(&starters, "Fallow haunch in brine"),
        "pieces": [{"cut": "fallow-haunch", "count": 1, "weight": "4 lb 6 oz", "thickness": "4 in"}],
    });
    let rubbed = rubbed(demo);
    let mut warm = rubbed.clone();
    warm["fridge"] = json!([
        {"at": RUB, "what": "read", "reads": "3 °C"},
        {"at": RUB + 8 * HOUR, "what": "read", "reads": "9 °C"},
        {"at": RUB + 11 * HOUR, "what": "read", "reads": "3 °C"},
    ]);
    let text = "Duck ham\n2 duck breasts, about 400 g\n40 g salt\n1 tsp pink salt\n2 bay leaves\n\
                Rub, leave in the fridge for 2 days, rinse and dry.";
    vec![
        ("weigh-out", json!({"weigh_out": {"batch": demo, "settings": metric}})),
        (
            "weigh-out-brine",
            json!({"weigh_out": {"batch": haunch, "settings": american()}}),
        ),
        (
            "card",
            json!({"card": {"recipe": recipe(&starters, "Cabin jerky strips"), "weight": "1 kg", "cut": "venison-strips", "settings": metric}}),
        ),
        (
            "dose-over",
            json!({"check_dose": {"method": "rub", "green": "1 kg", "put_in": {"amount": "1 tbsp", "nitrite": "6.25 %"}, "settings": metric}}),
        ),
        (
            "cure-clock",
            json!({"cure_clock": {"batch": rubbed, "now": RUB + 20 * HOUR, "settings": metric}}),
        ),
        (
            "standing-warm",
            json!({"standing": {"batch": warm, "now": RUB + 20 * HOUR, "settings": metric}}),
        ),
        (
            "next",
            json!({"next": {"batches": [{"id": "a", "batch": rubbed}, {"id": "b", "batch": haunch}], "now": RUB + 20 * HOUR, "settings": metric}}),
        ),
        (
            "fire-log",
            json!({"fire_log": {"batch": over_the_fire(demo), "now": LIT + 70 * MINUTE, "settings": metric}}),
        ),
        (
            "labels",
            json!({"labels": {"batch": packed(demo), "now": LIT + 341 * MINUTE, "frozen": false, "vacuum": true, "packs": ["310 g", "295 g"], "settings": metric}}),
        ),
        (
            "plan-back",
            json!({"plan_back": {
                "batches": [{"id": "a", "batch": demo}, {"id": "b", "batch": haunch}], "now": RUB, "settings": metric,
                "wish": {"ready_by": RUB + 240 * HOUR, "rests": [{"from": RUB + 16 * HOUR, "to": RUB + 24 * HOUR}], "room": [1, 1, 1], "holds": []},
            }}),
        ),
        (
            "plan-bag",
            json!({"plan_bag": {"rows": [{"of": "mallard-breast", "hunters": 3, "each": 4, "recipe": 0}], "recipes": [demo["recipe"]], "settings": metric}}),
        ),
        (
            "read-recipe",
            json!({"read_recipe": {"text": text, "settings": metric}}),
        ),
        (
            "trouble",
            json!({"trouble": {"card": "dose", "chosen": [["dose_judged", "too_much"]]}}),
        ),
        ("link-cut", json!({"open_link": {"text": "r1.AAAA"}})),
    ]
}
