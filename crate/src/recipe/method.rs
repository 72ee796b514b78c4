//! How the cure gets into the meat, and what the dose is counted on.

use serde::{Deserialize, Serialize};

/// How the cure gets into the meat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Method {
    /// Measured dry rub: everything is weighed for this meat and stays with it.
    Rub,
    /// Cover brine left until meat and brine are equal; the dose counts over both.
    CoverBrine,
    /// Mixed into minced meat.
    Ground,
    /// A short stay in a strong brine: only what the meat takes up counts.
    PickUp,
    /// Pickle pumped into the meat.
    Pumped,
    /// Pumped, then left under the rest of the same pickle.
    PumpedAndCovered,
}

/// What the ppm are counted on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Counted {
    /// Green weight.
    Green,
    /// Green weight and pickle: left until both are equal.
    GreenAndPickle,
    /// The share of the pickle that goes into the meat.
    Taken,
    /// Both, one after the other.
    TakenAndCovered,
    /// One or the other: it is not known which.
    TakenOrEqual,
    /// The share that goes in, or what has diffused in by the time it is taken out, where that is more.
    TakenOrDiffused,
}

impl Method {
    /// True where there is a brine, with water of its own.
    pub const fn has_brine(self) -> bool {
        !matches!(self, Self::Rub | Self::Ground)
    }

    /// True where only a share of the brine goes into the meat, which has to be known.
    pub const fn takes(self) -> bool {
        matches!(self, Self::PickUp | Self::Pumped | Self::PumpedAndCovered)
    }

    /// Minced or pumped: what was outside is inside.
    pub const fn through(self) -> bool {
        matches!(self, Self::Ground | Self::Pumped | Self::PumpedAndCovered)
    }

    /// What the ppm are counted on by this method.
    pub const fn counted(self) -> Counted {
        match self {
            Self::Rub | Self::Ground => Counted::Green,
            Self::CoverBrine => Counted::GreenAndPickle,
            Self::PickUp | Self::Pumped => Counted::Taken,
            Self::PumpedAndCovered => Counted::TakenAndCovered,
        }
    }

    /// True where the stay sets the dose: it is neither longer nor shorter for anybody's sleep.
    pub const fn is_timed_exactly(self) -> bool {
        matches!(self, Self::PickUp)
    }

    /// Its key in the table of limits.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Rub => "rub",
            Self::CoverBrine => "cover_brine",
            Self::Ground => "ground",
            Self::PickUp => "pick_up",
            Self::Pumped => "pumped",
            Self::PumpedAndCovered => "pumped_and_covered",
        }
    }
}
