//! A recipe: proportions on a stated base, a cure by its printed percentage, steps with times.

mod check;
mod model;
mod words;

pub use check::{MOST_CURES, MOST_LINES, MOST_NAME, MOST_NOTE, MOST_STEPS, MOST_TEXT, name, tag, text};
pub use model::{Cure, Do, Eaten, Line, Method, Recipe, Share, Step};
pub use words::{head, line};
