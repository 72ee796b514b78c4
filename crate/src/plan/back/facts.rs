//! What is said of a plan back, as facts: the page words them.

use crate::recipe::{Do, Method};
use serde::Serialize;

/// What a task of a plan is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Task {
    /// What the method begins with.
    Start {
        /// The method.
        method: Method,
    },
    /// A step of the recipe.
    Step {
        /// What is done.
        #[serde(rename = "do")]
        act: Do,
    },
    /// A turn.
    Turn {
        /// The method.
        method: Method,
    },
    /// It is ready.
    Ready,
}

/// Why a task must not move against the one before it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Fixed {
    /// It runs already.
    Runs,
    /// What is hot goes on at once.
    Hot,
    /// It is chilled as soon as it has rested.
    Rested,
    /// Wet meat does not wait.
    Wet,
    /// Longer in the water takes out more salt.
    InWater,
    /// It is packed, and nothing comes after that.
    Packed,
}

/// Why a batch is not planned, or does not fit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Snag {
    /// A doubt at its head is to be cleared first.
    Held,
    /// Every step is done.
    Done,
    /// Its recipe has no steps.
    NoSteps,
    /// No batch may be in a place that it needs.
    NoRoom {
        /// Number of the place.
        place: usize,
    },
    /// It lies on more than a place has.
    TooLarge {
        /// Number of the place.
        place: usize,
        /// What it lies on, in square centimetres.
        load: u32,
        /// What the place has, in square centimetres.
        holds: u32,
    },
    /// It does not fit with the steps that were put to a time by hand.
    HeldSteps,
    /// It cannot be ready by then; its tasks are at the earliest.
    TooLate,
    /// No time was found for it in the hours that are left free.
    NoTime,
}

/// What would make a batch fit. None of them is more cure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum WouldFit {
    /// Cut to three quarters of the thickness: nine sixteenths of the time (computed).
    Thinner,
    /// Cut to half the thickness: a quarter of the time (computed).
    HalfAsThick,
    /// A recipe of its own that is pumped in: about a third of the time (common practice, no source).
    Pump,
    /// Fewer and thinner pieces over the fire: about half the time (common practice, no source).
    Smaller,
    /// Room for one more in the refrigerator, or one batch less.
    MoreCold,
    /// A second fire, or one batch less.
    MoreFire,
    /// A second rack, or one batch less.
    MoreRack,
}

/// How much better a plan there may be, where not every one was looked at.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Gap {
    /// One that begins later.
    Later {
        /// By so much at the most.
        by: String,
    },
    /// One that has more batches ready in time.
    More {
        /// So many more at the most.
        batches: usize,
    },
}
