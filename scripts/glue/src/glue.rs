//! Writes the JavaScript beside the core: `glue core.wasm folder`.
#![deny(warnings, missing_docs, unsafe_code)]

use std::env::args_os;
use std::path::PathBuf;

use anyhow::{Context, Result};
use wasm_bindgen_cli_support::Bindgen;

fn main() -> Result<()> {
    let mut arguments = args_os().skip(1).map(PathBuf::from);
    let (wasm, folder) = (arguments.next())
        .zip(arguments.next())
        .context("usage: glue core.wasm folder")?;
    Bindgen::new()
        .input_path(wasm)
        .web(true)?
        .typescript(true)
        // The page says where the core lies.
        .omit_default_module_path(true)
        // The page starts a fresh instance after a trap.
        .reset_state_function(true)
        .generate(folder)
}
