//! A solid piece of meat in the heat: conduction by an explicit scheme, the heat and the water at its skin.

/// Pressure of saturated vapour over water in Pa, and its slope: A. L. Buck (1981), J. Appl. Meteorol. 20, 1527, with
/// the constants of 1996.
pub fn saturation(celsius: f64) -> (f64, f64) {
    let (bend, base) = (celsius / 234.5, celsius + 257.14);
    let exponent = (18.678 - bend) * celsius / base;
    let pressure = 611.21 * exponent.exp();
    (pressure, pressure * (18.678 - 2.0 * bend - exponent) / base)
}

/// Heat of evaporation, J/kg: a straight line through the steam tables at 0 and 100 °C.
fn heat_of_evaporation(celsius: f64) -> f64 {
    2.501e6 - 2.44e3 * celsius
}

/// One axis of a piece from its middle to its skin. A cell's volume is the product of its measures along the axes.
struct Axis {
    /// Width times mean radius where the axis is one, width elsewhere.
    measure: Vec<f64>,
    /// How quickly a cell follows the one below it, and the one above it or the skin, 1/s.
    below: Vec<f64>,
    above: Vec<f64>,
    /// Share of the last face in an area, and conductance from the last middle to the skin, W/m²K; nothing when closed.
    face: f64,
    skin: Option<f64>,
}

impl Axis {
    /// Cells that are `first` wide at the skin and wider inwards, as many as asked for.
    fn new(length: f64, cells: usize, first: f64, round: bool, conductivity: f64, capacity: f64) -> Self {
        let (mut low, mut high) = (1.0, 2.0);
        for _ in 0..60 {
            let ratio = 0.5 * (low + high);
            let sum: f64 = (0..cells as i32).map(|i| first * f64::powi(ratio, i)).sum();
            *(if sum < length { &mut low } else { &mut high }) = ratio;
        }
        let mut widths: Vec<f64> = (0..cells as i32).rev().map(|i| first * f64::powi(low, i)).collect();
        let sum: f64 = widths.iter().sum();
        widths.iter_mut().for_each(|w| *w *= length / sum);
        let edges: Vec<f64> = (0..=cells).map(|i| widths[..i].iter().sum()).collect();
        let face = |i: usize| if round { edges[i] } else { 1.0 };
        let measure: Vec<f64> = (0..cells)
            .map(|i| widths[i] * if round { 0.5 * (edges[i] + edges[i + 1]) } else { 1.0 })
            .collect();
        let across = |i: usize| conductivity * face(i) * 2.0 / (widths[i - 1] + widths[i]);
        let skin = 2.0 * conductivity / widths[cells - 1];
        let below = |i: usize| if i == 0 { 0.0 } else { across(i) };
        let above = |i: usize| {
            if i + 1 == cells {
                skin * face(cells)
            } else {
                across(i + 1)
            }
        };
        let rate = |i: usize, flow: f64| flow / (measure[i] * capacity);
        Self {
            below: (0..cells).map(|i| rate(i, below(i))).collect(),
            above: (0..cells).map(|i| rate(i, above(i))).collect(),
            face: face(cells),
            skin: Some(skin),
            measure,
        }
    }
    /// A single cell without ends.
    fn closed() -> Self {
        Self {
            measure: vec![1.0],
            below: vec![0.0],
            above: vec![0.0],
            face: 0.0,
            skin: None,
        }
    }
}

/// How the skin dries, by what it has lost (kg/m²).
#[derive(Clone, Copy)]
pub enum Drying {
    /// As 1 / (1 + (loss / scale)^2).
    Bell(f64),
    /// Not at all until a critical loss, then straight to a rest: the loss, over how much more, the rest.
    Critical(f64, f64, f64),
    /// As exp(-loss / scale).
    Exponential(f64),
}

impl Drying {
    fn left(self, loss: f64) -> f64 {
        match self {
            Self::Bell(scale) => 1.0 / (1.0 + (loss / scale).powi(2)),
            Self::Critical(until, over, rest) => 1.0 - (1.0 - rest) * ((loss - until) / over).clamp(0.0, 1.0),
            Self::Exponential(scale) => (-loss / scale).exp(),
        }
    }
}

/// What surrounds the skin.
#[derive(Clone, Copy)]
pub struct Around {
    /// By convection, W/m²K.
    pub convection: f64,
    /// Of skin and walls together; the walls are as hot as the air.
    pub emissivity: f64,
    /// The skin's wetness before it dries, 0 to 1.
    pub wet: f64,
    /// How it dries.
    pub drying: Drying,
    /// The air, °C.
    pub air: f64,
    /// Pressure of its vapour, Pa.
    pub vapour: f64,
}

impl Around {
    /// What a skin so hot and so wet gains, W/m², how much less it is by a degree more, and the water it loses, kg/m²s.
    fn gain(&self, skin: f64, wet: f64) -> (f64, f64, f64) {
        // Lewis: vapour goes as heat does, 0.622 / (p cp Le^2/3) times as much. Dew falls on dry skin as on wet.
        let (pressure, slope) = saturation(skin);
        let wet = if pressure < self.vapour { 1.0 } else { wet };
        let moves = wet * self.convection * 0.622 / (101_325.0 * 1006.0 * 0.904);
        let lost = moves * (pressure - self.vapour);
        let latent = heat_of_evaporation(skin);
        let radiate = 5.670e-8 * self.emissivity;
        let (hot, wall) = (skin + 273.15, self.air + 273.15);
        let gain = self.convection * (self.air - skin) + radiate * (wall.powi(4) - hot.powi(4)) - latent * lost;
        let yields = self.convection + 4.0 * radiate * hot.powi(3) + latent * moves * slope;
        (gain, yields, lost)
    }
}

/// A piece of the skin over a cell.
struct Patch {
    cell: usize,
    /// How quickly the cell follows it, 1/s.
    rate: f64,
    area: f64,
    /// To the middle of the cell, W/m²K.
    conductance: f64,
    /// Its temperature.
    skin: f64,
    /// What it has lost, kg/m².
    loss: f64,
}

/// A piece of meat by an explicit scheme over the product of three axes; the cell of number 0 is its middle.
pub struct Solid {
    axes: [Axis; 3],
    places: Vec<[usize; 3]>,
    strides: [usize; 3],
    volume: Vec<f64>,
    /// How hot it is, cell by cell, °C.
    pub heat: Vec<f64>,
    change: Vec<f64>,
    patches: Vec<Patch>,
    /// Seconds in a step.
    pub step: f64,
}

impl Solid {
    fn new(axes: [Axis; 3], start: f64) -> Self {
        let n = [0, 1, 2].map(|a| axes[a].measure.len());
        let strides = [1, n[0], n[0] * n[1]];
        let count = n[0] * n[1] * n[2];
        let places: Vec<[usize; 3]> = (0..count).map(|c| [0, 1, 2].map(|a| c / strides[a] % n[a])).collect();
        let product = |p: &[usize; 3]| (0..3).map(|a| axes[a].measure[p[a]]).product();
        let volume: Vec<f64> = places.iter().map(product).collect();
        let mut patches = Vec::new();
        for axis in 0..3 {
            let Some(conductance) = axes[axis].skin else { continue };
            for (cell, place) in places.iter().enumerate().filter(|(_, p)| p[axis] + 1 == n[axis]) {
                let area = volume[cell] / axes[axis].measure[place[axis]] * axes[axis].face;
                patches.push(Patch {
                    cell,
                    rate: axes[axis].above[place[axis]],
                    area,
                    conductance,
                    skin: start,
                    loss: 0.0,
                });
            }
        }
        let rates = |axis: &Axis| {
            axis.below
                .iter()
                .zip(&axis.above)
                .map(|(b, a)| b + a)
                .fold(0.0, f64::max)
        };
        let quickest: f64 = axes.iter().map(rates).sum();
        Self {
            step: (0.8 / quickest).min(20.0),
            heat: vec![start; count],
            change: vec![0.0; count],
            axes,
            places,
            strides,
            volume,
            patches,
        }
    }

    /// A brick of these half-dimensions: an octant of it.
    pub fn brick(half: [f64; 3], cells: usize, conductivity: f64, capacity: f64, start: f64) -> Self {
        let first = half[0] / cells as f64;
        Self::new(
            half.map(|h| Axis::new(h, cells, first, false, conductivity, capacity)),
            start,
        )
    }

    /// A round piece: the upper half of it, as far as a radian reaches.
    pub fn round(radius: f64, half: f64, cells: usize, conductivity: f64, capacity: f64, start: f64) -> Self {
        let axis = |length, round| Axis::new(length, cells, radius / cells as f64, round, conductivity, capacity);
        Self::new([axis(radius, true), axis(half, false), Axis::closed()], start)
    }

    /// One step on; the heat (J, in the part that is calculated) that came from outside, less what evaporation took.
    pub fn step(&mut self, around: &Around) -> f64 {
        self.change.fill(0.0);
        for (cell, place) in self.places.iter().enumerate() {
            for (a, &i) in place.iter().enumerate() {
                if i > 0 {
                    let (axis, under) = (&self.axes[a], cell - self.strides[a]);
                    let rise = self.heat[under] - self.heat[cell];
                    self.change[cell] += axis.below[i] * rise;
                    self.change[under] -= axis.above[i - 1] * rise;
                }
            }
        }
        let mut came = 0.0;
        for patch in &mut self.patches {
            let inner = self.heat[patch.cell];
            let still = around.wet * around.drying.left(patch.loss);
            let (mut gain, mut lost) = (0.0, 0.0);
            // Two of Newton's steps from the last skin.
            for _ in 0..2 {
                let yields;
                (gain, yields, lost) = around.gain(patch.skin, still);
                let off = gain + patch.conductance * (inner - patch.skin);
                patch.skin += off / (yields + patch.conductance);
            }
            self.change[patch.cell] += patch.rate * (patch.skin - inner);
            patch.loss = (patch.loss + lost * self.step).max(0.0);
            came += gain * patch.area * self.step;
        }
        for (heat, change) in self.heat.iter_mut().zip(&self.change) {
            *heat += self.step * change;
        }
        came
    }

    /// The water that has gone, as a share of the piece.
    pub fn lost(&self) -> f64 {
        let gone: f64 = self.patches.iter().map(|p| p.loss * p.area).sum();
        gone / (1055.0 * self.volume.iter().sum::<f64>())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const K: f64 = 0.47;
    const C: f64 = 3.75e6;

    /// An oven without water in it, the check values of the notes on physics and a series for the roll.
    fn after(mut solid: Solid, seconds: f64) -> f64 {
        let around = Around {
            convection: 15.0,
            emissivity: 0.0,
            wet: 0.0,
            drying: Drying::Exponential(1.0),
            air: 107.0,
            vapour: 0.0,
        };
        let steps = (seconds / solid.step).ceil();
        solid.step = seconds / steps;
        (0..steps as u32).for_each(|_| _ = solid.step(&around));
        solid.heat[0]
    }

    #[test]
    fn the_scheme_agrees_with_the_series() {
        let plate = Axis::new(0.0125, 10, 0.00125, false, K, C);
        let slab = Solid::new([plate, Axis::closed(), Axis::closed()], 4.0);
        let brick = Solid::brick([0.02, 0.03, 0.06], 10, K, C, 4.0);
        let roll = Solid::round(0.025, 0.05, 14, K, C, 4.0);
        for (is, series) in [
            (after(slab, 3600.0), 67.468),
            (after(brick, 7200.0), 90.633),
            (after(roll, 5400.0), 81.665),
        ] {
            assert!((is - series).abs() < 0.15, "{is} instead of {series}");
        }
    }

    #[test]
    fn what_comes_in_is_in_it() {
        let mut around = Around {
            convection: 20.0,
            emissivity: 0.8,
            wet: 0.9,
            drying: Drying::Critical(0.2, 0.5, 0.1),
            air: 40.0,
            vapour: 3000.0,
        };
        for mut solid in [
            Solid::brick([0.02, 0.03, 0.06], 10, K, C, 4.0),
            Solid::round(0.02, 0.06, 14, K, C, 4.0),
        ] {
            let mut came = 0.0;
            while solid.heat[0] < 65.0 {
                around.air = (around.air + 0.0).min(100.0) + if came == 0.0 { 60.0 } else { 0.0 };
                came += solid.step(&around);
            }
            let cells = solid.heat.iter().zip(&solid.volume);
            let held: f64 = cells.map(|(u, v)| C * v * (u - 4.0)).sum();
            assert!((came / held - 1.0).abs() < 1e-4, "{came} J came, {held} J are in it");
        }
    }
}
