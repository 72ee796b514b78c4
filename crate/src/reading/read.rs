//! A text from its clauses to what they are taken for together.

use super::asked::{Answers, Asked};
use super::cased::Cased;
use super::clause::clauses;
use super::facts::{Offer, Question, Taken};
use super::line::Line;
use super::model::{AskReading, Reading};
use super::names::{Meaning, Names};
use super::parse::line;
use super::recipe::reading;
use super::said::is_title;
use super::tongue::tongue;
use super::unwrap::{at_strokes, in_one_line, without_leaders};
use super::words::Sort;
use crate::pantry;
use crate::quantity::{Code, Problem, Wrong};
use crate::tables::OUTSIDE;

/// Longest text that is read, in bytes.
pub const MOST_TEXT: usize = 6000;
/// Most clauses that are read.
const MOST_CLAUSES: usize = 120;

/// `2 tsp each of thyme and pepper`: what stands bare in the sentence takes on the amount.
fn each(lines: &mut [(usize, Line)]) {
    let said: Vec<(usize, Line)> = lines
        .iter()
        .filter(|(_, l)| l.each && l.taken == Taken::Item)
        .cloned()
        .collect();
    for (at, line) in lines.iter_mut().filter(|(_, l)| l.bare) {
        if let Some((_, like)) = said.iter().find(|(sentence, _)| sentence == at) {
            line.like(like);
        }
    }
}

/// A clause as it is read; one that offers two things is asked about, and neither counts until then.
fn either(clause: &str, names: &Names, answers: &Answers<'_>, asked: &mut Vec<Asked>) -> Vec<Line> {
    let read = line(clause, names);
    let Some((one, other)) = read.alternatives(names) else {
        return vec![read];
    };
    let choices = [one.clone(), other.clone()].map(Offer::said);
    let question = Asked::new(format!("or:{clause}"), Question::Either, choices.into_iter(), answers);
    let chosen = question.chosen();
    asked.push(question);
    // What was chosen stands beside what was not: nothing of the text is lost from sight.
    let taken = |text: &str| Line {
        text: clause.to_owned(),
        ..line(text, names)
    };
    let open = |text: &str| Line {
        text: text.to_owned(),
        either: true,
        ..line(text, names)
    };
    match chosen {
        Some(0) => vec![taken(&one)],
        Some(_) => vec![taken(&other)],
        None => vec![open(&one), open(&other)],
    }
}

/// `Per 5 lb: …`, and a head of its own over a list, up to the next heading or empty line.
fn head_rates(lines: &mut [(usize, Line)]) {
    let mut rate: Option<(usize, bool, Line)> = None;
    let mut last = 0;
    for (at, line) in lines {
        let broken = at.saturating_sub(last) > 1 || line.taken == Taken::Heading;
        last = *at;
        let water = |m: &Meaning| m.items.iter().any(|i| i.key == "water");
        let alone = line.taken == Taken::Meat || line.amount.is_none() && line.meaning.as_ref().is_none_or(water);
        if let Some((_, each)) = line.base.as_ref()
            && line.leads
            && *each
        {
            rate = Some((*at, alone, line.clone()));
            continue;
        }
        if broken {
            rate = rate.filter(|(from, _, _)| from == at);
        }
        let Some((from, alone, head)) = &rate else { continue };
        let under = *from == *at || *alone;
        if under && line.base.is_none() && line.taken == Taken::Item {
            line.base = head.base.clone();
            line.base_said = head.base_said.clone();
            line.leads = false;
        }
    }
}

/// What stands under a heading of its own for the outside of the meat is not in its brine.
fn apart(lines: &mut [(usize, Line)]) {
    let mut outside = false;
    for (_, line) in lines {
        if line.taken == Taken::Heading {
            let lower = line.text.to_lowercase();
            let bare = lower.trim_start_matches("for ").trim_start_matches("the ");
            outside = OUTSIDE.iter().any(|w| bare.starts_with(w));
        }
        line.apart = outside;
    }
}

/// Reads a recipe.
///
/// # Errors
/// [`Code::Missing`] for no text, [`Code::TooLong`] for more than 6000 bytes or 120 lines, and the problems of the
/// settings.
pub fn read(ask: &AskReading) -> Result<Reading, Vec<Problem>> {
    let refuse = |code, wrong| Err(vec![Problem::of(code, wrong).at("text")]);
    if ask.text.len() > MOST_TEXT {
        return refuse(Code::TooLong, Wrong::RecipeTextTooLong { most: MOST_TEXT });
    }
    if ask.text.trim().is_empty() {
        return refuse(Code::Missing, Wrong::TextMissing);
    }
    let problems = ask.settings.problems();
    if !problems.is_empty() {
        return Err(problems);
    }
    // What cannot be seen cannot be checked by eye, and may stand in the middle of a word.
    let seen = ask.text.chars().filter(|c| !pantry::is_unseen(*c));
    let text: String = seen
        .map(|c| if c.is_control() && c != '\n' { ' ' } else { c })
        .collect();
    let text = in_one_line(&at_strokes(&without_leaders(&text)));
    let names = Names::all();
    let clauses = clauses(&text, names);
    if clauses.len() > MOST_CLAUSES {
        return refuse(Code::TooLong, Wrong::RecipeLinesTooMany { most: MOST_CLAUSES });
    }
    let cased = Cased::of(&text);
    let answers = Answers(&ask.answers);
    let mut choices = Vec::new();
    let mut lines: Vec<(usize, Line)> = Vec::new();
    for (at, clause) in clauses {
        lines.extend(
            either(clause, names, &answers, &mut choices)
                .into_iter()
                .map(|l| (at, l)),
        );
    }
    if let [(at, first), (next, _), ..] = lines.as_mut_slice()
        && at != next
    {
        first.title();
    }
    // "Deer Sausage, 25 lb" over a list that weighs the meat itself.
    let weighs = |l: &Line| l.taken == Taken::Meat && l.amount.as_ref().is_some_and(|a| a.sort() == Sort::Mass);
    // "Ham for 12".
    let counts = |l: &Line| l.taken == Taken::Meat && l.amount.as_ref().is_some_and(|a| a.sort() == Sort::Count);
    if let Some(((_, first), rest)) = lines.split_first_mut()
        && (weighs(first) || counts(first))
        && (is_title(&first.text) || counts(first))
        && first.text.starts_with(char::is_alphabetic)
        && rest.iter().filter(|(_, l)| weighs(l)).count() > 0
    {
        first.taken = Taken::Heading;
    }
    let weighs_cure = |l: &Line| {
        let cure = |m: &Meaning| m.items.iter().all(|i| i.group == pantry::Group::Cure) && !m.food;
        l.taken == Taken::Item && l.amount.is_some() && l.meaning.as_ref().is_some_and(cure)
    };
    if !lines.iter().any(|(_, l)| weighs_cure(l)) {
        // Of a cure without an amount it is asked how much, where no other line says it.
        for (_, line) in lines.iter_mut().filter(|(_, l)| l.unsaid) {
            line.by_packet = true;
        }
    } else {
        for (_, line) in lines.iter_mut().filter(|(_, l)| l.said_of_cures()) {
            line.taken = Taken::Remark;
        }
    }
    each(&mut lines);
    head_rates(&mut lines);
    apart(&mut lines);
    let partial: Vec<(usize, Line)> = lines.iter().filter(|(_, l)| l.is_partial()).cloned().collect();
    // Without a weight of the meat an amount is for nothing but that base.
    let weighed = lines.iter().any(|(_, l)| {
        l.taken == Taken::Meat && (l.amount.as_ref().is_some_and(|a| a.sort() != Sort::Percent) || l.base.is_some())
    });
    for (at, line) in lines.iter_mut() {
        line.cased = cased;
        if line.base.is_some() {
            continue;
        }
        let same = partial.iter().find(|(sentence, _)| sentence == at);
        let Some((_, like)) = same else { continue };
        if weighed {
            line.shared = like
                .base
                .as_ref()
                .map(|(base, _)| (base.clone(), like.base_said.clone()));
        } else if line.taken == Taken::Item {
            line.base.clone_from(&like.base);
            line.base_said.clone_from(&like.base_said);
        }
    }
    let lines: Vec<Line> = lines.into_iter().map(|(_, l)| l).collect();
    Ok(reading(&text, tongue(&text), &lines, names, choices, &answers, ask))
}
