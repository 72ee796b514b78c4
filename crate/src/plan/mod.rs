//! Planning ahead: what a bag will give and what to buy for it, the jobs as a calendar file, the plan back from a
//! date, and what to do when something went wrong.

pub mod back;
pub mod bag;
mod calendar;
mod room;
pub mod trouble;

pub use calendar::{Calendar, CalendarWords, JobWords, Sent, calendar};
