//! Planning ahead: what a bag will give and what to buy for it.

pub mod bag;
