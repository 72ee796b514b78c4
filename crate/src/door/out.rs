//! Answers as values of JavaScript: objects and lists without a map, `null` for nothing, numbers as JavaScript has them.
//!
//! An answer has some hundreds of types, and whatever stands here in a generic function is compiled for each of them:
//! what a field or an element costs is one call. Nothing that this crate answers is refused, so there is no error.

use serde::Serialize;
use serde::ser::{self, Serializer};
use std::fmt::Display;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::*;

#[wasm_bindgen]
extern "C" {
    #[wasm_bindgen(js_name = Object)]
    type Object;
    #[wasm_bindgen(constructor, js_class = "Object")]
    fn new() -> Object;
    #[wasm_bindgen(method, structural, indexing_setter)]
    fn set(this: &Object, key: &str, value: JsValue);
    #[wasm_bindgen(js_name = Array)]
    type Array;
    #[wasm_bindgen(constructor, js_class = "Array")]
    fn new() -> Array;
    #[wasm_bindgen(method)]
    fn push(this: &Array, value: JsValue);
}

/// A value as JavaScript has it.
pub fn out<T: Serialize + ?Sized>(value: &T) -> JsValue {
    match value.serialize(Out) {
        Ok(value) => value,
        Err(never) => match never {},
    }
}

/// No error that could be made: whoever refuses to be written ends the call.
#[derive(Debug)]
pub enum Never {}

impl Display for Never {
    fn fmt(&self, _: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match *self {}
    }
}

impl std::error::Error for Never {}

impl ser::Error for Never {
    fn custom<T: Display>(_: T) -> Self {
        std::process::abort()
    }
}

#[inline(never)]
fn put(object: &Object, key: &str, value: JsValue) {
    object.set(key, value);
}

#[inline(never)]
fn add(list: &Array, value: JsValue) {
    list.push(value);
}

#[inline(never)]
fn text(text: &str) -> JsValue {
    JsValue::from_str(text)
}

#[inline(never)]
fn number(number: f64) -> JsValue {
    JsValue::from_f64(number)
}

/// `{name: value}`, as an enum that holds something is written.
#[inline(never)]
fn under(name: &str, value: JsValue) -> JsValue {
    let object = Object::new();
    put(&object, name, value);
    object.into()
}

struct Out;

/// An object in the making; of a variant, the name it goes under.
struct Fields(Object, Option<&'static str>);

/// A map in the making: its object, and the key that waits for its value.
struct Entries(Object, String);

/// A list in the making; of a variant, the name it goes under.
struct List(Array, Option<&'static str>);

#[inline(never)]
fn done(value: JsValue, name: Option<&'static str>) -> JsValue {
    match name {
        Some(name) => under(name, value),
        None => value,
    }
}

macro_rules! numbers {
    ($($method:ident: $type:ty),*) => {
        $(#[allow(clippy::cast_precision_loss, reason = "a number of JavaScript is a float")]
        fn $method(self, v: $type) -> Result<JsValue, Never> {
            Ok(number(v as f64))
        })*
    };
}

impl Serializer for Out {
    type Ok = JsValue;
    type Error = Never;
    type SerializeSeq = List;
    type SerializeTuple = List;
    type SerializeTupleStruct = List;
    type SerializeTupleVariant = List;
    type SerializeMap = Entries;
    type SerializeStruct = Fields;
    type SerializeStructVariant = Fields;

    numbers!(serialize_i64: i64, serialize_u64: u64, serialize_f64: f64);
    fn serialize_i8(self, v: i8) -> Result<JsValue, Never> {
        Ok(number(v.into()))
    }
    fn serialize_i16(self, v: i16) -> Result<JsValue, Never> {
        Ok(number(v.into()))
    }
    fn serialize_i32(self, v: i32) -> Result<JsValue, Never> {
        Ok(number(v.into()))
    }
    fn serialize_u8(self, v: u8) -> Result<JsValue, Never> {
        Ok(number(v.into()))
    }
    fn serialize_u16(self, v: u16) -> Result<JsValue, Never> {
        Ok(number(v.into()))
    }
    fn serialize_u32(self, v: u32) -> Result<JsValue, Never> {
        Ok(number(v.into()))
    }
    fn serialize_f32(self, v: f32) -> Result<JsValue, Never> {
        Ok(number(v.into()))
    }
    fn serialize_bool(self, v: bool) -> Result<JsValue, Never> {
        Ok(JsValue::from_bool(v))
    }
    fn serialize_char(self, v: char) -> Result<JsValue, Never> {
        Ok(text(v.encode_utf8(&mut [0; 4])))
    }
    fn serialize_str(self, v: &str) -> Result<JsValue, Never> {
        Ok(text(v))
    }
    fn serialize_bytes(self, v: &[u8]) -> Result<JsValue, Never> {
        Ok(out(v))
    }
    fn serialize_none(self) -> Result<JsValue, Never> {
        Ok(JsValue::NULL)
    }
    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Result<JsValue, Never> {
        Ok(out(value))
    }
    fn serialize_unit(self) -> Result<JsValue, Never> {
        Ok(JsValue::NULL)
    }
    fn serialize_unit_struct(self, _: &'static str) -> Result<JsValue, Never> {
        Ok(JsValue::NULL)
    }
    fn serialize_unit_variant(self, _: &'static str, _: u32, variant: &'static str) -> Result<JsValue, Never> {
        Ok(text(variant))
    }
    fn serialize_newtype_struct<T: Serialize + ?Sized>(self, _: &'static str, value: &T) -> Result<JsValue, Never> {
        Ok(out(value))
    }
    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        value: &T,
    ) -> Result<JsValue, Never> {
        Ok(under(variant, out(value)))
    }
    fn serialize_seq(self, _: Option<usize>) -> Result<List, Never> {
        Ok(List(Array::new(), None))
    }
    fn serialize_tuple(self, _: usize) -> Result<List, Never> {
        Ok(List(Array::new(), None))
    }
    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<List, Never> {
        Ok(List(Array::new(), None))
    }
    fn serialize_tuple_variant(self, _: &'static str, _: u32, variant: &'static str, _: usize) -> Result<List, Never> {
        Ok(List(Array::new(), Some(variant)))
    }
    fn serialize_map(self, _: Option<usize>) -> Result<Entries, Never> {
        Ok(Entries(Object::new(), String::new()))
    }
    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Fields, Never> {
        Ok(Fields(Object::new(), None))
    }
    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        variant: &'static str,
        _: usize,
    ) -> Result<Fields, Never> {
        Ok(Fields(Object::new(), Some(variant)))
    }
}

macro_rules! lists {
    ($($of:ident, $each:ident);*) => {
        $(impl ser::$of for List {
            type Ok = JsValue;
            type Error = Never;
            fn $each<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Never> {
                add(&self.0, out(value));
                Ok(())
            }
            fn end(self) -> Result<JsValue, Never> {
                Ok(done(self.0.into(), self.1))
            }
        })*
    };
}
lists!(
    SerializeSeq, serialize_element;
    SerializeTuple, serialize_element;
    SerializeTupleStruct, serialize_field;
    SerializeTupleVariant, serialize_field
);

macro_rules! objects {
    ($($of:ident),*) => {
        $(impl ser::$of for Fields {
            type Ok = JsValue;
            type Error = Never;
            fn serialize_field<T: Serialize + ?Sized>(&mut self, key: &'static str, value: &T) -> Result<(), Never> {
                put(&self.0, key, out(value));
                Ok(())
            }
            fn end(self) -> Result<JsValue, Never> {
                Ok(done(self.0.into(), self.1))
            }
        })*
    };
}
objects!(SerializeStruct, SerializeStructVariant);

impl ser::SerializeMap for Entries {
    type Ok = JsValue;
    type Error = Never;
    fn serialize_key<T: Serialize + ?Sized>(&mut self, key: &T) -> Result<(), Never> {
        self.1 = out(key).as_string().unwrap_or_default();
        Ok(())
    }
    fn serialize_value<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), Never> {
        put(&self.0, &self.1, out(value));
        Ok(())
    }
    fn end(self) -> Result<JsValue, Never> {
        Ok(self.0.into())
    }
}
