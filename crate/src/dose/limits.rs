//! Limits by jurisdiction, method and cut. The figures are in `tables/limits.csv`.

use crate::pantry::{Belly, Status};
use crate::recipe::{Eaten, Method};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::Serialize;

/// What a limit counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Basis {
    /// What goes in.
    Ingoing,
    /// The finished meat: what goes in meets it at or under it, and does not exceed it in what is eaten soon.
    Finished,
    /// What is left when it is eaten: what goes in meets it at or under it and cannot tell above it.
    Residual,
}

/// One rule: figures in ppm as the sodium salts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rule {
    /// Key of the jurisdiction, `us-home`.
    pub key: &'static str,
    /// Keys of methods with `|` between them, or `any`.
    pub method: &'static str,
    /// `belly`, `belly_rind` for one with its rind on, or `any`.
    pub cut: &'static str,
    /// Most nitrite.
    pub limit: Decimal,
    /// Most nitrate; nothing where the rule gives no figure.
    pub nitrate: Option<Decimal>,
    /// True where nitrate may go only into what is not heat-treated.
    pub nitrate_raw_only: bool,
    /// True where nitrite and nitrate are summed against the limit.
    pub together: bool,
    /// What the limit counts.
    pub basis: Basis,
    /// Up to here a limit on the finished meat or on what is left does not decide over what goes in.
    pub undecided_to: Decimal,
    /// Effective least of nitrite.
    pub least: Decimal,
    /// Sodium ascorbate or erythorbate that has to go in with it; nothing where none has to.
    pub ascorbate: Option<Decimal>,
    /// The rule in words, with where it is published.
    pub source: &'static str,
    /// Of the figure that decides.
    pub status: Status,
}

impl Rule {
    /// Most nitrate in what is eaten so; nothing where the rule gives no figure.
    pub(super) fn nitrate_in(&self, eaten: Eaten) -> Option<Decimal> {
        match eaten {
            Eaten::Cooked if self.nitrate_raw_only => Some(Decimal::ZERO),
            _ => self.nitrate,
        }
    }
}

/// A jurisdiction, for a picker.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Profile {
    /// Key, `us-home`; the page has its name.
    #[cfg_attr(feature = "types", ts(type = "ProfileKey"))]
    pub key: &'static str,
    /// Most nitrite by its general rule, ppm as the sodium salt, rounded down.
    pub limit: u32,
    /// What its general rule counts and where it is published.
    pub source: &'static str,
    /// How well it is known.
    pub status: Status,
}

/// Every jurisdiction, the default first.
///
/// ```
/// use cure_reckoner::dose::profiles;
/// let all = profiles();
/// assert_eq!((all[0].key, all[0].limit), ("us-home", 200));
/// ```
pub fn profiles() -> Vec<Profile> {
    let mut list: Vec<Profile> = Vec::new();
    for rule in &crate::tables::RULES {
        if !list.iter().any(|p| p.key == rule.key) {
            let Rule {
                key, source, status, ..
            } = *rule;
            list.push(Profile {
                key,
                limit: rule.limit.floor().to_u32().unwrap_or_default(),
                source,
                status,
            });
        }
    }
    list
}

/// The rule of a jurisdiction for a method and a cut: its own where there is one, else the general one.
///
/// ```
/// use cure_reckoner::dose::rule;
/// use cure_reckoner::pantry::Belly;
/// use cure_reckoner::recipe::Method;
/// use rust_decimal::dec;
/// let limit = |belly| rule("us-home", Method::CoverBrine, belly).unwrap().limit;
/// assert_eq!(limit(Belly::No), dec!(200));
/// assert_eq!(limit(Belly::Bare), dec!(120));
/// // With a tenth of it rind: 120 × 0.9.
/// assert_eq!(limit(Belly::RindOn), dec!(108));
/// assert!(rule("nowhere", Method::CoverBrine, Belly::No).is_none());
/// ```
pub fn rule(key: &str, method: Method, belly: Belly) -> Option<&'static Rule> {
    let method = method.key();
    let cuts: &[&str] = match belly {
        Belly::No => &["any"],
        Belly::Bare => &["belly", "any"],
        Belly::RindOn => &["belly_rind", "belly", "any"],
    };
    // The narrower the rule, the earlier its cut stands; no table gives both a method and "any" for one cut.
    let place = |rule: &Rule| {
        let named = rule.method.split('|').any(|m| m == method || m == "any");
        cuts.iter()
            .position(|c| *c == rule.cut)
            .filter(|_| rule.key == key && named)
    };
    let fitting = crate::tables::RULES
        .iter()
        .filter_map(|rule| Some((place(rule)?, rule)));
    fitting.min_by_key(|(place, _)| *place).map(|(_, rule)| rule)
}

/// The default rule: the one that other findings lean on where theirs is from memory.
///
/// ```
/// use cure_reckoner::dose::{default_rule, profiles};
/// assert_eq!(default_rule().key, profiles()[0].key);
/// ```
pub fn default_rule() -> &'static Rule {
    let [first, ..] = &crate::tables::RULES;
    first
}
