//! How warm: every temperature in a step, with its scale or, where none is said, by what it can be.

use super::amount::Amount;
use super::names::Names;
use super::number::{Number, figure, range};
use super::scan::{What, scan};
use super::words::{Sort, front, of, take};
use crate::order::InOrder;
use crate::quantity::exact::Exact;
use crate::quantity::{Range, System, Temperature, plain};
use crate::tables::{BEFORE_DEGREES, GAS, MIDDLE};
use rust_decimal::{Decimal, dec};
use winnow::Parser;

/// A bare number behind `at` between these is a temperature of a smoker or an oven in degrees Fahrenheit, and in Celsius.
const AROUND: [(Decimal, Decimal); 2] = [(dec!(100), dec!(600)), (dec!(30), dec!(300))];

/// The same of smoke: no smoker is hotter (judgement). Of what lies in both the country decides.
const IN_SMOKE: [(Decimal, Decimal); 2] = [(dec!(100), dec!(400)), (dec!(30), dec!(160))];

/// The same of the middle of the meat at which it is done. Nothing lies in both.
const INSIDE: [(Decimal, Decimal); 2] = [(dec!(113), dec!(212)), (dec!(45), dec!(100))];

pub fn degrees_in(what: &What) -> bool {
    matches!(what, What::Amount(a) | What::Again(a) if is(a, &["°F", "°C"]))
}

pub fn is(amount: &Amount, notes: &[&str]) -> bool {
    amount.parts.first().is_some_and(|(_, unit)| notes.contains(&unit.note))
}

fn degrees(value: Decimal, unit: &str) -> Option<Temperature> {
    Temperature::read(&format!("{} {unit}", plain(value)), None).ok()
}

/// A temperature with its place in the text.
pub struct Warm {
    pub start: usize,
    pub end: usize,
    pub low: Temperature,
    pub high: Temperature,
}

/// Every temperature, with a degree sign or, behind `at` or `until`, without.
pub fn temperatures(text: &str, names: &Names, units: System) -> Vec<Warm> {
    let mut list: Vec<Warm> = Vec::new();
    for found in scan(text, names) {
        if let What::Amount(a) | What::Again(a) = &found.what
            && is(a, &["°F", "°C"])
            && let Some((number, unit)) = a.parts.first()
            && let (Some(low), Some(high)) = (
                degrees(number.value.low, unit.note),
                degrees(number.value.high, unit.note),
            )
        {
            list.push(Warm {
                start: found.start,
                end: found.end,
                low,
                high,
            });
        }
    }
    let lower = text.to_ascii_lowercase();
    list.extend(gas_mark(&lower));
    let smoke = lower.contains("smok");
    // "Cook in a 275 degree oven": the scale is not said.
    // Nor in "160 internal", and "200*" is how a keyboard without the sign writes it.
    let signs = [" degree", "*", " internal", " inside"].into_iter();
    let degree = signs.flat_map(|sign| lower.match_indices(sign)).filter_map(|(at, _)| {
        let digits = lower.get(..at)?.trim_end_matches(|c: char| c.is_ascii_digit()).len();
        (digits < at).then_some(("at ", digits))
    });
    // "…, 225 until 155": a stage that begins with its figure.
    let stage = [" until", " till", " til", " for"].iter().any(|w| {
        let bare = lower.trim_start_matches(|c: char| c.is_ascii_digit());
        bare.len() < lower.len() && bare.starts_with(w)
    });
    let degree = degree.chain(stage.then_some(("at ", 0)));
    let said = BEFORE_DEGREES.into_iter().flat_map(|word| {
        let found = lower.match_indices(word);
        let between = word == "between ";
        found.map(move |(at, _)| (word, at.saturating_add(if between { 0 } else { word.len() })))
    });
    for (word, start) in degree.chain(said) {
        let mut input = text.get(start..).unwrap_or_default();
        let whole = input.len();
        let Ok(number) = spoken(&mut input).or_else(|()| range(&mut input)) else {
            continue;
        };
        let end = start.saturating_add(whole.saturating_sub(input.len()));
        let bare = input.trim_start().to_ascii_lowercase();
        let bare = bare.trim_start_matches('*');
        let bare = ["degrees", "degree"]
            .iter()
            .find_map(|d| bare.strip_prefix(d))
            .unwrap_or(bare);
        let bare = bare.trim_start();
        let measured = [Sort::Mass, Sort::Volume, Sort::Count, Sort::Vague, Sort::Percent];
        let unit = bare.starts_with(['°', '%', '/'])
            || measured.iter().any(|sort| front(*sort, bare).is_some())
            || of(Sort::Other).flat_map(|w| w.words).filter(|w| **w != "in").any(|w| {
                bare.strip_prefix(&w.to_ascii_lowercase())
                    .is_some_and(|r| !r.starts_with(char::is_alphanumeric))
            });
        let known = list.iter().any(|t| t.start < end && start < t.end);
        let inside = MIDDLE.iter().any(|w| bare.starts_with(w));
        let ends = inside || word != "at " && (bare.is_empty() || bare.starts_with([',', '.', ';', ')']));
        let bounds = match (ends, smoke) {
            (true, _) if inside || units != System::Us => INSIDE,
            (_, true) if word == "at " => IN_SMOKE,
            _ if word == "at " || units == System::Us => AROUND,
            _ => continue,
        };
        let [fahrenheit, celsius] = bounds.map(|(least, most)| least <= number.value.low && number.value.high <= most);
        let scale = match (fahrenheit, celsius) {
            (true, true) => Some(if units == System::Us { "°F" } else { "°C" }),
            (true, false) => Some("°F"),
            (false, true) if inside || units != System::Us => Some("°C"),
            _ => None,
        };
        if !unit
            && !known
            && let Some(scale) = scale
            && let (Some(low), Some(high)) = (degrees(number.value.low, scale), degrees(number.value.high, scale))
        {
            list.push(Warm { start, end, low, high });
        }
    }
    list.order_by_key(|t| t.start);
    list
}

/// `gas mark 4`: 350 °F, and 25 °F more or less for each mark (common practice).
fn gas_mark(lower: &str) -> Option<Warm> {
    let (start, end) = GAS.iter().find_map(|w| {
        let at = lower.find(w)?;
        Some((at, at.saturating_add(w.len())))
    })?;
    let rest = lower.get(end..)?;
    let digits = rest
        .len()
        .saturating_sub(rest.trim_start_matches(|c: char| c.is_ascii_digit()).len());
    let mark: Decimal = rest
        .get(..digits)?
        .parse()
        .ok()
        .filter(|m| *m >= Decimal::ONE && *m <= dec!(10))?;
    let heat = degrees(mark.times(dec!(25))?.plus(dec!(250))?, "°F")?;
    Some(Warm {
        start,
        end: end.saturating_add(digits),
        low: heat,
        high: heat,
    })
}

/// `two twenty five`, `one fifty`: hundreds without their word.
fn spoken(input: &mut &str) -> Result<Number, ()> {
    let mut ahead = *input;
    let alphabetic = ahead.starts_with(char::is_alphabetic);
    let hundreds = take(Sort::Number)
        .parse_next(&mut ahead)
        .ok()
        .filter(|_| alphabetic)
        .and_then(figure);
    let hundreds = hundreds.filter(|n| *n < dec!(6)).ok_or(())?;
    let mut ahead = ahead
        .strip_prefix(' ')
        .filter(|a| a.starts_with(char::is_alphabetic))
        .ok_or(())?;
    let rest = range(&mut ahead)
        .ok()
        .filter(|n| n.value.is_point() && n.value.low >= Decimal::TEN && n.value.low < Decimal::ONE_HUNDRED);
    let tens = rest.ok_or(())?.value.low;
    let value = hundreds
        .times(Decimal::ONE_HUNDRED)
        .and_then(|h| h.plus(tens))
        .ok_or(())?;
    *input = ahead;
    Ok(Number {
        value: Range::point(value),
        other: None,
    })
}
