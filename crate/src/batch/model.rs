//! The batch as it is stored.

use super::fire::Fire;
use super::fridge::FridgeReading;
use crate::pantry::Made;
use crate::quantity::{Fraction, Length, Mass};
use crate::recipe::Recipe;
use serde::{Deserialize, Serialize};

/// One batch, from the board to the label.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Batch {
    /// Two capital letters and, where two batches share them, a number: `SD`, `SD2`.
    pub tag: String,
    /// What it is called.
    pub name: String,
    /// The recipe as it was when the batch began; later changes to the recipe do not reach it.
    pub recipe: Recipe,
    /// Size classes.
    #[serde(default)]
    pub pieces: Vec<Piece>,
    /// The day of the kill, `2026-11-14`. Empty when not known.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub killed: String,
    /// Work with a one-in-so-many premix in place of the neat cure.
    #[serde(default)]
    pub premix: bool,
    /// What went in as cure when it was not the weigh-out: a spoon, another weight.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub put_in: Option<PutIn>,
    /// A second agent that went in beside it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub also: Option<PutIn>,
    /// Everything ticked, with its time.
    #[serde(default)]
    pub ticks: Vec<Tick>,
    /// The log of the fire and the chill, once it is begun.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub fire: Option<Fire>,
    /// What the refrigerator did while it cured.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<FridgeReading>>"))]
    pub fridge: Vec<FridgeReading>,
    /// By which time it comes out of the cure, where the recipe's and the clock's differ and somebody has said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub by: Option<By>,
    /// When it was thrown out, in milliseconds since 1970: nothing is assured of it any more.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "number", optional))]
    pub thrown_out: Option<i64>,
    /// Put away: finished or thrown out.
    #[serde(default)]
    pub closed: bool,
    /// Remarks.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub notes: String,
    /// What came out of it, for next time.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub after: Option<CameOut>,
}

/// Whose time a batch goes by in its cure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum By {
    /// The clock's: through for nine pieces in ten.
    Clock,
    /// The recipe's own hours.
    Recipe,
}

/// What came out of a batch.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields, default)]
pub struct CameOut {
    /// Weight of what was packed.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub out: Option<Mass>,
    /// How the cut looked.
    #[serde(skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<String>"))]
    pub cut: String,
    /// The taste in three words.
    #[serde(skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<String>"))]
    pub taste: String,
    /// What to change next time.
    #[serde(skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<String>"))]
    pub change: String,
}

impl Batch {
    /// A batch of a recipe with nothing on the board yet.
    pub const fn new(tag: String, name: String, recipe: Recipe) -> Self {
        Self {
            tag,
            name,
            recipe,
            pieces: Vec::new(),
            killed: String::new(),
            premix: false,
            put_in: None,
            also: None,
            ticks: Vec::new(),
            fire: None,
            fridge: Vec::new(),
            by: None,
            thrown_out: None,
            closed: false,
            notes: String::new(),
            after: None,
        }
    }
}

/// A size class: pieces of one species and cut that are alike.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Piece {
    /// By which the page knows it again, whatever its place; empty in a record of before it had one.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<String>"))]
    pub id: String,
    /// Key of a cut in the table, such as `mallard-breast`, or `own`.
    pub cut: String,
    /// The user's own word for it; empty for the table's.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub name: String,
    /// How many pieces, 1 to 10 000.
    pub count: u32,
    /// Nobody counted them: `count` is reckoned from the weight and what is usual.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub about: bool,
    /// Weight of all of them together, or of each. Nothing: not weighed yet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub weight: Option<Mass>,
    /// True when `weight` is of each piece.
    #[serde(default)]
    pub each: bool,
    /// The thickest part.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub thickness: Option<Length>,
    /// Skin or rind is on: salt comes in from one side only. A cut that has its rind on by its name needs no such word.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub skin: bool,
    /// Its bone is in it and in its weight: the dose is counted over the meat alone.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub bone_in: bool,
    /// The bag it lies in, where the sizes are bagged apart; nought while all lie in one.
    #[serde(default, skip_serializing_if = "is_none")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<u32>"))]
    pub bag: u32,
    /// It was frozen and thawed before the cure.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub thawed: bool,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "as it is asked for by the derive")]
const fn is_none(bag: &u32) -> bool {
    *bag == 0
}

/// Cure that is already on the meat, in the measure it was put in by.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct PutIn {
    /// `1 tbsp`, `2½ tsp` (level) or `3.5 g`.
    pub amount: String,
    /// Sodium nitrite printed on the packet; nothing when not known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub nitrite: Option<Fraction>,
    /// Sodium nitrate printed on the packet; nothing for none.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub nitrate: Option<Fraction>,
    /// How it was made, where it was a premix or a stock of the user's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub made: Option<Made>,
    /// The step of the scale that weighed it; nothing for the scale of the settings.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub step: Option<Mass>,
    /// It went in where the list has a cure ticked, which did not: that tick was a slip. Without this word both count.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub instead: bool,
}

/// Something done, with its time.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Tick {
    /// What: `cure:0`, `line:2`, `rub`, `label`, `step:3`, `turn:0:2`, `draw:2` for a size class, `end`.
    pub of: String,
    /// When, in milliseconds since 1970-01-01 UTC.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub at: i64,
    /// For something weighed: what went in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub weight: Option<Mass>,
    /// For a cure: the nitrite in what went in, thinned where it was a premix.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub nitrite: Option<Fraction>,
    /// For a cure: the nitrate in what went in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub nitrate: Option<Fraction>,
    /// For a cure: the step of the scale that weighed it; a finer scale later does not make it more certain.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub step: Option<Mass>,
}
