//! The recipe that comes out, in proportions of green weight, and what it does not hold.

use super::all::{All, is_beside, is_water};
use super::facts::{Beside, NoRecipe, Taken};
use super::said::heads_for;
use super::weigh::{Weighed, settled};
use super::words::{Sort, front};
use crate::dose::Whole;
use crate::pantry::{self, Agent, Group, Ingredient, OWN};
use crate::quantity::exact::Exact;
use crate::quantity::{Fraction, Range};
use crate::recipe::{self, Cure, Do, Eaten, Holds, Method, Recipe, Share, Step};
use rust_decimal::Decimal;

/// The tag of a recipe that was read.
const TAG: &str = "RR";

/// Why a cure cannot be counted.
fn lacks(line: &Weighed<'_>) -> NoRecipe {
    let text = line.line.text.clone();
    match settled(&line.items).filter(|i| i.nitrite.is_empty() && line.line.amount.is_some()) {
        Some(item) => NoRecipe::StrengthUnknown {
            text,
            source: item.source,
        },
        None => NoRecipe::AmountUnsaid { text },
    }
}

/// The strength of a row of the pantry as it stands there.
fn own(item: &Ingredient) -> Agent {
    let read = |text: &str| Decimal::from_str_exact(text).unwrap_or_default();
    Agent {
        nitrite: read(item.nitrite),
        nitrate: read(item.nitrate),
        water: Decimal::ZERO,
    }
}

impl All<'_> {
    /// Per cent of the meat.
    fn share(&self, grams: Decimal) -> Option<Fraction> {
        let percent = grams.times(Decimal::ONE_HUNDRED)?.over(self.meat?.typical)?;
        Fraction::new(percent.half_away(4)).ok()
    }

    /// A glaze beside a brine is none of what the meat and the brine come to, and the water of a sausage is none of a brine:
    /// they stay as they were written.
    fn is_outside(&self, line: &Weighed<'_>) -> bool {
        if is_water(line) && line.line.taken == Taken::Item && !self.method.is_some_and(Method::has_brine) {
            return true;
        }
        let cure = line.items.iter().any(|i| i.group == Group::Cure);
        line.line.apart && !cure && line.line.taken == Taken::Item && self.method.is_some_and(Method::has_brine)
    }

    /// What the text calls itself: its first line, where that is a title and no word for what follows.
    fn title(&self) -> Option<String> {
        let first = self.lines.first().filter(|l| l.line.taken == Taken::Heading)?;
        let text = first.line.text.trim().trim_end_matches([':', '.', ',', ';', '!']);
        let own = (front(Sort::Heading, text).is_none() || heads_for(text)) && text.chars().any(char::is_alphabetic);
        (own && recipe::name(text).is_ok()).then(|| text.to_owned())
    }

    /// The recipe in proportions of green weight. `untitled` is what it is called where the text has no title.
    pub(super) fn recipe(&self, untitled: &str) -> Result<Recipe, NoRecipe> {
        let lost = || NoRecipe::TooFarApart;
        let called = if untitled.is_empty() { TAG } else { untitled };
        let method = self.method.ok_or_else(lost)?;
        let meat = self.meat.ok_or_else(lost)?;
        let mut recipe = Recipe {
            name: self.title().unwrap_or_else(|| called.to_owned()),
            tag: TAG.to_owned(),
            method,
            take: self.take.filter(|_| method.takes()),
            eaten: Eaten::Cooked,
            cures: Vec::new(),
            lines: Vec::new(),
            steps: self.steps.clone(),
            notes: String::new(),
            unread: self.unread(),
        };
        // The list takes the salt in the cure off the salt, so it is put on here.
        let mut salt = Decimal::ZERO;
        let mut pickle = Decimal::ZERO;
        if method.has_brine() {
            pickle = self.dissolved().ok_or_else(lost)?.typical;
            for line in self.cures() {
                pickle = self.grams(line).and_then(|g| pickle.plus(g.typical)).ok_or_else(lost)?;
            }
        }
        let whole = Whole {
            counted: method.counted(),
            green: Range::point(meat.typical),
            pickle: Range::point(pickle),
            take: self.taken().unwrap_or_default(),
            fo: None,
        };
        let whole = whole.base().ok_or_else(lost)?.typical;
        for line in self.cures() {
            let (Some(agent), Some(item), Some(grams)) = (Self::agent(line), settled(&line.items), self.grams(line))
            else {
                if settled(&line.items).is_some_and(|i| i.group != Group::Cure) {
                    continue;
                }
                return Err(lacks(line));
            };
            let printed = |percent: Decimal| Fraction::new(percent);
            salt = agent
                .salt()
                .and_then(|s| s.times(grams.typical))
                .and_then(|s| salt.plus(s))
                .ok_or_else(lost)?;
            let aim = grams
                .typical
                .times(agent.active())
                .and_then(|n| n.over(whole))
                .ok_or_else(lost)?;
            recipe.cures.push(Cure {
                item: if item.is_pure() && !agent.is_as_strong(own(item)) {
                    pantry::PACKET.to_owned()
                } else {
                    item.key.to_owned()
                },
                nitrite: printed(agent.nitrite)?,
                nitrate: printed(agent.nitrate)?,
                aim: printed(aim.half_away(5))?,
                made: None,
                follows: false,
            });
        }
        for (at, line) in self.lines.iter().enumerate() {
            if line.line.taken != Taken::Item {
                continue;
            }
            let item = line.items.first();
            if item.is_some_and(|i| i.group == Group::Cure) || self.is_outside(line) {
                continue;
            }
            let Some(mut grams) = self.grams(line).map(|g| g.typical) else {
                continue;
            };
            if item.is_some_and(|i| i.group == Group::Salt) {
                grams = grams.plus(std::mem::take(&mut salt)).ok_or_else(lost)?;
            }
            recipe.lines.push(recipe::Line {
                item: item.map_or(OWN, |i| i.key).to_owned(),
                name: line.line.own.chars().take(recipe::MOST_NAME).collect(),
                allergens: String::new(),
                agent: if item.is_none() { self.holds(at) } else { Holds::Unknown },
                share: Share::GreenWeight(self.share(grams).ok_or_else(lost)?),
            });
        }
        let beside = self
            .lines
            .iter()
            .filter(|l| is_beside(l, self.grams(l)) || self.is_outside(l));
        let unread = |l: &&str| !recipe.unread.iter().any(|u| u == l);
        let notes: Vec<&str> = beside.map(|l| l.line.text.as_str()).filter(unread).collect();
        let steps = self.beside.iter().map(String::as_str);
        let notes: Vec<&str> = notes.into_iter().chain(steps).collect();
        recipe.notes = notes.join("\n").chars().take(recipe::MOST_TEXT).collect();
        match recipe.problems().into_iter().next() {
            Some(problem) => Err(problem.into()),
            None if recipe.cures.is_empty() && recipe.lines.is_empty() => Err(NoRecipe::Nothing),
            None => Ok(recipe),
        }
    }

    /// What the recipe does not hold.
    pub(super) fn missing(&self) -> Vec<Beside> {
        let some = self.lines.iter().any(|l| is_beside(l, self.grams(l)));
        let spoons = |l: &Weighed<'_>| l.line.amount.as_ref().is_some_and(|a| a.sort() == Sort::Volume);
        let heat = |s: &Step| matches!(s.act, Do::Smoke | Do::Cook | Do::DryOut);
        let told = [
            (Beside::CureByWeight, self.cures().any(spoons)),
            (Beside::Notes, some),
            (Beside::NoHeat, !self.steps.is_empty() && !self.steps.iter().any(heat)),
        ];
        told.into_iter()
            .filter(|(_, holds)| *holds)
            .map(|(what, _)| what)
            .collect()
    }
}
