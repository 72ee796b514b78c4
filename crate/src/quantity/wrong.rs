//! What can be wrong, as facts: the page words each. A sentence that stands in [`super::Problem::message`] is one that
//! has not come here yet.

use serde::Serialize;

/// One thing that is wrong, with the figures of the rule that it breaks.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Wrong {
    /// Bags that came in are counted, from one to so many at a time.
    BagsNotCounted {
        /// The most at a time.
        most: u32,
    },
}
