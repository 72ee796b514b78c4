//! What was read of a cook, and what is forecast of it.

use super::habit::Habit;

/// What was read: seconds and °C, in order of time.
#[derive(Clone, Copy, Debug)]
pub struct Readings<'a> {
    /// Of the piece.
    pub piece: &'a [(f64, f64)],
    /// Of the cabinet.
    pub cabinet: &'a [(f64, f64)],
    /// What the cabinet is set to, where it was not read.
    pub set: Option<f64>,
    /// What it will be set to, and from when on.
    pub next: &'a [(f64, f64)],
}

/// When it will be done. Seconds on the clock of the readings.
#[derive(Clone, Debug, PartialEq)]
pub struct Forecast {
    /// True where three readings or more were fitted; else by what is usual.
    pub fitted: bool,
    /// What the fit tells of the smoker; nothing where there is none.
    pub habit: Option<Habit>,
    /// The likely time and its band of four in five; nothing where it will not get there within a day.
    pub window: Option<[f64; 3]>,
    /// Its course from now on: seconds, °C.
    pub course: Vec<(f64, f64)>,
    /// It hardly warms though it is far from the target: evaporation holds it.
    pub stall: bool,
    /// The cabinet falls, and the piece no longer warms: the fire is out. The times are as if it burned again from now on.
    pub out: bool,
    /// Seconds from now with the cabinet 10 °C warmer.
    pub warmer: Option<f64>,
    /// Seconds from now in an oven at 120 °C.
    pub oven: Option<f64>,
    /// How far the centre still rises after the pull, °C.
    pub carry: f64,
    /// Share of the weight lost by the pull.
    pub loss: f64,
}
