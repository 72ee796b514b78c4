//! What the recipe heats it to, step by step, in the fire's forecast and in the times of the batch.

use super::fire_log::{LIT, MIN, batch, first, read};
use serde_json::{Value, json};

/// Two steps of heat are two: hung at 71 °C, then in the oven at 110 °C from the hour the recipe has for it. Computed: in the
/// smoker alone 73.9 °C is never reached; with the oven it is, and not before that.
#[test]
fn a_second_heat_is_a_second_heat() {
    let mut made = batch("mallard-breast", Some(false), &[]);
    made["recipe"]["steps"] = json!([
        {"do": "cure", "lasts": "36 h"}, {"do": "smoke", "lasts": "3 h", "at": "71 °C"}, {"do": "cook", "lasts": "1 h", "at": "110 °C"}
    ]);
    made["ticks"] = json!([{"of": "rub", "at": LIT - 40 * 60 * MIN}, {"of": "step:1", "at": LIT}]);
    let up = [
        read(None, 0, "71 °C"),
        read(Some(0), 0, "4 °C"),
        read(Some(0), 30, "22 °C"),
        read(Some(0), 60, "38 °C"),
    ];
    made["fire"]["readings"] = json!(up);
    let window = |made: &Value| first(made, 60)["outlook"]["window"].clone();
    let likely = window(&made)[1].as_i64().expect("it gets there");
    assert!(likely > LIT + 180 * MIN && likely < LIT + 240 * MIN, "{likely}");
    let mut alone = made.clone();
    alone["recipe"]["steps"].as_array_mut().expect("steps").pop();
    assert_eq!(window(&alone), Value::Null);
    // Put on earlier, it is done earlier.
    let mut sooner = made.clone();
    sooner["recipe"]["steps"][1]["lasts"] = json!("1.5 h");
    assert!(window(&sooner)[1].as_i64().expect("it gets there") < likely - 60 * MIN);
}
