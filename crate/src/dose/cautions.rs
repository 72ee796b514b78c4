//! Which cautions stand beside a figure. Their words are in `tables/cautions.csv`.

use super::verdict::Caution;

/// Cautions of these keys, in this order; a key that is in no row is left out.
pub fn cautions(keys: &[&str]) -> Vec<Caution> {
    keys.iter()
        .filter_map(|key| crate::tables::CAUTIONS.iter().find(|c| c.key == *key))
        .cloned()
        .collect()
}

/// Keys for a cure on meat of these kinds (`bird`, `red`, `boar`, `hare`).
pub fn keys_for(has_cure: bool, kinds: &[&str]) -> Vec<&'static str> {
    const BY_KIND: [(&str, &str); 4] = [
        ("boar", "boar-160"),
        ("bird", "birds-165"),
        ("hare", "hare-165"),
        ("red", "red-145"),
    ];
    let mut keys = if has_cure {
        vec!["nitrite-locked", "weigh-it"]
    } else {
        Vec::new()
    };
    keys.push("keep-cold");
    if kinds.is_empty() {
        keys.extend(["birds-165", "boar-160"]);
    }
    keys.extend(
        BY_KIND
            .iter()
            .filter(|(kind, _)| kinds.contains(kind))
            .map(|(_, key)| *key),
    );
    if kinds.iter().any(|k| *k == "bird" || *k == "hare") {
        keys.push("shot-guests");
    }
    keys.push("local-rules");
    keys
}
