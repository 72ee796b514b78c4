//! Steps in words.

use super::model::{Do, Step};
use crate::quantity::System;

/// The act, as a heading: `Rinse off the cure`.
pub const fn head(act: Do) -> &'static str {
    match act {
        Do::Cure => "Keep cold in the cure",
        Do::Rinse => "Rinse off the cure",
        Do::Soak => "Soak in cold water",
        Do::Dry => "Dry uncovered to a pellicle",
        Do::Smoke => "Smoke",
        Do::Cook => "Cook through",
        Do::DryOut => "Dry out",
        Do::Rest => "Rest off the heat",
        Do::Chill => "Chill",
        Do::Pack => "Pack and label",
    }
}

/// How, how long, until when: `36 h at 3 °C, turned every 12 h.` and the note behind it.
pub fn line(step: &Step, units: System) -> String {
    let mut parts = Vec::new();
    let lasts = step.lasts.map(|s| s.show(units).text);
    let at = step.at.map(|t| format!("at {}", t.show(units).text));
    match (lasts, at) {
        (Some(lasts), Some(at)) => parts.push(format!("{lasts} {at}")),
        (lasts, at) => parts.extend(lasts.into_iter().chain(at)),
    }
    parts.extend(step.turn_every.map(|s| format!("turned every {}", s.show(units).text)));
    parts.extend(
        step.until
            .map(|t| format!("until the coldest piece reads {}", t.show(units).text)),
    );
    let mut text = parts.join(", ");
    if !text.is_empty() {
        text.push('.');
    }
    if let Some(first) = text.get_mut(..1) {
        first.make_ascii_uppercase();
    }
    if !step.note.is_empty() {
        if !text.is_empty() {
            text.push(' ');
        }
        text.push_str(&step.note);
    }
    text
}
