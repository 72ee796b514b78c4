//! The next step for each outcome, with its figures. A rescue never rests on soaking nitrite out or on more time.

use super::agent::{Agent, PPM};
use super::case::{Case, Measured, Put};
use super::judge::Finding;
use super::verdict::{Advice, Outcome};
use crate::quantity::exact::Exact;
use crate::quantity::{Mass, Range, plain};
use crate::recipe::Method;
use rust_decimal::{Decimal, dec};

fn advice(head: impl Into<String>, text: impl Into<String>) -> Advice {
    Advice {
        head: head.into(),
        text: text.into(),
    }
}

/// What to do next, the first first.
pub fn steps(case: &Case<'_>, finding: Finding) -> Vec<Advice> {
    match (&case.put, finding.outcome) {
        (Put::NoCure, _) => vec![advice(
            "Treat it as fresh meat.",
            "Nothing in this recipe holds nitrite or nitrate. Keep it cold, cook it through and eat it within days; do not smoke it cold.",
        )],
        (_, _) if !case.weighed => vec![advice(
            "Weigh the pieces.",
            "The list is an estimate until every size class has a weight.",
        )],
        (Put::Measured(m), Outcome::Over) => over(case, m, finding.sure),
        (Put::Measured(m), Outcome::TooLittle) => too_little(case, m),
        (Put::Measured(m), Outcome::CannotTell) if m.agent.is_none() => vec![
            advice(
                "Find the packet.",
                "The nitrite is printed on it in per cent. Without that figure nobody can say what is in the meat.",
            ),
            advice(
                "No packet, no blessing.",
                "Colour proves nothing: pink salt may be a cure of any strength or none. If the strength stays unknown, start again with fresh meat and a cure you know.",
            ),
            advice(
                "Keep it cold meanwhile.",
                "Covered, labelled as not to be eaten, at 2 to 4 °C (36 to 40 °F).",
            ),
        ],
        (_, Outcome::CannotTell) => vec![
            advice(
                "Aim at the limit or under.",
                format!(
                    "At {} ppm or less ingoing the rule is met whatever hangs off.",
                    case.profile.limit
                ),
            ),
            advice(
                "Or have it measured.",
                "For meat that hangs for months the rule counts what is left in the finished meat; that is a laboratory's figure.",
            ),
        ],
        (Put::Weighed(_), Outcome::Over) => vec![
            advice(
                "Do not weigh this out.",
                "Lower the aim in the recipe, or weigh on a finer scale. 150 ppm leaves room on both sides.",
            ),
            advice(
                "Check the pieces.",
                "A weight typed too small raises the dose. Weigh the lot together and type that.",
            ),
        ],
        (Put::Weighed(_), Outcome::TooLittle) => vec![
            advice(
                "Raise the aim or use a finer scale.",
                format!(
                    "All of the range should lie between {} and {} ppm. Aim at 150 ppm.",
                    case.profile.least, case.profile.limit
                ),
            ),
            advice(
                "Or keep it as fresh meat.",
                "Under the least the colour may stay grey and the cure gives no protection worth counting on: keep it cold and cook it through.",
            ),
        ],
        (Put::Measured(m), Outcome::InRange) => vec![
            advice(
                "Leave it as it is.",
                "Rub or stir it well, keep it cold, and do not add more cure.",
            ),
            advice(
                "Write it on the bag.",
                format!(
                    "“{}, {}”, with today's date.",
                    m.said,
                    if m.spoon.is_some() { "not weighed" } else { "weighed" }
                ),
            ),
        ],
        (Put::Weighed(_), Outcome::InRange) => match case.method {
            Method::Rub => vec![advice(
                "Weigh the cure first, then the rest into the same bowl.",
                "Mix it, rub all of it in, and keep what falls off with the meat.",
            )],
            Method::CoverBrine => vec![advice(
                "Stir until nothing lies on the bottom.",
                "Chill the brine to 4 °C (40 °F) before the meat goes in, and keep every piece under.",
            )],
        },
    }
}

/// Grams, to whole grams or kilograms, in the reader's units.
fn grams(case: &Case<'_>, value: Decimal) -> String {
    Mass::new(value).map(|m| m.show(case.units).text).unwrap_or_default()
}

/// Grams of an agent that bring `base` to `ppm`.
fn cure_at(agent: Agent, base: Decimal, ppm: u32) -> Option<Decimal> {
    Decimal::from(ppm).times(base)?.over(agent.active().times(PPM)?)
}

/// The base on which the heaviest reading of what went in is at the limit, and what that takes beside what is there.
pub fn more_meat(case: &Case<'_>, m: &Measured) -> Option<Decimal> {
    let agent = m.agent?;
    let at_limit = |percent: Decimal, limit: u32| m.weight.high.times(percent)?.times(PPM)?.over(Decimal::from(limit));
    let needed = at_limit(agent.nitrite, case.profile.limit)?.max(at_limit(agent.nitrate, case.profile.nitrate_limit)?);
    let extra = needed.less(case.base.low)?;
    // Rounded up to a weight that a kitchen scale shows.
    (extra > Decimal::ZERO).then(|| extra.up_to(dec!(10))).flatten()
}

fn over(case: &Case<'_>, m: &Measured, sure: bool) -> Vec<Advice> {
    let mut list = vec![advice(
        "Do not cook it or taste it.",
        "Heat does not take the cure out, and neither does soaking: nobody can see how much has gone in.",
    )];
    let at_limit = m
        .agent
        .and_then(|a| cure_at(a, case.base.low, case.profile.limit))
        .and_then(|g| g.down_to(dec!(0.1)));
    if let (Some(spoon), Some(most), false) = (m.spoon, at_limit, sure) {
        list.push(advice(
            format!("Weigh one level {} of the same cure.", spoon.name),
            format!(
                "{} g or less in all is in range under the limit. Type the weight here in place of the spoon.",
                plain(most)
            ),
        ));
    }
    if let Some((extra, then)) = more_meat(case, m).and_then(|extra| Some((extra, after(case, m, extra)?))) {
        list.push(advice(
            format!("Put in within the hour? Bring in {} more raw meat.", grams(case, extra)),
            format!(
                "Mix all of it again, so that even the heaviest reading stays at {} ppm: then {then} ppm. Weigh salt for the new meat, type the new weight here and have it judged again.",
                case.profile.limit
            ),
        ));
    }
    list.push(advice(
        "No more meat, or longer than an hour? Throw it out.",
        "Wrapped and shut in, away from children and dogs. Start again with fresh meat and weigh the cure.",
    ));
    list.push(advice(
        "Has someone eaten some?",
        "Blue lips, headache, faintness or short breath: ring the emergency number at once and say nitrite.",
    ));
    list
}

/// The range after more meat, as `low to high`.
fn after(case: &Case<'_>, m: &Measured, extra: Decimal) -> Option<String> {
    let base = case.base.map(|b| b.plus(extra))?;
    let ppm = super::judge::ppm(super::formula::ingoing(m.agent?, m.weight, base, Decimal::ZERO)?.nitrite);
    Some(format!("{} to {}", ppm.low, ppm.high))
}

/// Cure to add so that all of the range comes to lie between least and limit; `None` where the range is too wide.
pub fn more_cure(case: &Case<'_>, m: &Measured) -> Option<Decimal> {
    let agent = m.agent?;
    let half = case.step.over(Decimal::TWO)?;
    let from = cure_at(agent, case.base.high, case.profile.least)?
        .less(m.weight.low)?
        .plus(half)?;
    let to = cure_at(agent, case.base.low, case.profile.limit)?
        .less(m.weight.high)?
        .less(half)?;
    let middle = from.plus(to)?.over(Decimal::TWO)?.down_to(case.step)?;
    (middle >= from && middle <= to && middle > Decimal::ZERO).then_some(middle)
}

fn too_little(case: &Case<'_>, m: &Measured) -> Vec<Advice> {
    let mut list = Vec::new();
    match (more_cure(case, m), m.spoon) {
        (Some(add), _) => list.push(advice(
            format!("Add {} g of the same cure.", plain(add)),
            "Weighed, mixed with a spoonful of the salt so that it spreads, rubbed over all of it. Then the whole range lies between the least and the limit.",
        )),
        (None, Some(spoon)) => list.push(advice(
            format!("Weigh one level {} of the same cure.", spoon.name),
            "The spoon's range is too wide to say how much is missing. Type the weight here in place of the spoon, and the page says what to add.",
        )),
        (None, None) => list.push(advice(
            "Use a finer scale.",
            "On this scale's step no addition lands surely between the least and the limit.",
        )),
    }
    list.push(advice(
        "Or keep it as fresh meat.",
        "Cold, cooked through, eaten within days. Do not smoke it cold or hang it.",
    ));
    list
}

/// Said where a dose over the limit would be in range at a third: the slip of a tablespoon for a teaspoon.
pub fn slip(case: &Case<'_>, m: &Measured, nitrite: Range) -> Option<String> {
    let third = nitrite.map(|v| v.over(dec!(3)))?;
    let (least, limit) = (Decimal::from(case.profile.least), Decimal::from(case.profile.limit));
    let tablespoon = m.spoon.is_some_and(|s| s.name == "tablespoon");
    (tablespoon && third.low <= limit && third.high >= least)
        .then(|| "A third of it could be in range: was a tablespoon used where a teaspoon was meant?".to_owned())
}
