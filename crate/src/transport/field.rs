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
    ///
    /// ```
    /// use cure_reckoner::transport::{Body, Field};
    /// let meat = Field::new(&Body::new(0.0, 20), 4.0);
    /// assert!((meat.centre() - 4.0).abs() < 1e-12 && (meat.mean() - 4.0).abs() < 1e-12);
    /// ```
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
    ///
    /// ```
    /// use cure_reckoner::transport::{Body, Field};
    /// let mut slab = Field::new(&Body::new(0.0, 20), 0.0);
    /// slab.fill(|place| place);
    /// assert!((slab.mean() - 0.5).abs() < 1e-12);
    /// ```
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
    ///
    /// ```
    /// use cure_reckoner::transport::{Body, Field, Surface};
    /// let mut slab = Field::new(&Body::new(0.0, 100), 0.0);
    /// slab.dose(1.0);
    /// // Carslaw and Jaeger 1959, an instant source at the face: 1 − 2 exp(−π² Fo), 0.9 at Fo = ln(20)/π².
    /// slab.run(0.3035, 500, Surface::Sealed);
    /// assert!((slab.mean() - 1.0).abs() < 1e-12);
    /// assert!((slab.centre() - 0.9).abs() < 1e-3);
    /// ```
    pub fn dose(&mut self, amount: f64) {
        if let Some(outermost) = self.cells.last_mut() {
            outermost.now += amount * self.volume / outermost.shell.volume;
        }
        self.disturbed = true;
    }

    /// The surroundings change abruptly: the next step is taken as two half-steps of backward Euler, which damp what
    /// Crank-Nicolson would let ring.
    ///
    /// ```
    /// use cure_reckoner::transport::{Body, Field, Surface};
    /// let mut slab = Field::new(&Body::new(0.0, 20), 0.0);
    /// slab.run(0.5, 50, Surface::Held(1.0));
    /// // From the brine into fresh water: nothing swings beyond what there was.
    /// slab.disturb();
    /// slab.step(0.01, Surface::Held(0.0));
    /// assert!(slab.values().all(|value| (0.0..=1.0).contains(&value)));
    /// ```
    pub fn disturb(&mut self) {
        self.disturbed = true;
    }

    /// One step of `fo` with these surroundings, which stand for its middle: where they change smoothly, hand over
    /// each step what holds at half of it. Gives what passed into the body, as it adds to the mean.
    ///
    /// ```
    /// use cure_reckoner::transport::{Body, Field, Surface};
    /// let mut slab = Field::new(&Body::new(0.0, 20), 0.0);
    /// let entered = slab.step(0.01, Surface::Held(1.0));
    /// assert!(entered > 0.0 && (slab.mean() - entered).abs() < 1e-12);
    /// ```
    pub fn step(&mut self, fo: f64, surface: Surface) -> f64 {
        if self.disturbed {
            self.disturbed = false;
            self.advance(fo / 2.0, fo / 2.0, surface) + self.advance(fo / 2.0, fo / 2.0, surface)
        } else {
            self.advance(fo / 2.0, fo, surface)
        }
    }

    /// As many equal steps, over `fo` together. Gives what passed into the body.
    ///
    /// ```
    /// use cure_reckoner::transport::{Body, Field, Surface};
    /// let mut slab = Field::new(&Body::new(0.0, 100), 0.0);
    /// let entered = slab.run(0.25, 500, Surface::Held(1.0));
    /// // Crank 1975, p. 48, published: 0.562234.
    /// assert!((entered - 0.562_234).abs() < 1e-3);
    /// ```
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
    ///
    /// ```
    /// use cure_reckoner::transport::{Body, Field};
    /// // In a ball the outer shells count for more: the mean of x by volume is 3/4.
    /// let mut ball = Field::new(&Body::new(2.0, 200), 0.0);
    /// ball.fill(|place| place);
    /// assert!((ball.mean() - 0.75).abs() < 1e-4);
    /// ```
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.cells.iter().map(|cell| cell.now * cell.shell.volume).sum::<f64>() / self.volume
    }

    /// The value at the centre, by the parabola through the two innermost shells.
    ///
    /// ```
    /// use cure_reckoner::transport::{Body, Field, Surface};
    /// let mut ball = Field::new(&Body::new(2.0, 100), 0.0);
    /// // Carslaw and Jaeger 1959, the series of a sphere: 1 − 2 exp(−π² Fo), 0.9 at Fo = ln(20)/π².
    /// ball.run(0.3035, 500, Surface::Held(1.0));
    /// assert!((ball.centre() - 0.9).abs() < 1e-3);
    /// ```
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
    ///
    /// ```
    /// use cure_reckoner::transport::{Body, Field, Surface};
    /// let slab = Field::new(&Body::new(0.0, 20), 0.2);
    /// assert!((slab.surface(Surface::Held(1.0)) - 1.0).abs() < 1e-12);
    /// assert!((slab.surface(Surface::Sealed) - 0.2).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn surface(&self, surface: Surface) -> f64 {
        let (offered, taken) = self.passage(0.0, surface);
        self.cells
            .last()
            .map_or(0.0, |cell| cell.now + self.skin * (offered - taken * cell.now))
    }

    /// The shells' means, from the centre outwards.
    ///
    /// ```
    /// use cure_reckoner::transport::{Body, Field};
    /// let mut slab = Field::new(&Body::new(0.0, 2), 0.0);
    /// slab.dose(1.0);
    /// assert_eq!(slab.values().collect::<Vec<f64>>(), [0.0, 2.0]);
    /// ```
    pub fn values(&self) -> impl DoubleEndedIterator<Item = f64> + '_ {
        self.cells.iter().map(|cell| cell.now)
    }

    /// Thickness of a shell, as a share of `L`.
    ///
    /// ```
    /// use cure_reckoner::transport::{Body, Field};
    /// assert_eq!(Field::new(&Body::new(0.0, 20), 0.0).width(), 0.05);
    /// ```
    #[must_use]
    pub fn width(&self) -> f64 {
        1.0 / f64::from(u32::try_from(self.cells.len()).unwrap_or(1).max(1))
    }
}
