//! A copy of the whole tree with every fault in it, each behind a switch, and without those that do not compile.

use crate::sites::{Form, Site, sites};
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;
use std::path::{Path, PathBuf};
use std::process::Command;

/// A source file with its sites; the first fault of a site has the number that stands beside it.
struct File {
    path: String,
    text: String,
    sites: Vec<(u32, Site)>,
    spans: Vec<(Range<usize>, Span)>,
}

/// What a stretch of a woven file is.
#[derive(Clone, Copy)]
enum Span {
    Fault(u32),
    Site(usize),
}

/// The faults of the tree, by number from 1.
pub struct Woven {
    files: Vec<File>,
    gone: BTreeSet<u32>,
    /// Functions that have to stay `const`.
    fixed: BTreeSet<String>,
}

/// One fault as it is told.
pub struct Fault {
    pub id: u32,
    pub file: String,
    /// File, place, function, what was done.
    pub name: String,
    pub viable: bool,
}

/// Cargo on the copy.
pub fn cargo(tree: &Path, what: &[&str]) -> Command {
    let mut command = Command::new("cargo");
    command.current_dir(tree).args(what);
    // Fast enough to run, and soon built.
    let crate_level = "package.cure-reckoner.opt-level=2";
    for set in ["inherits=\"dev\"", "opt-level=1", "debug=false", crate_level] {
        command.args(["--config", &format!("profile.mutation.{set}")]);
    }
    command
        .args(["--profile", "mutation", "--target-dir"])
        .arg(tree.with_file_name("build"));
    command
}

/// The messages of one run of cargo.
pub fn messages(command: &mut Command) -> (bool, Vec<Value>) {
    let out = command
        .arg("--message-format=json")
        .output()
        .unwrap_or_else(|e| panic!("cargo: {e}"));
    let text = String::from_utf8_lossy(&out.stdout);
    (
        out.status.success(),
        text.lines()
            .filter_map(|line| serde_json::from_str(line).ok())
            .collect(),
    )
}

fn write(path: &Path, text: &[u8]) {
    // An unchanged file keeps its date, so that nothing is compiled for it.
    if std::fs::read(path).is_ok_and(|is| is == text) {
        return;
    }
    let folder = path.parent().unwrap_or(path);
    let done = std::fs::create_dir_all(folder).and_then(|()| std::fs::write(path, text));
    done.unwrap_or_else(|error| panic!("{}: {error}", path.display()));
}

/// The files under version control, as they lie in the tree.
fn tracked(root: &Path) -> Vec<String> {
    let out = Command::new("git").current_dir(root).args(["ls-files", "-z"]).output();
    let out = out.unwrap_or_else(|error| panic!("git: {error}"));
    let names = String::from_utf8_lossy(&out.stdout).into_owned();
    names
        .split_terminator('\0')
        .map(str::to_owned)
        .filter(|name| root.join(name).is_file())
        .collect()
}

impl Woven {
    /// Copies the tree to `tree`, with the faults of the named modules in it, and leaves out what does not compile; `unfit`
    /// says what is known not to.
    pub fn new(root: &Path, tree: &Path, modules: &[String], unfit: impl Fn(&str) -> bool) -> Self {
        let mut woven = Self {
            files: Vec::new(),
            gone: BTreeSet::new(),
            fixed: BTreeSet::new(),
        };
        let mut next = 1;
        for path in tracked(root) {
            let bytes = std::fs::read(root.join(&path)).unwrap_or_default();
            let is_in = |module: &String| path.starts_with(&format!("crate/src/{module}"));
            if path.ends_with(".rs") && modules.iter().any(is_in) {
                let text = String::from_utf8_lossy(&bytes).into_owned();
                let mut number = |site: Site| {
                    let first = next;
                    next += u32::try_from(site.mutants.len()).unwrap_or(0);
                    (first, site)
                };
                let sites = sites(&text).into_iter().map(&mut number).collect();
                woven.files.push(File {
                    path,
                    text,
                    sites,
                    spans: Vec::new(),
                });
            } else if path == "crate/src/lib.rs" {
                write(
                    &tree.join(&path),
                    &[
                        &bytes,
                        &b"#[doc(hidden)]\n#[allow(missing_docs)]\npub mod mutant;\n"[..],
                    ]
                    .concat(),
                );
            } else {
                write(&tree.join(&path), &bytes);
            }
        }
        let known = woven
            .faults()
            .into_iter()
            .filter(|fault| unfit(&fault.name))
            .map(|fault| fault.id);
        woven.gone = known.collect();
        let switch = include_str!("switch.rs").replace("COUNT", &next.to_string());
        write(&tree.join("crate/src/mutant.rs"), switch.as_bytes());
        while !woven.compiles(tree) {}
        woven
    }

    fn compiles(&mut self, tree: &Path) -> bool {
        for at in 0..self.files.len() {
            let (text, spans) = self.woven(&self.files[at]);
            write(&tree.join(&self.files[at].path), text.as_bytes());
            self.files[at].spans = spans;
        }
        let (done, told) = messages(&mut cargo(tree, &["check", "-p", "cure-reckoner", "--lib"]));
        let before = (self.gone.len(), self.fixed.len());
        for message in told
            .iter()
            .map(|told| &told["message"])
            .filter(|message| message["level"] == "error")
        {
            self.blame(message);
        }
        eprintln!("{} faults do not compile", self.gone.len());
        assert!(
            done || before != (self.gone.len(), self.fixed.len()),
            "no fault is to blame: {told:#?}"
        );
        done
    }

    /// Takes out what an error of the compiler comes from: the faults it points into, else those of the site around it.
    fn blame(&mut self, message: &Value) {
        let text = message["message"].as_str().unwrap_or_default();
        if message["code"]["code"] == "E0015" {
            let named = text.split('`').nth(1).and_then(|path| path.rsplit("::").next());
            if let Some(named) = named.filter(|named| self.is_const(named)) {
                self.fixed.insert(named.to_owned());
                return;
            }
        }
        let spans = message["spans"].as_array().into_iter().flatten();
        let (first, others): (Vec<&Value>, Vec<&Value>) = spans.partition(|span| span["is_primary"] == true);
        let faults = |spans: &[&Value]| -> Vec<u32> { spans.iter().filter_map(|span| self.fault_at(span)).collect() };
        let mut gone = faults(&first);
        if gone.is_empty() {
            gone = faults(&others);
        }
        if gone.is_empty() {
            gone = first.iter().flat_map(|span| self.site_at(span)).collect();
        }
        self.gone.extend(gone);
    }

    fn is_const(&self, name: &str) -> bool {
        let mut all = self.files.iter().flat_map(|file| &file.sites);
        all.any(|(_, site)| site.form == Form::Const && site.of.rsplit("::").next() == Some(name))
    }

    /// The narrowest stretches first.
    fn around(&self, span: &Value) -> Vec<(&File, Span)> {
        let byte = |key: &str| {
            span[key]
                .as_u64()
                .and_then(|byte| usize::try_from(byte).ok())
                .unwrap_or(0)
        };
        let at = byte("byte_start")..byte("byte_end");
        let file = self.files.iter().find(|file| span["file_name"] == file.path.as_str());
        let Some(file) = file else { return Vec::new() };
        let holds = |(of, _): &&(Range<usize>, Span)| of.start <= at.start && at.end <= of.end;
        let mut found: Vec<_> = file.spans.iter().filter(holds).collect();
        found.sort_by_key(|(of, _)| of.len());
        found.into_iter().map(|(_, span)| (file, *span)).collect()
    }

    fn fault_at(&self, span: &Value) -> Option<u32> {
        self.around(span).into_iter().find_map(|(_, span)| match span {
            Span::Fault(id) => Some(id),
            Span::Site(_) => None,
        })
    }

    fn site_at(&self, span: &Value) -> Vec<u32> {
        let live = |(file, span): (&File, Span)| match span {
            Span::Site(at) => {
                let live: Vec<u32> = self.live(&file.sites[at]).map(|(id, _)| id).collect();
                (!live.is_empty()).then_some(live)
            }
            Span::Fault(_) => None,
        };
        self.around(span).into_iter().find_map(live).unwrap_or_default()
    }

    fn is_fixed(&self, site: &Site) -> bool {
        self.fixed.contains(site.of.rsplit("::").next().unwrap_or_default())
    }

    fn live<'a>(&'a self, (first, site): &'a (u32, Site)) -> impl Iterator<Item = (u32, &'a str)> {
        let fixed = self.is_fixed(site);
        let all = (*first..)
            .zip(&site.mutants)
            .map(|(id, mutant)| (id, mutant.text.as_str()));
        all.filter(move |(id, _)| !fixed && !self.gone.contains(id))
    }

    fn woven(&self, file: &File) -> (String, Vec<(Range<usize>, Span)>) {
        let (mut out, mut spans) = (String::new(), Vec::new());
        self.lay(file, 0..file.sites.len(), 0..file.text.len(), &mut out, &mut spans);
        (out, spans)
    }

    /// The text of a stretch with the faults of the sites that lie in it.
    fn lay(
        &self,
        file: &File,
        mut within: Range<usize>,
        of: Range<usize>,
        out: &mut String,
        spans: &mut Vec<(Range<usize>, Span)>,
    ) {
        let mut from = of.start;
        while let Some(place) = within.next() {
            let (_, site) = &file.sites[place];
            out.push_str(&file.text[from..site.at.start]);
            let inner = within
                .clone()
                .take_while(|at| file.sites[*at].1.at.start < site.at.end)
                .count();
            let inner = within.start..within.start + inner;
            let begin = out.len();
            let live: Vec<(u32, &str)> = self.live(&file.sites[place]).collect();
            let mut fault = |out: &mut String, id: u32, head: &str, text: &str, tail: &str| {
                out.push_str(&format!("{head}crate::mutant::on({id})"));
                let begin = out.len();
                out.push_str(text);
                spans.push((begin..out.len(), Span::Fault(id)));
                out.push_str(tail);
            };
            match site.form {
                Form::Const if self.is_fixed(site) => out.push_str("const"),
                Form::Const => {}
                Form::Body => {
                    for (id, text) in live {
                        fault(out, id, "if ", &format!(" {{ return {text}; }}"), " ");
                    }
                }
                Form::Arm => {
                    for (id, _) in live {
                        fault(out, id, " if !", "", "");
                    }
                }
                Form::Empty => {
                    let open = if live.is_empty() { "" } else { " Iterator::take({" };
                    out.push_str(open);
                    self.lay(file, inner.clone(), site.at.clone(), out, spans);
                    for (id, _) in live {
                        out.push_str(&format!(
                            "}}, if crate::mutant::on({id}) {{ 0 }} else {{ usize::MAX }}) "
                        ));
                        spans.push((begin..out.len(), Span::Fault(id)));
                    }
                }
                Form::Expr => {
                    let open = if live.is_empty() { "" } else { "(" };
                    out.push_str(open);
                    for (id, text) in &live {
                        fault(out, *id, "if ", &format!(" {{ {text} }}"), " else ");
                    }
                    out.push_str(if live.is_empty() { "" } else { "{ " });
                    self.lay(file, inner.clone(), site.at.clone(), out, spans);
                    out.push_str(if live.is_empty() { "" } else { " })" });
                }
            }
            spans.push((begin..out.len(), Span::Site(place)));
            from = site.at.end;
            within.start = inner.end;
        }
        out.push_str(&file.text[from..of.end]);
    }

    /// All faults in the order of their numbers.
    pub fn faults(&self) -> Vec<Fault> {
        let mut told = Vec::new();
        for file in &self.files {
            for (first, site) in &file.sites {
                let fixed = self.is_fixed(site);
                told.extend((*first..).zip(&site.mutants).map(|(id, mutant)| Fault {
                    id,
                    file: file.path.clone(),
                    name: format!("{}:{}", file.path, mutant.label),
                    viable: !fixed && !self.gone.contains(&id),
                }));
            }
        }
        told
    }
}

/// The test binaries of the copy, by the name of their target.
pub fn binaries(tree: &Path) -> BTreeMap<String, PathBuf> {
    let what = [
        "test",
        "-p",
        "cure-reckoner",
        "-p",
        "cure-reckoner-tests",
        "--lib",
        "--tests",
        "--no-run",
    ];
    let (done, told) = messages(&mut cargo(tree, &what));
    assert!(done, "the tests do not compile: {told:#?}");
    let of = |told: &Value| {
        let file = told["executable"].as_str()?;
        Some((told["target"]["name"].as_str()?.to_owned(), PathBuf::from(file)))
    };
    told.iter().filter_map(of).collect()
}
