//! What fires told of this user's smoker, as it is stored with the settings.

use crate::batch::Cover;
use serde::{Deserialize, Serialize};

/// Most of them.
const MOST: usize = 200;

/// What one fire told of the smoker: five parameters in thousandths of a standard deviation of what is usual for its kind.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Smoked {
    /// A fan moves the air.
    pub fan: bool,
    /// A water pan stands in it, or the pieces are wrapped.
    pub cover: Cover,
    /// When its first reading was, in milliseconds since 1970: one fire teaches once.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
    /// Where each parameter lies.
    pub centre: [i32; 5],
    /// What is left open of each.
    pub spread: [i32; 5],
}

/// Whether they are of the form that the page writes.
pub(super) fn good(told: &[Smoked]) -> bool {
    let one = |s: &Smoked| {
        s.centre.iter().all(|c| (-9000..=9000).contains(c)) && s.spread.iter().all(|c| (1..=1000).contains(c))
    };
    told.len() <= MOST && told.iter().all(one)
}
