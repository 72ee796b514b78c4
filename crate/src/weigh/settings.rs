//! What a person sets once.

use super::finding::{self, Finding};
use super::smoked::{self, Smoked};
use crate::dose::{Kit, OwnSpoon, default_rule, profiles};
use crate::quantity::{Code, Length, Mass, Problem, System, Wrong};
use crate::recipe::Cure;
use serde::{Deserialize, Serialize};

/// Steps a scale may have, the coarsest first.
pub const SCALE_STEPS: [&str; 4] = ["5 g", "1 g", "0.1 g", "0.01 g"];

/// Most premixes and stocks that are kept.
const MOST_MIXES: usize = 20;

/// Units, scale and jurisdiction. Stored values do not depend on it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Settings {
    /// Which units are printed.
    #[serde(default)]
    pub units: System,
    /// The smallest step the scale shows: `5 g`, `1 g`, `0.1 g`, `0.01 g`.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub scale_step: Mass,
    /// Key of the jurisdiction whose limits judge a dose, `us-home`.
    pub profile: String,
    /// Level spoons of the user's own, weighed; they stand in place of the general ranges.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<OwnSpoon>>"))]
    pub spoons: Vec<OwnSpoon>,
    /// Premixes and stocks of the user's own, to choose as a cure.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Cure>>"))]
    pub mixes: Vec<Cure>,
    /// What cut pieces told about how fast salt goes into this user's meat. Empty: nothing, or forgotten.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Finding>>"))]
    pub learned: Vec<Finding>,
    /// What fires told of this user's smoker. Empty: nothing, or forgotten.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[cfg_attr(feature = "types", ts(optional, as = "Option<Vec<Smoked>>"))]
    pub smoked: Vec<Smoked>,
    /// Hours and room of the house, for planning.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "types", ts(optional))]
    pub house: Option<House>,
}

/// Hours and room of the house.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct House {
    /// Clock times as `22:30`: asleep from and until, in the blind from and until; empty where there is none. The page
    /// makes moments of them, since it knows the time zone.
    pub hours: [String; 4],
    /// Batches at once in the refrigerator, over the fire, on the rack.
    pub room: [u32; 3],
    /// Shelves of the refrigerator and racks of the smoker: where they are known, room goes by area there.
    pub racks: [Option<Racks>; 2],
}

/// Shelves or racks of one size.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct Racks {
    /// How many, 1 to 99.
    pub count: u32,
    /// How wide one is.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub wide: Length,
    /// How deep one is.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub deep: Length,
}

impl House {
    fn good(&self) -> bool {
        let clock = |text: &String| {
            let digits = text.bytes().all(|b| b.is_ascii_digit() || b == b':');
            text.is_empty() || (text.len() == 5 && digits)
        };
        self.hours.iter().all(clock)
            && self.room.iter().all(|n| *n <= 99)
            && self.racks.iter().flatten().all(|r| (1..=99).contains(&r.count))
    }
}

impl Settings {
    /// Settings of a new page: metric, a 0.1 g scale, the first jurisdiction of the table.
    ///
    /// ```
    /// use cure_reckoner::weigh::Settings;
    /// let settings = Settings::new_page();
    /// assert_eq!(settings.profile, "us-home");
    /// assert!(settings.problems().is_empty());
    /// ```
    pub fn new_page() -> Self {
        Self {
            units: System::Metric,
            scale_step: Mass::read("0.1 g", None).unwrap_or_default(),
            profile: default_rule().key.to_owned(),
            spoons: Vec::new(),
            mixes: Vec::new(),
            learned: Vec::new(),
            smoked: Vec::new(),
            house: None,
        }
    }

    /// Scale, spoons and jurisdiction, for reading what went in.
    ///
    /// ```
    /// use cure_reckoner::weigh::Settings;
    /// use rust_decimal::dec;
    /// assert_eq!(Settings::new_page().kit().step, dec!(0.1));
    /// ```
    pub fn kit(&self) -> Kit<'_> {
        Kit {
            step: self.scale_step.base(),
            own: &self.spoons,
            profile: &self.profile,
        }
    }

    /// Everything that is wrong with them, at `settings`; empty when they can be used.
    ///
    /// ```
    /// use cure_reckoner::weigh::Settings;
    /// let settings = Settings { profile: "nowhere".into(), ..Settings::new_page() };
    /// let fields: Vec<String> = settings.problems().into_iter().map(|problem| problem.field).collect();
    /// assert_eq!(fields, ["settings.profile"]);
    /// ```
    pub fn problems(&self) -> Vec<Problem> {
        let mut found = Vec::new();
        let mut check = |good: bool, code: Code, wrong: Wrong, at: &str| {
            if !good {
                found.push(Problem::of(code, wrong).at(at));
            }
        };
        let is_step = |s: &&str| Mass::read(s, None).is_ok_and(|m| m == self.scale_step);
        let steps = Wrong::ScaleStep {
            steps: SCALE_STEPS.to_vec(),
        };
        check(
            SCALE_STEPS.iter().any(is_step),
            Code::Unknown,
            steps,
            "settings.scale_step",
        );
        let known = profiles().iter().any(|p| p.key == self.profile);
        check(known, Code::Unknown, Wrong::NoSuchRule, "settings.profile");
        let is_mix = |c: &Cure| c.made.is_some() && c.problems().is_empty();
        let mixes = self.mixes.len() <= MOST_MIXES && self.mixes.iter().all(is_mix);
        check(
            mixes,
            Code::BadForm,
            Wrong::KeptMixes { most: MOST_MIXES },
            "settings.mixes",
        );
        check(
            finding::good(&self.learned),
            Code::BadForm,
            Wrong::LearnedCuts,
            "settings.learned",
        );
        check(
            smoked::good(&self.smoked),
            Code::BadForm,
            Wrong::LearnedSmoker,
            "settings.smoked",
        );
        let house = self.house.as_ref().is_none_or(House::good);
        check(house, Code::BadForm, Wrong::HouseHours, "settings.house");
        found
    }
}
