//! The only code that knows JavaScript.
#[cfg(target_arch = "wasm32")]
mod js;
