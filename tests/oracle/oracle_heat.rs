//! The rules of the fire and the chill, one size class at a time.

use crate::oracle::{Fired, Three};
use crate::table::figure;
use crate::told::{Class, HOUR, Kind, MINUTE, Method, Ms, Reading, Told, celsius, fahrenheit};

/// Tenth of a degree: what a typed reading may be off by rounding.
const ROUNDED: f64 = 0.1;

/// A reading in °C at a time.
type Point = (Ms, f64);

pub fn class(told: &Told, place: usize, fired: &mut Vec<Fired>) {
    let class = &told.classes[place];
    let mut fire = |id, bars, may| {
        fired.push(Fired {
            id,
            class: Some(place),
            says: Three::of(bars, may),
        });
    };
    let mut log: Vec<&Reading> = class
        .readings
        .iter()
        .filter(|r| !r.struck && r.at <= told.now)
        .collect();
    log.sort_by_key(|r| r.at);
    let log: Vec<Point> = log.iter().map(|r| (r.at, r.celsius())).collect();
    fire("H8", class.pulled.is_none(), false);
    if log.is_empty() {
        fire("H1", true, true);
        return fire("X2", true, true);
    }
    let pulled = class.pulled.unwrap_or(Ms::MAX);
    let (pre, post): (Vec<Point>, Vec<Point>) = log.iter().partition(|(at, _)| *at <= pulled);
    heat(told, class, &log, &pre, &mut fire);
    come_up(&pre, &mut fire);
    if class.pulled.is_some() {
        chill(told, pulled, &pre, &post, &mut fire);
    } else {
        fire("X2", true, true);
    }
}

/// What it needs: the row, and the temperature from which on it must be allowed.
fn needed(told: &Told, class: &Class) -> (&'static str, f64) {
    match class.kind {
        Kind::Bird => ("H3.bird", celsius(figure("H3.bird"))),
        Kind::Boar => ("H3.boar", celsius(figure("H3.boar"))),
        Kind::Hare => ("H3.hare", celsius(figure("H3.bird"))),
        Kind::Red if told.method == Method::Ground => ("H3.ground", celsius(figure("H3.ground"))),
        Kind::Red => ("H3.red", celsius(figure("H3.red"))),
    }
}

fn heat(told: &Told, class: &Class, log: &[Point], pre: &[Point], fire: &mut impl FnMut(&'static str, bool, bool)) {
    let (row, sure) = needed(told, class);
    let need = celsius(figure(row));
    let most = log.iter().fold(f64::MIN, |a, p| a.max(p.1));
    let before = pre.iter().fold(f64::MIN, |a, p| a.max(p.1));
    let short = |of: f64| most < of - ROUNDED;
    let at_risk = told.at_risk == Some(true);
    let doubtful = before < sure + 3.0 * ROUNDED;

    // The table may stand in for the temperature, and 145 °F with a rest for red game where it was asked.
    let credit = class.kind != Kind::Boar && !told.jerky && credit(class.kind, log) >= 1.0;
    let choice = row == "H3.red" && told.target.is_some() && !short(celsius(figure("H3.red-choice")));
    fire(row, (at_risk || !choice) && !credit && short(need), doubtful);
    fire("H6", at_risk && short(need), false);
    let jerky = celsius(figure("H5")).max(if class.kind == Kind::Bird { need } else { 0.0 });
    fire("H5", told.jerky && short(jerky), false);
    let asked_less = told.target.is_some_and(|t| t < told.until);
    fire(
        "H4",
        !short(need) && short(told.until) && !asked_less,
        before < told.until + ROUNDED,
    );

    // Partly cooked and cold again; what falls within half an hour may be another piece.
    let cold = celsius(figure("H9.cold"));
    let done = log
        .iter()
        .position(|p| p.1 >= need.min(celsius(figure("H3.red-choice"))) - ROUNDED);
    let way = &log[..done.unwrap_or(log.len())];
    let fell = |from: f64, after: Ms| {
        let warm = way.iter().find(|p| p.1 >= from).map(|p| p.0);
        warm.is_some_and(|warm| way.iter().any(|p| p.1 <= cold - ROUNDED && p.0 - warm > after))
    };
    let taken = class.pulled.is_some_and(|at| told.now - at > 2 * HOUR);
    fire(
        "H9",
        fell(figure("H9"), 30 * MINUTE),
        fell(10.0, 0) || taken && short(sure),
    );

    let hot = |p: &&Point| p.1 >= need - ROUNDED;
    let real = |p: &&Point| hot(p) && p.1 <= figure("H7") + 0.5;
    fire(
        "H7",
        log.iter().any(|p| hot(&p)) && !log.iter().any(|p| real(&p)),
        most > figure("H7"),
    );

    // The coldest of what was probed, and the way it went.
    if let Some(first) = pre.iter().position(|p| hot(&p)) {
        let later = &pre[first + 1..];
        let colder = later.iter().rposition(|p| p.1 < need - 1.5 * ROUNDED);
        let mended = colder.is_some_and(|at| later[at + 1..].iter().any(|p| hot(&p)));
        let soon = colder.is_some_and(|at| {
            let hottest = pre[..=first + at].iter().rev().find(hot).map_or(0, |p| p.0);
            (later[at].0 - hottest) as f64 <= figure("H2") * MINUTE as f64
        });
        fire("H2", soon && !mended, colder.is_some());
    }
}

/// The most that the table can count: each stretch at the hotter of its ends.
fn credit(kind: Kind, log: &[Point]) -> f64 {
    let stretch = |pair: &[Point]| {
        let seconds = (pair[1].0 - pair[0].0) as f64 / 1000.0;
        seconds / required(kind, fahrenheit(pair[0].1.max(pair[1].1)))
    };
    log.windows(2).map(stretch).sum()
}

/// Seconds that the table asks for at a temperature, or less; the log is straight between its rows.
fn required(kind: Kind, f: f64) -> f64 {
    // FSIS Cooking Guideline 2021, 12 % fat, the longer of chicken and turkey for ducks and geese, minutes at °F.
    const BIRD: [(f64, f64); 8] = [
        (136.0, 81.4),
        (140.0, 35.0),
        (145.0, 13.0),
        (150.0, 4.2),
        (153.0, 1.6),
        (155.0, 0.9),
        (160.0, 0.28),
        (165.0, 0.16),
    ];
    if kind != Kind::Bird {
        if f < figure("Z.floor-meat") {
            return f64::INFINITY;
        }
        // The table is up to 11 % off the line; the oracle bars only what is short by more.
        return 0.89 * figure("Z.log") * 10.37 * 10f64.powf((150.0 - f) / 10.0);
    }
    if f < figure("Z.floor-bird") {
        return f64::INFINITY;
    }
    let above = BIRD.iter().position(|row| row.0 > f);
    let Some(above) = above else { return 0.0 };
    let ((f0, t0), (f1, t1)) = (BIRD[above - 1], BIRD[above]);
    let log = t0.ln() + (t1.ln() - t0.ln()) * (f - f0) / (f1 - f0);
    0.9 * 60.0 * log.exp()
}

/// How long it was between two lines on the way up: surely, and at most.
fn come_up(pre: &[Point], fire: &mut impl FnMut(&'static str, bool, bool)) {
    let (low, high) = (celsius(figure("U1.from")), celsius(figure("U1.to")));
    let reached = pre.iter().position(|p| p.1 >= high);
    let way = &pre[..reached.unwrap_or(pre.len())];
    let cold = way.iter().rposition(|p| p.1 <= low);
    let from = cold.map_or(0, |c| c + 1);
    let surely = match (way.get(from), way.last()) {
        (Some(first), Some(last)) => last.0 - first.0,
        _ => 0,
    };
    let last = reached.map(|r| pre[r].0).or(way.last().map(|p| p.0));
    let first = cold.map(|c| way[c].0).or(pre.first().map(|p| p.0));
    let at_most = last.zip(first).map_or(0, |(last, first)| last - first);
    let limit = (figure("U1") * HOUR as f64) as Ms;
    fire("U1", surely > limit + MINUTE, at_most > limit);
    fire("U2", false, cold.is_none());
}

/// Between two lines on the way down: surely, and at most. Nothing on the one side where the line was never crossed.
fn falling(start: Ms, log: &[Point], from: f64, to: f64) -> (Ms, Ms) {
    let below = |line: f64| log.iter().find(|p| p.1 <= line).map(|p| p.0);
    let above = |line: f64| log.iter().rev().find(|p| p.1 > line).map(|p| p.0);
    let surely = below(from).zip(above(to)).map_or(0, |(begun, still)| still - begun);
    let begun = below(from).map(|b| log.iter().rev().find(|p| p.0 < b).map_or(start, |p| p.0));
    let at_most = match (begun, below(to)) {
        (Some(begun), Some(done)) => done - begun,
        (None, _) => 0,
        (Some(_), None) => Ms::MAX,
    };
    (surely, at_most)
}

fn chill(told: &Told, pulled: Ms, pre: &[Point], post: &[Point], fire: &mut impl FnMut(&'static str, bool, bool)) {
    let hours = |id: &str| (figure(id) * HOUR as f64) as Ms;
    let mut log: Vec<Point> = pre.last().map(|p| (pulled, p.1)).into_iter().collect();
    log.extend_from_slice(post);
    let span = |from: f64, to: f64| falling(pulled, &log, celsius(from), celsius(to));
    let late = |(surely, _): (Ms, Ms), id: &str| surely > hours(id) + MINUTE;
    let fine = |(_, at_most): (Ms, Ms), id: &str| at_most <= hours(id);
    let (fc1, fc2) = (span(135.0, 70.0), span(135.0, 41.0));
    let (b1a, b1b) = (span(130.0, 80.0), span(80.0, 40.0));
    let (b2a, b2) = (span(120.0, 80.0), span(120.0, 55.0));
    let salty = told.salt >= 2.0 && told.agent.is_some() && told.aim >= figure("E.effect");
    let slow = late(span(120.0, 40.0), "X1.b4");
    let no_food_code = late(fc1, "X1.fc1") || late(fc2, "X1.fc2");
    let no_first = late(b1a, "X1.b1a") || late(b1b, "X1.b1b");
    let no_second = late(b2, "X1.b2") || late(b2a, "X1.b2a");
    let no_cured = slow || !salty;
    let all_late = no_food_code && no_first && no_second && no_cured;
    let all_fine = fine(fc1, "X1.fc1") && fine(fc2, "X1.fc2") && fine(b1a, "X1.b1a") && fine(b1b, "X1.b1b");
    fire("X1", all_late, !all_fine && !post.is_empty());
    let line = celsius(figure("X2"));
    let cold = post.iter().any(|p| p.1 <= line + ROUNDED);
    let last_cold = post.last().is_some_and(|p| p.1 <= celsius(40.0));
    fire("X2", !cold, !last_cold);
}
