//! The bench: from a vessel and a strength to water, salt and cure, with the verdict.

use super::strength::{Scale, Strength, percent_of};
use super::vessel::Vessel;
use crate::dose::{self, Case, Portion, Verdict, Whole};
use crate::pantry::{self, Agent, Belly, Cut};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Figure, Fraction, Mass, Problem, Range, System, Temperature, Wrong, fixed, plain};
use crate::recipe::{Counted, Eaten, Method};
use crate::weigh::{Settings, on_scale};
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
    pub strength: Vec<BrineMeasure>,
    /// The water in every measure, and the brine.
    pub amounts: BrineAmounts,
    /// The salt once meat and brine are equal; nothing without meat.
    pub even: Option<EvenSalt>,
    /// What to mind.
    pub remarks: Vec<BrineRemark>,
    /// The verdict on the cure, over meat and brine together.
    pub verdict: Option<Verdict>,
}

/// A strength in one measure.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BrineMeasure {
    /// The measure.
    pub scale: Scale,
    /// The number in it, without its unit: `26.40`.
    pub number: String,
}

/// How much it is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BrineAmounts {
    /// Litres of water.
    pub litres: String,
    /// US gallons of water.
    pub us_gallons: String,
    /// Imperial gallons of water.
    pub imperial_gallons: String,
    /// All of the brine, by weight.
    pub brine: String,
}

/// The salt once meat and brine are equal, in per cent.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct EvenSalt {
    /// Of meat and brine together.
    pub over_all: String,
    /// In the meat, which is what it tastes of: salt goes by water, and takes its share of the meat's.
    pub in_meat: String,
    /// How much water the meat is taken to hold.
    pub water: String,
}

/// What to mind at the bench.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum BrineRemark {
    /// The strength is a hydrometer's reading, which counts sugar and cure as salt.
    ReadsSugar,
    /// An Imperial gallon is a fifth larger than a US one.
    WhichGallon,
    /// In a bag the brine is half the green weight: our own judgement.
    BagIsHalf,
    /// The cure counts over meat and brine together, and there is no meat.
    WantsMeat,
    /// The cure is less than one step of the scale.
    ScaleTooCoarse,
}

fn lost() -> Vec<Problem> {
    vec![Problem::of(Code::TooLarge, Wrong::TooLargeToReckon)]
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
        problems.push(Problem::of(Code::Missing, Wrong::BagWantsMeat).at("meat"));
    }
    problems.extend(ask.cure.as_ref().and_then(|c| c.agent().problem()));
    let cut = pantry::cut_said(ask.cut.as_deref()).unwrap_or_else(|p| {
        problems.push(p);
        None
    });
    let brine = ask.vessel.brine(meat).ok_or_else(lost)?;
    if brine.is_some_and(|ml| ml < Decimal::ONE_HUNDRED) {
        problems.push(Problem::of(Code::TooSmall, Wrong::NoRoomForBrine).at("vessel"));
    }
    let (Some(strength), true) = (strength, problems.is_empty()) else {
        return Err(problems);
    };
    work(ask, strength, brine, meat, cut).ok_or_else(lost)?
}

fn strength(ask: &AskBrine) -> Result<Strength, Problem> {
    let wrong = || Problem::of(Code::NotRead, Wrong::NoBrineStrength);
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
                return Some(Err(vec![Problem::of(Code::Conflict, Wrong::CureTooWeak).at("aim")]));
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
        amounts: amounts(water, pickle)?,
        even: if meat.is_zero() {
            None
        } else {
            Some(even(meat, water, weighed.plus(brings)?, pickle)?)
        },
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

fn measures(strength: Strength) -> Option<Vec<BrineMeasure>> {
    let rows = [
        (Scale::Percent, 2),
        (Scale::Salometer, 0),
        (Scale::Gravity, 3),
        (Scale::PerLitre, 0),
        (Scale::PerUsGallon, 3),
        (Scale::PerImperialGallon, 3),
    ];
    let row = |(scale, places): (Scale, u32)| {
        let number = fixed(strength.on(scale)?.half_away(places), places);
        Some(BrineMeasure { scale, number })
    };
    rows.into_iter().map(row).collect()
}

fn amounts(water: Decimal, pickle: Decimal) -> Option<BrineAmounts> {
    let to = |per: Decimal| water.over(per).map(|v| plain(v.half_away(2)));
    Some(BrineAmounts {
        litres: to(dec!(999.1))?,
        us_gallons: to(dec!(3782))?,
        imperial_gallons: to(dec!(4542))?,
        brine: Mass::new(pickle).ok()?.show(System::Metric).text,
    })
}

fn even(meat: Decimal, water: Decimal, salt: Decimal, pickle: Decimal) -> Option<EvenSalt> {
    let percent = |part: Decimal, of: Decimal| part.times(Decimal::ONE_HUNDRED)?.over(of);
    let shown = |percent: Decimal| format!("{} %", fixed(percent.half_away(2), 2));
    let inside = meat.times(pantry::LEAN_WATER)?;
    let taken = salt.times(inside)?.over(inside.plus(water)?)?;
    Some(EvenSalt {
        over_all: shown(percent(salt, meat.plus(pickle)?)?),
        in_meat: shown(percent(taken, meat.plus(taken)?)?),
        water: format!("{} %", plain(percent(pantry::LEAN_WATER, Decimal::ONE)?.normalize())),
    })
}

fn remarks(ask: &AskBrine, cure: Option<Decimal>, step: Decimal) -> Vec<BrineRemark> {
    let step_hides = cure.is_some_and(|grams| grams < step);
    [
        (
            BrineRemark::ReadsSugar,
            matches!(ask.scale, Scale::Gravity | Scale::Salometer),
        ),
        (BrineRemark::WhichGallon, true),
        (BrineRemark::BagIsHalf, ask.vessel == Vessel::Bag),
        (BrineRemark::WantsMeat, ask.meat.is_none() && ask.cure.is_some()),
        (BrineRemark::ScaleTooCoarse, step_hides),
    ]
    .into_iter()
    .filter_map(|(remark, holds)| holds.then_some(remark))
    .collect()
}
