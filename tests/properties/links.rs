//! A link gives back the recipe it was made of; any bytes and any request are answered.

use super::recipes::recipe;
use cure_reckoner::door::answer_json;
use cure_reckoner_tests::{answer, ok};
use proptest::prelude::*;
use serde_json::{Value, json};

proptest! {
    #![proptest_config(super::cases(300))]

    #[test]
    fn a_link_gives_back_its_recipe(recipe in recipe()) {
        let written = answer(&json!({"link": {"recipe": recipe, "base": "https://larder.example/"}}));
        prop_assume!(written["ok"].is_object());
        let opened = ok(&json!({"open_link": {"text": written["ok"]["link"]}}))["recipe"].clone();
        let settings = cure_reckoner_tests::settings("0.1 g");
        let card = |recipe: &Value| answer(&json!({"card": {"recipe": recipe, "settings": settings}}));
        prop_assert_eq!(card(&recipe), card(&opened));
    }

    #[test]
    fn any_text_is_opened_or_refused(text in "\\PC{0,200}") {
        let answer = answer(&json!({"open_link": {"text": text}}));
        prop_assert!(answer["problems"].is_array());
    }

    #[test]
    fn any_bytes_with_a_good_checksum_are_opened_or_refused(bytes in prop::collection::vec(any::<u8>(), 0..300)) {
        // CRC-32 of the content as the link carries it (ISO-HDLC), so that the decoder behind it is reached.
        let sum = crc32(&bytes);
        let whole = [&(bytes.len() as u16).to_be_bytes()[..], &bytes, &sum.to_be_bytes()].concat();
        let answer = answer(&json!({"open_link": {"text": format!("r1.{}", base64_url(&whole))}}));
        prop_assert!(answer["ok"].is_object() || answer["problems"].is_array());
        prop_assert_ne!(&answer["problems"][0]["code"], "cut");
    }

    #[test]
    fn any_request_is_answered(line in "\\PC{0,200}") {
        let answer: Value = serde_json::from_str(&answer_json(&line)).expect("JSON");
        prop_assert!(answer["problems"].is_array());
    }
}

/// Bit by bit, to be independent of the crate's own table.
fn crc32(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(!0u32, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |c, _| {
            if c & 1 == 1 { (c >> 1) ^ 0xEDB8_8320 } else { c >> 1 }
        })
    })
}

fn base64_url(bytes: &[u8]) -> String {
    const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
    let mut out = String::new();
    for chunk in bytes.chunks(3) {
        let word = chunk.iter().fold(0u32, |w, b| (w << 8) | u32::from(*b)) << (8 * (3 - chunk.len()));
        for i in 0..=chunk.len() {
            out.push(char::from(LETTERS[(word >> (18 - 6 * i)) as usize & 63]));
        }
    }
    out
}
