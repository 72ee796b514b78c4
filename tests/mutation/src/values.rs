//! Plausible constants for a type: what a body is replaced with.

use syn::{GenericArgument, PathArguments, ReturnType, Type, TypeParamBound};

/// What a function may give in place of its own answer.
pub enum Given {
    /// One of these.
    Values(Vec<String>),
    /// Its own iterator without an element.
    NoElement,
}

/// What may stand in place of an answer of this type.
pub fn of(output: &ReturnType) -> Given {
    match output {
        ReturnType::Default => Given::Values(vec!["()".into()]),
        ReturnType::Type(_, ty) => match &**ty {
            Type::ImplTrait(it) if it.bounds.iter().any(is_iterator) => Given::NoElement,
            ty => Given::Values(values(ty)),
        },
    }
}

fn is_iterator(bound: &TypeParamBound) -> bool {
    matches!(bound, TypeParamBound::Trait(of) if of.path.segments.last().is_some_and(|s| s.ident == "Iterator"))
}

fn values(ty: &Type) -> Vec<String> {
    let list = |texts: &[&str]| texts.iter().map(|text| (*text).to_owned()).collect();
    match ty {
        Type::Path(path) => {
            let Some(last) = path.path.segments.last() else {
                return Vec::new();
            };
            let inner = |place: usize| match &last.arguments {
                PathArguments::AngleBracketed(of) => {
                    let types = of.args.iter().filter_map(|arg| match arg {
                        GenericArgument::Type(ty) => Some(ty),
                        _ => None,
                    });
                    types.into_iter().nth(place).map_or_else(Vec::new, values)
                }
                _ => Vec::new(),
            };
            let each =
                |wrap: &str| -> Vec<String> { inner(0).iter().map(|value| format!("{wrap}({value})")).collect() };
            match last.ident.to_string().as_str() {
                "bool" => list(&["true", "false"]),
                "u8" | "u16" | "u32" | "u64" | "u128" | "usize" => list(&["0", "1"]),
                "i8" | "i16" | "i32" | "i64" | "i128" | "isize" => list(&["0", "1", "-1"]),
                "f32" | "f64" => list(&["0.0", "1.0", "-1.0"]),
                "String" => list(&["String::new()", "String::from(\"xyzzy\")"]),
                "Decimal" => list(&["rust_decimal::Decimal::ZERO", "rust_decimal::Decimal::ONE"]),
                "Option" => [list(&["None"]), each("Some")].concat(),
                "Result" => each("Ok"),
                "Box" => each("Box::new"),
                "Vec" => {
                    let one = inner(0).into_iter().map(|value| format!("vec![{value}]"));
                    [list(&["vec![]"]), one.collect()].concat()
                }
                _ => list(&["Default::default()"]),
            }
        }
        Type::Reference(of) => match &*of.elem {
            Type::Path(path) if path.path.is_ident("str") => list(&["\"\"", "\"xyzzy\""]),
            Type::Slice(_) => list(&["Vec::leak(Vec::new())"]),
            elem => values(elem)
                .iter()
                .map(|value| format!("Box::leak(Box::new({value}))"))
                .collect(),
        },
        Type::Tuple(of) => of
            .elems
            .iter()
            .fold(list(&[""]), |made, ty| {
                let with = |start: &String| -> Vec<String> {
                    values(ty).iter().map(|value| format!("{start}{value}, ")).collect()
                };
                made.iter().flat_map(with).collect()
            })
            .iter()
            .map(|inner| format!("({inner})"))
            .collect(),
        Type::Array(of) => values(&of.elem)
            .iter()
            .map(|value| format!("std::array::from_fn(|_| {value})"))
            .collect(),
        Type::Paren(of) => values(&of.elem),
        _ => Vec::new(),
    }
}
