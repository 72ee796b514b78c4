//! JavaScript values in and out.

use super::out::out;
use super::{Request, answer, bad_form};
use crate::quantity::Wrong;
use serde::de::DeserializeOwned;
use serde_wasm_bindgen::Deserializer;
use wasm_bindgen::prelude::*;

/// Answers one request; see the table at the head of [`crate::door`]. Never throws for bad input.
#[wasm_bindgen]
pub fn reckon(request: JsValue) -> JsValue {
    let answered = match from_js::<Request>(request) {
        Ok(request) => answer(request),
        Err(why) => bad_form("", Wrong::NotOfForm { why }),
    };
    out(&answered)
}

/// A value of JavaScript, or why it is not of its form. Where, is only said natively: tracking it would cost the page
/// a tenth of its size, and what the page itself sends is of the form.
pub(super) fn from_js<T: DeserializeOwned>(value: JsValue) -> Result<T, String> {
    T::deserialize(Deserializer::from(value)).map_err(|error| error.to_string())
}

/// Development builds say on the console where a trap came from; a release carries none of it.
#[cfg(debug_assertions)]
#[wasm_bindgen(start)]
fn say_panics() {
    std::panic::set_hook(Box::new(|info| web_sys::console::error_1(&info.to_string().into())));
}
