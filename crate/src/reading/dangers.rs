//! Dangers in what a text tells to do, each by its figure. They are named beside the text and go with the card.

use super::all::All;
use super::facts::{Danger, DangerKey};
use super::steps::Deed;
use crate::dose::{Outcome, Verdict};
use crate::pantry::{Group, MeatKind};
use crate::quantity::Temperature;
use crate::quantity::exact::Exact;
use crate::recipe::{COLD_SMOKE, Do, Method, Recipe};
use crate::safety;
use crate::tables::{AIRLESS, BIRD, BOAR, COOL_SMOKE, HARE, SHELF};
use rust_decimal::{Decimal, dec};

/// 40 °F: above it germs grow (USDA FSIS, "Danger Zone", published).
const COLD: Decimal = dec!(40);
/// 140 °F: above it they do not (USDA FSIS, "Danger Zone", published).
const HOT: Decimal = dec!(140);
/// Four hours between the two, minutes: what FDA Food Code 3-501.19 leaves without cold (published).
const FOUR: Decimal = dec!(240);

impl All<'_> {
    /// Every danger, in the order of the text.
    pub(super) fn dangers(&self, text: &str, verdict: Option<&Verdict>) -> Vec<Danger> {
        let lower = text.to_lowercase();
        let mut list: Vec<Danger> = Vec::new();
        let kind = kind(&lower);
        let minced = self.method == Some(Method::Ground);
        for deed in &self.deeds {
            list.extend(cool_smoke(deed));
            list.extend(warm(deed));
            list.extend(kept(deed, &self.deeds));
            list.extend(low(deed, kind, minced));
        }
        let cures: Vec<_> = self.cures().collect();
        let nitrate = |i: &&crate::pantry::Ingredient| i.group == Group::Cure && !matches!(i.nitrate, "" | "0");
        let plain = |key, text: &str| Danger {
            key,
            text: text.to_owned(),
            figure: None,
            rule: None,
        };
        for line in &cures {
            let nitrite = |i: &&crate::pantry::Ingredient| i.is_pure() && i.nitrate == "0";
            if line.items.len() == 1 && line.items.iter().any(nitrite) {
                list.push(plain(DangerKey::PureAgent, &line.line.text));
            }
            if line.items.len() == 1 && line.items.iter().any(nitrate) {
                list.push(plain(DangerKey::NitratePresent, &line.line.text));
            }
        }
        if cures.len() > 1 {
            list.push(plain(DangerKey::TwoAgents, ""));
        }
        if let Some(verdict) = verdict {
            let ppm = |key, figure: u32, rule: u32| Danger {
                key,
                text: String::new(),
                figure: Some(figure.to_string()),
                rule: Some(rule.to_string()),
            };
            match (&verdict.nitrite, verdict.outcome) {
                (Some(n), Outcome::Over) if n.high > verdict.limit => {
                    // The figure that is over: what is likely, or else the most that it may be.
                    let over = if n.typical > verdict.limit { n.typical } else { n.high };
                    list.push(ppm(DangerKey::CureOver, over, verdict.limit))
                }
                (Some(n), _) if n.high < verdict.least && n.high > 0 => {
                    list.push(ppm(DangerKey::CureUnder, n.typical, verdict.least))
                }
                _ => {}
            }
        }
        for one in self.may_hold() {
            list.push(plain(DangerKey::CureUnread, &one.name));
        }
        self.raw(kind, &mut list);
        list
    }

    /// The recipe to be kept: a step that ends at too little heat for its meat ends at what is needed.
    pub(super) fn heated(&self, text: &str, mut recipe: Recipe) -> Recipe {
        let least = least(kind(&text.to_lowercase()), self.method == Some(Method::Ground));
        let Some(least) = least.and_then(|f| Temperature::new(f.half_away(1)).ok()) else {
            return recipe;
        };
        for step in &mut recipe.steps {
            step.until = step.until.map(|t| if heats(step.act) { t.max(least) } else { t });
        }
        recipe
    }

    /// Steps that end without heat.
    fn raw(&self, kind: MeatKind, list: &mut Vec<Danger>) {
        let heats = |d: &Deed| {
            let done = d.until.is_some_and(|t| t.base() >= dec!(130));
            let hot = d.at.is_some_and(|(_, t)| t.base() >= HOT);
            d.act == Some(Do::Cook) || done || d.act == Some(Do::Smoke) && hot
        };
        let smoked = self.deeds.iter().any(|d| d.act == Some(Do::Smoke));
        let packed = self.deeds.iter().any(|d| d.act == Some(Do::Pack));
        if (smoked || packed) && !self.deeds.iter().any(heats) {
            let last = self.deeds.last().map(|d| d.text.clone()).unwrap_or_default();
            let danger = |key| Danger {
                key,
                text: last.clone(),
                figure: None,
                rule: None,
            };
            list.push(danger(DangerKey::NotCooked));
            if matches!(kind, MeatKind::Boar | MeatKind::Hare) {
                list.push(danger(DangerKey::Parasite));
            }
        }
    }
}

/// The kind of meat that a text names, the strictest of them.
fn kind(lower: &str) -> MeatKind {
    let kinds: [(MeatKind, &[&str]); 3] = [
        (MeatKind::Boar, &BOAR),
        (MeatKind::Bird, &BIRD),
        (MeatKind::Hare, &HARE),
    ];
    let named = kinds.iter().find(|(_, words)| words.iter().any(|w| lower.contains(w)));
    named.map_or(MeatKind::Red, |(kind, _)| *kind)
}

fn figure(value: Decimal) -> Option<String> {
    Some(crate::quantity::plain(value.half_away(1)))
}

/// Smoke that is called cool, where no degrees are said.
fn cool_smoke(deed: &Deed) -> Option<Danger> {
    let lower = deed.text.to_lowercase();
    let cool = COOL_SMOKE.iter().any(|w| lower.contains(w));
    (cool && deed.act == Some(Do::Smoke) && deed.at.is_none()).then(|| Danger {
        key: DangerKey::ColdSmoke,
        text: deed.text.clone(),
        figure: None,
        rule: figure(HOT),
    })
}

/// Kept between cold and hot for more than some hours; smoked without cooking.
fn warm(deed: &Deed) -> Option<Danger> {
    let (_, at) = deed.at?;
    let at = at.base();
    let long = deed.minutes.is_some_and(|m| m.high > FOUR);
    let made = |key| Danger {
        key,
        text: deed.text.clone(),
        figure: figure(at),
        rule: figure(if key == DangerKey::ColdSmoke { HOT } else { COLD }),
    };
    let ends_hot = deed.until.is_some_and(|t| t.base() >= dec!(145));
    match deed.act {
        Some(Do::Smoke) if at < COLD_SMOKE => Some(made(DangerKey::ColdSmoke)),
        Some(Do::Cook | Do::Smoke | Do::DryOut) if at < HOT && long && !ends_hot => {
            Some(made(DangerKey::TemperatureDanger))
        }
        Some(Do::Cook | Do::Smoke | Do::DryOut | Do::Chill) => None,
        _ if at > COLD && at < HOT && (long || deed.minutes.is_none()) => Some(made(DangerKey::TemperatureDanger)),
        _ => None,
    }
}

/// Kept without cold, or without air after a fire that cooked nothing.
fn kept(deed: &Deed, all: &[Deed]) -> Option<Danger> {
    let lower = deed.text.to_lowercase();
    let says = |words: &[&str]| words.iter().any(|w| lower.contains(w));
    let (shelf, airless) = (says(&SHELF), says(&AIRLESS));
    let cold = |d: &Deed| d.act == Some(Do::Smoke) && d.at.is_some_and(|(_, t)| t.base() < COLD_SMOKE);
    let keeps = matches!(deed.act, Some(Do::Pack | Do::Cure | Do::Rest | Do::Chill) | None);
    let bad = shelf && keeps || airless && deed.act == Some(Do::Pack) && all.iter().any(cold);
    bad.then(|| Danger {
        key: DangerKey::Botulism,
        text: deed.text.clone(),
        figure: deed.minutes.and_then(|m| m.high.over(dec!(60))).and_then(figure),
        rule: None,
    })
}

const fn heats(act: Do) -> bool {
    matches!(act, Do::Smoke | Do::Cook | Do::DryOut)
}

/// The consumer temperature of a meat, °F.
fn least(kind: MeatKind, minced: bool) -> Option<Decimal> {
    Decimal::from_f64_retain(safety::consumer(kind).at(minced))?
        .half_away(2)
        .into()
}

/// Done at less than the consumer temperature of its meat.
fn low(deed: &Deed, kind: MeatKind, minced: bool) -> Option<Danger> {
    let until = deed.until.filter(|_| deed.act.is_some_and(heats))?.base();
    let least = least(kind, minced)?;
    (until < least).then(|| Danger {
        key: DangerKey::CookLow,
        text: deed.text.clone(),
        figure: figure(until),
        rule: figure(least),
    })
}
