//! Every line of `data/reading.csv`, read alone.

use cure_reckoner_tests::{ok, settings};
use serde_json::{Value, json};

struct Expected {
    text: String,
    taken: String,
    item: String,
    grams: Option<[f64; 3]>,
    asks: Vec<String>,
    flag: bool,
    awkward: bool,
}

fn expected() -> Vec<Expected> {
    let text = include_str!("../data/reading.csv");
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    let row = |r: csv::StringRecord| Expected {
        text: r[0].to_owned(),
        taken: r[1].to_owned(),
        item: r[2].to_owned(),
        grams: r[3]
            .parse()
            .ok()
            .map(|low| [low, r[4].parse().expect("usual"), r[5].parse().expect("high")]),
        asks: r[6].split(' ').filter(|a| !a.is_empty()).map(str::to_owned).collect(),
        flag: &r[7] == "yes",
        awkward: &r[8] == "yes",
    };
    reader.records().map(|r| row(r.expect("a row"))).collect()
}

/// What is read of the line, in one text to compare: the line itself stands behind the meat's.
fn difference(e: &Expected) -> Option<String> {
    let alone = e.taken == "meat" && e.text.chars().any(|c| "lk".contains(c)) && !e.text.starts_with('6');
    let text = if alone {
        e.text.clone()
    } else {
        format!("For 10 lb of meat\n{}", e.text)
    };
    let answer = ok(&json!({"read_recipe": {"text": text, "settings": settings("0.1 g")}}));
    let lines = answer["lines"].as_array().expect("lines");
    let at = usize::from(!alone);
    let items: Vec<&str> = e.item.split('|').collect();
    if lines.len() != at + items.len() {
        return Some(format!("{} lines", lines.len()));
    }
    let line = &lines[at];
    let others = lines[at + 1..].iter().zip(&items[1..]).all(|(line, item)| {
        line["taken"] == "item" && line["item"] == *item && line["grams"].as_array().is_some_and(|g| g.len() == 3)
    });
    let asks: Vec<&str> = answer["questions"]
        .as_array()
        .expect("questions")
        .iter()
        .filter_map(|q| {
            let key = q["key"].as_str()?;
            // Whether it holds nitrite is asked by name, of all such things at once.
            let of_all = ["agent", "unit"]
                .into_iter()
                .find(|k| key.split_once(':').is_some_and(|(kind, _)| kind == *k));
            of_all.or_else(|| key.strip_suffix(line["text"].as_str()?)?.strip_suffix(':'))
        })
        .collect();
    let grams: Vec<f64> = line["grams"]
        .as_array()
        .expect("grams")
        .iter()
        .filter_map(|g| g.as_str()?.parse().ok())
        .collect();
    let near = |a: f64, b: f64| (a - b).abs() <= if b < 10.0 { 0.0051 } else { 0.051 };
    let weighed = match &e.grams {
        None => grams.is_empty(),
        Some(g) => grams.len() == 3 && g.iter().zip(&grams).all(|(e, r)| near(*r, *e)),
    };
    let good = line["taken"] == e.taken.as_str()
        && others
        && (e.item.is_empty() && e.grams.is_none() || line["item"] == items[0])
        && weighed
        && asks == e.asks
        && (line["flags"] != json!([])) == e.flag;
    (!good).then(|| {
        format!(
            "{line} asks {asks:?}, expected {:?} {:?} {:?} {} {}",
            e.taken,
            e.item,
            e.grams,
            e.asks.join(" "),
            e.flag
        )
    })
}

/// At least 150 lines, 40 of them awkward: every one read as expected or flagged as expected, none silently wrong.
#[test]
fn every_line_of_the_corpus() {
    let all = expected();
    assert!(all.len() >= 150 && all.iter().filter(|e| e.awkward).count() >= 40);
    let wrong: Vec<String> = all
        .iter()
        .filter_map(|e| difference(e).map(|d| format!("{}: {d}", e.text)))
        .collect();
    assert!(
        wrong.is_empty(),
        "{} of {}:\n{}",
        wrong.len(),
        all.len(),
        wrong.join("\n")
    );
}

/// No line is dropped: every word of it stands in a line of the answer.
#[test]
fn nothing_is_dropped() {
    let all: Vec<String> = expected().into_iter().map(|e| e.text).collect();
    for text in all
        .iter()
        .map(String::clone)
        .chain([all[..40].join(". "), all[40..100].join(", ")])
    {
        let answer = ok(&json!({"read_recipe": {"text": text, "settings": settings("0.1 g")}}));
        let shown: Vec<String> = answer["lines"]
            .as_array()
            .expect("lines")
            .iter()
            .filter_map(|l: &Value| l["text"].as_str().map(str::to_owned))
            .collect();
        let shown = shown.join(" ");
        let joints = ["and", "plus", "with", "in", "then"];
        for word in text
            .split(|c: char| !c.is_alphanumeric())
            .filter(|w| !w.is_empty() && !joints.contains(w))
        {
            assert!(shown.contains(word), "“{word}” of “{text}” is not shown");
        }
    }
}
