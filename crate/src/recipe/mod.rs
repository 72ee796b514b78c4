//! A recipe: proportions on a stated base, a cure by its printed percentage, steps with times.

mod allergens;
mod check;
mod doubt;
mod method;
mod model;
mod told;
mod turned;
mod usual;

pub use allergens::{Allergen, Allergens, NO_ALLERGEN, allergens};
pub use check::{
    MOST_CURES, MOST_LINES, MOST_NAME, MOST_NOTE, MOST_STEPS, MOST_TEXT, MOST_UNREAD, name, tag, take, text,
};
pub use doubt::{MayHold, Why};
pub use method::{Counted, Method};
pub use model::{Cure, Do, Eaten, Holds, Line, Recipe, Share, ShareOf, Step};
pub use told::{Told, told};
pub use turned::turned;
pub use usual::{Basis, COLD_SMOKE, UsualRow, usual};
