//! The door without a browser: one request a line on standard input, one answer a line on standard output.
//!
//! ```text
//! echo '{"tables": {}}' | cargo run --example reckon
//! cargo run --example reckon -- --demo      the demo batch's weigh-out and verdict, as text
//! ```
//!
//! Requests and answers are documented at the head of `crate/src/door/mod.rs`.

use cure_reckoner::door::answer_json;
use cure_reckoner::pantry;
use serde_json::{Value, json};
use std::io::{self, BufRead, Write};

fn main() -> io::Result<()> {
    let out = io::stdout().lock();
    if std::env::args().any(|a| a == "--demo") {
        demo(out)
    } else {
        serve(io::stdin().lock(), out)
    }
}

fn serve(requests: impl BufRead, mut out: impl Write) -> io::Result<()> {
    for line in requests.lines() {
        let line = line?;
        if !line.trim().is_empty() {
            writeln!(out, "{}", answer_json(&line))?;
        }
    }
    Ok(())
}

/// The demo batch, through the same requests that the page makes.
fn demo(mut out: impl Write) -> io::Result<()> {
    // The page has the names that a person reads; these are those that recipes are recognised by.
    let called = |line: &Value| match line["cure"]["strength"]["nitrite"].as_str() {
        Some(nitrite) => format!("Cure, {nitrite} nitrite"),
        None => {
            let item = line["item"]["item"].as_str().and_then(pantry::ingredient);
            item.and_then(|i| i.names.first())
                .copied()
                .unwrap_or_default()
                .to_owned()
        }
    };
    let ask = |request: Value| -> Value {
        let answer: Value = serde_json::from_str(&answer_json(&request.to_string())).unwrap_or_default();
        answer["ok"].clone()
    };
    let batch = ask(json!({"starters": {}}))["demo"].clone();
    let settings = ask(json!({"tables": {}}))["settings"].clone();
    let sheet = ask(json!({"weigh_out": {"batch": batch, "settings": settings}}));
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    writeln!(
        out,
        "{}: {} pieces, {} green weight",
        text(&batch["name"]),
        sheet["pieces"],
        text(&sheet["green"]["text"])
    )?;
    for line in sheet["bowl"].as_array().into_iter().flatten() {
        writeln!(
            out,
            "  {:<26} add {:>8}   scale shows {:>8}",
            called(line),
            text(&line["add"]["text"]),
            text(&line["reads"]["text"])
        )?;
    }
    let verdict = &sheet["verdict"];
    let ppm = &verdict["nitrite"];
    writeln!(
        out,
        "{}: {} to {} ppm, limit {}, least {}",
        text(&verdict["word"]).replace('_', " "),
        ppm["low"],
        ppm["high"],
        verdict["limit"],
        verdict["least"]
    )?;
    writeln!(out, "{}", text(&verdict["source"]))
}
