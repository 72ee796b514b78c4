//! What is wrong with a value, said once for every screen and every caller.

use super::wrong::Wrong;
use serde::Serialize;

/// One thing to put right. Expected failures are answers, not exceptions.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Problem {
    /// Stable word for programs, such as `ambiguous_number`.
    pub code: Code,
    /// Where it is, below the question: `batch.pieces[0].weight`. Empty for the whole.
    pub field: String,
    /// What is wrong, as a fact that the page words; nothing where `message` says it.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Wrong>"))]
    pub wrong: Option<Wrong>,
    /// One or two sentences: the rule, the value, what to type. Empty where `wrong` is told.
    pub message: String,
    /// Readings to choose from when a text can mean more than one thing.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub choices: Vec<String>,
}

/// Stable codes of [`Problem`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Code {
    /// Nothing was typed where something is needed.
    Missing,
    /// The text is not a number with a unit of this kind.
    NotRead,
    /// `1,480` and the like: may be one and a half or fifteen hundred.
    AmbiguousNumber,
    /// A number without a unit where none can be assumed.
    NoUnit,
    /// A unit of another kind, or one that is not known.
    WrongUnit,
    /// Below the least the field takes.
    TooSmall,
    /// Above the most the field takes.
    TooLarge,
    /// Parts that do not fit together.
    Conflict,
    /// A name that is in no table.
    Unknown,
    /// Text longer than the field takes, or a list with too many rows.
    TooLong,
    /// The request or the record is not of the form that is documented.
    BadForm,
    /// A link or a file that stops before its end.
    Cut,
    /// A link or a file whose checksum does not fit its content.
    Altered,
    /// Written by a version that this page does not know.
    Version,
}

impl Problem {
    /// A problem with no field yet; [`Problem::at`] says where.
    pub fn new(code: Code, message: impl Into<String>) -> Self {
        Self {
            code,
            field: String::new(),
            wrong: None,
            message: message.into(),
            choices: Vec::new(),
        }
    }

    /// A fact that is wrong, with no field yet.
    pub fn of(code: Code, wrong: impl Into<Wrong>) -> Self {
        Self {
            wrong: Some(wrong.into()),
            ..Self::new(code, "")
        }
    }

    /// The same problem at `field`; a field already there is kept behind it (`pieces[0]` + `weight`).
    #[must_use]
    pub fn at(mut self, field: &str) -> Self {
        self.field = match (field, self.field.as_str()) {
            (f, "") => f.to_owned(),
            ("", own) => own.to_owned(),
            (f, own) if own.starts_with('[') => format!("{f}{own}"),
            (f, own) => format!("{f}.{own}"),
        };
        self
    }
}

impl std::fmt::Display for Problem {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        // The figures of a fact would bring their own printing into the page.
        match self.wrong {
            Some(_) => write!(f, "{:?}", self.code),
            None => f.write_str(&self.message),
        }
    }
}

impl std::error::Error for Problem {}
