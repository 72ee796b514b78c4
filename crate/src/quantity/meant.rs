//! What may have been meant by a temperature that cannot be right.

use super::exact::Exact;
use super::kind::System;
use super::kinds::Temperature;
use rust_decimal::{Decimal, dec};

/// What may have been meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Meant {
    /// Where the other was typed in this scale.
    pub typed: System,
    /// The scale in which it was meant.
    pub said: System,
    /// What was meant.
    pub value: Temperature,
}

impl Temperature {
    /// What may have been meant by what was typed in a scale: the same number in the other scale, or a tenth of it.
    #[must_use]
    pub fn meant(self) -> Vec<Meant> {
        let f = self.base();
        let celsius = f.less(dec!(32)).and_then(|c| c.over(dec!(1.8)));
        let fahrenheit = |c: Decimal| c.times(dec!(1.8)).and_then(|f| f.plus(dec!(32)));
        let tenth = celsius.and_then(|c| c.over(dec!(10))).and_then(fahrenheit);
        [
            (System::Us, System::Metric, fahrenheit(f)),
            (System::Metric, System::Us, celsius),
            (System::Metric, System::Metric, tenth),
            (System::Us, System::Us, f.over(dec!(10))),
        ]
        .into_iter()
        .filter_map(|(typed, said, f)| {
            let value = Self::new(f?).ok()?;
            Some(Meant { typed, said, value })
        })
        .collect()
    }
}
