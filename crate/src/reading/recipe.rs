//! All lines together: for how much meat, by which method, the dose, and the recipe in proportions.

use super::line::{Line, Taken};
use super::weigh::{Weighed, named, settled, weigh};
use super::words::{Sort, of};
use super::{Answers, Asked, ReadLine, Reading};
use crate::dose::{self, Case, Portion, Verdict, Whole};
use crate::pantry::{Agent, Belly, Group, OWN};
use crate::quantity::exact::Exact;
use crate::quantity::{Fraction, Mass, Range, System, plain};
use crate::recipe::{self, Cure, Eaten, Method, Recipe, Share};
use crate::weigh::Settings;
use rust_decimal::{Decimal, dec};

/// Work weight where a recipe is all in proportions, grams.
const KILOGRAM: Decimal = dec!(1000);

struct All<'a> {
    lines: Vec<Weighed<'a>>,
    meat: Option<Range>,
    water: Option<Range>,
    method: Option<Method>,
    /// What per cent are of in a brine: meat, water, or both.
    of: Option<usize>,
    questions: Vec<Asked>,
}

/// The reading of all lines.
pub fn reading(text: &str, lines: &[Line], answers: &Answers<'_>, settings: &Settings) -> Reading {
    let own: Vec<(String, Decimal)> = Vec::new();
    let lines: Vec<Weighed<'_>> = lines
        .iter()
        .enumerate()
        .map(|(at, l)| weigh(l, at, answers, &own))
        .collect();
    let mut all = All {
        meat: None,
        water: None,
        method: None,
        of: None,
        questions: Vec::new(),
        lines,
    };
    all.ask_meat(answers);
    all.ask_method(text, answers);
    all.ask_water(answers);
    for line in &all.lines {
        all.questions.extend(line.asks.iter().cloned());
    }
    let verdict = all.verdict(text, settings);
    let open = all.questions.iter().any(|q| q.answer.is_none());
    let (recipe, says) = match all.recipe() {
        _ if open => (
            None,
            "Answer what is asked; until then the grams stay ranges.".to_owned(),
        ),
        Ok(recipe) => (Some(recipe), all.missing()),
        Err(why) => (None, why),
    };
    let lines = all.lines.iter().map(|l| all.shown(l)).collect();
    Reading {
        lines,
        questions: all.questions,
        meat: all
            .meat
            .and_then(|m| Some(Mass::new(m.typical).ok()?.show(settings.units))),
        verdict,
        recipe,
        says,
    }
}

fn is_water(line: &Weighed<'_>) -> bool {
    line.items.first().is_some_and(|i| i.key == "water")
}

impl All<'_> {
    fn items(&self) -> impl Iterator<Item = &Weighed<'_>> {
        self.lines.iter().filter(|l| l.line.taken == Taken::Item)
    }

    /// The weight of the meat: as the text says, else as it is asked.
    fn ask_meat(&mut self, answers: &Answers<'_>) {
        let sum = |amount: &super::amount::Amount| amount.sum(None, None).filter(|_| amount.sort() == Sort::Mass);
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
            .filter_map(|l| l.line.amount.as_ref().and_then(sum))
            .try_fold(None, |all: Option<Range>, one| {
                Some(Some(match all {
                    Some(all) => all.plus(one)?,
                    None => one,
                }))
            })
            .flatten();
        // Bases that hang on one line are offered, not taken.
        let loose = self
            .lines
            .iter()
            .filter_map(|l| l.line.base.as_ref().filter(|(_, each)| !l.line.leads && !each));
        let loose: Vec<Range> = loose.filter_map(|(a, _)| sum(a)).collect();
        let needs = self.items().any(|l| l.grams.is_some() && l.line.base.is_none());
        let mut said: Vec<Range> = bases.into_iter().chain(weighed).collect();
        said.dedup();
        match said.as_slice() {
            [one] => self.meat = Some(*one),
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
                let ask = if said.is_empty() {
                    "For how much meat is this?"
                } else {
                    "More than one weight of meat stands here. For how much is this?"
                };
                let (asked, given) = Asked::weight("meat", ask, offers, answers);
                self.questions.push(asked);
                self.meat = given.map(|m| Range::point(m.base()));
            }
        }
    }

    /// How it goes on: by the words of the text and the water in it, else as it is asked.
    fn ask_method(&mut self, text: &str, answers: &Answers<'_>) {
        let lower = text.to_lowercase();
        let says = |key: &str| {
            let words = of(Sort::Brine).filter(|w| w.value == key).flat_map(|w| w.words);
            words.into_iter().any(|w| lower.contains(w))
        };
        let water = self.items().any(is_water);
        let pumped = says("");
        let found = match (says("cover_brine") && water, says("ground"), says("rub")) {
            _ if pumped => None,
            (true, false, false) => Some(Method::CoverBrine),
            (false, true, false) => Some(Method::Ground),
            (false, false, true) if !water => Some(Method::Rub),
            _ => None,
        };
        let cured = self.items().any(|l| l.items.iter().any(|i| i.group == Group::Cure));
        self.method = found.or((!cured && !water).then_some(Method::Rub));
        if self.method.is_none() {
            let mut choices = vec![("rub", "Rubbed on whole pieces"), ("ground", "Mixed into mince")];
            if water {
                choices.insert(0, ("cover_brine", "Under a brine until both are equal"));
            }
            let ask = if pumped {
                "How does it go on? A pump is not read from text: write that recipe by hand."
            } else {
                "How does it go on?"
            };
            let choices = choices.into_iter().map(|(k, w)| (k.to_owned(), w.to_owned()));
            let asked = Asked::new("method".to_owned(), ask, choices, answers);
            self.method = match asked.answer.as_deref() {
                Some("cover_brine") => Some(Method::CoverBrine),
                Some("ground") => Some(Method::Ground),
                Some("rub") => Some(Method::Rub),
                _ => None,
            };
            self.questions.push(asked);
        }
    }

    /// The water of a brine, and what per cent are of.
    fn ask_water(&mut self, answers: &Answers<'_>) {
        let whole = |l: &Weighed<'_>| l.line.base.as_ref().is_none_or(|(_, each)| l.line.leads && !each);
        let grams = self.items().filter(|l| is_water(l) && whole(l)).filter_map(|l| l.grams);

        self.water = grams.fold(None, |sum: Option<Range>, g| {
            Some(sum.map_or(Some(g), |s| s.plus(g)).unwrap_or(g))
        });
        let by_water = self
            .items()
            .any(|l| l.line.base.as_ref().is_some_and(|(a, _)| a.sort() == Sort::Volume));
        let brine = self.method == Some(Method::CoverBrine) || by_water;
        if brine && self.water.is_none() && !self.items().any(is_water) {
            let (asked, given) = Asked::weight("water", "How much water? A litre is 1000 g.", Vec::new(), answers);
            self.water = given.map(|m| Range::point(m.base()));
            self.questions.push(asked);
        }
        if brine && self.items().any(|l| l.percent.is_some() && !is_water(l)) {
            let words = ["Of the meat", "Of the water", "Of meat and water together"];
            let choices = ["meat", "water", "both"].into_iter().zip(words);
            let choices = choices.map(|(k, w)| (k.to_owned(), w.to_owned()));
            let asked = Asked::new("of".to_owned(), "Per cent of what?", choices, answers);
            self.of = asked.chosen();
            self.questions.push(asked);
        } else {
            self.of = Some(0);
        }
    }

    /// Grams of a line for the meat: by its own base, its share, or as it was said.
    fn grams(&self, line: &Weighed<'_>) -> Option<Range> {
        if let Some(percent) = line.percent {
            let meat = self.meat?;
            let base = match self.of {
                Some(0) => meat,
                Some(1) => self.water?,
                Some(_) => meat.plus(self.water?)?,
                None => {
                    let both = meat.plus(self.water?)?;
                    Range::new(meat.low.min(self.water?.low), meat.typical, both.high)
                }
            };
            let of = |p: Decimal, b: Decimal| p.times(b)?.over(Decimal::ONE_HUNDRED);
            return Some(Range::new(
                of(percent.low, base.low)?,
                of(percent.typical, base.typical)?,
                of(percent.high, base.high)?,
            ));
        }
        let grams = line.grams?;
        let Some((base, _)) = &line.line.base else {
            return Some(grams);
        };
        if line.line.leads && line.line.base.as_ref().is_some_and(|(_, each)| !each) {
            return Some(grams);
        }
        let per = base.sum(None, None)?;
        // A millilitre of water is a gram.
        let whole = if base.sort() == Sort::Mass {
            self.meat?
        } else {
            self.water?
        };
        let part = |g: Decimal, per: Decimal, whole: Decimal| g.times(whole)?.over(per);
        Some(Range::new(
            part(grams.low, per.high, whole.low)?,
            part(grams.typical, per.typical, whole.typical)?,
            part(grams.high, per.low, whole.high)?,
        ))
    }

    fn cures(&self) -> impl Iterator<Item = &Weighed<'_>> {
        let amounts = self
            .lines
            .iter()
            .filter(|l| matches!(l.line.taken, Taken::Item | Taken::Taste));
        amounts.filter(|l| l.items.iter().any(|i| i.group == Group::Cure))
    }

    /// The agent, when it is known which it is; one that is no cure has no strength.
    fn agent(line: &Weighed<'_>) -> Option<Agent> {
        let item = settled(&line.items)?;
        let read = |text: &str| Decimal::from_str_exact(text).ok();
        if item.group != Group::Cure {
            return None;
        }
        Some(Agent {
            nitrite: line
                .line
                .strength
                .map_or_else(|| read(item.nitrite), |s| Some(s.typical))?,
            nitrate: read(item.nitrate)?,
        })
    }

    /// Grams of all that dissolves, without the cure.
    fn dissolved(&self) -> Option<Range> {
        let dissolves = |l: &&Weighed<'_>| {
            l.items
                .first()
                .is_some_and(|i| i.group.dissolves() && i.group != Group::Cure)
        };
        self.items()
            .filter(dissolves)
            .try_fold(Range::point(Decimal::ZERO), |sum, l| sum.plus(self.grams(l)?))
    }

    fn verdict(&self, text: &str, settings: &Settings) -> Option<Verdict> {
        let (method, meat) = (self.method?, self.meat?);
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
                        "tablespoon"
                    } else {
                        "teaspoon"
                    }
                });
                let agent = Self::agent(l);
                Some(Portion {
                    said: l.line.text.chars().take(40).collect(),
                    agent: agent.filter(|_| amount.is_some()),
                    weight: match amount {
                        Some(_) => self.grams(l)?,
                        None => Range::point(Decimal::ZERO),
                    },
                    spread: Decimal::ZERO,
                    parts: None,
                    spoon,
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
            self.dissolved()?.plus(cure)?
        } else {
            Range::point(Decimal::ZERO)
        };
        let case = Case {
            rule: dose::rule(&settings.profile, method, belly)?,
            eaten: Eaten::Cooked,
            method,
            whole: Whole {
                counted: method.counted(),
                green: meat,
                pickle,
                take: Decimal::ZERO,
            },
            water: Decimal::ZERO,
            evens: None,
            weighed: true,
            step,
            units: settings.units,
            portions,
        };
        let has_cure = !case.portions.is_empty();
        dose::judge(
            &case,
            dose::cautions(&dose::keys_for(has_cure, method, Eaten::Cooked, &[])),
        )
        .ok()
    }

    /// Per cent of the meat.
    fn share(&self, grams: Decimal) -> Option<Fraction> {
        let percent = grams.times(Decimal::ONE_HUNDRED)?.over(self.meat?.typical)?;
        Fraction::new(percent.half_away(4)).ok()
    }

    /// The recipe in proportions of green weight.
    fn recipe(&self) -> Result<Recipe, String> {
        let lost = || "These amounts are too far apart to reckon with. Check each of them.".to_owned();
        let method = self.method.ok_or_else(lost)?;
        let meat = self.meat.ok_or_else(lost)?;
        let mut recipe = Recipe {
            name: "Recipe as read".to_owned(),
            tag: "RR".to_owned(),
            method,
            take: None,
            eaten: Eaten::Cooked,
            cures: Vec::new(),
            lines: Vec::new(),
            steps: Vec::new(),
            notes: String::new(),
        };
        // The list takes the salt in the cure off the salt, so it is put on here.
        let mut salt = Decimal::ZERO;
        let mut whole = meat.typical;
        if method.has_brine() {
            whole = self.dissolved().and_then(|d| whole.plus(d.typical)).ok_or_else(lost)?;
            for line in self.cures() {
                whole = self.grams(line).and_then(|g| whole.plus(g.typical)).ok_or_else(lost)?;
            }
        }
        for line in self.cures() {
            let (Some(agent), Some(item), Some(grams)) = (Self::agent(line), settled(&line.items), self.grams(line))
            else {
                if settled(&line.items).is_some_and(|i| i.group != Group::Cure) {
                    continue;
                }
                return Err(format!(
                    "How much of “{}” is not said. Write it into the text above.",
                    line.line.text
                ));
            };
            let printed = |percent: Decimal| Fraction::new(percent).map_err(|p| p.message);
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
                item: item.key.to_owned(),
                nitrite: printed(agent.nitrite)?,
                nitrate: printed(agent.nitrate)?,
                aim: printed(aim.half_away(5))?,
            });
        }
        for line in self.items() {
            let item = line.items.first();
            if item.is_some_and(|i| i.group == Group::Cure) {
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
                share: Share::GreenWeight(self.share(grams).ok_or_else(lost)?),
            });
        }
        let beside = self.lines.iter().filter(|l| match l.line.taken {
            Taken::Item => self.grams(l).is_none(),
            Taken::Taste | Taken::Step | Taken::Unread => true,
            Taken::Meat | Taken::Heading => false,
        });
        let notes: Vec<&str> = beside.map(|l| l.line.text.as_str()).collect();
        recipe.notes = notes.join("\n").chars().take(recipe::MOST_TEXT).collect();
        match recipe.problems().into_iter().next() {
            Some(problem) => Err(problem.message),
            None if recipe.cures.is_empty() && recipe.lines.is_empty() => {
                Err("Nothing here can be weighed.".to_owned())
            }
            None => Ok(recipe),
        }
    }

    /// What the recipe does not hold.
    fn missing(&self) -> String {
        let some = self.lines.iter().any(|l| match l.line.taken {
            Taken::Item => self.grams(l).is_none(),
            Taken::Taste | Taken::Step | Taken::Unread => true,
            Taken::Meat | Taken::Heading => false,
        });
        if some {
            "What is not weighed stands in the notes of the card, as it was written.".to_owned()
        } else {
            String::new()
        }
    }

    /// A line for reading.
    fn shown(&self, line: &Weighed<'_>) -> ReadLine {
        let read = line.line;
        let grams = self.grams(line).or(line.grams).filter(|_| read.taken == Taken::Item);
        let name = match (line.items.as_slice(), read.taken) {
            ([one], _) => named(one),
            ([first, .., last], _) => format!("{} to {}: not settled", first.name, last.name),
            ([], Taken::Item) => format!("{}, not in the pantry", read.own),
            ([], Taken::Meat) => "The meat".to_owned(),
            ([], Taken::Step) => "A step".to_owned(),
            ([], Taken::Heading) => "A heading".to_owned(),
            ([], _) => "Not read".to_owned(),
        };
        let says = match read.taken {
            Taken::Item | Taken::Meat | Taken::Heading => name,
            Taken::Taste => format!("{name}: no amount"),
            Taken::Step => "A step: kept as a note".to_owned(),
            Taken::Unread => "Not read: kept as a note".to_owned(),
        };
        let mut flags = Vec::new();
        if !read.left.is_empty() && !matches!(read.taken, Taken::Step | Taken::Heading | Taken::Unread) {
            flags.push(format!("Not understood: {}.", read.left));
        }
        flags.extend((!line.note.is_empty()).then(|| line.note.clone()));
        let step = |g: Decimal| plain(g.half_away(if g < dec!(10) { 2 } else { 1 }));
        ReadLine {
            text: read.text.clone(),
            taken: match read.taken {
                Taken::Item => "item",
                Taken::Taste => "taste",
                Taken::Meat => "meat",
                Taken::Step => "step",
                Taken::Heading => "heading",
                Taken::Unread => "unread",
            },
            item: settled(&line.items).map_or("", |i| i.key),
            says,
            grams: grams
                .map(|g| [g.low, g.typical, g.high].map(step).to_vec())
                .unwrap_or_default(),
            flag: flags.join(" "),
        }
    }
}
