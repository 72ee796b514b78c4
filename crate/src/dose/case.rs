//! What is to be judged: every portion of cure, weighed by the list or put in by another measure.

use super::evens::Evens;
use super::formula::{Ingoing, Whole, ingoing};
use super::ground::Ground;
use super::judge::{Finding, find, undecided};
use super::limits::Rule;
use super::next::SpoonKind;
use super::outcome::Outcome;
use super::remark::{CureAs, Measured, VerdictWord};
use super::spoons::Unit;
use crate::pantry::{self, Agent};
use crate::quantity::exact::Exact;
use crate::quantity::{Range, System, fixed, plain};
use crate::recipe::{Counted, Eaten, Method};
use rust_decimal::Decimal;

/// One portion of cure.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Portion {
    /// As it is said: `3.5 g`, `1 tbsp`; empty where no amount is.
    pub said: String,
    /// Its strength; nothing when not known.
    pub agent: Option<Agent>,
    /// Grams of it.
    pub weight: Range,
    /// Proportion by which its strength may be off: nought for a packet, more for a premix.
    pub spread: Decimal,
    /// How it was thinned; nothing for what comes out of its bag.
    pub parts: Option<Parts>,
    /// The unit it was typed in.
    pub unit: Unit,
    /// The step of the scale that weighed it, grams.
    pub step: Decimal,
    /// True where it is on the meat already; false where the list only asks for it.
    pub done: bool,
}

/// A cure that was thinned so that a coarse scale can weigh it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Parts {
    /// One part of it is cure in so many.
    pub one_in: u32,
    /// Filled up with water, not with salt.
    pub in_water: bool,
}

impl Portion {
    /// The spoon to weigh, where it was measured by volume.
    pub(super) const fn spoon(&self) -> Option<SpoonKind> {
        self.unit.spoon()
    }

    /// What was measured.
    pub(super) fn measured_as(&self) -> CureAs {
        match self.parts {
            None => CureAs::Cure,
            Some(parts) if parts.in_water => CureAs::Stock,
            Some(_) => CureAs::Premix,
        }
    }

    /// How it is told.
    ///
    /// ```
    /// use cure_reckoner::dose::{Kit, measured};
    /// let portion = measured("2.5 g", None, Kit::PLAIN).unwrap();
    /// assert_eq!(portion.told().said, "2.5 g");
    /// assert_eq!(portion.told().grams, None, "a weight is told once");
    /// ```
    pub fn told(&self) -> Measured {
        let Range { low, typical, high } = self.weight;
        Measured {
            said: self.said.clone(),
            of: self.measured_as(),
            neat: self.neat().map(plain),
            grams: self.spoon().map(|_| [low, typical, high].map(|g| fixed(g, 1))),
        }
    }

    /// Grams of cure in it, where it was thinned.
    fn neat(&self) -> Option<Decimal> {
        let parts = Decimal::from(self.parts?.one_in);
        self.weight.typical.over(parts).map(|grams| grams.half_away(2))
    }
}

/// All that a verdict needs.
#[derive(Clone, Debug)]
pub struct Case<'a> {
    /// The rule of the jurisdiction for this method and cut.
    pub rule: &'a Rule,
    /// Cooked, or hung for months.
    pub eaten: Eaten,
    /// How it is put on.
    pub method: Method,
    /// What the dose is counted over.
    pub whole: Whole,
    /// Water of a brine, grams; nought without one.
    pub water: Decimal,
    /// For a pick-up: whether the pieces even out with the brine all the same.
    pub evens: Option<Evens>,
    /// Sodium ascorbate or erythorbate that goes in with it, ppm; nothing where there is none or it is not known.
    pub ascorbate: Option<Range>,
    /// False while some pieces have no weight.
    pub weighed: bool,
    /// What goes in; none for a recipe without cure.
    pub portions: Vec<Portion>,
    /// The scale's step, grams.
    pub step: Decimal,
    /// Units for reading.
    pub units: System,
}

impl Case<'_> {
    /// What goes in, in ppm; `None` when a strength is not known, or on overflow.
    pub(super) fn ingoing(&self) -> Option<Ingoing> {
        let nought = Range::point(Decimal::ZERO);
        let base = self.whole.base()?;
        self.portions.iter().try_fold(
            Ingoing {
                nitrite: nought,
                nitrate: nought,
            },
            |sum, p| {
                let one = ingoing(p.agent?, p.weight, base, p.spread)?;
                Some(Ingoing {
                    nitrite: sum.nitrite.plus(one.nitrite)?,
                    nitrate: sum.nitrate.plus(one.nitrate)?,
                })
            },
        )
    }

    /// A pick-up counted as what it can come to: left in until equal, pieces that are thin enough are a cover brine;
    /// where that is not known it may be either; and of thick ones the larger of the pick-up and what diffuses in.
    pub(crate) fn settled(self) -> Self {
        match self.evens {
            Some(Evens::Thin(_)) => self.by(Counted::GreenAndPickle),
            Some(Evens::Unknown) => self.by(Counted::TakenOrEqual),
            Some(Evens::Thick { fo, .. }) => {
                let mut other = self.by(Counted::TakenOrDiffused);
                other.whole.fo = Some(fo);
                other
            }
            None => self,
        }
    }

    /// The same counted by another reckoning.
    pub(super) fn by(&self, counted: Counted) -> Self {
        let mut other = self.clone();
        other.whole.counted = counted;
        other
    }

    /// True where pick-up was asked for and is no basis, or may be none.
    pub(super) fn is_refused(&self) -> bool {
        matches!(self.evens, Some(Evens::Thin(_) | Evens::Unknown))
    }

    /// The finding on this case. Hanging for months matters for a dry rub alone.
    pub(super) fn find(&self, ingoing: Ingoing) -> Finding {
        let eaten = if self.method == Method::Rub {
            self.eaten
        } else {
            Eaten::Cooked
        };
        let found = find(ingoing, self.rule, eaten);
        if found.outcome == Outcome::InRange && self.lacks_ascorbate() {
            return undecided(VerdictWord::NeedsAscorbate, Ground::NeedsAccelerator);
        }
        found
    }

    /// True where the rule wants ascorbate with it and there is less, or none that is known of.
    pub(super) fn lacks_ascorbate(&self) -> bool {
        let wanted = self.rule.ascorbate.filter(|_| !self.portions.is_empty());
        wanted.is_some_and(|wanted| self.ascorbate.is_none_or(|a| a.high < wanted))
    }

    /// The strongest print, per cent nitrite.
    pub(super) fn strongest(&self) -> Option<Decimal> {
        self.portions.iter().filter_map(|p| p.agent).map(|a| a.nitrite).max()
    }

    /// True where a strength is that of the pure salt: a slip, or meat that can kill.
    pub(super) fn is_lethal(&self) -> bool {
        self.strongest().is_some_and(pantry::is_too_strong)
    }

    /// True where more can have diffused in than the pick-up says.
    pub(super) fn is_diffused(&self) -> bool {
        let high = |counted| self.by(counted).ingoing().map(|i| i.nitrite.high);
        self.whole.counted == Counted::TakenOrDiffused
            && high(Counted::TakenOrDiffused)
                .zip(high(Counted::Taken))
                .is_some_and(|(a, b)| a > b)
    }

    /// At the surface it is as strong as the brine, for what is taken out before it evens out.
    pub(super) fn surface(&self) -> Option<Range> {
        matches!(self.evens?, Evens::Thick { .. }).then_some(())?;
        let mut there = self.by(Counted::Taken);
        there.whole.take = Decimal::ONE;
        Some(there.ingoing()?.nitrite)
    }

    /// True where cure is on the meat already.
    pub(super) fn is_done(&self) -> bool {
        self.portions.iter().any(|p| p.done)
    }

    /// True where the strength of a portion is not known.
    pub(super) fn is_unknown(&self) -> bool {
        self.portions.iter().any(|p| p.agent.is_none())
    }

    /// True where something went in as cure that holds neither nitrite nor nitrate.
    pub(super) fn is_no_cure(&self) -> bool {
        !self.portions.is_empty()
            && self
                .portions
                .iter()
                .all(|p| p.agent.is_some_and(|a| a.active().is_zero()))
    }

    /// The spoon that was used, if one was.
    pub(super) fn spoon(&self) -> Option<SpoonKind> {
        self.portions.iter().find_map(Portion::spoon)
    }

    /// The same with so many grams more meat, weighed on the scale.
    pub(super) fn with_meat(&self, grams: Decimal) -> Option<Self> {
        let mut more = self.clone();
        more.whole.green = self.whole.green.plus(Range::weighed(grams, self.step)?)?;
        Some(more)
    }

    /// The same with so many grams more water in its brine, weighed on the scale.
    pub(super) fn with_water(&self, grams: Decimal) -> Option<Self> {
        let mut more = self.clone();
        more.whole.pickle = self.whole.pickle.plus(Range::weighed(grams, self.step)?)?;
        more.water = self.water.plus(grams)?;
        Some(more)
    }

    /// The same before any cure went in.
    pub(super) fn without_cure(&self) -> Option<Self> {
        let mut bare = Self {
            portions: Vec::new(),
            ..self.clone()
        };
        if self.method.has_brine() {
            let cure = self
                .portions
                .iter()
                .try_fold(Decimal::ZERO, |sum, p| sum.plus(p.weight.typical))?;
            bare.whole.pickle = self.whole.pickle.map(|b| b.less(cure))?;
        }
        Some(bare)
    }

    /// The same with so many grams more of an agent, weighed on the scale.
    pub(super) fn with_cure(&self, agent: Agent, grams: Decimal) -> Option<Self> {
        let mut more = self.clone();
        let weight = Range::weighed(grams, self.step)?;
        let portion = Portion {
            said: String::new(),
            agent: Some(agent),
            weight,
            spread: Decimal::ZERO,
            parts: None,
            unit: Unit::Gram,
            step: self.step,
            done: true,
        };
        more.portions.push(portion);
        if self.method.has_brine() {
            more.whole.pickle = self.whole.pickle.map(|b| b.plus(grams))?;
        }
        Some(more)
    }
}
