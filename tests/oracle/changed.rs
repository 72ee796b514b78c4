//! Properties over the same batches: what happens to the assurances when one thing about a batch gets worse.
//!
//! More cure never turns "over" into "in range"; a colder reading, a longer warm spell, a later chill never make an
//! assurance appear. And one dose is judged alike by the weigh-out and by Check a dose.

use crate::asks::{all, check_dose, pack_step, settings};
use crate::batches;
use crate::draw::batch;
use crate::heard::{Heard, ask, heard};
use crate::oracle_dose::planned;
use crate::told::{Amount, HOUR, MINUTE, Method, Ms, Own, Put, Reading, Seen, Told};
use serde_json::{Value, json};
use std::collections::BTreeSet;

/// What the standing and the sheets of a batch assure, as names.
fn assured(told: &Told) -> BTreeSet<String> {
    let wanted = ["standing", "fire_log", "labels", "next"];
    let asks = all(told).into_iter().filter(|(name, _)| wanted.contains(name));
    let words = asks.flat_map(|(name, request)| {
        let heard = heard(name, &ask(request), pack_step(told));
        let given = heard.into_iter().filter(|h| h.given);
        given
            .map(move |h: Heard| format!("{name} {} {:?}", h.word.key(), h.class))
            .collect::<Vec<_>>()
    });
    words.collect()
}

/// No batch gains a word by this change; `change` gives the batch before and after it, nothing where it does not apply.
/// Wants at least so many changed, and that some of them lose a word: else it would show nothing.
fn never_gains(what: &str, least: u64, change: impl Fn(&Told) -> Option<(Told, Told)>) {
    let mut changed = 0;
    let mut lost = 0;
    for number in 0..batches(600) {
        let told = batch(number).told;
        let Some((better, worse)) = change(&told) else { continue };
        let (before, after) = (assured(&better), assured(&worse));
        let gained: Vec<_> = after.difference(&before).collect();
        assert!(
            gained.is_empty(),
            "batch {number}, {what}: now assures {gained:?}\n{:?}",
            all(&worse)[0].1.to_string()
        );
        changed += 1;
        lost += u64::from(after.len() < before.len());
    }
    println!("{what}: {changed} batches changed, {lost} lost a word");
    assert!(
        changed >= least && lost > 0,
        "{what}: {changed} batches changed, {lost} lost a word"
    );
}

#[test]
fn a_colder_reading_assures_nothing_more() {
    never_gains("a colder reading at the end of the fire", 100, |told| {
        let mut worse = told.clone();
        let class = worse
            .classes
            .iter_mut()
            .find(|c| c.readings.iter().any(|r| !r.struck))?;
        let pulled = class.pulled.unwrap_or(Ms::MAX);
        let last = class
            .readings
            .iter()
            .filter(|r| !r.struck && r.at <= pulled)
            .max_by_key(|r| r.at)?
            .clone();
        let at = last.at + MINUTE / 2;
        class.readings.push(Reading {
            shown: ((last.shown - if last.fahrenheit { 18.0 } else { 10.0 }) * 10.0).round() / 10.0,
            at,
            sure: true,
            ..last
        });
        worse.now = worse.now.max(at);
        Some((told.clone(), worse))
    });
}

#[test]
fn a_longer_warm_spell_assures_nothing_more() {
    never_gains("half an hour at 9 °C, or seven hours", 60, |told| {
        let from = told.rubbed? + 6 * HOUR;
        let end = told.cure_out.unwrap_or(told.now);
        let warm = |long: Ms| {
            let mut warm = told.clone();
            let back = from + long;
            warm.fridge.retain(|(at, _)| *at < from || *at > from + 8 * HOUR);
            warm.fridge.extend([
                (from - MINUTE, Seen::Read(3.0)),
                (from, Seen::Read(9.0)),
                (back, Seen::Read(3.0)),
            ]);
            warm.fridge.sort_by_key(|(at, _)| *at);
            warm
        };
        (end > from + 8 * HOUR).then(|| (warm(HOUR / 2), warm(7 * HOUR)))
    });
    never_gains("the same days, one of them warm", 100, |told| {
        let mut worse = told.clone();
        let (_, seen) = worse.fridge.first_mut()?;
        let Seen::Read(c) = *seen else { return None };
        *seen = Seen::Read(c.max(3.0) + 6.0);
        Some((told.clone(), worse))
    });
}

#[test]
fn a_later_chill_assures_nothing_more() {
    for by in [2, 5, 30] {
        never_gains(&format!("a chill {by} h later"), 60, |told| {
            let mut worse = told.clone();
            let later = by * HOUR;
            let mut any = false;
            for class in &mut worse.classes {
                let pulled = class.pulled?;
                for reading in class
                    .readings
                    .iter_mut()
                    .filter(|r| r.at > pulled && r.celsius() < 45.0)
                {
                    reading.at += later;
                    any = true;
                }
            }
            worse.now += later;
            worse.packed = worse.packed.map(|at| at + later);
            any.then(|| (told.clone(), worse))
        });
    }
}

fn verdict(told: &Told) -> Option<Value> {
    let answer = ask(check_dose(told)?);
    answer["ok"].is_object().then(|| answer["ok"].clone())
}

#[test]
fn more_cure_never_turns_over_into_in_range() {
    let mut over = 0;
    for number in 0..batches(600) {
        let told = batch(number).told;
        if told.agent.as_ref().is_none_or(|a| a.nitrite.is_none()) || planned(&told) <= 0.0 {
            continue;
        }
        let mut before: Option<Value> = None;
        for by in [0.5, 0.9, 1.0, 1.1, 1.3, 1.7, 2.5, 4.0, 8.0] {
            let mut more = told.clone();
            let grams = (planned(&told) * by / told.step).round() * told.step;
            more.put = Put::Told(Amount::Grams((grams * 1000.0).round() / 1000.0));
            let Some(now) = verdict(&more) else { continue };
            if let Some(before) = &before {
                let fell = before["outcome"] == "over" && now["outcome"] != "over";
                assert!(
                    !fell,
                    "batch {number}: over, and {by} times the cure is {}",
                    now["outcome"]
                );
            }
            over += u64::from(now["outcome"] == "over");
            before = Some(now);
        }
    }
    assert!(over > 100, "{over} doses were over");
}

#[test]
fn one_dose_is_judged_alike_everywhere() {
    let mut compared = 0;
    for number in 0..batches(600) {
        let mut told = batch(number).told;
        // What Check a dose is not told of: a line of one's own, the fridge, who made a plan of it.
        told.own = Own::None;
        let (Put::Ticked(grams), None) = (&told.put, &told.also) else {
            continue;
        };
        let grams = *grams;
        let Some(rubbed) = told.rubbed else { continue };
        // It is asked by the planned time; the list counts the time that it was in.
        if let Some(out) = told.cure_out {
            told.stay = ((out - rubbed) as f64 / HOUR as f64 * 100.0).round() / 100.0;
        }
        let sheet = all(&told)
            .into_iter()
            .find(|(name, _)| *name == "weigh_out")
            .map(|(_, r)| ask(r));
        let (Some(sheet), Some(check)) = (sheet, verdict(&told)) else {
            continue;
        };
        if sheet["ok"].is_null() {
            continue;
        }
        let mut spooned = told.clone();
        spooned.put = Put::Told(Amount::Grams(grams));
        let put_in = all(&spooned)
            .into_iter()
            .find(|(name, _)| *name == "weigh_out")
            .map(|(_, r)| ask(r));
        let outcomes = [&sheet["ok"]["verdict"]["outcome"], &check["outcome"]];
        let told_after = put_in.map(|a| a["ok"]["verdict"]["outcome"].clone());
        assert_eq!(
            outcomes[0],
            outcomes[1],
            "batch {number}: weigh-out and Check a dose\n{}\n{}\n{}",
            sheet["ok"]["verdict"],
            check["says"],
            all(&told)[0].1
        );
        assert_eq!(
            Some(outcomes[0]),
            told_after.as_ref(),
            "batch {number}: ticked and told afterwards"
        );
        compared += 1;
    }
    assert!(compared > 100, "{compared} doses were compared");
}

/// The outcome of an answer's verdict.
fn outcome(answer: &Value) -> Option<&str> {
    answer["ok"]["verdict"]["outcome"].as_str()
}

/// The list as somebody would send it: what the weigh-out says, in words.
fn as_text(told: &Told, cure: f64) -> String {
    let nitrite = told.agent.as_ref().and_then(|a| a.nitrite).unwrap_or_default();
    let green = told.green();
    let salt = (green * told.salt / 100.0 - cure).round();
    let head = if told.method.brine() {
        format!(
            "Brine for {green} g of meat\n{} g water",
            (green * told.water / 100.0).round()
        )
    } else {
        format!("Rub for {green} g of meat")
    };
    format!("{head}\n{salt} g fine sea salt\n{cure} g cure no. 1 ({nitrite} % sodium nitrite)\n")
}

/// The brine bench, told what the list weighs.
fn bench(told: &Told, cure: f64) -> Value {
    let nitrite = told.agent.as_ref().and_then(|a| a.nitrite).unwrap_or_default();
    let water = (told.green() * told.water / 100.0).round();
    let salt = told.green() * told.salt / 100.0;
    json!({"brine": {
        "vessel": {"shape": "water", "water": format!("{water} g")}, "meat": format!("{} g", told.green()),
        "cut": told.classes[0].cut, "strength": format!("{:.2}", salt / (salt + water) * 100.0), "scale": "percent",
        "cure": {"nitrite": format!("{nitrite} %"), "weight": format!("{cure} g")}, "settings": settings(told),
    }})
}

/// What a batch still to be weighed is to get has one verdict: on its list, on the card, on the card that a link opens, in a
/// text that somebody typed off the list, and on the brine bench.
#[test]
fn one_plan_is_judged_alike_by_list_card_link_text_and_bench() {
    let (mut carded, mut texts, mut benched) = (0, 0, 0);
    for number in 0..batches(1_500) {
        let mut told = batch(number).told;
        told.own = Own::None;
        let plain = told
            .agent
            .as_ref()
            .is_some_and(|a| a.nitrite.is_some_and(|n| n < 20.0) && a.nitrate <= 0.0);
        // A card and a text know of no cut: a belly has limits of its own.
        let belly = told.classes.iter().any(|c| c.belly || c.rind);
        if !matches!(told.put, Put::Planned) || !plain || told.also.is_some() || told.hung || belly {
            continue;
        }
        let of = |wanted: &str| {
            all(&told)
                .into_iter()
                .find(|(name, _)| *name == wanted)
                .map(|(_, r)| ask(r))
        };
        let sheet = of("weigh_out").expect("a batch has a list");
        let Some(list) = outcome(&sheet) else { continue };
        let card = of("card").expect("a recipe has a card");
        let link = of("link").expect("a recipe has a link");
        let opened = ask(json!({"open_link": {"text": link["ok"]["link"]}}));
        let pieces: u32 = told.classes.iter().map(|c| c.count).sum();
        let linked = ask(json!({"card": {
            "recipe": opened["ok"]["recipe"], "weight": format!("{} g", told.green()), "pieces": pieces,
            "settings": settings(&told),
        }}));
        // A card knows of no thickness. By pick-up that may decide what goes in: then it may bless less than the list does.
        let less = told.method == Method::PickUp && outcome(&card) != Some("in_range");
        assert!(
            less || Some(list) == outcome(&card),
            "batch {number}: the card {:?}\n{}",
            outcome(&card),
            sheet["ok"]["verdict"]
        );
        assert_eq!(outcome(&card), outcome(&linked), "batch {number}: the card of the link");
        carded += 1;

        let cure = (planned(&told) * 1000.0).round() / 1000.0;
        if told.method == Method::CoverBrine && cure > 0.0 {
            let bench = ask(bench(&told, cure));
            assert_eq!(
                Some(list),
                outcome(&bench),
                "batch {number}: the bench\n{bench}\n{}",
                sheet["ok"]["verdict"]
            );
            benched += 1;
        }
        if matches!(told.method, Method::Rub | Method::CoverBrine) && cure > 0.0 {
            let text = as_text(&told, cure);
            let read = ask(json!({"read_recipe": {"text": text, "answers": [], "settings": settings(&told)}}));
            assert_eq!(
                Some(list),
                outcome(&read),
                "batch {number}: the text\n{text}{}\n{}",
                read["ok"]["verdict"],
                sheet["ok"]["verdict"]
            );
            texts += 1;
        }
    }
    println!("{carded} cards and links, {texts} texts, {benched} at the bench");
    assert!(
        carded > 100 && texts > 50 && benched > 15,
        "{carded}, {texts}, {benched}"
    );
}
