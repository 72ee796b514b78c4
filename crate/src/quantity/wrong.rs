//! What can be wrong, as facts: the page words each. A sentence that stands in [`super::Problem::message`] is one that
//! has not come here yet.

use serde::Serialize;

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
        /// How it is weighed, as the table has it: `dressed, skin on`.
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
    /// A recipe has more of something than it takes.
    RecipeTooMany {
        /// Of what.
        list: RecipeList,
        /// The most of it.
        most: usize,
    },
    /// A text that was not read is empty.
    UnreadEmpty,
    /// What is cooked or dried out does not hang for months.
    CookedHangs,
    /// Only a whole muscle under a dry rub hangs for months.
    HangsWithoutRub,
    /// A cover brine has no line of water.
    BrineWantsWater,
    /// The pantry has no curing agent of this key.
    NoSuchCure {
        /// The first characters of the key.
        item: String,
    },
    /// Of a premix or a stock it is not kept how it was made; or it is kept of what is neither.
    MixNotKnown,
    /// A cure without nitrite and nitrate: pink salt for the table is no cure.
    CureHoldsNone,
    /// The aim is nought.
    AimNought,
    /// Nobody cures with so much.
    AimTooHigh {
        /// Highest aim, ppm.
        most: u32,
    },
    /// The aim is no weaker than the cure itself.
    AimAsStrong,
    /// A pure salt is as strong as it is: another strength is that of a packet.
    PureHasOneStrength,
    /// Allergens of what the pantry knows.
    AllergensKnown,
    /// Whether it holds nitrite is known of what is in the pantry.
    AgentKnown,
    /// The pantry has no such key.
    NotInPantry {
        /// The first characters of the key.
        item: String,
    },
    /// A curing agent stands among the other lines, where nothing counts it.
    CureAmongLines,
    /// A name says nitrite or nitrate, where nothing counts it.
    SoundsLikeCure,
    /// A share of meat and water by a method in which the two do not even out.
    NothingEvensOut,
    /// A share of a brine, where there is none.
    NoBrineHere,
    /// Water, where there is no brine.
    WaterWithoutBrine,
    /// The water of a brine goes by green weight.
    WaterByGreenWeight,
    /// More of a line than there is meat.
    LineTooMuch,
    /// How much of the brine goes in is not said.
    TakeMissing,
    /// A pump or a pick-up is 1 to 60 % of green weight.
    TakeOutOfBounds,
    /// A share that goes in, by a method that has none.
    TakeUnasked,
    /// Turning wants a step that lasts, 30 minutes between two turns and no more than 200 of them.
    TurnedTooOften,
    /// A name is empty.
    NameMissing {
        /// Most characters.
        most: usize,
    },
    /// A name has a line break in it.
    NameOneLine,
    /// A text is too long.
    TextTooLong {
        /// Characters in it.
        long: usize,
        /// Most characters.
        most: usize,
    },
    /// A character that cannot be seen, or that turns the text around it.
    HiddenCharacter,
    /// A tag is two capital letters.
    TagForm,
    /// A recipe does not fit into a link.
    RecipeTooLong,
    /// Longer than any link.
    LinkTooLong,
    /// No link was pasted.
    LinkMissing,
    /// A link of another version of the page.
    LinkVersion,
    /// What was pasted is no link.
    NoLink,
    /// The end of a link is missing.
    LinkCut,
    /// A link whose checksum does not fit.
    LinkAltered,
    /// A link that is whole and holds no recipe.
    LinkHoldsNoRecipe,
    /// A link with an ingredient of a newer page.
    LinkIngredient,
    /// A figure has more digits than a link keeps.
    LinkDigits,
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
    /// A text is too long for a quantity.
    QuantityTooLong {
        /// Of what.
        of: KindOf,
        /// The first characters of it.
        typed: String,
    },
    /// No quantity is typed where one is wanted.
    QuantityMissing {
        /// Of what.
        of: KindOf,
    },
    /// A number has no unit.
    NoUnit {
        /// Of what.
        of: KindOf,
        /// The first characters of it.
        typed: String,
    },
    /// A word is no unit of this kind.
    WrongUnit {
        /// Of what.
        of: KindOf,
        /// The first characters of the word.
        unit: String,
    },
    /// A larger unit behind a smaller one, or two of different kinds.
    UnitsOutOfOrder {
        /// Of what.
        of: KindOf,
        /// The first characters of the text.
        typed: String,
    },
    /// More digits or marks than a number has.
    TooManyDigits {
        /// Of what.
        of: KindOf,
        /// The first characters of the text.
        typed: String,
    },
    /// A number that can be read two ways.
    TwoReadings {
        /// The first characters of the text.
        typed: String,
        /// Both readings.
        readings: Box<[String; 2]>,
    },
    /// A quantity below the least.
    QuantityTooSmall {
        /// Of what.
        of: KindOf,
        /// The least.
        least: String,
    },
    /// A quantity above the most.
    QuantityTooLarge {
        /// Of what.
        of: KindOf,
        /// The most.
        most: String,
    },
    /// A text that is no quantity of this kind.
    QuantityNotRead {
        /// Of what.
        of: KindOf,
        /// The first characters of the text.
        typed: String,
    },
    /// More stretches of rest than a request has.
    TooManyRests {
        /// Most of them.
        most: usize,
    },
}

/// A kind of quantity.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum KindOf {
    /// A weight.
    Weight,
    /// A length.
    Length,
    /// A temperature.
    Temperature,
    /// A span of time.
    Time,
    /// A share by weight.
    Share,
    /// A volume.
    SpoonOrCup,
}

/// A list of a recipe.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum RecipeList {
    /// Curing agents.
    Cures,
    /// Everything else that is weighed.
    Lines,
    /// What is done after weighing.
    Steps,
    /// What was not understood.
    Unread,
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
