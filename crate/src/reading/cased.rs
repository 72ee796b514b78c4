//! Capitals and small letters of a text.

/// Which letters a text is written in: where both cases stand, a `T` is no `t`.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Cased {
    /// Capitals stand in it, besides the unit itself.
    pub capitals: bool,
    /// Small letters stand in it.
    pub small: bool,
}

impl Cased {
    /// Of a whole text.
    pub fn of(text: &str) -> Self {
        let words = || {
            text.split(|c: char| !c.is_alphabetic())
                .filter(|w| w.chars().count() > 1 || *w == "T" || *w == "t")
        };
        Self {
            capitals: words().any(|w| w.starts_with(char::is_uppercase)),
            small: words().any(|w| w.contains(char::is_lowercase)),
        }
    }
}
