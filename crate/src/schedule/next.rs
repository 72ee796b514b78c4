//! Jobs with clock times from the recipe's steps. A tick says when a step was begun, or done if it takes no time;
//! the next step falls due when that one has lasted its time. So a late tick moves all that follows.

use super::model::{Job, NextList, Stage, State};
use crate::batch::{Batch, green, kinds};
use crate::dose::{Outcome, cautions};
use crate::quantity::{Mass, Problem, Span, System};
use crate::recipe::{Do, Method, Step, head, line};
use crate::weigh::{Settings, verdict};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

const MINUTE: i64 = 60_000;
const DAY: i64 = 1440 * MINUTE;

/// What comes next over these batches at `now`, in milliseconds since 1970.
///
/// # Errors
/// Problems of the settings. A batch that cannot be reckoned says so in its state and has no jobs.
pub fn next(batches: &[(&str, &Batch)], now: i64, settings: &Settings) -> Result<NextList, Vec<Problem>> {
    let problems = settings.problems();
    if !problems.is_empty() {
        return Err(problems);
    }
    let mut jobs = Vec::new();
    let mut states = Vec::new();
    for (id, batch) in batches {
        let state = state(id, batch, now, settings);
        if !state.held && !batch.closed {
            jobs.extend(soonest(&state));
        }
        states.push(state);
    }
    // Without a clock yet comes after what has one.
    jobs.sort_by_key(|j: &Job| (j.due.is_none(), j.due));
    Ok(NextList { jobs, batches: states })
}

/// Where one batch stands, with all its jobs.
fn state(id: &str, batch: &Batch, now: i64, settings: &Settings) -> State {
    let base = State {
        batch: id.to_owned(),
        stage: Stage::Pieces,
        held: false,
        says: String::new(),
        finished: batch.closed,
        jobs: Vec::new(),
    };
    let verdict = match verdict(batch, settings) {
        Ok(verdict) => verdict,
        Err(problems) => {
            let says = problems.first().map(|p| p.message.clone()).unwrap_or_default();
            return State { says, ..base };
        }
    };
    if verdict.held {
        let says = if verdict.outcome == Outcome::Over {
            "Held: dose is over the limit"
        } else {
            "Held: strength of the cure is not known"
        };
        return State {
            held: true,
            stage: Stage::Weigh,
            says: says.to_owned(),
            ..base
        };
    }
    let green = green(&batch.pieces).ok();
    let Some(begun) = batch.tick("rub").map(|t| t.at) else {
        let weighed = green.is_some_and(|g| g.weighed);
        let (stage, says) = if weighed {
            (Stage::Weigh, "Not weighed out yet")
        } else {
            (Stage::Pieces, "Pieces to weigh")
        };
        let text = if weighed {
            "Cure first, then the rest into the same bowl."
        } else {
            "Put every size class on the scale."
        };
        let heading = if weighed {
            "Weigh out the cure"
        } else {
            "Weigh the pieces"
        };
        let job = Job {
            batch: id.to_owned(),
            id: "weigh".to_owned(),
            head: heading.to_owned(),
            text: text.to_owned(),
            stage,
            due: None,
            ends: None,
            now: true,
            ticked: None,
            caution: None,
        };
        return State {
            stage,
            says: says.to_owned(),
            jobs: vec![job],
            ..base
        };
    };
    let jobs = all_jobs(id, batch, begun, now, settings.units);
    let steps = || jobs.iter().filter(|j| j.id.starts_with("step:"));
    let finished = steps().all(|j| j.ticked.is_some());
    let stage = steps().find(|j| j.ticked.is_none()).map_or(Stage::Pack, |j| j.stage);
    // The last step begun says where the meat is; while it cures, the stage in hand is still the cure.
    let last = batch
        .recipe
        .steps
        .iter()
        .enumerate()
        .rev()
        .find(|(i, _)| tick_of(batch, *i, begun).is_some());
    let where_now = match last {
        _ if finished => "Finished".to_owned(),
        Some((_, step)) if step.act == Do::Cure => format!(
            "In the cure, day {}",
            (now.saturating_sub(begun).max(0) / DAY).saturating_add(1)
        ),
        Some((_, step)) => doing(step.act).to_owned(),
        None => "Cure is on".to_owned(),
    };
    let weight = green
        .and_then(|g| Mass::new(g.grams.typical).ok())
        .map(|m| m.show(settings.units).text);
    let says = weight.map_or(where_now.clone(), |w| format!("{where_now}. {w}"));
    State {
        stage,
        says,
        finished: finished || batch.closed,
        jobs,
        ..base
    }
}

const fn doing(act: Do) -> &'static str {
    match act {
        Do::Cure => "In the cure",
        Do::Rinse => "Rinsed",
        Do::Soak => "Soaking",
        Do::Dry => "Drying to a pellicle",
        Do::Smoke => "In the smoke",
        Do::Cook => "Cooking through",
        Do::DryOut => "Drying out",
        Do::Rest => "Resting",
        Do::Chill => "Chilling",
        Do::Pack => "Packed",
    }
}

/// The stage a step belongs to.
pub const fn stage(act: Do) -> Stage {
    match act {
        Do::Cure | Do::Rinse | Do::Soak => Stage::Cure,
        Do::Dry | Do::Smoke | Do::Cook | Do::DryOut | Do::Rest => Stage::Fire,
        Do::Chill | Do::Pack => Stage::Pack,
    }
}

/// When a step was begun: its tick; for a cure that comes first, the tick of the rub.
fn tick_of(batch: &Batch, i: usize, begun: i64) -> Option<i64> {
    let own = batch.tick(&format!("step:{i}")).map(|t| t.at);
    own.or_else(|| (i == 0 && batch.recipe.steps.first().is_some_and(|s| s.act == Do::Cure)).then_some(begun))
}

fn millis(span: Option<Span>) -> i64 {
    span.and_then(|s| s.base().checked_mul(Decimal::from(MINUTE)))
        .and_then(|m| m.round().to_i64())
        .unwrap_or(0)
}

/// Every step and turn, in order of time.
fn all_jobs(id: &str, batch: &Batch, begun: i64, now: i64, units: System) -> Vec<Job> {
    let steps = &batch.recipe.steps;
    let kinds = kinds(&batch.pieces);
    let mut jobs = Vec::new();
    let mut due = begun;
    for (i, step) in steps.iter().enumerate() {
        let ticked = tick_of(batch, i, begun);
        let start = ticked.unwrap_or(due);
        let length = millis(step.lasts);
        let job = |id_in: String, head: &str, text: String, due: i64, ticked: Option<i64>| Job {
            batch: id.to_owned(),
            id: id_in,
            head: head.to_owned(),
            text,
            stage: stage(step.act),
            due: Some(due),
            ends: None,
            now: ticked.is_none() && due <= now,
            ticked,
            caution: None,
        };
        jobs.push(Job {
            ends: step.lasts.map(|_| start.saturating_add(length)),
            caution: caution(step.act, &kinds),
            ..job(format!("step:{i}"), head(step.act), line(step, units), due, ticked)
        });
        let over = (i..steps.len())
            .skip(1)
            .any(|later| tick_of(batch, later, begun).is_some());
        for (k, at) in turns(step, start).into_iter().enumerate() {
            let tick = format!("turn:{i}:{k}");
            let done = batch.tick(&tick).map(|t| t.at);
            if done.is_some() || !over {
                jobs.push(job(
                    tick,
                    turn_head(batch.recipe.method),
                    turn_text(batch.recipe.method).to_owned(),
                    at,
                    done,
                ));
            }
        }
        due = start.saturating_add(length);
    }
    jobs
}

/// Times of the turns within a step, its end left out: then the next step is due.
fn turns(step: &Step, start: i64) -> Vec<i64> {
    let (every, length) = (millis(step.turn_every), millis(step.lasts));
    if every < MINUTE {
        return Vec::new();
    }
    (1..=200)
        .map(|k| every.saturating_mul(k))
        .take_while(|t| *t < length)
        .filter_map(|t| start.checked_add(t))
        .collect()
}

const fn turn_head(method: Method) -> &'static str {
    match method {
        Method::Rub => "Turn the pieces",
        Method::CoverBrine => "Turn the pieces in the brine",
    }
}

const fn turn_text(method: Method) -> &'static str {
    match method {
        Method::Rub => "Rub the liquid over them again and look for leaks.",
        Method::CoverBrine => "Stir, and see that every piece is under.",
    }
}

/// What may be done soonest: the next step, and of the turns the last that is overdue and the first that is to come.
fn soonest(state: &State) -> Vec<Job> {
    let open = |prefix: &'static str| {
        state
            .jobs
            .iter()
            .filter(move |j| j.id.starts_with(prefix) && j.ticked.is_none())
    };
    let last_turned = state
        .jobs
        .iter()
        .rposition(|j| j.id.starts_with("turn:") && j.ticked.is_some());
    let missed = state
        .jobs
        .iter()
        .enumerate()
        .filter(|(at, j)| {
            j.id.starts_with("turn:") && j.ticked.is_none() && j.now && last_turned.is_none_or(|t| *at > t)
        })
        .map(|(_, j)| j)
        .next_back();
    let coming = open("turn:").find(|j| !j.now);
    let step = open("step:").next();
    let weigh = open("weigh").next();
    missed
        .into_iter()
        .chain(coming)
        .chain(step)
        .chain(weigh)
        .cloned()
        .collect()
}

/// The caution beside a step.
fn caution(act: Do, kinds: &[&str]) -> Option<String> {
    let keys: Vec<&str> = match act {
        Do::Cure | Do::Dry | Do::Soak => vec!["keep-cold"],
        Do::Smoke | Do::Cook | Do::DryOut => {
            let all = crate::dose::keys_for(false, kinds);
            all.into_iter()
                .filter(|k| !matches!(*k, "keep-cold" | "local-rules" | "shot-guests"))
                .collect()
        }
        Do::Pack => vec!["local-rules"],
        Do::Rinse | Do::Rest | Do::Chill => Vec::new(),
    };
    let texts: Vec<&str> = cautions(&keys).into_iter().map(|c| c.text).collect();
    (!texts.is_empty()).then(|| texts.join(" "))
}
