//! The consumer temperature, which comes first, and when a table may stand in for it.

/// One row of `tables/targets.csv`, °F and minutes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Consumer {
    /// `bird`, `red`, `boar`, `hare`, `own`.
    pub kind: &'static str,
    /// For whole pieces.
    pub whole: f64,
    /// Minced or pumped.
    pub minced: f64,
    /// Minutes to stay before it is cut.
    pub rest: f64,
    /// `bird` or `meat`: whose rows may give credit below it; empty where none may.
    pub table: &'static str,
    /// The rule in words.
    pub reason: &'static str,
    /// Where it is published.
    pub source: &'static str,
    /// `published`, `quoted`.
    pub status: &'static str,
}

impl Consumer {
    /// Its temperature for whole pieces or for mince.
    pub const fn at(&self, minced: bool) -> f64 {
        if minced { self.minced } else { self.whole }
    }
}

/// The rule for a kind of meat; for one that is not known, the warmest.
pub fn consumer(kind: &str) -> &'static Consumer {
    let rows = &crate::tables::TARGETS;
    let [.., last] = rows;
    rows.iter().find(|c| c.kind == kind).unwrap_or(last)
}

/// What is asked for below the consumer temperature.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wish {
    /// Someone under 5, old, pregnant or ill will eat it.
    pub at_risk: bool,
    /// It is minced, or pumped: what was outside is inside.
    pub minced: bool,
}

/// Whether a table may stand in for the consumer temperature.
///
/// # Errors
/// Why not, as a sentence: never for bear, boar and their kin, for guests at risk, or for mince.
pub fn may_go_lower(consumer: &Consumer, wish: Wish) -> Result<super::Table, &'static str> {
    match consumer.table {
        _ if wish.at_risk => Err("Guests at risk: the consumer temperature, nothing below it."),
        _ if wish.minced => Err("Minced or pumped: the consumer temperature, nothing below it."),
        "bird" => Ok(super::Table::Bird),
        "meat" => Ok(super::Table::Meat70),
        _ if consumer.kind == "boar" => Err("Bear, wild boar and their kin: 71 °C (160 °F) everywhere, no table."),
        _ => Err("No table is known for this meat: the consumer temperature, nothing below it."),
    }
}
