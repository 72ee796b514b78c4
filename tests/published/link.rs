//! Links and QR codes, the latter read back by an independent decoder (rqrr).

use cure_reckoner_tests::{ok, problems};
use serde_json::{Value, json};

const PAGE: &str = "https://larder.example/";

fn starters() -> Vec<Value> {
    ok(&json!({"starters": {}}))["recipes"]
        .as_array()
        .expect("recipes")
        .clone()
}

fn link(recipe: &Value) -> Value {
    ok(&json!({"link": {"recipe": recipe, "base": PAGE}}))
}

fn code(text: &str) -> String {
    problems(&json!({"open_link": {"text": text}}))[0]["code"]
        .as_str()
        .unwrap_or_default()
        .to_owned()
}

#[test]
fn a_link_opens_to_the_same_recipe() {
    for recipe in starters() {
        let written = link(&recipe);
        let text = written["link"].as_str().expect("a link");
        assert!(text.len() <= 300, "{}: {} characters", recipe["name"], text.len());
        let behind = text.split('#').nth(1).expect("a fragment");
        assert!(
            behind.bytes().all(|b| b.is_ascii_alphanumeric() || b"-_.".contains(&b)),
            "{behind}"
        );
        for form in [text, behind, &format!("  {text}\n")] {
            let opened = ok(&json!({"open_link": {"text": form}}))["recipe"].clone();
            let again = link(&opened);
            assert_eq!(again["code"], written["code"]);
            assert_eq!(opened["name"], recipe["name"]);
        }
    }
}

#[test]
fn a_ten_line_recipe_fits_300_characters() {
    let mut recipe = starters()[0].clone();
    let keys = [
        "thyme-dried",
        "bay-crumbled",
        "garlic-powder",
        "mustard-seed",
        "coriander-seed",
        "allspice-ground",
    ];
    let lines = recipe["lines"].as_array_mut().expect("lines");
    lines.extend(keys.map(|key| json!({"item": key, "share": {"of": "green_weight", "amount": "0.25 %"}})));
    assert_eq!(lines.len(), 10);
    let length = link(&recipe)["link"].as_str().map(str::len).expect("a link");
    assert!(length <= 300, "{length} characters");
}

#[test]
fn every_cut_link_says_that_it_was_cut() {
    let text = link(&starters()[0])["link"].as_str().expect("a link").to_owned();
    let begins = text.find('#').expect("a fragment") + 1;
    for end in begins + 1..text.len() {
        assert_eq!(code(&text[..end]), "cut", "{} of {} characters", end, text.len());
    }
}

#[test]
fn every_changed_character_is_noticed() {
    let text = link(&starters()[1])["code"].as_str().expect("a code").to_owned();
    for at in 3..text.len() {
        for other in ['A', 'z', '7', '-', '*'] {
            let mut changed: Vec<char> = text.chars().collect();
            if changed[at] == other {
                continue;
            }
            changed[at] = other;
            let found = code(&changed.into_iter().collect::<String>());
            // A changed length reads as a cut where it asks for more than there is.
            assert!(found == "altered" || (found == "cut" && at < 6), "{at}: {found}");
        }
    }
}

#[test]
fn other_texts_are_refused() {
    assert_eq!(code(""), "missing");
    assert_eq!(code("https://larder.example/#today"), "not_read");
    assert_eq!(code("r2.AAAA"), "version");
    assert_eq!(code(&"x".repeat(5000)), "too_long");
}

#[test]
fn the_qr_code_reads_back() {
    for recipe in starters() {
        let written = link(&recipe);
        let size = written["qr_size"].as_u64().expect("a size") as usize;
        let mut dark = vec![vec![false; size]; size];
        // The path is made of "Mx yh<run>v1h-<run>z".
        for run in written["qr_path"].as_str().expect("a path").split('M').skip(1) {
            let (x, rest) = run.split_once(' ').expect("x");
            let (y, rest) = rest.split_once('h').expect("y");
            let (length, _) = rest.split_once('v').expect("a run");
            let [x, y, length] = [x, y, length].map(|n| n.parse::<usize>().expect("a number"));
            dark[y][x..x + length].fill(true);
        }
        const MODULE: usize = 4;
        const QUIET: usize = 4;
        let side = (size + 2 * QUIET) * MODULE;
        let mut image = rqrr::PreparedImage::prepare_from_greyscale(side, side, |x, y| {
            let at = |v: usize| (v / MODULE).checked_sub(QUIET).filter(|v| *v < size);
            match (at(x), at(y)) {
                (Some(x), Some(y)) if dark[y][x] => 0,
                _ => 255,
            }
        });
        let grids = image.detect_grids();
        assert_eq!(grids.len(), 1, "{}", recipe["name"]);
        let (_, read) = grids[0].decode().expect("a QR code");
        assert_eq!(read, written["link"].as_str().expect("a link"));
    }
}
