//! All lines together: for how much meat, by which method, the dose, and the recipe in proportions.

use super::amount::Amount;
use super::doubts::{Doubt, Said};
use super::line::{Line, Of, Taken};
use super::names::Names;
use super::steps::{self, Deed};
use super::weigh::{Weighed, hull, settled, weigh};
use super::words::{Sort, Word};
use super::{Answers, AskReading, Asked, LineFlag, NoRecipe, ReadLine, Reading, RowOf, Thing, Tongue};
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
    pub of: Option<Of>,
    /// How much of a brine goes in, where only a share does.
    pub take: Option<Fraction>,
    /// Steps that were read.
    pub steps: Vec<Step>,
    /// What of the steps stays as a remark.
    pub beside: Vec<String>,
    /// Every deed of the text.
    pub deeds: Vec<Deed>,
    /// What may be a cure and was not read as one.
    pub doubts: Vec<Doubt>,
    /// What was said of it.
    pub said: Said,
    /// All that is asked.
    pub questions: Vec<Asked>,
}

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
    for asked in all.lines.iter().flat_map(|l| &l.asks) {
        // Two lines of the same words are settled together.
        if !all.questions.contains(asked) {
            all.questions.push(asked.clone());
        }
    }
    let verdict = all
        .verdict(text, settings)
        .map(|v| if tongue == Tongue::English { v } else { v.foreign(text) });
    let open = all.questions.iter().any(|q| q.answer.is_none());
    let (recipe, bar) = match all.recipe(&ask.untitled) {
        _ if open => (None, Some(NoRecipe::Open)),
        Ok(recipe) => (Some(recipe), None),
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

/// True for the water of a brine.
pub fn is_water(line: &Weighed<'_>) -> bool {
    line.items.first().is_some_and(|i| i.key == "water")
}

/// True for what stands in the notes of the card.
pub fn is_beside(line: &Weighed<'_>, grams: Option<Range>) -> bool {
    match line.line.taken {
        Taken::Item => grams.is_none(),
        Taken::Taste | Taken::Unread | Taken::Remark => true,
        Taken::Step | Taken::Meat | Taken::Heading => false,
    }
}

impl All<'_> {
    /// The steps of the text, each read by itself and all kept in their order.
    fn read_steps(&mut self, names: &Names, units: System) {
        let mut all: Vec<Deed> = Vec::new();
        for line in self.lines.iter_mut().filter(|l| l.line.taken == Taken::Step) {
            let read = steps::deeds(&line.line.text, names, units, &all);
            line.deeds = read.iter().map(|d| d.fact(units)).collect();
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

    /// What is weighed.
    pub fn items(&self) -> impl Iterator<Item = &Weighed<'_>> {
        self.lines
            .iter()
            .filter(|l| l.line.taken == Taken::Item && !l.line.either)
    }

    /// Grams of a line for the meat: by its own base, its share, or as it was said.
    pub(super) fn grams(&self, line: &Weighed<'_>) -> Option<Range> {
        let of = |p: Decimal, b: Decimal| p.times(b)?.over(Decimal::ONE_HUNDRED);
        let share = |percent: Range, base: Range| {
            Some(Range::new(
                of(percent.low, base.low)?,
                of(percent.typical, base.typical)?,
                of(percent.high, base.high)?,
            ))
        };
        if let Some(aim) = line.aim {
            let strength = Self::agent(line)?.active();
            let nitrite = share(aim, self.meat?)?;
            return nitrite.map(|n| n.times(Decimal::ONE_HUNDRED)?.over(strength));
        }
        if let Some(percent) = line.percent {
            return share(percent, self.whole(line)?);
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

    /// What a per cent of this line is of: as the line says, else as the text or its answer does.
    fn whole(&self, line: &Weighed<'_>) -> Option<Range> {
        let meat = || self.meat;
        let both = || self.meat?.plus(self.water?);
        match (line.line.of, self.of) {
            (Some(Of::Salt), _) => {
                let mut salts = self
                    .items()
                    .filter(|l| l.items.first().is_some_and(|i| i.group == Group::Salt) && l.line.of != Some(Of::Salt));
                salts
                    .try_fold(Range::point(Decimal::ZERO), |sum, l| sum.plus(self.grams(l)?))
                    .filter(|sum| !sum.high.is_zero())
            }
            (Some(Of::Meat), _) | (None, Some(Of::Meat)) => meat(),
            (Some(Of::Water), _) | (None, Some(Of::Water)) => self.water,
            (Some(Of::Both), _) | (None, Some(Of::Both | Of::Salt)) => both(),
            (None, None) => {
                let (meat, both) = (meat()?, both()?);
                Some(Range::new(meat.low.min(self.water?.low), meat.typical, both.high))
            }
        }
    }

    pub(super) fn cures(&self) -> impl Iterator<Item = &Weighed<'_>> {
        let amounts = self
            .lines
            .iter()
            .filter(|l| matches!(l.line.taken, Taken::Item | Taken::Taste) && !l.line.either);
        amounts.filter(|l| l.items.iter().any(|i| i.group == Group::Cure))
    }

    /// The agent, when it is known which it is; one that is no cure has no strength.
    pub(super) fn agent(line: &Weighed<'_>) -> Option<Agent> {
        let item = settled(&line.items)?;
        let read = |text: &str| Decimal::from_str_exact(text).ok();
        if item.group != Group::Cure {
            return None;
        }
        let printed = line.line.strength.map(|s| s.typical);
        let printed = printed.or(line.printed.map(Fraction::base)).filter(|p| !p.is_zero());
        let own = |text: &str| {
            if text.is_empty() {
                Some(Decimal::ZERO)
            } else {
                read(text)
            }
        };
        let agent = match printed {
            // Beside a salt of nitrate a per cent is its own strength.
            Some(printed) if item.is_pure() && item.nitrite == "0" => Agent {
                nitrite: Decimal::ZERO,
                nitrate: printed.times(read(item.nitrate)?)?.over(Decimal::ONE_HUNDRED)?,
                water: Decimal::ZERO,
            },
            Some(printed) => Agent {
                nitrite: printed,
                nitrate: own(item.nitrate)?,
                water: Decimal::ZERO,
            },
            None => Agent {
                nitrite: read(item.nitrite)?,
                nitrate: own(item.nitrate)?,
                water: Decimal::ZERO,
            },
        };
        if item.is_pure() { agent.pure() } else { Some(agent) }
    }

    /// Share of green weight that goes in of the brine, as a proportion.
    pub(super) fn taken(&self) -> Option<Decimal> {
        self.take?.base().over(Decimal::ONE_HUNDRED)
    }

    /// True for what dissolves in a brine, the cure apart.
    fn dissolves(line: &Weighed<'_>) -> bool {
        let item = line.items.first().filter(|_| !line.line.apart);
        item.is_some_and(|i| i.group.dissolves() && i.group != Group::Cure)
    }

    /// Grams of all that dissolves, without the cure.
    pub(super) fn dissolved(&self) -> Option<Range> {
        self.items()
            .filter(|l| Self::dissolves(l))
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
                        dose::Unit::Tablespoon
                    } else {
                        dose::Unit::Teaspoon
                    }
                });
                let agent = Self::agent(l);
                Some(Portion {
                    // Empty where no amount is said.
                    said: amount.map(|_| l.line.measure.clone()).unwrap_or_default(),
                    agent: agent.filter(|_| amount.is_some()),
                    weight: match amount {
                        // What is written as a weight is weighed on this scale; a spoon is a range already.
                        Some(_) if spoon.is_none() => dose::summed(self.grams(l)?, step, 1)?,
                        Some(_) => self.grams(l)?,
                        None => Range::point(Decimal::ZERO),
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
                names: line.items.iter().map(|i| i.name).collect(),
            }),
            [] if weighed && read.meaning.is_some() => Some(Thing::Food { name: read.own.clone() }),
            [] if weighed => Some(Thing::Own { name: read.own.clone() }),
            [] => None,
        };
        let mut units = read.amount.iter().flat_map(|a| &a.parts);
        let by = units.find(|(_, u)| is_said(u)).map(|(_, unit)| unit.note);
        let mut flags = Vec::new();
        if !read.left.is_empty() && !matches!(read.taken, Taken::Step | Taken::Heading | Taken::Unread) {
            flags.push(LineFlag::Left {
                words: read.left.clone(),
            });
        }
        if read.unsaid {
            flags.push(LineFlag::AmountUnsaid);
        }
        flags.extend(line.note.clone());
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
            amount: read
                .amount
                .iter()
                .filter(|a| a.sort() != Sort::Other && (!a.is_guess() || line.large.is_some()))
                .flat_map(Amount::ends)
                .collect(),
            unit: read
                .amount
                .as_ref()
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
