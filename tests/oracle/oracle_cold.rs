//! The rules of the cold: the time in the cure, the refrigerator, and how long a finished batch keeps.

use crate::oracle::{Fired, Three};
use crate::table::figure;
use crate::told::{DAY, HOUR, KILLED, Kind, MINUTE, Method, Ms, Seen, Told};

fn hours(h: f64) -> Ms {
    (h * HOUR as f64) as Ms
}

/// From the rub to the fire, or to now.
fn window(told: &Told) -> Option<(Ms, Ms)> {
    let end = told.lit.or(told.cure_out).unwrap_or(told.now).min(told.now);
    told.rubbed.map(|from| (from, end.max(from)))
}

/// What was seen, with the time until the next was seen, cut to the window.
fn spans(told: &Told, (from, to): (Ms, Ms)) -> Vec<(Seen, Ms)> {
    let mut log = told.fridge.clone();
    log.sort_by_key(|(at, _)| *at);
    let ends = log.iter().skip(1).map(|(at, _)| *at).chain([Ms::MAX]);
    let cut = |((at, seen), end): (&(Ms, Seen), Ms)| (*seen, end.min(to) - (*at).max(from));
    log.iter().zip(ends).map(cut).filter(|(_, long)| *long > 0).collect()
}

pub fn cure(told: &Told, fired: &mut Vec<Fired>) {
    let mut fire = |id, bars, may| {
        fired.push(Fired {
            id,
            class: None,
            says: Three::of(bars, may),
        });
    };
    let killed = |hours: Ms| told.rubbed.is_some_and(|at| at < KILLED + hours * HOUR);
    fire(
        "C1",
        killed(-14),
        killed(12) || told.rubbed.is_some_and(|at| at > told.now),
    );
    let Some(window) = window(told) else {
        return fire("K1", true, true);
    };
    let spans = spans(told, window);
    let total = |which: &dyn Fn(Seen) -> bool| -> Ms { spans.iter().filter(|(s, _)| which(*s)).map(|(_, l)| l).sum() };
    let warm = total(&|s| matches!(s, Seen::Read(c) if c > figure("K2.warm") + 0.05));
    let any_warm = total(&|s| matches!(s, Seen::Read(c) if c > figure("K2.cold")));
    fire("K2", warm >= hours(figure("K2")) + MINUTE, any_warm > 0);

    // Without power from the switch to the switch back, whatever was read between.
    let (from, to) = window;
    let mut outage = 0;
    let mut read_cold = false;
    let mut off: Option<Ms> = None;
    let mut log = told.fridge.clone();
    log.sort_by_key(|(at, _)| *at);
    for (at, seen) in log.iter().copied().filter(|(at, _)| *at < to) {
        match seen {
            Seen::PowerOff => off = off.or(Some(at.max(from))),
            Seen::PowerOn => outage = outage.max(off.take().map_or(0, |since| at - since)),
            Seen::Read(c) if off.is_some() => read_cold |= c <= figure("K2.cold"),
            Seen::Read(_) | Seen::Frozen | Seen::Thawed => {}
        }
    }
    outage = outage.max(off.map_or(0, |since| to - since));
    let dark = outage >= hours(figure("K3")) + MINUTE;
    fire("K3", dark && !read_cold, outage > 0);

    let frozen = total(&|s| matches!(s, Seen::Frozen) || matches!(s, Seen::Read(c) if c < figure("K4")));
    fire("K4", false, frozen > 0);

    // What nobody looked at was not kept cold.
    let out = told.cure_out.unwrap_or(to).min(to).max(from);
    let mut seen: Vec<Ms> = log.iter().map(|(at, _)| (*at).clamp(from, out)).collect();
    seen.push(out);
    let mut last = from;
    let mut unseen = 0;
    for at in seen {
        unseen = unseen.max(at - last);
        last = at;
    }
    let most = hours(figure("K5"));
    fire("K5", unseen > most + MINUTE, unseen > most - MINUTE);
    let cured = (told.cure_out.unwrap_or(told.now).min(to) - from - frozen).max(0);
    let thickest = told
        .classes
        .iter()
        .map(|c| c.thick)
        .try_fold(0.0_f64, |a, t| Some(a.max(t?)));
    let (bars, may) = match (told.method, thickest) {
        // Mixed in or pumped it is in the middle from the start; how even, no published figure says.
        (Method::Ground | Method::Pumped, _) | (_, None) => (false, true),
        (_, Some(thick)) => {
            let half = thick / 2000.0;
            let fourier = figure("V.fast") * cured as f64 / 1000.0 / (half * half);
            let days = figure("K1.inch") * thick / 25.4 + figure("K1.even");
            let early = told.cure_out.is_none() && cured < hours(told.stay);
            (fourier < figure("K1.fo"), (cured as f64) < days * DAY as f64 || early)
        }
    };
    fire("K1", bars, may);
}

/// The keeping time, from the end of the heat; the latest date that a label may bear.
pub fn keeping(told: &Told, uncured: bool, fired: &mut Vec<Fired>) -> Option<Ms> {
    let ended: Option<Vec<Ms>> = told.classes.iter().map(|c| c.pulled).collect();
    let ended = ended?.into_iter().max()?;
    let birds = told.classes.iter().all(|c| c.kind == Kind::Bird);
    let mut days = figure(match (uncured, birds) {
        (true, _) => "T.uncured",
        (false, true) => "T.bird",
        (false, false) => "T.other",
    });
    if told.vacuum && !told.frozen {
        days = days.min(figure("T.vacuum"));
    }
    if told.frozen {
        days += figure("T.frozen");
    }
    let latest = ended + hours(days * 24.0 + figure("T.slack"));
    let sure = ended + hours(2.0 * 24.0);
    let red = told.classes.iter().any(|c| matches!(c.kind, Kind::Red | Kind::Boar));
    let mut fire = |id, bars, may| {
        fired.push(Fired {
            id,
            class: None,
            says: Three::of(bars, may),
        });
    };
    fire("T1", told.now > latest, told.now > sure || told.vacuum);
    fire("G1", false, red);
    fire("J1", false, told.jerky);
    Some(latest)
}
