//! The jobs of batches as a calendar file by RFC 5545.
//!
//! Every job has an id that stays, and `SEQUENCE` and `DTSTAMP` come from `now`: a later export replaces an earlier
//! one. What an earlier one held and this one does not is sent along as cancelled, so that no old alarm is left: a job
//! that was passed over, a batch that is held, put away or deleted.

use crate::batch::Batch;
use crate::quantity::{Problem, Rest};
use crate::schedule::{Job, MINUTE, Timed, next};
use crate::weigh::Settings;
use serde::{Deserialize, Serialize};

/// A calendar file.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Calendar {
    /// The file, `text/calendar`, lines ended by CR LF.
    pub text: String,
    /// Jobs to come that are in it.
    pub jobs: u32,
    /// Jobs of an earlier file that are taken off.
    pub cancelled: u32,
    /// What is in the calendar now, for the next file.
    #[cfg_attr(feature = "types", ts(as = "Vec<(String, f64)>"))]
    pub sent: Vec<Sent>,
}

/// UID of a job in a file that was handed over, and when it was due.
pub type Sent = (String, i64);

/// Words of the page for what stands in the file; where one is empty, its key stands.
#[derive(Clone, Debug, Default, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct CalendarWords {
    /// The mark of a chill after two hours.
    pub two_hours: String,
    /// When it has to be cold.
    pub cold: String,
    /// When the batch is ready.
    pub ready: String,
    /// Before a job that is done.
    #[serde(default)]
    pub done: String,
    /// In place of what is no longer to do.
    #[serde(default)]
    pub gone: String,
    /// The jobs.
    #[serde(default)]
    pub jobs: Vec<JobWords>,
}

/// Words for one job.
#[derive(Clone, Debug, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct JobWords {
    /// The id of its batch.
    pub batch: String,
    /// Its own id.
    pub id: String,
    /// What it is called.
    pub head: String,
    /// How it is done, and what to take care of.
    pub text: String,
}

impl CalendarWords {
    /// The word for a time that is no job; nothing for what is not put into a calendar.
    fn of<'a>(&'a self, id: &'a str) -> Option<&'a str> {
        let key = id.split(':').next()?;
        let word = match key {
            "two_hours" => &self.two_hours,
            "cold" => &self.cold,
            "end" => &self.ready,
            _ => return None,
        };
        Some(or(word, key))
    }

    /// What a job is called, and how it is done.
    fn job<'a>(&'a self, job: &'a Job) -> (&'a str, &'a str) {
        let mut mine = self.jobs.iter().filter(|w| w.id == job.id && w.batch == job.batch);
        mine.next().map_or((&job.id, ""), |w| (&w.head, &w.text))
    }
}

fn or<'a>(word: &'a str, key: &'a str) -> &'a str {
    if word.is_empty() { key } else { word }
}

/// How long before a job that wants somebody by all the while it rings a first time: to light a smoker. Judgement.
const LEAD: &str = "TRIGGER:-PT30M";

/// Milliseconds in a second and a day.
const SECOND: i64 = 1000;
const DAY: i64 = 1440 * MINUTE;
/// Octets of a line without its end, RFC 5545 3.1.
const LINE: usize = 75;
/// What was due longer ago is let be.
const OLD: i64 = 30 * DAY;
/// Most jobs of earlier files.
const MOST_SENT: usize = 5000;

/// The jobs of these batches at `now`, in milliseconds since 1970, with an alarm at each that is to come; `earlier` is
/// what the last file left in the calendar.
///
/// # Errors
/// Problems of the settings.
pub fn calendar(
    batches: &[(&str, &Batch)],
    earlier: &[Sent],
    now: i64,
    rests: &[Rest],
    words: &CalendarWords,
    settings: &Settings,
) -> Result<Calendar, Vec<Problem>> {
    let list = next(batches, now, rests, None, settings)?;
    let mut file = File::default();
    for line in [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//Cure Reckoner//Jobs//EN",
        "CALSCALE:GREGORIAN",
        "METHOD:PUBLISH",
    ] {
        file.line(line);
    }
    let mut kept = Vec::new();
    for ((id, batch), state) in batches.iter().zip(&list.batches) {
        let live = |job: &&Job| job.due.is_some() && !job.passed && !batch.closed && !state.held;
        for job in state.jobs.iter().filter(live) {
            let uid = format!("{id}-{}@cure-reckoner", job.id.replace(':', "-"));
            file.event(&uid, batch, job, words, now);
            kept.push((uid, job.due.unwrap_or(now)));
        }
        let marked = |timed: &&Timed| !batch.closed && !state.held && !state.jobs.iter().any(|j| j.id == timed.id);
        for timed in state.times.iter().filter(marked) {
            if let Some(word) = words.of(&timed.id) {
                let uid = format!("{id}-{}@cure-reckoner", timed.id.replace(':', "-"));
                file.mark(&uid, batch, word, timed.at, now);
                kept.push((uid, timed.at));
            }
        }
        // What cannot be reckoned keeps its old alarms.
        if state.jobs.is_empty() && !state.held && !batch.closed {
            let own = format!("{id}-");
            kept.extend(earlier.iter().filter(|(uid, _)| uid.starts_with(&own)).cloned());
        }
    }
    let mut cancelled = 0_u32;
    for (uid, due) in earlier.iter().take(MOST_SENT) {
        if due.saturating_add(OLD) >= now && !kept.iter().any(|(of, _)| of == uid) {
            file.cancel(uid, *due, or(&words.gone, "gone"), now);
            cancelled = cancelled.saturating_add(1);
        }
    }
    file.line("END:VCALENDAR");
    Ok(Calendar {
        text: file.text,
        jobs: file.jobs,
        cancelled,
        sent: kept,
    })
}

#[derive(Default)]
struct File {
    text: String,
    jobs: u32,
}

impl File {
    fn event(&mut self, uid: &str, batch: &Batch, job: &Job, words: &CalendarWords, now: i64) {
        let done = job.ticked.is_some();
        let from = job.ticked.or(job.due).unwrap_or(now);
        self.begin(uid, from, now);
        let (head, text) = words.job(job);
        let mut summary = format!("{} {head}", batch.tag);
        if done {
            summary = format!("{}: {summary}", or(&words.done, "done"));
        }
        self.text_line("SUMMARY", &summary);
        let mut parts = vec![batch.name.as_str(), text];
        parts.retain(|p| !p.is_empty());
        self.text_line("DESCRIPTION", &parts.join("\n"));
        self.line("STATUS:CONFIRMED");
        self.line("TRANSP:TRANSPARENT");
        if !done {
            self.jobs = self.jobs.saturating_add(1);
            let says = format!("{}: {head}", batch.name);
            self.alarm("TRIGGER:PT0S", &says);
            if job.presence {
                self.alarm(LEAD, &says);
            }
        }
        self.line("END:VEVENT");
    }

    /// A moment to know of, with an alarm while it is to come.
    fn mark(&mut self, uid: &str, batch: &Batch, word: &str, at: i64, now: i64) {
        self.begin(uid, at, now);
        self.text_line("SUMMARY", &format!("{} {word}", batch.tag));
        self.text_line("DESCRIPTION", &batch.name);
        self.line("STATUS:CONFIRMED");
        self.line("TRANSP:TRANSPARENT");
        if at > now {
            self.alarm("TRIGGER:PT0S", &format!("{}: {word}", batch.name));
        }
        self.line("END:VEVENT");
    }

    fn alarm(&mut self, trigger: &str, says: &str) {
        self.line("BEGIN:VALARM");
        self.line("ACTION:DISPLAY");
        self.line(trigger);
        self.text_line("DESCRIPTION", says);
        self.line("END:VALARM");
    }

    fn cancel(&mut self, uid: &str, due: i64, word: &str, now: i64) {
        self.begin(uid, due, now);
        self.text_line("SUMMARY", word);
        self.line("STATUS:CANCELLED");
        self.line("END:VEVENT");
    }

    fn begin(&mut self, uid: &str, from: i64, now: i64) {
        self.line("BEGIN:VEVENT");
        self.text_line("UID", uid);
        self.line(&format!("DTSTAMP:{}", utc(now)));
        self.line(&format!("LAST-MODIFIED:{}", utc(now)));
        // Whole minutes since 1970: it only grows, and stays within 32 bits.
        self.line(&format!(
            "SEQUENCE:{}",
            now.div_euclid(MINUTE).clamp(0, i64::from(i32::MAX))
        ));
        self.line(&format!("DTSTART:{}", utc(from)));
        self.line("DURATION:PT15M");
    }

    /// A property whose value is text: escaped by RFC 5545 3.3.11, control characters left out.
    fn text_line(&mut self, name: &str, value: &str) {
        let mut out = format!("{name}:");
        for c in value.chars() {
            match c {
                '\\' | ';' | ',' => {
                    out.push('\\');
                    out.push(c);
                }
                '\n' => out.push_str("\\n"),
                c if c.is_control() => {}
                c => out.push(c),
            }
        }
        self.line(&out);
    }

    /// One content line, folded at 75 octets and never within a character.
    fn line(&mut self, line: &str) {
        let mut width = 0_usize;
        for c in line.chars() {
            if width.saturating_add(c.len_utf8()) > LINE {
                self.text.push_str("\r\n ");
                width = 1;
            }
            self.text.push(c);
            width = width.saturating_add(c.len_utf8());
        }
        self.text.push_str("\r\n");
    }
}

/// `20261114T063000Z`. Days to a date by the era arithmetic of the proleptic Gregorian calendar.
fn utc(ms: i64) -> String {
    let (days, rest) = (ms.div_euclid(DAY), ms.rem_euclid(DAY) / SECOND);
    let (year, month, day) = date(days);
    let (hour, minute, second) = (rest / 3600, rest / 60 % 60, rest % 60);
    format!("{year:04}{month:02}{day:02}T{hour:02}{minute:02}{second:02}Z")
}

/// Year, month and day of a day counted from 1970-01-01; years 1970 to 9999, others at the nearer end.
fn date(days: i64) -> (i64, i64, i64) {
    /// Days from 0000-03-01 to 1970-01-01, and in 400, 100, 4 and 1 years.
    const SHIFT: i64 = 719_468;
    const ERA: i64 = 146_097;
    let day = days.clamp(0, 2_932_896).saturating_add(SHIFT);
    let (era, of_era) = (day.div_euclid(ERA), day.rem_euclid(ERA));
    // Leap days are taken out, so that what is left divides by 365.
    let leaps = (of_era / 1460)
        .saturating_sub(of_era / 36_524)
        .saturating_add(of_era / 146_096);
    let year = of_era.saturating_sub(leaps) / 365;
    let before = year
        .saturating_mul(365)
        .saturating_add(year / 4)
        .saturating_sub(year / 100);
    let of_year = of_era.saturating_sub(before);
    // Months from March, 153 days to five of them.
    let march = of_year.saturating_mul(5).saturating_add(2) / 153;
    let day = of_year
        .saturating_sub(march.saturating_mul(153).saturating_add(2) / 5)
        .saturating_add(1);
    let (month, later) = if march < 10 {
        (march.saturating_add(3), 0)
    } else {
        (march.saturating_sub(9), 1)
    };
    let year = year.saturating_add(era.saturating_mul(400)).saturating_add(later);
    (year, month, day)
}
