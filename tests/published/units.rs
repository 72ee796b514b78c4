//! Units against a general-purpose units library (uom) and exact rational arithmetic (num-rational).

use cure_reckoner::quantity::{Length, Mass, Span, System, Temperature, Volume, plain};
use num_bigint::BigInt;
use num_rational::BigRational;
use num_traits::{ToPrimitive, Zero};
use rust_decimal::Decimal;
use uom::si::f64::{Length as L, Mass as M, ThermodynamicTemperature as T, Time, Volume as V};
use uom::si::{length, mass, thermodynamic_temperature as temperature, time, volume};

#[track_caller]
fn same(ours: Decimal, theirs: f64) {
    let ours: f64 = ours.to_f64().expect("a float");
    // The library keeps seven figures of its factors; the exact pound is checked below.
    assert!(
        (ours - theirs).abs() <= theirs.abs() * 5e-7 + 1e-9,
        "{ours} and {theirs}"
    );
}

#[test]
fn factors_agree_with_uom() {
    for n in [1.0, 2.5, 7.0, 480.0] {
        let mass = |unit: &str| Mass::read(&format!("{n} {unit}"), None).expect("a weight").base();
        same(mass("lb"), M::new::<mass::pound>(n).get::<mass::gram>());
        same(mass("oz"), M::new::<mass::ounce>(n).get::<mass::gram>());
        same(mass("kg"), M::new::<mass::kilogram>(n).get::<mass::gram>());
        let volume = |unit: &str| Volume::read(&format!("{n} {unit}"), None).expect("a volume").base();
        same(volume("tsp"), V::new::<volume::teaspoon>(n).get::<volume::milliliter>());
        same(
            volume("tbsp"),
            V::new::<volume::tablespoon>(n).get::<volume::milliliter>(),
        );
        same(volume("cup"), V::new::<volume::cup>(n).get::<volume::milliliter>());
        let inches = Length::read(&format!("{n} in"), None)
            .map(Length::base)
            .unwrap_or_default();
        if n < 78.0 {
            same(inches, L::new::<length::inch>(n).get::<length::millimeter>());
        }
        let minutes = Span::read(&format!("{n} h"), None).expect("a time").base();
        same(minutes, Time::new::<time::hour>(n).get::<time::minute>());
    }
    for celsius in [-18.0, 0.0, 3.0, 62.8, 74.0, 107.0] {
        let ours = Temperature::read(&format!("{celsius} °C"), None)
            .expect("a temperature")
            .base();
        same(
            ours,
            T::new::<temperature::degree_celsius>(celsius).get::<temperature::degree_fahrenheit>(),
        );
    }
}

/// 0.45359237 kg to the pound, exactly: US Federal Register 24 FR 5348 (1959). Published.
#[test]
fn pounds_and_ounces_are_exact() {
    let pound = BigRational::new(BigInt::from(45_359_237), BigInt::from(100_000));
    for (text, sixteenths) in [("7 lb 3 oz", 115), ("1 oz", 1), ("25 lb", 400), ("2 lb 0.5 oz", 0)] {
        let ours = Mass::read(text, None).expect("a weight").base();
        let ours = BigRational::new(BigInt::from(ours.mantissa()), BigInt::from(10u8).pow(ours.scale()));
        if sixteenths > 0 {
            assert_eq!(
                ours,
                &pound * BigRational::new(BigInt::from(sixteenths), BigInt::from(16)),
                "{text}"
            );
        } else {
            // Half an ounce has ten decimals in grams; nine are kept.
            let exact = &pound * BigRational::new(BigInt::from(65), BigInt::from(32));
            let off = (ours - exact).to_f64().expect("a float").abs();
            assert!(off <= 5e-10 && !off.is_zero(), "{off}");
        }
    }
}

/// What people type, in every form that the page promises to read.
#[test]
fn what_people_type() {
    let mass = |text: &str| plain(Mass::read(text, Some("g")).expect(text).base());
    for (text, grams) in [
        ("7 lb 3 oz", "3260.195159375"),
        ("7lb3oz", "3260.195159375"),
        ("7 lb, 3 oz", "3260.195159375"),
        ("3.2 kg", "3200"),
        ("1480 g", "1480"),
        ("1 480 g", "1480"),
        ("1\u{202f}480 g", "1480"),
        ("1\u{a0}480", "1480"),
        ("1,5 kg", "1500"),
        ("0,480 kg", "480"),
        ("1,480.5 g", "1480.5"),
        ("1.480,5 g", "1480.5"),
        ("1,234,567 mg", "1234.567"),
        (".5 kg", "500"),
        ("2 ½ oz", "70.873807813"),
        ("5 lb. 3 oz.", "2353.010419375"),
        ("12", "12"),
        ("1480G", "1480"),
        ("112+98+140", "350"),
        ("112 + 98 + 140 g", "350"),
        ("1.2+0,3 kg", "1500"),
        ("3 oz + 112 g", "197.048569375"),
        ("1 lb 2 oz + 3 oz", "595.339985625"),
        ("1+1/2 lb", "680.388555"),
    ] {
        assert_eq!(mass(text), grams, "{text}");
    }
    let spoons = |text: &str| {
        (Volume::read(text, None).expect(text).base() / Volume::read("1 tsp", None).expect("tsp").base())
            .round_dp(6)
            .normalize()
    };
    for (text, teaspoons) in [
        ("2½ tsp", "2.5"),
        ("1 1/2 tbsp", "4.5"),
        ("1-1/2 tbsp", "4.5"),
        ("1⁄4 tsp", "0.25"),
        ("¾ tsp", "0.75"),
    ] {
        assert_eq!(spoons(text).to_string(), teaspoons, "{text}");
    }
    let length = |text: &str| plain(Length::read(text, None).expect(text).base());
    assert_eq!(
        [length("26 mm"), length("1 1/4 in"), length("1¼\""), length("2.6 cm")],
        ["26", "31.75", "31.75", "26"]
    );
    let degrees = |text: &str| plain(Temperature::read(text, None).expect(text).base());
    assert_eq!(
        [degrees("38 °F"), degrees("145F"), degrees("-2 °C"), degrees("74 C")],
        ["38", "145", "28.4", "165.2"]
    );
    let minutes = |text: &str| plain(Span::read(text, None).expect(text).base());
    assert_eq!(
        [
            minutes("36 h"),
            minutes("1.5 d"),
            minutes("1 d 12 h"),
            minutes("90 min")
        ],
        ["2160", "2160", "2160", "90"]
    );
}

/// What can be read two ways is asked about; what cannot be read is refused with what to type.
#[test]
fn what_is_refused() {
    use cure_reckoner::quantity::Code;
    let code = |text: &str| Mass::read(text, Some("g")).map_err(|p| p.code);
    assert_eq!(code("1,480"), Err(Code::AmbiguousNumber));
    assert_eq!(code("1,480 kg"), Err(Code::AmbiguousNumber));
    for text in [
        "1e3 g",
        "1__0 g",
        "12 34 g",
        "g",
        "3 oz 1 lb",
        "1 lb 500 g",
        "--5 g",
        "1..5 g",
        "½½ g",
        "1/0 g",
        "5 g 3",
        "٣ g",
        "1,48,0 g",
        "112+",
        "+112",
        "112++98",
        "112 g + 98",
        "112 + 98 g + 3",
        "1 + 2 lb 3 oz",
        "112-98",
        "112*2",
        "(112+98)",
    ] {
        assert!(
            matches!(code(text), Err(Code::NotRead | Code::WrongUnit)),
            "{text}: {:?}",
            code(text)
        );
    }
    assert_eq!(code("12 stone"), Err(Code::WrongUnit));
    assert_eq!(code("112+1,480"), Err(Code::AmbiguousNumber));
    assert_eq!(code("600 kg + 401 kg"), Err(Code::TooLarge));
    assert_eq!(code("112+-5"), Err(Code::TooSmall));
    assert!(Length::read("26+3 mm", None).is_err(), "one thickness is no sum");
    assert!(Span::read("12 h + 12 h", None).is_err(), "nor is a time");
    assert_eq!(code("-5 g"), Err(Code::TooSmall));
    assert_eq!(code("1001 kg"), Err(Code::TooLarge));
    assert_eq!(code("  "), Err(Code::Missing));
    assert_eq!(Mass::read("12", None).map_err(|p| p.code), Err(Code::NoUnit));
    let asked = Mass::read("1,480", Some("g")).expect_err("two readings");
    assert_eq!(asked.choices, ["1480 g", "1.48 g"]);
    for choice in asked.choices {
        assert!(Mass::read(&choice, None).is_ok(), "{choice} reads");
    }
}

/// Texts for reading are rounded as a cook expects.
#[test]
fn shown_for_reading() {
    let show = |text: &str, system| Mass::read(text, None).expect(text).show(system).text;
    assert_eq!(show("1480 g", System::Us), "3 lb 4.2 oz");
    assert_eq!(show("7 lb 3 oz", System::Metric), "3260 g");
    assert_eq!(show("12345.6 g", System::Metric), "12\u{202f}346 g");
    assert_eq!(show("3.552 g", System::Metric), "3.55 g");
    assert_eq!(show("15.99 oz", System::Us), "15.99 oz");
    assert_eq!(show("15.999 oz", System::Us), "1 lb");
}
