//! A batch of what is typed before there is one: the weight and the cut, with a plain rub, a usual thickness and a likely
//! number of pieces. It is asked about like any other batch, so the figures are those that it has once it is kept.

use super::starters::{Plain, plain};
use crate::batch::{Batch, OddThickness, Piece, odd_thickness, odd_weights};
use crate::pantry::{self, MeatKind, OWN};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Figure, Fraction, Length, Mass, Problem, System, Wrong, fixed, plain as spelled};
use crate::recipe::Recipe;
use crate::weigh::Settings;
use rust_decimal::prelude::ToPrimitive;
use rust_decimal::{Decimal, dec};
use serde::{Deserialize, Serialize};

/// Content of `draft`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct AskDraft {
    /// Key of the cut, or `own`; nothing while none is chosen.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub cut: Option<String>,
    /// Green weight; nothing while none is typed.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub weight: Option<Mass>,
    /// Nitrite printed on the bag of cure; nothing for the recipe's.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub nitrite: Option<Fraction>,
    /// The thickest piece; nothing for the usual one of the cut.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(type = "string | null", optional))]
    pub thickness: Option<Length>,
    /// The recipe to weigh by; nothing for a plain rub.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub recipe: Option<Recipe>,
    /// What it is called where no recipe is given: the page's name of the cut; empty for the name of the recipe.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<String>"))]
    pub called: String,
    /// Work with a premix.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub premix: bool,
    /// The user's settings.
    pub settings: Settings,
}

/// A batch that nobody has kept yet.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Draft {
    /// The batch: without pieces while there is no weight.
    pub batch: Batch,
    /// Where the weight is rather another unit.
    pub odd: Option<OddMeat>,
    /// What a bag of cure usually says, where so little was typed that a comma in the wrong place, which gives ten times the
    /// dose, is likelier than such a bag.
    pub bag: Option<Figure>,
    /// The weight in both ways of weighing, for a change of units.
    pub weight: Option<BothWays>,
    /// The thickest piece with its neighbours on the way up and down; nothing where it is not known.
    pub thick: Option<Thick>,
    /// The middle at which the recipe has it cooked, `74 °C`; nothing where it does not say.
    pub cook: Option<Figure>,
}

/// Meat that is rather another unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum OddMeat {
    /// Less than one piece of its cut; where no weight of that is known, less than a small breast.
    Little,
    /// More than is cured at a time.
    Much,
}

/// A weight as it stands in one box or in two.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BothWays {
    /// Grams, `3175`.
    pub grams: String,
    /// Whole pounds, `7`.
    pub pounds: String,
    /// The ounces beside them, `0.5`.
    pub ounces: String,
}

/// A thickness on the steps of a rule.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Thick {
    /// `25 mm`, `1⅛ in`: reads back as a length.
    pub now: String,
    /// One step less; nothing at the least.
    pub thinner: Option<String>,
    /// One step more; nothing at the most.
    pub thicker: Option<String>,
    /// True while it is the usual one of the cut and nobody has measured.
    pub usual: bool,
    /// Where it is rather another unit.
    pub odd: Option<OddThickness>,
}

/// Millimetres of an inch, grams of a pound and of an ounce: exact by definition.
const INCH: Decimal = dec!(25.4);
const POUND: Decimal = dec!(453.59237);
const OUNCE: Decimal = dec!(28.349523125);
/// Thickest piece that is asked for by steps, in millimetres.
const THICKEST: Decimal = dec!(200);
/// A small breast, in grams (judgement).
const SMALL: Decimal = dec!(30);
/// More is not cured at a time in a kitchen, in grams (judgement).
const KITCHEN: Decimal = dec!(100_000);
/// Below so many per cent a bag is asked about (judgement: of the strengths that are sold none lies near above it).
const FEW: Decimal = Decimal::ONE;
/// Where nitrite salt is sold in every shop, by the rule of the settings, and how strong, in per cent: from memory, as its row
/// in the pantry says.
const WEAK_IN: &str = "eu";
const WEAK: (Decimal, Decimal) = (dec!(0.4), dec!(0.9));
/// Eighths of an inch as they stand on a rule.
const EIGHTHS: [&str; 8] = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];

/// The draft of what is typed.
///
/// # Errors
/// [`Code::Unknown`] for a cut that is not in the table; a fault in the table of plain recipes.
pub fn draft(ask: &AskDraft) -> Result<Draft, Vec<Problem>> {
    let Plain { recipes, thickness } = plain()?;
    let cut = pantry::cut_said(ask.cut.as_deref().filter(|key| *key != OWN)).map_err(|p| vec![p])?;
    let (key, kind) = cut.map_or((OWN, MeatKind::Own), |c| (c.key, c.kind));
    let of = |name: &str| recipes.iter().find(|one| one.of.iter().any(|of| of == name));
    let plain = of(key).or_else(|| of(kind.key())).or(recipes.first());
    let missing = || vec![Problem::of(Code::Missing, Wrong::TableEmpty)];
    let mut recipe = match (&ask.recipe, plain) {
        (Some(given), _) => given.clone(),
        (None, plain) => plain.ok_or_else(missing)?.recipe.clone(),
    };
    if let (Some(nitrite), [cure]) = (ask.nitrite, recipe.cures.as_mut_slice()) {
        cure.nitrite = nitrite;
    }
    let usual = thickness.get(key).or_else(|| thickness.get(kind.key())).copied();
    let thick = ask
        .thickness
        .or(usual)
        .and_then(|thick| Thick::of(thick, key, ask.settings.units, ask.thickness.is_none()));
    let cook = recipe.steps.iter().filter_map(|s| s.until).next_back();
    let name = if ask.recipe.is_none() && !ask.called.is_empty() {
        ask.called.clone()
    } else {
        recipe.name.clone()
    };
    let weight = ask.weight.filter(|w| !w.base().is_zero());
    let mut batch = Batch::new(recipe.tag.clone(), name, recipe);
    batch.premix = ask.premix;
    if let Some(weight) = weight {
        let count = likely(weight, cut.and_then(|c| c.grams));
        batch.pieces.push(Piece {
            id: String::new(),
            cut: key.to_owned(),
            name: if key == OWN { batch.name.clone() } else { String::new() },
            count,
            about: count > 1,
            weight: Some(weight),
            each: false,
            thickness: thick.as_ref().and_then(|t| Length::read(&t.now, None).ok()),
            skin: false,
            thawed: false,
            bone_in: false,
            bag: 0,
        });
    }
    let odd = weight.and_then(|weight| odd_meat(weight, &batch.pieces, ask.settings.units));
    Ok(Draft {
        batch,
        odd,
        bag: ask.nitrite.and_then(|typed| odd_bag(typed, &ask.settings)),
        weight: weight.and_then(BothWays::of),
        thick,
        cook: cook.map(|t| t.show(ask.settings.units)),
    })
}

fn odd_meat(weight: Mass, pieces: &[Piece], units: System) -> Option<OddMeat> {
    if weight.base() > KITCHEN {
        return Some(OddMeat::Much);
    }
    // Pieces are as many as the weight makes, so what is odd of one is too little.
    (weight.base() < SMALL || odd_weights(pieces, units).next().is_some()).then_some(OddMeat::Little)
}

/// The usual strength, where what was typed is rather a slip: a tenth of it, or so little as no home cook's bag has where the
/// user lives.
fn odd_bag(typed: Fraction, settings: &Settings) -> Option<Figure> {
    let usual = Fraction::read(&format!("{} %", pantry::ingredient("cure-1")?.nitrite), None).ok()?;
    let percent = typed.base();
    let weak = settings.profile == WEAK_IN && (WEAK.0..=WEAK.1).contains(&percent);
    let slip = percent == usual.base().over(Decimal::TEN)? || (percent < FEW && !weak);
    slip.then(|| usual.show(settings.units))
}

/// So many pieces of the usual weight; one where no weight is usual.
fn likely(weight: Mass, grams: Option<(u32, u32, u32)>) -> u32 {
    let count = grams.and_then(|(_, usual, _)| weight.base().over(usual.into()));
    let whole = count.and_then(|n| n.half_away(0).to_u32());
    whole.unwrap_or(1).clamp(1, 10_000)
}

impl BothWays {
    fn of(weight: Mass) -> Option<Self> {
        let grams = weight.base();
        // To the tenth of an ounce first, so that 15.96 oz are a pound and not 16.0 oz.
        let ounces = grams.over(OUNCE)?.half_away(1);
        let pounds = ounces.times(OUNCE)?.over(POUND)?.half_away(6).floor();
        Some(Self {
            grams: fixed(grams, 0),
            ounces: spelled(ounces.less(pounds.times(dec!(16))?)?),
            pounds: spelled(pounds),
        })
    }
}

impl Thick {
    fn of(thick: Length, cut: &str, units: System, usual: bool) -> Option<Self> {
        let unit = match units {
            System::Metric => Decimal::ONE,
            System::Us => INCH.over(dec!(8))?,
        };
        let steps = thick.base().over(unit)?.half_away(0).max(Decimal::ONE);
        let most = THICKEST.over(unit)?.floor();
        // Thin pieces are read to one step, thick ones to fewer.
        let wide = match units {
            System::Metric => (dec!(30), dec!(5)),
            System::Us => (dec!(16), dec!(2)),
        };
        let down = if steps > wide.0 { wide.1 } else { Decimal::ONE };
        let up = if steps >= wide.0 { wide.1 } else { Decimal::ONE };
        let at = |steps: Decimal| (steps >= Decimal::ONE && steps <= most).then(|| ruled(steps, units));
        Some(Self {
            now: ruled(steps, units),
            thinner: at(steps.less(down)?.min(most)),
            thicker: at(steps.plus(up)?),
            usual,
            odd: odd_thickness(cut, thick),
        })
    }
}

/// So many steps of the rule: `25 mm`, `1⅛ in`.
fn ruled(steps: Decimal, units: System) -> String {
    if units == System::Metric {
        return format!("{} mm", spelled(steps));
    }
    let eighths = steps.to_usize().unwrap_or_default();
    let whole = eighths.div_euclid(EIGHTHS.len());
    let part = EIGHTHS
        .get(eighths.rem_euclid(EIGHTHS.len()))
        .copied()
        .unwrap_or_default();
    let whole = if whole == 0 { String::new() } else { whole.to_string() };
    format!("{whole}{part} in")
}
