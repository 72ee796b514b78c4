//! A recipe as a card: each line with its share and its weight, the steps, the verdict.

use crate::batch::{Batch, Piece};
use crate::dose::{self, Caution, Verdict};
use crate::pantry::{self, Belly, ItemName, MeatKind, OWN};
use crate::quantity::exact::Exact;
use crate::quantity::{Figure, Mass, Problem, System, plain};
use crate::recipe::{self, Allergen, Allergens, Do, Recipe, Share, ShareOf, Step, Told, told};
use crate::record;
use crate::safety;
use crate::standing::{self, Vouched};
use crate::weigh::{self, CureOf, Settings, WeighLine};
use rust_decimal::{Decimal, dec};
use serde::Serialize;
use std::borrow::Cow;

/// A recipe worked for one weight.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct RecipeCard {
    /// The green weight it is worked for.
    pub weight: Figure,
    /// Lines, cure first.
    pub rows: Vec<CardRow>,
    /// Steps, in order.
    pub steps: Vec<Told>,
    /// Steps that end below what has to be read.
    pub low: Vec<LowStep>,
    /// Verdict on the dose it aims at, on the user's scale.
    #[cfg_attr(feature = "types", ts(as = "Verdict"))]
    pub verdict: Vouched<Verdict>,
    /// Allergens in it.
    pub allergens: Vec<Allergen>,
    /// What is the user's own and whose allergens are not known, by name.
    pub unknown: Vec<String>,
    /// Cautions for the meat and the method.
    pub cautions: Vec<Caution>,
}

/// A step over the heat that ends below what has to be read in the middle.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LowStep {
    /// Its place.
    pub step: usize,
    /// Where it ends.
    pub until: String,
    /// What has to be read: of the chosen cut, and where none is chosen the least that any kind asks for.
    pub least: String,
    /// Whether a cut is chosen.
    pub known: bool,
}

/// What a card is worked for.
#[derive(Clone, Copy, Debug)]
pub struct For<'a> {
    /// Green weight.
    pub weight: Mass,
    /// Pieces, where a line goes by the piece.
    pub pieces: u32,
    /// Key of the cut, where one is chosen.
    pub cut: Option<&'a str>,
}

/// One line of a card.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct CardRow {
    /// What it is called; nothing for a cure.
    pub item: Option<ItemName>,
    /// Which cure it is.
    pub cure: Option<CureOf>,
    /// Its share: `2.2 %`, `0.5 g`.
    pub share: String,
    /// What the share is of.
    pub of: ShareOf,
    /// What a cure aims at; nothing of any other line.
    pub aim: Option<String>,
    /// Its share is with the salt that is in the cure, its weight without.
    pub with_cure: bool,
    /// Weight for the card's green weight, on the user's scale.
    pub amount: Figure,
}

/// A recipe worked for `grams` of meat in `pieces` pieces, on the user's scale.
///
/// # Errors
/// Every problem of the recipe and the settings, or of the weights.
///
/// ```
/// use cure_reckoner::quantity::Mass;
/// use cure_reckoner::recipe::Recipe;
/// use cure_reckoner::share::{For, card};
/// use cure_reckoner::weigh::Settings;
/// let recipe: Recipe = serde_json::from_value(serde_json::json!({
///     "name": "Salt and cure", "tag": "SC", "method": "rub",
///     "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "150 ppm"}],
/// })).unwrap();
/// let work = For { weight: Mass::read("1000 g", None).unwrap(), pieces: 1, cut: None };
/// let card = card(&recipe, &work, &Settings::new_page()).unwrap();
/// // 1000 × 0.015 / 6.25, which is 0.24 % of the meat.
/// assert_eq!((card.rows[0].amount.text.as_str(), card.rows[0].share.as_str()), ("2.4 g", "0.24 %"));
/// ```
pub fn card(recipe: &Recipe, work: &For<'_>, settings: &Settings) -> Result<RecipeCard, Vec<Problem>> {
    let For { weight, pieces, cut } = *work;
    let cut = pantry::cut_said(cut.filter(|key| *key != OWN)).map_err(|p| vec![p])?;
    let problems = recipe.problems();
    if !problems.is_empty() {
        return Err(problems.into_iter().map(|p| p.at("recipe")).collect());
    }
    let piece = Piece {
        id: String::new(),
        cut: OWN.to_owned(),
        name: recipe.name.clone(),
        count: pieces,
        about: false,
        weight: Some(weight),
        each: false,
        thickness: None,
        skin: false,
        thawed: false,
        bone_in: false,
        bag: 0,
    };
    let batch = Batch {
        pieces: vec![piece],
        ..Batch::new(recipe.tag.clone(), recipe.name.clone(), recipe.clone())
    };
    // The card has no batch of its own: a problem found in the one made up here lies in the recipe or the weight.
    let sheet = weigh::sheet(&batch, settings).map_err(|found| {
        found
            .into_iter()
            .map(|p| Problem {
                field: p.field.trim_start_matches("batch.").to_owned(),
                ..p
            })
            .collect::<Vec<_>>()
    })?;
    let of = |id: String| sheet.bowl.iter().chain(&sheet.vessel).find(|l| l.id == id);
    // As the list has it: an aim that is a proposal follows the rule.
    let rule = dose::rule(&settings.profile, recipe.method, Belly::No);
    let aimed = rule.map_or(Cow::Borrowed(recipe), |rule| weigh::followed(recipe, rule));
    let cures = aimed.cures.iter().enumerate().filter_map(|(i, cure)| {
        let line = of(format!("cure:{i}"))?;
        Some(CardRow {
            item: None,
            cure: line.cure.clone(),
            share: share_of(line, weight),
            of: ShareOf::GreenWeight,
            aim: Some(cure.aim.ppm().text),
            with_cure: false,
            amount: line.add.clone(),
        })
    });
    let lines = recipe.lines.iter().enumerate().filter_map(|(i, row)| {
        let line = of(format!("line:{i}"))?;
        Some(CardRow {
            item: line.item.clone(),
            cure: None,
            share: shown(row.share, settings.units),
            of: row.share.of(),
            aim: None,
            with_cure: line.why.is_some(),
            amount: line.add.clone(),
        })
    });
    let Allergens { known, unknown } = recipe::allergens(recipe);
    let unknown = unknown.into_iter().map(str::to_owned).collect();
    let rows = cures.chain(lines).collect();
    Ok(RecipeCard {
        weight: sheet.green.clone(),
        rows,
        steps: recipe.steps.iter().map(|s| told(s, settings.units)).collect(),
        low: low(recipe, cut.map(|c| c.kind), settings.units),
        // A card goes to another kitchen: the heat stands on it too.
        cautions: on_card(recipe, cut.map(|c| c.kind), &sheet.verdict.cautions),
        verdict: standing::of_card(recipe, sheet.verdict),
        allergens: known,
        unknown,
    })
}

/// The most that any kind of meat wants, °F: the rows of `tables/targets.csv`.
const HOTTEST: Decimal = dec!(165);

/// The cautions of the weigh-out and of the fire, the word on local rules last. Of what heat meat wants nothing is said
/// where no cut is chosen and the recipe takes any to the most.
fn on_card(recipe: &Recipe, kind: Option<MeatKind>, weighing: &[Caution]) -> Vec<Caution> {
    let (last, first): (Vec<&Caution>, Vec<&Caution>) = weighing.iter().partition(|c| c.key == "local-rules");
    let any = kind.is_none()
        && recipe
            .steps
            .iter()
            .any(|s| s.until.is_some_and(|t| t.base() >= HOTTEST));
    let keys = if any {
        Vec::new()
    } else {
        dose::heat_keys(recipe.method, kind.as_slice())
    };
    let heat = dose::cautions(&keys);
    first
        .into_iter()
        .cloned()
        .chain(heat)
        .chain(last.into_iter().cloned())
        .collect()
}

/// Steps that end below what this kind of meat has to read; where it is not known, below what every kind has.
fn low(recipe: &Recipe, kind: Option<MeatKind>, units: System) -> Vec<LowStep> {
    let minced = recipe.method.through();
    let rule = kind.map_or_else(|| safety::lowest(minced), |kind| safety::consumer(kind).at(minced));
    let rule = record::temperature(rule);
    let heat = |step: &Step| matches!(step.act, Do::Smoke | Do::Cook | Do::DryOut);
    let steps = (0..).zip(&recipe.steps);
    let ends = steps
        .filter(|(_, step)| heat(step))
        .filter_map(|(at, step)| Some((at, step.until?)));
    ends.filter(|(_, until)| until.base() < rule.base())
        .map(|(step, until)| LowStep {
            step,
            until: until.show(units).text,
            least: rule.show(units).text,
            known: kind.is_some(),
        })
        .collect()
}

/// The share of a cure, from what the list weighs: its aim alone does not say it.
fn share_of(line: &WeighLine, weight: Mass) -> String {
    let grams = Mass::read(&line.exact, None).map(Mass::base).unwrap_or_default();
    let percent = grams.times(Decimal::ONE_HUNDRED).and_then(|g| g.over(weight.base()));
    percent
        .and_then(|p| p.nearest(dec!(0.001)))
        .map(|p| format!("{} %", plain(p)))
        .unwrap_or_default()
}

/// A share in the person's units; of a piece in grams, as a scale has them.
fn shown(share: Share, units: System) -> String {
    match share {
        Share::GreenWeight(f) | Share::MeatAndWater(f) | Share::Brine(f) => f.show(units).text,
        Share::Piece(m) => m.show(System::Metric).text,
    }
}
