//! The log of the fire and the chill as it is stored.

use crate::quantity::{Code, Mass, Problem, Temperature, Wrong};
use serde::{Deserialize, Serialize};

/// Most readings in a batch.
pub const MOST_READINGS: usize = 1000;

/// The smoker, who will eat, and every reading. Nothing is ever taken out: what is wrong is struck.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Fire {
    /// A fan moves the air.
    #[serde(default)]
    pub fan: bool,
    /// A water pan stands in it, or the pieces are wrapped, from the start.
    #[serde(default)]
    pub cover: Cover,
    /// Someone under 5, old, pregnant or ill will eat it; nothing while it was not asked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub at_risk: Option<bool>,
    /// Where to pull; nothing for the consumer temperature.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub target: Option<Temperature>,
    /// How warm its middle is when it will be wrapped; nothing where that is not planned. A tick `wrap:0` says that it was,
    /// `pan` that water was put in while it hung.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub wrap_at: Option<Temperature>,
    /// Weight of all pieces after the fire.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub out: Option<Mass>,
    /// Size classes without a probe of their own: the place of each, and of the one whose probe speaks for it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<[u32; 2]>>"))]
    pub shares: Vec<[u32; 2]>,
    /// Readings in the order they were logged.
    #[serde(default)]
    pub readings: Vec<FireReading>,
}

/// How the smoker is set up.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Cover {
    /// Neither water nor wrap.
    #[default]
    Dry,
    /// Over a pan of water.
    Pan,
    /// Wrapped in foil or paper.
    Wrapped,
}

/// One reading.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct FireReading {
    /// By which the page knows it again, whatever its place; empty in a record of before it had one.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<String>"))]
    pub id: String,
    /// Place of the size class in the batch; nothing for the cabinet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub class: Option<u32>,
    /// What the probe showed: of the coldest piece of the class, in its thickest part.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub temperature: Temperature,
    /// When, in milliseconds since 1970-01-01 UTC.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
    /// Struck out: kept, and not reckoned with.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub struck: bool,
    /// It was questioned, and the person said that it is right.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub sure: bool,
}

impl Fire {
    /// The place of the class whose probe speaks for this one.
    #[must_use]
    pub fn probe(&self, place: usize) -> Option<usize> {
        let place = u32::try_from(place).ok()?;
        let [_, probed] = self
            .shares
            .iter()
            .find(|[own, probed]| *own == place && probed != own)?;
        usize::try_from(*probed).ok()
    }

    /// The first thing wrong with it.
    pub(super) fn problem(&self) -> Option<Problem> {
        let good = |r: &FireReading| (0..=32_503_680_000_000).contains(&r.at) && super::id::is_id(&r.id);
        let found = if self.readings.len() > MOST_READINGS {
            Wrong::TooManyReadings { most: MOST_READINGS }
        } else if self.shares.len() > MOST_READINGS {
            Wrong::ProbeShared { most: MOST_READINGS }
        } else if !self.readings.iter().all(good) {
            Wrong::ReadingTime
        } else {
            return None;
        };
        Some(Problem::of(Code::BadForm, found).at("fire.readings"))
    }
}
