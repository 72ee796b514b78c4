//! What is asked of the whole text: for how much meat, how it goes on, how much water, per cent of what.

use super::all::{All, is_water};
use super::asked::{Answers, Asked};
use super::facts::{Of, Offer, Question, Taken};
use super::line::Line;
use super::scan::speaks_of;
use super::weigh::Weighed;
use super::words::{Sort, of};
use crate::pantry::Group;
use crate::quantity::{Fraction, Mass, Range, System, plain};
use crate::recipe::{self, Method};
use crate::tables::THROWN;
use rust_decimal::{Decimal, dec};

/// Work weight where a recipe is all in proportions, grams.
const KILOGRAM: Decimal = dec!(1000);

/// A weight that was typed, of more than nothing.
fn weight(text: &str) -> Option<Mass> {
    Mass::read(text, Some("g")).ok().filter(|m| !m.base().is_zero())
}

/// True for a figure or a share outside brackets that is no part of what the meat was read to weigh.
fn leaves_a_figure(line: &Line) -> bool {
    let bracket = line
        .text
        .split_once('(')
        .and_then(|(_, t)| Some(t.split_once(')')?.0))
        .unwrap_or_default();
    line.unused.split(' ').any(|w| {
        let share = ["half", "third", "quarter", "same", "equal"].contains(&w);
        !w.is_empty() && (share || w.starts_with(|c: char| c.is_ascii_digit())) && !bracket.contains(w)
    })
}

impl All<'_> {
    /// The weight of the meat: as the text says, else as it is asked.
    pub fn ask_meat(&mut self, answers: &Answers<'_>) {
        // Meat that weighs nothing, or more than is reckoned with, is none.
        let weighs = |r: &Range| r.low > Decimal::ZERO && Mass::new(r.high).is_ok();
        let settled = |l: &Weighed<'_>| {
            let amount = l.line.amount.as_ref().filter(|a| a.sort() == Sort::Mass)?;
            l.meat
                .or_else(|| amount.sum(None, l.large))
                .filter(weighs)
                .filter(|_| l.large.is_some() || amount.parts.iter().all(|(number, _)| number.other.is_none()))
        };
        let sum = |amount: &super::amount::Amount| {
            let twofold = amount.parts.iter().any(|(number, _)| number.other.is_some());
            let range = amount
                .sum(None, None)
                .filter(|_| amount.sort() == Sort::Mass && !twofold);
            range.filter(weighs)
        };
        let whole = |l: &Weighed<'_>| {
            l.line
                .base
                .as_ref()
                .filter(|(_, each)| l.line.leads && !each)
                .and_then(|(a, _)| sum(a))
        };
        let bases: Vec<Range> = self.lines.iter().filter_map(whole).collect();
        let weighed = self
            .lines
            .iter()
            .filter(|l| l.line.taken == Taken::Meat && l.line.base.is_none());
        let weighed: Option<Range> = weighed
            .filter_map(settled)
            .try_fold(None, |all: Option<Range>, one| {
                Some(Some(match all {
                    Some(all) => all.plus(one)?,
                    None => one,
                }))
            })
            .flatten();
        // Bases that hang on one line are offered, not taken.
        let loose = self.lines.iter().filter(|l| l.line.is_partial());
        let loose: Vec<Range> = loose.filter_map(|l| sum(&l.line.base.as_ref()?.0)).collect();
        let needs = self.items().any(|l| l.grams.is_some() && l.base().is_none());
        // "10 lb venison, 5 pork": a figure of which nothing was made.
        let unclear = self
            .lines
            .iter()
            .any(|l| l.line.taken == Taken::Meat && leaves_a_figure(l.line));
        let mut said: Vec<Range> = bases.into_iter().chain(weighed).collect();
        said.dedup();
        match said.as_slice() {
            [one] if !unclear => self.meat = Some(*one),
            // Which number it is, is asked already.
            [] if self.lines.iter().any(|l| {
                l.line.taken == Taken::Meat && l.asks.iter().any(|a| a.key.starts_with("number") && a.answer.is_none())
            }) => {}
            [] if !needs => self.meat = loose.first().copied().or(Some(Range::point(KILOGRAM))),
            said => {
                let mut offers: Vec<String> = Vec::new();
                for range in said.iter().chain(&loose) {
                    let text = Mass::new(range.typical)
                        .map(|m| m.print(System::Us))
                        .unwrap_or_default();
                    if !offers.contains(&text) {
                        offers.push(text);
                    }
                }
                let ask = Question::Meat {
                    several: !said.is_empty(),
                };
                let (asked, given) = Asked::typed("meat", ask, offers, answers, weight);
                self.questions.push(asked);
                self.meat = given.map(|m| Range::point(m.base()));
            }
        }
    }

    /// How it goes on: by the words of the text and the water in it, else as it is asked.
    pub fn ask_method(&mut self, text: &str, answers: &Answers<'_>) {
        let lower = text.to_lowercase();
        let says = |key: &str| {
            let words = of(Sort::Brine).filter(|w| w.value == key).flat_map(|w| w.words);
            words.into_iter().any(|w| lower.contains(w))
        };
        let water = self.items().any(is_water);
        let pumped = speaks_of("pumped", text).is_some();
        let pick_up = speaks_of("pick_up", text).is_some();
        let any = |words: &[&str]| words.iter().any(|w| lower.contains(w));
        let found = match (says("cover_brine") && water, says("ground"), says("rub")) {
            _ if pumped && any(&THROWN) => Some(Method::Pumped),
            _ if pumped || pick_up => None,
            (true, false, false) => Some(Method::CoverBrine),
            (false, true, false) => Some(Method::Ground),
            (false, false, true) if !water => Some(Method::Rub),
            _ => None,
        };
        let cured = self.items().any(|l| l.items.iter().any(|i| i.group == Group::Cure));
        let plain = !cured && !water && !pumped && !pick_up;
        self.method = found.or(plain.then_some(Method::Rub));
        if self.method.is_none() {
            let choices = [
                (Method::Pumped, pumped),
                (Method::PumpedAndCovered, pumped),
                (Method::PickUp, pick_up),
                (Method::CoverBrine, water),
                (Method::Rub, true),
                (Method::Ground, true),
            ];
            let choices: Vec<Method> = choices.iter().filter(|c| c.1).map(|c| c.0).collect();
            let offers = choices
                .iter()
                .map(|m| (m.key().to_owned(), Offer::Method { method: *m }));
            let asked = Asked::new("method".to_owned(), Question::Method, offers, answers);
            self.method = asked.chosen().and_then(|at| choices.get(at)).copied();
            self.questions.push(asked);
        }
        self.ask_take(answers);
    }

    /// How much of the brine goes in, by pump or by pick-up: as the text says, else as it is asked.
    fn ask_take(&mut self, answers: &Answers<'_>) {
        let Some(method) = self.method.filter(|m| m.takes()) else {
            return;
        };
        let fits = |f: &Fraction| recipe::take(method, Some(*f)).is_none();
        let mut said: Vec<Range> = self.lines.iter().filter_map(|l| l.line.take).collect();
        said.dedup();
        if let [one] = said.as_slice()
            && one.is_point()
        {
            self.take = Fraction::new(one.typical).ok().filter(fits);
        }
        if self.take.is_none() {
            let mut offers: Vec<Decimal> = said.iter().flat_map(|r| [r.low, r.high]).collect();
            offers.dedup();
            let offers = offers.into_iter().map(|p| format!("{} %", plain(p))).collect();
            let read = |text: &str| Fraction::read(text, Some("%")).ok().filter(fits);
            let (asked, given) = Asked::typed("take", Question::Take, offers, answers, read);
            self.questions.push(asked);
            self.take = given;
        }
    }

    /// The water of a brine, and what per cent are of.
    pub fn ask_water(&mut self, answers: &Answers<'_>) {
        let grams = self
            .items()
            .filter(|l| is_water(l) && l.base().is_none())
            .filter_map(|l| l.grams);

        self.water = grams.fold(None, |sum: Option<Range>, g| {
            Some(sum.map_or(Some(g), |s| s.plus(g)).unwrap_or(g))
        });
        let by_water = self.items().any(|l| l.base().is_some_and(|a| a.sort() == Sort::Volume));
        let brine = self.method.is_some_and(Method::has_brine) || by_water;
        if brine && self.water.is_none() && !self.items().any(is_water) {
            let (asked, given) = Asked::typed("water", Question::Water, Vec::new(), answers, weight);
            self.water = given.map(|m| Range::point(m.base()));
            self.questions.push(asked);
        }
        if brine
            && self
                .items()
                .any(|l| l.percent.is_some() && l.line.of.is_none() && !is_water(l))
        {
            let all = [("meat", Of::Meat), ("water", Of::Water), ("both", Of::Both)];
            let choices = all.into_iter().map(|(k, of)| (k.to_owned(), Offer::PercentOf { of }));
            let asked = Asked::new("of".to_owned(), Question::PercentOf, choices, answers);
            self.of = asked.chosen().and_then(|at| all.get(at)).map(|(_, of)| *of);
            self.questions.push(asked);
        } else {
            self.of = Some(Of::Meat);
        }
    }
}
