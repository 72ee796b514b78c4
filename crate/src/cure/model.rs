//! What is asked of the clock and what it answers.

use super::facts::{Middle, Note, Thumb};
use crate::batch::{Batch, Counted, OddCold};
use crate::dose::Mark;
use crate::pantry::{MeatKind, Status};
use crate::quantity::{Fraction, Length, Rest, System};
use crate::recipe::Basis;
use crate::weigh::Settings;
use serde::{Deserialize, Serialize};

/// Content of `cure_clock`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskClock {
    /// The batch.
    pub batch: Batch,
    /// The time now, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub now: i64,
    /// Hours slept or away: nothing that can move falls into them.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Rest>>"))]
    pub rests: Vec<Rest>,
    /// Salt to soak it down to, when it is too salty.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub soak_to: Option<Fraction>,
    /// The user's settings.
    pub settings: Settings,
}

/// Content of `learn_cut`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskCut {
    /// The batch.
    pub batch: Batch,
    /// Which size class was cut, from 0.
    pub class: u32,
    /// What was seen or tasted.
    pub found: Cutting,
    /// The part across the middle that has not coloured.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub ring: Option<Length>,
    /// When it was cut, in milliseconds since 1970.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
}

/// What a cut shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Cutting {
    /// A middle that has not coloured, so wide.
    Ring,
    /// Coloured all through.
    Even,
    /// The outside is too salty.
    TooSalty,
    /// The middle is bland.
    Bland,
}

/// The clock of a batch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct CureClock {
    /// When the cure went on; nothing: no clock yet.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub begun: Option<i64>,
    /// When it is to come out by the recipe.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub planned: Option<i64>,
    /// When it came out.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub ended: Option<i64>,
    /// When it comes out of the cure; before the cure is on, as if it went on now. Nothing where there is no stay.
    /// The course of the batch fills it in.
    pub until: Option<Until>,
    /// Readings of the refrigerator that it can hardly have: to be asked about.
    pub asked: Vec<ColdAsked>,
    /// What is to be said of the whole: refrigerator, date, order.
    pub notes: Vec<Note>,
    /// One for each size class with a clock, in the order of the batch.
    pub classes: Vec<Class>,
    /// What cuts have taught, one for each kind of meat in the batch.
    pub learnt: Vec<Learnt>,
}

/// A reading in question; no time goes by it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ColdAsked {
    /// Its place in the list of readings.
    pub reading: u32,
    /// What was typed.
    pub reads: String,
    /// What may have been meant, to choose from: two at the most.
    pub choices: Vec<String>,
}

impl ColdAsked {
    pub(super) fn of(batch: &Batch, odd: OddCold, units: System) -> Option<Self> {
        let reads = batch.fridge.get(odd.reading)?.reads?;
        let own = odd.choices.into_iter().filter(|meant| meant.typed == units);
        Some(Self {
            reading: u32::try_from(odd.reading).ok()?,
            reads: reads.show(units).text,
            choices: own.map(|meant| meant.value.print(meant.said)).collect(),
        })
    }
}

/// What is through at its centre.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Through {
    /// Colour.
    Colour,
    /// Salt, within a tenth: where there is no cure.
    Even,
}

/// When a batch comes out. Times are in milliseconds since 1970.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Until {
    /// The hour.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
    /// What it rests on.
    pub kind: Basis,
    /// For a forecast: what nine pieces in ten have come to by then.
    pub through: Option<Through>,
    /// By the clock, where every size in the cure has a thickness.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub clock: Option<i64>,
    /// By the recipe's own hours.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub recipe: Option<i64>,
    /// The two differ by more than a tenth of the recipe's hours.
    pub differs: bool,
    /// The hour makes way for hours of rest: it would have come out in them.
    pub moved: bool,
    /// Raw meat does not keep as long as what it goes by would have it.
    pub capped: Option<Capped>,
    /// The last moment that raw meat keeps in its cure, where that is known.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub last: Option<i64>,
    /// Size classes whose thickness the answer needs.
    pub needs_thickness: Vec<u32>,
    /// Each size class that is still in and has a clock.
    pub classes: Vec<ClassUntil>,
}

/// What raw meat keeps.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Capped {
    /// The last moment in the cure.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub last: i64,
    /// When it would have come out.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub wants: i64,
    /// Where the figure is from.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}

/// When a size class comes out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ClassUntil {
    /// Its place in the batch.
    pub class: u32,
    /// How many of what.
    pub of: Counted,
    /// One in ten is through by then: nothing is looked at sooner.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub from: i64,
    /// Nine in ten are through: it comes out.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub until: i64,
    /// It is ready so long before the rest that it is worth a way.
    pub first: bool,
    /// Raw meat does not keep so long.
    pub capped: Option<Capped>,
}

/// Earliest, likely and latest moment, in milliseconds since 1970; 80 % lie between.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Span3 {
    /// One in ten is sooner.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub earliest: i64,
    /// As likely sooner as later.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub likely: i64,
    /// One in ten is later.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub latest: i64,
}

/// A size class.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Class {
    /// Its place in the batch.
    pub at: u32,
    /// How many of what.
    pub of: Counted,
    /// `26 mm`.
    pub thickness: String,
    /// Colour at the centre; nothing where there is no cure.
    pub colour: Option<Span3>,
    /// Salt at the centre within a tenth of the final.
    pub even: Span3,
    /// When it came out before the others.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub out: Option<i64>,
    /// How far its middle has come by now.
    pub state: Middle,
    /// Shape beside the word.
    pub mark: Mark,
    /// From one surface to the other.
    pub profile: Vec<Point>,
    /// What the salt comes to, per cent of the meat; nothing where the recipe does not say.
    pub goal: Option<String>,
    /// Rules of thumb, and what the clock says of each.
    pub rules: Vec<Rule>,
    /// Soaking, when it was asked for and is needed.
    pub soak: Option<Soak>,
}

/// A place in the profile. Shares are per mille of the final value.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Point {
    /// How deep, per mille of the thickness.
    pub at: i32,
    /// `0 mm`.
    pub depth: String,
    /// Now, if the meat is slow, likely, fast.
    pub now: [i32; 3],
    /// At the planned rinse, likely.
    pub rinse: i32,
    /// `1.2 %` of the meat; of the final value where there is no goal.
    pub now_text: String,
    /// The same at the planned rinse.
    pub rinse_text: String,
}

/// A rule of thumb.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Rule {
    /// Which.
    pub rule: Thumb,
    /// What it gives, `7 d`.
    pub gives: String,
    /// What the clock says: salt at the centre after that time, per cent of the final.
    pub centre: i32,
}

/// Soaking to a target.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Soak {
    /// In fresh water, changed each half hour; in fast meat and in slow.
    pub changed: [String; 2],
    /// In three times its weight of still water; nothing where that does not get so far.
    pub still: Option<[String; 2]>,
}

/// What cuts have taught of one kind of meat.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Learnt {
    /// The kind.
    pub kind: MeatKind,
    /// How many cuts.
    pub cuts: u32,
    /// How fast salt goes into it, of the usual speed: `120 %`.
    pub speed: String,
    /// How wide the range of the times is, of what it was: `54 %`.
    pub range: String,
}
