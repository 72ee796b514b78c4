//! Coming up: how long the middle was between fridge-cold and hot.

use super::Points;

/// Hours in which a piece comes through 40 to 140 °F at home (UNL extension, published).
pub const COME_UP: f64 = 4.0;
/// From cold to hot, °F: what it comes through in that time.
pub const WARMING: (f64, f64) = (COLD, HOT);
const COLD: f64 = 40.0;
const HOT: f64 = 140.0;
/// A later reading at or above this, °F, does not begin the time again: nothing that spoils meat grows there, and no table
/// for cooking counts below it.
const STILL_HOT: f64 = 130.0;

/// Where a piece stands on its way up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ComeUp {
    /// Hours since it left the cold, up to now or to when it was read hot.
    pub hours: f64,
    /// True once it was read hot.
    pub hot: bool,
    /// True when no reading saw it cold: then the first one begins the time, and it may be longer.
    pub unseen: bool,
}

/// The time between cold and hot; nothing while it is cold or was never read.
///
/// The longer reading of it: from when it was lit (`lit`, where every reading up to then was cold), else from the first
/// reading, for its outside warms before its middle does; to the first time it was read hot and not much colder after.
/// `now` in seconds like the points; `coldest` are the same readings, each as cold as the coldest beside it.
pub fn come_up(read: Points, coldest: Points, lit: Option<f64>, now: f64) -> Option<ComeUp> {
    let (first, begun) = *read.first()?;
    read.iter().any(|(_, f)| *f > COLD).then_some(())?;
    let cold = |lit: &f64| *lit >= first && read.iter().all(|(at, f)| at > lit || *f <= COLD);
    let begin = lit.filter(cold).unwrap_or(first);
    let fell = coldest.iter().rposition(|(_, f)| *f < STILL_HOT);
    let settled = coldest
        .get(fell.map_or(0, |i| i.saturating_add(1))..)
        .unwrap_or_default();
    let hot = settled.iter().find(|(_, f)| *f >= HOT);
    let end = hot.map_or(now, |p| p.0);
    Some(ComeUp {
        hours: (end - begin).max(0.0) / 3600.0,
        hot: hot.is_some(),
        unseen: begun > COLD,
    })
}
