//! What a plan of several chains is worth.

use crate::schedule::fit::{Chain, Taken};

/// Times of each chain, `None` for one that does not fit.
pub type Times = Vec<Option<Vec<usize>>>;

/// How many fit, the first start, all starts together.
pub type Worth = (usize, usize, usize);

/// What a plan is worth; a start that was made already does not count.
pub fn worth(chains: &[Chain], times: &Times, taken: &Taken) -> Worth {
    let starts = || {
        let open = chains.iter().zip(times).filter(|(chain, _)| taken.is_open(chain));
        open.filter_map(|(_, t)| t.as_ref()?.first().copied())
    };
    (
        times.iter().flatten().count(),
        starts().min().unwrap_or(0),
        starts().sum::<usize>(),
    )
}
