//! What was sent, as the crate's types.
//!
//! Whatever stands here in a generic function is compiled for each of a hundred types, so it is little: a field is found,
//! a kind is looked at and a refusal is made in functions that are compiled once. An object's fields are handed over in the
//! order of the type's, and a variant by its place: no type compares names then.

use super::plain::Plain;
use serde::de::value::{StrDeserializer, U32Deserializer};
use serde::de::{self, DeserializeSeed, Deserializer, Error, Expected, Unexpected, Visitor};
use std::fmt::{self, Display, Formatter};

/// Numbers to here are whole and exact, as JavaScript has it.
const LARGEST: f64 = 9_007_199_254_740_991.0;

/// A value of a type that owns what it holds.
///
/// # Errors
/// Why it is not of its form.
pub(super) fn typed<T: de::DeserializeOwned>(mut sent: Plain) -> Result<T, String> {
    T::deserialize(&mut sent).map_err(|bad| bad.to_string())
}

/// Why something is not of its form; nothing for a field that is not there.
#[derive(Debug)]
#[expect(
    clippy::box_collection,
    reason = "one pointer in the result of everything that is read"
)]
pub(super) struct Bad(Option<Box<String>>);

impl Display for Bad {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        f.write_str(self.0.as_deref().map_or("absent", String::as_str))
    }
}

impl std::error::Error for Bad {}

impl Error for Bad {
    fn custom<T: Display>(why: T) -> Self {
        Self::because(&why)
    }
}

impl Bad {
    #[inline(never)]
    fn because(why: &dyn Display) -> Self {
        Self(Some(Box::new(why.to_string())))
    }
}

impl Plain {
    /// It is none of what was expected.
    #[inline(never)]
    fn refused(&self, expected: &dyn Expected) -> Bad {
        let found = match self {
            Self::Absent => return Bad(None),
            Self::Nothing => Unexpected::Unit,
            Self::Truth(truth) => Unexpected::Bool(*truth),
            Self::Number(number) => Unexpected::Float(*number),
            Self::Text(text) => Unexpected::Str(text),
            Self::List(_) => Unexpected::Seq,
            Self::Object(_) => Unexpected::Map,
        };
        Bad::invalid_type(found, expected)
    }

    #[inline(never)]
    fn whole(&self, expected: &dyn Expected) -> Result<i64, Bad> {
        match self {
            #[allow(clippy::cast_possible_truncation, reason = "it is whole and in range")]
            Self::Number(number) if number.fract() == 0.0 && number.abs() <= LARGEST => Ok(*number as i64),
            _ => Err(self.refused(expected)),
        }
    }

    #[inline(never)]
    fn number(&self, expected: &dyn Expected) -> Result<f64, Bad> {
        match self {
            Self::Number(number) => Ok(*number),
            _ => Err(self.refused(expected)),
        }
    }

    #[inline(never)]
    fn truth(&self, expected: &dyn Expected) -> Result<bool, Bad> {
        match self {
            Self::Truth(truth) => Ok(*truth),
            _ => Err(self.refused(expected)),
        }
    }

    #[inline(never)]
    fn text(&mut self, expected: &dyn Expected) -> Result<String, Bad> {
        match self {
            Self::Text(text) => Ok(std::mem::take(text)),
            _ => Err(self.refused(expected)),
        }
    }

    #[inline(never)]
    fn list(&mut self, expected: &dyn Expected) -> Result<Items<'_>, Bad> {
        match self {
            Self::List(list) => Ok(Items(list.iter_mut())),
            _ => Err(self.refused(expected)),
        }
    }

    #[inline(never)]
    fn entries(&mut self, expected: &dyn Expected) -> Result<Entries<'_>, Bad> {
        match self {
            Self::Object(all) => Ok(Entries(all.iter_mut(), None)),
            _ => Err(self.refused(expected)),
        }
    }

    #[inline(never)]
    fn fields(&mut self, names: &'static [&'static str], expected: &dyn Expected) -> Result<Fields<'_>, Bad> {
        let of = match self {
            Self::Object(all) => all.as_mut_slice(),
            // A list is an object of JavaScript with none of the fields.
            Self::List(_) => &mut [],
            _ => return Err(self.refused(expected)),
        };
        Ok(Fields {
            of,
            names: names.iter(),
            absent: None,
            none: Self::Absent,
        })
    }

    /// Which of the variants it is, and what that holds: a text is one that holds nothing.
    #[inline(never)]
    fn variant(&mut self, names: &'static [&'static str], expected: &dyn Expected) -> Result<Variant<'_>, Bad> {
        let place = |name: &str| {
            let found = (0..).zip(names).find_map(|(place, of)| (*of == name).then_some(place));
            found.ok_or_else(|| Bad::unknown_variant(name, names))
        };
        match self {
            Self::Text(name) => {
                let place = place(name)?;
                *self = Self::Nothing;
                Ok(Variant(place, self))
            }
            Self::Object(all) => match all.as_mut_slice() {
                [(name, content)] => Ok(Variant(place(name)?, content)),
                all => Err(Bad::invalid_length(all.len(), &"1")),
            },
            _ => Err(self.refused(expected)),
        }
    }
}

macro_rules! reads {
    ($how:ident, $visit:ident: $($method:ident),*) => {
        $(fn $method<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Bad> {
            let found = self.$how(&visitor)?;
            visitor.$visit(found)
        })*
    };
}

impl<'de> Deserializer<'de> for &mut Plain {
    type Error = Bad;

    reads!(truth, visit_bool: deserialize_bool);
    reads!(whole, visit_i64: deserialize_i8, deserialize_i16, deserialize_i32, deserialize_i64);
    reads!(whole, visit_i64: deserialize_u8, deserialize_u16, deserialize_u32, deserialize_u64);
    reads!(number, visit_f64: deserialize_f32, deserialize_f64);
    reads!(text, visit_string: deserialize_char, deserialize_str, deserialize_string, deserialize_identifier);
    reads!(list, visit_seq: deserialize_seq);
    reads!(entries, visit_map: deserialize_map);

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Bad> {
        match self {
            Plain::Absent => Err(Bad(None)),
            Plain::Nothing => visitor.visit_unit(),
            Plain::Truth(_) => self.deserialize_bool(visitor),
            Plain::Number(_) => match self.whole(&visitor) {
                Ok(whole) => visitor.visit_i64(whole),
                Err(_) => self.deserialize_f64(visitor),
            },
            Plain::Text(_) => self.deserialize_string(visitor),
            Plain::List(_) => self.deserialize_seq(visitor),
            Plain::Object(_) => self.deserialize_map(visitor),
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Bad> {
        match self {
            Plain::Absent | Plain::Nothing => visitor.visit_none(),
            _ => visitor.visit_some(self),
        }
    }

    fn deserialize_unit<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Bad> {
        match self {
            Plain::Nothing => visitor.visit_unit(),
            _ => Err(self.refused(&visitor)),
        }
    }

    fn deserialize_ignored_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Bad> {
        visitor.visit_unit()
    }

    fn deserialize_unit_struct<V: Visitor<'de>>(self, _: &'static str, visitor: V) -> Result<V::Value, Bad> {
        self.deserialize_unit(visitor)
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(self, _: &'static str, visitor: V) -> Result<V::Value, Bad> {
        visitor.visit_newtype_struct(self)
    }

    fn deserialize_tuple<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, Bad> {
        self.deserialize_seq(visitor)
    }

    fn deserialize_tuple_struct<V: Visitor<'de>>(self, _: &'static str, _: usize, visitor: V) -> Result<V::Value, Bad> {
        self.deserialize_seq(visitor)
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        names: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Bad> {
        let mut fields = self.fields(names, &visitor)?;
        visitor.visit_seq(&mut fields).map_err(|bad| fields.why(bad))
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        names: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Bad> {
        let variant = self.variant(names, &visitor)?;
        visitor.visit_enum(variant)
    }

    // No request has bytes.
    fn deserialize_bytes<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Bad> {
        Err(self.refused(&visitor))
    }

    fn deserialize_byte_buf<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Bad> {
        Err(self.refused(&visitor))
    }
}

/// The elements of a list.
pub(super) struct Items<'p>(std::slice::IterMut<'p, Plain>);

impl<'de> de::SeqAccess<'de> for Items<'_> {
    type Error = Bad;

    fn next_element_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<Option<T::Value>, Bad> {
        self.0.next().map(|each| seed.deserialize(each)).transpose()
    }

    fn size_hint(&self) -> Option<usize> {
        Some(self.0.len())
    }
}

/// The entries of an object whose keys are no fields; between key and value, the value.
pub(super) struct Entries<'p>(std::slice::IterMut<'p, (String, Plain)>, Option<&'p mut Plain>);

impl<'de> de::MapAccess<'de> for Entries<'_> {
    type Error = Bad;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Result<Option<K::Value>, Bad> {
        let Some((key, value)) = self.0.next() else {
            return Ok(None);
        };
        self.1 = Some(value);
        seed.deserialize(StrDeserializer::new(key)).map(Some)
    }

    fn next_value_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<T::Value, Bad> {
        seed.deserialize(self.1.take().unwrap_or(&mut Plain::Absent))
    }
}

/// The fields of an object in the order in which its type has them.
pub(super) struct Fields<'p> {
    of: &'p mut [(String, Plain)],
    names: std::slice::Iter<'static, &'static str>,
    /// The field that was asked for last, where it is not there.
    absent: Option<&'static str>,
    none: Plain,
}

impl Fields<'_> {
    #[inline(never)]
    fn next(&mut self) -> Option<&mut Plain> {
        let name = *self.names.next()?;
        self.absent = None;
        match self.of.iter_mut().find(|(key, _)| key == name) {
            Some((_, value)) => Some(value),
            None => {
                self.absent = Some(name);
                Some(&mut self.none)
            }
        }
    }

    /// Why the object is not of its form: what is refused right after a field that is not there, is that.
    #[inline(never)]
    fn why(&self, bad: Bad) -> Bad {
        self.absent.map_or(bad, Bad::missing_field)
    }
}

impl<'de> de::SeqAccess<'de> for Fields<'_> {
    type Error = Bad;

    fn next_element_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<Option<T::Value>, Bad> {
        let Some(value) = self.next() else {
            return Ok(None);
        };
        match seed.deserialize(value) {
            Ok(value) => Ok(Some(value)),
            // The type says whether it can do without.
            Err(Bad(None)) => Ok(None),
            Err(bad) => Err(bad),
        }
    }
}

/// The place of a variant among its type's, and what it holds.
pub(super) struct Variant<'p>(u32, &'p mut Plain);

impl<'de, 'p> de::EnumAccess<'de> for Variant<'p> {
    type Error = Bad;
    type Variant = &'p mut Plain;

    fn variant_seed<V: DeserializeSeed<'de>>(self, seed: V) -> Result<(V::Value, &'p mut Plain), Bad> {
        Ok((seed.deserialize(U32Deserializer::new(self.0))?, self.1))
    }
}

impl<'de> de::VariantAccess<'de> for &mut Plain {
    type Error = Bad;

    fn unit_variant(self) -> Result<(), Bad> {
        match self {
            Plain::Nothing => Ok(()),
            _ => Err(self.refused(&"unit")),
        }
    }

    fn newtype_variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Result<T::Value, Bad> {
        seed.deserialize(self)
    }

    fn tuple_variant<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, Bad> {
        self.deserialize_seq(visitor)
    }

    fn struct_variant<V: Visitor<'de>>(self, names: &'static [&'static str], visitor: V) -> Result<V::Value, Bad> {
        self.deserialize_struct("", names, visitor)
    }
}
