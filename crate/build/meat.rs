//! Tables of the meat: cuts, game, how fast salt and heat go, keeping, trouble; and where all figures come from.

use super::{Rows, float, maybe, rows, table, triple, yes};
use std::fmt::Write as _;
use std::path::Path;

pub fn cuts() -> String {
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

pub fn speeds() -> String {
    table("SPEEDS", "crate::dose::Speed", &rows("equalise.csv", 4), |r| {
        format!(
            "crate::dose::Speed {{ kind: {:?}, fast: rust_decimal::dec!({}) }}",
            &r[0], &r[1]
        )
    })
}

/// The three tables of the cards for when something went wrong; choices are written `ask=option`.
pub fn trouble() -> String {
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

pub fn game() -> String {
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

pub fn keeping() -> String {
    table("KEEPING", "crate::pack::Keeps", &rows("keeping.csv", 8), |r| {
        format!(
            "crate::pack::Keeps {{ state: {:?}, kind: {:?}, place: {:?}, low: {}, high: {}, says: {:?}, source: {:?}, \
             status: {:?} }}",
            &r[0], &r[1], &r[2], &r[3], &r[4], &r[5], &r[6], &r[7]
        )
    })
}

/// Tables of time and temperature: heat, trichinae, chilling, consumer temperatures.
pub fn heat() -> String {
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

pub fn diffusion() -> String {
    table("DIFFUSION", "crate::cure::Diffusion", &rows("diffusion.csv", 4), |r| {
        format!(
            "crate::cure::Diffusion {{ kind: {:?}, likely: {}, source: {:?}, status: {:?} }}",
            &r[0], &r[1], &r[2], &r[3]
        )
    })
}

/// Where the figures come from, table by table: each source once, with its status where that has a column.
pub fn sources() -> String {
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
