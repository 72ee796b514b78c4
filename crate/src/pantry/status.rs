//! How well a figure is known.

use serde::Serialize;

/// How well a figure is known.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Status {
    /// Read in the source or a faithful copy of it.
    Published,
    /// Read in a text that quotes the source.
    Quoted,
    /// Weighed or measured at home.
    Uncontrolled,
    /// Not looked up: blesses nothing by itself.
    Memory,
    /// Ours.
    Judgement,
    /// What is done, and no source says why.
    CommonPractice,
}
