//! JavaScript values in and out.

use super::{Answer, Request, answer, bad_form};
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_wasm_bindgen::{Deserializer, Serializer};
use wasm_bindgen::prelude::*;

/// Answers one request; see the table at the head of [`crate::door`]. Never throws for bad input.
#[wasm_bindgen]
pub fn reckon(request: JsValue) -> JsValue {
    let answered = match from_js::<Request>(request) {
        Ok(request) => answer(request),
        Err((path, why)) => bad_form(&path, &why),
    };
    to_js(&answered)
}

/// A value of JavaScript, or where it is not of its form, and why.
pub(super) fn from_js<T: DeserializeOwned>(value: JsValue) -> Result<T, (String, String)> {
    serde_path_to_error::deserialize(Deserializer::from(value))
        .map_err(|error| (error.path().to_string(), error.inner().to_string()))
}

fn to_js(answered: &Answer) -> JsValue {
    answered
        .serialize(&Serializer::json_compatible())
        .unwrap_or_else(|error| error.into())
}

/// Development builds say on the console where a trap came from; a release carries none of it.
#[cfg(debug_assertions)]
#[wasm_bindgen(start)]
fn say_panics() {
    std::panic::set_hook(Box::new(|info| web_sys::console::error_1(&info.to_string().into())));
}
