//! The door as JavaScript calls it.

use super::from_js::from_js;
use super::out::out;
use super::{Request, answer, bad_form};
use crate::quantity::Wrong;
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

/// Development builds say on the console where a trap came from; a release carries none of it.
#[cfg(debug_assertions)]
#[wasm_bindgen(start)]
fn say_panics() {
    std::panic::set_hook(Box::new(|info| web_sys::console::error_1(&info.to_string().into())));
}
