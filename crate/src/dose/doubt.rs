//! A verdict while something in the recipe may be a second curing agent: what is counted is the least of it.

use super::ground::Ground;
use super::next::NextStep;
use super::outcome::Outcome;
use super::ppm::{Ppm, PpmEnds};
use super::remark::{DoseRemark, VerdictWord};
use super::verdict::Verdict;
use crate::recipe::{MayHold, Why};

impl Verdict {
    /// The same with what may hold nitrite or nitrate and is not counted. More of it never mends a dose that is over; any
    /// other word needs to know, so it is taken back and the batch is held.
    pub(crate) fn in_question(mut self, may_hold: Vec<MayHold>) -> Self {
        if may_hold.is_empty() {
            return self;
        }
        // What would bring the counted part in range may leave the whole far over.
        self.aim = None;
        self.next = may_hold.iter().map(|one| NextStep::Settle { why: one.why }).collect();
        self.next.dedup();
        self.grounds.retain(|g| *g != Ground::InRange);
        let first = usize::from(self.outcome == Outcome::Over).min(self.grounds.len());
        self.grounds.insert(first, Ground::MayHoldMore);
        if self.outcome == Outcome::Over {
            self.next.insert(0, NextStep::MayBeMore);
        } else {
            self.outcome = Outcome::CannotTell;
            self.sure = false;
            self.word = VerdictWord::CannotSayYet;
            self.mark = self.word.mark();
            self.held = true;
            let lethal = self.grounds.contains(&Ground::StrengthLethal);
            let besides = std::mem::take(&mut self.says);
            self.says = may_hold.iter().map(remark).collect();
            if let Some(Ppm { low, high, .. }) = self.nitrite {
                let range = PpmEnds { low, high };
                self.says.push(DoseRemark::CountedWithout { range });
            }
            if lethal {
                self.says.extend(besides);
            }
        }
        self.may_hold = may_hold;
        self
    }
}

impl Verdict {
    /// The same of a text in another language: what is over stays over, and nothing else is said of it.
    pub(crate) fn foreign(self, text: &str) -> Self {
        let name: String = text.trim().chars().take(60).collect();
        self.in_question(vec![MayHold {
            why: Why::NotRead,
            at: 0,
            name,
        }])
    }
}

/// Why nothing can be said.
fn remark(one: &MayHold) -> DoseRemark {
    DoseRemark::MayHold {
        why: one.why,
        name: crate::quantity::shorten(&one.name),
    }
}
