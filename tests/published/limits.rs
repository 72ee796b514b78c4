//! Limits and leasts: each boundary, from just inside to just outside.

use cure_reckoner::dose::{Basis, Ingoing, Outcome, Rule, VerdictWord, find, rule};
use cure_reckoner::pantry::Belly::{self, Bare, No, RindOn};
use cure_reckoner::pantry::Status;
use cure_reckoner::quantity::Range;
use cure_reckoner::recipe::Eaten;
use cure_reckoner::recipe::Method;
use cure_reckoner_tests::{ok, problems, settings};
use rust_decimal::{Decimal, dec};
use serde_json::json;

fn of(key: &str, method: Method, belly: Belly) -> &'static Rule {
    rule(key, method, belly).expect("a rule")
}

fn outcome(low: Decimal, high: Decimal, nitrate: Decimal, eaten: Eaten) -> (Outcome, bool, VerdictWord) {
    let ingoing = Ingoing {
        nitrite: Range::new(low, low, high),
        nitrate: Range::point(nitrate),
    };
    let found = find(ingoing, of("us-home", Method::Rub, No), eaten);
    (found.outcome, found.sure, found.word)
}

/// 21 CFR 172.175(a)(3): 200 ppm of sodium nitrite for home curing. Published.
#[test]
fn home_curing_limit_of_200() {
    let at = |low, high| outcome(low, high, dec!(0), Eaten::Cooked);
    assert_eq!(at(dec!(150), dec!(200)), (Outcome::InRange, true, VerdictWord::InRange));
    assert_eq!(
        at(dec!(150), dec!(200.0001)),
        (Outcome::Over, false, VerdictWord::MayBeOver)
    );
    assert_eq!(at(dec!(200), dec!(210)), (Outcome::Over, false, VerdictWord::MayBeOver));
    assert_eq!(at(dec!(200.0001), dec!(210)), (Outcome::Over, true, VerdictWord::Over));
}

/// FSIS Directive 7620.3 (1995), p. 12: 120 ppm in cured products that must be kept cold. Quoted.
#[test]
fn least_of_120() {
    let at = |low, high| outcome(low, high, dec!(0), Eaten::Cooked);
    assert_eq!(at(dec!(120), dec!(150)), (Outcome::InRange, true, VerdictWord::InRange));
    assert_eq!(
        at(dec!(119.9999), dec!(150)),
        (Outcome::TooLittle, false, VerdictWord::MayBeTooLow)
    );
    assert_eq!(
        at(dec!(40), dec!(119.9999)),
        (Outcome::TooLittle, true, VerdictWord::TooLow)
    );
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
    assert_eq!(
        at(dec!(200.0001)),
        (Outcome::CannotTell, false, VerdictWord::CannotTell)
    );
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
    assert_eq!(verdict["basis"], json!(["rub"]));
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

/// Just inside and just outside a limit: what the outcome becomes.
fn edge(rule: &Rule, nitrate: Decimal) -> (Outcome, Outcome) {
    let at = |ppm: Decimal| {
        let ingoing = Ingoing {
            nitrite: Range::point(ppm),
            nitrate: Range::point(nitrate),
        };
        find(ingoing, rule, Eaten::Cooked).outcome
    };
    let room = if rule.together {
        rule.limit - nitrate
    } else {
        rule.limit
    };
    (at(room), at(room + dec!(0.0001)))
}

/// Every row of the table at its limit: within it in range, a hair above it over, or not to be told where the limit
/// counts what is left (status of each in the table).
#[test]
fn every_limit_at_its_edge() {
    let rows = [
        // 9 CFR 424.21(c): 200 ppm in the finished product, beside 1 oz to 100 lb, dry. Quoted.
        ("us-plant", Method::Rub, No, dec!(200), Outcome::Over),
        // 9 CFR 424.21(c): 2 lb to 100 gallons of pickle at 10 %, ten pounds to the gallon. Quoted.
        ("us-plant", Method::CoverBrine, No, dec!(200), Outcome::Over),
        ("us-plant", Method::PickUp, No, dec!(200), Outcome::Over),
        ("us-plant", Method::Pumped, No, dec!(200), Outcome::Over),
        ("us-plant", Method::PumpedAndCovered, No, dec!(200), Outcome::Over),
        // 9 CFR 424.21(c): 1/4 oz to 100 lb, chopped, 156.25. Quoted; down to whole ppm.
        ("us-plant", Method::Ground, No, dec!(156), Outcome::Over),
        // The limits for bacon, at home too. Quoted.
        ("us-home", Method::Rub, Bare, dec!(200), Outcome::Over),
        ("us-home", Method::CoverBrine, Bare, dec!(120), Outcome::Over),
        ("us-home", Method::Pumped, RindOn, dec!(108), Outcome::Over),
        ("us-home", Method::Ground, Bare, dec!(200), Outcome::Over),
        // 9 CFR 424.22(b), bacon. Quoted.
        ("us-plant", Method::Rub, Bare, dec!(200), Outcome::Over),
        ("us-plant", Method::CoverBrine, Bare, dec!(120), Outcome::Over),
        ("us-plant", Method::PickUp, Bare, dec!(120), Outcome::Over),
        ("us-plant", Method::Pumped, Bare, dec!(120), Outcome::Over),
        ("us-plant", Method::PumpedAndCovered, Bare, dec!(120), Outcome::Over),
        // The same with the rind on: a tenth less. Quoted.
        ("us-plant", Method::Rub, RindOn, dec!(180), Outcome::Over),
        ("us-plant", Method::CoverBrine, RindOn, dec!(108), Outcome::Over),
        ("us-plant", Method::PickUp, RindOn, dec!(108), Outcome::Over),
        ("us-plant", Method::Pumped, RindOn, dec!(108), Outcome::Over),
        ("us-plant", Method::PumpedAndCovered, RindOn, dec!(108), Outcome::Over),
        // CFIA manual chapter 4, section 4.13.1. Published; side bacon quoted.
        ("ca", Method::Rub, No, dec!(200), Outcome::Over),
        ("ca", Method::Rub, Bare, dec!(120), Outcome::Over),
        // A rule for bellies with no row for the rind holds for both.
        ("ca", Method::Pumped, RindOn, dec!(120), Outcome::Over),
        // Regulation (EC) 1333/2008; UK SI 2007/1778. Published.
        ("uk", Method::CoverBrine, No, dec!(150), Outcome::Over),
        // Regulation (EU) 2023/2108, 80 ppm as ion. Basis quoted, figures from memory.
        ("eu", Method::Rub, No, dec!(119), Outcome::Over),
        // Codex GSFA, INS 249 and 250, 80 ppm left as ion. Published.
        ("codex", Method::Rub, No, dec!(119), Outcome::CannotTell),
        // Standard 1.3.1, Schedule 15. From memory.
        ("anz", Method::Rub, No, dec!(125), Outcome::Over),
    ];
    for (key, method, belly, limit, above) in rows {
        let rule = of(key, method, belly);
        assert_eq!(rule.limit, limit, "{key}");
        assert_eq!(
            edge(rule, dec!(0)),
            (Outcome::InRange, above),
            "{key} {method:?} {belly:?}"
        );
    }
}

/// NO2 is 0.66679 of NaNO2 by weight, and NO3 0.72951 of NaNO3. Computed from the standard atomic weights.
#[test]
fn ions_as_salts() {
    // Down to whole ppm, which is what is shown.
    for key in ["eu", "codex"] {
        assert_eq!((dec!(80) / dec!(0.66679)).floor(), of(key, Method::Rub, No).limit);
    }
    let nitrate = of("eu", Method::Rub, No).nitrate.expect("a limit on nitrate");
    assert_eq!((dec!(90) / dec!(0.72951)).floor(), nitrate);
}

/// Every figure in the table is whole.
#[test]
fn limits_are_whole_ppm() {
    let methods = [
        Method::Rub,
        Method::Ground,
        Method::CoverBrine,
        Method::PickUp,
        Method::Pumped,
        Method::PumpedAndCovered,
    ];
    for key in ["us-home", "us-plant", "ca", "uk", "eu", "codex", "anz"] {
        for (method, belly) in methods.iter().flat_map(|m| [No, Bare, RindOn].map(|b| (*m, b))) {
            let rule = of(key, method, belly);
            let figures = [Some(rule.limit), rule.nitrate, Some(rule.least), rule.ascorbate];
            assert!(
                figures.iter().flatten().all(Decimal::is_integer),
                "{key} {method:?} {belly:?}"
            );
            assert!(rule.least < rule.limit);
        }
    }
}

/// Where nitrite and nitrate are added together, both count against the one limit.
#[test]
fn summed_limits() {
    assert_eq!(
        edge(of("ca", Method::Rub, No), dec!(60)),
        (Outcome::InRange, Outcome::Over)
    );
    assert_eq!(
        edge(of("anz", Method::Rub, No), dec!(60)),
        (Outcome::InRange, Outcome::Over)
    );
}

/// No nitrate in bacon: 9 CFR 424.22(b), quoted. No figure for nitrate in a rule: not to be told.
#[test]
fn nitrate_where_a_rule_has_none() {
    let with = |key, belly, nitrate| {
        let ingoing = Ingoing {
            nitrite: Range::point(dec!(100)),
            nitrate: Range::point(nitrate),
        };
        find(ingoing, of(key, Method::Rub, belly), Eaten::Cooked).outcome
    };
    assert_eq!(with("us-plant", Bare, dec!(0.1)), Outcome::Over);
    assert_eq!(with("codex", No, dec!(0.1)), Outcome::CannotTell);
    assert_eq!(with("eu", No, dec!(124)), Outcome::Over);
}

/// A limit from memory says so in the verdict's source.
#[test]
fn a_limit_from_memory_says_so() {
    for (profile, told) in [("anz", true), ("eu", true), ("uk", false), ("us-home", false)] {
        let mut settings = settings("0.1 g");
        settings["profile"] = json!(profile);
        let verdict = ok(&json!({"check_dose": {
            "method": "rub", "green": "2 kg", "put_in": {"amount": "3.5 g", "nitrite": "6.25 %"}, "settings": settings
        }}));
        let source = verdict["source"].as_str().unwrap_or_default();
        assert_eq!(
            source.contains("from memory") && verdict["status"] == "memory",
            told,
            "{profile}: {source}"
        );
    }
}

/// How sure it is at the very limit of nitrate, 500 ppm of 21 CFR 172.170 (published), and at the least of 120 ppm.
#[test]
fn sure_only_where_the_whole_range_is_past_it() {
    let sure = |nitrite: [Decimal; 2], nitrate: [Decimal; 2]| {
        let range = |[low, high]: [Decimal; 2]| Range::new(low, low, high);
        let ingoing = Ingoing {
            nitrite: range(nitrite),
            nitrate: range(nitrate),
        };
        let found = find(ingoing, of("us-home", Method::Rub, No), Eaten::Cooked);
        (found.outcome, found.sure)
    };
    let good = [dec!(150), dec!(160)];
    assert_eq!(sure(good, [dec!(400), dec!(600)]), (Outcome::Over, false));
    assert_eq!(sure(good, [dec!(500), dec!(600)]), (Outcome::Over, false));
    assert_eq!(sure(good, [dec!(501), dec!(600)]), (Outcome::Over, true));
    assert_eq!(
        sure([dec!(110), dec!(120)], [dec!(0), dec!(0)]),
        (Outcome::TooLittle, false)
    );
    assert_eq!(
        sure([dec!(110), dec!(119)], [dec!(0), dec!(0)]),
        (Outcome::TooLittle, true)
    );
    // Neither nitrite nor nitrate is too little, not undecided.
    assert_eq!(sure([dec!(0), dec!(0)], [dec!(0), dec!(0)]), (Outcome::TooLittle, true));
}

/// A limit from memory above the published one blesses nothing that the published one does not.
#[test]
fn a_limit_from_memory_is_not_the_only_support() {
    let found = |status, nitrite| {
        let lax = Rule {
            limit: dec!(700),
            basis: Basis::Ingoing,
            status,
            ..*of("us-home", Method::Rub, No)
        };
        let ingoing = Ingoing {
            nitrite: Range::point(nitrite),
            nitrate: Range::point(dec!(0)),
        };
        let found = find(ingoing, &lax, Eaten::Cooked);
        (found.outcome, found.word)
    };
    assert_eq!(
        found(Status::Published, dec!(300)),
        (Outcome::InRange, VerdictWord::InRange)
    );
    assert_eq!(
        found(Status::Memory, dec!(300)),
        (Outcome::CannotTell, VerdictWord::CannotTell)
    );
    assert_eq!(
        found(Status::Memory, dec!(150)),
        (Outcome::InRange, VerdictWord::InRange)
    );
}
