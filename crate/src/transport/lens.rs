//! The terms of a lens, between the rows of `tables/lens.csv`.

use super::decay::{PLACES, Term};

/// Terms of a row.
const TERMS: usize = 11;
/// The fastest rate of every row.
const FASTEST: f64 = 600.0;
/// What the shares of a row count in.
const UNIT: f64 = 0.0005;

/// One lens under one boundary.
pub struct LensRow {
    /// Radius of the rim over half the thickness.
    pub aspect: f64,
    /// The slowest rate.
    pub slowest: f64,
    /// For each place from the centre to the surface the shares of the terms, slowest first. Held, the surface lacks
    /// nothing, and the last place is the mean's.
    pub places: [[i16; TERMS]; PLACES],
}

/// The terms at an aspect, by the cubic through the four rows about its logarithm: rates by theirs, shares as they are.
/// Between the rows within 1 % in time of the elements that made them, 3 % beyond an aspect of 8.
fn between(table: &[LensRow], aspect: f64, held: bool) -> Vec<Term> {
    let ends = (
        table.first().map_or(1.0, |row| row.aspect),
        table.last().map_or(1.0, |row| row.aspect),
    );
    let at = aspect.clamp(ends.0, ends.1).ln();
    let past = table.iter().filter(|row| row.aspect.ln() <= at).count();
    let first = past.saturating_sub(2).min(table.len().saturating_sub(4));
    let near = || table.iter().skip(first).take(4);
    let mut slowest = 0.0;
    let mut lines = [[0.0; PLACES]; TERMS];
    for row in near() {
        let own = row.aspect.ln();
        let others = near()
            .map(|other| other.aspect.ln())
            .filter(|other| (other - own).abs() > 1e-9);
        let weight: f64 = others.map(|other| (at - other) / (own - other)).product();
        slowest += weight * row.slowest.ln();
        for (n, place) in row.places.iter().enumerate() {
            for (line, share) in lines.iter_mut().zip(place) {
                if let Some(value) = line.get_mut(n) {
                    *value += weight * f64::from(*share) * UNIT;
                }
            }
        }
    }
    let ratio = (FASTEST.ln() - slowest) / 10.0;
    let mut rate = slowest.exp();
    let term = |mut line: [f64; PLACES]| {
        let mut mean = 0.0;
        if let Some(last) = line.last_mut().filter(|_| held) {
            mean = std::mem::take(last).max(1e-6);
        }
        let now = rate;
        rate *= ratio.exp();
        Term { rate: now, line, mean }
    };
    lines.into_iter().map(term).collect()
}

pub(super) fn dosed(aspect: f64) -> Vec<Term> {
    between(&crate::tables::LENS_DOSED, aspect, false)
}

pub(super) fn held(aspect: f64) -> Vec<Term> {
    between(&crate::tables::LENS_HELD, aspect, true)
}
