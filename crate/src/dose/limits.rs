//! Limits by jurisdiction.

use serde::Serialize;

/// A jurisdiction's rule for home use.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Profile {
    /// Key, `us-home`.
    pub key: &'static str,
    /// `US, home curing`.
    pub name: &'static str,
    /// Most ingoing sodium nitrite, ppm.
    pub limit: u32,
    /// Most sodium nitrate, ppm.
    pub nitrate_limit: u32,
    /// Up to here the rule, which counts the finished meat, does not decide over what hangs for months, ppm.
    pub undecided_to: u32,
    /// Effective least of ingoing sodium nitrite, ppm.
    pub least: u32,
    /// What the limit counts and where it is published.
    pub source: &'static str,
    /// `published`, `quoted` or `memory`.
    pub status: &'static str,
}

/// Every profile, the default first.
pub fn profiles() -> &'static [Profile] {
    &crate::tables::PROFILES
}

/// The profile of a key.
pub fn profile(key: &str) -> Option<&'static Profile> {
    profiles().iter().find(|p| p.key == key)
}
