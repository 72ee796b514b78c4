//! The cards for when something went wrong: every way through each of them ends in an answer with a source.

use cure_reckoner_tests::{ok, problems};
use serde_json::{Value, json};
use std::collections::BTreeSet;

fn ask(card: &str, chosen: &[(String, String)]) -> Value {
    ok(&json!({"trouble": {"card": card, "chosen": chosen}}))
}

/// The answer to choices written `ask=option`.
fn answer(card: &str, chosen: &str) -> Value {
    let pairs: Vec<_> = chosen
        .split('&')
        .filter_map(|c| c.split_once('='))
        .map(|(a, o)| (a.into(), o.into()))
        .collect();
    ask(card, &pairs)["answer"].clone()
}

/// Every row of choices a card allows.
fn ways(asks: &[Value]) -> Vec<Vec<(String, String)>> {
    asks.iter().fold(vec![Vec::new()], |ways, one| {
        let key = one[0].as_str().expect("a key");
        let options = one[2].as_array().expect("options");
        ways.iter()
            .flat_map(|way| {
                options.iter().map(move |o| {
                    let mut more: Vec<(String, String)> = way.clone();
                    more.push((key.to_owned(), o[0].as_str().expect("a key").to_owned()));
                    more
                })
            })
            .collect()
    })
}

#[test]
fn every_way_through_every_card_ends_in_an_answer() {
    let cards = ask("", &[])["cards"].as_array().expect("cards").clone();
    assert_eq!(cards.len(), 9);
    let mut used = BTreeSet::new();
    for card in &cards {
        let key = card[0].as_str().expect("a key");
        let open = ask(key, &[]);
        let asks = open["asks"].as_array().expect("asks");
        assert!((2..=3).contains(&asks.len()) && open["answer"].is_null(), "{key}");
        for way in ways(asks) {
            let sheet = ask(key, &way);
            let answer = &sheet["answer"];
            for part in ["word", "says", "next", "source"] {
                assert!(
                    answer[part].as_str().is_some_and(|t| !t.is_empty()),
                    "{key} {way:?}: {part}"
                );
            }
            let status = [
                "published",
                "quoted",
                "computed",
                "uncontrolled",
                "from memory",
                "judgement",
                "no source",
            ];
            let source = answer["source"].as_str().expect("text");
            assert!(status.iter().any(|s| source.contains(s)), "{key} {way:?}: {source}");
            assert!(["ok", "care", "stop", "ask"].contains(&answer["mark"].as_str().expect("text")));
            assert!(sheet["cautions"].to_string().contains("food-safety authority"));
            used.insert(answer.to_string());
        }
    }
    // No row stands behind another that always comes first.
    let rows = include_str!("../../crate/tables/trouble-answers.csv")
        .lines()
        .filter(|l| !l.starts_with('#'))
        .count();
    assert_eq!(used.len(), rows - 1);
}

/// FoodSafety.gov, quoted: refrigerator 4 hours, freezer 24 half full and 48 full, above 40 °F for 2 hours discard.
#[test]
fn warmth_is_not_made_up_for_by_a_cure() {
    for (card, chosen) in [
        ("warm", "reads=warm&long=long"),
        ("warm", "reads=unknown&long=unknown"),
        ("power", "where=fridge&long=h24&reads=shut"),
        ("power", "where=freezer&long=more&reads=shut"),
        ("power", "where=freezer&long=h4&reads=open"),
        ("fire", "reads=warm&long=long"),
        // University of Nebraska extension, published: 40 to 140 °F within 4 hours.
        ("stall", "reads=low&long=h6&kind=worked"),
        ("stall", "reads=low&long=h6&kind=whole"),
    ] {
        assert_eq!(answer(card, chosen)["mark"], "stop", "{card} {chosen}");
    }
    assert_eq!(answer("power", "where=freezer&long=more&reads=cold")["mark"], "ok");
}

/// No answer asks for more cure where some may be in, and none promises to soak nitrite out.
#[test]
fn no_answer_doubles_a_dose() {
    for chosen in [
        "tick=not&jar=less&since=d1",
        "tick=none&jar=unknown&since=d1",
        "tick=ticked&jar=same&since=d1",
    ] {
        let said = answer("forgot", chosen);
        assert!(
            !said["next"].as_str().expect("text").contains("Weigh the cure out"),
            "{chosen}: {said}"
        );
    }
    // 150 and 150 make 300 ppm; 21 CFR 172.175, published: 200.
    assert!(
        answer("forgot", "tick=none&jar=unknown&since=d1")["says"]
            .as_str()
            .expect("text")
            .contains("300, over the limit of 200")
    );
    let sat = answer("sat", "method=strong&over=d2&cold=cold");
    assert_eq!(sat["mark"], "stop");
    assert!(
        sat["next"]
            .as_str()
            .expect("text")
            .contains("does not bring it back in range")
    );
    assert!(
        answer("dose", "way=over&meat=no")["next"]
            .as_str()
            .expect("text")
            .contains("no known amount")
    );
}

#[test]
fn what_no_card_has_is_refused() {
    let code =
        |card: &str, chosen: Value| problems(&json!({"trouble": {"card": card, "chosen": chosen}}))[0]["code"].clone();
    assert_eq!(code("flood", json!([])), "unknown");
    assert_eq!(code("froze", json!([["stage", "moon"]])), "unknown");
    // Half an answer is none.
    assert!(answer("froze", "stage=cure").is_null());
}
