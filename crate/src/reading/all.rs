//! All lines of a text together, and what each of them weighs.

use super::asked::Asked;
use super::facts::{Of, Taken};
use super::steps::Deed;
use super::weigh::{Weighed, hull, settled};
use super::words::Sort;
use crate::pantry::{Agent, Group};
use crate::quantity::exact::Exact;
use crate::quantity::{Fraction, Range};
use crate::recipe::{Method, Step};
use rust_decimal::Decimal;

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

/// What was said of all that may be a cure.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Said {
    /// Nothing yet, or that nobody knows.
    #[default]
    Open,
    /// None of it names nitrite or nitrate.
    None,
    /// This one of them does, and nobody knows more of the others.
    Yes(usize),
}

/// One thing that may be a cure.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Doubt {
    /// Place of its line.
    pub line: usize,
    /// As it is called, or as it was written.
    pub name: String,
    /// Of the user's own, with an amount; else a text that was not understood.
    pub own: bool,
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
    pub(super) fn dissolves(line: &Weighed<'_>) -> bool {
        let item = line.items.first().filter(|_| !line.line.apart);
        item.is_some_and(|i| i.group.dissolves() && i.group != Group::Cure)
    }

    /// Grams of all that dissolves, without the cure.
    pub(super) fn dissolved(&self) -> Option<Range> {
        self.items()
            .filter(|l| Self::dissolves(l))
            .try_fold(Range::point(Decimal::ZERO), |sum, l| sum.plus(self.grams(l)?))
    }
}
