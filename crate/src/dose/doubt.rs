//! A verdict while something in the recipe may be a second curing agent: what is counted is the least of it.

use super::ground::Ground;
use super::verdict::{Advice, Mark, Outcome, Verdict};
use crate::recipe::{MayHold, Why};

impl Verdict {
    /// The same with what may hold nitrite or nitrate and is not counted. More of it never mends a dose that is over; any
    /// other word needs to know, so it is taken back and the batch is held.
    pub fn in_question(mut self, may_hold: Vec<MayHold>) -> Self {
        if may_hold.is_empty() {
            return self;
        }
        // What would bring the counted part in range may leave the whole far over.
        self.aim = None;
        self.next = may_hold.iter().map(next).collect();
        self.next.dedup();
        self.grounds.retain(|g| *g != Ground::InRange);
        let first = usize::from(self.outcome == Outcome::Over).min(self.grounds.len());
        self.grounds.insert(first, Ground::MayHoldMore);
        if self.outcome == Outcome::Over {
            let head = "Do not weigh this out, and do not eat of it.".to_owned();
            let text = "What is counted is too much already, and there may be more.".to_owned();
            self.next.insert(0, Advice { head, text });
        } else {
            self.outcome = Outcome::CannotTell;
            self.sure = false;
            "Cannot say yet".clone_into(&mut self.word);
            self.mark = Mark::Ask;
            self.held = true;
            let counted = match &self.nitrite {
                Some(ppm) => format!(" What is counted comes to {} to {} ppm without it.", ppm.low, ppm.high),
                None => String::new(),
            };
            let lethal = self.grounds.contains(&Ground::StrengthLethal);
            let besides = if lethal {
                format!(" {}", self.says)
            } else {
                String::new()
            };
            self.says = format!(
                "{}{counted}{besides}",
                may_hold.iter().map(says).collect::<Vec<_>>().join(" ")
            );
        }
        self.may_hold = may_hold;
        self
    }
}

impl Verdict {
    /// The same of a text in another language: what is over stays over, and nothing else is said of it.
    pub fn foreign(self, text: &str) -> Self {
        let name: String = text.trim().chars().take(60).collect();
        self.in_question(vec![MayHold {
            why: Why::NotRead,
            at: 0,
            name,
        }])
    }
}

/// Why nothing can be said.
fn says(one: &MayHold) -> String {
    let name = crate::quantity::shorten(&one.name);
    match one.why {
        Why::NotAsked => format!("Whether “{name}” holds nitrite or nitrate is not known."),
        Why::Holds => format!("“{name}” holds nitrite or nitrate, and how much is not known."),
        Why::NameSaysSo => {
            format!("“{name}” is said to hold no nitrite or nitrate, and its name says that it does.")
        }
        Why::NotRead => format!("“{name}” was not read: it may call for cure."),
    }
}

/// What settles it.
fn next(one: &MayHold) -> Advice {
    let (head, text) = match one.why {
        Why::NotAsked => (
            "Read its packet.",
            "If it names nitrite, nitrate or E 249 to E 252, it is a cure and goes under cure with its per cent. If not, say so on the card.",
        ),
        Why::Holds => (
            "Put it under cure.",
            "With the per cent of nitrite and nitrate on its packet. If the packet does not say how much, nobody can say what is in the meat: leave it out.",
        ),
        Why::NameSaysSo => (
            "Read its packet again.",
            "If it holds any, it goes under cure with its per cent. If not, give it the name on the packet.",
        ),
        Why::NotRead => (
            "Settle what was not read.",
            "If it calls for cure, put that on the card. If not, say so on the card.",
        ),
    };
    Advice {
        head: head.to_owned(),
        text: text.to_owned(),
    }
}
