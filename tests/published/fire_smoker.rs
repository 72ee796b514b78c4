//! What the readings of one class tell of the smoker: for another class on the same fire, and for the next fire.

use super::fire_log::{LIT, MIN, batch, log, read};
use cure_reckoner::smoke::{Cook, Piece, Smoker};
use cure_reckoner_tests::{ok, problems, settings};
use serde_json::{Value, json};

/// A smoker whose air carries so much heat to the meat, W/m²K.
const fn moving(convection: f64) -> Smoker {
    Smoker {
        convection,
        radiation: 6.5,
        wetness: 0.8,
        dries: 0.03,
        sharpness: 1.2,
        dew: 22.0,
    }
}

/// One probe for two sizes: the thinner one without a reading is forecast by its own thickness and the smoker that the
/// other's readings show; it earns nothing, has no point of its own and says that it is not measured. Its first own
/// reading ends that.
#[test]
fn one_probe_for_two_sizes() {
    // Six logs earned by the measured one; a fan that moves less air than is usual.
    let course = [
        (0, "5 °C"),
        (30, "14 °C"),
        (60, "24 °C"),
        (90, "33 °C"),
        (120, "40 °C"),
        (150, "46 °C"),
        (180, "51 °C"),
    ];
    let mut readings: Vec<Value> = course.iter().map(|(at, t)| read(Some(0), *at, t)).collect();
    readings.push(read(None, 1, "78 °C"));
    let two = |readings: &[Value], shares: &Value| {
        let mut two = batch("mallard-breast", Some(false), readings);
        two["pieces"]
            .as_array_mut()
            .expect("classes")
            .push(json!({"cut": "teal-breast", "count": 4, "weight": "200 g", "thickness": "18 mm"}));
        two["fire"]["shares"] = shares.clone();
        two
    };
    let alone = log(&two(&readings, &json!([])), 181);
    let shared = log(&two(&readings, &json!([[1, 0]])), 181);
    // The measured one is not touched by it.
    assert_eq!(alone["classes"][0], shared["classes"][0]);
    let teal = &shared["classes"][1];
    assert_eq!(teal["points"], json!([]));
    assert!(teal["last"].is_null() && teal["reached"].is_null());
    assert_eq!(teal["credit"]["tenths"], 0);
    assert_eq!(teal["state"], "not_yet");
    assert_eq!(teal["probe"], shared["classes"][0]["of"]);
    // Not measured: what it goes by says so.
    assert_eq!(teal["record"]["heat"]["is"], "unread");
    assert_eq!(
        teal["outlook"]["from"],
        json!({"is": "shared", "readings": 7, "of": shared["classes"][0]["of"]})
    );
    let likely = |sheet: &Value, class: usize| {
        sheet["classes"][class]["outlook"]["window"][1]
            .as_i64()
            .expect("a window")
    };
    assert!(likely(&shared, 1) < likely(&shared, 0));
    assert_eq!(shared["order"], json!([1, 0]));
    // Without it nobody knows that the teal hangs: it would begin now.
    assert!(likely(&shared, 1) < likely(&alone, 1) && alone["classes"][1]["probe"].is_null());
    // Half-way, by the model itself: where the mallards hang in slower air, the teal is later too.
    let in_air = |convection: f64| -> Value {
        let smoker = moving(convection);
        let mut cook = Cook::new(Piece::lean(0.030, 0.3), 5.0);
        let mut all = vec![read(None, 0, "78 °C"), read(Some(0), 0, "5 °C")];
        for minute in 1..=90 {
            cook.step(60.0, 78.0, &smoker);
            if minute % 15 == 0 {
                all.push(read(Some(0), minute, &format!("{:.1} °C", cook.centre())));
            }
        }
        log(&two(&all, &json!([[1, 0]])), 91)
    };
    let (sooner, later) = (likely(&in_air(28.0), 1), likely(&in_air(13.0), 1));
    assert!(later > sooner + 10 * MIN, "{later} {sooner}");
    // One reading of its own, and it goes by that.
    readings.push(read(Some(1), 180, "50 °C"));
    let own = log(&two(&readings, &json!([[1, 0]])), 181);
    assert!(own["classes"][1]["probe"].is_null());
    assert_eq!(own["classes"][1]["points"].as_array().expect("points").len(), 1);
    // A class cannot speak for itself, nor one that is not there.
    for odd in [json!([[1, 1]]), json!([[1, 9]])] {
        assert_eq!(log(&two(&readings[..8], &odd), 181), alone);
    }
}

/// A fire with readings enough tells of its smoker once it is pulled; kept in the settings it moves the forecast of the next
/// fire in a smoker set up alike, and of no other.
#[test]
fn a_fire_teaches_the_smoker() {
    let smoker = moving(13.0);
    let mut cook = Cook::new(Piece::lean(0.030, 0.3), 5.0);
    let mut readings = vec![read(None, 0, "78 °C"), read(Some(0), 0, "5 °C")];
    for minute in 1..=180 {
        cook.step(60.0, 78.0, &smoker);
        if minute % 20 == 0 {
            readings.push(read(Some(0), minute, &format!("{:.1} °C", cook.centre())));
        }
    }
    let mut done = batch("mallard-breast", Some(false), &readings);
    assert!(log(&done, 181)["smoker"]["tells"].is_null());
    done["ticks"] = json!([{"of": "pull:0", "at": LIT + 181 * MIN}]);
    let told = log(&done, 182)["smoker"]["tells"].clone();
    assert!(told["centre"][0].as_i64().is_some_and(|air| air < -300), "{told}");
    // Too few readings tell nothing.
    let mut few = batch("mallard-breast", Some(false), &readings[..5]);
    few["ticks"] = done["ticks"].clone();
    assert!(log(&few, 182)["smoker"]["tells"].is_null());
    let next = |fan: bool, smoked: Value| {
        let mut next = batch(
            "mallard-breast",
            Some(false),
            &[read(None, 0, "78 °C"), read(Some(0), 0, "5 °C")],
        );
        next["fire"]["fan"] = fan.into();
        let mut settings = settings("0.1 g");
        settings["smoked"] = smoked;
        ok(&json!({"fire_log": {"batch": next, "now": LIT + MIN, "settings": settings}}))
    };
    let likely = |sheet: &Value| sheet["classes"][0]["outlook"]["window"][1].as_i64().expect("a window");
    let (usual, taught) = (next(true, json!([])), next(true, json!([told])));
    assert!(likely(&taught) > likely(&usual) + 10 * MIN);
    assert_eq!(taught["smoker"]["fires"], 1);
    assert!(usual["smoker"]["air"].is_null());
    let air = &taught["smoker"]["air"];
    assert!(
        air["heat"].as_u64().is_some_and(|heat| heat < 100) && air["range"].as_u64().is_some_and(|range| range < 100),
        "{air}"
    );
    // A still one is another smoker.
    assert_eq!(likely(&next(false, json!([told]))), likely(&next(false, json!([]))));
    // What this page does not write is refused.
    let mut bad = settings("0.1 g");
    bad["smoked"] =
        json!([{"fan": true, "cover": "dry", "at": 0, "centre": [0, 0, 0, 0, 99999], "spread": [1, 1, 1, 1, 1]}]);
    let found = problems(&json!({"fire_log": {"batch": done, "now": LIT, "settings": bad}}));
    assert!(json!(found).to_string().contains("settings.smoked"), "{found:?}");
}
