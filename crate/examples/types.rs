//! Prints the TypeScript types of every request and answer, for the page.
//!
//! `cargo run -p cure-reckoner --features types --example types > web/app/types.d.ts`

use cure_reckoner::door::{self, Checked, Opened, ReadValues, Request, Starters, Tables};
use cure_reckoner::quantity::Problem;
use std::collections::BTreeMap;
use ts_rs::{Config, TS, TypeVisitor};

struct Collect(BTreeMap<String, String>);

impl TypeVisitor for Collect {
    fn visit<T: TS + 'static + ?Sized>(&mut self) {
        let config = Config::default();
        if T::output_path().is_none() {
            return;
        }
        let docs = T::docs().unwrap_or_default();
        let text = format!("{docs}export {}", T::decl(&config));
        let name = T::ident(&config);
        if let Some(known) = self.0.get(&name) {
            assert_eq!(*known, text, "two types of the crate are called {name}");
            return;
        }
        self.0.insert(name, text);
        T::visit_dependencies(self);
    }
}

/// Answers by question, for the type of `ask`.
const ANSWERS: &[(&str, &str)] = &[
    ("read", "ReadValues"),
    ("tables", "Tables"),
    ("starters", "Starters"),
    ("pieces", "PieceSheet"),
    ("card", "RecipeCard"),
    ("turned", "Opened"),
    ("weigh_out", "WeighSheet"),
    ("draft", "Draft"),
    ("check_dose", "Verdict"),
    ("standing", "StandingSheet"),
    ("next", "NextList"),
    ("link", "Link"),
    ("open_link", "Opened"),
    ("check", "Checked"),
    ("read_recipe", "Reading"),
    ("fire_log", "FireSheet"),
    ("plan_bag", "BagSheet"),
    ("trouble", "Trouble"),
    ("plan_back", "Back"),
    ("calendar", "Calendar"),
    ("labels", "Labels"),
    ("brine", "BrineSheet"),
    ("spoon", "SpoonSheet"),
    ("scale", "ScaleSheet"),
    ("stock", "StockSheet"),
    ("cure_clock", "CureClock"),
    ("learn_cut", "Finding"),
    ("larder", "LarderSheet"),
    ("ledger", "Ledger"),
    ("sources", "Sources"),
];

fn main() {
    let mut all = Collect(BTreeMap::new());
    all.visit::<Request>();
    all.visit::<Problem>();
    all.visit::<ReadValues>();
    all.visit::<Tables>();
    all.visit::<Starters>();
    all.visit::<cure_reckoner::batch::PieceSheet>();
    all.visit::<cure_reckoner::share::RecipeCard>();
    all.visit::<cure_reckoner::weigh::WeighSheet>();
    all.visit::<door::Draft>();
    all.visit::<cure_reckoner::dose::Verdict>();
    all.visit::<cure_reckoner::standing::StandingSheet>();
    all.visit::<cure_reckoner::schedule::NextList>();
    all.visit::<cure_reckoner::share::Link>();
    all.visit::<Opened>();
    all.visit::<Checked>();
    all.visit::<cure_reckoner::reading::Reading>();
    all.visit::<cure_reckoner::fire::FireSheet>();
    all.visit::<cure_reckoner::plan::bag::BagSheet>();
    all.visit::<cure_reckoner::plan::trouble::Trouble>();
    all.visit::<cure_reckoner::plan::back::Back>();
    all.visit::<cure_reckoner::plan::Calendar>();
    all.visit::<cure_reckoner::pack::Labels>();
    all.visit::<cure_reckoner::brine::BrineSheet>();
    all.visit::<cure_reckoner::weigh::SpoonSheet>();
    all.visit::<cure_reckoner::weigh::ScaleSheet>();
    all.visit::<cure_reckoner::weigh::StockSheet>();
    all.visit::<cure_reckoner::cure::CureClock>();
    all.visit::<cure_reckoner::pack::LarderSheet>();
    all.visit::<cure_reckoner::pack::Ledger>();
    all.visit::<door::Sources>();
    let _: fn(Request) -> door::Answer = door::answer;
    println!("// Written by crate/examples/types.rs from the Rust types; do not edit.\n");
    for text in all.0.values() {
        println!("{text}\n");
    }
    for (name, keys) in door::table_keys() {
        let keys: Vec<String> = keys.iter().map(|key| format!("{key:?}")).collect();
        println!("export type {name} = {};\n", keys.join(" | "));
    }
    println!("/** The answer to each question. */\nexport interface Answers {{");
    for (ask, answer) in ANSWERS {
        println!("  {ask}: {answer};");
    }
    println!("}}");
}
