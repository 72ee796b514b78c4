//! Checks against something outside: published standards and worked examples, and general-purpose libraries.
//!
//! Each check names its source with its status: published (read in the source), quoted (read in a text that quotes
//! the source), computed (worked out from the published figures), common practice (no source).

mod advice;
mod back;
mod bag;
mod bench;
mod brines;
mod calendar;
mod calibrated;
mod checked;
mod clock;
mod clock_fridge;
mod clock_learning;
mod clock_plan;
mod dose;
mod fire_log;
mod fire_smoker;
mod labels;
mod limits;
mod link;
mod pantry;
mod rescued;
mod safety;
mod schedule;
mod slips;
mod smoke;
mod smoke_carry;
mod smoke_habit;
mod smoke_series;
mod spoons;
mod stock;
mod transport;
mod transport_cross;
mod transport_series;
mod trouble;
mod units;
mod weigh_out;
mod yields;
