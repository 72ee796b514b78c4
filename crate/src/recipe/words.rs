//! Steps in words.

use super::model::Do;

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
