//! Checks against something outside: published standards and worked examples, and general-purpose libraries.
//!
//! Each check names its source with its status: published (read in the source), quoted (read in a text that quotes
//! the source), computed (worked out from the published figures), common practice (no source).

mod advice;
mod assured;
mod back;
mod bag;
mod bench;
mod bowl;
mod brines;
mod calendar;
mod calibrated;
mod checked;
mod chills;
mod clock;
mod clock_fridge;
mod clock_learning;
mod clock_plan;
mod cold;
mod cuts;
mod dose;
mod draft;
mod fire_heats;
mod fire_log;
mod fire_needed;
mod fire_smoker;
mod joints;
mod labels;
mod limits;
mod link;
mod odd_times;
mod pantry;
mod rescued;
mod safety;
mod safety_edges;
mod schedule;
mod schedule_jobs;
mod slips;
mod smoke;
mod smoke_carry;
mod smoke_habit;
mod smoke_hard;
mod smoke_series;
mod spoons;
mod standing;
mod stock;
mod transport;
mod transport_cross;
mod transport_edges;
mod transport_series;
mod trouble;
mod units;
mod weigh_edges;
mod weigh_out;
mod went_in;
mod yields;
