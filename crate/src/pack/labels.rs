//! The words of a bag label, a pack label and a gift tag. Dates are milliseconds; the page, which knows the calendar
//! of the person, writes them as days.

use super::ingredients::contents;
use super::keeping::{Done, cooked_at, done, keeps, state};
use crate::batch::{Batch, Piece, kinds};
use crate::cure::ended;
use crate::dose::{Caution, Verdict, cautions};
use crate::pantry;
use crate::quantity::exact::Exact;
use crate::quantity::{Mass, Problem, Span, Temperature};
use crate::recipe::{Do, Eaten};
use crate::weigh::{self, Fact, Settings, WeighSheet};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::Serialize;

const MINUTE: i64 = 60_000;
const DAY: i64 = 1440 * MINUTE;

/// Everything to print for a batch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Labels {
    /// Why there is no label for what would be eaten or given: the dose holds the batch.
    pub held: Option<String>,
    /// Why there is none yet: the meat is still in the cure.
    pub waits: Option<&'static str>,
    /// Where the log of the fire says otherwise than the ticks: what to look at.
    pub asks: Option<String>,
    /// The bag label; then, unless held or in the cure, the pack label and the gift tag.
    pub papers: Vec<Paper>,
    /// Rules to read before a gift or a vacuum pack, with source and status; not printed.
    pub rules: Vec<Caution>,
    /// Weight of all packs, where each is weighed.
    #[cfg_attr(feature = "types", ts(type = "string | null"))]
    pub out: Option<Mass>,
}

/// What a paper is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum PaperKind {
    /// On the bag before it closes, while the meat is in the cure.
    Bag,
    /// On the finished pack.
    Pack,
    /// On what is given to another.
    Gift,
}

/// One label or tag.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Paper {
    /// What it is for.
    pub kind: PaperKind,
    /// Name on top.
    pub head: String,
    /// `8 mallard breast, 8 teal breast` in the bag; without the number in a pack, which holds a part of them.
    pub what: String,
    /// Green weight on a bag; nothing where the weight of a pack is to be written.
    pub weight: Option<String>,
    /// Words before the date: `Keep cold. Use by`.
    pub keep: String,
    /// The date, in milliseconds since 1970; nothing where no figure is known.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub until: Option<i64>,
    /// What the date rests on, with its status.
    pub basis: String,
    /// When it was put in the cure, or packed.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub made: Option<i64>,
    /// Cured, cooked, ingredients.
    pub facts: Vec<Fact>,
    /// Rules to write on, by hand: signature, address.
    pub blanks: Vec<&'static str>,
    /// Sentences at the foot.
    pub foot: Vec<&'static str>,
}

/// How a batch is packed.
#[derive(Clone, Debug)]
pub struct Packed<'a> {
    /// For the freezer.
    pub frozen: bool,
    /// Vacuum packs.
    pub vacuum: bool,
    /// Weights of the packs.
    pub packs: &'a [Mass],
}

/// The labels of a batch at `now`.
///
/// # Errors
/// The problems of the batch and the settings, or what is missing to reckon the list.
pub fn labels(batch: &Batch, settings: &Settings, now: i64, packed: &Packed) -> Result<Labels, Vec<Problem>> {
    let sheet = weigh::sheet(batch, settings)?;
    let work = Work {
        batch,
        settings,
        now,
        frozen: packed.frozen,
        vacuum: packed.vacuum,
        kinds: kinds(&batch.pieces),
        done: done(batch, &kinds(&batch.pieces), now, settings),
        sheet,
    };
    let held = work.sheet.verdict.held.then(|| work.sheet.verdict.word.clone());
    let mut papers = vec![work.bag()];
    let waits = in_cure(batch).then_some("It is still in the cure.");
    if held.is_none() && waits.is_none() {
        papers.extend([work.pack(), work.gift()]);
    }
    Ok(Labels {
        held,
        waits,
        asks: work.asks(),
        papers,
        rules: cautions(&work.rules()),
        out: out(packed.packs),
    })
}

/// True from the rub until the cure came off or the log of the fire is begun.
fn in_cure(batch: &Batch) -> bool {
    let cures = batch.recipe.steps.first().is_some_and(|s| s.act == Do::Cure);
    cures && batch.tick("rub").is_some() && ended(batch).is_none() && batch.fire.is_none()
}

fn out(packs: &[Mass]) -> Option<Mass> {
    let sum = packs
        .iter()
        .try_fold(Decimal::ZERO, |sum, pack| sum.plus(pack.base()))?;
    Mass::new(sum).ok().filter(|_| !packs.is_empty())
}

struct Work<'a> {
    batch: &'a Batch,
    settings: &'a Settings,
    now: i64,
    frozen: bool,
    vacuum: bool,
    kinds: Vec<&'static str>,
    done: Done,
    sheet: WeighSheet,
}

impl Work<'_> {
    fn bag(&self) -> Paper {
        let begun = self.batch.tick("rub").map(|t| t.at);
        let cure = self.batch.recipe.steps.first().filter(|s| s.act == Do::Cure);
        let lasts = cure.and_then(|s| s.lasts).map(millis);
        let held = self.sheet.verdict.held;
        Paper {
            kind: PaperKind::Bag,
            weight: Some(self.sheet.green.text.clone()),
            keep: if held {
                "Held: do not eat."
            } else {
                "Keep at 2 to 4 °C. In the cure until"
            }
            .to_owned(),
            until: lasts
                .filter(|_| !held)
                .and_then(|l| begun.unwrap_or(self.now).checked_add(l)),
            basis: if lasts.is_some() {
                "by the time in the recipe"
            } else {
                "the recipe gives no time"
            }
            .to_owned(),
            made: begun.or(Some(self.now)),
            facts: vec![self.cured(), fact("Cooked", "no, raw"), self.ingredients()],
            blanks: Vec::new(),
            foot: texts(&["label-raw", "label-sale", "label-shot"]),
            ..self.blank()
        }
    }

    fn pack(&self) -> Paper {
        let (until, basis) = self.use_by();
        let mut foot = vec!["label-shelf", "label-sale", "label-shot"];
        if self.vacuum {
            foot.push("label-vacuum");
        }
        if self.batch.recipe.eaten == Eaten::HungForMonths {
            foot.push("label-raw-hung");
        } else if self.done.cooked.is_none() {
            foot.insert(0, "label-raw");
        }
        Paper {
            kind: PaperKind::Pack,
            keep: match (self.frozen, until) {
                (true, _) => "Keep frozen, −18 °C. Best by",
                (false, Some(_)) => "Keep cold, 4 °C or colder. Use by",
                (false, None) => "Keep cold, 4 °C or colder.",
            }
            .to_owned(),
            until,
            basis,
            made: Some(self.packed()),
            what: self.meats(),
            facts: vec![self.cured(), self.cooked(), self.ingredients()],
            foot: texts(&foot),
            ..self.blank()
        }
    }

    /// The fields that the migratory-bird rules ask for stand only on birds, and only where that law holds.
    fn gift(&self) -> Paper {
        let pack = self.pack();
        // Of what is given only the giver knows the number, and the law asks for birds, not breasts.
        let mut facts = vec![fact("Species, number", "")];
        facts.push(fact("Date killed", &self.batch.killed));
        facts.extend(pack.facts);
        Paper {
            kind: PaperKind::Gift,
            facts,
            blanks: if self.is_tagged() {
                vec![
                    "Birds in all",
                    "Hunter’s name and address",
                    "Hunter’s signature",
                    "Given to, and date",
                ]
            } else {
                vec!["From", "Given to, and date"]
            },
            ..pack
        }
    }

    fn is_tagged(&self) -> bool {
        self.in_us() && self.kinds.contains(&"bird")
    }

    fn in_us(&self) -> bool {
        self.settings.profile.starts_with("us-")
    }

    fn rules(&self) -> Vec<&'static str> {
        let mut keys = vec![match (self.is_tagged(), self.in_us()) {
            (true, _) => "tag-birds",
            (false, true) => "tag-us",
            (false, false) => "tag-other",
        }];
        keys.push("label-sale");
        if self.vacuum {
            keys.push("label-vacuum");
        }
        keys.extend(["label-shot", "local-rules"]);
        keys
    }

    fn blank(&self) -> Paper {
        Paper {
            kind: PaperKind::Bag,
            head: self.batch.name.clone(),
            what: self.what(),
            weight: None,
            keep: String::new(),
            until: None,
            basis: String::new(),
            made: None,
            facts: Vec::new(),
            blanks: Vec::new(),
            foot: Vec::new(),
        }
    }

    /// `8 mallard breast, 8 teal breast`.
    fn what(&self) -> String {
        let mut rows: Vec<(String, u32)> = Vec::new();
        for piece in &self.batch.pieces {
            let name = meat(piece);
            match rows.iter_mut().find(|(known, _)| *known == name) {
                Some((_, count)) => *count = count.saturating_add(piece.count),
                None => rows.push((name, piece.count)),
            }
        }
        let said = rows.into_iter().map(|(name, count)| format!("{count} {name}"));
        said.collect::<Vec<_>>().join(", ")
    }

    /// The tick of packing, or now.
    fn packed(&self) -> i64 {
        let at = self.batch.recipe.steps.iter().rposition(|s| s.act == Do::Pack);
        at.and_then(|i| self.batch.step(i)).map_or(self.now, |t| t.at)
    }

    fn use_by(&self) -> (Option<i64>, String) {
        let place = if self.frozen { "frozen" } else { "cold" };
        let row = state(self.batch, &self.done).and_then(|state| keeps(state, &self.kinds, place));
        let Some(row) = row else {
            return (
                None,
                "No keeping time is known for it here: ask an authority.".to_owned(),
            );
        };
        let until = self.packed().checked_add(i64::from(row.low).saturating_mul(DAY));
        (
            until,
            format!("{} ({}, {})", row.says, row.source, pantry::in_words(row.status)),
        )
    }

    fn cured(&self) -> Fact {
        let verdict: &Verdict = &self.sheet.verdict;
        let part = |name: &str, ppm: &Option<crate::dose::Ppm>| {
            let ppm = ppm.as_ref().filter(|p| p.high > 0)?;
            Some(format!("{name} {} ppm going in", ppm.typical))
        };
        let said: Vec<String> = [part("nitrite", &verdict.nitrite), part("nitrate", &verdict.nitrate)]
            .into_iter()
            .flatten()
            .collect();
        match (self.done.cured, said.is_empty()) {
            (false, _) => fact("Cured", "no, salt only"),
            (true, true) => fact("Cured", "yes"),
            (true, false) => fact("Cured", &said.join(", ")),
        }
    }

    fn asks(&self) -> Option<String> {
        let log = self.done.log_differs?.show(self.settings.units).text;
        Some(match self.done.cooked {
            Some(_) => format!(
                "The log says {log} or more in every class, and no step that cooks it is ticked. The label goes by the log."
            ),
            None => format!(
                "A step that cooks it is ticked, and the log says no more than {log} in one class. The label goes by the log."
            ),
        })
    }

    fn cooked(&self) -> Fact {
        let show = |t: Temperature| t.show(self.settings.units).text;
        let least = cooked_at(self.batch.recipe.method, &self.kinds);
        let least = Temperature::new(least).ok().map(show);
        let says = match (self.done.cooked, least) {
            (Some(t), _) => format!("to {} in the middle", show(t)),
            (None, _) if self.batch.recipe.eaten == Eaten::HungForMonths => "no, eaten raw".to_owned(),
            (None, Some(least)) => format!("no: cook to {least} before eating"),
            (None, None) => "no".to_owned(),
        };
        fact("Cooked", &says)
    }

    /// `mallard breast, teal breast`.
    fn meats(&self) -> String {
        let mut meats: Vec<String> = self.batch.pieces.iter().map(meat).collect();
        meats.dedup();
        meats.join(", ")
    }

    fn ingredients(&self) -> Fact {
        let what = contents(self.batch, &self.sheet, &self.meats(), self.settings);
        fact("Ingredients", &format!("{}. {}", what.list, what.allergens))
    }
}

/// The table's word for a cut, or the user's own.
fn meat(piece: &Piece) -> String {
    pantry::cut(&piece.cut).map_or_else(|| piece.name.clone(), |c| c.name.to_lowercase())
}

fn fact(label: &str, value: &str) -> Fact {
    Fact {
        label: label.to_owned(),
        value: value.to_owned(),
    }
}

fn texts(keys: &[&str]) -> Vec<&'static str> {
    cautions(keys).into_iter().map(|c| c.text).collect()
}

fn millis(span: Span) -> i64 {
    let ms = span.base().times(Decimal::from(MINUTE));
    ms.and_then(|m| m.round().to_i64()).unwrap_or(0)
}
