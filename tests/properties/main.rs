//! Properties that hold for any input.

mod corpus;
mod doses;
mod heat;
mod links;
mod numbers;
mod plans;
mod recipes;
mod record;
mod rescues;
mod texts;
mod times;
mod times_fire;
mod times_three;
mod verdicts;

use proptest::prelude::ProptestConfig;

/// So many cases, or as many as `PROPTEST_CASES` asks for where that is more; of draws that do not apply as many again.
fn cases(least: u32) -> ProptestConfig {
    let asked = ProptestConfig::default();
    ProptestConfig {
        cases: asked.cases.max(least),
        max_global_rejects: asked.cases.max(least).saturating_mul(4),
        ..asked
    }
}
