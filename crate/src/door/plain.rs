//! What JavaScript sends, as one plain form: nothing, a truth, a number, a text, a list, an object.
//!
//! A request has a hundred types. Read out of JavaScript at once, each of them would have all that a value of JavaScript
//! may be compiled into its reading; out of the plain form it is read by `typed`, at a third of the size.

use serde::de::{DeserializeSeed, Deserializer, Error, MapAccess, SeqAccess, Visitor};
use std::fmt::Formatter;

/// No request lies deeper by half. What goes round in a circle ends here.
const DEEPEST: u8 = 24;

/// A value as it was sent.
pub(super) enum Plain {
    /// No such field: only `typed` has it, for one that it looks for.
    Absent,
    /// `null` or `undefined`.
    Nothing,
    /// `true` or `false`.
    Truth(bool),
    /// A number.
    Number(f64),
    /// A text.
    Text(String),
    /// A list.
    List(Vec<Self>),
    /// An object's fields.
    Object(Vec<(String, Self)>),
}

/// Makes the plain form of what lies so many floors above the ground.
#[derive(Clone, Copy)]
struct Floor(u8);

/// The plain form of any value.
///
/// # Errors
/// What is not one of its kinds: a symbol, a function; and what lies too deep.
pub(super) fn plain<'de, D: Deserializer<'de>>(value: D) -> Result<Plain, D::Error> {
    Floor(DEEPEST).deserialize(value)
}

impl Floor {
    fn below<E: Error>(self) -> Result<Self, E> {
        let Some(below) = self.0.checked_sub(1) else {
            return Err(E::custom("depth"));
        };
        Ok(Self(below))
    }
}

impl<'de> DeserializeSeed<'de> for Floor {
    type Value = Plain;

    fn deserialize<D: Deserializer<'de>>(self, value: D) -> Result<Plain, D::Error> {
        value.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Floor {
    type Value = Plain;

    fn expecting(&self, f: &mut Formatter<'_>) -> std::fmt::Result {
        f.write_str("value")
    }

    fn visit_unit<E: Error>(self) -> Result<Plain, E> {
        Ok(Plain::Nothing)
    }

    fn visit_bool<E: Error>(self, truth: bool) -> Result<Plain, E> {
        Ok(Plain::Truth(truth))
    }

    #[allow(clippy::cast_precision_loss, reason = "a number of JavaScript was a float before")]
    fn visit_i64<E: Error>(self, number: i64) -> Result<Plain, E> {
        Ok(Plain::Number(number as f64))
    }

    fn visit_f64<E: Error>(self, number: f64) -> Result<Plain, E> {
        Ok(Plain::Number(number))
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<Plain, E> {
        Ok(Plain::Text(text.to_owned()))
    }

    fn visit_string<E: Error>(self, text: String) -> Result<Plain, E> {
        Ok(Plain::Text(text))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut all: A) -> Result<Plain, A::Error> {
        let below = self.below()?;
        let mut list = Vec::new();
        while let Some(each) = all.next_element_seed(below)? {
            list.push(each);
        }
        Ok(Plain::List(list))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut all: A) -> Result<Plain, A::Error> {
        let below = self.below()?;
        let mut object = Vec::new();
        while let Some(key) = all.next_key()? {
            object.push((key, all.next_value_seed(below)?));
        }
        Ok(Plain::Object(object))
    }
}
