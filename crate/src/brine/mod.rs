//! The brine bench: how much water a vessel or the meat takes, how strong a brine is in every measure of strength, and
//! the salt and cure for it.

mod bench;
mod strength;
mod vessel;

pub use bench::{AskBrine, BrineAmounts, BrineCure, BrineMeasure, BrineRemark, BrineSheet, EvenSalt, bench};
pub use strength::{Scale, Strength, percent_of};
pub use vessel::Vessel;
