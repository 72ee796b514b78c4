//! Every question the crate answers.

use super::draft::AskDraft;
use super::read::ReadFields;
use crate::batch::{Batch, Piece, PutIn};
use crate::brine::AskBrine;
use crate::cure::{AskClock, AskCut};
use crate::pack::{Entry, Kept, Stock};
use crate::plan::back::Wish;
use crate::plan::bag::AskBag;
use crate::plan::trouble::AskTrouble;
use crate::plan::{CalendarWords, Sent};
use crate::quantity::{Fraction, Length, Mass, Rest, Span};
use crate::reading::AskReading;
use crate::recipe::{Eaten, Method, Recipe};
use crate::weigh::{AskScale, AskSpoon, AskStock, Settings};
use serde::Deserialize;

/// One question with its content; see the table at the head of [`crate::door`].
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Request {
    /// Reads what was typed in a form.
    Read(ReadFields),
    /// Lists for pickers.
    Tables(Nothing),
    /// The recipes that come with the page.
    Starters(Nothing),
    /// Green weight and rows of the pieces.
    Pieces(AskPieces),
    /// A recipe as a card, for a weight.
    Card(AskCard),
    /// A recipe by another method.
    Turned(AskTurned),
    /// The weigh-out of a batch.
    WeighOut(AskWeighOut),
    /// The batch that a weight would be.
    Draft(AskDraft),
    /// A verdict on what is already on the meat or in the brine.
    CheckDose(AskDose),
    /// What is in doubt on a batch, and what of it is assured.
    Standing(AskStanding),
    /// What comes next over batches.
    Next(AskNext),
    /// A recipe as a link and a QR code.
    Link(AskLink),
    /// The recipe in a link.
    OpenLink(AskOpen),
    /// What the log of the fire and the chill says.
    FireLog(AskFire),
    /// Whether a stored record can be used.
    Check(Record),
    /// Reads a recipe that was pasted.
    ReadRecipe(AskReading),
    /// What a bag of birds or an animal will give, and what to buy for it.
    PlanBag(AskBag),
    /// What to do when something went wrong.
    Trouble(AskTrouble),
    /// When to begin so that all is ready by a date.
    PlanBack(AskBack),
    /// The jobs of batches as a calendar file.
    Calendar(AskCalendar),
    /// Labels and tags of a batch.
    Labels(AskLabels),
    /// The brine bench.
    Brine(AskBrine),
    /// Level spoons of the user's own.
    Spoon(AskSpoon),
    /// A scale against known weights.
    Scale(AskScale),
    /// Cure thinned for a coarse scale.
    Stock(AskStock),
    /// When colour and salt are through, class by class.
    CureClock(AskClock),
    /// What a cut piece tells of the speed of salt.
    LearnCut(AskCut),
    /// What is in the house.
    Larder(AskLarder),
    /// What went into batches and came out, and which of them a bag may be of.
    Ledger(AskLedger),
    /// Where the figures come from.
    Sources(Nothing),
}

/// No content: `{}`.
#[derive(Clone, Debug, Default, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Nothing {}

/// Content of `pieces`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskPieces {
    /// Size classes.
    pub pieces: Vec<Piece>,
    /// The user's settings.
    pub settings: Settings,
}

/// Content of `turned`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskTurned {
    /// The recipe.
    pub recipe: Recipe,
    /// The method it is turned to.
    pub method: Method,
}

/// Content of `card`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskCard {
    /// The recipe.
    pub recipe: Recipe,
    /// Green weight to work it for; nothing for 1 kg.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub weight: Option<Mass>,
    /// Pieces to work it for where a line goes by the piece; 1 when not given.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub pieces: Option<u32>,
    /// Key of the cut it is worked for, or `own`: its cautions go by it; nothing while none is chosen.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub cut: Option<String>,
    /// The user's settings.
    pub settings: Settings,
}

/// Content of `weigh_out`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskWeighOut {
    /// The batch.
    pub batch: Batch,
    /// The user's settings.
    pub settings: Settings,
}

/// Content of `check_dose`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskDose {
    /// How the cure was put on.
    pub method: Method,
    /// Green weight of the meat.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub green: Mass,
    /// For a brine: its water.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub water: Option<Mass>,
    /// For a brine: salt, sugar and all else dissolved in it, without the cure.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub dissolved: Option<Mass>,
    /// How many weighings that is the sum of; nothing for two, salt and sugar.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "number | null", optional))]
    pub weighings: Option<u32>,
    /// Sodium ascorbate or erythorbate in it, which a pumped belly wants; nothing where there is none.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub ascorbate: Option<Mass>,
    /// For a pump or a pick-up: the share of green weight that goes in.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub take: Option<Fraction>,
    /// Key of the cut; a belly has limits of its own. Nothing when not said.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub cut: Option<String>,
    /// For a pick-up: the thickest part of the thinnest piece.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub thickness: Option<Length>,
    /// For a pick-up: how long it stays in the brine.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub stays: Option<Span>,
    /// What was put in.
    pub put_in: PutIn,
    /// A second agent beside it.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub also: Option<PutIn>,
    /// Whether it is cooked or hangs for months.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Eaten>"))]
    pub eaten: Eaten,
    /// The user's settings.
    pub settings: Settings,
}

/// A batch with the id it is kept under.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Named {
    /// The id; comes back with every job.
    pub id: String,
    /// The batch.
    pub batch: Batch,
}

/// Content of `next`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskNext {
    /// Batches under way.
    pub batches: Vec<Named>,
    /// The time now, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub now: i64,
    /// Hours slept or away: nothing that can move falls into them.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Rest>>"))]
    pub rests: Vec<Rest>,
    /// How far east it is: minutes that its clocks are ahead of Greenwich. Nothing where nobody knows.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<i32>"))]
    pub east: Option<i32>,
    /// The user's settings.
    pub settings: Settings,
}

/// Content of `calendar`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskCalendar {
    /// The batches whose jobs go into the file.
    pub batches: Vec<Named>,
    /// What the last file of them left in the calendar.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<(String, f64)>>"))]
    pub earlier: Vec<Sent>,
    /// The time now, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub now: i64,
    /// Hours slept or away: nothing that can move falls into them.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Rest>>"))]
    pub rests: Vec<Rest>,
    /// Words for what is no job; empty ones stand as keys.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<CalendarWords>"))]
    pub words: CalendarWords,
    /// The user's settings.
    pub settings: Settings,
}

/// Content of `plan_back`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskBack {
    /// Batches that share the places.
    pub batches: Vec<Named>,
    /// By when, and what stands in the way.
    pub wish: Wish,
    /// The time now, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub now: i64,
    /// The user's settings.
    pub settings: Settings,
}

/// Content of `link`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskLink {
    /// The recipe.
    pub recipe: Recipe,
    /// Address of the page, without `#`.
    pub base: String,
}

/// Content of `open_link`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskOpen {
    /// The whole link, or what stands behind its `#`.
    pub text: String,
}

/// Content of `fire_log`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskFire {
    /// The batch with its log.
    pub batch: Batch,
    /// The time now, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub now: i64,
    /// The user's settings.
    pub settings: Settings,
}

/// Content of `check`: a record as it is stored.
#[allow(
    clippy::large_enum_variant,
    reason = "one at a time, never in a list; on 32 bits it is not large"
)]
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Record {
    /// A recipe.
    Recipe(Recipe),
    /// A batch.
    Batch(Batch),
    /// The settings.
    Settings(Settings),
    /// Something in the house.
    Stock(Stock),
}

/// Content of `labels`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskLabels {
    /// The batch.
    pub batch: Batch,
    /// The time now, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub now: i64,
    /// True for packs that go into the freezer.
    pub frozen: bool,
    /// True for vacuum packs.
    pub vacuum: bool,
    /// Weights of the packs.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string[]", optional))]
    pub packs: Vec<Mass>,
    /// Hours slept or away: nothing that can move falls into them.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Rest>>"))]
    pub rests: Vec<Rest>,
    /// The user's settings.
    pub settings: Settings,
}

/// Content of `larder`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskLarder {
    /// Everything that came in.
    pub stock: Vec<Kept>,
    /// Batches whose ticks take from it, and whose packs lie there.
    pub batches: Vec<Named>,
    /// The time now, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub now: i64,
    /// The user's settings.
    pub settings: Settings,
}

/// Content of `standing`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskStanding {
    /// The batch.
    pub batch: Batch,
    /// The time now, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub now: i64,
    /// True for packs that go into the freezer.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub frozen: bool,
    /// True for vacuum packs.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub vacuum: bool,
    /// The user's settings.
    pub settings: Settings,
}

/// Content of `ledger`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskLedger {
    /// The batches.
    pub batches: Vec<Entry>,
    /// Everything that came in: the packs among it.
    pub stock: Vec<Kept>,
    /// What a bag weighs that is sought.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub weight: Option<Mass>,
    /// The thickest part of what is in it.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub thickness: Option<Length>,
    /// The user's settings.
    pub settings: Settings,
}
