//! How long a pack keeps and when meat counts as cooked. The figures are in `tables/keeping.csv` and `targets.csv`.

use crate::batch::Batch;
use crate::fire::cooked;
use crate::quantity::Temperature;
use crate::quantity::exact::Exact;
use crate::recipe::{Do, Eaten, Method};
use crate::safety::consumer;
use crate::weigh::Settings;
use rust_decimal::prelude::FromPrimitive;
use rust_decimal::{Decimal, dec};

/// A row of the keeping times.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Keeps {
    /// `smoked-cured`, `smoked`, `cooked`, `raw`.
    pub state: &'static str,
    /// `bird`, `red`, or `any`.
    pub kind: &'static str,
    /// `cold` or `frozen`.
    pub place: &'static str,
    /// Days at the low end: what a label takes.
    pub low: u32,
    /// Days at the high end.
    pub high: u32,
    /// The rule in words.
    pub says: &'static str,
    /// Where it is from.
    pub source: &'static str,
    /// `published`, `quoted`, `judgement`.
    pub status: &'static str,
}

/// The row for meat of these kinds: where they are mixed, the one that keeps shortest.
pub fn keeps(state: &str, kinds: &[&str], place: &str) -> Option<&'static Keeps> {
    let row = |kind: &str| {
        let rows = crate::tables::KEEPING.iter();
        let mut fits = rows.filter(|k| k.state == state && k.place == place);
        fits.find(|k| k.kind == kind || k.kind == "any")
    };
    let known = kinds.iter().filter_map(|kind| row(kind));
    known.min_by_key(|k| k.low).or_else(|| row("any"))
}

/// °F in the middle at which meat of these kinds counts as cooked: the consumer temperature of the hottest of them.
pub fn cooked_at(method: Method, kinds: &[&str]) -> Decimal {
    let minced = method == Method::Ground;
    let at = kinds.iter().map(|kind| consumer(kind).at(minced));
    at.max_by(f64::total_cmp)
        .and_then(Decimal::from_f64)
        .unwrap_or(dec!(165))
}

/// How far the meat of a batch is done, by its ticks and by the log of the fire.
pub struct Done {
    /// A smoking step was ticked.
    pub smoked: bool,
    /// What it was cooked to, where that reaches the consumer figure: by the log where every class has readings and is
    /// pulled, else by a ticked step.
    pub cooked: Option<Temperature>,
    /// What the log says where the ticks say otherwise.
    pub log_differs: Option<Temperature>,
    /// Cure went in by tick, by spoon, or is in the recipe.
    pub cured: bool,
}

/// See [`Done`].
pub fn done(batch: &Batch, kinds: &[&str], now: i64, settings: &Settings) -> Done {
    let steps = || {
        let all = batch.recipe.steps.iter().enumerate();
        all.filter(|(i, _)| batch.step(*i).is_some()).map(|(_, step)| step)
    };
    let least = cooked_at(batch.recipe.method, kinds);
    // 71 °C is how 160 °F is printed, and 0.2 °F under it.
    let reaches = |t: &Temperature| t.base().half_away(0) >= least;
    let ticked = steps()
        .filter(|s| matches!(s.act, Do::Smoke | Do::Cook))
        .filter_map(|s| s.until)
        .filter(reaches)
        .max();
    // What was read counts as it was read.
    let logged = cooked(batch, now, settings.units);
    let by_log = logged.filter(|t| t.base() >= least);
    Done {
        smoked: steps().any(|s| s.act == Do::Smoke),
        cooked: if logged.is_some() { by_log } else { ticked },
        log_differs: logged.filter(|_| ticked.is_some() != by_log.is_some()),
        cured: batch.put_in.is_some() || !batch.recipe.cures.is_empty(),
    }
}

/// The state that decides the keeping time; nothing for what hangs for months or is dried, of which no figure is known.
pub fn state(batch: &Batch, done: &Done) -> Option<&'static str> {
    let dried = batch.recipe.steps.iter().any(|s| s.act == Do::DryOut);
    if batch.recipe.eaten == Eaten::HungForMonths || dried {
        return None;
    }
    Some(match (done.cooked, done.smoked, done.cured) {
        (None, _, _) => "raw",
        (_, true, true) => "smoked-cured",
        (_, true, false) => "smoked",
        (_, false, _) => "cooked",
    })
}
