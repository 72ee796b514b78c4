//! A recipe as one link: version, length, content, checksum.

use super::{qr, wire};
use crate::quantity::{Code, LinkWrong, Problem};
use crate::recipe::Recipe;
use base64ct::{Base64UrlUnpadded, Encoding};
use crc::{CRC_32_ISO_HDLC, Crc, NoTable};
use serde::Serialize;
use std::cmp::Ordering;

/// Longest link that is opened, in bytes.
pub const MOST_LINK: usize = 4096;

/// A recipe as a link and as a QR code.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct Link {
    /// The whole link.
    pub link: String,
    /// What stands behind the `#`.
    pub code: String,
    /// The QR code's side in modules, with no quiet zone; nought where the link is too long for one.
    pub qr_size: u32,
    /// The dark modules as an SVG path in module units: `M0 0h7v1h-7z…`.
    pub qr_path: String,
}

/// First characters of every code of this version: `r` for recipe, `1` for the format.
const HEAD: &str = "r1.";
/// Without a table: a recipe is short, and a table is a kilobyte that does not compress.
const CRC: Crc<u32, NoTable> = Crc::<u32, NoTable>::new(&CRC_32_ISO_HDLC);

/// Writes a recipe as a link behind `page`, with its QR code.
///
/// After the head come, as base64 for addresses (RFC 4648 section 5, no padding): the length of the content in two
/// bytes, the content, and its CRC-32 in four, both big-endian.
///
/// # Errors
/// The problems of the recipe; [`Code::TooLong`] where it does not fit.
///
/// ```
/// use cure_reckoner::recipe::Recipe;
/// use cure_reckoner::share::write;
/// let recipe: Recipe = serde_json::from_value(serde_json::json!({
///     "name": "Salt and cure", "tag": "SC", "method": "rub",
///     "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "150 ppm"}],
/// })).unwrap();
/// let link = write(&recipe, "https://example.org/page#before").unwrap();
/// assert!(link.link.starts_with("https://example.org/page#r1."));
/// // Versions of a QR code have 21 modules a side, and 4 more each (ISO/IEC 18004).
/// assert_eq!(link.qr_size % 4, 1);
/// ```
pub fn write(recipe: &Recipe, page: &str) -> Result<Link, Vec<Problem>> {
    let problems = recipe.problems();
    if !problems.is_empty() {
        return Err(problems.into_iter().map(|p| p.at("recipe")).collect());
    }
    let content = wire::write(recipe).map_err(|p| vec![p])?;
    let too_long = || vec![Problem::of(Code::TooLong, LinkWrong::RecipeTooLong)];
    let length = u16::try_from(content.len()).map_err(|_| too_long())?;
    let sum = CRC.checksum(&content);
    let bytes = [&length.to_be_bytes()[..], &content, &sum.to_be_bytes()[..]].concat();
    let code = format!("{HEAD}{}", Base64UrlUnpadded::encode_string(&bytes));
    let link = format!("{}#{code}", page.split('#').next().unwrap_or_default());
    if link.len() > MOST_LINK {
        return Err(too_long());
    }
    let (qr_size, qr_path) = qr::draw(&link).unwrap_or_default();
    Ok(Link {
        link,
        code,
        qr_size,
        qr_path,
    })
}

/// Opens a whole link, or what stands behind its `#`. The recipe has been checked like one that was typed.
///
/// # Errors
/// [`Code::NotRead`] for what is no link, [`Code::Version`] for a newer one, [`Code::Cut`] where the end is missing,
/// [`Code::Altered`] where a character was changed, and the problems of the recipe.
///
/// ```
/// use cure_reckoner::quantity::Code;
/// use cure_reckoner::recipe::Recipe;
/// use cure_reckoner::share::{open, write};
/// let recipe: Recipe = serde_json::from_value(serde_json::json!({
///     "name": "Salt and cure", "tag": "SC", "method": "rub",
///     "cures": [{"item": "cure-1", "nitrite": "6.25 %", "nitrate": "0 %", "aim": "150 ppm"}],
/// })).unwrap();
/// let code = write(&recipe, "https://example.org/").unwrap().code;
/// assert_eq!(open(&code), Ok(recipe));
/// let cut = &code[..code.len() - 1];
/// assert_eq!(open(cut).unwrap_err()[0].code, Code::Cut);
/// ```
pub fn open(text: &str) -> Result<Recipe, Vec<Problem>> {
    let bytes = decode(text).map_err(|p| vec![p.at("text")])?;
    let recipe = wire::read(&bytes).map_err(|p| vec![p.at("text")])?;
    let problems = recipe.problems();
    if problems.is_empty() { Ok(recipe) } else { Err(problems) }
}

fn decode(text: &str) -> Result<Vec<u8>, Problem> {
    if text.len() > MOST_LINK {
        return Err(Problem::of(Code::TooLong, LinkWrong::LinkTooLong));
    }
    // A message may have wrapped the link, and a mail program may have escaped its mark.
    let text: String = text.chars().filter(|c| !c.is_whitespace()).collect();
    let code = text
        .rsplit("%23")
        .next()
        .and_then(|t| t.rsplit('#').next())
        .unwrap_or_default();
    if code.is_empty() {
        return Err(Problem::of(Code::Missing, LinkWrong::LinkMissing));
    }
    let Some(body) = code.strip_prefix(HEAD) else {
        let version = code
            .strip_prefix('r')
            .and_then(|rest| rest.split_once('.'))
            .map(|(number, _)| number);
        return Err(match version {
            Some(number) if !number.is_empty() && number.bytes().all(|b| b.is_ascii_digit()) => {
                Problem::of(Code::Version, LinkWrong::LinkVersion)
            }
            _ if HEAD.starts_with(code) => cut(),
            _ => Problem::of(Code::NotRead, LinkWrong::NoLink),
        });
    };
    // What follows the code in a sentence is not part of it.
    let end = body
        .find(|c: char| !(c.is_ascii_alphanumeric() || c == '-' || c == '_'))
        .unwrap_or(body.len());
    let (letters, after) = body.split_at_checked(end).unwrap_or((body, ""));
    match content(letters) {
        // A foreign character within the code was changed, not cut.
        Err(problem) if problem.code == Code::Cut && !after.is_empty() => Err(altered()),
        read => read,
    }
}

/// The content of a code without its head, held against its length and its checksum.
fn content(letters: &str) -> Result<Vec<u8>, Problem> {
    // The first four characters hold the length, and from it how many characters there must be.
    let first = letters.get(..4).ok_or_else(cut)?;
    let first = Base64UrlUnpadded::decode_vec(first).map_err(|_| altered())?;
    let Some((length, _)) = first.split_first_chunk::<2>() else {
        return Err(altered());
    };
    let length = usize::from(u16::from_be_bytes(*length));
    let whole = length.saturating_add(6).saturating_mul(4).div_ceil(3);
    match letters.len().cmp(&whole) {
        Ordering::Less => return Err(cut()),
        Ordering::Greater => return Err(altered()),
        Ordering::Equal => {}
    }
    // The decoder takes one text for one content: no spare bits.
    let bytes = Base64UrlUnpadded::decode_vec(letters).map_err(|_| altered())?;
    let content = bytes.get(2..).and_then(|rest| rest.split_at_checked(length));
    match content {
        Some((content, sum)) if sum == CRC.checksum(content).to_be_bytes() => Ok(content.to_vec()),
        _ => Err(altered()),
    }
}

fn cut() -> Problem {
    Problem::of(Code::Cut, LinkWrong::LinkCut)
}

fn altered() -> Problem {
    Problem::of(Code::Altered, LinkWrong::LinkAltered)
}
