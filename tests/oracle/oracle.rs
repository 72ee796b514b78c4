//! What may be assured of a batch, by the table of rules and plain arithmetic. Nothing here comes from the crate.
//!
//! Three answers: a rule bars a word (`Bar`), leaves room (`May`: half a step of the scale, the spread of a spoon, when
//! between two readings a line was crossed), or has nothing against it (`Clear`). A word must be barred where one rule
//! bars it; it must be allowed where every rule that stands before it is clear.

use crate::table::{Assurance, rule};
use crate::told::{Ms, Told};
use crate::{oracle_cold, oracle_dose, oracle_heat};

/// What a rule says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Three {
    Clear,
    May,
    Bar,
}

impl Three {
    /// Barred for sure, or only perhaps.
    pub const fn of(bars: bool, may: bool) -> Self {
        if bars {
            Self::Bar
        } else if may {
            Self::May
        } else {
            Self::Clear
        }
    }
}

/// A rule that has something to say.
#[derive(Clone, Copy, Debug)]
pub struct Fired {
    pub id: &'static str,
    /// The size class it is about; nothing for the whole batch.
    pub class: Option<usize>,
    pub says: Three,
}

/// Every rule that fired on a batch.
#[derive(Debug)]
pub struct Judged {
    pub fired: Vec<Fired>,
    /// The latest use-by that a label may bear; nothing where no heat ended yet.
    pub latest: Option<Ms>,
    lit: bool,
    rubbed: bool,
}

/// Judges a batch.
pub fn judge(told: &Told) -> Judged {
    let mut fired = Vec::new();
    oracle_dose::dose(told, &mut fired);
    oracle_cold::cure(told, &mut fired);
    fired.push(Fired {
        id: "Z1",
        class: None,
        says: Three::of(told.thrown_out.is_some(), false),
    });
    for place in 0..told.classes.len() {
        oracle_heat::class(told, place, &mut fired);
    }
    let uncured = told.agent.is_none() || fired.iter().any(|f| f.id == "D2" && f.says == Three::Bar);
    let latest = oracle_cold::keeping(told, uncured, &mut fired);
    fired.retain(|f| f.says != Three::Clear);
    Judged {
        fired,
        latest,
        lit: told.lit.is_some(),
        rubbed: told.rubbed.is_some(),
    }
}

impl Judged {
    /// The rules that bar this word, of this class where it is of one.
    pub fn bars(&self, word: Assurance, class: Option<usize>) -> impl Iterator<Item = &'static str> + '_ {
        let about = move |f: &&Fired| !word.by_class() || f.class.is_none() || f.class == class;
        self.fired
            .iter()
            .filter(move |f| f.says == Three::Bar && rule(f.id).bars.contains(&word))
            .filter(about)
            .map(|f| f.id)
    }

    /// True where nothing stands against this word, not even perhaps: to bar it is to cry wolf.
    pub fn allows(&self, word: Assurance, class: Option<usize>) -> bool {
        let late_words = matches!(word, Assurance::GoOn) && !self.rubbed;
        let unasked = word == Assurance::Cured && !self.rubbed;
        let against = |f: &&Fired| {
            let mine = !word.by_class() || f.class.is_none() || f.class == class;
            mine && self.stands_before(word, f.id)
        };
        !late_words && !unasked && !self.fired.iter().any(|f| against(&f))
    }

    /// Whether a rule of that name, broken or perhaps broken, is a fair reason not to say this word.
    fn stands_before(&self, word: Assurance, id: &str) -> bool {
        let kind = id.as_bytes()[0];
        if kind == b'Z' {
            return true;
        }
        match word {
            Assurance::Dose => matches!(kind, b'D' | b'R'),
            Assurance::NoCure => matches!(id, "A1" | "D5"),
            Assurance::Cured => matches!(kind, b'C' | b'D' | b'R' | b'K'),
            Assurance::Hot | Assurance::Pull => matches!(kind, b'D' | b'R' | b'U' | b'H') && id != "H8" || waits(id),
            Assurance::Chilled => matches!(kind, b'D' | b'R' | b'U' | b'H' | b'X') || waits(id),
            Assurance::Cooked => matches!(kind, b'D' | b'R' | b'U' | b'H' | b'X' | b'T') || waits(id),
            Assurance::Keep => matches!(kind, b'D' | b'R' | b'U' | b'H' | b'X' | b'T' | b'C' | b'K' | b'J'),
            Assurance::Gift => kind != b'A',
            Assurance::GoOn => {
                matches!(kind, b'D' | b'R' | b'U' | b'T') || waits(id) || id == "X1" || self.lit && kind == b'H'
            }
        }
    }
}

/// What went wrong in the refrigerator, which stays with the meat.
fn waits(id: &str) -> bool {
    matches!(id, "K2" | "K3")
}
