//! The pieces on the board: each size class, and green weight in all.

use super::model::Piece;
use crate::dose::{Caution, cautions, dressing_keys};
use crate::pantry::{self, Belly, MeatKind, OWN, Status};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Figure, Kind, Length, Mass, MassKind, Problem, Range, System, Wrong};
use rust_decimal::{Decimal, dec};
use serde::Serialize;

/// The pieces screen.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PieceSheet {
    /// One row for each size class, in order.
    pub rows: Vec<PieceRow>,
    /// Pieces in all.
    pub count: u32,
    /// Of one size at least nobody counted them.
    pub about: bool,
    /// Green weight; the typical one when not all is weighed.
    pub green: Figure,
    /// Low and high where some pieces are not weighed yet.
    pub green_range: Option<(Figure, Figure)>,
    /// True when every class has a weight.
    pub weighed: bool,
    /// Where thicknesses differ so much that one time will not do for all.
    pub mixed: Option<Mixed>,
    /// What stands beside the dressing and the cutting up.
    pub cautions: Vec<Caution>,
}

/// What a size class is called: a cut, whose name the page knows, or the cook's own word.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PieceName {
    /// Key of the cut.
    #[cfg_attr(feature = "types", ts(type = "CutKey | 'own'"))]
    pub cut: &'static str,
    /// The cook's own word; empty where there is none.
    pub name: String,
}

/// How many of what: 8 mallard breasts.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Counted {
    /// How many.
    pub count: u32,
    /// Nobody counted them.
    pub about: bool,
    /// What they are called.
    pub of: PieceName,
}

/// One size class.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PieceRow {
    /// What it is called.
    pub of: PieceName,
    /// Pieces.
    pub count: u32,
    /// Weight of one, typical where not weighed.
    pub each: Figure,
    /// Weight of all, typical where not weighed.
    pub all: Figure,
    /// Low and high of all where not weighed.
    pub range: Option<(Figure, Figure)>,
    /// Where that range comes from.
    pub source: Option<CutSource>,
    /// The thickest part.
    pub thickness: Option<Figure>,
    /// Where the weight is so far from the usual that a nought or a unit may be wrong.
    pub odd: Option<OddWeight>,
    /// Where the thickness is.
    pub odd_thickness: Option<OddThickness>,
}

/// A thickness that is rather another unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum OddThickness {
    /// As thin as a strip, of a cut that is none.
    Thin,
    /// Thicker than a haunch.
    Thick,
}

/// Below this a piece is a strip, in millimetres (judgement).
const STRIP: Decimal = dec!(8);
/// Above this no haunch is thick, in millimetres (judgement).
const HAUNCH: Decimal = dec!(250);
/// What is cut in strips.
const STRIPS: &str = "venison-strips";

/// A weight that is less than half the least that is usual, or more than twice the most.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct OddWeight {
    /// What the class is called.
    pub of: PieceName,
    /// What a piece of it weighs.
    pub each: String,
    /// Least and most that are usual.
    pub usual: [String; 2],
}

/// Sizes that one time will not do for: the thickest is a quarter thicker than the thinnest, or more.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Mixed {
    /// What the thickest is called.
    pub thick: PieceName,
    /// How thick it is.
    pub thickness: String,
    /// What the thinnest is called.
    pub thin: PieceName,
    /// How thick that is.
    pub thinness: String,
}

/// Where the usual weight of a cut comes from.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "is", rename_all = "snake_case")]
pub enum CutSource {
    /// A row of the table of cuts.
    Table {
        /// Where it is from.
        source: &'static str,
        /// How well it is known.
        status: Status,
    },
    /// No figure is known: it is to be weighed.
    Unknown,
}

/// Green weight of all pieces.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Green {
    /// Grams.
    pub grams: Range,
    /// Grams without the bones that were said to be in: what a dose is counted over.
    pub meat: Range,
    /// Pieces.
    pub count: u32,
    /// True when every class has a weight.
    pub weighed: bool,
    /// True when every class has a weight or a figure in the table.
    pub known: bool,
    /// Half-steps of the scale in the sum: one for each weighing.
    pub weighings: u32,
}

impl Piece {
    /// Grams of one piece, where the class is weighed.
    #[must_use]
    pub fn one(&self) -> Option<Decimal> {
        let weight = self.weight?.base();
        if self.each {
            return Some(weight);
        }
        weight.over(Decimal::from(self.count))
    }

    /// Grams of all pieces of the class, where it is weighed.
    #[must_use]
    pub fn all(&self) -> Option<Decimal> {
        let weight = self.weight?.base();
        if !self.each {
            return Some(weight);
        }
        weight.times(Decimal::from(self.count))
    }
}

/// Grams of one class: what was weighed, or the range of the table. `None` where neither is there.
fn class_grams(piece: &Piece) -> Option<Range> {
    if piece.weight.is_some() {
        return piece.all().map(Range::point);
    }
    let (low, typical, high) = pantry::cut(&piece.cut)?.grams?;
    Range::new(low.into(), typical.into(), high.into()).map(|g| g.times(Decimal::from(piece.count)))
}

/// Thousandths of a joint that are bone, where its cut has no figure of its own. Memory.
const BONE: (u32, u32, u32) = (130, 220, 330);

/// The meat of a class without its bones, where they were said to be in it.
fn boned(piece: &Piece, grams: Range) -> Option<Range> {
    if !piece.bone_in {
        return Some(grams);
    }
    let (low, typical, high) = pantry::cut(&piece.cut).and_then(|c| c.bone).unwrap_or(BONE);
    let rest = |grams: Decimal, bone: u32| {
        let meat = dec!(1000).less(Decimal::from(bone))?;
        grams.times(meat)?.over(dec!(1000))
    };
    Some(Range {
        low: rest(grams.low, high)?,
        typical: rest(grams.typical, typical)?,
        high: rest(grams.high, low)?,
    })
}

/// Green weight in all. A class with neither weight nor table counts as nought and as not weighed.
///
/// # Errors
/// [`Code::TooLarge`] above the most that a weight may be.
pub fn green(pieces: &[Piece]) -> Result<Green, Problem> {
    let mut all = Green {
        grams: Range::point(Decimal::ZERO),
        meat: Range::point(Decimal::ZERO),
        count: 0,
        weighed: !pieces.is_empty(),
        known: true,
        weighings: 0,
    };
    for piece in pieces {
        let grams = class_grams(piece);
        let sum = all.grams.plus(grams.unwrap_or(Range::point(Decimal::ZERO)));
        all.grams = sum
            .filter(|s| s.high <= MassKind::facts().max)
            .ok_or_else(|| Problem::of(Code::TooLarge, Wrong::PiecesTooHeavy).at("pieces"))?;
        let meat = grams
            .and_then(|grams| boned(piece, grams))
            .unwrap_or(Range::point(Decimal::ZERO));
        all.meat = all.meat.plus(meat).unwrap_or(all.grams);
        all.count = all.count.saturating_add(piece.count);
        all.weighed &= piece.weight.is_some();
        all.known &= grams.is_some();
        // The weight of each was read once and counts so many times.
        all.weighings = all.weighings.saturating_add(if piece.each { piece.count } else { 1 });
    }
    Ok(all)
}

/// The kind of a class.
pub fn kind(piece: &Piece) -> MeatKind {
    pantry::cut(&piece.cut).map_or(MeatKind::Own, |c| c.kind)
}

/// Kinds of the pieces.
pub fn kinds(pieces: &[Piece]) -> Vec<MeatKind> {
    pieces.iter().map(kind).collect()
}

/// Whether one side is closed by rind or skin, by the cut or by what was said of the piece. The only place that says so: the
/// clock and the limits go by it.
#[must_use]
pub fn rind(piece: &Piece) -> bool {
    piece.skin || pantry::cut(&piece.cut).is_some_and(|c| c.belly == Belly::RindOn)
}

/// The belly among the pieces, if there is one: some jurisdictions judge it by rules of its own.
pub fn belly(pieces: &[Piece]) -> Belly {
    let one = |piece: &Piece| match pantry::cut(&piece.cut).map(|c| c.belly) {
        Some(Belly::Bare | Belly::RindOn) if rind(piece) => Belly::RindOn,
        Some(belly) => belly,
        None => Belly::No,
    };
    pieces.iter().map(one).max().unwrap_or(Belly::No)
}

/// What a class is called.
pub fn name_of(piece: &Piece) -> PieceName {
    PieceName {
        cut: pantry::cut(&piece.cut).map_or(OWN, |c| c.key),
        name: piece.name.clone(),
    }
}

/// How many of what.
pub fn counted(piece: &Piece) -> Counted {
    Counted {
        count: piece.count,
        about: piece.about,
        of: name_of(piece),
    }
}

/// The pieces screen.
///
/// # Errors
/// The problems of the size classes, or of their sum.
pub fn sheet(pieces: &[Piece], units: System) -> Result<PieceSheet, Vec<Problem>> {
    let problems = super::check::classes(pieces);
    if !problems.is_empty() {
        return Err(problems);
    }
    let all = green(pieces).map_err(|p| vec![p])?;
    let show = |grams: Decimal| shown(grams, units);
    let ends = |r: Range| (!r.is_point()).then(|| (show(r.low), show(r.high)));
    let rows = pieces
        .iter()
        .map(|piece| {
            let grams = class_grams(piece).unwrap_or(Range::point(Decimal::ZERO));
            let cut = pantry::cut(&piece.cut).filter(|_| piece.weight.is_none());
            PieceRow {
                of: name_of(piece),
                count: piece.count,
                each: show(grams.typical.over(Decimal::from(piece.count)).unwrap_or_default()),
                all: show(grams.typical),
                range: ends(grams),
                source: match (cut, piece.weight) {
                    (Some(c), _) if c.grams.is_some() => c.status.map(|status| CutSource::Table {
                        source: c.source,
                        status,
                    }),
                    (_, None) => Some(CutSource::Unknown),
                    _ => None,
                },
                thickness: piece.thickness.map(|t| t.show(units)),
                odd: odd_weight(piece, units),
                odd_thickness: piece.thickness.and_then(|t| odd_thickness(&piece.cut, t)),
            }
        })
        .collect();
    Ok(PieceSheet {
        rows,
        count: all.count,
        about: pieces.iter().any(|p| p.about),
        green: show(all.grams.typical),
        green_range: ends(all.grams),
        weighed: all.weighed,
        mixed: mixed(pieces, units),
        cautions: cautions(&dressing_keys(&kinds(pieces))),
    })
}

fn shown(grams: Decimal, units: System) -> Figure {
    Mass::new(grams).map_or_else(|_| Figure::new("", ""), |m| m.show(units))
}

/// Where the weight of a piece is less than half the least that is usual, or more than twice the most.
fn odd_weight(piece: &Piece, units: System) -> Option<OddWeight> {
    let (low, _, high) = pantry::cut(&piece.cut)?.grams?;
    piece.weight?;
    let each = class_grams(piece)?.typical.over(Decimal::from(piece.count))?;
    let odd = each.times(Decimal::TWO)? < Decimal::from(low) || each > Decimal::from(high).times(Decimal::TWO)?;
    odd.then(|| OddWeight {
        of: name_of(piece),
        each: shown(each, units).text,
        usual: [low, high].map(|g| shown(Decimal::from(g), units).text),
    })
}

/// Whether a piece of a cut is too thin or too thick to be one. `cut`: its key; what is of no known cut may be thin.
#[must_use]
pub fn odd_thickness(cut: &str, thickness: Length) -> Option<OddThickness> {
    let mm = thickness.base();
    if mm > HAUNCH {
        Some(OddThickness::Thick)
    } else {
        (mm < STRIP && ![STRIPS, OWN].contains(&cut)).then_some(OddThickness::Thin)
    }
}

/// Every such weight.
pub fn odd_weights(pieces: &[Piece], units: System) -> impl Iterator<Item = OddWeight> {
    pieces.iter().filter_map(move |piece| odd_weight(piece, units))
}

/// Where the thickest class is a quarter thicker than the thinnest or more: cure time goes with thickness.
fn mixed(pieces: &[Piece], units: System) -> Option<Mixed> {
    let known = || pieces.iter().filter_map(|p| Some((p.thickness?, p)));
    let (thin, small) = known().min_by_key(|(t, _)| *t)?;
    let (thick, large) = known().max_by_key(|(t, _)| *t)?;
    let apart = thick.base() >= thin.base().times(dec!(1.25))?;
    apart.then(|| Mixed {
        thick: name_of(large),
        thickness: thick.show(units).text,
        thin: name_of(small),
        thinness: thin.show(units).text,
    })
}
