//! What the door answers, whole. Each answer stands in `tests/data/facts`, so that a change of any fact shows in what is
//! committed; that the figures are right is for `tests/published` to say. `UPDATE=1` writes them anew: read what changed.
//! What the page's words make of them is held by `tests/browser/words.test.mjs`.

mod asked;

use cure_reckoner_tests::answer;
use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("data/facts")
}

/// The first line in which two texts differ, with what it was and what it is.
fn first_change(before: &str, now: &str) -> String {
    let (mut old, mut new) = (before.lines(), now.lines());
    for line in 1.. {
        let (was, is) = (old.next(), new.next());
        if was != is {
            return format!(
                "line {line}\n  was {}\n  is  {}",
                was.unwrap_or("the end"),
                is.unwrap_or("the end")
            );
        }
    }
    unreachable!("two texts that differ differ in a line");
}

#[test]
fn every_answer_is_as_it_was() {
    let update = std::env::var("UPDATE").is_ok_and(|value| value == "1");
    let mut changed = Vec::new();
    for (name, request) in asked::all() {
        let path = folder().join(format!("{name}.json"));
        let now = serde_json::to_string_pretty(&answer(&request)).expect("an answer is JSON") + "\n";
        if update {
            fs::write(&path, now).expect("the folder can be written");
            continue;
        }
        let before = fs::read_to_string(&path).unwrap_or_default();
        if before != now {
            changed.push(format!("{name}.json, {}", first_change(&before, &now)));
        }
    }
    assert!(
        changed.is_empty(),
        "other facts than before; UPDATE=1 writes them where they are meant:\n{}",
        changed.join("\n")
    );
}

/// A file that nobody asks for any more would look as if it held something.
#[test]
fn every_file_has_its_request() {
    let asked: BTreeSet<String> = asked::all()
        .into_iter()
        .map(|(name, _)| format!("{name}.json"))
        .collect();
    let kept: BTreeSet<String> = fs::read_dir(folder())
        .expect("the folder is there")
        .map(|file| file.expect("a file").file_name().to_string_lossy().into_owned())
        .collect();
    assert_eq!(kept, asked);
}
