//! Print and read back agree; reading any text never panics.

use cure_reckoner::quantity::{Fraction, Kind, Length, Mass, Quantity, Span, System, Temperature, Volume};
use proptest::prelude::*;
use rust_decimal::Decimal;

/// Any value of a kind, from its own bounds and scale.
fn any_of<K: Kind>() -> impl Strategy<Value = Quantity<K>> {
    let grain = 10i128.pow(K::facts().scale);
    let bound = |v: Decimal| v.mantissa() * grain / 10i128.pow(v.scale());
    let (low, high) = (bound(K::facts().min), bound(K::facts().max));
    // Round figures are what people type; odd ones are what arithmetic leaves.
    let round = (low / (grain / 100).max(1)..=high / (grain / 100).max(1)).prop_map(move |v| v * (grain / 100).max(1));
    prop_oneof![round, low..=high].prop_map(move |v| {
        let value = Decimal::from_i128_with_scale(v.clamp(low, high), K::facts().scale);
        Quantity::<K>::new(value).expect("within its bounds")
    })
}

fn reads_back<K: Kind>(value: Quantity<K>) -> Result<(), TestCaseError> {
    for system in [System::Metric, System::Us] {
        let text = value.print(system);
        let again = Quantity::<K>::read(&text, None).map_err(|p| TestCaseError::fail(format!("{text}: {p}")))?;
        prop_assert_eq!(again, value, "{}", text);
        prop_assert_eq!(again.print(system), text);
    }
    Ok(())
}

/// What is shown for reading is shown the same when it is read.
fn shows_the_same<K: Kind>(value: Quantity<K>) -> Result<(), TestCaseError> {
    for system in [System::Metric, System::Us] {
        let text = value.show(system).text;
        let again = Quantity::<K>::read(&text, None).map_err(|p| TestCaseError::fail(format!("{text}: {p}")))?;
        prop_assert_eq!(again.show(system).text, text);
    }
    Ok(())
}

macro_rules! of_each_kind {
    ($($test:ident, $shown:ident: $kind:ty;)*) => {
        proptest! {
            $(
                #[test]
                fn $test(value in any_of::<<$kind as Of>::Kind>()) { reads_back(value)?; }
                #[test]
                fn $shown(value in any_of::<<$kind as Of>::Kind>()) { shows_the_same(value)?; }
            )*
        }
    };
}

trait Of {
    type Kind: Kind;
}
impl<K: Kind> Of for Quantity<K> {
    type Kind = K;
}

of_each_kind! {
    masses_read_back, masses_show_the_same: Mass;
    lengths_read_back, lengths_show_the_same: Length;
    temperatures_read_back, temperatures_show_the_same: Temperature;
    spans_read_back, spans_show_the_same: Span;
    fractions_read_back, fractions_show_the_same: Fraction;
    volumes_read_back, volumes_show_the_same: Volume;
}

proptest! {
    #![proptest_config(super::cases(2000))]

    #[test]
    fn any_text_is_read_or_refused(text in "\\PC{0,40}") {
        let read = Mass::read(&text, Some("g"));
        if let Err(problem) = read {
            prop_assert!(problem.wrong.is_some());
        }
    }

    #[test]
    fn any_number_like_text_is_read_or_refused(text in "[-0-9 .,/½¼⁄ \u{202f}]{0,12} ?(g|kg|lb|oz|lb [0-9]{1,2} oz|)") {
        if let Ok(value) = Mass::read(&text, Some("g")) {
            reads_back(value)?;
        }
    }

    /// Weights typed with a plus between them are the sum of each, with a unit each or one for all; and the sum reads back.
    #[test]
    fn a_sum_is_the_sum_of_its_parts(
        parts in prop::collection::vec((1u32..=9999, 0u32..=9), 2..=6),
        units in prop::collection::vec(prop::sample::select(vec!["g", "kg", "oz", "lb"]), 6),
        gap in prop::sample::select(vec!["", " "]),
        at_end in any::<bool>(),
    ) {
        let numbers: Vec<String> = parts.iter().map(|(whole, tenth)| format!("{whole}.{tenth}")).collect();
        let plus = format!("{gap}+{gap}");
        let unit = |i: usize| if at_end { units[0] } else { units[i] };
        let each: Vec<String> = numbers.iter().enumerate().map(|(i, n)| format!("{n}{gap}{}", unit(i))).collect();
        let typed = if at_end { format!("{}{gap}{}", numbers.join(&plus), units[0]) } else { each.join(&plus) };
        let sum: Option<Decimal> = each.iter().map(|text| Mass::read(text, None).ok().map(Mass::base)).sum();
        match (Mass::read(&typed, Some("oz")), sum) {
            (Ok(value), Some(sum)) => {
                prop_assert_eq!(value.base(), sum, "{}", typed);
                reads_back(value)?;
            }
            // Nothing is taken by way of a sum that is refused by itself: not above a tonne, and not too long a text.
            (Err(_), sum) => prop_assert!(
                typed.len() > cure_reckoner::quantity::MOST_TEXT || sum.is_none_or(|s| s > cure_reckoner::quantity::MassKind::facts().max),
                "{}", typed
            ),
            (Ok(_), None) => prop_assert!(false, "{} has a part that is refused alone", typed),
        }
    }

    /// Without any unit it takes that of the field, and without that it is asked for.
    #[test]
    fn a_bare_sum_takes_the_unit_of_the_field(parts in prop::collection::vec(1u32..=9999, 2..=6)) {
        let typed = parts.iter().map(u32::to_string).collect::<Vec<_>>().join("+");
        let sum: u32 = parts.iter().sum();
        prop_assert_eq!(Mass::read(&typed, Some("g")).map(Mass::base), Ok(Decimal::from(sum)));
        prop_assert_eq!(
            Mass::read(&typed, None).map_err(|p| p.code),
            Err(cure_reckoner::quantity::Code::NoUnit)
        );
    }

    /// A thousand and one and a half are never taken for each other.
    #[test]
    fn one_comma_before_three_digits_is_asked_about(head in 1u32..1000, tail in 0u32..1000) {
        let problem = Mass::read(&format!("{head},{tail:03} g"), None).expect_err("two readings");
        prop_assert_eq!(problem.choices.len(), 2);
    }
}
