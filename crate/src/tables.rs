//! The tables of `tables/*.csv`, turned into constants by `build.rs`.

include!(concat!(env!("OUT_DIR"), "/tables.rs"));

/// The keys of the tables that the page has words for, by the name of their type there: its type check then misses a word
/// that is not there, and finds one for a key that is none.
#[cfg(feature = "types")]
pub fn keys() -> Vec<(&'static str, Vec<&'static str>)> {
    vec![("CautionKey", CAUTIONS.iter().map(|c| c.key).collect())]
}
