//! The tables of `tables/*.csv`, turned into constants by `build.rs`.

include!(concat!(env!("OUT_DIR"), "/tables.rs"));
