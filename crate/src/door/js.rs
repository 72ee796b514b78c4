//! One function for the page.
use wasm_bindgen::prelude::*;

/// Takes a request, gives an answer.
#[wasm_bindgen]
pub fn reckon(request: JsValue) -> JsValue {
    request
}
