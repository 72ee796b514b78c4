//! What stands in each shell, and how it moves on.

use super::body::{Body, Shell};

/// What is around the body. Values in the units of `u`; see the head of [`crate::transport`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Surface {
    /// Nothing passes.
    Sealed,
    /// The surface stands at this value.
    Held(f64),
    /// A stirred bath of limited volume, `ratio` times the body's own. Its value is [`Field::bath`].
    Bath {
        /// Volume of the bath over that of the body (for brine: its water over the meat's water), above 0.
        ratio: f64,
    },
    /// Exchange with surroundings at `ambient`, and a flux besides.
    Exchange {
        /// `h L / k`, 0 or more.
        biot: f64,
        /// The value far from the surface.
        ambient: f64,
        /// Into the body, `q L / k`.
        flux: f64,
    },
}

/// One shell with what stands in it.
#[derive(Clone, Copy, Debug)]
struct Cell {
    shell: Shell,
    now: f64,
    /// Scratch of the solution: forward factors, then the value in the middle of the step and the inward flux.
    factor: f64,
    value: f64,
}

/// The values in a body and in its bath.
#[derive(Clone, Debug)]
pub struct Field {
    cells: Vec<Cell>,
    volume: f64,
    skin: f64,
    disturbed: bool,
    /// What the bath stands at; only [`Surface::Bath`] uses and changes it.
    pub bath: f64,
}

impl Field {
    /// A body that stands at `value` throughout.
    #[must_use]
    pub fn new(body: &Body, value: f64) -> Self {
        let cells = body
            .shells
            .iter()
            .map(|&shell| Cell {
                shell,
                now: value,
                factor: 0.0,
                value: 0.0,
            })
            .collect();
        Self {
            cells,
            volume: body.volume,
            skin: body.skin,
            disturbed: true,
            bath: 0.0,
        }
    }

    /// Sets every value anew, by the place of the shell's middle from 0 at the centre to 1 at the surface.
    pub fn fill(&mut self, value: impl Fn(f64) -> f64) {
        let mut edge = 0.0;
        let width = self.width();
        for cell in &mut self.cells {
            cell.now = value(edge + width / 2.0);
            edge += width;
        }
        self.disturbed = true;
    }

    /// Puts a dose on the surface, as a rub: `amount` is what it adds to the mean.
    pub fn dose(&mut self, amount: f64) {
        if let Some(outermost) = self.cells.last_mut() {
            outermost.now += amount * self.volume / outermost.shell.volume;
        }
        self.disturbed = true;
    }

    /// The surroundings change abruptly: the next step is taken as two half-steps of backward Euler, which damp what
    /// Crank-Nicolson would let ring.
    pub fn disturb(&mut self) {
        self.disturbed = true;
    }

    /// One step of `fo` with these surroundings, which stand for its middle: where they change smoothly, hand over
    /// each step what holds at half of it. Gives what passed into the body, as it adds to the mean.
    pub fn step(&mut self, fo: f64, surface: Surface) -> f64 {
        if self.disturbed {
            self.disturbed = false;
            self.advance(fo / 2.0, fo / 2.0, surface) + self.advance(fo / 2.0, fo / 2.0, surface)
        } else {
            self.advance(fo / 2.0, fo, surface)
        }
    }

    /// As many equal steps, over `fo` together. Gives what passed into the body.
    pub fn run(&mut self, fo: f64, steps: u32, surface: Surface) -> f64 {
        let one = fo / f64::from(steps.max(1));
        (0..steps.max(1)).map(|_| self.step(one, surface)).sum()
    }

    /// Solves for the values `ahead` of now, then moves on by `on` with the fluxes of those values. Ahead by the
    /// whole step is backward Euler, by half of it Crank-Nicolson.
    fn advance(&mut self, ahead: f64, on: f64, surface: Surface) -> f64 {
        let (offered, taken) = self.passage(ahead, surface);
        let outermost = self.cells.len().saturating_sub(1);
        let (mut inner, mut factor, mut value) = (0.0, 0.0, 0.0);
        for (place, cell) in self.cells.iter_mut().enumerate() {
            let holds = cell.shell.volume / ahead;
            let (out, given) = if place == outermost {
                (taken, offered)
            } else {
                (cell.shell.passes, 0.0)
            };
            let pivot = holds + out + inner * (1.0 - factor);
            value = (holds * cell.now + given + inner * value) / pivot;
            factor = cell.shell.passes / pivot;
            (cell.factor, cell.value) = (factor, value);
            inner = cell.shell.passes;
        }
        let mut outer = 0.0;
        for cell in self.cells.iter_mut().rev() {
            cell.value += cell.factor * outer;
            // Nought for the outermost, which passes nothing to a next shell.
            cell.factor = cell.shell.passes * (outer - cell.value);
            outer = cell.value;
        }
        let entered = self.cells.last().map_or(0.0, |cell| offered - taken * cell.value);
        let mut from_outside = 0.0;
        for (place, cell) in self.cells.iter_mut().enumerate() {
            let through = if place == outermost { entered } else { cell.factor };
            cell.now += on / cell.shell.volume * (through - from_outside);
            from_outside = through;
        }
        if let Surface::Bath { ratio } = surface {
            self.bath -= on * entered / (ratio * self.volume);
        }
        on * entered / self.volume
    }

    /// The flux into the body as `offered - taken * value of the outermost shell`.
    fn passage(&self, ahead: f64, surface: Surface) -> (f64, f64) {
        match surface {
            Surface::Sealed => (0.0, 0.0),
            Surface::Held(value) => (value / self.skin, 1.0 / self.skin),
            Surface::Bath { ratio } => {
                // The bath's own fall within the step, put in before the solution.
                let taken = 1.0 / (self.skin + ahead / (ratio * self.volume));
                (taken * self.bath, taken)
            }
            Surface::Exchange { biot, ambient, flux } => {
                let whole = 1.0 + biot * self.skin;
                ((biot * ambient + flux) / whole, biot / whole)
            }
        }
    }

    /// The mean over the body.
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.cells.iter().map(|cell| cell.now * cell.shell.volume).sum::<f64>() / self.volume
    }

    /// The value at the centre, by the parabola through the two innermost shells.
    #[must_use]
    pub fn centre(&self) -> f64 {
        let mut inmost = self.cells.iter();
        match (inmost.next(), inmost.next()) {
            (Some(first), Some(second)) => {
                let bend = (second.now - first.now) / (second.shell.square - first.shell.square);
                first.now - bend * first.shell.square
            }
            _ => 0.0,
        }
    }

    /// The value at the surface under these surroundings.
    #[must_use]
    pub fn surface(&self, surface: Surface) -> f64 {
        let (offered, taken) = self.passage(0.0, surface);
        self.cells
            .last()
            .map_or(0.0, |cell| cell.now + self.skin * (offered - taken * cell.now))
    }

    /// The shells' means, from the centre outwards.
    pub fn values(&self) -> impl DoubleEndedIterator<Item = f64> + '_ {
        self.cells.iter().map(|cell| cell.now)
    }

    /// Thickness of a shell, as a share of `L`.
    #[must_use]
    pub fn width(&self) -> f64 {
        1.0 / f64::from(u32::try_from(self.cells.len()).unwrap_or(1).max(1))
    }
}
