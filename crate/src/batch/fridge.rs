//! What the refrigerator did while a batch cured, as it is stored.

use crate::quantity::{Code, Problem, Temperature, Wrong};
use serde::{Deserialize, Serialize};

/// Most readings of a refrigerator.
const MOST: usize = 1000;

/// What a refrigerator did, from a time on until the next of these.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct FridgeReading {
    /// By which the page knows it again, whatever its place; empty in a record of before it had one.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<String>"))]
    pub id: String,
    /// When, in milliseconds since 1970-01-01 UTC.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
    /// What was seen.
    pub what: Seen,
    /// Where the thermometer was.
    #[serde(default, skip_serializing_if = "Thermometer::is_fridge")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Thermometer>"))]
    pub of: Thermometer,
    /// What the thermometer said; nothing for what was not read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub reads: Option<Temperature>,
    /// It was questioned, and the person said that it is right.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub sure: bool,
}

/// What a cold reading was of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Thermometer {
    /// The air of the refrigerator.
    #[default]
    Fridge,
    /// The meat itself.
    Meat,
    /// The room that the refrigerator stands in.
    Room,
}

impl Thermometer {
    #[expect(clippy::trivially_copy_pass_by_ref, reason = "as it is asked for by the derive")]
    fn is_fridge(&self) -> bool {
        *self == Self::Fridge
    }
}

/// What was seen at the refrigerator.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Seen {
    /// The thermometer was read.
    Read,
    /// The meat is frozen.
    Frozen,
    /// It is thawed again.
    Thawed,
    /// The power went.
    PowerOff,
    /// The power is back.
    PowerOn,
}

/// What is wrong with the readings.
pub(super) fn problem(readings: &[FridgeReading]) -> Option<Problem> {
    let good = |r: &FridgeReading| {
        (r.what != Seen::Read || r.reads.is_some())
            && (0..=32_503_680_000_000).contains(&r.at)
            && super::id::is_id(&r.id)
    };
    (readings.len() > MOST || !readings.iter().all(good))
        .then(|| Problem::of(Code::BadForm, Wrong::FridgeReadings { most: MOST }).at("fridge"))
}
