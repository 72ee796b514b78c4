//! All that is known of a batch, in plain numbers: what the oracle judges and the door is asked about.

/// Milliseconds.
pub type Ms = i64;
pub const MINUTE: Ms = 60_000;
pub const HOUR: Ms = 60 * MINUTE;
pub const DAY: Ms = 24 * HOUR;
/// 24 November 2026, midnight in Greenwich: the day of the kill of every batch.
pub const KILLED: Ms = 1_795_478_400_000;

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    Bird,
    Red,
    Boar,
    Hare,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Method {
    Rub,
    Ground,
    CoverBrine,
    PickUp,
    Pumped,
}

impl Method {
    pub const fn key(self) -> &'static str {
        match self {
            Self::Rub => "rub",
            Self::Ground => "ground",
            Self::CoverBrine => "cover_brine",
            Self::PickUp => "pick_up",
            Self::Pumped => "pumped",
        }
    }

    pub const fn brine(self) -> bool {
        !matches!(self, Self::Rub | Self::Ground)
    }
}

/// A size class.
#[derive(Clone, Debug)]
pub struct Class {
    pub cut: &'static str,
    pub kind: Kind,
    pub belly: bool,
    pub rind: bool,
    pub count: u32,
    pub grams: f64,
    /// In millimetres; nothing where it was not measured.
    pub thick: Option<f64>,
    pub readings: Vec<Reading>,
    pub pulled: Option<Ms>,
}

/// What a probe showed in the coldest piece of a class.
#[derive(Clone, Debug)]
pub struct Reading {
    /// As it was typed.
    pub shown: f64,
    pub fahrenheit: bool,
    pub at: Ms,
    pub struck: bool,
    pub sure: bool,
}

impl Reading {
    pub fn celsius(&self) -> f64 {
        if self.fahrenheit {
            celsius(self.shown)
        } else {
            self.shown
        }
    }
}

/// How much of the agent went in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Amount {
    Grams(f64),
    Teaspoons(f64),
    Tablespoons(f64),
}

/// A curing agent, with its strength in per cent; nothing where the packet is not known.
#[derive(Clone, Debug)]
pub struct Agent {
    pub item: &'static str,
    pub nitrite: Option<f64>,
    pub nitrate: f64,
}

/// How the batch came by its cure.
#[derive(Clone, Debug)]
pub enum Put {
    /// The weigh-out is still a plan.
    Planned,
    /// Ticked on the weigh-out.
    Ticked(f64),
    /// Told afterwards.
    Told(Amount),
    /// Rubbed and bagged, and no word of the cure.
    Silent,
}

/// What was seen at the refrigerator.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Seen {
    Read(f64),
    Frozen,
    Thawed,
    PowerOff,
    PowerOn,
}

/// A line of the user's own.
#[derive(Clone, Debug)]
pub enum Own {
    None,
    /// Nothing that could be a cure.
    Plain(&'static str),
    /// A cure under another name.
    Cure(&'static str),
}

#[derive(Clone, Debug)]
pub struct Told {
    pub classes: Vec<Class>,
    pub method: Method,
    pub hung: bool,
    pub jerky: bool,
    pub law: &'static str,
    /// In grams.
    pub step: f64,
    pub agent: Option<Agent>,
    /// In ppm.
    pub aim: f64,
    pub put: Put,
    pub also: Option<(Amount, Agent)>,
    pub own: Own,
    /// Of green weight, per cent.
    pub salt: f64,
    /// For a brine: water in per cent of green weight, and what it takes of the pickle.
    pub water: f64,
    pub take: f64,
    /// Planned time in the cure, in hours.
    pub stay: f64,
    pub until: f64,
    pub rubbed: Option<Ms>,
    pub cure_out: Option<Ms>,
    pub fridge: Vec<(Ms, Seen)>,
    pub lit: Option<Ms>,
    pub at_risk: Option<bool>,
    pub target: Option<f64>,
    pub packed: Option<Ms>,
    /// When somebody said that it was thrown out.
    pub thrown_out: Option<Ms>,
    pub frozen: bool,
    pub vacuum: bool,
    pub now: Ms,
}

impl Told {
    pub fn green(&self) -> f64 {
        self.classes.iter().map(|c| c.grams).sum()
    }

    /// Water, salt and cure of the brine, nearly: the salt in the cure counts as salt.
    pub fn pickle(&self) -> f64 {
        let strength = |agent: &Agent| (agent.nitrite.unwrap_or(0.0) + agent.nitrate) / 100.0;
        let weighed = |amount: Amount| if let Amount::Grams(g) = amount { g } else { 0.0 };
        let cure = match self.put {
            Put::Ticked(g) => g,
            Put::Told(amount) => weighed(amount),
            Put::Planned | Put::Silent => 0.0,
        };
        let also = self.also.as_ref().map_or(0.0, |(amount, _)| weighed(*amount));
        self.green() * (self.water + self.salt) / 100.0 + cure * self.agent.as_ref().map_or(0.0, strength) + also
    }

    /// Hours in the cure: those planned, or once it is out, those that it was in.
    pub fn stayed(&self) -> f64 {
        let was = self
            .rubbed
            .zip(self.cure_out)
            .map(|(from, to)| (to - from) as f64 / HOUR as f64);
        was.unwrap_or(self.stay)
    }
}

pub fn celsius(fahrenheit: f64) -> f64 {
    (fahrenheit - 32.0) / 1.8
}

pub fn fahrenheit(celsius: f64) -> f64 {
    celsius * 1.8 + 32.0
}
