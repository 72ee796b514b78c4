//! Lines that others wrote down with the right reading, before they had seen this reader: what comes of each.
//!
//! Of a line's meat the kind, the weight and the number count, not what the animal is called; of all else the name too.

use cure_reckoner_tests::{ok, settings};
use serde_json::{Value, json};
use std::collections::BTreeSet;

/// What came of a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Came {
    /// Read as it is meant; asked where a careful reader asks.
    Right,
    /// Asked for something that nobody has to ask.
    Needless,
    /// Not read, and said so.
    GivenUp,
    /// Read as something else, and nothing said.
    Wrong,
}

/// The settings of a country.
pub fn of_country(country: &str) -> Value {
    let mut here = settings("0.1 g");
    let (units, profile) = match country {
        "us" => ("us", "us-home"),
        "gb" => ("metric", "uk"),
        "au" => ("metric", "anz"),
        _ => ("metric", "ca"),
    };
    here["units"] = json!(units);
    here["profile"] = json!(profile);
    here
}

fn texts(value: &Value) -> Vec<String> {
    let list = value.as_array().map(Vec::as_slice).unwrap_or_default();
    list.iter().filter_map(|t| t.as_str().map(str::to_owned)).collect()
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= b.abs() * 0.001 + 1e-9
}

fn numbers(value: &Value) -> Vec<f64> {
    texts(value).iter().filter_map(|n| n.parse().ok()).collect()
}

/// Words of a name, without those of preparation, number and case.
fn words(name: &str) -> BTreeSet<String> {
    const PLAIN: [&str; 24] = [
        "fresh", "dried", "ground", "whole", "of", "the", "crushed", "dry", "dark", "light", "soft", "white", "black",
        "wild", "good", "cracked", "powdered", "streaky", "table", "fine", "golden", "plain", "common", "that",
    ];
    let all: Vec<String> = cure_reckoner::pantry::folded(name)
        .split(|c: char| !c.is_alphanumeric())
        .filter(|w| !w.is_empty())
        .map(|w| {
            w.strip_suffix("ies")
                .map_or_else(|| w.trim_end_matches('s').to_owned(), |s| format!("{s}y"))
        })
        .collect();
    let bare: BTreeSet<String> = all.iter().filter(|w| !PLAIN.contains(&w.as_str())).cloned().collect();
    if bare.is_empty() {
        all.into_iter().collect()
    } else {
        bare
    }
}

fn same_name(line: &Value, right: &Value) -> bool {
    let mut wanted = texts(&right["name_also"]);
    wanted.extend(right["name"].as_str().map(str::to_owned));
    let thing = &line["thing"];
    let mut ours: Vec<String> = [&line["name"], &thing["name"]]
        .iter()
        .filter_map(|name| name.as_str().map(str::to_owned))
        .collect();
    let row = |key: &str| cure_reckoner::pantry::ingredient(key).map_or(&[][..], |i| i.names);
    let named = [&line["item"], &thing["row"]["item"]].map(|key| row(key.as_str().unwrap_or_default()));
    ours.extend(named.concat().into_iter().map(str::to_owned));
    let open = texts(&thing["items"]);
    ours.push(
        open.iter()
            .filter_map(|key| row(key).first().copied())
            .collect::<Vec<_>>()
            .join("; "),
    );
    // Not settled between several: the names of all of them stand there.
    wanted.iter().any(|w| {
        let w = words(w);
        ours.iter().any(|o| {
            let o = words(o);
            !w.is_empty() && (w.is_subset(&o) || (!o.is_empty() && o.is_subset(&w)))
        })
    })
}

/// A unit as the answers call it.
fn unit(name: &str) -> &str {
    match name {
        "%" | "percent" => "percent",
        "drachm" => "dram",
        "ppm" => "ppm",
        "leaf" | "berry" | "piece" => "each",
        "t" => "tsp",
        "T" | "EL" | "cucharada" => "tbsp",
        "TL" | "cucharadita" => "tsp",
        other => other,
    }
}

fn same_amount(line: &Value, right: &Value) -> bool {
    let ours = numbers(&line["amount"]);
    let (Some(low), Some(high)) = (right["amount_low"].as_f64(), right["amount_high"].as_f64()) else {
        // What it can mean is asked; a vague word has no number.
        return right["choices"].is_array()
            || right["candidates"].is_array()
            || right["vague"] == true
            || ours.is_empty();
    };
    let [mine_low, mine_high] = ours.as_slice() else {
        // "Knob of butter" has one, or none.
        return right["amount_also"]
            .as_array()
            .is_some_and(|a| a.contains(&Value::Null));
    };
    let (mine, wanted) = (unit(line["unit"].as_str().unwrap_or_default()), right["unit"].as_str());
    let mut also = texts(&right["unit_also"]);
    also.extend(right["unit_also"].as_str().map(str::to_owned));
    // A stick of butter has its grams where they are known.
    let may_lack = right["grams_may_lack"] == true;
    let unit = wanted.is_none_or(|w| unit(w) == mine) || also.iter().any(|a| unit(a) == mine);
    // A spoon with its grams in brackets is both.
    let spoon = ["tsp", "tbsp", "cup"].contains(&mine) && unit && near(*mine_low, low) && near(*mine_high, high);
    if let (Some(a), Some(b), false) = (
        right["grams_low"].as_f64(),
        right["grams_high"].as_f64(),
        may_lack || spoon,
    ) {
        let grams = |n: f64| match mine {
            "g" => Some(n),
            "mg" => Some(n / 1000.0),
            "kg" => Some(n * 1000.0),
            "oz" => Some(n * 28.349_523_125),
            "lb" => Some(n * 453.592_37),
            "stone" => Some(n * 6_350.293_18),
            _ => None,
        };
        let (from, to) = (grams(*mine_low), grams(*mine_high));
        let same = |mine: Option<f64>, wanted: f64, also: &str| {
            mine.is_some_and(|g| near(g, wanted) || figures(&right[also]).iter().any(|w| near(g, *w)))
        };
        return same(from, a, "grams_also") && (same(to, b, "grams_high_also") || same(to, b, "grams_also"));
    }
    let same =
        |wanted: f64, end: f64| near(end, wanted) || figures(&right["amount_also"]).iter().any(|w| near(end, *w));
    unit && same(low, *mine_low) && same(high, *mine_high)
}

/// The figures of a list.
fn figures(list: &Value) -> Vec<f64> {
    let list = list.as_array().map(Vec::as_slice).unwrap_or_default();
    list.iter().filter_map(Value::as_f64).collect()
}

fn same_base(line: &Value, right: &Value, meat: &Value) -> bool {
    // The fifth writer says it flat.
    let flat = json!({"amount_low": right["per_amount"], "unit": right["per_unit"]});
    let said = if right["per_amount"].is_null() {
        &right["per"]
    } else {
        &flat
    };
    // "For 25 lb of trim: 8 oz salt" says of the whole recipe what it is for.
    let whole = (
        meat["num"].as_str().and_then(|n| n.parse::<f64>().ok()),
        meat["unit"].as_str(),
    );
    if let (Some(amount), Some(unit), true) = (whole.0, whole.1, line["per"].is_null())
        && said["amount_low"].as_f64().is_some_and(|wanted| near(amount, wanted))
        && said["unit"] == unit
    {
        return true;
    }
    let Some(low) = said["amount_low"].as_f64() else {
        // A per cent is of what it is of; it has no base of its own.
        return line["per"].is_null() || !said.is_null();
    };
    let ours = line["per"].as_array().map(Vec::as_slice).unwrap_or_default();
    let [mine, _, unit] = ours else { return false };
    let mine: f64 = mine.as_str().and_then(|n| n.parse().ok()).unwrap_or(f64::NAN);
    near(mine, low) && unit == &said["unit"]
}

fn same_strength(line: &Value, right: &Value) -> bool {
    let ours: Option<f64> = line["strength"].as_str().and_then(|n| n.parse().ok());
    match (right["strength_percent"].as_f64(), ours) {
        (Some(wanted), Some(ours)) => near(ours, wanted),
        // What says nothing of its strength has it by its row.
        (Some(wanted), None) => {
            let item = line["item"].as_str().unwrap_or_default();
            let row = cure_reckoner::pantry::ingredient(item).and_then(|i| i.nitrite.parse().ok());
            let none = right["strength_also"]
                .as_array()
                .is_some_and(|a| a.contains(&Value::Null));
            none || near(wanted, 100.0) && item.starts_with("pure-") || row.is_some_and(|n: f64| near(n, wanted))
        }
        (None, ours) => ours.is_none_or(|n| figures(&right["strength_also"]).iter().any(|w| near(n, *w))),
    }
}

/// What is asked of the lines, as the topics of the answers.
fn topics(questions: &[Value]) -> Vec<(String, String)> {
    let topic = |q: &Value| {
        let key = q["key"].as_str().unwrap_or_default();
        let (kind, about) = key.split_once(':').unwrap_or((key, ""));
        let choices = q["choices"].to_string().to_lowercase();
        let topic = match kind {
            "agent" | "strength" | "grams" => "cure",
            "item" if choices.contains("cure-") || choices.contains("pure-") => "cure",
            "item" if choices.contains("salt-") => "salt kind",
            "item" => "item",
            "unit" if choices.contains("tablespoon") => "T or t",
            "unit" => "unit",
            "or" => "alternatives",
            "number" => "means",
            "base" => "hundredweight",
            "unused" => "amount",
            other => other,
        };
        (topic.to_owned(), about.to_owned())
    };
    let whole = ["meat", "method", "water", "take"];
    questions
        .iter()
        .map(topic)
        .filter(|(t, _)| !whole.contains(&t.as_str()))
        .collect()
}

fn allows(right: &Value, topic: &str) -> bool {
    let mut said = texts(&right["ask_about"]);
    said.extend(texts(&right["may_ask"]));
    for part in ["parts", "things", "alternatives"] {
        for one in right[part].as_array().map(Vec::as_slice).unwrap_or_default() {
            if allows(one, topic) {
                return true;
            }
        }
    }
    let said = said.join(" ").to_lowercase();
    // The fifth writer says that it is asked, and not what.
    let untold = right["ask"] == true && said.is_empty();
    if untold || said.contains("anything") {
        return true;
    }
    match topic {
        "cure" => {
            right["may_be_cure"] == true
                || right["may_be_cure"] == "either"
                || said.contains("cure")
                || said.contains("strength")
        }
        // Two of the writers want it asked of a spoon of kosher salt, of which one maker's weighs half as much again as
        // another's; a third does not. Like the pepper below it is a question of the weight.
        "salt kind" => {
            said.contains("salt") || ["tsp", "tbsp", "cup"].contains(&right["unit"].as_str().unwrap_or_default())
        }
        "T or t" => said.contains("t or t") || said.contains("teaspoon or tablespoon"),
        "amount" => ["amount", "each or together", "each or in all"]
            .iter()
            .any(|w| said.contains(w)),
        "unit" => [
            "which unit",
            "cup or clove",
            "size",
            "gallon",
            "hundredweight",
            "fluid",
            "pint",
            "oz",
        ]
        .iter()
        .any(|w| said.contains(w)),
        "hundredweight" => said.contains("hundredweight"),
        "means" => ["means", "unreadable number", "decimal or thousands"]
            .iter()
            .any(|w| said.contains(w)),
        // Which of two cures is an alternative by another key.
        "alternatives" => said.contains("alternatives") || said.contains("which cure"),
        "of" => said.contains("per cent"),
        // Which pepper, for a spoon of it, is a question of the weight and not of the reading.
        "item" | "pack" => true,
        other => said.contains(other),
    }
}

fn minutes(right: &Value, key: &str) -> Option<f64> {
    right[key].as_f64().map(|h| h * 60.0)
}

/// A deed as it is read beside one as it is meant.
pub fn same_step(ours: &Value, right: &Value) -> bool {
    let pair = |key: &str| {
        let ends = numbers(&ours[key]);
        (ends.first().copied(), ends.last().copied())
    };
    let alike = |mine: Option<f64>, wanted: Option<f64>, by: f64| match (mine, wanted) {
        (None, None) => true,
        (Some(a), Some(b)) => (a - b).abs() <= by,
        _ => false,
    };
    let (low, high) = pair("minutes");
    // "Overnight" is 8 to 12 hours, or no figure.
    let vague = right["hours_low"].is_null();
    let ends = |key: &str| -> Vec<(Option<f64>, Option<f64>)> {
        let pairs = right[key].as_array().map(Vec::as_slice).unwrap_or_default();
        pairs.iter().map(|p| (p[0].as_f64(), p[1].as_f64())).collect()
    };
    let hours = |m: Option<f64>| m.map(|m| m / 60.0);
    let other_time = ends("hours_also")
        .into_iter()
        .any(|(from, to)| alike(hours(low), from, 0.6) && alike(hours(high), to, 0.6));
    let kept = right["storage"] == true;
    let timed = if kept {
        // A month is 30 to 30.5 days.
        let wanted = minutes(right, "hours_high").unwrap_or_default();
        high.is_some_and(|h| (h - wanted).abs() <= wanted * 0.02)
    } else if vague {
        low.is_none_or(|l| (480.0..=720.0).contains(&l))
    } else {
        alike(low, minutes(right, "hours_low"), 1.0) && alike(high, minutes(right, "hours_high"), 1.0)
    };
    let (cold, warm) = pair("at");
    let wanted = (right["temp_c_low"].as_f64(), right["temp_c_high"].as_f64());
    // "Below 30 °C" has no lower end, or the same one.
    let open = wanted.0.is_none()
        || figures(&right["temp_low_also"])
            .iter()
            .any(|w| alike(cold, Some(*w), 0.11));
    let at = alike(warm, wanted.1.or(wanted.0), 0.11) && (open || alike(cold, wanted.0, 0.11));
    let other_heat = ends("temp_c_also")
        .into_iter()
        .any(|(from, to)| alike(cold, from, 0.11) && alike(warm, to, 0.11));
    let until = ours["until"].as_str().and_then(|u| u.parse().ok());
    (timed || other_time) && (at || other_heat) && alike(until, right["until_c"].as_f64(), 0.11)
}

fn same_act(ours: &Value, right: &Value) -> bool {
    let ours = ours["do"].as_str();
    let mut also = texts(&right["do_also"]);
    also.extend(right["do_also"].as_str().map(str::to_owned));
    match right["do"].as_str() {
        Some("turn" | "other") => true,
        wanted => {
            ours == wanted
                || also.iter().any(|a| ours == Some(a.as_str()))
                || (ours == Some("dry") && wanted == Some("rest"))
        }
    }
}

/// True for a line that is taken for a cure, or asked about as one.
fn cure(line: &Value) -> bool {
    let item = line["item"].as_str().unwrap_or_default();
    item.starts_with("cure-") || item.starts_with("pure-")
}

/// True where it is asked which of several it is.
fn is_open(line: &Value) -> bool {
    line["thing"]["is"] == "open" && line["strength"].is_null()
}

/// What came of one reading among the lines.
fn one(line: &Value, right: &Value, meat: &Value) -> Came {
    let taken = line["taken"].as_str().unwrap_or_default();
    let flagged = !line["flags"].as_array().expect("flags").is_empty();
    let kind = right["kind"].as_str().unwrap_or_default();
    let mut also = texts(&right["kind_also"]);
    also.extend(right["kind_also"].as_str().map(str::to_owned));
    let said = |k: &str| kind == k || also.iter().any(|a| a == k);
    // A remark by another word.
    let is = |k: &str| said(k) || k == "remark" && said("note");
    let good = match taken {
        "item" | "taste" => {
            (is("ingredient") || is("cure") || is("water"))
                // Of a cure its strength says what it is; a foreign or a maker's name for it is a name.
                && (same_name(line, right) || kind == "cure" && (cure(line) || right["ask"] == true))
                && same_amount(line, right)
                && same_base(line, right, meat)
                && (same_strength(line, right) || is_open(line) && allows(right, "cure"))
        }
        "meat" => {
            is("meat")
                && (same_amount(line, right) || numbers(&line["amount"]).is_empty() && right["amount_low"].is_null())
        }
        "step" => {
            let steps = line["steps"].as_array().map(Vec::as_slice).unwrap_or_default();
            is("step") && steps.iter().any(|s| same_act(s, right) && same_step(s, right))
        }
        "heading" => is("heading") || is("title") || is("remark"),
        "remark" => is("remark") || is("title"),
        _ => false,
    };
    match (good, taken) {
        (true, _) => Came::Right,
        (false, "unread" | "remark") => Came::GivenUp,
        // A step that is kept as it was written says no figure.
        (false, "step") if line["steps"].as_array().is_none_or(Vec::is_empty) => Came::GivenUp,
        _ if flagged => Came::GivenUp,
        _ => Came::Wrong,
    }
}

fn came(case: &Value) -> (Came, Value) {
    let text = case["text"].as_str().expect("a text");
    let right = &case["right"];
    let here = of_country(case["settings"]["country"].as_str().unwrap_or_default());
    let answer = ok(&json!({"read_recipe": {"text": text, "settings": here}}));
    let lines: Vec<&Value> = answer["lines"].as_array().expect("lines").iter().collect();
    let questions = answer["questions"].as_array().expect("questions");
    let asked = topics(questions);
    let meat = &answer["meat"];
    let parts: Vec<&Value> = match right["kind"].as_str() {
        // The sixth writers call them things.
        Some("several") => {
            let parts = right["parts"].as_array().or(right["things"].as_array());
            parts.expect("parts").iter().collect()
        }
        Some("alternatives") => right["alternatives"].as_array().expect("alternatives").iter().collect(),
        _ => vec![right],
    };
    let told = json!({"lines": answer["lines"], "asked": asked});
    // Each reading wants a line of its own; what stands beside may be a remark or a heading, and no more.
    let mut left = lines.clone();
    let mut worst = Came::Right;
    for part in &parts {
        let best = left
            .iter()
            .enumerate()
            .map(|(at, line)| (one(line, part, meat), at))
            .min();
        let Some((came, at)) = best else {
            worst = worst.max(Came::GivenUp);
            continue;
        };
        left.remove(at);
        worst = worst.max(came);
    }
    let counted = |l: &&Value| {
        l["taken"] == "item" && l["grams"].as_array().is_some_and(|g| !g.is_empty()) || l["taken"] == "meat"
    };
    // What the text offers in place of it, where the right reading has it as such.
    let offered = right["or"].as_array().map(Vec::as_slice).unwrap_or_default();
    left.retain(|line| !offered.iter().any(|other| one(line, other, meat) == Came::Right));
    // The sixth writers have the second of two in the names and amounts that stand beside the first.
    if questions.iter().any(|q| q["ask"]["is"] == "either") {
        let mut beside = right.clone();
        beside["grams_low"] = Value::Null;
        left.retain(|line| one(line, &beside, meat) != Came::Right);
    }
    if left.iter().any(counted) {
        worst = worst.max(Came::Wrong);
    }
    // The third writer wants the strength of a cure asked that has it by its number. Two others do not, one of them of the
    // same words: the number says it.
    let numbered = lines.iter().any(|l| l["item"] == "cure-1" || l["item"] == "cure-2");
    let must = right["ask"] == true && !(numbered && right["ask_about"] == json!(["cure strength"]));
    let held = answer["verdict"]["may_hold"].as_array().is_some_and(|m| !m.is_empty());
    if must && asked.is_empty() && !held {
        worst = worst.max(Came::Wrong);
    }
    // Where it is asked, nothing is silent.
    if must && worst == Came::Wrong && !asked.is_empty() {
        worst = Came::GivenUp;
    }
    if asked.iter().any(|(topic, _)| !allows(right, topic)) {
        worst = if worst == Came::Wrong {
            Came::GivenUp
        } else {
            worst.max(Came::Needless)
        };
    }
    let cure = right["may_be_cure"] == true;
    if cure && answer["verdict"]["word"] == "no_cure" {
        worst = Came::Wrong;
    }
    (worst, told)
}

/// The share of each in a set, and no more silently wrong, or asked in vain and given up, than so many.
fn lines_of(set: &str, most_wrong: usize, most_vain: usize) {
    let cases: Vec<Value> = set.lines().map(|l| serde_json::from_str(l).expect("a case")).collect();
    let mut told = String::new();
    let mut count = [0; 4];
    for case in &cases {
        let (came, answer) = came(case);
        count[came as usize] += 1;
        if came != Came::Right {
            let lines: Vec<String> = answer["lines"]
                .as_array()
                .expect("lines")
                .iter()
                .map(|l| {
                    format!(
                        "[{} {} {}{} per {} s {} flag {} st {}]",
                        l["taken"], l["name"], l["amount"], l["unit"], l["per"], l["strength"], l["flags"], l["steps"]
                    )
                })
                .collect();
            told += &format!(
                "{came:?} {}: {} -> {} asked {}\n",
                case["id"],
                case["text"],
                lines.join(" "),
                answer["asked"]
            );
        }
    }
    let [right, needless, given_up, wrong] = count;
    println!(
        "{told}right {right}, needless {needless}, given up {given_up}, wrong {wrong} of {}",
        cases.len()
    );
    assert!(wrong <= most_wrong, "{wrong} silently wrong:\n{told}");
    assert!(
        needless + given_up <= most_vain,
        "{needless} asked in vain and {given_up} given up:\n{told}"
    );
}

#[test]
fn lines_of_others() {
    lines_of(include_str!("../data/others-lines.jsonl"), 0, 7);
}

/// Written by somebody else, later. Where two writers contradict each other the stricter counts: `1,500 g` of meat and
/// `honey or brown sugar` are asked about, and are needless here.
#[test]
fn later_lines_of_others() {
    lines_of(include_str!("../data/others-lines-late.jsonl"), 0, 7);
}

/// A third set, by a third writer (at first sight 15 wrong and 26 in vain). Its other half, `third-lines-late.jsonl`, is for
/// measuring at the end, and nobody mends by it.
#[test]
fn third_lines_of_others() {
    lines_of(include_str!("../data/third-lines.jsonl"), 0, 1);
}

/// A fourth, when the third was mended (at first sight 6 wrong and 25 in vain); so with its other half.
#[test]
fn fourth_lines_of_others() {
    lines_of(include_str!("../data/fourth-lines.jsonl"), 0, 3);
}

/// A fifth, when the fourth was mended (at first sight 6 wrong and 16 in vain of 100); its other half lies elsewhere.
#[test]
fn fifth_lines_of_others() {
    lines_of(include_str!("../data/fifth-lines.jsonl"), 0, 3);
}

/// A sixth, by two strangers (at first sight 4 wrong and 10 in vain of 150); its other half lies elsewhere.
#[test]
fn sixth_lines_of_others() {
    lines_of(include_str!("../data/sixth-lines.jsonl"), 0, 2);
}

/// Any set by its path, in counts alone, held to what is aimed at: `SET=file cargo test … set_of_others -- --nocapture --ignored`.
#[test]
#[ignore = "wants a file"]
fn set_of_others() {
    let path = std::env::var("SET").expect("a path");
    let set = std::fs::read_to_string(path).expect("a set");
    let mut count = [0; 4];
    for line in set.lines() {
        let (came, _) = came(&serde_json::from_str(line).expect("a case"));
        count[came as usize] += 1;
    }
    let [right, needless, given_up, wrong] = count;
    println!("right {right}, needless {needless}, given up {given_up}, wrong {wrong}");
    let vain = needless + given_up;
    assert!(wrong == 0 && vain * 20 <= right + vain, "{wrong} wrong, {vain} in vain");
}
