//! All lines together: for how much meat, by which method, the dose, and the recipe in proportions.

use super::all::{All, Said};
use super::amount::Amount;
use super::asked::{Answers, Asked};
use super::facts::{LineFlag, NoRecipe, RowOf, Taken, Thing};
use super::line::Line;
use super::model::{AskReading, ReadLine, Reading};
use super::names::Names;
use super::steps::{self, Deed};
use super::tongue::Tongue;
use super::weigh::{Weighed, settled, weigh};
use super::words::{Sort, Word};
use crate::dose::{self, Case, Evens, Portion, Verdict, Whole};
use crate::pantry::Belly;
use crate::quantity::exact::Exact;
use crate::quantity::{Mass, Range, System, plain};
use crate::recipe::{self, Do, Eaten, Method};
use crate::weigh::Settings;
use rust_decimal::{Decimal, dec};

/// The reading of all lines.
#[allow(clippy::too_many_arguments, reason = "one caller, and each is a thing of its own")]
pub fn reading(
    text: &str,
    tongue: Tongue,
    lines: &[Line],
    names: &Names,
    choices: Vec<Asked>,
    answers: &Answers<'_>,
    ask: &AskReading,
) -> Reading {
    let settings = &ask.settings;
    let own = &settings.spoons;
    let lines: Vec<Weighed<'_>> = lines
        .iter()
        .map(|l| weigh(l, answers, own, &settings.profile))
        .collect();
    let mut all = All {
        meat: None,
        water: None,
        method: None,
        of: None,
        take: None,
        steps: Vec::new(),
        beside: Vec::new(),
        deeds: Vec::new(),
        doubts: Vec::new(),
        said: Said::Open,
        questions: choices,
        lines,
    };
    all.read_steps(names, settings.units);
    // What turns out to be a cure counts as one in all that is asked behind it.
    all.ask_agents(answers);
    all.ask_meat(answers);
    all.ask_method(text, answers);
    all.ask_water(answers);
    for line in &all.lines {
        for asked in &line.asks {
            // Two lines of the same words, or with a unit that may be two, are settled together.
            let known = all
                .questions
                .iter()
                .position(|q| q.key == asked.key && q.ask == asked.ask && q.choices == asked.choices);
            if known.is_none() {
                all.questions.push(asked.clone());
            }
            let question = match known {
                Some(at) => all.questions.get_mut(at),
                None => all.questions.last_mut(),
            };
            if let Some(question) = question.filter(|q| !q.of.contains(&line.line.text)) {
                question.of.push(line.line.text.clone());
            }
        }
    }
    let verdict = all
        .verdict(text, settings)
        .map(|v| if tongue == Tongue::English { v } else { v.foreign(text) });
    let open = all.questions.iter().any(|q| q.answer.is_none());
    let (recipe, bar) = match all.recipe(&ask.untitled) {
        _ if open => (None, Some(NoRecipe::Open)),
        Ok(recipe) => (Some(all.heated(text, recipe)), None),
        Err(bar) => (None, Some(bar)),
    };
    let beside = recipe.as_ref().map(|_| all.missing()).unwrap_or_default();
    let lines = all.lines.iter().map(|l| all.shown(l)).collect();
    Reading {
        lines,
        questions: all.questions.clone(),
        meat: all
            .meat
            .and_then(|m| Some(Mass::new(m.typical).ok()?.show(settings.units))),
        dangers: all.dangers(text, verdict.as_ref()),
        verdict,
        tongue,
        recipe,
        bar,
        beside,
    }
}

/// True for a measure of which there are several, where one is meant.
fn is_said(unit: &Word) -> bool {
    unit.sort == Sort::Volume && !unit.note.is_empty() && !unit.note.contains('|')
}

impl All<'_> {
    /// The steps of the text, each read by itself and all kept in their order.
    fn read_steps(&mut self, names: &Names, units: System) {
        let mut all: Vec<Deed> = Vec::new();
        for line in self.lines.iter_mut().filter(|l| l.line.taken == Taken::Step) {
            let read = steps::deeds(&line.line.text, names, units, &all);
            line.deeds = read.iter().map(|d| d.fact(units)).collect();
            let unread = read.iter().map(|d| d.unread.as_str()).filter(|u| !u.is_empty());
            let words = unread.collect::<Vec<_>>().join(", ");
            line.note = (!words.is_empty()).then_some(LineFlag::Left { words });
            all.extend(read);
        }
        let cured = self.cures().next().is_some();
        let (steps, beside) = steps::card(&all, cured);
        let kept = !cured || steps.first().is_some_and(|s| s.act == Do::Cure);
        if steps.len() <= recipe::MOST_STEPS && kept {
            self.steps = steps;
            self.beside = beside;
        } else {
            // Without its time in the cure there is no plan of it: all of it stays as it was written.
            self.beside = all.iter().map(|d| d.text.clone()).collect();
        }
        self.deeds = all;
    }

    fn verdict(&self, text: &str, settings: &Settings) -> Option<Verdict> {
        let (method, meat) = (self.method?, self.meat?);
        let take = if method.takes() { self.taken()? } else { Decimal::ZERO };
        let step = settings.scale_step.base();
        let lower = text.to_lowercase();
        let belly = if lower.contains("belly") {
            Belly::Bare
        } else {
            Belly::No
        };
        let portions: Option<Vec<Portion>> = self
            .cures()
            .map(|l| {
                let amount = l.line.amount.as_ref();
                let unit = amount.and_then(|a| a.parts.first()).map(|(_, u)| *u);
                let spoon = unit.filter(|u| u.sort == Sort::Volume).map(|u| {
                    if u.words.contains(&"tbsp") {
                        dose::Unit::Tablespoon
                    } else {
                        dose::Unit::Teaspoon
                    }
                });
                // In the text, or in the answer to what its packet says.
                let said = amount.is_some() || l.grams.is_some();
                let agent = Self::agent(l);
                Some(Portion {
                    // Empty where no amount is said.
                    said: amount.map(|_| l.line.measure.clone()).unwrap_or_default(),
                    agent: agent.filter(|_| said),
                    // What is written as a weight is weighed on this scale; a spoon is a range already.
                    weight: match (said, spoon) {
                        (true, None) => dose::summed(self.grams(l)?, step, 1)?,
                        (true, Some(_)) => self.grams(l)?,
                        (false, _) => Range::point(Decimal::ZERO),
                    },
                    spread: Decimal::ZERO,
                    parts: None,
                    unit: spoon.unwrap_or_default(),
                    step,
                    done: false,
                })
            })
            .collect();
        let portions = portions?;
        let pickle = if method.has_brine() {
            let cure = portions
                .iter()
                .try_fold(Range::point(Decimal::ZERO), |sum, p| sum.plus(p.weight))?;
            let weighings = self.items().filter(|l| Self::dissolves(l)).count();
            dose::summed(self.dissolved()?, step, u32::try_from(weighings).ok()?)?.plus(cure)?
        } else {
            Range::point(Decimal::ZERO)
        };
        let case = Case {
            rule: dose::rule(&settings.profile, method, belly)?,
            eaten: Eaten::Cooked,
            method,
            whole: Whole {
                counted: method.counted(),
                green: dose::summed(meat, step, 1)?,
                pickle,
                take,
                fo: None,
            },
            water: self.water.map_or(Decimal::ZERO, |w| w.typical),
            // The text says nothing of how thick the pieces are.
            evens: (method == Method::PickUp).then_some(Evens::Unknown),
            ascorbate: None,
            weighed: true,
            step,
            units: settings.units,
            portions,
        };
        let case = case.settled();
        let has_cure = !case.portions.is_empty();
        let mut keys = dose::keys_for(has_cure, method, Eaten::Cooked);
        if has_cure {
            dose::add_bacon(&mut keys, belly);
        }
        let verdict = dose::judge(&case, dose::cautions(&keys)).ok()?;
        Some(verdict.in_question(self.may_hold()))
    }

    /// A line for reading.
    fn shown(&self, line: &Weighed<'_>) -> ReadLine {
        let read = line.line;
        let grams = self.grams(line).or(line.grams).filter(|_| read.taken == Taken::Item);
        let weighed = read.taken == Taken::Item;
        let thing = match line.items.as_slice() {
            [one] => Some(Thing::Row { row: RowOf::of(one) }),
            [_, _, ..] => Some(Thing::Open {
                items: line.items.iter().map(|i| i.key).collect(),
            }),
            [] if weighed && read.meaning.is_some() => Some(Thing::Food { name: read.own.clone() }),
            [] if weighed => Some(Thing::Own { name: read.own.clone() }),
            [] => None,
        };
        let mut units = read.amount.iter().flat_map(|a| &a.parts);
        let by = units.find(|(_, u)| is_said(u)).map(|(_, unit)| unit.note);
        let mut flags = Vec::new();
        if read.is_told() && !(read.left.is_empty() && read.changed.is_empty()) {
            let words = [read.left.as_str(), read.changed.as_str()];
            flags.push(LineFlag::Left {
                words: words.join(" ").trim().to_owned(),
            });
        }
        if read.unsaid && line.grams.is_none() {
            flags.push(LineFlag::AmountUnsaid);
        }
        flags.extend(line.note.clone());
        let meant = read.taken == Taken::Meat && read.amount.is_none();
        let whole = read.base.as_ref().filter(|(_, each)| meant && !each).map(|(a, _)| a);
        let step = |g: Decimal| plain(g.half_away(if g < dec!(10) { 2 } else { 1 }));
        ReadLine {
            text: read.text.clone(),
            taken: read.taken,
            item: settled(&line.items).map_or("", |i| i.key),
            thing,
            each: (weighed && read.each).then(|| read.measure.clone()),
            by: by.filter(|_| weighed && !read.each),
            grams: grams
                .map(|g| [g.low, g.typical, g.high].map(step).to_vec())
                .unwrap_or_default(),
            flags,
            name: read.called.clone(),
            // "For 5 lb of meat" says how much of it there is.
            amount: read
                .amount
                .iter()
                .chain(whole)
                .filter(|a| a.sort() != Sort::Other && (!a.is_guess() || line.large.is_some()))
                .flat_map(Amount::ends)
                .collect(),
            unit: read
                .amount
                .as_ref()
                .or(whole)
                .filter(|a| a.sort() != Sort::Other)
                .map_or("", Amount::unit),
            per: line.base().and_then(|base| {
                let ends = base.ends();
                Some((ends.first()?.clone(), ends.last()?.clone(), base.unit()))
            }),
            strength: line
                .line
                .strength
                .map(|s| plain(s.typical))
                .or(line.printed.map(|p| plain(p.base()))),
            steps: line.deeds.clone(),
        }
    }
}
