//! The recipe reader against lines and texts of our own writing, with what each is to be read as.

mod accounted;
mod agents;
mod corpus;
mod messages;
mod others;
mod recipes;
mod texts;
