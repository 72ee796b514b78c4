//! What the log of a batch says: what is cooked enough by which rule, what is doubtful, and how long there is to chill.
#![allow(
    clippy::float_arithmetic,
    reason = "times and temperatures as read; no dose is reckoned here"
)]

mod after;
mod chill;
mod class;
mod doubts;
mod facts;
mod heats;
mod outlook;
mod published;
mod sheet;
mod show;
mod smoker;

pub use after::After;
pub use chill::ChillRow;
pub use class::{Credit, FireClass, FireState};
pub use doubts::Questioned;
pub use facts::{
    ChillAlso, ChillStage, Conditions, Degrees, FireCaution, HeatRule, NoOutlook, OutlookBasis, OutlookNote,
    PublishedAbout, PublishedRow, StageLeft, WayStands, WayUp,
};
pub use outlook::Outlook;
pub use published::Published;
pub use sheet::{FireSheet, Pull, pulls, sheet};
pub use show::FirePoint;
pub use smoker::{AirHabit, Known};
