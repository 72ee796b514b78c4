//! Ground floor: what people type, as exact quantities within bounds, and back to text.
//!
//! Nothing here knows of meat. Every other floor works on these types; a problem found here is worded here.

pub mod exact;
mod kind;
mod kinds;
mod number;
mod print;
mod problem;
mod range;
mod read;
mod rest;
mod text;
mod wrong;

pub use kind::{Facts, Fraction, Kind, Length, Mass, Quantity, Span, System, Temperature, Unit, Volume};
pub use kinds::{FractionKind, LengthKind, MassKind, TemperatureKind, TimeKind, VolumeKind};
pub(crate) use number::{Reading, gap, is_gap, number};
pub use print::{Figure, fixed, grouped, plain};
pub use problem::{Code, Problem};
pub use range::Range;
pub use read::MOST_TEXT;
pub(crate) use read::shorten;
pub use rest::{Awake, HOUR, Rest, hour_down, hour_up};
pub use wrong::{PutInBy, RecipeList, Wrong};
