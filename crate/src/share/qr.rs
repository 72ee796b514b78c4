//! The QR code of a link, as one SVG path.

use qrcodegen::{QrCode, QrCodeEcc};
use std::fmt::Write as _;

/// Side in modules without the quiet zone, and the dark modules as a path: a run of each row is one rectangle.
/// `None` where the text does not fit the largest code.
pub fn draw(text: &str) -> Option<(u32, String)> {
    // Medium correction reads off a wet or scratched screen and keeps a ten-line recipe legible on a phone.
    let code = QrCode::encode_text(text, QrCodeEcc::Medium).ok()?;
    let mut path = String::new();
    for y in 0..code.size() {
        let mut dark = (0..code.size()).filter(|x| code.get_module(*x, y)).peekable();
        while let Some(start) = dark.next() {
            let mut run = 1i32;
            while dark.next_if_eq(&start.saturating_add(run)).is_some() {
                run = run.saturating_add(1);
            }
            write!(path, "M{start} {y}h{run}v1h-{run}z").ok()?;
        }
    }
    Some((u32::try_from(code.size()).ok()?, path))
}
