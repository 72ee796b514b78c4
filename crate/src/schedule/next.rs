//! Jobs with clock times from the recipe's steps. A tick says when a step was begun, or done if it takes no time;
//! the next step falls due when that one has lasted its time. So a late tick moves all that follows.

use super::model::{Job, NextList, Stage, State};
use crate::batch::{Batch, green, kinds, name_of};
use crate::cure::{Stay, stay, too_warm};
use crate::dose::{Outcome, cautions, heat_keys};
use crate::quantity::exact::Exact;
use crate::quantity::{Mass, Problem, Span, System};
use crate::recipe::{Do, Recipe, Step, head, line};
use crate::weigh::{Settings, verdict};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

/// Milliseconds of a minute.
pub(crate) const MINUTE: i64 = 60_000;
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
    // What is due now comes first, also where it has no clock yet.
    jobs.sort_unstable_by_key(|j: &Job| (!j.now, j.due));
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
    let verdict = verdict(batch, settings);
    if let Ok(verdict) = &verdict
        && verdict.held
    {
        let says = match verdict.outcome {
            Outcome::Over => "Held: dose is over the limit",
            _ => "Held: the dose cannot be vouched for",
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
        let job = first_job(id, batch, green.is_some_and(|g| g.weighed));
        return State {
            stage: job.stage,
            says: waiting(&job).to_owned(),
            jobs: vec![job],
            ..base
        };
    };
    if let Err(problems) = verdict {
        let says = problems.first().map(|p| p.message.clone()).unwrap_or_default();
        return State { says, ..base };
    }
    let jobs = all_jobs(id, batch, begun, now, settings);
    let open = || jobs.iter().filter(|j| is_open(j));
    let finished = open().next().is_none();
    let stage = open().find(|j| !aside(j)).map_or(Stage::Pack, |j| j.stage);
    // The last step begun says where the meat is.
    let last = batch
        .recipe
        .steps
        .iter()
        .enumerate()
        .rev()
        .find(|(i, _)| tick_of(batch, *i, begun).is_some());
    let where_now = match last {
        _ if finished => "Finished".to_owned(),
        Some((_, step)) if step.act == Do::Cure => {
            format!(
                "In the cure, day {}",
                (now.saturating_sub(begun).max(0) / DAY).saturating_add(1)
            )
        }
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

/// What is to be done before the clock runs: weigh the pieces, weigh out, rub in. Never asks for cure that is in.
fn first_job(id: &str, batch: &Batch, weighed: bool) -> Job {
    let cure_in = batch.put_in.is_some() || batch.ticks.iter().any(|t| t.of.starts_with("cure:"));
    let all_in = (0..batch.recipe.lines.len()).all(|i| batch.tick(&format!("line:{i}")).is_some());
    let cured = cure_in || batch.recipe.cures.is_empty();
    let words = batch.recipe.method.words();
    let (stage, head, text) = if batch.pieces.is_empty() {
        (
            Stage::Pieces,
            "Say what is on the board",
            "How many pieces, what they weigh, how thick.",
        )
    } else if !weighed {
        (Stage::Pieces, "Weigh the pieces", "Put every size class on the scale.")
    } else if cured && all_in {
        (Stage::Weigh, words.job.0, words.job.1)
    } else if cure_in {
        (
            Stage::Weigh,
            "Weigh out the rest",
            "The cure is in already: add no more of it.",
        )
    } else if batch.recipe.cures.is_empty() {
        (Stage::Weigh, "Weigh out the salt and spice", "This recipe has no cure.")
    } else {
        (
            Stage::Weigh,
            "Weigh out the cure",
            "Cure first, then the rest into the same bowl.",
        )
    };
    Job {
        batch: id.to_owned(),
        id: "weigh".to_owned(),
        head: head.to_owned(),
        text: text.to_owned(),
        stage,
        due: None,
        ends: None,
        now: true,
        ticked: None,
        passed: false,
        early: None,
        caution: None,
        windows: Vec::new(),
    }
}

const fn waiting(job: &Job) -> &'static str {
    match job.stage {
        Stage::Pieces => "Pieces to weigh",
        _ => "Not in the cure yet",
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
    let own = batch.step(i).map(|t| t.at);
    own.or_else(|| (i == 0 && batch.recipe.steps.first().is_some_and(|s| s.act == Do::Cure)).then_some(begun))
}

/// Milliseconds of a span; nought for none.
pub(crate) fn millis(span: Option<Span>) -> i64 {
    span.and_then(|s| s.base().times(Decimal::from(MINUTE)))
        .and_then(|m| m.round().to_i64())
        .unwrap_or(0)
}

/// Every step and turn, in order of time, and the end where the last step takes time.
fn all_jobs(id: &str, batch: &Batch, begun: i64, now: i64, settings: &Settings) -> Vec<Job> {
    let units = settings.units;
    let steps = &batch.recipe.steps;
    let kinds = kinds(&batch.pieces);
    let last_ticked = (0..steps.len()).rev().find(|i| tick_of(batch, *i, begun).is_some());
    let ended = batch.tick("end").map(|t| t.at);
    let job = |of: String, act: Do, head: &str, text: String, due: i64, ticked: Option<i64>, passed: bool| Job {
        batch: id.to_owned(),
        id: of,
        head: head.to_owned(),
        text,
        stage: stage(act),
        due: Some(due),
        ends: None,
        now: ticked.is_none() && !passed && due <= now,
        ticked,
        passed: ticked.is_none() && passed,
        early: early(due, now, units).filter(|_| ticked.is_none() && !passed),
        caution: None,
        windows: Vec::new(),
    };
    let mut jobs = Vec::new();
    let mut due = begun;
    let mut clock: Option<Stay> = None;
    for (i, step) in steps.iter().enumerate() {
        // A step that is not ticked while a later one is was passed over.
        let over = last_ticked.is_some_and(|last| last > i) || ended.is_some();
        let ticked = tick_of(batch, i, begun);
        // Nothing is begun before the cure is on, whatever a clock said.
        let start = ticked.unwrap_or(due).max(begun);
        let mut length = millis(step.lasts);
        let mut text = line(step, units);
        // The step after the cure ends it, by the clock.
        let windows = clock.take().map(|stay| {
            if !stay.says.is_empty() {
                text.push_str(if text.is_empty() { "" } else { " " });
                text.push_str(&stay.says);
            }
            stay.windows
        });
        if step.act == Do::Cure && length > 0 && !over {
            clock = stay(batch, now, settings);
        }
        if let Some(stay) = &clock {
            length = length.max(stay.ends.saturating_sub(start));
        }
        jobs.push(Job {
            ends: step.lasts.map(|_| start.saturating_add(length)),
            caution: caution(step.act, &batch.recipe, &kinds),
            windows: windows.filter(|_| ticked.is_none() && !over).unwrap_or_default(),
            ..job(format!("step:{i}"), step.act, head(step.act), text, due, ticked, over)
        });
        let from = jobs.len();
        for (k, at) in turns(step, start, length).into_iter().enumerate() {
            let of = format!("turn:{i}:{k}");
            let done = batch.tick(&of).map(|t| t.at);
            // What lay frozen is not turned.
            let stood = clock.as_ref().is_some_and(|stay| stay.stands(at));
            if done.is_some() || !(over || stood) {
                let (head, text) = batch.recipe.method.words().turn;
                jobs.push(job(of, step.act, head, text.to_owned(), at, done, false));
            }
        }
        due = start.saturating_add(length);
        // Small pieces out first; those that are out stay in the list with their time.
        for draw in clock.iter().flat_map(|stay| &stay.draws) {
            let head = format!("Take out {}", draw.name);
            jobs.push(job(
                draw.id.clone(),
                Do::Rinse,
                &head,
                draw.says.clone(),
                draw.due,
                None,
                false,
            ));
        }
        for (k, piece) in batch.pieces.iter().enumerate().filter(|_| step.act == Do::Cure) {
            let of = format!("draw:{k}");
            if let Some(at) = batch.tick(&of).map(|t| t.at) {
                let head = format!("Take out {} {}", piece.count, name_of(piece));
                jobs.push(job(of, Do::Rinse, &head, String::new(), at, Some(at), false));
            }
        }
        if let Some(sorted) = jobs.get_mut(from..) {
            sorted.sort_by_key(|j| j.due);
        }
    }
    if steps.last().is_none_or(|s| s.lasts.is_some()) {
        let text = "The last step is over. Put the batch away.".to_owned();
        jobs.push(job(
            "end".to_owned(),
            Do::Pack,
            "Finish the batch",
            text,
            due,
            ended,
            false,
        ));
    }
    let next = jobs.iter_mut().find(|j| j.stage == Stage::Cure && is_open(j));
    if let (Some(job), Some(warm)) = (next, too_warm(batch, now, settings)) {
        job.caution = Some(warm.to_owned());
    }
    jobs
}

/// How far off a job is, from half an hour on.
fn early(due: i64, now: i64, units: System) -> Option<String> {
    let minutes = due.saturating_sub(now) / MINUTE;
    let span = Span::new(Decimal::from(minutes)).ok().filter(|_| minutes >= 30)?;
    Some(format!("It is due in {}.", span.show(units).text))
}

/// Still to be done.
fn is_open(job: &Job) -> bool {
    job.ticked.is_none() && !job.passed
}

/// Times of the turns within a step that lasts so long, its end left out: then the next step is due.
fn turns(step: &Step, start: i64, length: i64) -> Vec<i64> {
    let every = millis(step.turn_every);
    if every < MINUTE {
        return Vec::new();
    }
    (1..=200)
        .map(|k| every.saturating_mul(k))
        .take_while(|t| *t < length)
        .filter_map(|t| start.checked_add(t))
        .collect()
}

/// A turn, or a class that comes out first: what a step goes on beside.
fn aside(job: &Job) -> bool {
    is_turn(job) || job.id.starts_with("draw:")
}

fn is_turn(job: &Job) -> bool {
    job.id.starts_with("turn:")
}

/// What may be done soonest: the next step, what comes out first, and of the turns the last that is overdue and the
/// first that is to come.
fn soonest(state: &State) -> Vec<Job> {
    let last_turned = state.jobs.iter().rposition(|j| is_turn(j) && j.ticked.is_some());
    let missed = state
        .jobs
        .iter()
        .enumerate()
        .filter(|(at, j)| is_turn(j) && is_open(j) && j.now && last_turned.is_none_or(|t| *at > t))
        .map(|(_, j)| j)
        .next_back();
    let coming = state.jobs.iter().find(|j| is_turn(j) && is_open(j) && !j.now);
    let out = state.jobs.iter().filter(|j| aside(j) && !is_turn(j) && is_open(j));
    let step = state.jobs.iter().find(|j| !aside(j) && is_open(j));
    missed
        .into_iter()
        .chain(coming)
        .chain(out)
        .chain(step)
        .cloned()
        .collect()
}

/// The caution beside a step.
fn caution(act: Do, recipe: &Recipe, kinds: &[&str]) -> Option<String> {
    let keys: Vec<&str> = match act {
        Do::Cure | Do::Dry | Do::Soak => vec!["keep-cold"],
        Do::Smoke | Do::Cook | Do::DryOut if recipe.steps.iter().any(|s| s.act == Do::DryOut) => vec!["jerky-heat"],
        Do::Smoke | Do::Cook | Do::DryOut => heat_keys(recipe.method, kinds),
        Do::Chill => vec!["cool-fast"],
        Do::Pack => vec!["pack-words"],
        Do::Rinse | Do::Rest => Vec::new(),
    };
    let texts: Vec<&str> = cautions(&keys).into_iter().map(|c| c.text).collect();
    (!texts.is_empty()).then(|| texts.join(" "))
}
