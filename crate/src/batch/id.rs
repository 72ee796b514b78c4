//! Ids of size classes and readings.

/// Longest id of a size class or a reading.
const MOST_ID: usize = 64;

/// Whether an id is one that the page gives, or none.
pub(super) fn is_id(id: &str) -> bool {
    id.len() <= MOST_ID && id.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-')
}
