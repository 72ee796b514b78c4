//! Questions about readings.

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
    /// What may have been meant, to choose from.
    pub choices: Vec<String>,
}

pub(super) fn doubts(odd: &[OddReading], units: System) -> Vec<Questioned> {
    let one = |reading: &OddReading| Questioned {
        reading: u32::try_from(reading.reading).unwrap_or(u32::MAX),
        odd: reading.odd,
        choices: reading
            .choices
            .iter()
            .filter(|meant| meant.typed == units)
            .map(|meant| meant.value.show(units).text)
            .collect(),
    };
    odd.iter().map(one).collect()
}
