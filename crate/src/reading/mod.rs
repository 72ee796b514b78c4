//! Reads a recipe that somebody wrote or said, in lines or in prose, and says what it was taken for.
//!
//! ```text
//! text    = clause { (line end | ";" | full stop | joint before the next amount, name or step) clause }
//! clause  = { word } [ amount ] { word } [ name ] { word } { base | again | word }     in any order
//! amount  = [about] [heap] range [heap] [pack] unit { ("+" | "plus" | "and" | blank) smaller amount } [pack]
//! range   = number [ ("-" | "–" | "to" | "or") number ]  |  "between" number "and" number
//! number  = digits as in a field (`1/2`, `½`, `1 1/2`, `1½`, `1,5`) or words (`two point five`, `a hundred and twenty`), [ "and" fraction ]
//! heap    = heaping, heaped, rounded, generous, scant, level …       unit = tsp, lb, g, %, pinch, clove …
//! base    = ("per" | "for each" | "/" …) amount of meat or water  |  ("for" | "into" | "to" …) weight of meat
//! again   = the same said twice: "(about 30 g)", "or 30 g"
//! take    = ("inject" | "pump" | "pick-up" …) { word } per cent  |  per cent ("pump" | "pick-up" …)
//! each    = an amount with "each": for every name of its sentence
//! step    = act { word } [ time ] [ "at" temperature ] [ ("to" | "until" …) temperature ]
//! ```
//!
//! All words are in `tables/words.csv`, all names in the pantry. A spoon is level where nothing else is said. What can mean several things
//! stays a range over all of them until its question is answered. A clause with words that were not understood says
//! which; one that was not read is shown as such; none is dropped. A negation (`no salt`, `instead of`) is never read.

mod all;
mod amount;
mod asked;
mod asks;
mod card;
mod cased;
mod changes;
mod clause;
mod compare;
mod corrected;
mod dangers;
mod doubts;
mod facts;
mod figures;
mod line;
mod model;
mod names;
mod number;
mod numeral;
mod parse;
mod read;
mod recipe;
mod said;
mod scan;
mod settle;
mod spelling;
mod steps;
mod token;
mod tongue;
mod unwrap;
mod warm;
mod weigh;
mod weights;
mod worded;
mod words;

pub use asked::Asked;
pub use facts::{Beside, Danger, DangerKey, Lasts, LineFlag, NoRecipe, Of, Offer, Question, RowOf, Taken, Thing};
pub use model::{AskReading, ReadLine, ReadStep, Reading};
pub use read::{MOST_TEXT, read};
pub use tongue::Tongue;
pub(crate) use words::{Sort, Word};
