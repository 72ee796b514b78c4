//! The record of the fire and the chill: a colder reading, a longer warm spell, a later chill never makes a good word
//! appear; and what it passes, a plain table of the published rules passes too.

use cure_reckoner::batch::Batch;
use cure_reckoner::record::{Chill, ClassRecord, ComeUp, Heat, classes};
use cure_reckoner_tests::rub;
use proptest::prelude::*;
use serde_json::{Value, json};

const MIN: i64 = 60_000;
const LIT: i64 = 1_795_600_000_000;

/// Minutes after it was lit, and tenths of a degree Fahrenheit.
type Readings = Vec<(i64, i64)>;

#[derive(Clone, Debug)]
struct Log {
    cut: &'static str,
    at_risk: Option<bool>,
    target: Option<&'static str>,
    until: Option<&'static str>,
    dried: bool,
    /// Over the fire, and after it was taken out.
    over: Readings,
    pulled: Option<i64>,
    out: Readings,
}

impl Log {
    fn batch(&self) -> Batch {
        let read = |(minute, tenths): &(i64, i64)| {
            let temperature = format!("{}.{} °F", tenths / 10, tenths % 10);
            json!({"class": 0, "temperature": temperature, "at": LIT + minute * MIN, "sure": true})
        };
        let readings: Vec<Value> = self.over.iter().chain(&self.out).map(read).collect();
        let mut recipe = rub("6.25 %", "150 ppm", "2.2 %");
        let mut cook = json!({"do": "cook"});
        if let Some(until) = self.until {
            cook["until"] = until.into();
        }
        recipe["steps"] = if self.dried {
            json!([cook, {"do": "dry_out"}])
        } else {
            json!([cook])
        };
        let mut fire = json!({"fan": true, "readings": readings});
        if let Some(at_risk) = self.at_risk {
            fire["at_risk"] = at_risk.into();
        }
        if let Some(target) = self.target {
            fire["target"] = target.into();
        }
        let ticks: Vec<Value> = self
            .pulled
            .iter()
            .map(|at| json!({"of": "pull:0", "at": LIT + at * MIN}))
            .collect();
        serde_json::from_value(json!({
            "tag": "SD", "name": "Trial", "recipe": recipe, "fire": fire, "ticks": ticks,
            "pieces": [{"cut": self.cut, "count": 8, "weight": "900 g", "thickness": "30 mm"}]
        }))
        .expect("a batch")
    }

    fn record(&self, now: i64) -> ClassRecord {
        classes(&self.batch(), LIT + now * MIN).remove(0)
    }

    /// Long after its last reading.
    fn at_last(&self) -> ClassRecord {
        self.record(100_000)
    }

    /// What has to be read, °F: a table of its own, written from the sources.
    fn needed(&self) -> f64 {
        let rule: f64 = match self.cut {
            "fallow-haunch" | "venison-strips" => 160.0,
            _ => 165.0,
        };
        let strips = self.dried || self.cut == "venison-strips";
        let degrees = |text: &str| {
            let number: f64 = text[..text.len() - 4].parse().expect("a number");
            if text.ends_with("°C") {
                number * 1.8 + 32.0
            } else {
                number
            }
        };
        let mut needed = rule;
        if let (160.0, false, Some(false), Some(target)) = (rule, strips, self.at_risk, self.target.map(degrees)) {
            needed = needed.min(target.max(145.0));
        }
        needed.max(self.until.map_or(0.0, degrees))
    }
}

fn up(readings: Vec<(i64, i64)>) -> Readings {
    let mut at = 0;
    readings
        .into_iter()
        .map(|(span, tenths)| {
            at += span;
            (at, tenths)
        })
        .collect()
}

fn logs() -> impl Strategy<Value = Log> {
    let cuts = prop::sample::select(vec![
        "mallard-breast",
        "fallow-haunch",
        "venison-strips",
        "boar-belly",
        "hare-saddle",
    ]);
    let temperature = prop_oneof![1 => 340..420i64, 2 => 420..1300i64, 4 => 1300..1750i64, 3 => 1580..1670i64];
    let over = prop::collection::vec((1..70i64, temperature), 1..12).prop_map(up);
    let chill = prop_oneof![1 => 350..420i64, 2 => 420..700i64, 1 => 700..1400i64];
    let out = prop::collection::vec((1..120i64, chill), 0..8).prop_map(up);
    let target = prop::option::of(prop::sample::select(vec![
        "145 °F", "63 °C", "60 °C", "150 °F", "75 °C",
    ]));
    let until = prop::option::weighted(
        0.3,
        prop::sample::select(vec!["71 °C", "74 °C", "160 °F", "80 °C", "60 °C"]),
    );
    (
        cuts,
        any::<Option<bool>>(),
        target,
        until,
        prop::bool::weighted(0.2),
        over,
        any::<Option<u8>>(),
        out,
    )
        .prop_map(|(cut, at_risk, target, until, dried, over, pulled, out)| {
            let last = over.last().map_or(0, |r| r.0);
            let pulled = pulled.map(|after| last + i64::from(after % 20));
            let out = pulled.map_or_else(Vec::new, |from| out.iter().map(|(at, t)| (from + at, *t)).collect());
            Log {
                cut,
                at_risk,
                target,
                until,
                dried,
                over,
                pulled,
                out,
            }
        })
}

const fn came_up(up: ComeUp) -> bool {
    matches!(up, ComeUp::Fine { .. })
}

/// The same three times as slow: readings within two minutes are one, and here none are.
fn apart(mut log: Log) -> Log {
    for read in log.over.iter_mut().chain(&mut log.out) {
        read.0 *= 3;
    }
    log.pulled = log.pulled.map(|at| at * 3);
    log
}

/// Hours and °F of the options for a home: Food Code 3-501.14(A); FSIS Stabilization Guideline 2021, option 1.
const OPTIONS: [[(f64, f64, f64); 2]; 2] = [
    [(135.0, 70.0, 2.0), (135.0, 41.0, 6.0)],
    [(130.0, 80.0, 1.5), (80.0, 40.0, 5.0)],
];

/// Whether a chill that stays as warm as each reading until the next one is in time: the worst that the readings allow.
fn in_time(readings: &[(f64, f64)]) -> bool {
    let stage = |(start, end, hours): (f64, f64, f64)| {
        let warm = readings.iter().take_while(|r| r.1 > start).last().or(readings.first());
        let cold = readings.iter().rposition(|r| r.1 > end).map_or(0, |i| i + 1);
        match (warm, readings.get(cold)) {
            (Some((from, _)), Some((to, _))) => to - from <= hours * 60.0 + 1e-9,
            _ => false,
        }
    };
    OPTIONS.iter().any(|[one, two]| stage(*one) && stage(*two))
}

proptest! {
    #![proptest_config(super::cases(2_000))]

    /// One reading over the fire made colder, whichever: never hot enough where it was not, nor up in time.
    #[test]
    fn a_colder_reading_makes_nothing_good(log in logs(), at in any::<prop::sample::Index>(), by in 1..600i64) {
        let mut colder = log.clone();
        let place = at.index(colder.over.len());
        colder.over[place].1 = (colder.over[place].1 - by).max(320);
        let (was, is) = (log.at_last(), colder.at_last());
        // Unless the warmer reading showed that two pieces were read, of which the colder one is not known long enough.
        let two = log.over.iter().any(|r| r.1 as f64 / 10.0 >= log.needed() - 0.021) && !matches!(is.heat, Heat::Hot { .. });
        prop_assert!(two || was.heat.enough().is_some() || is.heat.enough().is_none(), "{:?} {:?}", was.heat, is.heat);
        prop_assert!(is.credit <= was.credit);
        // A first reading that is cold makes known what was not.
        if place > 0 {
            prop_assert!(came_up(was.come_up) || !came_up(is.come_up), "{:?} {:?}", was.come_up, is.come_up);
        }
    }

    /// One more reading over the fire, below all that the tables of time give any time for: the same. A warmer one may show
    /// that it was warm for longer than those beside it do alone.
    #[test]
    fn one_more_cold_reading_makes_nothing_good(log in logs(), minute in 0..600i64, tenths in 320..1280i64) {
        let mut more = log.clone();
        let last = log.over.last().map_or(0, |r| r.0);
        more.over.push((minute % (last + 1), tenths));
        more.over.sort_unstable();
        let (was, is) = (log.at_last(), more.at_last());
        prop_assert!(was.heat.enough().is_some() || is.heat.enough().is_none(), "{:?} {:?}", was.heat, is.heat);
    }

    /// Every reading later by so much for each hour: the way up is longer, the chill too.
    #[test]
    fn a_longer_warm_spell_makes_nothing_good(log in logs().prop_map(apart), percent in 101..400i64) {
        let longer = |at: i64| at * percent / 100;
        let mut slow = log.clone();
        for read in slow.over.iter_mut().chain(&mut slow.out) {
            read.0 = longer(read.0);
        }
        slow.pulled = slow.pulled.map(longer);
        let (was, is) = (log.at_last(), slow.at_last());
        prop_assert!(came_up(was.come_up) || !came_up(is.come_up), "{:?} {:?}", was.come_up, is.come_up);
        prop_assert!(matches!(was.chill, Chill::Done { .. }) || !matches!(is.chill, Chill::Done { .. }), "{:?} {:?}", was.chill, is.chill);
    }

    /// The whole chill later, or one reading of it warmer that stays below the start of the last stage: one that passes it
    /// says that the stage began later, and the published rows allow the more time.
    #[test]
    fn a_later_or_warmer_chill_makes_nothing_good(log in logs(), by in 1..300i64, at in any::<prop::sample::Index>(), warmer in 1..600i64) {
        let done = |log: &Log| matches!(log.at_last().chill, Chill::Done { .. });
        let mut late = log.clone();
        for read in &mut late.out {
            read.0 += by;
        }
        prop_assert!(done(&log) || !done(&late));
        let mut warm = log.clone();
        if let Some(read) = (!log.out.is_empty()).then(|| &mut warm.out[at.index(log.out.len())])
            && read.1 <= 700
        {
            read.1 = (read.1 + warmer).min(700);
            prop_assert!(done(&log) || !done(&warm), "{:?} {:?}", log.at_last().chill, warm.at_last().chill);
        }
    }

    /// What is called hot enough was read so by a rule of its own table: of the last piece over the fire, or risen after it;
    /// by the table for time only where nobody is at risk, of birds and red game that are not dried.
    #[test]
    fn hot_enough_is_so_by_the_rules(log in logs()) {
        let record = log.at_last();
        let needed = log.needed();
        // What 160 °F is printed as in Celsius is two hundredths less.
        let enough = |tenths: i64| tenths as f64 / 10.0 >= needed - 0.021;
        let last = log.over.last().expect("readings").1;
        match record.heat {
            Heat::Hot { .. } => {
                let risen = log.out.iter().any(|(at, t)| enough(*t) && at - log.pulled.unwrap_or(0) <= 60);
                prop_assert!(enough(last) || risen && last as f64 / 10.0 >= needed - 15.0, "{needed} {log:?}");
            }
            Heat::ByTable { .. } => {
                prop_assert!(log.at_risk == Some(false) && !log.dried && log.cut != "venison-strips");
                prop_assert!(matches!(log.cut, "mallard-breast" | "fallow-haunch"));
                prop_assert!(last >= 1320, "{last}");
            }
            _ => {
                // And nothing that the last reading of two minutes and more allows is refused.
                let alone = log.over.iter().rev().nth(1).is_none_or(|r| log.over.last().is_some_and(|l| l.0 - r.0 > 2));
                prop_assert!(!(alone && tenths_met(last, needed)), "{needed} {log:?}");
            }
        }
    }

    /// A chill that is called done is in time in the worst case that its readings allow.
    #[test]
    fn a_chill_that_is_done_is_in_time(log in logs()) {
        let record = log.at_last();
        let (Chill::Done { .. }, Some(pulled)) = (record.chill, log.pulled) else { return Ok(()) };
        let hot = log.over.iter().rposition(|r| r.1 >= 1350).unwrap_or(log.over.len() - 1);
        let readings: Vec<(f64, f64)> = log.over[hot..]
            .iter()
            .chain(&log.out)
            .map(|(at, t)| (*at as f64, *t as f64 / 10.0))
            .collect();
        prop_assert!(in_time(&readings), "{pulled} {readings:?}");
    }
}

/// Read in Fahrenheit, by the tenth.
fn tenths_met(tenths: i64, needed: f64) -> bool {
    tenths as f64 / 10.0 >= needed - 1e-9
}

/// 400 chills with a shoulder and a tail, read every 20 to 60 minutes from when they were taken out: no unlawful one is done,
/// and no lawful one is called late.
#[test]
fn simulated_chills() {
    let mut random = 0x2545_f491_4f6c_dd1d_u64;
    let mut unit = || {
        random ^= random << 13;
        random ^= random >> 7;
        random ^= random << 17;
        (random >> 11) as f64 / (1_u64 << 53) as f64
    };
    let (mut lawful, mut done, mut late, mut unlawful, mut passed) = (0, 0, 0, 0, 0);
    while lawful < 200 || unlawful < 200 {
        let (cold, rate, lag) = (33.0 + 5.0 * unit(), 20.0 + 90.0 * unit(), 1.0 + 0.4 * unit());
        let middle = |minute: f64| 34.0_f64.max(cold + (166.0 - cold) * (lag * (-minute / rate).exp()).min(1.0));
        let until = |f: f64| {
            (0..6000)
                .map(f64::from)
                .find(|m| middle(*m) <= f)
                .unwrap_or(f64::INFINITY)
        };
        let keeps = OPTIONS.iter().any(|stages| {
            let each = stages
                .iter()
                .all(|(start, end, hours)| until(*end) - until(*start) <= hours * 60.0);
            each && until(stages[1].1) - until(stages[0].0) <= (stages[0].2 + stages[1].2) * 60.0
        });
        if keeps && lawful >= 200 || !keeps && unlawful >= 200 {
            continue;
        }
        let every = 20.0 + 40.0 * unit();
        let out = (1..60).map(|i| f64::from(i) * every).take_while(|m| *m < 1500.0);
        let log = Log {
            cut: "mallard-breast",
            at_risk: None,
            target: None,
            until: None,
            dried: false,
            over: vec![(0, 380), (60, 1200), (100, 1660)],
            pulled: Some(100),
            // A reading is rounded to the tenth, upwards: the thermometer itself is right here.
            out: out
                .map(|m| (100 + m as i64, (middle(m.floor()) * 10.0).ceil() as i64))
                .collect(),
        };
        let chill = log.record(3000).chill;
        if keeps {
            lawful += 1;
            done += u32::from(matches!(chill, Chill::Done { .. }));
            late += u32::from(matches!(chill, Chill::Late { .. }));
        } else {
            unlawful += 1;
            passed += u32::from(matches!(chill, Chill::Done { .. }));
        }
    }
    println!("lawful: {done} of {lawful} done, {late} called late; unlawful: {passed} of {unlawful} done");
    assert_eq!((passed, late), (0, 0));
    assert!(done >= 100, "{done}");
}
