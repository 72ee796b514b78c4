//! What of a text may be a cure and was not read as one: it is asked about by what it is, once for the whole text.

use super::all::{All, Doubt, Said};
use super::asked::{Answers, Asked, UNSURE};
use super::facts::{Offer, Question, Taken};
use super::weigh::Weighed;
use super::words::Sort;
use crate::pantry::{self, Group};
use crate::quantity::{Fraction, shorten};
use crate::recipe::{Holds, MOST_NAME, MOST_NOTE, MayHold, Why};
use crate::tables::{BEFORE_ADDED, BRINE, TELLS};

const NONE: &str = "none";

/// So many are offered one by one.
const MOST_OFFERED: usize = 8;

/// What of a line may be a cure.
///
/// Without an amount a sentence can only call for a cure where it adds something: an act of adding, or a few words that
/// may be a name, and a word among them that is not understood.
fn doubt(line: &Weighed<'_>, cured: bool) -> Option<(String, bool)> {
    let read = line.line;
    let whole = || Some((read.text.clone(), false));
    let weighable = read.amount.as_ref().is_some_and(|a| {
        // "Seal in a bag": a vessel, and a per cent of damp, are no amounts of a step.
        let vessel = ["bag", "jar", "box", "tray"].contains(&a.unit());
        !(matches!(a.sort(), Sort::Other | Sort::Percent) || vessel) || pantry::names_agent(&read.text)
    });
    // Of two that are offered either may be the cure.
    if read.either {
        let cure = line.items.iter().any(|i| i.group == Group::Cure) || pantry::names_agent(&read.text);
        return cure.then(|| (read.text.clone(), false));
    }
    match read.taken {
        // "A 6 % brine": its salt is said behind it.
        Taken::Unread if read.strange.is_empty() && is_brine(read) => None,
        Taken::Item if line.items.is_empty() && read.meaning.is_none() && !read.own.is_empty() => {
            Some((read.own.clone(), true))
        }
        // What is left of a line may be its real name: "salt with E 250".
        Taken::Item | Taken::Taste | Taken::Meat if !read.left.is_empty() => whole(),
        // Swallowed with the break of its line, or behind a bracket that nobody closed, it is none of what was read there.
        Taken::Item | Taken::Taste | Taken::Meat if swallows(line) => whole(),
        Taken::Item | Taken::Meat | Taken::Taste => None,
        // "No celery seed": what it is, is known, and it is left out.
        Taken::Unread if read.left_out => None,
        // "0.03 % dextrose, no": nor does it matter how much of it.
        Taken::Unread if read.strange.is_empty() && is_food(line) => None,
        Taken::Unread if read.amount.is_none() && read.meaning.is_none() && !adds(read) && !is_name(&read.text) => None,
        Taken::Unread => whole(),
        // Something is weighed there, or nitrite is named and none is weighed anywhere.
        Taken::Step | Taken::Heading if weighable && read.meaning.is_none() && !read.meat => whole(),
        Taken::Step | Taken::Heading if !cured && pantry::names_nitrite(&read.text) => whole(),
        Taken::Step if !read.strange.is_empty() && adds_strange(read) => whole(),
        Taken::Remark if read.left_out => None,
        Taken::Remark if !cured && pantry::names_nitrite(&read.text) => whole(),
        Taken::Step | Taken::Heading | Taken::Remark => None,
    }
}

fn is_food(line: &Weighed<'_>) -> bool {
    let cure = line.items.iter().any(|i| i.group == Group::Cure);
    line.line.meaning.is_some() && !cure && !pantry::names_agent(&line.line.text)
}

fn is_brine(read: &super::line::Line) -> bool {
    let percent = read.amount.as_ref().is_some_and(|a| a.sort() == Sort::Percent);
    percent && BRINE.iter().any(|w| read.text.to_lowercase().contains(w))
}

/// True where something is added.
fn adds(read: &super::line::Line) -> bool {
    let text = &read.text;
    let starts = super::token::tokens(text);
    starts.iter().any(|t| {
        text.get(t.start..)
            .is_some_and(|at| super::words::front(Sort::Adds, at).is_some())
    })
}

/// True where what is added is a word that nobody knows: it follows at once, but for articles, figures and measures.
fn adds_strange(read: &super::line::Line) -> bool {
    let text = &read.text;
    let words = super::token::tokens(text);
    let strange: Vec<&str> = read.strange.split(' ').collect();
    let at = |t: &super::token::Token| text.get(t.start..).unwrap_or_default();
    let is = |t: &super::token::Token, sorts: &[Sort]| sorts.iter().any(|s| super::words::front(*s, at(t)).is_some());
    let skipped = |t: &super::token::Token| {
        BEFORE_ADDED.contains(&t.text.as_str())
            || is(t, &[Sort::Number, Sort::Volume, Sort::Mass, Sort::Vague, Sort::Adds])
    };
    words.iter().enumerate().any(|(n, t)| {
        let behind = words.get(n.saturating_add(1)..).unwrap_or_default();
        let next = behind.iter().find(|t| !skipped(t));
        is(t, &[Sort::Adds])
            && next
                .and_then(|t| text.get(t.start..t.end))
                .is_some_and(|w| strange.contains(&w))
    })
}

/// A cure is named in a line that was read as something else.
fn swallows(line: &Weighed<'_>) -> bool {
    // Pink salt out of a mountain is none.
    let cure = |i: &&pantry::Ingredient| i.group == Group::Cure || i.key == "salt-mineral-pink";
    !line.items.iter().any(cure)
        && !line.items.is_empty()
        && !line.line.left_out
        && pantry::names_nitrite(&line.line.text)
}

/// So many words can be a name without an amount.
const NAME_WORDS: usize = 6;

fn is_name(text: &str) -> bool {
    let words = super::token::tokens(text);
    let tells = words.iter().any(|t| TELLS.contains(&t.text.as_str()));
    !tells && text.split_whitespace().count() <= NAME_WORDS && !text.trim_end().ends_with(['?', '!'])
}

impl All<'_> {
    /// All that may be a cure and was not read as one.
    pub(super) fn doubts(&self) -> Vec<Doubt> {
        let is_cure = |l: &Weighed<'_>| l.items.iter().any(|i| i.group == Group::Cure);
        let cured = self.items().any(|l| l.line.amount.is_some() && is_cure(l));
        let found = self.lines.iter().enumerate();
        found
            .filter_map(|(line, l)| {
                let (name, own) = doubt(l, cured)?;
                Some(Doubt { line, name, own })
            })
            .collect()
    }

    /// One question for all of it: what the packets say, not what the names sound like.
    pub fn ask_agents(&mut self, answers: &Answers<'_>) {
        self.doubts = self.doubts();
        if !self.doubts.is_empty() {
            self.ask_holds(answers);
        }
        self.ask_strengths(answers);
    }

    fn ask_holds(&mut self, answers: &Answers<'_>) {
        let names: Vec<String> = self.doubts.iter().map(|d| shorten(&d.name)).collect();
        let yes = names.iter().enumerate().take(MOST_OFFERED);
        let yes: Vec<(String, Offer)> = yes
            .map(|(at, name)| (format!("yes {at}"), Offer::Holds { name: name.clone() }))
            .collect();
        let choices = [(NONE.to_owned(), Offer::HoldsNone)]
            .into_iter()
            .chain(yes)
            .chain([(UNSURE.to_owned(), Offer::Unsure)]);
        let about: Vec<&str> = self.doubts.iter().map(|d| d.name.as_str()).collect();
        let asked = Asked::new(
            format!("agent:{}", about.join(" / ")),
            Question::Holds { names },
            choices,
            answers,
        );
        self.said = match asked.answer.as_deref() {
            Some(NONE) => Said::None,
            Some(UNSURE) | None => Said::Open,
            Some(yes) => {
                let at = yes.strip_prefix("yes ").and_then(|at| at.parse().ok());
                at.map_or(Said::Open, Said::Yes)
            }
        };
        self.questions.push(asked);
        // What is weighed and names nitrite is a cure, and no longer a doubt.
        let Said::Yes(at) = self.said else { return };
        let (Some(packet), Some(doubt)) = (pantry::ingredient(pantry::PACKET), self.doubts.get(at)) else {
            return;
        };
        if let Some(line) = self.lines.get_mut(doubt.line).filter(|_| doubt.own) {
            line.items = vec![packet];
            self.doubts.remove(at);
            // Of the others nobody has said anything.
            self.said = Said::Open;
        }
    }

    /// How strong each cure is whose strength only its packet knows; unless it is said it cannot be counted.
    fn ask_strengths(&mut self, answers: &Answers<'_>) {
        let read = |text: &str| {
            let printed = Fraction::read(text, Some("%")).ok();
            printed.filter(|f| pantry::too_strong(f.base()).is_none())
        };
        for line in &mut self.lines {
            let unknown = line
                .items
                .as_slice()
                .first()
                .is_some_and(|i| i.group == Group::Cure && i.nitrite.is_empty());
            if line.items.len() != 1 || !unknown || line.line.strength.is_some() {
                continue;
            }
            let ask = Question::Strength {
                of: shorten(&line.line.text),
            };
            let key = format!("strength:{}", line.line.text);
            let (asked, given) = Asked::typed(&key, ask, Vec::new(), answers, read);
            self.questions.push(asked);
            line.printed = given;
        }
    }

    /// What is known of a line of the user's own.
    pub(super) fn holds(&self, line: usize) -> Holds {
        let at = self.doubts.iter().position(|d| d.line == line && d.own);
        match (&self.said, at) {
            (Said::None, Some(_)) => Holds::None,
            (Said::Yes(yes), Some(at)) if *yes == at => Holds::Yes,
            _ => Holds::Unknown,
        }
    }

    /// What was not understood and nobody has settled, as it was written.
    pub(super) fn unread(&self) -> Vec<String> {
        if self.said == Said::None {
            return Vec::new();
        }
        let texts = self.doubts.iter().filter(|d| !d.own);
        texts.map(|d| d.name.chars().take(MOST_NOTE).collect()).collect()
    }

    /// The same as facts for the verdict.
    pub(super) fn may_hold(&self) -> Vec<MayHold> {
        let doubts = self.doubts.iter().filter_map(|d| {
            let name: String = d.name.chars().take(if d.own { MOST_NAME } else { MOST_NOTE }).collect();
            let why = match (d.own, self.holds(d.line)) {
                (true, Holds::None) if pantry::names_agent(&name) => Why::NameSaysSo,
                (_, Holds::Yes) => Why::Holds,
                (_, Holds::None) => return None,
                (false, _) if self.said == Said::None => return None,
                (true, _) => Why::NotAsked,
                (false, _) => Why::NotRead,
            };
            Some(MayHold { why, at: d.line, name })
        });
        doubts.collect()
    }
}
