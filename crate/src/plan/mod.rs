//! Planning ahead: what a bag will give and what to buy for it, and the jobs as a calendar file.

pub mod bag;
mod calendar;

pub use calendar::{Calendar, calendar};
