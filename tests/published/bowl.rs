//! What the scale shows while a list is weighed into one bowl: by sums of its own.

use cure_reckoner_tests::{batch, exact, ok, rub, settings, weigh_out};
use serde_json::{Value, json};

/// Grams of a figure.
fn grams(figure: &Value) -> f64 {
    let num = figure["num"].as_str().expect("a figure").replace('\u{202f}', "");
    num.parse().expect("a number")
}

/// Every order of so many things.
fn orders(of: usize) -> Vec<Vec<usize>> {
    let mut all = vec![Vec::new()];
    for next in 0..of {
        let with = |order: &Vec<usize>| -> Vec<Vec<usize>> {
            let put = |at: usize| {
                let mut order = order.clone();
                order.insert(at, next);
                order
            };
            (0..=order.len()).map(put).collect()
        };
        all = all.iter().flat_map(with).collect();
    }
    all
}

/// The demo batch has five lines. In whatever order they are ticked, after each tick the line that went in last shows what
/// lies in the bowl, those before it what they showed then, and those to come what lies there with them, one after another.
#[test]
fn the_scale_shows_what_is_in_the_bowl_in_all_120_orders() {
    for step in ["0.1 g", "1 g"] {
        let mut demo = ok(&json!({"starters": {}}))["demo"].clone();
        let fresh = weigh_out(&demo, step);
        assert_eq!(fresh["bowl"].as_array().map(Vec::len), Some(5));
        let orders = orders(5);
        assert_eq!(orders.len(), 120);
        for order in orders {
            let (mut in_bowl, mut shown): (f64, Vec<(usize, f64)>) = (0.0, Vec::new());
            let mut sheet = fresh.clone();
            demo["ticks"] = json!([]);
            for (n, line) in order.iter().enumerate() {
                // As it is put in it is what the sheet asks for by then: the salt follows the cure.
                let asked = sheet["bowl"][*line].clone();
                let mut tick = asked["tick"].clone();
                tick["at"] = json!(1000 + i64::try_from(n).expect("few"));
                demo["ticks"].as_array_mut().expect("ticks").push(tick);
                in_bowl += grams(&asked["add"]);
                shown.push((*line, in_bowl));
                sheet = weigh_out(&demo, step);
                let reads = |line: usize| grams(&sheet["bowl"][line]["reads"]);
                for (line, then) in &shown {
                    assert!((reads(*line) - then).abs() < 0.001, "{order:?} after {n}: {line}");
                }
                let mut ahead = in_bowl;
                for line in (0..5).filter(|line| !order[..=n].contains(line)) {
                    ahead += grams(&sheet["bowl"][line]["add"]);
                    assert!(
                        (reads(line) - ahead).abs() < 0.001,
                        "{order:?} after {n}: {line} to come"
                    );
                }
                assert!(
                    (grams(&sheet["bowl_total"]) - ahead).abs() < 0.001,
                    "{order:?} after {n}"
                );
            }
        }
    }
}

/// Two ticks of one moment, as a fast hand sets them: the second stands on the first.
#[test]
fn two_ticks_of_one_moment_stay_in_their_order() {
    let mut demo = ok(&json!({"starters": {}}))["demo"].clone();
    let list = weigh_out(&demo, "0.1 g")["bowl"].as_array().expect("lines").clone();
    let tick = |line: usize| {
        let mut tick = list[line]["tick"].clone();
        tick["at"] = json!(1000);
        tick
    };
    demo["ticks"] = json!([tick(2), tick(0)]);
    let sheet = weigh_out(&demo, "0.1 g");
    let reads = |line: usize| grams(&sheet["bowl"][line]["reads"]);
    assert!((reads(2) - grams(&list[2]["add"])).abs() < 0.001);
    assert!((reads(0) - grams(&list[2]["add"]) - grams(&list[0]["add"])).abs() < 0.001);
}

/// The water of a brine stands in a vessel of its own: ticked or not, it is never on the bowl's scale.
#[test]
fn the_water_is_not_in_the_bowl() {
    let mut brined = json!({
        "tag": "BR", "name": "Brined",
        "recipe": {
            "name": "Brine", "tag": "BR", "method": "cover_brine",
            "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "120 ppm"}],
            "lines": [
                {"item": "water", "share": {"of": "green_weight", "amount": "50 %"}},
                {"item": "salt-sea-fine", "share": {"of": "meat_and_water", "amount": "2.5 %"}}
            ]
        },
        "pieces": [{"cut": "mallard-breast", "count": 10, "weight": "1 kg"}]
    });
    let first = weigh_out(&brined, "0.1 g");
    assert_eq!(first["vessel"][0]["id"], "line:0");
    let mut tick = first["vessel"][0]["tick"].clone();
    tick["at"] = json!(1000);
    brined["ticks"] = json!([tick]);
    let then = ok(&json!({"weigh_out": {"batch": brined, "settings": settings("0.1 g")}}));
    assert_eq!(then["bowl"][0]["reads"], first["bowl"][0]["reads"]);
    assert_eq!(then["bowl_total"], first["bowl_total"]);
    assert!(then["vessel"][0]["reads"].is_null());
}

/// `I put in something else` in the place of a cure that is ticked: the tick counts no more, not in the dose and not on the
/// scale. Without that word both count, as they would where both went in.
#[test]
fn something_else_replaces_what_it_says() {
    let mut one = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 16, "1480 g");
    one["ticks"] = json!([
        {"of": "cure:0", "at": 1000, "weight": "3.5 g", "nitrite": "6.25 %", "nitrate": "0 %", "step": "0.1 g"},
        {"of": "line:0", "at": 2000, "weight": "29.3 g"}
    ]);
    let typical = |one: &Value| exact(&weigh_out(one, "0.1 g")["verdict"], "nitrite")[1];
    let by_hand = |grams: f64| grams * 62_500.0 / 1480.0;
    one["put_in"] = json!({"amount": "3 g", "nitrite": "6.25 %"});
    assert!((typical(&one) - by_hand(6.5)).abs() < 0.001);
    one["put_in"]["instead"] = json!(true);
    assert!((typical(&one) - by_hand(3.0)).abs() < 0.001);
    let sheet = weigh_out(&one, "0.1 g");
    assert_eq!(sheet["bowl"][0]["id"], "line:0");
    assert_eq!(sheet["bowl"][0]["reads"]["text"], "29.3 g");
    assert_eq!(sheet["bowl_total"]["text"], "29.3 g");
}

/// Mince for sausage. The limit is counted over the meat block, meat and fat (FSIS Directive 7620.3, 1995, p. 15, quoted);
/// the least over all that goes in, ice water and spice too.
#[test]
fn fat_and_water_are_part_of_what_mince_is_counted_over() {
    let mince = json!({
        "name": "Sausage", "tag": "SA", "method": "ground",
        "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "150 ppm"}],
        "lines": [
            {"item": "salt-sea-fine", "share": {"of": "green_weight", "amount": "2 %"}},
            {"item": "fat-pork", "share": {"of": "green_weight", "amount": "30 %"}},
            {"item": "water", "share": {"of": "green_weight", "amount": "10 %"}}
        ]
    });
    let sheet = weigh_out(&batch(&mince, 1, "2000 g"), "0.01 g");
    // 150 ppm on 2000 g of meat and 600 of fat.
    let cure = grams(&sheet["bowl"][0]["add"]);
    assert!((cure - 2600.0 * 150.0 / 62_500.0).abs() < 0.01, "{cure}");
    let ids = |list: &str| -> Vec<Value> {
        let lines = sheet[list].as_array().expect("lines").iter();
        lines.map(|line| line["id"].clone()).collect()
    };
    assert_eq!(
        ids("vessel"),
        ["line:2", "line:1"],
        "water and fat in vessels of their own"
    );
    assert_eq!(ids("bowl"), ["cure:0", "line:0"]);
    let salt = grams(&sheet["bowl"][1]["add"]);
    let [low, typical, high] = exact(&sheet["verdict"], "nitrite");
    let nitrite = cure * 62_500.0;
    assert!((typical - nitrite / 2600.0).abs() < 0.01, "{typical}");
    assert!((high - nitrite / 2600.0).abs() < 0.5, "{high}");
    assert!((low - nitrite / (2800.0 + salt + cure)).abs() < 0.5, "{low}");
    // Chopped meat in a plant: 156 ppm on the meat block (9 CFR 424.21(c), quoted). Water does not make room for more.
    let mut settings = settings("0.01 g");
    settings["profile"] = json!("us-plant");
    let mut strong = mince.clone();
    strong["cures"][0]["aim"] = json!("165 ppm");
    let over = ok(&json!({"weigh_out": {"batch": batch(&strong, 1, "2000 g"), "settings": settings}}));
    assert_eq!(over["verdict"]["outcome"], "over");
    // And much water takes it under the least.
    strong["cures"][0]["aim"] = json!("130 ppm");
    strong["lines"][2]["share"]["amount"] = json!("30 %");
    let thin = weigh_out(&batch(&strong, 1, "2000 g"), "0.01 g");
    assert_eq!(thin["verdict"]["outcome"], "too_little");
}

/// A rub with 2.2 % of salt turned into a pump of 10 %: as much salt comes into the meat as the pickle can carry, and of
/// pickle there is what is pumped and a fifth more.
#[test]
fn a_pump_has_a_brine_for_the_meat() {
    let turned = |recipe: &Value, method: &str| -> Value {
        ok(&json!({"turned": {"recipe": recipe, "method": method}}))["recipe"].clone()
    };
    let mild = rub("6.25 %", "150 ppm", "1.8 %");
    let pump = turned(&mild, "pumped");
    assert_eq!((&pump["method"], &pump["take"]), (&json!("pumped"), &json!("10 %")));
    let sheet = weigh_out(&batch(&pump, 1, "2000 g"), "0.1 g");
    let (cure, salt) = (grams(&sheet["bowl"][0]["add"]), grams(&sheet["bowl"][1]["add"]));
    let water = grams(&sheet["vessel"][0]["add"]);
    let pickle = cure + salt + water;
    // 200 g go in; 240 are made.
    assert!((240.0..252.0).contains(&pickle), "{pickle}");
    // Of each 100 g of the pickle 10 go into 100 g of meat: 1.8 % by hand, the salt of the cure with it.
    let comes = (salt + cure * 0.9375) / pickle * 10.0;
    assert!((comes - 1.8).abs() < 0.03, "{comes}");
    assert_eq!(sheet["verdict"]["outcome"], "in_range", "{}", sheet["verdict"]["says"]);
    let told: f64 = sheet["salt"]["comes"]["num"]
        .as_str()
        .expect("salt")
        .parse()
        .expect("a number");
    assert!((told - comes).abs() < 0.03, "{told} and {comes}");
    assert_eq!(
        (&sheet["salt"]["is_short"], &sheet["salt"]["least"]["text"]),
        (&json!(false), &json!("1.5 %"))
    );
    // More than a pickle carries: the strongest that is made of its own accord is a fifth of salt, 2 % of the meat.
    let salty = weigh_out(
        &batch(&turned(&rub("6.25 %", "150 ppm", "3 %"), "pumped"), 1, "2000 g"),
        "0.1 g",
    );
    let told: f64 = salty["salt"]["comes"]["num"]
        .as_str()
        .expect("salt")
        .parse()
        .expect("a number");
    assert!((told - 2.0).abs() < 0.05, "{told}");
    // Salt that counted on the water of a pickle alone is short, and says so.
    let mut thin = pump.clone();
    thin["lines"][1]["share"]["amount"] = json!("2.2 %");
    assert_eq!(weigh_out(&batch(&thin, 1, "2000 g"), "0.1 g")["salt"]["is_short"], true);
    // There and back is the same rub.
    assert_eq!(turned(&pump, "rub")["lines"], mild["lines"]);
    // Under a cover it counts on meat and water.
    let cover = turned(&mild, "cover_brine");
    assert_eq!(
        cover["lines"][1]["share"],
        json!({"of": "meat_and_water", "amount": "1.8 %"})
    );
    assert!(weigh_out(&batch(&cover, 1, "2000 g"), "0.1 g")["salt"].is_null());
}

/// Under every rule and on every step: where a list is over or under before anything is in, an aim is named that brings it
/// in range on that scale, wherever any weight on it does.
#[test]
fn a_lower_aim_works_under_any_rule_and_on_any_step() {
    let (mut named, mut none) = (0, 0);
    for profile in ["us-home", "us-plant", "ca", "uk", "eu", "anz"] {
        for step in ["5 g", "1 g", "0.1 g", "0.01 g"] {
            for weight in ["400 g", "900 g", "1480 g", "3200 g", "9 kg"] {
                let mut settings = settings(step);
                settings["profile"] = json!(profile);
                let ask = |aim: &str| {
                    let list = batch(&rub("6.25 %", aim, "2.2 %"), 8, weight);
                    ok(&json!({"weigh_out": {"batch": list, "settings": settings}}))["verdict"].clone()
                };
                let over = ask("260 ppm");
                assert_ne!(over["outcome"], "in_range");
                let Some(aim) = over["aim"].as_str() else {
                    // By hand: no multiple of the step is in range, half a step either way.
                    let (step, green): (f64, f64) = (
                        step.trim_end_matches(" g").parse().expect("a step"),
                        weight.split(' ').next().expect("grams").parse::<f64>().expect("grams")
                            * if weight.ends_with("kg") { 1000.0 } else { 1.0 },
                    );
                    let (least, limit) = (
                        over["least"].as_f64().expect("a least"),
                        over["limit"].as_f64().expect("a limit"),
                    );
                    let fits = (1..2000).map(|n| f64::from(n) * step).any(|grams| {
                        let ppm = |grams: f64, green: f64| grams * 62_500.0 / green;
                        ppm(grams - step / 2.0, green + step / 2.0) > least + 1.0
                            && ppm(grams + step / 2.0, green - step / 2.0) < limit - 1.0
                    });
                    assert!(!fits || over["outcome"] != "over", "{profile} {step} {weight}: {over}");
                    none += 1;
                    continue;
                };
                assert_eq!(ask(aim)["outcome"], "in_range", "{profile} {step} {weight}: {aim}");
                named += 1;
            }
        }
    }
    println!("{named} with an aim, {none} that no weight on the scale brings in range");
    assert!(named > 60);
}

/// A coarse scale offers the premix wherever the recipe has salt for one that it can weigh: by hand, one part in 10, 5 or 3
/// whose salt is at most a tenth more than is aimed at, and of which a step is at most 15 %.
#[test]
fn a_coarse_scale_offers_the_premix() {
    let mut offered = 0;
    for (step, weight) in [(1.0, 500.0), (1.0, 900.0), (5.0, 3000.0), (5.0, 4000.0)] {
        for salt in [0.8, 1.2, 1.8, 2.2, 3.0] {
            let list = batch(
                &rub("6.25 %", "150 ppm", &format!("{salt} %")),
                8,
                &format!("{weight} g"),
            );
            let sheet = weigh_out(&list, &format!("{step} g"));
            let neat = weight * 150.0 / 62_500.0;
            let suits = |parts: f64| neat * parts - neat * 0.0625 <= weight * salt / 100.0 * 1.1;
            let thinnest = [10.0, 5.0, 3.0].into_iter().find(|parts| suits(*parts));
            let fine = thinnest.is_some_and(|parts| step / (neat * parts) <= 0.15);
            assert!(!sheet["coarse"].is_null());
            assert_eq!(
                sheet["coarse"]["premix_parts"].is_u64(),
                fine,
                "{step} g {weight} g {salt} %"
            );
            offered += u32::from(fine);
        }
    }
    assert!(offered >= 12, "{offered} of 20");
}

/// Where the sizes are bagged apart each bag has a list of its own, which is the list of a batch of its pieces.
#[test]
fn the_list_splits_by_bag() {
    let mut both = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 8, "900 g");
    both["pieces"] = json!([
        {"cut": "mallard-breast", "count": 8, "weight": "900 g"},
        {"cut": "teal-breast", "count": 10, "weight": "340 g", "bag": 1},
        {"cut": "mallard-breast", "count": 2, "weight": "200 g"}
    ]);
    let sheet = weigh_out(&both, "0.1 g");
    let bags = sheet["bags"].as_array().expect("bags");
    assert_eq!(bags.len(), 2);
    for (bag, places) in bags.iter().zip([vec![0, 2], vec![1]]) {
        assert_eq!(bag["classes"], json!(places));
        let mut alone = both.clone();
        let pieces: Vec<Value> = places.iter().map(|at| both["pieces"][*at].clone()).collect();
        alone["pieces"] = json!(pieces);
        let alone = weigh_out(&alone, "0.1 g");
        assert_eq!(bag["green"], alone["green"]);
        assert_eq!(bag["nitrite"], alone["verdict"]["nitrite"]);
        for (line, own) in bag["bowl"]
            .as_array()
            .expect("lines")
            .iter()
            .zip(alone["bowl"].as_array().expect("lines"))
        {
            assert_eq!(
                (&line["id"], &line["add"], &line["reads"]),
                (&own["id"], &own["add"], &own["reads"])
            );
        }
        assert_eq!(bag["outcome"], "in_range");
    }
    // 900 + 200 g and 340 g at 150 ppm, rounded down to a tenth.
    let cure = |bag: usize| grams(&bags[bag]["bowl"][0]["add"]);
    assert!(
        (cure(0) - 2.6).abs() < 1e-9 && (cure(1) - 0.8).abs() < 1e-9,
        "{} and {}",
        cure(0),
        cure(1)
    );
    // All in one bag: one list.
    for piece in both["pieces"].as_array_mut().expect("pieces") {
        piece.as_object_mut().expect("a piece").remove("bag");
    }
    assert_eq!(weigh_out(&both, "0.1 g")["bags"], json!([]));
}

/// A haunch of 3200 g with its bone: of a deer's 15 to 26 % are bone, likely 20 (memory). The dose is counted over the rest.
#[test]
fn bones_are_no_meat() {
    let mut haunch = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 1, "3200 g");
    haunch["pieces"] = json!([{"cut": "fallow-haunch", "count": 1, "weight": "3200 g", "bone_in": true}]);
    let sheet = weigh_out(&haunch, "0.1 g");
    assert_eq!(sheet["green"]["text"], "2560 g");
    assert!(
        (grams(&sheet["bowl"][0]["add"]) - 6.1).abs() < 1e-9,
        "2560 g at 150 ppm"
    );
    let [low, _, high] = exact(&sheet["verdict"], "nitrite");
    let ppm = |meat: f64| 6.1 * 62_500.0 / meat;
    assert!(
        (low - ppm(3200.0 * 0.85)).abs() < 1.5 && (high - ppm(3200.0 * 0.74)).abs() < 1.5,
        "{low} {high}"
    );
    // Of a hare it is published: 5.11 to 6.23 times as much muscle as bone.
    let hare = ok(&json!({"tables": {}}))["cuts"]
        .as_array()
        .expect("cuts")
        .iter()
        .find(|c| c["key"] == "hare-legs")
        .cloned();
    let bone = hare.expect("hare")["bone"].clone();
    for (at, ratio) in [(0, 6.23), (1, 5.6), (2, 5.11)] {
        assert!((bone[at].as_f64().expect("bone") - 1000.0 / (1.0 + ratio)).abs() < 1.0);
    }
    // Boned out it is all meat.
    haunch["pieces"][0]["bone_in"] = json!(false);
    assert_eq!(weigh_out(&haunch, "0.1 g")["green"]["text"], "3200 g");
}

/// All together in range, and a bag of its own too small for the scale: the batch has no word of assurance for it.
#[test]
fn a_bag_that_is_off_is_a_doubt_of_the_batch() {
    let mut both = batch(&rub("6.25 %", "150 ppm", "2.2 %"), 1, "1480 g");
    both["pieces"] = json!([
        {"cut": "mallard-breast", "count": 12, "weight": "1400 g", "thickness": "25 mm"},
        {"cut": "teal-breast", "count": 2, "weight": "60 g", "thickness": "15 mm", "bag": 1},
    ]);
    let kinds = |batch: &Value| {
        let standing = ok(&json!({"standing": {"batch": batch, "now": 0, "settings": settings("0.1 g")}}));
        let doubts = standing["doubts"].as_array().expect("doubts").clone();
        let of = |d: &Value| (d["kind"].as_str().map(str::to_owned), d["class"].as_u64());
        doubts.iter().map(of).collect::<Vec<_>>()
    };
    let low = (Some("dose_may_be_low".to_owned()), Some(1));
    assert!(kinds(&both).contains(&low), "{:?}", kinds(&both));
    assert_eq!(weigh_out(&both, "0.1 g")["verdict"]["outcome"], "in_range");
    // By a spoon over all of it, nobody knows what each bag got.
    let mut spooned = both.clone();
    spooned["put_in"] = json!({"amount": "3.5 g", "nitrite": "6.25 %"});
    assert!(
        kinds(&spooned)
            .iter()
            .any(|(kind, _)| kind.as_deref() == Some("dose_unknown"))
    );
    // In one bag there is nothing to doubt.
    both["pieces"][1].as_object_mut().expect("a piece").remove("bag");
    assert!(
        !kinds(&both)
            .iter()
            .any(|(kind, _)| kind.as_ref().is_some_and(|k| k.starts_with("dose_")))
    );
}
