//! The bytes of a recipe in a link: postcard's wire format over short forms of the recipe's types.
//!
//! Ingredients are their numbers in the pantry; quantities are a mantissa and a scale in the base unit of their kind.
//! The enums here are part of the format: new variants go at the end, and nothing is ever reordered.

use crate::pantry::{self, OWN};
use crate::quantity::{Code, Kind, Problem, Quantity};
use crate::recipe::{Cure, Do, Eaten, Line, Method, Recipe, Share, Step};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

#[derive(Serialize, Deserialize)]
struct Number(i64, u8);

#[derive(Serialize, Deserialize)]
struct WireRecipe {
    name: String,
    tag: String,
    /// Method in the low two bits, eaten in the next.
    how: u8,
    cures: Vec<(u32, Number, Number, Number)>,
    lines: Vec<(u32, String, u8, Number)>,
    steps: Vec<WireStep>,
    notes: String,
}

#[derive(Serialize, Deserialize)]
struct WireStep {
    act: u8,
    lasts: Option<Number>,
    turn_every: Option<Number>,
    at: Option<Number>,
    until: Option<Number>,
    note: String,
}

const ACTS: [Do; 10] = [
    Do::Cure,
    Do::Rinse,
    Do::Soak,
    Do::Dry,
    Do::Smoke,
    Do::Cook,
    Do::DryOut,
    Do::Rest,
    Do::Chill,
    Do::Pack,
];

/// A recipe to bytes.
pub fn write(recipe: &Recipe) -> Result<Vec<u8>, Problem> {
    let wire = WireRecipe {
        name: recipe.name.clone(),
        tag: recipe.tag.clone(),
        how: u8::from(recipe.method == Method::CoverBrine) | (u8::from(recipe.eaten == Eaten::HungForMonths) << 2),
        cures: recipe
            .cures
            .iter()
            .map(|c| Ok((number_of(&c.item), pack(c.nitrite)?, pack(c.nitrate)?, pack(c.aim)?)))
            .collect::<Result<_, Problem>>()?,
        lines: recipe.lines.iter().map(write_line).collect::<Result<_, Problem>>()?,
        steps: recipe.steps.iter().map(write_step).collect::<Result<_, Problem>>()?,
        notes: recipe.notes.clone(),
    };
    postcard::to_allocvec(&wire)
        .map_err(|_| Problem::new(Code::TooLong, "This recipe is too long for a link. Shorten its notes."))
}

/// Bytes to a recipe. The recipe is then checked like any other.
pub fn read(bytes: &[u8]) -> Result<Recipe, Problem> {
    let (wire, rest) = postcard::take_from_bytes::<WireRecipe>(bytes).map_err(|_| not_read())?;
    if !rest.is_empty() || wire.how & !0b101 != 0 {
        return Err(not_read());
    }
    Ok(Recipe {
        name: wire.name,
        tag: wire.tag,
        method: if wire.how & 1 == 0 {
            Method::Rub
        } else {
            Method::CoverBrine
        },
        eaten: if wire.how & 4 == 0 {
            Eaten::Cooked
        } else {
            Eaten::HungForMonths
        },
        cures: wire
            .cures
            .into_iter()
            .map(|(item, nitrite, nitrate, aim)| {
                Ok(Cure {
                    item: key_of(item)?,
                    nitrite: unpack(nitrite)?,
                    nitrate: unpack(nitrate)?,
                    aim: unpack(aim)?,
                })
            })
            .collect::<Result<_, Problem>>()?,
        lines: wire.lines.into_iter().map(read_line).collect::<Result<_, Problem>>()?,
        steps: wire.steps.into_iter().map(read_step).collect::<Result<_, Problem>>()?,
        notes: wire.notes,
    })
}

fn not_read() -> Problem {
    Problem::new(
        Code::Altered,
        "What is in this link is not a recipe. Ask for the link again.",
    )
}

/// The number of an ingredient; nought for the user's own.
fn number_of(key: &str) -> u32 {
    pantry::ingredient(key).map_or(0, |i| i.number)
}

fn key_of(number: u32) -> Result<String, Problem> {
    if number == 0 {
        return Ok(OWN.to_owned());
    }
    pantry::by_number(number).map(|i| i.key.to_owned()).ok_or_else(|| {
        Problem::new(Code::Version, "This link names an ingredient that this page does not know. Take the newest version of the page and open the link again.")
    })
}

fn pack<K: Kind>(quantity: Quantity<K>) -> Result<Number, Problem> {
    let base = quantity.base().normalize();
    let mantissa = i64::try_from(base.mantissa());
    let scale = u8::try_from(base.scale());
    mantissa.ok().zip(scale.ok()).map(|(m, s)| Number(m, s)).ok_or_else(|| {
        Problem::new(
            Code::TooLong,
            "A figure in this recipe has too many digits for a link. Round it.",
        )
    })
}

fn unpack<K: Kind>(number: Number) -> Result<Quantity<K>, Problem> {
    let value = Decimal::try_from_i128_with_scale(number.0.into(), number.1.into()).map_err(|_| not_read())?;
    Quantity::new(value)
}

fn write_line(line: &Line) -> Result<(u32, String, u8, Number), Problem> {
    let (base, amount) = match line.share {
        Share::GreenWeight(f) => (0, pack(f)?),
        Share::MeatAndWater(f) => (1, pack(f)?),
        Share::Brine(f) => (2, pack(f)?),
        Share::Piece(m) => (3, pack(m)?),
    };
    Ok((number_of(&line.item), line.name.clone(), base, amount))
}

fn read_line((item, name, base, amount): (u32, String, u8, Number)) -> Result<Line, Problem> {
    let share = match base {
        0 => Share::GreenWeight(unpack(amount)?),
        1 => Share::MeatAndWater(unpack(amount)?),
        2 => Share::Brine(unpack(amount)?),
        3 => Share::Piece(unpack(amount)?),
        _ => return Err(not_read()),
    };
    Ok(Line {
        item: key_of(item)?,
        name,
        share,
    })
}

fn write_step(step: &Step) -> Result<WireStep, Problem> {
    Ok(WireStep {
        act: ACTS
            .iter()
            .position(|a| *a == step.act)
            .and_then(|i| u8::try_from(i).ok())
            .unwrap_or(0),
        lasts: step.lasts.map(pack).transpose()?,
        turn_every: step.turn_every.map(pack).transpose()?,
        at: step.at.map(pack).transpose()?,
        until: step.until.map(pack).transpose()?,
        note: step.note.clone(),
    })
}

fn read_step(step: WireStep) -> Result<Step, Problem> {
    Ok(Step {
        act: ACTS.get(usize::from(step.act)).copied().ok_or_else(not_read)?,
        lasts: step.lasts.map(unpack).transpose()?,
        turn_every: step.turn_every.map(unpack).transpose()?,
        at: step.at.map(unpack).transpose()?,
        until: step.until.map(unpack).transpose()?,
        note: step.note,
    })
}
