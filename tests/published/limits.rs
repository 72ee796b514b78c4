//! Limits and leasts: each boundary, from just inside to just outside.

use cure_reckoner::dose::{Ingoing, Outcome, find, profile};
use cure_reckoner::quantity::Range;
use cure_reckoner::recipe::Eaten;
use cure_reckoner_tests::{ok, problems, settings};
use rust_decimal::{Decimal, dec};
use serde_json::json;

fn outcome(low: Decimal, high: Decimal, nitrate: Decimal, eaten: Eaten) -> (Outcome, bool, &'static str) {
    let ingoing = Ingoing {
        nitrite: Range::new(low, low, high),
        nitrate: Range::point(nitrate),
    };
    let found = find(ingoing, profile("us-home").expect("the default profile"), eaten);
    (found.outcome, found.sure, found.word)
}

/// 21 CFR 172.175(a)(3): 200 ppm of sodium nitrite for home curing. Published.
#[test]
fn home_curing_limit_of_200() {
    let at = |low, high| outcome(low, high, dec!(0), Eaten::Cooked);
    assert_eq!(at(dec!(150), dec!(200)), (Outcome::InRange, true, "In range"));
    assert_eq!(at(dec!(150), dec!(200.0001)), (Outcome::Over, false, "May be over"));
    assert_eq!(
        at(dec!(200.0001), dec!(210)),
        (Outcome::Over, true, "Stop: over the limit")
    );
}

/// FSIS Directive 7620.3 (1995), p. 12: 120 ppm in cured products that must be kept cold. Quoted.
#[test]
fn least_of_120() {
    let at = |low, high| outcome(low, high, dec!(0), Eaten::Cooked);
    assert_eq!(at(dec!(120), dec!(150)), (Outcome::InRange, true, "In range"));
    assert_eq!(
        at(dec!(119.9999), dec!(150)),
        (Outcome::TooLittle, false, "May be too low")
    );
    assert_eq!(at(dec!(40), dec!(119.9999)), (Outcome::TooLittle, true, "Too low"));
}

/// 21 CFR 172.170: 500 ppm of sodium nitrate beside the nitrite. Published.
#[test]
fn nitrate_limit_of_500() {
    let at = |nitrate| outcome(dec!(150), dec!(150), nitrate, Eaten::Cooked).0;
    assert_eq!(at(dec!(500)), Outcome::InRange);
    assert_eq!(at(dec!(500.0001)), Outcome::Over);
}

/// 9 CFR 424.21(c) lets a plant put 625 ppm on a dry-cured muscle (quoted), while the home rule counts the finished
/// meat: in between, what goes in cannot decide it for meat that hangs for months.
#[test]
fn hung_meat_between_200_and_625_cannot_be_told() {
    let at = |high| outcome(dec!(150), high, dec!(0), Eaten::HungForMonths);
    assert_eq!(at(dec!(200)).0, Outcome::InRange);
    assert_eq!(at(dec!(200.0001)), (Outcome::CannotTell, false, "Cannot tell"));
    assert_eq!(at(dec!(625)).0, Outcome::CannotTell);
    assert_eq!(at(dec!(625.0001)).0, Outcome::Over);
}

/// An unknown strength is never blessed, whatever the weight.
#[test]
fn unknown_strength_is_held() {
    let verdict = ok(&json!({"check_dose": {
        "method": "rub", "green": "2 kg", "put_in": {"amount": "3 g"}, "settings": settings("0.1 g")
    }}));
    assert_eq!(verdict["outcome"], "cannot_tell");
    assert_eq!(verdict["held"], true);
    assert!(verdict["nitrite"].is_null());
}

/// A limit says by its name which rule it is and where it is published.
#[test]
fn every_verdict_names_its_rule() {
    let verdict = ok(&json!({"check_dose": {
        "method": "rub", "green": "2 kg", "put_in": {"amount": "5 g", "nitrite": "6.25 %"}, "settings": settings("0.1 g")
    }}));
    assert_eq!(
        (verdict["limit"].as_u64(), verdict["least"].as_u64()),
        (Some(200), Some(120))
    );
    let source = verdict["source"].as_str().expect("a source");
    assert!(
        source.contains("21 CFR 172.175") && source.contains("FSIS Directive 7620.3"),
        "{source}"
    );
    assert_eq!(verdict["basis"], "Ingoing sodium nitrite, counted on green weight.");
}

/// A brine cannot be judged without its water.
#[test]
fn a_brine_needs_its_water() {
    let found = problems(&json!({"check_dose": {
        "method": "cover_brine", "green": "2 kg", "put_in": {"amount": "5 g", "nitrite": "6.25 %"}, "settings": settings("0.1 g")
    }}));
    assert_eq!(
        (found[0]["code"].as_str(), found[0]["field"].as_str()),
        (Some("missing"), Some("water"))
    );
}
