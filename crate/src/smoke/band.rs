//! What is likely by the fit and by the readings' own line, and how far from it the end may lie.
//!
//! The figures here were chosen on the simulated cooks with even numbers (`tests/support/hard_cooks.rs`, 0 to 1599) and the
//! first 120 of `tests/support/cooks.rs`, and on no others.

/// A reading of the piece, °C: thermometer, place of the probe, lid; one standard deviation.
pub(super) const NOISE: f64 = 1.0;
/// The least width either way, s.
const LEAST: f64 = 60.0;
/// No time left is taken to be shorter than this, s, where two are weighed against each other.
const SHORTEST: f64 = 30.0;

/// Standard deviations either way. 1.28 would be 10 to 90 per cent if the model were right; with this, about four in five
/// of the cooks simulated by another model end within the band.
const FOUR_IN_FIVE: f64 = 1.9;

/// Remaining seconds by a straight line through the last three readings, and how far off it may be, as a share, by the
/// noise of a reading alone; nothing where it does not rise.
pub(super) fn straight(piece: &[(f64, f64)], target: f64, now: f64) -> Option<(f64, f64)> {
    let last = piece.get(piece.len().checked_sub(3)?..)?;
    let mean = |of: fn(&(f64, f64)) -> f64| last.iter().map(of).sum::<f64>() / last.len() as f64;
    let (time, level) = (mean(|p| p.0), mean(|p| p.1));
    let square: f64 = last.iter().map(|p| (p.0 - time) * (p.0 - time)).sum();
    let slope = last.iter().map(|p| (p.0 - time) * (p.1 - level)).sum::<f64>() / square;
    let left = time + (target - level) / slope - now;
    (slope > 0.0).then(|| (left, NOISE / (square.sqrt() * slope)))
}

/// Remaining seconds of fit and line together, where `way` is the share of the way to the target that is behind it.
///
/// Early on the line knows nothing of the stall. From half-way it counts for more and more, at seven tenths for two
/// fifths; less where the readings lie too near each other to show a slope.
pub(super) fn blend(fit: f64, line: Option<(f64, f64)>, way: f64) -> f64 {
    line.map_or(fit, |(line, off)| {
        let evidence = 1.0 / (1.0 + (off / 0.5) * (off / 0.5));
        let weight = 0.4 * ((way - 0.5) / 0.2).clamp(0.0, 1.0) * evidence;
        let fit = fit.max(SHORTEST);
        fit * (line.max(SHORTEST) / fit).powf(weight)
    })
}

/// The band of four in five about what remains, s: `spread` is the fit's standard deviation of its logarithm, `way` as in
/// [`blend`].
///
/// The two sides differ. What is not foreseen (a fire that goes out, a skin that stays wet) makes a cook longer while much
/// of it is still to come; near its end it is the surface drying off that makes it shorter.
pub(super) fn of(remains: f64, spread: f64, way: f64, wrapped: bool) -> [f64; 3] {
    let way = way.clamp(0.0, 1.0);
    let [model, low, high] = if wrapped {
        [0.33, 0.7, 2.2]
    } else {
        [0.31, 0.3 + 1.3 * way, 1.85]
    };
    let spread = (0.8 * spread).hypot(model);
    let ends = [remains * (-low * spread).exp(), remains * (high * spread).exp()];
    [
        ends[0].min(remains - LEAST).max(0.0),
        remains,
        ends[1].max(remains + LEAST),
    ]
}

/// The same before three readings are there, by what is usual: as uncertain as the whole time over the fire, `gone` and
/// what remains, however little of it is left. The widest of the prior's four in five, 65 % either way (30 % wrapped), and
/// ten minutes.
pub(super) fn unfitted(remains: f64, gone: f64, spread: f64, wrapped: bool) -> [f64; 3] {
    let spread = (FOUR_IN_FIVE * spread).exp();
    let share = if wrapped { 0.3 } else { 0.65 };
    let whole = remains + gone;
    let low = (whole / spread - gone)
        .min(remains - whole * share)
        .min(remains - 600.0);
    let high = (whole * spread - gone).max(remains + whole * share);
    [low.max(0.0), remains, high.max(remains + 600.0)]
}
