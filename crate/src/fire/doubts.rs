//! The words of what is odd about a reading.

use crate::quantity::System;
use crate::record::{Odd, OddReading};
use serde::Serialize;

/// A question about one reading.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Questioned {
    /// Its place in the list of readings.
    pub reading: u32,
    /// What is odd about it.
    pub odd: Odd,
    /// What is odd about it, and what to do.
    pub says: String,
    /// What may have been meant, to choose from.
    pub choices: Vec<String>,
}

pub(super) fn doubts(odd: &[OddReading], units: System) -> Vec<Questioned> {
    let one = |reading: &OddReading| Questioned {
        reading: u32::try_from(reading.reading).unwrap_or(u32::MAX),
        odd: reading.odd,
        says: says(reading.odd).to_owned(),
        choices: reading.choices.iter().map(|t| t.show(units).text).collect(),
    };
    odd.iter().map(one).collect()
}

const fn says(odd: Odd) -> &'static str {
    match odd {
        Odd::ToCome => "This time is still to come. Correct the time, or look at the clock of this device.",
        Odd::Earlier => {
            "This is earlier than the reading logged before it. Keep it if its time is right; if the clock was changed, \
             correct the time."
        }
        Odd::Boiling => "Hotter than boiling water inside a piece: a slip of the decimal point, or a probe in the air.",
        Odd::AboveCabinet => "Warmer than the cabinet: a probe in the air, or the other scale of degrees.",
        Odd::Fell => {
            "Colder than the last one: another piece, a probe that slipped, or the other scale of degrees. A colder \
             piece counts: keep it."
        }
        Odd::TooFast => "It cannot have warmed so fast: a probe in the air or at a bone, or a slip of the keys.",
    }
}
