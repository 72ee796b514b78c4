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

fn yes(cell: &str) -> bool {
    assert!(["yes", "no"].contains(&cell), "{cell} is neither yes nor no");
    cell == "yes"
}

/// A decimal as a constant expression, or `None` for an empty cell.
fn decimal(cell: &str) -> String {
    if cell.is_empty() {
        "None".into()
    } else {
        format!("Some(rust_decimal::dec!({cell}))")
    }
}

/// A number as a constant of type `f64`; fails where the cell is none.
fn float(cell: &str) -> String {
    let value: f64 = cell.parse().unwrap_or_else(|e| panic!("{cell}: {e}"));
    format!("{value:?}")
}

fn maybe(cell: &str) -> String {
    if cell.is_empty() {
        "None".into()
    } else {
        format!("Some({})", float(cell))
    }
}
