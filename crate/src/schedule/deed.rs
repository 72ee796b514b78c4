//! What a job is, and where a batch is, as facts: the page words them.

use crate::recipe::{Do, Method, Told};
use serde::Serialize;

/// What is to be done.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Deed {
    /// Say which pieces there are.
    SayPieces,
    /// Weigh the pieces that there are.
    WeighPieces,
    /// Weigh out the cure, then the rest into the same bowl.
    WeighCure,
    /// Weigh out the rest: the cure is in.
    WeighRest,
    /// Weigh out salt and spice: the recipe has no cure.
    WeighSalt,
    /// All is weighed: what the method begins with starts the clock.
    Start {
        /// The method.
        method: Method,
    },
    /// It is in its bag, and no cure is ticked: say whether it is in.
    AskCure,
    /// Into the refrigerator with it.
    IntoFridge {
        /// So long it has been on by now, from two hours on: when did it go in?
        on: Option<String>,
    },
    /// A step of the recipe.
    Step {
        /// The step; without its hours where the clock says how long.
        step: Told,
    },
    /// Over the fire, and nothing read yet: read it.
    ReadFire,
    /// A step of the recipe for a size class that came out before the rest, which is still in its cure.
    StepOf {
        /// Place of the class.
        class: u32,
        /// The step.
        step: Told,
    },
    /// Turn what lies in its cure, as the method wants it.
    Turn {
        /// The method.
        method: Method,
    },
    /// Take out a size class that is through before the rest.
    TakeOut {
        /// Place of the class.
        class: u32,
    },
    /// The last step is over: put the batch away.
    Finish,
}

/// Where a batch is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Whereabouts {
    /// Its pieces are still to be weighed.
    PiecesToWeigh,
    /// It is weighed, and not in its cure yet.
    NotInCure,
    /// The cure is on, and no step is begun.
    CureOn,
    /// In its cure.
    InCure {
        /// The day of the cure, from one on.
        day: u32,
    },
    /// The last step that was begun.
    Begun {
        /// The step; never the cure.
        #[serde(rename = "do")]
        act: Do,
    },
    /// Every step is ticked.
    Finished,
}
