//! Turns the CSV tables into Rust constants, so that the page ships no CSV reader.

mod cure;
mod meat;

use std::fmt::Write as _;
use std::{env, fs, path::Path};

type Rows = Vec<csv::StringRecord>;

fn main() {
    println!("cargo::rerun-if-changed=tables");
    let out = [
        cure::pantry(),
        meat::cuts(),
        cure::limits(),
        cure::cautions(),
        cure::words(),
        cure::signs(),
        cure::units(),
        meat::speeds(),
        cure::measures(),
        cure::slips(),
        cure::spoons(),
        cure::accelerators(),
        cure::lange(),
        meat::game(),
        meat::trouble(),
        meat::keeping(),
        meat::times(),
        meat::heat(),
        meat::diffusion(),
        meat::lens(),
        meat::sources(),
    ]
    .concat();
    let path = Path::new(&env::var("OUT_DIR").expect("cargo sets OUT_DIR")).join("tables.rs");
    fs::write(path, out).expect("the build folder can be written");
    // The indentation is for whoever reads the table; no text in it holds a line break.
    let starters = fs::read_to_string("tables/starters.json").expect("table is there");
    let short: String = starters.lines().map(str::trim).collect();
    let path = Path::new(&env::var("OUT_DIR").expect("cargo sets OUT_DIR")).join("starters.json");
    fs::write(path, short).expect("the build folder can be written");
}

fn rows(name: &str, columns: usize) -> Rows {
    let path = Path::new("tables").join(name);
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path(&path)
        .expect("table is there");
    let rows: Rows = reader
        .records()
        .map(|r| r.unwrap_or_else(|e| panic!("{}: {e}", path.display())))
        .collect();
    assert!(
        rows.iter().all(|r| r.len() == columns),
        "{} has {columns} columns",
        path.display()
    );
    rows
}

/// `Some(…)` of three columns, or `None` when the first is empty.
fn triple(row: &csv::StringRecord, first: usize, wrap: impl Fn(&str, &str, &str) -> String) -> String {
    if row[first].is_empty() {
        "None".into()
    } else {
        format!("Some({})", wrap(&row[first], &row[first + 1], &row[first + 2]))
    }
}

fn table(name: &str, kind: &str, rows: &Rows, line: impl Fn(&csv::StringRecord) -> String) -> String {
    let mut out = format!("pub(crate) static {name}: [{kind}; {}] = [\n", rows.len());
    for row in rows {
        writeln!(out, "    {},", line(row)).expect("a string takes all");
    }
    out + "];\n"
}

/// `common practice` to `CommonPractice`, `out_4h` to `Out4h`.
fn variant(key: &str) -> String {
    let parts = key.split(['_', ' ']).map(|part| {
        let (first, rest) = part.split_at(1);
        first.to_uppercase() + rest
    });
    parts.collect()
}

/// A cell as a status; the compiler knows which there are.
fn status(cell: &str) -> String {
    format!("crate::pantry::Status::{}", variant(cell))
}

/// `Some(…)` of a cell, or `None` where it says that there is none.
fn some_but(none: &str, cell: &str, wrap: impl Fn(&str) -> String) -> String {
    if cell == none {
        "None".into()
    } else {
        format!("Some({})", wrap(cell))
    }
}

/// A status, or `None` for `none`.
fn some_status(cell: &str) -> String {
    some_but("none", cell, status)
}

/// A cell as a kind of meat; the compiler knows which there are.
fn meat(cell: &str) -> String {
    format!("crate::pantry::MeatKind::{}", variant(cell))
}

/// A kind of meat, or `None` for the row that is for any.
fn any_meat(cell: &str) -> String {
    some_but("any", cell, meat)
}

/// The rows of a table that has one for each kind of meat, so that none is ever looked for in vain.
fn by_meat(name: &str, columns: usize) -> Rows {
    const ALL: [&str; 5] = ["bird", "boar", "hare", "own", "red"];
    let all = rows(name, columns);
    let mut kinds: Vec<&str> = all.iter().map(|r| &r[0]).collect();
    kinds.sort_unstable();
    assert_eq!(kinds, ALL, "{name} has one row for each kind of meat");
    all
}

fn yes(cell: &str) -> bool {
    assert!(["yes", "no"].contains(&cell), "{cell} is neither yes nor no");
    cell == "yes"
}

/// A decimal as a constant expression, or `None` for an empty cell.
fn decimal(cell: &str) -> String {
    some_but("", cell, |number| format!("rust_decimal::dec!({number})"))
}

/// A number as a constant of type `f64`; fails where the cell is none.
fn float(cell: &str) -> String {
    let value: f64 = cell.parse().unwrap_or_else(|e| panic!("{cell}: {e}"));
    format!("{value:?}")
}

fn maybe(cell: &str) -> String {
    some_but("", cell, float)
}
