//! What cut pieces told of this user's meat, as it is stored with the settings.

use crate::pantry::MeatKind;
use serde::{Deserialize, Serialize};

/// Most of them.
const MOST: usize = 200;

/// What one cut told of the speed of salt.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Finding {
    /// The kind of meat.
    pub kind: MeatKind,
    /// When it was cut, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
    /// How the speed lies to `speed`.
    pub is: Lies,
    /// Thousandths of the natural logarithm of the diffusion coefficient at 4 °C in 1e-10 m²/s.
    pub speed: i32,
}

/// How a speed lies to a figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Lies {
    /// It is about this: a ring was measured.
    Near,
    /// It is above: the cut was coloured or salted through.
    Above,
    /// It is below: the middle was bland.
    Below,
}

/// Whether they are of the form that the page writes.
pub(super) fn good(found: &[Finding]) -> bool {
    found.len() <= MOST && found.iter().all(|f| (-7000..=7000).contains(&f.speed))
}
