//! What must hold for any input at all: nothing panics, and what was read goes out and comes back the same. Used by
//! the fuzzers and by the replay of their corpus.

use base64ct::{Base64UrlUnpadded, Encoding};
use crc::{CRC_32_ISO_HDLC, Crc};
use cure_reckoner::batch::Batch;
use cure_reckoner::door::{Record, Request, answer};
use cure_reckoner::plan::{self, CalendarWords};
use cure_reckoner::quantity::{Fraction, Kind, Length, Mass, Quantity, Span, System, Temperature, Volume};
use cure_reckoner::reading::{AskReading, Reading, read};
use cure_reckoner::share::{open, write};
use cure_reckoner::weigh::Settings;
use std::sync::LazyLock;

/// Any text as every kind of quantity: what is read prints to a text that reads back to the same value.
pub fn quantity(data: &[u8]) {
    let Ok(text) = std::str::from_utf8(data) else { return };
    kind::<_>(Mass::read(text, Some("g")));
    kind::<_>(Length::read(text, Some("mm")));
    kind::<_>(Temperature::read(text, Some("°C")));
    kind::<_>(Span::read(text, Some("h")));
    kind::<_>(Fraction::read(text, Some("%")));
    kind::<_>(Volume::read(text, None));
}

fn kind<K: Kind>(read: Result<Quantity<K>, cure_reckoner::quantity::Problem>) {
    match read {
        Ok(value) => {
            for system in [System::Metric, System::Us] {
                let printed = value.print(system);
                let back = Quantity::<K>::read(&printed, None);
                assert!(
                    back.as_ref().is_ok_and(|b| *b == value),
                    "{printed} read back as {back:?}"
                );
                assert!(!value.show(system).text.is_empty());
            }
        }
        Err(problem) => assert!(problem.wrong.is_some()),
    }
}

/// Any bytes as a link, and as the content of a link whose length and checksum are right: what opens is written to a
/// link that opens to the same recipe, and keeps its rules.
pub fn link(data: &[u8]) {
    if let Ok(text) = std::str::from_utf8(data) {
        opened(text);
    }
    let Ok(length) = u16::try_from(data.len()) else { return };
    let sum = Crc::<u32>::new(&CRC_32_ISO_HDLC).checksum(data);
    let bytes = [&length.to_be_bytes()[..], data, &sum.to_be_bytes()[..]].concat();
    opened(&format!("r1.{}", Base64UrlUnpadded::encode_string(&bytes)));
}

fn opened(text: &str) {
    match open(text) {
        Ok(recipe) => {
            assert!(recipe.problems().is_empty());
            // A link that is longer than its sender's, with another address before it, may not fit: that is said.
            if let Ok(link) = write(&recipe, "") {
                assert_eq!(open(&link.link).as_ref(), Ok(&recipe));
            }
        }
        Err(problems) => assert!(!problems.is_empty()),
    }
}

/// Any text as a recipe: every word is shown, ranges are in order, each question takes its first choice, and the
/// recipe that comes out keeps its rules, goes through a link unchanged, and can be worked for its meat.
pub fn reading(data: &[u8]) {
    let Ok(text) = std::str::from_utf8(data) else { return };
    let mut ask = AskReading {
        text: text.to_owned(),
        answers: Vec::new(),
        untitled: String::new(),
        settings: Settings::new_page(),
    };
    let Ok(first) = read(&ask) else { return };
    held(text, &first);
    // An answer can lead to a further question, but not for ever.
    let mut last = first;
    for _ in 0..8 {
        let open: Vec<_> = last.questions.iter().filter(|q| q.answer.is_none()).collect();
        if open.is_empty() {
            break;
        }
        for question in open {
            let typed = if question.key == "take" { "10 %" } else { "3 kg" };
            let value = question.choices.first().map_or(typed, |(value, _)| value);
            ask.answers.push((question.key.clone(), value.to_owned()));
        }
        match read(&ask) {
            Ok(next) => last = next,
            Err(problems) => panic!("answers made it unreadable: {problems:?}"),
        }
        held(text, &last);
    }
    assert!(
        last.questions.iter().all(|q| q.answer.is_some()),
        "a question takes no answer: {:?}",
        last.questions
    );
    let Some(recipe) = last.recipe else {
        assert!(last.bar.is_some(), "no recipe, and no reason");
        return;
    };
    assert!(recipe.problems().is_empty());
    if let Ok(link) = write(&recipe, "") {
        assert_eq!(open(&link.link).as_ref(), Ok(&recipe));
    }
    let card = serde_json::json!({"card": {"recipe": recipe, "settings": ask.settings}});
    if let Ok(request) = serde_json::from_value::<Request>(card) {
        let _ = answer(request);
    }
}

/// `lb10` as `lb` and `10`.
fn letters_and_figures(word: &str) -> Vec<&str> {
    let of: Vec<_> = word.char_indices().map(|(at, c)| (at, c.is_numeric())).collect();
    let cuts = of.windows(2).filter(|two| two[0].1 != two[1].1).map(|two| two[1].0);
    let mut from = 0;
    let ends = cuts.chain([word.len()]);
    ends.map(|to| &word[std::mem::replace(&mut from, to)..to]).collect()
}

fn held(text: &str, reading: &Reading) {
    let shown: String = reading
        .lines
        .iter()
        .map(|l| l.text.as_str())
        .collect::<Vec<_>>()
        .join(" ");
    // Of two that stand one for the other, the question says which, in the words of the text.
    let asked = |word: &str| {
        reading
            .questions
            .iter()
            .any(|q| q.key.starts_with("or:") && q.key.contains(word))
    };
    let joints = ["and", "plus", "with", "in", "then"];
    // A blank may be lost between a unit and the next number: each is shown, if not in one piece.
    for word in text
        .split(|c: char| !c.is_alphanumeric())
        .flat_map(letters_and_figures)
        .filter(|w| !w.is_empty() && !joints.contains(w))
    {
        assert!(shown.contains(word) || asked(word), "“{word}” is not shown of {text:?}");
    }
    for line in &reading.lines {
        let grams: Vec<f64> = line.grams.iter().map(|g| g.parse().expect("a number")).collect();
        assert!(grams.is_sorted() && (grams.is_empty() || grams.len() == 3), "{line:?}");
    }
    let open = reading.questions.iter().any(|q| q.answer.is_none());
    assert!(!(open && reading.recipe.is_some()), "a recipe while something is asked");
}

/// Any text as a stored record, by its kind: what can be read goes out as JSON and comes back the same.
pub fn record(data: &[u8]) {
    let Ok(text) = std::str::from_utf8(data) else { return };
    let Ok(record) = serde_json::from_str::<Record>(text) else {
        return;
    };
    let out = written(&record);
    let back: Record = serde_json::from_str(&out).unwrap_or_else(|error| panic!("{error}: {out}"));
    assert_eq!(written(&back), out);
    let _ = answer(Request::Check(record));
}

fn written(record: &Record) -> String {
    let out = match record {
        Record::Recipe(one) => serde_json::json!({"recipe": one}),
        Record::Batch(one) => serde_json::json!({"batch": one}),
        Record::Settings(one) => serde_json::json!({"settings": one}),
        Record::Stock(one) => serde_json::json!({"stock": one}),
    };
    out.to_string()
}

/// Any texts, one a line, as the names and words that go into a calendar file: each of its lines ends and is folded as
/// RFC 5545 has it, none is of a text's making, and its parts begin and end in pairs.
pub fn calendar(data: &[u8]) {
    let Ok(text) = std::str::from_utf8(data) else { return };
    let mut texts = text.split('\u{1}');
    let mut next = || texts.next().unwrap_or_default();
    let mut batch = UNDER_WAY.clone();
    batch.name = next().to_owned();
    batch.tag = next().to_owned();
    let id = next();
    let words = serde_json::json!({
        "two_hours": next(), "cold": next(), "ready": next(), "done": next(), "gone": next(),
        "jobs": [{"batch": id, "id": "step:1", "head": next(), "text": next()}],
    });
    let words: CalendarWords = serde_json::from_value(words).expect("words");
    let rubbed = batch.tick("rub").map_or(0, |tick| tick.at);
    let made = plan::calendar(
        &[(id, &batch)],
        &[],
        rubbed + 3_600_000,
        &[],
        &words,
        &Settings::new_page(),
    );
    let file = made.expect("a file").text;
    assert!(file.ends_with("\r\n"), "{file:?}");
    let mut open = Vec::new();
    for line in file.replace("\r\n ", "").split_terminator("\r\n") {
        assert!(!line.chars().any(|c| c.is_control() && c != '\t'), "{line:?}");
        let (name, value) = line.split_once(':').expect("a name and a value");
        let known = name
            .bytes()
            .all(|b| b.is_ascii_uppercase() || b"-;=".contains(&b) || b.is_ascii_digit());
        assert!(known, "{line:?}");
        match name {
            "BEGIN" => open.push(value.to_owned()),
            "END" => assert_eq!(open.pop().as_deref(), Some(value)),
            "SUMMARY" | "DESCRIPTION" | "UID" => assert!(is_escaped(value), "{line:?}"),
            _ => {}
        }
    }
    assert!(open.is_empty());
    assert!(file.split("\r\n").all(|line| line.len() <= 75), "{file:?}");
}

/// Every comma, semicolon and backslash of a text stands behind a backslash, RFC 5545 3.3.11.
fn is_escaped(value: &str) -> bool {
    let mut letters = value.chars();
    while let Some(letter) = letters.next() {
        let good = match letter {
            '\\' => letters.next().is_some_and(|next| "\\;,nN".contains(next)),
            _ => !";,".contains(letter),
        };
        if !good {
            return false;
        }
    }
    true
}

/// A batch in its cure, with steps that take time.
static UNDER_WAY: LazyLock<Batch> = LazyLock::new(|| {
    let mut recipe = crate::rub("6.25 %", "150 ppm", "2.2 %");
    recipe["steps"] = serde_json::json!([
        {"do": "cure", "lasts": "36 h"}, {"do": "rinse"}, {"do": "smoke", "lasts": "3 h", "at": "90 °C", "until": "74 °C"},
        {"do": "chill", "lasts": "6 h"}, {"do": "pack"},
    ]);
    let batch = crate::weighed_in(crate::batch(&recipe, 16, "1480 g"), 1_794_614_400_000);
    let mut batch: Batch = serde_json::from_value(batch).expect("a batch");
    batch.killed = "2026-11-13".to_owned();
    batch
});
