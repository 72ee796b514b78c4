//! Values of JavaScript as the crate has them.

use super::plain::plain;
use super::typed::typed;
use serde::de::DeserializeOwned;
use serde_wasm_bindgen::Deserializer;
use wasm_bindgen::JsValue;

/// A value of JavaScript, or why it is not of its form. Where, is only said natively: tracking it would cost the page
/// a tenth of its size, and what the page itself sends is of the form.
pub(super) fn from_js<T: DeserializeOwned>(value: JsValue) -> Result<T, String> {
    typed(plain(Deserializer::from(value)).map_err(|error| error.to_string())?)
}
