//! Which fault is switched on; this file stands in the crate while it is spoiled, with the number of faults put in.

use std::io::Write;
use std::sync::atomic::{AtomicBool, AtomicU32, Ordering::Relaxed};

const UNASKED: u32 = u32::MAX;
const TRACED: u32 = u32::MAX - 1;
static ON: AtomicU32 = AtomicU32::new(UNASKED);
static REACHED: [AtomicBool; COUNT] = [const { AtomicBool::new(false) }; COUNT];

/// True where this fault is the one that `MUTANT` names.
#[inline]
pub fn on(id: u32) -> bool {
    let on = ON.load(Relaxed);
    if on < TRACED { on == id } else { asked(id) }
}

/// The first call asks the environment; while it is traced, what is reached is written to the file that it names.
#[cold]
fn asked(id: u32) -> bool {
    if ON.load(Relaxed) == UNASKED && std::env::var_os("MUTANT_TRACE").is_none() {
        let named = std::env::var("MUTANT").ok().and_then(|id| id.parse().ok());
        ON.store(named.unwrap_or(0), Relaxed);
        return on(id);
    }
    ON.store(TRACED, Relaxed);
    if REACHED.get(id as usize).is_some_and(|seen| !seen.load(Relaxed) && !seen.swap(true, Relaxed)) {
        let file = std::env::var_os("MUTANT_TRACE").unwrap_or_default();
        let opened = std::fs::OpenOptions::new().create(true).append(true).open(file);
        if let Ok(mut opened) = opened {
            let _ = opened.write_all(format!("{id}\n").as_bytes());
        }
    }
    false
}
