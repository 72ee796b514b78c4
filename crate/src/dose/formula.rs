//! Ingoing nitrite and nitrate, and the cure for an aim.
//!
//! Mince: ppm = cure × fraction × 10⁶ / green weight (FSIS Directive 7620.3, 1995, p. 15).
//! Dry rub: ppm = cure × fraction × 10⁶ / green weight (FSIS Directive 7620.3, 1995, p. 24).
//! Pumped: ppm = nitrite × pump × 10⁶ / pickle weight (the same, p. 19). Pick-up is reckoned as a pump is (before p. 22).
//! Cover brine left until equal: ppm = nitrite × 10⁶ / (green weight + pickle weight) (the same, p. 22), where the
//! pickle is water, salt, sugar, cure and all else dissolved.
//! Pumped, then covered: the two are summed (the same, p. 32 to 33, from memory). What is pumped comes out of the same
//! pickle, so the sum is the most it can be; all of it evened out is the least.

use crate::pantry::{Agent, PPM};
use crate::quantity::Range;
use crate::quantity::exact::Exact;
use crate::recipe::Counted;
use rust_decimal::{Decimal, dec};

/// Ingoing sodium nitrite and sodium nitrate, ppm.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ingoing {
    /// Sodium nitrite.
    pub nitrite: Range,
    /// Sodium nitrate.
    pub nitrate: Range,
}

/// Ingoing of one agent: `weight` grams of it, counted on `base` grams. The strength may itself be a range:
/// `spread` is the proportion by which it may be off either way, nought for a packet.
///
/// `None` on overflow or a base of nought.
///
/// ```
/// use cure_reckoner::dose::ingoing;
/// use cure_reckoner::pantry::Agent;
/// use cure_reckoner::quantity::Range;
/// use rust_decimal::dec;
/// // 2.5 g of a 6.25 % cure on 1000 g of meat: 2.5 × 0.0625 / 1000.
/// let cure = Agent { nitrite: dec!(6.25), nitrate: dec!(0), water: dec!(0) };
/// let found = ingoing(cure, Range::point(dec!(2.5)), Range::point(dec!(1000)), dec!(0)).unwrap();
/// assert_eq!(found.nitrite, Range::point(dec!(156.25)));
/// assert_eq!(found.nitrate, Range::point(dec!(0)));
/// ```
pub fn ingoing(agent: Agent, weight: Range, base: Range, spread: Decimal) -> Option<Ingoing> {
    let of = |percent: Decimal| {
        let grams = Range::new(
            weight.low.times(Decimal::ONE.less(spread)?)?,
            weight.typical,
            weight.high.times(Decimal::ONE.plus(spread)?)?,
        );
        // Multiply before dividing: the quotient is the only inexact step.
        grams.map(|g| g.times(percent)?.times(PPM))?.over(base)
    };
    Some(Ingoing {
        nitrite: of(agent.nitrite)?,
        nitrate: of(agent.nitrate)?,
    })
}

/// What a dose is counted over.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Whole {
    /// By which reckoning.
    pub counted: Counted,
    /// Green weight, grams.
    pub green: Range,
    /// Water and all that is dissolved, cure included, grams; nought without a brine.
    pub pickle: Range,
    /// Share of green weight that goes in, as a proportion; nought where the method has none.
    pub take: Decimal,
    /// How far diffusion comes by the time it is taken out, D t / (half thickness)²; nothing where that is no matter.
    pub fo: Option<Range>,
}

/// The sum of so many weighings: half a step of the scale for each either way, never under half of it, since the dose is
/// counted on it.
///
/// ```
/// use cure_reckoner::dose::summed;
/// use cure_reckoner::quantity::Range;
/// use rust_decimal::dec;
/// // Three weighings on a 1 g scale: 1.5 g either way.
/// let sum = summed(Range::point(dec!(1000)), dec!(1), 3).unwrap();
/// assert_eq!((sum.low, sum.high), (dec!(998.5), dec!(1001.5)));
/// ```
pub fn summed(grams: Range, step: Decimal, weighings: u32) -> Option<Range> {
    let off = step.over(Decimal::TWO)?.times(Decimal::from(weighings))?;
    Some(Range {
        low: grams.low.less(off)?.max(grams.low.over(Decimal::TWO)?),
        typical: grams.typical,
        high: grams.high.plus(off)?,
    })
}

impl Whole {
    /// Grams that all the cure is counted on, so that ppm = nitrite × 10⁶ / base.
    ///
    /// Where a share is taken up it is pickle / share: green weight falls out. `None` on overflow or a share of nought.
    ///
    /// ```
    /// use cure_reckoner::dose::Whole;
    /// use cure_reckoner::quantity::Range;
    /// use cure_reckoner::recipe::Counted;
    /// use rust_decimal::dec;
    /// let (green, pickle) = (Range::point(dec!(1000)), Range::point(dec!(500)));
    /// let whole = |counted| Whole { counted, green, pickle, take: dec!(0.1), fo: None };
    /// let base = |counted| whole(counted).base().unwrap().typical;
    /// assert_eq!(base(Counted::Green), dec!(1000));
    /// assert_eq!(base(Counted::GreenAndPickle), dec!(1500));
    /// assert_eq!(base(Counted::Taken), dec!(5000), "500 g of pickle at 10 % would do for 5 kg");
    /// ```
    pub fn base(&self) -> Option<Range> {
        let taken = || self.pickle.map(|g| g.over(self.take));
        let equal = || self.green.plus(self.pickle);
        match self.counted {
            Counted::Green => Some(self.green),
            Counted::GreenAndPickle => equal(),
            Counted::Taken => taken(),
            Counted::TakenAndCovered => {
                // 1 / base = 1 / taken + 1 / equal
                let both = |taken: Decimal, equal: Decimal| taken.times(equal)?.over(taken.plus(equal)?);
                let (taken, equal) = (taken()?, equal()?);
                Some(Range {
                    low: both(taken.low, equal.low)?,
                    typical: both(taken.typical, equal.typical)?,
                    high: equal.high,
                })
            }
            Counted::TakenOrEqual => {
                let (taken, equal) = (taken()?, equal()?);
                Some(Range {
                    low: taken.low.min(equal.low),
                    typical: equal.typical,
                    high: taken.high.max(equal.high),
                })
            }
            Counted::TakenOrDiffused => {
                let (taken, equal, share) = (taken()?, equal()?, self.diffused()?);
                // The larger dose is the smaller base.
                let smaller = |taken: Decimal, equal: Decimal, share: Decimal| match equal.over(share) {
                    Some(diffused) if !share.is_zero() => taken.min(diffused),
                    _ => taken,
                };
                Some(Range::new(
                    smaller(taken.low, equal.low, share.high),
                    smaller(taken.typical, equal.typical, share.typical),
                    smaller(taken.high, equal.high, share.low),
                ))
            }
        }
    }

    /// Of what it comes to when meat and brine are equal, the share that has diffused in when it is taken out.
    fn diffused(&self) -> Option<Range> {
        super::evens::diffused(self.fo?, self.pickle.over(self.green)?)
    }

    /// Grams that the low and the high end of the base grow by for each gram more of pickle; nought where that is
    /// less than reckoned with.
    pub(super) fn grows(&self) -> Option<(Decimal, Decimal)> {
        let one = Decimal::ONE;
        Some(match self.counted {
            Counted::Green => (Decimal::ZERO, Decimal::ZERO),
            Counted::GreenAndPickle => (one, one),
            Counted::Taken => (one.over(self.take)?, one.over(self.take)?),
            Counted::TakenAndCovered => (Decimal::ZERO, one),
            Counted::TakenOrEqual => (Decimal::ZERO, one.over(self.take)?),
            Counted::TakenOrDiffused => {
                // More brine is weaker, and what diffuses out of it a smaller share.
                let (taken, share) = (one.over(self.take)?, self.diffused()?.high);
                (taken.min(one.over(share).unwrap_or(taken)), taken)
            }
        })
    }
}

/// Grams of each agent so that each reaches its aim, exact before rounding.
///
/// `whole` holds all but the cure, with the salt of the recipe still whole. In a brine the cure's own weight counts
/// too, less the salt that it saves when `saves_salt`. Where the base grows by `g` with each gram of pickle,
/// base = fixed + g Σ c (1 − salt), so that base = fixed / (1 − g Σ r (1 − salt)) with r = aim / strength.
///
/// `None` where an aim cannot be reached with its agent.
///
/// ```
/// use cure_reckoner::dose::{Whole, cure_for};
/// use cure_reckoner::pantry::Agent;
/// use cure_reckoner::quantity::Range;
/// use cure_reckoner::recipe::Counted;
/// use rust_decimal::dec;
/// let (green, pickle) = (Range::point(dec!(1000)), Range::point(dec!(0)));
/// let rub = Whole { counted: Counted::Green, green, pickle, take: dec!(0), fo: None };
/// let cure = Agent { nitrite: dec!(6.25), nitrate: dec!(0), water: dec!(0) };
/// // 150 ppm are 0.015 %: 1000 × 0.015 / 6.25.
/// assert_eq!(cure_for(&rub, &[(cure, dec!(0.015))], true), Some(vec![dec!(2.4)]));
/// // No cure of 6.25 % brings meat to 7 %.
/// assert_eq!(cure_for(&rub, &[(cure, dec!(7))], true), None);
/// ```
pub fn cure_for(whole: &Whole, agents: &[(Agent, Decimal)], saves_salt: bool) -> Option<Vec<Decimal>> {
    let shares = agents
        .iter()
        .map(|(agent, aim)| aim.over(agent.active()))
        .collect::<Option<Vec<Decimal>>>()?;
    let mut weighs = Decimal::ZERO;
    for ((agent, _), share) in agents.iter().zip(&shares) {
        let own = if saves_salt {
            Decimal::ONE.less(agent.salt()?)?
        } else {
            Decimal::ONE
        };
        weighs = weighs.plus(share.times(own)?)?;
    }
    let base = if whole.counted == Counted::TakenAndCovered {
        curved(whole, weighs)?
    } else {
        let left = Decimal::ONE.less(weighs.times(whole.grows()?.0)?)?;
        if left <= Decimal::ZERO {
            return None;
        }
        whole.base()?.typical.over(left)?
    };
    shares
        .iter()
        .map(|share| if *share < Decimal::ONE { share.times(base) } else { None })
        .collect()
}

/// The base where it does not grow evenly: found by putting the cure in, again and again, until nothing moves.
fn curved(whole: &Whole, weighs: Decimal) -> Option<Decimal> {
    let mut base = whole.base()?.typical;
    for _ in 0..60 {
        let more = weighs.times(base)?;
        let pickle = Range::point(whole.pickle.typical.plus(more)?);
        let next = Whole { pickle, ..*whole }.base()?.typical;
        if next.less(base)?.abs() < dec!(0.000000001) {
            return Some(next);
        }
        base = next;
    }
    None
}
