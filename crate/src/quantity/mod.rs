//! Ground floor: what people type, as exact quantities within bounds, and back to text.
//!
//! Nothing here knows of meat. Every other floor works on these types; a problem found here is worded here.

pub mod exact;
mod figure;
mod kind;
mod kinds;
mod meant;
mod number;
mod print;
mod problem;
mod range;
mod read;
mod rest;
mod text;
mod wrong;

pub use figure::{Figure, fixed, grouped, plain};
pub use kind::{Facts, Kind, Quantity, System, Unit};
pub use kinds::{
    Fraction, FractionKind, Length, LengthKind, Mass, MassKind, Span, Temperature, TemperatureKind, TimeKind, Volume,
    VolumeKind,
};
pub use meant::Meant;
pub(crate) use number::{Reading, gap, is_gap, number};
pub use problem::{Code, Problem};
pub use range::Range;
pub use read::MOST_TEXT;
pub(crate) use read::shorten;
pub use rest::{Awake, HOUR, Rest, hour_down, hour_up};
pub use wrong::{KindOf, LinkWrong, PutInBy, RecipeList, RecipeWrong, TypedWrong, Wrong};
