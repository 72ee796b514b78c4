//! Requests out of values of JavaScript: plain objects, lists, texts, numbers. As in `out.rs`, what is generic here is
//! compiled for every type, so it is little; and a field is known by its place, not by its name.

use serde::de::value::{StringDeserializer, U64Deserializer};
use serde::de::{
    self, DeserializeOwned, DeserializeSeed, Deserializer, EnumAccess, Expected, IntoDeserializer, MapAccess,
    SeqAccess, Unexpected, VariantAccess, Visitor,
};
use std::cell::RefCell;
use std::fmt::Display;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::*;

#[wasm_bindgen]
extern "C" {
    type Plain;
    #[wasm_bindgen(method, structural, indexing_getter)]
    fn get(this: &Plain, key: &JsValue) -> JsValue;
    #[wasm_bindgen(js_namespace = Object)]
    fn keys(of: &JsValue) -> Box<[JsValue]>;
    #[wasm_bindgen(js_namespace = Array, js_name = isArray)]
    fn is_array(value: &JsValue) -> bool;
    #[wasm_bindgen(js_namespace = Array, js_name = from)]
    fn listed(value: &JsValue) -> Box<[JsValue]>;
}

/// A value of JavaScript as a type, or why it is not of its form.
pub fn taken<T: DeserializeOwned>(value: JsValue) -> Result<T, String> {
    T::deserialize(Taken(value)).map_err(|Refused(why)| why)
}

#[derive(Debug)]
struct Refused(String);

impl Display for Refused {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.0)
    }
}

impl std::error::Error for Refused {}

impl de::Error for Refused {
    #[cold]
    #[inline(never)]
    fn custom<T: Display>(why: T) -> Self {
        Self(why.to_string())
    }

    // What a value is, serde would print, floats and all: that alone is a good part of what printing weighs.
    fn invalid_type(_: Unexpected<'_>, wanted: &dyn Expected) -> Self {
        refused(wanted)
    }

    fn invalid_value(_: Unexpected<'_>, wanted: &dyn Expected) -> Self {
        refused(wanted)
    }
}

struct Taken(JsValue);

/// Numbers up to which JavaScript knows every whole one.
const WHOLE: f64 = 9_007_199_254_740_991.0;

#[inline(never)]
fn whole(value: &JsValue) -> Option<i64> {
    let number = value.as_f64()?;
    #[allow(clippy::cast_possible_truncation, reason = "it is whole and within bounds")]
    (number.trunc() == number && number.abs() <= WHOLE).then_some(number as i64)
}

/// A plain object: no list, and nothing that is no object.
#[inline(never)]
fn is_plain(value: &JsValue) -> bool {
    value.is_object() && !is_array(value)
}

/// The names of some fields, and the same as JavaScript has them.
type Names = (&'static [&'static str], &'static [JsValue]);

thread_local! {
    /// Those of each type that was met: to look one up costs less than to hand its text over anew.
    static NAMES: RefCell<Vec<Names>> = const { RefCell::new(Vec::new()) };
}

#[inline(never)]
fn names(fields: &'static [&'static str]) -> &'static [JsValue] {
    NAMES.with_borrow_mut(|known| {
        if let Some((_, names)) = known.iter().find(|(of, _)| std::ptr::eq(*of, fields)) {
            return *names;
        }
        // Kept for good: there are as many as there are types.
        let names = Vec::leak(fields.iter().map(|name| JsValue::from_str(name)).collect());
        known.push((fields, names));
        names
    })
}

#[cold]
#[inline(never)]
fn refused(wanted: &dyn Expected) -> Refused {
    Refused(format!("not {wanted}"))
}

impl Taken {
    fn number<'de, V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match (whole(&self.0), self.0.as_f64()) {
            (Some(number), _) => visitor.visit_i64(number),
            (None, Some(number)) => visitor.visit_f64(number),
            _ => Err(refused(&visitor)),
        }
    }

    fn text<'de, V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match self.0.as_string() {
            Some(text) => visitor.visit_string(text),
            None => Err(refused(&visitor)),
        }
    }
}

macro_rules! to {
    ($how:ident: $($method:ident)*) => {
        $(fn $method<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
            self.$how(visitor)
        })*
    };
}

impl<'de> Deserializer<'de> for Taken {
    type Error = Refused;

    to!(number: deserialize_i8 deserialize_i16 deserialize_i32 deserialize_i64 deserialize_u8 deserialize_u16 deserialize_u32
        deserialize_u64 deserialize_f32 deserialize_f64);
    to!(text: deserialize_str deserialize_string deserialize_identifier deserialize_char);
    to!(deserialize_any: deserialize_bytes deserialize_byte_buf deserialize_map);

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        if self.0.is_null() || self.0.is_undefined() {
            visitor.visit_unit()
        } else if let Some(b) = self.0.as_bool() {
            visitor.visit_bool(b)
        } else if self.0.is_string() {
            self.text(visitor)
        } else if is_array(&self.0) {
            self.deserialize_seq(visitor)
        } else if self.0.is_object() {
            visitor.visit_map(Entries(
                keys(&self.0).into_iter(),
                self.0.unchecked_into(),
                JsValue::UNDEFINED,
            ))
        } else {
            self.number(visitor)
        }
    }

    fn deserialize_bool<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        match self.0.as_bool() {
            Some(b) => visitor.visit_bool(b),
            None => Err(refused(&visitor)),
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        if self.0.is_null() || self.0.is_undefined() {
            visitor.visit_none()
        } else {
            visitor.visit_some(self)
        }
    }

    fn deserialize_unit<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        visitor.visit_unit()
    }

    fn deserialize_unit_struct<V: Visitor<'de>>(self, _: &'static str, visitor: V) -> Result<V::Value, Refused> {
        visitor.visit_unit()
    }

    fn deserialize_ignored_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        visitor.visit_unit()
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(self, _: &'static str, visitor: V) -> Result<V::Value, Refused> {
        visitor.visit_newtype_struct(self)
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Refused> {
        if is_array(&self.0) {
            visitor.visit_seq(Items(listed(&self.0).into_iter()))
        } else {
            Err(refused(&visitor))
        }
    }

    fn deserialize_tuple<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, Refused> {
        self.deserialize_seq(visitor)
    }

    fn deserialize_tuple_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: usize,
        visitor: V,
    ) -> Result<V::Value, Refused> {
        self.deserialize_seq(visitor)
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Refused> {
        if is_plain(&self.0) {
            visitor.visit_map(Fields(self.0.unchecked_into(), names(fields), 0, JsValue::UNDEFINED))
        } else {
            Err(refused(&visitor))
        }
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Refused> {
        match variant(&self.0) {
            Some((name, content)) => visitor.visit_enum(Variant(name, content)),
            None => Err(refused(&visitor)),
        }
    }
}

/// The name of a variant, and what it holds: a text alone, or an object of one key.
#[inline(never)]
fn variant(value: &JsValue) -> Option<(String, JsValue)> {
    if let Some(name) = value.as_string() {
        return Some((name, JsValue::UNDEFINED));
    }
    if !is_plain(value) {
        return None;
    }
    let keys = keys(value);
    let key = keys.first().filter(|_| keys.len() == 1)?;
    Some((key.as_string()?, value.unchecked_ref::<Plain>().get(key)))
}

struct Items(std::vec::IntoIter<JsValue>);

impl<'de> SeqAccess<'de> for Items {
    type Error = Refused;
    fn next_element_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<Option<T::Value>, Refused> {
        self.0.next().map(|value| seed.deserialize(Taken(value))).transpose()
    }
}

/// Every entry of an object, by its name.
struct Entries(std::vec::IntoIter<JsValue>, Plain, JsValue);

impl<'de> MapAccess<'de> for Entries {
    type Error = Refused;
    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Result<Option<K::Value>, Refused> {
        let Some(key) = self.0.next() else {
            return Ok(None);
        };
        let name: StringDeserializer<Refused> = key.as_string().unwrap_or_default().into_deserializer();
        self.2 = key;
        seed.deserialize(name).map(Some)
    }
    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, Refused> {
        seed.deserialize(Taken(self.1.get(&self.2)))
    }
}

/// The known fields that an object has, each by its place among them.
struct Fields(Plain, &'static [JsValue], usize, JsValue);

impl Fields {
    /// The place of the next field that is there.
    #[inline(never)]
    fn next(&mut self) -> Option<u64> {
        loop {
            let at = self.2;
            let value = self.0.get(self.1.get(at)?);
            self.2 = at.saturating_add(1);
            if !value.is_undefined() {
                self.3 = value;
                return u64::try_from(at).ok();
            }
        }
    }
}

impl<'de> MapAccess<'de> for Fields {
    type Error = Refused;
    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Result<Option<K::Value>, Refused> {
        let Some(at) = self.next() else {
            return Ok(None);
        };
        let place: U64Deserializer<Refused> = at.into_deserializer();
        seed.deserialize(place).map(Some)
    }
    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, Refused> {
        seed.deserialize(Taken(std::mem::replace(&mut self.3, JsValue::UNDEFINED)))
    }
}

struct Variant(String, JsValue);

impl<'de> EnumAccess<'de> for Variant {
    type Error = Refused;
    type Variant = Taken;
    fn variant_seed<V: DeserializeSeed<'de>>(self, seed: V) -> Result<(V::Value, Taken), Refused> {
        let name: StringDeserializer<Refused> = self.0.into_deserializer();
        seed.deserialize(name).map(|variant| (variant, Taken(self.1)))
    }
}

impl<'de> VariantAccess<'de> for Taken {
    type Error = Refused;
    fn unit_variant(self) -> Result<(), Refused> {
        if self.0.is_undefined() || self.0.is_null() {
            Ok(())
        } else {
            Err(refused(&"unit"))
        }
    }
    fn newtype_variant_seed<T: DeserializeSeed<'de>>(self, seed: T) -> Result<T::Value, Refused> {
        seed.deserialize(self)
    }
    fn tuple_variant<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, Refused> {
        self.deserialize_seq(visitor)
    }
    fn struct_variant<V: Visitor<'de>>(self, fields: &'static [&'static str], visitor: V) -> Result<V::Value, Refused> {
        self.deserialize_struct("", fields, visitor)
    }
}
