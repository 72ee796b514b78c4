//! Puts small faults into modules of the crate, one at a time, and asks whether a test sees each: `scripts/mutate standing`.
//!
//! All faults are compiled in at once, each behind a switch, so that one build serves them all (mutant schemata: Untch,
//! Offutt and Harrold 1993). A test is only asked about faults in code that it comes through.

mod run;
mod sites;
mod values;
mod weave;

use std::path::Path;

fn main() {
    let (slow, modules): (Vec<String>, Vec<String>) = std::env::args().skip(1).partition(|word| word == "--slow");
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let root = root.canonicalize().unwrap_or(root);
    let tree = root.join("target/mutation/tree");
    let known = run::earlier(&tree);
    let unfit = |name: &str| known.get(name).is_some_and(|line| line.starts_with("not viable"));
    let woven = weave::Woven::new(&root, &tree, &modules, unfit);
    run::all(&tree, &woven.faults(), known, !slow.is_empty());
}
