//! Every answer.

use super::draft::{Draft, draft};
use super::read::{ReadValues, read};
use super::request::{AskDose, Record, Request};
use super::starters::{self, Starters};
use crate::batch::{self, PieceSheet, PutIn};
use crate::brine::{self, BrineSheet};
use crate::cure::{self, CureClock};
use crate::dose::{self, Case, Portion, Profile, Verdict, Whole};
use crate::pack::{self, Labels, LarderSheet, Ledger, Packed};
use crate::pantry::{self, Belly, Cut, Ingredient, MeatKind, Status};
use crate::plan;
use crate::plan::Calendar;
use crate::plan::back::{self, Back};
use crate::plan::bag::{self, BagSheet, GameName};
use crate::plan::trouble::{Trouble, trouble};
use crate::quantity::exact::Exact;
use crate::quantity::{Awake, Code, Mass, Problem, Range, Wrong};
use crate::reading::{self, Reading};
use crate::recipe::{self, Method, Recipe};
use crate::schedule::{self, NextList};
use crate::share::{self, Link, RecipeCard};
use crate::standing::{self, Packing, StandingSheet, Vouched};
use crate::weigh::{self, Finding, ScaleSheet, Settings, SpoonSheet, StockSheet, WeighSheet};
use rust_decimal::{Decimal, dec};
use serde::Serialize;

/// `{"ok": …}` or `{"problems": […]}`.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Answer {
    /// What was asked for.
    Ok(Box<Ok>),
    /// What is wrong with the request.
    Problems(Vec<Problem>),
}

/// The content of a good answer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(untagged)]
#[expect(missing_docs, reason = "one variant for each question, in its order")]
#[allow(
    clippy::large_enum_variant,
    reason = "boxed where it is held; not large where a pointer has 32 bits"
)]
pub enum Ok {
    Read(ReadValues),
    Tables(Tables),
    Starters(Starters),
    Pieces(PieceSheet),
    Card(RecipeCard),
    Turned(Opened),
    WeighOut(Vouched<WeighSheet>),
    Draft(Draft),
    CheckDose(Vouched<Verdict>),
    Standing(StandingSheet),
    Next(NextList),
    Link(Link),
    OpenLink(Opened),
    FireLog(crate::fire::FireSheet),
    Check(Checked),
    ReadRecipe(Reading),
    PlanBag(BagSheet),
    Trouble(Trouble),
    PlanBack(Back),
    Calendar(Calendar),
    Labels(Labels),
    Brine(BrineSheet),
    Spoon(SpoonSheet),
    Scale(ScaleSheet),
    Stock(StockSheet),
    CureClock(CureClock),
    LearnCut(Finding),
    Larder(LarderSheet),
    Ledger(Ledger),
    Sources(Sources),
}

/// Where the figures come from.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Sources {
    /// The table, and each source with its status; no status where the source says it itself.
    #[cfg_attr(feature = "types", ts(type = "[TableKey, [string, Status | null][]][]"))]
    pub tables: &'static [SourcesOf],
}

/// Sources with their status, by what they are of.
pub type SourcesOf = (&'static str, &'static [(&'static str, Option<Status>)]);

/// Lists for pickers.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Tables {
    /// Everything in the pantry.
    pub ingredients: Vec<Ingredient>,
    /// Cuts with their weights.
    pub cuts: Vec<Cut>,
    /// What a bag can be planned by.
    pub game: Vec<GameName>,
    /// Jurisdictions.
    pub profiles: Vec<Profile>,
    /// Steps a scale may have, `5 g` to `0.01 g`.
    pub scale_steps: Vec<&'static str>,
    /// Settings of a new page.
    pub settings: Settings,
}

/// A recipe from a link. Ask for its card to see the verdict; it is not saved by opening.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Opened {
    /// The recipe.
    pub recipe: Recipe,
}

/// A record that can be used.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Checked {
    /// Always true; what is wrong comes as problems.
    pub good: bool,
}

/// Answers one question. Never panics on a request that could be read.
pub fn answer(request: Request) -> Answer {
    let answered = match request {
        Request::Read(ask) => read(&ask).map(Ok::Read),
        Request::Tables(_) => Result::Ok(Ok::Tables(tables())),
        Request::Sources(_) => Result::Ok(Ok::Sources(Sources {
            tables: crate::tables::SOURCES,
        })),
        Request::Starters(_) => starters::starters().map(Ok::Starters),
        Request::Pieces(ask) => batch::sheet(&ask.pieces, ask.settings.units).map(Ok::Pieces),
        Request::Card(ask) => {
            let kilogram = Mass::new(dec!(1000)).map_err(|p| vec![p]);
            let weight = ask.weight.map_or(kilogram, Result::Ok);
            weight
                .and_then(|weight| {
                    let work = share::For {
                        weight,
                        pieces: ask.pieces.unwrap_or(1),
                        cut: ask.cut.as_deref(),
                    };
                    share::card(&ask.recipe, &work, &ask.settings)
                })
                .map(Ok::Card)
        }
        Request::Turned(ask) => recipe::turned(&ask.recipe, ask.method)
            .map(|recipe| Ok::Turned(Opened { recipe }))
            .ok_or_else(|| vec![too_large()]),
        Request::WeighOut(ask) => standing::weigh_out(&ask.batch, &ask.settings).map(Ok::WeighOut),
        Request::Draft(ask) => draft(&ask).map(Ok::Draft),
        Request::CheckDose(ask) => {
            check_dose(&ask).map(|verdict| Ok::CheckDose(standing::on_its_own(verdict, ask.eaten)))
        }
        Request::Standing(ask) => {
            let (frozen, vacuum) = (ask.frozen, ask.vacuum);
            standing::sheet(&ask.batch, &ask.settings, ask.now, Packing { frozen, vacuum }).map(Ok::Standing)
        }
        Request::Next(ask) => {
            let batches: Vec<_> = ask.batches.iter().map(|n| (n.id.as_str(), &n.batch)).collect();
            schedule::next(&batches, ask.now, &ask.rests, ask.east, &ask.settings).map(Ok::Next)
        }
        Request::Brine(ask) => brine::bench(&ask).map(Ok::Brine),
        Request::Spoon(ask) => weigh::spoon(&ask).map(Ok::Spoon),
        Request::Scale(ask) => weigh::scale(&ask).map(Ok::Scale),
        Request::Stock(ask) => weigh::stock(&ask).map(Ok::Stock),
        Request::Link(ask) => share::write(&ask.recipe, &ask.base).map(Ok::Link),
        Request::OpenLink(ask) => share::open(&ask.text).map(|recipe| Ok::OpenLink(Opened { recipe })),
        Request::ReadRecipe(ask) => reading::read(&ask).map(Ok::ReadRecipe),
        Request::FireLog(ask) => crate::fire::sheet(&ask.batch, ask.now, &ask.settings).map(Ok::FireLog),
        Request::Check(record) => {
            let (place, problems) = match &record {
                Record::Recipe(recipe) => ("recipe", recipe.problems()),
                Record::Batch(batch) => ("batch", batch.problems()),
                // These say their place themselves.
                Record::Settings(settings) => ("", settings.problems()),
                Record::Stock(stock) => ("stock", stock.problems()),
            };
            let problems: Vec<Problem> = problems.into_iter().map(|p| p.at(place)).collect();
            if problems.is_empty() {
                Result::Ok(Ok::Check(Checked { good: true }))
            } else {
                Err(problems)
            }
        }
        Request::PlanBag(ask) => bag::bag(&ask).map(Ok::PlanBag),
        Request::Trouble(ask) => trouble(&ask).map(Ok::Trouble).map_err(|p| vec![p]),
        Request::PlanBack(ask) => {
            let batches: Vec<_> = ask.batches.iter().map(|n| (n.id.as_str(), &n.batch)).collect();
            back::back(&batches, &ask.wish, ask.now, &ask.settings).map(Ok::PlanBack)
        }
        Request::Calendar(ask) => {
            let batches: Vec<_> = ask.batches.iter().map(|n| (n.id.as_str(), &n.batch)).collect();
            plan::calendar(&batches, &ask.earlier, ask.now, &ask.rests, &ask.words, &ask.settings).map(Ok::Calendar)
        }
        Request::Labels(ask) => {
            let (frozen, vacuum, packs) = (ask.frozen, ask.vacuum, &ask.packs);
            Awake::but_for(&ask.rests)
                .map_err(|problem| vec![problem])
                .and_then(|awake| {
                    let how = Packed {
                        frozen,
                        vacuum,
                        packs,
                        awake: &awake,
                    };
                    pack::labels(&ask.batch, &ask.settings, ask.now, &how).map(Ok::Labels)
                })
        }
        Request::CureClock(ask) => schedule::clock(&ask).map(Ok::CureClock),
        Request::LearnCut(ask) => cure::learn(&ask).map(Ok::LearnCut).map_err(|p| vec![p]),
        Request::Ledger(ask) => {
            pack::ledger(&ask.batches, &ask.stock, ask.weight, ask.thickness, &ask.settings).map(Ok::Ledger)
        }
        Request::Larder(ask) => {
            let batches: Vec<_> = ask.batches.iter().map(|n| (n.id.as_str(), &n.batch)).collect();
            pack::larder(&ask.stock, &batches, ask.now, &ask.settings).map(Ok::Larder)
        }
    };
    match answered {
        Result::Ok(ok) => Answer::Ok(Box::new(ok)),
        Err(problems) => Answer::Problems(problems),
    }
}

/// A request that is not of the documented form: where it failed, below the question, and why.
pub fn bad_form(path: &str, wrong: Wrong) -> Answer {
    let place = path.split_once('.').map_or("", |(_, place)| place);
    Answer::Problems(vec![Problem::of(Code::BadForm, wrong).at(place)])
}

fn tables() -> Tables {
    Tables {
        ingredients: pantry::ingredients().to_vec(),
        cuts: pantry::cuts().to_vec(),
        game: bag::names(),
        profiles: dose::profiles(),
        scale_steps: weigh::SCALE_STEPS.to_vec(),
        settings: Settings::new_page(),
    }
}

fn too_large() -> Problem {
    Problem::of(Code::TooLarge, Wrong::TooLargeToReckon)
}

/// A verdict on what is already on the meat or in the brine.
fn check_dose(ask: &AskDose) -> Result<Verdict, Vec<Problem>> {
    let mut problems = ask.settings.problems();
    if ask.green.base().is_zero() {
        problems.push(Problem::of(Code::TooSmall, Wrong::MeatNought).at("green"));
    }
    if ask.method.has_brine() && ask.water.is_none() {
        problems.push(Problem::of(Code::Missing, Wrong::WaterMissing).at("water"));
    }
    problems.extend(recipe::take(ask.method, ask.take).map(|p| p.at("take")));
    let cut = pantry::cut_said(ask.cut.as_deref()).unwrap_or_else(|p| {
        problems.push(p);
        None
    });
    let step = ask.settings.scale_step.base();
    let portion = |put: &PutIn, at| put.portion(ask.settings.kit()).map_err(|p| p.at(at));
    let also = ask.also.as_ref().map(|put| portion(put, "also"));
    let put_in: Result<Vec<Portion>, Problem> = [portion(&ask.put_in, "put_in")].into_iter().chain(also).collect();
    let (Some(rule), Result::Ok(portions), true) = (
        dose::rule(&ask.settings.profile, ask.method, cut.map_or(Belly::No, |c| c.belly)),
        &put_in,
        problems.is_empty(),
    ) else {
        problems.extend(put_in.err());
        return Err(problems);
    };
    let lost = || vec![too_large()];
    let green = dose::summed(Range::point(ask.green.base()), step, 1).ok_or_else(lost)?;
    // Water is weighed once; of what is dissolved, salt and sugar where it is not said.
    let dissolved = ask.dissolved.filter(|d| !d.base().is_zero());
    let weighings = dissolved.map_or(1, |_| ask.weighings.unwrap_or(2).min(40).saturating_add(1));
    let pickle = [ask.water, ask.dissolved]
        .into_iter()
        .flatten()
        .map(Mass::base)
        .chain(portions.iter().map(|p| p.weight.typical))
        .try_fold(Decimal::ZERO, |sum, grams| sum.plus(grams))
        .ok_or_else(lost)?;
    let kind = cut.map(|c| c.kind);
    let pickle = dose::summed(Range::point(pickle), step, weighings).ok_or_else(lost)?;
    let whole = Whole {
        counted: ask.method.counted(),
        green,
        pickle,
        fo: None,
        take: ask
            .take
            .and_then(|f| f.base().over(Decimal::ONE_HUNDRED))
            .unwrap_or_default(),
    };
    let piece = dose::Lying {
        kind: kind.unwrap_or(MeatKind::Own),
        thickness: ask.thickness.map(|t| t.base()),
        thawed: false,
    };
    let ascorbate = ask.ascorbate.zip(whole.base());
    let ascorbate = ascorbate.and_then(|(grams, base)| weigh::accelerator_ppm(grams.base(), step, base));
    let belly = cut.map_or(Belly::No, |c| c.belly);
    let evens = (ask.method == Method::PickUp).then(|| dose::evens([piece], ask.stays.map(|s| s.base())));
    let case = Case {
        rule,
        eaten: ask.eaten,
        method: ask.method,
        whole,
        water: ask.water.map(Mass::base).unwrap_or_default(),
        evens,
        ascorbate,
        weighed: true,
        portions: portions.clone(),
        step,
        units: ask.settings.units,
    };
    let mut keys = dose::keys_for(true, ask.method, ask.eaten);
    dose::add_bacon(&mut keys, belly);
    dose::judge(&case.settled(), dose::cautions(&keys)).map_err(|p| vec![p])
}
