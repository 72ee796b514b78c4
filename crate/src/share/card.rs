//! A recipe as a card: each line with its share and its weight, the steps, the verdict.

use crate::batch::{Batch, Piece};
use crate::dose::{self, Caution, Verdict};
use crate::pantry::{self, Belly, OWN};
use crate::quantity::exact::Exact;
use crate::quantity::{Figure, Mass, Problem, System, plain};
use crate::recipe::{self, Allergens, Recipe, Share, Told, told};
use crate::standing::{self, Vouched};
use crate::weigh::{self, Settings, WeighLine};
use rust_decimal::{Decimal, dec};
use serde::Serialize;
use std::borrow::Cow;

/// A recipe worked for one weight.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct RecipeCard {
    /// The green weight it is worked for.
    pub weight: Figure,
    /// Base of the shares, for the head of the column: `On green weight`.
    pub base: String,
    /// Lines, cure first.
    pub rows: Vec<CardRow>,
    /// Steps, in order.
    pub steps: Vec<Told>,
    /// Verdict on the dose it aims at, on the user's scale.
    #[cfg_attr(feature = "types", ts(as = "Verdict"))]
    pub verdict: Vouched<Verdict>,
    /// Allergens in it, by name.
    pub allergens: Vec<String>,
    /// What is the user's own and whose allergens are not known, by name.
    pub unknown: Vec<String>,
    /// Cautions for the meat and the method.
    pub cautions: Vec<Caution>,
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
    /// What it is.
    pub name: String,
    /// Its share: `2.2 %`, `0.5 g a piece`.
    pub share: String,
    /// What the share is of, where it is not the card's base, and what it aims at.
    pub note: Option<String>,
    /// Weight for the card's green weight, on the user's scale.
    pub amount: Figure,
}

/// A recipe worked for `grams` of meat in `pieces` pieces, on the user's scale.
///
/// # Errors
/// Every problem of the recipe and the settings, or of the weights.
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
            name: line.name.clone(),
            share: share_of(line, weight),
            note: Some(format!("aim {}", cure.aim.ppm().text)),
            amount: line.add.clone(),
        })
    });
    let lines = recipe.lines.iter().enumerate().filter_map(|(i, row)| {
        let line = of(format!("line:{i}"))?;
        let (share, base) = words(row.share, settings.units);
        let salted = line.why.as_ref().map(|_| "with what is in the cure");
        let parts: Vec<&str> = base.into_iter().chain(salted).collect();
        Some(CardRow {
            name: line.name.clone(),
            share,
            note: (!parts.is_empty()).then(|| parts.join(", ")),
            amount: line.add.clone(),
        })
    });
    let Allergens { known, unknown } = recipe::allergens(recipe);
    let owned = |names: Vec<&str>| names.into_iter().map(str::to_owned).collect();
    let rows = cures.chain(lines).collect();
    Ok(RecipeCard {
        weight: sheet.green.clone(),
        base: "On green weight".to_owned(),
        rows,
        steps: recipe.steps.iter().map(|s| told(s, settings.units)).collect(),
        // A card goes to another kitchen: the heat stands on it too.
        cautions: on_card(recipe, cut.map(|c| c.kind), &sheet.verdict.cautions),
        verdict: standing::of_card(recipe, sheet.verdict),
        allergens: owned(known),
        unknown: owned(unknown),
    })
}

/// The most that any kind of meat wants, °F: the rows of `tables/targets.csv`.
const HOTTEST: Decimal = dec!(165);

/// The cautions of the weigh-out and of the fire, the word on local rules last. Of what heat meat wants nothing is said
/// where no cut is chosen and the recipe takes any to the most.
fn on_card(recipe: &Recipe, kind: Option<&str>, weighing: &[Caution]) -> Vec<Caution> {
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

/// The share of a cure, from what the list weighs: its aim alone does not say it.
fn share_of(line: &WeighLine, weight: Mass) -> String {
    let grams = Mass::read(&line.exact, None).map(Mass::base).unwrap_or_default();
    let percent = grams.times(Decimal::ONE_HUNDRED).and_then(|g| g.over(weight.base()));
    percent
        .and_then(|p| p.nearest(dec!(0.001)))
        .map(|p| format!("{} %", plain(p)))
        .unwrap_or_default()
}

/// A share in words, and its base where it is not green weight.
fn words(share: Share, units: System) -> (String, Option<&'static str>) {
    match share {
        Share::GreenWeight(f) => (f.show(units).text, None),
        Share::MeatAndWater(f) => (f.show(units).text, Some("of meat and water")),
        Share::Brine(f) => (f.show(units).text, Some("of the water")),
        Share::Piece(m) => (m.show(System::Metric).text, Some("a piece")),
    }
}
