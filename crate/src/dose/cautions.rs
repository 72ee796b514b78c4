//! Which cautions stand beside a figure. Their sources are in `tables/cautions.csv`, their words in the page.

use super::verdict::Caution;
use crate::pantry::{Belly, MeatKind};
use crate::recipe::{Eaten, Method};

/// Cautions of these keys, in this order; a key that is in no row is left out.
pub fn cautions(keys: &[&str]) -> Vec<Caution> {
    keys.iter()
        .filter_map(|key| crate::tables::CAUTIONS.iter().find(|c| c.key == *key))
        .cloned()
        .collect()
}

/// Keys for the weigh-out: what can still be done otherwise there. Heat, keeping and lead stand at the fire and the pack.
pub fn keys_for(has_cure: bool, method: Method, eaten: Eaten) -> Vec<&'static str> {
    let mut keys = if has_cure {
        vec!["nitrite-locked", "weigh-it"]
    } else {
        Vec::new()
    };
    if method.has_brine() {
        keys.push("brine-once");
    }
    keys.push("keep-cold");
    if eaten == Eaten::HungForMonths {
        keys.push("raw-hung");
    }
    keys.push("local-rules");
    keys
}

/// Keys for dressing and cutting up: what a glove and a test can still do.
pub fn dressing_keys(kinds: &[MeatKind]) -> Vec<&'static str> {
    let of = [
        (MeatKind::Bird, &["dress-birds"][..]),
        (MeatKind::Red, &["dress-deer"]),
        (MeatKind::Boar, &["dress-boar", "trichinella-test"]),
        (MeatKind::Hare, &["dress-hare"]),
    ];
    of.into_iter()
        .filter(|(kind, _)| kinds.contains(kind))
        .flat_map(|(_, keys)| keys.iter().copied())
        .collect()
}

/// Keys for the pack: keeping, giving, and who should not eat of it.
pub fn pack_keys(kinds: &[MeatKind], has_cure: bool, cold_smoked: bool, vacuum: bool) -> Vec<&'static str> {
    let mut keys = Vec::new();
    if vacuum {
        keys.push("vacuum-botulism");
    }
    if cold_smoked {
        keys.push("cold-smoke");
    }
    if kinds.contains(&MeatKind::Red) {
        keys.push("share-deer");
    }
    keys.push("lead");
    if has_cure {
        keys.push("infants");
    }
    keys.extend(["thaw", "local-rules"]);
    keys
}

/// What bacon wants besides: before the word on local rules.
pub fn add_bacon(keys: &mut Vec<&'static str>, belly: Belly) {
    if belly != Belly::No {
        keys.insert(keys.len().saturating_sub(1), "bacon-fry");
    }
}

/// Keys for how hot meat of these kinds must get. What the page cannot know gets the two that hurt most; mince has a
/// row of its own, since what was on the outside is inside.
pub fn heat_keys(method: Method, kinds: &[MeatKind]) -> Vec<&'static str> {
    if method == Method::Ground {
        return vec!["mince-heat"];
    }
    let unknown = kinds.is_empty() || kinds.contains(&MeatKind::Own);
    [
        (MeatKind::Boar, "boar-165"),
        (MeatKind::Bird, "birds-165"),
        (MeatKind::Hare, "hare-165"),
        (MeatKind::Red, "red-160"),
    ]
    .into_iter()
    .filter(|(kind, _)| kinds.contains(kind) || (unknown && matches!(kind, MeatKind::Boar | MeatKind::Bird)))
    .map(|(_, key)| key)
    .collect()
}
