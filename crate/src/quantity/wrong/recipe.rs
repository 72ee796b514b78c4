//! What can be wrong with a recipe.

use serde::Serialize;

/// One thing that a recipe may not be, with the figures of the rule.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum RecipeWrong {
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
