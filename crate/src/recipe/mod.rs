//! A recipe: proportions on a stated base, a cure by its printed percentage, steps with times.

mod allergens;
mod check;
mod method;
mod model;
mod words;

pub use allergens::{Allergens, NO_ALLERGEN, allergens};
pub use check::{MOST_CURES, MOST_LINES, MOST_NAME, MOST_NOTE, MOST_STEPS, MOST_TEXT, name, tag, take, text};
pub use method::{Counted, Method, Words};
pub use model::{Cure, Do, Eaten, Line, Recipe, Share, Step};
pub use words::{head, line};
