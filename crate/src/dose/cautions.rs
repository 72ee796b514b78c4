//! Which cautions stand beside a figure. Their sources are in `tables/cautions.csv`, their words in the page.

use super::verdict::Caution;
use crate::pantry::{Belly, MeatKind};
use crate::recipe::{Eaten, Method};

/// Cautions of these keys, in this order; a key that is in no row is left out.
///
/// ```
/// use cure_reckoner::dose::cautions;
/// let found = cautions(&["weigh-it", "no-such-key"]);
/// assert_eq!(found.len(), 1);
/// assert_eq!(found[0].key, "weigh-it");
/// ```
pub fn cautions(keys: &[&str]) -> Vec<Caution> {
    keys.iter()
        .filter_map(|key| crate::tables::CAUTIONS.iter().find(|c| c.key == *key))
        .cloned()
        .collect()
}

/// Keys for the weigh-out: what can still be done otherwise there. Heat, keeping and lead stand at the fire and the pack.
///
/// ```
/// use cure_reckoner::dose::keys_for;
/// use cure_reckoner::recipe::{Eaten, Method};
/// assert_eq!(keys_for(false, Method::CoverBrine, Eaten::Cooked), ["brine-once", "keep-cold", "local-rules"]);
/// ```
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
///
/// ```
/// use cure_reckoner::dose::dressing_keys;
/// use cure_reckoner::pantry::MeatKind;
/// assert_eq!(dressing_keys(&[MeatKind::Boar]), ["dress-boar", "trichinella-test"]);
/// ```
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
///
/// ```
/// use cure_reckoner::dose::pack_keys;
/// use cure_reckoner::pantry::MeatKind;
/// let (has_cure, cold_smoked, vacuum) = (true, false, true);
/// let keys = pack_keys(&[MeatKind::Bird], has_cure, cold_smoked, vacuum);
/// assert_eq!(keys, ["vacuum-botulism", "lead", "infants", "thaw", "local-rules"]);
/// ```
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
///
/// ```
/// use cure_reckoner::dose::add_bacon;
/// use cure_reckoner::pantry::Belly;
/// let mut keys = vec!["keep-cold", "local-rules"];
/// add_bacon(&mut keys, Belly::Bare);
/// assert_eq!(keys, ["keep-cold", "bacon-fry", "local-rules"]);
/// ```
pub fn add_bacon(keys: &mut Vec<&'static str>, belly: Belly) {
    if belly != Belly::No {
        keys.insert(keys.len().saturating_sub(1), "bacon-fry");
    }
}

/// Keys for how hot meat of these kinds must get. What the page cannot know gets the two that hurt most; mince has a
/// row of its own, since what was on the outside is inside.
///
/// ```
/// use cure_reckoner::dose::heat_keys;
/// use cure_reckoner::pantry::MeatKind;
/// use cure_reckoner::recipe::Method;
/// assert_eq!(heat_keys(Method::Rub, &[MeatKind::Red]), ["red-160"]);
/// assert_eq!(heat_keys(Method::Rub, &[]), ["boar-165", "birds-165"]);
/// assert_eq!(heat_keys(Method::Ground, &[MeatKind::Red]), ["mince-heat"]);
/// ```
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
