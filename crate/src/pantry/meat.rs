//! What a rule for meat is for.

use serde::{Deserialize, Serialize};

/// Key of an ingredient, a cut or a kind of meat that is the user's own and has a name with it.
pub const OWN: &str = "own";

/// A kind of meat: decides cautions, temperatures and times.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum MeatKind {
    /// Every bird, wild ones too, whole or minced.
    Bird,
    /// Red game, whole or minced.
    Red,
    /// Wild boar, bear, cougar and their kin, all through: freezing, curing, drying and smoking do not kill the
    /// parasites. Older pages say 160 °F; they are superseded.
    Boar,
    /// Hare and other wild game, as wild game animals in the Food Code.
    Hare,
    /// What is not in the table of cuts: the most that any rule asks, until it is known what it is.
    Own,
}

impl MeatKind {
    /// As tables and answers have it.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Bird => "bird",
            Self::Red => "red",
            Self::Boar => "boar",
            Self::Hare => "hare",
            Self::Own => OWN,
        }
    }
}
