//! Coming up: how long the middle was between fridge-cold and hot.

use super::Points;

/// Hours in which a piece comes through 40 to 140 °F at home (UNL extension, published).
pub const COME_UP: f64 = 4.0;
const COLD: f64 = 40.0;
const HOT: f64 = 140.0;

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
/// The longer reading of it: from the last time it was seen cold before it warmed, to the first time it was seen hot.
/// `now` in seconds like the points; `error` in °F is taken off what is read as hot.
pub fn come_up(points: Points, now: f64, error: f64) -> Option<ComeUp> {
    let hot = points.iter().find(|(_, f)| f - error >= HOT);
    let end = hot.map_or(now, |p| p.0);
    let (mut begin, mut unseen) = (points.first()?.0, true);
    for (at, _) in points.iter().filter(|(at, f)| *f <= COLD && *at <= end) {
        (begin, unseen) = (*at, false);
    }
    let warmed = points.iter().any(|(_, f)| *f > COLD);
    warmed.then(|| ComeUp {
        hours: (end - begin).max(0.0) / 3600.0,
        hot: hot.is_some(),
        unseen,
    })
}
