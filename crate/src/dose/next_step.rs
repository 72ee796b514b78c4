//! The next step for each outcome, with its figures. A rescue never rests on soaking nitrite out or on more time.

use super::case::{Case, Portion};
use super::ground::Ground;
use super::judge::{Finding, ppm};
use super::rescue::{agent, in_range, more_cure, more_meat, more_water};
use super::verdict::{Advice, Outcome};
use crate::pantry::Agent;
use crate::quantity::{Mass, plain};
use crate::recipe::Method;
use rust_decimal::{Decimal, dec};

fn advice(head: impl Into<String>, text: impl Into<String>) -> Advice {
    Advice {
        head: head.into(),
        text: text.into(),
    }
}

/// What to do next, the first first. `aim`: one for the recipe that does, where there is one.
pub fn steps(case: &Case<'_>, finding: Finding, aim: Option<Decimal>) -> Vec<Advice> {
    if case.portions.is_empty() || case.is_no_cure() {
        return no_cure(case);
    }
    if case.is_unknown() {
        return unknown();
    }
    if case.is_lethal() && case.is_done() {
        return lethal();
    }
    if !case.weighed {
        return vec![advice(
            "Weigh the pieces.",
            "The list is an estimate until every size class has a weight.",
        )];
    }
    let words = case.method.words();
    match (case.is_done(), finding.outcome) {
        (done, Outcome::CannotTell) if finding.ground == Ground::NeedsAccelerator => ascorbate(case, done),
        (true, Outcome::Over) => over(case, finding.sure),
        (true, Outcome::TooLittle) => too_little(case),
        (true, Outcome::InRange) => in_place(case),
        (true, Outcome::CannotTell) => undecided_done(),
        (false, Outcome::CannotTell) => undecided(case),
        (false, Outcome::Over) if case.is_refused() => vec![
            advice(
                "Do not weigh this out.",
                "Choose the cover brine in the recipe: then the cure is reckoned over meat and brine together, and a longer stay only evens it out.",
            ),
            advice(
                "Or say how thick and how long.",
                "With the thickest part of every class and the hours in the brine, thick pieces taken out in time are judged by pick-up.",
            ),
        ],
        (false, Outcome::Over) => vec![
            advice(
                "Do not weigh this out.",
                match aim {
                    Some(aim) => format!(
                        "Lower the aim in the recipe: {} ppm leaves room on both sides.",
                        plain(aim)
                    ),
                    None => format!(
                        "Lower the aim in the recipe, or weigh on a finer scale, {}.",
                        until(case)
                    ),
                },
            ),
            advice(
                "Check the pieces.",
                "A weight typed too small raises the dose. Weigh the lot together and type that.",
            ),
        ],
        // The usual figure is all right and only the scale's step takes it under.
        (false, Outcome::TooLittle) if !finding.sure => vec![
            advice(
                "Use a finer scale, or a premix.",
                format!(
                    "On this scale's step the dose may fall under the least of {} ppm.",
                    plain(case.rule.least)
                ),
            ),
            fresh(),
        ],
        (false, Outcome::TooLittle) => vec![
            advice(
                "Raise the aim or use a finer scale.",
                match aim {
                    Some(aim) => format!("Aim at {} ppm, {}.", plain(aim), until(case)),
                    None => format!("On this scale no aim is sure to do. Try, {}.", until(case)),
                },
            ),
            fresh(),
        ],
        (false, Outcome::InRange) => vec![advice(words.use_it.0, words.use_it.1)],
    }
}

fn until(case: &Case<'_>) -> String {
    format!(
        "until all of the range lies between {} and {} ppm",
        plain(case.rule.least),
        plain(case.rule.limit)
    )
}

fn fresh() -> Advice {
    advice(
        "Or keep it as fresh meat.",
        "Under the least the cure gives no protection worth counting on: keep it cold, cook it through, eat it within days. Do not smoke it cold or hang it.",
    )
}

fn no_cure(case: &Case<'_>) -> Vec<Advice> {
    let why = if case.portions.is_empty() {
        "Nothing in this recipe holds nitrite or nitrate."
    } else {
        "What went in holds neither nitrite nor nitrate: pink salt for the table is no cure."
    };
    let mut list = vec![advice(
        "Treat it as fresh meat.",
        format!("{why} Keep it cold, cook it through and eat it within days; do not smoke it cold or hang it."),
    )];
    list.extend(cure_now(case));
    list
}

/// Where nothing that was put in holds any: how much of the usual cure would be in range.
fn cure_now(case: &Case<'_>) -> Option<Advice> {
    let usual = Agent {
        nitrite: dec!(6.25),
        nitrate: Decimal::ZERO,
        water: Decimal::ZERO,
    };
    let done = case.portions.first().filter(|_| case.weighed)?;
    let (least, most) = in_range(case, usual)?;
    Some(advice(
        format!(
            "Or cure it now: {} to {} g of a 6.25 % cure.",
            plain(least),
            plain(most)
        ),
        format!(
            "Weighed, and only where all else that went in is known: {} stays in it. Salt that is in counts on. Have it judged here once it is weighed.",
            done.said
        ),
    ))
}

fn unknown() -> Vec<Advice> {
    vec![
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
    ]
}

fn lethal() -> Vec<Advice> {
    vec![
        advice(
            "Nobody tastes it. Read the packet again.",
            "Cooking and soaking take nothing out. If the packet says a few per cent, type that, and it is judged anew.",
        ),
        advice(
            "If the packet says so: throw all of it out.",
            "Wrapped and shut in, away from children and dogs, with the brine down a drain and plenty of water. The packet is no cure for food: lock it away.",
        ),
        advice(
            "Has someone eaten some?",
            "Ring the poison centre or the emergency number at once, with signs or without, and say nitrite.",
        ),
    ]
}

fn ascorbate(case: &Case<'_>, done: bool) -> Vec<Advice> {
    let wanted = case.rule.ascorbate.map(plain).unwrap_or_default();
    let gently = advice(
        "Fry it gently, not until it chars.",
        "Nitrosamines come of nitrite in bacon that is fried very hot; ascorbate holds them down. Poured-off fat holds most of them: do not cook with it.",
    );
    if done {
        return vec![
            advice(
                format!("Is ascorbate in it, {wanted} ppm?"),
                "Say how much went in, and it is judged with it. Once the pickle is in the meat it cannot be added.",
            ),
            gently,
        ];
    }
    vec![
        advice(
            format!("Put {wanted} ppm of sodium ascorbate or erythorbate into the pickle."),
            "As a line of the recipe, by its name. It goes in last, when the cure is dissolved and the pickle cold.",
        ),
        gently,
    ]
}

fn undecided(case: &Case<'_>) -> Vec<Advice> {
    vec![
        advice(
            "Aim at the limit or under.",
            format!(
                "At {} ppm of nitrite or less, with {} of nitrate or less, the rule is met however long it hangs.",
                plain(case.rule.limit),
                case.rule.nitrate.map(plain).unwrap_or_else(|| "0".to_owned())
            ),
        ),
        advice(
            "Or have it measured.",
            "The rule counts what is left in the finished meat; that is a laboratory's figure.",
        ),
    ]
}

fn undecided_done() -> Vec<Advice> {
    vec![
        advice(
            "Have it measured before anyone eats it.",
            "The rule counts what is left in the finished meat; that is a laboratory's figure.",
        ),
        advice(
            "Label it so.",
            "“Not to be eaten before it is measured”, with the date, in the refrigerator.",
        ),
    ]
}

fn in_place(case: &Case<'_>) -> Vec<Advice> {
    let keep = case.method.words().keep;
    let mut list = vec![advice("Leave the cure as it is.", keep)];
    if let Some(portion) = case.portions.iter().find(|p| p.spoon().is_some()) {
        list.push(advice(
            "Write it on the bag.",
            format!("“{}, not weighed”, with today's date.", portion.said),
        ));
    }
    list
}

/// Grams in the reader's units.
fn grams(case: &Case<'_>, value: Decimal) -> String {
    Mass::new(value).map(|m| m.show(case.units).text).unwrap_or_default()
}

/// How to settle a spoon by weighing one, with the weights that are in range.
fn weigh_the_spoon(case: &Case<'_>) -> Option<Advice> {
    let (spoon, (least, most)) = (case.spoon()?, in_range(&case.without_cure()?, agent(case)?)?);
    Some(advice(
        format!("Weigh one level {spoon} of the same cure."),
        if least == most {
            format!(
                "{} g in all is in range. Type the weight here in place of the spoon.",
                plain(least)
            )
        } else {
            format!(
                "Between {} and {} g in all is in range. Type the weight here in place of the spoon.",
                plain(least),
                plain(most)
            )
        },
    ))
}

fn over(case: &Case<'_>, sure: bool) -> Vec<Advice> {
    let mut list = vec![advice(
        "Do not cook it or taste it.",
        "Heat does not take the cure out, and neither does soaking: nobody can see how much has gone in.",
    )];
    list.extend(weigh_the_spoon(case).filter(|_| !sure));
    let spread: Vec<Advice> = [spread_it(case), water_it(case)].into_iter().flatten().collect();
    if spread.is_empty() {
        list.extend(narrow_it(case).filter(|_| list.len() == 1));
    }
    list.extend(spread);
    list.push(advice(
        "Cannot be done, or longer than an hour? Throw it out.",
        if case.method.has_brine() {
            "Wrapped and shut in, away from children and dogs; the brine down a drain with plenty of water, never on the ground. Start again with fresh meat and a new brine, and weigh the cure."
        } else {
            "Wrapped and shut in, away from children and dogs. Start again with fresh meat and weigh the cure."
        },
    ));
    list.push(advice(
        "Has someone eaten some?",
        "Blue lips, headache, faintness or short breath: ring the emergency number at once and say nitrite.",
    ));
    list
}

/// More raw meat, with the range that it leads to.
fn spread_it(case: &Case<'_>) -> Option<Advice> {
    let extra = more_meat(case)?;
    let then = case.with_meat(extra)?.ingoing()?;
    let range = ppm(then.nitrite);
    let how = case.method.words().more_meat;
    Some(advice(
        format!("Put in within the hour? Bring in {} more raw meat.", grams(case, extra)),
        format!(
            "{how}: counted over all of it that is {} to {} ppm. Type the new weight here. Common practice, no source: what has gone into the first pieces stays there, so when in doubt throw it out.",
            range.low, range.high
        ),
    ))
}

/// More water in a brine, with the range that it leads to.
fn water_it(case: &Case<'_>) -> Option<Advice> {
    let extra = more_water(case)?;
    let range = ppm(case.with_water(extra)?.ingoing()?.nitrite);
    let when = match case.method {
        Method::Pumped | Method::PumpedAndCovered => "Nothing pumped yet?",
        Method::PickUp => "No meat in it yet?",
        _ => "Put in within the hour?",
    };
    Some(advice(
        format!("{when} Stir in {} more water.", grams(case, extra)),
        format!(
            "Weighed, cold, stirred through all of it: that is {} to {} ppm. Count it with the water and have it judged again. The salt is thinner by it too: keep it as cold as before, and count what you add. When in doubt throw it out.",
            range.low, range.high
        ),
    ))
}

/// Where no amount of meat or water fits so wide a range: what would narrow it.
fn narrow_it(case: &Case<'_>) -> Option<Advice> {
    let spoon = case.spoon()?;
    Some(advice(
        format!("Put in within the hour? Weigh one level {spoon} of the same cure."),
        "A spoon leaves the range too wide for any figure. Type its weight here in place of the spoon: then it is seen whether more meat can help.",
    ))
}

/// What was weighed is not the cure of the bag.
fn premix(case: &Case<'_>) -> bool {
    let with_nitrite = |p: &&Portion| p.agent.is_some_and(|agent| !agent.nitrite.is_zero());
    case.portions
        .iter()
        .find(with_nitrite)
        .is_some_and(|p| p.parts.is_some())
}

fn too_little(case: &Case<'_>) -> Vec<Advice> {
    let first = match (more_cure(case), weigh_the_spoon(case)) {
        (Some(add), _) => {
            let how = case.method.words().more_cure;
            advice(
                // A tenth of it is cure, and so many grams of the bag itself would be ten times too much.
                format!(
                    "Add {} g of the same {}.",
                    plain(add),
                    if premix(case) { "premix" } else { "cure" }
                ),
                format!("{how} Then the whole range lies between the least and the limit."),
            )
        }
        (None, Some(weigh)) => weigh,
        (None, None) => advice(
            "Use a finer scale.",
            "On this scale's step no addition lands surely between the least and the limit.",
        ),
    };
    vec![first, fresh()]
}
