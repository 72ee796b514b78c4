//! Properties that hold for any input.

mod corpus;
mod doses;
mod heat;
mod links;
mod numbers;
mod plans;
mod recipes;
mod rescues;

use proptest::prelude::ProptestConfig;

/// So many cases, or as many as `PROPTEST_CASES` asks for where that is more.
fn cases(least: u32) -> ProptestConfig {
    let asked = ProptestConfig::default();
    ProptestConfig {
        cases: asked.cases.max(least),
        ..asked
    }
}
