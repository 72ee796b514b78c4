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
    let (mut changed, mut asked) = (Vec::new(), BTreeSet::new());
    for (name, request) in asked::all() {
        let file = format!("{name}.json");
        let path = folder().join(&file);
        let now = serde_json::to_string_pretty(&answer(&request)).expect("an answer is JSON") + "\n";
        asked.insert(file);
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
    // A file that nobody asks for any more would look as if it held something.
    let kept = fs::read_dir(folder()).expect("the folder is there").map(|file| {
        let name = file.expect("a file").file_name();
        name.to_string_lossy().into_owned()
    });
    assert_eq!(kept.collect::<BTreeSet<_>>(), asked);
}
