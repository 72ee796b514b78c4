//! A body in a stirred bath of limited volume, from how the same body fills where its surface is held.
//!
//! The bath falls by what the body takes up, and the body follows the bath: in Laplace's terms the bath stands at
//! `(1 + ratio) / (s F(s))`, where `F(s) = ratio + rest + Σ mean λ / (s + λ)` over the terms of the held body. The noughts of
//! `F` are the rates of the two together. Exact for the terms given; for a slab these rates are those of Crank 1975
//! (`tan q = -ratio q`).

use super::decay::{Decay, PLACES, Term};

/// One nought of `F`: a term's rate, and how much faster than it the two together are.
struct Root {
    rate: f64,
    over: f64,
}

impl Root {
    /// A rate less this one, without loss where they are close.
    fn under(&self, rate: f64) -> f64 {
        (rate - self.rate) - self.over
    }
}

/// The course of a body from 0 to 1 in a bath that comes down to 1, by the terms of the held body, slowest first.
pub(super) fn bathed(held: &[Term], ratio: f64) -> Decay {
    let all: f64 = held.iter().map(|term| term.mean).sum();
    // What is faster than every term follows the bath at once.
    let rest = ratio + (1.0 - all).max(0.0);
    let mut follows = [1.0; PLACES];
    for term in held {
        for (value, share) in follows.iter_mut().zip(term.line) {
            *value -= share;
        }
    }
    let next = held.iter().skip(1).map(|term| Some(term.rate)).chain([None]);
    let term = |(term, next): (&Term, Option<f64>)| -> Term {
        let root = root(held, rest, term, next);
        let (mut steep, mut line) = (0.0, follows);
        for other in held {
            let near = other.rate / root.under(other.rate);
            steep += other.mean * near * near / other.rate;
            for (value, share) in line.iter_mut().zip(other.line) {
                *value += share * near;
            }
        }
        let rate = root.rate + root.over;
        let bath = (1.0 + ratio) / (rate * steep);
        Term {
            rate,
            line: line.map(|value| -bath * value),
            mean: bath * ratio,
        }
    };
    Decay::of(held.iter().zip(next).map(term).collect())
}

/// The nought of `F` between a term's rate and the next one's, by chords on `F` without its two poles there.
fn root(held: &[Term], rest: f64, term: &Term, next: Option<f64>) -> Root {
    let pull = |term: &Term| term.mean * term.rate;
    let far: f64 = held.iter().map(pull).sum::<f64>() / rest;
    let gap = next.map_or(far, |next| next - term.rate);
    let value = |over: f64| {
        let root = Root { rate: term.rate, over };
        let sum: f64 = held.iter().map(|other| pull(other) / root.under(other.rate)).sum();
        (rest + sum) * -over * if next.is_some() { gap - over } else { 1.0 }
    };
    let (mut low, mut high) = (0.0, gap);
    let mut at_low = pull(term) * if next.is_some() { gap } else { 1.0 };
    let mut at_high = match next {
        Some(next) => {
            let there: f64 = held.iter().filter(|t| t.rate >= next).take(1).map(pull).sum();
            -there * gap
        }
        None => value(gap).min(0.0),
    };
    let mut kept = 0;
    for _ in 0..24 {
        let over = (low * at_high - high * at_low) / (at_high - at_low);
        if !(over > low && over < high) || high - low <= 1e-13 * high {
            break;
        }
        let now = value(over);
        // An end that stays twice is worth half: else the chord creeps.
        if now > 0.0 {
            (low, at_low) = (over, now);
            at_high *= if kept > 0 { 0.5 } else { 1.0 };
            kept = 1;
        } else {
            (high, at_high) = (over, now);
            at_low *= if kept < 0 { 0.5 } else { 1.0 };
            kept = -1;
        }
        if now.abs() <= 1e-14 * pull(term) * gap {
            return Root { rate: term.rate, over };
        }
    }
    Root {
        rate: term.rate,
        over: (low * at_high - high * at_low) / (at_high - at_low),
    }
}
