//! Turns the CSV tables into Rust constants, so that the page ships no CSV reader.

use std::fmt::Write as _;
use std::{env, fs, path::Path};

type Rows = Vec<csv::StringRecord>;

fn main() {
    println!("cargo::rerun-if-changed=tables");
    let out = [
        pantry(),
        cuts(),
        limits(),
        cautions(),
        words(),
        speeds(),
        measures(),
        slips(),
        accelerators(),
        lange(),
        game(),
        trouble(),
        keeping(),
        heat(),
        diffusion(),
        sources(),
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

fn pantry() -> String {
    table("PANTRY", "crate::pantry::Ingredient", &rows("pantry.csv", 15), |r| {
        let others: Vec<&str> = r[3].split('|').filter(|o| !o.is_empty()).collect();
        let group = format!("{}{}", r[4][..1].to_uppercase(), &r[4][1..]);
        let spoon = triple(r, 5, |l, t, h| {
            format!("crate::pantry::SpoonWeight {{ low: {l:?}, typical: {t:?}, high: {h:?} }}")
        });
        format!(
            "crate::pantry::Ingredient {{ key: {:?}, number: {}, name: {:?}, others: &{others:?}, \
             group: crate::pantry::Group::{group}, spoon: {spoon}, allergen: {:?}, nitrite: {:?}, nitrate: {:?}, \
             source: {:?}, status: {:?}, ndb: {:?}, each: {:?} }}",
            &r[0], &r[1], &r[2], &r[8], &r[9], &r[10], &r[11], &r[12], &r[13], &r[14]
        )
    })
}

fn words() -> String {
    table("WORDS", "crate::reading::Word", &rows("words.csv", 4), |r| {
        let words: Vec<&str> = r[1].split('|').collect();
        let sort = format!("{}{}", r[0][..1].to_uppercase(), &r[0][1..]);
        format!(
            "crate::reading::Word {{ sort: crate::reading::Sort::{sort}, words: &{words:?}, value: {:?}, note: {:?} }}",
            &r[2], &r[3]
        )
    })
}

fn cuts() -> String {
    table("CUTS", "crate::pantry::Cut", &rows("cuts.csv", 9), |r| {
        format!(
            "crate::pantry::Cut {{ key: {:?}, name: {:?}, kind: {:?}, belly: {}, grams: {}, source: {:?}, status: {:?} }}",
            &r[0],
            &r[1],
            &r[2],
            match &r[3] {
                "no" => "crate::pantry::Belly::No",
                "bare" => "crate::pantry::Belly::Bare",
                "rind" => "crate::pantry::Belly::RindOn",
                other => panic!("{other} is no belly"),
            },
            triple(r, 4, |l, t, h| format!("({l}, {t}, {h})")),
            &r[7],
            &r[8]
        )
    })
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

fn limits() -> String {
    table("RULES", "crate::dose::Rule", &rows("limits.csv", 12), |r| {
        let basis = format!("{}{}", r[7][..1].to_uppercase(), &r[7][1..]);
        format!(
            "crate::dose::Rule {{ key: {:?}, name: {:?}, method: {:?}, cut: {:?}, limit: rust_decimal::dec!({}), \
             nitrate: {}, together: {}, basis: crate::dose::Basis::{basis}, undecided_to: rust_decimal::dec!({}), \
             least: rust_decimal::dec!({}), source: {:?}, status: {:?} }}",
            &r[0],
            &r[1],
            &r[2],
            &r[3],
            &r[4],
            decimal(&r[5]),
            yes(&r[6]),
            &r[8],
            &r[9],
            &r[10],
            &r[11]
        )
    })
}

fn cautions() -> String {
    table("CAUTIONS", "crate::dose::Caution", &rows("cautions.csv", 3), |r| {
        format!(
            "crate::dose::Caution {{ key: {:?}, text: {:?}, source: {:?} }}",
            &r[0], &r[1], &r[2]
        )
    })
}

fn speeds() -> String {
    table("SPEEDS", "crate::dose::Speed", &rows("equalise.csv", 4), |r| {
        format!(
            "crate::dose::Speed {{ kind: {:?}, fast: rust_decimal::dec!({}) }}",
            &r[0], &r[1]
        )
    })
}

/// The three tables of the cards for when something went wrong; choices are written `ask=option`.
fn trouble() -> String {
    let pairs = |cell: &str, mark: char| -> String {
        let parted = cell.split(mark).filter(|p| !p.is_empty());
        let pair = parted.map(|p| p.split_once('=').unwrap_or_else(|| panic!("{p} has a key and a word")));
        format!("&[{}]", pair.map(|p| format!("{p:?}, ")).collect::<String>())
    };
    let cards = rows("trouble-cards.csv", 3);
    let asks = rows("trouble-asks.csv", 4);
    let answers = rows("trouble-answers.csv", 7);
    let of = "crate::plan::trouble";
    [
        table("TROUBLE_CARDS", &format!("{of}::CardRow"), &cards, |r| {
            format!(
                "{of}::CardRow {{ key: {:?}, head: {:?}, lead: {:?} }}",
                &r[0], &r[1], &r[2]
            )
        }),
        table("TROUBLE_ASKS", &format!("{of}::AskRow"), &asks, |r| {
            let options = pairs(&r[3], '|');
            format!(
                "{of}::AskRow {{ card: {:?}, key: {:?}, label: {:?}, options: {options} }}",
                &r[0], &r[1], &r[2]
            )
        }),
        table("TROUBLE_ANSWERS", &format!("{of}::AnswerRow"), &answers, |r| {
            format!(
                "{of}::AnswerRow {{ card: {:?}, when: {}, answer: {of}::Remedy {{ mark: {:?}, word: {:?}, says: {:?}, \
                 next: {:?}, source: {:?} }} }}",
                &r[0],
                pairs(&r[1], '&'),
                &r[2],
                &r[3],
                &r[4],
                &r[5],
                &r[6]
            )
        }),
    ]
    .concat()
}

fn game() -> String {
    let optional = |cells: [String; 3]| {
        if cells[0].is_empty() {
            "None".to_owned()
        } else {
            format!("Some([{}])", cells.join(", "))
        }
    };
    table("GAME", "crate::plan::bag::Game", &rows("game.csv", 18), |r| {
        let three = |first: usize| [0, 1, 2].map(|i| r[first + i].to_owned());
        let shares = three(10).map(|c| {
            if c.is_empty() {
                c
            } else {
                format!("rust_decimal::dec!({c})")
            }
        });
        format!(
            "crate::plan::bag::Game {{ key: {:?}, name: {:?}, kind: {:?}, cut: {:?}, per: {}, mm: {}, whole: {}, \
             weighed: {:?}, share: {}, grams: {}, source: {:?}, status: {:?} }}",
            &r[0],
            &r[1],
            &r[2],
            &r[3],
            &r[4],
            if r[5].is_empty() { "0" } else { &r[5] },
            optional(three(6)),
            &r[9],
            optional(shares),
            optional(three(13)),
            &r[16],
            &r[17]
        )
    })
}

fn keeping() -> String {
    table("KEEPING", "crate::pack::Keeps", &rows("keeping.csv", 8), |r| {
        format!(
            "crate::pack::Keeps {{ state: {:?}, kind: {:?}, place: {:?}, low: {}, high: {}, says: {:?}, source: {:?}, \
             status: {:?} }}",
            &r[0], &r[1], &r[2], &r[3], &r[4], &r[5], &r[6], &r[7]
        )
    })
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

/// Tables of time and temperature: heat, trichinae, chilling, consumer temperatures.
fn heat() -> String {
    let rows_of = |name: &str, rows: &Rows, temp: usize, value: usize| {
        table(name, "(f64, f64)", rows, |r| {
            format!("({}, {})", float(&r[temp]), float(&r[value]))
        })
    };
    let all = rows("heat.csv", 6);
    let one = |key: &str, log: &str| -> Rows {
        let rows: Rows = all.iter().filter(|r| &r[0] == key && &r[1] == log).cloned().collect();
        let temperature = |r: &csv::StringRecord| r[2].parse::<u32>().expect("whole degrees");
        assert!(
            rows.windows(2).all(|w| temperature(&w[0]) < temperature(&w[1])),
            "{key} rises"
        );
        rows
    };
    let cold = rows("parasite-cold.csv", 5);
    [
        rows_of("MEAT_65", &one("meat", "6.5"), 2, 3),
        rows_of("MEAT_70", &one("meat", "7.0"), 2, 3),
        rows_of("CHICKEN", &one("chicken", "7.0"), 2, 3),
        rows_of("TURKEY", &one("turkey", "7.0"), 2, 3),
        rows_of("TRICHINAE", &rows("parasite-heat.csv", 4), 0, 1),
        table("TRICHINAE_COLD", "(&str, f64, f64)", &cold, |r| {
            format!("({:?}, {}, {})", &r[0], float(&r[1]), float(&r[2]))
        }),
        table("COOLING", "crate::safety::Stage", &rows("cooling.csv", 14), |r| {
            format!(
                "crate::safety::Stage {{ key: {:?}, name: {:?}, cured: {}, nitrite: {}, brine: {}, activity: {}, \
                 home: {}, start: {}, end: {}, hours: {}, total: {}, condition: {:?}, source: {:?}, status: {:?} }}",
                &r[0],
                &r[1],
                &r[2] == "cured",
                maybe(&r[3]),
                maybe(&r[4]),
                maybe(&r[5]),
                yes(&r[6]),
                float(&r[7]),
                float(&r[8]),
                maybe(&r[9]),
                maybe(&r[10]),
                &r[11],
                &r[12],
                &r[13]
            )
        }),
        table("TARGETS", "crate::safety::Consumer", &rows("targets.csv", 8), |r| {
            format!(
                "crate::safety::Consumer {{ kind: {:?}, whole: {}, minced: {}, rest: {}, table: {:?}, reason: {:?}, \
                 source: {:?}, status: {:?} }}",
                &r[0],
                float(&r[1]),
                float(&r[2]),
                float(&r[3]),
                &r[4],
                &r[5],
                &r[6],
                &r[7]
            )
        }),
    ]
    .concat()
}

fn measures() -> String {
    table("MEASURES", "crate::dose::Measure", &rows("measures.csv", 6), |r| {
        format!(
            "crate::dose::Measure {{ word: {:?}, share: crate::quantity::Range {{ low: rust_decimal::dec!({}), \
             typical: rust_decimal::dec!({}), high: rust_decimal::dec!({}) }} }}",
            &r[0], &r[1], &r[2], &r[3]
        )
    })
}

fn slips() -> String {
    table("SLIPS", "crate::dose::Slip", &rows("slips.csv", 9), |r| {
        assert!(["over", "low"].contains(&&r[1]), "{} is neither over nor low", &r[1]);
        format!(
            "crate::dose::Slip {{ over: {}, said: {:?}, printed: (rust_decimal::dec!({}), rust_decimal::dec!({})), \
             times: {}, meant: {}, water: rust_decimal::dec!({}), says: {:?} }}",
            &r[1] == "over",
            &r[2],
            &r[3],
            &r[4],
            decimal(&r[5]),
            decimal(&r[6]),
            &r[7],
            &r[8]
        )
    })
}

fn lange() -> String {
    table(
        "GRAVITIES",
        "(rust_decimal::Decimal, rust_decimal::Decimal)",
        &rows("gravity.csv", 2),
        |r| format!("(rust_decimal::dec!({}), rust_decimal::dec!({}))", &r[0], &r[1]),
    )
}

fn diffusion() -> String {
    table("DIFFUSION", "crate::cure::Diffusion", &rows("diffusion.csv", 4), |r| {
        format!(
            "crate::cure::Diffusion {{ kind: {:?}, likely: {}, source: {:?}, status: {:?} }}",
            &r[0], &r[1], &r[2], &r[3]
        )
    })
}

fn accelerators() -> String {
    table(
        "ACCELERATORS",
        "crate::weigh::Accelerator",
        &rows("accelerators.csv", 4),
        |r| {
            format!(
                "crate::weigh::Accelerator {{ word: {:?}, limit: rust_decimal::dec!({}), rule: {:?} }}",
                &r[0], &r[1], &r[2]
            )
        },
    )
}

/// Where the figures come from, table by table: each source once, with its status where that has a column.
fn sources() -> String {
    const TABLES: [(&str, &str); 14] = [
        ("Limits for cure", "limits.csv"),
        ("Weights of cuts", "cuts.csv"),
        ("What a bird or an animal gives", "game.csv"),
        ("How fast salt goes", "diffusion.csv"),
        ("How soon a piece is equal with a brine", "equalise.csv"),
        ("What a measure holds", "measures.csv"),
        ("Cure accelerators", "accelerators.csv"),
        ("What it is cooked to", "targets.csv"),
        ("Time at a temperature", "heat.csv"),
        ("Parasites and heat", "parasite-heat.csv"),
        ("Parasites and cold", "parasite-cold.csv"),
        ("Chilling", "cooling.csv"),
        ("How long a pack keeps", "keeping.csv"),
        ("When something went wrong", "trouble-answers.csv"),
    ];
    let mut out = "pub(crate) static SOURCES: &[(&str, &[(&str, &str)])] = &[\n".to_owned();
    for (head, name) in TABLES {
        let path = Path::new("tables").join(name);
        let mut reader = csv::ReaderBuilder::new()
            .comment(Some(b'#'))
            .from_path(&path)
            .expect("table is there");
        let headers = reader.headers().expect("a head").clone();
        let column = |of: &str| headers.iter().position(|h| h == of);
        let source = column("source")
            .or_else(|| column("rule"))
            .expect("a column with the source");
        let status = column("status");
        let mut all: Vec<(String, String)> = Vec::new();
        for row in reader.records() {
            let row = row.expect("rows are read already");
            let found = (
                row[source].to_owned(),
                status.map_or(String::new(), |i| row[i].to_owned()),
            );
            if !found.0.is_empty() && !all.contains(&found) {
                all.push(found);
            }
        }
        writeln!(out, "    ({head:?}, &{all:?}),").expect("a string takes all");
    }
    out + "];\n"
}
