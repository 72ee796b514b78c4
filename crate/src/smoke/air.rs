//! Moist air beside a wet surface.

/// Gas constant of water vapour, J/kgK, and of dry air.
const VAPOUR: f64 = 461.5;
const DRY: f64 = 287.05;
/// J/kgK at constant pressure.
const HEAT: f64 = 1007.0;
/// Lewis number to two thirds, of water vapour in air.
const LEWIS: f64 = 0.904;
const PRESSURE: f64 = 101_325.0;
const ZERO: f64 = 273.15;

/// Vapour pressure over water, Pa (Magnus form after Alduchov and Eskridge 1996, from memory).
pub fn saturation(celsius: f64) -> f64 {
    610.94 * (17.625 * celsius / (celsius + 243.04)).exp()
}

/// Heat of evaporation, J/kg.
pub fn latent(celsius: f64) -> f64 {
    2.501e6 - 2361.0 * celsius
}

/// Water that leaves a wet surface, kg/m²s, by the convective coefficient (W/m²K) alone; below nought it condenses.
/// `dew` is the dew point of the air.
pub fn evaporation(h_conv: f64, surface: f64, air: f64, dew: f64) -> f64 {
    let film = PRESSURE / DRY / (f64::midpoint(surface, air) + ZERO);
    let vapour = saturation(surface) / (surface + ZERO) - saturation(dew) / (air + ZERO);
    h_conv / (film * HEAT * LEWIS) * vapour / VAPOUR
}

/// Where a wet surface stalls when it neither radiates nor warms a body, °C.
pub fn wet_bulb(air: f64, dew: f64) -> f64 {
    let (mut low, mut high) = (dew.min(air), air);
    for _ in 0..60 {
        let surface = f64::midpoint(low, high);
        if air - surface > latent(surface) * evaporation(1.0, surface, air, dew) {
            low = surface;
        } else {
            high = surface;
        }
    }
    f64::midpoint(low, high)
}
