//! The words of a bag label, a pack label and a gift tag. Dates are milliseconds; the page, which knows the calendar
//! of the person, writes them as days.

use super::ingredients::contents;
use crate::batch::{Batch, Piece, kinds};
use crate::dose::{Caution, Verdict, cautions, pack_keys};
use crate::pantry;
use crate::quantity::exact::Exact;
use crate::quantity::{Awake, Mass, Problem};
use crate::recipe::{Basis, Do};
use crate::schedule;
use crate::standing::{Assurance, Assured, Doubt, Kind, Leave, Packing, Standing, Weight, packed};
use crate::weigh::{self, Fact, Settings, WeighSheet};
use rust_decimal::Decimal;
use serde::Serialize;

/// Everything to print for a batch.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Labels {
    /// All that is in doubt on the batch.
    pub doubts: Vec<Doubt>,
    /// The bag label and the pack label; the gift tag where nothing forbids to give it.
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
    /// How it is kept, before the date.
    pub keep: KeepWord,
    /// The date, in milliseconds since 1970; nothing where it has not earned one.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub until: Option<Assured<i64>>,
    /// What the date rests on, with its status.
    pub basis: String,
    /// On a bag: what its hour rests on; nothing where there is none.
    pub by: Option<Basis>,
    /// When it was put in the cure, or packed.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub made: Option<i64>,
    /// Cured, cooked, ingredients.
    pub facts: Vec<Fact>,
    /// Rules to write on, by hand: signature, address.
    pub blanks: Vec<&'static str>,
    /// Sentences at the foot.
    pub foot: Vec<&'static str>,
    /// What holds it or forbids it: it stands on the paper, in place of a date.
    pub doubts: Vec<Doubt>,
}

/// How it is kept. One temperature for each.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum KeepWord {
    /// Keep it cold; it is in the cure until the date.
    InCure,
    /// Keep it cold.
    Cold,
    /// Keep a vacuum pack at 3 °C (38 °F) or colder.
    ColdVacuum,
    /// Keep it frozen.
    Frozen,
    /// Something is still to be done, or it cannot be said: do not eat it yet.
    NotYet,
    /// Do not eat it.
    DoNotEat,
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
    /// When somebody is about, to take it out of the cure.
    pub awake: &'a Awake,
}

/// The labels of a batch at `now`.
///
/// # Errors
/// The problems of the batch and the settings, or what is missing to reckon the list.
pub fn labels(batch: &Batch, settings: &Settings, now: i64, how: &Packed) -> Result<Labels, Vec<Problem>> {
    let sheet = weigh::sheet(batch, settings)?;
    let packing = Packing {
        frozen: how.frozen,
        vacuum: how.vacuum,
    };
    let standing = Standing::judged(batch, settings, &Ok(sheet.verdict.clone()), now, packing);
    let work = Work {
        batch,
        settings,
        now,
        awake: how.awake,
        packing,
        kinds: kinds(&batch.pieces),
        standing,
        sheet,
    };
    let mut papers = vec![work.bag(), work.pack()];
    papers.extend(work.standing.leave(Assurance::Gift).map(|leave| work.gift(leave)));
    Ok(Labels {
        doubts: work.standing.doubts().to_vec(),
        papers,
        rules: cautions(&work.rules()),
        out: out(how.packs),
    })
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
    awake: &'a Awake,
    packing: Packing,
    kinds: Vec<&'static str>,
    standing: Standing,
    sheet: WeighSheet,
}

impl Work<'_> {
    fn bag(&self) -> Paper {
        let begun = self.batch.tick("rub").map(|t| t.at);
        let until = schedule::until(self.batch, self.now, self.settings, self.awake);
        // A bag is labelled before it closes: by the list, what is in it is what was ticked.
        let leave = self.standing.leave(Assurance::GoOn);
        let doubts = self.standing.barring(Assurance::GoOn);
        Paper {
            kind: PaperKind::Bag,
            weight: Some(self.sheet.green.text.clone()),
            keep: if leave.is_some() {
                KeepWord::InCure
            } else {
                not_yet(&doubts)
            },
            by: until.as_ref().map(|until| until.kind),
            until: leave.zip(until).map(|(leave, until)| Assured::by(leave, until.at)),
            made: begun.or(Some(self.now)),
            facts: vec![self.cured(), fact("Cooked", "no, raw"), self.ingredients()],
            blanks: Vec::new(),
            foot: texts(&["label-raw", "label-sale", "label-shot"]),
            doubts,
            ..self.blank()
        }
    }

    fn pack(&self) -> Paper {
        let keeps = self.standing.keeps();
        let doubts = self.standing.barring(Assurance::Keep);
        // What is past mending is not to be cooked, kept or opened after all: nothing beside it may sound as if it were.
        let lost = doubts.iter().any(|d| d.weight == Weight::Forbids);
        let mut foot = vec!["label-sale", "label-shot"];
        if !lost {
            foot.insert(0, "label-shelf");
            if self.packing.vacuum {
                foot.push("label-vacuum");
            }
            if self.standing.leave(Assurance::Cooked).is_none() {
                foot.insert(0, "label-raw");
            }
        }
        Paper {
            kind: PaperKind::Pack,
            keep: match (doubts.is_empty(), self.packing.frozen, self.packing.vacuum) {
                (false, ..) => not_yet(&doubts),
                (true, true, _) => KeepWord::Frozen,
                (true, false, true) => KeepWord::ColdVacuum,
                (true, false, false) => KeepWord::Cold,
            },
            until: keeps.map(|(leave, keeping)| Assured::by(leave, keeping.until)),
            basis: keeps.map_or_else(String::new, |(_, keeping)| {
                let row = keeping.row;
                format!("{} ({}, {})", row.says, row.source, pantry::in_words(row.status))
            }),
            made: Some(self.packed()),
            what: self.meats(),
            // What was never sound has no use for how it was cooked.
            facts: if doubts
                .iter()
                .any(|d| d.weight == Weight::Forbids && d.kind != Kind::PastKeeping)
            {
                vec![self.ingredients()]
            } else {
                vec![self.cured(), self.cooked(), self.ingredients()]
            },
            foot: texts(&foot),
            doubts,
            ..self.blank()
        }
    }

    /// The fields that the migratory-bird rules ask for stand only on birds, and only where that law holds.
    fn gift(&self, _leave: Leave) -> Paper {
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
        let smoked = self.batch.recipe.steps.iter().any(|s| s.act == Do::Smoke);
        let raw = self.standing.leave(Assurance::Cooked).is_none();
        let cure = self.standing.leave(Assurance::NoCure).is_none();
        keys.extend(pack_keys(&self.kinds, cure, smoked && raw, self.packing.vacuum));
        keys
    }

    fn blank(&self) -> Paper {
        Paper {
            kind: PaperKind::Bag,
            head: self.batch.name.clone(),
            what: self.what(),
            weight: None,
            keep: KeepWord::Cold,
            until: None,
            basis: String::new(),
            by: None,
            made: None,
            facts: Vec::new(),
            blanks: Vec::new(),
            foot: Vec::new(),
            doubts: Vec::new(),
        }
    }

    /// `8 mallard breast, 8 teal breast`.
    fn what(&self) -> String {
        // A number that nobody counted is no fact of a label.
        let mut rows: Vec<(String, Option<u32>)> = Vec::new();
        for piece in &self.batch.pieces {
            let (name, own) = (meat(piece), Some(piece.count).filter(|_| !piece.about));
            match rows.iter_mut().find(|(known, _)| *known == name) {
                Some((_, count)) => *count = count.zip(own).map(|(count, own)| count.saturating_add(own)),
                None => rows.push((name, own)),
            }
        }
        let said = rows
            .into_iter()
            .map(|(name, count)| count.map_or_else(|| name.clone(), |count| format!("{count} {name}")));
        said.collect::<Vec<_>>().join(", ")
    }

    /// The tick of packing, or now.
    fn packed(&self) -> i64 {
        packed(self.batch).unwrap_or(self.now)
    }

    /// What went in, as far as that is assured: the whole of the range, since a label is read by others.
    fn cured(&self) -> Fact {
        let verdict: &Verdict = &self.sheet.verdict;
        let part = |name: &str, ppm: &Option<crate::dose::Ppm>| {
            let ppm = ppm.as_ref().filter(|p| p.high > 0)?;
            Some(format!("{name} {} to {} ppm going in", ppm.low, ppm.high))
        };
        if self.standing.leave(Assurance::NoCure).is_some() {
            return fact("Cured", "no, salt only");
        }
        let said: Vec<String> = [part("nitrite", &verdict.nitrite), part("nitrate", &verdict.nitrate)]
            .into_iter()
            .flatten()
            .filter(|_| self.standing.leave(Assurance::Dose).is_some())
            .collect();
        let weak = self.standing.doubts().iter();
        let weak = weak
            .clone()
            .any(|d| matches!(d.kind, Kind::DoseLow | Kind::DoseMayBeLow));
        match (said.is_empty(), weak) {
            (false, _) => fact("Cured", &said.join(", ")),
            (true, true) => fact("Cured", "too weakly to count"),
            (true, false) => fact("Cured", "cannot be said"),
        }
    }

    fn cooked(&self) -> Fact {
        let read = self.standing.leave(Assurance::Cooked).and(self.standing.cooked_to());
        let needed = self.standing.needed();
        let says = match (read, needed) {
            (Some(read), _) => format!("to {} in the middle", read.show(self.settings.units).text),
            (None, Some(needed)) => {
                format!("no: cook to {} before eating", needed.show(self.settings.units).text)
            }
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

/// What stands in place of a date.
fn not_yet(doubts: &[Doubt]) -> KeepWord {
    if doubts.iter().any(|d| d.weight == Weight::Forbids) {
        KeepWord::DoNotEat
    } else {
        KeepWord::NotYet
    }
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
