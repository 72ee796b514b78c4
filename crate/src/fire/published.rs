//! Published figures that stand beside the log for whoever needs them, and by which nothing is judged.

use super::show::{hours, most_figure, needed_figure};
use crate::quantity::System;
use crate::record::temperature;
use crate::safety::{self, JERKY, Scope, VACUUM_COLD};
use serde::Serialize;

/// One published table.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Published {
    /// What it is about.
    pub title: &'static str,
    /// True where it is for the time after the fire.
    pub cold: bool,
    /// How to take it.
    pub says: &'static str,
    /// What, and the figure.
    pub rows: Vec<[String; 2]>,
    /// Where it is published, and how far.
    pub source: &'static str,
}

/// The tables for a batch of these kinds.
pub(super) fn published(kinds: &[&str], units: System) -> Vec<Published> {
    let show = |f: f64| temperature(f).show(units).text;
    let least = |f: f64| needed_figure(temperature(safety::least(f)), units).text;
    let row = |what: &str, figure: String| [what.to_owned(), figure];
    let jerky = Published {
        title: "Jerky: heat first, then dry",
        cold: false,
        says: "Strips that are dried before they are hot keep alive what is on them. A moisture to protein ratio of 0.75 is \
               a name on a label, not a test of safety.",
        rows: vec![
            row("Heat meat to", least(JERKY.heat.0)),
            row("Heat birds to", least(JERKY.heat.1)),
            row(
                "Then dry between",
                format!("{} and {}", show(JERKY.dry.0), show(JERKY.dry.1)),
            ),
            row("Water activity at most", "0.85; vacuum-packed 0.91".to_owned()),
        ],
        source: "USDA FSIS, jerky and food safety (published); the figure for vacuum packs from memory. Water activity is \
                 measured, not worked out.",
    };
    let vacuum = Published {
        title: "Vacuum packs",
        cold: true,
        says: "Some clostridia grow without air from 3.3 °C (37.9 °F) on, with no smell. Hot-smoked and cured birds do not \
               keep on a shelf.",
        rows: vec![
            row("Keep at or below", most_figure(VACUUM_COLD, units).text),
            row("Or", "frozen; open the pack before it thaws".to_owned()),
        ],
        source: "Non-proteolytic Clostridium botulinum (published).",
    };
    let option = |stage: &safety::Stage| {
        let most = stage.hours.map_or_else(String::new, |h| format!(" in {}", hours(h)));
        let also = if stage.condition.is_empty() { "" } else { "; " };
        let least = |what: &str, least: Option<f64>| {
            least.map_or_else(String::new, |n| format!("; {} ppm of {what} or more", n as u32))
        };
        [
            stage.name.to_owned(),
            format!(
                "{} to {}{most}{also}{}{}{}. {} ({})",
                show(stage.start),
                most_figure(stage.end, units).text,
                stage.condition,
                least("nitrite", stage.nitrite),
                least("erythorbate or ascorbate", stage.erythorbate),
                stage.source,
                stage.status
            ),
        ]
    };
    let plants = Published {
        title: "Chilling: options for plants",
        cold: true,
        says: "Nothing here is judged by these: they need a measurement or a watch that a home does not have.",
        rows: safety::of(Scope::Plants).map(option).collect(),
        source: "FSIS Stabilization Guideline 2021 and Directive 7110.3; each row says how far it is published.",
    };
    let history = Published {
        title: "Chilling cured meat: withdrawn",
        cold: true,
        says: "History: FSIS stopped accepting it on 14 December 2022. Older books and pages still have it. Nothing here is \
               judged by it.",
        rows: safety::of(Scope::History).map(option).collect(),
        source: "86 FR 71007 (14 December 2021) and FSIS Notice 66-22 (published).",
    };
    let mut all = vec![jerky, vacuum, plants, history];
    if kinds.iter().any(|kind| matches!(*kind, "boar" | "own")) {
        let heat = crate::tables::TRICHINAE.iter().map(|(f, seconds)| {
            let held = if *seconds > 0.0 {
                hours(seconds / 3600.0)
            } else {
                "at once".to_owned()
            };
            [show(*f), held]
        });
        let cold = crate::tables::TRICHINAE_COLD.iter().map(|(group, f, least)| {
            let piece = match *group {
                "to-6-in" => "up to 6 in thick",
                "6-to-27-in" => "6 to 27 in thick",
                _ => "read in its middle",
            };
            [format!("{}, {piece}", show(*f)), hours(*least)]
        });
        let never = "For pork from a farm only. Never enough for wild boar, bear, cougar or walrus, however long: their \
                     parasites live through frost, cure and smoke. Those are cooked to 73.9 °C (165 °F) everywhere.";
        let source = "Former 9 CFR 318.10, removed in 2018, guideline since (published); for wild meat CDC, MMWR 73(20), 2024 (published).";
        let table = |title, rows| Published {
            title,
            cold: false,
            says: never,
            rows,
            source,
        };
        all.push(table("Trichinae by heat", heat.collect()));
        all.push(table("Trichinae by frost", cold.collect()));
    }
    all
}
