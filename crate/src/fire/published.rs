//! Published figures that stand beside the log for whoever needs them, and by which nothing is judged.

use super::facts::{Degrees, PublishedAbout, PublishedRow};
use super::show::{figure, hours, most_figure, needed_figure, number, stage};
use crate::pantry::MeatKind;
use crate::quantity::System;
use crate::record::temperature;
use crate::safety::{self, JERKY, Scope, VACUUM_COLD, VACUUM_GROWS};
use serde::Serialize;

/// One published table.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Published {
    /// What it is about, how it is taken and where it is published.
    pub about: PublishedAbout,
    /// True where it is for the time after the fire.
    pub cold: bool,
    /// Its figures.
    pub rows: Vec<PublishedRow>,
}

/// The tables for a batch of these kinds.
pub(super) fn published(kinds: &[MeatKind], units: System) -> Vec<Published> {
    let show = |f: f64| figure(f, units);
    let least = |f: f64| needed_figure(temperature(safety::least(f)), units);
    let option = |of: &safety::Stage| PublishedRow::Chill {
        stage: Box::new(stage(of, units)),
    };
    let table = |about, cold, rows| Published { about, cold, rows };
    let mut all = vec![
        table(
            PublishedAbout::Jerky,
            false,
            vec![
                PublishedRow::HeatMeat {
                    to: least(JERKY.heat.0),
                },
                PublishedRow::HeatBirds {
                    to: least(JERKY.heat.1),
                },
                PublishedRow::Dry {
                    from: show(JERKY.dry.0),
                    to: show(JERKY.dry.1),
                },
                PublishedRow::Activity {
                    air: number(JERKY.activity.0),
                    vacuum: number(JERKY.activity.1),
                },
            ],
        ),
        table(
            PublishedAbout::Vacuum {
                grows: Degrees::of(VACUUM_GROWS, units),
            },
            true,
            vec![
                PublishedRow::KeepCold {
                    at: most_figure(VACUUM_COLD, units),
                },
                PublishedRow::KeepFrozen,
            ],
        ),
        table(
            PublishedAbout::Plants,
            true,
            safety::of(Scope::Plants).map(option).collect(),
        ),
        table(
            PublishedAbout::History,
            true,
            safety::of(Scope::History).map(option).collect(),
        ),
    ];
    if kinds.iter().any(|kind| matches!(kind, MeatKind::Boar | MeatKind::Own)) {
        let heat = crate::tables::TRICHINAE.iter().map(|(f, seconds)| PublishedRow::Heat {
            at: show(*f),
            held: (*seconds > 0.0).then(|| hours(seconds / 3600.0)),
        });
        let frost = crate::tables::TRICHINAE_COLD
            .iter()
            .map(|(piece, f, least)| PublishedRow::Frost {
                at: show(*f),
                piece: *piece,
                held: hours(*least),
            });
        let cooked = Degrees::least(safety::consumer(MeatKind::Boar).at(false), units);
        all.push(table(
            PublishedAbout::TrichinaeHeat { cooked: cooked.clone() },
            false,
            heat.collect(),
        ));
        all.push(table(PublishedAbout::TrichinaeFrost { cooked }, false, frost.collect()));
    }
    all
}
