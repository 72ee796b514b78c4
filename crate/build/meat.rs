//! Tables of the meat: cuts, game, how fast salt and heat go, keeping, trouble; and where all figures come from.

use super::{Rows, any_meat, by_meat, float, maybe, meat, rows, some_but, some_status, status, table, triple, variant};
use std::fmt::Write as _;
use std::path::Path;

pub fn cuts() -> String {
    table("CUTS", "crate::pantry::Cut", &rows("cuts.csv", 11), |r| {
        format!(
            "crate::pantry::Cut {{ key: {:?}, kind: {}, belly: {}, grams: {}, source: {:?}, status: {}, bone: {} }}",
            &r[0],
            meat(&r[1]),
            match &r[2] {
                "no" => "crate::pantry::Belly::No",
                "bare" => "crate::pantry::Belly::Bare",
                "rind" => "crate::pantry::Belly::RindOn",
                other => panic!("{other} is no belly"),
            },
            triple(r, 3, |l, t, h| format!("({l}, {t}, {h})")),
            &r[6],
            some_status(&r[7]),
            triple(r, 8, |l, t, h| format!("({l}, {t}, {h})"))
        )
    })
}

pub fn speeds() -> String {
    table("SPEEDS", "crate::dose::Speed", &by_meat("equalise.csv", 6), |r| {
        format!(
            "crate::dose::Speed {{ kind: {}, slow: rust_decimal::dec!({}), likely: rust_decimal::dec!({}), \
             fast: rust_decimal::dec!({}) }}",
            meat(&r[0]),
            &r[1],
            &r[2],
            &r[3]
        )
    })
}

/// The tables of the cards for when something went wrong, all of them keys; answers are written `ask=choice/choice`.
pub fn trouble() -> String {
    let of = "crate::plan::trouble";
    let named = |kind: &str, key: &str| format!("{of}::{kind}::{}", variant(key));
    let list = |kind: &str, cell: &str, mark: char| -> String {
        let parted = cell.split(mark).filter(|key| !key.is_empty());
        format!("&[{}]", parted.map(|key| named(kind, key) + ", ").collect::<String>())
    };
    let when = |cell: &str| -> String {
        let pairs = cell.split('&').filter(|pair| !pair.is_empty()).map(|pair| {
            let (ask, any) = pair
                .split_once('=')
                .unwrap_or_else(|| panic!("{pair} has a question and answers"));
            format!("({}, {}), ", named("Ask", ask), list("Choice", any, '/'))
        });
        format!("&[{}]", pairs.collect::<String>())
    };
    let hazard = |cell: &str| some_but("", cell, |key| named("Hazard", key));
    [
        table("TROUBLE_CARDS", &format!("{of}::Card"), &rows("trouble-cards.csv", 1), |r| {
            named("Card", &r[0])
        }),
        table("TROUBLE_ASKS", &format!("{of}::AskRow"), &rows("trouble-asks.csv", 2), |r| {
            format!(
                "{of}::AskRow {{ ask: {}, choices: {} }}",
                named("Ask", &r[0]),
                list("Choice", &r[1], '|')
            )
        }),
        table("TROUBLE_ENDS", &format!("{of}::EndRow"), &rows("trouble-answers.csv", 7), |r| {
            format!(
                "{of}::EndRow {{ card: {}, when: {}, remedy: {of}::Remedy {{ way: {}, act: {}, only_if: {}, hazard: {}, \
                 source: {} }} }}",
                named("Card", &r[0]),
                when(&r[1]),
                named("Way", &r[2]),
                named("Act", &r[3]),
                list("OnlyIf", &r[4], '|'),
                hazard(&r[5]),
                named("Source", &r[6])
            )
        }),
        table("TROUBLE_SOURCES", &format!("{of}::SourceRow"), &rows("trouble-sources.csv", 3), |r| {
            format!(
                "{of}::SourceRow {{ key: {}, title: {:?}, status: {} }}",
                named("Source", &r[0]),
                &r[1],
                status(&r[2])
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
    table("GAME", "crate::plan::bag::Game", &rows("game.csv", 17), |r| {
        let three = |first: usize| [0, 1, 2].map(|i| r[first + i].to_owned());
        let shares = three(9).map(|c| {
            if c.is_empty() {
                c
            } else {
                format!("rust_decimal::dec!({c})")
            }
        });
        format!(
            "crate::plan::bag::Game {{ key: {:?}, kind: {}, cut: {:?}, per: {}, mm: {}, whole: {}, weighed: {:?}, \
             share: {}, grams: {}, source: {:?}, status: {} }}",
            &r[0],
            // An ending is of no kind of meat: what is left of green weight.
            some_but("finish", &r[1], meat),
            &r[2],
            &r[3],
            if r[4].is_empty() { "0" } else { &r[4] },
            optional(three(5)),
            &r[8],
            optional(shares),
            optional(three(12)),
            &r[15],
            status(&r[16])
        )
    })
}

pub fn keeping() -> String {
    table("KEEPING", "crate::safety::Keeps", &rows("keeping.csv", 7), |r| {
        let key = [&r[0], &r[1], &r[2]].join("-");
        format!(
            "crate::safety::Keeps {{ key: {key:?}, state: {:?}, kind: {}, place: {:?}, low: {}, high: {}, source: {:?}, \
             status: {} }}",
            &r[0],
            any_meat(&r[1]),
            &r[2],
            &r[3],
            &r[4],
            &r[5],
            status(&r[6])
        )
    })
}

/// What bounds a stay in the cure, and what is usual for a step without a duration.
pub fn times() -> String {
    [
        table("CURE_CAPS", "crate::cure::CapRow", &rows("cure-cap.csv", 9), |r| {
            format!(
                "crate::cure::CapRow {{ way: {:?}, kind: {}, least: {}, plus: {}, per_inch: {}, per_lb: {}, most: {}, \
                 source: {:?}, status: {} }}",
                &r[0],
                any_meat(&r[1]),
                float(&r[2]),
                float(&r[3]),
                float(&r[4]),
                float(&r[5]),
                float(&r[6]),
                &r[7],
                status(&r[8])
            )
        }),
        table("USUAL_HOURS", "crate::recipe::UsualRow", &rows("usual-hours.csv", 5), |r| {
            format!(
                "crate::recipe::UsualRow {{ act: crate::recipe::Do::{}, kind: {}, minutes: {}, source: {:?}, status: {} }}",
                variant(&r[0]),
                any_meat(&r[1]),
                &r[2],
                &r[3],
                status(&r[4])
            )
        }),
    ]
    .concat()
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
        table("TRICHINAE_COLD", "(crate::safety::Frozen, f64, f64)", &cold, |r| {
            let group = match &r[0] {
                "to-6-in" => "To6In",
                "6-to-27-in" => "To27In",
                "middle" => "Middle",
                other => panic!("{other} is no group of pieces"),
            };
            format!("(crate::safety::Frozen::{group}, {}, {})", float(&r[1]), float(&r[2]))
        }),
        cooling(),
        targets(),
    ]
    .concat()
}

fn cooling() -> String {
    table("COOLING", "crate::safety::Stage", &rows("cooling.csv", 14), |r| {
        let key = match &r[0] {
            "food-code" => "FoodCode",
            "option-1" => "Option1",
            "option-2" => "Option2",
            "cured-2021" => "Cured2021",
            "cured-1999" => "Cured1999",
            "salty-a" => "SaltyA",
            "salty-b" => "SaltyB",
            "salty-c" => "SaltyC",
            other => panic!("{other} is no option for chilling"),
        };
        let scope = match &r[6] {
            "home" => "Home",
            "plants" => "Plants",
            "history" => "History",
            other => panic!("{other} is no scope"),
        };
        let also = match &r[11] {
            "" => "None",
            "in-all" => "Some(crate::safety::Also::InAll)",
            "continuous" => "Some(crate::safety::Also::Continuous)",
            "soon" => "Some(crate::safety::Also::Soon)",
            "no-pause" => "Some(crate::safety::Also::NoPause)",
            "outer-limit" => "Some(crate::safety::Also::OuterLimit)",
            "withdrawn" => "Some(crate::safety::Also::Withdrawn)",
            "no-linger" => "Some(crate::safety::Also::NoLinger)",
            other => panic!("{other} is no condition"),
        };
        format!(
            "crate::safety::Stage {{ key: crate::safety::Cooling::{key}, cured: {}, nitrite: {}, erythorbate: {}, \
             brine: {}, activity: {}, scope: crate::safety::Scope::{scope}, start: {}, end: {}, hours: {}, total: {}, \
             also: {also}, source: {:?}, status: {} }}",
            &r[1] == "cured",
            maybe(&r[2]),
            maybe(&r[3]),
            maybe(&r[4]),
            maybe(&r[5]),
            float(&r[7]),
            float(&r[8]),
            maybe(&r[9]),
            maybe(&r[10]),
            &r[12],
            status(&r[13])
        )
    })
}

/// The rules for kinds of meat, and the one for what is in no row: it asks for the most and allows nothing.
fn targets() -> String {
    let row = |r: &csv::StringRecord| {
        format!(
            "crate::safety::Consumer {{ kind: {}, whole: {}, minced: {}, \
             choice: {}, rest: {}, table: {:?}, source: {:?}, status: {} }}",
            meat(&r[0]),
            float(&r[1]),
            float(&r[2]),
            maybe(&r[3]),
            float(&r[4]),
            &r[5],
            &r[6],
            status(&r[7])
        )
    };
    let all = by_meat("targets.csv", 8);
    let unknown = all
        .iter()
        .find(|r| &r[0] == "own")
        .expect("a row for what is not known");
    let degrees = |cell: &str| cell.parse::<u32>().expect("whole degrees");
    for r in &all {
        assert!(degrees(&unknown[1]) >= degrees(&r[1]) && degrees(&unknown[2]) >= degrees(&r[2]));
        assert!(
            r[3].is_empty() || degrees(&r[3]) < degrees(&r[1]),
            "{} chooses a lower one",
            &r[0]
        );
    }
    assert!(
        unknown[3].is_empty() && unknown[5].is_empty(),
        "nothing lower for what is not known"
    );
    let strictest = format!(
        "pub(crate) static STRICTEST: crate::safety::Consumer = {};\n",
        row(unknown)
    );
    table("TARGETS", "crate::safety::Consumer", &all, row) + &strictest
}

pub fn diffusion() -> String {
    table(
        "DIFFUSION",
        "crate::cure::Diffusion",
        &by_meat("diffusion.csv", 4),
        |r| {
            format!(
                "crate::cure::Diffusion {{ kind: {}, likely: {}, source: {:?}, status: {} }}",
                meat(&r[0]),
                &r[1],
                &r[2],
                status(&r[3])
            )
        },
    )
}

/// The terms of a lens by its aspect, one table for each boundary, in half-thousandths.
pub fn lens() -> String {
    let rows = rows("lens.csv", 15);
    let of = |around: &str| {
        let own: Vec<&csv::StringRecord> = rows.iter().filter(|r| &r[1] == around).collect();
        let share = |cell: &str| (cell.parse::<f64>().expect("a share") * 2000.0).round();
        let place = |r: &&csv::StringRecord| -> String {
            let shares = r.iter().skip(4).map(share).inspect(|s| assert!(s.abs() < 32_000.0));
            format!("[{}]", shares.map(|s| format!("{s},")).collect::<String>())
        };
        let lens = |all: &[&csv::StringRecord]| {
            assert!(all.iter().all(|r| r[0] == all[0][0]), "nine places of one lens");
            let places: String = all.iter().map(|r| place(r) + ",").collect();
            format!(
                "crate::transport::LensRow {{ aspect: {}, slowest: {}, places: [{places}] }},\n",
                float(&all[0][0]),
                float(&all[0][2])
            )
        };
        let lenses: Vec<String> = own.chunks(9).map(lens).collect();
        format!(
            "pub(crate) static LENS_{}: [crate::transport::LensRow; {}] = [\n{}];\n",
            around.to_uppercase(),
            lenses.len(),
            lenses.concat()
        )
    };
    [of("dosed"), of("held")].concat()
}

/// Where the figures come from, table by table: each source once, with its status where that has a column.
pub fn sources() -> String {
    const TABLES: [&str; 17] = [
        "limits",
        "cuts",
        "game",
        "diffusion",
        "equalise",
        "measures",
        "spoons",
        "accelerators",
        "targets",
        "heat",
        "parasite-heat",
        "parasite-cold",
        "cooling",
        "cure-cap",
        "usual-hours",
        "keeping",
        "trouble-sources",
    ];
    let mut out = "pub(crate) static SOURCES: &[crate::door::SourcesOf] = &[\n".to_owned();
    for name in TABLES {
        let path = Path::new("tables").join(format!("{name}.csv"));
        let mut reader = csv::ReaderBuilder::new()
            .comment(Some(b'#'))
            .from_path(&path)
            .expect("table is there");
        let headers = reader.headers().expect("a head").clone();
        let column = |of: &str| headers.iter().position(|h| h == of);
        let source = column("source")
            .or_else(|| column("rule"))
            .expect("a column with the source");
        let mut all: Vec<String> = Vec::new();
        for row in reader.records() {
            let row = row.expect("rows are read already");
            let known = column("status").map_or("None".to_owned(), |i| some_status(&row[i]));
            let found = format!("({:?}, {known})", &row[source]);
            if !row[source].is_empty() && !all.contains(&found) {
                all.push(found);
            }
        }
        writeln!(out, "    ({name:?}, &[{}]),", all.join(", ")).expect("a string takes all");
    }
    out + "];\n"
}
