//! Which cautions stand beside a figure. Their words are in `tables/cautions.csv`.

use super::verdict::Caution;
use crate::recipe::{Eaten, Method};

/// Cautions of these keys, in this order; a key that is in no row is left out.
pub fn cautions(keys: &[&str]) -> Vec<Caution> {
    keys.iter()
        .filter_map(|key| crate::tables::CAUTIONS.iter().find(|c| c.key == *key))
        .cloned()
        .collect()
}

/// Keys for meat of these kinds (`bird`, `red`, `boar`, `hare`, `own` for what the user named) by this method, with
/// cure or without.
pub fn keys_for(has_cure: bool, method: Method, eaten: Eaten, kinds: &[&str]) -> Vec<&'static str> {
    let mut keys = if has_cure {
        vec!["nitrite-locked", "weigh-it"]
    } else {
        Vec::new()
    };
    keys.push("keep-cold");
    if eaten == Eaten::HungForMonths {
        keys.push("raw-hung");
    }
    keys.extend(heat_keys(method, kinds));
    if kinds.iter().any(|k| matches!(*k, "bird" | "hare")) {
        keys.push("shot-guests");
    }
    keys.push("local-rules");
    keys
}

/// Keys for how hot meat of these kinds must get. What the page cannot know gets the two that hurt most; mince has a
/// row of its own, since what was on the outside is inside.
pub fn heat_keys(method: Method, kinds: &[&str]) -> Vec<&'static str> {
    if method == Method::Ground {
        return vec!["mince-160"];
    }
    let unknown = kinds.is_empty() || kinds.contains(&"own");
    [
        ("boar", "boar-160"),
        ("bird", "birds-165"),
        ("hare", "hare-165"),
        ("red", "red-145"),
    ]
    .into_iter()
    .filter(|(kind, _)| kinds.contains(kind) || (unknown && matches!(*kind, "boar" | "bird")))
    .map(|(_, key)| key)
    .collect()
}
