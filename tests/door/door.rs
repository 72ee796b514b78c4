//! The door as JavaScript sees it, in a real browser: the shape of the answers, and that nothing makes it throw.
#![cfg(all(test, target_arch = "wasm32"))]
#![expect(clippy::expect_used, reason = "a test may stop where it fails")]

use cure_reckoner::door::{answer_json, reckon};
use js_sys::{Array, Function, JSON, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

/// What the JavaScript expression gives.
fn js(expression: &str) -> JsValue {
    Function::new_no_args(&format!("return {expression}"))
        .call0(&JsValue::NULL)
        .expect("the expression is right")
}

fn get(value: &JsValue, name: &str) -> JsValue {
    Reflect::get(value, &name.into()).expect("it is an object")
}

fn text(value: &JsValue) -> String {
    value.as_string().expect("it is a text")
}

fn json(value: &JsValue) -> String {
    text(&JSON::stringify(value).expect("it can be written").into())
}

#[track_caller]
fn refuses(expression: &str) {
    let answer = reckon(js(expression));
    assert!(get(&answer, "ok").is_undefined(), "{expression}: {}", json(&answer));
    let problems: Array = get(&answer, "problems").dyn_into().expect("a list of problems");
    assert!(problems.length() > 0, "{expression}: {}", json(&answer));
    for problem in problems {
        for name in ["code", "field", "message"] {
            assert!(
                get(&problem, name).is_string(),
                "{expression}: {name} in {}",
                json(&problem)
            );
        }
    }
}

#[wasm_bindgen_test]
fn nothing_that_is_not_a_request_makes_it_throw() {
    for value in [
        "undefined",
        "null",
        "0",
        "NaN",
        "''",
        "'weigh_out'",
        "true",
        "10n",
        "Symbol('x')",
        "[]",
        "[{}]",
        "({})",
        "(() => {})",
        "new Date(NaN)",
        "new Map([['tables', {}]].slice(1))",
        "new Uint8Array(1e6)",
        "Object.create(null)",
        "({ tables: {}, starters: {} })",
        "({ no_such_question: {} })",
        "({ __proto__: { tables: {} } })",
        "({ weigh_out: null })",
        "({ weigh_out: { batch: [], settings: '' } })",
        "({ check_dose: 10n })",
        "({ open_link: { link: '\\ud800' } })",
        "({ open_link: { link: 'x'.repeat(1e6) } })",
    ] {
        refuses(value);
    }
}

#[wasm_bindgen_test]
fn a_request_that_goes_round_in_a_circle_is_refused() {
    refuses("(() => { const circle = {}; circle.weigh_out = circle; return circle; })()");
    refuses("(() => { const batch = {}; batch.pieces = [batch]; return { weigh_out: { batch, settings: {} } }; })()");
}

#[wasm_bindgen_test]
fn an_answer_is_plain_objects_and_lists() {
    let answer = reckon(js("({ tables: {} })"));
    let tables = get(&answer, "ok");
    assert!(get(&answer, "problems").is_undefined());
    assert!(Array::is_array(&get(&tables, "ingredients")));
    for object in [&answer, &tables, &get(&tables, "settings")] {
        let parent = Object::get_prototype_of(object);
        assert!(
            Object::is(&parent, &get(&js("Object"), "prototype")),
            "{}",
            json(object)
        );
    }
}

#[wasm_bindgen_test]
fn an_answer_survives_the_records_and_the_file() {
    let answer = reckon(js("({ starters: {} })"));
    let copied = Function::new_with_args("it", "return structuredClone(it)")
        .call1(&JsValue::NULL, &answer)
        .expect("the browser's store can hold it");
    let read_back = JSON::parse(&json(&answer)).expect("it is JSON");
    assert_eq!(json(&copied), json(&answer));
    assert_eq!(json(&read_back), json(&answer));
}

#[wasm_bindgen_test]
fn by_value_and_by_text_the_answers_are_the_same() {
    let demo = get(&get(&reckon(js("({ starters: {} })")), "ok"), "demo");
    let settings = get(&get(&reckon(js("({ tables: {} })")), "ok"), "settings");
    let request = format!(
        r#"{{"weigh_out":{{"batch":{},"settings":{}}}}}"#,
        json(&demo),
        json(&settings)
    );
    let value = reckon(JSON::parse(&request).expect("it is JSON"));
    assert!(!get(&value, "ok").is_undefined(), "{}", json(&value));
    assert_eq!(
        json(&value),
        json(&JSON::parse(&answer_json(&request)).expect("it is JSON"))
    );
}
