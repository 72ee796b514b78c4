//! The bytes of a recipe in a link: postcard's wire format over flat, short forms of the recipe's types.
//!
//! Ingredients are their numbers in the pantry. Each step and line is one small head of bits; their figures and texts
//! stand behind, in order, and only where the head says so. The meaning of each bit and number here is part of the
//! format: new ones go at the end, nothing is ever reordered, and another format gets another version in the link.

use crate::pantry::{self, MADE, Made, OWN};
use crate::quantity::exact::Exact;
use crate::quantity::{Code, Kind, LinkWrong, Problem, Quantity};
use crate::recipe::{Cure, Do, Eaten, Holds, Line, Method, Recipe, Share, Step};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// A quantity above the least of its kind: a mantissa, and in the low four bits 3 less the power of ten.
type Number = u64;

#[derive(Serialize, Deserialize)]
struct Wire {
    name: String,
    tag: [u8; 2],
    /// Bits 0 to 2: the method. Bit 3: hung for months. Bit 4: notes stand last among the texts. Bit 5: the share that goes in
    /// stands behind those of the steps. Bit 6: behind the notes stand the allergens of the user's own, a text for each such line. Bit 7: last
    /// among the figures stand whether each named line holds nitrite or nitrate, and how many texts were not understood;
    /// those texts stand last.
    how: u8,
    /// Number in the pantry, nitrite, nitrate, aim.
    cures: Vec<(u32, Number, Number, Number)>,
    /// Number in the pantry × 8 + base × 2 + whether a name stands among the texts; and the amount.
    lines: Vec<(u32, Number)>,
    /// Act in four bits, then whether it lasts, is turned, has a temperature, has a note, has an end temperature.
    steps: Vec<u16>,
    /// Figures of the steps, in order; the share that goes in; and for each mix among the cures its parts × 2 + whether it is
    /// in water, and by how much it may be off.
    figures: Vec<Number>,
    /// Names of lines, notes of steps, notes of the recipe, in order.
    texts: Vec<String>,
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

const METHODS: [Method; 6] = [
    Method::Rub,
    Method::CoverBrine,
    Method::Ground,
    Method::PickUp,
    Method::Pumped,
    Method::PumpedAndCovered,
];
const HOLDS: [Holds; 3] = [Holds::Unknown, Holds::None, Holds::Yes];

const METHOD: u8 = 7;
const HUNG: u8 = 1 << 3;
const NOTES: u8 = 1 << 4;
const TAKE: u8 = 1 << 5;
const ALLERGENS: u8 = 1 << 6;
const DOUBTS: u8 = 1 << 7;

const ACT: u16 = 0xf;
const LASTS: u16 = 1 << 4;
const TURNED: u16 = 1 << 5;
const AT: u16 = 1 << 6;
const NOTE: u16 = 1 << 7;
const UNTIL: u16 = 1 << 8;

/// A recipe to bytes. It has been checked before.
pub fn write(recipe: &Recipe) -> Result<Vec<u8>, Problem> {
    let mut texts = Vec::new();
    let mut figures = Vec::new();
    let cures = recipe
        .cures
        .iter()
        .map(|c| Ok((number_of(&c.item), pack(c.nitrite)?, pack(c.nitrate)?, pack(c.aim)?)))
        .collect::<Result<_, Problem>>()?;
    let lines = recipe
        .lines
        .iter()
        .map(|line| write_line(line, &mut texts))
        .collect::<Result<_, Problem>>()?;
    let steps = recipe
        .steps
        .iter()
        .map(|step| write_step(step, &mut figures, &mut texts))
        .collect::<Result<_, Problem>>()?;
    let mut how = position(&METHODS, recipe.method);
    if let Some(take) = recipe.take {
        figures.push(pack(take)?);
    }
    for made in recipe.cures.iter().filter_map(|c| c.made) {
        figures.push(u64::from(made.parts) << 1 | u64::from(made.in_water));
        figures.push(pack(made.off)?);
    }
    for (bit, set) in [
        (TAKE, recipe.take.is_some()),
        (HUNG, recipe.eaten == Eaten::HungForMonths),
        (NOTES, keep(&recipe.notes, &mut texts)),
    ] {
        how |= if set { bit } else { 0 };
    }
    if recipe.lines.iter().any(|line| !line.allergens.is_empty()) {
        how |= ALLERGENS;
        let own = recipe.lines.iter().filter(|line| line.item == OWN);
        texts.extend(own.map(|line| line.allergens.clone()));
    }
    if !recipe.unread.is_empty() || recipe.lines.iter().any(|line| !line.agent.is_unknown()) {
        how |= DOUBTS;
        let named = recipe.lines.iter().filter(|line| !line.name.is_empty());
        figures.extend(named.map(|line| u64::from(position(&HOLDS, line.agent))));
        figures.push(u64::try_from(recipe.unread.len()).unwrap_or_default());
        texts.extend(recipe.unread.iter().cloned());
    }
    let tag = recipe.tag.as_bytes().try_into().map_err(|_| not_read())?;
    let wire = Wire {
        name: recipe.name.clone(),
        tag,
        how,
        cures,
        lines,
        steps,
        figures,
        texts,
    };
    postcard::to_allocvec(&wire).map_err(|_| Problem::of(Code::TooLong, LinkWrong::RecipeTooLong))
}

/// Bytes to a recipe, which is then checked like any other.
pub fn read(bytes: &[u8]) -> Result<Recipe, Problem> {
    let (wire, rest) = postcard::take_from_bytes::<Wire>(bytes).map_err(|_| not_read())?;
    let mut texts = wire.texts.into_iter();
    let mut figures = wire.figures.into_iter();
    let mut recipe = Recipe {
        take: None,
        name: wire.name,
        tag: String::from_utf8(wire.tag.to_vec()).map_err(|_| not_read())?,
        method: METHODS
            .get(usize::from(wire.how & METHOD))
            .copied()
            .ok_or_else(not_read)?,
        eaten: if wire.how & HUNG == 0 {
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
                    made: None,
                    follows: false,
                })
            })
            .collect::<Result<_, Problem>>()?,
        lines: wire
            .lines
            .into_iter()
            .map(|line| read_line(line, &mut texts))
            .collect::<Result<_, Problem>>()?,
        steps: wire
            .steps
            .into_iter()
            .map(|head| read_step(head, &mut figures, &mut texts))
            .collect::<Result<_, Problem>>()?,
        notes: if wire.how & NOTES == 0 {
            String::new()
        } else {
            texts.next().ok_or_else(not_read)?
        },
        unread: Vec::new(),
    };
    if wire.how & ALLERGENS != 0 {
        for line in recipe.lines.iter_mut().filter(|line| line.item == OWN) {
            line.allergens = texts.next().ok_or_else(not_read)?;
        }
    }
    recipe.take = figure(u16::from(wire.how & TAKE), &mut figures)?;
    for cure in recipe.cures.iter_mut().filter(|c| c.item == MADE) {
        let head = figures.next().ok_or_else(not_read)?;
        cure.made = Some(Made {
            parts: u32::try_from(head >> 1).map_err(|_| not_read())?,
            in_water: head & 1 == 1,
            off: figures.next().ok_or_else(not_read).and_then(unpack)?,
        });
    }
    if wire.how & DOUBTS != 0 {
        let mut next = || figures.next().ok_or_else(not_read);
        for line in recipe.lines.iter_mut().filter(|line| !line.name.is_empty()) {
            let at = usize::try_from(next()?).map_err(|_| not_read())?;
            line.agent = HOLDS.get(at).copied().ok_or_else(not_read)?;
        }
        for _ in 0..next()? {
            recipe.unread.push(texts.next().ok_or_else(not_read)?);
        }
    }
    let all_used = rest.is_empty() && texts.next().is_none() && figures.next().is_none();
    if all_used { Ok(recipe) } else { Err(not_read()) }
}

fn not_read() -> Problem {
    Problem::of(Code::Altered, LinkWrong::LinkHoldsNoRecipe)
}

/// The place of a value in a list that has them all.
fn position<T: PartialEq>(list: &[T], value: T) -> u8 {
    list.iter()
        .position(|known| *known == value)
        .and_then(|i| u8::try_from(i).ok())
        .unwrap_or_default()
}

/// Puts a text behind, if there is any.
fn keep(text: &str, texts: &mut Vec<String>) -> bool {
    if !text.is_empty() {
        texts.push(text.to_owned());
    }
    !text.is_empty()
}

/// The number of an ingredient; nought for the user's own.
fn number_of(key: &str) -> u32 {
    pantry::ingredient(key).map_or(0, |i| i.number)
}

fn key_of(number: u32) -> Result<String, Problem> {
    if number == 0 {
        return Ok(OWN.to_owned());
    }
    pantry::by_number(number)
        .map(|i| i.key.to_owned())
        .ok_or_else(|| Problem::of(Code::Version, LinkWrong::LinkIngredient))
}

fn pack<K: Kind>(quantity: Quantity<K>) -> Result<Number, Problem> {
    let above = quantity.base().less(K::facts().min).map(|d| d.normalize());
    let short = above.and_then(|d| {
        let (mut mantissa, mut power) = (u64::try_from(d.mantissa()).ok()?, d.scale().checked_add(3)?);
        while power > 0 && mantissa > 0 && mantissa % 10 == 0 {
            (mantissa, power) = (mantissa / 10, power.saturating_sub(1));
        }
        (power < 16)
            .then(|| mantissa.checked_mul(16)?.checked_add(power.into()))
            .flatten()
    });
    short.ok_or_else(|| Problem::of(Code::TooLong, LinkWrong::LinkDigits))
}

fn unpack<K: Kind>(number: Number) -> Result<Quantity<K>, Problem> {
    let power = u32::try_from(number % 16).unwrap_or_default();
    // Thousands first, so that the scale is never below nought.
    let thousands = i128::from(number / 16).checked_mul(1000).ok_or_else(not_read)?;
    let above = Decimal::try_from_i128_with_scale(thousands, power).map_err(|_| not_read())?;
    Quantity::new(above.plus(K::facts().min).ok_or_else(not_read)?)
}

fn write_line(line: &Line, texts: &mut Vec<String>) -> Result<(u32, Number), Problem> {
    let (base, amount) = match line.share {
        Share::GreenWeight(f) => (0, pack(f)?),
        Share::MeatAndWater(f) => (1, pack(f)?),
        Share::Brine(f) => (2, pack(f)?),
        Share::Piece(m) => (3, pack(m)?),
    };
    let named = u32::from(keep(&line.name, texts));
    Ok(((number_of(&line.item) << 3) | (base << 1) | named, amount))
}

fn read_line((head, amount): (u32, Number), texts: &mut impl Iterator<Item = String>) -> Result<Line, Problem> {
    let share = match (head >> 1) & 3 {
        0 => Share::GreenWeight(unpack(amount)?),
        1 => Share::MeatAndWater(unpack(amount)?),
        2 => Share::Brine(unpack(amount)?),
        _ => Share::Piece(unpack(amount)?),
    };
    let name = if head & 1 == 0 {
        String::new()
    } else {
        texts.next().ok_or_else(not_read)?
    };
    Ok(Line {
        item: key_of(head >> 3)?,
        name,
        allergens: String::new(),
        agent: Holds::Unknown,
        share,
    })
}

fn write_step(step: &Step, figures: &mut Vec<Number>, texts: &mut Vec<String>) -> Result<u16, Problem> {
    let mut head = u16::from(position(&ACTS, step.act));
    let spans = [(LASTS, step.lasts), (TURNED, step.turn_every)];
    let degrees = [(AT, step.at), (UNTIL, step.until)];
    for (bit, span) in spans.into_iter().filter_map(|(bit, s)| Some((bit, s?))) {
        head |= bit;
        figures.push(pack(span)?);
    }
    for (bit, degrees) in degrees.into_iter().filter_map(|(bit, t)| Some((bit, t?))) {
        head |= bit;
        figures.push(pack(degrees)?);
    }
    if keep(&step.note, texts) {
        head |= NOTE;
    }
    Ok(head)
}

fn read_step(
    head: u16,
    figures: &mut impl Iterator<Item = Number>,
    texts: &mut impl Iterator<Item = String>,
) -> Result<Step, Problem> {
    if head & !(ACT | LASTS | TURNED | AT | NOTE | UNTIL) != 0 {
        return Err(not_read());
    }
    let act = ACTS.get(usize::from(head & ACT)).copied().ok_or_else(not_read)?;
    Ok(Step {
        act,
        lasts: figure(head & LASTS, figures)?,
        turn_every: figure(head & TURNED, figures)?,
        at: figure(head & AT, figures)?,
        until: figure(head & UNTIL, figures)?,
        note: if head & NOTE == 0 {
            String::new()
        } else {
            texts.next().ok_or_else(not_read)?
        },
    })
}

/// The next figure, where its bit is set.
fn figure<K: Kind>(bit: u16, figures: &mut impl Iterator<Item = Number>) -> Result<Option<Quantity<K>>, Problem> {
    if bit == 0 {
        Ok(None)
    } else {
        figures.next().ok_or_else(not_read).and_then(unpack).map(Some)
    }
}
