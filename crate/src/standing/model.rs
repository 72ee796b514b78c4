//! Doubts, and the rights that they take away.

use crate::quantity::Figure;
use serde::Serialize;

/// The five stages of a batch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Stage {
    /// What is on the board.
    Pieces,
    /// The weigh-out.
    Weigh,
    /// In the cure, rinse, soak.
    Cure,
    /// Dry, smoke, cook, rest.
    Fire,
    /// Chill, pack.
    Pack,
}

/// What a doubt does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Weight {
    /// Worth knowing; it forbids nothing but what it says itself.
    Warns,
    /// Nothing that rests on it is assured until it is cleared.
    Holds,
    /// Past mending: it is not eaten.
    Forbids,
}

/// What is in doubt.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// It was thrown out.
    ThrownOut,
    /// Wild boar, bear, hare, a bird or their kin, to be eaten raw.
    EatenRaw,
    /// It is to hang for months: whether that is sound cannot be said from what is known.
    HangingUnproven,
    /// The recipe keeps it warmer than 40 °F in the cure.
    RecipeTooWarm,
    /// Not all pieces are weighed.
    NotWeighed,
    /// The list cannot be reckoned.
    NotReckoned,
    /// It is rubbed in or bagged, and no cure is ticked.
    CureNotIn,
    /// An ingredient may hold nitrite or nitrate that nobody counted.
    MayBeCure,
    /// More nitrite than the limit.
    DoseOver,
    /// Perhaps more nitrite than the limit.
    DoseMayBeOver,
    /// Less nitrite than has its effect.
    DoseLow,
    /// Perhaps less nitrite than has its effect.
    DoseMayBeLow,
    /// The dose cannot be judged.
    DoseUnknown,
    /// Two hours or more above 40 °F.
    TooWarm,
    /// Two hours or more perhaps: nobody read it in between.
    MayBeTooWarm,
    /// Above 40 °F, less than two hours so far.
    Warm,
    /// In its cure for days without one reading of the cold.
    ColdUnseen,
    /// A reading of the cold is in question.
    ColdInQuestion,
    /// Four hours or more without power.
    PowerOff,
    /// It lies frozen.
    Frozen,
    /// The heat is on, and it is not ticked as rinsed.
    NotRinsed,
    /// It is still in the cure.
    InCure,
    /// A time of it cannot be right.
    TimeInQuestion,
    /// It is in its cure longer than raw meat keeps there.
    OverStayed,
    /// It came out before the middle was cured.
    OutEarly,
    /// It was put to the heat just now, and its first reading is not due yet.
    ToRead,
    /// A step that heats is ticked, and nothing was read when it was due, or before it was out.
    NotRead,
    /// A reading is in question.
    ReadingInQuestion,
    /// Hot enough, and not ticked as taken out.
    InFire,
    /// Not read as hot as it must be.
    NotHot,
    /// Strips that were dried before they were hot enough.
    DriedFirst,
    /// Read hot enough, and colder after that.
    ColderSince,
    /// It came out before it was hot enough.
    PartlyCooked,
    /// Partly cooked it was chilled, or stood: it is not finished.
    PartlyAbandoned,
    /// Too long between 40 and 140 °F on the way up.
    SlowUp,
    /// First read when it was warm: how long it had been on its way is not known.
    UpUnseen,
    /// It cools: its time is not over.
    Chilling,
    /// It did not cool in time, by any published option.
    ChillLate,
    /// Nobody read whether it cooled in time.
    ChillUnread,
    /// Its keeping time is over.
    PastKeeping,
    /// It was dried, how far nobody told, and the time that it would keep undried is over.
    DrynessUntold,
}

/// What would clear a doubt.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Clears {
    /// Nothing does.
    Nothing,
    /// Nothing has to; it is to be known for next time.
    NextTime,
    /// Nothing does; it is eaten soon or frozen, and not given.
    EatSoon,
    /// Another recipe, or cooked.
    ChangeRecipe,
    /// Weigh the pieces.
    WeighPieces,
    /// Tick the cure, or say what went in.
    SayCure,
    /// Read what the packet says.
    ReadPacket,
    /// What the verdict on the dose says.
    MendDose,
    /// Read the refrigerator and the meat, from now on.
    ReadCold,
    /// Answer the question about the reading of the cold.
    AnswerCold,
    /// Say when it was last read cold.
    SayCold,
    /// Cool it now.
    CoolNow,
    /// Thaw it in the cold.
    Thaw,
    /// Rinse it, or tick that it is.
    Rinse,
    /// Take it out of the cure.
    TakeOut,
    /// Cook it through.
    CookThrough,
    /// Correct the time, or the clock of the device.
    CorrectTime,
    /// Answer the question about the reading.
    AnswerReading,
    /// Read the coldest piece as hot as it must be.
    ReadHot,
    /// Cook it to the end now, without a pause.
    FinishNow,
    /// Chill it, and read it.
    Chill,
}

/// One doubt on a batch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Doubt {
    /// What is in doubt.
    pub kind: Kind,
    /// The stage it arose in; it rides on to every later one.
    pub stage: Stage,
    /// What it does.
    pub weight: Weight,
    /// Place of the size class, where it is one class's.
    pub class: Option<u32>,
    /// Place of the recipe's line, where it is one line's.
    pub line: Option<u32>,
    /// Since when, in milliseconds since 1970, where that is known.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub since: Option<i64>,
    /// What would clear it.
    pub clears: Clears,
    /// How long, in minutes.
    pub minutes: Option<u32>,
    /// What was read.
    pub read: Option<Figure>,
    /// What has to be read.
    pub needed: Option<Figure>,
}

impl Doubt {
    /// A doubt with no figure.
    pub(super) const fn new(kind: Kind, stage: Stage, weight: Weight, clears: Clears) -> Self {
        Self {
            kind,
            stage,
            weight,
            class: None,
            line: None,
            since: None,
            clears,
            minutes: None,
            read: None,
            needed: None,
        }
    }

    pub(super) fn since(self, since: Option<i64>) -> Self {
        Self { since, ..self }
    }

    pub(super) fn of_class(self, class: u32) -> Self {
        Self {
            class: Some(class),
            ..self
        }
    }

    pub(super) fn lasting(self, hours: f64) -> Self {
        #[allow(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "held between nought and a century"
        )]
        let minutes = (hours * 60.0).round().clamp(0.0, 52_560_000.0) as u32;
        Self {
            minutes: Some(minutes),
            ..self
        }
    }
}

/// A word of assurance that a batch may earn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Assurance {
    /// `In range`.
    Dose,
    /// `No cure in it`.
    NoCure,
    /// Cured to the middle.
    Cured,
    /// `Hot enough`, of the class at this place.
    Hot(u32),
    /// `Take it out`, of the class at this place.
    Pull(u32),
    /// Chilled in time, of the class at this place.
    Chilled(u32),
    /// `Cooked`, of all of it.
    Cooked,
    /// A date to keep it until.
    Keep,
    /// A tag that says it can be given.
    Gift,
    /// The next job.
    GoOn,
}

/// The right to give an assurance. Only a standing makes one, so whoever asks for one to be given has asked it first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Leave(());

impl Leave {
    pub(super) const fn given() -> Self {
        Self(())
    }
}

/// Something said with leave. It is written as what is said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Assured<T>(T);

impl<T> Assured<T> {
    /// Says it, with the leave of a standing.
    pub const fn by(_leave: Leave, said: T) -> Self {
        Self(said)
    }

    /// What is said.
    pub const fn said(&self) -> &T {
        &self.0
    }
}

impl<T: Serialize> Serialize for Assured<T> {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.0.serialize(serializer)
    }
}
