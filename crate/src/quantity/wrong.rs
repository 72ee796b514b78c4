//! What can be wrong, as facts: the page words each. A sentence that stands in [`super::Problem::message`] is one that
//! has not come here yet.

mod link;
mod recipe;
mod typed;

use serde::Serialize;

pub use link::LinkWrong;
pub use recipe::{RecipeList, RecipeWrong};
pub use typed::{KindOf, TypedWrong};

/// One thing that is wrong, with the figures of the rule that it breaks.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum Wrong {
    /// Bags that came in are counted, from one to so many at a time.
    BagsNotCounted {
        /// The most at a time.
        most: u32,
    },
    /// The figures are too large to be reckoned with exactly.
    TooLargeToReckon,
    /// A bag takes its brine by the meat, and no green weight is given.
    BagWantsMeat,
    /// The meat leaves less than a tenth of a litre for the brine in this vessel.
    NoRoomForBrine,
    /// No brine of salt has this strength.
    NoBrineStrength,
    /// So weak a cure cannot reach the aim in this brine.
    CureTooWeak,
    /// All is to be ready by a time that is past.
    DatePast,
    /// All is to be ready later than a plan reaches.
    DateTooFar {
        /// How many days a plan reaches.
        days: i64,
    },
    /// More batches or stretches of rest than a plan has.
    PlanTooLong {
        /// Most batches.
        batches: usize,
        /// Most stretches of rest.
        rests: usize,
    },
    /// A plan of a bag has no row, or more than this.
    BagRows {
        /// Most rows.
        most: usize,
    },
    /// A plan of a bag has more recipes than this, or a row is for one that is not among them.
    BagRecipes {
        /// Most recipes.
        most: usize,
    },
    /// All together weigh more than a tonne.
    BagTooHeavy,
    /// No row of the table of game.
    NoSuchGame,
    /// Hunters times animals is nought, or more than this.
    BagCount {
        /// Most animals in a row.
        most: u32,
    },
    /// Of this animal there is no figure without its weight.
    AnimalUnweighed {
        /// How it is weighed, by its key: `field_dressed`.
        weighed: &'static str,
    },
    /// The weights of a dose are too far apart to be reckoned with exactly.
    TooFarApart,
    /// What went in as cure is no amount: not spoons, not a packet, not a weight.
    CureNotRead {
        /// What was typed, shortened.
        typed: String,
    },
    /// More cure than is reckoned with.
    CureTooMuch,
    /// What went in as cure is nothing.
    CureNothing {
        /// What was typed, shortened.
        typed: String,
    },
    /// A premix or a stock is one part of a cure in 2 to 100, and so much weaker than it.
    MixParts,
    /// Nitrite and nitrate of a cure are more than all of it.
    CureOverWhole,
    /// A strength that no cure has (over 20 %): a slip, or the pure salt, and what it is put on can kill.
    CureTooStrong {
        /// Per cent of nitrite.
        nitrite: String,
    },
    /// No row of the table of cuts.
    NoSuchCut,
    /// No card of this key for when something went wrong.
    NoSuchCard,
    /// The card has no such answer.
    NoSuchAnswer,
    /// After the fire all pieces weigh less than a fifth of their green weight, or a tenth more than it.
    WeightAfterFire,
    /// A request that is not of the documented form.
    NotOfForm {
        /// What the reader of requests says of it: for programs.
        why: String,
    },
    /// More than one request on a line.
    TwoRequests,
    /// A table that comes with the page has no row.
    TableEmpty,
    /// A form has too many fields.
    FieldsTooMany {
        /// The most.
        most: usize,
    },
    /// A weight is above nought here.
    WeightNought,
    /// A thickness is above nought here.
    LengthNought,
    /// A time is above nought here.
    TimeNought,
    /// No printed per cent.
    PrintedMissing,
    /// A printed strength in another unit than per cent.
    PrintedWrongUnit,
    /// A printed strength that is no number.
    PrintedNotRead {
        /// The first characters of it.
        typed: String,
    },
    /// A printed strength is 0 to 100 %.
    PrintedOutOfBounds,
    /// No whole number of pieces, or too many.
    CountNotRead {
        /// The first characters of it.
        typed: String,
        /// Most pieces.
        most: u32,
    },
    /// How much went in is not typed.
    PutInMissing {
        /// How it is told.
        by: PutInBy,
    },
    /// What went in is no number.
    PutInNotRead {
        /// How it is told.
        by: PutInBy,
        /// The first characters of it.
        typed: String,
    },
    /// What went in is above nought and at most a tonne.
    PutInOutOfBounds {
        /// How it is told.
        by: PutInBy,
    },
    /// A dose on no meat.
    MeatNought,
    /// A dose in a brine of which the water is not said.
    WaterMissing,
    /// No text to read a recipe in.
    TextMissing,
    /// A text longer than a recipe.
    RecipeTextTooLong {
        /// Most bytes.
        most: usize,
    },
    /// A text of more lines than a recipe.
    RecipeLinesTooMany {
        /// Most lines.
        most: usize,
    },
    /// Which size class was cut is not said.
    NoClassCut,
    /// The class that was cut has no thickness, or no hour at which its cure began.
    CutWantsClock,
    /// No hour of this cure counts yet.
    NoHourCounts,
    /// The part that has not coloured is as thick as the piece, or has no thickness.
    RingTooWide,
    /// There is no cure, and so no colour to go by.
    NoColour,
    /// The brine is less than is to go into the meat.
    TooLittleBrine,
    /// A batch has no pieces yet.
    NoPieces,
    /// Of some pieces neither a weight nor a usual one is known.
    PiecesUnweighed,
    /// A scale has none of these steps.
    ScaleStep {
        /// Those that there are.
        steps: Vec<&'static str>,
    },
    /// No jurisdiction of this key.
    NoSuchRule,
    /// A premix or stock that is kept is not of the form that the page writes, or there are more than this.
    KeptMixes {
        /// Most of them.
        most: usize,
    },
    /// What was learned from cuts is not of the form that the page writes.
    LearnedCuts,
    /// What fires told of the smoker is not of the form that the page writes.
    LearnedSmoker,
    /// An hour of the day is not like `22:30`, or a place has more than 99 batches or racks.
    HouseHours,
    /// What was in a spoon is not in the pantry, and has no name.
    SpoonOfWhat,
    /// A spoon wants three weights at least, or one of so many together.
    SpoonWeights,
    /// A scale wants a known weight and what it shows.
    NoKnownWeight,
    /// A known weight is nought.
    KnownWeightNought,
    /// Meat, printed nitrite or aim of a mix is nought, or the aim is not below the print.
    StockFigures,
    /// A tick is not of the form that the page writes.
    TickForm,
    /// The time at which a batch was thrown out is not one that the page writes.
    ThrownOutForm,
    /// More size classes than a batch has.
    TooManySizes {
        /// Most of them.
        most: usize,
    },
    /// A size class is not of the form that the page writes.
    SizeForm,
    /// No cut of this key.
    CutNotListed {
        /// Its first characters.
        cut: String,
    },
    /// A size class has no piece, or more than this.
    PieceCount {
        /// Most pieces.
        most: u32,
    },
    /// A weight of pieces is nought.
    PieceWeightNought,
    /// The strength of a premix or stock is too far off to reckon with.
    MixTooFarOff,
    /// A day is not like `2026-11-14`.
    DayForm,
    /// More readings of the fire than a batch keeps.
    TooManyReadings {
        /// Most of them.
        most: usize,
    },
    /// More size classes on a probe than there are readings.
    ProbeShared {
        /// Most of them.
        most: usize,
    },
    /// A reading of the fire has no time that the page writes.
    ReadingTime,
    /// A reading of the refrigerator has no time or no temperature, or there are more than this.
    FridgeReadings {
        /// Most of them.
        most: usize,
    },
    /// All pieces together weigh more than a tonne.
    PiecesTooHeavy,
    /// More stretches of rest than a request has.
    TooManyRests {
        /// Most of them.
        most: usize,
    },
    /// With a quantity.
    #[serde(untagged)]
    Typed(TypedWrong),
    /// With a recipe.
    #[serde(untagged)]
    Recipe(RecipeWrong),
    /// With a link.
    #[serde(untagged)]
    Link(LinkWrong),
}

impl From<TypedWrong> for Wrong {
    fn from(wrong: TypedWrong) -> Self {
        Self::Typed(wrong)
    }
}

impl From<RecipeWrong> for Wrong {
    fn from(wrong: RecipeWrong) -> Self {
        Self::Recipe(wrong)
    }
}

impl From<LinkWrong> for Wrong {
    fn from(wrong: LinkWrong) -> Self {
        Self::Link(wrong)
    }
}

/// How it is told what went in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum PutInBy {
    /// By the weight that its packet says.
    Packet,
    /// By what the scale showed.
    Scale,
    /// By spoons, or a weight.
    Spoons,
}
