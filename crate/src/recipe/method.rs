//! How the cure gets into the meat: what the dose is counted on, and the words for it, one row for each method.

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

/// The words of a method, where they differ.
#[derive(Debug)]
pub struct Words {
    /// Key in the table of limits.
    pub key: &'static str,
    /// What the dose is counted on, as a sentence.
    pub basis: &'static str,
    /// How to use what is weighed.
    pub use_it: (&'static str, &'static str),
    /// What to do with a dose that is all right.
    pub keep: &'static str,
    /// How more cure is put in.
    pub more_cure: &'static str,
    /// How more meat is brought in.
    pub more_meat: &'static str,
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

    /// Its words.
    pub const fn words(self) -> &'static Words {
        match self {
            Self::Rub => &RUB,
            Self::CoverBrine => &COVER_BRINE,
            Self::Ground => &GROUND,
            Self::PickUp => &PICK_UP,
            Self::Pumped => &PUMPED,
            Self::PumpedAndCovered => &PUMPED_AND_COVERED,
        }
    }
}

static RUB: Words = Words {
    key: "rub",
    basis: "Ingoing sodium nitrite, counted on green weight.",
    use_it: (
        "Weigh in this order into one bowl.",
        "Mix it, rub all of it in, and keep what falls off with the meat.",
    ),
    keep: "Rub it well, keep it cold, and do not add more cure.",
    more_cure: "Weighed, mixed with a spoonful of salt so that it spreads, rubbed over all of it.",
    more_meat: "Take all the rub there is and work it over all of the meat again",
};

const COVER_BRINE: Words = Words {
    key: "cover_brine",
    basis: "Ingoing sodium nitrite, counted on green weight and brine together.",
    use_it: (
        "Stir until nothing lies on the bottom.",
        "Chill the brine to 4 °C (40 °F) before the meat goes in, and keep every piece under.",
    ),
    keep: "Stir it well, keep every piece under and cold, and do not add more cure.",
    more_cure: "Weighed, stirred into a cup of the brine, and that into the rest.",
    more_meat: "Put it into the same brine, stir, and keep all of it under",
};

static GROUND: Words = Words {
    key: "ground",
    basis: "Ingoing sodium nitrite, counted on the green weight of the mince.",
    use_it: (
        "Weigh in this order into one bowl.",
        "Stir the cure into a little ice water, pour it over the mince with the rest, and mix until nothing shows.",
    ),
    keep: "Mix it well, keep it cold, and do not add more cure.",
    more_cure: "Weighed, stirred into a little ice water, mixed through all of it.",
    more_meat: "Mince it and mix it through all there is",
};

static PICK_UP: Words = Words {
    key: "pick_up",
    basis: "Ingoing sodium nitrite, counted on what the meat takes up of the brine, and on green weight.",
    keep: "Keep every piece under and cold, take it out on time, and do not add more cure.",
    ..COVER_BRINE
};

const PUMPED: Words = Words {
    key: "pumped",
    basis: "Ingoing sodium nitrite, counted on what is pumped in, and on green weight.",
    use_it: (
        "Stir until nothing lies on the bottom.",
        "Chill the pickle to 4 °C (40 °F). Weigh each piece, pump it in many places until the scale shows its weight and the pump together, and throw away what is left of the pickle.",
    ),
    keep: "Keep it cold and do not pump it again.",
    more_cure: "Weighed, stirred into the pickle before any of it is pumped.",
    more_meat: "Pump no more than was reckoned",
};

static PUMPED_AND_COVERED: Words = Words {
    key: "pumped_and_covered",
    basis: "Ingoing sodium nitrite: what is pumped in on green weight, and what comes from the cover on green weight and pickle together. The two are summed; the low end is all of it evened out.",
    keep: "Keep every piece under and cold, do not pump it again, and do not add more cure.",
    more_cure: COVER_BRINE.more_cure,
    more_meat: COVER_BRINE.more_meat,
    ..PUMPED
};
