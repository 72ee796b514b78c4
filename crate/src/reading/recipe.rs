//! All lines together: for how much meat, by which method, the dose, and the recipe in proportions.

use super::line::{Line, Taken};
use super::names::Names;
use super::steps::{self, Came};
use super::weigh::{Weighed, hull, named, settled, weigh};
use super::words::{Sort, Word};
use super::{Answers, Asked, ReadLine, Reading};
use crate::dose::{self, Case, Evens, Portion, Verdict, Whole};
use crate::pantry::{Agent, Belly, Group};
use crate::quantity::exact::Exact;
use crate::quantity::{Fraction, Mass, Range, System, plain};
use crate::recipe::{self, Do, Eaten, Method, Step};
use crate::weigh::Settings;
use rust_decimal::{Decimal, dec};

/// All lines, with what the whole text says or was answered.
pub struct All<'a> {
    /// Every clause.
    pub lines: Vec<Weighed<'a>>,
    /// Its weight, grams.
    pub meat: Option<Range>,
    /// Water of a brine, grams.
    pub water: Option<Range>,
    /// How it goes on.
    pub method: Option<Method>,
    /// What per cent are of in a brine: meat, water, or both.
    pub of: Option<usize>,
    /// How much of a brine goes in, where only a share does.
    pub take: Option<Fraction>,
    /// Steps that were read.
    pub steps: Vec<Step>,
    /// All that is asked.
    pub questions: Vec<Asked>,
}

/// The reading of all lines.
pub fn reading(text: &str, lines: &[Line], names: &Names, answers: &Answers<'_>, settings: &Settings) -> Reading {
    let own = &settings.spoons;
    let lines: Vec<Weighed<'_>> = lines.iter().map(|l| weigh(l, answers, own)).collect();
    let mut all = All {
        meat: None,
        water: None,
        method: None,
        of: None,
        take: None,
        steps: Vec::new(),
        questions: Vec::new(),
        lines,
    };
    all.read_steps(names, settings.units);
    all.ask_meat(answers);
    all.ask_method(text, answers);
    all.ask_water(answers);
    for asked in all.lines.iter().flat_map(|l| &l.asks) {
        // Two lines of the same words are settled together.
        if !all.questions.contains(asked) {
            all.questions.push(asked.clone());
        }
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

/// True for a measure of which there are several, where one is meant.
fn is_said(unit: &Word) -> bool {
    unit.sort == Sort::Volume && !unit.note.is_empty() && !unit.note.contains('|')
}

/// True for the water of a brine.
pub fn is_water(line: &Weighed<'_>) -> bool {
    line.items.first().is_some_and(|i| i.key == "water")
}

/// True for what stands in the notes of the card.
pub fn is_beside(line: &Weighed<'_>, grams: Option<Range>) -> bool {
    match line.line.taken {
        Taken::Item => grams.is_none(),
        Taken::Step => line.acts.is_empty(),
        Taken::Taste | Taken::Unread => true,
        Taken::Meat | Taken::Heading => false,
    }
}

impl All<'_> {
    /// The steps of the text, where they make a plan: none is left out, and a cure has its time.
    fn read_steps(&mut self, names: &Names, units: System) {
        let mut steps: Vec<Step> = Vec::new();
        let mut acts: Vec<String> = Vec::new();
        for line in &self.lines {
            let from = steps.len();
            let came = match line.line.taken {
                Taken::Step => steps::add(&line.line.text, names, &mut steps),
                _ => Came::Part,
            };
            if came == Came::Hole {
                return;
            }
            let words = |s: &Step| {
                let lasts = s.lasts.map(|l| format!(", {}", l.show(units).text));
                format!("{}{}", recipe::head(s.act), lasts.unwrap_or_default())
            };
            let said: Vec<String> = steps.get(from..).unwrap_or_default().iter().map(words).collect();
            acts.push(if came == Came::Whole {
                said.join("; ")
            } else {
                String::new()
            });
        }
        let cured = self.cures().next().is_some();
        let kept = steps.first().is_some_and(|s| s.act == Do::Cure);
        if steps.len() <= recipe::MOST_STEPS && (kept || !cured) {
            for (line, acts) in self.lines.iter_mut().zip(acts) {
                line.acts = acts;
            }
            self.steps = steps;
        }
    }

    /// What is weighed.
    pub fn items(&self) -> impl Iterator<Item = &Weighed<'_>> {
        self.lines.iter().filter(|l| l.line.taken == Taken::Item)
    }

    /// Grams of a line for the meat: by its own base, its share, or as it was said.
    pub(super) fn grams(&self, line: &Weighed<'_>) -> Option<Range> {
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
        if line.base().is_none() {
            return Some(grams);
        }
        let (per, sort, open) = line.per()?;
        // A millilitre of water is a gram.
        let whole = if sort == Sort::Mass { self.meat? } else { self.water? };
        let part = |g: Decimal, per: Decimal, whole: Decimal| g.times(whole)?.over(per);
        let scaled = Range::new(
            part(grams.low, per.high, whole.low)?,
            part(grams.typical, per.typical, whole.typical)?,
            part(grams.high, per.low, whole.high)?,
        );
        Some(if open { hull(scaled, grams) } else { scaled })
    }

    pub(super) fn cures(&self) -> impl Iterator<Item = &Weighed<'_>> {
        let amounts = self
            .lines
            .iter()
            .filter(|l| matches!(l.line.taken, Taken::Item | Taken::Taste));
        amounts.filter(|l| l.items.iter().any(|i| i.group == Group::Cure))
    }

    /// The agent, when it is known which it is; one that is no cure has no strength.
    pub(super) fn agent(line: &Weighed<'_>) -> Option<Agent> {
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
            water: Decimal::ZERO,
        })
    }

    /// Share of green weight that goes in of the brine, as a proportion.
    pub(super) fn taken(&self) -> Option<Decimal> {
        self.take?.base().over(Decimal::ONE_HUNDRED)
    }

    /// Grams of all that dissolves, without the cure.
    pub(super) fn dissolved(&self) -> Option<Range> {
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
                        "tablespoon"
                    } else {
                        "teaspoon"
                    }
                });
                let agent = Self::agent(l);
                Some(Portion {
                    said: if amount.is_some() {
                        l.line.measure.clone()
                    } else {
                        "An amount that is not said".to_owned()
                    },
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
                take,
            },
            water: self.water.map_or(Decimal::ZERO, |w| w.typical),
            // The text says nothing of how thick the pieces are.
            evens: (method == Method::PickUp).then_some(Evens::Unknown),
            weighed: true,
            step,
            units: settings.units,
            portions,
        };
        let case = case.settled();
        let has_cure = !case.portions.is_empty();
        dose::judge(
            &case,
            dose::cautions(&dose::keys_for(has_cure, method, Eaten::Cooked, &[])),
        )
        .ok()
    }

    /// A line for reading.
    fn shown(&self, line: &Weighed<'_>) -> ReadLine {
        let read = line.line;
        let grams = self.grams(line).or(line.grams).filter(|_| read.taken == Taken::Item);
        let name = match (line.items.as_slice(), read.taken) {
            ([one], _) => named(one),
            ([_, _, ..], _) => {
                let names: Vec<&str> = line.items.iter().map(|i| i.name).collect();
                format!("Not settled: {}", names.join("; "))
            }
            ([], Taken::Item) => format!("{}, not in the pantry", read.own),
            ([], Taken::Meat) => "The meat".to_owned(),
            ([], Taken::Step) => "A step".to_owned(),
            ([], Taken::Heading) => "A heading".to_owned(),
            ([], _) => "Not read".to_owned(),
        };
        let says = match read.taken {
            Taken::Item if read.each => format!("{name}, each {}", read.measure),
            Taken::Item => match read.amount.iter().flat_map(|a| &a.parts).find(|(_, u)| is_said(u)) {
                Some((_, unit)) => format!("{name}, by the {}", unit.note),
                None => name,
            },
            Taken::Meat | Taken::Heading => name,
            Taken::Taste => format!("{name}: no amount"),
            Taken::Step if line.acts.is_empty() => "A step: kept as a note".to_owned(),
            Taken::Step => format!("On the card: {}", line.acts),
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
