//! The recipe reader against lines and texts of our own writing, with what each is to be read as.

mod corpus;
mod texts;
