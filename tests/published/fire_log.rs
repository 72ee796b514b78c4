//! The log through the door: verdicts by class, questions about readings, the way up, the chill.

use cure_reckoner_tests::{ok, problems, rub, settings};
use serde_json::{Value, json};

pub const MIN: i64 = 60_000;
pub const LIT: i64 = 1_795_600_000_000;

/// A reading so many minutes after the start; nothing as class for the cabinet.
pub fn read(class: Option<u32>, minute: i64, temperature: &str) -> Value {
    match class {
        Some(class) => json!({"class": class, "temperature": temperature, "at": LIT + minute * MIN}),
        None => json!({"temperature": temperature, "at": LIT + minute * MIN}),
    }
}

pub fn batch(cut: &str, at_risk: Option<bool>, readings: &[Value]) -> Value {
    let recipe = rub("6.25 %", "150 ppm", "2.2 %");
    let mut fire = json!({"fan": true, "readings": readings});
    if let Some(at_risk) = at_risk {
        fire["at_risk"] = at_risk.into();
    }
    json!({"tag": "SD", "name": "Trial", "recipe": recipe, "fire": fire,
        "pieces": [{"cut": cut, "count": 8, "weight": "900 g", "thickness": "30 mm"}]})
}

#[track_caller]
pub fn log(batch: &Value, minute: i64) -> Value {
    ok(&json!({"fire_log": {"batch": batch, "now": LIT + minute * MIN, "settings": settings("0.1 g")}}))
}

pub fn first(batch: &Value, minute: i64) -> Value {
    log(batch, minute)["classes"][0].clone()
}

/// 61 °C held for an hour, read every ten minutes.
fn held(celsius: &str) -> Vec<Value> {
    let up = [
        read(Some(0), 0, "4 °C"),
        read(Some(0), 60, "40 °C"),
        read(Some(0), 100, "58 °C"),
    ];
    let flat = (0..=6).map(|i| read(Some(0), 120 + i * 10, celsius));
    up.into_iter().chain(flat).collect()
}

#[test]
fn the_consumer_figure_first() {
    let row = first(&batch("mallard-breast", None, &held("61 °C")), 180);
    assert_eq!(
        (row["state"].as_str(), row["consumer"]["text"].as_str()),
        (Some("not_yet"), Some("73.9 °C"))
    );
    assert!(row["credit"].is_null() && row["record"]["needed"]["no_lower"] == "not_asked");
    let hot = [held("61 °C"), vec![read(Some(0), 190, "73.9 °C")]].concat();
    assert_eq!(first(&batch("mallard-breast", None, &hot), 190)["state"], "made_it");
    let short = [held("61 °C"), vec![read(Some(0), 190, "73.8 °C")]].concat();
    assert_eq!(first(&batch("mallard-breast", None, &short), 190)["state"], "not_yet");
}

/// Heat settles the heat only: what the ticks and the refrigerator's log leave open stands beside it.
#[test]
fn what_heat_does_not_settle() {
    let hot = [held("61 °C"), vec![read(Some(0), 190, "75 °C")]].concat();
    let mut made = batch("mallard-breast", None, &hot);
    made["recipe"]["steps"] = json!([
        {"do": "cure", "lasts": "36 h", "at": "3 °C"}, {"do": "rinse"}, {"do": "smoke", "lasts": "3 h", "at": "71 °C"}
    ]);
    made["ticks"] = json!([
        {"of": "cure:0", "at": LIT - 40 * 60 * MIN, "weight": "2.1 g", "nitrite": "6.25 %", "nitrate": "0 %", "step": "0.1 g"},
        {"of": "rub", "at": LIT - 40 * 60 * MIN}
    ]);
    made["fridge"] = json!([
        {"at": LIT - 30 * 60 * MIN, "what": "read", "reads": "38 F"},
        {"at": LIT - 21 * 60 * MIN, "what": "read", "reads": "48 F"},
        {"at": LIT - 20 * 60 * MIN, "what": "read", "reads": "38 F"},
        {"at": LIT - 10 * 60 * MIN, "what": "frozen"}
    ]);
    let doubts = |made: &Value| -> Vec<String> {
        let asked = json!({"batch": made, "now": LIT + 190 * MIN, "settings": settings("0.1 g"), "frozen": false, "vacuum": false});
        let standing = ok(&json!({"standing": asked}));
        let all = standing["doubts"].as_array().expect("doubts").clone();
        all.iter()
            .filter_map(|d| d["kind"].as_str().map(str::to_owned))
            .collect()
    };
    // Above 40 °F for up to ten hours, not rinsed, frozen: hot enough is not said of it.
    let row = first(&made, 190);
    assert_eq!(
        (row["state"].as_str(), row["record"]["heat"]["is"].as_str()),
        (Some("in_doubt"), Some("hot"))
    );
    let found = doubts(&made);
    for kind in ["not_rinsed", "frozen"] {
        assert!(found.iter().any(|k| k == kind), "{found:?}");
    }
    made["ticks"]
        .as_array_mut()
        .unwrap()
        .push(json!({"of": "step:1", "at": LIT - 4 * 60 * MIN}));
    made["fridge"] = json!([{"at": LIT - 30 * 60 * MIN, "what": "read", "reads": "38 F"}]);
    assert_eq!(first(&made, 190)["state"], "made_it", "{:?}", doubts(&made));
}

/// What has reached its target is to be pulled now, before what is still on its way, the first to reach it first.
#[test]
fn what_has_reached_its_target_comes_first() {
    let mut both = batch("mallard-breast", None, &[]);
    both["pieces"] = json!([
        {"cut": "mallard-breast", "count": 8, "weight": "900 g", "thickness": "30 mm"},
        {"cut": "teal-breast", "count": 4, "weight": "150 g", "thickness": "15 mm"},
        {"cut": "mallard-breast", "count": 2, "weight": "200 g", "thickness": "26 mm"}
    ]);
    both["fire"]["readings"] = json!([
        read(Some(0), 0, "4 °C"),
        read(Some(1), 0, "4 °C"),
        read(Some(2), 0, "4 °C"),
        read(None, 1, "110 °C"),
        read(Some(0), 60, "50 °C"),
        read(Some(2), 61, "60 °C"),
        read(Some(1), 62, "70 °C"),
        read(Some(1), 70, "74 °C"),
        read(Some(2), 80, "74 °C"),
        read(Some(1), 85, "79 °C"),
        read(Some(0), 86, "62 °C")
    ]);
    let sheet = log(&both, 90);
    assert_eq!(sheet["order"], json!([1, 2, 0]));
    assert_eq!(sheet["classes"][1]["reached"], LIT + 70 * MIN);
    assert!(sheet["classes"][0]["reached"].is_null());
}

/// What will not get there, and what has no thickness to foresee it by, still hangs: only what is taken out is out.
#[test]
fn what_has_no_time_is_not_out() {
    let mut cold = batch("mallard-breast", None, &[]);
    cold["pieces"] = json!([
        {"cut": "mallard-breast", "count": 8, "weight": "900 g", "thickness": "30 mm"},
        {"cut": "teal-breast", "count": 4, "weight": "150 g"}
    ]);
    cold["fire"]["readings"] = json!([
        read(Some(0), 0, "4 °C"),
        read(Some(1), 0, "4 °C"),
        read(None, 1, "40 °C"),
        read(Some(0), 60, "20 °C"),
        read(Some(1), 60, "25 °C")
    ]);
    let sheet = log(&cold, 60);
    let window = |class: usize| sheet["classes"][class]["outlook"]["window"].clone();
    assert!(window(0).is_null() && window(1).is_null(), "{sheet}");
    assert_eq!(sheet["order"], json!([0, 1]));
    cold["ticks"] = json!([{"of": "pull:0", "at": LIT + 61 * MIN}]);
    assert_eq!(log(&cold, 62)["order"], json!([1]));
}

/// A wrap is due when the middle was read so warm, and not by the forecast alone.
#[test]
fn a_wrap_is_due_by_a_reading() {
    let mut made = batch("mallard-breast", None, &[]);
    made["fire"]["wrap_at"] = json!("55 °C");
    let up = [
        read(None, 0, "90 °C"),
        read(Some(0), 0, "4 °C"),
        read(Some(0), 30, "20 °C"),
    ];
    let wrap = |readings: &[Value], minute: i64| {
        let mut made = made.clone();
        made["fire"]["readings"] = json!(readings);
        first(&made, minute)["outlook"]["wrap"].as_i64().expect("a wrap")
    };
    // Two hours on by the clock: surely past 55 °C by the model, and nobody has read it.
    assert!(wrap(&up, 150) > LIT + 150 * MIN);
    let warm = [up.to_vec(), vec![read(Some(0), 150, "56 °C")]].concat();
    assert_eq!(wrap(&warm, 155), LIT + 150 * MIN);
}

/// 61 °C less 1.1 °C for the thermometer is 139.8 °F: 35 min by the table at 140 °F, so an hour of it is a pass.
#[test]
fn credit_by_the_table_and_who_gets_none() {
    let asked = |cut, at_risk| first(&batch(cut, Some(at_risk), &held("61 °C")), 180);
    let duck = asked("mallard-breast", false);
    assert_eq!(
        (duck["state"].as_str(), duck["credit"]["num"].as_str()),
        (Some("by_table"), Some("7.0"))
    );
    assert_eq!(duck["credit"]["table"], "bird");
    // A plant's table: its conditions go with it, with the thermometer's error and the longest gap that counts.
    let conditions = json!({
        "less": {"own": "1.1 °C", "other": "2 °F"}, "gap": 30, "short_below": {"own": "60 °C", "other": "140 °F"}
    });
    assert_eq!(duck["credit"]["conditions"], conditions);
    for (cut, at_risk) in [("mallard-breast", true), ("boar-loin", false), ("hare-saddle", false)] {
        let row = asked(cut, at_risk);
        assert!(
            row["credit"].is_null() && row["state"] == "not_yet",
            "{cut} {at_risk}: {row}"
        );
    }
    // And a target below the consumer temperature is not taken for them.
    for (cut, at_risk, target) in [
        ("mallard-breast", false, "61 °C"),
        ("mallard-breast", true, "73.9 °C"),
        // CDC, MMWR 73(20), 2024: 165 °F; it was 160 before.
        ("boar-loin", false, "73.9 °C"),
    ] {
        let mut one = batch(cut, Some(at_risk), &[]);
        one["fire"]["target"] = "61 °C".into();
        assert_eq!(first(&one, 0)["target"]["text"], target, "{cut} {at_risk}");
    }
}

/// A colder piece probed within two minutes is the reading; it was no warmer before, so nothing up to it counts, nor the
/// stretch after it.
#[test]
fn the_lowest_of_pieces_probed_together_counts() {
    let tenths = |readings: &[Value]| {
        let row = first(&batch("mallard-breast", Some(false), readings), 180);
        row["credit"]["tenths"].as_u64().expect("a credit")
    };
    let alone = held("59 °C");
    let mut readings = alone.clone();
    readings.push(json!({"class": 0, "temperature": "52 °C", "at": LIT + 151 * MIN, "sure": true}));
    let (whole, part) = (tenths(&alone), tenths(&readings));
    // Of six stretches the last two are left.
    assert!(
        whole < 70 && part * 6 <= whole * 2 + 6 && part * 6 + 6 >= whole * 2,
        "{whole} {part}"
    );
}

#[track_caller]
fn doubted(readings: &[Value], odd: &str, choice: Option<&str>) {
    let last = readings.len() - 1;
    let one = batch("mallard-breast", Some(false), readings);
    // What is typed is in the scale of the settings.
    let mut own = settings("0.1 g");
    let fahrenheit = readings[last]["temperature"].as_str().is_some_and(|t| t.ends_with('F'));
    own["units"] = json!(if fahrenheit { "us" } else { "metric" });
    let sheet = ok(&json!({"fire_log": {"batch": one, "now": LIT + 600 * MIN, "settings": own}}));
    let doubts = sheet["doubts"].as_array().expect("doubts");
    assert_eq!(doubts.len(), 1, "{doubts:?}");
    assert_eq!(doubts[0]["reading"], last);
    assert_eq!(doubts[0]["odd"], odd, "{doubts:?}");
    if let Some(choice) = choice {
        let choices: Vec<&str> = doubts[0]["choices"]
            .as_array()
            .expect("choices")
            .iter()
            .filter_map(Value::as_str)
            .collect();
        assert!(choices.contains(&choice), "{choices:?}");
    }
    if readings[last]["class"] == 0 {
        assert_eq!(sheet["classes"][0]["state"], "cannot_say");
    }
    // Struck, it is as if it had not been; said to be right, it is asked no more, unless no meat can be so hot: water boils.
    for key in ["struck", "sure"] {
        let mut other = one.clone();
        other["fire"]["readings"][last][key] = true.into();
        let left = usize::from(key == "sure" && odd == "boiling");
        assert_eq!(log(&other, 600)["doubts"].as_array().map(Vec::len), Some(left), "{key}");
    }
}

#[test]
fn bad_readings_are_asked_about() {
    let good = [
        read(Some(0), 0, "4 °C"),
        read(None, 55, "75 °C"),
        read(Some(0), 60, "40 °C"),
    ];
    let with = |more: Value| [&good[..], &[more]].concat();
    doubted(&with(read(Some(0), 70, "230 °C")), "boiling", None);
    // 47 °C typed as °F.
    doubted(&with(read(Some(0), 80, "47 °F")), "fell", Some("117 °F"));
    // 115 °F typed as °C.
    doubted(&with(read(Some(0), 80, "115 °C")), "boiling", Some("46.1 °C"));
    doubted(&with(read(Some(0), 62, "74 °C")), "too_fast", None);
    doubted(&with(read(Some(0), 100, "85 °C")), "above_cabinet", None);
    doubted(&with(read(Some(0), 30, "30 °C")), "earlier", None);
    doubted(&with(read(Some(0), 6000, "41 °C")), "to_come", None);
}

/// A 9 typed for a 1 long before the forecast has it there: asked about before anything is assured.
#[test]
fn hot_long_before_its_earliest_hour_is_asked_about() {
    let read = |minute: i64, last: &str, cover: &str| {
        let mut one = batch("mallard-breast", Some(false), &[]);
        one["pieces"][0]["thickness"] = json!("1 in");
        one["fire"] = json!({"fan": false, "cover": cover, "at_risk": false, "readings": [
            read(None, 0, "225 °F"),
            read(Some(0), 2, "58 °F"),
            read(Some(0), minute, last)
        ]});
        let sheet = log(&one, minute);
        let odd = sheet["doubts"]
            .as_array()
            .expect("doubts")
            .first()
            .map(|d| d["odd"].clone());
        (odd, sheet["classes"][0]["state"].clone())
    };
    for cover in ["dry", "pan"] {
        assert_eq!(
            read(32, "195 °F", cover),
            (Some(json!("too_fast")), json!("cannot_say")),
            "{cover}"
        );
        // What was meant, and what such a breast may come to in its time, is not.
        assert_eq!(read(32, "95 °F", cover).0, None, "{cover}");
        assert_eq!(read(95, "165 °F", cover), (None, json!("made_it")), "{cover}");
    }
}

/// 4 °C read where 45 °C was is no 39.2 °C: nobody types °F into a page that shows °C.
#[test]
fn no_other_scale_is_offered_than_could_be_typed() {
    let up = [
        read(Some(0), 0, "4 °C"),
        read(None, 55, "75 °C"),
        read(Some(0), 60, "40 °C"),
        read(Some(0), 80, "4 °C"),
    ];
    let sheet = log(&batch("mallard-breast", Some(false), &up), 600);
    assert_eq!(
        (&sheet["doubts"][0]["odd"], &sheet["doubts"][0]["choices"]),
        (&json!("fell"), &json!([]))
    );
}

/// The chill says by when its stage is over and how cold that is: both are of one row, whenever it was read.
#[test]
fn the_hour_of_a_chill_is_that_of_one_of_its_stages() {
    for off in 0..200 {
        let at = |minute: i64, t: &str| json!({"class": 0, "temperature": t, "at": LIT + minute * MIN + off * 37});
        let mut one = batch(
            "mallard-breast",
            Some(false),
            &[at(0, "5 °C"), at(60, "40 °C"), at(120, "75 °C")],
        );
        one["ticks"] = json!([{"of": "pull:0", "at": LIT + 121 * MIN + off}]);
        let now = LIT + 130 * MIN + off * 13;
        let sheet = ok(&json!({"fire_log": {"batch": one, "now": now, "settings": settings("0.1 g")}}));
        let class = &sheet["classes"][0];
        let until = &class["record"]["chill"]["until"];
        let rows = class["chill"].as_array().expect("rows");
        assert!(
            until.is_i64() && rows.iter().any(|row| &row["until"] == until),
            "{off} {class}"
        );
    }
}

/// Out of the heat: the middle of a breast of 25 mm is not at 35 °F three minutes after it read 165. A slab of 19 mm (a
/// thinner piece of its size) whose surface is at once at 32 °F would be at 32 + 133 × 1.273 × exp(-2.467 × 8.4 × 3 / 9.5²)
/// = 117 °F (one-term solution of Heisler's charts, coefficients from memory): asked about. After half an hour it may be.
#[test]
fn no_middle_cools_so_fast() {
    let hot = [read(Some(0), 0, "140 °F"), read(Some(0), 60, "165 °F")];
    let cold = |at: i64, f: &str| {
        let mut one = batch(
            "mallard-breast",
            Some(false),
            &[&hot[..], &[read(Some(0), at, f)]].concat(),
        );
        one["pieces"][0]["thickness"] = json!("25 mm");
        one["ticks"] = json!([{"of": "pull:0", "at": LIT + 61 * MIN}]);
        log(&one, 600)["doubts"].clone()
    };
    assert_eq!(cold(64, "35 °F")[0]["odd"], "cooled_fast");
    for (at, f) in [(64, "150 °F"), (90, "35 °F"), (90, "70 °F"), (66, "120 °F")] {
        assert_eq!(cold(at, f), json!([]), "{at} {f}");
    }
}

/// Readings of one size within two minutes count as one, the coldest over the fire; how many they are is said.
#[test]
fn readings_close_together_are_said_to_be_several() {
    let last = |more: &[Value]| {
        let sheet = log(&batch("mallard-breast", Some(false), more), 600);
        let one = &sheet["classes"][0];
        (one["last"]["text"].clone(), one["last_of"].clone())
    };
    let first = read(Some(0), 0, "150 °F");
    let second = read(Some(0), 1, "152 °F");
    assert_eq!(last(std::slice::from_ref(&first)), (json!("65.5 °C"), json!(1)));
    assert_eq!(last(&[first.clone(), second]), (json!("65.5 °C"), json!(2)));
    assert_eq!(last(&[first, read(Some(0), 3, "158 °F")]), (json!("70 °C"), json!(1)));
}

/// 450 typed for 45.0 °F: the tenth is offered. In Celsius it is above what a temperature here can be, and refused.
#[test]
fn a_lost_point_is_offered_back() {
    let up = [
        read(Some(0), 0, "40 °F"),
        read(Some(0), 30, "42 °F"),
        read(Some(0), 50, "450 °F"),
    ];
    doubted(&up, "boiling", Some("45 °F"));
    let metric = json!({"read": {"units": "metric", "fields": [{"key": "t", "kind": "temperature", "text": "450", "unit": "°C"}]}});
    assert_eq!(ok(&metric)["problems"][0]["code"], "too_large");
}

#[test]
fn the_way_up() {
    let slow = [
        read(Some(0), 0, "4 °C"),
        read(Some(0), 120, "30 °C"),
        read(Some(0), 230, "50 °C"),
    ];
    let one = batch("mallard-breast", Some(false), &slow);
    let up = first(&one, 230)["come_up"].clone();
    assert_eq!(up["stands"], json!({"is": "running", "took": "3.8 h"}));
    // UNL extension, published: through 40 to 140 °F within 4 h.
    assert_eq!(
        (&up["from"]["text"], &up["to"]["text"], &up["most"]),
        (&json!("4 °C"), &json!("60 °C"), &json!("4 h"))
    );
    assert_eq!(
        first(&one, 250)["come_up"]["stands"],
        json!({"is": "slow", "took": "4.2 h"})
    );
    assert!(first(&one, 120)["come_up"].is_null());
}

#[test]
fn the_chill_by_its_options() {
    let cooked = [
        read(Some(0), 0, "4 °C"),
        read(Some(0), 100, "60 °C"),
        read(Some(0), 150, "75 °C"),
    ];
    let cold = [read(Some(0), 210, "35 °C"), read(Some(0), 260, "18 °C")];
    let mut one = batch("mallard-breast", Some(false), &[&cooked[..], &cold[..]].concat());
    assert_eq!(first(&one, 270)["chill"].as_array().map(Vec::len), Some(0));
    one["ticks"] = json!([{"of": "pull:0", "at": LIT + 155 * MIN}]);
    let rows = first(&one, 270)["chill"].clone();
    // 135 to 70 °F from the reading at 150 min to the one at 260: 110 min of 120.
    assert_eq!(rows[0]["left"], json!({"is": "done", "took": "1.8 h"}), "{rows}");
    // 130 to 80 °F: the same 110 min against 90 by the longer reading; by the shorter one nobody can say.
    assert_eq!(
        rows[2]["left"],
        json!({"is": "unseen", "took": "1.8 h", "most": "1.5 h"}),
        "{rows}"
    );
    // Not seen is not late; the model says how long such a piece takes, and the thermometer how far it may be off: 2 °F.
    assert_eq!(rows[0]["may_be_off"]["text"], "1.1 °C");
    let model = rows[2]["by_model"].as_u64().expect("minutes by the model");
    assert!((20..240).contains(&model) && rows[0]["by_model"].is_null(), "{rows}");
    // Read warm when its time had run since it was surely below 130 °F: too slow, whatever lay between.
    let slow = [
        read(Some(0), 160, "54 °C"),
        read(Some(0), 255, "30 °C"),
        read(Some(0), 262, "18 °C"),
    ];
    let mut late = batch("mallard-breast", Some(false), &[&cooked[..], &slow[..]].concat());
    late["ticks"] = one["ticks"].clone();
    let late = first(&late, 270)["chill"][2]["left"].clone();
    assert_eq!(late, json!({"is": "late", "least": "1.6 h", "most": "1.5 h"}));
    // To 41 °F in 6 h in all, of which the reading at 150 min is the begin: 4 h are left at 270.
    assert_eq!(rows[1]["left"], json!({"is": "running", "left": "4 h"}), "{rows}");
    let also = &rows[1]["stage"]["also"];
    assert_eq!(
        (&also["is"], &also["within"], &also["from"]["text"], &also["to"]["text"]),
        (&json!("in_all"), &json!("6 h"), &json!("57.2 °C"), &json!("5 °C"))
    );
    // About 150 ppm of nitrite is in; the option that went by it was withdrawn on 14 December 2022 (86 FR 71007).
    assert_eq!(rows.as_array().map(Vec::len), Some(4));
}

#[test]
fn records_without_a_log_and_with_a_bad_one() {
    let recipe = rub("6.25 %", "150 ppm", "2.2 %");
    let bare = json!({"tag": "SD", "name": "Trial", "recipe": recipe, "pieces": []});
    assert_eq!(log(&bare, 0)["classes"], json!([]));
    let mut bad = batch(
        "mallard-breast",
        None,
        &[json!({"class": 0, "temperature": "4 °C", "at": -5})],
    );
    let found = problems(&json!({"check": {"batch": bad}}));
    assert_eq!(found[0]["field"], "batch.fire.readings");
    bad["fire"]["readings"][0]["at"] = LIT.into();
    assert_eq!(ok(&json!({"check": {"batch": bad}})), json!({"good": true}));
}

/// Three readings and a cabinet: a window, an order, a course; none while one is in question or once it is pulled.
#[test]
fn the_outlook() {
    let readings = [
        read(None, 0, "78 °C"),
        read(Some(0), 0, "5 °C"),
        read(Some(0), 20, "19 °C"),
        read(Some(0), 40, "31 °C"),
        read(Some(0), 60, "40 °C"),
    ];
    let mut one = batch("mallard-breast", Some(false), &readings);
    one["fire"]["target"] = "65 °C".into();
    let sheet = log(&one, 61);
    let row = &sheet["classes"][0];
    let window: Vec<i64> = row["outlook"]["window"]
        .as_array()
        .expect("a window")
        .iter()
        .filter_map(Value::as_i64)
        .collect();
    let minutes: Vec<i64> = window.iter().map(|t| (t - LIT) / MIN).collect();
    assert!(minutes[0] < minutes[1] && minutes[1] < minutes[2], "{minutes:?}");
    assert!((85..240).contains(&minutes[1]), "{minutes:?}");
    assert_eq!(row["outlook"]["from"], json!({"is": "fitted", "readings": 4}));
    assert_eq!(sheet["order"], json!([0]));
    let course = row["outlook"]["course"].as_array().expect("a course");
    assert!(
        course.len() > 10
            && course.last().expect("its end")["tenths"]
                .as_i64()
                .is_some_and(|t| (640..=660).contains(&t))
    );
    // Nobody measured it: no outlook, and why.
    let mut thin = one.clone();
    thin["pieces"][0].as_object_mut().expect("a class").remove("thickness");
    assert_eq!(first(&thin, 61)["no_outlook"], "no_thickness");
    one["ticks"] = json!([{"of": "pull:0", "at": LIT + 61 * MIN}]);
    assert!(first(&one, 61)["outlook"].is_null());
    // Taken out at 40 °C it is partly cooked, which is finished and not chilled (FSIS, quoted).
    let partly = first(&one, 62);
    assert_eq!(
        (&partly["record"]["partly"], &partly["chill"]),
        (&json!(LIT + 61 * MIN), &json!([]))
    );
    // In the chill it says when it should get there.
    let hot = [&readings[..], &[read(Some(0), 150, "75 °C")]].concat();
    let mut hot = batch("mallard-breast", Some(false), &hot);
    hot["ticks"] = json!([{"of": "pull:0", "at": LIT + 151 * MIN}]);
    let until = first(&hot, 152)["chill"][0].clone();
    assert!(
        until["left"]["is"] == "running" && until["expected"].as_i64().is_some(),
        "{until}"
    );
}

/// 900 g with 2.2 % of salt lose a fifth: 2.75 % and 4.06 % of salt in the water (computed), and by Pitzer's equation
/// 0.976 x 0.992 of water activity. By a brine nobody knows what went in.
#[test]
fn after_the_fire() {
    let mut one = batch("mallard-breast", Some(false), &[]);
    assert!(log(&one, 0)["after"].is_null());
    one["fire"]["out"] = "720 g".into();
    let after = log(&one, 0)["after"].clone();
    let text = |key: &str| after[key].as_str().unwrap_or_default().to_owned();
    assert_eq!(
        [text("share"), text("salt"), text("brine"), text("activity")],
        ["80 %", "2.75 %", "4.1 %", "0.97"]
    );
    one["fire"]["out"] = "72 g".into();
    let wrong = log(&one, 0);
    assert!(wrong["after"].is_null() && wrong["after_wrong"]["wrong"]["is"] == "weight_after_fire");
}

/// What is published and judged by nowhere is told with its source: jerky, vacuum packs, options for plants; for boar the
/// tables for trichinae, headed by what they are not for.
#[test]
fn the_other_tables() {
    let about = |cut: &str, key: &str| -> Option<Value> {
        let sheet = log(&batch(cut, None, &[]), 0);
        let all = sheet["published"].as_array().expect("tables").clone();
        all.into_iter().find(|one| one["about"]["is"] == key)
    };
    let rows = |table: &Value| table["rows"].as_array().map_or(0, Vec::len);
    let row = |table: &Value, is: &str| -> Value {
        let mut all = table["rows"].as_array().expect("rows").iter();
        all.find(|row| row["is"] == is).expect("a row").clone()
    };
    let jerky = about("mallard-breast", "jerky").expect("a table");
    assert_eq!(row(&jerky, "heat_meat")["to"]["text"], "71.1 °C");
    assert_eq!(row(&jerky, "heat_birds")["to"]["text"], "73.9 °C");
    let dry = row(&jerky, "dry");
    assert_eq!(
        (&dry["from"]["text"], &dry["to"]["text"]),
        (&json!("54.4 °C"), &json!("60 °C"))
    );
    assert_eq!(
        row(&jerky, "activity"),
        json!({"is": "activity", "air": "0.85", "vacuum": "0.91"})
    );
    let vacuum = about("mallard-breast", "vacuum").expect("a table");
    assert_eq!(row(&vacuum, "keep_cold")["at"]["text"], "3.3 °C");
    assert_eq!(vacuum["about"]["grows"], json!({"own": "3.3 °C", "other": "37.9 °F"}));
    // Option 2 in three stages, that for cured meat of 2021 in two, 4a to 4c; and apart from them what was withdrawn.
    let plants = about("mallard-breast", "plants").expect("a table");
    let history = about("mallard-breast", "history").expect("a table");
    let stages = |table: &Value| -> Vec<Value> {
        let all = table["rows"].as_array().expect("rows").iter();
        all.map(|row| row["stage"].clone()).collect()
    };
    assert_eq!(rows(&plants), 8);
    let cured: Vec<_> = stages(&plants).into_iter().filter(|s| s["of"] == "cured2021").collect();
    assert!(
        cured.len() == 2 && cured.iter().all(|s| s["erythorbate"] == 250 && s["nitrite"] == 100),
        "{plants}"
    );
    assert_eq!(rows(&history), 2);
    for stage in stages(&history) {
        assert_eq!(
            (&stage["of"], &stage["also"]["is"]),
            (&json!("cured1999"), &json!("withdrawn"))
        );
    }
    for stage in [stages(&plants), stages(&history)].concat() {
        let text = |key: &str| stage[key].as_str().unwrap_or_default().to_owned();
        assert!(
            !text("source").is_empty() && text("status").contains("published"),
            "{stage}"
        );
    }
    // The figures that stood in their names: least salt in the water, most water activity.
    let salty = |of: &str, key: &str| -> Value {
        let all = stages(&plants);
        all.iter().find(|s| s["of"] == of).expect("a stage")[key].clone()
    };
    assert_eq!(salty("salty_a", "brine"), "3.5");
    assert_eq!(salty("salty_b", "brine"), "6");
    assert_eq!(salty("salty_c", "activity"), "0.92");
    for key in ["trichinae_heat", "trichinae_frost"] {
        assert_eq!(about("mallard-breast", key), None);
    }
    let (heat, frost) = (
        about("boar-loin", "trichinae_heat"),
        about("boar-loin", "trichinae_frost"),
    );
    let (heat, frost) = (heat.expect("a table"), frost.expect("a table"));
    assert_eq!((rows(&heat), rows(&frost)), (13, 14));
    // Never enough for wild boar: those are cooked to this (CDC, MMWR 73(20), 2024, published).
    for table in [heat, frost] {
        assert_eq!(table["about"]["cooked"], json!({"own": "73.9 °C", "other": "165 °F"}));
    }
}
