//! Which tests come through which fault, and whether one of them sees it.

use crate::weave::{Fault, binaries};
use std::collections::{BTreeMap, BTreeSet};
use std::io::Write;
use std::os::unix::process::ExitStatusExt;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::Mutex;
use std::sync::atomic::{AtomicUsize, Ordering::Relaxed};
use std::thread;
use std::time::{Duration, Instant};

/// Tests that draw at random or look at many hours of many pieces: slow ones, by their target or their file, which are asked
/// last and only where they are wanted.
const SLOW: [&str; 5] = ["smoke_habit", "smoke_hard", "chills", "properties", "oracle"];
const THREADS: usize = 2;
/// Bytes that a test may ask for; a fault in a loop would take all there are.
const MEMORY: u64 = 4 << 30;
/// By this a process ends that has used up its time.
const SIGXCPU: i32 = 24;
/// Seconds for a test without a fault.
const LONG: u64 = 600;

struct Test {
    binary: PathBuf,
    name: String,
    /// Binaries asked after the others have a higher number.
    turn: usize,
    took: Duration,
    reached: BTreeSet<u32>,
}

enum End {
    Passed,
    Failed,
    TimedOut,
}

impl Test {
    /// It, with so many seconds of a processor at most: by the clock a busy machine would end it.
    fn command(&self, seconds: u64) -> Command {
        let mut command = Command::new("prlimit");
        command
            .args([format!("--as={MEMORY}"), format!("--cpu={seconds}")])
            .arg(&self.binary);
        command.args(["--exact", &self.name, "--test-threads", "1"]);
        command.stdout(Stdio::null()).stderr(Stdio::null());
        // The same draws each time, few of them, and none kept.
        command
            .env("PROPTEST_RNG_SEED", "1")
            .env("PROPTEST_DISABLE_FAILURE_PERSISTENCE", "1");
        command.env("PROPTEST_MAX_SHRINK_ITERS", "0").env("ORACLE", "300");
        command
    }

    fn run(&self, command: &mut Command, package: &Path) -> End {
        let status = command.current_dir(package).status();
        let status = status.unwrap_or_else(|error| panic!("{}: {error}", self.name));
        match status.signal() {
            Some(SIGXCPU) => End::TimedOut,
            _ if status.success() => End::Passed,
            _ => End::Failed,
        }
    }
}

/// Does it for every place of a list, on so many threads.
fn each(count: usize, what: impl Fn(usize) + Sync) {
    let next = AtomicUsize::new(0);
    thread::scope(|scope| {
        for _ in 0..THREADS {
            scope.spawn(|| {
                loop {
                    let at = next.fetch_add(1, Relaxed);
                    if at >= count {
                        return;
                    }
                    what(at);
                }
            });
        }
    });
}

/// Every test with what it reaches.
fn traced(tree: &Path, slow: bool) -> Vec<Test> {
    let mut tests = Vec::new();
    for (target, binary) in binaries(tree) {
        let out = Command::new(&binary).args(["--list", "--format", "terse"]).output();
        let out = out.unwrap_or_else(|error| panic!("{target}: {error}"));
        let listed = String::from_utf8_lossy(&out.stdout).into_owned();
        for name in listed.lines().filter_map(|line| line.strip_suffix(": test")) {
            let file = name.split("::").next().unwrap_or_default();
            let place = SLOW.iter().position(|slow| *slow == target || *slow == file);
            if place.is_none() || slow {
                tests.push(Test {
                    binary: binary.clone(),
                    name: name.to_owned(),
                    turn: place.map_or(0, |at| at + 1),
                    took: Duration::ZERO,
                    reached: BTreeSet::new(),
                });
            }
        }
    }
    let package = tree.join("tests");
    let tests: Vec<Mutex<Test>> = tests.into_iter().map(Mutex::new).collect();
    each(tests.len(), |at| {
        let Ok(mut test) = tests[at].lock() else { return };
        let file = tree.with_file_name(format!("trace-{at}"));
        let _ = std::fs::remove_file(&file);
        let traced = test.run(test.command(LONG).env("MUTANT_TRACE", &file), &package);
        let begun = Instant::now();
        let passed = test.run(test.command(LONG).env("MUTANT", "0"), &package);
        test.took = begun.elapsed();
        let reached = std::fs::read_to_string(&file).unwrap_or_default();
        let _ = std::fs::remove_file(&file);
        if !matches!((traced, passed), (End::Passed, End::Passed)) {
            // Such as one that wants more draws than it gets here.
            eprintln!("left out, since it fails without a fault: {}", test.name);
            return;
        }
        test.reached = reached.lines().filter_map(|line| line.parse().ok()).collect();
    });
    let tests = tests.into_iter().filter_map(|test| test.into_inner().ok());
    let mut tests: Vec<Test> = tests.collect();
    tests.sort_by_key(|test| (test.turn, test.took));
    tests
}

/// What was written of each fault in an earlier run, by its name.
pub fn earlier(tree: &Path) -> BTreeMap<String, String> {
    let text = std::fs::read_to_string(results(tree)).unwrap_or_default();
    let named = |line: &str| Some((line.split('\t').nth(1)?.to_owned(), format!("{line}\n")));
    text.lines().filter_map(named).collect()
}

fn results(tree: &Path) -> PathBuf {
    tree.with_file_name("results.txt")
}

/// What is written of a fault: `caught` by which test, `survived` or `not viable`.
fn line(fault: &Fault, what: &str, by: &str) -> String {
    format!("{what}\t{}\t{by}\n", fault.name)
}

/// Asks the tests, cheapest first, until one sees it.
fn ask<'a>(tests: impl Iterator<Item = (usize, &'a Test)>, fault: &Fault, package: &Path) -> (String, Option<usize>) {
    let mut reach = tests.filter(|(_, test)| test.reached.contains(&fault.id)).peekable();
    if reach.peek().is_none() {
        return (line(fault, "survived", "not reached"), None);
    }
    let id = fault.id.to_string();
    for (at, test) in reach {
        let how = match test.run(test.command(test.took.as_secs() * 10 + 3).env("MUTANT", &id), package) {
            End::Passed => continue,
            End::Failed => "",
            End::TimedOut => " in no time",
        };
        return (line(fault, "caught", &format!("{}{how}", test.name)), Some(at));
    }
    (line(fault, "survived", ""), None)
}

/// Asks the tests about every fault that they have not seen yet, writes what they say, and prints the sum.
pub fn all(tree: &Path, faults: &[Fault], mut known: BTreeMap<String, String>, slow: bool) {
    let tests = traced(tree, slow);
    let whole: Duration = tests.iter().map(|test| test.took).sum();
    eprintln!("{} tests in {whole:.1?}, {} faults", tests.len(), faults.len());
    let is_caught = |fault: &&Fault| known.get(&fault.name).is_some_and(|line| line.starts_with("caught"));
    let open: Vec<&Fault> = faults.iter().filter(|fault| !is_caught(fault)).collect();
    let package = tree.join("tests");
    // Written as it goes, so that a run that is broken off is not lost.
    let log = std::fs::OpenOptions::new()
        .create(true)
        .append(true)
        .open(results(tree));
    let log = Mutex::new(log.unwrap_or_else(|error| panic!("results.txt: {error}")));
    let told = Mutex::new(Vec::new());
    // What saw the last fault of a file is likely to see the next one.
    let last: Mutex<BTreeMap<&str, usize>> = Mutex::default();
    each(open.len(), |at| {
        let fault = open[at];
        let said = if fault.viable {
            let first = last.lock().ok().and_then(|last| last.get(fault.file.as_str()).copied());
            let order = first.into_iter().chain(0..tests.len());
            let (said, seen) = ask(order.map(|at| (at, &tests[at])), fault, &package);
            if let (Some(at), Ok(mut last)) = (seen, last.lock()) {
                last.insert(&fault.file, at);
            }
            said
        } else {
            line(fault, "not viable", "")
        };
        if let (Ok(mut log), Ok(mut told)) = (log.lock(), told.lock()) {
            let _ = log.write_all(said.as_bytes());
            told.push((fault.name.clone(), said));
        }
    });
    known.extend(told.into_inner().into_iter().flatten());
    let all: String = known.values().map(String::as_str).collect();
    let kept = std::fs::write(results(tree), all);
    kept.unwrap_or_else(|error| panic!("results.txt: {error}"));
    sum(faults, &known);
}

fn sum(faults: &[Fault], known: &BTreeMap<String, String>) {
    println!(
        "{:16}{:>8}{:>12}{:>8}{:>10}",
        "", "faults", "not viable", "caught", "survived"
    );
    let module = |fault: &Fault| fault.file.split('/').nth(2).unwrap_or_default().to_owned();
    let modules: BTreeSet<String> = faults.iter().map(module).collect();
    for name in modules {
        let of = |what: &str| {
            let of_it = faults.iter().filter(|fault| module(fault) == name);
            let said = of_it.filter_map(|fault| known.get(&fault.name));
            said.filter(|line| line.starts_with(what)).count()
        };
        let (unfit, caught, survived) = (of("not viable"), of("caught"), of("survived"));
        println!(
            "{name:16}{:>8}{unfit:>12}{caught:>8}{survived:>10}",
            unfit + caught + survived
        );
    }
}
