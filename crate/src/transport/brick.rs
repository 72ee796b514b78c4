//! The body of one dimension that warms as a brick does.

use std::f64::consts::PI;

/// The first term of the series of a body with exponent `m` under exchange: its root `q` and its coefficient at the
/// centre. One power series for slab, cylinder, sphere and between (Carslaw and Jaeger 1959, from memory).
fn first(m: f64, biot: f64) -> (f64, f64) {
    // The value and its slope at the surface.
    let at = |q: f64| {
        let (mut term, mut value, mut slope) = (1.0, 1.0, 0.0);
        let mut k = 1.0;
        while k < 20.0 {
            term *= -q * q / 4.0 / (k * (k - 1.0 + f64::midpoint(m, 1.0)));
            value += term;
            slope += 2.0 * k * term;
            k += 1.0;
        }
        (value, slope)
    };
    let leaks = |q: f64| {
        let (value, slope) = at(q);
        slope + biot * value <= 0.0
    };
    let q = halved(0.0, 5.0, leaks);
    let (value, slope) = at(q);
    let norm = slope * slope + q * q * value * value + (m - 1.0) * value * slope;
    (q, -2.0 * slope / norm)
}

/// Where a condition begins to hold, by halves.
fn halved(mut low: f64, mut high: f64, holds: impl Fn(f64) -> bool) -> f64 {
    for _ in 0..24 {
        let middle = f64::midpoint(low, high);
        *(if holds(middle) { &mut high } else { &mut low }) = middle;
    }
    f64::midpoint(low, high)
}

/// A slab of so many times the shortest half-edge: the rates and the coefficients of its series at the centre, as many
/// terms as the early hours of a long edge ask for.
fn slab(edge: f64, biot: f64) -> Vec<(f64, f64)> {
    let term = |n: u32| {
        let from = f64::from(n) * PI;
        let q = from + halved(0.0, PI / 2.0, |part| (from + part) * part.tan() >= biot * edge);
        let (sin, twice) = (q.sin(), (2.0 * q).sin());
        (q * q / (edge * edge), 4.0 * sin / (2.0 * q + twice))
    };
    (0..12).map(term).collect()
}

/// The exponent, up to [`super::MOST`], and the half-thickness of the body whose centre warms as that of a brick of these
/// half-edges, under an exchange of `biot = h a / k`, `a` the shortest of them; the half-thickness in the unit of the
/// edges.
///
/// Fitted to the product of three slabs where 55 % and where 10 % of the difference is left. In time it is then within
/// 3 % from 60 to 5 % left, for Bi 0.1 to 50 and edges from a cube to 1 : 6 : 6 (`tests/published/smoke_series.rs`). A
/// brick that hardly resists within asks for an exponent above that of a ball: what counts then is surface over volume.
///
/// ```
/// use cure_reckoner::transport::brick;
/// // A sheet 40 mm thick and twenty times as wide warms as a slab: exponent 0, half of it 20 mm.
/// let (exponent, half) = brick([0.02, 0.4, 0.4], 5.0);
/// assert!(exponent < 0.001 && (half - 0.02).abs() < 1e-5);
/// // A cube warms much as a ball, exponent 2, and one that is wider than it: corners hold more.
/// let (exponent, half) = brick([0.02, 0.02, 0.02], 5.0);
/// assert!((exponent - 2.0).abs() < 0.1 && half > 0.02);
/// ```
#[must_use]
pub fn brick(half_edges: [f64; 3], biot: f64) -> (f64, f64) {
    let shortest = half_edges.into_iter().fold(f64::INFINITY, f64::min);
    let slabs = half_edges.map(|half| slab(half / shortest, biot));
    // Where a long edge has hardly begun, its terms add up to a little more than the whole.
    let left = |fo: f64| -> f64 {
        let one =
            |terms: &Vec<(f64, f64)>| -> f64 { terms.iter().map(|(rate, share)| share * (-rate * fo).exp()).sum() };
        slabs.iter().map(|terms| one(terms).min(1.0)).product()
    };
    let slowest = 4.0 / slabs.iter().filter_map(|terms| terms.first()).map(|t| t.0).sum::<f64>();
    let when = |share: f64| halved(0.0, slowest, |fo| left(fo) <= share);
    let (early, late) = (0.55f64, 0.1f64);
    let (begun, done) = (when(early), when(late));
    // The half-thickness at which a body of this exponent is there when the brick is late on, by its first term. The root
    // hangs on the half-thickness: it settles in a few rounds.
    let fitted = |m: f64| {
        let (mut half, mut begun_at) = (1.0, 1.0);
        for _ in 0..10 {
            let (q, share) = first(m, biot * half);
            half = q * (done / (share / late).ln()).sqrt();
            begun_at = share * (-(share / late).ln() * begun / done).exp();
        }
        (half, begun_at)
    };
    let exponent = halved(0.0, super::MOST, |m| fitted(m).1 >= early);
    (exponent, fitted(exponent).0 * shortest)
}
