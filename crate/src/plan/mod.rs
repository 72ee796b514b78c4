//! Planning ahead: what a bag will give and what to buy for it, the jobs as a calendar file, and the plan back
//! from a date.

pub mod back;
pub mod bag;
mod calendar;

pub use calendar::{Calendar, calendar};
