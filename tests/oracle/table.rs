//! The table of rules: what is barred by what, with every figure and its source. The oracle knows no figure of its own.

use std::collections::HashMap;
use std::sync::LazyLock;

/// What a word of assurance is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Assurance {
    Dose,
    NoCure,
    Cured,
    Hot,
    Pull,
    Chilled,
    Cooked,
    Keep,
    Gift,
    GoOn,
}

pub const ALL: [Assurance; 10] = [
    Assurance::Dose,
    Assurance::NoCure,
    Assurance::Cured,
    Assurance::Hot,
    Assurance::Pull,
    Assurance::Chilled,
    Assurance::Cooked,
    Assurance::Keep,
    Assurance::Gift,
    Assurance::GoOn,
];

impl Assurance {
    pub const fn key(self) -> &'static str {
        match self {
            Self::Dose => "dose",
            Self::NoCure => "no_cure",
            Self::Cured => "cured",
            Self::Hot => "hot",
            Self::Pull => "pull",
            Self::Chilled => "chilled",
            Self::Cooked => "cooked",
            Self::Keep => "keep",
            Self::Gift => "gift",
            Self::GoOn => "go_on",
        }
    }

    /// True where each size class has its own.
    pub const fn by_class(self) -> bool {
        matches!(self, Self::Hot | Self::Pull | Self::Chilled)
    }

    fn of(key: &str) -> Self {
        let found = ALL.into_iter().find(|a| a.key() == key);
        found.unwrap_or_else(|| panic!("rules.csv bars {key:?}, which is no assurance"))
    }
}

/// One row.
pub struct Rule {
    pub id: String,
    pub bars: Vec<Assurance>,
    pub figure: Option<f64>,
}

pub static RULES: LazyLock<HashMap<String, Rule>> = LazyLock::new(|| {
    let mut reader = csv::Reader::from_reader(include_str!("rules.csv").as_bytes());
    let mut rules = HashMap::new();
    for row in reader.records() {
        let row = row.expect("rules.csv is a table");
        let status = &row[8];
        let known = ["published", "quoted", "memory", "common practice", "judgement"].contains(&status);
        let weight = ["forbids", "holds", "warns", "figure"].contains(&&row[3]);
        let scope = row[1].is_empty() || ["batch", "class"].contains(&&row[2]);
        assert!(weight && scope, "{}: a weight and a scope", &row[0]);
        assert!(known && !row[8].is_empty(), "{}: a source and a status", &row[0]);
        let rule = Rule {
            id: row[0].to_owned(),
            bars: row[1].split_whitespace().map(Assurance::of).collect(),
            figure: row[4].parse().ok(),
        };
        assert!(
            rules.insert(rule.id.clone(), rule).is_none(),
            "{} stands twice",
            &row[0]
        );
    }
    rules
});

/// The rule's row.
pub fn rule(id: &str) -> &'static Rule {
    RULES.get(id).unwrap_or_else(|| panic!("{id} is not in rules.csv"))
}

/// The figure of a row.
pub fn figure(id: &str) -> f64 {
    rule(id).figure.unwrap_or_else(|| panic!("{id} has no figure"))
}
