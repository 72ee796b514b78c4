//! The rules a batch and the settings keep, for a person typing, a backup and a stored record alike.

use super::id::is_id;
use super::model::{Batch, Piece, PutIn, Tick};
use crate::dose::{Kit, Parts, Portion, measured};
use crate::pantry::{self, Agent, Made, OWN};
use crate::quantity::{Code, Mass, Problem, Wrong};
use crate::recipe::{MOST_NAME, MOST_TEXT, name, tag, text};
use rust_decimal::dec;

/// Most size classes.
pub const MOST_CLASSES: usize = 40;
/// Most pieces in a class.
pub const MOST_PIECES: u32 = 10_000;
/// Most ticks.
pub const MOST_TICKS: usize = 1000;

impl Batch {
    /// Everything that is wrong with it; empty when it can be used.
    pub fn problems(&self) -> Vec<Problem> {
        let mut found = Vec::new();
        found.extend(tag(&self.tag, 3).err().map(|p| p.at("tag")));
        found.extend(name(&self.name).err().map(|p| p.at("name")));
        found.extend(text(&self.notes, MOST_TEXT).err().map(|p| p.at("notes")));
        let after = self.after.iter().flat_map(|a| {
            [
                (&a.cut, MOST_NAME, "cut"),
                (&a.taste, MOST_NAME, "taste"),
                (&a.change, MOST_TEXT, "change"),
            ]
        });
        for (said, most, at) in after {
            found.extend(text(said, most).err().map(|p| p.at(at).at("after")));
        }
        found.extend(day(&self.killed).err().map(|p| p.at("killed")));
        found.extend(self.recipe.problems().into_iter().map(|p| p.at("recipe")));
        found.extend(classes(&self.pieces));
        found.extend(self.fire.as_ref().and_then(super::fire::Fire::problem));
        found.extend(self.put_in(Kit::PLAIN).err());
        if self.ticks.len() > MOST_TICKS || self.ticks.iter().any(|t| !t.is_good()) {
            found.push(Problem::of(Code::BadForm, Wrong::TickForm).at("ticks"));
        }
        found.extend(super::fridge::problem(&self.fridge));
        if self.thrown_out.is_some_and(|at| !is_time(at)) {
            found.push(Problem::of(Code::BadForm, Wrong::ThrownOutForm).at("thrown_out"));
        }
        found
    }

    /// What went in when it was not the weigh-out: each portion with its range.
    ///
    /// # Errors
    /// The first problem, at `put_in` or `also`.
    pub fn put_in(&self, kit: Kit<'_>) -> Result<Vec<Portion>, Problem> {
        let both = [(&self.put_in, "put_in"), (&self.also, "also")];
        both.into_iter()
            .filter_map(|(put, at)| Some((put.as_ref()?, at)))
            .map(|(put, at)| put.portion(kit).map_err(|p| p.at(at)))
            .collect()
    }

    /// The tick of an id.
    pub fn tick(&self, of: &str) -> Option<&Tick> {
        self.ticks.iter().find(|t| t.of == of)
    }

    /// What was ticked as weighed and is in: all but the cure that something else was put in for.
    pub fn went_in(&self) -> impl Iterator<Item = &Tick> {
        let replaced = self.put_in.iter().chain(&self.also).any(|put| put.instead);
        self.ticks
            .iter()
            .filter(move |t| t.weight.is_some() && !(replaced && t.of.starts_with("cure:")))
    }

    /// The tick of the recipe's step at this place.
    #[must_use]
    pub fn step(&self, at: usize) -> Option<&Tick> {
        self.tick(&format!("step:{at}"))
    }
}

/// Everything that is wrong with the size classes.
pub fn classes(pieces: &[Piece]) -> Vec<Problem> {
    let mut found = Vec::new();
    if pieces.len() > MOST_CLASSES {
        let wrong = Wrong::TooManySizes { most: MOST_CLASSES };
        found.push(Problem::of(Code::TooLong, wrong).at("pieces"));
    }
    for (i, piece) in pieces.iter().enumerate() {
        found.extend(piece.problem().map(|p| p.at(&format!("pieces[{i}]"))));
    }
    found
}

/// Whether a time, in milliseconds since 1970, lies before the year 3000.
fn is_time(at: i64) -> bool {
    (0..=32_503_680_000_000).contains(&at)
}

impl Piece {
    fn problem(&self) -> Option<Problem> {
        let one_of_them = usize::try_from(self.bag).is_ok_and(|bag| bag <= MOST_CLASSES);
        if !is_id(&self.id) || !one_of_them {
            return Some(Problem::of(Code::BadForm, Wrong::SizeForm).at("id"));
        }
        if self.cut == OWN {
            if let Err(problem) = name(&self.name) {
                return Some(problem.at("name"));
            }
        } else if pantry::cut(&self.cut).is_none() {
            let cut = crate::quantity::shorten(&self.cut);
            return Some(Problem::of(Code::Unknown, Wrong::CutNotListed { cut }).at("cut"));
        }
        if let Err(problem) = text(&self.name, MOST_NAME) {
            return Some(problem.at("name"));
        }
        if !(1..=MOST_PIECES).contains(&self.count) {
            let wrong = Wrong::PieceCount { most: MOST_PIECES };
            return Some(Problem::of(Code::TooSmall, wrong).at("count"));
        }
        if self.weight.is_some_and(|w| w.base() <= dec!(0)) {
            return Some(Problem::of(Code::TooSmall, Wrong::PieceWeightNought).at("weight"));
        }
        None
    }
}

impl PutIn {
    /// What went in; its strength is not known where no percentage was given.
    ///
    /// # Errors
    /// The problem of the amount, at `amount`, or of the strength, at `nitrite` or `nitrate`.
    pub fn portion(&self, kit: Kit<'_>) -> Result<Portion, Problem> {
        let agent = self.nitrite.map(|nitrite| Agent::printed(nitrite, self.nitrate));
        let mixed = |agent: Agent| {
            agent
                .impossible()
                .or_else(|| Some(self.made?.problem(agent)?.at("nitrite")))
        };
        if let Some(problem) = agent.and_then(mixed) {
            return Err(problem);
        }
        let kit = Kit {
            step: self.step.map_or(kit.step, Mass::base),
            ..kit
        };
        let portion = measured(&self.amount, agent, kit).map_err(|p| p.at("amount"))?;
        let wide = || Problem::of(Code::TooLarge, Wrong::MixTooFarOff);
        portion_of(portion, self.made).ok_or_else(wide)
    }
}

/// The same portion, known to be of a mix that was made so: as uncertain as that was weighed. `None` on overflow.
pub fn portion_of(portion: Portion, made: Option<Made>) -> Option<Portion> {
    let Some(made) = made else {
        return Some(portion);
    };
    Some(Portion {
        parts: Some(Parts {
            one_in: made.parts,
            in_water: made.in_water,
        }),
        spread: made.spread()?,
        agent: match portion.agent {
            Some(agent) => Some(agent.made(Some(made))?),
            None => None,
        },
        ..portion
    })
}

impl Tick {
    fn is_good(&self) -> bool {
        let known = self
            .of
            .bytes()
            .all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b':');
        let (cure, line) = (self.of.starts_with("cure:"), self.of.starts_with("line:"));
        let whole =
            (!cure && !line || self.weight.is_some()) && (!cure || self.agent().is_some_and(|a| a.problem().is_none()));
        known && whole && (1..=24).contains(&self.of.len()) && is_time(self.at)
    }

    /// The strength of a cure that was ticked.
    pub fn agent(&self) -> Option<Agent> {
        self.nitrite.map(|nitrite| Agent::printed(nitrite, self.nitrate))
    }
}

/// `2026-11-14`, or nothing.
fn day(value: &str) -> Result<(), Problem> {
    let wrong = || Problem::of(Code::NotRead, Wrong::DayForm);
    if value.is_empty() {
        return Ok(());
    }
    let parts: Vec<&str> = value.split('-').collect();
    let [year, month, day] = parts.as_slice() else {
        return Err(wrong());
    };
    let number = |text: &str, len: usize| {
        let digits = text.len() == len && text.bytes().all(|b| b.is_ascii_digit());
        if digits { text.parse::<u32>().ok() } else { None }
    };
    let good = match (number(year, 4), number(month, 2), number(day, 2)) {
        (Some(y @ 1900..=2200), Some(m @ 1..=12), Some(d)) => {
            let leap = y.is_multiple_of(4) && (!y.is_multiple_of(100) || y.is_multiple_of(400));
            let days = match m {
                2 if leap => 29,
                2 => 28,
                4 | 6 | 9 | 11 => 30,
                _ => 31,
            };
            (1..=days).contains(&d)
        }
        _ => false,
    };
    if good { Ok(()) } else { Err(wrong()) }
}
