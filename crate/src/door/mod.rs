//! The door: one request in, one answer out, the same natively and in the browser.
//!
//! A request is an object with one key, the question, and its content: `{"weigh_out": {"batch": …, "settings": …}}`.
//! An answer is `{"ok": …}` or `{"problems": [{code, field, message, choices}]}`; bad input never throws.
//! Quantities are text in the grammar of [`crate::quantity`], so `"1480 g"` and `"3 lb 4 oz"` are both good.
//! No clock: `now` and ticks come in with the request, in milliseconds since 1970-01-01 UTC.
//!
//! | question | content | `ok` |
//! |---|---|---|
//! | `read` | [`ReadFields`]: what was typed in a form | [`ReadValues`] |
//! | `tables` | `{}` | [`Tables`]: ingredients, cuts, limits, scale steps |
//! | `starters` | `{}` | [`Starters`]: the five recipes that come with the page, and a demo batch |
//! | `pieces` | [`AskPieces`] | [`PieceSheet`](crate::batch::PieceSheet) |
//! | `card` | [`AskCard`]: a recipe and a weight | [`RecipeCard`](crate::share::RecipeCard) |
//! | `turned` | [`AskTurned`]: a recipe and a method | [`Opened`]: the recipe by that method |
//! | `weigh_out` | [`AskWeighOut`]: a batch | [`WeighSheet`](crate::weigh::WeighSheet) |
//! | `draft` | [`AskDraft`]: a weight, a cut and what the bag says, before there is a batch | [`Draft`]: the batch that it would be |
//! | `check_dose` | [`AskDose`]: what is already on the meat | [`Verdict`](crate::dose::Verdict) |
//! | `standing` | [`AskStanding`]: a batch and now | [`StandingSheet`](crate::standing::StandingSheet) |
//! | `next` | [`AskNext`]: batches and now | [`NextList`](crate::schedule::NextList) |
//! | `link` | [`AskLink`]: a recipe | [`Link`](crate::share::Link): link and QR |
//! | `open_link` | [`AskOpen`]: a link | [`Opened`] |
//! | `fire_log` | [`AskFire`]: a batch and now | [`FireSheet`](crate::fire::FireSheet) |
//! | `brine` | [`AskBrine`](crate::brine::AskBrine): a vessel and a strength | [`BrineSheet`](crate::brine::BrineSheet) |
//! | `spoon` | [`AskSpoon`](crate::weigh::AskSpoon): level spoons that were weighed | [`SpoonSheet`](crate::weigh::SpoonSheet) |
//! | `scale` | [`AskScale`](crate::weigh::AskScale): known weights and what it shows | [`ScaleSheet`](crate::weigh::ScaleSheet) |
//! | `stock` | [`AskStock`](crate::weigh::AskStock): cure thinned with salt or water | [`StockSheet`](crate::weigh::StockSheet) |
//! | `check` | [`Record`]: a stored record | [`Checked`] |
//! | `read_recipe` | [`AskReading`](crate::reading::AskReading): a pasted text, answers so far | [`Reading`](crate::reading::Reading) |
//! | `plan_bag` | [`AskBag`](crate::plan::bag::AskBag): a bag, recipes and what is in the house | [`BagSheet`](crate::plan::bag::BagSheet) |
//! | `trouble` | [`AskTrouble`](crate::plan::trouble::AskTrouble): a card and what was answered | [`Trouble`](crate::plan::trouble::Trouble) |
//! | `plan_back` | [`AskBack`]: batches and a date | [`Back`](crate::plan::back::Back) |
//! | `calendar` | [`AskCalendar`]: batches, what the last file held, and now | [`Calendar`](crate::plan::Calendar): an .ics file |
//! | `labels` | [`AskLabels`]: a batch, packs and now | [`Labels`](crate::pack::Labels) |
//! | `cure_clock` | [`AskClock`](crate::cure::AskClock): a batch, now | [`CureClock`](crate::cure::CureClock) |
//! | `learn_cut` | [`AskCut`](crate::cure::AskCut): a batch, a class, what the cut shows | [`Finding`](crate::weigh::Finding) |
//! | `larder` | [`AskLarder`]: what came in, batches and now | [`LarderSheet`](crate::pack::LarderSheet) |
//! | `ledger` | [`AskLedger`]: batches, packs and a bag that is sought | [`Ledger`](crate::pack::Ledger) |
//! | `sources` | `{}` | [`Sources`]: where the figures come from |

mod answer;
mod draft;
#[cfg(target_arch = "wasm32")]
mod from_js;
#[cfg(target_arch = "wasm32")]
mod js;
#[cfg(feature = "types")]
mod keys;
#[cfg(target_arch = "wasm32")]
mod out;
#[cfg(target_arch = "wasm32")]
mod plain;
mod read;
mod request;
mod starters;
#[cfg(target_arch = "wasm32")]
mod typed;

use crate::quantity::Wrong;
use answer::bad_form;
pub use answer::{Answer, Checked, Ok as Answered, Opened, Sources, SourcesOf, Tables, answer};
pub use draft::{AskDraft, BothWays, Draft, Thick};
#[cfg(target_arch = "wasm32")]
pub use js::reckon;
pub use read::{FieldKind, ReadField, ReadFields, ReadValue, ReadValues};
pub use request::{
    AskBack, AskCalendar, AskCard, AskDose, AskFire, AskLabels, AskLarder, AskLedger, AskLink, AskNext, AskOpen,
    AskPieces, AskStanding, AskTurned, AskWeighOut, Named, Nothing, Record, Request,
};
pub use starters::Starters;

#[cfg(feature = "types")]
pub use keys::table_keys;

/// Answers one request written as JSON, as one line of JSON: the door without a browser. The page does not call it, so
/// its JSON reader is not shipped.
///
/// # Example: a weight in pounds and ounces
/// ```
/// let line = cure_reckoner::door::answer_json(r#"{"check": {"settings": {"scale_step": "0.1 g", "profile": "us-home"}}}"#);
/// assert_eq!(line, r#"{"ok":{"good":true}}"#);
/// ```
pub fn answer_json(request: &str) -> String {
    // A value first: what is not of the form is told by its place in the request, not by its line in the JSON.
    let mut values = serde_json::Deserializer::from_str(request).into_iter::<serde_json::Value>();
    let not_of_form = |error: &serde_json::Error| Wrong::NotOfForm { why: error.to_string() };
    let answered = match (values.next().transpose(), values.next()) {
        (Err(error), _) => bad_form(".", not_of_form(&error)),
        (Ok(_), Some(_)) => bad_form(".", Wrong::TwoRequests),
        (Ok(value), None) => match serde_path_to_error::deserialize::<_, Request>(value.unwrap_or_default()) {
            Ok(request) => answer(request),
            Err(error) => bad_form(&error.path().to_string(), not_of_form(error.inner())),
        },
    };
    serde_json::to_string(&answered).unwrap_or_else(|error| error.to_string())
}
