//! Ingoing nitrite and nitrate, and the cure for an aim.
//!
//! Mince: ppm = cure × fraction × 10⁶ / green weight (FSIS Directive 7620.3, 1995, p. 15).
//! Dry rub: ppm = cure × fraction × 10⁶ / green weight (FSIS Directive 7620.3, 1995, p. 24).
//! Cover brine left until equal: ppm = nitrite × 10⁶ / (green weight + pickle weight) (the same, p. 22), where the
//! pickle is water, salt, sugar, cure and all else dissolved.

use crate::pantry::{Agent, PPM};
use crate::quantity::Range;
use crate::quantity::exact::Exact;
use crate::recipe::{Counted, Method};
use rust_decimal::Decimal;

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

/// What the ppm are counted on: green weight for a rub or mince, green weight and pickle for a cover brine. Grams.
pub fn base(method: Method, green: Range, pickle: Decimal) -> Option<Range> {
    match method.counted() {
        Counted::Green => Some(green),
        Counted::GreenAndPickle => green.plus(Range::point(pickle)),
    }
}

/// Grams of each agent so that each reaches its aim, exact before rounding.
///
/// `fixed` is the weight of all but the cure that the aim is counted on, with the salt of the recipe still whole.
/// In a brine the cure's own weight counts too, less the salt that it saves when `saves_salt`:
/// base = fixed + Σ c (1 − salt), so that base = fixed / (1 − Σ r (1 − salt)) with r = aim / strength.
///
/// `None` where an aim cannot be reached with its agent.
pub fn cure_for(method: Method, fixed: Decimal, agents: &[(Agent, Decimal)], saves_salt: bool) -> Option<Vec<Decimal>> {
    let shares = agents
        .iter()
        .map(|(agent, aim)| aim.over(agent.active()))
        .collect::<Option<Vec<Decimal>>>()?;
    let base = match method.counted() {
        Counted::Green => fixed,
        Counted::GreenAndPickle => {
            let mut left = Decimal::ONE;
            for ((agent, _), share) in agents.iter().zip(&shares) {
                let weighs = if saves_salt {
                    Decimal::ONE.less(agent.salt()?)?
                } else {
                    Decimal::ONE
                };
                left = left.less(share.times(weighs)?)?;
            }
            if left <= Decimal::ZERO {
                return None;
            }
            fixed.over(left)?
        }
    };
    shares
        .iter()
        .map(|share| if *share < Decimal::ONE { share.times(base) } else { None })
        .collect()
}
