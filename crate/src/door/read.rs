//! Reads the fields of a form: all of them at once, so that all that is wrong is said at once.

use crate::quantity::{
    Code, Fraction, Kind, LengthKind, Mass, MassKind, Problem, PutInBy, Quantity, System, Temperature, TimeKind,
    TypedWrong, Volume, Wrong, shorten,
};
use rust_decimal::{Decimal, dec};
use serde::{Deserialize, Serialize};

/// Content of `read`.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct ReadFields {
    /// The fields, in the order of the form.
    pub fields: Vec<ReadField>,
    /// Units for what is shown back.
    #[serde(default)]
    pub units: System,
}

/// One field.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct ReadField {
    /// The page's own name for it; comes back with its value or its problem.
    pub key: String,
    /// What it holds.
    pub kind: FieldKind,
    /// What was typed.
    pub text: String,
    /// The unit that stands beside the field, for a bare number.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional))]
    pub unit: Option<String>,
    /// True when it may be left empty.
    #[serde(default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<bool>"))]
    pub optional: bool,
}

/// What a field holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum FieldKind {
    /// A weight of meat or of an ingredient, above nought.
    Mass,
    /// A thickness, above nought.
    Length,
    /// A temperature.
    Temperature,
    /// A temperature of the middle of meat in the heat.
    Core,
    /// A span of time.
    Time,
    /// A share of a recipe, 0 to 1000 %.
    Share,
    /// A printed percentage of nitrite, 0 to 20 %.
    Printed,
    /// A printed percentage of nitrate, 0 to 100 %: saltpetre is nearly all of it.
    PrintedNitrate,
    /// A whole number of pieces, 1 to 10 000.
    Count,
    /// A weight or a number of level spoons.
    Amount,
    /// A name: 1 to 60 characters.
    Name,
    /// One capital letter pair.
    Tag,
}

/// What was read.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ReadValues {
    /// Fields that were read, in order.
    pub values: Vec<ReadValue>,
    /// Fields that were not, in order; `field` is the key.
    pub problems: Vec<Problem>,
}

/// One value.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ReadValue {
    /// The field's key.
    pub key: String,
    /// Text to store: reads back to the same value. Nothing for a field left empty.
    pub value: Option<String>,
    /// The same in the user's units, rounded for reading.
    pub shown: String,
}

/// The middle of meat that is heated ends between these, in °F: from medium rare to boiling water (judgement). No number is
/// one in both scales.
const CORE: (Decimal, Decimal) = (dec!(113), dec!(212));

/// Most fields in one request.
const MOST_FIELDS: usize = 200;

/// Reads every field; what is wrong with one does not keep the others from being read.
///
/// # Errors
/// [`Code::TooLong`] for more than 200 fields.
pub fn read(ask: &ReadFields) -> Result<ReadValues, Vec<Problem>> {
    if ask.fields.len() > MOST_FIELDS {
        return Err(vec![
            Problem::of(Code::TooLong, Wrong::FieldsTooMany { most: MOST_FIELDS }).at("fields"),
        ]);
    }
    let (mut values, mut problems) = (Vec::new(), Vec::new());
    for field in &ask.fields {
        match field.read(ask.units) {
            Ok(value) => values.push(value),
            Err(problem) => problems.push(problem.at(&field.key)),
        }
    }
    Ok(ReadValues { values, problems })
}

impl ReadField {
    fn read(&self, units: System) -> Result<ReadValue, Problem> {
        if self.text.trim().is_empty() && self.optional {
            return Ok(ReadValue {
                key: self.key.clone(),
                value: None,
                shown: String::new(),
            });
        }
        match self.kind {
            FieldKind::Mass => self.positive::<MassKind>(units, Wrong::WeightNought),
            FieldKind::Length => self.positive::<LengthKind>(units, Wrong::LengthNought),
            FieldKind::Temperature => self.quantity(Temperature::read(&self.text, self.unit())?, units),
            FieldKind::Core => self.core(units),
            FieldKind::Time => self.positive::<TimeKind>(units, Wrong::TimeNought),
            FieldKind::Share => self.quantity(Fraction::read(&self.text, self.unit())?, units),
            FieldKind::Printed | FieldKind::PrintedNitrate => self.printed(units),
            FieldKind::Count => self.count(),
            FieldKind::Amount => self.amount(),
            FieldKind::Name => {
                crate::recipe::name(&self.text)?;
                Ok(self.plain(self.text.trim()))
            }
            FieldKind::Tag => {
                let tag = self.text.trim().to_ascii_uppercase();
                crate::recipe::tag(&tag, 3)?;
                Ok(self.plain(&tag))
            }
        }
    }

    fn unit(&self) -> Option<&str> {
        self.unit.as_deref()
    }

    fn plain(&self, text: &str) -> ReadValue {
        ReadValue {
            key: self.key.clone(),
            value: Some(text.to_owned()),
            shown: text.to_owned(),
        }
    }

    fn quantity<K: Kind>(&self, quantity: Quantity<K>, units: System) -> Result<ReadValue, Problem> {
        Ok(ReadValue {
            key: self.key.clone(),
            value: Some(quantity.print(units)),
            shown: quantity.show(units).text,
        })
    }

    fn positive<K: Kind>(&self, units: System, nought: Wrong) -> Result<ReadValue, Problem> {
        let quantity = Quantity::<K>::read(&self.text, self.unit())?;
        if quantity.base().is_zero() {
            return Err(Problem::of(Code::TooSmall, nought));
        }
        self.quantity(quantity, units)
    }

    /// A bare number that no middle has in the field's scale, and one has in the other, was rather meant in that.
    fn core(&self, units: System) -> Result<ReadValue, Problem> {
        let read = |unit| Temperature::read(&self.text, unit);
        let core = read(self.unit())?;
        let is_core = |t: Temperature| t.base() >= CORE.0 && t.base() <= CORE.1;
        let other = match self.unit() {
            Some("°F") => "°C",
            _ => "°F",
        };
        if read(None).is_err_and(|p| p.code == Code::NoUnit) && !is_core(core) && read(Some(other)).is_ok_and(is_core) {
            let typed = shorten(self.text.trim());
            let readings = [other, self.unit().unwrap_or_default()].map(|unit| format!("{typed} {unit}"));
            return Err(Problem {
                choices: readings.to_vec(),
                ..Problem::of(
                    Code::AmbiguousNumber,
                    TypedWrong::TwoReadings {
                        typed,
                        readings: Box::new(readings),
                    },
                )
            });
        }
        self.quantity(core, units)
    }

    fn printed(&self, units: System) -> Result<ReadValue, Problem> {
        let text = self.text.trim();
        if text.is_empty() {
            return Err(Problem::of(Code::Missing, Wrong::PrintedMissing));
        }
        if ["ppm", "mg", "g/"]
            .iter()
            .any(|unit| text.to_ascii_lowercase().contains(unit))
        {
            return Err(Problem::of(Code::WrongUnit, Wrong::PrintedWrongUnit));
        }
        let printed = Fraction::read(text, self.unit()).map_err(|p| {
            let typed = shorten(text);
            of_field(p, Wrong::PrintedNotRead { typed }, Wrong::PrintedOutOfBounds)
        })?;
        if self.kind == FieldKind::Printed
            && let Some(problem) = crate::pantry::too_strong(printed.base())
        {
            return Err(problem);
        }
        if printed.base() > Decimal::ONE_HUNDRED {
            return Err(Problem::of(Code::TooLarge, Wrong::PrintedOutOfBounds));
        }
        self.quantity(printed, units)
    }

    fn count(&self) -> Result<ReadValue, Problem> {
        let most = crate::batch::MOST_PIECES;
        let text = self.text.trim();
        let count = if text.bytes().all(|b| b.is_ascii_digit()) {
            text.parse::<u32>().ok()
        } else {
            None
        };
        match count.filter(|c| (1..=most).contains(c)) {
            Some(count) => Ok(self.plain(&count.to_string())),
            None => {
                let typed = shorten(text);
                Err(Problem::of(Code::NotRead, Wrong::CountNotRead { typed, most }))
            }
        }
    }

    fn amount(&self) -> Result<ReadValue, Problem> {
        let by = match self.unit() {
            Some(unit) if unit.contains('#') => PutInBy::Packet,
            Some("g") => PutInBy::Scale,
            _ => PutInBy::Spoons,
        };
        if self.text.trim().is_empty() {
            return Err(Problem::of(Code::Missing, Wrong::PutInMissing { by }));
        }
        let text = match self.unit() {
            Some(unit) if unit.contains('#') && Mass::read(&self.text, None).is_ok() => {
                format!("{}{}", unit.split('#').next().unwrap_or_default(), self.text.trim())
            }
            // A unit has `#` where the number goes, if that is not in front: `1 packet of # g`.
            Some(unit) if Mass::read(&self.text, None).is_err() && Volume::read(&self.text, None).is_err() => {
                match unit.split_once('#') {
                    Some((before, behind)) => format!("{before}{}{behind}", self.text.trim()),
                    None => format!("{} {unit}", self.text.trim()),
                }
            }
            _ => self.text.trim().to_owned(),
        };
        let measured = crate::dose::measured(&text, None, crate::dose::Kit::PLAIN).map_err(|p| {
            let typed = shorten(self.text.trim());
            of_field(p, Wrong::PutInNotRead { by, typed }, Wrong::PutInOutOfBounds { by })
        })?;
        Ok(self.plain(&measured.said))
    }
}

/// The same problem as one of the field: of what was typed without what was put to it, or of the field's rule. A number
/// that can be read two ways stays as it is.
fn of_field(problem: Problem, not_read: Wrong, rule: Wrong) -> Problem {
    let wrong = match problem.code {
        Code::NotRead | Code::NoUnit | Code::WrongUnit => not_read,
        Code::TooSmall | Code::TooLarge => rule,
        _ => return problem,
    };
    Problem {
        choices: problem.choices,
        ..Problem::of(problem.code, wrong)
    }
}
