//! Brines of which only a share goes into the meat: pumped, taken up, pumped and covered; and the trap of a strong
//! brine with small pieces in it.

use cure_reckoner::dose::{Evens, Lying, Whole, cure_for, evens, hours, ingoing};
use cure_reckoner::pantry::Agent;
use cure_reckoner::pantry::MeatKind::{self, Bird, Red};
use cure_reckoner::quantity::Range;
use cure_reckoner::recipe::Method;
use cure_reckoner_tests::{batch, exact, next_keys, ok, problems, remark, settings, weigh_out};
use rust_decimal::{Decimal, dec};
use serde_json::{Value, json};

fn whole(method: Method, green: Decimal, pickle: Decimal, take: Decimal) -> Whole {
    Whole {
        counted: method.counted(),
        green: Range::point(green),
        pickle: Range::point(pickle),
        take,
        fo: None,
    }
}

fn nitrite(percent: Decimal) -> Agent {
    Agent {
        nitrite: percent,
        nitrate: dec!(0),
        water: Decimal::ZERO,
    }
}

fn ppm(agent: Agent, grams: Decimal, whole: Whole) -> (Range, Range) {
    let base = whole.base().expect("a base");
    let found = ingoing(agent, Range::point(grams), base, dec!(0)).expect("a dose");
    (found.nitrite, found.nitrate)
}

/// 1000 g of water, 110 of salt, 124 of sugar and 32 of a 5.88 % cure, pumped 10 %: 148.6256 ppm, and the brine holds
/// 11.0678 % of salt. FSIS Directive 7620.3 (1995), p. 19, quoted.
#[test]
fn pumped_ten_per_cent() {
    let cure = nitrite(dec!(5.88));
    let pickle = dec!(1000) + dec!(110) + dec!(124) + dec!(32);
    let (found, _) = ppm(cure, dec!(32), whole(Method::Pumped, dec!(5000), pickle, dec!(0.1)));
    assert_eq!(found.typical.round_dp(4), dec!(148.6256));
    let salt = dec!(110) + dec!(32) * cure.salt().expect("salt");
    assert_eq!((salt * dec!(100) / pickle).round_dp(4), dec!(11.0678));
    // Green weight falls out: a pump is a share of it.
    let (other, _) = ppm(cure, dec!(32), whole(Method::Pumped, dec!(80), pickle, dec!(0.1)));
    assert_eq!(found, other);
}

/// The same through the door.
#[test]
fn pumped_ten_per_cent_through_the_door() {
    let verdict = ok(&json!({"check_dose": {
        "method": "pumped", "green": "5 kg", "water": "1000 g", "dissolved": "234 g", "take": "10 %",
        "put_in": {"amount": "32 g", "nitrite": "5.88 %"}, "settings": settings("0.01 g")
    }}));
    assert_eq!(verdict["nitrite"]["exact"][1], "148.6256");
    assert_eq!(verdict["word"], "in_range");
    assert_eq!(
        verdict["says"][0]["on"],
        json!({"is": "brine", "brine": "1266 g", "percent": "10"})
    );
}

/// 1200 g of loin in 600 g of brine with 1.26 g of saltpetre and 60 g of salt, by pick-up at 10 %: 210 ppm of nitrate
/// and 1 % of salt. FSIS Directive 7620.3 (1995), before p. 22, quoted.
#[test]
fn loin_by_pick_up() {
    let saltpetre = Agent {
        nitrite: dec!(0),
        nitrate: dec!(100),
        water: Decimal::ZERO,
    };
    let over = whole(Method::PickUp, dec!(1200), dec!(600), dec!(0.1));
    assert_eq!(ppm(saltpetre, dec!(1.26), over).1.typical, dec!(210));
    assert_eq!(dec!(60) * dec!(100) / over.base().expect("a base").typical, dec!(1));
}

/// The gallon with an ounce of cure: by pick-up 42.73 ppm where it comes to 204.06 left until equal. Computed from the
/// same directive.
fn gallon(thickness: &str, stays: &str) -> Value {
    ok(&json!({"check_dose": {
        "method": "pick_up", "green": "10 lb", "water": "8.33 lb", "dissolved": "0.75 lb", "take": "10 %",
        "cut": "teal-breast", "thickness": thickness, "stays": stays,
        "put_in": {"amount": "1 oz", "nitrite": "6.25 %"}, "settings": settings("0.01 g")
    }}))
}

#[test]
fn small_pieces_in_a_strong_brine_are_refused_by_pick_up() {
    // 15 mm: 0.3035 x 7.5 x 7.5 / 3.6 is 4.7 h.
    let thin = gallon("15 mm", "24 h");
    assert!((exact(&thin, "nitrite")[1] - 204.06).abs() < 0.005);
    assert_eq!(thin["word"], "over");
    assert_eq!(thin["held"], true);
    assert_eq!(remark(&thin, "equal_after")["time"], "4.7 h");
    assert_eq!(
        remark(&thin, "pick_up"),
        json!({"is": "pick_up", "percent": "10", "taken": {"low": 42, "high": 43}, "equal": {"low": 204, "high": 205}})
    );
    assert_eq!(thin["basis"], json!(["cover_brine"]));
}

#[test]
fn thick_pieces_taken_out_in_time_count_by_pick_up() {
    let thick = gallon("60 mm", "24 h");
    // The pick-up is the least of it; in a day a ball of 60 mm can come to three quarters of 204.06 and more, by the fast
    // end of the clock's speeds: Fo 0.096, 6 (Fo/π)^½ - 3 Fo = 0.76 where the brine stays as strong.
    let [low, _, high] = exact(&thick, "nitrite");
    assert!(
        (42.7..50.0).contains(&low) && high > 0.76 * 204.06 && high < 204.07,
        "{low} to {high}"
    );
    assert_eq!(thick["word"], "may_be_too_low");
    assert_eq!(remark(&thick, "pick_up")["equal"], json!({"low": 204, "high": 205}));
    let diffuses = remark(&thick, "diffuses")["range"].clone();
    assert_eq!(diffuses["low"].as_f64(), Some(low.floor()));
    assert_eq!(diffuses["high"].as_f64(), Some(high.ceil()));
}

#[test]
fn without_thickness_or_time_the_range_holds_both() {
    let ask = |part: Option<(&str, &str)>| {
        let mut ask = json!({
            "method": "pick_up", "green": "10 lb", "water": "8.33 lb", "dissolved": "0.75 lb", "take": "10 %",
            "put_in": {"amount": "1 oz", "nitrite": "6.25 %"}, "settings": settings("0.01 g")
        });
        if let Some((key, value)) = part {
            ask[key] = json!(value);
        }
        ok(&json!({"check_dose": ask}))
    };
    for part in [None, Some(("thickness", "60 mm")), Some(("stays", "2 h"))] {
        let verdict = ask(part);
        let [low, _, high] = exact(&verdict, "nitrite");
        assert!(low < 42.74 && high > 204.05, "{low} to {high}");
        assert_eq!(
            (verdict["word"].as_str(), verdict["held"].as_bool()),
            (Some("may_be_over"), Some(true))
        );
    }
}

fn lying(pieces: &[(MeatKind, Option<Decimal>)]) -> Vec<Lying> {
    let one = |&(kind, thickness)| Lying {
        kind,
        thickness,
        thawed: false,
    };
    pieces.iter().map(one).collect()
}

/// The hours of the rule: Fo 0.3035 for a sphere in a brine that stays as strong (computed), and the fast end of the
/// diffusion coefficient by kind (status in the table).
#[test]
fn hours_until_a_piece_can_be_equal() {
    // 1e-9 m²/s: 0.3035 x (0.0075 m)² / 1e-9 = 17 072 s.
    let seconds = hours(Bird, dec!(15)).expect("hours") * dec!(3600);
    assert_eq!(seconds.round_dp(0), dec!(17072));
    let soonest = evens(
        lying(&[(Bird, Some(dec!(26))), (Bird, Some(dec!(15)))]),
        Some(dec!(240)),
    );
    let Evens::Thick { soonest, fo } = soonest else {
        panic!("{soonest:?}");
    };
    assert_eq!(soonest, hours(Bird, dec!(15)).expect("hours"));
    // 4 h: slow 1.6e-10 x 0.7 in 26 mm, likely and fast in 15 mm.
    assert_eq!(
        [fo.low.round_dp(6), fo.typical, fo.high],
        [dec!(0.009543), dec!(0.1024), dec!(0.256)]
    );
    assert!(matches!(
        evens(lying(&[(Bird, Some(dec!(15)))]), Some(dec!(285))),
        Evens::Thin(_)
    ));
    assert_eq!(
        evens(lying(&[(Bird, Some(dec!(15))), (Red, None)]), Some(dec!(60))),
        Evens::Unknown
    );
    assert_eq!(evens(lying(&[]), Some(dec!(60))), Evens::Unknown);
    // Whoever stays to the very hour is no longer surely in time. For a thickness whose hours end as a decimal fraction.
    let (thick, hour) = (1..400)
        .map(|n| Decimal::new(n, 1))
        .find_map(|thick| {
            let hour = hours(Bird, thick)?;
            (hour * dec!(60) / dec!(60) == hour).then_some((thick, hour))
        })
        .expect("a thickness");
    assert_eq!(
        evens(lying(&[(Bird, Some(thick))]), Some(hour * dec!(60))),
        Evens::Thin(hour)
    );
}

/// Pumped, then covered: what is pumped and what comes from the cover are summed (from memory of the directive, p. 32
/// to 33), and the low end is all of it evened out.
#[test]
fn pumped_and_covered_is_summed() {
    let over = whole(Method::PumpedAndCovered, dec!(2000), dec!(1000), dec!(0.1));
    let (found, _) = ppm(nitrite(dec!(6.25)), dec!(5), over);
    let pumped = dec!(5) * dec!(0.0625) * dec!(1000000) * dec!(0.1) / dec!(1000);
    let covered = dec!(5) * dec!(0.0625) * dec!(1000000) / dec!(3000);
    assert_eq!(found.high.round_dp(10), (pumped + covered).round_dp(10));
    assert_eq!(found.low, covered);
}

/// The cure for an aim, put back into the formula, gives the aim, by every method.
#[test]
fn cure_for_an_aim_gives_the_aim() {
    let agent = nitrite(dec!(6.25));
    for (method, take) in [
        (Method::Rub, dec!(0)),
        (Method::Ground, dec!(0)),
        (Method::CoverBrine, dec!(0)),
        (Method::PickUp, dec!(0.1)),
        (Method::Pumped, dec!(0.12)),
        (Method::PumpedAndCovered, dec!(0.1)),
    ] {
        let pickle = if method.has_brine() { dec!(1200) } else { dec!(0) };
        let bare = whole(method, dec!(2000), pickle, take);
        let cure = cure_for(&bare, &[(agent, dec!(0.0150))], false).expect("a cure")[0];
        let full = Whole {
            pickle: Range::point(if method.has_brine() { pickle + cure } else { pickle }),
            ..bare
        };
        let back = ppm(agent, cure, full).0.typical;
        assert_eq!(back.round_dp(6), dec!(150), "{method:?}");
    }
}

fn brine(method: &str, take: &str) -> Value {
    json!({
        "name": "Trial brine", "tag": "TB", "method": method, "take": take,
        "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "150 ppm"}],
        "lines": [
            {"item": "water", "share": {"of": "green_weight", "amount": "40 %"}},
            {"item": "salt-sea-fine", "share": {"of": "brine", "amount": "12 %"}}
        ],
        "steps": [{"do": "cure", "lasts": "36 h"}]
    })
}

/// A pump on the list: the pickle it is weighed for comes to the aim, and its salt is given on green weight.
#[test]
fn a_pump_on_the_list() {
    let sheet = weigh_out(&batch(&brine("pumped", "10 %"), 1, "2000 g"), "0.01 g");
    // 800 g of water and 96 g of salt, the cure's among it: base = 896 / (0.1 - 0.0024 x 0.0625).
    let pickle = 896.0 / (1.0 - 0.024 * 0.0625);
    let wanted = pickle * 0.1 * 150.0 / 62_500.0 * 100.0;
    let weighed: f64 = sheet["bowl"][0]["weight"]
        .as_str()
        .and_then(|t| t.trim_end_matches(" g").parse().ok())
        .expect("grams");
    assert!(weighed <= wanted && wanted - weighed < 0.01, "{weighed} of {wanted}");
    assert_eq!(sheet["verdict"]["word"], "in_range");
    let facts = sheet["facts"].as_array().expect("facts");
    assert!(
        facts.contains(&json!({"is": "salt", "percent": "1.07 %", "of": "taken_up"})),
        "{facts:?}"
    );
}

/// The trap on the list: mallard breasts 20 mm thick for 36 h in a brine reckoned by pick-up. Held, with both figures.
#[test]
fn the_trap_on_the_list() {
    let mut batch = batch(&brine("pick_up", "10 %"), 8, "2000 g");
    batch["pieces"][0]["thickness"] = json!("20 mm");
    let sheet = weigh_out(&batch, "0.1 g");
    assert_eq!(
        (sheet["verdict"]["held"].as_bool(), sheet["can_tick"].as_bool()),
        (Some(true), Some(false))
    );
    assert!(remark(&sheet["verdict"], "equal_after")["time"].is_string(), "{sheet}");
    assert_eq!(remark(&sheet["verdict"], "pick_up")["percent"], "10");
    assert_eq!(next_keys(&sheet["verdict"]), ["cover_brine_instead", "say_thickness"]);
    // Half a day in thick pieces is still more than the pick-up says: a ball of 60 mm takes up over half of what it would
    // come to. An hour in 120 mm is not.
    batch["pieces"][0]["thickness"] = json!("60 mm");
    batch["recipe"]["steps"][0]["lasts"] = json!("12 h");
    assert_eq!(weigh_out(&batch, "0.1 g")["verdict"]["word"], "may_be_over");
    batch["pieces"][0]["thickness"] = json!("120 mm");
    batch["recipe"]["steps"][0]["lasts"] = json!("1 h");
    assert_eq!(weigh_out(&batch, "0.1 g")["verdict"]["word"], "in_range");
}

/// What goes with a pump, and what does not.
#[test]
fn rules_of_a_pump() {
    let fields = |recipe: &Value| -> Vec<String> {
        let found = problems(&json!({"check": {"recipe": recipe}}));
        found
            .iter()
            .filter_map(|p| p["field"].as_str().map(str::to_owned))
            .collect()
    };
    let mut none = brine("pumped", "10 %");
    none.as_object_mut().expect("a recipe").remove("take");
    assert_eq!(fields(&none), ["recipe.take"]);
    assert_eq!(fields(&brine("pumped", "70 %")), ["recipe.take"]);
    assert_eq!(fields(&brine("cover_brine", "10 %")), ["recipe.take"]);
    let mut evened = brine("pumped", "10 %");
    evened["lines"][1]["share"]["of"] = json!("meat_and_water");
    assert_eq!(fields(&evened), ["recipe.lines[1].share"]);
    // Ten per cent of the meat cannot come out of a brine of five.
    let mut little = brine("pumped", "10 %");
    little["lines"][0]["share"]["amount"] = json!("5 %");
    let ask = json!({"weigh_out": {"batch": batch(&little, 1, "2000 g"), "settings": settings("0.1 g")}});
    assert_eq!(problems(&ask)[0]["code"], "conflict");
}

/// Written before a share that goes in was carried.
const OLD: [(&str, &str); 3] = [
    (
        "r1.ACkHT2xkIHJ1Yk9SEAEBlU4D9gEBYOQCAXADghuCCeRgAQhUdXJuIGl0Ls9M9p4",
        "rub",
    ),
    ("r1.AB4JT2xkIGJyaW5lT0IBAQGVTgP2AQGABWIBEAGCfgDfbOgw", "cover_brine"),
    ("r1.ABgJT2xkIG1pbmNlT00CAQGVTgPWAQAAAAAEo12l", "ground"),
];

/// The link carries a pump, and one that was written before there were any opens as it did.
#[test]
fn links_with_and_without_a_pump() {
    let page = "https://larder.example/";
    for (method, take) in [("pumped", "12.5 %"), ("pick_up", "8 %"), ("pumped_and_covered", "10 %")] {
        let linked = ok(&json!({"link": {"recipe": brine(method, take), "base": page}}));
        let opened = ok(&json!({"open_link": {"text": linked["code"]}}))["recipe"].clone();
        assert_eq!(
            (opened["method"].as_str(), opened["take"].as_str()),
            (Some(method), Some(take))
        );
        assert_eq!(opened["steps"][0]["lasts"], "36 h");
    }
    for (code, method) in OLD {
        let opened = ok(&json!({"open_link": {"text": code}}))["recipe"].clone();
        assert_eq!((opened["method"].as_str(), opened.get("take")), (Some(method), None));
        let again = ok(&json!({"link": {"recipe": opened, "base": page}}));
        assert_eq!(again["code"], code);
    }
}

/// Ascorbic or erythorbic acid to 469 ppm (9 CFR 424.21(c), quoted), their sodium salts to 547 (from memory): each just
/// within and just over, on green weight.
#[test]
fn accelerators_have_limits_of_their_own() {
    let told = |name: &str, share: &str| {
        let mut recipe = cure_reckoner_tests::rub("6.25 %", "150 ppm", "2.2 %");
        let lines = recipe["lines"].as_array_mut().expect("lines");
        lines.push(json!({"item": "own", "name": name, "share": {"of": "green_weight", "amount": share}}));
        let sheet = weigh_out(&batch(&recipe, 1, "10 kg"), "0.01 g");
        let of = |list: &Value| {
            let mut facts = list.as_array().expect("facts").iter();
            facts.find(|f| f["is"] == "accelerator").cloned().unwrap_or_default()
        };
        (of(&sheet["remarks"]), of(&sheet["facts"]))
    };
    for (name, within, over, status) in [
        ("Ascorbic acid", "469 ppm", "470 ppm", "quoted"),
        ("Erythorbic acid", "469 ppm", "470 ppm", "quoted"),
        ("Sodium erythorbate", "547 ppm", "548 ppm", "from memory"),
        ("Sodium ascorbate", "547 ppm", "548 ppm", "from memory"),
    ] {
        let (good, fact) = told(name, within);
        let rule = good["rule"].as_str().expect("a rule");
        assert!(good["lies"] == "within" && rule.contains(status), "{name}: {good}");
        assert_eq!(format!("{} ppm", fact["ppm"]), within, "{name}");
        assert_eq!(told(name, over).0["lies"], "over", "{name}");
    }
    assert_eq!(told("Juniper of my own", "1 %"), (Value::Null, Value::Null));
}
