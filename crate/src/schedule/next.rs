//! Jobs over all batches, with the times of each batch's course.

use super::course::{Course, course, tick_of};
use super::deed::{Deed, Whereabouts};
use super::legs::MINUTE;
use super::model::{Job, NextList, State};
use super::times::Timed;
use crate::batch::{Batch, green, kinds, odd_times};
use crate::cure::TOO_LONG_MS;
use crate::dose::heat_keys;
use crate::order::InOrder;
use crate::pantry::MeatKind;
use crate::quantity::{Awake, Mass, Problem, Rest, Span, System};
use crate::recipe::{Basis, Do, Recipe, Step, Told, told};
use crate::standing::{Assurance, Kind, Packing, Stage, Standing, cooks};
use crate::weigh::{Settings, verdict};
use rust_decimal::Decimal;

const DAY: i64 = 1440 * MINUTE;

/// What comes next over these batches at `now`, in milliseconds since 1970, beside hours of rest; `east` as
/// [`odd_times`] has it.
///
/// # Errors
/// Problems of the settings. A batch that cannot be reckoned says so in its state and has no jobs.
pub fn next(
    batches: &[(&str, &Batch)],
    now: i64,
    rests: &[Rest],
    east: Option<i32>,
    settings: &Settings,
) -> Result<NextList, Vec<Problem>> {
    let mut problems = settings.problems();
    let awake = Awake::but_for(rests).unwrap_or_else(|problem| {
        problems.push(problem);
        Awake::default()
    });
    if !problems.is_empty() {
        return Err(problems);
    }
    let mut jobs = Vec::new();
    let mut states = Vec::new();
    for (id, batch) in batches {
        let mut state = state(id, batch, now, settings, &awake);
        if !batch.closed {
            state.odd_times = odd_times(batch, now, east);
        }
        let asked = state.jobs.iter().find(|j| j.id == ASKED);
        jobs.extend(asked.filter(|_| !batch.closed).cloned());
        if !state.held && !batch.closed {
            jobs.extend(state.jobs.iter().find(|j| is_cold(j) && is_open(j)).cloned());
            jobs.extend(soonest(&state));
        }
        states.push(state);
    }
    // What is due now comes first, also where it has no clock yet.
    jobs.order_by_key(|j: &Job| (!j.now, j.due));
    Ok(NextList { jobs, batches: states })
}

/// Where one batch stands, with all its jobs.
fn state(id: &str, batch: &Batch, now: i64, settings: &Settings, awake: &Awake) -> State {
    let verdict = verdict(batch, settings);
    let standing = Standing::judged(batch, settings, &verdict, now, Packing::default());
    let barring = standing.barring(Assurance::GoOn);
    let base = State {
        batch: id.to_owned(),
        stage: barring.first().map_or(Stage::Pieces, |d| d.stage),
        held: !barring.is_empty(),
        doubts: standing.doubts().to_vec(),
        odd_times: Vec::new(),
        whereabouts: None,
        green: None,
        problem: None,
        finished: batch.closed,
        jobs: Vec::new(),
        until: None,
        times: Vec::new(),
    };
    let green = green(&batch.pieces).ok();
    let Some(begun) = batch.tick("rub").map(|t| t.at) else {
        if base.held {
            return base;
        }
        let job = first_job(id, batch, green.is_some_and(|g| g.weighed));
        return State {
            stage: job.stage,
            whereabouts: Some(waiting(&job)),
            jobs: vec![job],
            ..base
        };
    };
    if let Err(problems) = verdict {
        let problem = problems.into_iter().next();
        return State { problem, ..base };
    }
    let Some(course) = course(batch, now, settings, awake) else {
        return base;
    };
    let mut jobs = all_jobs(id, batch, begun, now, settings, &course);
    let base = State {
        until: course.until,
        times: course.times,
        ..base
    };
    if base.held {
        // Nobody knows whether the cure is in: that is asked before anything else.
        let asks = base.doubts.iter().any(|d| d.kind == Kind::CureNotIn);
        let jobs = asks.then(|| ask_cure(id)).into_iter().chain(jobs).collect();
        return State { jobs, ..base };
    }
    if let Some(cold) = into_the_cold(id, batch, &jobs, now, settings.units) {
        jobs.insert(usize::from(!jobs.is_empty()), cold);
    }
    if to_read(batch, begun) {
        let next = jobs.iter().position(|j| is_open(j) && !aside(j)).unwrap_or(jobs.len());
        jobs.insert(next, at_once(id, READ, Stage::Fire, Deed::ReadFire));
    }
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
    let whereabouts = match last {
        _ if finished => Whereabouts::Finished,
        Some((_, step)) if step.act == Do::Cure => {
            let days = now.saturating_sub(begun).max(0) / DAY;
            Whereabouts::InCure {
                day: u32::try_from(days.saturating_add(1)).unwrap_or(u32::MAX),
            }
        }
        Some((_, step)) => Whereabouts::Begun { act: step.act },
        None => Whereabouts::CureOn,
    };
    let weight = green.and_then(|g| Mass::new(g.grams.typical).ok());
    State {
        stage,
        whereabouts: Some(whereabouts),
        green: weight.map(|m| m.show(settings.units).text),
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
    let (stage, does) = if batch.pieces.is_empty() {
        (Stage::Pieces, Deed::SayPieces)
    } else if !weighed {
        (Stage::Pieces, Deed::WeighPieces)
    } else if cured && all_in {
        let method = batch.recipe.method;
        (Stage::Weigh, Deed::Start { method })
    } else if cure_in {
        (Stage::Weigh, Deed::WeighRest)
    } else if batch.recipe.cures.is_empty() {
        (Stage::Weigh, Deed::WeighSalt)
    } else {
        (Stage::Weigh, Deed::WeighCure)
    };
    at_once(id, "weigh", stage, does)
}

/// What is to be done before anything has its time.
fn at_once(batch: &str, id: &str, stage: Stage, does: Deed) -> Job {
    Job {
        batch: batch.to_owned(),
        id: id.to_owned(),
        does,
        stage,
        due: None,
        ends: None,
        now: true,
        ticked: None,
        passed: false,
        early: None,
        cautions: Vec::new(),
        class: None,
        kind: Basis::Recipe,
        presence: true,
    }
}

/// Id of the job and the tick that say that it lies in the refrigerator.
const COLD: &str = "fridge";
/// Rubbed, it goes into the cold: no time of the course moves by it. Asked for until it is ticked, or the refrigerator is
/// read, or something later is due or done; told as done from then on.
fn into_the_cold(id: &str, batch: &Batch, jobs: &[Job], now: i64, units: System) -> Option<Job> {
    let ticked = batch.tick(COLD).map(|t| t.at);
    let cures_first = batch.recipe.steps.first().is_some_and(|s| s.act == Do::Cure);
    let later = || jobs.iter().skip(1).any(|j| j.now || j.ticked.is_some());
    if ticked.is_none() && (!cures_first || !batch.fridge.is_empty() || later()) {
        return None;
    }
    let on = batch.tick("rub").map_or(0, |rub| now.saturating_sub(rub.at));
    let on = (ticked.is_none() && on >= TOO_LONG_MS).then(|| Span::new(Decimal::from(on / MINUTE)));
    let on = on.and_then(Result::ok).map(|on| on.show(units).text);
    Some(Job {
        now: ticked.is_none(),
        ticked,
        presence: false,
        ..at_once(id, COLD, Stage::Cure, Deed::IntoFridge { on })
    })
}

/// Id of the job of reading the fire; nothing ticks it but the first reading.
const READ: &str = "read";

/// The last step begun is one that cooks, and nothing of it was read.
fn to_read(batch: &Batch, begun: i64) -> bool {
    let steps = batch.recipe.steps.iter().enumerate();
    let last = steps.rev().find(|(i, _)| tick_of(batch, *i, begun).is_some());
    let mut readings = batch.fire.iter().flat_map(|f| &f.readings);
    let ended = batch.tick("end").is_some();
    !ended && last.is_some_and(|(_, s)| cooks(s)) && !readings.any(|r| !r.struck && r.class.is_some())
}

/// Id of the job that asks whether the cure is in.
const ASKED: &str = "cure:0";

fn ask_cure(id: &str) -> Job {
    at_once(id, ASKED, Stage::Weigh, Deed::AskCure)
}

const fn waiting(job: &Job) -> Whereabouts {
    match job.stage {
        Stage::Pieces => Whereabouts::PiecesToWeigh,
        _ => Whereabouts::NotInCure,
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

/// Every step and turn, in order of time, and the end where the last step takes time.
fn all_jobs(id: &str, batch: &Batch, begun: i64, now: i64, settings: &Settings, course: &Course) -> Vec<Job> {
    let steps = &batch.recipe.steps;
    let kinds = kinds(&batch.pieces);
    let last_ticked = (0..steps.len()).rev().find(|i| tick_of(batch, *i, begun).is_some());
    let ended = batch.tick("end").map(|t| t.at);
    let job = |timed: &Timed| -> Option<Job> {
        let i = usize::try_from(timed.step).ok()?;
        let of = timed.id.split(':').next()?;
        let step = steps.get(i);
        let act = step.map_or(Do::Pack, |s| s.act);
        // A step that is not ticked while a later one is was passed over.
        let over = last_ticked.is_some_and(|last| last > i) || ended.is_some();
        let own = batch.tick(&timed.id).map(|t| t.at);
        let (ticked, does, stage) = match of {
            "step" => (
                tick_of(batch, i, begun),
                Deed::Step {
                    step: clocked(step?, course, settings.units),
                },
                stage(act),
            ),
            "turn" => {
                // What was missed is not asked for once a later step is begun, or another turn or the next step is due: of
                // all, since what comes out first leaves the rest in its cure.
                let follows = |t: &Timed| t.step > timed.step && t.class.is_none() || is_turn_id(&t.id);
                let due = |t: &&Timed| t.at > timed.at && t.at <= now && t.step >= timed.step;
                let later = || course.times.iter().filter(due).any(follows);
                own.or_else(|| (!over && !later()).then_some(0))?;
                let method = batch.recipe.method;
                (own, Deed::Turn { method }, stage(act))
            }
            "draw" => {
                let class = timed.class?;
                (own, Deed::TakeOut { class }, stage(Do::Rinse))
            }
            // While the rest is in its cure, what came out before it goes its own way.
            "rinse" | "dry" if batch.drawn(timed.class?).is_some() => {
                let (class, step) = (timed.class?, told(step?, settings.units));
                let open = own.is_some() || !over && batch.is_in_cure();
                open.then_some(())?;
                (own, Deed::StepOf { class, step }, stage(act))
            }
            "end" if steps.last().is_none_or(|s| s.takes(&kinds).is_some()) => (ended, Deed::Finish, Stage::Pack),
            _ => return None,
        };
        let passed = of == "step" && ticked.is_none() && over;
        let open = ticked.is_none() && !passed;
        Some(Job {
            batch: id.to_owned(),
            id: timed.id.clone(),
            does,
            stage,
            due: Some(timed.at),
            ends: timed.ends,
            now: open && timed.at <= now,
            ticked,
            passed,
            early: early(timed.at, now, settings.units).filter(|_| open),
            cautions: step
                .filter(|_| of == "step")
                .map(|s| caution_keys(s, &batch.recipe, &kinds))
                .unwrap_or_default(),
            class: timed.class,
            kind: timed.kind,
            presence: timed.presence,
        })
    };
    course.times.iter().filter_map(job).collect()
}

fn is_turn_id(id: &str) -> bool {
    id.starts_with("turn:")
}

/// A step as its job tells it: where the clock says how long, the recipe's hours are none.
fn clocked(step: &Step, course: &Course, units: System) -> Told {
    let by_clock = step.act == Do::Cure && course.until.as_ref().is_some_and(|u| u.kind == Basis::Forecast);
    let step = told(step, units);
    Told {
        lasts: step.lasts.filter(|_| !by_clock),
        ..step
    }
}

/// How far off a job is, from half an hour on.
fn early(due: i64, now: i64, units: System) -> Option<String> {
    let minutes = due.saturating_sub(now) / MINUTE;
    let span = Span::new(Decimal::from(minutes)).ok().filter(|_| minutes >= 30)?;
    Some(span.show(units).text)
}

/// Still to be done.
fn is_open(job: &Job) -> bool {
    job.ticked.is_none() && !job.passed
}

/// A turn, a class that comes out first, the way into the cold: what a step goes on beside.
fn aside(job: &Job) -> bool {
    is_turn(job) || is_cold(job) || is_of_size(job)
}

fn is_cold(job: &Job) -> bool {
    job.id == COLD
}

/// Of a size class that comes out of the cure before the rest.
fn is_of_size(job: &Job) -> bool {
    let of = job.id.split(':').next();
    matches!(of, Some("draw" | "rinse" | "dry"))
}

fn is_turn(job: &Job) -> bool {
    is_turn_id(&job.id)
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
    let out = state.jobs.iter().filter(|j| is_of_size(j) && is_open(j));
    let step = state.jobs.iter().find(|j| !aside(j) && is_open(j));
    missed
        .into_iter()
        .chain(coming)
        .chain(out)
        .chain(step)
        .cloned()
        .collect()
}

/// The cautions beside a step.
fn caution_keys(step: &Step, recipe: &Recipe, kinds: &[MeatKind]) -> Vec<&'static str> {
    match step.act {
        Do::Smoke if step.is_cold_smoke() => vec!["cold-smoke-time", "cold-smoke"],
        Do::Cure | Do::Dry | Do::Soak => vec!["keep-cold"],
        Do::Smoke | Do::Cook | Do::DryOut if recipe.steps.iter().any(|s| s.act == Do::DryOut) => vec!["jerky-heat"],
        Do::Smoke | Do::Cook | Do::DryOut => heat_keys(recipe.method, kinds),
        Do::Chill => vec!["cool-fast"],
        Do::Pack => vec!["pack-words"],
        Do::Rinse | Do::Rest => Vec::new(),
    }
}
