//! A batch as the door's requests, in the text a person types.

use crate::told::{Agent, Amount, DAY, Method, Ms, Own, Put, Reading, Seen, Told};
use serde_json::{Map, Value, json};

fn grams(g: f64) -> String {
    format!("{g} g")
}

fn percent(p: f64) -> String {
    format!("{} %", (p * 1e4).round() / 1e4)
}

fn amount(amount: Amount) -> String {
    match amount {
        Amount::Grams(g) => grams(g),
        Amount::Teaspoons(n) => format!("{n} tsp"),
        Amount::Tablespoons(n) => format!("{n} tbsp"),
    }
}

fn put_in(told: Amount, agent: &Agent) -> Value {
    let mut put = Map::new();
    put.insert("amount".into(), amount(told).into());
    if let Some(nitrite) = agent.nitrite {
        put.insert("nitrite".into(), percent(nitrite).into());
    }
    if agent.nitrate > 0.0 {
        put.insert("nitrate".into(), percent(agent.nitrate).into());
    }
    put.into()
}

/// The step that packs it up; the rinse is the first, the fire the second.
pub fn pack_step(told: &Told) -> usize {
    if told.jerky { 5 } else { 4 }
}

pub fn recipe(told: &Told) -> Value {
    let mut lines = Vec::new();
    if told.method.brine() {
        lines.push(json!({"item": "water", "share": {"of": "green_weight", "amount": percent(told.water)}}));
        let strength = percent(told.salt / told.water * 100.0);
        lines.push(json!({"item": "salt-sea-fine", "share": {"of": "brine", "amount": strength}}));
    } else {
        lines.push(json!({"item": "salt-sea-fine", "share": {"of": "green_weight", "amount": percent(told.salt)}}));
    }
    if let Own::Plain(name) | Own::Cure(name) = told.own {
        lines.push(json!({"item": "own", "name": name, "share": {"of": "green_weight", "amount": "0.25 %"}}));
    }
    let cure = told.agent.as_ref().map(|a| {
        // What the packet of the recipe says; what went in may have had another.
        let printed = a.nitrite.filter(|n| *n < 20.0).unwrap_or(6.25);
        json!({"item": a.item, "nitrite": percent(printed), "nitrate": percent(a.nitrate), "aim": format!("{} ppm", told.aim)})
    });
    let until = format!("{} °C", told.until);
    let mut steps = vec![
        json!({"do": "cure", "lasts": format!("{} h", told.stay), "at": "3 °C"}),
        json!({"do": "rinse"}),
    ];
    if told.jerky {
        steps.push(json!({"do": "cook", "lasts": "40 min", "at": "135 °C", "until": until}));
        steps.push(json!({"do": "dry_out", "lasts": "6 h", "at": "60 °C"}));
    } else {
        steps.push(json!({"do": "smoke", "lasts": "3 h", "at": "110 °C", "until": until}));
    }
    steps.push(json!({"do": "chill", "lasts": "6 h", "at": "3 °C"}));
    steps.push(json!({"do": "pack"}));
    let mut recipe = json!({
        "name": "Saltmarsh trial", "tag": "ST", "method": told.method.key(),
        "eaten": if told.hung { "hung_for_months" } else { "cooked" },
        "cures": cure.into_iter().collect::<Vec<_>>(), "lines": lines, "steps": steps,
    });
    if matches!(told.method, Method::PickUp | Method::Pumped) {
        recipe["take"] = percent(told.take).into();
    }
    recipe
}

fn reading(class: usize, r: &Reading) -> Value {
    let unit = if r.fahrenheit { "°F" } else { "°C" };
    json!({"class": class, "temperature": format!("{} {unit}", r.shown), "at": r.at, "struck": r.struck, "sure": r.sure})
}

fn fire(told: &Told) -> Value {
    let each = told.classes.iter().enumerate();
    let mut readings: Vec<_> = each
        .flat_map(|(at, c)| c.readings.iter().map(move |r| (at, r)))
        .collect();
    readings.sort_by_key(|(_, r)| r.at);
    let mut fire = json!({
        "fan": true, "cover": "dry",
        "readings": readings.into_iter().map(|(at, r)| reading(at, r)).collect::<Vec<_>>(),
    });
    if let Some(at_risk) = told.at_risk {
        fire["at_risk"] = at_risk.into();
    }
    if let Some(target) = told.target {
        fire["target"] = format!("{target} °C").into();
    }
    fire
}

fn fridge(told: &Told) -> Vec<Value> {
    let each = told.fridge.iter().map(|(at, seen)| match seen {
        Seen::Read(c) => json!({"at": at, "what": "read", "reads": format!("{c} °C")}),
        Seen::Frozen => json!({"at": at, "what": "frozen"}),
        Seen::Thawed => json!({"at": at, "what": "thawed"}),
        Seen::PowerOff => json!({"at": at, "what": "power_off"}),
        Seen::PowerOn => json!({"at": at, "what": "power_on"}),
    });
    each.collect()
}

fn ticks(told: &Told) -> Vec<Value> {
    let mut ticks = Vec::new();
    let weighed = told.rubbed.map_or(told.now, |at| at - 5 * crate::told::MINUTE);
    if !matches!(told.put, Put::Planned) {
        let cure = match told.put {
            Put::Ticked(g) | Put::Told(Amount::Grams(g)) => g,
            Put::Planned | Put::Told(_) | Put::Silent => 0.0,
        };
        // The salt in the cure counts as salt.
        let strength = told
            .agent
            .as_ref()
            .map_or(0.0, |a| a.nitrite.unwrap_or(0.0) + a.nitrate);
        let salt = told.green() * told.salt / 100.0 - cure * (1.0 - strength / 100.0);
        let in_steps = |g: f64| grams(((g / told.step).round().max(1.0) * told.step * 1000.0).round() / 1000.0);
        let mut weigh = |of: &str, g: f64| ticks.push(json!({"of": of, "at": weighed, "weight": in_steps(g)}));
        if told.method.brine() {
            weigh("line:0", told.green() * told.water / 100.0);
        }
        weigh(if told.method.brine() { "line:1" } else { "line:0" }, salt);
    }
    let mut tick = |of: String, at: Option<Ms>| ticks.extend(at.map(|at| json!({"of": of, "at": at})));
    tick("rub".into(), told.rubbed);
    tick("label".into(), told.rubbed);
    tick("step:1".into(), told.cure_out);
    tick("step:2".into(), told.lit);
    for (at, class) in told.classes.iter().enumerate() {
        tick(format!("pull:{at}"), class.pulled);
    }
    let pulled = told.classes.iter().filter_map(|c| c.pulled).max();
    let all = told.classes.iter().all(|c| c.pulled.is_some());
    tick(format!("step:{}", pack_step(told) - 1), pulled.filter(|_| all));
    tick(format!("step:{}", pack_step(told)), told.packed);
    if let (Put::Ticked(weight), Some(agent)) = (&told.put, &told.agent) {
        let mut tick = json!({"of": "cure:0", "at": weighed, "weight": grams(*weight), "step": grams(told.step)});
        tick["nitrate"] = percent(agent.nitrate).into();
        if let Some(nitrite) = agent.nitrite {
            tick["nitrite"] = percent(nitrite).into();
        }
        ticks.push(tick);
    }
    ticks.sort_by_key(|t| t["at"].as_i64());
    ticks
}

pub fn batch(told: &Told) -> Value {
    let pieces = told.classes.iter().map(|c| {
        let mut piece = json!({"cut": c.cut, "count": c.count, "weight": grams(c.grams), "each": false});
        if let Some(thick) = c.thick {
            piece["thickness"] = format!("{thick} mm").into();
        }
        piece
    });
    let mut batch = json!({
        "tag": "ST", "name": "Saltmarsh trial", "recipe": recipe(told), "pieces": pieces.collect::<Vec<_>>(),
        "killed": "2026-11-24", "ticks": ticks(told), "fridge": fridge(told),
    });
    if told.lit.is_some() {
        batch["fire"] = fire(told);
    }
    if let (Put::Told(how_much), Some(agent)) = (&told.put, &told.agent) {
        batch["put_in"] = put_in(*how_much, agent);
    }
    if let Some((how_much, agent)) = &told.also {
        batch["also"] = put_in(*how_much, agent);
    }
    if let Some(at) = told.thrown_out {
        batch["thrown_out"] = at.into();
    }
    batch
}

pub fn settings(told: &Told) -> Value {
    json!({"units": "metric", "scale_step": grams(told.step), "profile": told.law})
}

/// What is asked of the dose alone; nothing where nothing went in yet.
pub fn check_dose(told: &Told) -> Option<Value> {
    let agent = told.agent.as_ref()?;
    let how_much = match told.put {
        Put::Ticked(g) if g > 0.0 => Amount::Grams(g),
        Put::Told(how_much) => how_much,
        _ => return None,
    };
    // It is told of one cut: of a belly the one with its rind on, whose limit is the lower.
    let cut = told.classes.iter().find(|c| c.rind).unwrap_or(&told.classes[0]).cut;
    let mut ask = json!({
        "method": told.method.key(), "green": grams(told.green()), "cut": cut,
        "put_in": put_in(how_much, agent), "settings": settings(told),
        "eaten": if told.hung { "hung_for_months" } else { "cooked" },
    });
    if told.method.brine() {
        let round = |g: f64| grams((g * 100.0).round() / 100.0);
        ask["water"] = round(told.green() * told.water / 100.0).into();
        let cure = match how_much {
            Amount::Grams(g) => g,
            Amount::Teaspoons(_) | Amount::Tablespoons(_) => 0.0,
        };
        ask["dissolved"] = round((told.green() * told.salt / 100.0 - cure).max(1.0)).into();
    }
    if matches!(told.method, Method::PickUp | Method::Pumped) {
        ask["take"] = percent(told.take).into();
    }
    if told.method == Method::PickUp {
        let thin = told
            .classes
            .iter()
            .map(|c| c.thick)
            .try_fold(f64::INFINITY, |a, t| Some(a.min(t?)));
        if let Some(thin) = thin {
            ask["thickness"] = format!("{thin} mm").into();
        }
        ask["stays"] = format!("{} h", told.stay).into();
    }
    if let Some((how_much, agent)) = &told.also {
        ask["also"] = put_in(*how_much, agent);
    }
    Some(json!({"check_dose": ask}))
}

/// Every request about this batch that may assure something, by its name.
pub fn all(told: &Told) -> Vec<(&'static str, Value)> {
    let (batch, settings, now) = (batch(told), settings(told), told.now);
    let named = json!([{"id": "x", "batch": batch}]);
    let mut asks = vec![
        (
            "standing",
            json!({"standing": {"batch": batch, "settings": settings, "now": now, "frozen": told.frozen, "vacuum": told.vacuum}}),
        ),
        (
            "weigh_out",
            json!({"weigh_out": {"batch": batch, "settings": settings}}),
        ),
        (
            "next",
            json!({"next": {"batches": named, "now": now, "settings": settings}}),
        ),
        (
            "calendar",
            json!({"calendar": {"batches": named, "now": now, "settings": settings}}),
        ),
        (
            "labels",
            json!({"labels": {"batch": batch, "now": now, "frozen": told.frozen, "vacuum": told.vacuum, "settings": settings}}),
        ),
        (
            "card",
            json!({"card": {"recipe": batch["recipe"], "weight": grams(told.green()), "pieces": told.classes.iter().map(|c| c.count).sum::<u32>(), "settings": settings}}),
        ),
        (
            "link",
            json!({"link": {"recipe": batch["recipe"], "base": "https://example.org/"}}),
        ),
    ];
    // Of what is packed nothing is left to plan.
    if told.packed.is_none() {
        let wish = json!({"ready_by": now + 60 * DAY, "rests": [], "room": [4, 2, 2]});
        asks.push((
            "plan_back",
            json!({"plan_back": {"batches": named, "wish": wish, "now": now, "settings": settings}}),
        ));
    }
    // A pack from its labels. Whether it is under vacuum its row does not know: the label had the shorter date.
    if let (Some(at), false) = (told.packed, told.vacuum) {
        let pack = json!({"item": "pack", "name": "Saltmarsh trial", "weight": "300 g", "batch": "x", "at": at,
            "frozen": told.frozen, "until": at + 3 * DAY});
        let stock = json!([{"id": "p", "stock": pack}]);
        asks.push((
            "larder",
            json!({"larder": {"stock": stock, "batches": named, "now": now, "settings": settings}}),
        ));
    }
    asks.extend(check_dose(told).map(|ask| ("check_dose", ask)));
    if told.lit.is_some() {
        asks.push((
            "fire_log",
            json!({"fire_log": {"batch": batch, "now": now, "settings": settings}}),
        ));
    }
    asks
}
