//! What stands on a bag label, a pack label and a gift tag. Dates are milliseconds; the page, which knows the calendar
//! of the person, writes them as days.

use super::heavy::{TooHeavy, in_all, too_heavy};
use super::ingredients::contents;
use super::written::{Blank, KeptBy, Meat, PaperFact};
use crate::batch::{Batch, Piece, kinds};
use crate::dose::{Caution, Ppm, cautions, pack_keys};
use crate::pantry::{self, MeatKind, OWN};
use crate::quantity::{Awake, Mass, Problem};
use crate::recipe::{Basis, Do, Step};
use crate::schedule;
use crate::standing::{Assurance, Assured, Doubt, Kind, Leave, Packing, Standing, Weight, cooks, packed};
use crate::weigh::{self, Settings, WeighSheet};
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
    /// The packs are heavier than their meat can be: to be asked about.
    pub too_heavy: Option<TooHeavy>,
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
    /// What is in it.
    pub what: Vec<Meat>,
    /// Green weight on a bag; nothing where the weight of a pack is to be written.
    pub weight: Option<String>,
    /// How it is kept, before the date.
    pub keep: KeepWord,
    /// The date, in milliseconds since 1970; nothing where it has not earned one.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub until: Option<Assured<i64>>,
    /// What the date of a pack rests on; nothing where it has none.
    pub basis: Option<KeptBy>,
    /// On a bag: what its hour rests on; nothing where there is none.
    pub by: Option<Basis>,
    /// When it was put in the cure, or packed.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub made: Option<i64>,
    /// Cured, cooked, ingredients.
    pub facts: Vec<PaperFact>,
    /// Lines to write on, by hand.
    pub blanks: Vec<Blank>,
    /// Keys of the cautions at the foot.
    #[cfg_attr(feature = "types", ts(type = "CautionKey[]"))]
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
    /// Keep a vacuum pack at 3 °C (37 °F) or colder.
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
        out: in_all(how.packs),
        too_heavy: too_heavy(batch, in_all(how.packs), settings.units),
    })
}

struct Work<'a> {
    batch: &'a Batch,
    settings: &'a Settings,
    now: i64,
    awake: &'a Awake,
    packing: Packing,
    kinds: Vec<MeatKind>,
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
            // What raw meat keeps ends it sooner than its cure is through, and then that is the reason.
            by: until.as_ref().filter(|_| leave.is_some()).map(|until| {
                if until.capped.is_some() {
                    Basis::Published
                } else {
                    until.kind
                }
            }),
            until: leave.zip(until).map(|(leave, until)| Assured::by(leave, until.at)),
            made: begun.or(Some(self.now)),
            facts: vec![self.cured(), PaperFact::Raw, self.ingredients()],
            blanks: Vec::new(),
            foot: vec!["label-raw", self.sale(), "label-shot"],
            doubts,
            ..self.blank()
        }
    }

    fn pack(&self) -> Paper {
        let keeps = self.standing.keeps();
        let doubts = self.standing.barring(Assurance::Keep);
        // What is past mending is not to be cooked, kept or opened after all: nothing beside it may sound as if it were.
        let lost = doubts.iter().any(|d| d.weight == Weight::Forbids);
        let mut foot = vec![self.sale(), "label-shot"];
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
            basis: keeps.map(|(_, keeping)| KeptBy {
                row: keeping.row.key,
                source: keeping.row.source,
                status: keeping.row.status,
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
            foot,
            doubts,
            ..self.blank()
        }
    }

    /// The fields that the migratory-bird rules ask for stand only on birds, and only where that law holds.
    fn gift(&self, _leave: Leave) -> Paper {
        let pack = self.pack();
        // Of what is given only the giver knows the number, and the law asks for birds, not breasts.
        let on = self.batch.killed.clone();
        let mut facts = vec![PaperFact::Species, PaperFact::Killed { on }];
        facts.extend(pack.facts);
        // Whoever gets it may be one who must not eat it so, and may not know how it was made.
        let mut foot = pack.foot;
        if self.standing.leave(Assurance::Cooked).is_none() {
            foot.insert(0, "gift-raw");
        }
        Paper {
            kind: PaperKind::Gift,
            facts,
            foot,
            blanks: if self.is_tagged() {
                vec![Blank::Birds, Blank::Hunter, Blank::Signature, Blank::GivenTo]
            } else {
                vec![Blank::From, Blank::GivenTo]
            },
            ..pack
        }
    }

    fn is_tagged(&self) -> bool {
        self.in_us() && self.kinds.contains(&MeatKind::Bird)
    }

    fn in_us(&self) -> bool {
        self.settings.profile.starts_with("us-")
    }

    /// Whether it may be sold is a matter of the country.
    fn sale(&self) -> &'static str {
        if self.in_us() { "label-sale" } else { "label-sale-other" }
    }

    fn rules(&self) -> Vec<&'static str> {
        let mut keys = vec![match (self.is_tagged(), self.in_us()) {
            (true, _) => "tag-birds",
            (false, true) => "tag-us",
            (false, false) => "tag-other",
        }];
        keys.push(self.sale());
        // Hot smoke that was not read yet is raw meat, and says so; it is no cold smoke.
        let smoked = |s: &Step| s.act == Do::Smoke && !cooks(s);
        let smoked = self.batch.recipe.steps.iter().any(smoked);
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
            basis: None,
            by: None,
            made: None,
            facts: Vec::new(),
            blanks: Vec::new(),
            foot: Vec::new(),
            doubts: Vec::new(),
        }
    }

    /// What is in the bag: each meat once.
    fn what(&self) -> Vec<Meat> {
        let mut rows: Vec<Meat> = Vec::new();
        for piece in &self.batch.pieces {
            let one = meat(piece);
            match rows
                .iter_mut()
                .find(|known| (known.cut, &known.name) == (one.cut, &one.name))
            {
                Some(known) => {
                    let both = known.count.zip(one.count);
                    known.count = both.map(|(known, more)| known.saturating_add(more));
                }
                None => rows.push(one),
            }
        }
        rows
    }

    /// The tick of packing, or now.
    fn packed(&self) -> i64 {
        packed(self.batch).unwrap_or(self.now)
    }

    /// What went in, as far as that is assured.
    fn cured(&self) -> PaperFact {
        if self.standing.leave(Assurance::NoCure).is_some() {
            return PaperFact::NoCure;
        }
        let verdict = &self.sheet.verdict;
        let assured = self.standing.leave(Assurance::Dose).is_some();
        let part = |ppm: &Option<Ppm>| {
            let ppm = ppm.as_ref().filter(|p| assured && p.high > 0)?;
            Some((ppm.low, ppm.high))
        };
        let (nitrite, nitrate) = (part(&verdict.nitrite), part(&verdict.nitrate));
        if nitrite.or(nitrate).is_some() {
            return PaperFact::Cured { nitrite, nitrate };
        }
        let weak = |d: &Doubt| matches!(d.kind, Kind::DoseLow | Kind::DoseMayBeLow);
        if self.standing.doubts().iter().any(weak) {
            PaperFact::CuredWeakly
        } else {
            PaperFact::CureUnknown
        }
    }

    fn cooked(&self) -> PaperFact {
        let read = self.standing.leave(Assurance::Cooked).and(self.standing.cooked_to());
        let units = self.settings.units;
        match (read, self.standing.needed()) {
            (Some(read), _) => PaperFact::Cooked { read: read.show(units) },
            (None, Some(needed)) => PaperFact::CookTo {
                needed: needed.show(units),
            },
            (None, None) => PaperFact::NotCooked,
        }
    }

    /// What is in a pack, which holds a part of each.
    fn meats(&self) -> Vec<Meat> {
        let of = |piece: &Piece| Meat {
            count: None,
            ..meat(piece)
        };
        let mut meats: Vec<Meat> = self.batch.pieces.iter().map(of).collect();
        meats.dedup();
        meats
    }

    fn ingredients(&self) -> PaperFact {
        contents(self.batch, &self.sheet, &self.meats(), self.settings)
    }
}

/// The table's word for a cut, or the user's own. A number that nobody counted is no fact of a label.
fn meat(piece: &Piece) -> Meat {
    let cut = pantry::cut(&piece.cut);
    Meat {
        cut: cut.map_or(OWN, |c| c.key),
        name: cut.map_or_else(|| piece.name.clone(), |_| String::new()),
        count: Some(piece.count).filter(|_| !piece.about),
    }
}

/// What stands in place of a date.
fn not_yet(doubts: &[Doubt]) -> KeepWord {
    if doubts.iter().any(|d| d.weight == Weight::Forbids) {
        KeepWord::DoNotEat
    } else {
        KeepWord::NotYet
    }
}
