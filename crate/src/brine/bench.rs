//! The bench: from a vessel and a strength to water, salt and cure, with the verdict.

use super::strength::{Scale, Strength, percent_of};
use super::vessel::Vessel;
use crate::dose::{self, Case, Portion, Verdict, Whole};
use crate::pantry::{self, Agent, Belly, Cut};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Figure, Fraction, Mass, Problem, Range, System, Temperature, fixed, plain};
use crate::recipe::{Counted, Eaten, Method};
use crate::weigh::{Fact, Settings, on_scale};
use rust_decimal::{Decimal, dec};
use serde::{Deserialize, Serialize};

/// Content of `brine`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskBrine {
    /// Where it stands.
    pub vessel: Vessel,
    /// Green weight of the meat; nothing for a brine alone.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub meat: Option<Mass>,
    /// Key of its cut; a belly has limits of its own. Nothing when not said.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub cut: Option<String>,
    /// How strong it is to be, or reads: a bare number on the scale.
    pub strength: String,
    /// On which scale.
    pub scale: Scale,
    /// For a reading: how warm the brine was; nothing for 60 °F.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub at: Option<Temperature>,
    /// Sugar in it, per cent of the water.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub sugar: Option<Fraction>,
    /// The cure; nothing for a brine without.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub cure: Option<BrineCure>,
    /// The user's settings.
    pub settings: Settings,
}

/// Cure for a brine, either way round.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct BrineCure {
    /// Sodium nitrite printed on the packet.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub nitrite: Fraction,
    /// Sodium nitrate printed on it; nothing for none.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub nitrate: Option<Fraction>,
    /// Ingoing nitrite to aim at (nitrate, where the packet has no nitrite); nothing where `weight` is judged.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub aim: Option<Fraction>,
    /// Cure to be judged.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub weight: Option<Mass>,
}

impl BrineCure {
    fn agent(&self) -> Agent {
        Agent::printed(self.nitrite, self.nitrate)
    }
}

/// The answer of the bench.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BrineSheet {
    /// Water to take.
    pub water: Figure,
    /// Salt to weigh, less what the cure brings.
    pub salt: Figure,
    /// Sugar to weigh.
    pub sugar: Option<Figure>,
    /// Cure to weigh.
    pub cure: Option<Figure>,
    /// The strength in every measure.
    pub strength: Vec<Fact>,
    /// The water in every measure, and what comes of it all.
    pub facts: Vec<Fact>,
    /// What to mind.
    pub remarks: Vec<String>,
    /// The verdict on the cure, over meat and brine together.
    pub verdict: Option<Verdict>,
}

fn lost() -> Vec<Problem> {
    vec![Problem::new(
        Code::TooLarge,
        "These figures are too large to reckon exactly. Check each of them.",
    )]
}

/// Works the bench.
///
/// # Errors
/// The problems of the settings and of the figures, at their fields.
pub fn bench(ask: &AskBrine) -> Result<BrineSheet, Vec<Problem>> {
    let mut problems = ask.settings.problems();
    let strength = strength(ask).map_err(|p| problems.push(p.at("strength"))).ok();
    let meat = ask.meat.map(Mass::base).unwrap_or_default();
    if ask.vessel == Vessel::Bag && meat.is_zero() {
        problems.push(
            Problem::new(
                Code::Missing,
                "A bag takes its brine by the meat. Type its green weight, such as 1480 g.",
            )
            .at("meat"),
        );
    }
    problems.extend(ask.cure.as_ref().and_then(|c| c.agent().problem()));
    let cut = pantry::cut_said(ask.cut.as_deref()).unwrap_or_else(|p| {
        problems.push(p);
        None
    });
    let brine = ask.vessel.brine(meat).ok_or_else(lost)?;
    if brine.is_some_and(|ml| ml < Decimal::ONE_HUNDRED) {
        problems.push(
            Problem::new(
                Code::TooSmall,
                "The meat leaves no room for a brine in this vessel. Take a larger one, or fill it higher.",
            )
            .at("vessel"),
        );
    }
    let (Some(strength), true) = (strength, problems.is_empty()) else {
        return Err(problems);
    };
    work(ask, strength, brine, meat, cut).ok_or_else(lost)?
}

fn strength(ask: &AskBrine) -> Result<Strength, Problem> {
    let wrong = || {
        Problem::new(
            Code::NotRead,
            "This is no strength that a brine of salt can have. Type one, such as 10 %, 40 degrees or 1.074; 26.4 %, 100 degrees, is as much as dissolves.",
        )
    };
    // A bare number in the grammar of shares, which is the same for every scale.
    let figure = Fraction::read(&ask.strength, Some("%"))?.base();
    percent_of(figure, ask.scale, ask.at.map(|t| t.base())).ok_or_else(wrong)
}

/// Water, salt and sugar in grams.
fn solids(ask: &AskBrine, strength: Strength, brine: Option<Decimal>) -> Option<(Decimal, Decimal, Decimal)> {
    let water = match (ask.vessel, brine) {
        (Vessel::Water { water }, _) => water.base(),
        (_, brine) => {
            // Millilitres of brine to its weight, less the salt in it.
            let weight = brine?.times(strength.on(Scale::Gravity)?)?;
            let rest = Decimal::ONE_HUNDRED.less(strength.percent)?;
            weight.times(rest)?.over(Decimal::ONE_HUNDRED)?
        }
    };
    let salt = water
        .times(strength.percent)?
        .over(Decimal::ONE_HUNDRED.less(strength.percent)?)?;
    let sugar = match ask.sugar {
        Some(share) => water.times(share.base())?.over(Decimal::ONE_HUNDRED)?,
        None => Decimal::ZERO,
    };
    Some((water, salt, sugar))
}

fn work(
    ask: &AskBrine,
    strength: Strength,
    brine: Option<Decimal>,
    meat: Decimal,
    cut: Option<&Cut>,
) -> Option<Result<BrineSheet, Vec<Problem>>> {
    let step = ask.settings.scale_step.base();
    let (water, salt, sugar) = solids(ask, strength, brine)?;
    // What is not cure is rounded first, so that the cure is reckoned over what is in the bucket.
    let (water, salt, sugar) = (water.nearest(step.max(Decimal::ONE))?, salt, sugar.nearest(step)?);
    let whole = Whole {
        counted: Counted::GreenAndPickle,
        green: dose::summed(Range::point(meat), step, 1)?,
        pickle: Range::point(water.plus(salt)?.plus(sugar)?),
        take: Decimal::ZERO,
        fo: None,
    };
    let agent = ask.cure.as_ref().map(BrineCure::agent);
    let cure = match (ask.cure.as_ref(), agent) {
        (
            Some(BrineCure {
                weight: Some(weight), ..
            }),
            _,
        ) => Some(weight.base()),
        (Some(BrineCure { aim: Some(aim), .. }), Some(agent)) => {
            let point = Whole {
                green: Range::point(meat),
                ..whole
            };
            let wanted = dose::cure_for(&point, &[(agent, aim.base())], true);
            let Some(grams) = wanted.and_then(|list| list.first().copied()) else {
                return Some(Err(vec![
                    Problem::new(
                        Code::Conflict,
                        "This cure is too weak to reach the aim in this brine. Read the packet and the aim again.",
                    )
                    .at("aim"),
                ]));
            };
            Some(grams.down_to(step)?)
        }
        _ => None,
    };
    let brings = match (cure, agent) {
        (Some(grams), Some(agent)) => grams.times(agent.salt()?)?,
        _ => Decimal::ZERO,
    };
    let weighed = salt.less(brings)?.max(Decimal::ZERO).nearest(step)?;
    let pickle = water.plus(weighed)?.plus(sugar)?.plus(cure.unwrap_or_default())?;
    // Water, salt and sugar are weighed, each once.
    let weighings = [water, weighed, sugar].into_iter().filter(|g| !g.is_zero()).count();
    let whole = Whole {
        pickle: dose::summed(Range::point(pickle), step, u32::try_from(weighings).ok()?)?,
        ..whole
    };
    let verdict = match (cure.filter(|g| !g.is_zero()), agent) {
        (Some(grams), Some(agent)) if meat > Decimal::ZERO => Some(judge(ask, whole, agent, grams, water, cut)?),
        _ => None,
    };
    let verdict = match verdict {
        Some(Err(problem)) => return Some(Err(vec![problem])),
        Some(Ok(verdict)) => Some(verdict),
        None => None,
    };
    let show = |grams: Decimal| Mass::new(grams).map_or_else(|_| Figure::new("", ""), |m| m.show(ask.settings.units));
    Some(Ok(BrineSheet {
        water: show(water),
        salt: on_scale(weighed, step),
        sugar: (!sugar.is_zero()).then(|| on_scale(sugar, step)),
        cure: cure.map(|grams| on_scale(grams, step)),
        strength: measures(strength)?,
        facts: facts(meat, water, weighed.plus(brings)?, pickle)?,
        remarks: remarks(ask, cure, step),
        verdict,
    }))
}

fn judge(
    ask: &AskBrine,
    whole: Whole,
    agent: Agent,
    grams: Decimal,
    water: Decimal,
    cut: Option<&Cut>,
) -> Option<Result<Verdict, Problem>> {
    let step = ask.settings.scale_step.base();
    let rule = dose::rule(
        &ask.settings.profile,
        Method::CoverBrine,
        cut.map_or(Belly::No, |c| c.belly),
    )?;
    let case = Case {
        rule,
        eaten: Eaten::Cooked,
        method: Method::CoverBrine,
        whole,
        water,
        evens: None,
        ascorbate: None,
        weighed: true,
        portions: vec![Portion {
            said: on_scale(grams, step).text,
            agent: Some(agent),
            weight: Range::weighed(grams, step)?,
            spread: Decimal::ZERO,
            parts: None,
            unit: dose::Unit::Gram,
            step,
            done: false,
        }],
        step,
        units: ask.settings.units,
    };
    let mut keys = dose::keys_for(true, Method::CoverBrine, Eaten::Cooked);
    dose::add_bacon(&mut keys, cut.map_or(Belly::No, |c| c.belly));
    Some(dose::judge(&case, dose::cautions(&keys)))
}

fn fact(label: &str, value: String) -> Fact {
    Fact {
        label: label.to_owned(),
        value,
    }
}

fn measures(strength: Strength) -> Option<Vec<Fact>> {
    let rows = [
        (Scale::Percent, 2, " %", "Salt in water and salt, by weight"),
        (Scale::Salometer, 0, "°", "Salometer at 16 °C (60 °F)"),
        (Scale::Gravity, 3, "", "Specific gravity at 15 °C"),
        (Scale::PerLitre, 0, " g", "To a litre of water"),
        (Scale::PerUsGallon, 3, " lb", "To a US gallon of water"),
        (Scale::PerImperialGallon, 3, " lb", "To an Imperial gallon of water"),
    ];
    let row = |(scale, places, unit, label): (Scale, u32, &str, &str)| {
        let figure = strength.on(scale)?.half_away(places);
        Some(fact(label, format!("{}{unit}", fixed(figure, places))))
    };
    rows.into_iter().map(row).collect()
}

fn facts(meat: Decimal, water: Decimal, salt: Decimal, pickle: Decimal) -> Option<Vec<Fact>> {
    let to = |per: Decimal| water.over(per).map(|v| plain(v.half_away(2)));
    let mut list = vec![
        fact("Litres of water", to(dec!(999.1))?),
        fact("US gallons of water", to(dec!(3782))?),
        fact("Imperial gallons of water", to(dec!(4542))?),
        fact("Brine in all", Mass::new(pickle).ok()?.show(System::Metric).text),
    ];
    if meat > Decimal::ZERO {
        let percent = salt.times(Decimal::ONE_HUNDRED)?.over(meat.plus(pickle)?)?;
        list.push(fact(
            "Salt left until equal, on meat and brine",
            format!("{} %", fixed(percent.half_away(2), 2)),
        ));
        // What it tastes of: salt goes by water, and takes its share of the meat's.
        let inside = meat.times(pantry::LEAN_WATER)?;
        let taken = salt.times(inside)?.over(inside.plus(water)?)?;
        let percent = taken.times(Decimal::ONE_HUNDRED)?.over(meat.plus(taken)?)?;
        list.push(fact(
            "Salt in the meat then, at 74 % water in it",
            format!("{} %", fixed(percent.half_away(2), 2)),
        ));
    }
    Some(list)
}

fn remarks(ask: &AskBrine, cure: Option<Decimal>, step: Decimal) -> Vec<String> {
    let reading = matches!(ask.scale, Scale::Gravity | Scale::Salometer);
    let mut list = Vec::new();
    if reading {
        list.push(
            "A hydrometer cannot tell sugar and cure from salt. With sugar in the brine it reads too high: the salt is then at most this. Read it before the sugar goes in."
                .to_owned(),
        );
    }
    list.push("Say which gallon: an Imperial one is a fifth larger than a US one.".to_owned());
    if ask.vessel == Vessel::Bag {
        list.push("In a bag the brine is half the green weight (our own judgement): enough to wet every side with the air pressed out.".to_owned());
    }
    if ask.meat.is_none() && ask.cure.is_some() {
        list.push("No cure can be reckoned without the meat: it counts over meat and brine together.".to_owned());
    }
    if cure.is_some_and(|grams| grams < step) {
        list.push("This scale cannot show the cure at all. Take a finer one.".to_owned());
    }
    list
}
