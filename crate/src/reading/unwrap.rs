//! What stands in the way of the grammar: leaders of dots, and lines that were broken where the paper ended.

use crate::tables::DANGLES;

/// `Salt . . . . 5 oz`, `Salt ....... 5 oz`: a leader of dots is a colon. Nothing but dots goes.
pub fn without_leaders(text: &str) -> String {
    let mut plain = String::with_capacity(text.len());
    let mut run = String::new();
    let mut dots = 0_usize;
    for c in text.chars().chain(['\0']) {
        if c == '.' || c == '…' || c == '·' || c == '_' || (c == ' ' && dots > 0) {
            dots = dots.saturating_add(match c {
                ' ' => 0,
                '…' => 3,
                _ => 1,
            });
            run.push(c);
            continue;
        }
        // Two dots are a leader before a figure alone.
        if dots > 2 || dots == 2 && c.is_ascii_digit() {
            plain.push_str(": ");
        } else {
            plain.push_str(&run);
        }
        run.clear();
        dots = 0;
        if c != '\0' {
            plain.push(c);
        }
    }
    plain
}

/// Between lines that somebody wrote into one: `4 lb belly / 2.5 % salt / 7 days`.
const STROKES: [&str; 4] = [" / ", " // ", " | ", " • "];

/// Lines that were written into one with strokes between them, each by itself again. A single stroke may be an `or`, and
/// one behind a figure alone is of a fraction.
pub fn at_strokes(text: &str) -> String {
    let lines = text.split('\n').map(|line| {
        let stroke = STROKES
            .iter()
            .find(|s| line.matches(**s).count() > 1 && !is_fraction(line, s));
        stroke.map_or_else(|| line.to_owned(), |s| line.replace(s, "\n"))
    });
    lines.collect::<Vec<_>>().join("\n")
}

/// `1 / 2 tsp`: a figure alone stands before a stroke.
fn is_fraction(line: &str, stroke: &str) -> bool {
    line.split(stroke)
        .any(|part| part.trim().chars().all(|c| c.is_ascii_digit()))
}

/// From here on a line is as long as the paper is wide, in letters (judgement).
const WIDE: usize = 45;
/// From here on it is, whatever the next begins with (judgement).
const WIDEST: usize = 60;

/// The head of a list has no more words (judgement).
const HEAD: usize = 3;

/// A sentence that goes on in the next line, in one line. Nothing is lost but the break.
pub fn in_one_line(text: &str) -> String {
    let lines: Vec<&str> = text.split('\n').collect();
    let small = |line: &str| line.trim_start().starts_with(char::is_lowercase);
    let ended = |line: &str| line.trim_end().is_empty() || line.trim_end().ends_with(['.', '!', '?', ':', ';', ')']);
    // Who begins lines with small letters says nothing by them.
    let habit = lines.first().is_some_and(|l| small(l))
        || lines
            .iter()
            .zip(lines.iter().skip(1))
            .any(|(l, next)| ended(l) && small(next) && open_bracket(l).is_none());
    let mut joined = String::with_capacity(text.len());
    for (at, line) in lines.iter().enumerate() {
        joined.push_str(line);
        let Some(next) = lines.get(at.saturating_add(1)) else {
            break;
        };
        let end = line.trim_end();
        let length = end.chars().count();
        let stops = end.is_empty() || end.ends_with(['.', '!', '?', ':', ';', ',']);
        let begins = next.trim_start();
        // "Rub: 3 tbsp …" begins a list.
        let list = begins
            .split_once(": ")
            .is_some_and(|(head, _)| head.split_whitespace().count() <= HEAD);
        let letter = begins.starts_with(char::is_alphabetic) && !list;
        let goes_on = !begins.is_empty()
            && (open_bracket(line).is_some() && letter
                || !stops && letter && small(next) && !habit && length >= WIDE
                || !stops && letter && length >= WIDEST && end.contains(". ")
                || !stops && DANGLES.iter().any(|w| end.to_lowercase().ends_with(w)));
        if goes_on {
            joined.push(' ');
        } else {
            joined.push('\n');
        }
    }
    joined
}

/// Where a bracket is opened that this line does not close.
fn open_bracket(line: &str) -> Option<usize> {
    line.rfind('(')
        .filter(|at| line.get(*at..).is_some_and(|rest| !rest.contains(')')))
}
