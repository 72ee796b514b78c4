//! What is said of a log, as facts: the page words them.

use crate::batch::PieceName;
use crate::pantry::{MeatKind, Status};
use crate::quantity::Figure;
use crate::safety::Frozen;
use serde::Serialize;

/// A temperature in the person's scale, and in the other one.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Degrees {
    /// In the scale of the settings.
    pub own: String,
    /// In the other.
    pub other: String,
}

/// The rule for what has to be read, which comes first.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct HeatRule {
    /// What it is for.
    pub of: MeatKind,
    /// What has to be read of whole pieces.
    pub at: Degrees,
    /// A lower one for farmed whole cuts, where there is one: a choice, never for guests at risk.
    pub choice: Option<Degrees>,
    /// Minutes it rests before it is cut, with that lower one.
    pub rest: u32,
    /// Where it is published: title, number, year.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}

/// On what conditions a table gives credit: a plant's, for moist cooking (90 % humidity for an hour or a quarter of the
/// cook, or a sealed or steamed oven). The lowest reading of the coldest piece counts, and nothing below the table's floor.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Conditions {
    /// So much less than was read, for the thermometer.
    pub less: Degrees,
    /// Minutes between readings above which nothing counts.
    pub gap: u32,
    /// Below this one study found its rows short (`McMinn` 2018, published).
    pub short_below: Degrees,
}

/// How long it is between cold and hot, where that is worth a word. At home it comes through in so many hours (UNL
/// extension, published).
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct WayUp {
    /// How it stands.
    pub stands: WayStands,
    /// Cold.
    pub from: Figure,
    /// Hot.
    pub to: Figure,
    /// The most there is for it.
    pub most: String,
}

/// How the way up stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum WayStands {
    /// Too slow; heat to a figure does not mend that.
    Slow {
        /// So long on its way.
        took: String,
    },
    /// On its way, with less than an hour left.
    Running {
        /// So long by now.
        took: String,
    },
    /// It came up in time, with less than an hour to spare.
    Fine {
        /// It took so long.
        took: String,
    },
    /// How long it had been on its way before its first reading nobody saw.
    Unseen {
        /// What was read first.
        first: String,
    },
}

/// Why there is no outlook.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum NoOutlook {
    /// A reading of it is in question.
    InQuestion,
    /// Its thickness is not known.
    NoThickness,
    /// How warm the cabinet is was neither read nor said.
    NoCabinet,
}

/// What an outlook is worked from.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum OutlookBasis {
    /// It is not measured: by its own thickness, and this smoker as fitted to the readings of another class.
    Shared {
        /// How many readings.
        readings: usize,
        /// That class.
        of: PieceName,
    },
    /// It is not measured: by its own thickness and what is usual for this smoker, hung when the other class was.
    HungWith {
        /// That class.
        of: PieceName,
    },
    /// Fitted to its own readings.
    Fitted {
        /// How many.
        readings: usize,
    },
    /// By what is usual for its thickness and this smoker; from three readings on it is fitted to them.
    Usual,
}

/// What to know of an outlook, and what to do.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum OutlookNote {
    /// At this cabinet it will not reach its target within a day.
    TooCold,
    /// Water from its surface takes the heat, until the surface dries; how soon is uncertain.
    Stall,
    /// What a warmer cabinet would do.
    Warmer {
        /// So much warmer.
        by: Figure,
        /// About so long from now.
        takes: String,
    },
    /// What an oven would do, from now.
    Oven {
        /// How hot.
        at: Degrees,
        /// About so long from now.
        takes: String,
    },
    /// It hardly rises once it is out.
    NoRise,
    /// Out of the heat its middle may still rise; nothing counts before it is read.
    Rise {
        /// About so far.
        by: Figure,
    },
    /// What it will have lost as water by then, by this model.
    Loss {
        /// Per cent of its weight.
        percent: u32,
    },
}

/// What must hold of a stage of a chill beside its figures.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum ChillAlso {
    /// All stages in so long.
    InAll {
        /// So long.
        within: String,
        /// From here.
        from: Figure,
        /// To here.
        to: Figure,
    },
    /// It cools without a pause.
    Continuous,
    /// It begins soon after the end of cooking.
    Soon {
        /// Within so many minutes.
        minutes: u32,
    },
    /// It is cooled on without a pause.
    NoPause,
    /// An outer limit for plants.
    OuterLimit,
    /// Not accepted since 14 December 2022.
    Withdrawn,
    /// A continuous drop, or a surface that does not stay between these.
    NoLinger {
        /// The warmer.
        from: Figure,
        /// The colder.
        to: Figure,
        /// For longer than this.
        over: String,
    },
}

/// Where a stage of a chill stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum StageLeft {
    /// Still above its start.
    NotBegun,
    /// It runs.
    Running {
        /// So long is left.
        left: String,
    },
    /// It was read at its end in time.
    Done {
        /// In so long at most.
        took: String,
    },
    /// It was too slow, whatever happened between the readings.
    Late {
        /// So long at least.
        least: String,
        /// So long is allowed.
        most: String,
    },
    /// Its time is over and nobody saw whether it was met.
    Unseen {
        /// Up to so long.
        took: String,
        /// So long is allowed.
        most: String,
    },
}

/// What stands beside every figure of the log.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum FireCaution {
    /// The local code and the food-safety authority decide; the log informs and does not license.
    LocalCode,
    /// The thickest part of the coldest piece is probed. A shot breast is not an intact muscle: pellets carry feather and
    /// gut inwards.
    ProbeThickest,
    /// What was chilled too slowly, or watched by nobody, is thrown out: heat does not take away what grew.
    ChillMissed,
}

/// What a published table is about.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum PublishedAbout {
    /// Jerky: heat first, then dry. USDA FSIS, Jerky and Food Safety (published); the figure for vacuum packs from memory.
    Jerky,
    /// Vacuum packs: non-proteolytic Clostridium botulinum (published).
    Vacuum {
        /// Some clostridia grow without air from here on.
        grows: Degrees,
    },
    /// Options for chilling that need a measurement or a watch that a home does not have: FSIS Stabilization Guideline
    /// 2021 and Directive 7110.3.
    Plants,
    /// The option for cured meat that FSIS stopped accepting on 14 December 2022: 86 FR 71007, FSIS Notice 66-22
    /// (published).
    History,
    /// Trichinae by heat, for pork from a farm only: former 9 CFR 318.10, removed in 2018, guideline since (published).
    /// Never enough for wild boar, bear, cougar or walrus: CDC, MMWR 73(20), 2024 (published).
    TrichinaeHeat {
        /// Those are cooked to this everywhere.
        cooked: Degrees,
    },
    /// The same by frost, with the same sources.
    TrichinaeFrost {
        /// Those are cooked to this everywhere.
        cooked: Degrees,
    },
}

/// A row of a published table.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum PublishedRow {
    /// Strips of meat are heated to this first.
    HeatMeat {
        /// This or more.
        to: Figure,
    },
    /// Strips of birds are heated to this first.
    HeatBirds {
        /// This or more.
        to: Figure,
    },
    /// Then they are dried between these.
    Dry {
        /// The colder.
        from: Figure,
        /// The warmer.
        to: Figure,
    },
    /// The most water activity they may have, which is measured and not worked out.
    Activity {
        /// In air (published).
        air: String,
        /// Vacuum-packed (from memory).
        vacuum: String,
    },
    /// Kept at or below this.
    KeepCold {
        /// This or colder.
        at: Figure,
    },
    /// Or frozen, and opened before it thaws.
    KeepFrozen,
    /// A stage of an option for chilling.
    Chill {
        /// Its figures.
        stage: Box<ChillStage>,
    },
    /// So long at so warm.
    Heat {
        /// How warm.
        at: Figure,
        /// How long; nothing where it is done at once.
        held: Option<String>,
    },
    /// So long at so cold.
    Frost {
        /// How cold.
        at: Figure,
        /// Which pieces.
        piece: Frozen,
        /// How long.
        held: String,
    },
}

/// A stage of an option for chilling, as it is published.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ChillStage {
    /// The option.
    pub of: crate::safety::Cooling,
    /// It begins when it falls below this.
    pub start: Figure,
    /// And ends at this.
    pub end: Figure,
    /// Most time for it.
    pub within: Option<String>,
    /// Least nitrite that went in, ppm.
    pub nitrite: Option<u32>,
    /// Least erythorbate or ascorbate that went in, ppm.
    pub erythorbate: Option<u32>,
    /// Least salt in the water, per cent.
    pub brine: Option<String>,
    /// Most water activity.
    pub activity: Option<String>,
    /// What else must hold.
    pub also: Option<ChillAlso>,
    /// Where it is published.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}
